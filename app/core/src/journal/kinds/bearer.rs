//! What bears a cost, which side it is for, and where a draw comes from.

use crate::journal::Id;
use serde::{Deserialize, Serialize};

/// The one thing that bears a cost. Exactly one for every stretch, draw and expense.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Bearer {
    /// A build.
    Build(Id),
    /// A lot: its reclaiming hours are never counted again as labour of a build.
    Lot(Id),
    /// The shop as a whole.
    Shop,
}

/// What an hour or a cost is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// The thing that is made.
    Piece,
    /// The film of making it.
    Film,
    /// Either, to be shared by a key.
    Both,
}

/// Where a draw comes from: timber names its lot, stock of one sort its item.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Source {
    /// One lot, by specific identification.
    Lot(Id),
    /// An item, by the shop's formula.
    Item(Id),
}
