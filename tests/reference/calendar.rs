//! Calendar files against RFC 5545 as others read it.

use benchslate_core::{
    exchange::calendar::{
        DateOf, Event, Head, Of, Planned, Span, Uid, file, gone, of_plan, of_shop, planned, sequence,
    },
    exchange::jsonl,
    journal::{Body, Change, Id, Journal, Pen, Shop, kinds},
    measure::{Day, Instant, Seconds},
    planning::{Asked, Plan},
};
use chrono_tz::America::Toronto;
use icalendar::{
    Calendar, CalendarComponent, Component,
    parser::{read_calendar, unfold},
};

const NOW: Instant = Instant(1_795_186_800); // 2026-11-20T15:00:00Z

fn day(text: &str) -> Day {
    Day::parse(text).unwrap()
}

fn event(title: &str, span: Span, alarm: Option<Seconds>) -> Event {
    let uid = Uid { entry: Id::of([7; 16]), date: DateOf::Due };
    Event { uid, title: title.to_owned(), note: String::new(), span, alarm, off: false }
}

fn written(events: &[Event]) -> String {
    file(&Head { name: "Bench", stamp: NOW, sequence: 12 }, events)
}

/// The first line of a name, put together again as the standard says.
fn line(file: &str, name: &str) -> String {
    let unfolded = file.replace("\r\n ", "");
    unfolded.split("\r\n").find(|line| line.starts_with(name)).unwrap_or_default().to_owned()
}

// Source: published — RFC 5545, 3.1 (folding, its own example) and 3.3.11 (text).
#[test]
fn text_is_escaped_and_folded_as_the_standard_says() {
    let span = Span::Moment(NOW);
    let file = written(&[event("Glue-up; clamp, then C:\\jobs\nline 2", span, None)]);
    assert_eq!(line(&file, "SUMMARY"), "SUMMARY:Glue-up\\; clamp\\, then C:\\\\jobs\\nline 2");
    let quotes = written(&[event("\"two: fold\"", span, None)]);
    assert_eq!(line(&quotes, "SUMMARY"), "SUMMARY:\"two: fold\"", "colon and quote stand as they are");
    for title in ["é".repeat(50), "x".repeat(67), "x".repeat(68), "𝄞".repeat(40)] {
        let file = written(&[event(&title, span, None)]);
        assert_eq!(line(&file, "SUMMARY"), format!("SUMMARY:{title}"));
        for part in file.split("\r\n") {
            assert!(part.len() <= 75, "{part}");
        }
    }
    let long = written(&[event(&"é".repeat(50), span, None)]);
    assert!(long.split("\r\n").any(|line| line.starts_with(' ')), "108 octets take two lines at the least");
}

// Source: published — RFC 5545, 3.6.1: DTEND is exclusive; 3.6.6 and 3.3.6: alarms.
#[test]
fn whole_days_end_before_the_next_and_alarms_ring_before() {
    let days = Span::Days { first: day("2024-02-28"), last: day("2024-02-29") };
    let file = written(&[event("Hall", days, Some(Seconds(15 * 60)))]);
    for want in ["DTSTART;VALUE=DATE:20240228", "DTEND;VALUE=DATE:20240301", "TRIGGER:-PT15M"] {
        assert!(file.contains(&format!("\r\n{want}\r\n")), "{want}");
    }
    let file = written(&[event("Hall", days, Some(Seconds(86_400)))]);
    for want in ["TRIGGER:-P1D", "ACTION:DISPLAY", "DESCRIPTION:Hall"] {
        assert!(file.contains(&format!("\r\n{want}\r\n")), "{want}");
    }
}

// Source: library — iso8601 0.6 (crates.io), for the length of an alarm.
#[test]
fn the_length_of_an_alarm_is_read_back() {
    for seconds in [0_i64, 1, 59, 60, 61, 900, 3_600, 3_605, 54_000, 86_399, 86_400, 90_061, 31 * 86_400] {
        let file = written(&[event("Hall", Span::Moment(NOW), Some(Seconds(seconds)))]);
        let trigger = line(&file, "TRIGGER");
        let text = trigger.trim_start_matches("TRIGGER:").trim_start_matches('-');
        let read = std::time::Duration::from(iso8601::duration(text).unwrap());
        assert_eq!(i64::try_from(read.as_secs()), Ok(seconds), "{text}");
        assert_eq!(trigger.contains(":-"), seconds > 0, "{trigger}");
    }
}

// Source: library — icalendar 0.17 (crates.io), its parser and its model.
#[test]
fn an_independent_reader_gives_every_event_back() {
    let titles = ["Glue-up; clamp, then C:\\jobs\nline 2", "é, 𝄞 and \"quotes\"", "Oil: 2 coats"];
    let spans = [
        Span::Days { first: day("2026-12-09"), last: day("2026-12-09") },
        Span::Moment(NOW),
        Span::Moments { from: NOW, to: Instant(NOW.0 + 5_400) },
    ];
    let events: Vec<Event> = titles
        .iter()
        .zip(spans)
        .map(|(title, span)| event(&format!("{title} {}", "long ".repeat(20)), span, Some(Seconds(900))))
        .collect();
    let file = written(&events);
    let unfolded = unfold(&file);
    let read: Calendar = read_calendar(&unfolded).unwrap().into();
    let got: Vec<&icalendar::Event> = read
        .components
        .iter()
        .filter_map(|it| if let CalendarComponent::Event(it) = it { Some(it) } else { None })
        .collect();
    assert_eq!(got.len(), events.len());
    for (read, wrote) in got.iter().zip(&events) {
        assert_eq!(read.get_summary(), Some(&wrote.title[..]));
        assert_eq!(read.property_value("SEQUENCE"), Some("12"));
        assert_eq!(read.get_uid(), Some("07070707-0707-0707-0707-070707070707-due@benchslate"));
        assert_eq!(read.property_value("DTSTAMP"), Some("20261120T150000Z"));
    }
    let starts: Vec<String> = got.iter().map(|it| it.property_value("DTSTART").unwrap().to_owned()).collect();
    assert_eq!(starts, ["20261209", "20261120T150000Z", "20261120T150000Z"]);
    let ends: Vec<Option<&str>> = got.iter().map(|it| it.property_value("DTEND")).collect();
    assert_eq!(ends, [Some("20261210"), None, Some("20261120T163000Z")]);
}

// Source: library — icalendar 0.17 (crates.io), over the sample shop.
#[test]
fn the_sample_shop_has_its_dates_in_a_calendar() {
    let mut journal = Journal::default();
    let sample = include_bytes!("../../public/sample-shop.jsonl");
    jsonl::check_bytes(&journal, sample).unwrap().merge_into(&mut journal);
    let shop = Shop::fold(&journal, &crate::zones::probed(Toronto));
    let mut dated = of_shop(&shop, None, day("2026-11-20"));
    let step = *shop.steps.keys().next().unwrap();
    let piece = Planned { step, title: "sand 24".to_owned(), from: NOW, to: Instant(NOW.0 + 3_600) };
    dated.extend(planned(&[piece]));
    let events: Vec<Event> = dated
        .iter()
        .map(|it| Event {
            uid: it.uid,
            title: format!("{:?}", it.uid.date),
            note: String::new(),
            span: it.span,
            alarm: None,
            off: false,
        })
        .collect();
    let head = Head { name: "Benchslate", stamp: NOW, sequence: sequence(&journal) };
    let text = file(&head, &events);
    let unfolded = unfold(&text);
    let read: Calendar = read_calendar(&unfolded).unwrap().into();
    let starts = |name: &str| -> Vec<String> {
        let events = read.components.iter().filter_map(|it| it.as_event());
        let named = events.filter(|it| it.get_summary() == Some(name));
        named.map(|it| it.property_value("DTSTART").unwrap().to_owned()).collect()
    };
    // The day of each piece, then what it owes.
    assert_eq!(starts("Due"), ["20261212", "20261210", "20261217", "20270227"]);
    // The second run by the common chain; the bench owes nothing, so nobody reviews its cut.
    assert_eq!(starts("Cut"), ["20261209", "20270308"]);
    assert_eq!(starts("Publish"), ["20261217", "20270311"]);
    assert_eq!(starts("Piece(1)"), ["20261120T150000Z"]);
    let mut uids: Vec<&str> =
        read.components.iter().filter_map(|it| it.as_event()).filter_map(|it| it.get_uid()).collect();
    let all = uids.len();
    uids.sort_unstable();
    uids.dedup();
    assert_eq!(uids.len(), all, "each has a name of its own");
}

/// Everything that the sample shop's file holds, read back: UID, SEQUENCE, STATUS and whether it rings.
fn read_back(journal: &Journal) -> Vec<(String, u32, Option<String>, bool)> {
    let shop = Shop::fold(journal, &crate::zones::probed(Toronto));
    let (today, build) = (day("2026-11-20"), None);
    let plan = Plan::of(&Asked::of(&shop, NOW, None).asking(&shop));
    let mut dated = of_shop(&shop, build, today);
    dated.extend(of_plan(&plan, &shop, build));
    let off = gone(&Of { journal, shop: &shop, plan: &plan, build, today }, &dated);
    let there = dated.len();
    let event = |(at, it): (usize, &benchslate_core::exchange::calendar::Dated)| Event {
        uid: it.uid,
        title: "any".to_owned(),
        note: String::new(),
        span: it.span,
        alarm: Some(Seconds(900)),
        off: at >= there,
    };
    let events: Vec<Event> = dated.iter().chain(&off).enumerate().map(event).collect();
    let text = file(&Head { name: "Benchslate", stamp: NOW, sequence: sequence(journal) }, &events);
    let unfolded = unfold(&text);
    let read: Calendar = read_calendar(&unfolded).unwrap().into();
    let row = |it: &icalendar::Event| {
        let value = |name| it.property_value(name).map(str::to_owned);
        let sequence = value("SEQUENCE").unwrap().parse().unwrap();
        let rings = it.try_into_string().unwrap().contains("BEGIN:VALARM");
        (value("UID").unwrap(), sequence, value("STATUS"), rings)
    };
    read.components.iter().filter_map(|it| it.as_event()).map(row).collect()
}

// Source: published — RFC 5545, 3.8.1.11 (STATUS of an event that is off), 3.8.7.4 (SEQUENCE rises); library — icalendar
// 0.17 (crates.io), which reads it back.
#[test]
fn what_is_done_met_or_struck_out_is_called_off_under_its_own_name() {
    let mut journal = Journal::default();
    let sample = include_bytes!("../../public/sample-shop.jsonl");
    jsonl::check_bytes(&journal, sample).unwrap().merge_into(&mut journal);
    let shop = Shop::fold(&journal, &crate::zones::probed(Toronto));
    let step = |title: &str| *shop.steps.iter().find(|(_, it)| it.body.title == title).unwrap().0;
    let (sand, handles) = (step("sand 24"), step("screw on handles"));
    let due = *shop.dues.keys().next().unwrap();
    let before = read_back(&journal);
    let today = Some(day("2026-11-20"));
    let Some(Body::Step(body)) = journal.body(sand).cloned() else { panic!("a step") };
    let Some(Body::Due(owed)) = journal.body(due).cloned() else { panic!("a due") };
    let changes = [
        Change::write(sand, kinds::Step { done: today, ..body }),
        Change::write(due, kinds::Due { done: today, ..owed }),
        Change::strike(handles),
    ];
    let mut number = 200_u8;
    let mut fresh = || {
        number += 1;
        Id::of([number; 16])
    };
    let pen = Pen { device: Id::of([9; 16]), now_ms: 1_795_200_000_000 };
    for line in pen.write(&journal, &changes, &mut fresh) {
        journal.add(&line.text).unwrap();
    }
    let after = read_back(&journal);
    for uid in [format!("{sand}-piece-1"), format!("{handles}-piece-1"), format!("{due}-due")] {
        let uid = format!("{uid}@benchslate");
        let find = |all: &[(String, u32, Option<String>, bool)]| {
            all.iter().find(|it| it.0 == uid).cloned().unwrap_or_else(|| panic!("no {uid}"))
        };
        let (was, is) = (find(&before), find(&after));
        assert_eq!((was.2, was.3), (None, true), "{uid}");
        assert_eq!((is.2.as_deref(), is.3), (Some("CANCELLED"), false), "{uid}");
        assert!(is.1 > was.1, "{uid}");
    }
    let mut uids: Vec<&String> = after.iter().map(|it| &it.0).collect();
    let all = uids.len();
    uids.sort_unstable();
    uids.dedup();
    assert_eq!(uids.len(), all, "each has a name of its own");
}
