//! Ways to say how much: a share of a tin, a count, a size, an amount; and what is typed in each.

use super::super::{
    form::Form,
    thing::{self, Thing},
};
use super::strips;
use crate::dom::prelude::*;
use crate::{
    screens::{first_amount, hours::fields::side_of},
    shell::desk::View,
    words::{refusal, stock as words, units},
};
use benchslate_core::{
    journal::kinds::{Basis, Side, Use},
    measure::{
        Dec, Dimension, Quantity, Ratio, Unit,
        board::{Seasoning, Size},
        coverage::{self, Coats},
        marks::{self, Hint, Typed},
        number,
    },
};

/// One place to type in, or to tap.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slot {
    /// Quarters of a tin.
    Share,
    /// What a tin holds, by its own unit.
    Content,
    /// Whole things.
    Count,
    /// A length of one piece.
    Length,
    /// Its width.
    Wide,
    /// Its thickness.
    Thick,
    /// How many alike.
    Pieces,
    /// How many strips are ripped, where that says how many pieces.
    Strips,
    /// How wide a strip is.
    Strip,
    /// What a cut takes.
    Kerf,
    /// The area of one piece that is coated.
    Area,
    /// How many pieces are coated.
    Coated,
    /// How often.
    Coats,
    /// What stays in the brush and the tin, in hundredths on top.
    OnTop,
    /// In the unit of the stock, or any that turns into it.
    Amount,
}

impl Slot {
    /// Its place in the form; also its id on the page.
    pub fn field(self) -> &'static str {
        match self {
            Slot::Share => "use-share",
            Slot::Content => "use-content",
            Slot::Count => "use-count",
            Slot::Length => "use-length",
            Slot::Wide => "use-wide",
            Slot::Thick => "use-thick",
            Slot::Pieces => "use-pieces",
            Slot::Strips => "use-strips",
            Slot::Strip => "use-strip",
            Slot::Kerf => "use-kerf",
            Slot::Area => "use-area",
            Slot::Coated => "use-coated",
            Slot::Coats => "use-coats",
            Slot::OnTop => "use-on-top",
            Slot::Amount => "use-amount",
        }
    }

    /// Where its lit marks are kept.
    fn lit(self) -> &'static str {
        match self {
            Slot::Wide => "use-wide-lit",
            Slot::Thick => "use-thick-lit",
            Slot::Strip => "use-strip-lit",
            Slot::Kerf => "use-kerf-lit",
            _ => "use-length-lit",
        }
    }

    /// A side of a piece.
    pub fn is_side(self) -> bool {
        matches!(self, Slot::Length | Slot::Wide | Slot::Thick | Slot::Strip | Slot::Kerf)
    }

    /// By the area that is coated.
    pub fn is_coating(self) -> bool {
        matches!(self, Slot::Area | Slot::Coated | Slot::Coats | Slot::OnTop)
    }

    /// By the strips that are ripped out of it; the first cell of the way is the pieces.
    pub fn is_ripping(self) -> bool {
        matches!(self, Slot::Strips | Slot::Strip | Slot::Kerf)
    }

    /// The cell of the first row that it stands under; itself, where it is one.
    pub fn over(self) -> Slot {
        match self {
            _ if self.is_coating() => Slot::Area,
            _ if self.is_ripping() => Slot::Pieces,
            _ => self,
        }
    }

    /// All of them.
    pub const ALL: [Slot; 15] = [
        Slot::Share,
        Slot::Content,
        Slot::Count,
        Slot::Length,
        Slot::Wide,
        Slot::Thick,
        Slot::Pieces,
        Slot::Strips,
        Slot::Strip,
        Slot::Kerf,
        Slot::Area,
        Slot::Coated,
        Slot::Coats,
        Slot::OnTop,
        Slot::Amount,
    ];
}

/// The ways that fit a thing, the likeliest first.
pub fn slots(thing: &Thing) -> Vec<Slot> {
    let timber = thing.purpose == Use::Timber;
    let mut slots = plain_slots(thing, timber);
    if thing.covers.is_some() {
        // After the share of a tin, which is a tap; before what is typed anyway.
        let at = usize::from(slots.first() == Some(&Slot::Share));
        slots.splice(at..at, [Slot::Area, Slot::Coated, Slot::Coats, Slot::OnTop]);
    }
    if let Some(at) = slots.iter().position(|slot| *slot == Slot::Pieces).filter(|_| timber) {
        let at = at.saturating_add(1);
        slots.splice(at..at, [Slot::Strips, Slot::Strip, Slot::Kerf]);
    }
    slots
}

fn plain_slots(thing: &Thing, timber: bool) -> Vec<Slot> {
    match thing.unit.dimension() {
        Dimension::Pack if units::is_pack(thing.unit) => match thing.content {
            Some(_) => vec![Slot::Share, Slot::Content, Slot::Count],
            None => vec![Slot::Share, Slot::Count],
        },
        Dimension::Pack | Dimension::Count => vec![Slot::Count],
        Dimension::BoardMeasure => vec![Slot::Length, Slot::Wide, Slot::Thick, Slot::Pieces, Slot::Amount],
        Dimension::Volume if timber => {
            vec![Slot::Length, Slot::Wide, Slot::Thick, Slot::Pieces, Slot::Amount]
        }
        Dimension::Area => vec![Slot::Length, Slot::Wide, Slot::Pieces, Slot::Amount],
        Dimension::Length | Dimension::Volume | Dimension::Mass => vec![Slot::Amount],
    }
}

/// What is typed for one thing. What was typed for another one is not shown, and goes once this one is typed for.
#[derive(Clone, Copy)]
pub struct Said {
    form: Form,
    of: StoredValue<String>,
}

const THING: &str = "thing";
const UNIT: &str = "use-unit";
const SIDE: &str = "use-side";

impl Said {
    /// For a thing.
    pub fn of(form: Form, thing: &Thing) -> Said {
        Said { form, of: StoredValue::new(thing.id().to_string()) }
    }

    /// What stands in a slot.
    pub fn text(self, slot: Slot) -> String {
        self.get(slot.field())
    }

    /// Types into a slot; its marks stay lit.
    pub fn set(self, slot: Slot, text: String) {
        self.put(slot.field(), text);
        Slot::ALL.iter().for_each(|slot| self.form.right(slot.field()));
    }

    /// Marks of the rule that are lit: 2 to 32.
    pub fn lit(self, slot: Slot) -> Vec<u32> {
        self.get(slot.lit()).split(',').filter_map(|under| under.parse().ok()).collect()
    }

    /// Lights a mark, or puts it out.
    pub fn light(self, slot: Slot, under: u32) {
        let mut lit = self.lit(slot);
        match lit.iter().position(|it| *it == under) {
            Some(at) => {
                lit.remove(at);
            }
            None => lit.push(under),
        }
        self.set_lit(slot, &lit);
    }

    /// Lights these marks and no other.
    pub fn set_lit(self, slot: Slot, lit: &[u32]) {
        let text: Vec<String> = lit.iter().map(u32::to_string).collect();
        self.put(slot.lit(), text.join(","));
        self.form.right(slot.field());
    }

    /// The unit of a bare length.
    pub fn unit(self, view: &View) -> Unit {
        let inches = if first_amount::in_inches(view) { Unit::Inch } else { Unit::Millimetre };
        Unit::from_code(&self.get(UNIT)).unwrap_or(inches)
    }

    /// Measure in this unit from here on.
    pub fn set_unit(self, unit: Unit) {
        self.put(UNIT, unit.code().to_owned());
    }

    /// What it is for, where that was chosen.
    pub fn side(self) -> Option<Side> {
        side_of(&self.get(SIDE))
    }

    /// It is for this.
    pub fn set_side(self, code: &str) {
        self.put(SIDE, code.to_owned());
    }

    /// Says what is wrong with a slot.
    pub fn wrong(self, wrong: Wrong) {
        self.form.wrong(wrong.slot.field(), wrong.sentence);
    }

    /// What is wrong with a slot.
    pub fn error(self, slot: Slot) -> Signal<Option<String>> {
        self.form.error(slot.field())
    }

    /// After a use: widths and thicknesses stay for the next piece of the same timber.
    pub fn used(self) {
        // What is coated stays too: the next coat is of the same.
        for slot in
            [Slot::Share, Slot::Content, Slot::Count, Slot::Length, Slot::Pieces, Slot::Strips, Slot::Amount]
        {
            self.put(slot.field(), String::new());
        }
        self.put(Slot::Length.lit(), String::new());
        // The next one starts at what is likely, and this draw is what it goes by.
        self.put(SIDE, String::new());
    }

    /// As it stands in the well: `19` with a quarter and an eighth lit is `19 3/8`.
    pub fn shown(self, slot: Slot) -> String {
        let text = self.text(slot);
        let lit = if slot.is_side() { lit_sum(&self.lit(slot)) } else { None };
        match lit {
            Some(sum) if text.is_empty() => sum,
            Some(sum) if !text.contains('/') => {
                let mut shown = text.trim_end().to_owned();
                shown.push(' ');
                shown.push_str(&sum);
                shown
            }
            _ => text,
        }
    }

    fn get(self, field: &str) -> String {
        let mine = self.of.with_value(|of| self.form.get(THING) == *of);
        if mine { self.form.get(field) } else { String::new() }
    }

    fn put(self, field: &str, text: String) {
        let of = self.of.get_value();
        if self.form.now(THING) != of {
            for slot in Slot::ALL {
                self.form.set(slot.field(), "");
                self.form.set(slot.lit(), "");
            }
            self.form.set(SIDE, "");
            self.form.set(THING, of);
        }
        self.form.set(field, text);
    }
}

/// What is wrong, and with which slot.
#[derive(Clone, PartialEq, Eq)]
pub struct Wrong {
    /// Where.
    pub slot: Slot,
    /// In words.
    pub sentence: String,
}

/// How much, as it is kept.
#[derive(Clone, PartialEq)]
pub struct Amount {
    /// As typed.
    pub quantity: Dec,
    /// Its unit.
    pub unit: Unit,
    /// The same in the unit of the stock.
    pub in_stock: Quantity,
    /// On the key and in the mark: `19 3/8 in`, `1/4 tin`.
    pub said: String,
    /// The working under it, kept with the draw.
    pub size: Option<String>,
}

/// Reads what is typed for the way that is chosen.
pub fn amount(view: &View, thing: &Thing, said: Said, slot: Slot) -> Result<Amount, Wrong> {
    match slot {
        Slot::Share => share(view, thing, said),
        Slot::Content | Slot::Count | Slot::Amount => plain(view, thing, said, slot),
        Slot::Length | Slot::Wide | Slot::Thick | Slot::Pieces => size(view, thing, said),
        Slot::Strips | Slot::Strip | Slot::Kerf => size(view, thing, said),
        Slot::Area | Slot::Coated | Slot::Coats | Slot::OnTop => coats(view, thing, said),
    }
}

/// A quarter, a half, three quarters, a whole, as quantities.
pub fn quarters() -> [Quantity; 4] {
    ["0.25", "0.5", "0.75", "1"].map(|text| Dec::parse(text).ok().and_then(Dec::quantity).unwrap_or_default())
}

fn share(view: &View, thing: &Thing, said: Said) -> Result<Amount, Wrong> {
    let at = said.text(Slot::Share).parse::<usize>().ok().and_then(|at| quarters().get(at).copied());
    let quantity = at.ok_or_else(|| wrong(Slot::Share, words::say_how_much()))?;
    Ok(Amount {
        quantity: quantity.into(),
        unit: thing.unit,
        in_stock: quantity,
        said: thing.amount(view.tongue, quantity),
        size: None,
    })
}

fn plain(view: &View, thing: &Thing, said: Said, slot: Slot) -> Result<Amount, Wrong> {
    let text = said.text(slot);
    if text.trim().is_empty() {
        return Err(wrong(slot, words::say_how_much()));
    }
    let bare = match (slot, thing.content) {
        (Slot::Content, Some((_, unit))) => unit,
        _ => thing.unit,
    };
    let hint = Hint { unit: Some(bare), gallons: first_amount::gallons() };
    let typed = marks::quantity(&text, hint).map_err(|it| wrong(slot, &refusal::sentence(&it)))?;
    let unit = typed.unit.unwrap_or(bare);
    let quantity = typed.quantity();
    let said = if unit == thing.unit {
        thing.amount_short(view.tongue, quantity)
    } else {
        units::amount_short(view.tongue, quantity, unit, None)
    };
    kept(view, thing, slot, (quantity, unit), said, None)
}

/// The units that an area and its sides are typed in, where none stands beside them.
pub fn area_units(view: &View) -> (Unit, Unit) {
    if first_amount::in_inches(view) {
        (Unit::SquareFoot, Unit::Inch)
    } else {
        (Unit::SquareMetre, Unit::Millimetre)
    }
}

fn coats(view: &View, thing: &Thing, said: Said) -> Result<Amount, Wrong> {
    let text = said.text(Slot::Area);
    if text.trim().is_empty() {
        return Err(wrong(Slot::Area, words::area_missing()));
    }
    let (unit, sides) = area_units(view);
    let hint = Hint { unit: Some(unit), gallons: first_amount::gallons() };
    let read = coverage::area_typed(&text, hint, sides);
    let (area, unit) = read.map_err(|it| wrong(Slot::Area, &refusal::sentence(&it)))?;
    let many = |slot: Slot| match said.text(slot) {
        text if text.trim().is_empty() => Ok(1),
        text => number::whole(&text).map_err(|it| wrong(slot, &refusal::sentence(&it))),
    };
    let coats = Coats { area, unit, pieces: many(Slot::Coated)?, coats: many(Slot::Coats)? };
    let on_top = match said.text(Slot::OnTop) {
        text if text.trim().is_empty() => Ratio::ZERO,
        text => {
            let share = number::percent(&text).map_err(|it| wrong(Slot::OnTop, &refusal::sentence(&it)))?;
            Ratio::share(share).ok_or_else(|| wrong(Slot::OnTop, words::more_than_all_on_top()))?
        }
    };
    let takes = thing.covers.and_then(|(covers, unit)| coats.takes(covers, unit, on_top));
    let too_large = || wrong(Slot::Area, words::area_too_large());
    let (takes, coated) = (takes.ok_or_else(too_large)?, coats.coated().ok_or_else(too_large)?);
    if takes.is_zero() {
        return Err(wrong(Slot::Area, words::area_missing()));
    }
    let amount = |quantity| units::amount_short(view.tongue, quantity, unit, None);
    let covers = thing.covers.map(|(covers, of)| {
        let each = units::each_one(thing.unit, thing.word.as_deref());
        words::covers_each(&units::amount_short(view.tongue, covers, of, None), &each)
    });
    let working = words::coated(&amount(area), coats.pieces, coats.coats, &amount(coated));
    Ok(Amount {
        quantity: takes.into(),
        unit: thing.unit,
        in_stock: takes,
        said: thing.amount_short(view.tongue, takes),
        size: Some(words::coated_by(
            &working,
            &covers.unwrap_or_default(),
            &view.tongue.quantity(on_top.hundredths()),
        )),
    })
}

fn size(view: &View, thing: &Thing, said: Said) -> Result<Amount, Wrong> {
    let area = thing.unit.dimension() == Dimension::Area;
    let length = side(view, said, Slot::Length)?;
    let wide = side(view, said, Slot::Wide)?;
    let ripped = strips::ripped(view, said)?;
    let pieces = match (&ripped, said.text(Slot::Pieces)) {
        (Some((boards, _)), _) => *boards,
        (None, text) if text.trim().is_empty() => 1,
        (None, text) => number::whole(&text).map_err(|it| wrong(Slot::Pieces, &refusal::sentence(&it)))?,
    };
    let refused = |it| wrong(Slot::Length, &refusal::sentence(&it));
    let bare = said.unit(view);
    let mut wide_text = side_text(view, wide);
    let (quantity, unit, thick) = if area {
        let one = marks::area(length, wide, bare, thing.unit).map_err(refused)?;
        let all = Coats { area: one, unit: thing.unit, pieces, coats: 1 }.coated();
        (all, thing.unit, None)
    } else {
        let thick = side(view, said, Slot::Thick)?;
        let size = Size::typed(thick, wide, length).map_err(refused)?;
        let counted = match thing.basis {
            Basis::Actual => size.true_volume(pieces),
            Basis::Nominal => size.sold_as(Seasoning::Dry).unwrap_or(size).board_measure(pieces),
        };
        if thick.unit == wide.unit {
            wide_text = units::figure(view.tongue, wide.quantity(), bare_unit(wide));
        }
        (counted, Unit::BoardFoot, Some(side_text(view, thick)))
    };
    let quantity = quantity.ok_or_else(|| wrong(Slot::Length, words::too_large()))?;
    let same = wide.unit == length.unit;
    let long = if same {
        units::figure(view.tongue, length.quantity(), bare_unit(length))
    } else {
        side_text(view, length)
    };
    let mut sides = words::size(&long, &wide_text, thick.as_deref(), pieces);
    if let Some((_, working)) = ripped {
        sides.push_str("; ");
        sides.push_str(&working);
    }
    let said = words::pieces_of(pieces, &side_text(view, length));
    kept(view, thing, Slot::Length, (quantity, unit), said, Some(sides))
}

fn kept(
    view: &View,
    thing: &Thing,
    slot: Slot,
    (quantity, unit): (Quantity, Unit),
    said: String,
    size: Option<String>,
) -> Result<Amount, Wrong> {
    let in_stock = view.shop.in_stock_unit(thing.source, quantity, unit);
    let does_not_fit = || {
        let kept_in = units::each_one(thing.unit, thing.word.as_deref());
        wrong(slot, &words::unit_does_not_fit(&kept_in))
    };
    let in_stock = in_stock.ok_or_else(does_not_fit)?;
    // What was measured is kept in the unit of the stock; what was typed as it was typed.
    let (quantity, unit) = if size.is_some() { (in_stock, thing.unit) } else { (quantity, unit) };
    Ok(Amount { quantity: quantity.into(), unit, in_stock, said, size })
}

/// One side, typed marks and lit ones together.
pub(super) fn side(view: &View, said: Said, slot: Slot) -> Result<Typed, Wrong> {
    let (text, lit) = (said.text(slot), said.lit(slot));
    if text.trim().is_empty() && lit.is_empty() {
        return Err(wrong(slot, &words::side_missing(super::draw::label(slot))));
    }
    let bare = said.unit(view);
    let hint = Hint { unit: Some(bare), gallons: first_amount::gallons() };
    let typed =
        if lit.is_empty() { marks::quantity(&text, hint) } else { marks::with_lit(&text, &lit, hint) };
    let typed = typed.map_err(|it| wrong(slot, &refusal::sentence(&it)))?;
    Ok(Typed { unit: Some(typed.unit.unwrap_or(bare)), ..typed })
}

fn side_text(view: &View, side: Typed) -> String {
    units::amount_short(view.tongue, side.quantity(), bare_unit(side), None)
}

fn bare_unit(side: Typed) -> Unit {
    side.unit.unwrap_or(Unit::Inch)
}

/// `1/4` and `1/8` as `3/8`; none lit: nothing.
pub fn lit_sum(lit: &[u32]) -> Option<String> {
    let sum = marks::with_lit("", lit, Hint::default()).ok().filter(|_| !lit.is_empty())?;
    Some(marks::nearest(sum.quantity(), 32).text())
}

/// The text of a stroke: the last digit goes above the line. Tapped again it takes one more digit.
/// `19` becomes `1 9/`, again `19/`; `193` becomes `19 3/`, again `1 93/`.
pub fn stroke(text: &str) -> String {
    if let Some(before) = text.strip_suffix('/') {
        let Some((whole, above)) = before.rsplit_once(' ') else { return text.to_owned() };
        let mut whole = whole.to_owned();
        let Some(digit) = whole.pop().filter(char::is_ascii_digit) else { return text.to_owned() };
        let gap = if whole.is_empty() || whole.ends_with(' ') { "" } else { " " };
        return format!("{whole}{gap}{digit}{above}/");
    }
    let mut whole = text.trim_end().to_owned();
    match whole.pop() {
        Some(digit) if digit.is_ascii_digit() => {
            let gap = if whole.ends_with(|c: char| c.is_ascii_digit()) { " " } else { "" };
            format!("{whole}{gap}{digit}/")
        }
        _ => text.to_owned(),
    }
}

pub(super) fn wrong(slot: Slot, sentence: &str) -> Wrong {
    Wrong { slot, sentence: sentence.to_owned() }
}

/// What is left, for the drawing of the open tin: 2.5 tins show half a tin.
pub fn open_tin(left: Quantity) -> f64 {
    let left = thing::number(left);
    let part = left.fract();
    if left > 0.0 && part == 0.0 { 1.0 } else { part.max(0.0) }
}

#[cfg(test)]
mod tests {
    use super::{lit_sum, stroke};

    #[track_caller]
    fn check(typed: &str, once: &str, twice: &str) {
        let first = stroke(typed);
        assert_eq!((first.as_str(), stroke(&first).as_str()), (once, twice), "{typed}");
    }

    #[test]
    fn a_stroke_takes_the_last_digit_and_then_one_more() {
        check("193", "19 3/", "1 93/");
        check("1911", "191 1/", "19 11/");
        check("5", "5/", "5/");
        check("12", "1 2/", "12/");
        check("3 ft 45", "3 ft 4 5/", "3 ft 45/");
        check("", "", "");
    }

    #[test]
    fn lit_marks_add_up() {
        assert_eq!(lit_sum(&[4, 8]).as_deref(), Some("3/8"));
        assert_eq!(lit_sum(&[2, 4, 8, 16, 32]).as_deref(), Some("31/32"));
        assert_eq!(lit_sum(&[]), None);
    }
}
