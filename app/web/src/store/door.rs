//! The door itself: a connection, transactions whose end is waited for, and the verbs.
//!
//! A write counts only when [`Act::ended`] says so, which waits for the transaction's `complete`
//! event: a request's success is no promise, and with durability `strict` a full disk shows as
//! nothing but an `abort`. An [`Act`] let go of before that is aborted, so that no early return
//! can leave half of a write behind.
//!
//! Raw web-sys, without a wrapper crate: those at hand answer `Ok` for an aborted transaction.

use std::cell::Cell;
use std::rc::Rc;

use js_sys::{Function, Object, Promise};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Event, IdbCursorDirection, IdbDatabase, IdbFactory, IdbKeyRange, IdbObjectStore, IdbOpenDbRequest,
    IdbRequest, IdbTransaction, IdbVersionChangeEvent,
};

use super::failure::{self, Failure};
use super::{schema, value};

#[wasm_bindgen]
extern "C" {
    /// `IDBDatabase`, for the one method that web-sys gives without its durability.
    type Keeping;

    #[wasm_bindgen(method, catch, js_name = transaction)]
    fn begin(
        this: &Keeping,
        names: &Object,
        mode: &str,
        options: &JsValue,
    ) -> Result<IdbTransaction, JsValue>;

    /// `IDBTransaction`, for the one method that web-sys calls deprecated; the standard doesn't.
    type Sealing;

    #[wasm_bindgen(method, catch)]
    fn commit(this: &Sealing) -> Result<(), JsValue>;
}

/// What a connection says on its own.
#[derive(Clone, Copy, Debug)]
pub(super) enum Sign {
    /// Opening waits for another window that holds an older version.
    Waits,
    /// Another window wants this version (none: wants the database away); the connection is closed
    /// once this has been heard.
    Superseded(Option<u64>),
    /// The browser closed the connection.
    Died,
}

/// What a transaction may do, and how hard its end must be.
#[derive(Clone, Copy, Debug)]
pub(super) enum Mode {
    /// Read only.
    Read,
    /// Write, confirmed once it is on the disk: everything in the journal.
    Strict,
    /// Write, confirmed once the system has it: drafts.
    Relaxed,
}

/// An open connection.
pub(super) struct Door {
    db: IdbDatabase,
    // Kept alive as long as the connection may call them.
    _superseded: Closure<dyn FnMut(IdbVersionChangeEvent)>,
    _died: Closure<dyn FnMut()>,
}

impl Door {
    /// Opens the database, making or raising it where needed.
    ///
    /// # Errors
    /// [`Failure::Newer`] with nothing touched; [`Failure::Missing`], [`Failure::Full`],
    /// [`Failure::Refused`] as found. A window in the way is told through `hear`, and waited for.
    pub(super) async fn open(name: &str, version: u32, hear: Rc<dyn Fn(Sign)>) -> Result<Self, Failure> {
        let factory = factory()?;
        let request = factory.open_with_u32(name, version).map_err(|error| failure::thrown(&error))?;
        let waits = {
            let hear = hear.clone();
            Closure::<dyn FnMut()>::new(move || hear(Sign::Waits))
        };
        request.set_onblocked(Some(waits.as_ref().unchecked_ref()));
        let raise = raising(&request);
        request.set_onupgradeneeded(Some(raise.as_ref().unchecked_ref()));
        let asked = Asked::new(request.clone().into());
        if settled(&asked).await {
            return Ok(Self::listening(
                asked.request.result().map_err(|e| failure::thrown(&e))?.unchecked_into(),
                hear,
            ));
        }
        let error = asked.error();
        if failure::name_of(&error) == "VersionError" {
            return Err(Failure::Newer {
                found: version_of(&factory, name).await.unwrap_or(u64::from(version) + 1),
            });
        }
        Err(failure::aborted(&error).await)
    }

    /// Begins a transaction over these stores.
    ///
    /// # Errors
    /// [`Failure::Gone`] when the connection is closed or closing.
    pub(super) fn begin(&self, names: &[&str], mode: Mode) -> Result<Act, Failure> {
        let (kind, durability) = match mode {
            Mode::Read => ("readonly", "default"),
            Mode::Strict => ("readwrite", "strict"),
            Mode::Relaxed => ("readwrite", "relaxed"),
        };
        let options = value::record(&[("durability", durability.into())]);
        let tx = self
            .db
            .unchecked_ref::<Keeping>()
            .begin(&schema::names(names), kind, &options)
            .map_err(|error| failure::thrown(&error))?;
        Ok(Act::new(tx))
    }

    /// Closes the connection; transactions that have begun still run to their end.
    pub(super) fn close(&self) {
        self.db.close();
    }

    fn listening(db: IdbDatabase, hear: Rc<dyn Fn(Sign)>) -> Self {
        let (closing, heard) = (db.clone(), hear.clone());
        let superseded =
            Closure::<dyn FnMut(IdbVersionChangeEvent)>::new(move |event: IdbVersionChangeEvent| {
                heard(Sign::Superseded(event.new_version().map(|version| version as u64)));
                closing.close();
            });
        let died = Closure::<dyn FnMut()>::new(move || hear(Sign::Died));
        db.set_onversionchange(Some(superseded.as_ref().unchecked_ref()));
        db.set_onclose(Some(died.as_ref().unchecked_ref()));
        Self { db, _superseded: superseded, _died: died }
    }
}

impl Drop for Door {
    fn drop(&mut self) {
        self.db.set_onversionchange(None);
        self.db.set_onclose(None);
        self.db.close();
    }
}

/// A transaction that has begun. Aborted when let go of before [`Self::ended`].
pub(super) struct Act {
    tx: IdbTransaction,
    end: Promise,
    let_run: Cell<bool>,
}

impl Act {
    fn new(tx: IdbTransaction) -> Self {
        let end = Promise::new(&mut |resolve, _reject| {
            let resolve: &Function = resolve.unchecked_ref();
            tx.set_oncomplete(Some(resolve));
            tx.set_onabort(Some(resolve));
        });
        Self { tx, end, let_run: Cell::new(false) }
    }

    /// Nothing more will be asked: the engine need not wait to see, and goes on with it though the
    /// page is left at this moment. Browsers without it find out by themselves.
    pub(super) fn seal(&self) {
        self.let_run.set(true);
        let _ = self.tx.unchecked_ref::<Sealing>().commit();
    }

    /// Waits for the end. `Ok` means `complete`, and nothing else does.
    ///
    /// # Errors
    /// Why it was aborted; nothing of it is kept.
    pub(super) async fn ended(self) -> Result<(), Failure> {
        self.seal();
        let event = JsFuture::from(self.end.clone()).await.map_err(|error| failure::thrown(&error))?;
        if event.unchecked_ref::<Event>().type_() == "complete" {
            return Ok(());
        }
        let error = self.tx.error().map_or(JsValue::NULL, JsValue::from);
        Err(failure::aborted(&error).await)
    }

    /// The value at a key; undefined when there is none.
    pub(super) fn get(&self, store: &str, key: &JsValue) -> Result<Asked, Failure> {
        self.ask(store, |it| it.get(key))
    }

    /// The value at a key of an index; undefined when there is none.
    pub(super) fn get_by(&self, store: &str, index: &str, key: &JsValue) -> Result<Asked, Failure> {
        self.ask(store, |it| it.index(index)?.get(key))
    }

    /// The primary key at a key of an index; undefined when there is none.
    pub(super) fn key_by(&self, store: &str, index: &str, key: &JsValue) -> Result<Asked, Failure> {
        self.ask(store, |it| it.index(index)?.get_key(key))
    }

    /// The values above a number, at most `limit`, in the order of their keys.
    pub(super) fn above(&self, store: &str, above: u64, limit: u32) -> Result<Asked, Failure> {
        self.ask(store, |it| it.get_all_with_key_and_limit(&beyond(above)?, limit))
    }

    /// The keys that go with [`Self::above`].
    pub(super) fn keys_above(&self, store: &str, above: u64, limit: u32) -> Result<Asked, Failure> {
        self.ask(store, |it| it.get_all_keys_with_key_and_limit(&beyond(above)?, limit))
    }

    /// A cursor on the last row, or null; its key is read with [`value::whole`].
    pub(super) fn last(&self, store: &str) -> Result<Asked, Failure> {
        let backwards = IdbCursorDirection::Prev;
        self.ask(store, |it| it.open_key_cursor_with_range_and_direction(&JsValue::NULL, backwards))
    }

    /// How many there are.
    pub(super) fn count(&self, store: &str) -> Result<Asked, Failure> {
        self.ask(store, IdbObjectStore::count)
    }

    /// Puts a value under the next number.
    pub(super) fn add(&self, store: &str, value: &JsValue) -> Result<Asked, Failure> {
        self.ask(store, |it| it.add(value))
    }

    /// Puts a value at a key, over what stood there.
    pub(super) fn put(&self, store: &str, key: &JsValue, value: &JsValue) -> Result<Asked, Failure> {
        self.ask(store, |it| it.put_with_key(value, key))
    }

    /// Takes away what stands at a key.
    pub(super) fn delete(&self, store: &str, key: &JsValue) -> Result<Asked, Failure> {
        self.ask(store, |it| it.delete(key))
    }

    fn ask(
        &self,
        store: &str,
        verb: impl FnOnce(&IdbObjectStore) -> Result<IdbRequest, JsValue>,
    ) -> Result<Asked, Failure> {
        let request = self.tx.object_store(store).and_then(|it| verb(&it));
        request.map(Asked::new).map_err(|error| failure::thrown(&error))
    }
}

impl Drop for Act {
    fn drop(&mut self) {
        if !self.let_run.get() {
            // One that has ended by itself (a read) refuses, and that is well.
            let _ = self.tx.abort();
        }
    }
}

/// A request under way. Several may be made before the first is waited for.
pub(super) struct Asked {
    request: IdbRequest,
    done: Promise,
}

impl Asked {
    fn new(request: IdbRequest) -> Self {
        let done = Promise::new(&mut |resolve, _reject| {
            let resolve: &Function = resolve.unchecked_ref();
            request.set_onsuccess(Some(resolve));
            request.set_onerror(Some(resolve));
        });
        Self { request, done }
    }

    /// Waits for the answer. The transaction stays open for further requests made right after it.
    ///
    /// # Errors
    /// What the database reported; the transaction is then aborted by the browser.
    pub(super) async fn answered(self) -> Result<JsValue, Failure> {
        if settled(&self).await {
            return self.request.result().map_err(|error| failure::thrown(&error));
        }
        Err(failure::thrown(&self.error()))
    }

    /// The answer to a request of a transaction that has ended well.
    pub(super) fn answer(&self) -> Option<JsValue> {
        self.request.result().ok()
    }

    fn error(&self) -> JsValue {
        self.request.error().ok().flatten().map_or(JsValue::NULL, JsValue::from)
    }
}

/// True: `success`. False: `error`.
async fn settled(asked: &Asked) -> bool {
    let event = JsFuture::from(asked.done.clone()).await;
    event.is_ok_and(|event| event.unchecked_ref::<Event>().type_() == "success")
}

fn factory() -> Result<IdbFactory, Failure> {
    let window = web_sys::window().ok_or(Failure::Missing)?;
    window.indexed_db().map_err(|_denied| Failure::Refused)?.ok_or(Failure::Missing)
}

fn raising(request: &IdbOpenDbRequest) -> Closure<dyn FnMut(IdbVersionChangeEvent)> {
    let request = request.clone();
    Closure::new(move |event: IdbVersionChangeEvent| {
        let Ok(db) = request.result() else { return };
        if schema::raise(db.unchecked_ref(), event.old_version() as u32).is_err() {
            // Half a schema is worse than none: the browser takes all of it back.
            if let Some(tx) = request.transaction() {
                let _ = tx.abort();
            }
        }
    })
}

/// The version that is there. Opening without a number changes nothing.
async fn version_of(factory: &IdbFactory, name: &str) -> Option<u64> {
    let asked = Asked::new(factory.open(name).ok()?.into());
    let db: IdbDatabase = asked.answered().await.ok()?.unchecked_into();
    db.close();
    Some(db.version() as u64)
}

fn beyond(above: u64) -> Result<JsValue, JsValue> {
    IdbKeyRange::lower_bound_with_open(&value::from_number(above), true).map(JsValue::from)
}
