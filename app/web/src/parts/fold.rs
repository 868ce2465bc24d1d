//! A row that opens in place: what it is about beside it, its rows under it once it was tapped.
use crate::dom::prelude::*;

use super::stick_fraction::stick;

/// What stands on the row.
#[derive(Clone, Default, PartialEq)]
pub struct FoldText {
    pub label: String,
    /// What is in it, in a word or two; empty: nothing.
    pub note: String,
    /// The figure that it comes to; empty: none.
    pub figure: String,
}

/// The row, and what it holds while it is open. `open` outlives a redrawing of the sheet.
pub fn fold(text: FoldText, open: RwSignal<bool>, inner: impl Fn() -> AnyView + 'static) -> AnyView {
    let FoldText { label, note, figure } = text;
    let note = (!note.is_empty()).then(|| view! { " "<small>{stick(&note)}</small> });
    let figure = (!figure.is_empty()).then(|| view! { <span class="figure">{stick(&figure)}</span> });
    let tap = move |_| open.update(|it| *it = !*it);
    view! {
        <button type="button" class="sr unsigned fold" aria-expanded=move || open.get().to_string() on:click=tap>
            <span><span class="open">{label}</span>{note}</span>
            {figure}
        </button>
        {move || open.get().then(&inner)}
    }
}
