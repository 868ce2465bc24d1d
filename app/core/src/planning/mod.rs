//! Planning: what is to be bought; later steps, calendars, the schedule and its forecast, the way back from a publish date.
//!
//! Never: money worked out, a clock or a random source read. Kept by: `tidy` (arrows) and the lints.

pub mod buying;
pub mod starters;
pub mod taken_over;
