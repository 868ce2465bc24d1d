//! The one small record that the first screen is painted from, and the last mark in it.

use benchslate_core::{
    journal::{Id, object},
    timing::bench::Bench,
};
use serde::{Deserialize, Serialize};

/// Words of a mark: made once, when it is written.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Mark {
    /// In the second pen.
    pub kind: String,
    /// What was done.
    pub what: String,
    /// What it left.
    pub second: Option<String>,
}

/// The last thing that was written. It stays until the next act: no timer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct LastMark {
    /// What it says.
    pub mark: Mark,
    /// When, in seconds since 1970.
    pub at: i64,
    /// Its revisions: what Undo takes back.
    pub written: Vec<Id>,
    /// It was taken back; the key puts it back again.
    pub undone: bool,
    /// A stretch that this act stopped: its end can still be moved earlier.
    pub stopped: Option<Id>,
    /// Whether it is on the disk.
    #[serde(skip)]
    pub safety: Safety,
}

/// Whether the last act is on the disk.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Safety {
    /// Its transaction has completed. What is read from a record was.
    #[default]
    Kept,
    /// On its way.
    Pending,
    /// It failed.
    NotSafe,
}

#[derive(Serialize, Deserialize)]
pub(super) struct Record {
    v: u32,
    bench: Bench,
    last: Option<LastMark>,
}

/// A record of another shape is no record: the journal is read and a new one written.
const VERSION: u32 = 1;

pub(super) fn write(bench: Bench, last: Option<LastMark>) -> Option<String> {
    serde_json::to_string(&Record { v: VERSION, bench, last }).ok()
}

pub(super) fn read(text: &str) -> Option<(Bench, Option<LastMark>)> {
    let record: Record = object::read(text)?;
    (record.v == VERSION).then_some((record.bench, record.last))
}
