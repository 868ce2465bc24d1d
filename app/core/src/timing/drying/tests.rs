//! What dries, what of it was never said, what is offered.

use super::*;
use crate::{
    journal::{Body, stages::standing_id},
    measure::When,
    timing::clocks::tests::{ANA, BO, Bench, FINISH, SAND, TRAYS, clock, plain, when},
};

const GLUE_UP: Id = standing_id(7);
const EDIT: Id = standing_id(19);
const BUILD: Bearer = Bearer::Build(TRAYS);

fn stretch(person: Id, stage: Id, from: &str, to: Option<&str>) -> Body {
    let side = if stage == EDIT { Side::Film } else { Side::Piece };
    kinds::Stretch { stage, side, to: to.map(when), ..plain(person, from) }.into()
}

/// Writes what the act says.
fn dries_for(bench: &mut Bench, stretch: Id, held: Option<i64>, next: i64) -> Id {
    let shop = bench.shop();
    let entry = bench.fresh();
    let hours = |hours: i64| Seconds(hours * 3600);
    let changes = Hand { journal: &bench.journal, shop: &shop, now: clock("12:00"), fresh: &mut || entry }
        .dries(stretch, held.map(hours), hours(next));
    bench.write(&changes);
    entry
}

#[track_caller]
fn check(bench: &Bench, want: &[(Id, &str)]) {
    let got: Vec<(Id, Instant)> = dries(&bench.shop()).iter().map(|it| (it.entry, it.dry)).collect();
    let want: Vec<(Id, Instant)> = want.iter().map(|(entry, dry)| (*entry, clock(dry))).collect();
    assert_eq!(got, want);
}

#[test]
fn it_dries_from_the_end_of_its_stretch_wherever_that_is_moved() {
    let mut bench = Bench::new();
    let glue = bench.enter(stretch(ANA, GLUE_UP, "08:00", Some("09:00")));
    let entry = dries_for(&mut bench, glue, Some(1), 3);
    check(&bench, &[(entry, "12:00")]);
    assert_eq!(dries(&bench.shop())[0].held, Some(clock("10:00")));
    let mut earlier = bench.stored(glue);
    earlier.to = Some(when("08:45"));
    bench.write(&[Change::write(glue, earlier)]);
    check(&bench, &[(entry, "11:45")]);
}

#[test]
fn the_entry_stands_at_the_end_of_its_stretch() {
    let mut bench = Bench::new();
    let glue = bench.enter(stretch(ANA, GLUE_UP, "08:00", Some("09:00")));
    let entry = dries_for(&mut bench, glue, None, 24);
    let on: Option<When> = match bench.journal.body(entry).map(Body::on) {
        Some(On::At(at)) => Some(at),
        _ => None,
    };
    assert_eq!(on, Some(when("09:00")));
}

#[test]
fn said_once_more_it_is_put_right() {
    let mut bench = Bench::new();
    let glue = bench.enter(stretch(ANA, GLUE_UP, "08:00", Some("09:00")));
    let entry = dries_for(&mut bench, glue, Some(1), 3);
    dries_for(&mut bench, glue, None, 4);
    check(&bench, &[(entry, "13:00")]);
}

#[test]
fn until_a_time_is_the_first_time_that_it_comes() {
    let zone = Zone::utc();
    let at = |text: &str| zone.local(clock(text)).1;
    let (ended, friday) = (clock("11:20").plus(Seconds(30)), zone.day(clock("11:20")));
    let hours = |day, text| until(&zone, ended, day, at(text)).map(|it| it.0);
    assert_eq!(hours(None, "14:20"), Some(3 * 3600 - 30));
    assert_eq!(hours(None, "11:20"), Some(24 * 3600 - 30));
    assert_eq!(hours(Some(friday.succ().succ()), "11:20"), Some(48 * 3600 - 30));
    assert_eq!(hours(Some(friday), "11:00"), None);
}

#[test]
fn what_was_struck_out_or_runs_again_dries_nothing() {
    let mut bench = Bench::new();
    let glue = bench.enter(stretch(ANA, GLUE_UP, "08:00", Some("09:00")));
    let entry = dries_for(&mut bench, glue, None, 3);
    let ended = bench.stored(glue);
    bench.write(&[Change::write(glue, kinds::Stretch { to: None, ..ended.clone() })]);
    check(&bench, &[]);
    bench.write(&[Change::write(glue, ended)]);
    check(&bench, &[(entry, "12:00")]);
    bench.write(&[Change::strike(glue)]);
    check(&bench, &[]);
}

#[test]
fn what_has_dried_is_told_until_the_piece_is_worked_on_again() {
    let mut bench = Bench::new();
    let glue = bench.enter(stretch(ANA, GLUE_UP, "08:00", Some("09:00")));
    let entry = dries_for(&mut bench, glue, None, 1);
    // Other parts were sanded meanwhile, and the film was cut afterwards.
    bench.enter(stretch(ANA, SAND, "09:10", Some("10:10")));
    bench.enter(stretch(ANA, EDIT, "10:20", Some("10:40")));
    check(&bench, &[(entry, "10:00")]);
    bench.enter(stretch(ANA, SAND, "11:00", None));
    check(&bench, &[]);
}

#[test]
fn a_glue_up_or_a_coat_that_ended_last_is_asked_about_for_a_day() {
    let mut bench = Bench::new();
    let asked = |bench: &Bench, now: Instant| unsaid(&bench.shop(), BUILD, now).map(Stretch::entry);
    let coat = bench.enter(stretch(ANA, FINISH, "08:00", Some("09:00")));
    assert_eq!(asked(&bench, clock("09:00")), Some(coat));
    assert_eq!(asked(&bench, clock("09:00").plus(Seconds(24 * 3600))), None);
    // Changed over to: it still is, until that has ended too.
    let sand = bench.enter(stretch(ANA, SAND, "09:00", None));
    assert_eq!(asked(&bench, clock("10:00")), Some(coat));
    let ended = kinds::Stretch { to: Some(when("10:00")), ..bench.stored(sand) };
    bench.write(&[Change::write(sand, ended)]);
    assert_eq!(asked(&bench, clock("10:00")), None);
    bench.write(&[Change::strike(sand)]);
    dries_for(&mut bench, coat, None, 24);
    assert_eq!(asked(&bench, clock("10:00")), None);
}

#[test]
fn two_who_stop_together_stop_one_glue_up() {
    let mut bench = Bench::new();
    let mark = Some(Id::of([5; 16]));
    for person in [ANA, BO] {
        let both = kinds::Stretch {
            stage: GLUE_UP,
            to: Some(when("09:00")),
            together: mark,
            ..plain(person, "08:00")
        };
        bench.enter(both.into());
    }
    let shop = bench.shop();
    let last = unsaid(&shop, BUILD, clock("09:00")).map(Stretch::entry).unwrap();
    let other = shop.stretches.iter().map(Stretch::entry).find(|entry| *entry != last).unwrap();
    dries_for(&mut bench, other, None, 24);
    assert_eq!(unsaid(&bench.shop(), BUILD, clock("09:30")), None);
}

#[test]
fn the_times_given_last_at_that_stage_are_offered() {
    let mut bench = Bench::new();
    let coat = |bench: &mut Bench, from: &str, to: &str| bench.enter(stretch(ANA, FINISH, from, Some(to)));
    let first = coat(&mut bench, "06:00", "06:10");
    assert_eq!(offers(&bench.shop(), first), []);
    dries_for(&mut bench, first, Some(12), 24);
    let glue = bench.enter(stretch(ANA, GLUE_UP, "06:20", Some("06:30")));
    dries_for(&mut bench, glue, Some(1), 4);
    let second = coat(&mut bench, "07:00", "07:10");
    dries_for(&mut bench, second, None, 72);
    let third = coat(&mut bench, "08:00", "08:10");
    dries_for(&mut bench, third, Some(12), 24);
    let now = coat(&mut bench, "09:00", "09:10");
    let got: Vec<(Option<i64>, i64)> = offers(&bench.shop(), now)
        .iter()
        .map(|it| (it.held.map(|held| held.0 / 3600), it.next.0 / 3600))
        .collect();
    assert_eq!(got, [(Some(12), 24), (None, 72)]);
}

#[test]
fn times_for_the_thing_that_was_drawn_come_first() {
    let mut bench = Bench::new();
    let item = |bench: &mut Bench, name: &str| {
        let on = On::Day(Day::parse("2026-11-01").unwrap());
        let (purpose, unit) = (kinds::Use::Consumable, crate::measure::Unit::Each);
        let item = kinds::Item::named(on, name, purpose, unit);
        bench.enter(item.into())
    };
    let draw = |bench: &mut Bench, item: Id, at: &str| {
        let draw = kinds::Draw {
            on: On::At(when(at)),
            from: Source::Item(item),
            quantity: crate::measure::Dec::parse("1").unwrap(),
            unit: crate::measure::Unit::Each,
            bearer: BUILD,
            side: None,
            stage: Some(FINISH),
            returns: None,
            note: None,
        };
        bench.enter(draw.into())
    };
    let (oil, wax) = (item(&mut bench, "oil"), item(&mut bench, "wax"));
    for (thing, from, to, at, hours) in [
        (oil, "06:00", "06:30", "06:10", 24),
        (wax, "07:00", "07:30", "07:10", 2),
        (oil, "08:00", "08:30", "08:10", 0),
    ] {
        let coat = bench.enter(stretch(ANA, FINISH, from, Some(to)));
        draw(&mut bench, thing, at);
        if hours > 0 {
            dries_for(&mut bench, coat, None, hours);
            continue;
        }
        let offered = offers(&bench.shop(), coat);
        let got: Vec<(i64, bool)> = offered.iter().map(|it| (it.next.0 / 3600, it.same_item)).collect();
        assert_eq!(got, [(24, true), (2, false)]);
    }
}
