//! The shop-wide choices, read by key and day.

use super::{
    Id,
    kinds::{Setting, SettingKey},
    order::Order,
};
use crate::measure::Day;
use crate::measure::InOrder;

/// Every setting entry, in the order in which they take force.
#[derive(Clone, Debug, Default)]
pub struct Settings {
    rows: Vec<(SettingKey, Option<Day>, Order, String)>,
}

impl Settings {
    pub(super) fn add(&mut self, order: Order, setting: &Setting) {
        self.rows.push((setting.key, setting.from, order, setting.value.clone()));
    }

    pub(super) fn settle(&mut self) {
        self.rows.order_by(|a, b| (a.0, a.1, &a.2).cmp(&(b.0, b.1, &b.2)));
    }

    /// The value in force on a day: the one that took force last; on a tie the one chosen last.
    pub fn on(&self, key: SettingKey, day: Day) -> Option<&str> {
        let mut in_force =
            self.rows.iter().filter(|row| row.0 == key && row.1.is_none_or(|from| from <= day));
        in_force.next_back().map(|row| row.3.as_str())
    }

    /// Every value and its first day, none from the beginning; of two from the same day the one chosen last.
    pub fn all(&self, key: SettingKey) -> impl Iterator<Item = (Option<Day>, &str)> {
        let of_key = || self.rows.iter().filter(move |row| row.0 == key);
        let next = of_key().skip(1).map(Some).chain([None]);
        let last = of_key().zip(next).filter(|(row, next)| next.is_none_or(|next| next.1 != row.1));
        last.map(|(row, _)| (row.1, row.3.as_str()))
    }

    /// The value that was chosen first, and the line that chose it.
    pub fn first(&self, key: SettingKey) -> Option<(Id, &str)> {
        self.lines(key).next()
    }

    /// Every line of a key, in the order in which they take force.
    pub fn lines(&self, key: SettingKey) -> impl Iterator<Item = (Id, &str)> {
        self.rows.iter().filter(move |row| row.0 == key).map(|row| (row.2.entry, row.3.as_str()))
    }

    /// The value that is in force at the end, whatever the day.
    pub fn latest(&self, key: SettingKey) -> Option<&str> {
        self.rows.iter().rfind(|row| row.0 == key).map(|row| row.3.as_str())
    }
}
