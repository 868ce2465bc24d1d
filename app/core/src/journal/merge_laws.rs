//! Laws of merging, over random histories written by several devices and handed on in any order.

use super::{
    Added, Change, Id, Journal, On, Pen,
    kinds::{Bearer, Note},
};
use crate::measure::Day;
use proptest::prelude::*;

fn id(space: u8, number: usize) -> Id {
    let mut bytes = [0; 16];
    bytes[0] = space;
    bytes[8..].copy_from_slice(&(number as u64).to_be_bytes());
    Id::of(bytes)
}

fn note(text: String) -> Note {
    Note { on: On::Day(Day::parse("2026-11-20").unwrap()), text, bearer: Some(Bearer::Shop) }
}

/// One step of a history: which device, which of five entries, which clock, and what it does.
#[derive(Clone, Debug)]
struct Step {
    device: u8,
    entry: u8,
    skew_ms: i64,
    does: u8,
    hears: bool,
}

fn steps() -> impl Strategy<Value = Vec<Step>> {
    let step = (0..3_u8, 0..5_u8, -90_000_000_000_i64..90_000_000_000, 0..4_u8, any::<bool>())
        .prop_map(|(device, entry, skew_ms, does, hears)| Step { device, entry, skew_ms, does, hears });
    prop::collection::vec(step, 1..40)
}

/// Every line that was ever written, by devices that now and then hear of each other's.
fn written(steps: &[Step]) -> Vec<String> {
    let mut journals: Vec<Journal> = vec![Journal::default(); 3];
    let mut all: Vec<String> = Vec::new();
    for (at, step) in steps.iter().enumerate() {
        let journal = &mut journals[usize::from(step.device)];
        if step.hears {
            all.iter().for_each(|line| {
                journal.add(line).unwrap();
            });
        }
        let entry = id(1, usize::from(step.entry));
        let change = match step.does {
            0 => Change::strike(entry),
            1 => Change::bring_back(journal, entry).unwrap_or(Change::write(entry, note(format!("{at}")))),
            _ => Change::write(entry, note(format!("as of {at}"))),
        };
        let pen = Pen { device: id(2, usize::from(step.device)), now_ms: 1_795_000_000_000 + step.skew_ms };
        for line in pen.write(journal, &[change], &mut || id(3, at)) {
            journal.add(&line.text).unwrap();
            all.push(line.text);
        }
    }
    all
}

fn gathered<'a>(lines: impl Iterator<Item = &'a String>) -> Journal {
    let mut journal = Journal::default();
    lines.for_each(|line| {
        journal.add(line).unwrap();
    });
    journal
}

/// Everything about a journal that a person or a file could see.
fn seen(journal: &Journal) -> Vec<(Id, String)> {
    let entries = journal.entries().map(|entry| {
        let heads: Vec<Id> = journal.heads(entry).iter().map(|head| head.id).collect();
        (entry, format!("{heads:?} {:?}", journal.shown(entry)))
    });
    entries.chain(journal.lines().map(|(id, line)| (id, line.to_owned()))).collect()
}

proptest! {
    #[test]
    fn the_order_in_which_lines_arrive_changes_nothing(steps in steps(), seed in any::<u64>()) {
        let lines = written(&steps);
        let mut shuffled = lines.clone();
        shuffled.sort_by_key(|line| line.bytes().fold(seed, |hash, byte| hash.rotate_left(5) ^ u64::from(byte)));
        prop_assert_eq!(seen(&gathered(lines.iter())), seen(&gathered(shuffled.iter())));
    }

    #[test]
    fn a_line_that_arrives_twice_counts_once(steps in steps()) {
        let lines = written(&steps);
        let mut journal = gathered(lines.iter());
        let before = seen(&journal);
        for line in &lines {
            prop_assert_eq!(journal.add(line), Ok(Added::Known));
        }
        prop_assert_eq!(seen(&journal), before);
    }

    #[test]
    fn nothing_that_was_written_is_lost(steps in steps(), cut in any::<prop::sample::Index>()) {
        let lines = written(&steps);
        let cut = cut.index(lines.len() + 1);
        let (one, other) = lines.split_at(cut);
        let merged = gathered(one.iter().chain(other));
        let kept: Vec<&str> = merged.lines().map(|(_, line)| line).collect();
        for line in &lines {
            prop_assert!(kept.contains(&line.as_str()));
        }
    }

    #[test]
    fn every_entry_shows_one_of_its_heads(steps in steps()) {
        let journal = gathered(written(&steps).iter());
        for entry in journal.entries() {
            let heads = journal.heads(entry);
            prop_assert_eq!(heads.last().map(|it| it.id), journal.shown(entry).map(|it| it.id));
        }
    }

    #[test]
    fn a_clash_of_bytes_ends_alike_in_either_order(text in "[a-z]{1,12}", other in "[a-z]{1,12}") {
        prop_assume!(text != other);
        let pen = Pen { device: id(2, 0), now_ms: 1_795_000_000_000 };
        let line = |text: &str| {
            let change = Change::write(id(1, text.len() % 2), note(text.to_owned()));
            pen.write(&Journal::default(), &[change], &mut || id(3, 7))[0].text.clone()
        };
        let (one, two) = (line(&text), line(&other));
        let (forth, back) = (gathered([&one, &two].into_iter()), gathered([&two, &one].into_iter()));
        prop_assert_eq!(seen(&forth), seen(&back));
        prop_assert_eq!(forth.len(), 1);
    }
}

#[test]
fn a_phone_with_a_wrong_date_spoils_only_its_own_entry() {
    let mut journal = Journal::default();
    let ahead = Pen { device: id(2, 1), now_ms: 4_000_000_000_000 };
    let right = Pen { device: id(2, 2), now_ms: 1_795_000_000_000 };
    let mut count = 0;
    let mut fresh = || {
        count += 1;
        id(3, count)
    };
    let mut write = |pen: Pen, entry: Id, text: &str, journal: &mut Journal| {
        let lines = pen.write(journal, &[Change::write(entry, note(text.into()))], &mut fresh);
        journal.add(&lines[0].text).unwrap();
    };
    write(ahead, id(1, 1), "in 2096", &mut journal);
    write(right, id(1, 1), "corrected now", &mut journal);
    write(right, id(1, 2), "another line", &mut journal);
    let said = |entry: Id| journal.shown(entry).map(|it| it.stamp).unwrap();
    assert_eq!((said(id(1, 1)).ms, said(id(1, 1)).n), (4_000_000_000_000, 1));
    assert_eq!((said(id(1, 2)).ms, said(id(1, 2)).n), (1_795_000_000_000, 0));
    assert!(matches!(journal.body(id(1, 1)), Some(super::Body::Note(note)) if note.text == "corrected now"));
}

#[test]
fn a_partners_correction_is_never_dropped_in_silence() {
    let mut journal = Journal::default();
    let pens = [1, 2].map(|device| Pen { device: id(2, device), now_ms: 1_795_000_000_000 });
    let first = pens[0].write(&journal, &[Change::write(id(1, 1), note("2 h".into()))], &mut || id(3, 1));
    journal.add(&first[0].text).unwrap();
    let apart: Vec<String> = [(0, "2 h 15"), (1, "1 h 45")]
        .map(|(pen, text)| {
            let change = Change::write(id(1, 1), note(text.into()));
            pens[pen].write(&journal, &[change], &mut || id(3, 2 + pen))[0].text.clone()
        })
        .into();
    apart.iter().for_each(|line| {
        journal.add(line).unwrap();
    });
    assert_eq!(journal.heads(id(1, 1)).len(), 2);
    let pick = Change::pick(&journal, id(3, 2)).unwrap();
    let settled = pens[0].write(&journal, &[pick], &mut || id(3, 9));
    journal.add(&settled[0].text).unwrap();
    assert_eq!(journal.heads(id(1, 1)).len(), 1);
}

#[test]
fn undo_puts_back_what_stood_and_strikes_what_was_begun() {
    let mut journal = Journal::default();
    let pen = Pen { device: id(2, 1), now_ms: 1_795_000_000_000 };
    let mut count = 0;
    let mut fresh = || {
        count += 1;
        id(3, count)
    };
    let mut act = |journal: &mut Journal, changes: &[Change]| -> Vec<Id> {
        let lines = pen.write(journal, changes, &mut fresh);
        lines.iter().for_each(|line| {
            journal.add(&line.text).unwrap();
        });
        lines.iter().map(|line| line.id).collect()
    };
    act(&mut journal, &[Change::write(id(1, 1), note("first".into()))]);
    let did = act(
        &mut journal,
        &[Change::write(id(1, 1), note("second".into())), Change::write(id(1, 2), note("begun".into()))],
    );
    let back = super::act::undo(&journal, &did);
    act(&mut journal, &back);
    assert!(matches!(journal.body(id(1, 1)), Some(super::Body::Note(note)) if note.text == "first"));
    assert_eq!(journal.body(id(1, 2)), None);
    assert!(matches!(journal.last_body(id(1, 2)), Some(super::Body::Note(_))));
    assert_eq!(journal.len(), 5);
}
