//! A drawing made into a PNG on this device, and handed to whatever else is on it.

use js_sys::{Array, Function, Object, Promise, Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Blob, BlobPropertyBag, CanvasRenderingContext2d, File, HtmlCanvasElement, HtmlImageElement};

use super::picture::Address;
use benchslate_core::exchange::cards::MEDIA_TYPE;

/// What it is made into; clear stays clear.
pub const PNG: &str = "image/png";

/// The PNG of an SVG, so many px across and down. None: this browser made none.
pub async fn png(svg: &str, width: u32, height: u32) -> Option<Vec<u8>> {
    let document = web_sys::window()?.document()?;
    let address = Address::of(&Uint8Array::from(svg.as_bytes()), MEDIA_TYPE)?;
    let image: HtmlImageElement = document.create_element("img").ok()?.dyn_into().ok()?;
    image.set_src(address.text());
    JsFuture::from(image.decode()).await.ok()?;
    let canvas: HtmlCanvasElement = document.create_element("canvas").ok()?.dyn_into().ok()?;
    canvas.set_width(width);
    canvas.set_height(height);
    let pen: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    let (w, h) = (f64::from(width), f64::from(height));
    pen.draw_image_with_html_image_element_and_dw_and_dh(&image, 0.0, 0.0, w, h).ok()?;
    let made = Promise::new(&mut |resolve, reject| {
        let resolve: &Function = resolve.unchecked_ref();
        if let Err(error) = canvas.to_blob_with_type(resolve, PNG) {
            let _ = reject.call1(&JsValue::UNDEFINED, &error);
        }
    });
    let blob: Blob = JsFuture::from(made).await.ok()?.dyn_into().ok()?;
    let buffer = JsFuture::from(blob.array_buffer()).await.ok()?;
    Some(Uint8Array::new(&buffer).to_vec())
}

/// Whether this browser hands files on.
pub fn can_share() -> bool {
    asked("canShare").is_some() && asked("share").is_some()
}

/// Hands it on; false where the browser won't.
pub fn share(name: &str, bytes: &[u8]) -> bool {
    try_share(name, bytes).is_some()
}

fn asked(name: &str) -> Option<(JsValue, Function)> {
    let navigator: JsValue = web_sys::window()?.navigator().into();
    let asked = Reflect::get(&navigator, &name.into()).ok()?.dyn_into().ok()?;
    Some((navigator, asked))
}

fn try_share(name: &str, bytes: &[u8]) -> Option<()> {
    let parts: JsValue = Array::of1(&Uint8Array::from(bytes)).into();
    let options = BlobPropertyBag::new();
    options.set_type(PNG);
    let blob = Blob::new_with_u8_array_sequence_and_options(&parts, &options).ok()?;
    let bag = web_sys::FilePropertyBag::new();
    bag.set_type(PNG);
    let file = File::new_with_blob_sequence_and_options(&Array::of1(&blob).into(), name, &bag).ok()?;
    let what = Object::new();
    Reflect::set(&what, &"files".into(), &Array::of1(&file)).ok()?;
    let (navigator, can) = asked("canShare")?;
    can.call1(&navigator, &what).ok()?.as_bool().filter(|can| *can)?;
    let (navigator, share) = asked("share")?;
    let promise: Promise = share.call1(&navigator, &what).ok()?.dyn_into().ok()?;
    // Somebody who changes their mind has not failed.
    spawn_local(async move { drop(JsFuture::from(promise).await) });
    Some(())
}
