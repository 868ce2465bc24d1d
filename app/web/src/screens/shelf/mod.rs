//! The shelf as books: the formula, the count, what the shop lost, what lay there on a day.

mod count;
mod formula;
mod held;
mod losses;

pub use count::CountSheet;
pub use formula::FormulaSheet;
pub use held::OnTheShelfSheet;
pub use losses::LossesSheet;
