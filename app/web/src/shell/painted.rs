//! What the page paints before the program arrives stands until the program has a sheet to show in its place.

use super::Desk;
use crate::{
    dom::prelude::*,
    store::device::{Small, forget, remember},
};

/// Takes it away when the bench is known, or when `another` sheet is shown; and remembers for the next time whether
/// there is a journal.
pub fn leaves(desk: Desk, another: impl Fn() -> bool + 'static) {
    Effect::new(move || {
        let empty = desk.is_empty();
        if another() || empty.is_some() {
            take_away();
        }
        match empty {
            Some(true) => forget(Small::Begun),
            Some(false) => remember(Small::Begun, "yes"),
            None => {}
        }
    });
}

fn take_away() {
    if let Ok(Some(painted)) = document().query_selector("#benchslate > .shell") {
        painted.remove();
    }
}
