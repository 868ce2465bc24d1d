//! Items made and handed over, where a build stands: new, and put right.

use super::{
    Choices, DAY, How, Spec, Typed, day_code, dec,
    rows::{self, field},
};
use crate::dom::prelude::*;
use crate::{
    parts::field::Cells,
    screens::{hours::fields, stock::form::Form},
    shell::Desk,
    words::{
        income as said,
        journal::{self as words, Label},
    },
};
use benchslate_core::{
    journal::{
        Id,
        kinds::{Film, HandOver, Made},
    },
    measure::{Dec, Quantity, number},
};

pub const MADE: [Spec; 4] = [
    ("good", Label::Good, How::Number),
    (DAY, Label::Day, How::Day),
    ("build", Label::OfBuild, How::OneOf(Choices::OneBuild)),
    ("scrap", Label::Scrap, How::Money),
];

pub const HANDED: [Spec; 4] = [
    ("count", Label::Pieces, How::Number),
    (DAY, Label::Day, How::Day),
    ("build", Label::OfBuild, How::OneOf(Choices::OneBuild)),
    ("income", Label::TheMoney, How::OneOf(Choices::Income)),
];

pub const FILM: [Spec; 6] = [
    ("finished", Label::FilmLength, How::Number),
    ("footage", Label::Footage, How::Number),
    ("published", Label::Published, How::Day),
    (DAY, Label::Day, How::Day),
    ("build", Label::OfBuild, How::OneOf(Choices::OneBuild)),
    ("address", Label::Address, How::Words),
];

pub const SERIES_END: [Spec; 2] =
    [(DAY, Label::Day, How::Day), ("build", Label::OfBuild, How::OneOf(Choices::OneBuild))];

pub const STATE: [Spec; 1] = [(DAY, Label::Day, How::Day)];

/// How many of those worked were spoiled.
const SPOILED: &str = "spoiled";
/// Of one of them: the share of the work in it.
const DONE: &str = "done";
/// Most spoiled ones in one entry; more are one more entry.
const MOST_SPOILED: usize = 20;

pub fn fill_made(it: &Made) -> Vec<(String, String)> {
    let spoiled = if it.spoiled.is_empty() { String::new() } else { it.spoiled.len().to_string() };
    let mut filled = super::owned(vec![
        ("good", if it.good == 0 { String::new() } else { it.good.to_string() }),
        ("build", it.build.to_string()),
        ("scrap", dec(it.scrap)),
        (SPOILED, spoiled),
    ]);
    let shares = it.spoiled.iter().enumerate();
    filled.extend(shares.map(|(at, share)| (field(DONE, at), number::part_typed(*share))));
    filled
}

pub fn made(typed: &Typed, before: &Made) -> Made {
    let good = typed.form.read("good", number::whole);
    let spoiled = typed.form.read(SPOILED, number::whole).unwrap_or(0);
    let many = usize::try_from(spoiled).unwrap_or(usize::MAX);
    if many > MOST_SPOILED {
        typed.form.wrong(SPOILED, words::too_many_spoiled(MOST_SPOILED));
    } else if good.unwrap_or(0) == 0 && many == 0 && !typed.form.is_wrong() {
        typed.form.wrong("good", words::one_at_least().to_owned());
    }
    let all = Dec::from(Quantity::ONE);
    let done = (0..many.min(MOST_SPOILED)).map(|at| typed.part(&field(DONE, at)).unwrap_or(all));
    Made {
        on: typed.on(before.on),
        build: typed.chosen("build").unwrap_or(before.build),
        good: good.unwrap_or(0),
        spoiled: done.collect(),
        scrap: typed.money("scrap"),
    }
}

/// How many were spoiled, and how far each had come; in sight only where more than one is made.
pub fn spoiled(desk: Desk, form: Form, of: Id) -> AnyView {
    let run = Memo::new(move |_| {
        let build = Id::parse(&form.get("build")).unwrap_or(of);
        desk.read(|view| view.shop.is_run(build)) || !form.get(SPOILED).is_empty()
    });
    let many = Memo::new(move |_| form.get(SPOILED).trim().parse::<usize>().unwrap_or(0).min(MOST_SPOILED));
    let cells = move || {
        let share = (DONE, Label::Done, How::Part, said::all_of_the_work());
        let one = move |at: usize| rows::drawn(desk, form, field(DONE, at), share);
        run.get().then(|| {
            let shares = move || (0..many.get()).map(one).collect::<Vec<AnyView>>();
            view! {
                <Cells>
                    {fields::typed(form, SPOILED, words::label(Label::Spoiled), said::none_spoiled(), "", crate::parts::field::Typing::Decimal)}
                    {shares}
                </Cells>
            }
        })
    };
    cells.draw()
}

pub fn fill_film(it: &Film) -> Vec<(&'static str, String)> {
    vec![
        ("finished", dec(it.finished)),
        ("footage", dec(it.footage)),
        ("published", day_code(it.published)),
        ("build", it.build.to_string()),
        ("address", it.address.clone().unwrap_or_default()),
    ]
}

pub fn film(typed: &Typed, before: &Film) -> Film {
    let minutes = |field: &str| typed.form.read(field, number::amount).map(Dec);
    Film {
        on: typed.on(before.on),
        build: typed.chosen("build").unwrap_or(before.build),
        footage: minutes("footage"),
        finished: minutes("finished"),
        published: typed.day("published"),
        address: typed.maybe_words("address", MOST_ADDRESS),
    }
}

/// Letters of an address, at most.
const MOST_ADDRESS: usize = 300;

pub fn fill_handed(it: &HandOver) -> Vec<(&'static str, String)> {
    vec![
        ("count", if it.count == 0 { String::new() } else { it.count.to_string() }),
        ("how", super::chosen::handed_code(it.how).to_owned()),
        ("build", it.build.to_string()),
        ("income", it.income.map(|id| id.to_string()).unwrap_or_default()),
    ]
}

pub fn handed(typed: &Typed, before: &HandOver, entry: Id) -> HandOver {
    let count = typed.whole("count");
    if count == 0 && !typed.form.is_wrong() {
        typed.form.wrong("count", words::one_at_least().to_owned());
    }
    let (on, build) = (typed.on(before.on), typed.chosen("build").unwrap_or(before.build));
    let here = typed.view.shop.still_here(build, entry);
    // Of what two phones kept of the same pieces either can still be put right.
    let more = count > before.count || build != before.build;
    if count > here && more && !typed.form.is_wrong() {
        typed.form.wrong("count", words::so_many_here(here));
    }
    HandOver {
        on,
        build,
        count,
        how: super::chosen::handed(&typed.form.now("how")),
        income: typed.id("income"),
    }
}

/// What became of them, over the fields.
pub fn how(form: Form) -> AnyView {
    fields::set(
        form,
        "how",
        said::what_became(),
        &super::chosen::handed_words(),
        &super::chosen::HANDED_CODES,
    )
}
