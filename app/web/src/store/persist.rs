//! Room, and the browser's promise not to clear it away.

use js_sys::Reflect;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::StorageManager;

/// What the browser says about room, in bytes. Estimates, by its own account.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Room {
    /// Taken by everything this site keeps.
    pub used: f64,
    /// The most that it may take.
    pub most: f64,
}

impl Room {
    /// What is left; negative where the most was lowered below what is taken.
    pub fn free(&self) -> f64 {
        self.most - self.used
    }
}

/// Asks the browser never to clear our data by itself. Some ask the reader, some decide alone.
/// False also where it can't be asked.
pub async fn ask() -> bool {
    let Some(manager) = manager() else { return false };
    match manager.persist() {
        Ok(promise) => JsFuture::from(promise).await.is_ok_and(|answer| answer.is_truthy()),
        Err(_) => false,
    }
}

/// Whether that was promised.
pub async fn promised() -> bool {
    let Some(manager) = manager() else { return false };
    match manager.persisted() {
        Ok(promise) => JsFuture::from(promise).await.is_ok_and(|answer| answer.is_truthy()),
        Err(_) => false,
    }
}

/// The room there is, where the browser says.
pub async fn room() -> Option<Room> {
    let estimate = JsFuture::from(manager()?.estimate().ok()?).await.ok()?;
    let of = |field: &str| Reflect::get(&estimate, &JsValue::from_str(field)).ok()?.as_f64();
    Some(Room { used: of("usage")?, most: of("quota")? })
}

/// Absent where the page isn't served safely (plain HTTP), whatever its type says.
fn manager() -> Option<StorageManager> {
    let navigator = web_sys::window()?.navigator();
    let manager = Reflect::get(&navigator, &JsValue::from_str("storage")).ok()?;
    manager.is_object().then(|| manager.unchecked_into())
}
