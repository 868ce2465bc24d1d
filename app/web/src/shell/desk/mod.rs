//! The desk: the journal and its fold as they are now, and the one queue of acts that change them.
//!
//! A screen reads through [`Desk::read`], which makes it follow every change, and acts through
//! [`Desk::act`]. Acts go one after another: each is decided on the state that the one before it left.
//! Nothing is shown as done before its transaction has completed.

mod act;
mod bring_in;
mod inside;
mod leisure;
mod opening;
mod record;

pub use act::{After, Late, Marked};
pub use inside::View;
pub use opening::Phase;
pub use record::{LastMark, Mark, Safety};

use crate::dom::prelude::*;
use crate::{
    platform::{clock, idle},
    store::{Failure, Store},
};
use act::Job;
use benchslate_core::{
    costing::Books,
    journal::{Id, kinds::Bearer, late::OnClosed},
    measure::Instant,
    timing::bench::Bench,
};
use inside::Inside;
use leptos::task::spawn_local;

/// Handles on the desk. Copied freely; provided as context.
#[derive(Clone, Copy)]
pub struct Desk {
    inside: StoredValue<Inside, LocalStorage>,
    /// Goes up with every change of the journal.
    version: RwSignal<u64>,
    /// The moment, to the second.
    now: RwSignal<Instant>,
    minute: Memo<Instant>,
    /// The books are as of this moment: the last change, or the last full minute where that is later.
    as_of: RwSignal<Instant>,
    /// Goes up whenever books were made at leisure.
    made: RwSignal<u64>,
    /// Where the opening stands.
    pub phase: RwSignal<Phase>,
    /// What was written last.
    pub last: RwSignal<Option<LastMark>>,
    /// Storage has said that something is wrong.
    pub trouble: RwSignal<Option<Failure>>,
    /// A closed build that an act would put something on: asked about, over the title block.
    pub closed: RwSignal<Option<OnClosed>>,
    /// What was chosen to work for while no clock runs.
    pub wish: RwSignal<Option<Bearer>>,
    /// The person whose clock the keys act on, where more than one runs; none: the last begun.
    pub whose: RwSignal<Option<Id>>,
    /// The bench as it was kept, until the journal is read.
    painted: RwSignal<Option<Bench>>,
}

impl Desk {
    /// Makes the desk, provides it, and begins to open the store.
    pub fn provide() -> Desk {
        let now = RwSignal::new(moment());
        let desk = Desk {
            inside: StoredValue::new_local(Inside::new(clock::language())),
            version: RwSignal::new(0),
            now,
            minute: Memo::new(move |_| now.get().minute()),
            as_of: RwSignal::new(moment()),
            made: RwSignal::new(0),
            phase: RwSignal::new(Phase::Opening),
            last: RwSignal::new(None),
            trouble: RwSignal::new(None),
            closed: RwSignal::new(None),
            wish: RwSignal::new(None),
            whose: RwSignal::new(None),
            painted: RwSignal::new(None),
        };
        provide_context(desk);
        spawn_local(async move {
            loop {
                idle::pause(1000).await;
                desk.tick();
            }
        });
        spawn_local(desk.open());
        desk
    }

    /// The desk of this page.
    pub fn here() -> Desk {
        expect_context()
    }

    /// Reads the state, and follows it: run again at every change of the journal.
    pub fn read<T>(self, look: impl FnOnce(&View) -> T) -> T {
        self.version.track();
        self.inside.with_value(|inside| look(&inside.view()))
    }

    /// Reads the state as it is at this tap.
    pub fn now_read<T>(self, look: impl FnOnce(&View) -> T) -> T {
        self.inside.with_value(|inside| look(&inside.view()))
    }

    /// The books as of the last change or the last full minute: made once for each, on demand.
    pub fn books<T>(self, look: impl FnOnce(&Books, &View) -> T) -> T {
        self.version.track();
        let as_of = self.as_of.get();
        self.inside.with_value(|inside| inside.books(as_of, look))
    }

    /// The moment, to the second; followed.
    pub fn now(self) -> Instant {
        self.now.get()
    }

    /// The moment, to the minute; followed.
    pub fn minute(self) -> Instant {
        self.minute.get()
    }

    /// The moment of a tap.
    pub fn at_tap(self) -> Instant {
        moment()
    }

    /// The bench as it stands, from its record until the journal is read.
    pub fn bench(self) -> Option<Bench> {
        self.version.track();
        let (wish, whose) = (self.wish.get(), self.whose.get());
        if self.phase.get() != Phase::Ready {
            return self.painted.get();
        }
        Some(self.inside.with_value(|inside| inside.bench(moment(), wish, whose)))
    }

    /// Whether anything was ever written; none while that isn't known.
    pub fn is_empty(self) -> Option<bool> {
        self.version.track();
        match self.phase.get() {
            Phase::Ready => Some(self.inside.with_value(|inside| inside.journal.is_empty())),
            Phase::Opening | Phase::Failed(_) => self.painted.with(|it| it.as_ref().map(|_| false)),
        }
    }

    /// The store, once it is open.
    pub fn store(self) -> Option<Store> {
        self.inside.with_value(|inside| inside.store.clone())
    }

    /// Waits until all is read: what takes the whole journal must not take the half of it.
    ///
    /// # Errors
    /// Why it can't be opened.
    pub async fn once_read(self) -> Result<(), Failure> {
        loop {
            match self.phase.get_untracked() {
                Phase::Opening => idle::pause(30).await,
                Phase::Ready => return Ok(()),
                Phase::Failed(failure) => return Err(failure),
            }
        }
    }

    /// An id that was never used.
    pub fn fresh(self) -> Id {
        Id::of(crate::store::fresh_id())
    }

    fn put(self, job: Job) {
        let idle = self.inside.try_update_value(|inside| {
            inside.queue.push_back(job);
            !inside.busy && inside.open
        });
        if idle == Some(true) {
            self.work();
        }
    }

    /// Works the queue off, one job after another.
    fn work(self) {
        self.inside.update_value(|inside| inside.busy = true);
        spawn_local(async move {
            while let Some(job) = self.inside.try_update_value(|inside| inside.queue.pop_front()).flatten() {
                self.does(job).await;
            }
            self.inside.update_value(|inside| inside.busy = false);
        });
    }

    fn tick(self) {
        let now = moment();
        self.now.set(now);
        // Books and slate turn over together: when a clock's own minute is full, not only the wall's.
        let reads = |at| self.inside.with_value(|inside| inside.clocks_read(at));
        let then = self.as_of.get_untracked();
        if then < now.minute() || reads(then) != reads(now) {
            self.as_of.set(now);
            self.make_where_wanted();
        }
    }

    fn changed(self) {
        self.changed_at(moment());
    }

    /// By an act at a moment: books that were made for its mark are true.
    fn changed_at(self, at: Instant) {
        self.as_of.set(at.max(self.as_of.get_untracked()));
        self.version.update(|version| *version = version.wrapping_add(1));
        self.make_where_wanted();
    }
}

fn moment() -> Instant {
    Instant(clock::now().div_euclid(1000))
}
