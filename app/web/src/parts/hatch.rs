//! Section hatching by kind: one sprite of patterns, placed once, and areas filled from it.
//! Hatching tells what a thing is made of; it always stands with its word.
use crate::dom::prelude::*;
use benchslate_core::exchange::cards::hatching::PATTERNS;

/// What an area is made of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Hatch {
    Salvaged,
    Bought,
    Offcut,
    Supplied,
    Consumables,
    Direct,
    Labour,
    Tools,
    Overhead,
    OneOff,
    /// Red: culled, dearer, lost.
    Loss,
    /// The piece's side.
    Piece,
    /// The film's side.
    Film,
    /// Both sides, laid over each other.
    Both,
    /// Sawn wood with its grain, for a board drawn large.
    Grain,
    /// No kind: a recess.
    #[default]
    Plain,
}

impl Hatch {
    /// The class of its wash and the name of its pattern.
    pub fn class(self) -> &'static str {
        match self {
            Hatch::Salvaged | Hatch::Grain => "salvaged",
            Hatch::Bought => "bought",
            Hatch::Offcut => "offcut",
            Hatch::Supplied => "supplied",
            Hatch::Consumables => "consumables",
            Hatch::Direct => "direct",
            Hatch::Labour => "labour",
            Hatch::Tools => "tools",
            Hatch::Overhead => "overhead",
            Hatch::OneOff => "one-off",
            Hatch::Loss => "loss",
            Hatch::Piece => "piece",
            Hatch::Film => "film",
            Hatch::Both => "both",
            Hatch::Plain => "plain",
        }
    }

    fn patterns(self) -> &'static [&'static str] {
        match self {
            Hatch::Salvaged => &["url(#h-salvaged)"],
            Hatch::Bought | Hatch::Piece => &["url(#h-bought)"],
            Hatch::Offcut => &["url(#h-offcut)"],
            Hatch::Supplied => &["url(#h-supplied)"],
            Hatch::Consumables => &["url(#h-consumables)"],
            Hatch::Direct => &["url(#h-direct)"],
            Hatch::Labour => &["url(#h-labour)"],
            Hatch::Tools => &["url(#h-tools)"],
            Hatch::Overhead => &["url(#h-overhead)"],
            Hatch::OneOff => &["url(#h-one-off)"],
            Hatch::Loss => &["url(#h-loss)"],
            Hatch::Film => &["url(#h-film)"],
            Hatch::Both => &["url(#h-bought)", "url(#h-film)"],
            Hatch::Grain => &["url(#h-grain)"],
            Hatch::Plain => &[],
        }
    }
}

/// Fills the box it stands in (which is positioned and clips).
#[component]
pub fn Hatching(kind: Hatch) -> impl IntoView {
    let lines = kind
        .patterns()
        .iter()
        .map(|fill| view! { <rect width="100%" height="100%" fill=*fill></rect> })
        .collect::<Vec<_>>();
    view! {
        <svg class="hatching" aria-hidden="true">
            <rect class=format!("wash {}", kind.class()) width="100%" height="100%"></rect>
            {lines}
        </svg>
    }
}

/// A kind's hatching, 26 x 20 px, beside its word.
#[component]
pub fn Swatch(kind: Hatch) -> impl IntoView {
    view! { <span class="swatch"><Hatching kind/></span> }
}

/// Why an edge is not drawn solid.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum Dashes {
    /// Going on, still to come, on the shelf.
    #[default]
    ToCome,
    /// Not there yet: dash-dot-dot.
    NotYet,
}

/// A dashed edge around the box it stands in.
#[component]
pub fn DashedEdge(#[prop(optional)] dashes: Dashes) -> impl IntoView {
    let class = match dashes {
        Dashes::ToCome => "dashed-edge",
        Dashes::NotYet => "dashed-edge not-yet",
    };
    view! { <svg class=class aria-hidden="true"><rect></rect></svg> }
}

/// The patterns themselves; once in the page.
#[component]
pub fn HatchDefs() -> impl IntoView {
    let patterns = PATTERNS
        .iter()
        .map(|&(id, width, height, parts)| {
            let parts =
                parts.iter().map(|&(class, d)| view! { <path class=class d=d></path> }).collect::<Vec<_>>();
            view! {
                <pattern id=id width=width height=height patternUnits="userSpaceOnUse">{parts}</pattern>
            }
        })
        .collect::<Vec<_>>();
    view! { <svg class="hatch-defs" aria-hidden="true"><defs>{patterns}</defs></svg> }
}
