//! Exchange: the journal out of the program and into it, in open formats. Bytes in, bytes out.
//!
//! In: a journal, or a file that someone brings. Out: the file's text, or what it would bring.
//! As yet: [`backup`], journal and photos in one file; [`jsonl`], the lines alone; [`picture`], the size of a picture
//! before it is one; [`sample`], the sample shop; [`tables`] as [`csv`], for a spreadsheet; [`cards`], a build's figures as
//! a drawing; [`calendar`], what has a date; [`chapters`] of a film; [`pack`], what goes under it.
//!
//! Never: a line changed, a file half taken, a sentence. Kept by: the property tests beside each format,
//! the kept files under `tests/loads/stored`, and the lints of this crate.

pub mod backup;
pub mod calendar;
pub mod cards;
pub mod chapters;
pub mod csv;
pub mod jsonl;
pub mod pack;
pub mod picture;
pub mod sample;
pub mod tables;
