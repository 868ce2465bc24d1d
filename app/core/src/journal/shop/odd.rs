//! What the fold found odd in an entry. Never a refusal: what was written stays.

use crate::journal::Id;

/// A field of a stored body.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Field {
    /// A quantity.
    Quantity,
    /// Money.
    Money,
    /// A rate of pay.
    Rate,
    /// A share between 0 and 1.
    Share,
    /// Kilometres.
    Distance,
    /// Hours worked.
    Hours,
}

/// Odd, and said so beside every figure that it touches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Odd {
    /// Written by a newer version of the program: not counted.
    Newer,
    /// Can't be read as its kind says: not counted.
    Unreadable,
    /// A number beyond the limits of `measure::limits`, or negative where it can't be: that field is not counted.
    OutOfRange(Field),
    /// The end lies before the start: no hours.
    EndsBeforeStart,
    /// The unit that was typed can't be turned into the unit of the stock: not counted.
    UnitDoesNotFit,
    /// It names an entry that isn't there or is struck out.
    Lost {
        /// The missing entry.
        what: Id,
    },
}
