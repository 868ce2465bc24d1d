//! Waiting: for an idle moment, for a while, for the next turn.

use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// The longest wait for an idle moment, in milliseconds.
const IDLE_MS: f64 = 2000.0;

/// Waits until the browser has nothing better to do, two seconds at most; where it doesn't say
/// (WebKit), until the next turn.
pub async fn idle() {
    let asked = JsValue::from_str("requestIdleCallback");
    let call = web_sys::window().and_then(|it| Reflect::get(&it, &asked).ok()?.dyn_into::<Function>().ok());
    let Some(call) = call else { return turn().await };
    let options = js_sys::Object::new();
    let _ = Reflect::set(&options, &JsValue::from_str("timeout"), &JsValue::from_f64(IDLE_MS));
    let moment = Promise::new(&mut |resolve, _reject| {
        let _ = call.call2(&JsValue::UNDEFINED, resolve.as_ref(), &options);
    });
    let _ = JsFuture::from(moment).await;
}

/// Lets the browser paint and answer taps before the work goes on.
pub async fn turn() {
    pause(0).await;
}

/// Lets taps in between two pieces of work that nobody sees: by the browser's scheduler, where it has one, for a timer
/// waits four milliseconds from the fifth on. Nothing need be painted meanwhile.
pub async fn breath() {
    match given_way() {
        Some(turn) => drop(JsFuture::from(turn).await),
        None => turn().await,
    }
}

fn given_way() -> Option<Promise> {
    let scheduler = Reflect::get(web_sys::window()?.as_ref(), &"scheduler".into()).ok()?;
    let gives_way: Function = Reflect::get(&scheduler, &"yield".into()).ok()?.dyn_into().ok()?;
    gives_way.call0(&scheduler).ok()?.dyn_into().ok()
}

/// Waits so many milliseconds.
pub async fn pause(ms: i32) {
    let Some(window) = web_sys::window() else { return };
    let over = Promise::new(&mut |resolve, _reject| {
        let resolve: &Function = resolve.unchecked_ref();
        let _ = window.set_timeout_with_callback_and_timeout_and_arguments_0(resolve, ms);
    });
    let _ = JsFuture::from(over).await;
}
