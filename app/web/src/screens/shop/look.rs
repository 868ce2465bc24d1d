//! By day, by night, or as the phone; for the right hand or the left: remembered by this device, never in the journal.

use crate::dom::prelude::*;
use crate::{
    parts::{
        seg::{Choice, Seg, SegKind},
        sum_row::Group,
    },
    store::device::{self, Small},
    words::shop as words,
};

const THEMES: [&str; 2] = ["light", "dark"];

/// The set; the page changes at the tap.
#[component]
pub fn Look() -> impl IntoView {
    let chosen = RwSignal::new(remembered());
    let choose = move |at: usize| {
        chosen.set(at);
        take(THEMES.get(at).copied());
    };
    view! {
        <Group title=words::look().to_owned()/>
        <Seg
            name=words::look().to_owned()
            choices=Signal::stored(words::looks().map(Choice::plain).to_vec())
            chosen=chosen
            kind=SegKind::Modes
            class="under-group"
            on_choose=Callback::new(choose)
        />
        <Hand/>
    }
}

/// Which hand holds the phone: its keys stand in the order in which that thumb reaches them.
#[component]
fn Hand() -> impl IntoView {
    let left = device::recall(Small::Hand).as_deref() == Some(LEFT);
    let chosen = RwSignal::new(usize::from(left));
    let choose = move |at: usize| {
        chosen.set(at);
        let hand = (at == 1).then_some(LEFT);
        keep(Small::Hand, hand);
        mark("data-hand", hand);
    };
    view! {
        <Group title=words::hand().to_owned()/>
        <Seg
            name=words::hand().to_owned()
            choices=Signal::stored(words::hands().map(Choice::plain).to_vec())
            chosen=chosen
            kind=SegKind::Modes
            class="under-group"
            on_choose=Callback::new(choose)
        />
    }
}

const LEFT: &str = "left";

/// The place in the set; past the two: as the phone.
fn remembered() -> usize {
    let theme = device::recall(Small::Theme);
    THEMES.iter().position(|it| Some(*it) == theme.as_deref()).unwrap_or(THEMES.len())
}

fn take(theme: Option<&str>) {
    keep(Small::Theme, theme);
    mark("data-theme", theme);
}

fn keep(what: Small, text: Option<&str>) {
    match text {
        Some(text) => device::remember(what, text),
        None => device::forget(what),
    }
}

/// On the page itself, where the styles look.
fn mark(name: &str, value: Option<&str>) {
    let root = web_sys::window().and_then(|it| it.document()).and_then(|it| it.document_element());
    if let Some(root) = root {
        // Refused for names that are no attribute's only.
        let _ = match value {
            Some(value) => root.set_attribute(name, value),
            None => root.remove_attribute(name),
        };
    }
}
