//! Stock: the shelf, what comes in, what is used, what comes back.

mod across;
mod chain;
mod expense;
pub mod finds;
pub mod form;
mod give_back;
mod lot;
mod mix;
mod new_lot;
pub mod pad;
mod same;
mod shelf;
mod sort;
pub mod tax;
pub mod thing;
pub mod usable;
pub mod use_stock;
pub mod ways;

pub use across::AcrossSheet;
pub use chain::ChainSheet;
pub use expense::ExpenseSheet;
pub use finds::{FindSheet, NewFindSheet};
pub use give_back::ReturnSheet;
pub use lot::LotSheet;
pub use mix::MixSheet;
pub use new_lot::{NewLotSheet, spread};
pub use same::SameSheet;
pub use shelf::StockSheet;
pub use sort::SortSheet;
pub use thing::number;
pub use use_stock::UseSheet;
