//! A salvaged lot's cost among what was drawn of it, against published joint costs and sizes.
//!
//! A lot whose cost is shared by quantity is a joint cost shared by physical measure.

use benchslate_core::{
    costing::{Value, present},
    fixture::{Fixture, fixture},
    measure::{
        Shown, Unit,
        board::{Seasoning, Size},
        marks::{self, Hint},
    },
};

fn cost(it: &Fixture, build: &str) -> String {
    it.books().build_cost(it.id(build)).parts.total().shown(2)
}

/// A joint cost, two products by weight, and what falls to each.
#[track_caller]
fn check(joint: &str, one: (&str, &str), other: (&str, &str)) {
    let (first, second) = (one.0, other.0);
    let whole: u32 = first.parse::<u32>().expect("whole") + second.parse::<u32>().expect("whole");
    let it = fixture(&format!(
        "build one
        build other
        lot log salvaged {whole} unit lb paid {joint} yield 1
        draw {first} log for one
        draw {second} log for other"
    ));
    assert_eq!((cost(&it, "one").as_str(), cost(&it, "other").as_str()), (one.1, other.1));
}

// Source: published — OpenStax, Principles of Accounting 2 (m68085), joint costs by physical units: inputs as printed.
#[test]
fn a_joint_cost_falls_by_weight() {
    check("36000", ("25", "9000.00"), ("75", "27000.00"));
    check("66000", ("44", "26400.00"), ("66", "39600.00"));
}

// Source: published — the joint cost of the same exercise, its products sorted in two goes: the pools are spread anew each time.
#[test]
fn sorting_in_goes_ends_where_sorting_at_once_ends() {
    let goes = |sorts: &str| {
        fixture(&format!(
            "build one
            build other
            lot log salvaged 110 unit lb paid 66000 yield 0.5
            draw 44 log for one
            draw 66 log for other
            {sorts}"
        ))
    };
    let at_once = goes("sort log good 110 culled 0");
    let twice = goes("sort log good 44 culled 0\n sort log good 66 culled 0");
    for it in [at_once, twice] {
        assert_eq!((cost(&it, "one").as_str(), cost(&it, "other").as_str()), ("26400.00", "39600.00"));
    }
}

// Source: published — PS 20, American Softwood Lumber Standard (as reproduced by Engineering ToolBox d_1270): 1 x 6 is dressed ¾ x 5½.
#[test]
fn twelve_dressed_boards_are_compared_in_the_measure_in_which_new_ones_are_sold() {
    let hint = Hint { unit: Some(Unit::Inch), ..Hint::default() };
    let [thickness, width, length] =
        ["3/4", "5 1/2", "48"].map(|text| marks::quantity(text, hint).expect("a length"));
    let dressed = Size::typed(thickness, width, length).expect("lengths");
    let nominal = dressed.sold_as(Seasoning::Dry).expect("a size of the standard");
    let sold = nominal.board_measure(12).expect("fits").shown_trimmed();
    let wood = dressed.true_volume(12).expect("fits").shown_trimmed();
    assert_eq!((sold.as_str(), wood.as_str()), ("24", "16.5"));
    let instead = |basis: &str| {
        let it = fixture(&format!(
            "build one
            lot boards salvaged {wood} measure actual other {sold} paid 0 yield 1 new 6 sold {basis}
            draw {wood} boards for one"
        ));
        let lot = it.books().lot(it.id("boards")).expect("a lot by itself");
        lot.saving.time_free.money().expect("known").shown(2)
    };
    assert_eq!([instead("nominal"), instead("actual")], ["144.00", "99.00"]);
}

// Source: common practice — a hundred in three equal parts is shown as 33.34, 33.33 and 33.33.
#[test]
fn three_equal_draws_of_a_hundred_add_up_as_shown() {
    let it = fixture(
        "build one
        lot log salvaged 3 unit each paid 100 yield 1
        draw 1 log for one
        draw 1 log for one
        draw 1 log for one",
    );
    let cost = it.books().build_cost(it.id("one"));
    let salvaged = cost.true_cost.parts.first().and_then(|part| part.statement()).expect("salvaged");
    let drawn = salvaged.parts.first().and_then(|part| part.statement()).expect("the lot");
    assert!(matches!(drawn.value, Some(Value::Money(_))));
    let level = present::alone(drawn, 2);
    let shown: Vec<String> = level.parts.iter().flatten().map(Shown::text).collect();
    assert_eq!(shown, ["33.34", "33.33", "33.33"]);
    assert_eq!(level.shown.expect("money").text(), "100.00");
}
