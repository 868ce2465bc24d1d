//! Calendar files as they are written, and what has a date.

use super::*;
use crate::{
    fixture::fixture,
    journal::{
        Body, Change, On,
        kinds::{self, DueWhat},
    },
    planning::Plan,
};

fn day(text: &str) -> Day {
    Day::parse(text).unwrap()
}

fn one(span: Span, alarm: Option<Seconds>) -> String {
    let uid = Uid { entry: Id::of([7; 16]), date: DateOf::Due };
    let (title, note) = ("Glue-up; clamp, then C:\\jobs\nline 2".to_owned(), String::new());
    let head = Head { name: "Bench", stamp: Instant(1_795_186_800), sequence: 12 };
    file(&head, &[Event { uid, title, note, span, alarm, off: false }])
}

#[track_caller]
fn has(file: &str, lines: &[&str]) {
    for line in lines {
        assert!(file.split("\r\n").any(|it| it == *line), "{line} is not in\n{file}");
    }
}

#[test]
fn a_whole_day_ends_before_the_next() {
    let (first, last) = (day("2024-02-28"), day("2024-02-29"));
    let text = one(Span::Days { first, last }, Some(Seconds(86_400)));
    has(&text, &["DTSTART;VALUE=DATE:20240228", "DTEND;VALUE=DATE:20240301", "TRIGGER:-P1D"]);
    has(&text, &["SUMMARY:Glue-up\\; clamp\\, then C:\\\\jobs\\nline 2", "SEQUENCE:12"]);
    has(&text, &["UID:07070707-0707-0707-0707-070707070707-due@benchslate", "DTSTAMP:20261120T150000Z"]);
    assert!(text.starts_with("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:"));
    assert!(text.ends_with("END:VEVENT\r\nEND:VCALENDAR\r\n"));
}

#[test]
fn a_moment_has_no_end_and_rings_when_it_comes() {
    let text = one(Span::Moment(Instant(1_795_186_800)), Some(Seconds::ZERO));
    has(&text, &["DTSTART:20261120T150000Z", "TRIGGER:PT0S", "ACTION:DISPLAY", "TRANSP:TRANSPARENT"]);
    assert!(!text.contains("DTEND"));
}

#[test]
fn work_that_takes_no_time_has_no_end_before_its_start() {
    let at = Instant(1_795_186_800);
    assert!(!one(Span::Moments { from: at, to: at }, None).contains("DTEND"));
    has(&one(Span::Moments { from: at, to: Instant(at.0 + 60) }, None), &["DTEND:20261120T150100Z"]);
}

#[test]
fn pieces_of_a_step_are_numbered_and_keep_their_names() {
    let piece = |step: u8, from: i64| Planned {
        step: Id::of([step; 16]),
        title: "sand 24".to_owned(),
        from: Instant(from),
        to: Instant(from + 600),
    };
    let names: Vec<DateOf> =
        planned(&[piece(1, 0), piece(2, 600), piece(1, 1_200)]).iter().map(|it| it.uid.date).collect();
    assert_eq!(names, [DateOf::Piece(1), DateOf::Piece(1), DateOf::Piece(2)]);
}

#[test]
fn what_is_done_or_out_has_no_date_any_more() {
    let mut it = fixture("build bench");
    let (bench, today) = (it.id("bench"), day("2026-11-20"));
    let Some(Body::Build(body)) = it.journal.body(bench).cloned() else { panic!("a build") };
    it.write(Change::write(bench, kinds::Build { publish: Some(day("2026-12-17")), ..body }));
    let (due, on) = (Id::of([1; 16]), On::Day(today));
    let mut owed = kinds::Due {
        on,
        build: bench,
        what: DueWhat::Mention,
        words: None,
        day: Some(day("2026-12-17")),
        lead: None,
        after: None,
        outsider: None,
        done: None,
    };
    it.write(Change::write(due, owed.clone()));
    let dates = |it: &crate::fixture::Fixture| -> Vec<DateOf> {
        of_shop(&it.shop(), None, today).iter().map(|it| it.uid.date).collect()
    };
    assert_eq!(dates(&it), [DateOf::Due, DateOf::Cut, DateOf::Publish]);
    owed.done = Some(today);
    it.write(Change::write(due, owed));
    assert_eq!(dates(&it), [DateOf::Cut, DateOf::Publish]);
    let film = kinds::Film {
        on,
        build: bench,
        footage: None,
        finished: None,
        published: Some(today),
        address: None,
    };
    let before = sequence(&it.journal);
    it.write(Change::write(Id::of([2; 16]), film));
    assert_eq!(dates(&it), []);
    assert!(sequence(&it.journal) > before, "it rises with what is written");
}

#[test]
fn the_plan_of_a_build_is_in_the_file_piece_by_piece() {
    let it = fixture(
        "person Ana 26 free wed/18:00-21:00
build trays
build other
step sand trays sand who Ana hours ,4,
step coat other finish who Ana hours ,1,",
    );
    let shop = it.shop();
    let asked = crate::planning::Asked::of(&shop, it.end(), None);
    let plan = Plan::of(&asked.asking(&shop));
    let count = |build: Option<&str>| of_plan(&plan, &shop, build.map(|name| it.id(name))).len();
    // Four hours are two Wednesdays; the other build's hour is one piece.
    assert_eq!((count(Some("trays")), count(Some("other")), count(None)), (2, 1, 3));
    assert_eq!(plan.piece_over(&shop, it.id("trays")), plan.step(it.id("sand")).map(|it| it.end));
}

/// What is called off, by its date and the title of its step or build.
fn off(it: &crate::fixture::Fixture, today: &str) -> Vec<(DateOf, Id)> {
    let (journal, shop, today) = (&it.journal, &it.shop(), day(today));
    let plan = Plan::of(&crate::planning::Asked::of(shop, it.end(), None).asking(shop));
    let mut there = of_shop(shop, None, today);
    there.extend(of_plan(&plan, shop, None));
    let of = Of { journal, shop, plan: &plan, build: None, today };
    gone(&of, &there).into_iter().map(|it| (it.uid.date, it.uid.entry)).collect()
}

const COATS: &str = "person Ana 26 free wed/18:00-21:00
build trays due 2026-03-01
step sand trays sand who Ana hours 1,2,3
step coat trays finish who Ana hours 1,2,3 after sand
step again trays finish who Ana hours 1,2,3 after coat:24";

#[test]
fn the_due_day_and_planned_drying_are_in_the_file() {
    let it = fixture(COATS);
    let shop = it.shop();
    let due = of_shop(&shop, None, day("2026-02-01"));
    assert_eq!(
        due.iter().map(|it| it.uid).collect::<Vec<_>>(),
        [Uid { entry: it.id("trays"), date: DateOf::Due }]
    );
    let plan = Plan::of(&crate::planning::Asked::of(&shop, it.end(), None).asking(&shop));
    let dry = of_plan(&plan, &shop, None).into_iter().filter(|it| it.uid.date == DateOf::Dry);
    let want = (it.id("coat"), Span::Moment(plan.step(it.id("coat")).unwrap().next));
    assert_eq!(dry.map(|it| (it.uid.entry, it.span)).collect::<Vec<_>>(), [want]);
    assert_eq!(off(&it, "2026-02-01"), []);
}

#[test]
fn what_was_done_struck_out_or_moved_away_is_called_off() {
    let it = fixture(&COATS.replace("2,3 after sand", "2,3 after sand done 2026-02-01"));
    let coat = it.id("coat");
    assert_eq!(off(&it, "2026-02-01"), [(DateOf::Piece(1), coat), (DateOf::Dry, coat)]);
    let it = fixture(&format!("{COATS}\nstrike again"));
    assert!(off(&it, "2026-02-01").contains(&(DateOf::Piece(1), it.id("again"))));
    // Six hours when slow took two Wednesdays.
    let it = fixture(&COATS.replace("sand who Ana hours 1,2,3", "sand who Ana hours 1,2,6 done 2026-02-01"));
    let sand = it.id("sand");
    assert_eq!(off(&it, "2026-02-01"), [(DateOf::Piece(1), sand), (DateOf::Piece(2), sand)]);
}

#[test]
fn a_date_that_was_taken_away_and_a_build_that_is_closed_are_called_off() {
    let mut it = fixture("build trays due 2026-03-01");
    let trays = it.id("trays");
    let Some(Body::Build(body)) = it.journal.body(trays).cloned() else { panic!("a build") };
    let (due, publish) = (None, Some(day("2026-04-01")));
    it.write(Change::write(trays, kinds::Build { due, publish, ..body.clone() }));
    assert_eq!(off(&it, "2026-02-01"), [(DateOf::Due, trays)]);
    it.write(Change::write(trays, kinds::Build { publish: None, ..body }));
    assert_eq!(off(&it, "2026-02-01"), [(DateOf::Cut, trays), (DateOf::Publish, trays)]);
}
