//! The end of a run: no more of it will be made.

use crate::journal::{Id, On};
use serde::{Deserialize, Serialize};

/// What of its one-off work nobody has borne by then is written off.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SeriesEnd {
    /// The day.
    pub on: On,
    /// Any build of the run.
    pub build: Id,
}
