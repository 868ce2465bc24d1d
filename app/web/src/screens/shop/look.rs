//! By day, by night, or as the phone: remembered by this device, never in the journal.

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
    }
}

/// The place in the set; past the two: as the phone.
fn remembered() -> usize {
    let theme = device::recall(Small::Theme);
    THEMES.iter().position(|it| Some(*it) == theme.as_deref()).unwrap_or(THEMES.len())
}

fn take(theme: Option<&str>) {
    match theme {
        Some(theme) => device::remember(Small::Theme, theme),
        None => device::forget(Small::Theme),
    }
    let root = web_sys::window().and_then(|it| it.document()).and_then(|it| it.document_element());
    if let Some(root) = root {
        // Refused for names that are no attribute's only.
        let _ = match theme {
            Some(theme) => root.set_attribute("data-theme", theme),
            None => root.remove_attribute("data-theme"),
        };
    }
}
