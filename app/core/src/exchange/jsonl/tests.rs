//! The file out and in: broken files, files from the mail, lines of another version, and the laws of union.

use super::*;
use crate::{
    fixture::{fixture, numbered},
    journal::{Change, On, Pen, kinds::Note},
    measure::Day,
};
use proptest::prelude::*;

const NOTE: &str = r#"{"v":1,"id":"0190f3c2-7b1a-7c3d-8e4f-000000000001","entry":"0190f3c2-7b1a-7c3d-8e4f-000000000002","parents":[],"device":"0190f3c2-7b1a-7c3d-8e4f-000000000003","stamp":{"ms":1795161600000,"n":0},"kind":"note","bv":1,"body":{"on":"2026-11-20","text":"red line showing"}}"#;

/// The note under the id that ends in this digit, with other words.
fn note(number: u8, words: &str) -> String {
    NOTE.replace("000000000001\"", &format!("00000000000{number}\"")).replace("red line showing", words)
}

fn history() -> crate::fixture::Fixture {
    fixture(
        "person Ana 26
        build bench
        lot oak bought 120 paid 36
        draw 20 oak for bench as first
        stretch Ana sand min 90 for bench
        strike first",
    )
}

#[track_caller]
fn refused(text: &str, line: usize, why: BadFile) {
    let mut journal = Journal::default();
    journal.add(NOTE).unwrap();
    assert_eq!(check(&journal, text), Err(Bad { line, why }));
}

#[track_caller]
fn brings(text: &str, new: usize, known: usize, clashing: usize) {
    let mut journal = Journal::default();
    journal.add(NOTE).unwrap();
    let incoming = check(&journal, text).unwrap();
    assert_eq!((incoming.new, incoming.known, incoming.clashing), (new, known, clashing));
    assert_eq!(incoming.lines.len(), new + clashing);
}

#[test]
fn a_broken_file_says_where_it_is_broken() {
    let line = |fault| BadFile::Line(fault);
    let (two, three) = (note(2, "oak"), note(3, "elm"));
    let half = three.get(..200).unwrap();
    refused("wood", 1, line(LineFault::NotJson { column: 1 }));
    refused("{\n}", 1, line(LineFault::NotJson { column: 1 }));
    refused(&format!("{two}\nwood\n"), 2, line(LineFault::NotJson { column: 1 }));
    refused(&format!("{two}\n\n{half}"), 3, line(LineFault::NotJson { column: 200 }));
    refused(&format!("{two}\n{{}}\n"), 2, line(LineFault::Envelope { column: 2 }));
    refused("[]", 1, line(LineFault::Envelope { column: 2 }));
    refused(&format!("{two}{three}"), 1, line(LineFault::NotJson { column: two.len() + 1 }));
    refused(&NOTE.replace("\"text\":", "\"text\":NaN,\"x\":"), 1, line(LineFault::NotJson { column: 249 }));
    refused(&NOTE.replace("1795161600000", "1e400"), 1, line(LineFault::NotJson { column: 178 }));
    refused(&NOTE.replace(",\"body\"", ",\"struck\":true,\"body\""), 1, line(LineFault::NoContent));
    refused(&format!("{two}\n{}", "x".repeat(1_000_001)), 2, line(LineFault::TooLong));
    refused(&format!("\u{feff}\u{feff}{two}"), 1, line(LineFault::NotJson { column: 1 }));
}

#[test]
fn bytes_that_are_no_text_say_in_which_line() {
    let journal = Journal::default();
    let latin = [note(2, "oak").as_bytes(), b"\n", b"{\"v\":\"caf\xe9\"}"].concat();
    assert_eq!(check_bytes(&journal, &latin), Err(Bad { line: 2, why: BadFile::NotText }));
    let wide: Vec<u8> = "\u{feff}{".encode_utf16().flat_map(u16::to_le_bytes).collect();
    assert_eq!(check_bytes(&journal, &wide), Err(Bad { line: 1, why: BadFile::NotText }));
    let zip = b"PK\x03\x04\x14\x00\xff\xfe";
    assert_eq!(check_bytes(&journal, zip), Err(Bad { line: 1, why: BadFile::NotText }));
}

#[test]
fn a_file_past_the_limits_is_refused() {
    let long = vec![b'\n'; limits::MOST_FILE_BYTES + 1];
    let why = BadFile::TooLong { bytes: long.len() };
    assert_eq!(check_bytes(&Journal::default(), &long), Err(Bad { line: 0, why }));
    let short = r#"{"v":1,"id":"00000000-0000-0000-0000-000000000001","entry":"00000000-0000-0000-0000-000000000001","device":"00000000-0000-0000-0000-000000000001","stamp":{"ms":0,"n":0},"kind":"","struck":true}"#;
    let many = format!("{short}\n").repeat(limits::MOST_FILE_LINES + 1);
    refused(&many, limits::MOST_FILE_LINES + 1, BadFile::TooManyLines);
}

#[test]
fn a_file_says_what_is_new_known_and_clashing() {
    let (two, other) = (note(2, "oak"), note(2, "ash"));
    brings("", 0, 0, 0);
    brings(NOTE, 0, 1, 0);
    brings(&format!("{NOTE}\n{two}\n"), 1, 1, 0);
    brings(&format!("{two}\n{two}\n{two}"), 1, 2, 0);
    brings(&note(1, "another hand"), 0, 0, 1);
    brings(&format!("{two}\n{other}\n{two}\n{other}"), 1, 2, 1);
}

#[test]
fn a_file_that_went_through_the_mail_is_read() {
    let (two, three) = (note(2, "oak"), note(3, "elm"));
    let sent = format!("\u{feff}{two}\r\n\r\n{three}\r\n\n \t\r\n");
    brings(&sent, 2, 0, 0);
    let incoming = check(&Journal::default(), &sent).unwrap();
    let texts: Vec<&str> = incoming.lines.iter().map(|line| line.text.as_str()).collect();
    assert_eq!(texts, [two, three]);
}

#[test]
fn a_line_of_a_later_version_comes_through_untouched() {
    let newer = note(2, "oak").replace("\"note\"", "\"hologram\"");
    let field = note(3, "elm").replace("\"text\"", "\"mood\" : [1e3, null],\"text\"");
    let spaced = note(4, "ash").replace("\"v\":1", "\"v\" : 1 ");
    let unreadable = note(5, "fir").replace("2026-11-20", "2026-13-20");
    let file = [newer, field, spaced, unreadable, String::new()].join("\n");
    let mut journal = Journal::default();
    let incoming = check(&journal, &file).unwrap();
    assert_eq!((incoming.new, incoming.newer, incoming.unreadable), (4, 1, 1));
    assert_eq!(incoming.merge_into(&mut journal), Vec::<Box<str>>::new());
    assert_eq!(write(&journal), file);
}

#[test]
fn a_clock_that_was_wrong_is_said_and_no_reason_to_refuse() {
    let at = |ms: &str| check(&Journal::default(), &NOTE.replace("1795161600000", ms)).unwrap().wrong_clock;
    assert_eq!(["0", "-1", "946684799999", "4102444800000", "9223372036854775807"].map(at), [1; 5]);
    assert_eq!(["946684800000", "4102444799999"].map(at), [0; 2]);
}

#[test]
fn bringing_in_a_file_again_changes_nothing() {
    let mut journal = Journal::default();
    let file = write(&history().journal);
    let first = check(&journal, &file).unwrap();
    assert_eq!((first.new, first.known), (6, 0));
    first.merge_into(&mut journal);
    let again = check(&journal, &file).unwrap();
    assert!(again.is_empty() && again.known == 6);
    assert_eq!(write(&journal), file);
}

#[test]
fn a_broken_file_changes_nothing() {
    let mut journal = history().journal;
    let before = write(&journal);
    let file = format!("{}\n{}\nwood", note(2, "oak"), note(3, "elm"));
    let taken = check(&journal, &file).map(|incoming| incoming.merge_into(&mut journal));
    assert!(taken.is_err());
    assert_eq!(write(&journal), before);
}

/// Notes of several devices; some under one id with other words.
fn lines() -> impl Strategy<Value = Vec<String>> {
    let line = (0..12_u64, 0..3_u64, "[a-z\u{2028}é ]{1,9}").prop_map(|(id, device, text)| {
        let body = Note { on: On::Day(Day::parse("2026-11-20").unwrap()), text, bearer: None };
        let pen = Pen { device: numbered(2, device), now_ms: 1_795_000_000_000 };
        let change = Change::write(numbered(1, id % 4), body);
        let line = pen.write(&Journal::default(), &[change], &mut || numbered(3, id)).remove(0);
        line.text
    });
    prop::collection::vec(line, 0..30)
}

fn brought(files: &[&str]) -> String {
    let mut journal = Journal::default();
    for file in files {
        check(&journal, file).unwrap().merge_into(&mut journal);
    }
    write(&journal)
}

#[test]
fn a_file_cut_before_its_first_line_brings_nothing() {
    let incoming = check_bytes(&Journal::default(), b"").unwrap();
    assert_eq!((incoming.new, incoming.known, incoming.clashing), (0, 0, 0));
}

proptest! {
    #[test]
    fn the_order_of_files_and_of_lines_in_them_changes_nothing(
        lines in lines(), cut in any::<prop::sample::Index>(),
    ) {
        let (one, two) = lines.split_at(cut.index(lines.len() + 1));
        let (one, two) = (one.join("\n"), two.join("\r\n"));
        let forth = brought(&[&one, &two]);
        prop_assert_eq!(&forth, &brought(&[&two, &one]));
        let mut backwards = lines.clone();
        backwards.reverse();
        prop_assert_eq!(&forth, &brought(&[&backwards.join("\n")]));
        prop_assert_eq!(&forth, &brought(&[&forth]));
    }

    #[test]
    fn counts_add_up_to_the_lines_of_the_file(lines in lines(), here in lines()) {
        let mut journal = Journal::default();
        check(&journal, &here.join("\n")).unwrap().merge_into(&mut journal);
        let before = journal.len();
        let incoming = check(&journal, &lines.join("\n")).unwrap();
        prop_assert_eq!(incoming.new + incoming.known + incoming.clashing, lines.len());
        incoming.merge_into(&mut journal);
        prop_assert_eq!(journal.len(), before + incoming.new);
    }

    #[test]
    fn no_bytes_stop_the_reading(file in prop::collection::vec(any::<u8>(), 0..300)) {
        let _ = check_bytes(&Journal::default(), &file);
    }

    #[test]
    fn a_file_cut_or_changed_anywhere_is_refused_or_read_whole(
        at in any::<prop::sample::Index>(), byte in any::<u8>(), cut in any::<bool>(),
    ) {
        let mut file = write(&history().journal).into_bytes();
        let at = at.index(file.len());
        if cut { file.truncate(at) } else { file[at] = byte }
        let whole = file.split(|byte| *byte == b'\n').filter(|line| !line.is_empty()).count();
        match check_bytes(&Journal::default(), &file) {
            Ok(incoming) => prop_assert!(incoming.new + incoming.known + incoming.clashing + 1 >= whole),
            Err(bad) => prop_assert!(bad.line >= 1 && bad.line <= whole + 1),
        }
    }
}
