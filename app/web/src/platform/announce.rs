//! Says a sentence to screen readers without showing it (WAI-ARIA 1.2, role `status`).

use wasm_bindgen::JsCast;
use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlElement;

use super::idle;

const ID: &str = "announce";

/// A reader hears a change only in a region that it has already met.
const SETTLE_MS: i32 = 60;

/// Says it once the reader has finished what it is saying. The same sentence twice is heard twice.
pub fn say(text: &str) {
    let Some(region) = region() else { return };
    region.set_text_content(None);
    let text = text.to_owned();
    spawn_local(async move {
        idle::pause(SETTLE_MS).await;
        region.set_text_content(Some(&text));
    });
}

/// The page's own region, or one made out of sight.
fn region() -> Option<HtmlElement> {
    let document = web_sys::window()?.document()?;
    if let Some(region) = document.get_element_by_id(ID) {
        return region.dyn_into().ok();
    }
    let region: HtmlElement = document.create_element("div").ok()?.dyn_into().ok()?;
    region.set_id(ID);
    let _ = region.set_attribute("role", "status");
    for (name, value) in [
        ("position", "fixed"),
        ("inline-size", "1px"),
        ("block-size", "1px"),
        ("overflow", "hidden"),
        ("clip-path", "inset(50%)"),
    ] {
        let _ = region.style().set_property(name, value);
    }
    document.body()?.append_child(&region).ok()?;
    Some(region)
}
