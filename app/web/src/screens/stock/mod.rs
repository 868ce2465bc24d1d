//! Stock: the shelf, what comes in, what is used, what comes back.

pub mod form;
mod new_lot;
mod pad;
mod shelf;
mod sort;
mod thing;
pub mod use_stock;

pub use new_lot::NewLotSheet;
pub use shelf::StockSheet;
pub use sort::SortSheet;
pub use use_stock::UseSheet;
