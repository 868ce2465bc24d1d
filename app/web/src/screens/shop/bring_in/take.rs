//! What a file brings, taken: photos that fit in memory together with the lines in one transaction. Where there are
//! more, those before go in ahead, under their hashes where no line looks for them yet; the lines come last, with the
//! rest of the photos, and where they don't come the others are taken out again.
//!
//! The small copies are made anew and not brought along: a file then can't hold one that shows something else, and the
//! one picture that it has is the photo.

use super::{
    Bringing, Step,
    look::{Found, Nothing, Source},
};
use crate::{
    platform::{download, picture},
    shell::Desk,
    store::{Appended, Encoded, Failure, NewPhoto, Store},
};
use benchslate_core::exchange::{backup, picture::size_of};
use leptos::task::spawn_local;

/// Photos that are held in memory at once, in bytes.
const AT_ONCE: usize = 24_000_000;

/// What was taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Taken {
    /// The lines.
    pub lines: Appended,
    /// How many photos.
    pub photos: usize,
}

/// Takes it; how it ended is in `at`.
pub async fn take(desk: Desk, at: Bringing, run: u32, found: Found) {
    let Some(store) = desk.store() else { return at.ended(run, Step::NotTaken(Failure::Missing)) };
    let mut ahead = Vec::new();
    match last_photos(&store, at, run, &found, &mut ahead).await {
        Ok(photos) => {
            let count = found.new.len();
            desk.bring_in(found.incoming, photos, move |done| match done {
                Ok(lines) => at.ended(run, Step::Taken(Taken { lines, photos: count })),
                Err(failure) => {
                    at.ended(run, Step::NotTaken(failure));
                    spawn_local(take_back(desk, ahead.clone()));
                }
            });
        }
        Err(nothing) => {
            take_back(desk, ahead).await;
            at.ended(run, Step::of(nothing));
        }
    }
}

/// Photos that no line came for. What another window has brought in meanwhile stays.
async fn take_back(desk: Desk, mut ahead: Vec<String>) {
    let named = desk.now_read(|view| backup::named(view.journal));
    ahead.retain(|hash| !named.contains(hash));
    if let (Some(store), false) = (desk.store(), ahead.is_empty()) {
        // Where that fails they take up room; the next backup has them.
        let _ = store.photos_ahead(&[], &ahead).await;
    }
}

/// Puts all but the last of them in, and hands those over to go with the lines.
async fn last_photos(
    store: &Store,
    at: Bringing,
    run: u32,
    found: &Found,
    ahead: &mut Vec<String>,
) -> Result<Vec<NewPhoto>, Nothing> {
    store.has_room(found.bytes()).await.map_err(Nothing::Store)?;
    let (mut waits, mut bytes) = (Vec::new(), 0);
    // A journal alone brings no photos.
    let photos = found.source.iter().flat_map(|source| found.new.iter().map(move |photo| (source, photo)));
    for (done, (source, photo)) in photos.enumerate() {
        if !at.goes_on(run) {
            return Err(Nothing::Stopped);
        }
        at.photos.set((done, found.new.len()));
        if bytes > AT_ONCE {
            store.photos_ahead(&waits, &[]).await.map_err(Nothing::Store)?;
            ahead.extend(waits.drain(..).map(|photo: NewPhoto| photo.hash));
            bytes = 0;
        }
        let one = made(source, photo).await?;
        bytes += one.full.bytes.len();
        waits.push(one);
    }
    if !at.goes_on(run) {
        return Err(Nothing::Stopped);
    }
    // From here on it is taken, or it is not: nobody stops it any more.
    at.step.set(Step::BeingKept);
    Ok(waits)
}

/// Read once more, and with its small copy; without one where the browser can't draw it.
async fn made(Source { file, backup }: &Source, photo: &backup::PhotoAt) -> Result<NewPhoto, Nothing> {
    let bytes = download::read_range(file, photo.range()).await?;
    let read = backup.try_borrow_mut().map_err(|_busy| Nothing::Stopped)?.photo(photo, bytes)?;
    let media = read.name.kind.media();
    let thumb = picture::thumb_of(&read.bytes, media).await;
    let (width, height) = size_of(&read.bytes).map_or((0, 0), |size| (size.width, size.height));
    let full = Encoded { bytes: read.bytes, media: media.to_owned(), width, height };
    Ok(NewPhoto { hash: read.name.hash, full, thumb })
}
