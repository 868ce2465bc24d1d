//! What is left of planned work, step by step.
//!
//! A step takes 0.3 × quick + 0.4 × usual + 0.3 × slow hours of each person who is at it (Swanson's rule for the mean of a
//! skewed estimate whose ends are passed one time in ten; common practice). What was logged on it comes off, and at
//! least 5 % stays until it is done, unless the maker says what is left. One value alone stands for all three.
//! Worked example: 4, 6, 9 h are 6.3 h; with 1 h 55 logged 4 h 23 are left.

use super::Worked;
use crate::{
    journal::{Id, Shop, shop::Step},
    measure::{Map, Quantity, Seconds, fixed},
};

/// Tenths of quick, usual, slow in the mean.
const WEIGHTS: [i128; 3] = [3, 4, 3];
/// A twentieth stays until it is done.
const STAYS: i128 = 20;

/// A step by the hours of one person who is at it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Planned {
    /// What it takes; none: nobody has said.
    pub mean: Option<Seconds>,
    /// Logged on it, by everybody.
    pub logged: Seconds,
    /// Still to do.
    pub left: Seconds,
}

/// Every step, with what was worked on it up to the moment of `worked`.
pub fn planned(shop: &Shop, worked: &[Worked]) -> Map<Id, Planned> {
    let mut logged: Map<Id, Seconds> = Map::new();
    for row in worked {
        if let Some(step) = shop.stretches.get(row.stretch).and_then(|it| it.step) {
            let sum = logged.entry(step).or_default();
            *sum = sum.plus(row.seconds);
        }
    }
    let of = |(id, step): (&Id, &Step)| {
        let logged = logged.get(id).copied().unwrap_or_default();
        (*id, planned_one(step, logged))
    };
    shop.steps.iter().map(of).collect()
}

/// What is left of all steps of a build, by the hours of one person who is at each.
pub fn left_in_all(shop: &Shop, planned: &Map<Id, Planned>, build: Id) -> Seconds {
    let of_build = shop.steps.iter().filter(|(_, it)| it.build() == build);
    of_build.filter_map(|(id, _)| planned.get(id)).fold(Seconds::ZERO, |sum, it| sum.plus(it.left))
}

/// One step, with what was logged on it by everybody.
pub(crate) fn planned_one(step: &Step, logged: Seconds) -> Planned {
    let mean = mean(step.hours);
    let people = if step.body.any { 1 } else { i64::try_from(step.body.who.len().max(1)).unwrap_or(1) };
    let left = match (step.done(), step.left) {
        (Some(_), _) => Seconds::ZERO,
        (None, Some(left)) => seconds(left),
        (None, None) => mean.map_or(Seconds::ZERO, |mean| {
            // What several have logged together is shared among them.
            let each = Seconds(logged.0.checked_div(people).unwrap_or(logged.0));
            let least = fixed::mul_div(i128::from(mean.0), 1, STAYS).unwrap_or(0);
            Seconds(mean.0.saturating_sub(each.0)).max(Seconds(i64::try_from(least).unwrap_or(0)))
        }),
    };
    Planned { mean, logged, left }
}

/// The mean of three values, to the second; one alone stands for those that are missing beside it.
pub fn mean(hours: [Option<Quantity>; 3]) -> Option<Seconds> {
    let [quick, usual, slow] = hours;
    let middle = usual.or(match (quick, slow) {
        (Some(quick), Some(slow)) => {
            fixed::mul_div(quick.micros().saturating_add(slow.micros()), 1, 2).map(Quantity::from_micros)
        }
        (one, other) => one.or(other),
    })?;
    let values = [quick.unwrap_or(middle), middle, slow.unwrap_or(middle)];
    let sum = values
        .iter()
        .zip(WEIGHTS)
        .fold(0_i128, |sum, (value, weight)| sum.saturating_add(value.micros().saturating_mul(weight)));
    Some(seconds(Quantity::from_micros(fixed::mul_div(sum, 1, 10)?)))
}

fn seconds(hours: Quantity) -> Seconds {
    let whole = fixed::mul_div(hours.micros(), 3600, fixed::SCALE).unwrap_or(0);
    Seconds(i64::try_from(whole).unwrap_or(0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{fixture::fixture, timing::worked};

    fn left(lines: &str, step: &str) -> (Option<String>, String) {
        let it = fixture(&format!("person Ana 26\nperson Bo 22\nbuild trays\n{lines}"));
        let shop = it.shop();
        let planned = planned(&shop, &worked(&shop, it.end()))[&it.id(step)];
        let said = |it: Seconds| format!("{}:{:02}", it.0 / 3600, it.0 % 3600 / 60);
        (planned.mean.map(said), said(planned.left))
    }

    #[test]
    fn what_was_logged_comes_off_and_a_twentieth_stays_until_it_is_done() {
        let step = "step sand-24 trays sand who Ana hours 4,6,9";
        assert_eq!(left(step, "sand-24"), (Some("6:18".into()), "6:18".into()));
        let logged = |min| format!("{step}\nstretch Ana sand min {min} for trays step sand-24");
        assert_eq!(left(&logged(115), "sand-24").1, "4:23");
        assert_eq!(left(&logged(600), "sand-24").1, "0:18");
        let done = "step sand-24 trays sand who Ana hours 4,6,9 done 2026-02-01";
        assert_eq!(left(done, "sand-24").1, "0:00");
        let known = "step sand-24 trays sand who Ana hours 4,6,9 left 2.5";
        assert_eq!(left(known, "sand-24").1, "2:30");
    }

    #[test]
    fn hours_of_two_who_are_both_needed_come_off_for_each() {
        let step = "step lift trays assemble who Ana,Bo hours 2,2,2";
        let both =
            "stretch Ana assemble min 60 for trays step lift\nstretch Bo assemble min 60 for trays step lift";
        assert_eq!(left(&format!("{step}\n{both}"), "lift").1, "1:00");
    }

    #[test]
    fn one_value_stands_for_all_and_none_for_nothing() {
        assert_eq!(
            left("step cut-it trays cut who Ana hours ,3,", "cut-it"),
            (Some("3:00".into()), "3:00".into())
        );
        assert_eq!(left("step cut-it trays cut who Ana", "cut-it"), (None, "0:00".into()));
    }
}
