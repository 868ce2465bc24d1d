//! Stock put right: draws, lots, items.

use super::{DAY, How, Spec, Typed, abroad, dec, hundredths, tick};
use crate::{
    screens::{
        first_amount,
        hours::{
            choices,
            fields::{MOST_NOTE, must, side_code},
        },
        stock::spread,
    },
    words::{journal::Label, units},
};
use benchslate_core::{
    journal::kinds::{Draw, Item, Lot, NewStock, Origin, Side, Source, Use},
    measure::{Dec, Quantity, Refusal, Unit, marks, number},
};

pub const DRAW: [Spec; 4] = [
    ("quantity", Label::Quantity, How::Quantity),
    (DAY, Label::Day, How::Day),
    ("bearer", Label::For, How::Bearer),
    ("note", Label::Note, How::Words),
];

const MARK: &str = "mark";

const LOT: [Spec; 21] = [
    ("name", Label::Name, How::Words),
    (DAY, Label::Day, How::Day),
    ("rough", Label::Rough, How::Quantity),
    ("paid", Label::Paid, How::Money),
    ("fee", Label::Fee, How::Money),
    ("freight", Label::Freight, How::Money),
    ("discount", Label::Discount, How::Money),
    ("tax", Label::Tax, How::Tax),
    ("tax-back", Label::Back, How::Tick),
    ("yield", Label::Yield, How::Part),
    ("whence", Label::Whence, How::Words),
    ("species", Label::Species, How::Words),
    (MARK, Label::Mark, How::Mark),
    ("for-build", Label::ForBuild, How::Build),
    ("new-price", Label::NewPrice, How::Money),
    ("new-waste", Label::Waste, How::Number),
    ("new-tax", Label::Tax, How::Number),
    ("new-delivery", Label::Delivery, How::Money),
    ("new-seen", Label::Seen, How::Words),
    abroad::AMOUNT,
    abroad::CURRENCY,
];

const ITEM: [Spec; 8] = [
    ("name", Label::Name, How::Words),
    ("word", Label::Word, How::Words),
    ("low", Label::Low, How::Quantity),
    ("covers", Label::Covers, How::Words),
    ("link", Label::OwnLink, How::Words),
    ("oxidises", Label::Oxidises, How::Tick),
    ("food-safe", Label::FoodSafe, How::Tick),
    (DAY, Label::Day, How::Day),
];

const MOST_NAME: usize = 80;

/// Only old timber bears a treatment mark.
pub fn lot_specs(it: &Lot) -> Vec<Spec> {
    LOT.into_iter().filter(|(field, _, _)| old(it) || ![MARK, "species"].contains(field)).collect()
}

fn old(it: &Lot) -> bool {
    it.origin == Origin::Salvaged && it.purpose == Use::Timber
}

/// Only a finish covers, dries and touches food.
pub fn item_specs(it: &Item) -> Vec<Spec> {
    let finish = it.purpose == Use::Consumable;
    ITEM.into_iter()
        .filter(|(_, label, _)| finish || !matches!(label, Label::Covers | Label::Oxidises | Label::FoodSafe))
        .collect()
}

pub fn fill_draw(it: &Draw) -> Vec<(&'static str, String)> {
    let mut quantity = it.quantity.plain();
    let unit = crate::words::units::short(it.unit);
    if !unit.is_empty() {
        quantity.push(' ');
        quantity.push_str(unit);
    }
    vec![
        ("quantity", quantity),
        ("bearer", choices::code(it.bearer)),
        ("side", side_code(it.side.unwrap_or(Side::Piece)).to_owned()),
        ("note", it.note.clone().unwrap_or_default()),
    ]
}

pub fn draw(typed: &Typed, before: &Draw) -> Draw {
    let (quantity, unit) = drawn(typed, before).unwrap_or((before.quantity, before.unit));
    let side = typed.side();
    Draw {
        on: typed.on(before.on),
        quantity,
        unit,
        bearer: typed.bearer("bearer").unwrap_or(before.bearer),
        // None is the piece: that stays as it was written.
        side: if side == before.side.unwrap_or(Side::Piece) { before.side } else { Some(side) },
        note: typed.maybe_words("note", MOST_NOTE),
        ..before.clone()
    }
}

/// How much, in a unit that the stock can be counted in.
fn drawn(typed: &Typed, before: &Draw) -> Option<(Dec, Unit)> {
    let hint = marks::Hint { unit: Some(before.unit), gallons: first_amount::gallons() };
    let amount = must(typed.form, "quantity", |text| marks::quantity(text, hint))?;
    let unit = amount.unit.unwrap_or(before.unit);
    let quantity = amount.quantity();
    let fits = match before.from {
        Source::Lot(id) => typed.view.shop.lots.get(&id).map(|lot| counted(amount.in_unit(lot.unit))),
        Source::Item(id) => {
            let merged = || typed.view.shop.merged.get(&id).map(|merged| &merged.item);
            typed.view.shop.items.get(&id).or_else(merged).map(|item| {
                match item.in_its_unit(quantity, unit) {
                    Some(_) => Ok(()),
                    None => counted(amount.in_unit(item.unit)),
                }
            })
        }
    };
    if let Some(Err(refusal)) = fits {
        typed.wrong("quantity", &refusal);
        return None;
    }
    // What reads the same stays as it was written, to the last digit.
    let same = unit == before.unit && Quantity::from_decimal(before.quantity.0) == Some(quantity);
    Some(if same { (before.quantity, unit) } else { (Dec::from(quantity), unit) })
}

fn counted(read: Result<Quantity, Refusal>) -> Result<(), Refusal> {
    read.map(|_| ())
}

pub fn fill_lot(it: &Lot) -> Vec<(&'static str, String)> {
    let new = it.new.as_ref();
    let mut filled = vec![
        ("name", it.name.clone()),
        ("rough", it.rough.plain()),
        ("paid", dec(it.value.or(it.paid))),
        ("fee", dec(it.fee)),
        ("freight", dec(it.freight)),
        ("discount", dec(it.discount)),
        ("tax", dec(it.tax)),
        ("tax-back", tick(it.tax_back)),
        ("yield", it.expected_yield.map(number::part_typed).unwrap_or_default()),
        ("whence", it.whence.clone().unwrap_or_default()),
        ("species", it.species.clone().unwrap_or_default()),
        ("for-build", it.for_build.map(|id| id.to_string()).unwrap_or_default()),
        ("new-price", dec(new.map(|new| new.price))),
        ("new-waste", hundredths(new.and_then(|new| new.waste))),
        ("new-tax", hundredths(new.and_then(|new| new.tax))),
        ("new-delivery", dec(new.and_then(|new| new.delivery))),
        ("new-seen", new.and_then(|new| new.seen.clone()).unwrap_or_default()),
        (MARK, it.mark.map(choices::mark_code).unwrap_or_default().to_owned()),
    ];
    filled.extend(abroad::fill(it.abroad.as_deref()));
    filled
}

pub fn lot(typed: &Typed, before: &Lot) -> Lot {
    let new = typed.money("new-price").map(|price| NewStock {
        price,
        waste: typed.share("new-waste"),
        tax: typed.share("new-tax"),
        delivery: typed.money("new-delivery"),
        basis: before.new.as_ref().and_then(|new| new.basis),
        seen: typed.maybe_words("new-seen", MOST_NAME),
        on: before.new.as_ref().map_or(typed.today, |new| new.on),
    });
    let paid = typed.money("paid");
    Lot {
        on: typed.on(before.on),
        name: typed.words("name", MOST_NAME),
        rough: typed.quantity("rough", before.unit),
        // What a supplied lot is worth stands where others keep the price.
        paid: paid.filter(|_| before.value.is_none()),
        value: before.value.and(paid),
        fee: typed.money("fee"),
        freight: typed.money("freight"),
        discount: typed.money("discount"),
        tax: typed.tax("tax", paid),
        tax_back: typed.ticked("tax-back"),
        for_build: typed.id("for-build"),
        expected_yield: typed.part("yield"),
        new,
        mark: choices::mark(&typed.form.now(MARK)).or(before.mark.filter(|_| !old(before))),
        whence: typed.maybe_words("whence", MOST_NAME),
        abroad: abroad::read(typed),
        species: typed.maybe_words("species", MOST_NAME).or(before.species.clone().filter(|_| !old(before))),
        ..before.clone()
    }
}

pub fn fill_item(it: &Item) -> Vec<(&'static str, String)> {
    let ticked = |said: Option<bool>| tick(said == Some(true));
    vec![
        ("name", it.name.clone()),
        ("word", it.word.clone().unwrap_or_default()),
        ("low", dec(it.low)),
        ("covers", covers(it)),
        ("link", it.link.clone().unwrap_or_default()),
        ("oxidises", ticked(it.oxidises)),
        ("food-safe", ticked(it.food_safe)),
    ]
}

/// As it is typed: `12 m² a L`.
pub fn covers(it: &Item) -> String {
    let Some((area, unit)) = it.covers.zip(it.covers_unit) else { return String::new() };
    let per = units::each_one(it.covers_per.unwrap_or(it.unit), None);
    let mut text = area.plain();
    for part in [units::short(unit), &per] {
        text.push(' ');
        text.push_str(part);
    }
    text
}

/// What was not ticked before and is not now stays unsaid.
fn ticked(typed: &Typed, field: &str, before: Option<bool>) -> Option<bool> {
    match (typed.ticked(field), before) {
        (true, _) => Some(true),
        (false, Some(_)) => Some(false),
        (false, None) => None,
    }
}

pub fn item(typed: &Typed, before: &Item) -> Item {
    let low = (!typed.form.now("low").trim().is_empty()).then(|| typed.quantity("low", before.unit));
    let spread = typed.form.read("covers", |text| spread(typed.view, text, before.unit));
    Item {
        on: typed.on(before.on),
        name: typed.name("name", MOST_NAME),
        word: typed.maybe_words("word", 30),
        low,
        covers: spread.map(|it| it.area.into()),
        covers_unit: spread.map(|it| it.unit),
        covers_per: spread.map(|it| it.per),
        oxidises: ticked(typed, "oxidises", before.oxidises),
        food_safe: ticked(typed, "food-safe", before.food_safe),
        link: typed.maybe_words("link", super::tools::MOST_LINK),
        ..before.clone()
    }
}
