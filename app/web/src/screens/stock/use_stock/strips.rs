//! Strips out of boards: how many boards they take, and how that was worked out.

use super::slots::{Said, Slot, Wrong, side, wrong};
use crate::{
    screens::{first_amount, lengths},
    shell::desk::View,
    words::{refusal, stock as words, strips as said_words},
};
use benchslate_core::measure::{Fraction, Unit, marks::Typed, number, sums::strips::Ripped};

/// Boards that so many strips take, and the working. None: no strips are wanted.
pub fn ripped(view: &View, said: Said) -> Result<Option<(u32, String)>, Wrong> {
    let text = said.text(Slot::Strips);
    if text.trim().is_empty() {
        return Ok(None);
    }
    let strips = number::whole(&text).map_err(|it| wrong(Slot::Strips, &refusal::sentence(&it)))?;
    let inches = |slot: Slot, typed: Typed| {
        let exact = typed.amount.converted(typed.unit.unwrap_or(Unit::Inch), Unit::Inch);
        exact.ok_or_else(|| wrong(slot, words::too_large()))
    };
    let read = |slot: Slot| inches(slot, side(view, said, slot)?);
    let (board, strip) = (read(Slot::Wide)?, read(Slot::Strip)?);
    let kerf = match said.shown(Slot::Kerf) {
        text if text.trim().is_empty() => usual(view),
        _ => read(Slot::Kerf)?,
    };
    let ripped = Ripped { board, strip, kerf };
    let too_wide = || wrong(Slot::Strip, said_words::too_wide());
    let one = ripped.of_one().ok_or_else(too_wide)?;
    let boards = ripped.boards(strips).filter(|boards| *boards > 0).ok_or_else(|| match strips {
        0 => wrong(Slot::Strips, said_words::none_wanted()),
        _ => too_wide(),
    })?;
    let panel = ripped.panel(strips).ok_or_else(too_wide)?;
    let short = |it: Fraction| lengths::short(view, it, lengths::fine(view));
    let working = said_words::ripped(strips, &short(strip), one.strips, &short(one.rest), &short(panel));
    Ok(Some((boards, working)))
}

/// A full-kerf blade (common practice).
fn usual(view: &View) -> Fraction {
    let usual = if first_amount::in_inches(view) {
        Fraction::of(1, 8)
    } else {
        Fraction::of(3, 1).and_then(|mm| mm.converted(Unit::Millimetre, Unit::Inch))
    };
    usual.unwrap_or(Fraction::ZERO)
}

/// What a cut takes where nobody has said: as it is shown.
pub fn usual_kerf(inches: bool) -> &'static str {
    if inches { "1/8 in" } else { "3 mm" }
}
