//! Steps of a new build, taken over from an earlier one: its own steps with what they wait for and need, or, where it
//! had none, one for each stage in the order in which they were first worked at.
//!
//! Hours are what the stage took in all builds of that run (`timing::estimates`), by the number of items; a step whose
//! stage has no hours of its own keeps what was typed for it. Stages that the new build has worked at already, or has
//! steps of, are left out. After a glue-up or a coat the next step waits as long as the last one of that stage dried.
//!
//! Not here: lists for who has no earlier build (`starters`).

use crate::{
    journal::{
        Id, On, Shop,
        kinds::{self, After, Bearer, Side, Step},
        shop::{Build, Step as Fact},
    },
    measure::{Dec, InOrder, Instant, Map, Quantity, Seconds, fixed},
    timing::{
        Worked,
        estimates::{self, Estimate},
    },
};

use std::cmp::Reverse;

/// From which build, to which, and when.
#[derive(Clone, Copy, Debug)]
pub struct Over {
    /// The earlier build.
    pub from: Id,
    /// The new one.
    pub to: Id,
    /// When it is written.
    pub on: On,
    /// The same as a moment.
    pub now: Instant,
}

/// The steps, each under a `fresh` id.
pub fn taken_over(
    shop: &Shop,
    worked: &[Worked],
    over: Over,
    fresh: &mut dyn FnMut() -> Id,
) -> Vec<(Id, Step)> {
    let mut run = shop.run_of(over.from);
    run.retain(|build| *build != over.to);
    let learned = estimates::learned(shop, worked, &run, (over.to, over.now));
    let known = |stage: Id| {
        let stands = |row: &Worked| row.bearer == Bearer::Build(over.to) && row.stage == stage;
        worked.iter().any(stands)
            || shop.steps.values().any(|it| it.build() == over.to && it.body.stage == stage)
            || !shop.offers(stage)
    };
    let mut earlier: Vec<(&Id, &Fact)> =
        shop.steps.iter().filter(|(_, it)| it.build() == over.from && !known(it.body.stage)).collect();
    earlier.order_by_key(|(id, it)| (it.order, **id));
    let steps = if earlier.is_empty() {
        by_stages(shop, worked, over, &learned, &known, fresh)
    } else {
        as_planned(shop, over, &earlier, &learned, fresh)
    };
    steps.into_iter().filter(|(_, it)| it.usual.is_some()).collect()
}

/// Whether anything would be taken over.
pub fn gives(shop: &Shop, worked: &[Worked], over: Over) -> bool {
    !taken_over(shop, worked, over, &mut || over.from).is_empty()
}

/// Builds that steps may be taken over from, `most` at most: what it repeats, then those begun before it, the latest
/// first, then those begun after it.
pub fn sources(shop: &Shop, worked: &[Worked], (to, on, now): (Id, On, Instant), most: usize) -> Vec<Id> {
    let Some(own) = shop.builds.get(&to) else { return Vec::new() };
    let mut others: Vec<(Id, &Build)> =
        shop.builds.iter().filter(|(id, _)| **id != to).map(|(id, it)| (*id, it)).collect();
    others
        .order_by_key(|(id, it)| Reverse((Some(*id) == own.repeat_of, it.order < own.order, it.order, *id)));
    let ids = others.into_iter().map(|(id, _)| id);
    ids.filter(|from| gives(shop, worked, Over { from: *from, to, on, now })).take(most).collect()
}

fn as_planned(
    shop: &Shop,
    over: Over,
    earlier: &[(&Id, &Fact)],
    learned: &[(Id, Option<Estimate>)],
    fresh: &mut dyn FnMut() -> Id,
) -> Vec<(Id, Step)> {
    let ids: Map<Id, Id> = earlier.iter().map(|(id, _)| (**id, fresh())).collect();
    let alone = |stage: Id| earlier.iter().filter(|(_, it)| it.body.stage == stage).count() == 1;
    let after = |body: &Step| -> Vec<After> {
        let kept = |it: &After| Some(After { step: *ids.get(&it.step)?, wait: it.wait });
        body.after.iter().filter_map(kept).collect()
    };
    let one = |(id, fact): &(&Id, &Fact)| {
        let body = &fact.body;
        let mut step = Step {
            title: body.title.clone(),
            who: body.who.clone(),
            any: body.any,
            after: after(body),
            needs: body.needs.clone(),
            one_go: body.one_go,
            gives_way: body.gives_way,
            filmed: body.filmed,
            drops: body.drops.clone(),
            ..Step::blank(over.on, over.to, body.stage)
        };
        // Two coats share the hours of their stage: what was typed for each is the better guess.
        let told = learned.iter().find(|(stage, _)| *stage == body.stage && alone(*stage));
        match told.and_then(|(_, it)| it.as_ref()) {
            Some(it) => fill(&mut step, it),
            None => scaled(shop, over, body, &mut step),
        }
        (ids.get(*id).copied().unwrap_or(**id), step)
    };
    earlier.iter().map(one).collect()
}

/// What was typed, by the number of items; work on the film stays as it is.
fn scaled(shop: &Shop, over: Over, body: &Step, step: &mut Step) {
    let items = |build: Id| shop.builds.get(&build).map_or(1, |it| i128::from(it.items.max(1)));
    let (from, to) = if film(shop, body.stage) { (1, 1) } else { (items(over.from), items(over.to)) };
    let one = |typed: Option<Dec>| {
        let micros = typed?.quantity()?.micros();
        Some(Dec::from(Quantity::from_micros(fixed::mul_div(micros, to, from)?)))
    };
    [step.quick, step.usual, step.slow] = [body.quick, body.usual, body.slow].map(one);
}

fn by_stages(
    shop: &Shop,
    worked: &[Worked],
    over: Over,
    learned: &[(Id, Option<Estimate>)],
    known: &dyn Fn(Id) -> bool,
    fresh: &mut dyn FnMut() -> Id,
) -> Vec<(Id, Step)> {
    let mut last: [Option<(Id, Option<Dec>)>; 2] = [None, None];
    let mut steps = Vec::new();
    let first_of = |stage: Id| {
        let mine = |row: &&Worked| row.bearer == Bearer::Build(over.from) && row.stage == stage;
        worked.iter().find(mine).map(|row| row.person)
    };
    for (stage, estimate) in learned {
        let (Some(person), Some(estimate)) = (first_of(*stage), estimate) else { continue };
        if known(*stage) {
            continue;
        }
        let mut step = Step {
            title: shop.stages.get(stage).map(|it| it.name.clone()).unwrap_or_default(),
            who: vec![person],
            ..Step::blank(over.on, over.to, *stage)
        };
        fill(&mut step, estimate);
        let dries = dried(shop, over.from, *stage);
        step.one_go = dries.is_some();
        // Piece and film each go their own way, so that the film is worked at while a coat dries.
        let line = usize::from(film(shop, *stage));
        let id = fresh();
        if let Some(line) = last.get_mut(line) {
            step.after.extend(line.map(|(step, wait)| After { step, wait }));
            *line = Some((id, dries));
        }
        steps.push((id, step));
    }
    steps
}

/// Hours that the latest glue-up or coat of a build at a stage took to dry.
fn dried(shop: &Shop, build: Id, stage: Id) -> Option<Dec> {
    let of_stage = |stretch: Id| {
        let mut all = shop.stretches.iter();
        all.any(|it| it.entry() == stretch && it.bearer == Bearer::Build(build) && it.stage == stage)
    };
    let drying = shop.dryings.iter().rev().find(|it| of_stage(it.stretch) && it.next > Seconds::ZERO)?;
    let hours = fixed::mul_div(i128::from(drying.next.0), fixed::SCALE, 3600)?;
    Some(Dec::from(Quantity::from_micros(hours)))
}

fn film(shop: &Shop, stage: Id) -> bool {
    shop.stages.get(&stage).is_some_and(|it| it.side == Side::Film)
}

/// Three values into a step, to the quarter of an hour.
pub(super) fn fill(step: &mut kinds::Step, estimate: &Estimate) {
    let hours = |quarters: u32| {
        let micros = fixed::mul_div(i128::from(quarters), fixed::SCALE, 4).unwrap_or(0);
        Some(Dec::from(Quantity::from_micros(micros)))
    };
    [step.quick, step.usual, step.slow] = estimate.quarters().map(hours);
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::{fixture::fixture, measure::Day, timing::worked};

    fn over(lines: &str) -> (crate::fixture::Fixture, Vec<Step>) {
        let it = fixture(&format!("person Ana 26\nbuild trays items 10\nbuild more items 20\n{lines}"));
        let shop = it.shop();
        let over = Over {
            from: it.id("trays"),
            to: it.id("more"),
            on: On::Day(Day::parse("2026-03-01").unwrap()),
            now: it.end(),
        };
        let mut next = 0_u8;
        let mut fresh = || {
            next += 1;
            Id::of([next; 16])
        };
        let steps = taken_over(&shop, &worked(&shop, it.end()), over, &mut fresh);
        assert_eq!(gives(&shop, &worked(&shop, it.end()), over), !steps.is_empty());
        (it, steps.into_iter().map(|(_, step)| step).collect())
    }

    fn hours(step: &Step) -> String {
        [step.quick, step.usual, step.slow].map(|it| it.map(Dec::plain).unwrap_or_default()).join(" ")
    }

    #[test]
    fn what_an_earlier_build_took_is_taken_over_by_the_number_of_items() {
        let (it, steps) = over(
            "
            stretch Ana mill min 600 for trays
            stretch Ana sand min 60 for trays
            stretch Ana cut min 60 for trays one-off
            close trays
            stretch Ana sand min 60 for more
            ",
        );
        assert_eq!(steps.iter().map(hours).collect::<Vec<_>>(), ["9.75 20 41.25"]);
        assert_eq!((steps[0].stage, &steps[0].who[..]), (it.id("mill"), &[it.id("Ana")][..]));
    }

    #[test]
    fn piece_and_film_go_their_own_ways_and_the_film_does_not_grow_with_the_batch() {
        let (it, steps) = over(
            "
            stretch Ana mill min 600 for trays
            stretch Ana shoot min 60 for trays side film
            stretch Ana sand min 60 for trays
            stretch Ana edit min 120 for trays side film
            close trays
            ",
        );
        let said: Vec<_> = steps.iter().map(|step| (step.stage, step.usual.unwrap().plain())).collect();
        let stage = |name: &str| it.id(name);
        assert_eq!(
            said,
            [
                (stage("mill"), "20".to_owned()),
                (stage("shoot"), "1".to_owned()),
                (stage("sand"), "2".to_owned()),
                (stage("edit"), "2".to_owned()),
            ]
        );
        let after: Vec<Vec<Id>> =
            steps.iter().map(|step| step.after.iter().map(|it| it.step).collect()).collect();
        assert_eq!(after, [vec![], vec![], vec![Id::of([1; 16])], vec![Id::of([2; 16])]]);
    }

    #[test]
    fn an_earlier_plan_keeps_its_waits_and_what_was_typed_for_two_coats() {
        let (it, steps) = over(
            "
            step sand-it trays sand who Ana hours 1,2,3
            step coat trays finish who Ana hours 1,2,3
            step again trays finish who Ana hours 1,1,2
            stretch Ana sand min 300 for trays step sand-it
            ",
        );
        // Its sanding is not done yet: hours as typed, twice as many items.
        assert_eq!(steps.iter().map(hours).collect::<Vec<_>>(), ["2 4 6", "2 4 6", "2 2 4"]);
        assert_eq!(steps[2].stage, it.id("finish"));
    }

    #[test]
    fn sources_are_what_it_repeats_then_the_latest_before_it_then_those_after_it() {
        let it = fixture(
            "person Ana 26
            build bench on 2026-01-02
            build empty on 2026-01-03
            build stool on 2026-01-04
            build rack on 2026-01-05
            build more repeat bench on 2026-01-10
            build after on 2026-01-20
            step a bench sand who Ana hours 1,2,3
            step b rack sand who Ana hours 1,2,3
            step c after sand who Ana hours 1,2,3
            stretch Ana mill min 60 for stool
            made stool 1",
        );
        let (shop, on) = (it.shop(), On::Day(Day::parse("2026-03-01").unwrap()));
        let of = |most| sources(&shop, &worked(&shop, it.end()), (it.id("more"), on, it.end()), most);
        let named = |names: &[&str]| names.iter().map(|name| it.id(name)).collect::<Vec<_>>();
        assert_eq!(of(9), named(&["bench", "rack", "stool", "after"]));
        assert_eq!(of(2), named(&["bench", "rack"]));
    }
}
