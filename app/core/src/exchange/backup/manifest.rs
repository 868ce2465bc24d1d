//! `manifest.json`: what a backup is, how much is in it, and the SHA-256 of every other part.
//!
//! Read in two steps, so that a later version is known for one however it goes on.

use super::{At, Bad, FORMAT, VERSION, Why, name};
use crate::{
    journal::object,
    measure::{When, limits},
};
use serde::{Deserialize, Serialize};

/// What a backup says of itself.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Manifest {
    format: String,
    version: u32,
    /// When it was written.
    pub saved: When,
    /// Lines of the journal.
    pub lines: usize,
    /// Photos in it.
    pub photos: usize,
    /// Photos that its lines name and that were not on the device that wrote it.
    pub photos_missing: usize,
    pub(super) parts: Vec<Part>,
}

/// One part: the journal, or a photo.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct Part {
    pub(super) name: String,
    pub(super) bytes: u64,
    pub(super) sha256: String,
}

#[derive(Deserialize)]
struct Head {
    format: String,
    version: u32,
}

impl Manifest {
    pub(super) fn new(saved: When) -> Manifest {
        let format = FORMAT.to_owned();
        Manifest {
            format,
            version: VERSION,
            saved,
            lines: 0,
            photos: 0,
            photos_missing: 0,
            parts: Vec::new(),
        }
    }

    /// A line for each part, for whoever opens it.
    pub(super) fn text(&self) -> Option<String> {
        // No name and no hash holds a brace.
        serde_json::to_string(self).ok().map(|text| text.replace("},{", "},\n{"))
    }

    pub(super) fn read(bytes: &[u8]) -> Result<Manifest, Bad> {
        let bad = |why| Bad { at: At::Part(name::MANIFEST.to_owned()), why };
        let text = std::str::from_utf8(bytes).map_err(|_error| bad(Why::NoManifest))?;
        let head: Head = object::read(text).ok_or_else(|| bad(Why::NoManifest))?;
        if head.format != FORMAT {
            return Err(bad(Why::NotOurs));
        }
        if head.version > VERSION {
            return Err(bad(Why::Newer { version: head.version }));
        }
        let manifest: Manifest = object::read(text).ok_or_else(|| bad(Why::NoManifest))?;
        if manifest.parts.len() > limits::MOST_BACKUP_PHOTOS.saturating_add(1) {
            return Err(bad(Why::TooManyParts));
        }
        Ok(manifest)
    }
}
