//! Files made to break the program: none may stop it, a refused one says where, and what is taken folds,
//! is costed, and goes out again to the byte. A new crash is a new file in `stored/crashers`.

use super::folder::files;
use benchslate_core::{
    costing::Books,
    exchange::jsonl::{self, Bad, BadFile},
    journal::{Change, Id, Journal, LineFault, Pen, Shop, act},
    measure::{Day, Instant, Zone, limits},
    timing::bench,
};

#[test]
fn no_kept_crasher_stops_the_program() {
    for file in files("crashers", "jsonl") {
        let bytes = std::fs::read(&file).unwrap();
        println!("{}", file.display());
        goes_through(&bytes);
    }
}

#[test]
fn a_line_of_a_megabyte_is_refused_and_one_just_below_is_read() {
    let line = |length: usize| {
        let frame = r#"{"v":1,"id":"00000000-0000-0000-0000-000000000001","entry":"00000000-0000-0000-0000-000000000001","device":"00000000-0000-0000-0000-000000000001","stamp":{"ms":0,"n":0},"kind":"note","bv":1,"body":{"on":"2026-11-20","text":"#;
        format!("{frame}\"{}\"}}}}", "x".repeat(length - frame.len() - 4))
    };
    let long = line(benchslate_core::journal::line::LINE_MAX + 1);
    let why = BadFile::Line(LineFault::TooLong);
    assert_eq!(jsonl::check(&Journal::default(), &long), Err(Bad { line: 1, why }));
    let (mut journal, most) = (Journal::default(), line(benchslate_core::journal::line::LINE_MAX));
    assert_eq!(jsonl::check(&journal, &most).map(|it| it.merge_into(&mut journal).len()), Ok(0));
    assert!(jsonl::write(&journal) == most + "\n");
}

#[test]
fn a_file_beyond_the_limit_is_refused_before_it_is_read() {
    let bytes = vec![0; limits::MOST_FILE_BYTES + 1];
    let refused = jsonl::check_bytes(&Journal::default(), &bytes).unwrap_err();
    assert_eq!(refused, Bad { line: 0, why: BadFile::TooLong { bytes: bytes.len() } });
}

#[track_caller]
fn goes_through(bytes: &[u8]) {
    let mut journal = Journal::default();
    let Ok(incoming) = jsonl::check_bytes(&journal, bytes) else { return };
    let aside = incoming.merge_into(&mut journal);
    assert_eq!(aside.len(), incoming.clashing);
    let out = jsonl::write(&journal);
    let again = jsonl::check(&journal, &out).unwrap();
    assert!(again.is_empty() && again.known == journal.len());
    looked_at(&journal);
    written_on(journal);
}

/// Folded, costed and shown, in a zone whose day is long over and at the ends of time.
fn looked_at(journal: &Journal) {
    let zone = Zone { name: "Far/East".into(), changes: vec![(i64::MIN, limits::MOST_OFFSET)] };
    let shop = Shop::fold(journal, &zone);
    let today = zone.start_of(Day::parse("2026-11-20").unwrap());
    for now in [today, Instant(0), Instant(i64::MIN), Instant(i64::MAX)] {
        let _ = bench::look(&shop, now, None, None);
    }
    let books = Books::close(&shop, today);
    for build in shop.builds.keys().copied().chain([Id::of([0; 16])]) {
        let cost = books.build_cost(build);
        assert!(cost.true_cost.parts.len() <= 20);
    }
}

/// Struck out, brought back and taken back: whatever is there can be written over.
fn written_on(mut journal: Journal) {
    let pen = Pen { device: Id::of([9; 16]), now_ms: i64::MAX };
    let entries: Vec<Id> = journal.entries().collect();
    for (at, entry) in entries.into_iter().enumerate() {
        let mut number = 0_u8;
        let mut fresh = || {
            number += 1;
            let mut id = [0xee; 16];
            id[..8].copy_from_slice(&(at as u64).to_be_bytes());
            id[15] = number;
            Id::of(id)
        };
        let struck = pen.write(&journal, &[Change::strike(entry)], &mut fresh);
        let written: Vec<Id> = struck.iter().map(|line| line.id).collect();
        struck.iter().for_each(|line| drop(journal.add(&line.text).unwrap()));
        let back = act::undo(&journal, &written);
        pen.write(&journal, &back, &mut fresh).iter().for_each(|line| drop(journal.add(&line.text).unwrap()));
    }
    looked_at(&journal);
}
