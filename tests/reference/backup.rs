//! The backup against another program's ZIP: it reads ours, and ours reads what it writes.

use benchslate_core::{
    exchange::backup::{self, Held, Looked, Packer, Writer},
    journal::Journal,
    measure::When,
};
use std::{
    collections::BTreeMap,
    io::{Cursor, Read, Write},
    ops::Range,
};
use zip::{CompressionMethod, ZipArchive, ZipWriter, write::SimpleFileOptions};

const JOURNAL: &str = include_str!("../loads/stored/v1/trays-and-bench.jsonl");

/// A picture as far as its head goes.
fn photo() -> Vec<u8> {
    [&[0xFF, 0xD8, 0xFF, 0xC0, 0, 11, 8, 0, 9, 0, 9, 1, 1, 0x11, 0], [7; 4_000].as_slice()].concat()
}

fn ours() -> Vec<u8> {
    let mut packer = Packer::default();
    packer.add(JOURNAL.as_bytes());
    let mut writer = Writer::new(When::parse("2026-11-20T08:05:00-05:00").unwrap());
    let photo = photo();
    let pieces = [
        writer.journal(&packer.finish(), JOURNAL.lines().count()).unwrap(),
        writer.photo(&backup::hash_of(&photo), &photo).unwrap(),
        writer.finish(0).unwrap(),
    ];
    pieces.concat()
}

/// Lines and photos as our own reader has them.
fn read(file: &[u8]) -> (usize, Vec<Vec<u8>>) {
    let piece = |range: Range<u64>| file[range.start as usize..range.end as usize].to_vec();
    let length = file.len() as u64;
    let held = Held { from: 0, bytes: file.to_vec(), length };
    let Looked::Contents(contents) = backup::contents(held).unwrap() else { panic!("all of it is there") };
    let manifest = piece(contents.manifest());
    let mut ours = contents.opened(manifest).unwrap();
    let journal = piece(ours.journal());
    let lines = ours.lines(&Journal::default(), journal).unwrap();
    let photos = ours.photos().to_vec();
    let photos = photos.iter().map(|at| ours.photo(at, piece(at.range())).unwrap().bytes).collect();
    (lines.lines.len(), photos)
}

/// Name and bytes of every part, as the library has them; it holds each against its CRC-32.
fn parts(file: &[u8]) -> BTreeMap<String, (CompressionMethod, Vec<u8>)> {
    let mut zip = ZipArchive::new(Cursor::new(file)).unwrap();
    let mut parts = BTreeMap::new();
    for at in 0..zip.len() {
        let mut part = zip.by_index(at).unwrap();
        let mut bytes = Vec::new();
        part.read_to_end(&mut bytes).unwrap();
        parts.insert(part.name().unwrap().into_owned(), (part.compression(), bytes));
    }
    parts
}

// Source: library — zip 9 (crates.io), reading.
#[test]
fn a_backup_is_a_zip_that_another_program_reads() {
    let parts = parts(&ours());
    let photo = photo();
    let name = format!("photos/{}.jpg", backup::hash_of(&photo));
    assert_eq!(parts.keys().collect::<Vec<_>>(), ["journal.jsonl", "manifest.json", &name]);
    assert_eq!(parts["journal.jsonl"], (CompressionMethod::Deflated, JOURNAL.as_bytes().to_vec()));
    assert_eq!(parts[&name], (CompressionMethod::Stored, photo));
}

// Source: library — zip 9 (crates.io), writing: sizes in the head of each part, where ours has them behind it.
#[test]
fn a_backup_that_another_program_packed_again_is_read() {
    for method in [CompressionMethod::Stored, CompressionMethod::Deflated] {
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        let options = SimpleFileOptions::default().compression_method(method);
        for (name, (_, bytes)) in parts(&ours()).into_iter().rev() {
            zip.start_file(name, options).unwrap();
            zip.write_all(&bytes).unwrap();
        }
        zip.add_directory("photos/", options).unwrap();
        let file = zip.finish().unwrap().into_inner();
        assert_eq!(read(&file), (JOURNAL.lines().count(), vec![photo()]));
    }
}
