//! The true cost of a build, against published job cost sheets.
//!
//! Overhead goes by money of labour there and by hours here (`overhead`), so it stands as a direct expense.

use benchslate_core::{
    costing::{CostKind, Rule},
    fixture::fixture,
};

/// The kinds of the sheet of `job`, and its total.
#[track_caller]
fn check(history: &str, want: &[(CostKind, &str)], total: &str) {
    let it = fixture(history);
    let cost = it.books().build_cost(it.id("job"));
    let kinds: Vec<(CostKind, String)> = cost
        .true_cost
        .parts
        .iter()
        .filter_map(|part| part.statement())
        .filter_map(|statement| match statement.rule {
            Rule::Kind { kind, .. } => Some((kind, statement.money()?.shown(2))),
            _ => None,
        })
        .collect();
    assert_eq!(kinds, want.iter().map(|(kind, value)| (*kind, (*value).to_owned())).collect::<Vec<_>>());
    assert_eq!(cost.true_cost.money().expect("known").shown(2), total);
    assert_eq!(cost.parts.total().shown(2), total);
}

// Source: published — OpenStax, Principles of Accounting 2, ch. 4 (m68124, m68004, m68005), Dinosaur Vinyl, job MAC001.
#[test]
fn a_sign_job_with_materials_labour_and_applied_overhead() {
    // DIFFERENCE: the alternative text of one of its sheets prints the overhead rate as 1.50; 2.50 gives 165.
    check(
        "person production1 15
        person production2 15
        person production3 18
        build job
        item vinyl fitting each
        item black-ink fitting each
        item red-ink fitting each
        item gold-ink fitting each
        item grommet fitting each
        item wood fitting ft
        lot v bought 10 of vinyl unit each paid 3000
        lot b bought 10 of black-ink unit each paid 500
        lot r bought 10 of red-ink unit each paid 600
        lot g bought 10 of gold-ink unit each paid 600
        lot gr bought 100 of grommet unit each paid 1000
        lot w bought 100 of wood unit ft paid 150
        draw 1 vinyl for job
        draw 2 black-ink for job
        draw 1 red-ink for job
        draw 1 gold-ink for job
        draw 12 grommet for job
        draw 40 wood for job
        stretch production1 cut min 60 for job
        stretch production2 assemble min 60 for job
        stretch production3 finish min 120 for job
        expense overhead 165 for job",
        &[(CostKind::Bought, "700.00"), (CostKind::Direct, "165.00"), (CostKind::Labour, "66.00")],
        "931.00",
    );
}

// Source: published — OpenStax, Principles of Accounting 2, ch. 4 (m68005), exercise: inputs as printed, answers by its method.
#[test]
fn two_jobs_with_overhead_by_the_hour() {
    // Materials of 780, 375 of them for job 1; 23 an hour, 18 h and 29 h; overhead 20 an hour.
    let jobs = |drawn: &str, hours: u32, overhead: u32| {
        format!(
            "person worker 23
            build job
            lot materials bought 780 unit each paid 780
            draw {drawn} materials for job
            stretch worker cut min {} for job
            expense overhead {overhead} for job",
            hours * 60
        )
    };
    let kinds = |bought, direct, labour| {
        [(CostKind::Bought, bought), (CostKind::Direct, direct), (CostKind::Labour, labour)]
    };
    check(&jobs("375", 18, 360), &kinds("375.00", "360.00", "414.00"), "1149.00");
    check(&jobs("405", 29, 580), &kinds("405.00", "580.00", "667.00"), "1652.00");
}

// Source: published — OpenStax, Principles of Accounting 2, ch. 4 (m68124): opening 2,500 + bought 10,500 − used 1,400 = 11,600.
#[test]
fn materials_on_hand_after_a_month_of_jobs() {
    let it = fixture(
        "build job
        item material fitting each
        lot opening bought 2500 of material unit each paid 2500 on 2026-01-01
        lot bought bought 10500 of material unit each paid 10500 on 2026-01-02
        draw 1400 material for job on 2026-01-15",
    );
    let books = it.books();
    let shelf = books.shelf_line(it.source("material")).expect("it came");
    assert_eq!(shelf.value.shown(2), "11600.00");
    assert_eq!(books.build_cost(it.id("job")).parts.total().shown(2), "1400.00");
}
