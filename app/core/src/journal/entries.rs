//! All lines of the journal and the entries that they are versions of. Grows only.
//!
//! Adding is set union by revision id: commutative, associative, idempotent. Equal ids with different
//! bytes: the greater SHA-256 of the line wins, whatever the order of arrival.

use super::{Body, Content, Id, LineFault, Revision, line};
use crate::measure::InOrder;
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;

/// What became of a line that was added.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Added {
    /// It is new here.
    New,
    /// The very line was here.
    Known,
    /// A line of the same id and other bytes was here. The one that lost is handed back to be put aside.
    Clash {
        /// The line that is not kept in the journal.
        aside: Box<str>,
    },
}

#[derive(Clone, Debug)]
struct Kept {
    text: Box<str>,
    revision: Revision,
}

/// An entry: its revisions and its heads.
#[derive(Clone, Debug, Default)]
pub struct Entry {
    /// In the order of ids, each once. One or a few.
    revisions: Vec<Id>,
    /// Every id that some revision of this entry names as a parent; the same.
    replaced: Vec<Id>,
}

/// Every revision, and the entries that they make up.
#[derive(Clone, Debug, Default)]
pub struct Journal {
    /// Boxed: a tree moves what it holds about, and an entry is large.
    lines: BTreeMap<Id, Box<Kept>>,
    entries: BTreeMap<Id, Entry>,
}

impl Journal {
    /// Reads a line and adds it.
    ///
    /// # Errors
    /// [`LineFault`] where the envelope can't be read; nothing is changed then.
    pub fn add(&mut self, text: &str) -> Result<Added, LineFault> {
        self.take(text.into())
    }

    /// The same of a line that is handed over for good.
    ///
    /// # Errors
    /// Why it is no line.
    pub fn take(&mut self, text: Box<str>) -> Result<Added, LineFault> {
        let revision = line::read(&text)?;
        Ok(self.add_read(text, revision))
    }

    /// Takes lines out again that could not be kept on the disk. Only for lines that were added a moment ago
    /// and confirmed to nobody: a journal loses nothing that was kept.
    pub fn not_kept(&mut self, ids: &[Id]) {
        let lost: Vec<Box<Kept>> = ids.iter().filter_map(|id| self.lines.remove(id)).collect();
        for kept in lost {
            self.enter_again(kept.revision.entry);
        }
    }

    fn add_read(&mut self, text: Box<str>, revision: Revision) -> Added {
        let Some(there) = self.lines.get(&revision.id) else {
            self.enter(&revision);
            self.lines.insert(revision.id, Box::new(Kept { text, revision }));
            return Added::New;
        };
        if there.text == text {
            return Added::Known;
        }
        if Sha256::digest(text.as_bytes()) <= Sha256::digest(there.text.as_bytes()) {
            return Added::Clash { aside: text };
        }
        let (entries, id) = ([there.revision.entry, revision.entry], revision.id);
        let lost = self.lines.insert(id, Box::new(Kept { text, revision }));
        for entry in entries {
            self.enter_again(entry);
        }
        Added::Clash { aside: lost.map(|kept| kept.text).unwrap_or_default() }
    }

    fn enter(&mut self, revision: &Revision) {
        let entry = self.entries.entry(revision.entry).or_default();
        insert(&mut entry.revisions, revision.id);
        for parent in &revision.parents {
            insert(&mut entry.replaced, *parent);
        }
    }

    /// After a clash the entry is made anew from its lines. Rare, so a walk over all of them is no matter.
    fn enter_again(&mut self, entry: Id) {
        self.entries.remove(&entry);
        let of_entry: Vec<Revision> =
            self.lines.values().map(|kept| &kept.revision).filter(|it| it.entry == entry).cloned().collect();
        for revision in &of_entry {
            self.enter(revision);
        }
    }

    /// How many lines there are.
    pub fn len(&self) -> usize {
        self.lines.len()
    }

    /// No line yet.
    pub fn is_empty(&self) -> bool {
        self.lines.is_empty()
    }

    /// Every line as first written, in the order of ids: two devices with the same lines agree to the byte.
    pub fn lines(&self) -> impl Iterator<Item = (Id, &str)> {
        self.lines.iter().map(|(id, kept)| (*id, &*kept.text))
    }

    /// The line of this id.
    pub fn line(&self, id: Id) -> Option<&str> {
        self.lines.get(&id).map(|kept| &*kept.text)
    }

    /// Every entry's id, in order.
    pub fn entries(&self) -> impl Iterator<Item = Id> + '_ {
        self.entries.keys().copied()
    }

    /// Whether there is such an entry.
    pub fn has(&self, entry: Id) -> bool {
        self.entries.contains_key(&entry)
    }

    /// The revision of this id.
    pub fn revision(&self, id: Id) -> Option<&Revision> {
        self.lines.get(&id).map(|kept| &kept.revision)
    }

    /// All versions of an entry, oldest first.
    pub fn history(&self, entry: Id) -> Vec<&Revision> {
        let mut all: Vec<&Revision> = self.of(entry).collect();
        all.order_by_key(|revision| revision.rank());
        all
    }

    /// The versions that nothing replaces, greatest last. More than one: it was changed in two places.
    pub fn heads(&self, entry: Id) -> Vec<&Revision> {
        let Some(it) = self.entries.get(&entry) else { return Vec::new() };
        let mut heads: Vec<&Revision> =
            self.of(entry).filter(|revision| !it.replaced.contains(&revision.id)).collect();
        heads.order_by_key(|revision| revision.rank());
        heads
    }

    /// The version that is shown: the greatest head. Lines that name each other in a circle have no head;
    /// then the greatest of them all, for something that was written must be on view.
    pub fn shown(&self, entry: Id) -> Option<&Revision> {
        let it = self.entries.get(&entry)?;
        let heads = self.of(entry).filter(|revision| !it.replaced.contains(&revision.id));
        heads.max_by_key(|revision| revision.rank()).or_else(|| self.of(entry).max_by_key(|it| it.rank()))
    }

    /// What the entry says now, where it stands and can be read.
    pub fn body(&self, entry: Id) -> Option<&Body> {
        match &self.shown(entry)?.content {
            Content::Body(body) => Some(body),
            Content::Struck | Content::Newer | Content::Unreadable => None,
        }
    }

    /// What it said last before it was struck out, or says now.
    pub fn last_body(&self, entry: Id) -> Option<&Body> {
        self.body(entry).or_else(|| {
            self.history(entry).into_iter().rev().find_map(|revision| match &revision.content {
                Content::Body(body) => Some(body),
                Content::Struck | Content::Newer | Content::Unreadable => None,
            })
        })
    }

    fn of(&self, entry: Id) -> impl Iterator<Item = &Revision> {
        let ids = self.entries.get(&entry).map(|it| &it.revisions);
        ids.into_iter().flatten().filter_map(|id| self.revision(*id))
    }
}

fn insert(ids: &mut Vec<Id>, id: Id) {
    if let Err(at) = ids.binary_search(&id) {
        ids.insert(at, id);
    }
}
