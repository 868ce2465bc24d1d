//! Looks at the shelf: counted, thrown out, given away. New, and put right.

use super::{DAY, How, Spec, Typed, items::STATE};
use crate::{
    dom::prelude::*,
    screens::{
        hours::fields::{self, MOST_NOTE},
        journal::facts::stock_unit,
        stock::form::Form,
    },
    shell::desk::View,
    words::{journal::Label, shelf as words, units},
};
use benchslate_core::journal::kinds::{Shelf, ShelfState};

const LOOK: [Spec; 3] = [
    ("quantity", Label::Quantity, How::Quantity),
    (DAY, Label::Day, How::Day),
    ("note", Label::Note, How::Words),
];

/// What can have happened, and the codes of it.
const STATES: [ShelfState; 3] = [ShelfState::ThrownOut, ShelfState::Given, ShelfState::Counted];
const CODES: [&str; 3] = ["thrown", "given", "counted"];

/// Of an empty shelf there is nothing but the day.
pub fn specs(it: &Shelf) -> Vec<Spec> {
    if it.quantity.is_some() { LOOK.to_vec() } else { STATE.to_vec() }
}

pub fn fill(view: &View, it: &Shelf) -> Vec<(&'static str, String)> {
    let Some(many) = it.quantity else { return Vec::new() };
    let mut quantity = many.plain();
    let unit = units::short(it.unit.unwrap_or_else(|| stock_unit(view, it.of)));
    if !unit.is_empty() && !many.0.is_zero() {
        quantity.push(' ');
        quantity.push_str(unit);
    }
    let at = STATES.iter().position(|state| *state == it.state).unwrap_or(0);
    let code = CODES.get(at).copied().unwrap_or_default();
    vec![("quantity", quantity), ("state", code.to_owned()), ("note", it.note.clone().unwrap_or_default())]
}

pub fn look(typed: &Typed, before: &Shelf) -> Shelf {
    let on = typed.on(before.on);
    if before.quantity.is_none() {
        return Shelf { on, ..before.clone() };
    }
    let unit = before.unit.unwrap_or_else(|| stock_unit(typed.view, before.of));
    let at = CODES.iter().position(|code| *code == typed.form.now("state")).unwrap_or(0);
    Shelf {
        on,
        state: STATES.get(at).copied().unwrap_or(before.state),
        quantity: Some(typed.quantity("quantity", unit)),
        unit: Some(unit),
        note: typed.maybe_words("note", MOST_NOTE),
        ..before.clone()
    }
}

/// What happened, over the fields.
pub fn states(form: Form) -> AnyView {
    let said = STATES.map(words::look);
    fields::set(form, "state", words::what_happened(), &said, &CODES)
}
