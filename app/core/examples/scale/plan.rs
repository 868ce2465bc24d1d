//! A plan of sixty steps of three builds, by three people: how long placing it, simulating it and asking what helps take.

use super::least;
use benchslate_core::{
    fixture::{Fixture, fixture},
    measure::Map,
    planning::{Asking, Plan, Question, Spread, open_builds},
    timing::worked,
};
use std::fmt::Write;

const PEOPLE: &str = "
    person Ana 26 free wed/18:00-21:00,sat/09:00-13:00,sat/14:00-17:00,sun/09:00-13:00
    person Bo 22 free mon/18:00-20:30,thu/18:00-21:00,sat/09:00-13:00
    person Cy 20 paid free tue/08:00-12:00,tue/13:00-16:00
    resource clamps 6
    resource bench 1
    resource corner 1
    off Ana 2026-02-14 to 2026-02-16
    build bench
    build trays
    build shelf";

/// The shop with its sixty steps.
pub fn sixty_steps() -> Fixture {
    let mut text = PEOPLE.to_owned();
    let (builds, people) = (["bench", "trays", "shelf"], ["Ana", "Bo", "Ana,Bo", "Cy"]);
    for at in 0..60_usize {
        let (build, who) = (builds[at / 20], people[at * 7 % 4]);
        write!(text, "\n step s{at} {build} sand who {who} hours 1,{},3", 1 + at % 2).expect("text");
        match at % 20 {
            0 => {}
            1..=3 => write!(text, " after s{}", at - 1).expect("text"),
            it => write!(text, " after s{}:{},s{}", at - 2, it % 5 * 6, at - 4).expect("text"),
        }
        match at % 5 {
            0 => text.push_str(" needs clamps:4:6"),
            2 => text.push_str(" needs bench"),
            3 if who != "Ana,Bo" => text.push_str(" needs corner:1:12 one-go drops less"),
            _ => {}
        }
    }
    fixture(&text)
}

/// Milliseconds of each.
pub fn measure() {
    let it = sixty_steps();
    let (shop, now) = (it.shop(), it.end());
    let (done, until) = (worked(&shop, now), Map::new());
    let builds = open_builds(&shop, shop.zone.day(now));
    let asking = Asking { shop: &shop, worked: &done, now, builds: &builds, until: &until, filming: &[] };
    let plan = Plan::of(&asking);
    let placing = least(7, || drop(Plan::of(&asking)));
    let spread = Spread::given(0.25);
    let simulating = least(7, || plan.chance(spread, 1, 2_000).run(2_000));
    let build = builds[0];
    let finish = plan.builds[0].finish.expect("a finish");
    let question = Question { build, until: finish, spread, seed: 1, wanted: 200 };
    let asked = least(3, || {
        let trials = plan.candidates(&asking, build, Some(800), None);
        drop(plan.surer(&asking, &question, &trials));
    });
    println!(
        "{} steps placed {placing:?} ({} schedules tried, proven: {}); 2,000 finishes {simulating:?}",
        plan.steps.len(),
        plan.tried,
        plan.proven
    );
    println!("what would make it surer, before any finish: {asked:?}; {} troubles", plan.troubles.len());
}
