//! Person-hours at that person's rate on that day.

use super::{check, fixture};
use crate::costing::{Flag, Gap};

#[test]
fn each_stretch_takes_the_rate_of_its_person() {
    check(
        "person Wren 26
        person Tobin 22
        build bench
        stretch Wren mill from 09:00 to 12:00 for bench on 2026-02-07 as s1
        stretch Tobin mill from 09:00 to 11:00 for bench as s2
        stretch Wren mill from 10:00 to 13:00 for bench on 2026-02-08 as s3
        stretch Wren cut min 150 for bench as s4",
        "true.labour",
        2,
        "
        labour 265.00
          stage_mill 200.00
            s1 78.00
            s2 44.00
            s3 78.00
          stage_cut 65.00
            s4 65.00
        ",
    );
}

#[test]
fn a_stretch_over_midnight_takes_the_rate_of_the_day_it_began() {
    // 22:00 to 02:00 over a change of rate at that midnight: 4 h at the old 26.
    check(
        "person Ana 26
        rate Ana 28 from 2026-07-01
        build bench
        stretch Ana sand from 22:00 to +02:00 for bench on 2026-06-30 as night
        stretch Ana sand from 08:00 to 09:00 for bench on 2026-07-01 as day",
        "true.labour.stage_sand",
        1,
        "
        stage_sand 132.00
          night 104.00
          day 28.00
        ",
    );
}

#[test]
fn of_two_stretches_at_once_the_later_takes_the_time_and_it_is_said() {
    // Sand 13 to 15, shoot 14:30 to 15:30: 1.5 h and 1 h.
    let history = "
        person Ana 10
        build bench
        stretch Ana sand from 13:00 to 15:00 for bench as sanding
        stretch Ana shoot from 14:30 to 15:30 for bench as shooting";
    check(
        history,
        "true.labour",
        1,
        "
        labour 25.00
          stage_sand 15.00
          stage_shoot 10.00
    ",
    );
    let it = fixture(history);
    let cost = it.books().build_cost(it.id("bench"));
    assert_eq!(cost.true_cost.flags, [Flag::Overlap { entry: it.id("sanding") }]);
}

#[test]
fn paid_hours_are_money_and_unpaid_ones_are_not() {
    let history = "
        person Ana 26
        person Ada 20 paid
        build bench
        stretch Ana sand min 60 for bench
        stretch Ada sand min 90 for bench as helped";
    check(
        history,
        "bridge",
        3,
        "
        bridge 56.00
          used 30.00
            spent 30.00
              paid-labour 30.00
          - not-drawn 0.00
            other-stock 0.00
          rest_labour 26.00
            stage_sand 26.00
              stretch 26.00
    ",
    );
    check(
        history,
        "own-hours",
        1,
        "
        own-hours 1 h
          labour 1 h
          timber 0 h
    ",
    );
}

#[test]
fn hours_on_a_lot_or_on_the_shop_are_not_labour_of_a_build() {
    check(
        "person Ana 26
        build bench
        lot oak salvaged 10 paid 0 yield 1
        stretch Ana sand min 60 for bench
        stretch Ana reclaim min 60 for oak
        stretch Ana clean-up min 60 for shop",
        "true",
        1,
        "
        true 26.00
          labour 26.00
        ",
    );
}

#[test]
fn a_running_clock_counts_up_to_now_and_is_said() {
    let mut it = fixture("person Ana 26\n build bench");
    it.add("stretch Ana sand from 08:00 for bench as clock");
    let noon = crate::measure::Instant(
        it.zone.start_of(crate::measure::Day::parse("2026-02-01").unwrap()).0 + 12 * 3600,
    );
    let cost = crate::costing::Books::close(&it.shop(), noon).build_cost(it.id("bench"));
    assert_eq!(cost.true_cost.money().map(|it| it.shown(2)).as_deref(), Some("104.00"));
    assert_eq!(cost.true_cost.flags, [Flag::Running { entry: it.id("clock") }]);
}

#[test]
fn without_a_rate_the_line_has_no_value_and_the_sum_says_so() {
    let history = "
        person Ana 26
        person Bo
        build bench
        stretch Ana sand min 60 for bench as hers
        stretch Bo sand min 60 for bench as his";
    check(
        history,
        "true.labour.stage_sand",
        1,
        "
        stage_sand 26.00
          hers 26.00
          his -
    ",
    );
    let it = fixture(history);
    let gaps = it.books().build_cost(it.id("bench")).true_cost.gaps;
    assert!(gaps.contains(&Gap::NoRate { person: it.id("Bo") }), "{gaps:?}");
}

#[test]
fn a_rate_that_starts_later_leaves_earlier_days_without_one() {
    check(
        "person Ana
        rate Ana 26 from 2026-02-10
        build bench
        stretch Ana sand min 60 for bench on 2026-02-09 as before
        stretch Ana sand min 60 for bench on 2026-02-10 as since",
        "true.labour.stage_sand",
        1,
        "
        stage_sand 26.00
          before -
          since 26.00
        ",
    );
}
