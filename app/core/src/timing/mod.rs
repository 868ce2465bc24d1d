//! Hours: what each stretch is worth in seconds, clocks and what a tap on them writes, what comes next.
//!
//! In: [`crate::journal::Shop`]. Out: rows of worked seconds, and acts as [`crate::journal::Change`]s.
//!
//! Never: money, a clock of its own (the moment is passed in). Kept by: `tidy` (arrows) and the lints.

pub mod acts;
pub mod afterwards;
pub mod asked;
pub mod at_work;
pub mod bearers;
pub mod bench;
pub mod breakdown;
pub mod builds;
pub mod clocks;
pub mod drying;
pub mod earlier;
pub mod estimates;
pub mod filming;
mod finished;
pub mod learning;
pub mod likely;
pub mod line;
#[cfg(test)]
mod listings;
pub mod shots;
pub mod steps;
pub mod worked;

pub use acts::Hand;
pub use clocks::{Clock, clocks};
pub use worked::{Worked, worked};
