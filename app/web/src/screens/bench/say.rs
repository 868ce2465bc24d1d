//! The bench's state as words and drawings: digits, people, pieces.

use crate::{
    parts::{
        seg::Choice,
        slate::ClockText,
        stretch::{EarlierKey, StretchText},
    },
    shell::Desk,
    words::{bench as words, common},
};
use benchslate_core::measure::InOrder;
use benchslate_core::{
    journal::kinds::Side,
    measure::{Instant, Seconds},
    timing::bench::{Bench, BenchClock, Named},
};

/// Elapsed time as digits.
pub fn clock(desk: Desk, clock: &BenchClock, now: Instant) -> ClockText {
    let worked = clock.so_far(now);
    desk.read(|view| ClockText {
        digits: view.tongue.digits(worked),
        unit: common::hours_unit().to_owned(),
        name: view.tongue.hours(worked),
    })
}

/// Who, and for which side.
pub fn who_for(clock: &BenchClock) -> String {
    match clock.side {
        Side::Piece | Side::Film => words::who_for(&clock.person.name, common::side(clock.side)),
        Side::Both => words::who_for_both(&clock.person.name),
    }
}

/// The running stretch, drawn.
pub fn stretch(desk: Desk, clock: &BenchClock, now: Instant) -> StretchText {
    let worked = clock.so_far(now);
    desk.read(|view| {
        let start = view.tongue.time(clock.from.instant);
        StretchText {
            quarters: quarters(worked),
            length: view.tongue.hours(worked),
            start_name: words::begun_at_change(&start),
            start,
            going: clock.paused().is_none(),
        }
    })
}

/// For the drawing only: whole pixels come of it, never a figure.
/// By whole minutes, so that it is drawn anew no oftener than the digits change.
pub fn quarters(worked: Seconds) -> f64 {
    worked.0.div_euclid(60) as f64 / 15.0
}

/// The two dashed pieces.
pub fn earlier() -> Vec<EarlierKey> {
    super::taps::EARLIER
        .map(|seconds| {
            let minutes = (seconds / 60).to_string();
            EarlierKey { name: words::minutes_earlier(&minutes), word: words::earlier().to_owned(), minutes }
        })
        .into()
}

/// The people on the bench: the two last at work, and both. One person alone has no set to choose from.
pub fn people(bench: &Bench) -> Vec<Vec<Named>> {
    let two: Vec<Named> = bench.people.iter().take(2).cloned().collect();
    let mut sets: Vec<Vec<Named>> = two.iter().map(|it| vec![it.clone()]).collect();
    // The same place for the same name, whoever was last at work.
    sets.order_by_key(|set| set.first().map(|it| it.id));
    if two.len() == 2 {
        sets.push(sets.iter().flatten().cloned().collect());
    }
    sets
}

/// The sets as choices.
pub fn choices(sets: &[Vec<Named>]) -> Vec<Choice> {
    let label = |set: &Vec<Named>| match set.as_slice() {
        [one] => Choice::plain(one.name.clone()),
        _ => Choice::plain(words::both()),
    };
    sets.iter().map(label).collect()
}
