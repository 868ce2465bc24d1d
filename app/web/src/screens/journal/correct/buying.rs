//! A line of what is to be bought: new, and put right.

use super::{How, Spec, Typed};
use crate::{
    screens::{buying, first_amount},
    shell::desk::View,
    words::journal::Label,
};
use benchslate_core::{
    journal::kinds::BuyLine,
    measure::{Dec, Unit, letters::small, marks},
};

pub const LINE: [Spec; 4] = [
    ("what", Label::What, How::Words),
    ("quantity", Label::Quantity, How::Quantity),
    ("price", Label::Thought, How::Money),
    ("for-build", Label::ForBuild, How::Build),
];

pub fn fill(view: &View, it: &BuyLine) -> Vec<(&'static str, String)> {
    let build = it.for_build.map(|id| id.to_string()).unwrap_or_default();
    let price = it.price.map(Dec::plain).unwrap_or_default();
    vec![
        ("what", buying::name(view, it)),
        ("quantity", buying::many_typed(it)),
        ("price", price),
        ("for-build", build),
    ]
}

/// The name of an item that is kept means that one.
pub fn line(typed: &Typed, before: &BuyLine) -> BuyLine {
    let what = typed.name("what", 80);
    let called = small(&what);
    let mut items = typed.view.shop.items.iter().filter(|(id, _)| typed.view.shop.offers(**id));
    let item = items.find(|(_, item)| small(&item.name) == called);
    let usual = item.map_or(before.unit.unwrap_or(Unit::Each), |(_, item)| item.unit);
    let hint = marks::Hint { unit: Some(usual), gallons: first_amount::gallons() };
    let amount = typed.form.read("quantity", |text| {
        let amount = marks::quantity(text, hint)?;
        match item {
            Some(_) => amount.in_unit(usual).map(|quantity| (quantity, usual)),
            None => Ok((amount.quantity(), amount.unit.unwrap_or(usual))),
        }
    });
    BuyLine {
        on: before.on,
        item: item.map(|(id, _)| *id),
        what: if item.is_some() { String::new() } else { what },
        quantity: amount.map(|(quantity, _)| Dec::from(quantity)),
        unit: amount.map(|(_, unit)| unit),
        price: typed.money("price"),
        for_build: typed.id("for-build"),
        bought: before.bought,
    }
}
