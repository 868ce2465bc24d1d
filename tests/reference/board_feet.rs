//! Board measure against published worked examples.

use benchslate_core::measure::{
    Quantity, Unit,
    board::{Seasoning, Size},
    marks::{self, Hint},
};

fn size(text: &str) -> Size {
    let hint = Hint { unit: Some(Unit::Inch), ..Hint::default() };
    let parts: Vec<_> =
        text.split(" x ").map(|part| marks::quantity(part, hint).expect("a length")).collect();
    let [thickness, width, length] = parts[..] else { panic!("three sides: {text}") };
    Size::typed(thickness, width, length).expect("lengths")
}

#[track_caller]
fn check_measure(text: &str, boards: u32, want: &str) {
    let got = size(text).board_measure(boards).map(Quantity::shown_trimmed);
    assert_eq!(got.as_deref(), Some(want), "{text}");
}

#[track_caller]
fn check_volume(text: &str, boards: u32, want: &str) {
    let got = size(text).true_volume(boards).map(Quantity::shown_trimmed);
    assert_eq!(got.as_deref(), Some(want), "{text}");
}

// Source: published — US Navy NAVEDTRA 14069 p. 52: 300 linear feet of 2 x 4 are 200 board feet.
#[test]
fn three_hundred_feet_of_two_by_four_are_200_board_feet() {
    check_measure("2 x 4 x 300 ft", 1, "200");
    check_measure("2 x 4 x 10 ft", 30, "200");
}

// Source: published — US Navy, Engineering Aid Basic 6-3: inputs 14 ft of 2 x 4; 28/3 board feet by its formula.
#[test]
fn fourteen_feet_of_two_by_four_are_nine_and_a_third() {
    check_measure("2 x 4 x 14 ft", 1, "9.333333");
}

// Source: published — US Navy, Engineering Aid Basic 6-3: 1 x 9 x 96 in is 6, 1½ x 9 x 96 in is 9 board feet.
#[test]
fn sides_in_inches_are_divided_by_144() {
    check_measure("1 x 9 x 96", 1, "6");
    check_measure("1 1/2 x 9 x 96", 1, "9");
}

// Source: published — NAVEDTRA 14069 p. 52: "less than 1 in. thick is presumed to be 1 in."; ¾ x 6 in x 8 ft by that rule.
#[test]
fn a_board_thinner_than_an_inch_is_sold_as_an_inch() {
    check_measure("3/4 x 6 x 8 ft", 1, "4");
    check_volume("3/4 x 6 x 8 ft", 1, "3");
}

// Source: published — US Navy, Engineering Aid Basic 6-3: an 18 ft 2 x 6 is 18 board feet nominal, 1.03 ft³ of wood.
#[test]
fn nominal_measure_and_the_wood_that_is_there_are_two_things() {
    check_measure("2 x 6 x 18 ft", 1, "18");
    let dressed = size("2 x 6 x 18 ft").dressed(Seasoning::Dry).expect("a size of the standard");
    let wood = dressed.true_volume(1).expect("fits");
    assert_eq!(wood.shown_trimmed(), "12.375");
    let cubic_feet = benchslate_core::measure::convert(wood, Unit::BoardFoot, Unit::CubicFoot);
    assert_eq!(cubic_feet.map(|q| q.shown_to(2)).as_deref(), Some("1.03"));
}

// Source: published — definition of the board foot (UCUM 2.2, 144 in³) and of the inch; computed by hand.
#[test]
fn a_metric_board_has_its_true_volume() {
    check_volume("22 mm x 100 mm x 1200 mm", 1, "1.118769");
}

// Source: common practice — own boards are compared in the measure in which new stock is sold.
#[test]
fn twelve_planed_boards_are_sold_as_24_board_feet_and_hold_16_and_a_half() {
    let own = size("3/4 x 5 1/2 x 48");
    let sold = own.sold_as(Seasoning::Dry).expect("a size of the standard");
    assert_eq!(sold, size("1 x 6 x 4 ft"));
    assert_eq!(sold.board_measure(12).map(Quantity::shown_trimmed).as_deref(), Some("24"));
    check_volume("3/4 x 5 1/2 x 48", 12, "16.5");
}
