//! Files that are broken, and files that are made to harm: each is refused with where and why.

use super::*;
use crate::journal::LineFault;
use rawzip::{CompressionMethod, DataDescriptorOutput, ZipArchiveWriter};
use std::io::Write;

/// A part as someone else would write it.
#[derive(Clone)]
struct Forged {
    name: String,
    bytes: Vec<u8>,
    method: CompressionMethod,
    sum: u32,
    size: u64,
    locked: bool,
}

fn stored(name: &str, bytes: &[u8]) -> Forged {
    let (method, sum, size) = (CompressionMethod::STORE, rawzip::crc32(bytes), bytes.len() as u64);
    Forged { name: name.to_owned(), bytes: bytes.to_vec(), method, sum, size, locked: false }
}

fn deflated(name: &str, bytes: &[u8]) -> Forged {
    let packed = miniz_oxide::deflate::compress_to_vec(bytes, 9);
    Forged { bytes: packed, method: CompressionMethod::DEFLATE, ..stored(name, bytes) }
}

fn file(parts: &[Forged]) -> Vec<u8> {
    let mut zip = ZipArchiveWriter::new(Vec::new());
    for part in parts {
        let name = rawzip::path::EntryPath::verbatim(part.name.as_bytes());
        let builder = zip.new_file(name).compression_method(part.method).encrypted(part.locked);
        let (mut entry, _) = builder.start().unwrap();
        entry.write_all(&part.bytes).unwrap();
        entry.finish(DataDescriptorOutput::new(part.sum, part.size)).unwrap();
    }
    zip.finish().unwrap()
}

fn manifest(lines: usize, photos: usize, parts: &[&Forged]) -> String {
    let parts: Vec<String> = parts
        .iter()
        .map(|it| {
            format!(r#"{{"name":"{}","bytes":{},"sha256":"{}"}}"#, it.name, it.size, hash_of(&it.bytes))
        })
        .collect();
    format!(
        r#"{{"format":"benchslate backup","version":1,"saved":"2026-11-20T08:05:00-05:00","lines":{lines},"photos":{photos},"photos_missing":0,"parts":[{}]}}"#,
        parts.join(",")
    )
}

fn line() -> String {
    jsonl::write(&fixture("build bench").journal)
}

fn journal() -> Forged {
    stored("journal.jsonl", line().as_bytes())
}

fn photo() -> Forged {
    let bytes = jpeg(9, b"oak");
    stored(&format!("photos/{}.jpg", hash_of(&bytes)), &bytes)
}

/// A sound backup of these, with its manifest.
fn sealed(journal: &Forged, photos: &[Forged]) -> Vec<Forged> {
    let parts: Vec<&Forged> = std::iter::once(journal).chain(photos).collect();
    let text = manifest(journal.bytes.iter().filter(|it| **it == b'\n').count(), photos.len(), &parts);
    let mut all: Vec<Forged> = parts.into_iter().cloned().collect();
    all.push(stored("manifest.json", text.as_bytes()));
    all
}

#[track_caller]
fn refused(parts: &[Forged], at: &str, why: Why) {
    let at = At::Part(at.to_owned());
    assert_eq!(read(&Journal::default(), &file(parts)).map(|_| ()), Err(Bad { at, why }));
}

#[test]
fn a_sound_file_of_another_hand_is_read() {
    let parts = sealed(&journal(), &[photo()]);
    assert!(read(&Journal::default(), &file(&parts)).is_ok());
    // Packed again on a computer: folders have entries, photos are deflated, the order is another.
    let mut again = parts.clone();
    again.reverse();
    again.push(stored("photos/", b""));
    for part in &mut again[1..3] {
        *part = deflated(&part.name, &part.bytes);
    }
    assert!(read(&Journal::default(), &file(&again)).is_ok());
}

#[test]
fn a_name_that_is_no_part_is_refused_whatever_it_would_reach() {
    let hash = hash_of(b"");
    let upper = format!("photos/{}.jpg", hash.to_uppercase());
    let short = format!("photos/{}.jpg", &hash[1..]);
    let ending = format!("photos/{hash}.svg");
    let deep = format!("photos/../photos/{hash}.jpg");
    for name in [
        "../journal.jsonl",
        "/etc/passwd",
        "..\\..\\journal.jsonl",
        "C:\\journal.jsonl",
        "photos/../manifest.json",
        "JOURNAL.JSONL",
        "photos/",
        "thumbs/a.jpg",
        "",
        &upper,
        &short,
        &ending,
        &deep,
        "journal.jsonl ",
    ] {
        let mut parts = sealed(&journal(), &[]);
        // The folder itself may be there, but not with something in it.
        parts.push(stored(name, b"x"));
        refused(&parts, name, Why::StrangeName);
    }
    let mut parts = sealed(&journal(), &[]);
    parts.push(stored(&format!("{}\u{7}\n", "a".repeat(109)), b""));
    refused(&parts, &"a".repeat(100), Why::StrangeName);
}

#[test]
fn a_part_that_stands_twice_is_refused() {
    let mut parts = sealed(&journal(), &[photo()]);
    parts.insert(0, journal());
    refused(&parts, "journal.jsonl", Why::Twice);
    let twice = sealed(&journal(), &[photo(), photo()]);
    refused(&twice, &photo().name, Why::Twice);
}

#[test]
fn a_part_that_is_missing_or_not_listed_is_named() {
    let parts = sealed(&journal(), &[photo()]);
    let without = |name: &str| parts.iter().filter(|it| it.name != name).cloned().collect::<Vec<_>>();
    refused(&without("manifest.json"), "manifest.json", Why::Missing);
    refused(&without("journal.jsonl"), "journal.jsonl", Why::Missing);
    refused(&without(&photo().name), &photo().name, Why::Missing);
    let mut more = sealed(&journal(), &[]);
    more.push(photo());
    refused(&more, &photo().name, Why::NotListed);
    let text = manifest(1, 0, &[&journal(), &journal()]);
    refused(&[journal(), stored("manifest.json", text.as_bytes())], "journal.jsonl", Why::Twice);
}

#[test]
fn bytes_that_are_not_what_they_say_are_refused() {
    let with = |part: Forged, lines: usize, photos: usize| {
        let text = manifest(lines, photos, &[&part]);
        [part, stored("manifest.json", text.as_bytes())]
    };
    let good = journal();
    refused(&with(Forged { sum: 1, ..good.clone() }, 1, 0), "journal.jsonl", Why::WrongSum);
    refused(&with(Forged { size: 9, ..good.clone() }, 1, 0), "journal.jsonl", Why::WrongSize);
    refused(&with(good.clone(), 2, 0), "journal.jsonl", Why::WrongCount { says: 2, found: 1 });
    refused(&with(good.clone(), 1, 3), "manifest.json", Why::WrongCount { says: 3, found: 0 });
    let text = manifest(1, 0, &[&good]).replace(&hash_of(&good.bytes), &hash_of(b"else"));
    refused(&[good.clone(), stored("manifest.json", text.as_bytes())], "journal.jsonl", Why::WrongHash);
    // A photo under the name of another.
    let other = stored(&photo().name, &jpeg(9, b"elm"));
    let parts = sealed(&good, &[other]);
    refused(&parts, &photo().name, Why::WrongHash);
    let said = manifest(1, 1, &[&good, &photo()]);
    let parts =
        [good.clone(), stored(&photo().name, &jpeg(9, b"elm")), stored("manifest.json", said.as_bytes())];
    refused(&parts, &photo().name, Why::WrongHash);
    // Words, a picture of another kind, and one of too many pixels, under their own hashes.
    let named = |bytes: &[u8], ending: &str| stored(&format!("photos/{}.{ending}", hash_of(bytes)), bytes);
    let words = named(b"<svg onload=alert(1)>", "jpg");
    refused(&sealed(&good, std::slice::from_ref(&words)), &words.name, Why::NoPicture);
    let kind = named(&png(b""), "jpg");
    refused(&sealed(&good, std::slice::from_ref(&kind)), &kind.name, Why::NoPicture);
    let wide = named(&[0xFF, 0xD8, 0xFF, 0xC0, 0, 11, 8, 0xFF, 0xFF, 0xFF, 0xFF, 1, 1, 0x11, 0], "jpg");
    let size = crate::exchange::picture::Size { width: 65_535, height: 65_535 };
    refused(&sealed(&good, std::slice::from_ref(&wide)), &wide.name, Why::TooLarge(size));
}

#[test]
fn a_bomb_is_refused_by_what_it_says_and_by_what_it_does() {
    let zeros = vec![0; 20_000_000];
    let bomb = deflated("journal.jsonl", &zeros);
    assert!(bomb.bytes.len() * 900 < zeros.len());
    let manifest_of = |part: &Forged| stored("manifest.json", manifest(1, 0, &[part]).as_bytes());
    refused(&[bomb.clone(), manifest_of(&bomb)], "journal.jsonl", Why::PackedTooFar);
    // It says little and unpacks to much: reading stops at what it says.
    let lies = Forged { size: 100, ..bomb.clone() };
    refused(&[lies.clone(), manifest_of(&lies)], "journal.jsonl", Why::WrongSum);
    let long = Forged { size: 128_000_001, bytes: vec![0; 1_000_000], ..bomb };
    refused(&[long.clone(), manifest_of(&long)], "journal.jsonl", Why::TooLong { bytes: 128_000_001 });
}

#[test]
fn parts_that_lie_over_each_other_are_refused() {
    // The second record of the list is made to point at the first part.
    let parts = sealed(&journal(), &[photo()]);
    let mut bytes = file(&parts);
    let list: Vec<usize> =
        (0..bytes.len() - 4).filter(|at| bytes[*at..].starts_with(b"PK\x01\x02")).collect();
    bytes[list[1] + 42..list[1] + 46].fill(0);
    let found = read(&Journal::default(), &bytes).map(|_| ());
    let [one, other] =
        [&parts[0], &parts[1]].map(|it| Bad { at: At::Part(it.name.clone()), why: Why::Overlaps });
    assert!([Err(one), Err(other)].contains(&found), "{found:?}");
}

#[test]
fn locked_and_strangely_packed_parts_are_refused() {
    let mut parts = sealed(&journal(), &[]);
    parts[0].locked = true;
    refused(&parts, "journal.jsonl", Why::Locked);
    parts[0].locked = false;
    parts[0].method = CompressionMethod::ZSTD;
    refused(&parts, "journal.jsonl", Why::Packing);
}

#[test]
fn a_manifest_of_a_later_format_or_of_something_else_says_so() {
    let with = |text: String| [journal(), stored("manifest.json", text.as_bytes())];
    let good = manifest(1, 0, &[&journal()]);
    let newer = r#"{"format":"benchslate backup","version":2,"parts":{"in":"another form"}}"#.to_owned();
    refused(&with(newer), "manifest.json", Why::Newer { version: 2 });
    refused(&with(good.replace("benchslate backup", "cookbook")), "manifest.json", Why::NotOurs);
    refused(&with(good[..good.len() - 2].to_owned()), "manifest.json", Why::NoManifest);
    refused(&with("[".repeat(9_999)), "manifest.json", Why::NoManifest);
    refused(&with("{\n\n  oak".to_owned()), "manifest.json", Why::NoManifest);
    assert!(
        read(&Journal::default(), &file(&with(good.replace("\"lines\"", "\"mood\":[1],\"lines\"")))).is_ok()
    );
}

#[test]
fn a_line_of_the_journal_that_is_none_says_where() {
    let with = |text: &str| sealed(&stored("journal.jsonl", text.as_bytes()), &[]);
    let bad = |line, why| Why::Line(jsonl::Bad { line, why });
    let not_json = jsonl::BadFile::Line(LineFault::NotJson { column: 1 });
    refused(&with(&format!("{}oak\n", line())), "journal.jsonl", bad(2, not_json));
    let long = format!("{}{}\n", line(), "x".repeat(1_000_001));
    refused(&with(&long), "journal.jsonl", bad(2, jsonl::BadFile::Line(LineFault::TooLong)));
    let nested = |levels| format!("\"body\":{{\"deep\":{}{},", "[".repeat(levels), "]".repeat(levels));
    let text = line().replacen("\"body\":{", &nested(19), 1);
    let column = text.find("[[").unwrap() + 19;
    refused(&with(&text), "journal.jsonl", bad(1, jsonl::BadFile::TooDeep { column }));
    assert!(read(&Journal::default(), &file(&with(&line().replacen("\"body\":{", &nested(18), 1)))).is_ok());
}

#[test]
fn what_is_no_archive_says_so() {
    let journal = Journal::default();
    for text in [b"".as_slice(), b"PK", b"PK\x03\x04", &[0; 5_000], line().as_bytes()] {
        assert_eq!(read(&journal, text).map(|_| ()), Err(Bad { at: At::File, why: Why::NoArchive }));
    }
    let empty = ZipArchiveWriter::new(Vec::new()).finish().unwrap();
    assert!(read(&journal, &empty).is_err());
}
