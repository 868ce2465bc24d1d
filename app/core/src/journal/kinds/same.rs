//! Two items that are one: a thing that was typed in twice.

use crate::journal::{Id, On};
use serde::{Deserialize, Serialize};

/// What came, was drawn and was found of the one counts as the other's, from the beginning.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Same {
    /// When it was said.
    pub on: On,
    /// The item that is no item of its own any more.
    pub item: Id,
    /// The item that it is.
    #[serde(rename = "as")]
    pub is: Id,
}
