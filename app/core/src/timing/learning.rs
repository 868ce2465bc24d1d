//! Learning over the runs of a design: each next item takes a little less time than the one before.
//!
//! The unit model of learning (Crawford): item number x takes a·x^b hours, so a batch takes a·Σx^b over its own numbers in
//! the count of all that were begun, spoiled ones in it. 2^b is the rate: 0.86 says that doubling the count takes an item
//! to 86 % of its time. Two batches are solved exactly and have no range; three or more are fitted by least squares on
//! the logarithms of their totals, and have one. Compared are hours that repeat: of stages that every batch has worked
//! at and finished (`finished`), on the piece, one-off work apart.
//! Worked example: 10 for 40 h and 12 for 36 h: b −0.2179, rate 0.8598, a 5.493, the next 10 take 26.72 h.
//! Source: the unit learning curve of J. R. Crawford (1944), as in handbooks of cost estimating.
//!
//! Floating point is allowed here: what comes out is rounded to the minute before it becomes money.
#![allow(clippy::float_arithmetic, reason = "a curve is fitted; the result is rounded to whole minutes")]

use super::{Worked, finished::Finished};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Side},
    },
    measure::{InOrder, Instant, Map, Seconds},
};

/// One batch of a run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Batch {
    /// The build.
    pub build: Id,
    /// Items worked, spoiled ones in it; of a batch of which nothing was made yet, as many as are planned.
    pub units: u32,
    /// Hours that repeat.
    pub hours: Seconds,
}

/// What two or more batches have taught.
#[derive(Clone, Debug, PartialEq)]
pub struct Learned {
    /// Stages that all of them have finished.
    pub stages: Vec<Id>,
    /// In their order.
    pub batches: Vec<Batch>,
    /// The exponent: below zero where time was saved.
    pub b: f64,
    /// Hours of the first item.
    pub a: f64,
    /// Spread of the logarithms about the curve, times the factor for one time in ten; none with two batches.
    pub spread: Option<f64>,
}

impl Learned {
    /// Time of an item after the count has doubled, as a share: 2^b.
    pub fn rate(&self) -> f64 {
        libm::pow(2.0, self.b)
    }

    /// The same in tenths of a hundredth, as it is shown: 0.8778 is 878.
    pub fn rate_in_thousandths(&self) -> u32 {
        let rounded = libm::round(self.rate() * 1000.0);
        if !(0.0..=1e6).contains(&rounded) {
            return 0;
        }
        #[allow(clippy::as_conversions, reason = "it was looked at: it fits")]
        let rate = rounded as u32;
        rate
    }

    /// Hours of the next `units`, to the minute.
    pub fn next(&self, units: u32) -> Seconds {
        minutes(self.next_hours(units))
    }

    /// The same, one time in ten quicker and one time in ten slower; none with two batches.
    pub fn next_range(&self, units: u32) -> Option<(Seconds, Seconds)> {
        let (middle, spread) = (self.next_hours(units), self.spread?);
        Some((minutes(middle * libm::exp(-spread)), minutes(middle * libm::exp(spread))))
    }

    /// Hours of the next `units`, exactly as the curve says.
    pub fn next_hours(&self, units: u32) -> f64 {
        let done = self.batches.iter().fold(0_u32, |sum, it| sum.saturating_add(it.units));
        self.a * (sum_to(done.saturating_add(units), self.b) - sum_to(done, self.b))
    }
}

/// What the builds of one design have taught, in their order. None: fewer than two batches have stages in common.
pub fn learned(shop: &Shop, worked: &[Worked], builds: &[Id], as_of: Instant) -> Option<Learned> {
    let finished = Finished::of(shop, as_of);
    let repeating: Vec<Map<Id, Seconds>> =
        builds.iter().map(|build| repeating(shop, worked, *build, &finished)).collect();
    let begun: Vec<(&Id, &Map<Id, Seconds>)> =
        builds.iter().zip(&repeating).filter(|(_, stages)| !stages.is_empty()).collect();
    let (_, first) = begun.first()?;
    let in_all = |stage: &&Id| begun.iter().all(|(_, stages)| stages.contains_key(stage));
    let mut stages: Vec<Id> = first.keys().filter(in_all).copied().collect();
    stages.order_by_key(|id| shop.stages.get(id).map(|stage| (stage.place, stage.name.clone())));
    let batch = |(build, hours): &(&Id, &Map<Id, Seconds>)| Batch {
        build: **build,
        units: units(shop, **build),
        hours: stages.iter().filter_map(|id| hours.get(id)).fold(Seconds::ZERO, |sum, it| sum.plus(*it)),
    };
    let batches: Vec<Batch> = begun.iter().map(batch).collect();
    let said = |it: &Batch| it.units > 0 && it.hours > Seconds::ZERO;
    if batches.len() < 2 || !batches.iter().all(said) {
        return None;
    }
    let (a, b, spread) = fitted(&batches)?;
    Some(Learned { stages, batches, b, a, spread })
}

/// Repeating hours of a build at stages that it is done with.
fn repeating(shop: &Shop, worked: &[Worked], build: Id, finished: &Finished) -> Map<Id, Seconds> {
    let mut hours: Map<Id, Seconds> = Map::new();
    for row in worked {
        let repeats = row.bearer == Bearer::Build(build)
            && row.side == Side::Piece
            && shop.stretches.get(row.stretch).is_some_and(|it| !it.one_off);
        if repeats {
            let sum = hours.entry(row.stage).or_default();
            *sum = sum.plus(row.seconds);
        }
    }
    hours.into_iter().filter(|(stage, _)| finished.says(build, *stage)).collect()
}

/// Items that were worked, spoiled ones in it.
pub(super) fn made(shop: &Shop, build: Id) -> u32 {
    let of_build = shop.made.iter().filter(|it| it.build == build);
    of_build.fold(0_u32, |sum, it| {
        sum.saturating_add(it.good).saturating_add(u32::try_from(it.spoiled.len()).unwrap_or(0))
    })
}

/// Items that were worked, spoiled ones in it; nothing made yet: as many as are planned.
pub(super) fn units(shop: &Shop, build: Id) -> u32 {
    let planned = shop.builds.get(&build).map_or(0, |it| it.items);
    match made(shop, build) {
        0 => planned,
        made => made,
    }
}

/// a, b and the spread.
fn fitted(batches: &[Batch]) -> Option<(f64, f64, Option<f64>)> {
    let mut begun = 0_u32;
    let mut points: Vec<(u32, u32, f64)> = Vec::new();
    for it in batches {
        let until = begun.saturating_add(it.units);
        points.push((begun, until, libm::log(hours(it.hours)?)));
        begun = until;
    }
    let b = least(|b| residuals(&points, b).1);
    let (a, left) = residuals(&points, b);
    let degrees = points.len().checked_sub(2)?;
    let spread = T_NINE_IN_TEN.get(degrees.checked_sub(1).unwrap_or(usize::MAX)).map(|t| {
        let count = f64::from(u32::try_from(points.len()).unwrap_or(u32::MAX));
        let variance = left / f64::from(u32::try_from(degrees).unwrap_or(1));
        t * libm::sqrt(variance) * libm::sqrt(1.0 + 1.0 / count)
    });
    Some((libm::exp(a), b, spread))
}

/// The best ln a for an exponent, and the squares that are left.
fn residuals(points: &[(u32, u32, f64)], b: f64) -> (f64, f64) {
    let off: Vec<f64> = points
        .iter()
        .map(|(from, to, ln_hours)| ln_hours - libm::log(sum_to(*to, b) - sum_to(*from, b)))
        .collect();
    let count = f64::from(u32::try_from(off.len().max(1)).unwrap_or(1));
    let mean = off.iter().sum::<f64>() / count;
    (mean, off.iter().map(|it| (it - mean) * (it - mean)).sum())
}

/// The exponent between −3 (time falls to an eighth at each doubling) and 2 at which a valley of squares is lowest, by
/// golden section.
fn least(squares: impl Fn(f64) -> f64) -> f64 {
    let golden = (libm::sqrt(5.0) - 1.0) / 2.0;
    let (mut low, mut high) = (-3.0, 2.0);
    let (mut left, mut right) = (high - golden * (high - low), low + golden * (high - low));
    let (mut at_left, mut at_right) = (squares(left), squares(right));
    for _ in 0..STEPS {
        if at_left < at_right {
            (high, right, at_right) = (right, left, at_left);
            left = high - golden * (high - low);
            at_left = squares(left);
        } else {
            (low, left, at_left) = (left, right, at_right);
            right = low + golden * (high - low);
            at_right = squares(right);
        }
    }
    (low + high) / 2.0
}

/// Five halvings short of what a double can tell apart.
const STEPS: usize = 90;

/// 1^b + 2^b + … + n^b; beyond a thousand terms the area under the curve, off by less than a millionth.
pub fn sum_to(n: u32, b: f64) -> f64 {
    let exact: f64 = (1..=n.min(TERMS)).map(|x| libm::pow(f64::from(x), b)).sum();
    if n <= TERMS {
        return exact;
    }
    let (from, to) = (f64::from(TERMS) + 0.5, f64::from(n) + 0.5);
    let raised = b + 1.0;
    let area = if libm::fabs(raised) < 1e-9 {
        libm::log(to / from)
    } else {
        (libm::pow(to, raised) - libm::pow(from, raised)) / raised
    };
    exact + area
}

const TERMS: u32 = 1_000;

/// Student's t that is passed one time in ten, by degrees of freedom from 1. Found by halving the interval in which the
/// density's integral (Simpson's rule) passes 0.9; 1 and 2 degrees have closed forms, which the test holds it against.
pub(super) const T_NINE_IN_TEN: [f64; 12] = [
    3.077684, 1.885618, 1.637744, 1.533206, 1.475884, 1.439756, 1.414924, 1.396815, 1.383029, 1.372184,
    1.363430, 1.356217,
];

fn hours(seconds: Seconds) -> Option<f64> {
    Some(f64::from(u32::try_from(seconds.0).ok()?) / 3600.0)
}

/// Whole minutes; what is no time at all, or more than can be, is none.
fn minutes(hours: f64) -> Seconds {
    let minutes = libm::round(hours * 60.0);
    if !(0.0..=1e9).contains(&minutes) {
        return Seconds::ZERO;
    }
    #[allow(clippy::as_conversions, reason = "it was looked at: it fits")]
    Seconds((minutes as i64).saturating_mul(60))
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::{fixture::fixture, timing::worked};

    fn close(one: f64, other: f64) -> bool {
        (one - other).abs() < 0.000_5 * other.abs()
    }

    fn batches(of: &[(u32, i64)]) -> Learned {
        let batch = |(units, minutes): &(u32, i64)| Batch {
            build: Id::of([0; 16]),
            units: *units,
            hours: Seconds(minutes * 60),
        };
        let batches: Vec<Batch> = of.iter().map(batch).collect();
        let (a, b, spread) = fitted(&batches).unwrap();
        Learned { stages: Vec::new(), batches, a, b, spread }
    }

    #[test]
    fn two_batches_are_solved_exactly_and_have_no_range() {
        let it = batches(&[(10, 2400), (12, 2160)]);
        assert!(close(it.b, -0.2179) && close(it.rate(), 0.8598) && close(it.a, 5.493), "{it:?}");
        assert!(close(it.next_hours(10), 26.72), "{}", it.next_hours(10));
        assert_eq!((it.next(10), it.next_range(10)), (Seconds(26 * 3600 + 43 * 60), None));
    }

    #[test]
    fn three_batches_on_a_curve_are_that_curve_and_off_it_they_have_a_range() {
        // a 4 h, rate 0.8: b = log2 0.8.
        let b = libm::log2(0.8);
        let hours = |from: u32, to: u32| 4.0 * (sum_to(to, b) - sum_to(from, b));
        let exact: Vec<(u32, i64)> = [(0, 8), (8, 20), (20, 40)]
            .iter()
            .map(|(from, to)| (to - from, (hours(*from, *to) * 60.0).round() as i64))
            .collect();
        let it = batches(&exact);
        assert!(close(it.rate(), 0.8) && it.spread.unwrap() < 0.01, "{it:?}");
        let off = batches(&[(8, 1500), (12, 1300), (20, 2400)]);
        let (low, high) = off.next_range(10).unwrap();
        assert!(low < off.next(10) && off.next(10) < high);
    }

    #[test]
    fn the_ends_of_the_table_are_those_of_closed_forms() {
        let one = libm::tan(0.4 * core::f64::consts::PI);
        let two = 0.8 / libm::sqrt(0.18);
        assert!((T_NINE_IN_TEN[0] - one).abs() < 1e-6 && (T_NINE_IN_TEN[1] - two).abs() < 1e-6);
    }

    #[test]
    fn a_long_run_is_summed_by_its_area() {
        let plain: f64 = (1..=5_000_u32).map(|x| libm::pow(f64::from(x), -0.3)).sum();
        assert!((sum_to(5_000, -0.3) / plain - 1.0).abs() < 1e-6);
    }

    #[test]
    fn only_stages_that_every_batch_has_finished_are_compared() {
        let it = fixture(
            "
            person Ana 26
            build trays items 10
            build more items 12 repeat trays
            stretch Ana mill min 2400 for trays
            stretch Ana sand min 300 for trays
            stretch Ana cut min 60 for trays one-off
            stretch Ana shoot min 90 for trays side film
            made trays 10
            stretch Ana mill min 2160 for more
            stretch Ana sand min 100 for more
            step sand-them more sand who Ana hours 4,6,9
            ",
        );
        let shop = it.shop();
        let builds = [it.id("trays"), it.id("more")];
        let found = learned(&shop, &worked(&shop, it.end()), &builds, it.end()).unwrap();
        assert_eq!(found.stages, [it.id("mill")]);
        assert_eq!(found.batches.iter().map(|it| it.units).collect::<Vec<u32>>(), [10, 12]);
        assert!(close(found.b, -0.2179));
        assert_eq!(learned(&shop, &worked(&shop, it.end()), &builds[..1], it.end()), None);
    }

    #[test]
    fn two_hours_into_a_batch_that_is_still_open_teach_nothing() {
        let said = |lines: &str| {
            let it = fixture(&format!(
                "person Ana 26
                build trays items 10
                build more items 12 repeat trays
                stretch Ana sand min 2400 for trays
                close trays
                stretch Ana sand min 120 for more
                {lines}"
            ));
            let shop = it.shop();
            let builds = [it.id("trays"), it.id("more")];
            learned(&shop, &worked(&shop, it.end()), &builds, it.end()).map(|it| it.rate_in_thousandths())
        };
        assert_eq!(said(""), None);
        assert_eq!(said("made more 6"), None);
        // Thirty-four more hours later: 12 for 36 h.
        assert_eq!(said("stretch Ana sand min 2040 for more\n made more 12"), Some(860));
    }
}
