//! The yield chain to scale: a plank for each link, all of one length for all that was gathered; what reached it, what
//! was lost on the way in red, what waits before it dashed. Each opens to what getting there cost.
use crate::dom::prelude::*;

use super::{
    board::{BoardPart, Cut, cut},
    hatch::Hatch,
};

/// One link; shares 0 to 1 of what was gathered, for the drawing only.
#[derive(Clone, Default, PartialEq)]
pub struct LinkText {
    pub label: String,
    /// "114 bd ft, 95 %".
    pub reached: String,
    /// "culled 6; 6 h 00".
    pub way: String,
    /// What getting here cost.
    pub figure: String,
    /// What reached it, what was lost on the way, what waits.
    pub shares: [f64; 3],
    /// It is in the piece.
    pub used: bool,
    /// To what it cost.
    pub href: String,
}

/// From the yard to the piece.
#[component]
pub fn YieldChain(links: Vec<LinkText>) -> impl IntoView {
    view! { <div class="chain">{links.into_iter().map(link).collect::<Vec<_>>()}</div> }
}

fn link(it: LinkText) -> AnyView {
    let [reached, lost, waits] = it.shares;
    let here = if it.used { Cut::Used } else { Cut::Shelf };
    let parts = [(here, reached), (Cut::ToCome, waits), (Cut::Culled, lost)];
    let drawn = parts
        .into_iter()
        .filter(|(_, share)| *share > 0.0)
        .map(|(of, share)| cut(BoardPart { cut: of, share, ..BoardPart::default() }, Hatch::Salvaged));
    view! {
        <a class="chain-link" href=it.href>
            <span class="says"><span class="open">{it.label}</span>" "<b>{it.reached}</b></span>
            <span class="plank whole" aria-hidden="true">{drawn.collect::<Vec<_>>()}</span>
            <span class="says"><small>{it.way}</small>" "<span class="figure">{it.figure}</span></span>
        </a>
    }
}
