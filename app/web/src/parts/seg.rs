//! A set of one-of: one drawn key with inner rules, the chosen one filled; or ruled cells with a double rule.
use crate::dom::prelude::*;

use super::stick_fraction::stick;

/// One of a set.
#[derive(Clone, Default, PartialEq, Eq)]
pub struct Choice {
    pub label: String,
    /// The small line under it, a figure mostly.
    pub note: Option<String>,
}

impl Choice {
    /// A choice without a second line.
    pub fn plain(label: impl Into<String>) -> Self {
        Self { label: label.into(), note: None }
    }
}

/// How the set is drawn.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum SegKind {
    /// One drawn key, in the hand.
    #[default]
    Key,
    /// Ruled cells at the head of a form: ways to enter the same thing.
    Modes,
}

/// `name` says what is chosen; `chosen` is the place in `choices` (none, when it is past their end).
#[component]
pub fn Seg(
    #[prop(into)] name: Signal<String>,
    #[prop(into)] choices: Signal<Vec<Choice>>,
    #[prop(into)] chosen: Signal<usize>,
    #[prop(optional)] kind: SegKind,
    #[prop(optional, into)] class: String,
    #[prop(into)] on_choose: Callback<usize>,
) -> impl IntoView {
    let own = match kind {
        SegKind::Key => "seg",
        SegKind::Modes => "modes",
    };
    let button = move |(at, choice): (usize, Choice)| {
        let note = choice.note.map(|note| view! { " "<small>{stick(&note)}</small> });
        view! {
            <button
                type="button"
                aria-pressed=move || (chosen.get() == at).to_string()
                on:click=move |_| on_choose.run(at)
            >
                {stick(&choice.label)}{note}
            </button>
        }
    };
    view! {
        <div class=format!("{own} {class}") role="group" aria-label=move || name.get()>
            {each(move || choices.get().into_iter().enumerate().collect(), button)}
        </div>
    }
}
