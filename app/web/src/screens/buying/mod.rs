//! What is to be bought, ticked in the store with its price.

mod sheet;

use crate::{
    screens::journal::facts,
    shell::desk::View,
    words::{gaps, units},
};
use benchslate_core::{
    journal::kinds::{BuyLine, Source},
    measure::Unit,
};
pub use sheet::BuyingSheet;

/// The item's name, else the words.
pub fn name(view: &View, line: &BuyLine) -> String {
    line.item.map_or_else(|| line.what.clone(), |item| gaps::name(view.shop, Source::Item(item)))
}

/// How much, with its unit; empty where nobody said.
pub fn many(view: &View, line: &BuyLine) -> String {
    let unit = line.unit.unwrap_or(Unit::Each);
    let of = line.item.map(Source::Item);
    match (line.quantity, of) {
        (Some(many), Some(of)) => facts::amount(view, many, unit, of),
        (Some(many), None) => {
            let many = benchslate_core::measure::Quantity::from_decimal(many.0).unwrap_or_default();
            units::amount_short(view.tongue, many, unit, None)
        }
        (None, _) => String::new(),
    }
}

/// The same as it is typed.
pub fn many_typed(line: &BuyLine) -> String {
    let Some(many) = line.quantity else { return String::new() };
    let unit = units::short(line.unit.unwrap_or(Unit::Each));
    if unit.is_empty() { many.plain() } else { [&many.plain(), unit].join(" ") }
}
