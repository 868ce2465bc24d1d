//! A file of the program's own, fetched beside the page; with the network cut the service worker has it.

use js_sys::JsString;
use wasm_bindgen::{JsCast, JsValue, prelude::wasm_bindgen};
use wasm_bindgen_futures::JsFuture;

#[wasm_bindgen]
extern "C" {
    /// `Response`, for the two things that are asked of it.
    type Answer;

    #[wasm_bindgen(method, getter)]
    fn ok(this: &Answer) -> bool;

    #[wasm_bindgen(method, catch)]
    fn text(this: &Answer) -> Result<js_sys::Promise, JsValue>;
}

/// Its text; none where it did not arrive.
pub async fn text(name: &str) -> Option<String> {
    let asked = web_sys::window()?.fetch_with_str(name);
    let answer: Answer = JsFuture::from(asked).await.ok()?.unchecked_into();
    if !answer.ok() {
        return None;
    }
    let text = JsFuture::from(answer.text().ok()?).await.ok()?;
    text.dyn_into::<JsString>().ok().map(String::from)
}
