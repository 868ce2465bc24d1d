//! One act after another: decide, write, keep, show.

use super::{
    Desk,
    bring_in::BringIn,
    inside::{Inside, View},
    moment,
    record::{self, LastMark, Mark, Safety},
};
use crate::dom::prelude::*;
use crate::store::{AppendError, Failure, NewPhoto, NewRow};
use benchslate_core::{
    costing::Books,
    journal::{
        Change, Id, Journal, Pen, Shop, act,
        late::{self, OnClosed},
        pen::{Line, changes_nothing},
    },
    measure::Instant,
    timing::Hand,
};
use std::cell::OnceCell;

/// What is to be done next.
pub(super) enum Job {
    Act(Act),
    /// The act that could not be kept, once more.
    Again,
    BringIn(BringIn),
    CatchUp,
}

type Decide = Box<dyn Fn(&mut Hand) -> Vec<Change>>;
type Say = Box<dyn Fn(&After) -> Marked>;
type Then = Box<dyn Fn(Result<(), Failure>)>;

pub(super) struct Act {
    decide: Decide,
    say: Say,
    then: Then,
    /// Kept with the lines, or neither.
    photos: Vec<NewPhoto>,
    /// The moment of the tap.
    at: Instant,
    undone: bool,
    /// Nobody else has it: what could not be kept is held for another try. A form holds its own.
    alone: bool,
    /// What was answered where it puts something on a closed build.
    late: Option<Late>,
}

/// Something is put on a build that is closed: what is to be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Late {
    /// The build is open again.
    Reopen,
    /// The shop bears it.
    ShopBears,
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
    books: OnceCell<Books>,
}

impl After<'_> {
    /// The books as the act leaves them.
    pub fn books(&self) -> &Books {
        self.books.get_or_init(|| Books::close(self.shop, self.now))
    }

    /// As a screen looks at it.
    pub fn view(&self) -> View<'_> {
        View { journal: self.journal, shop: self.shop, tongue: self.tongue }
    }
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
        self.act_with(Vec::new(), decide, say, |_| {});
    }

    /// As [`Desk::act`], with photos that are kept with its lines; `then` runs once it is kept, or is not.
    pub fn act_with(
        self,
        photos: Vec<NewPhoto>,
        decide: impl Fn(&mut Hand) -> Vec<Change> + 'static,
        say: impl Fn(&After) -> Marked + 'static,
        then: impl Fn(Result<(), Failure>) + 'static,
    ) {
        let (decide, say, then) = (Box::new(decide), Box::new(say), Box::new(then));
        self.put(Job::Act(Act {
            decide,
            say,
            then,
            photos,
            at: moment(),
            undone: false,
            alone: true,
            late: None,
        }));
    }

    /// As [`Desk::act`]; `then` runs once the act is kept, or is not.
    pub fn act_then(
        self,
        decide: impl Fn(&mut Hand) -> Vec<Change> + 'static,
        say: impl Fn(&After) -> Marked + 'static,
        then: impl Fn(Result<(), Failure>) + 'static,
    ) {
        let (decide, say, then) = (Box::new(decide), Box::new(say), Box::new(then));
        let photos = Vec::new();
        self.put(Job::Act(Act {
            decide,
            say,
            then,
            photos,
            at: moment(),
            undone: false,
            alone: false,
            late: None,
        }));
    }

    /// Tries the act once more that could not be kept: decided again, as of the moment of its tap.
    pub fn try_again(self) {
        self.put(Job::Again);
    }

    /// Takes the last act back, or puts it back again. What is taken back stays in the journal; what could
    /// not be kept is given up.
    pub fn undo(self) {
        let Some(last) = self.last.get_untracked() else { return };
        if last.safety == Safety::NotSafe {
            return self.give_up();
        }
        let written = last.written.clone();
        let act = Act {
            decide: Box::new(move |hand| act::undo(hand.journal, &written)),
            say: Box::new(move |_| Marked { mark: last.mark.clone(), stopped: None }),
            then: Box::new(|_| {}),
            photos: Vec::new(),
            at: moment(),
            undone: !last.undone,
            alone: true,
            late: None,
        };
        self.put(Job::Act(act));
    }

    /// Answers what was asked about a closed build. None: it is left; a form keeps what was typed.
    pub fn answer(self, late: Option<Late>) {
        self.closed.set(None);
        let asked = self.inside.try_update_value(|inside| inside.asked.take()).flatten();
        if let (Some(act), Some(_)) = (asked, late) {
            self.put(Job::Act(Act { late, ..act }));
        }
    }

    pub(super) async fn does(self, job: Job) {
        match job {
            Job::Act(act) => self.does_act(act).await,
            Job::Again => {
                let _ = self.again().await;
            }
            Job::BringIn(file) => self.brings_in(file).await,
            Job::CatchUp => self.catch_up().await,
        }
    }

    /// What is held goes first: were it passed over, it would be lost without a word.
    async fn does_act(self, act: Act) {
        match self.again().await {
            Ok(()) => {
                let _ = self.does_one(act).await;
            }
            Err(failure) => (act.then)(Err(failure)),
        }
    }

    async fn again(self) -> Result<(), Failure> {
        match self.inside.try_update_value(|inside| inside.held.take()).flatten() {
            Some(held) => self.does_one(held).await,
            None => Ok(()),
        }
    }

    async fn does_one(self, act: Act) -> Result<(), Failure> {
        if let Some(closed) = self.inside.with_value(|inside| inside.late_on(&act)) {
            self.inside.update_value(|inside| inside.asked = Some(act));
            self.closed.set(Some(closed));
            return Ok(());
        }
        let done = self.kept_or_not(&act).await;
        (act.then)(done);
        if done.is_err() && act.alone {
            self.inside.update_value(|inside| inside.held = Some(act));
            self.changed();
        }
        done
    }

    async fn kept_or_not(self, act: &Act) -> Result<(), Failure> {
        let store = self.store().ok_or(Failure::Missing)?;
        if self.trouble.get_untracked() == Some(Failure::Gone) {
            // What could not be kept is put aside and comes back when the page is loaded again; deciding it a
            // second time would then leave both.
            return Err(Failure::Gone);
        }
        loop {
            let Some(tried) = self.inside.try_update_value(|inside| inside.tries(act)).flatten() else {
                return Ok(());
            };
            let before = self.last.get_untracked().filter(|last| last.safety == Safety::Kept);
            self.last.set(Some(LastMark { safety: Safety::Pending, ..tried.last.clone() }));
            let known = self.inside.with_value(|inside| inside.seq);
            match store.append(known, tried.rows(), &act.photos, tried.record.clone()).await {
                Ok(appended) => {
                    self.inside
                        .update_value(|inside| inside.kept(tried.shop, tried.books, appended.seq_after));
                    self.last.set(Some(tried.last));
                    self.well_again();
                    self.changed_at(act.at);
                    return Ok(());
                }
                Err(AppendError::Behind { rows }) => self.inside.update_value(|inside| {
                    inside.journal.not_kept(&tried.last.written);
                    inside.take_in(&rows);
                    inside.fold();
                }),
                Err(AppendError::Failed(failure)) => {
                    self.inside.update_value(|inside| inside.not_kept(&tried.last.written, before));
                    self.last.set(Some(LastMark { safety: Safety::NotSafe, ..tried.last }));
                    self.trouble.set(Some(failure));
                    self.changed();
                    return Err(failure);
                }
            }
        }
    }

    /// A write was kept: what stood in its way is over. Damage is over only once it is accepted.
    fn well_again(self) {
        let damaged = |trouble: &Option<Failure>| matches!(trouble, Some(Failure::Damaged { .. }));
        if self.trouble.with_untracked(|trouble| trouble.is_some() && !damaged(trouble)) {
            self.trouble.set(None);
        }
    }

    /// What could not be kept is let go of; the mark before it stands again.
    fn give_up(self) {
        let before = self.inside.try_update_value(|inside| {
            inside.held = None;
            inside.last_kept.take()
        });
        self.last.set(before.flatten());
        if self.trouble.get_untracked() == Some(Failure::Full) {
            self.trouble.set(None);
        }
    }
}

/// An act that is written but not kept yet.
struct Tried {
    lines: Vec<Line>,
    shop: Shop,
    /// As of the tap, where its mark had to know them.
    books: Option<Books>,
    last: LastMark,
    record: Option<String>,
}

impl Tried {
    fn rows(&self) -> Vec<NewRow> {
        self.lines.iter().map(|it| NewRow { id: it.id.to_string(), line: it.text.clone() }).collect()
    }
}

/// A build that is closed is opened again first, or the shop bears what was for it.
fn answered(hand: &mut Hand, changes: &mut Vec<Change>, answer: Option<Late>) {
    let Some(answer) = answer else { return };
    let today = hand.shop.zone.day(hand.now);
    while let Some(OnClosed { build, by_shop }) = late::on_closed(hand.journal, hand.shop, changes, today) {
        if answer == Late::ShopBears {
            if !by_shop {
                return;
            }
            late::borne_by_shop(changes, build);
            continue;
        }
        let Some(opens) = late::reopen(hand.shop, build, hand.now, (hand.fresh)()) else { return };
        changes.insert(0, opens);
    }
}

impl Inside {
    /// The closed build that an act would put something on, where that was not answered yet.
    fn late_on(&self, act: &Act) -> Option<OnClosed> {
        if act.late.is_some() || act.undone || self.shop.states.is_empty() {
            return None;
        }
        let mut fresh = || Id::of(crate::store::fresh_id());
        let mut hand = Hand { journal: &self.journal, shop: &self.shop, now: act.at, fresh: &mut fresh };
        let changes = (act.decide)(&mut hand);
        late::on_closed(&self.journal, &self.shop, &changes, self.shop.zone.day(act.at))
    }

    /// Decides, writes the lines into the journal, folds. None: nothing would change.
    fn tries(&mut self, act: &Act) -> Option<Tried> {
        let mut fresh = || Id::of(crate::store::fresh_id());
        let mut hand = Hand { journal: &self.journal, shop: &self.shop, now: act.at, fresh: &mut fresh };
        let mut changes = (act.decide)(&mut hand);
        answered(&mut hand, &mut changes, act.late);
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
        let entries: Vec<Id> = changes.iter().map(|change| change.entry).collect();
        let shop = self.shop.after(&self.journal, &entries);
        let after = After {
            journal: &self.journal,
            shop: &shop,
            entries: &entries,
            now: act.at,
            tongue: &self.tongue,
            books: OnceCell::new(),
        };
        let marked = (act.say)(&after);
        let books = after.books.into_inner();
        let last = LastMark {
            mark: marked.mark,
            at: act.at.0,
            written: lines.iter().map(|line| line.id).collect(),
            undone: act.undone,
            stopped: marked.stopped,
            safety: Safety::Kept,
        };
        let bench = benchslate_core::timing::bench::look(&shop, act.at, None, None);
        let record = record::write(bench, Some(last.clone()));
        Some(Tried { lines, shop, books, last, record })
    }

    fn not_kept(&mut self, written: &[Id], before: Option<LastMark>) {
        self.journal.not_kept(written);
        if before.is_some() {
            self.last_kept = before;
        }
    }

    fn kept(&mut self, shop: Shop, books: Option<Books>, seq: u64) {
        self.seq = self.seq.max(seq);
        let zone = shop.zone.name.clone();
        self.shop = shop;
        // A choice of zone, currency or units may be among what was written.
        self.settle();
        if let Some(books) = books.filter(|_| self.shop.zone.name == zone) {
            self.books.replace(Some((self.change, books)));
        }
    }
}
