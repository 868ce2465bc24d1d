//! The first amount of money: what the shop counts in is guessed, shown beside it, and written with it.
//!
//! The guess is core's (`measure::region`). Where there is none, the form asks; a choice already made is
//! never guessed over.

use crate::dom::prelude::*;
use crate::{
    parts::{answer::RowLink, sum_row::Leads},
    platform::clock,
    shell::{Desk, Place, desk::View},
    words::money as words,
};
use benchslate_core::{
    journal::{
        Change, On,
        kinds::{Setting, SettingKey},
    },
    measure::{Measures, Region, Unit, region},
    timing::Hand,
};

/// The currency that stands beside an amount: the shop's, else the guess; none: it must be asked.
pub fn currency(view: &View) -> Option<String> {
    view.tongue.currency().map(str::to_owned).or_else(|| guess().map(|region| region.currency().to_owned()))
}

/// The same, followed.
pub fn beside(desk: Desk) -> Signal<Option<String>> {
    Signal::derive(move || desk.read(currency))
}

/// What stands beside an amount while the currency is only guessed, or not known: one tap leads to the choices.
/// Nothing once it is chosen.
pub fn offer(desk: Desk) -> AnyView {
    let guessed = Memo::new(move |_| {
        desk.read(|view| view.tongue.currency().is_none().then(|| guess().map(|region| region.currency())))
    });
    (move || {
        guessed.get().map(|currency| {
            let label = currency.map_or_else(|| words::which_currency().to_owned(), words::guessed_currency);
            let end = currency.map(|_| words::change_it().to_owned());
            view! { <RowLink label end=end.unwrap_or_default() leads=Leads::To(Place::Choices.href())/> }
        })
    })
    .draw()
}

/// Whether an amount can be kept: the currency is chosen or can be guessed.
pub fn can_be_kept(desk: Desk) -> bool {
    desk.now_read(|view| currency(view).is_some())
}

/// What the shop goes by and nobody has chosen yet, to be written together with the first amount.
pub fn settings(hand: &mut Hand) -> Vec<Change> {
    let Some(region) = guess() else { return Vec::new() };
    let units = match region.measures() {
        Measures::Inches => "inch",
        Measures::Metric => "metric",
    };
    let week = region.first_day().after_monday().saturating_add(1).to_string();
    let guesses = [
        (SettingKey::Currency, region.currency().to_owned()),
        (SettingKey::Units, units.to_owned()),
        (SettingKey::WeekStart, week),
    ];
    let on = On::At(hand.shop.zone.when(hand.now));
    let missing = guesses.into_iter().filter(|(key, _)| hand.shop.settings.latest(*key).is_none());
    let missing: Vec<(SettingKey, String)> = missing.collect();
    missing
        .into_iter()
        .map(|(key, value)| Change::write((hand.fresh)(), Setting { on, key, value, from: None }))
        .collect()
}

/// Whether the shop measures in inches: its choice, else the guess.
pub fn in_inches(view: &View) -> bool {
    match view.shop.settings.latest(SettingKey::Units) {
        Some(chosen) => chosen == "inch",
        None => guess().is_none_or(|region| region.measures() == Measures::Inches),
    }
}

/// Whose gallons.
pub fn gallons() -> benchslate_core::measure::marks::Gallons {
    guess().map(region::Region::gallons).unwrap_or_default()
}

/// What timber is counted in where nothing else is said.
pub fn timber_unit(view: &View) -> Unit {
    if in_inches(view) { Unit::BoardFoot } else { Unit::CubicMetre }
}

fn guess() -> Option<Region> {
    Region::guess(&clock::language(), &clock::zone_name())
}
