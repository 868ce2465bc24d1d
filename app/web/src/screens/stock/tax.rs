//! The field of tax on top: one reading for every form that has it.

use crate::dom::prelude::*;
use crate::{
    shell::{Desk, desk::View},
    words::{lots as words, refusal, shop},
};
use benchslate_core::{
    journal::{
        kinds::SettingKey,
        shop::{tax_typed, with_tax},
    },
    measure::{Dec, number},
};

/// Reads `9.43`, or `13 %` of an amount. None: nothing is typed.
///
/// # Errors
/// The sentence for its field.
pub fn read(view: &View, text: &str, amount: Option<Dec>) -> Result<Option<Dec>, String> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let read = tax_typed(text, amount, view.tongue.minor());
    let tax = read.map_err(|refused| refusal::sentence(&refused))?;
    tax.map(Some).ok_or_else(|| words::tax_of_nothing().to_owned())
}

/// The shop's sales tax, as it is typed: what a new form holds until something else is typed.
pub fn offered(view: &View) -> Option<String> {
    let share = Dec::parse(view.shop.settings.latest(SettingKey::TaxRate)?).ok()?;
    Some(shop::percent(&share.hundredths()))
}

/// The same, followed.
pub fn offer(desk: Desk) -> Signal<Option<String>> {
    Signal::derive(move || desk.read(offered))
}

/// Under the fields: what the tax comes to and what is paid with it, so that 13 typed for 13 % is seen before
/// it is kept. Nothing while either can't be read: its own field says so once it is to be kept.
pub fn note(desk: Desk, tax: Signal<String>, amount: Signal<String>) -> AnyView {
    let said = Memo::new(move |_| desk.read(|view| comes_to(view, &tax.get(), &amount.get())));
    (move || said.get().map(|said| view! { <p class="note">{said}</p> })).draw()
}

fn comes_to(view: &View, tax: &str, amount: &str) -> Option<String> {
    let amount = number::amount(amount).map(Dec).ok()?;
    let tax = read(view, tax, Some(amount)).ok()??;
    let (on_top, in_all) = (tax.money()?, with_tax(amount, Some(tax))?);
    Some(words::tax_comes_to(&view.tongue.money(on_top), &view.tongue.money(in_all)))
}
