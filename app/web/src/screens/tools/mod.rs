//! Tools: all of them with the rate of a run hour, one by itself, and how long it will still last.

mod life;
mod list;
mod look;
mod tool;

use life::LifeSheet;
use list::ToolsSheet;
pub use look::{named, worth};
use tool::ToolSheet;

use crate::dom::prelude::*;
use crate::shell::Place;

/// The sheets of tools.
pub fn sheet(place: &Place) -> AnyView {
    match place {
        Place::Tool(id) => view! { <ToolSheet tool=*id/> },
        Place::ToolLife(id) => view! { <LifeSheet tool=*id/> },
        _ => view! { <ToolsSheet/> },
    }
}
