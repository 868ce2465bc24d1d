//! The sheet: read above, do below. `Above` and `Below` become two columns where the screen is wide.
use crate::dom::prelude::*;
use leptos::html;
use wasm_bindgen::{JsCast, prelude::Closure};

use super::goes_on::GoesOn;

/// The screen's one `main`, as high as the screen. Holds `Head`, `Above`, maybe a `detail` column, `Below`.
#[component]
pub fn Sheet(#[prop(optional, into)] name: MaybeProp<String>, children: Children) -> impl IntoView {
    view! { <main class="sheet" aria-label=move || name.get()>{children()}</main> }
}

/// What the sheet is about, one line; at its right a note. With `on_tap` the title is a key ("whom is this for?").
#[component]
pub fn Head(
    #[prop(into)] title: Signal<String>,
    #[prop(optional, into)] note: MaybeProp<String>,
    /// The low head of reading sheets (the bench has the high one).
    #[prop(optional)]
    tight: bool,
    #[prop(optional, into)] on_tap: Option<Callback<()>>,
) -> impl IntoView {
    let title = move || match on_tap {
        Some(on_tap) => view! {
            <button type="button" class="who-for open" on:click=move |_| on_tap.run(())>{move || title.get()}</button>
        },
        None => (move || title.get()).draw(),
    };
    let note = move || note.get().map(|note| view! { <p class="note">{note}</p> });
    view! { <header class="head" class:tight=tight><h1>{title()}</h1>{note}</header> }
}

/// What is read: slates, messages, `Read`. The left column of a wide screen.
#[component]
pub fn Above(children: Children) -> impl IntoView {
    view! { <div class="above">{children()}</div> }
}

/// What is done: last mark, `Hand`, title block. The lower right of a wide screen.
#[component]
pub fn Below(children: Children) -> impl IntoView {
    view! { <div class="below">{children()}</div> }
}

/// The part that scrolls. `below` names what stands past its lower edge, on the long-break line, while it goes on.
#[component]
pub fn Read(
    #[prop(into)] name: Signal<String>,
    #[prop(optional, into)] below: MaybeProp<String>,
    children: Children,
) -> impl IntoView {
    let read = NodeRef::<html::Div>::new();
    let roll = NodeRef::<html::Div>::new();
    let goes_on = RwSignal::new(false);
    let look = move || {
        let Some(read) = read.get_untracked() else { return };
        // What the break line itself takes is room too: else it would make itself needed.
        let line = read
            .next_element_sibling()
            .filter(|it| it.class_name() == "goes")
            .map_or(0, |it| it.client_height());
        let left = read.scroll_height() - read.client_height() - line - read.scroll_top();
        // Half a line of slack: a pixel of rounding is no reason to say that more follows.
        goes_on.set(left > 8);
    };
    on_resize([read, roll], look);
    let goes = move || goes_on.get().then(|| below.get()).flatten().map(|text| view! { <GoesOn text/> });
    view! {
        <div class="read" role="region" tabindex="0" aria-label=move || name.get() node_ref=read on:scroll=move |_| look()>
            <div class="roll" node_ref=roll>{children()}</div>
        </div>
        {goes}
    }
}

/// How much room the hand takes and how it meets what is above it.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum HandKind {
    /// Ruled off, four px between keys and edge.
    #[default]
    Plain,
    /// Rows closer together (the bench).
    Dense,
    /// No rule above (first run).
    Bare,
    /// Number pads and the picker of all stages.
    Tall,
}

/// The keys of the screen, in the lower part of it.
#[component]
pub fn Hand(
    #[prop(into)] name: Signal<String>,
    #[prop(optional)] kind: HandKind,
    children: Children,
) -> impl IntoView {
    let class = match kind {
        HandKind::Plain => "hand",
        HandKind::Dense => "hand dense",
        HandKind::Bare => "hand bare",
        HandKind::Tall => "hand tall",
    };
    view! { <section class=class aria-label=move || name.get()>{children()}</section> }
}

/// A row of keys, boxes touching; wraps where the lettering is large. `class` sets its height: `low` 56, `mid` 60,
/// `go` 64, `tall` 72 px, or a row of one screen (`bench-acts`). `lead` stands in words at its left.
#[component]
pub fn Keys(
    #[prop(optional, into)] class: String,
    #[prop(optional, into)] lead: MaybeProp<String>,
    children: Children,
) -> impl IntoView {
    let lead = move || lead.get().map(|lead| view! { <p>{lead}</p> });
    view! { <div class=format!("keys {class}")>{lead}{children()}</div> }
}

/// Calls `look` whenever one of `nodes` is there or has changed its size, until the component goes.
pub(super) fn on_resize<const N: usize>(nodes: [NodeRef<html::Div>; N], look: impl Fn() + Clone + 'static) {
    Effect::new(move || {
        let look = look.clone();
        let watcher = Closure::<dyn Fn()>::new(look);
        let Ok(observer) = web_sys::ResizeObserver::new(watcher.as_ref().unchecked_ref()) else { return };
        nodes.iter().filter_map(NodeRef::get).for_each(|node| observer.observe(&node));
        let kept = StoredValue::new_local(watcher);
        let observer = StoredValue::new_local(observer);
        on_cleanup(move || {
            observer.with_value(web_sys::ResizeObserver::disconnect);
            kept.dispose();
        });
    });
}
