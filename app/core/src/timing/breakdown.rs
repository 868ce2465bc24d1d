//! Where the hours of one bearer went: by side and stage, by person, by week and day, on the wall, on camera.
//!
//! Person-hours are whole seconds as [`super::worked`] counts them, so every way to cut them comes to the same
//! total. **On the wall** is the union of the counted pieces of time, whoever worked: hours logged as an amount
//! have no place in it, and are told apart. **Camera rolling** is the union of rolling time inside counted work.
//! Shown figures are whole minutes apportioned top-down ([`minutes`]).
//!
//! Worked example: two people two hours together, and one hour logged as an amount, are five person-hours and
//! two on the wall.
//!
//! Not here: hours that sit in drawn timber (`costing`); money.

use super::worked::{Owned, Worked, length, owned};
use crate::measure::InOrder;
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Role, Side},
        shop::{Stretch, Time},
    },
    measure::{Day, Instant, Map, Quantity, Seconds, Weekday, fixed, minutes},
};

/// What a row is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Of {
    /// Piece, film, both.
    Side(Side),
    /// A kind of work.
    Stage(Id),
    /// Somebody.
    Person(Id),
    /// The week that begins on this day.
    Week(Day),
    /// The local day on which the stretch began.
    Day(Day),
    /// One entry.
    Entry(Id),
}

/// So much of a sum, and what it is made of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// Of what.
    pub of: Of,
    /// Exactly.
    pub worked: Seconds,
    /// In whole minutes that add up on the sheet.
    pub shown: Seconds,
    /// Its parts; none under an entry.
    pub rows: Vec<Row>,
}

/// The hours of a bearer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Breakdown {
    /// Person-hours, exactly.
    pub worked: Seconds,
    /// The same in whole minutes.
    pub shown: Seconds,
    /// Of them, logged as an amount: not in `wall`, nor in `rolling`.
    pub as_amount: Seconds,
    /// By the clock on the wall, two people together once.
    pub wall: Seconds,
    /// Camera running.
    pub rolling: Seconds,
    /// A clock is among them.
    pub runs: bool,
    /// Some of it was taken by a later stretch of the same person.
    pub overlaps: bool,
    /// How much that was: counted once, in the later stretch.
    pub overlapped: Seconds,
    /// Sides, then stages, then entries.
    pub by_stage: Vec<Row>,
    /// People, then stages, then entries.
    pub by_person: Vec<Row>,
    /// Weeks, then days, then entries; the latest first.
    pub by_day: Vec<Row>,
    /// Camera running, by side, stage and entry; they add up to `rolling`.
    pub on_camera: Vec<Row>,
    /// Hours of the film for each of the piece; none without hours of the piece. Hours for both are in neither.
    pub film_an_hour: Option<Quantity>,
    /// What is known of its film, by its length: none before that is known.
    pub per_minute: Option<PerMinute>,
}

/// The film of a build by the minute as it went out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PerMinute {
    /// As it went out, in minutes.
    pub finished: Quantity,
    /// Time spent at stages of cutting it.
    pub edited: Seconds,
    /// Of that, for each minute; in whole seconds.
    pub edit: Seconds,
    /// Minutes shot for each minute.
    pub footage: Option<Quantity>,
}

/// The hours of a bearer up to a moment. `week`: the day on which a week begins.
pub fn breakdown(shop: &Shop, bearer: Bearer, as_of: Instant, week: Weekday) -> Breakdown {
    let (mut rows, owned) = owned(shop, as_of);
    let mine = |it: &Owned| shop.stretches.get(it.stretch).is_some_and(|stretch| stretch.bearer == bearer);
    let pieces = owned.iter().filter(|it| mine(it)).map(|it| (it.from, it.to, it.stretch));
    let mut pieces: Vec<(Instant, Instant, usize)> = pieces.collect();
    rows.retain(|row| row.bearer == bearer);
    let of = |row: &Worked| shop.stretches.get(row.stretch);
    let runs = rows.iter().filter_map(of).any(Stretch::runs);
    let overlaps = rows.iter().any(|row| row.cut);
    let parts: Vec<Part> = rows.iter().map(|row| Part { row, seconds: row.seconds }).collect();
    let worked = sum(&parts);
    let as_amount = rows.iter().filter(|row| !row.span).fold(Seconds::ZERO, |sum, row| sum.plus(row.seconds));
    let filmed = rolling(shop, &pieces, as_of);
    let filmed: Vec<Part> = rows
        .iter()
        .map(|row| Part { row, seconds: filmed.get(&row.stretch).copied().unwrap_or_default() })
        .collect();
    let shown = minutes::alone(worked);
    let rolling = sum(&filmed);
    let (side, stage): (Key, Key) = (&|row| Of::Side(row.side), &|row| Of::Stage(row.stage));
    let person: Key = &|row| Of::Person(row.person);
    let weeks: Key = &|row| Of::Week(row.day.first_of_week(week));
    let day: Key = &|row| Of::Day(row.day);
    let entry: Key = &|row| Of::Entry(row.entry);
    Breakdown {
        worked,
        shown,
        as_amount,
        wall: union(&mut pieces),
        rolling,
        runs,
        overlaps,
        overlapped: overlapped(shop, &rows, as_of),
        by_stage: cut(&parts, shown, &[side, stage, entry]),
        by_person: cut(&parts, shown, &[person, stage, entry]),
        by_day: cut(&parts, shown, &[weeks, day, entry]),
        on_camera: cut(&filmed, minutes::alone(rolling), &[side, stage, entry]),
        film_an_hour: film_an_hour(&parts),
        per_minute: per_minute(shop, bearer, &parts),
    }
}

/// What a stretch adds to a sum: all of it, or what of it was filmed.
#[derive(Clone, Copy)]
struct Part<'a> {
    row: &'a Worked,
    seconds: Seconds,
}

type Key<'a> = &'a dyn Fn(&Worked) -> Of;

fn sum(parts: &[Part]) -> Seconds {
    parts.iter().fold(Seconds::ZERO, |sum, part| sum.plus(part.seconds))
}

/// Cut by the first key, each of the parts by the next. What is worth no time has no row.
fn cut(parts: &[Part], shown: Seconds, keys: &[Key]) -> Vec<Row> {
    let Some((key, deeper)) = keys.split_first() else { return Vec::new() };
    let mut groups: Vec<(Of, Vec<Part>)> = Vec::new();
    for part in parts.iter().filter(|part| !part.seconds.is_zero()) {
        let of = key(part.row);
        match groups.iter_mut().find(|(group, _)| *group == of) {
            Some((_, group)) => group.push(*part),
            None => groups.push((of, vec![*part])),
        }
    }
    groups.order_by_key(|(of, group)| place(*of, sum(group)));
    let sums: Vec<Seconds> = groups.iter().map(|(_, group)| sum(group)).collect();
    let shown = minutes::parts(shown, &sums);
    let rows = groups.into_iter().zip(sums).zip(shown).map(|(((of, group), worked), shown)| Row {
        of,
        worked,
        shown,
        rows: cut(&group, shown, deeper),
    });
    rows.collect()
}

/// Sides as they are named, days from the latest back, all else by how much it is.
fn place(of: Of, worked: Seconds) -> (i64, i64) {
    let back = |day: Day| day.since_1970().saturating_neg();
    match of {
        Of::Side(Side::Piece) => (0, 0),
        Of::Side(Side::Film) => (1, 0),
        Of::Side(Side::Both) => (2, 0),
        Of::Week(day) | Of::Day(day) => (back(day), 0),
        Of::Stage(_) | Of::Person(_) => (0, worked.0.saturating_neg()),
        // As they were done.
        Of::Entry(_) => (0, 0),
    }
}

/// Length of what the pieces cover together. Leaves them in order.
fn union(pieces: &mut [(Instant, Instant, usize)]) -> Seconds {
    pieces.order();
    let mut covered = Instant(i64::MIN);
    pieces.iter().fold(Seconds::ZERO, |sum, (from, to, _)| sum.plus(beyond(&mut covered, *from, *to)))
}

/// How much of a piece lies past what is covered already; it is covered from now on. In order of start.
fn beyond(covered: &mut Instant, from: Instant, to: Instant) -> Seconds {
    let from = from.max(*covered);
    if to <= from {
        return Seconds::ZERO;
    }
    *covered = to;
    to.since(from)
}

/// Rolling time inside counted work, each second once: of two that roll at the same time the one that was begun
/// first has it.
fn rolling(shop: &Shop, pieces: &[(Instant, Instant, usize)], as_of: Instant) -> Map<usize, Seconds> {
    let mut rolled = Vec::new();
    for (from, to, at) in pieces {
        let spans = shop.stretches.get(*at).map(|it| it.rolling.as_slice()).unwrap_or_default();
        rolled.extend(spans.iter().filter_map(|span| {
            let (begun, cut) = (span.from.max(*from), span.to.unwrap_or(as_of).min(*to));
            (begun < cut).then_some((begun, cut, *at))
        }));
    }
    rolled.order();
    let (mut covered, mut by_stretch) = (Instant(i64::MIN), Map::<usize, Seconds>::new());
    for (from, to, at) in rolled {
        let sum = by_stretch.entry(at).or_default();
        *sum = sum.plus(beyond(&mut covered, from, to));
    }
    by_stretch
}

/// What later stretches of the same person took.
fn overlapped(shop: &Shop, rows: &[Worked], as_of: Instant) -> Seconds {
    let taken = |row: &Worked| match shop.stretches.get(row.stretch).map(|it| (it.time, &it.pauses)) {
        Some((Time::Span(span), pauses)) => {
            length(span, pauses, as_of).0.saturating_sub(row.seconds.0).max(0)
        }
        Some((Time::Amount(_), _)) | None => 0,
    };
    rows.iter().filter(|row| row.cut).fold(Seconds::ZERO, |sum, row| sum.plus(Seconds(taken(row))))
}

fn film_an_hour(parts: &[Part]) -> Option<Quantity> {
    let of = |side: Side| {
        let mine = parts.iter().filter(|part| part.row.side == side);
        mine.fold(Seconds::ZERO, |sum, part| sum.plus(part.seconds))
    };
    let (film, piece) = (of(Side::Film), of(Side::Piece));
    if piece.is_zero() {
        return None;
    }
    fixed::mul_div(i128::from(film.0), fixed::SCALE, i128::from(piece.0)).map(Quantity::from_micros)
}

fn per_minute(shop: &Shop, bearer: Bearer, parts: &[Part]) -> Option<PerMinute> {
    let Bearer::Build(build) = bearer else { return None };
    let film = shop.films.get(&build)?;
    let finished = film.finished?;
    let edits = |stage| shop.stages.get(&stage).is_some_and(|it| it.role == Some(Role::Edit));
    let edited = parts.iter().filter(|part| edits(part.row.stage));
    let edited = edited.fold(Seconds::ZERO, |sum, part| sum.plus(part.seconds));
    let edit = fixed::mul_div(i128::from(edited.0), fixed::SCALE, finished.micros())?;
    let footage = film.footage.and_then(|it| fixed::mul_div(it.micros(), fixed::SCALE, finished.micros()));
    Some(PerMinute {
        finished,
        edited,
        edit: Seconds(i64::try_from(edit).ok()?),
        footage: footage.map(Quantity::from_micros),
    })
}

#[cfg(test)]
mod tests;
