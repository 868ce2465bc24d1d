//! The journal and its photos saved as one file, and this device's memory of it.
//!
//! Photo after photo, so that years of them need no more room than one; it goes on whatever sheet is on view, and can
//! be stopped.

use crate::dom::prelude::*;
use crate::{
    platform::{announce, download::Pieces, idle},
    screens::sample,
    shell::Desk,
    store::{
        Copy, Store,
        device::{self, Small},
    },
    words::exchange as words,
};
use benchslate_core::{
    exchange::{
        backup::{self, Left, Packer, Packing, Writer},
        jsonl,
        sample::SAVED_STEM,
    },
    measure::{Instant, When},
};
use leptos::task::spawn_local;

/// How much of the journal is packed before the browser may do something else, in bytes.
const PIECE: usize = 200_000;

/// The last backup that this device knows of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Last {
    /// When.
    pub at: Instant,
    /// How many lines were in it. The journal only grows, so the rest came since.
    pub lines: usize,
}

/// Where saving stands, whatever sheet is on view; provided as context.
#[derive(Clone, Copy)]
pub struct Saving {
    /// Followed by what shows it.
    pub at: RwSignal<At>,
    /// Counted, so that one that was stopped is not taken for the next.
    run: RwSignal<u32>,
}

/// Where it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum At {
    /// Nothing is being saved.
    Rest,
    /// The file is being put together.
    UnderWay {
        /// Photos that are done.
        done: usize,
        /// Of how many.
        all: usize,
    },
    /// It was saved without photos that are kept here: they could not be read, or are not what they were.
    Without {
        /// How many.
        left: usize,
    },
    /// With its photos it would be longer than a file can be.
    TooLong,
    /// The browser would not save it.
    Refused,
}

/// Which photos go in.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Photos {
    /// All that are here.
    All,
    /// None.
    None,
}

impl Saving {
    /// Nothing is being saved.
    pub fn new() -> Saving {
        Saving { at: RwSignal::new(At::Rest), run: RwSignal::new(0) }
    }

    /// The file is not put together any further.
    pub fn stop(self) {
        self.run.set(self.run.get_untracked().wrapping_add(1));
        self.at.set(At::Rest);
    }

    fn begun(self) -> u32 {
        self.stop();
        self.at.set(At::UnderWay { done: 0, all: 0 });
        self.run.get_untracked()
    }

    fn goes_on(self, run: u32) -> bool {
        self.run.get_untracked() == run
    }
}

/// What this device remembers; none: it never saved one, or the browser has forgotten.
pub fn last() -> Option<Last> {
    // What is remembered is of the maker's own journal.
    let text = device::recall(Small::BackedUp).filter(|_| !sample::is_open())?;
    let (at, lines) = text.split_once(' ')?;
    Some(Last { at: Instant(at.parse().ok()?), lines: lines.parse().ok()? })
}

/// The day of it.
pub fn day(desk: Desk, last: Last) -> String {
    desk.read(|view| view.tongue.day_of(last.at))
}

/// Hands the whole journal to the reader as a file, every line as it was first written, with the photos.
pub fn save(desk: Desk, saving: Saving, photos: Photos) {
    let run = saving.begun();
    spawn_local(async move {
        let ended = saved(desk, saving, run, photos).await;
        if saving.goes_on(run) {
            saving.at.set(ended);
        }
    });
}

/// How it ended; of no matter where it was stopped.
async fn saved(desk: Desk, saving: Saving, run: u32, photos: Photos) -> At {
    let now = desk.at_tap();
    if desk.once_read().await.is_err() {
        // The sheet is taken by why.
        return At::Rest;
    }
    let (text, lines, named, when) = desk.now_read(|view| {
        let when = view.shop.zone.when(now);
        (jsonl::write(view.journal), view.journal.len(), backup::named(view.journal), when)
    });
    let packing = packed(&text, saving, run).await;
    drop(text);
    let (mut file, mut writer) = (Pieces::default(), Writer::new(when));
    let full = |left: Left| match left {
        Left::Full => At::TooLong,
        // Only a photo can be.
        Left::Spoilt(_) => At::Refused,
    };
    let begun = writer.journal(&packing, lines).map(|bytes| file.add(&bytes));
    match begun {
        Err(left) => return full(left),
        Ok(None) => return At::Refused,
        Ok(Some(())) => {}
    }
    let store = desk.store();
    let hashes = match &store {
        Some(store) => store.photo_hashes().await.ok(),
        None => None,
    };
    // Where they can't even be listed, those that lines name may be there.
    let unlisted = if hashes.is_none() { named.len() } else { 0 };
    let hashes = hashes.unwrap_or_default();
    let missing = named.iter().filter(|hash| hashes.binary_search(hash).is_err()).count();
    let asked = if photos == Photos::All { hashes.as_slice() } else { &[] };
    let mut left = hashes.len() - asked.len() + unlisted;
    if let Some(store) = &store {
        for (done, hash) in asked.iter().enumerate() {
            if !saving.goes_on(run) {
                return At::Rest;
            }
            saving.at.set(At::UnderWay { done, all: asked.len() });
            match one(store, hash, &mut writer).await {
                Ok(bytes) => {
                    if file.add(&bytes).is_none() {
                        return At::Refused;
                    }
                }
                Err(Left::Spoilt(_)) => left += 1,
                Err(Left::Full) => return At::TooLong,
            }
        }
    }
    if !saving.goes_on(run) {
        return At::Rest;
    }
    match writer.finish(missing) {
        Ok(bytes) => file.add(&bytes).map_or(At::Refused, |()| handed(file, when, lines, left)),
        Err(left) => full(left),
    }
}

async fn packed(text: &str, saving: Saving, run: u32) -> Packing {
    let mut packer = Packer::default();
    for piece in text.as_bytes().chunks(PIECE) {
        packer.add(piece);
        // The browser paints that it is under way, and hears that it is to stop.
        idle::turn().await;
        if !saving.goes_on(run) {
            break;
        }
    }
    packer.finish()
}

/// A photo; one that can't be read is as good as spoilt.
async fn one(store: &Store, hash: &str, writer: &mut Writer) -> Result<Vec<u8>, Left> {
    let bytes = match store.photo(hash, Copy::Full).await {
        Ok(Some((bytes, _))) => bytes.to_vec(),
        Ok(None) | Err(_) => Vec::new(),
    };
    writer.photo(hash, &bytes)
}

fn handed(file: Pieces, when: When, lines: usize, left: usize) -> At {
    let (day, _) = when.local();
    let name = backup::file_name(if sample::is_open() { SAVED_STEM } else { backup::STEM }, day);
    if file.save(&name, backup::MEDIA_TYPE).is_none() {
        return At::Refused;
    }
    announce::say(&words::saved(&name));
    if left > 0 {
        return At::Without { left };
    }
    // What is remembered is a whole one of the maker's own.
    if !sample::is_open() {
        device::remember(Small::BackedUp, &format!("{} {lines}", when.instant.0));
    }
    At::Rest
}
