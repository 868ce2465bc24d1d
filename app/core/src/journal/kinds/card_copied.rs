//! The camera's card was copied: what was shot before is in two places.

use crate::journal::{Id, On};
use serde::{Deserialize, Serialize};

/// The card, copied.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CardCopied {
    /// When.
    pub on: On,
    /// Of which build; a card with shots of several is copied for each.
    pub build: Id,
}
