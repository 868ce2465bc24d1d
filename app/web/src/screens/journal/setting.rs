//! A choice as it is said: what is stored (`0.13`, `7`) is nothing to read.

use crate::{
    shell::desk::View,
    words::{
        shelf::formula,
        shop::{percent, units, weekday},
    },
};
use benchslate_core::{
    costing::Formula,
    journal::{
        Id,
        kinds::{Setting, SettingKey},
    },
    measure::Dec,
    planning::turns,
};

/// Its value in words; as stored where it can't be read.
pub fn value(view: &View, it: &Setting) -> String {
    said(view, it).unwrap_or_else(|| it.value.clone())
}

fn said(view: &View, it: &Setting) -> Option<String> {
    match it.key {
        SettingKey::TaxRate => Some(percent(&view.tongue.number(&Dec::parse(&it.value).ok()?.hundredths()))),
        SettingKey::KmRate => Some(view.tongue.money(Dec::parse(&it.value).ok()?.money()?)),
        SettingKey::WeekStart => {
            it.value.parse().ok().filter(|day| (1..=7).contains(day)).map(|day| weekday(day).to_owned())
        }
        SettingKey::SmallestFraction => it.value.parse().ok().map(crate::words::shop::a_part_of_an_inch),
        SettingKey::Units => Some(units(it.value == "inch").to_owned()),
        SettingKey::KwhPrice => Some(view.tongue.money(Dec::parse(&it.value).ok()?.money()?)),
        SettingKey::SlowDown => Some(percent(&view.tongue.number(&Dec::parse(&it.value).ok()?.hundredths()))),
        SettingKey::ShootingSeconds => Some(view.tongue.number(&it.value)),
        SettingKey::StockFormula => Some(formula(Formula::from_code(&it.value)).to_owned()),
        SettingKey::BuildOrder => Some(order(view, &it.value)),
        SettingKey::Currency
        | SettingKey::Zone
        | SettingKey::ShopName
        | SettingKey::PowerIn
        | SettingKey::NormalHours
        | SettingKey::NormalFilmHours
        | SettingKey::BothKey
        | SettingKey::PublishLeads => None,
    }
}

/// The builds that are planned first, by their titles.
fn order(view: &View, value: &str) -> String {
    let title = |id: Id| view.shop.builds.get(&id).map(|it| it.title.clone());
    turns::read(value).filter_map(title).collect::<Vec<String>>().join(", ")
}
