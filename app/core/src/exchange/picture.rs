//! How large a picture says it is, read from the head of its file, before anything makes pixels of it.
//!
//! A small file can hold a picture that no phone has room for. Read here: JPEG (ITU T.81, B.2.2), PNG (ISO/IEC 15948,
//! 11.2.2), GIF (87a, 89a) and WebP (RFC 9649). Not here: pictures of other kinds, whose size shows once the browser
//! has decoded them, and the pixels themselves.

use crate::measure::limits;

/// Width and height in pixels, as the file has them: a turned photo may be turned the other way.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Size {
    /// Pixels across.
    pub width: u32,
    /// Pixels down.
    pub height: u32,
}

/// A kind of picture that a photo is kept as.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// JPEG.
    Jpeg,
    /// PNG.
    Png,
    /// WebP.
    Webp,
}

impl Kind {
    /// Every kind.
    pub const ALL: [Kind; 3] = [Kind::Jpeg, Kind::Png, Kind::Webp];

    /// As the first bytes of the file say.
    pub fn of(bytes: &[u8]) -> Option<Kind> {
        match bytes {
            [0xFF, 0xD8, ..] => Some(Kind::Jpeg),
            [0x89, b'P', b'N', b'G', ..] => Some(Kind::Png),
            [b'R', b'I', b'F', b'F', _, _, _, _, b'W', b'E', b'B', b'P', ..] => Some(Kind::Webp),
            _ => None,
        }
    }

    /// What the name of such a file ends with.
    pub fn ending(self) -> &'static str {
        match self {
            Kind::Jpeg => "jpg",
            Kind::Png => "png",
            Kind::Webp => "webp",
        }
    }

    /// Its media type (IANA).
    pub fn media(self) -> &'static str {
        match self {
            Kind::Jpeg => "image/jpeg",
            Kind::Png => "image/png",
            Kind::Webp => "image/webp",
        }
    }
}

impl Size {
    /// Whether it can be taken: it has pixels, and no more than there is room for.
    pub fn fits(self) -> bool {
        let pixels = u64::from(self.width).saturating_mul(u64::from(self.height));
        (1..=limits::MOST_PHOTO_PIXELS).contains(&pixels)
    }

    /// The same picture with a long side of at most `most`, never larger and never without a pixel.
    #[must_use]
    pub fn within(self, most: u32) -> Size {
        let long = self.width.max(self.height);
        if long <= most {
            return self;
        }
        let scaled = |side: u32| {
            let product = u64::from(side).saturating_mul(u64::from(most));
            let half = u64::from(long).checked_div(2).unwrap_or_default();
            let side = product.saturating_add(half).checked_div(u64::from(long)).unwrap_or_default();
            u32::try_from(side).unwrap_or(most).clamp(1, most)
        };
        Size { width: scaled(self.width), height: scaled(self.height) }
    }
}

/// What the head of the file says. None: another kind of file, or one that is cut off before it says so.
pub fn size_of(bytes: &[u8]) -> Option<Size> {
    match bytes {
        [0xFF, 0xD8, rest @ ..] => jpeg(rest),
        [
            0x89,
            b'P',
            b'N',
            b'G',
            b'\r',
            b'\n',
            0x1A,
            b'\n',
            _,
            _,
            _,
            _,
            b'I',
            b'H',
            b'D',
            b'R',
            rest @ ..,
        ] => {
            let (width, rest) = four(rest)?;
            Some(Size { width, height: four(rest)?.0 })
        }
        [b'G', b'I', b'F', b'8', b'7' | b'9', b'a', w0, w1, h0, h1, ..] => {
            Some(Size { width: small(*w0, *w1), height: small(*h0, *h1) })
        }
        [b'R', b'I', b'F', b'F', _, _, _, _, b'W', b'E', b'B', b'P', rest @ ..] => webp(rest),
        _ => None,
    }
}

/// Segment after segment until the one that begins a frame.
fn jpeg(mut rest: &[u8]) -> Option<Size> {
    loop {
        match rest {
            // Fill bytes may stand before a marker.
            [0xFF, 0xFF, ..] => rest = rest.get(1..)?,
            // C4, C8 and CC are tables, not frames.
            [0xFF, 0xC0..=0xC3 | 0xC5..=0xC7 | 0xC9..=0xCB | 0xCD..=0xCF, _, _, _, h1, h0, w1, w0, ..] => {
                return Some(Size { width: small(*w0, *w1), height: small(*h0, *h1) });
            }
            // The pixels begin, or the file ends: no frame was there.
            [0xFF, 0xD9 | 0xDA, ..] => return None,
            // Markers without a length.
            [0xFF, 0x01 | 0xD0..=0xD8, after @ ..] => rest = after,
            [0xFF, _, l1, l0, ..] => {
                let length = usize::try_from(small(*l0, *l1)).ok()?;
                rest = rest.get(length.checked_add(2)?..)?;
            }
            _ => return None,
        }
    }
}

fn webp(chunk: &[u8]) -> Option<Size> {
    match chunk {
        // Lossy: a key frame's start code, then 14 bits each.
        [b'V', b'P', b'8', b' ', _, _, _, _, _, _, _, 0x9D, 0x01, 0x2A, w0, w1, h0, h1, ..] => {
            Some(Size { width: small(*w0, *w1) & 0x3FFF, height: small(*h0, *h1) & 0x3FFF })
        }
        // Lossless: 14 bits each, less one, after the signature.
        [b'V', b'P', b'8', b'L', _, _, _, _, 0x2F, a, b, c, d, ..] => {
            let bits = u32::from_le_bytes([*a, *b, *c, *d]);
            Some(Size {
                width: (bits & 0x3FFF).checked_add(1)?,
                height: (bits >> 14 & 0x3FFF).checked_add(1)?,
            })
        }
        // Extended: 24 bits each, less one.
        [b'V', b'P', b'8', b'X', _, _, _, _, _, _, _, _, w0, w1, w2, h0, h1, h2, ..] => {
            let whole = |a: u8, b: u8, c: u8| u32::from_le_bytes([a, b, c, 0]).checked_add(1);
            Some(Size { width: whole(*w0, *w1, *w2)?, height: whole(*h0, *h1, *h2)? })
        }
        _ => None,
    }
}

fn small(low: u8, high: u8) -> u32 {
    u32::from(u16::from_le_bytes([low, high]))
}

fn four(bytes: &[u8]) -> Option<(u32, &[u8])> {
    let (head, rest) = bytes.split_first_chunk::<4>()?;
    Some((u32::from_be_bytes(*head), rest))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(bytes: &[u8], want: Option<(u32, u32)>) {
        assert_eq!(size_of(bytes).map(|size| (size.width, size.height)), want);
        // However short it is cut, it is read or refused.
        (0..bytes.len()).for_each(|end| {
            let _ = size_of(&bytes[..end]);
        });
    }

    #[test]
    fn a_jpeg_says_its_size_behind_whatever_stands_before_its_frame() {
        let frame = [0xFF, 0xC0, 0, 11, 8, 0x0B, 0xD0, 0x0F, 0xC0, 1, 1, 0x11, 0];
        let exif = [0xFF, 0xE1, 0, 6, b'E', b'x', b'i', b'f'];
        let table = [0xFF, 0xC4, 0, 3, 0];
        let fill = [0xFF, 0xFF];
        check(&[&[0xFF, 0xD8][..], &exif, &table, &fill, &frame].concat(), Some((4032, 3024)));
        check(&[&[0xFF, 0xD8][..], &exif, &[0xFF, 0xDA, 0, 2]].concat(), None);
        check(&[0xFF, 0xD8, 0xFF, 0xE1, 0xFF, 0xFF, 0], None);
        // A segment that says it is shorter than its own length ends the reading, not the program.
        check(&[0xFF, 0xD8, 0xFF, 0xE1, 0, 0, 0xFF, 0xD9], None);
    }

    #[test]
    fn png_gif_and_webp_say_theirs() {
        let png =
            [b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR".as_slice(), &[0, 0, 0x75, 0x30, 0, 0, 0x75, 0x30]].concat();
        check(&png, Some((30_000, 30_000)));
        check(b"GIF89a\x40\x01\xF0\x00", Some((320, 240)));
        let webp = |chunk: &[u8]| [b"RIFF\0\0\0\0WEBP".as_slice(), chunk].concat();
        check(&webp(b"VP8 \0\0\0\0\0\0\0\x9d\x01\x2a\x40\x01\xf0\x00"), Some((320, 240)));
        check(&webp(b"VP8L\0\0\0\0\x2f\x3f\xc1\x3b\x00"), Some((320, 240)));
        check(&webp(b"VP8X\0\0\0\0\0\0\0\0\x3f\x01\x00\xef\x00\x00"), Some((320, 240)));
    }

    #[test]
    fn what_is_no_picture_says_none() {
        for bytes in [b"".as_slice(), b"Total 31.85", b"%PDF-1.7", b"GIF89", b"\x89PNG\r\n"] {
            check(bytes, None);
        }
    }

    #[test]
    fn a_picture_is_made_smaller_by_its_long_side_and_never_larger() {
        let size = |width, height| Size { width, height };
        assert_eq!(size(4032, 3024).within(1600), size(1600, 1200));
        assert_eq!(size(3024, 4032).within(1600), size(1200, 1600));
        assert_eq!(size(640, 480).within(1600), size(640, 480));
        assert_eq!(size(40_000, 3).within(224), size(224, 1));
        assert_eq!(size(1000, 667).within(224), size(224, 149));
    }

    #[test]
    fn one_that_no_phone_has_room_for_is_known_by_its_head() {
        assert!(Size { width: 12_000, height: 9_000 }.fits());
        assert!(!Size { width: 30_000, height: 30_000 }.fits());
        assert!(!Size { width: u32::MAX, height: u32::MAX }.fits());
        assert!(!Size { width: 0, height: 9 }.fits());
    }
}
