//! Words.

use super::Bearer;
use crate::journal::On;
use serde::{Deserialize, Serialize};

/// A line of words; without a bearer it has no home yet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Note {
    /// When.
    pub on: On,
    /// The words.
    pub text: String,
    /// What they are about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bearer: Option<Bearer>,
}
