//! A line of a parts list put right: how many, and its finished size.

use super::{How, Spec, Typed};
use crate::{
    screens::first_amount,
    words::{
        journal::{self as words, Label},
        units,
    },
};
use benchslate_core::{
    journal::kinds::{Extent, Part},
    measure::{Dec, Quantity, Refusal, Unit, marks},
};

pub const PART: [Spec; 6] = [
    ("name", Label::Part, How::Words),
    ("pieces", Label::HowMany, How::Number),
    ("length", Label::Long, How::Quantity),
    ("width", Label::Wide, How::Quantity),
    ("thickness", Label::Thick, How::Quantity),
    ("cut", Label::CutSoFar, How::Number),
];

const MOST_NAME: usize = 80;

pub fn fill(it: &Part) -> Vec<(&'static str, String)> {
    let count = |it: u32| it.to_string();
    vec![
        ("name", it.name.clone()),
        ("pieces", count(it.count)),
        ("length", typed(it.length.as_ref())),
        ("width", typed(it.width.as_ref())),
        ("thickness", typed(it.thickness.as_ref())),
        ("cut", count(it.cut)),
    ]
}

/// As it can be typed again: `28 in`, `23 3/4 in`, `19 mm`.
fn typed(side: Option<&Extent>) -> String {
    let Some(side) = side else { return String::new() };
    let near = marks::nearest(side.amount.quantity().unwrap_or_default(), 64);
    let figure = if side.unit == Unit::Inch && near.exact { near.text() } else { side.amount.plain() };
    [&figure, " ", units::short(side.unit)].concat()
}

pub fn part(typed: &Typed, before: &Part) -> Part {
    let count = typed.whole("pieces");
    if count == 0 && !typed.form.is_wrong() {
        typed.form.wrong("pieces", words::one_at_least().to_owned());
    }
    let cut = typed.form.read("cut", benchslate_core::measure::number::whole).unwrap_or_default();
    if cut > count {
        typed.form.wrong("cut", words::more_than_there_are(count));
    }
    Part {
        name: typed.name("name", MOST_NAME),
        count,
        length: side(typed, "length", before.length.as_ref()),
        width: side(typed, "width", before.width.as_ref()),
        thickness: side(typed, "thickness", before.thickness.as_ref()),
        cut,
        ..before.clone()
    }
}

/// A bare number is in inches or millimetres, as the shop measures.
fn side(it: &Typed, field: &str, before: Option<&Extent>) -> Option<Extent> {
    let inches = first_amount::in_inches(it.view);
    let bare = if inches { Unit::Inch } else { Unit::Millimetre };
    let hint = marks::Hint { unit: Some(bare), gallons: first_amount::gallons() };
    let read = |text: &str| -> Result<(Quantity, Unit), Refusal> {
        let typed = marks::quantity(text, hint)?;
        typed.in_unit(bare)?; // Refuses what is no length.
        Ok((typed.quantity(), typed.unit.unwrap_or(bare)))
    };
    let (quantity, unit) = it.form.read(field, read)?;
    if quantity.is_zero() {
        it.form.wrong(field, words::more_than_none().to_owned());
    }
    // What was not touched stays as it was typed.
    let same = before.filter(|old| old.unit == unit && old.amount.quantity() == Some(quantity));
    Some(same.cloned().unwrap_or(Extent { amount: Dec::from(quantity), unit }))
}
