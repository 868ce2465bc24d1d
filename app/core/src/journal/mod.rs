//! The journal: everything that happened, one dated line each, and the fold to present state.
//!
//! In: lines of text, one revision each. Out: [`Journal`] (entries with their heads) and
//! [`shop::Shop`] (the working facts that timing and costing read).
//!
//! Never: money worked out, hours added up, a clock or a random source read, a line thrown away.
//! Kept by: `tidy` (arrows), the property tests in `merge_laws`, and the lints of this crate.

pub mod act;
pub mod cautions;
pub mod entries;
pub mod find;
pub mod fitted;
pub mod id;
pub mod kinds;
pub mod late;
pub mod line;
pub mod listing;
#[cfg(test)]
mod merge_laws;
pub mod object;
pub mod on;
pub mod order;
pub mod pen;
pub mod revision;
pub mod settings;
pub mod shop;
pub mod stages;

pub use act::Change;
pub use entries::{Added, Entry, Journal};
pub use id::Id;
pub use kinds::{Body, Kind};
pub use line::LineFault;
pub use on::On;
pub use pen::Pen;
pub use revision::{Content, Revision, Stamp};
pub use shop::Shop;
