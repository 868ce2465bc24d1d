//! Benchslate in the browser: asks core, shows the answer, keeps the lines.
//!
//! Never: arithmetic on money, quantities or time; another way to storage than `store`; a sentence outside
//! `words`. Kept by: core's types have no public arithmetic, `tidy`, and review.

mod app;
mod dom;
mod parts;
mod platform;
mod screens;
mod shell;
mod store;
mod words;

use crate::dom::prelude::*;
use wasm_bindgen::JsCast;

fn main() {
    let root =
        web_sys::window().and_then(|it| it.document()).and_then(|it| it.get_element_by_id("benchslate"));
    let Some(root) = root.and_then(|it| it.dyn_into::<web_sys::HtmlElement>().ok()) else { return };
    // What the page itself has painted stays until there is a sheet to take its place: `shell/painted`.
    wasm_bindgen_futures::spawn_local(async {
        // Taking the program in was a long task of the browser's already; a tap may come between it and the first sheet.
        platform::idle::turn().await;
        mount_to(root, app::App).forget();
    });
}
