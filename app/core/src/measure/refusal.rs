//! Why something typed or stored was not taken, what would be, and where it stopped.
//!
//! Closed enums with their data and no words: a new cause doesn't compile until the one place
//! that says it has words for it.

use super::{Day, unit::Dimension};
use rust_decimal::Decimal;

/// A text that was not taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Refusal {
    /// What stopped it.
    pub why: Why,
    /// What would have been taken.
    pub accepts: Accepts,
    /// Where in the text, in characters from its start; none where the whole is meant.
    pub at: Option<usize>,
}

/// What stopped a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Why {
    /// Nothing was typed.
    Empty,
    /// More characters than a field looks at.
    TooLong {
        /// Most that it looks at ([`super::limits`]).
        most: usize,
    },
    /// A character that has no place here.
    Unexpected {
        /// The character.
        found: char,
    },
    /// The text ends before it says a whole value.
    Unfinished,
    /// `1,234` and `1.234` can be read in two ways: ask which.
    GroupedOrDecimal {
        /// Read with its mark between thousands.
        grouped: Decimal,
        /// Read with its mark as the decimal mark.
        decimal: Decimal,
    },
    /// Marks or spaces between thousands: never typed here.
    Grouping,
    /// A fraction with no number above its line.
    NothingAboveLine,
    /// A fraction with no number under its line.
    NothingUnderLine,
    /// A fraction of a length that no rule has marks for.
    NoSuchMark,
    /// A fraction with zero under its line.
    ZeroUnderLine,
    /// A fraction of one or more, or one beside a number that is not whole.
    FractionOverOne,
    /// A part of a thing where things come whole.
    NotWhole,
    /// Below zero, where it can't be.
    Negative,
    /// Nought, where there must be something.
    Nought,
    /// Above the limit of the field.
    TooLarge {
        /// The greatest that is taken.
        most: Decimal,
    },
    /// More digits after the point than are kept.
    TooFine {
        /// Most digits after the point.
        most: usize,
    },
    /// A word or sign that is no unit here.
    UnknownUnit,
    /// A number that needs its unit.
    UnitMissing,
    /// A unit of another kind: a weight where a length is asked.
    OtherKind {
        /// Asked for.
        wanted: Dimension,
        /// Typed.
        found: Dimension,
    },
    /// A coarser unit after a finer one: `4 in 3 ft`.
    FinerFirst,
    /// Sixty minutes or more beside hours.
    MinutesOver59,
    /// Sixty seconds or more beside minutes.
    SecondsOver59,
    /// One stretch of work of more than a day.
    OverADay {
        /// A bare number that would be a stretch if it were minutes: `90`.
        minutes: Option<u16>,
    },
    /// A window of time that ends when it begins.
    SameTimes,
    /// A window of time longer than anybody is free in one go.
    LongWindow {
        /// Its length in whole hours, as it was read.
        hours: i64,
        /// Most hours that are taken.
        most: i64,
    },
    /// No such hour on a clock, or not on a clock of twice twelve.
    NoSuchHour,
    /// No such day in that month, or no such month.
    NoSuchDay,
    /// A date in another century.
    AnotherCentury {
        /// First year that is taken.
        first: i32,
        /// Last year that is taken.
        last: i32,
    },
    /// `11/12` can be read day first or month first: ask which.
    DayOrMonthFirst {
        /// Read day first.
        day_first: Day,
        /// Read month first.
        month_first: Day,
    },
    /// An exponent, as in `1e30`.
    Exponent,
    /// A stored code that this version doesn't know.
    UnknownCode,
}

/// What a field or a stored value takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Accepts {
    /// A quantity: `5/8`, `23 3/4`, `3' 4 5/8"`, `22 mm`, `12 board feet`.
    Quantity,
    /// An amount of money: `12`, `12.50`, `12,50`.
    Amount,
    /// A share in hundredths: `13`, `12.5 %`.
    Percent,
    /// A whole number of things.
    Whole,
    /// A length of work: `2 h 15`, `2:15`, `2.25`, `135 min`.
    Hours,
    /// A length of footage: `40`, `40 s`, `1:30`.
    Footage,
    /// A time to set up: `15`, `15 min`, `1 h 15`.
    SetUp,
    /// A time of day: `08:05`, `8.05`, `8 05 pm`.
    TimeOfDay,
    /// Free hours of a day: `18:00-21:00`, `9-13, 14-16`.
    FreeHours,
    /// Where in a film: `12:30`, `1:02:03`.
    FilmTime,
    /// A day: `2026-11-20`, `20 nov`, `20.11.`, `yesterday`.
    Day,
    /// A stored decimal: plain digits with one full stop at most.
    StoredDecimal,
    /// A stored day: `2026-11-20`.
    StoredDay,
    /// A stored instant: `2026-11-20T08:05:00-05:00`.
    StoredWhen,
    /// A stored unit code.
    StoredUnit,
}

impl Refusal {
    /// The whole text is meant.
    pub(crate) fn whole(why: Why, accepts: Accepts) -> Refusal {
        Refusal { why, accepts, at: None }
    }

    /// It stopped at a character.
    pub(crate) fn at(why: Why, accepts: Accepts, at: usize) -> Refusal {
        Refusal { why, accepts, at: Some(at) }
    }
}
