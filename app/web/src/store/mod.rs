//! The one door to storage.
//!
//! In: lines of text with their ids, byte for byte. Out: the same lines in the order of arrival.
//! It knows nothing of what a line says. [`Store`] is a handle that can be cloned.
//!
//! A write is confirmed (`Ok`) once its transaction has completed, and never otherwise.
//! Never: an id with two lines side by side, a line changed, a screen that opens storage itself.
//! Kept by: the natively tested [`union`], the journeys, and the ban on other ways in (lints).

pub mod device;
mod door;
mod drafts;
mod failure;
mod ids;
mod meta;
pub mod persist;
mod revisions;
mod schema;
mod selfcheck;
mod tabs;
mod tally;
mod union;
mod value;

use std::cell::{Cell, RefCell};
use std::rc::{Rc, Weak};

use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::spawn_local;

use crate::platform::idle;
use door::{Door, Sign};
pub use failure::{At, Failure};
pub use ids::{fresh_id, fresh_id_text};
use revisions::Outcome;
pub use revisions::{AppendError, Appended, Clash, NewRow, Row};
use tabs::{Tabs, Word};
pub use tally::Tally;

/// What storage says on its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StoreEvent {
    /// Another window has written: rows up to this `seq` are there.
    UpTo(u64),
    /// Keep what is typed: a new version is about to be taken. Drafts handed to the store are
    /// being written already.
    FlushDrafts,
    /// Another window has taken a new version of the program.
    Updated,
    /// Something is wrong: [`Failure::Blocked`] while opening, which goes on once the other window is
    /// closed; [`Failure::Newer`] when another window raised the database and this one let go of it;
    /// [`Failure::Gone`] when the database was taken away; any failure to keep drafts or lines put aside.
    Trouble(Failure),
}

/// The maker's storage. Cloning gives another handle on the same.
#[derive(Clone)]
pub struct Store(Rc<Inner>);

struct Inner {
    door: RefCell<Option<Rc<Door>>>,
    /// Let go of for good: nothing is opened again.
    shut: Cell<Option<Failure>>,
    waiting: drafts::Waiting,
    tabs: RefCell<Option<Tabs>>,
    on_event: Box<dyn Fn(StoreEvent)>,
}

impl Store {
    /// Opens the database, making it the first time, and puts in what an earlier session had to put
    /// aside. `on_event` may be called at any time from then on, and while this waits.
    ///
    /// # Errors
    /// As [`Failure`] says; nothing of a newer database is touched.
    pub async fn open(on_event: impl Fn(StoreEvent) + 'static) -> Result<Self, Failure> {
        let store = Self(Rc::new(Inner {
            door: RefCell::default(),
            shut: Cell::new(None),
            waiting: drafts::Waiting::default(),
            tabs: RefCell::default(),
            on_event: Box::new(on_event),
        }));
        store.door().await?;
        store.join_tabs();
        store.flush_when_hidden();
        store.replay().await;
        Ok(store)
    }

    /// Writes lines and what the first screen shows in one piece, if no other window has written
    /// above `known_seq`. Lines that are there already are skipped.
    ///
    /// # Errors
    /// [`AppendError::Behind`]: nothing was written; fold its rows and decide again.
    /// [`AppendError::Failed`]: nothing is confirmed. After [`Failure::Gone`] the lines are put aside
    /// and tried again when the program next starts.
    pub async fn append(
        &self,
        known_seq: u64,
        rows: Vec<NewRow>,
        bench: Option<String>,
    ) -> Result<Appended, AppendError> {
        match self.write(Some(known_seq), &rows, bench.as_deref()).await {
            Ok(Outcome::Kept(appended)) => Ok(appended),
            Ok(Outcome::Behind(rows)) => Err(AppendError::Behind { rows }),
            Err(failure) => {
                if failure == Failure::Gone {
                    device::put_aside(&rows);
                }
                Err(AppendError::Failed(failure))
            }
        }
    }

    /// Writes lines that came from elsewhere, whatever other windows did: union.
    ///
    /// # Errors
    /// As [`Failure`] says; then none of them was kept.
    pub async fn merge(&self, rows: Vec<NewRow>, bench: Option<String>) -> Result<Appended, Failure> {
        match self.write(None, &rows, bench.as_deref()).await? {
            Outcome::Kept(appended) => Ok(appended),
            // Never without a known `seq`.
            Outcome::Behind(_) => Err(Failure::Refused),
        }
    }

    /// The rows above `seq` in the order of arrival, at most `limit`.
    ///
    /// # Errors
    /// As [`Failure`] says. A damaged row is left out here and named by [`Self::self_check`].
    pub async fn rows_above(&self, seq: u64, limit: u32) -> Result<Vec<Row>, Failure> {
        self.through(async |door| revisions::above(door, seq, limit).await).await
    }

    /// How many rows there are.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn count(&self) -> Result<u64, Failure> {
        self.through(async |door| revisions::count(door).await).await
    }

    /// What the first screen shows, as it was last written with an append.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn bench(&self) -> Result<Option<String>, Failure> {
        self.through(async |door| meta::bench(door).await).await
    }

    /// This device's id, made the first time it is asked for.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn device(&self) -> Result<String, Failure> {
        let fresh = fresh_id_text();
        self.through(async |door| meta::device(door, &fresh).await).await
    }

    /// How many lines were put aside because their id was met with two different lines.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn quarantine_count(&self) -> Result<u64, Failure> {
        self.through(async |door| revisions::quarantine_count(door).await).await
    }

    /// Recounts in idle time whether all is there that was written.
    ///
    /// # Errors
    /// [`Failure::Damaged`] with where and what was found.
    pub async fn self_check(&self) -> Result<(), Failure> {
        self.through(async |door| selfcheck::check(door).await).await
    }

    /// Accepts what is there: writes the tally anew, and gives it.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn mend_check(&self) -> Result<Tally, Failure> {
        self.through(async |door| selfcheck::mend(door).await).await
    }

    /// The draft under `key`, kept or still on its way.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn draft(&self, key: &str) -> Result<Option<String>, Failure> {
        match self.0.waiting.peek(key) {
            Some(text) => Ok(text),
            None => self.through(async |door| drafts::get(door, key).await).await,
        }
    }

    /// Takes a draft in; it is kept within 300 ms. Call it at every key.
    pub fn put_draft(&self, key: &str, text: &str) {
        self.wait_with(key, Some(text));
    }

    /// Takes a draft away: it was said, or given up.
    pub fn drop_draft(&self, key: &str) {
        self.wait_with(key, None);
    }

    /// Keeps all drafts now.
    ///
    /// # Errors
    /// As [`Failure`] says; the drafts then stay in memory.
    pub async fn flush_drafts(&self) -> Result<(), Failure> {
        self.door().await?;
        self.0.flush().await
    }

    /// Tells the other windows to keep what is typed: this one is about to take a new version.
    pub fn tell_flush_drafts(&self) {
        self.0.say(Word::FlushDrafts);
    }

    /// Tells the other windows that this one has taken a new version.
    pub fn tell_updated(&self) {
        self.0.say(Word::Updated);
    }
}

impl Store {
    async fn write(
        &self,
        known: Option<u64>,
        rows: &[NewRow],
        bench: Option<&str>,
    ) -> Result<Outcome, Failure> {
        let outcome = self.through(async |door| revisions::write(door, known, rows, bench).await).await?;
        if let Outcome::Kept(Appended { seq_after, added: 1.., .. }) = &outcome {
            self.0.say(Word::UpTo(*seq_after));
        }
        Ok(outcome)
    }

    /// Does it, and once more over a fresh connection if the first has died. What is done here
    /// can be done twice: ids that are there are skipped.
    async fn through<T>(&self, act: impl AsyncFn(&Door) -> Result<T, Failure>) -> Result<T, Failure> {
        let door = self.door().await?;
        match act(&door).await {
            Err(Failure::Gone) => {
                self.0.let_go_of(&door);
                act(&*self.door().await?).await
            }
            done => done,
        }
    }

    async fn door(&self) -> Result<Rc<Door>, Failure> {
        if let Some(failure) = self.0.shut.get() {
            return Err(failure);
        }
        if let Some(door) = self.0.door.borrow().as_ref() {
            return Ok(door.clone());
        }
        let inner = Rc::downgrade(&self.0);
        let hear = Rc::new(move |sign| {
            if let Some(inner) = inner.upgrade() {
                inner.hear(sign);
            }
        });
        let door = Rc::new(Door::open(schema::NAME, schema::VERSION, hear).await?);
        self.0.door.borrow_mut().replace(door.clone());
        Ok(door)
    }

    fn join_tabs(&self) {
        let inner = Rc::downgrade(&self.0);
        let hear = Rc::new(move |word| {
            if let Some(inner) = inner.upgrade() {
                Inner::heard(&inner, word);
            }
        });
        self.0.tabs.borrow_mut().replace(Tabs::join(schema::NAME, hear));
    }

    fn flush_when_hidden(&self) {
        let inner = Rc::downgrade(&self.0);
        let hidden = Closure::<dyn FnMut()>::new(move || {
            let page_hidden = web_sys::window().and_then(|it| it.document()).is_some_and(|it| it.hidden());
            if let (true, Some(inner)) = (page_hidden, inner.upgrade()) {
                Inner::flush_soon(&inner);
            }
        });
        if let Some(document) = web_sys::window().and_then(|it| it.document()) {
            let heard = hidden.as_ref().unchecked_ref();
            let _ = document.add_event_listener_with_callback("visibilitychange", heard);
        }
        // Lives as long as the page; it holds no more than a weak handle.
        hidden.forget();
    }

    /// Puts in what an earlier session had to put aside.
    async fn replay(&self) {
        let rows = device::aside();
        if rows.is_empty() {
            return;
        }
        match self.merge(rows.clone(), None).await {
            Ok(_) => device::no_longer_aside(&rows),
            Err(failure) => (self.0.on_event)(StoreEvent::Trouble(failure)),
        }
    }

    fn wait_with(&self, key: &str, text: Option<&str>) {
        if self.0.waiting.take(key, text) {
            let inner: Weak<Inner> = Rc::downgrade(&self.0);
            spawn_local(async move {
                idle::pause(drafts::WAIT_MS).await;
                if let Some(inner) = inner.upgrade() {
                    Inner::flush_soon(&inner);
                }
            });
        }
    }
}

impl Inner {
    fn say(&self, word: Word) {
        if let Some(tabs) = self.tabs.borrow().as_ref() {
            tabs.say(word);
        }
    }

    fn heard(inner: &Rc<Self>, word: Word) {
        match word {
            Word::UpTo(seq) => (inner.on_event)(StoreEvent::UpTo(seq)),
            Word::Updated => (inner.on_event)(StoreEvent::Updated),
            Word::FlushDrafts => {
                (inner.on_event)(StoreEvent::FlushDrafts);
                Self::flush_soon(inner);
            }
        }
    }

    /// What the connection says. Called by the browser before it is closed.
    fn hear(self: &Rc<Self>, sign: Sign) {
        match sign {
            Sign::Waits => (self.on_event)(StoreEvent::Trouble(Failure::Blocked)),
            Sign::Died => {
                self.door.borrow_mut().take();
            }
            Sign::Superseded(version) => {
                (self.on_event)(StoreEvent::FlushDrafts);
                // The transaction begins here and now; closing waits for its end.
                Self::flush_soon(self);
                let failure = version.map_or(Failure::Gone, |found| Failure::Newer { found });
                self.shut.set(Some(failure));
                (self.on_event)(StoreEvent::Trouble(failure));
            }
        }
    }

    fn let_go_of(&self, dead: &Rc<Door>) {
        let mut door = self.door.borrow_mut();
        if door.as_ref().is_some_and(|door| Rc::ptr_eq(door, dead)) {
            door.take();
        }
    }

    fn flush_soon(inner: &Rc<Self>) {
        let begun = inner.begin_flush();
        let inner = inner.clone();
        spawn_local(async move {
            if let Err(failure) = inner.end_flush(begun).await {
                (inner.on_event)(StoreEvent::Trouble(failure));
            }
        });
    }

    async fn flush(&self) -> Result<(), Failure> {
        let begun = self.begin_flush();
        self.end_flush(begun).await
    }

    fn begin_flush(&self) -> Flush {
        let texts = self.waiting.let_go();
        let act = match self.door.borrow().as_ref() {
            _ if texts.is_empty() => None,
            Some(door) => Some(drafts::put(door, &texts)),
            None => Some(Err(Failure::Gone)),
        };
        Flush { texts, act }
    }

    async fn end_flush(&self, Flush { texts, act }: Flush) -> Result<(), Failure> {
        let ended = match act {
            None => Ok(()),
            Some(Ok(act)) => act.ended().await,
            Some(Err(failure)) => Err(failure),
        };
        if ended.is_err() {
            self.waiting.take_back(texts);
        }
        ended
    }
}

/// Drafts on their way, and the transaction that carries them.
struct Flush {
    texts: std::collections::BTreeMap<String, Option<String>>,
    act: Option<Result<door::Act, Failure>>,
}
