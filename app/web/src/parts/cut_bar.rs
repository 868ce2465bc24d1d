//! A board as it is cut, to scale: its pieces one after the other, and what is left.
use crate::dom::prelude::*;

use super::stick_fraction::stick;

/// One board, or several that are cut alike.
#[derive(Clone, Default, PartialEq)]
pub struct CutText {
    /// `3 × 8 ft`.
    pub label: String,
    /// `2 × Leg 28 in, Rail 30 in`.
    pub pieces: String,
    /// `1 3/4 in left`.
    pub left: String,
    /// Each piece as a share of the board, for the drawing only.
    pub shares: Vec<f64>,
    /// What is left, likewise.
    pub rest: f64,
}

#[component]
pub fn CutBar(text: CutText) -> impl IntoView {
    let piece = |share: &f64| view! { <i style:flex-basis=format!("{:.3}%", share * 100.0)></i> };
    let pieces: Vec<AnyView> = text.shares.iter().map(piece).collect();
    view! {
        <div class="cut-bar">
            <p><b>{stick(&text.label)}</b>" "{stick(&text.pieces)}" "<small>{stick(&text.left)}</small></p>
            <div aria-hidden="true">{pieces}<i class="rest" style:flex-basis=format!("{:.3}%", text.rest * 100.0)></i></div>
        </div>
    }
}
