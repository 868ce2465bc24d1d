//! How long a glue-up or a coat needs after the work on it.

use crate::journal::{Id, On};
use serde::{Deserialize, Serialize};

/// Runs from the end of the stretch that it names, right through nights and changes of the clock.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Drying {
    /// The end of the stretch, as it stood when this was written.
    pub on: On,
    /// The glue-up or the coat.
    pub stretch: Id,
    /// What dries, where it was drawn in that stretch.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub item: Option<Id>,
    /// Clamps or the dust-free corner are taken for so long, in minutes as typed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub held: Option<u32>,
    /// The next step may begin after so long, in minutes as typed.
    pub next: u32,
}
