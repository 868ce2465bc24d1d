//! A build in the list of builds: its number, where it stands, what it cost; at its right a strip of cost by kind.
use crate::dom::prelude::*;

use super::answer::led;
use super::hatch::{DashedEdge, Dashes, Hatch, Hatching};
use super::plain::Plain;
use super::sum_row::Leads;

/// The words of a row.
#[derive(Clone, Default)]
pub struct BuildText {
    pub number: String,
    pub name: String,
    /// "sanding now, Wren".
    pub now: String,
    /// "so far 1,465.59", or what its cost lacks.
    pub note: String,
    /// Cost by kind, as shares of the whole; empty while it can't be worked out.
    pub kinds: Vec<(Hatch, f64)>,
}

/// One row; the whole of it leads on.
#[component]
pub fn BuildRow(text: BuildText, #[prop(optional)] leads: Leads) -> impl IntoView {
    let unknown = text.kinds.is_empty();
    let not_yet = unknown.then(|| view! { <DashedEdge dashes=Dashes::NotYet/> });
    let layers = text
        .kinds
        .into_iter()
        .filter(|(_, share)| *share > 0.0)
        .map(|(kind, share)| view! { <span style:flex-grow=format!("{:.4}", Plain(share))><Hatching kind/></span> })
        .collect::<Vec<_>>();
    let inner = view! {
        <span class="nr">{text.number}</span>
        <span class="told">
            <b>{text.name}</b>" "<span>{text.now}</span>" "<small>{text.note}</small>
        </span>
        <span class="strip" class:unknown=unknown aria-hidden="true">{layers}{not_yet}</span>
    };
    view! { <li>{led("build-row", leads, inner)}</li> }
}
