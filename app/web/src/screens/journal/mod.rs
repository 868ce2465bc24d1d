//! The journal of a build, a lot or the shop, and each of its entries.

mod add;
pub(in crate::screens) mod correct;
pub mod entry;
pub mod facts;
mod history;
pub mod line;
pub mod publishing_facts;
pub mod running_facts;
mod setting;
mod sheet;

pub use add::AddSheet;
pub use entry::{EntrySheet, put_right};
pub use running_facts::part_size;
pub use sheet::JournalSheet;
