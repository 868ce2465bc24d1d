//! A piece with its day and a film with its cut.

use super::*;
use crate::{
    fixture::{Fixture, fixture},
    measure::{Map, When},
    planning::{Question, Spread, Trial},
    timing::worked,
};

/// Ana works on weekends, Bo on Thursdays; the plan begins at the end of Sunday, 1 February 2026. The piece takes two
/// Saturdays and a Sunday between them: over on Sunday the 8th, at the latest on Saturday the 14th.
const SHOP: &str = "
    person Ana 26 free sat/09:00-13:00,sun/09:00-13:00
    person Bo 22 free thu/18:00-21:00";

const STEPS: &str = "
    step plane trays sand who Ana hours 3,4,6
    step coat trays finish who Ana hours 1,2,3 after plane
    step edit trays edit who Bo hours 1,2,3 after coat";

fn at(text: &str) -> Instant {
    When::parse(text).unwrap().instant
}

/// `due`: of the piece; `cut`: of the film.
fn asked<T>(due: &str, cut: Option<&str>, look: impl Fn(&Fixture, &Plan, &Asking) -> T) -> T {
    let it = fixture(&format!("{SHOP}\n build trays {due}\n{STEPS}"));
    let (shop, builds) = (it.shop(), [it.id("trays")]);
    let until: Map<Id, Instant> = cut.map(|cut| (builds[0], at(cut))).into_iter().collect();
    let worked = worked(&shop, it.end());
    let asking =
        Asking { shop: &shop, worked: &worked, now: it.end(), builds: &builds, until: &until, filming: &[] };
    look(&it, &Plan::of(&asking), &asking)
}

const CUT: &str = "2026-02-28T23:59:59Z";

/// In time, of four hundred.
fn in_time(due: &str, cut: Option<&str>) -> u32 {
    asked(due, cut, |it, plan, _| {
        let mut chance = plan.chance(Spread::given(0.25), 7, 400);
        chance.run(400);
        chance.odds(it.id("trays"), plan.build(it.id("trays")).unwrap().due.unwrap()).in_time
    })
}

#[test]
fn a_run_is_in_time_only_where_the_piece_holds_its_day_and_the_film_its_cut() {
    let cut_alone = in_time("", Some(CUT));
    let (tight, loose) = (in_time("due 2026-02-08", Some(CUT)), in_time("due 2026-02-27", Some(CUT)));
    assert!(cut_alone > 390, "{cut_alone}");
    // Plane and coat at their means come to 6.4 h of the eight of that weekend.
    assert!(tight > 200 && tight < 390, "{tight}");
    assert_eq!(loose, cut_alone);
    assert_eq!(in_time("due 2026-02-06", Some(CUT)), 0);
}

#[test]
fn with_one_date_alone_the_whole_build_is_held_to_it() {
    // Bo is at the edit on Thursday the 12th at the earliest.
    assert_eq!(in_time("due 2026-02-08", None), 0);
    asked("due 2026-02-08", None, |it, plan, _| {
        assert_eq!(plan.troubles, []);
        let slack = plan.slack(it.id("trays")).unwrap();
        assert_eq!((slack.side, slack.days), (None, -3));
        assert_eq!(plan.piece_due(it.id("trays")), None);
    });
}

#[test]
fn the_slack_is_that_of_the_tighter_date() {
    asked("due 2026-02-08", Some(CUT), |it, plan, _| {
        let slack = plan.slack(it.id("trays")).unwrap();
        assert_eq!((slack.side, slack.person, slack.days), (Some(Side::Piece), it.id("Ana"), 0));
        let held = plan.holds_up(it.id("trays")).first().unwrap().step;
        assert_eq!(held, it.id("coat"));
    });
    asked("due 2026-02-22", Some("2026-02-13T23:59:59Z"), |it, plan, _| {
        let slack = plan.slack(it.id("trays")).unwrap();
        assert_eq!((slack.side, slack.person, slack.days), (Some(Side::Film), it.id("Bo"), 1));
        assert_eq!(plan.holds_up(it.id("trays")).first().unwrap().step, it.id("edit"));
    });
}

#[test]
fn a_piece_that_is_planned_after_its_day_is_told() {
    asked("due 2026-02-07", Some(CUT), |it, plan, _| {
        let (build, is) = (it.id("trays"), plan.step(it.id("coat")).unwrap().end);
        let should = at("2026-02-07T23:59:59Z");
        assert_eq!(plan.troubles, [Trouble::PieceMissed { build, should, is }]);
        assert!(plan.slack(build).unwrap().free.0 < 0);
    });
}

#[test]
fn a_later_cut_leaves_the_day_of_the_piece_where_it_is() {
    asked("due 2026-02-08", Some(CUT), |it, plan, asking| {
        let (build, until) = (it.id("trays"), at(CUT));
        let question = Question { build, until, spread: Spread::given(0.25), seed: 7, wanted: 400 };
        let trial = Trial::Later { build, until: at("2026-03-28T23:59:59Z") };
        let mut surer = plan.surer(asking, &question, &[trial]);
        surer.run(10_000);
        let later = surer.ranked()[0];
        assert!(later.gained >= 0 && later.odds.in_time < 390, "{later:?}");
    });
}

#[test]
fn of_two_builds_a_piece_that_would_miss_its_day_goes_before_a_film_with_time() {
    // Both want Ana's Saturday; the first has weeks for its film and its piece, the second has that weekend for its piece.
    let lines = format!(
        "{SHOP}
        build trays
        build shelf due 2026-02-08
        step plane trays sand who Ana hours 7,7,7
        step saw shelf sand who Ana hours 4,4,4"
    );
    let it = fixture(&lines);
    let (shop, builds) = (it.shop(), [it.id("trays"), it.id("shelf")]);
    let plan = |until: Map<Id, Instant>| {
        let asking =
            Asking { shop: &shop, worked: &[], now: it.end(), builds: &builds, until: &until, filming: &[] };
        Plan::of(&asking).step(it.id("saw")).unwrap().end
    };
    let one = plan(Map::new());
    let cuts = [(builds[0], at(CUT)), (builds[1], at(CUT))];
    assert_eq!(one, at("2026-02-07T13:00:00Z"));
    assert_eq!(plan(cuts.into_iter().collect()), one);
}
