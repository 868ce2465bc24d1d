//! Small sums of the bench, a file each: what a sum takes, what it gives, and the parts of its working.
//!
//! Each is worked out in the form that needs it and kept with its working; there is no page of calculators. Everything
//! is exact until a figure is kept or shown, which rounds once. Not here: how a length is typed (`marks`), what a
//! finish covers (`coverage`), board measure (`board`), words.

pub mod cutting;
pub mod film;
pub mod movement;
pub mod resin;
pub mod species;
pub mod strips;
