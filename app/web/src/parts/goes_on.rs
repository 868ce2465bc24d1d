//! The long-break line: a drawing that goes on past the edge, with what is below in words.
use crate::dom::prelude::*;

/// "5 more lines to the true cost". `Read` shows it by itself while there is more below.
#[component]
pub fn GoesOn(#[prop(into)] text: Signal<String>) -> impl IntoView {
    let bend =
        || view! { <svg viewBox="0 0 18 22" aria-hidden="true"><path d="M0 11l5 -8 8 16 5 -8"/></svg> };
    view! { <p class="goes">{bend()}<span>{move || text.get()}</span>{bend()}</p> }
}
