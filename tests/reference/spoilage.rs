//! Spoiled items and half-done ones, against textbook examples.

use benchslate_core::{
    costing::{Batch, Items},
    fixture::fixture,
};

/// A batch of a cost; `spoiled` and `normal` as a fixture says them.
fn batch(cost: &str, good: u32, spoiled: &str, normal: &str) -> (Items, Batch) {
    let it = fixture(&format!(
        "build batch items {good} spoil {normal}
        expense material {cost} for batch
        made batch {good} spoiled {spoiled}"
    ));
    let cost = it.books().build_cost(it.id("batch"));
    (cost.items, cost.batch)
}

fn of_spoiled(count: usize, share: &str) -> String {
    vec![share; count].join(",")
}

// Source: published — examination question (gaodun.com 306i75): 2,200 over 550 items is 4.00 each; 500 good, 30 spoiled as
// usual, so 2,120 stay with the good ones and 20 × 4 are lost.
#[test]
fn usual_spoilage_stays_with_the_good_and_the_rest_is_lost() {
    // 30 of 550, as near as six digits say it.
    let (items, batch) = batch("2200", 500, &of_spoiled(50, "1"), "0.054545");
    assert_eq!(items.worked(), 550);
    assert_eq!(batch.each.expect("made").shown(2), "4.00");
    assert_eq!(batch.loss.shown(2), "80.00");
    assert_eq!(batch.item.money().expect("made").shown(2), "4.24");
}

// Source: published — dummies.com, "Cost accounting: equivalent spoilage included and excluded": 150,000 over 6,000 belts,
// 200 of them spoiled as is usual: 25.00 for each one's worth of work.
#[test]
fn spoiled_belts_count_as_work_done() {
    let (items, batch) = batch("150000", 5_800, &of_spoiled(200, "1"), "0.034");
    assert_eq!(items.equivalent().shown_trimmed(), "6000");
    assert_eq!(batch.each.expect("made").shown(2), "25.00");
    assert_eq!(batch.loss.shown(2), "0.00");
}

// Source: published — OpenStax, Principles of Accounting 2, ch. 5 (m68131): forty units that are 25 % complete are ten;
// 7,500 drumsticks done and 1,200 at 35 % are 7,920.
#[test]
fn half_done_items_count_by_what_is_done() {
    let (items, _) = batch("100", 0, &of_spoiled(40, "0.25"), "0");
    assert_eq!(items.equivalent().shown_trimmed(), "10");
    let (items, _) = batch("100", 7_500, &of_spoiled(1_200, "0.35"), "0");
    assert_eq!(items.equivalent().shown_trimmed(), "7920");
}
