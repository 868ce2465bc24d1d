//! A row that leads to a thing, and at its right a key that does one thing with it.
use crate::dom::prelude::*;

use super::{answer::led, stick_fraction::stick, sum_row::Leads};

/// The words of a row.
#[derive(Clone, Default, PartialEq, Eq, Hash)]
pub struct KeptText {
    pub label: String,
    /// Under it.
    pub note: Option<String>,
    /// On the key.
    pub key: String,
    /// The key read aloud.
    pub key_name: String,
}

#[component]
pub fn KeptRow(
    text: KeptText,
    /// Its note is in red: it should be over.
    #[prop(optional)]
    late: bool,
    #[prop(optional)] leads: Leads,
    on_tap: Callback<()>,
) -> impl IntoView {
    let opens = !matches!(leads, Leads::Nowhere);
    let note = text.note.map(|note| view! { " "<small class:late=late>{stick(&note)}</small> });
    let words = view! { <span><span class:open=opens>{stick(&text.label)}</span>{note}</span> };
    view! {
        <div class="kept-row">
            {led("kept", leads, words)}
            <button type="button" class="open" aria-label=text.key_name on:click=move |_| on_tap.run(())>
                {text.key}
            </button>
        </div>
    }
}
