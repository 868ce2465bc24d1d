//! Days counted off before or after a day, of those on which somebody works.

use crate::{
    journal::{Id, Shop, kinds::DaysOf},
    measure::{Day, Weekday},
};

/// Nobody is away for longer: further on, no day is found.
const MOST_DAYS: u32 = 4_000;

/// Which days count.
#[derive(Clone, Copy, Debug)]
pub(super) struct Counted<'a> {
    pub shop: &'a Shop,
    pub of: DaysOf,
    /// Whose days, where theirs are meant; nobody known: Monday to Friday.
    pub whose: Option<Id>,
}

impl Counted<'_> {
    fn works_on(self, day: Day) -> bool {
        let theirs = self.whose.and_then(|id| self.shop.outsiders.get(&id));
        match (self.of, theirs) {
            (DaysOf::Calendar, _) => true,
            (DaysOf::Theirs, Some(outsider)) => outsider.works_on(day),
            (DaysOf::Working | DaysOf::Theirs, _) => {
                !matches!(day.weekday(), Weekday::Saturday | Weekday::Sunday)
            }
        }
    }

    /// So many of them before a day, or after it. None: there are not as many.
    /// Worked example: three working days before Monday 14 December 2026 is Wednesday the 9th.
    pub fn from(self, day: Day, days: u32, later: bool) -> Option<Day> {
        let (mut at, mut left) = (day, days);
        for _ in 0..MOST_DAYS {
            if left == 0 {
                return Some(at);
            }
            at = if later { at.succ() } else { at.pred() };
            if self.works_on(at) {
                left = left.saturating_sub(1);
            }
        }
        (left == 0).then_some(at)
    }
}
