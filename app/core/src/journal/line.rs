//! A line of `journal.jsonl` read and written.
//!
//! Envelope and body are apart: `kind` and `bv` say how to read `body`, which stays raw text until then.
//! Nothing of a line is normalised; what is stored and handed on is the text as first written.

use super::{
    Body, Content, Id, Kind, Revision, Stamp,
    kinds::{BODY_VERSION, decode, encode},
};
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;

/// The envelope's version.
pub const VERSION: u32 = 1;

/// Longest line that is read, in bytes.
pub const LINE_MAX: usize = crate::measure::limits::MOST_LINE_BYTES;

/// Why a line is no line of a journal.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LineFault {
    /// Longer than [`LINE_MAX`].
    TooLong,
    /// Not JSON, or not an object, from this column (1-based) on.
    NotJson {
        /// Where reading stopped.
        column: usize,
    },
    /// JSON, but a field of the envelope is missing or of the wrong shape, at this column (1-based).
    Envelope {
        /// Where reading stopped.
        column: usize,
    },
    /// Neither a body nor struck out, or both.
    NoContent,
}

#[derive(Deserialize)]
struct Envelope<'a> {
    v: u32,
    id: Id,
    entry: Id,
    #[serde(default)]
    parents: Vec<Id>,
    device: Id,
    stamp: Stamp,
    kind: String,
    #[serde(default)]
    bv: u32,
    #[serde(borrow, default)]
    body: Option<&'a RawValue>,
    #[serde(default)]
    struck: bool,
}

#[derive(Serialize)]
struct Written<'a> {
    v: u32,
    id: Id,
    entry: Id,
    parents: &'a [Id],
    device: Id,
    stamp: Stamp,
    kind: &'a str,
    bv: u32,
    #[serde(skip_serializing_if = "Option::is_none")]
    body: Option<&'a RawValue>,
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    struck: bool,
}

/// Reads one line.
///
/// # Errors
/// [`LineFault`] where the envelope can't be read. A body that can't be read is no error: the revision
/// is kept as [`Content::Unreadable`] or [`Content::Newer`].
pub fn read(text: &str) -> Result<Revision, LineFault> {
    if text.len() > LINE_MAX {
        return Err(LineFault::TooLong);
    }
    let envelope: Envelope = serde_json::from_str(text).map_err(|error| fault(&error))?;
    let content = match (envelope.struck, envelope.body) {
        (true, None) => Content::Struck,
        (false, Some(_)) if envelope.v > VERSION || envelope.bv > BODY_VERSION => Content::Newer,
        (false, Some(raw)) => match Kind::from_code(&envelope.kind) {
            None => Content::Newer,
            Some(kind) => decode(kind, raw).map_or(Content::Unreadable, Content::Body),
        },
        (true, Some(_)) | (false, None) => return Err(LineFault::NoContent),
    };
    Ok(Revision {
        id: envelope.id,
        entry: envelope.entry,
        parents: envelope.parents,
        device: envelope.device,
        stamp: envelope.stamp,
        kind: envelope.kind.into(),
        content,
    })
}

fn fault(error: &serde_json::Error) -> LineFault {
    let column = error.column();
    if error.is_data() { LineFault::Envelope { column } } else { LineFault::NotJson { column } }
}

/// What a new line is written from. Kinds that this version doesn't know are never written, only struck.
pub(crate) struct Draft<'a> {
    pub id: Id,
    pub entry: Id,
    pub parents: &'a [Id],
    pub device: Id,
    pub stamp: Stamp,
    pub kind: &'a str,
    /// `None`: struck out.
    pub body: Option<&'a Body>,
}

/// One line, without its line end.
pub(crate) fn write(draft: &Draft) -> String {
    let body = draft.body.and_then(encode);
    let written = Written {
        v: VERSION,
        id: draft.id,
        entry: draft.entry,
        parents: draft.parents,
        device: draft.device,
        stamp: draft.stamp,
        kind: draft.kind,
        bv: BODY_VERSION,
        body: body.as_deref(),
        struck: draft.body.is_none(),
    };
    // Strings, integers and a raw value that was just encoded: there is nothing in it that can fail.
    serde_json::to_string(&written).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOTE: &str = r#"{"v":1,"id":"0190f3c2-7b1a-7c3d-8e4f-000000000001","entry":"0190f3c2-7b1a-7c3d-8e4f-000000000002","parents":[],"device":"0190f3c2-7b1a-7c3d-8e4f-000000000003","stamp":{"ms":1795161600000,"n":0},"kind":"note","bv":1,"body":{"on":"2026-11-20","text":"red line showing"}}"#;

    #[track_caller]
    fn check(text: &str, want: Result<Content, LineFault>) {
        assert_eq!(read(text).map(|revision| revision.content), want);
    }

    #[test]
    fn a_note_is_read() {
        assert!(matches!(read(NOTE).map(|it| it.content), Ok(Content::Body(Body::Note(_)))));
    }

    #[test]
    fn a_kind_of_a_later_version_is_kept_as_newer() {
        check(&NOTE.replace("\"note\"", "\"hologram\""), Ok(Content::Newer));
        check(&NOTE.replace("\"bv\":1", "\"bv\":2"), Ok(Content::Newer));
    }

    #[test]
    fn a_body_that_cannot_be_read_is_kept_as_unreadable() {
        check(&NOTE.replace("\"text\":\"red line showing\"", "\"text\":7"), Ok(Content::Unreadable));
        check(&NOTE.replace("2026-11-20", "2026-13-20"), Ok(Content::Unreadable));
    }

    #[test]
    fn a_field_of_a_later_version_is_no_fault() {
        let text = NOTE.replace("\"text\"", "\"mood\":\"fine\",\"text\"");
        assert!(matches!(read(&text).map(|it| it.content), Ok(Content::Body(Body::Note(_)))));
    }

    #[test]
    fn broken_lines_say_where() {
        check("", Err(LineFault::NotJson { column: 0 }));
        check("wood", Err(LineFault::NotJson { column: 1 }));
        check("{}", Err(LineFault::Envelope { column: 2 }));
        check(&NOTE.replace("\"bv\":1,", "\"bv\":1,\"struck\":true,"), Err(LineFault::NoContent));
        check(&format!("{NOTE}{}", " ".repeat(LINE_MAX)), Err(LineFault::TooLong));
        check(NOTE.get(..200).unwrap(), Err(LineFault::NotJson { column: 200 }));
    }
}
