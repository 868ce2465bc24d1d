//! A file looked through: journal and photos, each part of it read and held against what it says. Nothing is kept of it
//! but where its photos lie; they are read again when they are taken.

use super::Bringing;
use crate::{
    platform::download::{self, Unread},
    shell::Desk,
    store::Failure,
};
use benchslate_core::{
    exchange::{
        backup::{self, At, Backup, Bad, FIRST_BYTES, Held, Looked, PhotoAt, Why},
        jsonl::{self, Incoming},
    },
    measure::limits,
};
use std::{cell::RefCell, ops::Range, rc::Rc};
use web_sys::File;

/// What a file would bring.
#[derive(Clone)]
pub struct Found {
    /// Its lines.
    pub incoming: Incoming,
    /// Photos in it that are not here.
    pub new: Vec<PhotoAt>,
    /// How many are here already.
    pub known: usize,
    /// How many its lines name that are neither in it nor here.
    pub missing: usize,
    /// How many are in it that no line names.
    pub unnamed: usize,
    /// What they are read from; none where the file is a journal alone.
    pub source: Option<Source>,
}

/// A backup and the file that it lies in.
#[derive(Clone)]
pub struct Source {
    pub file: File,
    pub backup: Rc<RefCell<Backup>>,
}

/// Why a file brings nothing.
pub enum Nothing {
    Unread(Unread),
    Broken(Bad),
    /// What is here can't be compared with it.
    Store(Failure),
    /// Somebody stopped it.
    Stopped,
}

impl From<Unread> for Nothing {
    fn from(unread: Unread) -> Nothing {
        Nothing::Unread(unread)
    }
}

impl From<Bad> for Nothing {
    fn from(bad: Bad) -> Nothing {
        Nothing::Broken(bad)
    }
}

impl Found {
    /// Whether there is nothing to take.
    pub fn is_empty(&self) -> bool {
        self.incoming.is_empty() && self.new.is_empty()
    }

    /// Bytes of the photos to take.
    pub fn bytes(&self) -> u64 {
        self.new.iter().map(PhotoAt::size).sum()
    }
}

/// Looks through it.
pub async fn look(desk: Desk, at: Bringing, run: u32, file: File) -> Result<Found, Nothing> {
    desk.once_read().await.map_err(Nothing::Store)?;
    let length = file.size() as u64;
    let head = download::read_range(&file, 0..length.min(4)).await?;
    if !backup::begins(&head) {
        return lines_alone(desk, &file).await;
    }
    let mut backup = opened(&file, length).await?;
    let bytes = download::read_range(&file, backup.journal()).await?;
    let incoming = desk.now_read(|view| backup.lines(view.journal, bytes))?;
    let photos = backup.photos().to_vec();
    for (done, photo) in photos.iter().enumerate() {
        if !at.goes_on(run) {
            return Err(Nothing::Stopped);
        }
        at.photos.set((done, photos.len()));
        let bytes = download::read_range(&file, photo.range()).await?;
        backup.photo(photo, bytes)?;
    }
    let store = desk.store().ok_or(Nothing::Store(Failure::Missing))?;
    let hashes = store.photo_hashes().await.map_err(Nothing::Store)?;
    let here = |hash: &String| hashes.binary_search(hash).is_ok();
    let named = desk.now_read(|view| backup::named(view.journal));
    let names = |photo: &PhotoAt| {
        let hash = &photo.name.hash;
        named.contains(hash) || incoming.photos.contains(hash)
    };
    let unnamed = photos.iter().filter(|photo| !names(photo)).count();
    let mut missing = incoming.photos.clone();
    missing.retain(|hash| !here(hash));
    for photo in &photos {
        missing.remove(&photo.name.hash);
    }
    let all = photos.len();
    let new: Vec<PhotoAt> = photos.into_iter().filter(|photo| !here(&photo.name.hash)).collect();
    let known = all - new.len();
    let source = Some(Source { file, backup: Rc::new(RefCell::new(backup)) });
    Ok(Found { incoming, new, known, missing: missing.len(), unnamed, source })
}

/// A journal as text: a backup from before photos were in it, or one taken out of its ZIP.
async fn lines_alone(desk: Desk, file: &File) -> Result<Found, Nothing> {
    let bytes = download::read(file, limits::MOST_FILE_BYTES as u64).await?;
    let incoming = desk.now_read(|view| jsonl::check_bytes(view.journal, &bytes));
    let incoming = incoming.map_err(|bad| Bad { at: At::File, why: Why::Line(bad) })?;
    Ok(Found { incoming, new: Vec::new(), known: 0, missing: 0, unnamed: 0, source: None })
}

async fn opened(file: &File, length: u64) -> Result<Backup, Nothing> {
    let mut range: Range<u64> = length.saturating_sub(FIRST_BYTES)..length;
    loop {
        let bytes = download::read_range(file, range.clone()).await?;
        match backup::contents(Held { from: range.start, bytes, length })? {
            Looked::More { from } => range.start = from,
            Looked::Contents(contents) => {
                let manifest = download::read_range(file, contents.manifest()).await?;
                return Ok(contents.opened(manifest)?);
            }
        }
    }
}
