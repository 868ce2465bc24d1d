//! A way that was tried is taken: what is written for it. Undo takes all of it back.
//!
//! Worked example: the second coat is dropped, handles came after it with 72 h to dry; they then come after the first
//! coat with the 24 h that the second would have waited. Not here: what is tried only (`surer`).

use super::asking::Trial;
use crate::{
    journal::{
        Change, Id, On, Shop,
        kinds::{After, FreeDay, Step, Window},
    },
    measure::{Day, Instant, Zone},
    timing::Hand,
};

/// What taking a way writes; nothing where it is settled by entries that other sheets write.
pub fn taken(hand: &mut Hand, trial: Trial) -> Vec<Change> {
    let shop = hand.shop;
    match trial {
        Trial::Drop { step } => dropped(shop, step),
        Trial::Other { step, person } => {
            let body = shop.steps.get(&step).map(|it| Step { who: vec![person], ..it.body.clone() });
            body.map(|it| Change::write(step, it)).into_iter().collect()
        }
        Trial::Window { person, from, to } => {
            let zone = &shop.zone;
            let (day, begins) = zone.local(from);
            let (_, ends) = zone.local(to);
            let extra = vec![Window { from: begins, to: ends }];
            let on = On::At(zone.when(hand.now));
            vec![Change::write((hand.fresh)(), FreeDay { on, person, day, last: None, extra })]
        }
        Trial::Later { build, until } => later(hand, build, shop.zone.day(until)),
        Trial::LeaveShots { .. } | Trial::Shorter { .. } => Vec::new(),
    }
}

/// Struck out; what came after it comes after what it came after.
fn dropped(shop: &Shop, step: Id) -> Vec<Change> {
    let before = shop.steps.get(&step).map(|it| it.body.after.clone()).unwrap_or_default();
    let followers = shop.steps.iter().filter(|(_, it)| it.body.after.iter().any(|it| it.step == step));
    let moved = followers.map(|(id, it)| {
        let mut after: Vec<After> = it.body.after.iter().filter(|it| it.step != step).cloned().collect();
        for one in &before {
            if !after.iter().any(|it| it.step == one.step) {
                after.push(one.clone());
            }
        }
        Change::write(*id, Step { after, ..it.body.clone() })
    });
    moved.chain([Change::strike(step)]).collect()
}

fn later(hand: &Hand, build: Id, due: Day) -> Vec<Change> {
    let Some(crate::journal::Body::Build(body)) = hand.journal.body(build) else { return Vec::new() };
    vec![Change::write(build, crate::journal::kinds::Build { due: Some(due), ..body.clone() })]
}

/// The same time a week later, to the end of that day: a date that is compared where nothing else is said.
pub fn a_week_later(zone: &Zone, until: Instant) -> Instant {
    zone.end_of(zone.day(until).plus_days(7))
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::{fixture::fixture, journal::Body};

    fn changes(trial: impl Fn(&crate::fixture::Fixture) -> Trial, lines: &str) -> Vec<Change> {
        let it = fixture(&format!("person Ana 26\nperson Bo 22\nbuild trays\n{lines}"));
        let (shop, journal) = (it.shop(), &it.journal);
        let mut fresh = || Id::of([9; 16]);
        let mut hand = Hand { journal, shop: &shop, now: it.end(), fresh: &mut fresh };
        taken(&mut hand, trial(&it))
    }

    const STEPS: &str = "step coat trays finish who Ana hours 1,2,3
step again trays finish who Ana hours 1,1,2 after coat:24
step handles trays assemble who Ana hours 1,1,2 after again:72";

    #[test]
    fn what_came_after_a_dropped_step_comes_after_what_that_came_after() {
        let all = changes(|it| Trial::Drop { step: it.id("again") }, STEPS);
        let struck: Vec<bool> = all.iter().map(|it| it.body.is_none()).collect();
        assert_eq!(struck, [false, true]);
        let Some(Body::Step(handles)) = &all[0].body else { panic!("a step") };
        let after: Vec<_> = handles.after.iter().map(|it| it.wait.map(|it| it.plain())).collect();
        assert_eq!(after, [Some("24".to_owned())]);
    }

    #[test]
    fn somebody_else_is_written_into_the_step() {
        let all = changes(|it| Trial::Other { step: it.id("handles"), person: it.id("Bo") }, STEPS);
        let Some(Body::Step(handles)) = &all[0].body else { panic!("a step") };
        assert_eq!((all.len(), handles.who.len(), handles.after.len()), (1, 1, 1));
    }

    #[test]
    fn one_more_window_is_a_day_with_more_time() {
        let from = Instant(1_780_000_000);
        let window = |it: &crate::fixture::Fixture| Trial::Window {
            person: it.id("Bo"),
            from,
            to: Instant(from.0 + 3 * 3600),
        };
        let all = changes(window, "");
        let Some(Body::FreeDay(day)) = &all[0].body else { panic!("a day") };
        assert_eq!((all.len(), day.extra.len(), day.last), (1, 1, None));
        assert_eq!(day.extra[0].to.seconds() - day.extra[0].from.seconds(), 3 * 3600);
    }
}
