//! Names of entries and revisions: a UUID, held as two numbers, which compare and hash in two steps.
//!
//! Not as one of 128 bits: whatever holds such a number lies at a multiple of 16 bytes, which on the phone costs every
//! list of them and every entry a search for room.

use serde::{Deserialize, Deserializer, Serialize, Serializer, de::Error};

/// A UUID (RFC 9562), of any version. New ones are version 7 and are made outside this crate,
/// which reads no clock and no random source.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Id {
    upper: u64,
    lower: u64,
}

impl Id {
    /// Reads the 8-4-4-4-12 form, in either case; anything else is `None`.
    /// ```
    /// # use benchslate_core::journal::Id;
    /// let text = "0190f3c2-7b1a-7c3d-8e4f-0123456789ab";
    /// assert_eq!(Id::parse(text).map(|id| id.to_string()).as_deref(), Some(text));
    /// assert_eq!(Id::parse("0190f3c2"), None);
    /// ```
    pub fn parse(text: &str) -> Option<Id> {
        if text.len() != 36 {
            return None;
        }
        let (mut upper, mut lower) = (0_u64, 0_u64);
        for (at, byte) in text.bytes().enumerate() {
            if matches!(at, 8 | 13 | 18 | 23) {
                if byte != b'-' {
                    return None;
                }
                continue;
            }
            let half = if at < 18 { &mut upper } else { &mut lower };
            *half = half.checked_shl(4)? | u64::from(char::from(byte).to_digit(16)?);
        }
        Some(Id { upper, lower })
    }

    /// Of these bytes, in the order in which they are written.
    pub const fn of(bytes: [u8; 16]) -> Id {
        let [a, b, c, d, e, f, g, h, i, j, k, l, m, n, o, p] = bytes;
        Id {
            upper: u64::from_be_bytes([a, b, c, d, e, f, g, h]),
            lower: u64::from_be_bytes([i, j, k, l, m, n, o, p]),
        }
    }

    /// In the order in which they are written.
    pub const fn bytes(self) -> [u8; 16] {
        let [a, b, c, d, e, f, g, h] = self.upper.to_be_bytes();
        let [i, j, k, l, m, n, o, p] = self.lower.to_be_bytes();
        [a, b, c, d, e, f, g, h, i, j, k, l, m, n, o, p]
    }
}

impl std::fmt::Display for Id {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        for (at, byte) in self.bytes().iter().enumerate() {
            if matches!(at, 4 | 6 | 8 | 10) {
                out.write_str("-")?;
            }
            write!(out, "{byte:02x}")?;
        }
        Ok(())
    }
}

impl std::fmt::Debug for Id {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        std::fmt::Display::fmt(self, out)
    }
}

impl Serialize for Id {
    fn serialize<S: Serializer>(&self, out: S) -> Result<S::Ok, S::Error> {
        out.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Id {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        struct Text;
        impl serde::de::Visitor<'_> for Text {
            type Value = Id;
            fn expecting(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                out.write_str("a UUID")
            }
            fn visit_str<E: Error>(self, text: &str) -> Result<Id, E> {
                Id::parse(text).ok_or_else(|| E::custom("not a UUID"))
            }
        }
        from.deserialize_str(Text)
    }
}

#[cfg(test)]
mod tests {
    use super::Id;

    #[test]
    fn only_the_whole_form_is_read() {
        for bad in [
            "",
            "0190f3c2-7b1a-7c3d-8e4f-0123456789a",
            "0190f3c2x7b1a-7c3d-8e4f-0123456789ab",
            "é190f3c2-7b1a-7c3d-8e4f-0123456789a",
        ] {
            assert_eq!(Id::parse(bad), None, "{bad}");
        }
        assert_eq!(Id::parse("FFFFFFFF-FFFF-FFFF-FFFF-FFFFFFFFFFFF"), Some(Id::of([255; 16])));
    }
}
