//! What there is a count of, and days that are not as their weekday says.

use super::{Choices, How, Spec, Typed, day_code};
use crate::{
    screens::shop::typed_windows,
    shell::desk::View,
    words::journal::{self as words, Label},
};
use benchslate_core::{
    journal::kinds::{FreeDay, Resource, Window},
    measure::clock_text,
};

pub const RESOURCE: [Spec; 2] = [("name", Label::Name, How::Words), ("pieces", Label::HowMany, How::Number)];

pub const DAY_OFF: [Spec; 4] = [
    ("who", Label::Who, How::OneOf(Choices::Person)),
    ("first", Label::FreeOn, How::Day),
    ("last", Label::FreeLast, How::Day),
    ("extra", Label::FreeExtra, How::Free),
];

const MOST_NAME: usize = 80;

pub fn fill_resource(it: &Resource) -> Vec<(&'static str, String)> {
    vec![("name", it.name.clone()), ("pieces", it.count.to_string())]
}

pub fn resource(typed: &Typed, before: &Resource) -> Resource {
    let count = typed.whole("pieces");
    if count == 0 && !typed.form.is_wrong() {
        typed.form.wrong("pieces", words::one_at_least().to_owned());
    }
    Resource { name: typed.name("name", MOST_NAME), count, ..before.clone() }
}

pub fn fill_day(_: &View, it: &FreeDay) -> Vec<(&'static str, String)> {
    vec![
        ("who", it.person.to_string()),
        ("first", day_code(Some(it.day))),
        ("last", day_code(it.last)),
        ("extra", typed_windows(it.extra.iter().map(|it| (it.from, it.to)))),
    ]
}

pub fn day(typed: &Typed, before: &FreeDay) -> FreeDay {
    let extra = typed.form.read("extra", clock_text::windows).unwrap_or_default();
    let first = typed.day("first").unwrap_or(before.day);
    let last = typed.day("last").filter(|last| *last != first);
    if last.is_some_and(|last| last < first) {
        typed.form.wrong("last", crate::words::free::last_is_first().to_owned());
    }
    FreeDay {
        person: typed.chosen("who").unwrap_or(before.person),
        day: first,
        last,
        extra: extra.into_iter().map(|(from, to)| Window { from, to }).collect(),
        ..before.clone()
    }
}
