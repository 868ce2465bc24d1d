//! Text handed to whatever else is on this device: through the clipboard, or the device's own list of programs.

use js_sys::{Function, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

/// Onto the clipboard. False: this browser copies nothing, or was not let.
pub async fn copy(text: &str) -> bool {
    let Some(promise) = copying(text) else { return false };
    JsFuture::from(promise).await.is_ok()
}

/// Whether this browser hands text on.
pub fn can_share_text() -> bool {
    of_navigator("share").is_some()
}

/// Hands text on; false where the browser won't.
pub fn text(text: &str) -> bool {
    sharing(text).is_some()
}

fn copying(text: &str) -> Option<Promise> {
    let navigator: JsValue = web_sys::window()?.navigator().into();
    let clipboard = Reflect::get(&navigator, &"clipboard".into()).ok()?;
    let write: Function = Reflect::get(&clipboard, &"writeText".into()).ok()?.dyn_into().ok()?;
    write.call1(&clipboard, &text.into()).ok()?.dyn_into().ok()
}

fn sharing(text: &str) -> Option<()> {
    let what = Object::new();
    Reflect::set(&what, &"text".into(), &text.into()).ok()?;
    let (navigator, share) = of_navigator("share")?;
    let promise: Promise = share.call1(&navigator, &what).ok()?.dyn_into().ok()?;
    // Somebody who changes their mind has not failed.
    spawn_local(async move { drop(JsFuture::from(promise).await) });
    Some(())
}

fn of_navigator(name: &str) -> Option<(JsValue, Function)> {
    let navigator: JsValue = web_sys::window()?.navigator().into();
    let asked = Reflect::get(&navigator, &name.into()).ok()?.dyn_into().ok()?;
    Some((navigator, asked))
}
