//! A dimension line: how long, how much, between two extension lines.
use crate::dom::prelude::*;

use super::stick_fraction::StickFraction;

/// `text` in the middle of the line. `going` dashes its far half: not ended yet. Its length is that of its box.
#[component]
pub fn Dim(
    #[prop(into)] text: Signal<String>,
    #[prop(optional, into)] going: Signal<bool>,
    #[prop(optional, into)] class: String,
) -> impl IntoView {
    view! {
        <div class=format!("dim {class}")>
            <svg viewBox="0 0 9 7" aria-hidden="true"><path d="M0 3.5L9 .8v5.4z"/></svg>
            <i></i>
            <span><StickFraction text=text/></span>
            <i class:dashes=move || going.get()></i>
            <svg viewBox="0 0 9 7" aria-hidden="true"><path d="M9 3.5L0 .8v5.4z"/></svg>
        </div>
    }
}
