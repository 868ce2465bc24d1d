//! A find put right.

use super::{DAY, How, Spec, Typed, dec, hundredths};
use crate::words::journal::Label;
use benchslate_core::{
    journal::kinds::{Case, Cases, Find, NewStock},
    measure::number,
};

pub const FIND: [Spec; 18] = [
    ("name", Label::Name, How::Words),
    (DAY, Label::Day, How::Day),
    ("whence", Label::Whence, How::Words),
    ("species", Label::Species, How::Words),
    ("rough", Label::Rough, How::Quantity),
    ("boards", Label::Boards, How::Number),
    ("asked", Label::Asked, How::Money),
    ("fee", Label::Fee, How::Money),
    ("km", Label::Km, How::Number),
    ("usable-badly", Label::UsableBadly, How::Part),
    ("usable-usually", Label::UsableUsually, How::Part),
    ("usable-well", Label::UsableWell, How::Part),
    ("minutes-badly", Label::MinutesBadly, How::Number),
    ("minutes-usually", Label::MinutesUsually, How::Number),
    ("minutes-well", Label::MinutesWell, How::Number),
    ("new-price", Label::NewPrice, How::Money),
    ("new-waste", Label::Waste, How::Number),
    ("new-tax", Label::NewTax, How::Number),
];

const MOST_NAME: usize = 80;

pub fn fill_find(it: &Find) -> Vec<(&'static str, String)> {
    let new = it.new.as_ref();
    let Cases { badly, usually, well } = it.cases;
    let usable = |case: Case| number::part_typed(case.usable);
    vec![
        ("name", it.name.clone()),
        ("whence", it.whence.clone().unwrap_or_default()),
        ("species", it.species.clone().unwrap_or_default()),
        ("rough", it.rough.plain()),
        ("boards", it.boards.map(|boards| boards.to_string()).unwrap_or_default()),
        ("asked", dec(it.asked)),
        ("fee", dec(it.fee)),
        ("km", dec(it.km)),
        ("usable-badly", usable(badly)),
        ("usable-usually", usable(usually)),
        ("usable-well", usable(well)),
        ("minutes-badly", badly.minutes.to_string()),
        ("minutes-usually", usually.minutes.to_string()),
        ("minutes-well", well.minutes.to_string()),
        ("new-price", dec(new.map(|new| new.price))),
        ("new-waste", hundredths(new.and_then(|new| new.waste))),
        ("new-tax", hundredths(new.and_then(|new| new.tax))),
    ]
}

pub fn find(typed: &Typed, before: &Find) -> Find {
    let case = |usable: &str, minutes: &str| Case {
        usable: typed.part(usable).unwrap_or_default(),
        minutes: typed.whole(minutes),
    };
    let was = before.new.as_ref();
    let new = typed.money("new-price").map(|price| NewStock {
        price,
        waste: typed.share("new-waste"),
        tax: typed.share("new-tax"),
        delivery: was.and_then(|new| new.delivery),
        basis: was.and_then(|new| new.basis),
        seen: was.and_then(|new| new.seen.clone()),
        on: was.map_or(typed.today, |new| new.on),
    });
    Find {
        on: typed.on(before.on),
        name: typed.name("name", MOST_NAME),
        whence: typed.maybe_words("whence", MOST_NAME),
        species: typed.maybe_words("species", MOST_NAME),
        rough: typed.quantity("rough", before.unit),
        boards: typed.form.read("boards", number::whole),
        asked: typed.money("asked"),
        fee: typed.money("fee"),
        km: typed.form.read("km", number::amount).map(benchslate_core::measure::Dec),
        cases: Cases {
            badly: case("usable-badly", "minutes-badly"),
            usually: case("usable-usually", "minutes-usually"),
            well: case("usable-well", "minutes-well"),
        },
        new,
        ..before.clone()
    }
}
