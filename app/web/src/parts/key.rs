//! Keys: four drawn lines that run past their corners; the whole box is the target.
use crate::dom::prelude::*;

use super::stick_fraction::StickFraction;

/// How a key is drawn. One filled action a screen.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum KeyKind {
    #[default]
    Plain,
    /// The screen's one filled action (Start, Use, Keep).
    Filled,
    /// The filled Stop of the bench; stays in reach on a phone lying on its side.
    Stop,
    /// Hair lines: a way to more of the same ("all 21").
    Word,
    /// A switch whose ring fills when it is on.
    Camera,
}

impl KeyKind {
    fn class(self) -> &'static str {
        match self {
            KeyKind::Plain => "key",
            KeyKind::Filled => "key filled",
            KeyKind::Stop => "key stop",
            KeyKind::Word => "key word",
            KeyKind::Camera => "key camera",
        }
    }
}

/// A key. `note` is the small line under its label; `pressed` makes it a switch; `name` is read aloud in place of
/// label and note. `class` may be `wide` or `half-more` (its share of a row).
#[component]
pub fn Key(
    #[prop(into)] label: Signal<String>,
    #[prop(optional, into)] note: MaybeProp<String>,
    #[prop(optional)] kind: KeyKind,
    #[prop(optional, into)] pressed: MaybeProp<bool>,
    #[prop(optional, into)] disabled: MaybeProp<bool>,
    #[prop(optional, into)] name: MaybeProp<String>,
    #[prop(optional, into)] class: String,
    /// The key of a form that Enter presses too.
    #[prop(optional)]
    submits: bool,
    #[prop(into)] on_tap: Callback<()>,
) -> impl IntoView {
    view! {
        <button
            type=if submits { "submit" } else { "button" }
            class=format!("{} {class}", kind.class())
            aria-pressed=move || pressed.get().map(|on| on.to_string())
            aria-label=move || name.get()
            disabled=move || disabled.get().unwrap_or(false)
            on:click=move |_| on_tap.run(())
        >
            {face(label, note, kind)}
        </button>
    }
}

/// A key that leads to another sheet.
#[component]
pub fn KeyLink(
    #[prop(into)] label: Signal<String>,
    #[prop(optional, into)] note: MaybeProp<String>,
    #[prop(optional)] kind: KeyKind,
    #[prop(optional, into)] name: MaybeProp<String>,
    #[prop(optional, into)] class: String,
    #[prop(into)] href: Signal<String>,
) -> impl IntoView {
    view! {
        <a class=format!("{} {class}", kind.class()) href=move || href.get() aria-label=move || name.get()>
            {face(label, note, kind)}
        </a>
    }
}

fn face(label: Signal<String>, note: MaybeProp<String>, kind: KeyKind) -> AnyView {
    let ring = (kind == KeyKind::Camera).then(|| view! { <i class="ring" aria-hidden="true"></i> });
    // The space keeps label and note apart where they are read aloud as one name.
    let note = move || note.get().map(|note| view! { " "<small><StickFraction text=note/></small> });
    view! { <span>{ring}<StickFraction text=label/></span>{note} }
}
