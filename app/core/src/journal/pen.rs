//! Writes lines. The time, the device and the fresh ids are passed in.

use super::{Change, Content, Id, Journal, Stamp, line};

/// Who writes, and when.
#[derive(Clone, Copy, Debug)]
pub struct Pen {
    /// This device.
    pub device: Id,
    /// Its clock, milliseconds since 1970 UTC.
    pub now_ms: i64,
}

/// A line ready to be kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// The revision's id.
    pub id: Id,
    /// The line, without its end.
    pub text: String,
}

impl Pen {
    /// One line for each change. `fresh` gives an id that was never used.
    ///
    /// A stamp is the later of now and the parents' stamps; equal to a parent's, its counter goes up.
    pub fn write(self, journal: &Journal, changes: &[Change], fresh: &mut dyn FnMut() -> Id) -> Vec<Line> {
        changes.iter().filter_map(|change| self.line(journal, change, fresh())).collect()
    }

    fn line(self, journal: &Journal, change: &Change, id: Id) -> Option<Line> {
        let heads = journal.heads(change.entry);
        let parents: Vec<Id> = if change.settles {
            heads.iter().map(|head| head.id).collect()
        } else {
            journal.shown(change.entry).map(|shown| shown.id).into_iter().collect()
        };
        let shown = journal.shown(change.entry);
        let kind = match (&change.body, shown) {
            (Some(body), _) => body.kind().code(),
            (None, Some(shown)) => &shown.kind,
            // Nothing there to strike out.
            (None, None) => return None,
        };
        let stamp =
            self.stamp(parents.iter().filter_map(|id| journal.revision(*id)).map(|it| it.stamp).max());
        let body = change.body.as_ref();
        let draft = line::Draft {
            id,
            entry: change.entry,
            parents: &parents,
            device: self.device,
            stamp,
            kind,
            body,
        };
        Some(Line { id, text: line::write(&draft) })
    }

    fn stamp(self, parent: Option<Stamp>) -> Stamp {
        match parent {
            Some(parent) if parent.ms >= self.now_ms => {
                Stamp { ms: parent.ms, n: parent.n.saturating_add(1) }
            }
            Some(_) | None => Stamp { ms: self.now_ms, n: 0 },
        }
    }
}

/// Whether anything would change: an entry rewritten as it stands is not worth a line.
pub fn changes_nothing(journal: &Journal, change: &Change) -> bool {
    if change.settles && journal.heads(change.entry).len() > 1 {
        return false;
    }
    match (journal.shown(change.entry).map(|it| &it.content), &change.body) {
        (Some(Content::Body(now)), Some(then)) => now == then,
        (Some(Content::Struck) | None, None) => true,
        _ => false,
    }
}
