//! By which formula stock of items is drawn: a choice of the shop, from a day on, the same for all items.
//!
//! What is on the shelf at the start of that day goes on at what it stood at: under first-in first-out as the first in
//! line, at the average that it had; under the average all of it together. Nothing that was drawn before that day
//! moves, and the shelf is worth the same on both sides of the midnight. Worked out anew from the beginning, figures
//! that were told and sold by would move; a choice without a day does just that, for builds that are still open.
//! Closed builds keep what they cost either way (`frozen`).
//! Source: IAS 2 paragraph 25 (both formulas, one for like items); the day of change: our own rule,
//! DEVELOPERS.md § Why.

use crate::{
    journal::{Shop, kinds::SettingKey},
    measure::Day,
};

/// How stock of items is drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Formula {
    /// Every draw takes its share of all that is there.
    #[default]
    MovingAverage,
    /// What came first goes first.
    FirstIn,
}

impl Formula {
    /// Both.
    pub const ALL: [Formula; 2] = [Formula::MovingAverage, Formula::FirstIn];

    /// As it is stored.
    pub fn code(self) -> &'static str {
        match self {
            Formula::MovingAverage => "moving_average",
            Formula::FirstIn => "first_in_first_out",
        }
    }

    /// As it was stored; an odd one counts as not chosen.
    pub fn from_code(code: &str) -> Formula {
        Formula::ALL.into_iter().find(|formula| formula.code() == code).unwrap_or_default()
    }

    /// In force on a day.
    pub fn on(shop: &Shop, day: Day) -> Formula {
        shop.settings.on(SettingKey::StockFormula, day).map(Formula::from_code).unwrap_or_default()
    }
}

/// Which formula from which day on, up to `last`; none: from the beginning.
pub(crate) fn changes(shop: &Shop, last: Day) -> Vec<(Option<Day>, Formula)> {
    let all = shop.settings.all(SettingKey::StockFormula);
    let begun = all.filter(|(from, _)| from.is_none_or(|from| from <= last));
    begun.map(|(from, code)| (from, Formula::from_code(code))).collect()
}
