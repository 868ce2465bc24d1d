//! Work under way, for the books: what lay in builds that were open at the end of a day, money and paid labour only.
//!
//! Of a build: what it had used up, by the items that had not left it: `used up × (items − handed over) ÷ items`, its items
//! those planned or, where more were worked, those. Close the books as of that day. Worked example: 120.00 used up for a
//! batch of 4, one handed over: 90.00. Source: our own rule, beside what lies on the shelf (`held`).

use super::{Books, Part, Rule, Statement, Value, Working, batch::Items};
use crate::{
    journal::{Id, Shop, kinds::State},
    measure::{InOrder, Money, Quantity, fixed},
};

impl Books {
    /// A line for each open build that has used up anything, in the order in which they were begun.
    pub fn under_way(&self, shop: &Shop) -> Statement {
        let last = shop.zone.day(self.as_of);
        let begun = shop.builds.iter().filter(|(_, it)| it.order.day <= last);
        let mut open: Vec<_> = begun.filter(|(id, _)| shop.state_of(**id, last) != State::Closed).collect();
        open.order_by_key(|(id, it)| (it.order, **id));
        let (mut parts, mut gaps) = (Vec::new(), Vec::new());
        for (id, build) in open {
            let cost = self.build_cost(*id);
            let Some(used_up) = cost.used_up() else { continue };
            gaps.extend(used_up.gaps.iter().cloned());
            parts.extend(
                used_up.money().and_then(|used_up| left_in(*id, used_up, &self.items(*id), build.items)),
            );
        }
        Statement::sum(Rule::UnderWay, parts, gaps, Vec::new())
    }
}

fn left_in(build: Id, used_up: Money, items: &Items, planned: u32) -> Option<Part> {
    let all = planned.max(items.worked()).max(1);
    let gone = items.sold.saturating_add(items.given).saturating_add(items.kept);
    let left = i128::from(all.saturating_sub(gone));
    let of = |count: i128| Quantity::from_micros(count.saturating_mul(fixed::SCALE));
    let money = Money::from_micros(fixed::mul_div(used_up.micros(), left, i128::from(all))?);
    let working = Working::Share { of: used_up, part: of(left), whole: of(i128::from(all)) };
    (!money.is_zero()).then(|| Part::entry(build, Some(Value::Money(money)), working))
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use crate::{
        costing::Books,
        fixture::fixture,
        measure::{Day, Dec, Money},
    };

    #[track_caller]
    fn check(day: &str, want: &[(&str, &str)]) {
        let it = fixture(
            "
            person Ana 26
            person Bo 20 paid
            build trays items 4 on 2026-02-02
            build bench
            expense hire 100 for trays on 2026-02-03
            stretch Bo sand min 60 for trays
            stretch Ana sand min 600 for trays
            expense hire 50 for bench on 2026-02-04
            made trays 2 on 2026-02-05
            hand trays 1 sold on 2026-02-06
            close bench on 2026-02-07",
        );
        let shop = it.shop();
        let books = Books::close(&shop, shop.zone.end_of(Day::parse(day).unwrap()));
        let found = books.under_way(&shop);
        let lines: Vec<(String, Money)> = found
            .parts
            .iter()
            .map(|part| (it.name(part.entry_id().unwrap()), part.signed_money().unwrap()))
            .collect();
        let want: Vec<(String, Money)> = want
            .iter()
            .map(|(name, money)| ((*name).to_owned(), Dec::parse(money).unwrap().money().unwrap()))
            .collect();
        assert_eq!(lines, want, "{day}");
        assert_eq!(found.money(), Some(want.iter().fold(Money::ZERO, |sum, it| sum.plus(it.1))));
    }

    #[test]
    fn open_builds_hold_what_they_used_up_by_the_items_that_have_not_left() {
        check("2026-02-02", &[]);
        // Bo is paid: 20.00 of money; Ana's hours are nobody's money.
        check("2026-02-03", &[("trays", "120")]);
        check("2026-02-05", &[("trays", "120"), ("bench", "50")]);
        check("2026-02-06", &[("trays", "90"), ("bench", "50")]);
        check("2026-02-07", &[("trays", "90")]);
    }
}
