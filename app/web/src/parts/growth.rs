//! An opened figure: each level a bar to full width, the opened piece edged and fanned out to the next.
use crate::dom::prelude::*;

use super::hatch::{Hatch, Hatching};
use super::plain::Plain;
use super::tally::Tally;

/// A piece of a level's bar.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Piece {
    /// 0 to 1 of its bar; for the drawing only.
    pub share: f64,
    pub kind: Hatch,
    /// On the last level: whose journal line this is, and its quarter hours as strokes.
    pub text: Option<String>,
    pub quarters: u32,
}

/// A level: what was opened, its figure, its pieces, and which of them the next level is.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Level {
    pub label: String,
    pub figure: String,
    /// Read aloud: "Fold back to labour 1,736.50".
    pub fold_name: String,
    pub pieces: Vec<Piece>,
    pub opened: Option<usize>,
}

/// `on_fold` gets the level tapped; `on_piece` the last level and the piece tapped in it (the rows below offer the same).
#[component]
pub fn Growth(
    levels: Vec<Level>,
    #[prop(into)] on_fold: Callback<usize>,
    #[prop(optional, into)] on_piece: Option<Callback<(usize, usize)>>,
) -> impl IntoView {
    let last = levels.len().saturating_sub(1);
    levels
        .into_iter()
        .enumerate()
        .map(|(at, level)| {
            let edge = level.opened.and_then(|opened| extent(&level.pieces, opened));
            let fan = (at < last).then(|| edge.map(fan)).flatten();
            view! { {bar(at, level, edge, at == last, on_fold, on_piece)}{fan} }
        })
        .collect::<Vec<_>>()
}

fn bar(
    at: usize,
    level: Level,
    edge: Option<(f64, f64)>,
    last: bool,
    on_fold: Callback<usize>,
    on_piece: Option<Callback<(usize, usize)>>,
) -> AnyView {
    // Above the last, a tap anywhere on a level folds back to it.
    let on_piece = on_piece.filter(|_| last);
    let tap = move |piece: usize| on_piece.map(|on_piece| move || on_piece.run((at, piece)));
    let pieces = level
        .pieces
        .into_iter()
        .enumerate()
        .map(|(piece, it)| piece_view(it, last, tap(piece)))
        .collect::<Vec<_>>();
    let edge = edge.map(|(from, to)| {
        view! {
            <span
                class="edge"
                style:inset-inline-start=format!("calc({:.3}% - 1.5px)", Plain(from * 100.0))
                style:inline-size=format!("max(6px, {:.3}% + 3px)", Plain((to - from) * 100.0))
            ></span>
        }
    });
    let inner = view! {
        <span class="says"><span>{level.label}</span>" "<span>{level.figure}</span></span>
        <span class="bar" aria-hidden="true">{pieces}{edge}</span>
    };
    if last {
        return view! { <div class="level last">{inner}</div> };
    }
    view! {
        <button type="button" class="level" aria-label=level.fold_name on:click=move |_| on_fold.run(at)>{inner}</button>
    }
}

fn piece_view(piece: Piece, last: bool, tap: Option<impl Fn() + 'static>) -> AnyView {
    let name = piece.text.map(|text| view! { <span class="nm">{text}</span> });
    let hatch = (!last || name.is_none()).then(|| view! { <Hatching kind=piece.kind/> });
    view! {
        <span
            class="piece"
            style:inline-size=format!("{:.3}%", Plain(piece.share * 100.0))
            on:click=move |ev| if let Some(tap) = &tap { ev.stop_propagation(); tap() }
        >
            {hatch}{name}<Tally quarters=piece.quarters/>
        </span>
    }
}

/// Where a piece begins and ends, 0 to 1 of the bar.
fn extent(pieces: &[Piece], at: usize) -> Option<(f64, f64)> {
    let from: f64 = pieces.iter().take(at).map(|piece| piece.share).sum();
    pieces.get(at).map(|piece| (from, from + piece.share))
}

fn fan((from, to): (f64, f64)) -> AnyView {
    let (from, to) = (from * 1000.0, to * 1000.0);
    view! {
        <svg class="fan" viewBox="0 0 1000 22" preserveAspectRatio="none" aria-hidden="true">
            <polygon points=format!("{:.1},0 {:.1},0 1000,22 0,22", Plain(from), Plain(to))/>
            <path d=format!("M{:.1} 0L0 22M{:.1} 0L1000 22", Plain(from), Plain(to))/>
        </svg>
    }
}
