//! Hours drawn as bars to one scale: the whole over its sides, with the time on the wall under it; then a row a part.
use crate::dom::prelude::*;

use super::dim::Dim;
use super::hatch::{Hatch, Hatching, Swatch};
use super::plain::Plain;

/// A piece of the whole: its share of it for the drawing, and its hatching.
#[derive(Clone, PartialEq)]
pub struct TimePiece {
    pub share: f64,
    pub kind: Hatch,
    /// `piece 45 h 00`.
    pub text: String,
}

/// The whole.
#[derive(Clone, Default, PartialEq)]
pub struct TimeText {
    /// On the line over it.
    pub whole: String,
    pub pieces: Vec<TimePiece>,
    /// On the line under it, with its share of the whole; none where nothing is on the wall.
    pub wall: Option<(f64, String)>,
}

/// A row under the whole.
#[derive(Clone, Default, PartialEq)]
pub struct TimeRow {
    pub label: String,
    pub figure: String,
    /// 0 to 1 of the longest row on the sheet, for the drawing only.
    pub share: f64,
    pub kind: Hatch,
    /// The entries it is made of: words, figure, where they lead.
    pub entries: Vec<(String, String, String)>,
}

/// The bar of the whole between its dimension lines.
#[component]
pub fn TimeBar(text: TimeText) -> impl IntoView {
    let piece = |it: &TimePiece| {
        view! { <span style:flex-grow=format!("{:.5}", Plain(it.share))><Hatching kind=it.kind/></span> }
    };
    let pieces: Vec<AnyView> = text.pieces.iter().map(piece).collect();
    let names = text.pieces.into_iter().map(|it| view! { <span>{it.text}</span>" " }).collect::<Vec<_>>();
    let wall = text.wall.map(|(share, says)| {
        view! {
            <div class="wall" style:--share=format!("{:.3}%", Plain(share * 100.0))>
                <Dim text=Signal::stored(says) class=if share < 0.5 { "under at-left" } else { "" }/>
                <i aria-hidden="true"></i>
            </div>
        }
    });
    view! {
        <div class="time-bar">
            <Dim text=Signal::stored(text.whole)/>
            <div class="bar" aria-hidden="true">{pieces}</div>
            <p class="names">{names}</p>
            {wall}
        </div>
    }
}

/// The head of a group of rows.
#[component]
pub fn TimeGroup(label: String, figure: String, kind: Option<Hatch>) -> impl IntoView {
    let swatch = kind.map(|kind| view! { <Swatch kind/> });
    view! { <h2 class="time-group">{swatch}<span>{label}</span>" "<span class="figure">{figure}</span></h2> }
}

/// A row that opens in its place to the entries it is made of. Which one is open is the sheet's: the row is drawn anew
/// each minute while a clock runs.
#[component]
pub fn TimeBarRow(row: TimeRow, open: Signal<bool>, #[prop(into)] on_tap: Callback<()>) -> impl IntoView {
    let TimeRow { label, figure, share, kind, entries } = row;
    let lines = move || {
        let line = |(text, figure, href): (String, String, String)| {
            view! { <a class="sr unsigned" href=href><span class="open">{text}</span>" "<span class="figure">{figure}</span></a> }
        };
        open.get().then(|| view! { <div class="time-entries">{entries.clone().into_iter().map(line).collect::<Vec<_>>()}</div> })
    };
    view! {
        <button type="button" class="time-row" aria-expanded=move || open.get().to_string() on:click=move |_| on_tap.run(())>
            <span class="open">{label}</span>" "
            <span class="bar" aria-hidden="true"><span style:inline-size=format!("max(6px, {:.3}%)", Plain(share * 100.0))><Hatching kind/></span></span>
            <span class="figure">{figure}</span>
        </button>
        {lines}
    }
}
