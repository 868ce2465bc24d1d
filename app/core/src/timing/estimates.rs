//! What a stage is likely to take, learned from earlier builds: usually, and one time in ten less or more.
//!
//! Of each build that has finished the stage (`finished`): r = hours ÷ units, its units the items of the build, or one for work on
//! the film, which does not grow with the batch. The middle is the geometric mean of the r; the ends are the middle
//! × exp(∓ t · s · √(1 + 1/n)), t the value of Student's distribution with n − 1 degrees that is passed one time in
//! ten, s the spread of the logarithms. Of one build or two nothing is known of the spread: s is taken as 0.4 and t as
//! the normal's 1.2816 (common practice), and that is said.
//! Worked example: 12, 20, 21 h for 4, 5, 7 units; six units take 19.81 h, from 13.80 to 28.44.
//! Source of the interval: the prediction interval of a normal sample, as in any handbook of statistics.
//!
//! Floating point is allowed here: what comes out is rounded to the quarter of an hour before anyone plans by it.
#![allow(
    clippy::float_arithmetic,
    reason = "a spread of logarithms; the result is rounded to quarters of an hour"
)]

use super::{Worked, finished::Finished, learning::T_NINE_IN_TEN};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Side},
    },
    measure::{Dec, Instant, Map, Quantity, Seconds, fixed},
};

/// Three values of hours, and how they are known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Estimate {
    /// One time in ten it is quicker; usually; one time in ten it is slower. Hours of one person.
    pub hours: [f64; 3],
    /// Of how many builds.
    pub builds: u32,
    /// The spread is their own; else it is taken from common practice.
    pub own_spread: bool,
}

impl Estimate {
    /// Quarters of an hour, one at least.
    pub fn quarters(&self) -> [u32; 3] {
        self.hours.map(|hours| {
            let quarters = libm::round(hours * 4.0);
            if !(1.0..=1e6).contains(&quarters) {
                return 1;
            }
            #[allow(clippy::as_conversions, reason = "it was looked at: it fits")]
            let whole = quarters as u32;
            whole
        })
    }
}

/// Spread of the logarithms while fewer than three builds are known.
const SPREAD_TAKEN: f64 = 0.4;
/// Passed one time in ten by the normal distribution. Source: standard table, from memory.
const Z_NINE_IN_TEN: f64 = 1.281_6;

/// One time in ten quicker and slower, where only the usual is said: the spread that is taken of what nobody has counted
/// yet (common practice). To the quarter of an hour, where that moves away from the usual: 4 h are 2.5 to 6.75.
pub fn ends_of(usual: Dec) -> [Dec; 2] {
    let micros = usual.quantity().map_or(0, Quantity::micros);
    let end = |thousandths: i128| {
        let quarters = fixed::mul_div(micros.saturating_mul(4), thousandths, SCALE_1000).unwrap_or(0);
        let hours = fixed::mul_div(quarters, fixed::SCALE, 4).unwrap_or(0);
        Dec::from(Quantity::from_micros(hours))
    };
    let [quick, slow] = [end(QUICK), end(SLOW)];
    [quick.min(usual).max(Dec::default()), slow.max(usual)]
}

/// exp(∓ 1.2816 × 0.4), in thousandths.
const QUICK: i128 = 599;
const SLOW: i128 = 1_670;
/// A thousandth of a millionth.
const SCALE_1000: i128 = fixed::SCALE.saturating_mul(1_000);

/// Of hours a unit.
pub fn estimate(rates: &[f64], units: f64) -> Option<Estimate> {
    let logs: Vec<f64> = rates.iter().copied().filter(|it| *it > 0.0).map(libm::log).collect();
    let builds = u32::try_from(logs.len()).ok().filter(|it| *it > 0)?;
    let n = f64::from(builds);
    let middle = logs.iter().sum::<f64>() / n;
    let own_spread = builds >= 3;
    let half = if own_spread {
        let squares: f64 = logs.iter().map(|it| (it - middle) * (it - middle)).sum();
        let degrees = usize::try_from(builds).unwrap_or(usize::MAX).saturating_sub(2);
        T_NINE_IN_TEN.get(degrees).copied().unwrap_or(Z_NINE_IN_TEN) * libm::sqrt(squares / (n - 1.0))
    } else {
        Z_NINE_IN_TEN * SPREAD_TAKEN
    };
    let half = half * libm::sqrt(1.0 + 1.0 / n);
    Some(Estimate {
        hours: [-half, 0.0, half].map(|off| libm::exp(middle + off) * units),
        builds,
        own_spread,
    })
}

/// Stages by what each build gave them, in the order in which they were first worked at.
///
/// `of`: the builds to learn from. One-off work and hours of a stage that is not finished are left out.
pub fn learned(
    shop: &Shop,
    worked: &[Worked],
    of: &[Id],
    (to, as_of): (Id, Instant),
) -> Vec<(Id, Option<Estimate>)> {
    let mut stages: Vec<Id> = Vec::new();
    let mut sums: Map<(Id, Id), Seconds> = Map::new();
    for row in worked {
        let Bearer::Build(build) = row.bearer else { continue };
        let one_off = shop.stretches.get(row.stretch).is_none_or(|it| it.one_off);
        if one_off || !of.contains(&build) {
            continue;
        }
        if !stages.contains(&row.stage) {
            stages.push(row.stage);
        }
        let sum = sums.entry((row.stage, build)).or_default();
        *sum = sum.plus(row.seconds);
    }
    let finished = Finished::of(shop, as_of);
    let one = |stage: Id| {
        let rates: Vec<f64> = of
            .iter()
            .filter(|build| finished.says(**build, stage))
            .filter_map(|build| Some(hours(*sums.get(&(stage, *build))?)? / units(shop, *build, stage)))
            .collect();
        (stage, estimate(&rates, units(shop, to, stage)))
    };
    stages.into_iter().map(one).collect()
}

/// Items of a build; one for its film.
fn units(shop: &Shop, build: Id, stage: Id) -> f64 {
    let film = shop.stages.get(&stage).is_some_and(|it| it.side == Side::Film);
    if film { 1.0 } else { f64::from(super::learning::units(shop, build).max(1)) }
}

fn hours(seconds: Seconds) -> Option<f64> {
    Some(f64::from(u32::try_from(seconds.0).ok()?) / 3600.0)
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::{fixture::fixture, timing::worked};

    fn close(one: f64, other: f64) -> bool {
        (one - other).abs() < 0.005
    }

    #[test]
    fn three_builds_give_a_middle_and_a_spread_of_their_own() {
        let it = estimate(&[12.0 / 4.0, 20.0 / 5.0, 21.0 / 7.0], 6.0).unwrap();
        let [low, middle, high] = it.hours;
        assert!(close(low, 13.80) && close(middle, 19.81) && close(high, 28.44), "{it:?}");
        assert!(it.own_spread && it.builds == 3);
        assert_eq!(it.quarters(), [55, 79, 114]);
    }

    #[test]
    fn one_build_has_the_usual_spread_and_two_a_little_less() {
        let [one, two] = [estimate(&[2.0], 3.0).unwrap(), estimate(&[2.0, 2.0], 3.0).unwrap()];
        assert!(close(one.hours[1], 6.0) && close(two.hours[1], 6.0));
        // exp(1.2816 × 0.4 × √2) and exp(1.2816 × 0.4 × √1.5).
        assert!(close(one.hours[2], 6.0 * 2.065) && close(two.hours[2], 6.0 * 1.874), "{one:?} {two:?}");
        assert!(!one.own_spread && estimate(&[], 3.0).is_none() && estimate(&[0.0], 3.0).is_none());
    }

    #[test]
    fn the_usual_alone_has_ends_to_the_quarter_of_an_hour() {
        let ends = |usual| ends_of(Dec::parse(usual).unwrap()).map(Dec::plain);
        assert_eq!(ends("4"), ["2.5", "6.75"].map(str::to_owned));
        // 0.15 and 0.42 h.
        assert_eq!(ends("0.25"), ["0.25", "0.5"].map(str::to_owned));
        assert_eq!(ends("0.1")[1], "0.25");
    }

    #[test]
    fn hours_on_the_piece_go_by_items_and_those_on_the_film_do_not() {
        let it = fixture(
            "
            person Ana 26
            build trays items 10
            build more items 20 repeat trays
            stretch Ana mill min 600 for trays
            stretch Ana edit min 600 for trays side film
            stretch Ana cut min 60 for trays one-off
            close trays
            stretch Ana mill min 120 for more
            ",
        );
        let shop = it.shop();
        let found = learned(
            &shop,
            &worked(&shop, it.end()),
            &[it.id("trays"), it.id("more")],
            (it.id("more"), it.end()),
        );
        let middle = |stage: &str| {
            found.iter().find(|(id, _)| *id == it.id(stage)).map(|(_, it)| it.unwrap().hours[1])
        };
        assert!(close(middle("mill").unwrap(), 20.0) && close(middle("edit").unwrap(), 10.0));
        assert_eq!(middle("cut"), None);
        // Two hours into the second one say nothing yet: one build.
        assert!(found.iter().all(|(_, it)| it.is_none_or(|it| it.builds == 1)));
    }
}
