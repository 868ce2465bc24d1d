//! Tools: all of them with the rate of a run hour, one by itself, and how long it will still last.

mod life;
mod list;
mod look;
mod tool;

pub use life::LifeSheet;
pub use list::ToolsSheet;
pub use look::{named, worth};
pub use tool::ToolSheet;
