//! Names of entries and revisions: a UUID, held as one number, which compares and hashes in a step.

use serde::{Deserialize, Deserializer, Serialize, Serializer, de::Error};

/// A UUID (RFC 9562), of any version. New ones are version 7 and are made outside this crate,
/// which reads no clock and no random source.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Id(u128);

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
        let mut number = 0_u128;
        for (at, char) in text.char_indices() {
            if matches!(at, 8 | 13 | 18 | 23) {
                if char != '-' {
                    return None;
                }
                continue;
            }
            number = number.checked_shl(4)? | u128::from(char.to_digit(16)?);
        }
        Some(Id(number))
    }

    /// Of these bytes, in the order in which they are written.
    pub const fn of(bytes: [u8; 16]) -> Id {
        Id(u128::from_be_bytes(bytes))
    }

    /// In the order in which they are written.
    pub const fn bytes(self) -> [u8; 16] {
        self.0.to_be_bytes()
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
