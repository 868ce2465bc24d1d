//! A ruled list of what stands where: last done, drying, low.
use crate::dom::prelude::*;

use super::stick_fraction::stick;

/// A line of it.
#[derive(Clone, Default)]
pub struct Fact {
    pub label: String,
    pub text: String,
    pub note: Option<String>,
}

/// The list.
#[component]
pub fn Facts(#[prop(into)] facts: Signal<Vec<Fact>>) -> impl IntoView {
    let line = |fact: Fact| {
        let note = fact.note.map(|note| view! { " "<small>{stick(&note)}</small> });
        view! { <dt>{fact.label}</dt><dd>{stick(&fact.text)}{note}</dd> }
    };
    view! { <dl class="facts">{move || facts.get().into_iter().map(line).collect::<Vec<_>>()}</dl> }
}
