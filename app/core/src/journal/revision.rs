//! One immutable version of an entry.

use super::{Body, Id};
use serde::{Deserialize, Serialize};

/// Order of versions inside one entry, and nothing else: the later of the device's now and the
/// parents' stamps, so a phone whose date is wrong spoils its own entries only.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Stamp {
    /// Milliseconds since 1970 UTC, by the writing device.
    pub ms: i64,
    /// Counts up where `ms` is that of a parent.
    pub n: u32,
}

/// What a revision says of its entry.
#[derive(Clone, Debug, PartialEq)]
#[allow(clippy::large_enum_variant, reason = "nearly every revision has a body: a box each would cost more")]
pub enum Content {
    /// The entry reads so.
    Body(Body),
    /// The entry is struck out.
    Struck,
    /// Written by a newer version of the program: kept whole, listed, can be struck, not corrected here.
    Newer,
    /// A body that can't be read as its kind says. Kept whole, listed, counts for nothing.
    Unreadable,
}

/// A line of the journal, read. The line itself is kept beside it, byte for byte.
#[derive(Clone, Debug, PartialEq)]
pub struct Revision {
    /// Its own name.
    pub id: Id,
    /// The entry that it is a version of.
    pub entry: Id,
    /// The versions that it replaces. None: the entry begins here.
    pub parents: Vec<Id>,
    /// Who wrote it.
    pub device: Id,
    /// Its place among the versions.
    pub stamp: Stamp,
    /// The kind's name as written; a name that this version doesn't know is kept.
    pub kind: Box<str>,
    /// What it says.
    pub content: Content,
}

impl Revision {
    /// Ties are broken by device and id, so that two phones show the same version.
    pub fn rank(&self) -> (Stamp, Id, Id) {
        (self.stamp, self.device, self.id)
    }
}
