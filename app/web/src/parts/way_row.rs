//! A way to do better: what, what it gives up or frees, what it comes to, and a key to try it.
use crate::dom::prelude::*;

use super::{key::Key, stick_fraction::stick};

/// The words of a way.
#[derive(Clone, Default, PartialEq)]
pub struct WayText {
    pub label: String,
    pub note: String,
    /// What it comes to.
    pub figure: String,
    /// On the key.
    pub key: String,
}

/// One way, a row of a list.
#[component]
pub fn WayRow(text: WayText, on_tap: Callback<()>) -> impl IntoView {
    let note = (!text.note.is_empty()).then(|| view! { " "<small>{stick(&text.note)}</small> });
    let name = format!("{}: {}", text.key, text.label);
    view! {
        <li class="way">
            <span>{stick(&text.label)}{note}</span>
            " "
            <b>{text.figure}</b>
            <Key label=text.key name=name on_tap/>
        </li>
    }
}
