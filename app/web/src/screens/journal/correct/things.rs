//! Notes, builds, people and stages put right.

use super::{DAY, How, Spec, Typed, day_code, dec, hundredths, tick};
use crate::{
    screens::hours::{
        choices,
        fields::{must, side_code},
    },
    screens::journal::facts,
    shell::desk::View,
    words::journal::{self as words, Label},
};
use benchslate_core::{
    journal::{
        Id,
        kinds::{Build, Drying, Note, Person, Photo, Stage},
    },
    measure::{Dec, day, duration, limits, number},
    timing::drying,
};

pub const NOTE: [Spec; 3] =
    [("text", Label::Text, How::Long), ("bearer", Label::For, How::Home), (DAY, Label::Day, How::Day)];

pub const BUILD: [Spec; 9] = [
    ("name", Label::Name, How::Words),
    ("pieces", Label::Pieces, How::Number),
    ("due", Label::Due, How::Day),
    ("publish", Label::GoesOut, How::Day),
    ("film", Label::FilmPlanned, How::Number),
    ("repeat", Label::Repeat, How::Build),
    ("run", Label::Run, How::Number),
    ("spoilage", Label::Spoilage, How::Number),
    (DAY, Label::Begun, How::Day),
];

pub const PERSON: [Spec; 3] =
    [("paid", Label::Paid, How::Tick), ("name", Label::Name, How::Words), (DAY, Label::Day, How::Day)];

pub const DRYING: [Spec; 2] = [("next", Label::Dry, How::Length), ("held", Label::Held, How::Length)];

pub const STAGE: [Spec; 2] = [("name", Label::Name, How::Words), (DAY, Label::Day, How::Day)];

/// Longest note, in letters.
pub const MOST_WORDS: usize = 4000;
const MOST_NAME: usize = 80;

pub fn fill_note(it: &Note) -> Vec<(&'static str, String)> {
    let bearer = it.bearer.map_or_else(|| choices::NO_HOME.to_owned(), choices::code);
    vec![("text", it.text.clone()), ("bearer", bearer)]
}

pub fn note(typed: &Typed, before: &Note) -> Note {
    let text = typed.words("text", MOST_WORDS);
    if text.is_empty() {
        typed.form.wrong("text", words::words_missing().to_owned());
    }
    Note { on: typed.on(before.on), text, bearer: typed.bearer("bearer") }
}

pub fn fill_drying(view: &View, it: &Drying) -> Vec<(&'static str, String)> {
    let length = |it: u32| view.tongue.digits(facts::minutes(it));
    vec![("next", length(it.next)), ("held", it.held.map(length).unwrap_or_default())]
}

pub fn drying(typed: &Typed, before: &Drying) -> Drying {
    let next = must(typed.form, "next", duration::hours).map_or(before.next, drying::minutes);
    let held = typed.form.read("held", duration::hours).map(drying::minutes);
    Drying { held, next, ..before.clone() }
}

/// One that is about an entry stands where that stands; any other has a home of its own.
pub fn photo_specs(it: &Photo) -> Vec<Spec> {
    let mut specs = vec![("text", Label::Text, How::Long), (DAY, Label::Day, How::Day)];
    if it.entry.is_none() {
        specs.insert(1, ("bearer", Label::For, How::Home));
    }
    specs
}

pub fn fill_photo(it: &Photo) -> Vec<(&'static str, String)> {
    let bearer = it.bearer.map_or_else(|| choices::NO_HOME.to_owned(), choices::code);
    vec![("text", it.caption.clone().unwrap_or_default()), ("bearer", bearer)]
}

pub fn photo(typed: &Typed, before: &Photo) -> Photo {
    let caption = typed.maybe_words("text", limits::MOST_CAPTION);
    let bearer = if before.entry.is_none() { typed.bearer("bearer") } else { before.bearer };
    Photo { on: typed.on(before.on), caption, bearer, ..before.clone() }
}

pub fn fill_build(it: &Build) -> Vec<(&'static str, String)> {
    vec![
        ("name", it.title.clone()),
        ("pieces", it.items.to_string()),
        ("due", it.due.map(|day| day.to_string()).unwrap_or_default()),
        ("publish", day_code(it.publish)),
        ("film", dec(it.film_planned)),
        ("repeat", it.repeat_of.map(|of| of.to_string()).unwrap_or_default()),
        ("run", it.run_planned.map(|run| run.to_string()).unwrap_or_default()),
        ("spoilage", hundredths(it.normal_spoil)),
    ]
}

/// `entry`: the build's own, which it can't be a repeat of.
pub fn build(typed: &Typed, before: &Build, entry: Id) -> Build {
    let items = typed.whole("pieces");
    if items == 0 && !typed.form.is_wrong() {
        typed.form.wrong("pieces", words::one_at_least().to_owned());
    }
    let due = typed.form.now("due");
    let due =
        (!due.trim().is_empty()).then(|| must(typed.form, "due", |text| day::typed_near(text, typed.today)));
    Build {
        on: typed.on(before.on),
        title: typed.name("name", MOST_NAME),
        items,
        due: due.flatten(),
        publish: typed.day("publish"),
        film_planned: typed.form.read("film", number::amount).map(Dec),
        repeat_of: repeat(typed, entry),
        run_planned: run(typed),
        normal_spoil: typed.share("spoilage"),
    }
}

fn repeat(typed: &Typed, entry: Id) -> Option<Id> {
    let of = typed.id("repeat")?;
    if typed.view.shop.repeats(of, entry) {
        typed.form.wrong("repeat", words::repeats_itself().to_owned());
    }
    Some(of)
}

fn run(typed: &Typed) -> Option<u32> {
    let typed_in = !typed.form.now("run").trim().is_empty();
    let run = typed_in.then(|| typed.whole("run"))?;
    if run == 0 && !typed.form.is_wrong() {
        typed.form.wrong("run", words::one_at_least().to_owned());
    }
    Some(run)
}

pub fn fill_person(it: &Person) -> Vec<(&'static str, String)> {
    vec![("name", it.name.clone()), ("paid", tick(it.paid))]
}

pub fn person(typed: &Typed, before: &Person) -> Person {
    Person {
        on: typed.on(before.on),
        name: typed.name("name", MOST_NAME),
        paid: typed.ticked("paid"),
        ..before.clone()
    }
}

pub fn fill_stage(it: &Stage) -> Vec<(&'static str, String)> {
    vec![("name", it.name.clone()), ("side", side_code(it.side).to_owned())]
}

pub fn stage(typed: &Typed, before: &Stage) -> Stage {
    Stage {
        on: typed.on(before.on),
        name: typed.name("name", MOST_NAME),
        side: typed.side(),
        role: before.role,
    }
}
