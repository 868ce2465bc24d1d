//! Units as the trade writes them.

use benchslate_core::measure::Unit;

/// Beside a figure: `bd ft`, `mm`; nothing for single things.
pub fn short(unit: Unit) -> &'static str {
    match unit {
        Unit::Each => "",
        _ => unit.code(),
    }
}
