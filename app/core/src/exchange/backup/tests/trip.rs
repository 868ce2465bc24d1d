//! Out and in again: the same lines to the byte, the same photos.

use super::*;
use proptest::prelude::*;

#[test]
fn a_backup_brings_the_same_lines_and_the_same_photos() {
    let photos = [jpeg(9, b"oak"), png(b"elm"), webp(b"ash")];
    let journal = naming(&photos);
    let (manifest, incoming, back) = read(&Journal::default(), &written(&journal, &photos)).unwrap();
    assert_eq!((manifest.lines, manifest.photos, manifest.photos_missing), (journal.len(), 3, 0));
    assert_eq!(manifest.saved, saved());
    let mut again = Journal::default();
    incoming.merge_into(&mut again);
    assert_eq!(jsonl::write(&again), jsonl::write(&journal));
    let mut bytes: Vec<Vec<u8>> = back.into_iter().map(|photo| photo.bytes).collect();
    bytes.sort();
    assert_eq!(bytes, {
        let mut photos = photos.to_vec();
        photos.sort();
        photos
    });
    assert_eq!(incoming.photos, photos.iter().map(|it| hash_of(it)).collect());
    assert_eq!(incoming.photos, named(&journal));
}

#[test]
fn an_empty_journal_is_a_backup_too() {
    let (manifest, incoming, photos) = read(&Journal::default(), &written(&Journal::default(), &[])).unwrap();
    assert_eq!((manifest.lines, incoming.is_empty(), photos), (0, true, vec![]));
}

#[test]
fn the_parts_stand_under_their_names_and_photos_are_not_packed_again() {
    let photo = jpeg(9, &[7; 5_000]);
    let file = written(&naming(std::slice::from_ref(&photo)), std::slice::from_ref(&photo));
    let within = |bytes: &[u8]| file.windows(bytes.len()).any(|it| it == bytes);
    assert!(within(&photo));
    assert!(within(format!("photos/{}.jpg", hash_of(&photo)).as_bytes()));
    assert!(within(b"journal.jsonl") && within(b"manifest.json"));
    assert!(!within(b"\"kind\":\"photo\""), "the journal is packed");
}

#[test]
fn a_photo_that_was_never_here_is_counted_and_no_fault() {
    let photos = [jpeg(9, b"oak")];
    let journal = naming(&photos);
    let mut packer = Packer::default();
    packer.add(jsonl::write(&journal).as_bytes());
    let mut writer = Writer::new(saved());
    let mut file = writer.journal(&packer.finish(), journal.len()).unwrap();
    file.extend(writer.finish(1).unwrap());
    let (manifest, incoming, back) = read(&Journal::default(), &file).unwrap();
    assert_eq!((manifest.photos, manifest.photos_missing, back.len()), (0, 1, 0));
    assert_eq!(incoming.photos.len(), 1);
}

#[test]
fn a_photo_that_no_line_names_comes_too() {
    let photo = jpeg(9, b"oak");
    let file = written(&naming(&[]), std::slice::from_ref(&photo));
    let (_, incoming, back) = read(&Journal::default(), &file).unwrap();
    assert_eq!((incoming.photos.len(), back.len()), (0, 1));
}

#[test]
fn what_would_not_be_read_back_is_not_written() {
    let mut writer = Writer::new(saved());
    let photo = jpeg(9, b"oak");
    assert_eq!(writer.photo(&hash_of(b"elm"), &photo), Err(Left::Spoilt(Why::WrongHash)));
    let words = b"no picture at all";
    assert_eq!(writer.photo(&hash_of(words), words), Err(Left::Spoilt(Why::NoPicture)));
    let wide = [0xFF, 0xD8, 0xFF, 0xC0, 0, 11, 8, 0xFF, 0xFF, 0xFF, 0xFF, 1, 1, 0x11, 0];
    let size = crate::exchange::picture::Size { width: 65_535, height: 65_535 };
    assert_eq!(writer.photo(&hash_of(&wide), &wide), Err(Left::Spoilt(Why::TooLarge(size))));
    assert!(!writer.photo(&hash_of(&photo), &photo).unwrap().is_empty());
    assert_eq!(writer.photo(&hash_of(&photo), &photo), Ok(vec![]), "once");
}

#[test]
fn a_journal_beyond_its_limits_does_not_fit() {
    let mut packer = Packer::default();
    packer.add(b"");
    let lines = crate::measure::limits::MOST_FILE_LINES + 1;
    assert_eq!(Writer::new(saved()).journal(&packer.finish(), lines), Err(Left::Full));
}

#[test]
fn a_file_of_four_gigabytes_is_full_and_has_kept_room_for_its_end() {
    use crate::measure::limits::{BACKUP_END_BYTES, MOST_BACKUP_BYTES};
    let photo = jpeg(9, b"oak");
    let room = MOST_BACKUP_BYTES - BACKUP_END_BYTES;
    let put =
        |offset| Writer::behind(saved(), offset).photo(&hash_of(&photo), &photo).map(|bytes| bytes.len());
    assert_eq!(put(room - photo.len() as u64 + 1), Err(Left::Full));
    assert!(put(room - photo.len() as u64).is_ok());
    assert!(Writer::behind(saved(), room + 1).finish(0).is_ok());
    // And one that says it is longer is not read.
    let held = Held { from: MOST_BACKUP_BYTES, bytes: vec![0], length: MOST_BACKUP_BYTES + 1 };
    let bad = Bad { at: At::File, why: Why::TooLong { bytes: MOST_BACKUP_BYTES + 1 } };
    assert_eq!(contents(held).map(|_| ()), Err(bad));
}

/// One letter a megabyte long packs a thousand times, further than is believed: it is kept plain.
#[test]
fn a_text_that_packs_too_far_is_kept_as_it_is_and_read_back() {
    let note = "x".repeat(900_000);
    let pen = Pen { device: numbered(2, 1), now_ms: 1_795_000_000_000 };
    let body = kinds::Note { on: On::At(saved()), text: note, bearer: None };
    let mut journal = Journal::default();
    for line in pen.write(&Journal::default(), &[Change::write(numbered(1, 1), body)], &mut || numbered(3, 1))
    {
        journal.add(&line.text).unwrap();
    }
    let (manifest, ..) = read(&Journal::default(), &written(&journal, &[])).unwrap();
    assert_eq!(manifest.lines, 1);
}

proptest! {
    #[test]
    fn whatever_is_written_comes_back(texts in proptest::collection::vec("\\PC{0,60}", 0..12),
                                      photos in proptest::collection::vec(any::<Vec<u8>>(), 0..5),
                                      piece in 1_usize..300) {
        let pen = Pen { device: numbered(2, 1), now_ms: 1_795_000_000_000 };
        let change = |(at, text): (u64, &String)| {
            let body = kinds::Note { on: On::At(saved()), text: text.clone(), bearer: None };
            Change::write(numbered(1, at), body)
        };
        let changes: Vec<Change> = (0..).zip(&texts).map(change).collect();
        let mut number = 0;
        let mut fresh = || { number += 1; numbered(3, number) };
        let mut journal = Journal::default();
        for line in pen.write(&Journal::default(), &changes, &mut fresh) {
            journal.add(&line.text).unwrap();
        }
        let photos: std::collections::BTreeSet<Vec<u8>> = photos.iter().map(|rest| jpeg(9, rest)).collect();
        let mut packer = Packer::default();
        jsonl::write(&journal).as_bytes().chunks(piece).for_each(|piece| packer.add(piece));
        let mut writer = Writer::new(saved());
        let mut file = writer.journal(&packer.finish(), journal.len()).unwrap();
        for photo in &photos {
            file.extend(writer.photo(&hash_of(photo), photo).unwrap());
        }
        file.extend(writer.finish(0).unwrap());
        let (_, incoming, back) = read(&Journal::default(), &file).unwrap();
        let mut again = Journal::default();
        incoming.merge_into(&mut again);
        prop_assert_eq!(jsonl::write(&again), jsonl::write(&journal));
        let back: std::collections::BTreeSet<Vec<u8>> = back.into_iter().map(|it| it.bytes).collect();
        prop_assert_eq!(back, photos);
        prop_assert_eq!(journal_of(&file).unwrap(), jsonl::write(&journal).into_bytes());
    }
}
