//! A backup read range by range, and looked through whole before anything of it is taken.
//!
//! The list at the end of the ZIP is what counts; a part is found by it, and must be what list and manifest say. What
//! is read is bounded before there is room made for it.

use super::{
    At, Bad, FIRST_BYTES, SUM, Why, hash_of,
    manifest::Manifest,
    name::{self, FOLDER, Name, PhotoName},
};
use crate::{
    exchange::jsonl::{self, Incoming},
    journal::Journal,
    measure::{InOrder, limits},
};
use miniz_oxide::inflate::decompress_to_vec_with_limit;
use rawzip::{CompressionMethod, ReaderAt, ZipArchive, ZipArchiveEntryWayfinder, ZipLocator};
use std::{collections::BTreeSet, ops::Range};

/// Longest record of a part that is read, in bytes: ours have 130.
const RECORD: usize = 8_192;

/// Some bytes of a file that is longer.
#[derive(Debug)]
pub struct Held {
    /// Where they begin.
    pub from: u64,
    /// They.
    pub bytes: Vec<u8>,
    /// How long the whole file is.
    pub length: u64,
}

/// What a look at the end of a file came to.
#[derive(Debug)]
pub enum Looked {
    /// The list of parts begins further ahead: all from there is needed.
    More {
        /// From which byte on.
        from: u64,
    },
    /// The parts.
    Contents(Box<Contents>),
}

/// The parts of a file, as its list says; nothing of them has been read.
#[derive(Debug)]
pub struct Contents {
    zip: ZipArchive<Held>,
    manifest: Place,
    journal: Place,
    photos: Vec<PhotoAt>,
}

/// A file whose manifest agrees with its list. Its parts are still to be read.
#[derive(Debug)]
pub struct Backup {
    zip: ZipArchive<Held>,
    /// What it says of itself.
    pub manifest: Manifest,
    journal: Place,
    photos: Vec<PhotoAt>,
}

/// A photo and where it lies.
#[derive(Clone, Debug)]
pub struct PhotoAt {
    /// Which.
    pub name: PhotoName,
    place: Place,
}

/// A photo read, its bytes those that its name says.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Photo {
    /// Which.
    pub name: PhotoName,
    /// As it was kept.
    pub bytes: Vec<u8>,
}

#[derive(Clone, Debug)]
struct Place {
    from: u64,
    /// Where the next part begins, or the list.
    to: u64,
    size: u64,
    method: CompressionMethod,
    sum: u32,
    way: ZipArchiveEntryWayfinder,
}

impl ReaderAt for Held {
    fn read_at(&self, buffer: &mut [u8], offset: u64) -> std::io::Result<usize> {
        if offset >= self.length {
            return Ok(0);
        }
        let missing = std::io::Error::from(std::io::ErrorKind::Other);
        let at = offset.checked_sub(self.from).and_then(|at| usize::try_from(at).ok());
        let Some(rest) = at.and_then(|at| self.bytes.get(at..)) else { return Err(missing) };
        let count = rest.len().min(buffer.len());
        let (Some(from), Some(to)) = (rest.get(..count), buffer.get_mut(..count)) else {
            return Err(missing);
        };
        to.copy_from_slice(from);
        Ok(count)
    }
}

/// Looks at the end of a file: its last [`FIRST_BYTES`], or as many as it asked for.
///
/// # Errors
/// [`Bad`].
pub fn contents(held: Held) -> Result<Looked, Bad> {
    let of_file = |why| Bad { at: At::File, why };
    let length = held.length;
    if length > limits::MOST_BACKUP_BYTES {
        return Err(of_file(Why::TooLong { bytes: length }));
    }
    let from = held.from;
    let locator = ZipLocator::new().max_search_space(length.saturating_sub(from).min(FIRST_BYTES));
    let mut buffer = vec![0; RECORD];
    let zip = locator.locate_in_reader(held, &mut buffer, length);
    let zip = zip.map_err(|_error| of_file(Why::NoArchive))?;
    let list = zip.directory_offset();
    if list >= length || zip.end_offset() > length {
        return Err(of_file(Why::CutOff));
    }
    if length.saturating_sub(list) > limits::BACKUP_END_BYTES {
        return Err(of_file(Why::TooManyParts));
    }
    if list < from {
        return Ok(Looked::More { from: list });
    }
    parts(zip, &mut buffer).map(|parts| Looked::Contents(Box::new(parts)))
}

fn parts(zip: ZipArchive<Held>, buffer: &mut [u8]) -> Result<Contents, Bad> {
    let of_file = |why| Bad { at: At::File, why };
    let list = zip.directory_offset();
    let most = limits::MOST_BACKUP_PHOTOS.saturating_add(3);
    let (mut found, mut names) = (Vec::new(), BTreeSet::new());
    let mut entries = zip.entries(buffer);
    let mut count = 0_u64;
    while let Some(entry) = entries.next_entry().map_err(|_error| of_file(Why::Damaged))? {
        count = count.saturating_add(1);
        if found.len() >= most {
            return Err(of_file(Why::TooManyParts));
        }
        let path = entry.file_path();
        let text = path.as_bytes();
        if text == FOLDER.as_bytes() && entry.uncompressed_size_hint() == 0 {
            continue;
        }
        let bad = |why| Bad { at: At::Part(name::shown(text)), why };
        let name = Name::read(text).ok_or_else(|| bad(Why::StrangeName))?;
        if entry.flags().is_encrypted() {
            return Err(bad(Why::Locked));
        }
        let place = Place {
            from: entry.local_header_offset(),
            to: list,
            size: entry.uncompressed_size_hint(),
            method: entry.compression_method(),
            sum: entry.crc32(),
            way: entry.wayfinder(),
        };
        place.sensible(&name).map_err(bad)?;
        if !names.insert(name.text()) {
            return Err(bad(Why::Twice));
        }
        found.push((name, place));
    }
    if count != zip.entries_hint() {
        return Err(of_file(Why::Damaged));
    }
    apart(&mut found, list)?;
    sorted(zip, found)
}

/// Where each part ends at the latest; none lies over another, or over the list.
fn apart(found: &mut [(Name, Place)], list: u64) -> Result<(), Bad> {
    found.order_by_key(|(_, place)| place.from);
    let mut next = list;
    for (name, place) in found.iter_mut().rev() {
        place.to = next;
        next = place.from;
        if place.from.saturating_add(place.way.compressed_size_hint()) >= place.to {
            return Err(Bad { at: At::Part(name.text()), why: Why::Overlaps });
        }
    }
    Ok(())
}

fn sorted(zip: ZipArchive<Held>, found: Vec<(Name, Place)>) -> Result<Contents, Bad> {
    let (mut manifest, mut journal, mut photos) = (None, None, Vec::new());
    for (name, place) in found {
        match name {
            Name::Manifest => manifest = Some(place),
            Name::Journal => journal = Some(place),
            Name::Photo(name) => photos.push(PhotoAt { name, place }),
        }
    }
    let missing = |name: &str| Bad { at: At::Part(name.to_owned()), why: Why::Missing };
    let manifest = manifest.ok_or_else(|| missing(name::MANIFEST))?;
    let journal = journal.ok_or_else(|| missing(name::JOURNAL))?;
    Ok(Contents { zip, manifest, journal, photos })
}

impl Contents {
    /// Where the manifest lies: the bytes that [`Contents::opened`] wants.
    pub fn manifest(&self) -> Range<u64> {
        self.manifest.range()
    }

    /// Reads the manifest, and holds it against the list.
    ///
    /// # Errors
    /// [`Bad`].
    pub fn opened(mut self, bytes: Vec<u8>) -> Result<Backup, Bad> {
        let text = self.manifest.unpacked(&mut self.zip, bytes);
        let text = text.map_err(|why| Bad { at: At::Part(name::MANIFEST.to_owned()), why })?;
        let manifest = Manifest::read(&text)?;
        let backup = Backup { zip: self.zip, manifest, journal: self.journal, photos: self.photos };
        backup.agrees()?;
        Ok(backup)
    }
}

impl Backup {
    /// Where the journal lies: the bytes that [`Backup::lines`] wants.
    pub fn journal(&self) -> Range<u64> {
        self.journal.range()
    }

    /// Its photos, as they lie in it.
    pub fn photos(&self) -> &[PhotoAt] {
        &self.photos
    }

    /// The lines, beside what is here.
    ///
    /// # Errors
    /// [`Bad`].
    pub fn lines(&mut self, journal: &Journal, bytes: Vec<u8>) -> Result<Incoming, Bad> {
        let text = self.text(bytes)?;
        let bad = |why| Bad { at: At::Part(name::JOURNAL.to_owned()), why };
        let incoming = jsonl::check_bytes(journal, &text).map_err(|line| bad(Why::Line(line)))?;
        let found = incoming.lines.len().saturating_add(incoming.known);
        let says = self.manifest.lines;
        if found == says { Ok(incoming) } else { Err(bad(Why::WrongCount { says, found })) }
    }

    /// Reads the photo at a place of [`Backup::photos`] from the bytes that it lies in.
    ///
    /// # Errors
    /// [`Bad`].
    pub fn photo(&mut self, at: &PhotoAt, bytes: Vec<u8>) -> Result<Photo, Bad> {
        let bad = |why| Bad { at: At::Part(at.name.text()), why };
        let bytes = at.place.unpacked(&mut self.zip, bytes).map_err(bad)?;
        let name = PhotoName::of(&at.name.hash, &bytes).map_err(bad)?;
        if name == at.name { Ok(Photo { name, bytes }) } else { Err(bad(Why::NoPicture)) }
    }

    fn text(&mut self, bytes: Vec<u8>) -> Result<Vec<u8>, Bad> {
        let bad = |why| Bad { at: At::Part(name::JOURNAL.to_owned()), why };
        let text = self.journal.unpacked(&mut self.zip, bytes).map_err(bad)?;
        let listed = self.manifest.parts.iter().find(|part| part.name == name::JOURNAL);
        if listed.is_none_or(|part| part.sha256 != hash_of(&text)) {
            return Err(bad(Why::WrongHash));
        }
        Ok(text)
    }

    /// Every part of the list is in the manifest, and every part of the manifest in the list.
    fn agrees(&self) -> Result<(), Bad> {
        let bad = |name: &str, why| Err(Bad { at: At::Part(name.to_owned()), why });
        let (mut listed, mut order) = (BTreeSet::new(), self.photos.iter().collect::<Vec<_>>());
        order.order_by(|a, b| a.name.hash.cmp(&b.name.hash));
        for part in &self.manifest.parts {
            let shown = || name::shown(part.name.as_bytes());
            if !listed.insert(part.name.clone()) {
                return bad(&shown(), Why::Twice);
            }
            let place = match Name::read(part.name.as_bytes()) {
                Some(Name::Journal) => Some(&self.journal),
                Some(Name::Photo(name)) => {
                    let at = order.binary_search_by(|it| it.name.hash.cmp(&name.hash));
                    let photo = at.ok().and_then(|at| order.get(at)).filter(|it| it.name == name);
                    if photo.is_some() && part.sha256 != name.hash {
                        return bad(&part.name, Why::WrongHash);
                    }
                    photo.map(|it| &it.place)
                }
                Some(Name::Manifest) | None => None,
            };
            match place {
                None => return bad(&shown(), Why::Missing),
                Some(place) if place.size != part.bytes => return bad(&part.name, Why::WrongSize),
                Some(_) => {}
            }
        }
        if !listed.contains(name::JOURNAL) {
            return bad(name::JOURNAL, Why::NotListed);
        }
        if let Some(photo) = self.photos.iter().find(|it| !listed.contains(&it.name.text())) {
            return bad(&photo.name.text(), Why::NotListed);
        }
        let (says, found) = (self.manifest.photos, self.photos.len());
        if says == found { Ok(()) } else { bad(name::MANIFEST, Why::WrongCount { says, found }) }
    }
}

impl PhotoAt {
    /// Where it lies: the bytes that [`Backup::photo`] wants.
    pub fn range(&self) -> Range<u64> {
        self.place.range()
    }

    /// How many bytes it has, as the list says.
    pub fn size(&self) -> u64 {
        self.place.size
    }
}

impl Place {
    fn range(&self) -> Range<u64> {
        self.from..self.to
    }

    /// Whether there may be such a part at all.
    fn sensible(&self, name: &Name) -> Result<(), Why> {
        let most = match name {
            Name::Manifest => limits::MOST_MANIFEST_BYTES,
            Name::Journal => limits::MOST_FILE_BYTES,
            Name::Photo(_) => limits::MOST_PHOTO_FILE_BYTES,
        };
        let packed = self.way.compressed_size_hint();
        if usize::try_from(self.size.max(packed)).map_or(true, |size| size > most) {
            return Err(Why::TooLong { bytes: self.size.max(packed) });
        }
        match self.method {
            CompressionMethod::STORE if packed != self.size => Err(Why::WrongSize),
            CompressionMethod::STORE => Ok(()),
            CompressionMethod::DEFLATE if self.size > packed.saturating_mul(limits::MOST_PACKED) => {
                Err(Why::PackedTooFar)
            }
            CompressionMethod::DEFLATE => Ok(()),
            _ => Err(Why::Packing),
        }
    }

    /// The bytes of the part, as long as it says and with the sum that it says.
    fn unpacked(&self, zip: &mut ZipArchive<Held>, bytes: Vec<u8>) -> Result<Vec<u8>, Why> {
        let length = zip.get_ref().length;
        *zip.get_mut() = Held { from: self.from, bytes, length };
        let (from, to) = zip.get_entry(self.way).map_err(|_error| Why::Damaged)?.compressed_data_range();
        if to > self.to {
            return Err(Why::Overlaps);
        }
        let within = |at: u64| at.checked_sub(self.from).and_then(|at| usize::try_from(at).ok());
        let held = &zip.get_ref().bytes;
        let packed =
            within(from).zip(within(to)).and_then(|(from, to)| held.get(from..to)).ok_or(Why::CutOff)?;
        let size = usize::try_from(self.size).map_err(|_error| Why::WrongSize)?;
        let plain = match self.method {
            CompressionMethod::STORE => packed.to_vec(),
            _ => decompress_to_vec_with_limit(packed, size).map_err(|_error| Why::WrongSum)?,
        };
        match plain.len() == size {
            false => Err(Why::WrongSize),
            true if SUM.checksum(&plain) != self.sum => Err(Why::WrongSum),
            true => Ok(plain),
        }
    }
}

/// The journal of a backup that lies in memory whole, its photos passed over.
///
/// # Errors
/// [`Bad`].
pub fn journal_of(file: &[u8]) -> Result<Vec<u8>, Bad> {
    let length = u64::try_from(file.len()).unwrap_or(u64::MAX);
    let piece = |range: Range<u64>| {
        let (from, to) = (usize::try_from(range.start), usize::try_from(range.end));
        let bytes = from.ok().zip(to.ok()).and_then(|(from, to)| file.get(from..to));
        bytes.map(<[u8]>::to_vec).ok_or(Bad { at: At::File, why: Why::CutOff })
    };
    let mut from = length.saturating_sub(FIRST_BYTES);
    let contents = loop {
        match contents(Held { from, bytes: piece(from..length)?, length })? {
            Looked::Contents(contents) => break contents,
            Looked::More { from: earlier } => from = earlier,
        }
    };
    let manifest = piece(contents.manifest())?;
    let mut backup = contents.opened(manifest)?;
    let journal = piece(backup.journal())?;
    backup.text(journal)
}
