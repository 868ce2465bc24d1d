//! Labour: person-hours × that person's rate on the local day of the start.
//!
//! Whole seconds × rate ÷ 3600, rounded once half-even to 10⁻⁶ per stretch. A paid person's hours are
//! money, and wages are not logged as an expense too. Source: our own rule, DEVELOPERS.md § Figures.
//! Not here: who worked how long (`timing`); which bearer (`books`).

use super::{Flag, Gap, Parts, Working, overhead::Borne, sides::Split};
use crate::{
    journal::{Id, Shop},
    measure::{Day, Money, Seconds, fixed},
    timing::Worked,
};

/// One stretch, costed.
#[derive(Clone, Copy, Debug)]
pub(crate) struct LabourRow {
    pub entry: Id,
    pub person: Id,
    pub stage: Id,
    /// The local day of its start.
    pub day: Day,
    pub seconds: Seconds,
    /// None: a gap.
    pub rate: Option<Money>,
    pub value: Option<Money>,
    pub paid: bool,
    pub cut: bool,
    pub runs: bool,
    /// The person is not there.
    pub lost: bool,
    /// How piece and film share it.
    pub split: Split,
    /// Borne by all that will be made with it.
    pub one_off: bool,
    /// Camera rolling.
    pub rolled: Seconds,
    /// What it bears of the shop's own costs.
    pub overhead: Borne,
}

impl LabourRow {
    pub(crate) fn parts(&self) -> Parts {
        Parts::of_labour(self.value.unwrap_or_default(), self.seconds, self.paid)
    }

    pub(crate) fn working(&self) -> Working {
        Working::Hours { person: self.person, seconds: self.seconds, rate: self.rate, paid: self.paid }
    }

    pub(crate) fn flags(&self) -> impl Iterator<Item = Flag> + use<> {
        let entry = self.entry;
        let cut = self.cut.then_some(Flag::Overlap { entry });
        cut.into_iter().chain(self.runs.then_some(Flag::Running { entry }))
    }

    pub(crate) fn gap(&self) -> Option<Gap> {
        match (self.rate, self.lost) {
            (Some(_), _) => None,
            (None, true) => Some(Gap::NoPerson { entry: self.entry }),
            (None, false) => Some(Gap::NoRate { person: self.person }),
        }
    }
}

/// The cost of a stretch.
pub(crate) fn row(shop: &Shop, worked: &Worked) -> LabourRow {
    let person = shop.people.get(&worked.person);
    let rate = person.and_then(|person| person.rate_on(worked.day));
    LabourRow {
        entry: worked.entry,
        person: worked.person,
        stage: worked.stage,
        day: worked.day,
        seconds: worked.seconds,
        rate,
        value: rate.and_then(|rate| value(worked.seconds, rate)),
        paid: person.is_some_and(|person| person.paid),
        cut: worked.cut,
        runs: shop.stretches.get(worked.stretch).is_some_and(|stretch| stretch.runs()),
        lost: person.is_none(),
        // Known once all hours of its build are.
        split: Split::PIECE,
        one_off: shop.stretches.get(worked.stretch).is_some_and(|stretch| stretch.one_off),
        rolled: Seconds::ZERO,
        overhead: Borne::default(),
    }
}

/// `seconds × an hour ÷ 3600`, rounded once.
pub(crate) fn value(seconds: Seconds, an_hour: Money) -> Option<Money> {
    fixed::mul_div(i128::from(seconds.0), an_hour.micros(), 3600).map(Money::from_micros)
}
