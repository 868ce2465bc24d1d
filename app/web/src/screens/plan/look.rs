//! What the plan sheet says, in words and places: the chance, the drawing, what holds it up, when each step is.

use super::{
    ask::Made,
    run::{SURE, Told},
};
use crate::{
    parts::{
        plan_drawing::{DateRow, PlanBar, PlanText},
        way_row::WayText,
    },
    screens::journal::facts,
    shell::desk::View,
    words::plan as words,
};
use benchslate_core::{
    journal::Id,
    measure::{Instant, minutes},
    planning::{Cause, Helped, Placed, Plan, Trial, shorter_film},
};

/// A step by its title.
pub fn step(view: &View, id: Id) -> String {
    view.shop.steps.get(&id).map_or_else(|| words::gone().to_owned(), |it| it.body.title.clone())
}

fn day(view: &View, at: Instant) -> String {
    view.tongue.day(view.shop.zone.day(at))
}

fn hours(view: &View, it: benchslate_core::measure::Seconds) -> String {
    view.tongue.hours(minutes::alone(it))
}

/// The chance, what it is of, and the slack under it.
pub fn chance(view: &View, made: &Made, plan: &Plan, told: Option<&Told>) -> (String, String, String) {
    let due = plan.build(made.build).and_then(|it| it.due);
    let figure = match (told, due) {
        (Some(Told { odds: Some(odds), .. }), Some(_)) => words::percent(odds.hundredths()),
        (Some(told), None) => told.dates[1].map_or_else(|| words::never().to_owned(), |at| day(view, at)),
        _ => words::no_chance_yet().to_owned(),
    };
    let of = match due {
        Some(due) if made.is_cut() => {
            let piece = plan.piece_due(made.build).map(|it| day(view, it));
            words::cut_out_by(&day(view, due), piece.as_deref())
        }
        Some(due) => words::over_by(&day(view, due)),
        None => words::no_date().to_owned(),
    };
    (figure, of, slack(view, made, plan))
}

fn slack(view: &View, made: &Made, plan: &Plan) -> String {
    if plan.build(made.build).is_none_or(|it| it.finish.is_none()) {
        return words::no_end().to_owned();
    }
    let Some(slack) = plan.slack(made.build) else { return String::new() };
    let who = facts::person(view, slack.person);
    let late = slack.days < 0 || slack.free.0 < 0;
    let (days, free) = (words::days(slack.days.unsigned_abs()), hours(view, slack.free.length()));
    let said = if late { words::late(&days, &free, &who) } else { words::slack(&days, &free, &who) };
    words::of_side(slack.side, &said)
}

/// The drawing; `before`: the plan as it stands, where something is tried.
pub fn drawing(
    view: &View,
    made: &Made,
    plan: &Plan,
    told: Option<&Told>,
    before: Option<&Told>,
) -> PlanText {
    let shop = view.shop;
    let due = plan.build(made.build).and_then(|it| it.due);
    let known = |told: Option<&Told>| told.map(|it| it.dates).unwrap_or_default();
    let all = known(told).into_iter().chain(known(before)).chain([due]).flatten();
    let sheet = plan.drawn(shop, made.build, &all.collect::<Vec<Instant>>());
    let at = |it: Instant| sheet.place(shop, it);
    let (dates, was) = (known(told), known(before));
    let row = |(place, sure): (usize, u32)| {
        let over = dates.get(place).copied().flatten();
        let late = over.zip(due).is_some_and(|(over, due)| over > due);
        let says = match over {
            Some(over) if late => words::late_day(&day(view, over)),
            Some(over) => day(view, over),
            None if told.is_some() => words::never().to_owned(),
            None => words::being_worked_out().to_owned(),
        };
        DateRow {
            label: words::percent(sure),
            says,
            at: over.map_or(if told.is_some() { 1.0 } else { 0.0 }, at),
            was: was.get(place).copied().flatten().map(at),
            late,
        }
    };
    let rows: Vec<DateRow> = SURE.into_iter().enumerate().map(row).collect();
    let fixed = due.map(|due| {
        let day = day(view, due);
        if made.is_cut() { words::cut_out(&day) } else { words::due(&day) }
    });
    let read: Vec<(String, String)> = rows.iter().map(|it| (it.label.clone(), it.says.clone())).collect();
    let title = shop.builds.get(&made.build).map(|it| it.title.as_str()).unwrap_or_default();
    let last = |film: bool| sheet.work.iter().rposition(|it| it.film == film);
    let (last_piece, last_film) = (last(false), last(true));
    let bar = |(place, it): (usize, &benchslate_core::planning::DayWork)| PlanBar {
        at: it.from,
        height: it.height,
        film: it.film,
        // Past the middle its word would run off the sheet.
        word: (Some(place) == last_piece || Some(place) == last_film)
            .then(|| step(view, it.step))
            .filter(|_| it.from < 0.62),
    };
    PlanText {
        name: words::drawing(title, &read, fixed.as_deref()),
        dates: rows,
        day: sheet.day,
        // At the right edge a week has no room for its words.
        weeks: sheet
            .weeks
            .iter()
            .filter(|(at, _)| *at < 0.84)
            .map(|(at, day)| (*at, view.tongue.day_short(*day)))
            .collect(),
        rest: sheet.ends_of_week.clone(),
        bars: sheet.work.iter().enumerate().map(bar).collect(),
        dries: sheet.dries.clone(),
        now: sheet.now,
        fixed: due.map(at).zip(fixed),
        lanes: words::lanes(),
        now_says: words::now(),
    }
}

/// What holds it up, as one sentence; none where nothing is planned.
pub fn held_up(view: &View, made: &Made, plan: &Plan) -> Option<String> {
    let causes = plan.held_up_by(made.build, 2);
    let said: Vec<String> = causes.iter().map(|it| cause(view, it)).collect();
    (!said.is_empty()).then(|| words::then(&said))
}

fn cause(view: &View, cause: &Cause) -> String {
    match cause {
        Cause::Dries { step: of, length } => words::dries(&step(view, *of), &hours(view, *length)),
        Cause::NextFree { person, from, short, .. } => {
            words::next_free(&facts::person(view, *person), &day(view, *from), *short)
        }
        Cause::Taken { resource, until } => {
            let name = view.shop.resources.get(resource).map(|it| it.name.clone());
            words::taken(&name.unwrap_or_else(|| words::gone().to_owned()), &day(view, *until))
        }
        Cause::Elsewhere { person, at, until } => {
            words::elsewhere(&facts::person(view, *person), &step(view, *at), &day(view, *until))
        }
        Cause::Date { step: of, start } => words::not_before(&step(view, *of), &day(view, *start)),
        Cause::Work { step: of, length } => words::work(&step(view, *of), &hours(view, *length)),
    }
}

/// What a way is called, and what it gives up or frees.
pub fn way(view: &View, trial: Trial) -> (String, String) {
    match trial {
        Trial::Drop { step: of } => {
            let costs = view.shop.steps.get(&of).and_then(|it| it.body.drops.clone());
            (words::drop(&step(view, of)), costs.unwrap_or_default())
        }
        Trial::Other { step: of, person } => {
            (words::other(&facts::person(view, person), &step(view, of)), String::new())
        }
        Trial::LeaveShots { .. } => (words::leave_shots().to_owned(), String::new()),
        Trial::Shorter { build, .. } => {
            let less = shorter_film(view.shop, build).map_or(0, |it| it.less);
            (words::shorter(less), words::off_the_edit().to_owned())
        }
        Trial::Window { person, from, to } => (
            words::window(&facts::person(view, person), &day(view, from)),
            words::from_to(&view.tongue.time(from), &view.tongue.time(to)),
        ),
        Trial::Later { build, until } => {
            let goes_out = view.shop.builds.get(&build).is_some_and(|it| it.publish.is_some());
            let day = day(view, until);
            (if goes_out { words::out_later().to_owned() } else { words::later(&day) }, String::new())
        }
    }
}

/// A row of the ways.
pub fn way_row(view: &View, helped: &Helped) -> WayText {
    let (label, gives_up) = way(view, helped.trial);
    let frees = if helped.freed.0 > 0 { words::frees(&hours(view, helped.freed)) } else { String::new() };
    WayText {
        label,
        note: crate::words::journal::comma(&gives_up, &frees),
        figure: words::percent(helped.odds.hundredths()),
        key: words::try_it().to_owned(),
    }
}

/// When a step is worked at, and by whom.
pub fn when(view: &View, it: &Placed) -> String {
    let who: Vec<String> = it.people.iter().map(|id| facts::person(view, *id)).collect();
    let piece = |(from, to): &(Instant, Instant)| {
        words::piece(&day(view, *from), &view.tongue.time(*from), &view.tongue.time(*to))
    };
    let mut pieces: Vec<String> = it.pieces.iter().take(2).map(piece).collect();
    let more = it.pieces.len().saturating_sub(pieces.len());
    if more > 0 {
        pieces.push(words::and_more(more));
    }
    words::who_when(&who.join(", "), &pieces.join("; "))
}
