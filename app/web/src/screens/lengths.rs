//! Lengths worked out by a sum, as they are shown: to the maker's smallest fraction, or the tenth of a millimetre.

use crate::{screens::first_amount, shell::desk::View, words::units};
use benchslate_core::measure::{Fraction, Unit, marks};

/// With its unit.
pub fn short(view: &View, inches: Fraction, unit: Unit) -> String {
    [&figure(view, inches, unit), " ", units::short(unit)].concat()
}

/// Without it.
pub fn figure(view: &View, inches: Fraction, unit: Unit) -> String {
    let amount = inches.converted(Unit::Inch, unit).and_then(Fraction::quantity).unwrap_or_default();
    match unit {
        Unit::Inch => marks::nearest(amount, view.shop.smallest_fraction()).text(),
        Unit::Millimetre => view.tongue.number(&amount.shown_to(1)),
        _ => view.tongue.quantity(amount),
    }
}

/// Inches or millimetres, as the shop measures.
pub fn fine(view: &View) -> Unit {
    if first_amount::in_inches(view) { Unit::Inch } else { Unit::Millimetre }
}

/// Feet or metres.
pub fn coarse(view: &View) -> Unit {
    if first_amount::in_inches(view) { Unit::Foot } else { Unit::Metre }
}
