//! A row with a drawn box that is ticked or not.
use crate::dom::prelude::*;

use super::stick_fraction::StickFraction;

/// A switch as a row: label, a note under it, a figure at its right.
#[component]
pub fn TickRow(
    #[prop(into)] label: Signal<String>,
    #[prop(optional, into)] note: MaybeProp<String>,
    #[prop(optional, into)] figure: MaybeProp<String>,
    #[prop(into)] ticked: Signal<bool>,
    #[prop(into)] on_tap: Callback<()>,
) -> impl IntoView {
    let note = move || note.get().map(|note| view! { " "<small><StickFraction text=note/></small> });
    let figure = move || figure.get().map(|figure| view! { " "<span class="figure">{figure}</span> });
    view! {
        <button
            type="button"
            class="tick-row"
            aria-pressed=move || ticked.get().to_string()
            on:click=move |_| on_tap.run(())
        >
            <span class="box" aria-hidden="true"></span>
            <span><StickFraction text=label/>{note}</span>
            {figure}
        </button>
    }
}
