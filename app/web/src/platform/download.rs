//! Files out of the browser and into it.

use std::ops::Range;

use js_sys::{Array, Uint8Array};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, HtmlInputElement, Url};

use super::idle;

/// How long a saved file's address stays alive, in milliseconds: browsers read it after the tap.
const ADDRESS_MS: i32 = 60_000;

/// From how many bytes on the browser is handed what there is of a file.
const PIECE: usize = 8_000_000;

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

/// A file put together piece by piece. The browser holds what is handed to it, on the disk where it is much; the
/// program no more than [`PIECE`] of it.
#[derive(Default)]
pub struct Pieces {
    handed: Array,
    waits: Vec<u8>,
}

impl Pieces {
    /// What comes next. None: the browser takes no more.
    pub fn add(&mut self, bytes: &[u8]) -> Option<()> {
        self.waits.extend_from_slice(bytes);
        if self.waits.len() < PIECE { Some(()) } else { self.hand_over() }
    }

    /// Hands it all to the reader as a file of that name and type. None: the browser would not.
    pub fn save(mut self, name: &str, kind: &str) -> Option<()> {
        self.hand_over()?;
        let address = Url::create_object_url_with_blob(&blob_of(kind, &self.handed)?).ok()?;
        follow(&address, name)
    }

    fn hand_over(&mut self) -> Option<()> {
        self.handed.push(&blob("", &Uint8Array::from(self.waits.as_slice()))?.into());
        self.waits.clear();
        Some(())
    }
}

/// Hands `bytes` to the reader as a file of that name and type. False: the browser would not.
pub fn save(name: &str, kind: &str, bytes: &[u8]) -> bool {
    let mut pieces = Pieces::default();
    pieces.add(bytes).and_then(|()| pieces.save(name, kind)).is_some()
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
    bytes_of(file).await
}

/// Some bytes of a file.
///
/// # Errors
/// [`Unread::Refused`].
pub async fn read_range(file: &File, range: Range<u64>) -> Result<Vec<u8>, Unread> {
    let piece = file.slice_with_f64_and_f64(range.start as f64, range.end as f64);
    bytes_of(&piece.map_err(|_error| Unread::Refused)?).await
}

async fn bytes_of(blob: &Blob) -> Result<Vec<u8>, Unread> {
    let buffer = JsFuture::from(blob.array_buffer()).await.map_err(|_error| Unread::Refused)?;
    Ok(Uint8Array::new(&buffer).to_vec())
}

/// An address in this page for bytes of that type.
pub(super) fn address_of(kind: &str, bytes: &Uint8Array) -> Option<String> {
    Url::create_object_url_with_blob(&blob(kind, bytes)?).ok()
}

/// Bytes as the browser's own, of that type.
pub(super) fn blob(kind: &str, bytes: &Uint8Array) -> Option<Blob> {
    blob_of(kind, &Array::of1(bytes))
}

fn blob_of(kind: &str, parts: &Array) -> Option<Blob> {
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    Blob::new_with_buffer_source_sequence_and_options(parts, &options).ok()
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
