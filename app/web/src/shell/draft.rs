//! Drafts: what is typed in a form is kept at every key, and is there when one comes back.

use super::Desk;
use crate::dom::prelude::*;
use leptos::task::spawn_local;

/// Brings back what was typed, then keeps every change of it. `text` is the form as one string.
pub fn keep(desk: Desk, key: &'static str, text: RwSignal<String>) {
    let read = RwSignal::new(false);
    Effect::new(move || {
        if desk.phase.get() != super::desk::Phase::Ready || read.get_untracked() {
            return;
        }
        spawn_local(async move {
            let Some(store) = desk.store() else { return };
            let draft = store.draft(key).await;
            match text.try_with_untracked(String::clone) {
                // Typed before there was a store to keep it in.
                Some(typed) if !typed.is_empty() => store.put_draft(key, &typed),
                Some(_) => {
                    if let Ok(Some(draft)) = draft {
                        text.set(draft);
                    }
                }
                None => {}
            }
            read.set(true);
        });
    });
    Effect::new(move |before: Option<String>| {
        let now = text.get();
        if let (Some(before), Some(store)) = (before, desk.store())
            && before != now
        {
            store.put_draft(key, &now);
        }
        now
    });
}

/// It was kept as an entry, or given up.
pub fn done(desk: Desk, key: &str) {
    if let Some(store) = desk.store() {
        store.drop_draft(key);
    }
}
