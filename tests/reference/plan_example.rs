//! The plan of the sample shop's second run of trays, day by day, and its chances.
//!
//! The shop is invented; the figures were worked out by a program that shares no line with this one: a plain forward
//! schedule in another language, with another generator of random numbers and another library of zones.

use super::zones::probed;
use benchslate_core::{
    exchange::jsonl,
    journal::{Id, Journal, Shop},
    measure::{Instant, Map, When},
    planning::{Asking, Chance, Plan, Spread, Trial},
    timing::{Worked, worked},
};
use chrono_tz::Tz;

const SAMPLE: &str = include_str!("../../public/sample-shop.jsonl");
const NOW: &str = "2026-11-20T10:00:00-05:00";
/// The last moment of the day on which the cut must go out.
const UNTIL: &str = "2026-12-09T23:59:59-05:00";

struct Sample {
    shop: Shop,
    worked: Vec<Worked>,
    builds: Vec<Id>,
    until: Map<Id, Instant>,
}

fn at(text: &str) -> Instant {
    When::parse(text).expect(text).instant
}

impl Sample {
    fn read() -> Sample {
        let mut journal = Journal::default();
        jsonl::check(&journal, SAMPLE).expect("the sample").merge_into(&mut journal);
        let shop = Shop::fold(&journal, &probed(Tz::America__Toronto));
        let trays = shop.builds.iter().find(|(_, it)| it.title.ends_with("second run")).map(|(id, _)| *id);
        let builds: Vec<Id> = trays.into_iter().collect();
        let until = builds.iter().map(|id| (*id, at(UNTIL))).collect();
        Sample { worked: worked(&shop, at(NOW)), shop, builds, until }
    }

    fn asking(&self) -> Asking<'_> {
        let Sample { shop, worked, builds, until } = self;
        Asking { shop, worked, now: at(NOW), builds, until, filming: &[] }
    }

    fn step(&self, title: &str) -> Id {
        *self.shop.steps.iter().find(|(_, it)| it.body.title == title).expect(title).0
    }

    fn person(&self, name: &str) -> Id {
        *self.shop.people.iter().find(|(_, it)| it.name == name).expect(name).0
    }

    fn clock(&self, instant: Instant) -> String {
        let when = self.shop.zone.when(instant).to_string();
        when.get(5..16).expect("a moment").replace('T', " ")
    }
}

// Source: library — a program written apart from this one, over invented data: every piece of every step.
#[test]
fn the_trays_are_placed_day_by_day() {
    let sample = Sample::read();
    let plan = Plan::of(&sample.asking());
    let said: Vec<String> = plan
        .steps
        .iter()
        .map(|it| {
            let step = &sample.shop.steps.get(&it.step).expect("a step").body.title;
            let who = it.people.iter().map(|id| sample.shop.people.get(id).expect("one").name.clone());
            let who = who.collect::<Vec<_>>().join(" ");
            let pieces = it.pieces.iter().map(|(from, to)| {
                let (from, to) = (sample.clock(*from), sample.clock(*to));
                format!("{from}-{}", to.get(6..).expect("a time"))
            });
            format!(
                "{step}, {who}: {}; then {}",
                pieces.collect::<Vec<_>>().join(", "),
                sample.clock(it.next)
            )
        })
        .collect();
    // To the minute, cut off: a step that takes 6.3 h less 1 h 55 ends at 09:23.
    let want = [
        "sand 24, Wren: 11-21 09:00-13:00, 11-22 09:00-09:23; then 11-22 09:23",
        "rough cut, first half, Tobin: 11-21 09:00-13:00, 11-26 18:00-19:18; then 11-26 19:18",
        "first coat, Wren: 11-22 09:23-11:32; then 11-23 11:32",
        "second coat, Wren: 11-25 18:00-19:39; then 11-28 19:39",
        "screw on handles, Wren: 11-29 09:00-10:30; then 11-29 10:30",
        "shoot finished trays, Tobin: 12-03 18:00-19:48; then 12-03 19:48",
        "edit lock, Tobin: 12-03 19:48-21:00, 12-05 09:00-12:06; then 12-05 12:06",
    ];
    assert_eq!(said, want);
    assert_eq!(plan.troubles, []);
    let finish = plan.builds[0].finish.expect("a finish");
    assert_eq!(sample.clock(finish), "12-05 12:06");
}

/// Half the width within which two programs that draw different numbers must agree: three standard errors of the
/// difference of two shares, each out of so many runs. At three a right program fails one time in 370.
fn within(share: f64, theirs: f64, ours: f64) -> f64 {
    3.0 * (share * (1.0 - share) * (1.0 / theirs + 1.0 / ours)).sqrt()
}

const THEIR_RUNS: f64 = 4_000.0;
const OUR_RUNS: u32 = 20_000;

fn chance(plan: &Plan, sigma: f64) -> Chance {
    let mut chance = plan.chance(Spread::given(sigma), 11, OUR_RUNS);
    chance.run(OUR_RUNS);
    chance
}

#[track_caller]
fn check(sample: &Sample, chance: &Chance, want: f64) {
    let odds = chance.odds(sample.builds[0], at(UNTIL));
    let is = f64::from(odds.in_time) / f64::from(odds.of);
    let bound = within(want, THEIR_RUNS, f64::from(OUR_RUNS));
    assert!((is - want).abs() <= bound, "{is:.4}, there {want}, within {bound:.4}");
}

// Source: library — a program written apart from this one, over invented data: 4,000 runs of another generator.
#[test]
fn the_chance_of_the_trays_is_the_one_that_was_simulated_beside_it() {
    let sample = Sample::read();
    let plan = Plan::of(&sample.asking());
    check(&sample, &chance(&plan, 0.0), 0.659);
    let one = chance(&plan, 0.25);
    check(&sample, &one, 0.618);
    // 234 draws in 4,000 runs were cut there.
    let (cut, there) = (f64::from(one.cut()) / f64::from(OUR_RUNS), 234.0 / THEIR_RUNS);
    let bound = within(there, THEIR_RUNS, f64::from(OUR_RUNS));
    assert!((cut - there).abs() <= bound, "{cut:.4}, there {there:.4}, within {bound:.4}");
}

// Source: library — the same program: what dropping a coat, another person, a shorter film and an evening more come to.
#[test]
fn what_would_make_it_surer_is_what_was_simulated_beside_it() {
    let sample = Sample::read();
    let asking = sample.asking();
    let plan = Plan::of(&asking);
    let person = sample.person("Tobin");
    let (from, to) = (at("2026-12-01T18:00:00-05:00"), at("2026-12-01T21:00:00-05:00"));
    let wren = Trial::Other { step: sample.step("shoot finished trays"), person: sample.person("Wren") };
    for (trial, want) in [
        (wren, 0.660),
        (Trial::Drop { step: sample.step("second coat") }, 0.839),
        (Trial::Window { person, from, to }, 0.743),
    ] {
        check(&sample, &chance(&plan.with(&asking, &[trial]), 0.25), want);
    }
}
