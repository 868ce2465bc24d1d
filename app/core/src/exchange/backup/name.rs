//! What the parts of a backup are called. A name is read, never followed: no part becomes a file of that name.

use crate::exchange::picture::{self, Kind};

use super::{Why, hash_of};

pub(super) const MANIFEST: &str = "manifest.json";
pub(super) const JOURNAL: &str = crate::exchange::jsonl::FILE_NAME;
/// The folder of the photos; a program that packs a backup again may give it an entry of its own.
pub(super) const FOLDER: &str = "photos/";

/// Longest part of a strange name that is shown, in letters: our own are shorter.
const SHOWN: usize = 100;

/// A photo by what it holds.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct PhotoName {
    /// SHA-256 of its bytes, in lower-case hexadecimal.
    pub hash: String,
    /// What kind of picture it is.
    pub kind: Kind,
}

#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Name {
    Manifest,
    Journal,
    Photo(PhotoName),
}

impl Name {
    pub(super) fn read(text: &[u8]) -> Option<Name> {
        match std::str::from_utf8(text).ok()? {
            MANIFEST => Some(Name::Manifest),
            JOURNAL => Some(Name::Journal),
            other => PhotoName::read(other).map(Name::Photo),
        }
    }

    pub(super) fn text(&self) -> String {
        match self {
            Name::Manifest => MANIFEST.to_owned(),
            Name::Journal => JOURNAL.to_owned(),
            Name::Photo(photo) => photo.text(),
        }
    }
}

impl PhotoName {
    /// Of bytes that are kept under a hash.
    ///
    /// # Errors
    /// [`Why`] they are not that photo.
    pub(super) fn of(hash: &str, bytes: &[u8]) -> Result<PhotoName, Why> {
        if hash_of(bytes) != hash {
            return Err(Why::WrongHash);
        }
        let (kind, size) = Kind::of(bytes).zip(picture::size_of(bytes)).ok_or(Why::NoPicture)?;
        if !size.fits() {
            return Err(Why::TooLarge(size));
        }
        Ok(PhotoName { hash: hash.to_owned(), kind })
    }

    fn read(text: &str) -> Option<PhotoName> {
        let (hash, ending) = text.strip_prefix(FOLDER)?.split_once('.')?;
        let hex = |byte: u8| byte.is_ascii_digit() || (b'a'..=b'f').contains(&byte);
        let kind = Kind::ALL.into_iter().find(|kind| kind.ending() == ending)?;
        (hash.len() == 64 && hash.bytes().all(hex)).then(|| PhotoName { hash: hash.to_owned(), kind })
    }

    /// As the part is called.
    pub fn text(&self) -> String {
        format!("{FOLDER}{}.{}", self.hash, self.kind.ending())
    }
}

/// A name from outside as it can be shown.
pub(super) fn shown(text: &[u8]) -> String {
    String::from_utf8_lossy(text).chars().filter(|it| !it.is_control()).take(SHOWN).collect()
}
