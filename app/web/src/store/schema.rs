//! What the database is made of. Its version is the version of this list.
//!
//! Adding a store: raise [`VERSION`] by one, add a step to [`raise`], never change an old step.

use js_sys::Object;
use wasm_bindgen::JsValue;
use web_sys::{IdbDatabase, IdbIndexParameters, IdbObjectStoreParameters};

use super::meta;

/// The maker's own database, and the channel between its windows.
const NAME: &str = "benchslate";
/// That of the sample shop.
const SAMPLE: &str = "benchslate.sample";

/// Which of the two.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// The maker's own.
    Own,
    /// The sample shop's.
    Sample,
}

impl Which {
    /// The database's name.
    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Own => NAME,
            Self::Sample => SAMPLE,
        }
    }
}
/// Version of the schema.
pub(super) const VERSION: u32 = 1;

/// Key: `seq`, the order of arrival. Value: `{id, line}`. Unique index [`BY_ID`].
pub(super) const REVISIONS: &str = "revisions";
/// Unique index of [`REVISIONS`] by revision id: union is idempotent in the engine.
pub(super) const BY_ID: &str = "id";
/// Key: SHA-256 of the bytes in hexadecimal. Value: `{bytes, type, w, h}`, the bytes as an `ArrayBuffer`.
pub(super) const PHOTOS: &str = "photos";
/// As [`PHOTOS`] and under the same key, the small copy: apart, so that lists never touch the big ones.
pub(super) const THUMBS: &str = "thumbs";
/// Key: a name, see `meta.rs`.
pub(super) const META: &str = "meta";
/// Key: screen and entry. Value: the text typed so far.
pub(super) const DRAFTS: &str = "drafts";
/// Lines that clashed: key SHA-256 of the line in hexadecimal, so that one met twice is put aside
/// once; value `{id, line, why}`. Rows that can't be read: key `row` and its `seq`, value `{row, why}`.
pub(super) const QUARANTINE: &str = "quarantine";

/// Brings a database from version `old` (0: there is none) to [`VERSION`].
///
/// # Errors
/// What the browser threw; the upgrade is then undone as a whole.
pub(super) fn raise(db: &IdbDatabase, old: u32) -> Result<(), JsValue> {
    if old < 1 {
        first(db)?;
    }
    Ok(())
}

fn first(db: &IdbDatabase) -> Result<(), JsValue> {
    let counted = IdbObjectStoreParameters::new();
    counted.set_auto_increment(true);
    let revisions = db.create_object_store_with_optional_parameters(REVISIONS, &counted)?;
    let unique = IdbIndexParameters::new();
    unique.set_unique(true);
    revisions.create_index_with_str_and_optional_parameters(BY_ID, "id", &unique)?;
    for name in [PHOTOS, THUMBS, DRAFTS, QUARANTINE] {
        db.create_object_store(name)?;
    }
    db.create_object_store(META)?.put_with_key(&JsValue::from_f64(1.0), &meta::FORMAT.into())?;
    Ok(())
}

/// Names as the list that the browser wants.
pub(super) fn names(names: &[&str]) -> Object {
    names.iter().map(|name| JsValue::from_str(name)).collect::<js_sys::Array>().into()
}
