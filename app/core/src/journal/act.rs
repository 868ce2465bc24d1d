//! An act: what is to be written, before it has a line. Acts come from forms and from the clock's rules.

use super::{Body, Content, Id, Journal};

/// One entry as it is to read from now on. An id that the journal doesn't have begins an entry.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// Which entry.
    pub entry: Id,
    /// `None`: struck out.
    pub body: Option<Body>,
    /// Settle all heads, not only the one that is shown: "two versions", one was picked.
    pub settles: bool,
}

impl Change {
    /// The entry reads so.
    pub fn write(entry: Id, body: impl Into<Body>) -> Change {
        Change { entry, body: Some(body.into()), settles: false }
    }

    /// The entry is struck out. It stays on view and can be brought back.
    pub fn strike(entry: Id) -> Change {
        Change { entry, body: None, settles: false }
    }

    /// The entry as it read before it was struck out; `None` where it never could be read.
    pub fn bring_back(journal: &Journal, entry: Id) -> Option<Change> {
        let body = journal.last_body(entry)?.clone();
        Some(Change { entry, body: Some(body), settles: false })
    }

    /// This version of two stands.
    pub fn pick(journal: &Journal, revision: Id) -> Option<Change> {
        let picked = journal.revision(revision)?;
        let body = match &picked.content {
            Content::Body(body) => Some(body.clone()),
            Content::Struck => None,
            Content::Newer | Content::Unreadable => return None,
        };
        Some(Change { entry: picked.entry, body, settles: true })
    }
}

/// What takes an act back: each entry reads as it did before. `written`: the act's revisions.
/// An entry that the act began is struck out. Undo adds revisions; it takes none away.
pub fn undo(journal: &Journal, written: &[Id]) -> Vec<Change> {
    written.iter().rev().filter_map(|id| before(journal, *id)).collect()
}

fn before(journal: &Journal, id: Id) -> Option<Change> {
    let revision = journal.revision(id)?;
    let parent = revision.parents.iter().filter_map(|it| journal.revision(*it)).max_by_key(|it| it.rank());
    match parent.map(|it| &it.content) {
        Some(Content::Body(body)) => Some(Change::write(revision.entry, body.clone())),
        Some(Content::Newer | Content::Unreadable) => None,
        Some(Content::Struck) | None => Some(Change::strike(revision.entry)),
    }
}
