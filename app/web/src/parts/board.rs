//! A plank to scale: what was used, what is on the shelf, what was culled, what is still to be sorted.
use crate::dom::prelude::*;

use super::dim::Dim;
use super::hatch::{DashedEdge, Hatch, Hatching};
use super::plain::Plain;

/// What became of a part of the plank.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum Cut {
    /// Drawn by a build: thick edge.
    Used,
    /// Good and on the shelf.
    #[default]
    Shelf,
    /// Being sorted out today as good: thick edge.
    Today,
    /// Culled: red hatch.
    Culled,
    /// Culled today: red hatch with a thick edge.
    CulledToday,
    /// Not sorted yet: dashed.
    ToCome,
}

/// A part: its share 0 to 1 of what was gathered (for the drawing only), its word and its figure.
#[derive(Clone, Default)]
pub struct BoardPart {
    pub cut: Cut,
    pub share: f64,
    pub word: String,
    pub figure: String,
}

/// `origin` hatches it. `gathered` stands on the dimension above; `sound` on the one below, over its share (from,
/// to). `broken`: the far end is broken off, as by what was culled. `name` says all of it in one sentence.
#[component]
pub fn Board(
    #[prop(into)] name: String,
    origin: Hatch,
    parts: Vec<BoardPart>,
    #[prop(into)] gathered: String,
    #[prop(optional, into)] sound: Option<(f64, f64, String)>,
    #[prop(optional)] broken: bool,
) -> impl IntoView {
    let parts =
        parts.into_iter().filter(|part| part.share > 0.0).map(|part| cut(part, origin)).collect::<Vec<_>>();
    let end = broken.then(|| {
        view! {
            <svg class="broken" viewBox="0 0 10 58" preserveAspectRatio="none" aria-hidden="true">
                <path class="gap" d="M10 0H8l-4 14 6 9 -8 12 6 11 -1 12H12V0z"/>
                <path class="edge" d="M8 2l-4 12 6 9 -8 12 6 11 -1 10"/>
            </svg>
        }
    });
    let sound = sound.map(|(from, to, text)| {
        let class = if to - from < 0.45 { "under" } else { "" };
        view! {
            <div
                style:margin-inline-start=format!("{:.3}%", Plain(from * 100.0))
                style:inline-size=format!("{:.3}%", Plain((to - from) * 100.0))
            >
                <Dim text class/>
            </div>
        }
    });
    view! {
        <div class="board" role="img" aria-label=name>
            <Dim text=gathered/>
            <div class="plank" class:whole=!broken>{parts}{end}</div>
            {sound}
        </div>
    }
}

pub(super) fn cut(part: BoardPart, origin: Hatch) -> AnyView {
    let class = match part.cut {
        Cut::Used => "cut used",
        Cut::Shelf => "cut",
        Cut::Today => "cut today",
        Cut::Culled => "cut culled",
        Cut::CulledToday => "cut culled today",
        Cut::ToCome => "cut to-come",
    };
    let filling = match part.cut {
        Cut::Used | Cut::Shelf | Cut::Today if origin == Hatch::Salvaged => Some(Hatch::Grain),
        Cut::Used | Cut::Shelf | Cut::Today => Some(origin),
        Cut::Culled | Cut::CulledToday => Some(Hatch::Loss),
        Cut::ToCome => None,
    };
    let dashed = (part.cut == Cut::ToCome).then(|| view! { <DashedEdge/> });
    // A narrow part carries no lettering; the sentence read aloud and the figures below name it.
    let named = !(part.word.is_empty() && part.figure.is_empty());
    let tag = (part.share >= NARROW && named)
        .then(|| view! { <span class="tag">{part.word}" "<span class="amount">{part.figure}</span></span> });
    view! {
        <span class=format!("{class} {}", origin.class()) style:inline-size=format!("{:.3}%", Plain(part.share * 100.0))>
            {filling.map(|kind| view! { <Hatching kind/> })}
            {dashed}
            {tag}
        </span>
    }
}

const NARROW: f64 = 0.11;
