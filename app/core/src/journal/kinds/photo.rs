//! A photo: what is kept of it in the journal. Its bytes lie beside the journal, under their hash.

use super::Bearer;
use crate::journal::{Id, On};
use serde::{Deserialize, Serialize};

/// A photo of an entry, or of whatever bears; with neither it has no home yet. The line may be on a device that
/// the bytes never reached.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Photo {
    /// When.
    pub on: On,
    /// The entry that it is about: a receipt, a draw, a note.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub entry: Option<Id>,
    /// What it is of, where that is no entry.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bearer: Option<Bearer>,
    /// SHA-256 of the bytes as they are kept, in lower-case hexadecimal.
    pub hash: String,
    /// Media type of the bytes: `image/jpeg`.
    #[serde(rename = "type")]
    pub media: String,
    /// Pixels across, as it is seen.
    pub width: u32,
    /// Pixels down.
    pub height: u32,
    /// How many bytes are kept.
    pub bytes: u32,
    /// Words under it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub caption: Option<String>,
}
