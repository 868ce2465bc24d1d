//! The first sheet's drawing: a tray in outline, not there yet, its three measures unknown.
use crate::dom::prelude::*;

/// The three questions on its dimension lines, and the drawing in one sentence.
#[derive(Clone, Default)]
pub struct FirstRunWords {
    pub hours: String,
    pub cost: String,
    pub done: String,
    pub name: String,
}

/// The drawing.
#[component]
pub fn FirstRun(words: FirstRunWords) -> impl IntoView {
    view! {
        <svg class="first-run" viewBox="-2 0 332 236" role="img" aria-label=words.name>
            // Rim outside and inside, sides, the two handles cut in the long side.
            <path class="not-yet" d="M62 98L194 64L300 102L166 142z"/>
            <path class="not-yet" d="M83 99L194 71L281 102L166 134z"/>
            <path class="not-yet" d="M62 98V120L166 167L300 124V102M166 142V167"/>
            <path class="not-yet" d="M102 125q7 -15 24 6M222 138q9 -17 25 -7"/>
            <path class="extension" d="M62 92V42M194 58V8M62 126V166M166 173V212M300 130V168"/>
            <path class="measure" d="M62 52L194 18M62 156L166 204L300 160"/>
            <path class="arrow" d="M62 52l8 -5 1.4 5.2zM194 18l-8 5 -1.4 -5.2z"/>
            <path class="arrow" d="M62 156l9.5 1.4 -2.3 4.9zM166 204l-9.5 -1.4 2.3 -4.9zM166 204l7.8 -5.4 1.7 5.1zM300 160l-7.8 5.4 -1.7 -5.1z"/>
            <text transform="translate(126 29) rotate(-14.4)">{words.hours}</text>
            <text transform="translate(111 186) rotate(24.8)">{words.cost}</text>
            <text transform="translate(234 188) rotate(-18.2)">{words.done}</text>
        </svg>
    }
}
