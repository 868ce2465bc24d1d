//! Worked examples of hours cut one way and another, and the law that every cut comes to the same.

use super::*;
use crate::{
    fixture::{Fixture, fixture},
    journal::{
        Body, Change,
        kinds::{Span, Stretch as Stored},
    },
    measure::{Dec, When},
    timing::clocks::tests::{ANA, BO, Bench, TRAYS, clock, plain, when},
};
use proptest::prelude::*;

const SHOP: &str = "
    person Ana 26
    person Bo
    build trays
    build bench";

fn shop(lines: &str) -> Fixture {
    fixture(&format!("{SHOP}\n{lines}"))
}

fn of(it: &Fixture, build: &str) -> Breakdown {
    breakdown(&it.shop(), Bearer::Build(it.id(build)), it.end(), Weekday::Monday)
}

/// `sand 1:30` and its like, an indented line a row; entries are left out.
fn said(it: &Fixture, rows: &[Row], level: usize, text: &mut String) {
    for row in rows {
        let name = match row.of {
            Of::Side(side) => format!("{side:?}"),
            Of::Stage(id) | Of::Person(id) => it.name(id),
            Of::Week(day) => format!("week {day}"),
            Of::Day(day) => day.to_string(),
            Of::Entry(_) => continue,
        };
        let (hours, minutes) = row.shown.hours_minutes();
        text.push_str(&format!("{}{name} {hours}:{minutes:02}\n", "  ".repeat(level)));
        said(it, &row.rows, level + 1, text);
    }
}

#[track_caller]
fn check(it: &Fixture, rows: &[Row], want: &str) {
    let mut got = String::new();
    said(it, rows, 0, &mut got);
    let strip = |text: &str| text.lines().map(str::trim).collect::<Vec<_>>().join("\n").trim().to_owned();
    assert_eq!(strip(&got), strip(want));
}

#[test]
fn hours_of_cutting_are_told_by_the_minute_of_the_film() {
    let before = shop("stretch Ana edit min 480 for trays\nstretch Ana shoot min 60 for trays");
    assert_eq!(of(&before, "trays").per_minute, None);
    let it = shop(
        "stretch Ana edit min 480 for trays\nstretch Ana shoot min 60 for trays\n\
         film trays footage 90 finished 12.5\nfilm bench finished 0",
    );
    let film = of(&it, "trays").per_minute.unwrap();
    // 8 h over 12.5 minutes are 38 minutes and 24 seconds for each; 90 over 12.5 are 7.2.
    assert_eq!((film.edited, film.edit), (Seconds(8 * 3600), Seconds(2304)));
    assert_eq!(film.footage.map(|it| Dec::from(it).plain()), Some("7.2".into()));
    assert_eq!(of(&it, "bench").per_minute, None);
}

#[test]
fn overlapping_hours_of_one_person_count_once() {
    // Worked example: sand 13 to 15, shoot 14:30 to 15:30 is 1.5 h and 1 h.
    let it = shop(
        "stretch Ana sand from 13:00 to 15:00 for trays
         stretch Ana shoot from 14:30 to 15:30 for trays side film",
    );
    let hours = of(&it, "trays");
    check(&it, &hours.by_stage, "Piece 1:30\n sand 1:30\nFilm 1:00\n shoot 1:00");
    assert_eq!((hours.worked, hours.wall, hours.overlaps), (Seconds(9_000), Seconds(9_000), true));
    assert_eq!(hours.overlapped, Seconds(1_800));
    assert_eq!(hours.film_an_hour.map(Quantity::shown_trimmed).as_deref(), Some("0.666667"));
}

#[test]
fn two_people_two_hours_together_are_four_person_hours_and_two_on_the_wall() {
    let it = shop(
        "stretch Ana glue-up from 09:00 to 11:00 for trays
         stretch Bo glue-up from 09:00 to 11:00 for trays",
    );
    let hours = of(&it, "trays");
    assert_eq!((hours.worked, hours.wall), (Seconds(4 * 3_600), Seconds(2 * 3_600)));
    check(&it, &hours.by_person, "Ana 2:00\n glue-up 2:00\nBo 2:00\n glue-up 2:00");
}

#[test]
fn hours_logged_as_an_amount_have_no_place_on_the_wall() {
    let it = shop(
        "stretch Ana mill from 09:00 to 10:00 for trays
         stretch Ana edit min 90 for trays side film",
    );
    let hours = of(&it, "trays");
    assert_eq!((hours.worked, hours.as_amount, hours.wall), (Seconds(9_000), Seconds(5_400), Seconds(3_600)));
}

#[test]
fn what_another_build_took_is_not_on_this_ones_wall() {
    let it = shop(
        "stretch Ana sand from 13:00 to 15:00 for trays
         stretch Ana finish from 14:30 to 15:30 for bench",
    );
    assert_eq!(of(&it, "trays").wall, Seconds(5_400));
    assert_eq!(of(&it, "bench").wall, Seconds(3_600));
}

#[test]
fn days_stand_under_their_weeks_the_latest_first() {
    let it = shop(
        "stretch Ana mill min 60 for trays on 2026-02-06
         stretch Ana sand min 30 for trays on 2026-02-08
         stretch Ana sand from 22:00 to +02:00 for trays on 2026-02-09
         build next on 2026-02-11",
    );
    let want =
        "week 2026-02-09 4:00\n 2026-02-09 4:00\nweek 2026-02-02 1:30\n 2026-02-08 0:30\n 2026-02-06 1:00";
    check(&it, &of(&it, "trays").by_day, want);
}

#[test]
fn hours_for_both_are_in_neither_ratio() {
    let it =
        shop("stretch Ana set-up min 30 for trays side both\nstretch Ana edit min 60 for trays side film");
    assert_eq!(of(&it, "trays").film_an_hour, None);
}

fn span(from: &str, to: &str) -> Span {
    Span { from: when(from), to: Some(when(to)) }
}

#[test]
fn the_camera_counts_once_and_only_while_somebody_works() {
    let mut bench = Bench::new();
    // Both were filmed by one camera; Ana paused for a quarter of an hour while it rolled.
    let stretch = |person, pauses, rolling| Stored {
        to: Some(when("11:00")),
        pauses,
        rolling,
        ..plain(person, "09:00")
    };
    bench.enter(Body::from(stretch(ANA, vec![span("10:00", "10:15")], vec![span("09:30", "10:30")])));
    bench.enter(Body::from(stretch(BO, vec![], vec![span("10:10", "10:40")])));
    let shop = bench.shop();
    let hours = breakdown(&shop, Bearer::Build(TRAYS), clock("23:59"), Weekday::Monday);
    // 09:30 to 10:00, and 10:10 to 10:40.
    assert_eq!(hours.rolling, Seconds(3_600));
    assert_eq!(hours.on_camera.iter().map(|row| row.worked).collect::<Vec<_>>(), [Seconds(3_600)]);
}

#[test]
fn a_clock_runs_until_now_and_its_camera_too() {
    let mut bench = Bench::new();
    let rolling = vec![Span { from: when("09:30"), to: None::<When> }];
    bench.enter(Body::from(Stored { rolling, ..plain(ANA, "09:00") }));
    let hours = breakdown(&bench.shop(), Bearer::Build(TRAYS), clock("10:00"), Weekday::Monday);
    assert_eq!((hours.runs, hours.worked, hours.rolling), (true, Seconds(3_600), Seconds(1_800)));
}

fn total(rows: &[Row]) -> Seconds {
    rows.iter().fold(Seconds::ZERO, |sum, row| sum.plus(row.worked))
}

/// Parts make up their whole, exactly and as they are shown.
fn adds_up(rows: &[Row], worked: Seconds, shown: Seconds) -> Result<(), TestCaseError> {
    prop_assert_eq!(total(rows), worked);
    prop_assert_eq!(rows.iter().fold(Seconds::ZERO, |sum, row| sum.plus(row.shown)), shown);
    for row in rows.iter().filter(|row| !row.rows.is_empty()) {
        adds_up(&row.rows, row.worked, row.shown)?;
    }
    Ok(())
}

/// Person, stage, side, day, start and length in minutes and odd seconds; a length of nothing is an amount.
type Line = (u8, u8, u8, i64, i64, i64);

fn history(lines: &[Line]) -> Bench {
    let mut bench = Bench::new();
    for (person, stage, side, day, from, length) in lines {
        let zone = crate::measure::Zone::utc();
        let from = Instant(clock("06:00").0 + day * 86_400 + from * 61);
        let to = Instant(from.0 + length * 59);
        let stored = Stored {
            on: crate::journal::On::At(zone.when(from)),
            person: [ANA, BO][usize::from(*person)],
            stage: crate::journal::stages::standing_id(1 + stage),
            side: [Side::Piece, Side::Film, Side::Both][usize::from(*side)],
            ..plain(ANA, "09:00")
        };
        let spans = Stored {
            from: Some(zone.when(from)),
            to: Some(zone.when(to)),
            rolling: vec![Span {
                from: zone.when(Instant(from.0 + 600)),
                to: Some(zone.when(Instant(from.0 + 2_000))),
            }],
            ..stored.clone()
        };
        let amount =
            Stored { on: crate::journal::On::Day(zone.day(from)), from: None, minutes: Some(45), ..stored };
        let entry = bench.fresh();
        bench.write(&[Change::write(entry, if *length == 0 { amount } else { spans })]);
    }
    bench
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    #[test]
    fn by_stage_by_person_and_by_day_come_to_the_same(
        lines in prop::collection::vec((0..2_u8, 0..6_u8, 0..3_u8, 0..20_i64, 0..700_i64, 0..300_i64), 0..25),
    ) {
        let shop = history(&lines).shop();
        let as_of = Instant(clock("23:59").0 + 30 * 86_400);
        let hours = breakdown(&shop, Bearer::Build(TRAYS), as_of, Weekday::Sunday);
        for rows in [&hours.by_stage, &hours.by_person, &hours.by_day] {
            adds_up(rows, hours.worked, hours.shown)?;
        }
        adds_up(&hours.on_camera, hours.rolling, minutes::alone(hours.rolling))?;
        let counted: i64 = super::super::worked(&shop, as_of).iter().map(|row| row.seconds.0).sum();
        prop_assert_eq!(hours.worked.0, counted);
        prop_assert!(hours.rolling <= hours.wall);
        prop_assert!(hours.wall.0 <= hours.worked.0 - hours.as_amount.0);
        // Nobody is at two places: the wall shows each person's own hours at least.
        let most = hours.by_person.iter().map(|row| row.worked.0).max().unwrap_or(0);
        prop_assert!(hours.wall.0 >= most - hours.as_amount.0);
    }
}
