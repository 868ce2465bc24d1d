//! Files out of the browser and into it.

use js_sys::{Array, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, HtmlInputElement, Url};

use super::idle;

/// How long a saved file's address stays alive, in milliseconds: browsers read it after the tap.
const ADDRESS_MS: i32 = 60_000;

/// Why a file could not be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unread {
    /// More bytes than are accepted.
    TooLong {
        /// Its length in bytes.
        bytes: u64,
    },
    /// The browser could not read it: it was moved, or may not be read.
    Refused,
}

/// Hands `bytes` to the reader as a file of that name and type. False: the browser would not.
pub fn save(name: &str, kind: &str, bytes: &[u8]) -> bool {
    address_of(kind, &Uint8Array::from(bytes)).and_then(|address| follow(&address, name)).is_some()
}

/// The file picked in an `<input type="file">`.
pub fn picked(input: &HtmlInputElement) -> Option<File> {
    input.files()?.get(0)
}

/// The bytes of a file of at most `most` bytes, untouched.
///
/// # Errors
/// [`Unread`].
pub async fn read(file: &File, most: u64) -> Result<Vec<u8>, Unread> {
    let bytes = file.size() as u64;
    if bytes > most {
        return Err(Unread::TooLong { bytes });
    }
    let buffer = JsFuture::from(file.array_buffer()).await.map_err(|_error| Unread::Refused)?;
    Ok(Uint8Array::new(&buffer).to_vec())
}

/// An address in this page for bytes of that type.
pub(super) fn address_of(kind: &str, bytes: &Uint8Array) -> Option<String> {
    let parts: JsValue = Array::of1(bytes).into();
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let blob = Blob::new_with_u8_array_sequence_and_options(&parts, &options).ok()?;
    Url::create_object_url_with_blob(&blob).ok()
}

fn follow(address: &str, name: &str) -> Option<()> {
    let document = web_sys::window()?.document()?;
    let link: HtmlAnchorElement = document.create_element("a").ok()?.dyn_into().ok()?;
    link.set_href(address);
    link.set_download(name);
    link.click();
    let address = address.to_owned();
    spawn_local(async move {
        idle::pause(ADDRESS_MS).await;
        let _ = Url::revoke_object_url(&address);
    });
    Some(())
}
