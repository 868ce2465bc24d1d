//! Builds: the list of them, a new one, and each one's own sheets.

mod new_build;

pub use new_build::NewBuildSheet;
