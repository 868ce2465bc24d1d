//! How long the steps of a plan take: what is planned with, and what a forecast draws from.
//!
//! Planned is the mean less what is logged (`timing::steps`). A forecast draws from the split log-normal through the three
//! values, takes off what is logged by each, and leaves a twentieth of the mean at least. Where the maker says what is
//! left, that is the middle, with the spread of the three values. Filming adds minutes to both.
//! Source: our own rule, DEVELOPERS.md § House. Not here: the draws (`chance`).
#![allow(
    clippy::float_arithmetic,
    reason = "logarithms of hours to draw from; a draw is rounded to whole seconds"
)]

use super::asking::{Asking, Trial};
use crate::{
    journal::{Id, kinds::Role, shop::Step},
    measure::{InOrder, Quantity, Seconds, fixed},
    timing::steps::{self, Planned},
};

/// What one person's work on a step comes to.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Hours {
    /// Planned with.
    pub left: Seconds,
    /// One time in ten it is slower: what is left then.
    pub slow: Seconds,
    /// Logarithm of the usual, in seconds.
    pub log_usual: f64,
    /// Spread of the logarithm below and above the usual.
    pub below: f64,
    pub above: f64,
    /// Comes off a draw.
    pub logged: i64,
    /// Stays at the least.
    pub least: i64,
    /// Added to each draw.
    pub adds: i64,
    /// A draw is taken so many thousandths.
    pub scale: i64,
}

/// One time in ten a draw is further out than so many deviations.
pub(crate) const NINE_IN_TEN: f64 = 1.281_551_565_544_600_4;

/// Quick is longer than usual, or usual longer than slow.
pub(crate) fn out_of_order(step: &Step) -> bool {
    let said: Vec<Quantity> = step.hours.iter().flatten().copied().collect();
    !said.is_sorted()
}

/// The hours of a step.
pub(crate) fn of(asking: &Asking, trials: &[Trial], id: Id, step: &Step) -> Hours {
    let planned = steps::planned_one(step, logged(asking, id));
    let filming = asking.filming.iter().filter(|it| it.step == id);
    let leave = trials.iter().any(|it| matches!(it, Trial::LeaveShots { build } if *build == step.build()));
    let adds = filming.fold(0_i64, |sum, it| {
        let nice = if leave { it.nice.0 } else { 0 };
        sum.saturating_add(it.adds.0.saturating_sub(nice).max(0))
    });
    let edits = asking.shop.stages.get(&step.body.stage).is_some_and(|it| it.role == Some(Role::Edit));
    let shorter = trials.iter().find_map(|it| {
        let Trial::Shorter { build, thousandths } = it else { return None };
        (edits && *build == step.build()).then(|| i64::from(*thousandths))
    });
    read(step, &planned, adds, shorter.unwrap_or(1000))
}

fn read(step: &Step, planned: &Planned, adds: i64, scale: i64) -> Hours {
    let people = if step.body.any { 1 } else { i64::try_from(step.body.who.len().max(1)).unwrap_or(1) };
    let mut said: Vec<Quantity> = step.hours.iter().flatten().copied().collect();
    said.order();
    let mean = steps::mean(step.hours);
    let left = step.left.map(|it| seconds(it).0);
    let usual = step.hours.get(1).copied().flatten().map(seconds).or(mean).map(|it| it.0);
    let (low, high) = (said.first().map(|it| seconds(*it).0), said.last().map(|it| seconds(*it).0));
    let usual = usual.or(left).unwrap_or(0).clamp(low.unwrap_or(0), high.unwrap_or(i64::MAX).max(0));
    let log = |seconds: i64| libm::log(whole(seconds.max(60)));
    let (low, high) = (low.unwrap_or(usual), high.unwrap_or(usual));
    let spread = |one: i64, other: i64| ((log(other) - log(one)) / NINE_IN_TEN).max(0.0);
    let logged = planned.logged.0.checked_div(people).unwrap_or(0);
    let least = mean.map_or(0, |it| part(it.0, 1, 20));
    let scaled = |it: i64| part(it, scale, 1000).saturating_add(adds);
    let slow = left.unwrap_or_else(|| high.saturating_sub(logged).max(least));
    Hours {
        left: Seconds(scaled(planned.left.0)),
        slow: Seconds(scaled(slow)),
        log_usual: log(left.unwrap_or(usual)),
        below: spread(low, usual),
        above: spread(usual, high),
        logged: if left.is_some() { 0 } else { logged },
        least: if left.is_some() { 0 } else { least },
        adds,
        scale,
    }
}

fn logged(asking: &Asking, id: Id) -> Seconds {
    let of_step = asking
        .worked
        .iter()
        .filter(|row| asking.shop.stretches.get(row.stretch).is_some_and(|it| it.step == Some(id)));
    of_step.fold(Seconds::ZERO, |sum, row| sum.plus(row.seconds))
}

fn seconds(hours: Quantity) -> Seconds {
    let whole = fixed::mul_div(hours.micros(), 3600, fixed::SCALE).unwrap_or(0);
    Seconds(i64::try_from(whole).unwrap_or(0).max(0))
}

fn part(of: i64, share: i64, whole: i64) -> i64 {
    let part = fixed::mul_div(i128::from(of), i128::from(share), i128::from(whole)).unwrap_or(0);
    i64::try_from(part).unwrap_or(0)
}

/// Whole seconds as a float; a hundred years of them are exact.
pub(crate) fn whole(seconds: i64) -> f64 {
    f64::from(u32::try_from(seconds.max(0)).unwrap_or(u32::MAX))
}
