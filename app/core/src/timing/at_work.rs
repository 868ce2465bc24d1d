//! Which planned step a stretch works on, where nobody says: an open one of that build at that stage.
//!
//! First those that nothing open comes before, then those that name the person, then as they were written. So hours are
//! taken off the plan without a tap; what is wrong is put right in the stretch's fields.

use crate::{
    journal::{Id, Shop, kinds::Bearer, order::Order, shop::Step},
    measure::InOrder,
};

/// The step of work that begins; none where the plan has none such.
pub fn step_for(shop: &Shop, bearer: Bearer, stage: Id, person: Id) -> Option<Id> {
    let Bearer::Build(build) = bearer else { return None };
    let at_stage = |(_, step): &(&Id, &Step)| step.body.stage == stage;
    let rank = |(id, step): (&Id, &Step)| {
        let named = step.body.who.contains(&person);
        ((waits(shop, step), !named, step.order, *id), *id)
    };
    open(shop, build).filter(at_stage).map(rank).min().map(|(_, id)| id)
}

/// Stages of open steps of a build that nothing open comes before, as the steps were written. `after`: the step of that
/// stage, which goes on or was worked on last, counts as done.
pub fn planned_next(shop: &Shop, build: Id, after: Option<Id>) -> Vec<Id> {
    let over = after.and_then(|stage| step_for(shop, Bearer::Build(build), stage, build));
    let waits = |step: &Step| {
        let open = |id: &Id| shop.steps.get(id).is_some_and(|it| it.done().is_none()) && Some(*id) != over;
        step.body.after.iter().any(|it| open(&it.step))
    };
    let mut ready: Vec<(Order, Id)> = open(shop, build)
        .filter(|(id, it)| Some(**id) != over && !waits(it))
        .map(|(_, it)| (it.order, it.body.stage))
        .collect();
    ready.order();
    let mut stages: Vec<Id> = Vec::new();
    for (_, stage) in ready {
        if !stages.contains(&stage) && shop.offers(stage) {
            stages.push(stage);
        }
    }
    stages
}

/// The step that a stretch worked on, where nobody has said yet that it is done.
pub fn open_step_of(shop: &Shop, stretch: Id) -> Option<(Id, &Step)> {
    let step = shop.stretches.iter().find(|it| it.entry() == stretch)?.step?;
    shop.steps.get(&step).filter(|it| it.done().is_none()).map(|it| (step, it))
}

fn open(shop: &Shop, build: Id) -> impl Iterator<Item = (&Id, &Step)> {
    shop.steps.iter().filter(move |(_, it)| it.build() == build && it.done().is_none())
}

/// A step before it is not done yet.
fn waits(shop: &Shop, step: &Step) -> bool {
    step.body.after.iter().any(|it| shop.steps.get(&it.step).is_some_and(|it| it.done().is_none()))
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    const STEPS: &str = "person Ana 26
person Bo 22
build trays
step first trays finish who Ana hours 1,2,3
step second trays finish who Bo hours 1,1,2 after first
step film trays edit who Bo hours 1,1,2";

    #[test]
    fn the_coat_that_nothing_comes_before_is_worked_on_whoever_does_it() {
        let it = fixture(STEPS);
        let at = |stage: &str, who: &str| {
            step_for(&it.shop(), Bearer::Build(it.id("trays")), it.id(stage), it.id(who))
        };
        assert_eq!(at("finish", "Bo"), Some(it.id("first")));
        assert_eq!(at("edit", "Ana"), Some(it.id("film")));
        assert_eq!(at("sand", "Ana"), None);
        assert_eq!(step_for(&it.shop(), Bearer::Shop, it.id("finish"), it.id("Ana")), None);
    }

    #[test]
    fn once_the_first_is_done_it_is_the_second() {
        let it = fixture(&STEPS.replace("1,2,3", "1,2,3 done 2026-02-01"));
        let at = step_for(&it.shop(), Bearer::Build(it.id("trays")), it.id("finish"), it.id("Ana"));
        assert_eq!(at, Some(it.id("second")));
    }

    #[test]
    fn the_step_of_a_stretch_is_open_until_it_is_done() {
        let work = "stretch Ana finish from 9:00 to 10:00 for trays step first on 2026-02-01
stretch Ana sand from 11:00 to 12:00 for trays on 2026-02-01";
        let look = |steps: &str| {
            let it = fixture(&format!("{steps}\n{work}"));
            let shop = it.shop();
            let of = |at: usize| open_step_of(&shop, shop.stretches[at].entry()).map(|it| it.0);
            (of(0).map(|step| step == it.id("first")), of(1))
        };
        assert_eq!(look(STEPS), (Some(true), None));
        assert_eq!(look(&STEPS.replace("1,2,3", "1,2,3 done 2026-02-01")), (None, None));
    }

    #[test]
    fn next_are_stages_of_steps_that_wait_for_none() {
        let it = fixture(STEPS);
        let next =
            |after: Option<&str>| planned_next(&it.shop(), it.id("trays"), after.map(|it_is| it.id(it_is)));
        assert_eq!(next(None), [it.id("finish"), it.id("edit")]);
        // While the editing goes on; while the first coat does, the second is of the same stage.
        assert_eq!(next(Some("edit")), [it.id("finish")]);
        assert_eq!(next(Some("finish")), [it.id("finish"), it.id("edit")]);
    }
}
