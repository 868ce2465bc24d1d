//! One act after another: decide, write, keep, show.

use super::{
    Desk,
    inside::Inside,
    moment,
    record::{self, LastMark, Mark, Safety},
};
use crate::store::{AppendError, Failure, NewRow};
use benchslate_core::{
    journal::{
        Change, Id, Journal, Pen, Shop, act,
        pen::{Line, changes_nothing},
    },
    measure::Instant,
    timing::Hand,
};
use leptos::prelude::*;

/// What is to be done next.
pub(super) enum Job {
    Act(Act),
    CatchUp,
}

type Decide = Box<dyn Fn(&mut Hand) -> Vec<Change>>;
type Say = Box<dyn Fn(&After) -> Marked>;
type Then = Box<dyn Fn(Result<(), Failure>)>;

pub(super) struct Act {
    decide: Decide,
    say: Say,
    then: Then,
    /// The moment of the tap.
    at: Instant,
    undone: bool,
}

/// The state that an act has led to; not yet shown to anyone.
pub struct After<'a> {
    /// All lines, the new ones among them.
    pub journal: &'a Journal,
    /// Their fold.
    pub shop: &'a Shop,
    /// The entries that the act wrote.
    pub entries: &'a [Id],
    /// The moment of the tap.
    pub now: Instant,
    /// How figures and days are written for this reader.
    pub tongue: &'a crate::words::Tongue,
}

/// What the last mark will say of an act.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Marked {
    /// Its words.
    pub mark: Mark,
    /// The stretch that was stopped, if one was.
    pub stopped: Option<Id>,
}

impl From<Mark> for Marked {
    fn from(mark: Mark) -> Marked {
        Marked { mark, stopped: None }
    }
}

impl Desk {
    /// Puts an act in the queue. `decide` may be asked again: where another window wrote meanwhile, it
    /// decides on what that window left. `say` gives the words of the mark.
    pub fn act(
        self,
        decide: impl Fn(&mut Hand) -> Vec<Change> + 'static,
        say: impl Fn(&After) -> Marked + 'static,
    ) {
        self.act_then(decide, say, |_| {});
    }

    /// As [`Desk::act`]; `then` runs once the act is kept, or is not.
    pub fn act_then(
        self,
        decide: impl Fn(&mut Hand) -> Vec<Change> + 'static,
        say: impl Fn(&After) -> Marked + 'static,
        then: impl Fn(Result<(), Failure>) + 'static,
    ) {
        let (decide, say, then) = (Box::new(decide), Box::new(say), Box::new(then));
        self.put(Job::Act(Act { decide, say, then, at: moment(), undone: false }));
    }

    /// Takes the last act back, or puts it back again. What is taken back stays in the journal.
    pub fn undo(self) {
        let Some(last) = self.last.get_untracked() else { return };
        let written = last.written.clone();
        let act = Act {
            decide: Box::new(move |hand| act::undo(hand.journal, &written)),
            say: Box::new(move |_| Marked { mark: last.mark.clone(), stopped: None }),
            then: Box::new(|_| {}),
            at: moment(),
            undone: !last.undone,
        };
        self.put(Job::Act(act));
    }

    pub(super) async fn does(self, job: Job) {
        match job {
            Job::Act(act) => self.does_act(act).await,
            Job::CatchUp => self.catch_up().await,
        }
    }

    async fn does_act(self, act: Act) {
        let Some(store) = self.store() else { return (act.then)(Err(Failure::Missing)) };
        loop {
            let Some(tried) = self.inside.try_update_value(|inside| inside.tries(&act)).flatten() else {
                return (act.then)(Ok(()));
            };
            self.last.set(Some(LastMark { safety: Safety::Pending, ..tried.last.clone() }));
            let known = self.inside.with_value(|inside| inside.seq);
            match store.append(known, tried.rows(), tried.record.clone()).await {
                Ok(appended) => {
                    self.inside.update_value(|inside| inside.kept(tried.shop, appended.seq_after));
                    self.last.set(Some(tried.last));
                    self.trouble.set(None);
                    self.changed();
                    return (act.then)(Ok(()));
                }
                Err(AppendError::Behind { rows }) => self.inside.update_value(|inside| {
                    inside.journal.not_kept(&tried.last.written);
                    inside.take_in(&rows);
                    inside.fold();
                }),
                Err(AppendError::Failed(failure)) => {
                    self.inside.update_value(|inside| inside.journal.not_kept(&tried.last.written));
                    self.last.set(Some(LastMark { safety: Safety::NotSafe, ..tried.last }));
                    self.trouble.set(Some(failure));
                    self.changed();
                    return (act.then)(Err(failure));
                }
            }
        }
    }
}

/// An act that is written but not kept yet.
struct Tried {
    lines: Vec<Line>,
    shop: Shop,
    last: LastMark,
    record: Option<String>,
}

impl Tried {
    fn rows(&self) -> Vec<NewRow> {
        self.lines.iter().map(|it| NewRow { id: it.id.to_string(), line: it.text.clone() }).collect()
    }
}

impl Inside {
    /// Decides, writes the lines into the journal, folds. None: nothing would change.
    fn tries(&mut self, act: &Act) -> Option<Tried> {
        let mut fresh = || Id(crate::store::fresh_id());
        let mut hand = Hand { journal: &self.journal, shop: &self.shop, now: act.at, fresh: &mut fresh };
        let mut changes = (act.decide)(&mut hand);
        changes.retain(|change| !changes_nothing(&self.journal, change));
        if changes.is_empty() {
            return None;
        }
        let pen = Pen { device: self.device, now_ms: act.at.0.saturating_mul(1000) };
        let lines = pen.write(&self.journal, &changes, &mut fresh);
        for line in &lines {
            // Written a line above; it can be read.
            let _ = self.journal.add(&line.text);
        }
        let shop = Shop::fold(&self.journal, &self.shop.zone);
        let entries: Vec<Id> = changes.iter().map(|change| change.entry).collect();
        let after = After {
            journal: &self.journal,
            shop: &shop,
            entries: &entries,
            now: act.at,
            tongue: &self.tongue,
        };
        let marked = (act.say)(&after);
        let last = LastMark {
            mark: marked.mark,
            at: act.at.0,
            written: lines.iter().map(|line| line.id).collect(),
            undone: act.undone,
            stopped: marked.stopped,
            safety: Safety::Kept,
        };
        let bench = benchslate_core::timing::bench::look(&shop, act.at, None);
        let record = record::write(bench, Some(last.clone()));
        Some(Tried { lines, shop, last, record })
    }

    fn kept(&mut self, shop: Shop, seq: u64) {
        self.seq = self.seq.max(seq);
        self.shop = shop;
        // A choice of zone, currency or units may be among what was written.
        self.settle();
    }
}
