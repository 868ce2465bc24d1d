//! The film of a build: what is to be shot and was, the slate, what filming costs.

mod acts;
mod bench;
mod filming;
mod list;
mod look;
mod slate;
mod take;

pub use bench::{ShotKey, closing_cell, closing_facts};
pub use list::FilmSheet;
pub use look::{facts, take_facts, what};

use crate::dom::prelude::*;
use crate::{screens::time, shell::Place};

/// The sheets beside the list.
pub fn sheet(place: Place) -> AnyView {
    match place {
        Place::Slate(shot) => view! { <slate::SlateSheet shot/> },
        Place::Take(take) => view! { <take::TakeSheet take/> },
        Place::Filming(build) => view! { <filming::FilmingSheet of=build/> },
        Place::Line(build) => view! { <time::LineSheet of=build/> },
        _ => ().draw(),
    }
}
