//! Laws of a plan, over random ones: nothing before what comes before it, nobody in two places, nothing on a day off.

use super::{Asking, Placed, Plan, Question, Spread, Trial};
use crate::{
    fixture::{Fixture, fixture},
    journal::Id,
    measure::{Instant, Map, Seconds},
    timing::{Worked, worked},
};
use proptest::prelude::*;
use std::fmt::Write;

/// A step as it is drawn: build, who, hours, what comes before it with its wait, what it takes with how long, flags.
type Drawn =
    (usize, usize, (u8, u8, u8), Vec<(prop::sample::Index, u8)>, Option<(usize, u8, u8)>, (bool, bool, bool));

const WHO: [&str; 5] = ["Ana", "Bo", "Ana,Bo", "Cy", "Bo,Ana"];

fn steps() -> impl Strategy<Value = Vec<Drawn>> {
    let hours = (1..4_u8, 0..4_u8, 0..6_u8);
    let after = prop::collection::vec(
        (any::<prop::sample::Index>(), prop::sample::select(vec![0, 0, 6, 24, 72_u8])),
        0..3,
    );
    let need = prop::option::of((0..3_usize, 1..6_u8, prop::sample::select(vec![0, 3, 12_u8])));
    prop::collection::vec((0..2_usize, 0..WHO.len(), hours, after, need, any::<(bool, bool, bool)>()), 1..12)
}

fn written(steps: &[Drawn]) -> Fixture {
    let mut text = String::from(
        "person Ana 26 free wed/18:00-21:00,sat/09:00-13:00,sun/09:00-13:00
        person Bo 22 free thu/18:00-21:00,sat/09:00-13:00,sun/10:00-12:00
        person Cy 20 free mon/22:00-02:00,tue/08:00-12:00
        resource bench 1
        resource clamps 6
        resource corner 2
        off Ana 2026-02-07 to 2026-02-08
        off Bo 2026-02-05
        off Cy 2026-02-03 but 14:00-16:00
        build trays
        build shelf on 2026-02-01",
    );
    for (at, (build, who, (quick, usual, slow), after, need, (one_go, any, gives_way))) in
        steps.iter().enumerate()
    {
        let (usual, slow) = (quick + usual, quick + usual + slow);
        write!(
            text,
            "\n step s{at} {} sand who {} hours {quick},{usual},{slow}",
            ["trays", "shelf"][*build],
            WHO[*who]
        )
        .unwrap();
        let before =
            after.iter().filter(|_| at > 0).map(|(place, wait)| format!("s{}:{wait}", place.index(at)));
        let before = before.collect::<Vec<_>>().join(",");
        if !before.is_empty() {
            write!(text, " after {before}").unwrap();
        }
        if let Some((what, count, held)) = need {
            write!(
                text,
                " needs {}:{}:{held}",
                ["bench", "clamps", "corner"][*what],
                count % [2, 7, 3][*what]
            )
            .unwrap();
        }
        text.push_str(if *one_go { " one-go" } else { "" });
        text.push_str(if *any { " any" } else { "" });
        text.push_str(if *gives_way { " gives-way" } else { "" });
    }
    fixture(&text)
}

struct Asked {
    it: Fixture,
    shop: crate::journal::Shop,
    worked: Vec<Worked>,
    builds: Vec<Id>,
    until: Map<Id, Instant>,
}

impl Asked {
    fn of(steps: &[Drawn]) -> Asked {
        let it = written(steps);
        let shop = it.shop();
        let builds = vec![it.id("trays"), it.id("shelf")];
        Asked { worked: worked(&shop, it.end()), shop, builds, until: Map::new(), it }
    }

    fn asking(&self) -> Asking<'_> {
        let Asked { shop, worked, builds, until, it } = self;
        Asking { shop, worked, now: it.end(), builds, until, filming: &[] }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn every_step_has_its_hours_in_free_windows_after_what_comes_before_it(drawn in steps()) {
        let asked = Asked::of(&drawn);
        let plan = Plan::of(&asked.asking());
        prop_assert_eq!(plan.steps.len(), drawn.len());
        for placed in &plan.steps {
            let step = &asked.shop.steps.get(&placed.step).unwrap().body;
            for after in &step.after {
                let before = plan.step(after.step).unwrap();
                let wait = after.wait.map_or(0, super::network::seconds);
                prop_assert!(before.end.plus(Seconds(wait)) <= placed.start);
                prop_assert!(before.next >= before.end.plus(Seconds(wait)));
            }
            let worked: i64 = placed.pieces.iter().map(|(from, to)| to.since(*from).0).sum();
            prop_assert!(worked == placed.left.0 || step.one_go && placed.pieces.len() == 1 && worked < placed.left.0);
            prop_assert!(!step.one_go || placed.pieces.len() == 1);
            prop_assert_eq!(placed.people.len(), if step.any { 1 } else { step.who.len() });
            for (from, to) in &placed.pieces {
                prop_assert!(*from >= asked.it.end());
                for person in &placed.people {
                    prop_assert_eq!(plan.free(*person).unwrap().between(*from, *to), to.since(*from));
                    let day = asked.shop.zone.day(*from);
                    let off = asked.shop.free_days.iter().any(|it| {
                        it.person == *person && it.is_off() && it.first <= day && day <= it.last
                    });
                    prop_assert!(!off, "on a day off");
                }
            }
        }
    }

    #[test]
    fn nobody_is_in_two_places_and_nothing_is_taken_twice(drawn in steps()) {
        let asked = Asked::of(&drawn);
        let plan = Plan::of(&asked.asking());
        for one in &plan.steps {
            for other in plan.steps.iter().filter(|it| it.step != one.step) {
                let shared = one.people.iter().any(|it| other.people.contains(it));
                let apart = |a: &[(Instant, Instant)], b: &[(Instant, Instant)]| {
                    a.iter().all(|one| b.iter().all(|other| one.1 <= other.0 || other.1 <= one.0))
                };
                prop_assert!(!shared || apart(&one.pieces, &other.pieces));
                // Nothing comes in between, unless one of the two gives way.
                let way = |placed: &Placed| {
                    let step = &asked.shop.steps.get(&placed.step).unwrap().body;
                    step.gives_way && !step.one_go
                };
                let clear = one.end <= other.start || other.end <= one.start;
                prop_assert!(!shared || clear || way(one) || way(other));
            }
            for (resource, it) in &asked.shop.resources {
                // At each start, all that is taken then and held still.
                let taken: u32 = plan.steps.iter().filter(|it| it.start <= one.start).map(|it| {
                    let held = it.held.iter().filter(|it| it.resource == *resource && it.until > one.start);
                    held.map(|it| it.count).sum::<u32>()
                }).sum();
                prop_assert!(taken <= it.count);
            }
        }
    }

    #[test]
    fn the_same_seed_gives_the_same_answer_however_it_is_sliced(drawn in steps(), seed: u64, slice in 1..40_u32) {
        let asked = Asked::of(&drawn);
        let (one, other) = (Plan::of(&asked.asking()), Plan::of(&asked.asking()));
        prop_assert_eq!(&one.steps, &other.steps);
        let mut whole = one.chance(Spread::given(0.25), seed, 60);
        whole.run(60);
        let mut sliced = other.chance(Spread::given(0.25), seed, 60);
        while !sliced.is_done() {
            sliced.run(slice);
        }
        for build in &asked.builds {
            prop_assert_eq!(whole.ends(*build).collect::<Vec<_>>(), sliced.ends(*build).collect::<Vec<_>>());
        }
    }

    #[test]
    fn a_later_date_is_never_worse(drawn in steps(), seed: u64, days in 0..60_i64, later in 0..40_i64) {
        let asked = Asked::of(&drawn);
        let (asking, build) = (asked.asking(), asked.builds[0]);
        let plan = Plan::of(&asking);
        let until = asking.now.plus(Seconds(days * 86_400));
        let question = Question { build, until, spread: Spread::given(0.25), seed, wanted: 40 };
        let trial = Trial::Later { build, until: until.plus(Seconds(later * 86_400)) };
        let mut surer = plan.surer(&asking, &question, &[trial]);
        surer.run(1_000);
        prop_assert!(surer.is_done());
        let helped = surer.ranked()[0];
        prop_assert!(helped.gained >= 0 && helped.odds.in_time >= surer.odds().in_time);
    }
}
