//! Several alike in one form: a row of cells for each, and one more at a tap.

use super::How;
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        field::{Cells, Field, Typing},
        sum_row::{Group, Leads},
    },
    screens::{
        first_amount,
        hours::fields::{Choosing, choice_of},
        stock::form::Form,
    },
    shell::Desk,
    words::{
        common,
        journal::{self as words, Label},
    },
};

/// Such rows.
#[derive(Clone, Copy)]
pub struct Rows {
    /// Where the form keeps how many there are.
    pub count: &'static str,
    pub title: &'static str,
    /// The row that adds one.
    pub more: &'static str,
    /// The fields of one: name, label, how it is typed, in it while it is empty.
    pub cells: &'static [(&'static str, Label, How, &'static str)],
}

/// Most rows of one form.
const MOST: usize = 40;

/// How many there are.
pub fn count(form: Form, name: &str) -> usize {
    form.now(name).trim().parse::<usize>().unwrap_or(0).min(MOST)
}

/// The field of one of them.
pub fn field(name: &str, at: usize) -> String {
    format!("{name}-{at}")
}

/// All of them, and the row that adds one.
pub fn draw(desk: Desk, form: Form, rows: Rows) -> AnyView {
    let many = Memo::new(move |_| form.get(rows.count).trim().parse::<usize>().unwrap_or(0).min(MOST));
    let one = move |at: usize| {
        let cells = rows.cells.iter().map(|cell| drawn(desk, form, field(cell.0, at), *cell));
        let cells: Vec<AnyView> = cells.collect();
        view! { <Cells>{cells}</Cells> }
    };
    let more = move |()| form.set(rows.count, many.get_untracked().saturating_add(1).to_string());
    view! {
        {move || (many.get() > 0).then(|| view! { <Group title=rows.title.to_owned()/> })}
        {each(move || (0..many.get()).collect(), one)}
        <RowLink label=rows.more leads=Leads::Tap(Callback::new(more))/>
    }
}

/// One cell of a row.
pub fn drawn(
    desk: Desk,
    form: Form,
    id: String,
    (_, label, how, hint): (&'static str, Label, How, &'static str),
) -> AnyView {
    if let How::OneOf(one) = how {
        let choosing = Choosing { field: "", label: words::label(label), class: "whole", of: one.of() };
        return choice_of(desk, form, id, choosing, Signal::stored(String::new()));
    }
    let typing = match how {
        How::Day => Typing::Date,
        How::Number | How::Money | How::Part => Typing::Decimal,
        _ => Typing::Words,
    };
    let unit = Signal::derive(move || match how {
        How::Money => first_amount::beside(desk).get(),
        How::Hours => Some(common::hours_unit().to_owned()),
        _ => None,
    });
    let field = id.clone();
    let hint = (!hint.is_empty()).then(|| hint.to_owned());
    view! {
        <Field
            id=id.clone()
            label=words::label(label).to_owned()
            typing
            unit
            hint=Signal::stored(hint)
            value=form.signal_of(id.clone())
            error=form.error_of(id)
            on_input=Callback::new(move |text: String| form.set(&field, text))
        />
    }
}
