//! Photos and their small copies: bytes under their hash, each in a store of its own, so that lists never touch the
//! big ones.
//!
//! They are put into the transaction of the lines that name them: both are there, or neither. A file with more photos
//! than fit in memory puts them ahead, its lines last; a line never stands without what came with it. What lies under
//! a hash is that photo, whoever put it there.

use js_sys::{Array, ArrayBuffer, Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};

use super::act::Act;
use super::door::{Door, Mode};
use super::failure::{At, Failure};
use super::schema::{PHOTOS, THUMBS};
use super::{persist, value};

/// Which of the two copies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Copy {
    /// As large as it is kept.
    Full,
    /// The small one.
    Thumb,
}

/// One picture, encoded.
#[derive(Clone, Debug)]
pub struct Encoded {
    /// The file's bytes.
    pub bytes: Vec<u8>,
    /// Its media type.
    pub media: String,
    /// Pixels across.
    pub width: u32,
    /// Pixels down.
    pub height: u32,
}

/// A photo to be kept with the line that names it.
#[derive(Clone, Debug)]
pub struct NewPhoto {
    /// SHA-256 of the bytes of `full`, in hexadecimal.
    pub hash: String,
    /// As it is kept.
    pub full: Encoded,
    /// As lists show it; none where none could be made: they show the large one.
    pub thumb: Option<Encoded>,
}

/// Whether there is room for them, as far as the browser says. Asked before the transaction: in one that is under
/// way there is no time to ask.
pub(super) async fn must_fit(photos: &[NewPhoto]) -> Result<(), Failure> {
    let small = |photo: &NewPhoto| photo.thumb.as_ref().map_or(0, |thumb| thumb.bytes.len());
    let needed: usize = photos.iter().map(|photo| photo.full.bytes.len() + small(photo)).sum();
    has_room(needed as u64).await
}

/// Whether there is room for so many bytes, as far as the browser says.
pub(super) async fn has_room(needed: u64) -> Result<(), Failure> {
    if needed == 0 {
        return Ok(());
    }
    let free = persist::room().await.map(|room| room.free());
    if free.is_some_and(|free| free < needed as f64) { Err(Failure::Full) } else { Ok(()) }
}

/// Puts photos in alone, ahead of the lines that name them, or takes them out again whose lines did not come.
pub(super) async fn ahead(door: &Door, photos: &[NewPhoto], back: &[String]) -> Result<(), Failure> {
    let act = door.begin(&[PHOTOS, THUMBS], Mode::Strict)?;
    put(&act, photos)?;
    for hash in back {
        act.delete(PHOTOS, &JsValue::from_str(hash))?;
        act.delete(THUMBS, &JsValue::from_str(hash))?;
    }
    act.ended().await
}

/// The hashes of all that are here, in order.
pub(super) async fn hashes(door: &Door) -> Result<Vec<String>, Failure> {
    let act = door.begin(&[PHOTOS], Mode::Read)?;
    let keys: Array = act.keys(PHOTOS)?.answered().await?.unchecked_into();
    Ok(keys.iter().filter_map(|key| key.as_string()).collect())
}

/// Puts them into a transaction under way.
pub(super) fn put(act: &Act, photos: &[NewPhoto]) -> Result<(), Failure> {
    for photo in photos {
        let key = JsValue::from_str(&photo.hash);
        act.put(PHOTOS, &key, &record(&photo.full))?;
        if let Some(thumb) = &photo.thumb {
            act.put(THUMBS, &key, &record(thumb))?;
        }
    }
    Ok(())
}

/// The bytes of a copy and their type; none: not on this device. Without a small one it is the large one.
pub(super) async fn get(
    door: &Door,
    hash: &str,
    copy: Copy,
) -> Result<Option<(Uint8Array, String)>, Failure> {
    let stores: &[&str] = if copy == Copy::Thumb { &[THUMBS, PHOTOS] } else { &[PHOTOS] };
    let act = door.begin(stores, Mode::Read)?;
    for store in stores {
        let kept = act.get(store, &JsValue::from_str(hash))?.answered().await?;
        if kept.is_undefined() {
            continue;
        }
        let bytes = Reflect::get(&kept, &value::name("bytes")).ok();
        let bytes = bytes.and_then(|bytes| bytes.dyn_into::<ArrayBuffer>().ok());
        return match (bytes, value::text(&kept, "type")) {
            (Some(bytes), Some(media)) => Ok(Some((Uint8Array::new(&bytes), media))),
            _ => Err(Failure::Damaged { at: At::Unreadable }),
        };
    }
    Ok(None)
}

/// Never a `Blob`: one browser keeps a mere reference to its bytes, and loses them.
fn record(it: &Encoded) -> JsValue {
    value::record(&[
        ("bytes", Uint8Array::from(it.bytes.as_slice()).buffer().into()),
        ("type", it.media.as_str().into()),
        ("w", f64::from(it.width).into()),
        ("h", f64::from(it.height).into()),
    ])
}
