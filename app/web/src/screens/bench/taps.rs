//! What the keys of the bench do: an act of core's clock, and the words of its mark.

use crate::{
    shell::{
        Desk,
        desk::{After, Mark, Marked, View},
    },
    words::{bench as words, common, film, hours},
};
use benchslate_core::{
    journal::{
        Body, Change, Id,
        kinds::{Bearer, Side},
    },
    measure::{Instant, Seconds},
    timing::{
        Hand,
        acts::Begin,
        bench::{Bench, BenchClock, Named},
        clocks, shots,
    },
};

/// A quarter hour, the step of the "earlier" pieces.
const QUARTER: i64 = 15 * 60;

/// The minutes on the two "earlier" pieces, in the order in which they are drawn.
pub const EARLIER: [i64; 2] = [2 * QUARTER, QUARTER];

/// Starts a stage, or changes over to it.
pub fn begin(desk: Desk, bench: &Bench, who: Vec<Named>, stage: Named) {
    let Some(bearer) = bench.bearer else { return };
    let running = bench.clocks.iter().find(|clock| who.iter().any(|it| it.id == clock.person.id)).cloned();
    // Each for what bears their clock: two who go together may have come from two builds.
    let of = |it: &Named| {
        let clock = bench.clocks.iter().find(|clock| clock.person.id == it.id);
        (it.id, clock.and_then(|clock| clock.bearer).unwrap_or(bearer))
    };
    let people: Vec<(Id, Bearer)> = who.iter().map(of).collect();
    let names: Vec<String> = who.into_iter().map(|it| it.name).collect();
    let to = stage.name.clone();
    let missed = move |view: &View| match bearer {
        Bearer::Build(build) => shots::missed(view.shop, build),
        Bearer::Lot(_) | Bearer::Shop => Vec::new(),
    };
    let before = desk.now_read(missed);
    desk.act(
        move |hand| hand.begin(&Begin { who: people.clone(), stage: stage.id, side: None }),
        move |after| {
            let mut marked = match &running {
                Some(clock) => {
                    let hours = after.tongue.hours(clock.so_far(after.now));
                    mark(&clock.stage.name, words::mark_changed_over(&hours, &to))
                }
                None => mark(&to, words::mark_begun(&words::and(&names))),
            };
            // What can't be taken any more is said while it can still be taken back.
            let lost = missed(&after.view()).into_iter().find(|it| !before.contains(it));
            let lost = lost.and_then(|it| after.shop.shots.get(&it));
            marked.mark.second = lost.map(|it| film::missed_now(&it.body.what)).or(marked.mark.second);
            marked
        },
    );
}

/// Stops a clock, and those that go with it.
pub fn stop(desk: Desk, clock: &BenchClock) {
    let (entry, clock) = (clock.entry, clock.clone());
    desk.act(
        move |hand| hand.stop(entry),
        move |after| {
            let hours = after.tongue.hours(clock.so_far(after.now));
            let mark = Mark {
                kind: clock.stage.name.clone(),
                what: words::mark_stopped(&hours, &people(after)),
                second: None,
            };
            Marked { mark, stopped: Some(entry) }
        },
    );
}

/// Pauses a clock, or lets it go on.
pub fn pause(desk: Desk, clock: &BenchClock) {
    let (entry, paused, stage) = (clock.entry, clock.paused().is_some(), clock.stage.name.clone());
    desk.act(
        move |hand| if paused { hand.go_on(entry) } else { hand.pause(entry) },
        move |_| mark(&stage, if paused { words::mark_goes_on() } else { words::mark_paused() }.to_owned()),
    );
}

/// The camera rolls, or is cut.
pub fn camera(desk: Desk, clock: &BenchClock) {
    let (entry, rolls, stage) = (clock.entry, !clock.rolling, clock.stage.name.clone());
    desk.act(
        move |hand| hand.camera(entry, rolls),
        move |_| Marked {
            mark: Mark {
                kind: words::mark_camera_kind().to_owned(),
                what: words::mark_camera(rolls).to_owned(),
                second: Some(stage.clone()),
            },
            stopped: None,
        },
    );
}

/// A running clock began that much earlier.
pub fn earlier(desk: Desk, clock: &BenchClock, seconds: i64) {
    let (entry, stage) = (clock.entry, clock.stage.name.clone());
    desk.act(
        move |hand| hand.earlier(entry, Seconds(seconds)),
        move |after| mark(&stage, words::mark_begun_at(&begun(after, entry))),
    );
}

/// The stretch that was stopped ended that much earlier; further pieces stay on offer.
pub fn ended_earlier(desk: Desk, entry: Id, seconds: i64) {
    desk.act(move |hand| hand.ended_earlier(entry, Seconds(seconds)), move |after| ended(after, entry));
}

/// It ended at a moment: "ended at", after it was asked about.
pub fn ended_at(desk: Desk, entry: Id, at: Instant) {
    desk.act(move |hand| hand.end_at(entry, at), move |after| ended(after, entry));
}

/// Asked about: it still runs.
pub fn goes_on(desk: Desk, clock: &BenchClock) {
    let (entry, stage) = (clock.entry, clock.stage.name.clone());
    desk.act(move |hand| hand.still_running(entry), move |_| mark(&stage, words::mark_goes_on().to_owned()));
}

/// Somebody else, or a second person, at the running stretch.
pub fn who(desk: Desk, clock: &BenchClock, choice: Vec<Named>) {
    let (entry, stage, mine) = (clock.entry, clock.stage.name.clone(), clock.person.id);
    let names = words::and(&choice.iter().map(|it| it.name.clone()).collect::<Vec<String>>());
    let people: Vec<Id> = choice.into_iter().map(|it| it.id).collect();
    desk.act(
        move |hand| who_changes(hand, entry, mine, &people),
        move |after| {
            let mut marked = mark(&stage, words::mark_who(&names));
            // The other is counted from when this one is.
            let since = Some(begun(after, entry)).filter(|since| !since.is_empty());
            marked.mark.second = since.map(|since| words::since(&since));
            marked
        },
    );
}

/// One name was tapped while two clocks run: each by itself from now on.
pub fn part(desk: Desk, clock: &BenchClock) {
    let (entry, stage, name) = (clock.entry, clock.stage.name.clone(), clock.person.name.clone());
    desk.act(move |hand| hand.part(entry), move |_| mark(&stage, words::mark_who(&name)));
}

/// What the running stretch is for.
pub fn side(desk: Desk, clock: &BenchClock, side: Side) {
    let (entry, stage) = (clock.entry, clock.stage.name.clone());
    desk.act(move |hand| hand.side(entry, side), move |_| mark(&stage, words::mark_side(common::side(side))));
}

/// The running stretch is one-off work, or it isn't.
pub fn one_off(desk: Desk, entry: Id, is: bool) {
    desk.act(
        move |hand| hand.one_off(entry, is),
        move |after| {
            let of = after.shop.stretches.iter().find(|it| it.entry() == entry).map(|it| it.stage);
            let stage = of.and_then(|id| after.shop.stages.get(&id)).map(|it| it.name.clone());
            mark(&stage.unwrap_or_default(), hours::marked_one_off(is).to_owned())
        },
    );
}

/// The same work, for something else from now on; or, while no clock runs, what the next one is for.
pub fn work_for(desk: Desk, bench: &Bench, bearer: Bearer, title: String) {
    desk.wish.set(Some(bearer));
    let at_work = bench.at_work();
    if at_work.iter().all(|clock| clock.bearer.or(bench.bearer) == Some(bearer)) {
        return;
    }
    let Some(clock) = bench.acting() else { return };
    let (entry, stage) = (clock.entry, clock.stage.name.clone());
    desk.act(move |hand| hand.rebear(entry, bearer), move |_| mark(&stage, words::mark_for(&title)));
}

fn who_changes(hand: &mut Hand, entry: Id, mine: Id, people: &[Id]) -> Vec<Change> {
    match people {
        [one] if *one == mine => hand.part(entry),
        [one] => hand.hand_to(entry, *one),
        [one, other] => hand.join(entry, if *one == mine { *other } else { *one }),
        _ => Vec::new(),
    }
}

fn mark(kind: &str, what: String) -> Marked {
    Mark { kind: kind.to_owned(), what, second: None }.into()
}

/// Names of those whose stretches the act wrote.
fn people(after: &After) -> String {
    let of = after.shop.stretches.iter().filter(|it| after.entries.contains(&it.entry()));
    let names = of.filter_map(|it| after.shop.people.get(&it.person)).map(|it| it.name.clone());
    words::and(&names.collect::<Vec<String>>())
}

fn begun(after: &After, entry: Id) -> String {
    let clocks = clocks(after.shop, after.now);
    let clock = clocks.iter().find(|clock| clock.entry == entry);
    clock.map(|clock| after.tongue.time(clock.from)).unwrap_or_default()
}

fn ended(after: &After, entry: Id) -> Marked {
    let stage = after.shop.stretches.iter().find(|it| it.entry() == entry).map(|it| it.stage);
    let kind = stage.and_then(|id| after.shop.stages.get(&id)).map(|it| it.name.clone()).unwrap_or_default();
    let to = match after.journal.body(entry) {
        Some(Body::Stretch(stretch)) => stretch.to.map(|to| after.tongue.time(to.instant)),
        _ => None,
    };
    let rows = benchslate_core::timing::worked(after.shop, after.now);
    let hours = rows.iter().find(|row| row.entry == entry).map(|row| after.tongue.hours(row.seconds));
    let what = words::mark_ended_at(&to.unwrap_or_default(), &hours.unwrap_or_default());
    Marked { mark: Mark { kind, what, second: None }, stopped: Some(entry) }
}
