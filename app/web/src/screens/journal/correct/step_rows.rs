//! What a step comes after, each with how long that dries, and what it takes, each with how long it stays taken.

use super::{
    Form, How, Label, Typed,
    chosen::Choices,
    dec,
    rows::{self, Rows, count, field},
};
use crate::dom::prelude::*;
use crate::{
    parts::{answer::RowLink, sum_row::Leads},
    shell::{Desk, Place},
    words::step_form as words,
};
use benchslate_core::{
    journal::{
        Id, Kind,
        kinds::{After, Need, Step},
    },
    measure::number,
};

const AFTER: Rows = Rows {
    count: "afters",
    title: words::comes_after(),
    more: words::after_one_more(),
    cells: &[("after", Label::After, How::OneOf(Choices::Step), ""), ("wait", Label::Wait, How::Hours, "")],
};

const TAKES: Rows = Rows {
    count: "takes",
    title: words::takes(),
    more: words::takes_something(),
    cells: &[
        ("needs", Label::Needs, How::OneOf(Choices::Resource), ""),
        ("of-it", Label::HowManyOf, How::Number, ""),
        ("held", Label::HeldAfter, How::Hours, ""),
    ],
};

/// The first row of what it comes after always stands there.
pub fn fill(it: &Step) -> Vec<(String, String)> {
    let mut filled = vec![
        (AFTER.count.to_owned(), it.after.len().max(1).to_string()),
        (TAKES.count.to_owned(), it.needs.len().to_string()),
    ];
    for (at, it) in it.after.iter().enumerate() {
        filled.extend([(field("after", at), it.step.to_string()), (field("wait", at), dec(it.wait))]);
    }
    for (at, it) in it.needs.iter().enumerate() {
        filled.extend([
            (field("needs", at), it.resource.to_string()),
            (field("of-it", at), it.count.to_string()),
            (field("held", at), dec(it.held)),
        ]);
    }
    filled
}

pub fn draw(desk: Desk, form: Form) -> AnyView {
    let counted = desk.read(|view| !view.shop.resources.is_empty());
    view! {
        {rows::draw(desk, form, AFTER)}
        {if counted {
            rows::draw(desk, form, TAKES)
        } else {
            let leads = Leads::To(Place::Add(Kind::Resource, None).href());
            view! { <RowLink label=words::nothing_counted() leads/> }
        }}
    }
}

/// A row without a step is none.
pub fn after(typed: &Typed, entry: Id) -> Vec<After> {
    let mut all: Vec<After> = Vec::new();
    for at in 0..count(typed.form, AFTER.count) {
        let [step, wait] = ["after", "wait"].map(|name| field(name, at));
        let hours = typed.hours(&wait);
        match typed.id(&step) {
            Some(id) if id == entry => typed.form.wrong(&step, words::after_itself().to_owned()),
            Some(id) if all.iter().any(|it| it.step == id) => {
                typed.form.wrong(&step, words::twice().to_owned())
            }
            Some(id) => all.push(After { step: id, wait: hours }),
            None if hours.is_some() => typed.form.wrong(&wait, words::after_what().to_owned()),
            None => {}
        }
    }
    all
}

/// A row without anything that is counted is none; one of it, until a count is typed.
pub fn needs(typed: &Typed) -> Vec<Need> {
    let mut all: Vec<Need> = Vec::new();
    for at in 0..count(typed.form, TAKES.count) {
        let [needs, of_it, held] = ["needs", "of-it", "held"].map(|name| field(name, at));
        let (many, hours) = (typed.form.read(&of_it, number::whole), typed.hours(&held));
        let Some(resource) = typed.id(&needs) else {
            if many.is_some() || hours.is_some() {
                typed.form.wrong(&needs, words::takes_what().to_owned());
            }
            continue;
        };
        let count = many.unwrap_or(1);
        let there = typed.view.shop.resources.get(&resource).map_or(0, |it| it.count);
        if all.iter().any(|it| it.resource == resource) {
            typed.form.wrong(&needs, words::twice().to_owned());
        } else if count == 0 {
            typed.form.wrong(&of_it, super::words::one_at_least().to_owned());
        } else if count > there {
            typed.form.wrong(&of_it, words::there_are(there));
        }
        all.push(Need { resource, count, held: hours });
    }
    all
}
