//! Plans that can be checked by hand, and laws over plans that can't.

use super::*;
use crate::measure::{
    Unit,
    marks::{Hint, Typed},
};
use proptest::prelude::*;

fn inches(text: &str) -> Fraction {
    crate::measure::marks::quantity(text, Hint { unit: Some(Unit::Inch), ..Hint::default() }).unwrap().amount
}

fn pieces(all: &[(&str, u32)]) -> Vec<Pieces> {
    all.iter().map(|(length, count)| Pieces { length: inches(length), count: *count }).collect()
}

fn boards(all: &[(i128, Option<u32>)]) -> Vec<Stock> {
    let feet = |feet: i128| Fraction::of(feet * 12, 1).unwrap();
    all.iter().map(|(length, there)| Stock { length: feet(*length), there: *there }).collect()
}

/// `3 of 96: 0x3 rest 93/8`, a line a pattern.
fn said(plan: &Plan, stock: &[Stock]) -> Vec<String> {
    let cut = |cut: &Cut| {
        let pieces: Vec<String> = cut.pieces.iter().map(|(at, many)| format!("{at}x{many}")).collect();
        format!("{} of {}: {} rest {}", cut.boards, stock[cut.stock].length, pieces.join(" "), cut.rest)
    };
    plan.cuts.iter().map(cut).collect()
}

#[test]
fn a_cut_is_lost_between_pieces_and_not_after_the_last() {
    let (eighth, none) = (inches("1/8"), Fraction::ZERO);
    let stock = boards(&[(8, None)]);
    let many = |length: &str, kerf| plan(&pieces(&[(length, 8)]), &stock, kerf).unwrap().boards;
    assert_eq!((many("24", none), many("24", eighth)), (2, 3));
    // Four pieces and three cuts: 4 × 23 29/32 + 3/8 is exactly 96.
    assert_eq!(many("23 29/32", eighth), 2);
}

#[test]
fn boards_of_two_lengths_are_mixed_so_that_least_is_bought() {
    let stock = boards(&[(8, None), (10, None)]);
    let wanted = pieces(&[("59", 2), ("47", 2)]);
    let plan = plan(&wanted, &stock, inches("1/8")).unwrap();
    assert_eq!(said(&plan, &stock), ["1 of 120: 0x2 rest 7/4", "1 of 96: 1x2 rest 7/4"]);
    assert_eq!((plan.bought, plan.least_bought), (inches("216"), inches("216")));
}

#[test]
fn what_is_there_is_used_before_anything_is_bought() {
    let stock = boards(&[(8, None), (6, Some(2))]);
    let wanted = pieces(&[("30", 5)]);
    let plan = plan(&wanted, &stock, Fraction::ZERO).unwrap();
    assert_eq!((plan.boards, plan.bought), (3, inches("96")));
    assert_eq!(said(&plan, &stock), ["2 of 72: 0x2 rest 12", "1 of 96: 0x1 rest 66"]);
}

#[test]
fn pieces_that_nothing_is_left_for_are_said() {
    let stock = boards(&[(8, Some(1))]);
    let plan = plan(&pieces(&[("40", 3), ("100", 2)]), &stock, inches("1/8")).unwrap();
    assert_eq!(plan.left_over, [(0, 1), (1, 2)]);
    // Nothing is promised of a plan that does not hold.
    assert_eq!((plan.boards, plan.least_boards), (1, 0));
}

#[test]
fn pieces_of_one_length_keep_their_names() {
    let stock = boards(&[(8, None)]);
    let plan = plan(&pieces(&[("30", 2), ("30", 1)]), &stock, inches("1/8")).unwrap();
    assert_eq!(said(&plan, &stock), ["1 of 96: 0x2 1x1 rest 45/8"]);
}

#[test]
fn nothing_to_cut_and_nothing_to_cut_it_from_are_said() {
    let stock = boards(&[(8, None)]);
    let one = pieces(&[("30", 1)]);
    assert_eq!(plan(&[], &stock, Fraction::ZERO), Err(NoPlan::NoPieces));
    assert_eq!(plan(&pieces(&[("30", 0)]), &stock, Fraction::ZERO), Err(NoPlan::NoPieces));
    assert_eq!(plan(&one, &[], Fraction::ZERO), Err(NoPlan::NoBoards));
    assert_eq!(plan(&one, &boards(&[(8, Some(0))]), Fraction::ZERO), Err(NoPlan::NoBoards));
    assert_eq!(plan(&pieces(&[("30", 100_000)]), &stock, Fraction::ZERO), Err(NoPlan::TooMany));
    assert_eq!(plan(&pieces(&[("0", 1)]), &stock, Fraction::ZERO), Err(NoPlan::OutOfRange));
    let far = Pieces { length: inches("1000000000000").times(inches("1000")).unwrap(), count: 1 };
    assert_eq!(plan(&[far], &stock, Fraction::ZERO), Err(NoPlan::OutOfRange));
}

#[test]
fn millimetres_and_inches_meet_exactly() {
    let mm = |mm| Fraction::of(mm, 1).unwrap().converted(Unit::Millimetre, Unit::Inch).unwrap();
    let stock = [Stock { length: mm(2400), there: None }];
    // 4 × 597 + 3 × 4 = 2400 exactly.
    let four = [Pieces { length: mm(597), count: 4 }];
    assert_eq!(plan(&four, &stock, mm(4)).unwrap().boards, 1);
    let more = [Pieces { length: Fraction::of(597_001, 25_400).unwrap(), count: 4 }];
    assert_eq!(plan(&more, &stock, mm(4)).unwrap().boards, 2);
}

#[track_caller]
fn typed(text: &str, want: Option<&[(&str, Unit, Option<u32>)]>) {
    let feet = Hint { unit: Some(Unit::Foot), ..Hint::default() };
    let read = stock_typed(text, feet).ok();
    let want = want.map(|want| {
        let one = |(length, unit, there): &(&str, Unit, Option<u32>)| {
            let amount = inches(length);
            TypedStock { length: Typed { amount, unit: Some(*unit) }, there: *there }
        };
        want.iter().map(one).collect::<Vec<_>>()
    });
    assert_eq!(read, want, "{text}");
}

#[test]
fn boards_are_read_as_a_tired_person_types_them() {
    let (ft, m) = (Unit::Foot, Unit::Metre);
    typed("8 ft", Some(&[("8", ft, None)]));
    typed("8", Some(&[("8", ft, None)]));
    typed("8, 10", Some(&[("8", ft, None), ("10", ft, None)]));
    typed("8 ft x 3, 10 ft", Some(&[("8", ft, Some(3)), ("10", ft, None)]));
    typed("3 x 8ft; 10ft", Some(&[("8", ft, Some(3)), ("10", ft, None)]));
    typed("3×8'", Some(&[("8", ft, Some(3))]));
    typed("2,4 m and 3 m", Some(&[("2.4", m, None), ("3", m, None)]));
    typed("8 ft 6 in", Some(&[("102", Unit::Inch, None)]));
    typed("8 ft,", Some(&[("8", ft, None)]));
    typed("8 ft x 0", Some(&[("8", ft, Some(0))]));
    typed("8 x 3", None);
    typed("8 ft x", None);
    typed("x 3", None);
    typed("8 ft x 2.5", None);
    typed("0 ft", None);
    typed("-8 ft", None);
    typed("8 lb", None);
    typed("eight", None);
    typed("1,234 mm", None);
    typed("", None);
    typed(", ;", None);
    typed("1, 2, 3, 4, 5, 6, 7, 8, 9", None);
}

fn a_list() -> impl Strategy<Value = (Vec<Pieces>, Vec<Stock>, Fraction)> {
    let piece = (1_i128..3_000, 1_u32..7)
        .prop_map(|(at, count)| Pieces { length: Fraction::of(at, 32).unwrap(), count });
    let stock = (20_i128..130, prop::option::of(0_u32..5))
        .prop_map(|(at, there)| Stock { length: Fraction::of(at, 1).unwrap(), there });
    let kerf = (0_i128..9).prop_map(|at| Fraction::of(at, 32).unwrap());
    (prop::collection::vec(piece, 1..9), prop::collection::vec(stock, 1..4), kerf)
}

#[test]
fn of_two_rows_of_one_length_what_is_cut_and_what_is_left_add_up() {
    let row = |count| Pieces { length: Fraction::of(73, 16).unwrap(), count };
    let stock = [Stock { length: Fraction::of(35, 1).unwrap(), there: Some(1) }];
    let plan = plan(&[row(4), row(6)], &stock, Fraction::ZERO).unwrap();
    // Seven of ten fit.
    assert_eq!(plan.cuts[0].pieces, [(0, 4), (1, 3)]);
    assert_eq!(plan.left_over, [(1, 3)]);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn no_piece_is_lost_and_no_board_is_longer_than_it_is((wanted, stock, kerf) in a_list()) {
        let Ok(plan) = plan(&wanted, &stock, kerf) else { return Ok(()) };
        let mut counts = vec![0_u32; wanted.len()];
        let mut used = vec![0_u32; stock.len()];
        for cut in &plan.cuts {
            used[cut.stock] += cut.boards;
            let mut sum = Fraction::ZERO;
            let mut many = 0_i128;
            for (at, count) in &cut.pieces {
                counts[*at] += count * cut.boards;
                many += i128::from(*count);
                sum = sum.plus(wanted[*at].length.times(Fraction::of(i128::from(*count), 1).unwrap()).unwrap()).unwrap();
            }
            let cuts = kerf.times(Fraction::of(many - 1, 1).unwrap()).unwrap();
            prop_assert!(stock[cut.stock].length.covers(sum.plus(cuts).unwrap()));
        }
        for (at, count) in &plan.left_over {
            counts[*at] += count;
        }
        prop_assert_eq!(counts, wanted.iter().map(|it| it.count).collect::<Vec<_>>());
        for (stock, used) in stock.iter().zip(&used) {
            prop_assert!(stock.there.is_none_or(|there| *used <= there));
        }
        prop_assert_eq!(plan.boards, used.iter().sum::<u32>());
    }

    #[test]
    fn the_bound_is_never_above_the_answer((wanted, stock, kerf) in a_list()) {
        let Ok(plan) = plan(&wanted, &stock, kerf) else { return Ok(()) };
        prop_assert!(plan.least_boards <= plan.boards);
        prop_assert!(plan.bought.covers(plan.least_bought));
    }

    #[test]
    fn no_text_makes_it_panic(text in "\\PC{0,40}") {
        let _ = stock_typed(&text, Hint::default());
    }
}
