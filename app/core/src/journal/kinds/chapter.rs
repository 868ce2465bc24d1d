//! A chapter of the film of a build.

use crate::journal::{Id, On};
use serde::{Deserialize, Serialize};

/// One begins where the one before it ends; the last ends with the film.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Chapter {
    /// When the entry was made.
    pub on: On,
    /// The film of which build.
    pub build: Id,
    /// What it is called under the film.
    pub title: String,
    /// Where it begins, in whole seconds from the start of the film.
    pub at: u32,
}
