//! The sheets, a folder a place.

pub mod bench;
pub mod builds;
pub mod trouble;

use crate::shell::Place;
use leptos::prelude::*;

/// Whether a newer version of the program waits; provided as context.
#[derive(Clone, Copy)]
pub struct UpdateWaits(pub ReadSignal<bool>);

/// The sheet of a place.
pub fn sheet(place: Place) -> AnyView {
    match place {
        Place::Bench => view! { <bench::BenchSheet/> }.into_any(),
        Place::Stages => view! { <bench::StagesSheet/> }.into_any(),
        Place::WorkFor => view! { <bench::WorkForSheet/> }.into_any(),
        Place::NewBuild => view! { <builds::NewBuildSheet/> }.into_any(),
        _ => view! { <bench::BenchSheet/> }.into_any(),
    }
}
