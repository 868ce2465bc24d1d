//! The field of how much is expected to be usable: beside what is typed stands what is read.

use super::form::{Cell, Form};
use crate::dom::prelude::*;
use crate::{shell::Desk, words::lots as words};
use benchslate_core::measure::{Dec, number};

/// In a form. `0.7` and `70` are the same; the sign stands alone while nothing can be read.
pub fn cell(desk: Desk, form: Form, field: &'static str, label: &'static str) -> AnyView {
    let read = Memo::new(move |_| {
        let part = Dec(number::part(&form.get(field)).ok()?);
        Some(words::read_as(&desk.read(|view| view.tongue.number(&part.hundredths()))))
    });
    let unit = Signal::derive(move || read.get().is_none().then(|| "%".to_owned()));
    Cell::number(field, label).adds(Signal::derive(move || read.get())).unit(unit).draw(form)
}
