//! A picture file made into a photo as it is kept: upright, no larger than it need be, and without whatever else the
//! file says (where it was taken, and with what).
//!
//! The browser turns it by the camera's mark while it decodes (`imageOrientation: "from-image"`, the default of the
//! HTML standard); drawn on a canvas and encoded again, nothing but the pixels is left.

use benchslate_core::{
    exchange::picture::{Size, size_of},
    measure::limits,
};
use js_sys::{Function, Promise};
use sha2::{Digest, Sha256};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, CanvasRenderingContext2d, File, HtmlCanvasElement, ImageBitmap};

use super::{download, idle};
use crate::store::{Encoded, NewPhoto};

/// How a photo is encoded, and how well: 0 to 1.
const MEDIA: &str = "image/jpeg";
const QUALITY: f64 = 0.82;

/// Why no photo was made of a file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoPhoto {
    /// Nothing is in it.
    Empty,
    /// It is longer than is accepted.
    TooLong {
        /// Its length in bytes.
        bytes: u64,
    },
    /// It has more pixels than there is room for, or none.
    TooLarge(Size),
    /// The file can't be read: it was moved, or may not be.
    Refused,
    /// It holds no picture that this browser knows.
    NoPicture,
    /// The browser could not draw or encode it.
    NotMade,
}

/// Makes it. The file itself is left as it is.
///
/// # Errors
/// [`NoPhoto`].
pub async fn photo_of(file: &File) -> Result<NewPhoto, NoPhoto> {
    if file.size() == 0.0 {
        return Err(NoPhoto::Empty);
    }
    let bytes = download::read(file, limits::MOST_PHOTO_FILE_BYTES as u64).await;
    let bytes = bytes.map_err(|unread| match unread {
        download::Unread::TooLong { bytes } => NoPhoto::TooLong { bytes },
        download::Unread::Refused => NoPhoto::Refused,
    })?;
    if let Some(size) = size_of(&bytes).filter(|size| !size.fits()) {
        return Err(NoPhoto::TooLarge(size));
    }
    drop(bytes);
    // The browser paints that it is under way before the long work begins.
    idle::turn().await;
    let bitmap = decoded(file).await?;
    let made = encoded(&bitmap).await;
    // Pixels are many times the file; the browser need not wait to be rid of them.
    bitmap.close();
    made
}

/// The small one of a photo that is kept already; none where the browser can't draw it.
pub async fn thumb_of(bytes: &[u8], media: &str) -> Option<Encoded> {
    let blob = download::blob(media, &js_sys::Uint8Array::from(bytes))?;
    let bitmap = decoded(&blob).await.ok()?;
    let whole = Size { width: bitmap.width(), height: bitmap.height() };
    let made = if whole.fits() { smaller(&bitmap, whole, limits::THUMB_SIDE).await.ok() } else { None };
    bitmap.close();
    made
}

async fn decoded(file: &Blob) -> Result<ImageBitmap, NoPhoto> {
    let window = web_sys::window().ok_or(NoPhoto::NotMade)?;
    let promise = window.create_image_bitmap_with_blob(file).map_err(|_error| NoPhoto::NoPicture)?;
    let bitmap = JsFuture::from(promise).await.map_err(|_error| NoPhoto::NoPicture)?;
    bitmap.dyn_into().map_err(|_other| NoPhoto::NotMade)
}

async fn encoded(bitmap: &ImageBitmap) -> Result<NewPhoto, NoPhoto> {
    let whole = Size { width: bitmap.width(), height: bitmap.height() };
    if !whole.fits() {
        return Err(NoPhoto::TooLarge(whole));
    }
    let full = smaller(bitmap, whole, limits::PHOTO_SIDE).await?;
    let thumb = smaller(bitmap, whole, limits::THUMB_SIDE).await?;
    let hash = Sha256::digest(&full.bytes).iter().map(|byte| format!("{byte:02x}")).collect();
    Ok(NewPhoto { hash, full, thumb: Some(thumb) })
}

async fn smaller(bitmap: &ImageBitmap, whole: Size, most: u32) -> Result<Encoded, NoPhoto> {
    let Size { width, height } = whole.within(most);
    let drawn = canvas(bitmap, width, height);
    let blob = blob_of(&drawn.ok_or(NoPhoto::NotMade)?).await.ok_or(NoPhoto::NotMade)?;
    let buffer = JsFuture::from(blob.array_buffer()).await.map_err(|_error| NoPhoto::NotMade)?;
    let bytes = js_sys::Uint8Array::new(&buffer).to_vec();
    Ok(Encoded { bytes, media: blob.type_(), width, height })
}

fn canvas(bitmap: &ImageBitmap, width: u32, height: u32) -> Option<HtmlCanvasElement> {
    let document = web_sys::window()?.document()?;
    let canvas: HtmlCanvasElement = document.create_element("canvas").ok()?.dyn_into().ok()?;
    canvas.set_width(width);
    canvas.set_height(height);
    let pen: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    // What is clear in a picture turns white, not black: the kept kind knows no clear.
    pen.set_fill_style_str("white");
    pen.fill_rect(0.0, 0.0, f64::from(width), f64::from(height));
    let _ = js_sys::Reflect::set(&pen, &"imageSmoothingQuality".into(), &"high".into());
    let (w, h) = (f64::from(width), f64::from(height));
    pen.draw_image_with_image_bitmap_and_dw_and_dh(bitmap, 0.0, 0.0, w, h).ok()?;
    Some(canvas)
}

async fn blob_of(canvas: &HtmlCanvasElement) -> Option<Blob> {
    let made = Promise::new(&mut |resolve, reject| {
        let resolve: &Function = resolve.unchecked_ref();
        let quality = JsValue::from_f64(QUALITY);
        if let Err(error) = canvas.to_blob_with_type_and_encoder_options(resolve, MEDIA, &quality) {
            let _ = reject.call1(&JsValue::UNDEFINED, &error);
        }
    });
    JsFuture::from(made).await.ok()?.dyn_into().ok()
}

/// The address of bytes in this page, for an `<img>`. Given back when it is let go of, or before.
pub struct Address(String);

impl Address {
    /// An address for these bytes.
    pub fn of(bytes: &js_sys::Uint8Array, media: &str) -> Option<Address> {
        download::address_of(media, bytes).map(Address)
    }

    /// As an attribute takes it.
    pub fn text(&self) -> &str {
        &self.0
    }

    /// What shows it has taken it in.
    pub fn give_back(&self) {
        let _ = web_sys::Url::revoke_object_url(&self.0);
    }
}

impl Drop for Address {
    fn drop(&mut self) {
        self.give_back();
    }
}
