//! Timber that was looked at: three ways it may go, where they come from, and what came of it.

use super::fixture;
use crate::{
    costing::{
        Gap, Path,
        salvage::{By, Missing, OfferFrom, Pile, appraise},
    },
    journal::kinds::{Case, Cases},
    measure::{Dec, Quantity, Seconds, Unit},
};

const SHOP: &str = "
    person Ana 28
    setting km 0.55";

const SHELVES: &str = "
    find shelves 88 asked 60 km 20 cases 0.6:840,0.75:540,0.85:360 new 6.5 waste 0.1 new-tax 0.13 from library";

fn quantity(text: &str) -> Quantity {
    Dec::parse(text).unwrap().quantity().unwrap()
}

#[test]
fn dearer_if_it_goes_badly_and_worth_it_as_it_usually_goes() {
    let it = fixture(&format!("{SHOP}{SHELVES}"));
    let shop = it.shop();
    let told = appraise(&shop, &shop.finds[&it.id("shelves")]);
    assert_eq!(told.missing, []);
    assert_eq!((told.cash.unwrap().shown(2), told.rate.unwrap().shown(2)), ("71.00".into(), "28.00".into()));
    let [badly, usually, well] = told.outcomes;
    assert_eq!(badly.usable.map(Quantity::shown_trimmed), Some("52.8".into()));
    assert_eq!(badly.instead.unwrap().shown(2), "430.91");
    assert_eq!(badly.own_time.unwrap().shown(2), "392.00");
    assert_eq!(
        [badly, usually, well].map(|it| it.time_free.unwrap().shown(2)),
        ["359.91", "467.63", "539.45"]
    );
    assert_eq!([badly, usually, well].map(|it| it.at_rate.unwrap().shown(2)), ["-32.09", "215.63", "371.45"]);
    assert_eq!([badly, usually].map(|it| it.an_hour.unwrap().shown(2)), ["25.71", "51.96"]);
}

#[test]
fn minutes_are_a_board_where_boards_are_counted() {
    let it = fixture("find joists 40 boards 8 asked 0 cases 0.5:30,0.6:20,0.7:15");
    let shop = it.shop();
    assert_eq!(shop.finds[&it.id("joists")].cases.map(|case| case.time), [14_400, 9_600, 7_200].map(Seconds));
}

#[test]
fn what_an_appraisal_lacks_is_said_and_the_rest_is_worked_out() {
    let it = fixture("find joists 40 km 12 cases 0.5:30,0.6:20,0.7:15");
    let shop = it.shop();
    let told = appraise(&shop, &shop.finds[&it.id("joists")]);
    let [badly, ..] = told.outcomes;
    assert_eq!(told.missing, [Missing::NewPrice, Missing::Asked, Missing::KmRate, Missing::Rate]);
    assert_eq!((badly.usable.map(Quantity::shown_trimmed), badly.at_rate), (Some("20".into()), None));
}

/// Lots of a barn: yields 0.6, 0.7 and 0.9 at 12, 6 and 3 minutes a board foot.
const BARN: &str = "
    lot a salvaged 100 paid 0 from barn
    lot b salvaged 100 paid 0 from barn
    sort a good 60 culled 40
    sort b good 35 culled 15
    stretch Ana reclaim min 1200 for a
    stretch Ana reclaim min 300 for b";

const THIRD: &str = "
    lot c salvaged 20 paid 0 from barn
    sort c good 18 culled 2
    stretch Ana reclaim min 60 for c";

#[test]
fn three_lots_of_a_place_are_a_spread_and_two_are_not() {
    let pile = Pile { quantity: quantity("50"), unit: Unit::BoardFoot, boards: Some(10) };
    let two = fixture(&format!("{SHOP}{BARN}")).books().offer(Some("barn"), pile);
    assert_eq!((two.usable_from, two.time_from), (OfferFrom::CommonPractice, OfferFrom::CommonPractice));
    assert_eq!(two.usable.map(|it| it.hundredths().shown_trimmed()), ["55", "70", "85"]);
    // 40, 25 and 15 minutes a board.
    assert_eq!(two.time, Some([24_000, 15_000, 9_000].map(Seconds)));
    let three = fixture(&format!("{SHOP}{BARN}{THIRD}")).books().offer(Some(" barn"), pile);
    assert_eq!(
        (three.usable_from, three.time_from),
        (OfferFrom::Own { lots: 3 }, OfferFrom::Own { lots: 3 })
    );
    assert_eq!(three.usable.map(|it| it.hundredths().shown_trimmed()), ["60", "70", "90"]);
    assert_eq!(three.time, Some([36_000, 18_000, 9_000].map(Seconds)));
    let elsewhere = fixture(&format!("{SHOP}{BARN}{THIRD}")).books().offer(Some("mill"), pile);
    assert_eq!(elsewhere.usable_from, OfferFrom::CommonPractice);
}

#[test]
fn badly_and_well_keep_their_distance_to_what_was_typed() {
    let pile = Pile { quantity: quantity("50"), unit: Unit::BoardFoot, boards: None };
    let offer = fixture(SHOP).books().offer(None, pile);
    // 10, 6 and 4 minutes a board foot.
    assert_eq!(offer.time, Some([30_000, 18_000, 12_000].map(Seconds)));
    assert_eq!(offer.minutes(None), Some([500, 300, 200]));
    let case = |usable: &str, minutes| Case { usable: Dec::parse(usable).unwrap(), minutes };
    let told = |typed| offer.cases(None, typed).unwrap();
    let none = (None, None);
    let usual = (Dec::parse("0.84").ok(), Some(150));
    let want = Cases { badly: case("0.66", 250), usually: case("0.84", 150), well: case("1", 100) };
    assert_eq!(told([none, usual, none]), want);
    let badly = (Dec::parse("0.2").ok(), None);
    let want = Cases { badly: case("0.2", 500), usually: case("0.7", 300), well: case("0.85", 200) };
    assert_eq!(told([badly, none, none]), want);
}

#[test]
fn what_was_expected_stands_beside_what_it_came_to() {
    let it = fixture(&format!(
        "{SHOP}
        build bench
        lot oak salvaged 88 paid 60 yield 0.75 new 6.5 waste 0.1 new-tax 0.13 from library
        trip 20 for oak
        {}
        stretch Ana reclaim min 480 for oak
        sort oak good 70 culled 18
        draw 35 oak for bench",
        SHELVES.replace("from library", "from library lot oak")
    ));
    let told = it.books().expected(&it.shop(), it.id("oak")).expect("was a find");
    assert_eq!(told.usable.map(|it| it.unwrap().shown_trimmed()), ["52.8", "66", "74.8"]);
    assert_eq!(told.usable_now.unwrap().shown_trimmed(), "70");
    assert_eq!(
        (told.time, told.hours_now.seconds()),
        ([50_400, 32_400, 21_600].map(Seconds), Seconds(28_800))
    );
    assert_eq!((told.cash.unwrap().shown(2), told.cash_now.shown(2)), ("71.00".into(), "71.00".into()));
    // 35 x 6.5 / 0.9 x 1.13 = 285.64; less 35.50, over 4 h.
    assert_eq!(told.an_hour_now.unwrap().shown(2), "62.53");
    assert_eq!(fixture(SHOP).books().expected(&it.shop(), it.id("oak")), None);
}

#[test]
fn saving_by_place_and_by_species_adds_up_and_a_missing_price_is_said() {
    let it = fixture(&format!(
        "{SHOP}
        build bench
        lot oak salvaged 100 paid 50 yield 1 new 6 from barn species oak
        lot elm salvaged 100 paid 20 yield 1 new 2 from barn species elm
        lot ash salvaged 10 paid 90 yield 1 new 5 from mill species ash
        lot fir salvaged 10 paid 5 yield 1 from mill
        lot yew salvaged 10 paid 5 yield 1 new 9 from yard
        stretch Ana reclaim min 600 for oak
        sort oak good 100 culled 0
        draw 50 oak for bench
        draw 100 elm for bench
        draw 10 ash for bench
        draw 4 fir for bench"
    ));
    let across = it.books().across(By::Source).expect("some");
    let told: Vec<_> = across
        .groups
        .iter()
        .map(|it| {
            (
                it.name.clone().unwrap(),
                it.time_free.money().unwrap().shown(2),
                it.at_rate.money().unwrap().shown(2),
            )
        })
        .collect();
    let row = |name: &str, free: &str, rate: &str| (name.to_owned(), free.to_owned(), rate.to_owned());
    // Barn: 300 - 25 + 200 - 20; half of 10 h at 28. Mill: 50 - 90; the fir has no price.
    assert_eq!(told, [row("barn", "455.00", "315.00"), row("mill", "-40.00", "-40.00")]);
    assert_eq!(across.at_rate.money().unwrap().shown(2), "275.00");
    assert_eq!(across.groups[0].paid_an_hour.money().unwrap().shown(2), "91.00");
    assert_eq!(across.paid_an_hour.money().unwrap().shown(2), "83.00");
    // Of the yew nothing was drawn.
    let no_price = |gap: &&Gap| matches!(gap, Gap::NoNewPrice { .. });
    let gaps: Vec<_> = across.at_rate.gaps.iter().filter(no_price).collect();
    assert_eq!(gaps, [&Gap::NoNewPrice { lot: it.id("fir") }]);
    // Down to the lines of each lot, by one address.
    let barn = across.groups[0].at_rate.rule.step();
    for lot in ["oak", "elm"] {
        let at_rate = across.at_rate.rule.step();
        let lot = format!("lot_{}", it.id(lot));
        let path = Path { steps: vec![at_rate, barn.clone()] };
        let path = Path::parse(&format!("{path}.{lot}.bought-instead"));
        let levels = across.open(&path).expect("opens");
        assert_eq!(levels.len(), 4, "{path}");
        assert!(levels[3].parts[0].entry_id().is_some());
    }
    let species = it.books().across(By::Species).expect("some");
    assert_eq!(species.groups.len(), 4);
    assert_eq!(species.at_rate.money(), across.at_rate.money());
}
