//! How far whole builds have run from their estimates: the factor that all steps of a simulated finish share.
//!
//! Of each closed build with steps: hours worked on the steps by the mean of their estimates. The deviation of the
//! logarithms is the spread; of fewer than three builds 0.25 is taken, and said.
//! Without a shared factor twenty steps of 30 % each would come to 7 % in all, and every chance would be too sure.
//! Source: our own rule, DEVELOPERS.md § House; 0.25: common practice.
#![allow(clippy::float_arithmetic, reason = "a deviation of logarithms")]

use super::hours;
use crate::{
    journal::{Id, Shop, kinds::State},
    measure::Day,
    timing::{Worked, steps},
};

/// Until three builds are known.
const COMMON: f64 = 0.25;
/// So many builds are needed.
const ENOUGH: u32 = 3;

/// The spread of the shared factor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// Deviation of its logarithm.
    pub sigma: f64,
    /// Out of so many builds of one's own; fewer than three: common practice.
    pub builds: u32,
}

impl Spread {
    /// It is the maker's own.
    pub fn own(self) -> bool {
        self.builds >= ENOUGH
    }

    /// Of the closed builds of a shop.
    pub fn of(shop: &Shop, worked: &[Worked], today: Day) -> Spread {
        let planned = steps::planned(shop, worked);
        let closed = shop.builds.keys().filter(|id| shop.state_of(**id, today) == State::Closed);
        let off: Vec<f64> = closed
            .filter_map(|build| {
                let own = shop.steps.iter().filter(|(_, it)| it.build() == *build);
                let (mut mean, mut logged) = (0_i64, 0_i64);
                for (id, step) in own {
                    let Some(it) = planned.get(id).filter(|it| !it.logged.is_zero()) else { continue };
                    let Some(of_one) = it.mean else { continue };
                    let people = if step.body.any { 1 } else { step.body.who.len().max(1) };
                    let people = i64::try_from(people).unwrap_or(1);
                    mean = mean.saturating_add(of_one.0.saturating_mul(people));
                    logged = logged.saturating_add(it.logged.0);
                }
                let known = mean > 0 && logged > 0;
                known.then(|| libm::log(hours::whole(logged) / hours::whole(mean)))
            })
            .collect();
        Spread::of_ratios(&off)
    }

    /// Of the logarithms of worked by estimated.
    fn of_ratios(off: &[f64]) -> Spread {
        let builds = u32::try_from(off.len()).unwrap_or(u32::MAX);
        if builds < ENOUGH {
            return Spread { sigma: COMMON, builds };
        }
        let count = f64::from(builds);
        let mean = off.iter().sum::<f64>() / count;
        let squares: f64 = off.iter().map(|it| (it - mean) * (it - mean)).sum();
        Spread { sigma: libm::sqrt(squares / (count - 1.0)), builds }
    }

    /// What a forecast is told to use, whatever was.
    pub fn given(sigma: f64) -> Spread {
        Spread { sigma, builds: 0 }
    }
}

/// An id beside which a step's draws stand.
pub(crate) fn number(step: Id) -> u64 {
    step.bytes().iter().fold(0_u64, |sum, byte| sum.wrapping_mul(0x100_0000_01b3) ^ u64::from(*byte))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fewer_than_three_builds_say_nothing() {
        assert_eq!(Spread::of_ratios(&[0.1, -0.1]), Spread { sigma: 0.25, builds: 2 });
        let own = Spread::of_ratios(&[0.1, 0.0, -0.1]);
        assert!(own.own() && (own.sigma - 0.1).abs() < 1e-12);
    }
}
