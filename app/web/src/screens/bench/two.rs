//! Two clocks in one band. The keys act on one of them, and say whose they are.

use super::{asked::AskedAbout, running::acts, say, taps};
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind},
        seg::Seg,
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Sheet},
        slate::{SlateHalf, TwoClocks},
    },
    screens::{drying::DryingNow, trouble::Troubles},
    shell::{Desk, Go, Place, frame::Places, mark::LastMarkHere},
    words::bench as words,
};
use benchslate_core::{
    journal::Id,
    measure::{InOrder, When},
    timing::bench::{Bench, BenchClock, Named},
};

/// The bench while two clocks run.
#[component]
pub fn Two() -> impl IntoView {
    let desk = Desk::here();
    let go: Go = expect_context();
    let bench = Memo::new(move |_| desk.bench());
    // Whose keys these are: the later begun, until a name is tapped, and not because of what another window begins.
    if desk.whose.with_untracked(Option::is_none) {
        desk.whose.set(untrack(move || acting(bench)).map(|clock| clock.person.id));
    }
    let lead = Signal::derive(move || match named(bench) {
        Some(name) => words::goes_to(&name),
        None => words::change_over_to().to_owned(),
    });
    view! {
        <Sheet>
            <Head title=super::title(desk, bench) note=super::today(desk) on_tap=Callback::new(move |()| go.to(&Place::WorkFor))/>
            <Above>
                <TwoClocks name=words::clock_running().to_owned()>
                    <Half bench at=0/>
                    <Half bench at=1/>
                </TwoClocks>
                <DryingNow bench/>
                <Troubles/>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <AskedAbout bench/>
                    {move || acts(bench, desk.trouble.with(Option::is_some))}
                    <Main bench/>
                    <super::stages::Likely bench lead/>
                </Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

/// The clock of the keys and the one begun last beside it, each name in the place that it has while one clock runs:
/// whoever began, and whenever.
fn pair(bench: &Bench) -> Vec<BenchClock> {
    let Some(acting) = bench.acting() else { return Vec::new() };
    let beside = bench.clocks.iter().rev().find(|clock| clock.entry != acting.entry);
    let mut two: Vec<BenchClock> = [acting].into_iter().chain(beside).cloned().collect();
    two.order_by_key(|clock| (clock.person.id, clock.entry));
    two
}

fn at(bench: Memo<Option<Bench>>, at: usize) -> Option<BenchClock> {
    bench.read().as_ref().and_then(|bench| pair(bench).into_iter().nth(at))
}

fn acting(bench: Memo<Option<Bench>>) -> Option<BenchClock> {
    super::running::only(bench)
}

/// Whose the keys are, of those whose clocks run; none with one clock, and while two go together.
pub fn whose(bench: &Bench) -> Option<String> {
    let alone = bench.clocks.len() > 1 && bench.at_work().len() == 1;
    bench.acting().filter(|_| alone).map(|clock| clock.person.name.clone())
}

fn named(bench: Memo<Option<Bench>>) -> Option<String> {
    bench.read().as_ref().and_then(whose)
}

#[component]
fn Half(bench: Memo<Option<Bench>>, at: usize) -> impl IntoView {
    let desk = Desk::here();
    let go: Go = expect_context();
    let clock = Memo::new(move |_| self::at(bench, at));
    let of = move |say: fn(Desk, &BenchClock) -> String| {
        Signal::derive(move || clock.read().as_ref().map(|clock| say(desk, clock)).unwrap_or_default())
    };
    let digits = Memo::new(move |_| {
        let now = desk.now();
        clock.read().as_ref().map(|clock| say::clock(desk, clock, now)).unwrap_or_default()
    });
    let earlier = move |piece: usize| {
        if let (Some(clock), Some(seconds)) = (clock.get_untracked(), taps::EARLIER.get(piece)) {
            taps::earlier(desk, &clock, *seconds);
        }
    };
    let type_start = move |()| {
        if let Some(clock) = clock.get_untracked() {
            go.to(&Place::Minute(clock.entry));
        }
    };
    let is_acting = move || {
        let (bench, clock) = (bench.read(), clock.read());
        let entry = clock.as_ref().map(|clock| clock.entry);
        bench.as_ref().is_some_and(|bench| bench.at_work().iter().any(|it| Some(it.entry) == entry))
    };
    view! {
        <SlateHalf
            stage=of(|_, clock| clock.stage.name.clone())
            who=of(who)
            rolling=Signal::derive(move || clock.read().as_ref().is_some_and(|clock| clock.rolling))
            since=of(since)
            start_name=of(|desk, clock| words::begun_at_change(&time(desk, clock.from)))
            going=Signal::derive(move || clock.read().as_ref().is_some_and(|clock| clock.paused().is_none()))
            acting=Signal::derive(is_acting)
            clock=digits
            earlier=say::earlier()
            on_earlier=Callback::new(earlier)
            on_start=Callback::new(type_start)
        />
    }
}

fn who(_: Desk, clock: &BenchClock) -> String {
    let who = say::who_for(clock);
    if clock.rolling { words::and_rolling(&who) } else { who }
}

fn time(desk: Desk, at: When) -> String {
    desk.read(|view| view.tongue.time(at.instant))
}

fn since(desk: Desk, clock: &BenchClock) -> String {
    match clock.paused() {
        Some(since) => words::paused_since(&time(desk, since)),
        None => words::since(&time(desk, clock.from)),
    }
}

/// The names that can be tapped: those of the two, and both; of more clocks each one, so that none is out of reach.
fn people(bench: &Bench) -> Vec<Vec<Named>> {
    let mut people: Vec<Named> = bench.clocks.iter().map(|clock| clock.person.clone()).collect();
    people.order_by_key(|it| it.id);
    let mut sets: Vec<_> = people.iter().map(|it| vec![it.clone()]).collect();
    if people.len() == 2 {
        sets.push(people);
    }
    sets
}

/// One name: the keys are theirs, each by itself from now on. Both: they go together.
fn choose(desk: Desk, bench: &Bench, set: &[Named]) {
    let going: Vec<Id> = bench.at_work().into_iter().map(|clock| clock.person.id).collect();
    let one = match set {
        [one] => bench.clocks.iter().find(|clock| clock.person.id == one.id),
        _ => bench.acting(),
    };
    let Some(clock) = one else { return };
    if set.len() > 1 && going.len() == 1 {
        return taps::who(desk, clock, set.to_vec());
    }
    if set.len() == 1 {
        desk.whose.set(Some(clock.person.id));
        if going.len() > 1 && going.contains(&clock.person.id) {
            taps::part(desk, clock);
        }
    }
}

#[component]
fn Main(bench: Memo<Option<Bench>>) -> impl IntoView {
    let desk = Desk::here();
    let clock = move || untrack(move || acting(bench));
    let paused = Memo::new(move |_| acting(bench).is_some_and(|clock| clock.paused().is_some()));
    let of = move |alone: fn() -> &'static str, of: fn(&str) -> String| {
        named(bench).map_or_else(|| alone().to_owned(), |name| of(&name))
    };
    let sets = Memo::new(move |_| bench.read().as_ref().map(people).unwrap_or_default());
    let chosen = Signal::derive(move || {
        let bench = bench.read();
        let going = bench.as_ref().map(Bench::at_work).unwrap_or_default();
        let mine = |set: &Vec<Named>| {
            set.len() == going.len()
                && set.iter().all(|it| going.iter().any(|clock| clock.person.id == it.id))
        };
        sets.read().iter().position(mine).unwrap_or(usize::MAX)
    });
    let on_choose = move |to: usize| {
        let set = sets.with_untracked(|sets| sets.get(to).cloned());
        if let (Some(bench), Some(set)) = (bench.get_untracked(), set) {
            choose(desk, &bench, &set);
        }
    };
    view! {
        <Keys class="bench-main">
            <Key
                label=Signal::derive(move || if paused.get() { of(words::go_on, words::go_on_of) } else { of(words::pause, words::pause_of) })
                on_tap=Callback::new(move |()| if let Some(clock) = clock() { taps::pause(desk, &clock) })
            />
            <Seg
                name=words::who().to_owned()
                choices=Signal::derive(move || say::choices(&sets.read()))
                chosen=chosen
                on_choose=Callback::new(on_choose)
            />
            <Key
                label=Signal::derive(move || of(words::stop, words::stop_of))
                kind=KeyKind::Stop
                on_tap=Callback::new(move |()| if let Some(clock) = clock() { taps::stop(desk, &clock) })
            />
        </Keys>
    }
}
