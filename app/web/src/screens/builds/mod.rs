//! Builds: the list of them, a new one, and each one's own sheets that have no room of their own yet.

mod list;
mod new_build;
mod new_stage;

pub use list::BuildsSheet;
pub use new_build::NewBuildSheet;
pub use new_stage::NewStageSheet;
