//! A way that was tried is taken: what is written for it. Undo takes all of it back.
//!
//! Worked example: the second coat is dropped, handles came after it with 72 h to dry; they then come after the first
//! coat with the 24 h that the second would have waited. Not here: what is tried only (`surer`).

use super::{
    asked::{is_edit, thousandths},
    asking::Trial,
};
use crate::{
    journal::{
        Body, Change, Id, On, Shop,
        kinds::{After, Build, FreeDay, Shot, Step, Window},
    },
    measure::{Day, Dec, Instant, Quantity, Zone, fixed},
    timing::{Hand, shots},
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
        Trial::LeaveShots { build } => only_what_must_be(hand, build),
        Trial::Shorter { build, thousandths } => shorter(hand, build, thousandths),
    }
}

/// Shots that are only nice to have, and still to be taken, are left out from today.
fn only_what_must_be(hand: &Hand, build: Id) -> Vec<Change> {
    let today = hand.shop.zone.day(hand.now);
    let all = shots::listed(hand.shop, build);
    let left = all.iter().filter(|it| it.standing.is_to_take()).filter_map(|it| {
        let shot = hand.shop.shots.get(&it.shot).filter(|shot| shot.body.nice)?;
        Some(Change::write(it.shot, Shot { waived: Some(today), ..shot.body.clone() }))
    });
    left.collect()
}

/// The film's length to the minute, and the hours of every edit that is not done.
fn shorter(hand: &Hand, build: Id, many: u32) -> Vec<Change> {
    let shop = hand.shop;
    let Some(Body::Build(body)) = hand.journal.body(build) else { return Vec::new() };
    let less = |it: Option<Dec>| it.and_then(Dec::quantity).and_then(|it| thousandths(it, many));
    let minutes = less(body.film_planned).and_then(|it| fixed::mul_div(it.micros(), 1, fixed::SCALE));
    let minutes = minutes.map(|it| Dec::from(Quantity::from_micros(it.saturating_mul(fixed::SCALE))));
    let film = Change::write(build, Build { film_planned: minutes.or(body.film_planned), ..body.clone() });
    let edits =
        shop.steps.iter().filter(|(_, it)| it.build() == build && it.done().is_none() && is_edit(shop, it));
    let step = |(id, it): (&Id, &crate::journal::shop::Step)| {
        let hours = |typed: Option<Dec>| less(typed).map(Dec::from).or(typed);
        let body = &it.body;
        let [quick, usual, slow] = [body.quick, body.usual, body.slow].map(hours);
        Change::write(*id, Step { quick, usual, slow, ..body.clone() })
    };
    std::iter::once(film).chain(edits.map(step)).collect()
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
    let Some(Body::Build(body)) = hand.journal.body(build) else { return Vec::new() };
    // What stands before a film goes out moves with it.
    let publish = body.publish.map(|day| day.plus_days(A_WEEK));
    let due = if publish.is_some() { body.due } else { Some(due) };
    vec![Change::write(build, Build { due, publish, ..body.clone() })]
}

/// In days.
const A_WEEK: i64 = 7;

/// The same time a week later, to the end of that day: a date that is compared where nothing else is said.
pub fn a_week_later(zone: &Zone, until: Instant) -> Instant {
    zone.end_of(zone.day(until).plus_days(A_WEEK))
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::fixture::fixture;

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
