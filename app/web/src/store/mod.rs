//! The one door to storage.
//!
//! In: lines of text with their ids, byte for byte. Out: the same lines in the order of arrival.
//! It knows nothing of what a line says. [`Store`] is a handle that can be cloned.
//!
//! A write is confirmed (`Ok`) once its transaction has completed, and never otherwise.
//! Never: an id with two lines side by side, a line changed, a screen that opens storage itself.
//! Kept by: the natively tested [`union`], the journeys, and the ban on other ways in (lints).

mod act;
pub mod device;
mod door;
mod drafts;
mod failure;
mod held;
mod ids;
mod meta;
pub mod persist;
mod photos;
mod revisions;
mod schema;
mod selfcheck;
mod tabs;
mod tally;
mod union;
mod value;

use std::rc::Rc;

use js_sys::Uint8Array;

pub use failure::Failure;
use held::Held;
pub use ids::{fresh_id, fresh_id_text};
pub use photos::{Copy, Encoded, NewPhoto};
use revisions::Outcome;
pub use revisions::{AppendError, Appended, NewRow, Piece, Row};
pub use schema::Which;
use tabs::Word;
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
pub struct Store(Rc<Held>);

impl Store {
    /// Opens the database, making it the first time, and puts in what an earlier session had to put
    /// aside. `on_event` may be called at any time from then on, and while this waits.
    ///
    /// # Errors
    /// As [`Failure`] says; nothing of a newer database is touched.
    pub async fn open(which: Which, on_event: impl Fn(StoreEvent) + 'static) -> Result<Self, Failure> {
        Held::open(which, Box::new(on_event)).await.map(Self)
    }

    /// The sample's lines are not worth it, and would come back in the maker's own.
    fn put_aside(&self, rows: &[NewRow]) {
        if self.0.which == Which::Own {
            device::put_aside(rows);
        }
    }

    /// Takes a whole database away. Windows that hold it let go of it first.
    ///
    /// # Errors
    /// As [`Failure`] says; then it is still there.
    pub async fn take_away(which: Which) -> Result<(), Failure> {
        door::take_away(which.name()).await
    }

    /// Writes lines, the photos that they name and what the first screen shows in one piece, if no other
    /// window has written above `known_seq`. Lines that are there already are skipped.
    ///
    /// # Errors
    /// [`AppendError::Behind`]: nothing was written; fold its rows and decide again. Rows that this
    /// window wrote and hasn't folded count too: one append after the other.
    /// [`AppendError::Failed`]: nothing is confirmed. After [`Failure::Gone`] the lines are put aside
    /// and tried again when the program next starts: who tries earlier must use the same lines. Lines with
    /// photos are not: there is no room aside for the bytes, and without them the line would say too much.
    pub async fn append(
        &self,
        known_seq: u64,
        rows: Vec<NewRow>,
        photos: &[NewPhoto],
        bench: Option<String>,
    ) -> Result<Appended, AppendError> {
        photos::must_fit(photos).await.map_err(AppendError::Failed)?;
        match self.0.write(Some(known_seq), &rows, photos, bench.as_deref()).await {
            Ok(Outcome::Kept(appended)) => Ok(appended),
            Ok(Outcome::Behind(rows)) => Err(AppendError::Behind { rows }),
            Err(failure) => {
                if failure == Failure::Gone && photos.is_empty() {
                    self.put_aside(&rows);
                }
                Err(AppendError::Failed(failure))
            }
        }
    }

    /// Writes lines that came from elsewhere, whatever other windows did, and the photos that came with them: union.
    ///
    /// # Errors
    /// As [`Failure`] says; then none of them was kept.
    pub async fn merge(
        &self,
        rows: Vec<NewRow>,
        photos: &[NewPhoto],
        bench: Option<String>,
    ) -> Result<Appended, Failure> {
        photos::must_fit(photos).await?;
        match self.0.write(None, &rows, photos, bench.as_deref()).await? {
            Outcome::Kept(appended) => Ok(appended),
            // Never without a known `seq`.
            Outcome::Behind(_) => Err(Failure::Refused),
        }
    }

    /// The next lines above `seq`, in the order of arrival.
    ///
    /// # Errors
    /// As [`Failure`] says. A damaged row is left out here and named by [`Self::self_check`].
    pub async fn piece_above(&self, seq: u64) -> Result<Piece, Failure> {
        self.0.through(async |door| revisions::piece(door, seq).await).await
    }

    /// What the first screen shows, as it was last written with an append.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn bench(&self) -> Result<Option<String>, Failure> {
        self.0.through(async |door| meta::bench(door).await).await
    }

    /// This device's id, made the first time it is asked for.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn device(&self) -> Result<String, Failure> {
        let fresh = fresh_id_text();
        self.0.through(async |door| meta::device(door, &fresh).await).await
    }

    /// How many lines were put aside because their id was met with two different lines.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn quarantine_count(&self) -> Result<u64, Failure> {
        self.0.through(async |door| revisions::quarantine_count(door).await).await
    }

    /// Recounts in idle time whether all is there that was written.
    ///
    /// # Errors
    /// [`Failure::Damaged`] with where and what was found.
    pub async fn self_check(&self) -> Result<(), Failure> {
        self.0.through(async |door| selfcheck::check(door).await).await
    }

    /// Accepts what is there: writes the tally anew, and gives it.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn mend_check(&self) -> Result<Tally, Failure> {
        self.0.through(async |door| selfcheck::mend(door).await).await
    }

    /// The bytes of a photo and their type; none: not on this device. Without a small one it is the large one.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn photo(&self, hash: &str, copy: Copy) -> Result<Option<(Uint8Array, String)>, Failure> {
        self.0.through(async |door| photos::get(door, hash, copy).await).await
    }

    /// The hashes of all photos on this device.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn photo_hashes(&self) -> Result<Vec<String>, Failure> {
        self.0.through(async |door| photos::hashes(door).await).await
    }

    /// Whether there is room for so many bytes.
    ///
    /// # Errors
    /// [`Failure::Full`].
    pub async fn has_room(&self, bytes: u64) -> Result<(), Failure> {
        photos::has_room(bytes).await
    }

    /// Puts photos in ahead of the lines that name them, which follow by [`Store::merge`], and takes out those whose
    /// lines never came.
    ///
    /// # Errors
    /// As [`Failure`] says; then nothing has changed. What was put in ahead takes up room, and nothing names it.
    pub async fn photos_ahead(&self, photos: &[NewPhoto], back: &[String]) -> Result<(), Failure> {
        photos::must_fit(photos).await?;
        self.0.through(async |door| photos::ahead(door, photos, back).await).await
    }

    /// The draft under `key`, kept or still on its way.
    ///
    /// # Errors
    /// As [`Failure`] says.
    pub async fn draft(&self, key: &str) -> Result<Option<String>, Failure> {
        match self.0.waiting.peek(key) {
            Some(text) => Ok(text),
            None => self.0.through(async |door| drafts::get(door, key).await).await,
        }
    }

    /// Takes a draft in; it is kept within 300 ms. Call it at every key.
    pub fn put_draft(&self, key: &str, text: &str) {
        self.0.wait_with(key, Some(text));
    }

    /// Takes a draft away: it was said, or given up.
    pub fn drop_draft(&self, key: &str) {
        self.0.wait_with(key, None);
    }

    /// Keeps all drafts now.
    ///
    /// # Errors
    /// As [`Failure`] says; the drafts then stay in memory.
    pub async fn flush_drafts(&self) -> Result<(), Failure> {
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
