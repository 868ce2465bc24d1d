//! Shots against the steps of a build.

use super::{Before, Listed, Standing, added, listed, next, since_copied, with_camera};
use crate::{
    fixture::{Fixture, fixture},
    journal::Shop,
    measure::{Ratio, Seconds},
};

const PLAN: &str = "
    person Ana 26
    build trays
    step sand-24 trays sand
    step coat trays finish after sand-24
    step coat-2 trays finish after coat
    shot grit trays step sand-24 nice takes 2
    shot wipe trays step coat before once set-up 15 seconds 40
    shot drips trays step coat once
    shot cured trays step coat after once
    shot stack trays
";

fn said(it: &Fixture, shop: &Shop) -> Vec<String> {
    let say = |one: &Listed| {
        let how = match one.standing {
            Standing::Open => "open",
            Standing::Late => "late",
            Standing::Ahead => "ahead",
            Standing::Missed => "missed",
            Standing::Taken => "taken",
            Standing::Waived => "waived",
        };
        let before = match one.before {
            Some(Before::Begins(step)) => format!(" before {}", it.name(step)),
            Some(Before::Ends(step)) => format!(" in {}", it.name(step)),
            None => String::new(),
        };
        format!("{} {how}{before}{}", it.name(one.shot), if one.closing { ", now" } else { "" })
    };
    listed(shop, it.id("trays")).iter().map(say).collect()
}

#[track_caller]
fn check(lines: &str, want: &[&str], then: Option<&str>) {
    let it = fixture(&format!("{PLAN}{lines}"));
    let shop = it.shop();
    assert_eq!(said(&it, &shop), want);
    let all = listed(&shop, it.id("trays"));
    assert_eq!(next(&all).map(|one| it.name(one.shot)).as_deref(), then);
}

#[test]
fn before_anything_has_begun_the_first_step_is_next() {
    let want = [
        "grit ahead",
        "wipe ahead before coat",
        "drips ahead in coat",
        "cured ahead before coat-2",
        "stack open",
    ];
    check("", &want, Some("stack"));
}

#[test]
fn what_must_come_before_the_next_step_is_told_while_this_one_goes_on() {
    let want = [
        "grit open",
        "wipe open before coat, now",
        "drips ahead in coat",
        "cured ahead before coat-2",
        "stack open",
    ];
    check("stretch Ana sand min 60 for trays", &want, Some("grit"));
    check("stretch Ana sand min 60 for trays step sand-24", &want, Some("grit"));
}

#[test]
fn once_only_is_missed_when_its_step_begins_and_any_other_is_late() {
    let begun = "stretch Ana sand min 60 for trays\nstretch Ana finish min 60 for trays";
    let want = [
        "grit late",
        "wipe missed",
        "drips open in coat, now",
        "cured ahead before coat-2, now",
        "stack open",
    ];
    check(begun, &want, Some("drips"));
}

#[test]
fn after_a_step_lasts_until_the_next_one_begins() {
    let plan = PLAN.replace("after sand-24", "after sand-24 done 2026-02-01");
    let worked = "stretch Ana finish min 60 for trays\n";
    let it = fixture(&format!("{plan}{worked}"));
    assert_eq!(said(&it, &it.shop())[3], "cured open before coat-2, now");
    // The stretch of the day after goes to the second coat: the first is done.
    let it = fixture(&format!("{plan}{worked}stretch Ana finish min 30 for trays on 2026-02-03"));
    assert_eq!(said(&it, &it.shop())[3], "cured missed");
}

#[test]
fn a_keeper_or_as_many_takes_as_were_wanted_make_a_shot() {
    let one = "stretch Ana sand min 60 for trays\ntake grit";
    let it = fixture(&format!("{PLAN}{one}"));
    assert_eq!(said(&it, &it.shop())[0], "grit open");
    for more in ["take grit", "take grit clip c412 keep"] {
        let it = fixture(&format!("{PLAN}{one}\n{more}"));
        assert_eq!(said(&it, &it.shop())[0], "grit taken");
    }
    let it = fixture(&format!("{PLAN}take wipe keep"));
    assert_eq!(said(&it, &it.shop())[1], "wipe taken");
}

#[test]
fn a_shot_is_waived_and_a_take_still_counts() {
    let plan = PLAN.replace("before once", "before once waived 2026-02-01");
    let it = fixture(&format!("{plan}stretch Ana sand min 60 for trays"));
    assert_eq!(said(&it, &it.shop())[1], "wipe waived");
    let it = fixture(&format!("{plan}take wipe"));
    assert_eq!(said(&it, &it.shop())[1], "wipe taken");
}

#[test]
fn a_shot_whose_step_was_struck_out_belongs_to_the_build() {
    let it = fixture(&format!("{PLAN}strike coat"));
    let shop = it.shop();
    let wipe = listed(&shop, it.id("trays")).into_iter().find(|one| one.shot == it.id("wipe")).unwrap();
    assert!(wipe.step_lost && wipe.step.is_none() && wipe.before.is_none());
    assert_eq!(wipe.standing, Standing::Open);
    assert_eq!(shop.odd.iter().filter(|(entry, _)| *entry == wipe.shot).count(), 1);
}

#[test]
fn steps_that_name_nothing_before_them_follow_as_they_were_written() {
    let plan = PLAN.replace("after sand-24", "").replace("after coat\n", "\n");
    let it = fixture(&format!("{plan}stretch Ana sand min 60 for trays"));
    assert_eq!(said(&it, &it.shop())[1], "wipe open before coat, now");
}

#[test]
fn what_was_shot_since_the_card_was_copied_is_known() {
    let lines = "take grit time 09:00\ntake wipe time 10:00\ncard trays time 10:30\ntake stack time 11:00";
    let it = fixture(&format!("{PLAN}{lines}"));
    let shop = it.shop();
    let since: Vec<String> =
        since_copied(&shop, it.id("trays")).iter().map(|take| it.name(take.shot)).collect();
    assert_eq!(since, ["stack"]);
    let it = fixture(&format!("{PLAN}take grit\ntake wipe"));
    assert_eq!(since_copied(&it.shop(), it.id("trays")).len(), 2);
}

#[test]
fn shots_add_their_set_up_and_three_real_seconds_for_each_of_footage() {
    let plan = format!("{PLAN}shot close trays step coat nice takes 4 seconds 15 set-up 20\n");
    let sums = |lines: &str| {
        let it = fixture(&format!("{plan}{lines}"));
        let sums = added(&it.shop(), it.id("trays"), crate::measure::Day::parse("2026-02-01").unwrap());
        let coat = sums.get(&Some(it.id("coat"))).copied().unwrap_or_default();
        (coat.must.0, coat.nice.0)
    };
    // 15 min + 40 s × 3; 20 min + 4 × 15 s × 3.
    assert_eq!(sums(""), (1_020, 1_380));
    // One take had: it is set up, three more.
    assert_eq!(sums("take close"), (1_020, 135));
    assert_eq!(sums("take wipe keep"), (0, 1_380));
    assert_eq!(sums("setting shooting-seconds 2.5"), (1_000, 1_350));
    assert_eq!(sums("setting shooting-seconds nonsense"), (1_020, 1_380));
}

#[test]
fn a_step_is_slower_with_the_camera_there() {
    let quarter = Ratio::share(crate::measure::Dec::parse("0.25").unwrap().0).unwrap();
    assert_eq!(with_camera(Seconds(7_200), quarter, Seconds(1_020)), Seconds(10_020));
    assert_eq!(with_camera(Seconds(7_200), Ratio::ZERO, Seconds::ZERO), Seconds(7_200));
}

#[test]
fn the_bench_names_the_next_shot_and_what_is_about_to_be_too_late() {
    let it = fixture(&format!("{PLAN}stretch Ana sand from 08:00 to 09:00 for trays"));
    let mut shop = it.shop();
    let idle = crate::timing::bench::look(&shop, it.end(), None, None);
    assert_eq!((idle.shot, idle.closing.len()), (None, 1));
    // The same, while the clock runs.
    for stretch in &mut shop.stretches {
        if let crate::journal::shop::Time::Span(span) = &mut stretch.time {
            span.to = None;
        }
    }
    let bench = crate::timing::bench::look(&shop, it.end(), None, None);
    let shot = bench.shot.clone().unwrap();
    assert_eq!((shot.what.as_str(), shot.take), ("grit", 1));
    let closing = &bench.closing[0];
    assert_eq!((closing.what.as_str(), closing.step.as_str(), closing.ends), ("wipe", "coat", false));
    let text = serde_json::to_string(&bench).unwrap();
    assert_eq!(serde_json::from_str::<crate::timing::bench::Bench>(&text).unwrap(), bench);
}
