//! Stock: every draw at its cost, and what is left on the shelf.
//!
//! Accounts: a lot of an item is pooled with the item's other lots and drawn by the shop's
//! formula ([`pooled`]); a lot by itself is drawn by name, by specific identification ([`named_lot`]). A draw
//! that names a pooled lot draws from the item. In = drawn + written off + shelf, in every part.
//! Source: IAS 2 (paragraphs 23 and 25) for the two formulas. Not here: who bears a draw (`build`).

mod accounts;
pub(crate) mod formula;
mod found;
mod frozen;
pub(crate) mod lines;
pub(crate) mod named_lot;
pub(crate) mod pooled;
pub(crate) mod rows;
pub(crate) mod written_off;

pub(crate) use accounts::{Stock, stock};
pub use formula::Formula;
pub(crate) use found::{Found, Looked, Mishap};
pub(crate) use frozen::Frozen;
pub(crate) use lines::{LotLine, Pool};
pub(crate) use named_lot::LotAccount;
pub use named_lot::YieldFrom;
pub(crate) use pooled::ItemAccount;
pub(crate) use rows::DrawRow;
pub use written_off::{Why, WrittenOff};
