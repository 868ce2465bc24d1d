//! The shots of a build in plain words.

use crate::{
    parts::shot_row::{Frame, ShotText},
    screens::journal::facts::{Fact, bearer},
    shell::desk::View,
    words::{
        film as words,
        journal::{Label, comma},
    },
};
use benchslate_core::{
    journal::{
        Id,
        kinds::{self, Bearer, ShotWindow},
    },
    measure::Instant,
    timing::shots::{self, Before, Listed, Standing},
};

/// The sheet.
#[derive(Clone, PartialEq)]
pub struct Look {
    pub title: String,
    pub taken: usize,
    pub rows: Vec<Row>,
    /// The shot whose turn it is.
    pub next: Option<Id>,
    /// What is known of the card.
    pub card: String,
    /// What is known of the film, and the entry that says so.
    pub film: (String, Option<Id>),
}

/// A shot.
#[derive(Clone, PartialEq, Eq, Hash)]
pub struct Row {
    pub shot: Id,
    pub text: ShotText,
    pub waived: bool,
    /// The number of the next take.
    pub take: u32,
    pub takes: Vec<TakeRow>,
}

/// A take that was had.
#[derive(Clone, PartialEq, Eq, Hash)]
pub struct TakeRow {
    pub entry: Id,
    pub label: String,
    pub clip: Option<String>,
    pub keeps: bool,
}

/// None: there is no such build.
pub fn look(view: &View, build: Id, now: Instant) -> Option<Look> {
    let title = words::title(&view.shop.builds.get(&build)?.title);
    let mut listed = shots::listed(view.shop, build);
    let taken = listed.iter().filter(|it| it.standing == Standing::Taken).count();
    let next = shots::next(&listed).map(|it| it.shot);
    // What is still to do is read first.
    let (open, done): (Vec<Listed>, Vec<Listed>) =
        listed.drain(..).partition(|it| it.standing.is_to_take() || it.standing == Standing::Missed);
    let rows = open.iter().chain(&done).filter_map(|it| row(view, it, now)).collect();
    let copied = view.shop.cards.iter().rfind(|it| it.build == build);
    let copied = copied.map(|it| when(view, it.order.day, it.order.time, now));
    let card = words::card_state(copied.as_deref(), shots::since_copied(view.shop, build).len());
    Some(Look { title, taken, rows, next, card, film: film(view, build) })
}

fn film(view: &View, build: Id) -> (String, Option<Id>) {
    let film = view.shop.films.get(&build);
    let minutes = |it| view.tongue.quantity(it);
    let (finished, footage) = (film.and_then(|it| it.finished), film.and_then(|it| it.footage));
    let text = words::film_state(finished.map(minutes).as_deref(), footage.map(minutes).as_deref());
    // The latest entry of a build counts: what is known is put right, not said again.
    let says = |entry: &Id| matches!(view.journal.body(*entry), Some(benchslate_core::journal::Body::Film(it)) if it.build == build);
    let entry = film.and_then(|_| {
        let entries: Vec<Id> = view.journal.entries().filter(says).collect();
        if let [only] = entries.as_slice() { Some(*only) } else { None }
    });
    (text, entry)
}

fn row(view: &View, it: &Listed, now: Instant) -> Option<Row> {
    let shot = &view.shop.shots.get(&it.shot)?.body;
    let takes: Vec<TakeRow> =
        it.takes.iter().enumerate().filter_map(|(at, take)| taken(view, at, *take, now)).collect();
    let frame = match it.standing {
        Standing::Taken => Frame::Taken,
        Standing::Missed => Frame::Missed,
        Standing::Waived => Frame::Waived,
        Standing::Open | Standing::Late | Standing::Ahead => Frame::Open,
    };
    let best = takes.iter().find(|it| it.keeps).or(takes.last());
    let note = match (it.standing, best) {
        (Standing::Taken, Some(best)) => {
            words::clip_and_keeper(best.clip.as_deref().unwrap_or(words::no_clip()), best.keeps)
        }
        _ => planned(view, shot, it),
    };
    let text = ShotText {
        frame,
        taken: takes.len(),
        wanted: usize::try_from(it.wanted).unwrap_or_default(),
        what: shot.what.clone(),
        red: red(view, shot, it),
        note,
    };
    Some(Row { shot: it.shot, text, waived: shot.waived.is_some(), take: it.next_take(), takes })
}

fn red(view: &View, shot: &kinds::Shot, it: &Listed) -> Option<String> {
    if it.step_lost {
        return Some(words::step_struck().to_owned());
    }
    let at = || it.step.map(|step| words::at_step(window(shot), &step_name(view, step))).unwrap_or_default();
    match (it.standing, it.before) {
        (Standing::Missed, _) => Some(words::too_late(&at())),
        (Standing::Late, _) => Some(words::late(&at())),
        (Standing::Open | Standing::Ahead, Some(Before::Begins(step))) => {
            Some(words::before_begins(&step_name(view, step)))
        }
        (Standing::Open | Standing::Ahead, Some(Before::Ends(step))) => {
            Some(words::before_ends(&step_name(view, step)))
        }
        (Standing::Open | Standing::Ahead, None) if shot.once => Some(words::once_only().to_owned()),
        _ => None,
    }
}

/// `must; while sand 24; 15 min to set up, 2 × 20 s`.
fn planned(view: &View, shot: &kinds::Shot, it: &Listed) -> String {
    let when = it
        .step
        .filter(|_| {
            it.before.is_none() && matches!(it.standing, Standing::Open | Standing::Ahead | Standing::Waived)
        })
        .map(|step| words::at_step(window(shot), &step_name(view, step)));
    let set_up = shot.set_up.map(|it| words::set_up(it, when.is_none())).unwrap_or_default();
    let much = match (set_up.is_empty(), words::takes_of(shot.takes, shot.seconds)) {
        (true, takes) => takes,
        (false, takes) => comma(&set_up, &takes),
    };
    let stands = words::standing(it.standing).to_owned();
    let stands = if it.standing == Standing::Missed { String::new() } else { stands };
    // What was left out is no longer a must.
    let need = (it.standing != Standing::Waived).then(|| words::need(shot.nice).to_owned());
    let lacks = it.step.is_none() && matches!(it.standing, Standing::Open | Standing::Ahead);
    let planned = lacks && view.shop.steps.values().any(|it| it.build() == shot.build);
    let lacks = planned.then(|| words::without_a_step().to_owned());
    let all = [need, Some(stands), when, Some(much), lacks];
    let all: Vec<String> = all.into_iter().flatten().filter(|it| !it.is_empty()).collect();
    all.join("; ")
}

fn window(shot: &kinds::Shot) -> usize {
    match shot.window {
        ShotWindow::Before => 0,
        ShotWindow::During => 1,
        ShotWindow::After => 2,
    }
}

/// What a step is called.
pub fn step_name(view: &View, step: Id) -> String {
    view.shop.steps.get(&step).map(|it| it.body.title.clone()).unwrap_or_default()
}

fn taken(view: &View, at: usize, take: usize, now: Instant) -> Option<TakeRow> {
    let it = view.shop.takes.get(take)?;
    let when = when(view, it.order.day, it.order.time, now);
    let label = words::take_at(at + 1, &when);
    Some(TakeRow { entry: it.order.entry, label, clip: it.clip.clone(), keeps: it.keep })
}

/// The time of today, else the day.
fn when(view: &View, day: benchslate_core::measure::Day, time: Option<Instant>, now: Instant) -> String {
    match time.filter(|_| view.shop.zone.day(now) == day) {
        Some(time) => view.tongue.time(time),
        None => view.tongue.day(day),
    }
}

/// What is to be shot.
pub fn what(view: &View, shot: Id) -> String {
    view.shop.shots.get(&shot).map(|it| it.body.what.clone()).unwrap_or_default()
}

/// Every fact of a shot.
pub fn facts(view: &View, it: &kinds::Shot) -> Vec<Fact> {
    let yes = |is: bool| if is { crate::words::journal::yes_no(true).to_owned() } else { String::new() };
    let number = |it: Option<u32>| it.map(|it| it.to_string()).unwrap_or_default();
    let step = it.step.map(|step| words::at_step(window(it), &step_name(view, step)));
    vec![
        (Label::Shot, it.what.clone()),
        (Label::Of, bearer(view, Bearer::Build(it.build))),
        (Label::AtStep, step.unwrap_or_default()),
        (Label::Takes, words::takes_of(it.takes, it.seconds)),
        (Label::SetUp, number(it.set_up)),
        (Label::OnceOnly, yes(it.once)),
        (Label::Nice, yes(it.nice)),
        (Label::Waived, it.waived.map(|day| view.tongue.day_year(day)).unwrap_or_default()),
    ]
}

/// Every fact of a take.
pub fn take_facts(view: &View, it: &kinds::Take) -> Vec<Fact> {
    vec![
        (Label::Of, what(view, it.shot)),
        (Label::Clip, it.clip.clone().unwrap_or_default()),
        (Label::Keeper, if it.keep { crate::words::journal::yes_no(true).to_owned() } else { String::new() }),
    ]
}
