//! The backup: one ZIP with the journal and the photos, written part by part and read the same way.
//!
//! ```text
//! journal.jsonl            the lines, deflated
//! photos/<sha256>.jpg      each photo once, as it is kept, stored (it is packed already)
//! manifest.json            what it is, how many, and the SHA-256 of every other part, deflated
//! ```
//!
//! Years of photos fit in no phone's memory: [`Writer`] is fed one photo at a time and gives back the bytes that come
//! next in the file; a reader asks for one range after another ([`contents`], [`Backup`]). Nothing of a file is taken
//! before all of it has been looked at.
//! Source of the form: ZIP as in ISO/IEC 21320-1 (no encryption, stored or deflated) without its ZIP64; JSON as in
//! RFC 8259; the two schemas in `app/core/schema/`.
//! Not here: the small copies of photos, which are made anew; where the bytes lie.

mod manifest;
mod name;
mod read;
mod write;

pub use manifest::Manifest;
pub use name::PhotoName;
pub use read::{Backup, Contents, Held, Looked, Photo, PhotoAt, contents, journal_of};
pub use write::{Left, Packer, Packing, Writer};

use super::{jsonl, picture::Size};
use crate::{
    journal::{Body, Content, Id, Journal},
    measure::Day,
};
use crc::{CRC_32_ISO_HDLC, Crc};
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;

/// What the name of a backup begins with.
pub const STEM: &str = "benchslate";
/// The media type of a ZIP (IANA).
pub const MEDIA_TYPE: &str = "application/zip";
/// How many bytes of the end of a file are asked for first.
pub const FIRST_BYTES: u64 = 256_000;

/// The format's name in the manifest.
const FORMAT: &str = "benchslate backup";
/// Its version.
const VERSION: u32 = 1;

/// A file that brings nothing: where it is broken, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Bad {
    /// Where.
    pub at: At,
    /// What is wrong there.
    pub why: Why,
}

/// Where a file is broken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum At {
    /// The file as a whole.
    File,
    /// The part of this name. One that is no part of a backup is cut short, and can be shown.
    Part(String),
}

/// Why a file is refused as a whole.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// No ZIP, or one without its end.
    NoArchive,
    /// It says that more stands in it than it has bytes.
    CutOff,
    /// The ZIP's own record of it can't be read.
    Damaged,
    /// More bytes than are taken.
    TooLong {
        /// How many it has, or says it has.
        bytes: u64,
    },
    /// More parts than are taken.
    TooManyParts,
    /// A name that no part of a backup has.
    StrangeName,
    /// Two parts of one name.
    Twice,
    /// It lies over another part.
    Overlaps,
    /// Locked with a password.
    Locked,
    /// Packed in another way than deflated.
    Packing,
    /// More than [`MOST_PACKED`](crate::measure::limits::MOST_PACKED) times as long as its packed bytes.
    PackedTooFar,
    /// More or fewer bytes than it says.
    WrongSize,
    /// Its bytes don't come to the sum (CRC-32) that the ZIP says.
    WrongSum,
    /// Its bytes have another SHA-256 than the manifest, or its own name, says.
    WrongHash,
    /// It should be there and is not.
    Missing,
    /// It is there, and the manifest knows nothing of it.
    NotListed,
    /// The manifest can't be read.
    NoManifest,
    /// The manifest is of something else.
    NotOurs,
    /// Written in a format that this version doesn't know yet.
    Newer {
        /// The format's version.
        version: u32,
    },
    /// It holds another number of lines or photos than the manifest says.
    WrongCount {
        /// What the manifest says.
        says: usize,
        /// What is there.
        found: usize,
    },
    /// A line of the journal.
    Line(jsonl::Bad),
    /// No picture of the kind that its name says.
    NoPicture,
    /// A picture with more pixels than a phone has room for.
    TooLarge(Size),
}

/// What a backup of a day is called.
///
/// ```
/// # use benchslate_core::{exchange::backup, measure::Day};
/// let day = Day::parse("2026-11-20").unwrap();
/// assert_eq!(backup::file_name(backup::STEM, day), "benchslate-2026-11-20.zip");
/// ```
pub fn file_name(stem: &str, day: Day) -> String {
    format!("{stem}-{day}.zip")
}

/// Whether a file that begins so is a ZIP; else it may be a journal as text.
pub fn begins(head: &[u8]) -> bool {
    head.starts_with(b"PK")
}

/// Hashes of the photos that any line of a journal names, struck out or not.
pub fn named(journal: &Journal) -> BTreeSet<String> {
    let hash = |(id, _): (Id, &str)| match &journal.revision(id)?.content {
        Content::Body(Body::Photo(photo)) => Some(photo.hash.clone()),
        Content::Body(_) | Content::Struck | Content::Newer | Content::Unreadable => None,
    };
    let mut named = BTreeSet::new();
    for hash in journal.lines().filter_map(hash) {
        named.insert(hash);
    }
    named
}

/// The sum that a ZIP has of its parts. Not rawzip's own: that is quicker, by sixteen kilobytes of tables.
static SUM: Crc<u32> = Crc::<u32>::new(&CRC_32_ISO_HDLC);

/// SHA-256 in lower-case hexadecimal.
pub fn hash_of(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes))
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

#[cfg(test)]
mod tests;
