//! What is planned, what each step waits for, and every trouble by its field.

use crate::{
    fixture::{Fixture, fixture},
    journal::Id,
    measure::{Instant, Map, When},
    planning::{Asking, Plan, Trial, Trouble, Wait, asking::Filming, open_builds},
    timing::worked,
};

const SHOP: &str = "
    person Ana 26 free wed/18:00-21:00,sat/09:00-13:00,sun/09:00-13:00
    person Bo 22 free thu/18:00-21:00
    person Cy 20
    resource bench 1
    resource clamps 6
    build trays";

/// Plans from the end of 1 February 2026, a Sunday.
fn planned<T>(lines: &str, look: impl Fn(&Fixture, &Plan, &Asking) -> T) -> T {
    with(lines, &[], look)
}

fn with<T>(lines: &str, filming: &[(&str, i64, i64)], look: impl Fn(&Fixture, &Plan, &Asking) -> T) -> T {
    let it = fixture(&format!("{SHOP}\n{lines}"));
    let (shop, until) = (it.shop(), Map::new());
    let builds = open_builds(&shop, shop.zone.day(it.end()));
    let seconds = crate::measure::Seconds;
    let filming: Vec<Filming> = filming
        .iter()
        .map(|(step, adds, nice)| Filming { step: it.id(step), adds: seconds(*adds), nice: seconds(*nice) })
        .collect();
    let done = worked(&shop, it.end());
    let asking = Asking {
        shop: &shop,
        worked: &done,
        now: it.end(),
        builds: &builds,
        until: &until,
        filming: &filming,
    };
    look(&it, &Plan::of(&asking), &asking)
}

fn at(text: &str) -> Instant {
    When::parse(text).unwrap().instant
}

/// The troubles of a plan, and how many of its steps are placed.
#[track_caller]
fn check(lines: &str, placed: usize, want: impl Fn(&dyn Fn(&str) -> Id) -> Vec<Trouble>) {
    planned(lines, |it, plan, _| {
        assert_eq!(plan.troubles, want(&|name| it.id(name)));
        assert_eq!(plan.steps.len(), placed);
    });
}

#[test]
fn a_ring_is_named_in_its_order_and_the_rest_is_planned() {
    // A step can only be told to wait for one that is there: the first is written again.
    let ring = "
        step a trays sand who Ana hours ,1,
        step b trays sand who Ana hours ,1, after a
        step c trays sand who Ana hours ,1, after b
        step d trays sand who Ana hours ,1,";
    let mut it = fixture(&format!("{SHOP}\n{ring}"));
    let mut first = it.shop().steps.get(&it.id("a")).unwrap().body.clone();
    first.after = vec![crate::journal::kinds::After { step: it.id("c"), wait: None }];
    it.write(crate::journal::Change::write(it.id("a"), first));
    let (shop, until, builds) = (it.shop(), Map::new(), [it.id("trays")]);
    let asking =
        Asking { shop: &shop, worked: &[], now: it.end(), builds: &builds, until: &until, filming: &[] };
    let plan = Plan::of(&asking);
    let steps = ["a", "b", "c"].map(|name| it.id(name)).to_vec();
    assert_eq!(plan.troubles, [Trouble::Circle { steps }]);
    assert_eq!(plan.steps.len(), 4);
    assert!(plan.step(it.id("a")).unwrap().end <= plan.step(it.id("b")).unwrap().start);
}

#[test]
fn a_step_that_waits_for_itself_is_a_ring_of_one() {
    let mut it = fixture(&format!("{SHOP}\n step a trays sand who Ana hours ,1,"));
    let mut own = it.shop().steps.get(&it.id("a")).unwrap().body.clone();
    own.after = vec![crate::journal::kinds::After { step: it.id("a"), wait: None }];
    it.write(crate::journal::Change::write(it.id("a"), own));
    let (shop, until, builds) = (it.shop(), Map::new(), [it.id("trays")]);
    let asking =
        Asking { shop: &shop, worked: &[], now: it.end(), builds: &builds, until: &until, filming: &[] };
    let plan = Plan::of(&asking);
    assert_eq!(plan.troubles, [Trouble::Circle { steps: vec![it.id("a")] }]);
    assert_eq!(plan.steps.len(), 1);
}

#[test]
fn what_lacks_somebody_or_hours_is_left_out_and_what_comes_after_it_stays() {
    check("step a trays sand hours ,1,\n step b trays sand who Ana hours ,1, after a", 1, |id| {
        vec![Trouble::NobodyNamed { step: id("a") }]
    });
    check("step a trays sand who Ana", 0, |id| vec![Trouble::NoEstimate { step: id("a") }]);
    check("step a trays sand who Cy hours ,1,", 0, |id| {
        vec![Trouble::NoFreeHours { step: id("a"), person: id("Cy") }]
    });
    check("step a trays sand who Ana,Cy hours ,1, any", 1, |id| {
        vec![Trouble::NoFreeHours { step: id("a"), person: id("Cy") }]
    });
    check("step a trays sand who Ana,Bo hours ,1,", 0, |id| vec![Trouble::NeverTogether { step: id("a") }]);
}

#[test]
fn estimates_windows_and_counts_that_do_not_fit_are_told_by_their_step() {
    check("step a trays sand who Ana hours 3,2,4", 1, |id| vec![Trouble::OutOfOrder { step: id("a") }]);
    let seconds = |hours: i64| crate::measure::Seconds(hours * 3600);
    check("step a trays glue-up who Ana hours 2,3,5 one-go", 1, |id| {
        vec![Trouble::LongerThanAWindow { step: id("a"), slow: seconds(5), longest: seconds(4) }]
    });
    check("step a trays sand who Ana hours ,1, needs clamps:7", 1, |id| {
        vec![Trouble::TooFew { step: id("a"), resource: id("clamps"), needs: 7, there: 6 }]
    });
    check("step a trays sand who Ana hours ,1, needs bench\n strike bench", 1, |id| {
        vec![Trouble::ResourceGone { step: id("a"), resource: id("bench") }]
    });
    check(
        "step a trays sand who Ana hours ,1,\n step b trays sand who Ana hours ,1, after a\n strike a",
        1,
        |id| vec![Trouble::AfterGone { step: id("b"), after: id("a") }],
    );
}

#[test]
fn dates_that_are_past_or_missed_are_told() {
    check("step a trays sand who Ana hours ,1, starts 2026-01-05T09:00:00Z", 1, |id| {
        vec![Trouble::StartPast { step: id("a"), start: at("2026-01-05T09:00:00Z") }]
    });
    check("step a trays sand who Ana hours ,1, starts 2026-02-06T09:00:00Z", 1, |id| {
        let (should, can) = (at("2026-02-06T09:00:00Z"), at("2026-02-07T09:00:00Z"));
        vec![Trouble::StartMissed { step: id("a"), should, can }]
    });
    check("step a trays sand who Ana hours ,1, ends 2026-02-04T18:30:00Z", 1, |id| {
        let (should, is) = (at("2026-02-04T18:30:00Z"), at("2026-02-04T19:00:00Z"));
        vec![Trouble::EndMissed { step: id("a"), should, is }]
    });
    let it = fixture(&format!("{SHOP}\n step a trays sand who Ana hours ,1,"));
    let (shop, builds, due) = (it.shop(), [it.id("trays")], at("2026-01-20T23:59:59Z"));
    let until = builds.iter().map(|id| (*id, due)).collect();
    let asking =
        Asking { shop: &shop, worked: &[], now: it.end(), builds: &builds, until: &until, filming: &[] };
    let plan = Plan::of(&asking);
    assert_eq!(plan.troubles, [Trouble::DatePast { build: builds[0], due }]);
    // Late by an hour of Ana's on Wednesday: nothing was free before.
    let slack = plan.slack(builds[0]).unwrap();
    assert_eq!((slack.free.0, slack.days), (-3_600, -14));
}

#[test]
fn a_dropped_step_hands_its_place_on_with_the_wait_that_it_had() {
    let lines = "
        step coat trays finish who Ana hours ,1,
        step again trays finish who Ana hours ,1, after coat:24
        step handles trays assemble who Ana hours ,1, after again:72";
    planned(lines, |it, plan, asking| {
        let start =
            |plan: &Plan| asking.shop.zone.when(plan.step(it.id("handles")).unwrap().start).to_string();
        assert_eq!(start(plan), "2026-02-11T18:00:00+00:00");
        let dropped = plan.with(asking, &[Trial::Drop { step: it.id("again") }]);
        assert_eq!(start(&dropped), "2026-02-07T09:00:00+00:00");
    });
}

#[test]
fn what_is_done_still_dries_and_still_holds_its_clamps() {
    let lines = "
        on 2026-02-01
        step panel trays glue-up who Ana hours ,1, needs clamps:4:96 done 2026-02-01
        step flat trays flatten who Ana hours ,1, after panel:200
        step other trays glue-up who Ana hours ,1, needs clamps:4
        stretch Ana glue-up from 10:00 to 11:00 for trays step panel on 2026-02-01";
    planned(&lines.replace("on 2026-02-01\n        step", "step"), |it, plan, asking| {
        let start = |name: &str| asking.shop.zone.when(plan.step(it.id(name)).unwrap().start).to_string();
        // 200 hours after Sunday 11:00 is Monday week, 19:00.
        assert_eq!(start("flat"), "2026-02-11T18:00:00+00:00");
        // Four of six clamps are held until Thursday 11:00.
        assert_eq!(start("other"), "2026-02-07T09:00:00+00:00");
        assert_eq!(plan.troubles, []);
    });
}

#[test]
fn drying_said_at_the_bench_goes_before_what_was_planned() {
    let lines = "
        step coat trays finish who Ana hours ,1, done 2026-02-01
        step next trays finish who Ana hours ,1, after coat:24
        step shoot trays shoot who Ana hours ,1, after coat
        stretch Ana finish from 10:00 to 11:00 for trays step coat as coated on 2026-02-01";
    let starts = |lines: &str| {
        planned(lines, |it, plan, asking| {
            ["next", "shoot"]
                .map(|name| asking.shop.zone.when(plan.step(it.id(name)).unwrap().start).to_string())
        })
    };
    let planned_as_typed = starts(lines);
    // Six days, where a day was planned. What waits for nothing goes on all the same.
    let said = starts(&format!("{lines}\n        dry coated next 8640 on 2026-02-01"));
    assert_ne!(planned_as_typed[0], said[0]);
    assert_eq!(said[0], "2026-02-07T11:00:00+00:00");
    // The first free hours there are: the next coat no longer takes them.
    assert_eq!(said[1], "2026-02-04T18:00:00+00:00");
}

#[test]
fn filming_adds_to_a_step_and_shots_that_are_only_nice_can_be_left_out() {
    let lines = "step a trays sand who Ana hours ,1,";
    with(lines, &[("a", 1_800, 600)], |it, plan, asking| {
        assert_eq!(plan.step(it.id("a")).unwrap().left.0, 5_400);
        let left = plan.with(asking, &[Trial::LeaveShots { build: it.id("trays") }]);
        assert_eq!(left.step(it.id("a")).unwrap().left.0, 4_800);
    });
}

#[test]
fn what_holds_a_build_up_is_told_step_by_step() {
    let lines = "
        step coat trays finish who Ana hours ,1,
        step shoot trays shoot who Bo hours ,1, after coat:24
        step cut trays edit who Bo hours ,1,";
    planned(lines, |it, plan, _| {
        let chain = plan.holds_up(it.id("trays"));
        let steps: Vec<String> = chain.iter().map(|link| it.name(link.step)).collect();
        assert_eq!(steps, ["shoot", "coat"]);
        assert!(
            matches!(chain[0].waits, Wait::Drying { before, .. } if before == it.id("coat")),
            "{chain:?}"
        );
        assert_eq!(chain[1].waits, Wait::Now);
        let slack = plan.slack(it.id("trays"));
        assert_eq!(slack, None, "no date, no slack");
    });
}
