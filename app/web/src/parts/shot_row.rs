//! A planned shot: its frame, dashed until it is taken, a small box a take; beside it what is said of it.
use crate::dom::prelude::*;

use super::stick_fraction::stick;

/// Boxes that a frame has room for.
const MOST_BOXES: usize = 8;

/// How the frame is drawn.
#[derive(Clone, Copy, Default, PartialEq, Eq, Hash)]
pub enum Frame {
    /// Dashed: still to take.
    #[default]
    Open,
    /// Solid, with a tick.
    Taken,
    /// Red, struck through: too late.
    Missed,
    /// Dotted, its words struck through: left out.
    Waived,
}

/// The words and boxes of a row.
#[derive(Clone, Default, PartialEq, Eq, Hash)]
pub struct ShotText {
    pub frame: Frame,
    /// Takes that there are, and boxes in all.
    pub taken: usize,
    pub wanted: usize,
    pub what: String,
    /// In red, under it: once only, missed.
    pub red: Option<String>,
    pub note: String,
}

/// The row is a key that chooses; `chosen` draws its thick edge. What stands under a chosen one are the children.
#[component]
pub fn ShotRow(
    text: ShotText,
    #[prop(into)] chosen: Signal<bool>,
    on_tap: Callback<()>,
    children: Children,
) -> impl IntoView {
    let class = match text.frame {
        Frame::Open => "shot",
        Frame::Taken => "shot taken",
        Frame::Missed => "shot missed",
        Frame::Waived => "shot waived",
    };
    let red = text.red.map(|red| view! { " "<small class="red">{stick(&red)}</small> });
    view! {
        <li class=class class:chosen=move || chosen.get()>
            <button type="button" aria-pressed=move || chosen.get().to_string() on:click=move |_| on_tap.run(())>
                {frame(text.frame, text.taken, text.wanted)}
                <span><b>{stick(&text.what)}</b>{red}" "<small>{stick(&text.note)}</small></span>
            </button>
            {children()}
        </li>
    }
}

fn frame(frame: Frame, taken: usize, wanted: usize) -> AnyView {
    let one = move |at: usize| {
        let class = if at < taken { "box full" } else { "box" };
        view! { <i class=class></i> }
    };
    let boxes: Vec<AnyView> = (0..wanted.max(taken).min(MOST_BOXES)).map(one).collect();
    let tick = (frame == Frame::Taken)
        .then(|| view! { <svg viewBox="0 0 24 18" aria-hidden="true"><path d="M2 9l7 7L22 2"/></svg> });
    view! { <span class="frame" aria-hidden="true">{tick}<span class="boxes">{boxes}</span></span> }
}
