//! All that a person reads, a file a subject, one function a sentence. A second language is a second folder.
//!
//! Never: a figure worked out here, a sentence built elsewhere. Kept by: review, and `core` has no text.

pub mod across;
pub mod add;
pub mod away;
pub mod bearing;
pub mod bench;
pub mod builds;
pub mod buying;
pub mod cards;
pub mod cautions;
pub mod common;
pub mod correcting;
pub mod cost;
pub mod drying;
pub mod earned;
pub mod exchange;
pub mod expense;
pub mod failure;
pub mod files;
pub mod finds;
pub mod gaps;
pub mod hours;
pub mod income;
pub mod journal;
pub mod labels;
pub mod late;
pub mod lots;
pub mod mix;
pub mod money;
pub mod months;
pub mod movement;
pub mod notes;
pub mod parts;
pub mod photos;
pub mod print;
pub mod receipts;
pub mod refusal;
pub mod salvage;
pub mod same;
pub mod sample;
pub mod shelf;
pub mod shop;
mod sorting;
pub mod steps;
pub mod stock;
pub mod strips;
pub mod time;
mod tongue;
pub mod tools;
pub mod units;
pub mod update;
pub mod versions;
pub mod what_if;
pub mod year;

pub use tongue::Tongue;
