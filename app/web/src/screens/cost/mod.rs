//! What a build cost: the sheet by kind, the bridge from what was spent, and any figure opened.

mod beside;
mod figures;
mod missing;
mod opened;
mod saving;
mod say;
mod sheet;
mod spent;

pub use figures::{At, Remarks, Row, drawn, hatch, missing, remarks, rows, size};
pub use missing::no_build;
pub use opened::OpenedSheet;
pub use saving::SavingSheet;
pub use say::Say;
pub use sheet::CostSheet;
pub use spent::SpentSheet;
