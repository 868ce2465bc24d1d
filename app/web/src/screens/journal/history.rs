//! Every version of an entry: when, on which device, what it changed.

use super::{facts, line};
use crate::dom::prelude::*;
use crate::{
    parts::{
        journal_line::{JournalLine, LineText, Lines},
        sum_row::Group,
    },
    shell::desk::View,
    words::journal as words,
};
use benchslate_core::{
    journal::{Body, Content, Id, Revision, listing},
    measure::Instant,
};

/// A version, said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Version {
    time: String,
    kind: &'static str,
    what: String,
    changed: Option<String>,
}

/// The versions of an entry, latest first. `device`: this one.
pub fn versions(view: &View, entry: Id, device: Option<Id>) -> Vec<Version> {
    let history = view.journal.history(entry);
    let mut versions: Vec<Version> = history.iter().map(|revision| version(view, revision, device)).collect();
    versions.reverse();
    versions
}

/// The list of them.
pub fn drawn(versions: Vec<Version>) -> AnyView {
    let row = |version: Version| {
        let Version { time, kind, what, changed } = version;
        let text = LineText { time, kind: kind.to_owned(), what, second: changed, amount: String::new() };
        view! { <JournalLine text/> }
    };
    let rows: Vec<AnyView> = versions.into_iter().map(row).collect();
    view! {
        <Group title=words::history().to_owned()/>
        <Lines name=words::history().to_owned()>{rows}</Lines>
    }
}

/// A version in one line, for where one of two is picked.
pub fn in_a_line(view: &View, revision: &Revision) -> String {
    match &revision.content {
        Content::Body(body) => {
            let facts = facts::facts(view, body);
            facts.into_iter().map(|(_, text)| text).collect::<Vec<String>>().join(", ")
        }
        Content::Struck => words::v_struck().to_owned(),
        Content::Newer => words::written_newer().to_owned(),
        Content::Unreadable => words::cant_be_read().to_owned(),
    }
}

/// When and where a version was written.
pub fn signed(view: &View, revision: &Revision, device: Option<Id>) -> String {
    let at = Instant(revision.stamp.ms.div_euclid(1000));
    words::comma(&line::moment(view, at), &by(revision, device))
}

fn version(view: &View, revision: &Revision, device: Option<Id>) -> Version {
    let at = Instant(revision.stamp.ms.div_euclid(1000));
    let before = before(view, revision);
    let (kind, changed) = match (&revision.content, before) {
        (Content::Newer, _) => (words::v_newer(), Some(words::written_newer().to_owned())),
        (Content::Unreadable, _) => (words::v_newer(), Some(words::cant_be_read().to_owned())),
        (Content::Struck, _) => (words::v_struck(), None),
        (Content::Body(body), None) => (words::v_written(), Some(first(view, body))),
        (Content::Body(body), Some((before, back))) => {
            let kind = if back {
                words::v_back()
            } else if listing::corrects(before, body) {
                words::v_corrected()
            } else {
                words::v_went_on()
            };
            let changes = facts::differences(view, before, body);
            (kind, (!changes.is_empty()).then(|| changes.join("; ")))
        }
    };
    Version {
        time: view.tongue.time(at),
        kind,
        what: words::comma(&view.tongue.day_of(at), &by(revision, device)),
        changed,
    }
}

/// What the entry said before this version, and whether it was struck out then.
fn before<'a>(view: &View<'a>, revision: &Revision) -> Option<(&'a Body, bool)> {
    let parents = revision.parents.iter().filter_map(|id| view.journal.revision(*id));
    let parent = parents.max_by_key(|parent| parent.rank())?;
    match &parent.content {
        Content::Body(body) => Some((body, false)),
        Content::Struck => before(view, parent).map(|(body, _)| (body, true)),
        Content::Newer | Content::Unreadable => None,
    }
}

fn first(view: &View, body: &Body) -> String {
    let facts = facts::facts(view, body);
    facts.into_iter().map(|(_, text)| text).take(4).collect::<Vec<String>>().join(", ")
}

fn by(revision: &Revision, device: Option<Id>) -> String {
    if device == Some(revision.device) {
        return words::this_device().to_owned();
    }
    let id = revision.device.to_string();
    let end: String = id.chars().skip(id.chars().count().saturating_sub(4)).collect();
    words::other_device(&end)
}
