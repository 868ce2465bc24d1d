//! Reading a JSON object into a struct, and nothing else into it.
//!
//! A derived reader also takes an array for a struct, field by field; nobody writes that, and what it takes to read it
//! is as much again to download, for every kind of entry.

use serde::{
    Deserialize, Deserializer,
    de::{Error, Visitor},
    forward_to_deserialize_any,
};
use serde_json::de::StrRead;

/// Reads a text that is one object.
///
/// # Errors
/// As `serde_json` says, but without the place: for a body, which is read whole or not at all.
pub(super) fn from_text<'a, T: Deserialize<'a>>(text: &'a str) -> Result<T, serde_json::Error> {
    let mut reader = serde_json::Deserializer::from_str(text);
    let read = T::deserialize(Object(&mut reader))?;
    reader.end()?;
    Ok(read)
}

struct Object<'r, 'a>(&'r mut serde_json::Deserializer<StrRead<'a>>);

impl<'de> Deserializer<'de> for Object<'_, 'de> {
    type Error = serde_json::Error;

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _name: &'static str,
        _fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, serde_json::Error> {
        self.0.deserialize_map(visitor)
    }

    fn deserialize_any<V: Visitor<'de>>(self, _visitor: V) -> Result<V::Value, serde_json::Error> {
        Err(serde_json::Error::custom("a struct is read from an object"))
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf option unit unit_struct
        newtype_struct seq tuple tuple_struct map enum identifier ignored_any
    }
}
