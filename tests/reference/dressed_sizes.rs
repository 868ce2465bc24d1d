//! Nominal and least dressed sizes of softwood against the standard's table.

use benchslate_core::measure::{
    Unit,
    board::{Seasoning, Size},
    marks::{self, Hint},
};

/// A board of one width or thickness, the other side and the length being of no account.
fn board(thickness: &str, width: &str) -> Size {
    let hint = Hint { unit: Some(Unit::Inch), ..Hint::default() };
    let [thickness, width, length] =
        [thickness, width, "96"].map(|text| marks::quantity(text, hint).expect("a length"));
    Size::typed(thickness, width, length).expect("lengths")
}

#[track_caller]
fn check(nominal: (&str, &str), seasoning: Seasoning, dressed: (&str, &str)) {
    let (nominal, dressed) = (board(nominal.0, nominal.1), board(dressed.0, dressed.1));
    assert_eq!(nominal.dressed(seasoning), Some(dressed));
    assert_eq!(dressed.sold_as(seasoning), Some(nominal));
}

// Source: published — PS 20, American Softwood Lumber Standard, table of boards as reproduced by Engineering ToolBox d_1270.
#[test]
fn board_thicknesses() {
    let rows = [
        ("3/8", "5/16", "11/32"),
        ("1/2", "7/16", "15/32"),
        ("5/8", "9/16", "19/32"),
        ("3/4", "5/8", "11/16"),
        ("1", "3/4", "25/32"),
        ("1 1/4", "1", "1 1/32"),
        ("1 1/2", "1 1/4", "1 9/32"),
    ];
    for (nominal, dry, green) in rows {
        check((nominal, "4"), Seasoning::Dry, (dry, "3 1/2"));
        check((nominal, "4"), Seasoning::Green, (green, "3 9/16"));
    }
}

// Source: published — PS 20 table of dimension lumber; rows also in Tenn. Comp. R. & Regs. 0080-07-07-.06 Table 4.
#[test]
fn dimension_thicknesses() {
    let rows = [
        ("2", "1 1/2", "1 9/16"),
        ("2 1/2", "2", "2 1/16"),
        ("3", "2 1/2", "2 9/16"),
        ("3 1/2", "3", "3 1/16"),
        ("4", "3 1/2", "3 9/16"),
        ("4 1/2", "4", "4 1/16"),
    ];
    for (nominal, dry, green) in rows {
        check((nominal, "6"), Seasoning::Dry, (dry, "5 1/2"));
        check((nominal, "6"), Seasoning::Green, (green, "5 5/8"));
    }
}

// Source: published — PS 20 table of widths; rows also in Tenn. Comp. R. & Regs. 0080-07-07-.06 Table 4.
#[test]
fn widths_lose_three_quarters_from_eight_inches_up() {
    let rows = [
        ("2", "1 1/2", "1 9/16"),
        ("3", "2 1/2", "2 9/16"),
        ("4", "3 1/2", "3 9/16"),
        ("5", "4 1/2", "4 5/8"),
        ("6", "5 1/2", "5 5/8"),
        ("8", "7 1/4", "7 1/2"),
        ("10", "9 1/4", "9 1/2"),
        ("12", "11 1/4", "11 1/2"),
        ("14", "13 1/4", "13 1/2"),
        ("16", "15 1/4", "15 1/2"),
    ];
    for (nominal, dry, green) in rows {
        check(("1", nominal), Seasoning::Dry, ("3/4", dry));
        check(("1", nominal), Seasoning::Green, ("25/32", green));
    }
}

// Source: published — PS 20: a dry two by four is 38.1 x 88.9 mm (1½ x 3½ in).
#[test]
fn a_dry_two_by_four_in_millimetres() {
    let dressed = board("2", "4").dressed(Seasoning::Dry).expect("a size of the standard");
    assert_eq!(dressed, board("38.1 mm", "88.9 mm"));
}
