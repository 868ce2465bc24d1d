//! Which currency the shop counts in: one, the first that was chosen.
//!
//! An amount is stored as a number; a second currency would rename every one that is there. So the first choice stands,
//! whatever comes after it (two phones that chose differently and are brought together, a line of an older version that
//! is dated), and what comes after is told as odd. While no money is there the choice is free: it corrects its own line.
//! Source: our own rule, DEVELOPERS.md § Why. Not here: money of another country beside an amount (`kinds::abroad`).

use super::{Odd, Shop};
use crate::{
    journal::{Id, kinds::SettingKey},
    measure::currency,
};

impl Shop {
    /// The code of the shop's currency; none: nobody has chosen yet.
    pub fn currency(&self) -> Option<&str> {
        self.settings.first(SettingKey::Currency).map(|(_, code)| code)
    }

    /// Digits after the point in the shop's currency; two where it is not known.
    pub fn minor(&self) -> u8 {
        self.currency().map_or(2, currency::minor_digits)
    }

    /// The line that chose the currency, where amounts stand in it that another choice would rename.
    pub fn currency_is_fixed(&self) -> Option<Id> {
        let (entry, _) = self.settings.first(SettingKey::Currency)?;
        self.holds_money().then_some(entry)
    }

    /// Whether an amount of money is written down anywhere, a rate or a price included.
    pub fn holds_money(&self) -> bool {
        let rates = [SettingKey::KmRate, SettingKey::KwhPrice];
        let lots = self
            .lots
            .values()
            .any(|it| it.paid.is_some_and(|paid| !paid.is_zero()) || it.new.is_some() || !it.fees.is_zero());
        lots || self.people.values().any(|it| !it.rates.is_empty())
            || !self.expenses.is_empty()
            || !self.receipts.is_empty()
            || !self.incomes.is_empty()
            || !self.monthly.is_empty()
            || !self.tools.is_empty()
            || !self.blades.is_empty()
            || !self.by_products.is_empty()
            || !self.finds.is_empty()
            || self.trips.iter().any(|it| !it.fee.is_zero())
            || self.made.iter().any(|it| !it.scrap.is_zero())
            || self.buy_lines.iter().any(|it| it.price.is_some())
            || rates.iter().any(|key| self.settings.latest(*key).is_some())
    }

    /// Choices of another currency than the first.
    pub(super) fn tell_other_currencies(&mut self) {
        let Some(first) = self.currency().map(str::to_owned) else { return };
        let others = self.settings.lines(SettingKey::Currency).filter(|(_, code)| *code != first);
        let others: Vec<(Id, Odd)> = others.map(|(entry, _)| (entry, Odd::OtherCurrency)).collect();
        self.odd.extend(others);
    }
}

#[cfg(test)]
mod tests {
    use crate::{fixture::fixture, journal::shop::Odd};

    #[track_caller]
    fn check(lines: &str, currency: Option<&str>, odd: &[&str], fixed: bool) {
        let it = fixture(lines);
        let shop = it.shop();
        let told = shop.odd.iter().filter(|(_, odd)| *odd == Odd::OtherCurrency);
        let told: Vec<String> = told.map(|(entry, _)| it.name(*entry)).collect();
        assert_eq!((shop.currency(), shop.currency_is_fixed().is_some()), (currency, fixed), "{lines}");
        assert_eq!(told, odd, "{lines}");
    }

    #[test]
    fn a_shop_counts_in_the_currency_that_was_chosen_first_and_a_later_one_renames_nothing() {
        check("", None, &[], false);
        check("setting currency CAD as one", Some("CAD"), &[], false);
        let two = "setting currency CAD as one\nsetting currency EUR as other on 2026-03-01";
        check(two, Some("CAD"), &["other"], false);
        check("setting currency CAD as one\nsetting currency CAD as other", Some("CAD"), &[], false);
        check(
            "setting currency CAD as one\nsetting currency EUR as other from 2026-03-01 on 2026-02-01",
            Some("CAD"),
            &["other"],
            false,
        );
    }

    #[test]
    fn any_amount_fixes_the_currency() {
        let amounts = [
            "person Ana 20",
            "build bench\nexpense wood 12 for bench",
            "lot oak bought 4 paid 12",
            "setting km 0.55",
            "build bench\nbuy-words felt for bench price 9",
            "monthly rent 300",
        ];
        for amount in amounts {
            check(&format!("setting currency CAD\n{amount}"), Some("CAD"), &[], true);
            check(amount, None, &[], false);
        }
        check("setting currency CAD\nbuild bench\nlot oak salvaged 4", Some("CAD"), &[], false);
    }
}
