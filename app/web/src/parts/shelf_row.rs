//! A lot or an item on the shelf: a bin filled to what is left, hatched by where it came from.
use crate::dom::prelude::*;

use super::answer::led;
use super::hatch::{Hatch, Hatching};
use super::plain::Plain;
use super::stick_fraction::stick;
use super::sum_row::Leads;

/// The words and the level of a row.
#[derive(Clone, Default)]
pub struct ShelfText {
    pub kind: Hatch,
    /// What is left, as a share 0 to 1 of what came in; for the drawing only.
    pub left: f64,
    pub name: String,
    pub note: String,
    /// The note is in red: running low, or below nothing.
    pub low: bool,
    pub figure: String,
}

/// The shelf: rows under a thick rule.
#[component]
pub fn Shelf(children: Children) -> impl IntoView {
    view! { <ul class="shelf-list">{children()}</ul> }
}

/// One row; the whole of it leads on.
#[component]
pub fn ShelfRow(text: ShelfText, #[prop(optional)] leads: Leads) -> impl IntoView {
    let share = text.left.clamp(0.0, 1.0) * 100.0;
    let fill = (share > 0.0).then(|| {
        view! { <span class="fill" style:block-size=format!("{:.1}%", Plain(share))><Hatching kind=text.kind/></span> }
    });
    let inner = view! {
        <span class="bin" aria-hidden="true">{fill}</span>
        <span><b>{stick(&text.name)}</b>" "<small class:red=text.low>{stick(&text.note)}</small></span>
        " "
        <span class="figure">{text.figure}</span>
    };
    view! { <li>{led("shelf-row", leads, inner)}</li> }
}
