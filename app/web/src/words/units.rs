//! Units as the trade writes them, and quantities with theirs.

use super::Tongue;
use benchslate_core::measure::{
    Quantity, Unit,
    marks::{self, Nearest},
};

/// Beside a figure: `bd ft`, `mm`; nothing for single things.
pub fn short(unit: Unit) -> &'static str {
    match unit {
        Unit::Each => "",
        Unit::BoardFoot => "bd ft",
        Unit::SquareCentimetre => "cm²",
        Unit::SquareMetre => "m²",
        Unit::SquareInch => "sq in",
        Unit::SquareFoot => "sq ft",
        Unit::CubicMetre => "m³",
        Unit::CubicInch => "cu in",
        Unit::CubicFoot => "cu ft",
        Unit::UsFluidOunce => "fl oz",
        Unit::ImperialFluidOunce => "imp fl oz",
        Unit::UsPint => "pt",
        Unit::ImperialPint => "imp pt",
        Unit::UsQuart => "qt",
        Unit::ImperialQuart => "imp qt",
        Unit::UsGallon => "gal",
        Unit::ImperialGallon => "imp gal",
        _ => unit.code(),
    }
}

/// In words, for one or for more: `board feet`, `tins`; nothing for single things.
pub fn long(unit: Unit, one: bool) -> String {
    match unit {
        Unit::BoardFoot => if one { "board foot" } else { "board feet" }.to_owned(),
        Unit::Tin
        | Unit::Bottle
        | Unit::Tube
        | Unit::Box
        | Unit::Bag
        | Unit::Roll
        | Unit::Sheet
        | Unit::Set
        | Unit::Board => several(unit.code(), one),
        _ => short(unit).to_owned(),
    }
}

/// What one of it is called, where prices are noted: `a bd ft`.
pub fn each_one(unit: Unit, word: Option<&str>) -> String {
    let name = match (word, unit) {
        (Some(word), _) => word,
        (None, Unit::Each) => return "each".to_owned(),
        (None, _) => short(unit),
    };
    let an = name.starts_with(['a', 'e', 'i', 'o', 'u']);
    let mut text = String::from(if an { "an " } else { "a " });
    text.push_str(name);
    text
}

/// `disc` or `discs`.
pub fn several(word: &str, one: bool) -> String {
    let mut text = word.to_owned();
    if !one {
        let hisses = ["s", "x", "ch", "sh"].iter().any(|end| word.ends_with(end));
        text.push_str(if hisses { "es" } else { "s" });
    }
    text
}

/// `43 board feet`, `1/4 tin`, `12 discs`, `120`.
pub fn amount(tongue: &Tongue, quantity: Quantity, unit: Unit, word: Option<&str>) -> String {
    let figure = figure(tongue, quantity, unit);
    let one = is_one(quantity, unit);
    let unit = word.map_or_else(|| long(unit, one), |word| several(word, one));
    with_unit(figure, &unit)
}

/// The same with short units: `43 bd ft`.
pub fn amount_short(tongue: &Tongue, quantity: Quantity, unit: Unit, word: Option<&str>) -> String {
    let one = is_one(quantity, unit);
    let name = word.map_or_else(
        || if is_pack(unit) { long(unit, one) } else { short(unit).to_owned() },
        |word| several(word, one),
    );
    with_unit(figure(tongue, quantity, unit), &name)
}

/// Parts of a pack and inches stand as fractions where they are; all else as decimals.
pub fn figure(tongue: &Tongue, quantity: Quantity, unit: Unit) -> String {
    let finest = match unit {
        Unit::Inch => 32,
        _ if is_pack(unit) => 8,
        // A board is a few thousandths of one.
        Unit::CubicMetre => return tongue.number(&quantity.shown_to(4)),
        _ => return tongue.quantity(quantity),
    };
    let near: Nearest = marks::nearest(quantity, finest);
    if near.exact { near.text() } else { tongue.quantity(quantity) }
}

/// Sold by the pack, and used by parts of it.
pub fn is_pack(unit: Unit) -> bool {
    matches!(unit, Unit::Tin | Unit::Bottle | Unit::Tube | Unit::Bag | Unit::Roll | Unit::Box)
}

/// `1 board foot`, but `0.61 board feet`; a part of a pack is a part of one.
fn is_one(quantity: Quantity, unit: Unit) -> bool {
    let one = Quantity::from_decimal(1.into()).unwrap_or_default();
    quantity == one || (is_pack(unit) && quantity < one)
}

fn with_unit(figure: String, unit: &str) -> String {
    let mut text = figure;
    if !unit.is_empty() {
        text.push(' ');
        text.push_str(unit);
    }
    text
}
