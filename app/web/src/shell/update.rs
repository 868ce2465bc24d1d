//! A newer version: offered, never forced, and nothing typed is lost by it.
//!
//! The boot script says `benchslate-update` when one waits; `benchslate-take-update` asks for it. Before the
//! page is swapped it says `benchslate-reload`, which is held back until every draft is kept.

use super::Desk;
use crate::dom::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};

/// Whether a newer version waits.
pub fn waiting() -> ReadSignal<bool> {
    let (waits, set) = signal(waits_already());
    listen("benchslate-update", move |_| set.set(true));
    waits
}

/// Takes it: all windows keep what is typed, then load the newer version.
pub fn take(desk: Desk) {
    spawn_local(async move {
        if let Some(store) = desk.store() {
            store.tell_flush_drafts();
            let _ = store.flush_drafts().await;
            store.tell_updated();
        }
        if let (Some(window), Ok(event)) = (web_sys::window(), web_sys::Event::new("benchslate-take-update"))
        {
            let _ = window.dispatch_event(&event);
        }
    });
}

/// Holds the reload back until what is typed is kept.
pub fn keep_before_reload(desk: Desk) {
    listen("benchslate-reload", move |event| {
        event.prevent_default();
        spawn_local(async move {
            if let Some(store) = desk.store() {
                let _ = store.flush_drafts().await;
            }
            if let Some(window) = web_sys::window() {
                let _ = window.location().reload();
            }
        });
    });
}

fn waits_already() -> bool {
    let root = web_sys::window().and_then(|it| it.document()).and_then(|it| it.document_element());
    root.is_some_and(|root| root.get_attribute("data-update").as_deref() == Some("waiting"))
}

fn listen(name: &str, heard: impl FnMut(web_sys::Event) + 'static) {
    let heard = Closure::<dyn FnMut(web_sys::Event)>::new(heard);
    if let Some(window) = web_sys::window() {
        let _ =
            window.add_event_listener_with_callback(name, heard.as_ref().unchecked_ref::<js_sys::Function>());
    }
    // Lives as long as the page.
    let _: JsValue = heard.into_js_value();
}
