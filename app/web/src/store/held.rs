//! What one window holds: the connection, had again once when it dies, the drafts on their way, and
//! its ear on the other windows.

use benchslate_core::measure::Map;
use std::cell::{Cell, RefCell};
use std::rc::Rc;

use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::act::Act;
use super::door::{Door, Sign};
use super::drafts::{self, Waiting};
use super::failure::Failure;
use super::photos::NewPhoto;
use super::revisions::{self, Appended, NewRow, Outcome};
use super::schema::{self, Which};
use super::tabs::{Tabs, Word};
use super::{StoreEvent, device};
use crate::platform::idle;

/// What all handles on the store share.
pub(super) struct Held {
    pub(super) which: Which,
    door: RefCell<Option<Rc<Door>>>,
    /// Let go of for good: nothing is opened again.
    shut: Cell<Option<Failure>>,
    /// Drafts on their way to the disk.
    pub(super) waiting: Waiting,
    tabs: RefCell<Option<Tabs>>,
    on_event: Box<dyn Fn(StoreEvent)>,
}

impl Held {
    /// Opens the database and listens; then puts in what an earlier session had to put aside.
    pub(super) async fn open(which: Which, on_event: Box<dyn Fn(StoreEvent)>) -> Result<Rc<Self>, Failure> {
        let (door, shut, waiting, tabs) = Default::default();
        let held = Rc::new(Self { which, door, shut, waiting, tabs, on_event });
        held.door().await?;
        held.join_tabs();
        held.flush_when_hidden();
        // What was put aside is the maker's own.
        if which == Which::Own {
            held.replay().await;
        }
        Ok(held)
    }

    /// Does it, and once more over a fresh connection if the first has died. What is done here
    /// can be done twice: ids that are there are skipped.
    pub(super) async fn through<T>(
        self: &Rc<Self>,
        act: impl AsyncFn(&Door) -> Result<T, Failure>,
    ) -> Result<T, Failure> {
        let door = self.door().await?;
        match act(&door).await {
            Err(Failure::Gone) => {
                self.let_go_of(&door);
                act(&*self.door().await?).await
            }
            done => done,
        }
    }

    /// Writes rows and their photos, tells the other windows, and takes off the list of those put aside what is on it.
    pub(super) async fn write(
        self: &Rc<Self>,
        known: Option<u64>,
        rows: &[NewRow],
        photos: &[NewPhoto],
        bench: Option<&str>,
    ) -> Result<Outcome, Failure> {
        let write = async |door: &Door| revisions::write(door, known, rows, photos, bench).await;
        let outcome = self.through(write).await?;
        if let Outcome::Kept(Appended { seq_after, added, .. }) = &outcome {
            device::no_longer_aside(rows);
            if *added > 0 {
                self.say(Word::UpTo(*seq_after));
            }
        }
        Ok(outcome)
    }

    /// Tells the other windows.
    pub(super) fn say(&self, word: Word) {
        if let Some(tabs) = self.tabs.borrow().as_ref() {
            tabs.say(word);
        }
    }

    /// Takes a draft in (none: takes it away), to be kept within [`drafts::WAIT_MS`].
    pub(super) fn wait_with(self: &Rc<Self>, key: &str, text: Option<&str>) {
        if self.waiting.take(key, text) {
            let held = Rc::downgrade(self);
            spawn_local(async move {
                idle::pause(drafts::WAIT_MS).await;
                if let Some(held) = held.upgrade() {
                    held.flush_soon();
                }
            });
        }
    }

    /// Keeps all drafts now.
    pub(super) async fn flush(self: &Rc<Self>) -> Result<(), Failure> {
        self.door().await?;
        let begun = self.begin_flush();
        self.end_flush(begun).await
    }

    async fn door(self: &Rc<Self>) -> Result<Rc<Door>, Failure> {
        if let Some(failure) = self.shut.get() {
            return Err(failure);
        }
        if let Some(door) = self.door.borrow().as_ref() {
            return Ok(door.clone());
        }
        let held = Rc::downgrade(self);
        let hear = Rc::new(move |sign| {
            if let Some(held) = held.upgrade() {
                held.hear(sign);
            }
        });
        let door = Rc::new(Door::open(self.which.name(), schema::VERSION, hear).await?);
        self.door.borrow_mut().replace(door.clone());
        Ok(door)
    }

    fn let_go_of(&self, dead: &Rc<Door>) {
        let mut door = self.door.borrow_mut();
        if door.as_ref().is_some_and(|door| Rc::ptr_eq(door, dead)) {
            door.take();
        }
    }

    fn join_tabs(self: &Rc<Self>) {
        let held = Rc::downgrade(self);
        let hear = Rc::new(move |word| {
            if let Some(held) = held.upgrade() {
                held.heard(word);
            }
        });
        self.tabs.borrow_mut().replace(Tabs::join(self.which.name(), hear));
    }

    fn flush_when_hidden(self: &Rc<Self>) {
        let Some(document) = web_sys::window().and_then(|it| it.document()) else { return };
        let (held, page) = (Rc::downgrade(self), document.clone());
        let hidden = Closure::<dyn FnMut()>::new(move || {
            if let (true, Some(held)) = (page.hidden(), held.upgrade()) {
                held.flush_soon();
            }
        });
        let _ =
            document.add_event_listener_with_callback("visibilitychange", hidden.as_ref().unchecked_ref());
        // Lives as long as the page; it holds no more than a weak handle.
        hidden.forget();
    }

    async fn replay(self: &Rc<Self>) {
        let rows = device::aside();
        if rows.is_empty() {
            return;
        }
        if let Err(failure) = self.write(None, &rows, &[], None).await {
            (self.on_event)(StoreEvent::Trouble(failure));
        }
    }

    fn heard(self: &Rc<Self>, word: Word) {
        match word {
            Word::UpTo(seq) => (self.on_event)(StoreEvent::UpTo(seq)),
            Word::Updated => (self.on_event)(StoreEvent::Updated),
            Word::FlushDrafts => {
                (self.on_event)(StoreEvent::FlushDrafts);
                self.flush_soon();
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
                self.flush_soon();
                let failure = version.map_or(Failure::Gone, |found| Failure::Newer { found });
                self.shut.set(Some(failure));
                (self.on_event)(StoreEvent::Trouble(failure));
            }
        }
    }

    fn flush_soon(self: &Rc<Self>) {
        let begun = self.begin_flush();
        let held = self.clone();
        spawn_local(async move {
            if let Err(failure) = held.end_flush(begun).await {
                (held.on_event)(StoreEvent::Trouble(failure));
            }
        });
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
    texts: Map<String, Option<String>>,
    act: Option<Result<Act, Failure>>,
}
