//! Costing: what everything cost, as statements that open down to the entries.
//!
//! In: [`crate::journal::Shop`], the worked seconds of [`crate::timing`], a moment. Out: [`Books`], one
//! pass over everything, and trees of [`Statement`]s on demand ([`BuildCost`]).
//! A cost is a vector of parts ([`Parts`]); a figure has gaps ([`Gap`]) and flags ([`Flag`]) and never fails.
//!
//! Adding a rule: its file, one line here, one line where a statement uses it; the matches on [`Rule`]
//! without a catch-all point out the rest.
//!
//! Never: sentences, a clock, a rounding above the leaves but by allocation.
//! Kept by: `tidy` (arrows), the lints of this crate, the property tests in `laws`.

mod amounts;
mod books;
pub mod build;
mod direct;
mod gap;
mod labour;
mod parts;
mod path;
pub mod present;
mod rule;
pub mod salvage;
mod shelf;
mod statement;
mod stock;

#[cfg(test)]
mod examples;
#[cfg(test)]
mod laws;

pub use amounts::{Amount, Amounts, DaySum};
pub use books::Books;
pub use build::BuildCost;
pub use gap::{Flag, Gap};
pub use parts::{Hours, Parts};
pub use path::{Path, Step};
pub use rule::{CostKind, Rule, Working};
pub use salvage::LotBook;
pub use shelf::{ShelfLine, UnitCost};
pub use statement::{Part, PartOf, Sign, Statement, Value};
pub use stock::YieldFrom;
