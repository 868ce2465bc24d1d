//! The way round the place: addresses, navigation, the desk with what is going on, install and update.

pub mod desk;
pub mod draft;
pub mod frame;
pub mod go;
pub mod mark;
pub mod painted;
pub mod place;
pub mod titled;
pub mod update;

pub use desk::Desk;
pub use go::Go;
pub use place::{Place, Tab, Way};
