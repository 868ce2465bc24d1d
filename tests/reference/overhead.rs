//! Overhead applied by a rate that was set beforehand, against published examples.
//!
//! DIFFERENCE: the books set the rate by estimates of cost and hours and hold the actual cost beside it; here the rate is
//! what the shop costs in a month ÷ the hours of a normal month. So the actual cost stands as that of a month, and as many
//! normal hours as make the published rate of it. A year of theirs is one month here.

use benchslate_core::{
    costing::{CostKind, MonthBorne, Rule},
    fixture::{Fixture, fixture},
};

/// A cost, the hours of a normal month, and the hours worked on jobs, 1,000 at most by each of so many people.
fn month(cost: &str, normal: &str, hours: u32) -> Fixture {
    let mut it =
        fixture(&format!("setting normal {normal}\n monthly factory {cost} from 2026-02-01\n build job"));
    let mut left = hours;
    while left > 0 {
        let now = left.min(1_000);
        it.add(&format!("person p{left} 0"));
        it.add(&format!("stretch p{left} cut min {} for job on 2026-02-28", now * 60));
        left -= now;
    }
    it
}

#[track_caller]
fn check(it: &Fixture, applied: &str, not_borne: &str) {
    let books = it.books();
    let [month]: [MonthBorne; 1] = books.months(&it.shop()).try_into().expect("one month");
    assert_eq!(
        (month.applied.shown(2), month.not_borne().shown(2)),
        (applied.to_owned(), not_borne.to_owned())
    );
    assert_eq!(books.build_cost(it.id("job")).parts.overhead().shown(2), applied);
}

// Source: published — OpenStax, Principles of Accounting 2, ch. 4 (m68006), Kraken Boardsports: 33.50 an hour × 6,240 h is
// 209,040; 210 of what it came to are not applied.
#[test]
fn a_year_of_hours_leaves_some_of_the_cost_to_nobody() {
    // 209,250 ÷ 33.50, as near as six digits say it.
    check(&month("209250", "6246.268657", 6_240), "209040.00", "210.00");
}

// Source: published — the same chapter, exercise Tasty Box Meals: 4.00 an hour, 26,000 h bear 104,000 of 102,000.
#[test]
fn more_hours_than_were_thought_bear_more_than_it_costs() {
    check(&month("102000", "25500", 26_000), "104000.00", "-2000.00");
}

// Source: published — the same chapter, exercise Queen Bee's Honey: 110,000 ÷ 27,500 h is 4.00 an hour; 29,000 h bear
// 116,000 of 106,000, answers by its method.
#[test]
fn less_cost_than_was_thought_is_borne_too_often() {
    check(&month("106000", "26500", 29_000), "116000.00", "-10000.00");
}

// Source: published — OpenStax, Principles of Accounting 2, ch. 4 (m68005), exercise: overhead 20 an hour, 18 h and 29 h.
#[test]
fn two_jobs_at_twenty_an_hour() {
    let it = fixture(
        "setting normal 100
        monthly factory 2000
        person worker 23
        build one
        build two
        stretch worker cut min 1080 for one
        stretch worker cut min 1740 for two",
    );
    let overhead = |job: &str| {
        let cost = it.books().build_cost(it.id(job));
        let kind =
            cost.true_cost.part(|rule| matches!(rule, Rule::Kind { kind: CostKind::Overhead, .. })).cloned();
        kind.and_then(|kind| kind.money()).expect("applied").shown(2)
    };
    assert_eq!((overhead("one"), overhead("two")), ("360.00".into(), "580.00".into()));
}
