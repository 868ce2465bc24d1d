//! How figures, days and times are written for this reader: through the browser, exact to the digit.

use crate::platform::intl::{self, Look};
use benchslate_core::{
    journal::Shop,
    measure::{Day, Instant, Money, Quantity, Seconds, Shown, currency},
};

/// The reader's language, the shop's zone and currency.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tongue {
    language: String,
    zone: String,
    currency: Option<String>,
}

impl Tongue {
    /// Before the shop is read.
    pub fn new(language: String) -> Tongue {
        Tongue { language, zone: crate::platform::clock::zone_name(), currency: None }
    }

    /// As the shop has chosen.
    pub fn follow(&mut self, shop: &Shop) {
        self.zone.clone_from(&shop.zone.name);
        self.currency = shop.currency().map(str::to_owned);
    }

    /// The reader's language tag.
    pub fn language(&self) -> &str {
        &self.language
    }

    /// The shop's currency, once it is known.
    pub fn currency(&self) -> Option<&str> {
        self.currency.as_deref()
    }

    /// Digits of the currency's minor unit; 2 until it is known.
    pub fn minor(&self) -> u8 {
        self.currency.as_deref().map_or(2, currency::minor_digits)
    }

    /// A sum of money that stands alone: `2,994.01`.
    pub fn money(&self, money: Money) -> String {
        self.number(&money.shown(self.minor()))
    }

    /// A figure that core has rounded within its sum.
    pub fn shown(&self, shown: Shown) -> String {
        self.number(&shown.text())
    }

    /// Plain decimal text as the reader writes it.
    pub fn number(&self, decimal: &str) -> String {
        let figure = intl::number(decimal, &self.language);
        // A true minus, as wide as a plus.
        figure.replace('-', "\u{2212}")
    }

    /// A quantity to two digits after the mark at most.
    pub fn quantity(&self, quantity: Quantity) -> String {
        self.number(&quantity.shown_to(2))
    }

    /// `08:05` or `8:05 a.m.`.
    pub fn time(&self, at: Instant) -> String {
        intl::instant(at.0.saturating_mul(1000), &self.zone, &self.language, Look::Time)
    }

    /// `Fri 20 Nov`.
    pub fn day(&self, day: Day) -> String {
        intl::day(days(day), &self.language, Look::Day)
    }

    /// `20 Nov`.
    pub fn day_short(&self, day: Day) -> String {
        intl::day(days(day), &self.language, Look::DayShort)
    }

    /// `Fri 20 Nov 2026`.
    pub fn day_year(&self, day: Day) -> String {
        intl::day(days(day), &self.language, Look::DayYear)
    }

    /// `November 2026`.
    pub fn month(&self, day: Day) -> String {
        intl::day(days(day), &self.language, Look::Month)
    }

    /// The day of a moment: `Fri 20 Nov`.
    pub fn day_of(&self, at: Instant) -> String {
        intl::instant(at.0.saturating_mul(1000), &self.zone, &self.language, Look::Day)
    }

    /// The weekday of a moment: `Fri`.
    pub fn weekday_of(&self, at: Instant) -> String {
        intl::instant(at.0.saturating_mul(1000), &self.zone, &self.language, Look::Weekday)
    }

    /// `1 h 55`; `0 h 40`.
    pub fn hours(&self, worked: Seconds) -> String {
        let (hours, minutes) = worked.hours_minutes();
        format!("{hours} h {minutes:02}")
    }

    /// `1:55`, for digits that run.
    pub fn digits(&self, worked: Seconds) -> String {
        let (hours, minutes) = worked.hours_minutes();
        format!("{hours}:{minutes:02}")
    }
}

fn days(day: Day) -> i64 {
    Day::of(1970, 1, 1).map_or(0, |begin| day.days_since(begin))
}
