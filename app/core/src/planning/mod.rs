//! Planning: steps, calendars, the schedule and its forecast, the way back from a publish date.
//!
//! An empty room as yet: entries of the plan are not kept in this version.
//!
//! Never: money worked out, a clock or a random source read. Kept by: `tidy` (arrows) and the lints.
