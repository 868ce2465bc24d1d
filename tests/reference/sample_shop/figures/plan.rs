//! What is still to come: the outlook of an open build, what its steps still cost, what the runs have taught.

use super::{Figures, Sample, money, put};
use benchslate_core::{
    costing::{BuildCost, Hours, Rule},
    journal::Id,
    timing::{learning::learned, steps::planned, worked},
};

/// Steps are lettered as they were written.
const STEPS: [&str; 7] = ["a", "b", "c", "d", "e", "f", "g"];

pub fn outlook(all: &mut Figures, at: &str, sample: &Sample, build: Id, cost: &BuildCost) {
    let none = || "can't be worked out: no steps".to_owned();
    put(all, at, "outlook", cost.outlook.money().map_or_else(none, money));
    let Some(plan) = cost.outlook.part(|rule| matches!(rule, Rule::ToCome { .. })) else { return };
    let at = format!("{at}.plan");
    if let Rule::ToCome { hours: left } = plan.rule {
        put(all, &at, "hours", left.in_hours().shown_to(6));
    }
    put(all, &at, "cost", money(plan.money().unwrap()));
    let part = |of: fn(&Rule) -> bool| money(plan.part(of).and_then(|it| it.money()).unwrap_or_default());
    put(all, &at, "own", part(|rule| matches!(rule, Rule::ToComeLabour { .. })));
    put(all, &at, "overhead", part(|rule| *rule == Rule::ToComeOverhead));
    put(all, &at, "tools", part(|rule| *rule == Rule::ToComeTools));
    put(all, &at, "jigs and design, share", part(|rule| *rule == Rule::ToComeOneOff));
    let planned = planned(&sample.shop, &worked(&sample.shop, sample.as_of));
    let mut steps: Vec<(u64, Id)> = sample.shop.steps.keys().map(|id| (super::count(*id), *id)).collect();
    steps.retain(|(_, id)| sample.shop.steps[id].build() == build);
    steps.sort_unstable();
    for (letter, (_, id)) in STEPS.iter().zip(steps) {
        put(all, &format!("{at}.left_by_step"), letter, Hours::of(planned[&id].left).in_hours().shown_to(6));
    }
}

pub fn learning(all: &mut Figures, sample: &Sample, run: Id) {
    let worked = worked(&sample.shop, sample.as_of);
    let it = learned(&sample.shop, &worked, &sample.shop.run_of(run), sample.as_of).expect("two batches");
    let mut stages: Vec<String> = it.stages.iter().map(|id| sample.shop.stages[id].name.clone()).collect();
    stages.sort_unstable();
    for (place, stage) in stages.into_iter().enumerate() {
        all.insert(format!("learning.stages[{place}]"), stage);
    }
    for (place, batch) in it.batches.iter().enumerate() {
        all.insert(format!("learning.units[{place}]"), batch.units.to_string());
        all.insert(format!("learning.hours[{place}]"), batch.hours.in_hours().shown_to(6));
    }
    for (name, figure) in [("b", it.b), ("rate", it.rate()), ("a", it.a), ("next", it.next_hours(24))] {
        put(all, "learning", name, figure.to_string());
    }
}
