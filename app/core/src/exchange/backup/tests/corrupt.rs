//! A backup cut off or with bytes changed anywhere: it is refused, or brings what it brought before.

use super::*;
use proptest::prelude::*;

fn sound() -> (Vec<u8>, Journal, Vec<Vec<u8>>) {
    let photos = vec![jpeg(9, b"oak"), png(&[5; 300])];
    let journal = naming(&photos);
    (written(&journal, &photos), journal, photos)
}

#[track_caller]
fn harmless(file: &[u8], journal: &Journal, photos: &[Vec<u8>]) {
    let Ok((_, incoming, back)) = read(&Journal::default(), file) else { return };
    let mut again = Journal::default();
    incoming.merge_into(&mut again);
    assert_eq!(jsonl::write(&again), jsonl::write(journal));
    assert_eq!(back.len(), photos.len());
    assert!(back.iter().all(|photo| photos.contains(&photo.bytes)));
}

#[test]
fn cut_off_anywhere_it_is_refused() {
    let (file, ..) = sound();
    for end in 0..file.len() {
        assert!(read(&Journal::default(), &file[..end]).is_err(), "cut off at {end}");
    }
}

#[test]
fn with_any_one_byte_changed_it_brings_nothing_else() {
    let (file, journal, photos) = sound();
    for at in 0..file.len() {
        for change in [0x01, 0x80, 0xFF] {
            let mut file = file.clone();
            file[at] ^= change;
            harmless(&file, &journal, &photos);
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]
    #[test]
    fn with_many_bytes_changed_taken_out_or_put_in_it_brings_nothing_else(
        changes in proptest::collection::vec((any::<proptest::sample::Index>(), any::<u8>(), 0..4_u8), 1..12),
    ) {
        let (mut file, journal, photos) = sound();
        for (at, byte, how) in changes {
            let at = at.index(file.len());
            match how {
                0 => drop(file.remove(at)),
                1 => file.insert(at, byte),
                2 => file.truncate(at.max(file.len() - at)),
                _ => file[at] = byte,
            }
            if file.is_empty() { break }
        }
        harmless(&file, &journal, &photos);
    }

    #[test]
    fn bytes_that_only_begin_like_a_zip_are_read_without_harm(rest in any::<Vec<u8>>(), end in any::<[u8; 18]>()) {
        let file = [b"PK\x03\x04".as_slice(), &rest, b"PK\x05\x06", &end].concat();
        prop_assert!(read(&Journal::default(), &file).is_err());
        prop_assert!(journal_of(&file).is_err());
    }
}
