//! Planning: what is to be bought; the way back from a publish date, and what is owed to a sponsor.
//!
//! Never: money worked out, a clock or a random source read. Kept by: `tidy` (arrows) and the lints.

pub mod buying;
pub mod publishing;
pub mod starters;
pub mod taken_over;
