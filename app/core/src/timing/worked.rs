//! Seconds worked, a row a stretch.
//!
//! Pauses are out. Where one person's stretches overlap, the one begun later takes the time; of two with
//! the same start the greater id. Source: our own rule, so that no hour is paid twice and the last word
//! that was given at the bench counts. Hours logged as an amount overlap nothing.

use crate::measure::InOrder;
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Side},
        shop::{Interval, Stretch, Time},
    },
    measure::{Day, Instant, Map, Seconds},
};
use std::collections::BTreeSet;

/// What a stretch is worth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Worked {
    /// Its place in `shop.stretches`.
    pub stretch: usize,
    /// The entry.
    pub entry: Id,
    /// Whole seconds, pauses and what a later stretch took out.
    pub seconds: Seconds,
    /// A later stretch of the same person took some of it.
    pub cut: bool,
    /// Who.
    pub person: Id,
    /// What kind of work.
    pub stage: Id,
    /// What bears it.
    pub bearer: Bearer,
    /// What it is for.
    pub side: Side,
    /// The local day of its start.
    pub day: Day,
    /// From and to are known; else only an amount.
    pub span: bool,
}

/// A part of a stretch that counts: without a pause in it, and no later stretch of the same person took it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Owned {
    /// Place of the stretch in `shop.stretches`.
    pub stretch: usize,
    /// From.
    pub from: Instant,
    /// To.
    pub to: Instant,
}

/// One row for each stretch, in their order. A clock runs until `as_of`; nothing counts after it.
pub fn worked(shop: &Shop, as_of: Instant) -> Vec<Worked> {
    owned(shop, as_of).0
}

/// The rows of some stretches alone: only what lies at the same time is looked at beside them.
pub fn worked_at(shop: &Shop, as_of: Instant, places: &[usize]) -> Vec<Worked> {
    let some = || places.iter().filter_map(|at| shop.stretches.get(*at));
    let until = |span: Interval| span.to.unwrap_or(as_of);
    let spans = || some().filter_map(span_of);
    let (first, last) = (spans().map(|it| it.from).min(), spans().map(until).max());
    let beside = |span: Interval| Some(span.from) < last && Some(until(span)) > first;
    let mut chosen = shop
        .stretches
        .iter()
        .enumerate()
        .filter(|(at, it)| places.contains(at) || span_of(it).is_some_and(beside));
    let mut rows = among(shop, as_of, &mut chosen).0;
    rows.retain(|row| places.contains(&row.stretch));
    rows
}

/// The rows of [`worked`], and the intervals that they are made of, person by person, in time.
pub fn owned(shop: &Shop, as_of: Instant) -> (Vec<Worked>, Vec<Owned>) {
    among(shop, as_of, &mut shop.stretches.iter().enumerate())
}

fn span_of(it: &Stretch) -> Option<Interval> {
    match it.time {
        Time::Span(span) => Some(span),
        Time::Amount(_) => None,
    }
}

fn among(
    shop: &Shop,
    as_of: Instant,
    chosen: &mut dyn Iterator<Item = (usize, &Stretch)>,
) -> (Vec<Worked>, Vec<Owned>) {
    let last_day = shop.zone.day(as_of);
    let mut rows: Vec<Worked> = Vec::new();
    let mut people: Map<Id, Vec<Piece>> = Map::new();
    for (place, stretch) in chosen {
        let at = rows.len();
        rows.push(row(place, stretch, last_day));
        let Some(span) = span_of(stretch) else { continue };
        let key = Key { from: span.from, entry: stretch.entry(), row: at };
        let pieces = people.entry(stretch.person).or_default();
        let piece = |(from, to)| Piece { from, to, key };
        if stretch.pauses.is_empty() {
            let whole = (span.from, span.to.unwrap_or(as_of).min(as_of));
            pieces.extend([whole].into_iter().filter(|(from, to)| from < to).map(piece));
        } else {
            pieces.extend(net(span, &stretch.pauses, as_of).into_iter().map(piece));
        }
    }
    let mut owned = Vec::with_capacity(rows.len());
    for pieces in people.into_values() {
        give(&pieces, &mut rows, &mut owned);
    }
    (rows, owned)
}

/// A moment's claim: the later start wins, then the greater id.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Key {
    from: Instant,
    entry: Id,
    /// Place of its row.
    row: usize,
}

/// A part of a stretch without a pause in it.
#[derive(Clone, Copy)]
struct Piece {
    from: Instant,
    to: Instant,
    key: Key,
}

fn row(at: usize, stretch: &Stretch, last_day: Day) -> Worked {
    let (span, seconds) = match stretch.time {
        Time::Span(_) => (true, Seconds::ZERO),
        Time::Amount(seconds) if stretch.order.day <= last_day => (false, seconds),
        Time::Amount(_) => (false, Seconds::ZERO),
    };
    Worked {
        stretch: at,
        entry: stretch.entry(),
        seconds,
        cut: false,
        person: stretch.person,
        stage: stretch.stage,
        bearer: stretch.bearer,
        side: stretch.side,
        day: stretch.order.day,
        span,
    }
}

/// A span without its pauses, up to `as_of`: in order, none empty.
pub(crate) fn net(span: Interval, pauses: &[Interval], as_of: Instant) -> Vec<(Instant, Instant)> {
    let end = span.to.unwrap_or(as_of).min(as_of);
    let mut breaks: Vec<(Instant, Instant)> =
        pauses.iter().map(|pause| (pause.from, pause.to.unwrap_or(end))).collect();
    breaks.order();
    let mut pieces = Vec::new();
    let mut from = span.from;
    for (stop, go_on) in breaks {
        if stop > from && from < end {
            pieces.push((from, stop.min(end)));
        }
        from = from.max(go_on);
    }
    if from < end {
        pieces.push((from, end));
    }
    pieces
}

/// Total length of a span without its pauses.
pub(crate) fn length(span: Interval, pauses: &[Interval], as_of: Instant) -> Seconds {
    let pieces = net(span, pauses, as_of);
    pieces.iter().fold(Seconds::ZERO, |sum, (from, to)| sum.plus(to.since(*from)))
}

/// Walks one person's pieces in time and gives each moment to the greatest claim.
fn give(pieces: &[Piece], rows: &mut [Worked], owned: &mut Vec<Owned>) {
    let apart = |two: &[Piece]| matches!(two, [one, next] if one.to <= next.from);
    if pieces.windows(2).all(apart) {
        // Nothing lies over anything else, as nearly always.
        for piece in pieces {
            take(rows, owned, piece.key.row, (piece.from, piece.to));
        }
        return;
    }
    let mut turns: Vec<(Instant, bool, Key)> = Vec::with_capacity(pieces.len().saturating_mul(2));
    for piece in pieces {
        turns.push((piece.from, true, piece.key));
        turns.push((piece.to, false, piece.key));
    }
    turns.order();
    let mut open: BTreeSet<Key> = BTreeSet::new();
    let mut since = Instant(i64::MIN);
    for (at, begins, key) in turns {
        if let Some(owner) = open.last().filter(|_| at > since) {
            for below in open.iter().rev().skip(1) {
                if let Some(row) = rows.get_mut(below.row) {
                    row.cut = true;
                }
            }
            take(rows, owned, owner.row, (since, at));
        }
        since = at;
        if begins {
            open.insert(key);
        } else {
            open.remove(&key);
        }
    }
}

/// A moment of a row's own.
fn take(rows: &mut [Worked], owned: &mut Vec<Owned>, at: usize, (from, to): (Instant, Instant)) {
    if let Some(row) = rows.get_mut(at) {
        row.seconds = row.seconds.plus(to.since(from));
        owned.push(Owned { stretch: row.stretch, from, to });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::timing::clocks::tests::{ANA, BO, Bench, clock};

    /// Person, from, to, and pauses.
    type Logged<'a> = (Id, &'a str, &'a str, &'a [(&'a str, &'a str)]);

    /// Stretches, and the minutes that each is worth.
    #[track_caller]
    fn check(stretches: &[Logged], want: &[i64]) {
        let mut bench = Bench::new();
        for (person, from, to, pauses) in stretches {
            bench.log(*person, from, to, pauses);
        }
        let shop = bench.shop();
        let got: Vec<i64> = worked(&shop, clock("23:59")).iter().map(|row| row.seconds.0 / 60).collect();
        assert_eq!(got, want);
    }

    #[test]
    fn a_stretch_is_worth_its_length_less_pauses() {
        check(&[(ANA, "09:00", "12:00", &[])], &[180]);
        check(&[(ANA, "09:00", "12:00", &[("10:00", "10:30")])], &[150]);
        check(&[(ANA, "09:00", "12:00", &[("08:00", "09:30"), ("11:45", "13:00")])], &[135]);
        check(&[(ANA, "09:00", "12:00", &[("10:00", "11:00"), ("10:30", "11:15")])], &[105]);
        check(&[(ANA, "09:00", "12:00", &[("08:00", "13:00")])], &[0]);
    }

    #[test]
    fn of_overlapping_stretches_the_later_takes_the_time() {
        // Worked example: sand 13 to 15, shoot 14:30 to 15:30 is 1.5 h and 1 h.
        check(&[(ANA, "13:00", "15:00", &[]), (ANA, "14:30", "15:30", &[])], &[90, 60]);
        check(&[(ANA, "13:00", "16:00", &[]), (ANA, "14:00", "15:00", &[])], &[120, 60]);
        check(&[(ANA, "13:00", "14:00", &[]), (ANA, "13:00", "15:00", &[])], &[0, 120]);
        check(&[(ANA, "13:00", "15:00", &[]), (ANA, "13:00", "14:00", &[])], &[60, 60]);
    }

    #[test]
    fn a_pause_of_the_later_gives_the_time_back() {
        check(&[(ANA, "13:00", "15:00", &[]), (ANA, "14:00", "15:00", &[("14:20", "14:40")])], &[80, 40]);
    }

    #[test]
    fn two_people_never_take_each_others_time() {
        check(&[(ANA, "13:00", "15:00", &[]), (BO, "14:00", "15:00", &[])], &[120, 60]);
    }

    #[test]
    fn what_lost_time_is_marked() {
        let mut bench = Bench::new();
        bench.log(ANA, "13:00", "15:00", &[]);
        bench.log(ANA, "14:30", "15:30", &[]);
        let cut: Vec<bool> = worked(&bench.shop(), clock("23:59")).iter().map(|row| row.cut).collect();
        assert_eq!(cut, [true, false]);
    }

    #[test]
    fn a_clock_runs_until_now_and_nothing_counts_after() {
        let mut bench = Bench::new();
        bench.open(ANA, "08:05");
        bench.log(BO, "09:00", "12:00", &[]);
        let got: Vec<i64> =
            worked(&bench.shop(), clock("10:00")).iter().map(|row| row.seconds.0 / 60).collect();
        assert_eq!(got, [115, 60]);
    }

    proptest::proptest! {
        #[test]
        fn a_few_are_worth_alone_what_they_are_worth_among_all(
            drawn in proptest::collection::vec((0..2_usize, 6..20_u32, 0..3_u32, 0..60_u32), 1..12),
            wanted in proptest::collection::vec(0..12_usize, 1..4),
        ) {
            let mut bench = Bench::new();
            for (who, hour, long, minute) in drawn {
                let (from, to) = (format!("{hour:02}:{minute:02}"), format!("{:02}:{:02}", hour + long, 59));
                let pause = format!("{hour:02}:59");
                bench.log([ANA, BO][who], &from, &to, &[(&*from, &*pause)][..usize::from(minute % 3 == 0)]);
            }
            let shop = bench.shop();
            let all = worked(&shop, clock("23:59"));
            let want: Vec<Worked> = all.into_iter().filter(|row| wanted.contains(&row.stretch)).collect();
            proptest::prop_assert_eq!(worked_at(&shop, clock("23:59"), &wanted), want);
        }
    }
}
