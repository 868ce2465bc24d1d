//! Section hatching by kind: one sprite of patterns, placed once, and areas filled from it.
//! Hatching tells what a thing is made of; it always stands with its word.
use crate::dom::prelude::*;

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

/// A pattern: its id, its tile in px, its paths by class.
type Pattern = (&'static str, u32, u32, &'static [(&'static str, &'static str)]);

const PATTERNS: [Pattern; 13] = [
    // Wavy grain with nail holes.
    (
        "h-salvaged",
        26,
        15,
        &[
            ("lines", "M0 3.5q6.5 -3.4 13 0t13 0M0 11q6.5 3.4 13 0t13 0"),
            ("solid", "M16.8 7.2a1.7 1.7 0 1 0 3.4 0a1.7 1.7 0 1 0 -3.4 0"),
        ],
    ),
    ("h-bought", 7, 7, &[("lines", "M-1 1l2 -2M0 7L7 0M6 8l2 -2")]),
    ("h-offcut", 10, 10, &[("lines", "M0 10L4 6M6 4L10 0M1 1l3 3M6 6l3 3")]),
    // Broken lines the other way.
    ("h-supplied", 12, 12, &[("lines", "M0 0l4 4M6 0l4 4M0 6l4 4M6 6l4 4")]),
    ("h-consumables", 14, 8, &[("lines", "M1 2h6M8 6h5")]),
    // A receipt's stub: upright lines with knots.
    ("h-direct", 9, 9, &[("lines", "M4.5 0v9"), ("lines heavy", "M4.5 2.5v2")]),
    ("h-labour", 23, 20, &[("lines round", "M4.5 4.5v12M8.5 4v12.5M12.5 4.5v12M16.5 4v12.5M2 14.5L19.5 6")]),
    ("h-tools", 10, 10, &[("lines", "M0 10L10 0M-1 1l2 -2M9 11l2 -2M3 10L13 0M-7 10L3 0")]),
    ("h-one-off", 10, 10, &[("lines", "M0 10L10 0M0 0L10 10M-1 1l2 -2M9 11l2 -2M-1 9l2 2M9 -1l2 2")]),
    ("h-overhead", 16, 12, &[("lines", "M0 .5h16M0 6.5h16M3.5 .5v6M11.5 6.5v6")]),
    ("h-loss", 6, 6, &[("checkers", "M-1 1l2 -2M0 6L6 0M5 7l2 -2")]),
    ("h-film", 11, 9, &[("lines", "M0 .5h11"), ("solid", "M3 2.8h5v3.9h-5z")]),
    // A board drawn large: long grain, a nail hole now and then.
    (
        "h-grain",
        132,
        54,
        &[
            (
                "lines",
                "M0 9c33 -3 44 2 66 1s33 -2 66 -1M0 19c40 4 60 -2 132 0M0 29c30 -4 60 4 90 1s30 -1 42 -1\
            M0 39c44 3 80 -3 132 0M0 48c30 -3 66 3 132 0",
            ),
            (
                "solid",
                "M24 13a2 2 0 1 0 4 0a2 2 0 1 0 -4 0M30 43a2 2 0 1 0 4 0a2 2 0 1 0 -4 0\
            M86 13a2 2 0 1 0 4 0a2 2 0 1 0 -4 0M92 43a2 2 0 1 0 4 0a2 2 0 1 0 -4 0",
            ),
        ],
    ),
];
