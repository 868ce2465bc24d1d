//! A blade is fitted: the one that was on that tool comes off on that day.
//!
//! Runs of that day belong to the new one, and what is left in the old one is a loss of the shop.
//! Source: our own rule, DEVELOPERS.md § Figures.

use super::{Body, Change, Id, Shop, kinds};
use crate::measure::Day;

/// Changes that take off what is on a tool, from a day on. `but`: the blade that is being fitted.
pub fn take_off(journal: &super::Journal, shop: &Shop, tool: Id, day: Day, but: Option<Id>) -> Vec<Change> {
    let on = shop.blades.iter().filter(|it| it.tool == tool && it.order.day <= day);
    let on = on.filter(|it| it.off.is_none() && Some(it.order.entry) != but);
    let changes = on.filter_map(|it| {
        let Body::Blade(body) = journal.body(it.order.entry)? else { return None };
        Some(Change::write(it.order.entry, kinds::Blade { off: Some(day), ..body.clone() }))
    });
    changes.collect()
}

impl Shop {
    /// The blade that is on a tool on a day: the one fitted last that isn't off.
    pub fn blade_on(&self, tool: Id, day: Day) -> Option<&super::shop::Blade> {
        let fitted = self.blades.iter().rev().filter(|it| it.tool == tool && it.order.day <= day);
        fitted.into_iter().find(|it| it.off.is_none_or(|off| day < off))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    #[test]
    fn a_new_blade_takes_the_old_one_off() {
        let mut it = fixture(
            "
            tool planer price 780
            blade knives of planer cost 64 life 40 on 2026-02-06 as old
            blade knives of planer cost 64 life 40 on 2026-03-01 as new
            ",
        );
        let (planer, day) = (it.id("planer"), Day::parse("2026-03-01").unwrap());
        let changes = take_off(&it.journal, &it.shop(), planer, day, Some(it.id("new")));
        assert_eq!(changes.iter().map(|it| it.entry).collect::<Vec<_>>(), [it.id("old")]);
        changes.into_iter().for_each(|change| it.write(change));
        let shop = it.shop();
        assert_eq!(shop.blades[0].off, Some(day));
        assert_eq!(shop.blade_on(planer, day).map(|it| it.order.entry), Some(it.id("new")));
        assert_eq!(shop.blade_on(planer, day.pred()).map(|it| it.order.entry), Some(it.id("old")));
        assert_eq!(take_off(&it.journal, &shop, planer, day, Some(it.id("new"))), []);
    }
}
