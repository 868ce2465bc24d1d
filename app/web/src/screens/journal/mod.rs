//! The journal of a build, a lot or the shop, and each of its entries.

pub(in crate::screens) mod correct;
mod entry;
pub mod facts;
mod history;
pub mod line;
pub mod running_facts;
mod setting;
mod sheet;

pub use entry::EntrySheet;
pub use sheet::JournalSheet;
