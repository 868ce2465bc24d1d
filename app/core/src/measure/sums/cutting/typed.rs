//! Boards as they are typed: `8 ft`, `8 ft x 3, 10 ft`.
//!
//! A comma with a space, a semicolon or a new line stands between lengths; a comma inside a number is its decimal mark.
//! A count stands on either side of a cross, and the other side has the unit.

use crate::measure::{
    Accepts, Dimension, Refusal, Unit, Why, limits,
    marks::{self, Hint, Typed},
    number,
};

/// One length that is there, or can be bought.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TypedStock {
    /// Of one.
    pub length: Typed,
    /// So many are there; none: as many as it takes are bought.
    pub there: Option<u32>,
}

/// Reads lengths of boards; a bare number is in the unit of the hint.
///
/// ```
/// # use benchslate_core::measure::{Unit, marks::Hint, sums::cutting::stock_typed};
/// let feet = Hint { unit: Some(Unit::Foot), ..Hint::default() };
/// let all = stock_typed("8 ft x 3, 10", feet).unwrap();
/// assert_eq!((all[0].there, all[1].there), (Some(3), None));
/// assert_eq!(all[1].length.unit, Some(Unit::Foot));
/// ```
///
/// # Errors
/// As [`marks::quantity`] and [`number::whole`]; what is no length or none at all, more lengths than are looked at, two
/// bare numbers with a cross between them.
pub fn stock_typed(text: &str, hint: Hint) -> Result<Vec<TypedStock>, Refusal> {
    let mut all = Vec::new();
    for part in text.split([';', '\n']).flat_map(|part| part.split(", ")).flat_map(|part| part.split(" and "))
    {
        let part = part.trim().trim_end_matches(',');
        if part.is_empty() {
            continue;
        }
        all.push(one(part, hint)?);
    }
    if all.is_empty() {
        return Err(Refusal::whole(Why::Empty, Accepts::Quantity));
    }
    if all.len() > limits::MOST_LENGTHS {
        return Err(Refusal::whole(Why::TooLong { most: limits::MOST_LENGTHS }, Accepts::Quantity));
    }
    Ok(all)
}

fn one(text: &str, hint: Hint) -> Result<TypedStock, Refusal> {
    let Some((left, right)) = text.split_once(['×', 'x', 'X', '*']) else {
        return Ok(TypedStock { length: length(text, hint)?, there: None });
    };
    let (left, right) = (left.trim(), right.trim());
    let bare = |text: &str| !text.is_empty() && text.chars().all(|c| c.is_ascii_digit());
    let (count, of) = match (bare(left), bare(right)) {
        // `8 x 3`: which of them is the length?
        (true, true) => return Err(Refusal::whole(Why::UnitMissing, Accepts::Quantity)),
        (true, false) => (left, right),
        (false, _) => (right, left),
    };
    Ok(TypedStock { length: length(of, hint)?, there: Some(number::whole(count)?) })
}

fn length(text: &str, hint: Hint) -> Result<Typed, Refusal> {
    let typed = marks::quantity(text, hint)?;
    let found = typed.unit.unwrap_or(Unit::Inch).dimension();
    if found != Dimension::Length {
        let why = Why::OtherKind { wanted: Dimension::Length, found };
        return Err(Refusal::whole(why, Accepts::Quantity));
    }
    if typed.amount.numerator() == 0 {
        return Err(Refusal::whole(Why::Empty, Accepts::Quantity));
    }
    Ok(typed)
}
