//! The door itself: opening, closing, and beginning a transaction.
//!
//! Raw web-sys, without a wrapper crate: those at hand answer `Ok` for an aborted transaction.

use std::rc::Rc;

use js_sys::Object;
use wasm_bindgen::prelude::*;
use web_sys::{IdbDatabase, IdbFactory, IdbOpenDbRequest, IdbTransaction, IdbVersionChangeEvent};

use super::act::{Act, Asked};
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
        if asked.settled().await {
            return Ok(Self::listening(asked.answered().await?.unchecked_into(), hear));
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

/// Takes a database away.
pub(super) async fn take_away(name: &str) -> Result<(), Failure> {
    let request = factory()?.delete_database(name).map_err(|error| failure::thrown(&error))?;
    Asked::new(request.into()).answered().await.map(|_gone| ())
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
