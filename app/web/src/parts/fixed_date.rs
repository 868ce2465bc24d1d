//! A date that can't move: its words and day over the thick dash-dot of a cutting plane, arrows at both ends.
use crate::dom::prelude::*;

/// `label` at the left, `day` at the right, as a row of a sum.
#[component]
pub fn FixedDate(#[prop(into)] label: Signal<String>, #[prop(into)] day: Signal<String>) -> impl IntoView {
    view! {
        <div class="fixed-date">
            <p><b>{move || label.get()}</b>" "<b class="figure">{move || day.get()}</b></p>
            <div aria-hidden="true">
                <svg viewBox="0 0 9 16"><path d="M7.5 0V10M7.5 16L4 8.5h7z"/></svg>
                <i></i>
                <svg viewBox="0 0 9 16"><path d="M1.5 0V10M1.5 16L-2 8.5h7z"/></svg>
            </div>
        </div>
    }
}
