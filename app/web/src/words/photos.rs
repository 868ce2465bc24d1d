//! Photos: the key that takes one, what stands in the place of one, and why none came of a picture.

use super::{Tongue, shop};
use crate::platform::picture::NoPhoto;
use benchslate_core::measure::limits;

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

/// The connection to the journal died while it was kept.
pub fn cut_off() -> &'static str {
    "No photo kept: the journal was cut off. Reload, then take it again."
}

/// Why no photo came of a picture: what was found, what is accepted, what to do.
pub fn no_photo(tongue: &Tongue, why: NoPhoto) -> String {
    let why = match why {
        NoPhoto::Empty => "the file is empty. Take it again.".to_owned(),
        NoPhoto::TooLong { bytes } => format!(
            "the file has {}; up to {} is taken. Choose a smaller one.",
            shop::room(tongue, bytes as f64),
            shop::room(tongue, limits::MOST_PHOTO_FILE_BYTES as f64)
        ),
        NoPhoto::TooLarge(size) => format!(
            "{} is more than a phone has room for. Take it smaller.",
            pixels(tongue, size.width, size.height)
        ),
        NoPhoto::Refused => {
            "the file can’t be read: it was moved, or may not be. Choose it again.".to_owned()
        }
        NoPhoto::NoPicture => {
            "the file is no picture that this browser knows. A photo, JPEG or PNG is taken.".to_owned()
        }
        NoPhoto::NotMade => "this browser could not make it smaller. Try again.".to_owned(),
    };
    format!("No photo kept: {why}")
}

fn pixels(tongue: &Tongue, width: u32, height: u32) -> String {
    let [width, height] = [width, height].map(|side| tongue.number(&side.to_string()));
    format!("{width} × {height}")
}
