//! Publishing a build's film: back from its date, what is owed, chapters, and the pack that goes under it.

pub mod calendar;
pub mod chapter;
mod day;
mod leads;
mod look;
mod pack;
mod pack_text;
mod sheet;

pub use day::DaySheet;
pub use leads::LeadsSheet;
pub use pack::PackSheet;
pub use sheet::PublishingSheet;
