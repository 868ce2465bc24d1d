//! A backup out and in: the round trip, and what files can be made to say.

mod corrupt;
mod forged;
mod trip;

use super::*;
use crate::{
    exchange::jsonl::Incoming,
    fixture::{fixture, numbered},
    journal::{Change, Journal, On, Pen, kinds},
    measure::When,
};
use std::ops::Range;

/// A picture of so many pixels, as far as its head goes, and some bytes after.
fn jpeg(width: u8, rest: &[u8]) -> Vec<u8> {
    [&[0xFF, 0xD8, 0xFF, 0xC0, 0, 11, 8, 0, 9, 0, width, 1, 1, 0x11, 0], rest].concat()
}

fn png(rest: &[u8]) -> Vec<u8> {
    [b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\0\x09\0\0\0\x08".as_slice(), rest].concat()
}

fn webp(rest: &[u8]) -> Vec<u8> {
    [b"RIFF\0\0\0\0WEBPVP8L\0\0\0\0\x2f\x3f\xc1\x3b\x00".as_slice(), rest].concat()
}

fn saved() -> When {
    When::parse("2026-11-20T08:05:00-05:00").unwrap()
}

/// A line for each photo.
fn naming(photos: &[Vec<u8>]) -> Journal {
    let mut journal = fixture("person Ana 26\nbuild bench\nstretch Ana sand min 90 for bench").journal;
    let pen = Pen { device: numbered(2, 1), now_ms: 1_795_000_000_000 };
    let change = |(at, bytes): (u64, &Vec<u8>)| {
        let photo = kinds::Photo {
            on: On::At(saved()),
            entry: None,
            bearer: None,
            hash: hash_of(bytes),
            media: "image/jpeg".to_owned(),
            width: 9,
            height: 9,
            bytes: 20,
            caption: None,
        };
        Change::write(numbered(7, at), photo)
    };
    let changes: Vec<Change> = (0..).zip(photos).map(change).collect();
    let mut number = 0;
    let mut fresh = || {
        number += 1;
        numbered(8, number)
    };
    for line in pen.write(&journal, &changes, &mut fresh) {
        journal.add(&line.text).unwrap();
    }
    journal
}

/// The whole file, put together from what the writer gives.
fn written(journal: &Journal, photos: &[Vec<u8>]) -> Vec<u8> {
    let mut packer = Packer::default();
    jsonl::write(journal).as_bytes().chunks(1_000).for_each(|piece| packer.add(piece));
    let mut writer = Writer::new(saved());
    let mut file = writer.journal(&packer.finish(), journal.len()).unwrap();
    for photo in photos {
        file.extend(writer.photo(&hash_of(photo), photo).unwrap());
    }
    file.extend(writer.finish(0).unwrap());
    file
}

/// Read as a phone reads it: range by range, all of it.
fn read(journal: &Journal, file: &[u8]) -> Result<(Manifest, Incoming, Vec<Photo>), Bad> {
    let piece = |range: Range<u64>| file[range.start as usize..range.end as usize].to_vec();
    let length = file.len() as u64;
    let mut from = length.saturating_sub(FIRST_BYTES.min(100));
    let contents = loop {
        match contents(Held { from, bytes: piece(from..length), length })? {
            Looked::Contents(contents) => break contents,
            Looked::More { from: earlier } => from = earlier,
        }
    };
    let manifest = piece(contents.manifest());
    let mut backup = contents.opened(manifest)?;
    let journal_bytes = piece(backup.journal());
    let incoming = backup.lines(journal, journal_bytes)?;
    let photos = backup.photos().to_vec();
    let photos = photos.iter().map(|at| backup.photo(at, piece(at.range()))).collect::<Result<_, _>>()?;
    Ok((backup.manifest, incoming, photos))
}
