//! The screen stays lit while a sheet asks for it (Screen Wake Lock API), where the browser can.

use crate::dom::prelude::*;
use js_sys::{Function, Promise, Reflect};
use leptos::{ev, task::spawn_local};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// Keeps it lit until the owner goes. The signal says that it can't be; until that is known it says nothing.
pub fn keep_awake() -> RwSignal<bool> {
    let cannot = RwSignal::new(false);
    let held: StoredValue<Option<JsValue>, LocalStorage> = StoredValue::new_local(None);
    let ask = move || {
        spawn_local(async move {
            match request().await {
                Some(lock) => {
                    // The sheet may be gone by now: then it is let go at once.
                    if held.try_set_value(Some(lock.clone())).is_some() {
                        release(&lock);
                    }
                }
                None => drop(cannot.try_set(true)),
            }
        });
    };
    ask();
    // A page that was out of sight has lost it, and asks again.
    let seen = window_event_listener(ev::Custom::<web_sys::Event>::new("focus"), move |_| ask());
    on_cleanup(move || {
        seen.remove();
        if let Some(lock) = held.try_with_value(Clone::clone).flatten() {
            release(&lock);
        }
    });
    cannot
}

async fn request() -> Option<JsValue> {
    let navigator = web_sys::window()?.navigator();
    let lock = Reflect::get(&navigator, &"wakeLock".into()).ok().filter(|it| !it.is_undefined())?;
    let ask: Function = Reflect::get(&lock, &"request".into()).ok()?.dyn_into().ok()?;
    let promise: Promise = ask.call1(&lock, &"screen".into()).ok()?.dyn_into().ok()?;
    JsFuture::from(promise).await.ok()
}

fn release(lock: &JsValue) {
    let release = Reflect::get(lock, &"release".into()).ok().and_then(|it| it.dyn_into::<Function>().ok());
    if let Some(release) = release {
        let _ = release.call0(lock);
    }
}
