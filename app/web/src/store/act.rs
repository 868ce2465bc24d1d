//! A transaction whose end is waited for, and the verbs.
//!
//! A write counts only when [`Act::ended`] says so, which waits for the transaction's `complete`
//! event: a request's success is no promise, and with durability `strict` a full disk shows as
//! nothing but an `abort`. An [`Act`] let go of before that is aborted, so that no early return
//! can leave half of a write behind.

use std::cell::Cell;

use js_sys::{Function, Promise};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Event, IdbCursorDirection, IdbKeyRange, IdbObjectStore, IdbRequest, IdbTransaction, IdbTransactionMode,
};

use super::failure::{self, Failure};
use super::value;

#[wasm_bindgen]
extern "C" {
    /// `IDBTransaction`, for the one method that web-sys calls deprecated; the standard doesn't.
    type Sealing;

    #[wasm_bindgen(method, catch)]
    fn commit(this: &Sealing) -> Result<(), JsValue>;
}

/// A transaction that has begun. One that writes is aborted when let go of before [`Self::ended`].
pub(super) struct Act {
    tx: IdbTransaction,
    end: Promise,
    let_run: Cell<bool>,
}

impl Act {
    pub(super) fn new(tx: IdbTransaction) -> Self {
        let end = Promise::new(&mut |resolve, _reject| {
            let resolve: &Function = resolve.unchecked_ref();
            tx.set_oncomplete(Some(resolve));
            tx.set_onabort(Some(resolve));
        });
        // Of a read nothing can be left by half: it ends by itself, and to abort it takes the engine a millisecond.
        let reads = tx.mode().is_ok_and(|mode| mode == IdbTransactionMode::Readonly);
        Self { tx, end, let_run: Cell::new(reads) }
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

    /// The values above a number up to another, this one too, in the order of their keys.
    pub(super) fn between(&self, store: &str, above: u64, up_to: u64) -> Result<Asked, Failure> {
        let [above, up_to] = [above, up_to].map(value::from_number);
        let range = IdbKeyRange::bound_with_lower_open_and_upper_open(&above, &up_to, true, false);
        self.ask(store, |it| it.get_all_with_key(&range?.into()))
    }

    /// All keys, in order.
    pub(super) fn keys(&self, store: &str) -> Result<Asked, Failure> {
        self.ask(store, IdbObjectStore::get_all_keys)
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
            // One that has ended by itself refuses, and that is well.
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
    pub(super) fn new(request: IdbRequest) -> Self {
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
        if self.settled().await {
            return self.request.result().map_err(|error| failure::thrown(&error));
        }
        Err(failure::thrown(&self.error()))
    }

    /// The answer to a request of a transaction that has ended well.
    pub(super) fn answer(&self) -> Option<JsValue> {
        self.request.result().ok()
    }

    /// Waits for the end of it. True: `success`. False: `error`.
    pub(super) async fn settled(&self) -> bool {
        let event = JsFuture::from(self.done.clone()).await;
        event.is_ok_and(|event| event.unchecked_ref::<Event>().type_() == "success")
    }

    /// What it failed with, or null.
    pub(super) fn error(&self) -> JsValue {
        self.request.error().ok().flatten().map_or(JsValue::NULL, JsValue::from)
    }
}

fn beyond(above: u64) -> Result<JsValue, JsValue> {
    IdbKeyRange::lower_bound_with_open(&value::from_number(above), true).map(JsValue::from)
}
