//! Reading a JSON object into a struct, in one way for every struct.
//!
//! What a derived reader does with a map (a key is compared with the names of all fields, what was read waits beside
//! the rest until the end) is written anew for each kind of entry, and is most of what there is to download for it.
//! Here an object is cut into names and raw values once, and the fields are handed over in the order in which the
//! struct has them: of a derived reader only the part for a sequence is left. A field that is not there is none where
//! it is an `Option`, and else reads as the end of the sequence: its default, where it has one.
//!
//! The text has been read once before as JSON, as a raw value; so nothing here says what is wrong with it, or where.

use serde::{
    Deserialize, Deserializer,
    de::{DeserializeSeed, EnumAccess, Error, Expected, SeqAccess, Unexpected, VariantAccess, Visitor},
    forward_to_deserialize_any,
};
use serde_json::value::RawValue;
use std::{borrow::Cow, fmt};

/// Reads a text that is one object. `None` where it is none, or not one of these.
///
/// It need not be known to be JSON.
pub fn read<'a, T: Deserialize<'a>>(text: &'a str) -> Option<T> {
    from_raw(serde_json::from_str(text).ok()?)
}

/// Reads what is known to be JSON.
pub(super) fn from_raw<'a, T: Deserialize<'a>>(raw: &'a RawValue) -> Option<T> {
    T::deserialize(Json(raw.get())).ok()
}

/// It can't be read. A body is read whole or not at all, and nobody is told why.
#[derive(Debug)]
struct Unreadable;

impl fmt::Display for Unreadable {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str("unreadable")
    }
}

impl std::error::Error for Unreadable {}

/// Without the words that the defaults would make of it.
impl Error for Unreadable {
    fn custom<T: fmt::Display>(_: T) -> Self {
        Unreadable
    }

    fn invalid_type(_: Unexpected<'_>, _: &dyn Expected) -> Self {
        Unreadable
    }

    fn invalid_value(_: Unexpected<'_>, _: &dyn Expected) -> Self {
        Unreadable
    }

    fn invalid_length(_: usize, _: &dyn Expected) -> Self {
        Unreadable
    }

    fn unknown_variant(_: &str, _: &'static [&'static str]) -> Self {
        Unreadable
    }
}

/// One value, nothing before and nothing after it.
#[derive(Clone, Copy)]
struct Json<'a>(&'a str);

impl<'a> Json<'a> {
    fn text(self) -> Result<Cow<'a, str>, Unreadable> {
        let inside = self.0.strip_prefix('"').and_then(|it| it.strip_suffix('"')).ok_or(Unreadable)?;
        if inside.as_bytes().contains(&b'\\') {
            return serde_json::from_str(self.0).map(Cow::Owned).map_err(|_| Unreadable);
        }
        Ok(Cow::Borrowed(inside))
    }

    fn whole<T: std::str::FromStr>(self) -> Result<T, Unreadable> {
        // `+1` is a number to Rust, but none that stands in JSON.
        self.0.parse().map_err(|_| Unreadable)
    }

    /// The values of a list, or the names and values of an object by turns.
    fn values(self, open: char, close: char) -> Result<Vec<Json<'a>>, Unreadable> {
        let inside = self.0.strip_prefix(open).and_then(|it| it.strip_suffix(close)).ok_or(Unreadable)?;
        let mut values = Vec::with_capacity(USUAL_VALUES);
        let mut rest = after_between(inside)?;
        while !rest.is_empty() {
            let (value, after) = rest.split_at_checked(length(rest)).ok_or(Unreadable)?;
            values.push(Json(value));
            rest = after_between(after)?;
        }
        Ok(values)
    }
}

/// Room for the names and values of most entries, made once instead of three times.
const USUAL_VALUES: usize = 20;

/// What stands between two values.
#[inline(always)]
fn between(found: u8) -> bool {
    matches!(found, b' ' | b'\n' | b'\r' | b'\t' | b',' | b':')
}

fn after_between(text: &str) -> Result<&str, Unreadable> {
    let mut begin = 0_usize;
    while text.as_bytes().get(begin).copied().is_some_and(between) {
        begin = begin.saturating_add(1);
    }
    text.get(begin..).ok_or(Unreadable)
}

/// How many bytes of the text belong to the value at its head. However deep that goes, it takes no stack.
fn length(text: &str) -> usize {
    let (mut depth, mut quoted, mut escaped) = (0_usize, false, false);
    for (at, found) in text.bytes().enumerate() {
        if quoted {
            match found {
                _ if escaped => escaped = false,
                b'\\' => escaped = true,
                b'"' => {
                    quoted = false;
                    if depth == 0 {
                        return at.saturating_add(1);
                    }
                }
                _ => {}
            }
            continue;
        }
        match found {
            b'"' => quoted = true,
            b'{' | b'[' => depth = depth.saturating_add(1),
            b'}' | b']' => {
                depth = depth.saturating_sub(1);
                if depth == 0 {
                    return at.saturating_add(1);
                }
            }
            // The end of a number or a word.
            _ if depth == 0 && between(found) => return at,
            _ => {}
        }
    }
    text.len()
}

macro_rules! numbers {
    ($($read:ident $visit:ident)*) => {
        $(fn $read<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Unreadable> {
            visitor.$visit(self.whole()?)
        })*
    };
}

impl<'de> Deserializer<'de> for Json<'de> {
    type Error = Unreadable;

    /// Texts, and whatever is read from a text.
    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Unreadable> {
        match self.text()? {
            Cow::Borrowed(text) => visitor.visit_borrowed_str(text),
            Cow::Owned(text) => visitor.visit_string(text),
        }
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _name: &'static str,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Unreadable> {
        visitor.visit_seq(Fields::of(self.values('{', '}')?, fields))
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Unreadable> {
        visitor.visit_seq(List(self.values('[', ']')?.into_iter()))
    }

    fn deserialize_tuple<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Unreadable> {
        self.deserialize_seq(visitor)
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Unreadable> {
        if self.0 == "null" || self.0.is_empty() { visitor.visit_none() } else { visitor.visit_some(self) }
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _name: &'static str,
        _variants: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Unreadable> {
        if self.0.starts_with('"') {
            return visitor.visit_enum(Variant { name: self, of: None });
        }
        match self.values('{', '}')?.as_slice() {
            [name, of] => visitor.visit_enum(Variant { name: *name, of: Some(*of) }),
            _ => Err(Unreadable),
        }
    }

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Unreadable> {
        visitor.visit_bool(self.whole()?)
    }

    numbers! {
        deserialize_u8 visit_u8 deserialize_u16 visit_u16 deserialize_u32 visit_u32 deserialize_u64 visit_u64
        deserialize_i8 visit_i8 deserialize_i16 visit_i16 deserialize_i32 visit_i32 deserialize_i64 visit_i64
    }

    forward_to_deserialize_any! {
        i128 u128 f32 f64 char str string bytes byte_buf unit unit_struct newtype_struct tuple_struct map identifier
        ignored_any
    }
}

/// The fields of a struct, in its order, out of names and values in any order.
struct Fields<'a> {
    found: Vec<Json<'a>>,
    fields: std::slice::Iter<'static, &'static str>,
    /// No name is written with an escape: each stands as it is between its quotes.
    plain: bool,
}

impl<'a> Fields<'a> {
    fn of(found: Vec<Json<'a>>, fields: &'static [&'static str]) -> Fields<'a> {
        let plain =
            found.iter().step_by(2).all(|key| key.0.starts_with('"') && !key.0.as_bytes().contains(&b'\\'));
        Fields { found, fields: fields.iter(), plain }
    }

    /// The value under this name; a name that stands twice says nothing.
    fn named(&self, name: &str) -> Result<Option<Json<'a>>, Unreadable> {
        let mut named = None;
        for pair in self.found.chunks_exact(2) {
            let [key, value] = pair else { continue };
            if self.is(*key, name)? && named.replace(*value).is_some() {
                return Err(Unreadable);
            }
        }
        Ok(named)
    }

    fn is(&self, key: Json<'a>, name: &str) -> Result<bool, Unreadable> {
        if !self.plain {
            return Ok(key.text()? == name);
        }
        let quoted = name.len().saturating_add(2);
        Ok(key.0.len() == quoted
            && key.0.as_bytes().get(1..quoted.saturating_sub(1)) == Some(name.as_bytes()))
    }
}

impl<'de> SeqAccess<'de> for Fields<'de> {
    type Error = Unreadable;

    fn next_element_seed<S: DeserializeSeed<'de>>(
        &mut self,
        seed: S,
    ) -> Result<Option<S::Value>, Unreadable> {
        let name = self.fields.next().ok_or(Unreadable)?;
        match self.named(name)? {
            Some(value) => seed.deserialize(value).map(Some),
            // Nothing reads from no text but an option.
            None => Ok(seed.deserialize(Json("")).ok()),
        }
    }
}

struct List<'a>(std::vec::IntoIter<Json<'a>>);

impl<'de> SeqAccess<'de> for List<'de> {
    type Error = Unreadable;

    fn next_element_seed<S: DeserializeSeed<'de>>(
        &mut self,
        seed: S,
    ) -> Result<Option<S::Value>, Unreadable> {
        self.0.next().map(|value| seed.deserialize(value)).transpose()
    }
}

/// `"shop"`, or `{"build": "…"}`.
struct Variant<'a> {
    name: Json<'a>,
    of: Option<Json<'a>>,
}

impl<'de> EnumAccess<'de> for Variant<'de> {
    type Error = Unreadable;
    type Variant = Self;

    fn variant_seed<S: DeserializeSeed<'de>>(self, seed: S) -> Result<(S::Value, Self), Unreadable> {
        Ok((seed.deserialize(self.name)?, self))
    }
}

impl<'de> VariantAccess<'de> for Variant<'de> {
    type Error = Unreadable;

    fn unit_variant(self) -> Result<(), Unreadable> {
        if self.of.is_none_or(|of| of.0 == "null") { Ok(()) } else { Err(Unreadable) }
    }

    fn newtype_variant_seed<S: DeserializeSeed<'de>>(self, seed: S) -> Result<S::Value, Unreadable> {
        seed.deserialize(self.of.ok_or(Unreadable)?)
    }

    fn tuple_variant<V: Visitor<'de>>(self, _: usize, _: V) -> Result<V::Value, Unreadable> {
        Err(Unreadable)
    }

    fn struct_variant<V: Visitor<'de>>(
        self,
        _: &'static [&'static str],
        _: V,
    ) -> Result<V::Value, Unreadable> {
        Err(Unreadable)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde::Serialize;

    #[derive(Debug, Default, PartialEq, Serialize, Deserialize)]
    struct Board {
        name: String,
        #[serde(default, rename = "where")]
        at: Option<String>,
        #[serde(default)]
        count: u32,
        #[serde(default)]
        cuts: Vec<(i64, bool)>,
        #[serde(default)]
        state: Option<State>,
        other: Option<Box<Board>>,
    }

    #[derive(Debug, PartialEq, Serialize, Deserialize)]
    #[serde(rename_all = "snake_case")]
    enum State {
        Rough,
        Planed(u32),
    }

    /// As the library reads it, where the library takes an object only.
    #[track_caller]
    fn as_the_library(text: &str) {
        assert_eq!(read::<Board>(text), serde_json::from_str(text).ok(), "{text}");
    }

    #[test]
    fn an_object_reads_as_the_library_reads_it() {
        for text in [
            r#"{"name":"oak"}"#,
            r#" { "count" : 3 , "name" : "o\"\u00e4}k,\\" , "where" : null } "#,
            r#"{"name":"oak","cuts":[[1,true],[ -2 , false ]],"state":"rough","where":"a, b: {c}"}"#,
            r#"{"state":{"planed":7},"name":"","other":{"name":"in","other":{"name":"{\"name\":1}"}}}"#,
            r#"{"state":{"rough":null},"name":"é"}"#,
            r#"{"n\u0061me":"oak","cuts":[]}"#,
            r#"{"name":"oak","later":{"of":[1,{"a":"]"}],"b":1.5e3},"count":4}"#,
        ] {
            assert!(read::<Board>(text).is_some(), "{text}");
            as_the_library(text);
        }
    }

    #[test]
    fn what_the_library_refuses_is_refused() {
        for text in [
            "",
            "7",
            "null",
            "{}",
            r#""oak""#,
            r#"{"name":7}"#,
            r#"{"name":null}"#,
            r#"{"name":"oak","name":"ash"}"#,
            r#"{"name":"oak","count":1.0}"#,
            r#"{"name":"oak","count":-1}"#,
            r#"{"name":"oak","count":4294967296}"#,
            r#"{"name":"oak","count":"1"}"#,
            r#"{"name":"oak","cuts":{}}"#,
            r#"{"name":"oak","cuts":[[1]]}"#,
            r#"{"name":"oak","state":"green"}"#,
            r#"{"name":"oak","state":"planed"}"#,
            r#"{"name":"oak","state":{"rough":1}}"#,
            r#"{"name":"oak","state":{"planed":1,"rough":null}}"#,
            r#"{"name":"\ud800"}"#,
            r#"{"name":"oak"} x"#,
        ] {
            assert_eq!(read::<Board>(text), None, "{text}");
            as_the_library(text);
        }
    }

    #[test]
    fn a_list_of_values_is_no_object() {
        assert_eq!(read::<Board>(r#"["oak",null,1,[],null,null]"#), None);
    }

    #[test]
    fn a_later_field_may_go_as_deep_as_it_likes() {
        let deep = format!(r#"{{"later":{}{},"name":"oak"}}"#, "[".repeat(50_000), "]".repeat(50_000));
        assert_eq!(read::<Board>(&deep).map(|it| it.name).as_deref(), Some("oak"));
    }
}
