//! Shots, takes and copied cards as facts.

use crate::journal::{Id, kinds, order::Order};

/// A planned piece of footage.
#[derive(Clone, Debug, PartialEq)]
pub struct Shot {
    /// When it was thought of.
    pub order: Order,
    /// As it was written.
    pub body: kinds::Shot,
}

/// One try at a shot.
#[derive(Clone, Debug, PartialEq)]
pub struct Take {
    /// When it was taken.
    pub order: Order,
    /// Of which shot.
    pub shot: Id,
    /// What the camera calls its clip.
    pub clip: Option<String>,
    /// A keeper.
    pub keep: bool,
}

/// The camera's card was copied.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CardCopied {
    /// When.
    pub order: Order,
    /// Of which build.
    pub build: Id,
}

impl Take {
    pub(super) fn read(order: Order, body: &kinds::Take) -> Take {
        let clip = body.clip.clone().filter(|it| !it.trim().is_empty());
        Take { order, shot: body.shot, clip, keep: body.keep }
    }
}
