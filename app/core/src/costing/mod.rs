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

mod against_plan;
mod amounts;
mod batch;
mod books;
pub mod build;
mod closing;
mod direct;
mod fetch;
mod formula_effect;
mod gap;
mod held;
mod income;
mod labour;
mod likes;
mod losses;
mod moved;
mod one_off;
mod outlook;
mod overhead;
mod parts;
mod path;
mod planned;
pub mod present;
pub mod price;
mod rates;
mod rule;
pub mod salvage;
mod shelf;
mod sides;
mod statement;
mod stock;
mod tools;
mod under_way;
pub mod what_if;
mod whole;
mod year;
mod year_money;

#[cfg(test)]
mod examples;
#[cfg(test)]
mod laws;

pub use against_plan::{Against, AgainstPlan, StageAgainst, StockAgainst};
pub use amounts::{Amount, Amounts, DaySum};
pub use batch::{Batch, Items, Profit};
pub use books::Books;
pub use build::{BuildCost, OneOff};
pub use closing::Closing;
pub use formula_effect::{Under, formula_effect};
pub use gap::{Flag, Gap};
pub use income::Earned;
pub use likes::Like;
pub use moved::{DrewFor, Moved, moved};
pub use outlook::Ahead;
pub use overhead::Month;
pub use parts::{Hours, Parts};
pub use path::{Path, Step};
pub use planned::Material;
pub use rates::UsualMonth;
pub use rule::{CostKind, Rule, Working};
pub use salvage::{BuildSaving, LotBook, OfLot};
pub use shelf::{Leaves, LowUnder, ShelfLine, UnitCost};
pub use sides::{Key, KeyBy, OneSide};
pub use statement::{Part, PartOf, Sign, Statement, Value};
pub use stock::{Formula, Why, WrittenOff, YieldFrom};
pub use tools::{BladeBook, ToolBook};
pub use whole::DrawnNet;
pub use year::MonthBorne;
pub use year_money::{Flow, FlowLine, YearMoney};
