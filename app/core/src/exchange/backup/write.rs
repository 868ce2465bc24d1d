//! A backup written part by part: journal, photos, manifest. Each call gives the bytes that come next in the file.
//!
//! What is written here is read back by [`super::read`], within the same limits: what would not be is not written.

use super::{
    SUM, Why, hex,
    manifest::{Manifest, Part},
    name::{self, PhotoName},
};
use crate::measure::{When, limits};
use miniz_oxide::deflate::{
    CompressionLevel,
    core::{CompressorOxide, TDEFLFlush, compress_to_output},
};
use rawzip::{CompressionMethod, DataDescriptorOutput, ZipArchiveWriter, time::UtcDateTime};

use sha2::{Digest, Sha256};
use std::{cell::RefCell, collections::BTreeSet, io::Write, rc::Rc};

/// Why something was left out of a backup.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Left {
    /// It is no longer what was kept. The rest can go on without it.
    Spoilt(Why),
    /// The file would be longer than a backup can be, or have more parts. It can't be finished.
    Full,
}

/// A text being packed, in pieces of any length: the caller can do something else in between.
pub struct Packer {
    deflate: Box<CompressorOxide>,
    packed: Vec<u8>,
    plain: Vec<u8>,
    sum: crc::Digest<'static, u32>,
    hash: Sha256,
}

/// A text packed.
pub struct Packing {
    bytes: Vec<u8>,
    method: CompressionMethod,
    sum: u32,
    sha256: String,
    size: u64,
}

/// A backup being written.
pub struct Writer {
    zip: ZipArchiveWriter<Sink>,
    sink: Sink,
    at: UtcDateTime,
    manifest: Manifest,
    /// Their hashes.
    photos: BTreeSet<String>,
}

impl Default for Packer {
    fn default() -> Packer {
        let level = CompressionLevel::DefaultLevel;
        let deflate = CompressorOxide::with_format_and_level(miniz_oxide::DataFormat::Raw, level);
        let (packed, plain, sum, hash) = (Vec::new(), Vec::new(), SUM.digest(), Sha256::new());
        Packer { deflate: Box::new(deflate), packed, plain, sum, hash }
    }
}

impl Packer {
    /// The next piece.
    pub fn add(&mut self, piece: &[u8]) {
        self.sum.update(piece);
        self.hash.update(piece);
        self.plain.extend_from_slice(piece);
        self.pack(piece, TDEFLFlush::None);
    }

    /// That was all. Text that packs further than is believed is kept as it is.
    pub fn finish(mut self) -> Packing {
        self.pack(&[], TDEFLFlush::Finish);
        let size = length(&self.plain);
        let far = length(&self.packed).saturating_mul(limits::MOST_PACKED) < size;
        let (bytes, method) = match far {
            true => (self.plain, CompressionMethod::STORE),
            false => (self.packed, CompressionMethod::DEFLATE),
        };
        Packing { bytes, method, sum: self.sum.finalize(), sha256: hex(&self.hash.finalize()), size }
    }

    fn pack(&mut self, piece: &[u8], flush: TDEFLFlush) {
        let packed = &mut self.packed;
        compress_to_output(&mut self.deflate, piece, flush, |bytes| {
            packed.extend_from_slice(bytes);
            true
        });
    }
}

impl Writer {
    /// One that says it was saved then.
    pub fn new(saved: When) -> Writer {
        let sink = Sink::default();
        let at = UtcDateTime::from_unix(saved.instant.0);
        let (zip, manifest) = (ZipArchiveWriter::new(sink.clone()), Manifest::new(saved));
        Writer { zip, sink, at, manifest, photos: BTreeSet::new() }
    }

    /// One that has so many bytes behind it already.
    #[cfg(test)]
    pub(super) fn behind(saved: When, offset: u64) -> Writer {
        let mut writer = Writer::new(saved);
        writer.zip = ZipArchiveWriter::builder().with_offset(offset).build(writer.sink.clone());
        writer
    }

    /// The journal, first of all parts. `lines`: how many are in it.
    ///
    /// # Errors
    /// [`Left::Full`].
    pub fn journal(&mut self, text: &Packing, lines: usize) -> Result<Vec<u8>, Left> {
        let most = u64::try_from(limits::MOST_FILE_BYTES).unwrap_or_default();
        if text.size > most || lines > limits::MOST_FILE_LINES {
            return Err(Left::Full);
        }
        self.manifest.lines = lines;
        self.part(name::JOURNAL, text)?;
        self.listed(name::JOURNAL.to_owned(), text.size, text.sha256.clone());
        Ok(self.sink.taken())
    }

    /// A photo as it is kept under its hash. One that is in it already adds nothing.
    ///
    /// # Errors
    /// [`Left`]: nothing was written.
    pub fn photo(&mut self, hash: &str, bytes: &[u8]) -> Result<Vec<u8>, Left> {
        let name = PhotoName::of(hash, bytes).map_err(Left::Spoilt)?;
        if self.photos.contains(hash) {
            return Ok(Vec::new());
        }
        if bytes.len() > limits::MOST_PHOTO_FILE_BYTES {
            return Err(Left::Spoilt(Why::TooLong { bytes: length(bytes) }));
        }
        if self.photos.len() >= limits::MOST_BACKUP_PHOTOS {
            return Err(Left::Full);
        }
        let (text, size) = (name.text(), length(bytes));
        self.write(
            &text,
            CompressionMethod::STORE,
            bytes,
            DataDescriptorOutput::new(SUM.checksum(bytes), size),
        )?;
        self.listed(text, size, hash.to_owned());
        self.photos.insert(hash.to_owned());
        Ok(self.sink.taken())
    }

    /// The manifest and the end. `missing`: photos that the lines name and that are not here.
    ///
    /// # Errors
    /// [`Left::Full`].
    pub fn finish(mut self, missing: usize) -> Result<Vec<u8>, Left> {
        self.manifest.photos = self.photos.len();
        self.manifest.photos_missing = missing;
        let mut packer = Packer::default();
        packer.add(self.manifest.text().ok_or(Left::Full)?.as_bytes());
        self.part(name::MANIFEST, &packer.finish())?;
        self.zip.finish().map_err(|_error| Left::Full)?;
        Ok(self.sink.taken())
    }

    fn part(&mut self, name: &str, text: &Packing) -> Result<(), Left> {
        self.write(name, text.method, &text.bytes, DataDescriptorOutput::new(text.sum, text.size))
    }

    fn write(
        &mut self,
        name: &str,
        method: CompressionMethod,
        bytes: &[u8],
        said: DataDescriptorOutput,
    ) -> Result<(), Left> {
        let room = limits::MOST_BACKUP_BYTES.saturating_sub(limits::BACKUP_END_BYTES);
        let room = if name == name::MANIFEST { limits::MOST_BACKUP_BYTES } else { room };
        if self.zip.stream_offset().saturating_add(length(bytes)) > room {
            return Err(Left::Full);
        }
        // A sink in memory refuses nothing.
        let file = self.zip.new_file(name).compression_method(method).last_modified(self.at);
        let (mut entry, _config) = file.start().map_err(|_error| Left::Full)?;
        entry.write_all(bytes).map_err(|_error| Left::Full)?;
        entry.finish(said).map_err(|_error| Left::Full)?;
        Ok(())
    }

    fn listed(&mut self, name: String, bytes: u64, sha256: String) {
        self.manifest.parts.push(Part { name, bytes, sha256 });
    }
}

/// What was written since it was last taken.
#[derive(Clone, Default)]
struct Sink(Rc<RefCell<Vec<u8>>>);

impl Sink {
    fn taken(&self) -> Vec<u8> {
        std::mem::take(&mut *self.0.borrow_mut())
    }
}

impl Write for Sink {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        self.0.borrow_mut().extend_from_slice(bytes);
        Ok(bytes.len())
    }

    fn flush(&mut self) -> std::io::Result<()> {
        Ok(())
    }
}

fn length(bytes: &[u8]) -> u64 {
    u64::try_from(bytes.len()).unwrap_or(u64::MAX)
}
