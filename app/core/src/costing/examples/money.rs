//! Sides, items, one-off work, income and closing: the worked examples.

use super::{check, fixture};
use crate::{
    costing::{KeyBy, OneSide, Rule, Statement},
    fixture::Fixture,
    measure::{Money, Quantity, Seconds},
};

fn side(it: &Fixture, side: OneSide) -> String {
    let cost = it.books().build_cost(it.id("bench"));
    let found = cost.sides.part(|rule| matches!(rule, Rule::Side { side: of, .. } if *of == side));
    found.and_then(Statement::money).unwrap_or_default().shown(2)
}

/// 60.00 for both sides, and some direct hours.
fn hall(more: &str) -> Fixture {
    fixture(&format!("person Ana\nbuild bench\nexpense hall 60 for bench side both\n{more}"))
}

#[test]
fn what_is_for_both_is_shared_by_direct_hours() {
    let it = hall("stretch Ana mill min 2700 for bench\nstretch Ana edit min 900 for bench side film");
    assert_eq!((side(&it, OneSide::Piece), side(&it, OneSide::Film)), ("45.00".into(), "15.00".into()));
    // Hours for both and hours on a lot are no key.
    let it = hall(
        "stretch Ana set-up min 90 for bench side both\nlot oak salvaged 9 paid 0\nstretch Ana reclaim min 90 for oak",
    );
    assert_eq!((side(&it, OneSide::Piece), side(&it, OneSide::Film)), ("30.00".into(), "30.00".into()));
    assert_eq!(it.books().build_cost(it.id("bench")).key.by, KeyBy::Half);
}

#[test]
fn the_key_can_be_a_share_or_what_each_side_brings_in() {
    let fixed = hall("setting both 0.4\nstretch Ana mill min 600 for bench");
    assert_eq!(side(&fixed, OneSide::Film), "24.00");
    let income = "setting both income
        income sale piece for bench expected 900
        income sponsor film for bench expected 300
        stretch Ana mill min 600 for bench";
    assert_eq!(side(&hall(income), OneSide::Film), "15.00");
    // A side that brings in nothing can't be a key: direct hours.
    let none =
        "setting both income\nincome sale piece for bench expected 900\nstretch Ana mill min 600 for bench";
    assert_eq!(hall(none).books().build_cost(hall(none).id("bench")).key.by, KeyBy::Hours);
}

#[test]
fn filming_slows_work_down_and_the_film_bears_that() {
    // 3 h rolling at 25 % move 0.6 h of 30.00.
    let it = fixture(
        "
        setting slow-down 0.25
        person Ana 30
        build bench
        stretch Ana mill from 09:00 to 12:00 roll 09:00-12:00 for bench
        ",
    );
    assert_eq!((side(&it, OneSide::Piece), side(&it, OneSide::Film)), ("72.00".into(), "18.00".into()));
}

/// 12 worked, 10 good, C 600.00, 10 % usually spoils.
fn batch(spoiled: &str) -> Fixture {
    fixture(&format!(
        "build bench items 12 spoil 0.1\nexpense wood 600 for bench\nmade bench 10 spoiled {spoiled}"
    ))
}

#[test]
fn spoilage_beyond_the_usual_is_a_loss() {
    let told = |it: &Fixture| {
        let batch = it.books().build_cost(it.id("bench")).batch;
        [batch.each.expect("made"), batch.loss, batch.item.money().expect("made")]
    };
    assert_eq!(told(&batch("1,1")).map(|it| it.shown(2)), ["50.00", "40.00", "56.00"]);
    let told = told(&batch("1,0.4"));
    assert_eq!(
        [told[0].shown(4), told[1].shown(2), told[2].shown(2)],
        ["52.6316".to_owned(), "29.47".into(), "57.05".into()]
    );
}

#[test]
fn nothing_made_yet_has_no_cost_of_one() {
    let it = fixture("build bench items 12\nexpense wood 600 for bench");
    let cost = it.books().build_cost(it.id("bench"));
    assert_eq!((cost.batch.item.money(), cost.batch.each), (None, None));
    assert_eq!(cost.batch.item.gaps, [crate::costing::Gap::NothingMade { build: it.id("bench") }]);
}

/// Jigs for 150.00, over 30 in two runs: 10 and 12 good.
const JIGS: &str = "
    build trays run 30
    build bench repeat trays
    expense jig 150 for trays one-off
    expense wood 20 for bench
    made trays 10
    made bench 12";

/// Nothing more is made of it: 40.00 is nobody's, and what repeats it later starts anew.
#[test]
fn when_a_run_ends_what_nobody_has_borne_is_written_off() {
    let it = fixture(&format!(
        "{JIGS}
        run-ends bench on 2026-04-01
        build late repeat trays on 2026-04-02
        made late 5"
    ));
    let books = it.books();
    let pool = |name: &str| {
        let pool = books.build_cost(it.id(name)).one_off.expect("a pool");
        (pool.share.total().shown(2), pool.rest.total().shown(2), pool.ended.map(|day| day.to_string()))
    };
    let ended = Some("2026-04-01".to_owned());
    assert_eq!(pool("trays"), ("50.00".into(), "40.00".into(), ended.clone()));
    assert_eq!(pool("late"), ("0.00".into(), "40.00".into(), ended));
}

/// On two phones the same pieces were handed over: all are counted, none is left, and it is said.
#[test]
fn more_handed_over_than_were_made_is_said_and_not_lost() {
    let lines = "build trays\nexpense wood 60 for trays\nmade trays 6\nhand trays 4 sold as one";
    let odd = |it: &crate::fixture::Fixture| {
        let cost = it.books().build_cost(it.id("trays"));
        (cost.items.left(), cost.items.beyond(), cost.batch.item.flags, it.books().flags())
    };
    let it = fixture(&format!("{lines}\nhand trays 2 given"));
    assert_eq!(odd(&it), (0, 0, Vec::new(), Vec::new()));
    assert_eq!(it.shop().still_here(it.id("trays"), it.id("one")), 4);
    let it = fixture(&format!("{lines}\nhand trays 4 sold"));
    let said = vec![crate::costing::Flag::HandedBeyond { build: it.id("trays"), more: 2 }];
    assert_eq!(odd(&it), (0, 2, said.clone(), said));
    assert_eq!(it.shop().still_here(it.id("trays"), it.id("one")), 2);
    assert_eq!(it.shop().still_here(it.id("trays"), it.id("trays")), 0);
}

/// 150 over a run of ten, twelve made: 12.50 each, not 15.00. Nor do items that are made after the run bear any of it.
#[test]
fn items_never_bear_more_one_off_work_than_their_build_does() {
    let it = fixture(
        "
        build trays run 10
        expense jig 150 for trays one-off
        expense wood 120 for trays
        made trays 12
        build bench repeat trays on 2026-02-02
        expense wood 20 for bench
        made bench 5
        build shelf repeat trays on 2026-02-02
        expense wood 9 for shelf",
    );
    let books = it.books();
    let told = |name: &str| {
        let cost = books.build_cost(it.id(name));
        let item = cost.batch.item.money().map(|item| item.shown(2)).unwrap_or_default();
        let left = cost.profit().left.map(|left| left.shown(2)).unwrap_or_default();
        (cost.true_cost.money().expect("known").shown(2), item, cost.batch.one_off_each.shown(2), left)
    };
    assert_eq!(told("trays"), ("270.00".into(), "22.50".into(), "12.50".into(), "270.00".into()));
    assert_eq!(told("bench"), ("20.00".into(), "4.00".into(), "0.00".into(), "20.00".into()));
    assert_eq!(told("shelf"), ("9.00".into(), String::new(), "0.00".into(), String::new()));
    // Tried with ten of them, each bears its tenth; with twenty, a twentieth.
    let trial = books.trial(&it.shop(), it.id("trays")).expect("a build");
    let one = |pieces: u32| {
        let tried = crate::costing::what_if::Tried { pieces: Some(pieces), ..Default::default() };
        trial.answers(tried).one_piece.expect("some").shown(2)
    };
    assert_eq!([one(5), one(10), one(12), one(20)], ["39.00", "27.00", "22.50", "13.50"]);
}

/// Begun before the run was ended and made after it, they bear what the run had for them; begun later, nothing.
#[test]
fn what_is_made_after_a_run_has_ended_bears_none_of_it() {
    let it = fixture(&format!(
        "{JIGS}
        run-ends bench on 2026-04-01
        build late repeat trays on 2026-04-02
        expense wood 10 for late
        made late 5"
    ));
    let item = |name: &str| it.books().build_cost(it.id(name)).batch.item.money().expect("made").shown(2);
    assert_eq!([item("trays"), item("bench"), item("late")], ["5.00", "6.67", "2.00"]);
}

#[test]
fn one_off_work_is_borne_by_all_that_is_made_with_it() {
    let it = fixture(JIGS);
    let books = it.books();
    let share = |name: &str| {
        let cost = books.build_cost(it.id(name));
        (
            cost.one_off.expect("a pool").share.total().shown(2),
            cost.true_cost.money().expect("known").shown(2),
        )
    };
    assert_eq!(share("trays"), ("50.00".into(), "50.00".into()));
    assert_eq!(share("bench"), ("60.00".into(), "80.00".into()));
    assert_eq!(books.build_cost(it.id("trays")).one_off.expect("a pool").rest.total().shown(2), "40.00");
    // The money was spent and used up where it was spent, and the bridge says what the run bears.
    check(
        JIGS,
        "bridge",
        1,
        "
        bridge 80.00
          used 20.00
          rest_one-off 60.00
    ",
    );
    let trays = books.build_cost(it.id("trays"));
    assert_eq!(trays.used_up().expect("there").money().expect("known").shown(2), "150.00");
}

#[test]
fn without_a_run_the_build_bears_it_all() {
    let it = fixture("build bench\nexpense jig 150 for bench one-off\nmade bench 10");
    let cost = it.books().build_cost(it.id("bench"));
    assert_eq!((cost.true_cost.money().expect("known").shown(2), cost.one_off), ("150.00".into(), None));
}

#[test]
fn net_is_what_came_less_tax_in_it_and_fee() {
    let it = fixture("build bench\nincome sale piece for bench expected 500 got 565 tax 65 fee 16.95");
    let earned = it.books().build_cost(it.id("bench")).earned;
    assert_eq!(earned.net.money().expect("known").shown(2), "483.05");
    assert_eq!(earned.tax.money().expect("known").shown(2), "65.00");
    // 500.00 was expected: 16.95 are still open until somebody says that it is settled.
    assert_eq!(earned.expected.money().expect("known").shown(2), "16.95");
    let settled = fixture("build bench\nincome sale piece for bench expected 500 got 480 settled");
    assert!(
        settled.books().build_cost(settled.id("bench")).earned.expected.money().expect("known").is_zero()
    );
}

#[test]
fn income_is_shared_to_the_last_cent() {
    let it = fixture("build bench\nbuild trays\nincome sponsor film for bench:2,trays:1 got 100");
    let net = |name: &str| it.books().build_cost(it.id(name)).earned.net_film.shown(6);
    assert_eq!((net("bench"), net("trays")), ("66.666667".into(), "33.333333".into()));
}

#[test]
fn profit_is_on_what_was_sold() {
    // 10 made at 56.00; 7 sold at 80.00, 1 given, 2 left.
    let it = fixture(
        "
        build bench items 10
        expense wood 560 for bench
        made bench 10
        hand bench 7 sold
        hand bench 1 given
        income sale piece for bench expected 560 got 560 settled
        ",
    );
    let profit = it.books().build_cost(it.id("bench")).profit();
    let told = [profit.on_sold, profit.given, profit.left].map(|it| it.expect("known").shown(2));
    assert_eq!(told, ["168.00", "56.00", "112.00"]);
}

#[test]
fn an_hour_earned_counts_own_time_once() {
    // 780 + 20 in kind, other cost 187, 30 h: (780 + 20 − 187) ÷ 30 = 20.43, whatever own time is worth.
    for rate in ["26", "0", "99.99"] {
        let it = fixture(&format!(
            "
            person Ana {rate}
            build bench
            lot oil supplied 1 unit tin use consumable value 20 by sponsor for bench
            draw 1 oil for bench
            expense wood 167 for bench
            stretch Ana mill min 1800 for bench
            income sale piece for bench expected 780 got 780 settled
            "
        ));
        let earned = it.books().build_cost(it.id("bench")).hour_earned.money().expect("known");
        assert_eq!(earned.shown(2), "20.43", "at {rate}");
    }
}

#[test]
fn a_sponsors_goods_are_income_of_the_film_and_a_clients_own_are_no_money() {
    let it = fixture(
        "
        build bench
        lot oil supplied 1 unit tin use consumable value 58 by sponsor
        lot cushion supplied 1 unit each use fitting value 90 by client
        draw 0.5 oil for bench
        draw 1 cushion for bench
        ",
    );
    let cost = it.books().build_cost(it.id("bench"));
    assert_eq!(cost.in_kind.money().expect("known").shown(2), "29.00");
    assert_eq!(cost.true_cost.money().expect("known").shown(2), "29.00");
    assert_eq!(cost.true_cost.gaps, []);
}

#[test]
fn a_by_product_lowers_what_the_lot_cost_to_fetch_or_the_build() {
    let it = fixture(
        "
        build bench
        lot oak salvaged 100 paid 50 yield 1 for bench
        by-product kindling 20 of oak
        draw 50 oak for bench
        by-product shavings 3 of bench
        ",
    );
    let cost = it.books().build_cost(it.id("bench"));
    // (50 − 20) ÷ 100 × 50 − 3.
    assert_eq!(cost.true_cost.money().expect("known").shown(2), "12.00");
    assert_eq!(cost.spent().expect("there").money().expect("known").shown(2), "27.00");
}

#[test]
fn a_receipt_counts_at_once_and_its_lines_take_over() {
    let spent = |lines: &str| {
        let it = fixture(&format!("build bench\nreceipt r total 80.93 tax 9.43 for bench\n{lines}"));
        it.books().build_cost(it.id("bench")).spent().expect("there").money().expect("known").shown(2)
    };
    assert_eq!(spent(""), "80.93");
    assert_eq!(spent("expense glue 24 receipt r for bench"), "80.93");
    let lines = "expense glue 24 receipt r for bench
        expense tape 16.50 receipt r for bench
        lot discs bought 50 unit each use consumable paid 31 receipt r for bench";
    assert_eq!(spent(lines), "80.93");
    let it = fixture(&format!("build bench\nreceipt r total 80.93 tax 9.43 for bench\n{lines}"));
    let shop = it.shop();
    let tax: Vec<String> = shop.expenses.iter().map(|it| it.shared.tax.shown(2)).collect();
    assert_eq!(tax, ["3.16", "2.18"]);
    assert!(shop.receipts[&it.id("r")].unsaid.is_zero());
}

/// Section of pools: 20 drawn at 3.50, then closed; later 7 h, 45 good, 15 culled.
const CLOSED: &str = "
    person Ana 25
    build bench
    build trays
    lot oak salvaged 120 paid 36 yield 0.8
    stretch Ana reclaim min 360 for oak
    sort oak good 48 culled 12
    draw 20 oak for bench as d1
    close bench
    stretch Ana reclaim min 420 for oak on 2026-03-01
    sort oak good 45 culled 15";

#[test]
fn closing_keeps_what_draws_cost_and_the_rest_bears_what_comes_later() {
    let it = fixture(CLOSED);
    let books = it.books();
    let cost = |books: &crate::costing::Books, name: &str| {
        books.build_cost(it.id(name)).true_cost.money().expect("known").shown(2)
    };
    assert_eq!(cost(&books, "bench"), "70.00");
    let line = books.shelf_line(it.source("oak")).expect("there");
    // The other 73 cost 291.00, 3.9863 each.
    assert_eq!(
        (line.value.shown(2), line.quantity.expect("known").shown_trimmed()),
        ("291.00".into(), "73".into())
    );
    assert_eq!(books.unit_cost(it.source("oak")).expect("known").rounded().shown(4), "3.9863");
    let today = crate::costing::Books::by_todays_knowledge(&it.shop(), it.end());
    assert_eq!(cost(&today, "bench"), "77.63");
    // Opened again it costs what is known today.
    let opened = fixture(&format!("{CLOSED}\nreopen bench on 2026-03-02"));
    assert_eq!(cost(&opened.books(), "bench"), "77.63");
}

#[test]
fn what_comes_back_after_closing_comes_back_at_nothing() {
    let it = fixture(&format!("{CLOSED}\nreturn 4 of d1 on 2026-03-05"));
    let books = it.books();
    assert_eq!(books.build_cost(it.id("bench")).true_cost.money().expect("known").shown(2), "70.00");
    let line = books.shelf_line(it.source("oak")).expect("there");
    assert_eq!((line.value.shown(2), line.quantity), ("291.00".into(), Quantity::from_decimal(77.into())));
}

#[test]
fn an_item_drawn_by_a_closed_build_keeps_its_cost_too() {
    let it = fixture(
        "
        build bench
        item disc consumable each
        lot a bought 10 of disc unit each paid 10
        draw 4 disc for bench on 2026-02-02
        close bench on 2026-02-03
        lot b bought 10 of disc unit each paid 40 on 2026-02-01
        ",
    );
    let books = it.books();
    assert_eq!(books.build_cost(it.id("bench")).true_cost.money().expect("known").shown(2), "4.00");
    assert_eq!(books.shelf_value().shown(2), "46.00");
}

#[test]
fn the_salvage_of_a_build_is_that_of_all_lots_it_drew() {
    let it = fixture(
        "
        person Ana 25
        build bench
        build trays
        lot oak salvaged 40 paid 20 yield 1 new 7 waste 0.1 new-tax 0.13
        lot elm salvaged 10 paid 5 yield 1 new 4
        lot ash salvaged 10 paid 5 yield 1
        stretch Ana reclaim min 240 for oak
        sort oak good 40 culled 0
        draw 20 oak for bench
        draw 10 oak for trays
        draw 5 elm for bench
        draw 5 ash for bench
        ",
    );
    let saving = it.books().build_saving(it.id("bench")).expect("drew salvage");
    // 20 × 7 ÷ 0.9 × 1.13 + 5 × 4 = 195.78; took 10 + 2.50, own 2 h at 25.
    assert_eq!(saving.time_free.money().expect("known").shown(2), "183.28");
    assert_eq!(saving.at_rate.money().expect("known").shown(2), "133.28");
    assert_eq!(saving.paid_an_hour.money().expect("known").shown(2), "91.64");
    // The ash has no price new: it is out of both sides, and said.
    assert_eq!(saving.time_free.gaps, [crate::costing::Gap::NoNewPrice { lot: it.id("ash") }]);
    let trays = it.books().build_saving(it.id("trays")).expect("drew salvage");
    assert_eq!(trays.lots.len(), 1);
    // Of the oak 10 of 40 are the trays': 10 × 7 ÷ 0.9 × 1.13 − 5 − 1 h at 25; the bench has its own part of it.
    let part = |of: &crate::costing::BuildSaving| -> Vec<String> {
        of.lot_by_lot(2).iter().map(|(_, shown)| shown.map_or("?".into(), |it| it.text())).collect()
    };
    assert_eq!(part(&trays), ["57.89"]);
    assert_eq!(part(&saving), ["115.78", "17.50"]);
    assert_eq!(saving.reclaimed_here, Seconds::ZERO);
}

#[test]
fn hours_of_piece_and_film_add_up_as_they_are_read() {
    let it = fixture(
        "
        person Ana 24
        build bench
        stretch Ana sand min 120 for bench side piece
        stretch Ana shoot min 60 for bench side film
        stretch Ana sand min 25 for bench side both
        ",
    );
    // 25 minutes at 2 : 1 are 16:40 and 8:20.
    let cost = it.books().build_cost(it.id("bench"));
    let hours = |part: &crate::costing::Part| match part.statement()?.rule {
        Rule::Side { hours, .. } => Some(hours.seconds().0 / 60),
        _ => None,
    };
    assert_eq!(cost.sides.parts.iter().map(hours).collect::<Vec<_>>(), [Some(137), Some(68)]);
}

#[test]
fn reclaiming_logged_on_the_build_stands_beside_its_saving_and_not_in_it() {
    let it = fixture(
        "
        person Ana 25
        build bench
        lot oak salvaged 40 paid 20 yield 1 new 7
        draw 10 oak for bench
        stretch Ana reclaim min 90 for bench
        stretch Ana sand min 30 for bench
        ",
    );
    let saving = it.books().build_saving(it.id("bench")).expect("drew salvage");
    assert_eq!(
        (saving.reclaimed_here, saving.at_rate.money()),
        (Seconds(5_400), Some(Money::from_micros(65_000_000)))
    );
}

#[test]
fn what_came_in_for_the_shop_itself_says_why_no_hour_earned_it() {
    let it = fixture("income other both expected 40 got 40");
    let earned = it.books().shop_cost().hour_earned;
    assert_eq!((earned.value, earned.gaps.len()), (None, 1));
}
