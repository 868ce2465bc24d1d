//! Photos: the key that takes one, what stands in the place of one, and why none came of a picture.

use super::{Tongue, shop};
use crate::platform::picture::NoPhoto;

/// The key that takes one.
pub fn key() -> &'static str {
    "Photo"
}

/// Under it, while the picture is being made small.
pub fn under_way() -> &'static str {
    "wait"
}

/// The input behind the key.
pub fn file() -> &'static str {
    "Picture from the camera"
}

/// Photos about an entry.
pub fn title() -> &'static str {
    "Photos"
}

/// In place of a caption, read aloud: `photo of 20 Nov 2026`.
pub fn photo_of(day: &str) -> String {
    format!("photo of {day}")
}

/// A mark: of which line.
pub fn of_line(kind: &str, what: &str) -> String {
    if what.is_empty() { format!("of {kind}") } else { format!("of {kind}, {what}") }
}

/// The line came from another device, its bytes did not.
pub fn not_here() -> &'static str {
    "photo not on this device"
}

/// The bytes are here and the browser draws nothing of them.
pub fn spoilt() -> &'static str {
    "photo can’t be shown"
}

/// How large it is kept: `1600 × 1200, 0.3 MB`.
pub fn size(tongue: &Tongue, width: u32, height: u32, bytes: u32) -> String {
    let pixels = pixels(tongue, width, height);
    format!("{pixels}, {}", shop::room(tongue, f64::from(bytes)))
}

/// The message was read.
pub fn seen() -> &'static str {
    "seen"
}

/// No photo came of a picture.
pub fn none() -> &'static str {
    "no photo:"
}

/// The connection to the journal died while it was kept.
pub fn cut_off() -> &'static str {
    "the journal was cut off"
}

/// What to do then.
pub fn reload() -> &'static str {
    "reload, then take it again"
}

/// Why no photo came of a picture: what was found.
pub fn no_photo(tongue: &Tongue, why: NoPhoto) -> String {
    match why {
        NoPhoto::Empty => "the file is empty",
        NoPhoto::TooLong { bytes } => return format!("the file has {}", shop::room(tongue, bytes as f64)),
        NoPhoto::TooLarge(size) => {
            return format!("{} is too large for a phone", pixels(tongue, size.width, size.height));
        }
        NoPhoto::Refused => "the file was moved, or may not be read",
        NoPhoto::NoPicture => "the file is no picture known here",
        NoPhoto::NotMade => "it could not be made smaller",
    }
    .to_owned()
}

/// Under it: what is accepted, and what to do.
pub fn what_to_do(why: NoPhoto) -> &'static str {
    match why {
        NoPhoto::Empty | NoPhoto::NotMade => "take it again",
        NoPhoto::TooLong { .. } | NoPhoto::TooLarge(_) => "take a smaller one",
        NoPhoto::Refused => "choose it again",
        NoPhoto::NoPicture => "a JPEG or PNG is taken",
    }
}

pub(super) fn pixels(tongue: &Tongue, width: u32, height: u32) -> String {
    let [width, height] = [width, height].map(|side| tongue.number(&side.to_string()));
    format!("{width} × {height}")
}
