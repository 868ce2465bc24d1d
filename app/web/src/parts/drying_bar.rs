//! Drying drawn to scale: what is taken by clamps or the dust-free corner, then the rest of it dashed. And the strip
//! that stands under a running slate.
use crate::dom::prelude::*;

use super::dim::Dim;
use super::hatch::{DashedEdge, Hatch, Hatching};
use super::plain::Plain;

/// What the drawing says.
#[derive(Clone, Default, PartialEq)]
pub struct DryingText {
    /// Taken: its share of the whole for the drawing, its dimension, its word.
    pub held: Option<(f64, String, String)>,
    /// The whole, on the dimension line.
    pub next: String,
    /// The word in the dashed part.
    pub rest: String,
    /// At its two ends.
    pub from: String,
    pub to: String,
}

/// The bar, between its dimension lines.
#[component]
pub fn DryingBar(text: DryingText) -> impl IntoView {
    let DryingText { held, next, rest, from, to } = text;
    let wide = |share: f64| format!("{:.3}%", Plain(share * 100.0));
    let over = held.as_ref().map(|(share, says, _)| {
        // Where it has no room for its words the line is as long as the bar.
        let line = if *share < 0.45 { 1.0 } else { *share };
        let says = says.clone();
        view! { <div style:inline-size=wide(line)><Dim text=Signal::stored(says)/></div> }
    });
    let taken = held.map(|(share, _, word)| {
        view! {
            <span class="taken" style:inline-size=wide(share)>
                <Hatching kind=Hatch::Consumables/>
                {(share >= 0.45).then(|| view! { <b>{word}</b> })}
            </span>
        }
    });
    view! {
        <div class="drying-bar">
            {over}
            <div class="bar-of">{taken}<span class="rest"><DashedEdge/><b>{rest}</b></span></div>
            <Dim text=Signal::stored(next)/>
            <p class="ends"><span>{from}</span>" "<span>{to}</span></p>
        </div>
    }
}

/// Something that dries, or a question about it.
#[derive(Clone, Default, PartialEq, Eq)]
pub struct DryCell {
    pub label: String,
    /// `until 14:20`.
    pub note: String,
    pub href: String,
    /// The note is in red: too late soon.
    pub late: bool,
}

/// Two cells at most, each a link.
#[component]
pub fn DryStrip(#[prop(into)] name: Signal<String>, cells: Vec<DryCell>) -> impl IntoView {
    let cell = |cell: DryCell| {
        view! { <a href=cell.href><span class="open">{cell.label}</span>" "<small class:red=cell.late>{cell.note}</small></a> }
    };
    view! {
        <section class="dry-strip" aria-label=move || name.get()>
            {cells.into_iter().map(cell).collect::<Vec<_>>()}
        </section>
    }
}
