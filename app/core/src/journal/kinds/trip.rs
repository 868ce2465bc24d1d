//! A drive, shared among what it was for.

use super::Bearer;
use crate::{journal::On, measure::Dec};
use serde::{Deserialize, Serialize};

/// So many parts of a trip for one bearer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Share {
    /// What bears them.
    pub bearer: Bearer,
    /// Parts of the whole, 1 or more.
    pub parts: u32,
}

/// Kilometres there and back at the shop's rate, and what the way itself cost.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Trip {
    /// The day.
    pub on: On,
    /// Kilometres, there and back.
    pub km: Dec,
    /// Tolls, parking, ferry: money.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fee: Option<Dec>,
    /// Who bears it.
    pub shares: Vec<Share>,
}

impl Trip {
    /// Who bears how many parts: each bearer once, in the order in which they were first named. A trip that names
    /// none is borne by the shop.
    pub fn parts(&self) -> Vec<Share> {
        let mut parts: Vec<Share> = Vec::with_capacity(self.shares.len());
        for share in &self.shares {
            match parts.iter_mut().find(|it| it.bearer == share.bearer) {
                Some(it) => it.parts = it.parts.saturating_add(share.parts),
                None => parts.push(share.clone()),
            }
        }
        if parts.is_empty() {
            parts.push(Share { bearer: Bearer::Shop, parts: 1 });
        }
        parts
    }

    /// How many parts there are in all.
    pub fn all_parts(&self) -> u64 {
        self.parts().iter().fold(0, |sum, share| sum.saturating_add(u64::from(share.parts)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{journal::Id, measure::Day};

    #[track_caller]
    fn check(shares: &[(Bearer, u32)], want: &[(Bearer, u32)]) {
        let read = |of: &[(Bearer, u32)]| -> Vec<Share> {
            of.iter().map(|(bearer, parts)| Share { bearer: *bearer, parts: *parts }).collect()
        };
        let on = On::Day(Day::of(2026, 11, 20).unwrap());
        let trip = Trip { on, km: Dec::default(), fee: None, shares: read(shares) };
        assert_eq!(trip.parts(), read(want));
    }

    #[test]
    fn a_bearer_that_is_named_twice_has_the_parts_of_both() {
        let (build, lot) = (Bearer::Build(Id::of([1; 16])), Bearer::Lot(Id::of([2; 16])));
        check(&[(lot, 1), (build, 2), (lot, 3)], &[(lot, 4), (build, 2)]);
    }

    #[test]
    fn a_trip_that_names_nobody_is_the_shops() {
        check(&[], &[(Bearer::Shop, 1)]);
    }
}
