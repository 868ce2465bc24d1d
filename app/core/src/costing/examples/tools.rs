//! Tools, blades, power and overhead: the worked examples.

use super::{check, fixture};
use crate::{costing::Flag, measure::Money};

/// Price 800.00, 200.00 at the end, 1,500 h; two people at it for 2 h, duty 0.6.
const PLANER: &str = "
    person Ana
    person Bo
    build bench
    tool planer price 800 resale 200 life 1500 at mill:0.6
    stretch Ana mill from 09:00 to 11:00 for bench as ana
    stretch Bo mill from 09:00 to 11:00 for bench as bo";

#[test]
fn a_tool_runs_while_anybody_is_at_it() {
    // 2 h × 0.6 = 1.2 h at 0.40 = 0.48, and not twice.
    check(
        PLANER,
        "true.tools",
        2,
        "
        tools 0.48
          tool_planer 0.48
            ana 0.48
    ",
    );
    let it = fixture(PLANER);
    let books = it.books();
    let book = books.tool(it.id("planer")).expect("there");
    assert_eq!((book.hours.shown_trimmed().as_str(), book.rate().shown(2).as_str()), ("1.2", "0.40"));
}

#[test]
fn hours_logged_as_an_amount_are_added_and_hours_read_off_take_the_place_of_all() {
    let hours = |more: &str| {
        let it = fixture(&format!("{PLANER}\n{more}"));
        it.books().tool(it.id("planer")).expect("there").hours.shown_trimmed()
    };
    assert_eq!(hours("stretch Ana mill min 60 for bench"), "1.8");
    assert_eq!(hours("ran planer 0.75 stage mill for bench"), "0.75");
    // On another day, for another bearer, at another stage they take the place of nothing.
    assert_eq!(hours("ran planer 0.75 stage mill for bench on 2026-02-09"), "1.95");
    assert_eq!(hours("ran planer 0.75 stage sand for bench"), "1.95");
}

#[test]
fn a_changed_life_looks_forward_only() {
    // After 600 h it is worth 560.00; "400 h left" makes it (560 − 200) ÷ 400 = 0.90 an hour.
    let it = fixture(
        "
        person Ana
        build bench
        tool planer price 800 resale 200 life 1500 before 600 at mill:1 left 2026-03-01:400
        stretch Ana mill from 09:00 to 10:00 for bench as old on 2026-02-20
        stretch Ana mill from 09:00 to 10:00 for bench as new on 2026-03-02
        ",
    );
    let books = it.books();
    let book = books.tool(it.id("planer")).expect("there");
    assert_eq!(book.rate().shown(3), "0.899");
    let worn =
        |name: &str| books.ledgers.tools.rows.iter().find(|row| row.entry == it.id(name)).expect("ran").wear;
    assert_eq!((worn("old").shown(2), worn("new").shown(3)), ("0.40".into(), "0.899".into()));
    let before = fixture(
        "tool planer price 800 resale 200 life 1500 before 600 left 2026-03-01:400\nexpense x 0 for shop on 2026-03-01",
    );
    let books = before.books();
    let book = books.tool(before.id("planer")).expect("there");
    assert_eq!(
        (book.book_value.expect("known").shown(2), book.rate().shown(2)),
        ("560.00".into(), "0.90".into())
    );
}

#[test]
fn wear_stops_at_its_price_and_says_so() {
    let it = fixture(
        "
        person Ana
        build bench
        tool sander price 160 resale 10 life 600 before 599.6 upkeep 0.10 at sand:1
        stretch Ana sand from 09:00 to 10:00 for bench as run
        ",
    );
    let (books, id) = (it.books(), it.id("sander"));
    // 0.4 h at 0.25 are left in it; upkeep goes on for the whole hour.
    assert_eq!(books.build_cost(it.id("bench")).true_cost.money().expect("known").shown(2), "0.20");
    let book = books.tool(id).expect("there");
    assert_eq!(book.book_value.expect("known").shown(2), "10.00");
    assert_eq!(book.flags, [Flag::WornOut { tool: id, entry: it.id("run") }]);
}

#[test]
fn power_is_in_the_tools_or_in_the_month_and_never_in_both() {
    let shop = |power: &str| {
        let it = fixture(&format!(
            "
            setting kwh 0.15
            setting power-in {power}
            setting normal 30
            person Ana
            build bench
            tool saw kw 2 load 0.5 at cut:1
            monthly power 48 tools-kwh 120
            stretch Ana cut from 09:00 to 12:00 for bench
            "
        ));
        let books = it.books();
        let month = books.months(&it.shop())[0].actual();
        (books.tool(it.id("saw")).expect("there").rate().shown(2), month.shown(2))
    };
    // 48.00 − 120 kWh × 0.15 = 30.00.
    assert_eq!(shop("tools"), ("0.15".into(), "30.00".into()));
    assert_eq!(shop("month"), ("0.00".into(), "48.00".into()));
}

#[test]
fn a_blade_wears_by_the_hour_and_stops_at_its_price() {
    let it = fixture(
        "
        person Ana
        build bench
        tool saw at cut:1
        blade rip of saw cost 64 life 40 on 2026-02-01
        stretch Ana cut min 600 for bench on 2026-02-02
        stretch Ana cut min 2100 for bench as rest on 2026-02-20
        ",
    );
    let books = it.books();
    let blades: Vec<Money> = books.ledgers.tools.rows.iter().map(|row| row.blade).collect();
    // 10 h → 16.00, the next 35 h → 48.00 and no more.
    assert_eq!(blades.iter().map(|it| it.shown(2)).collect::<Vec<_>>(), ["16.00", "48.00"]);
    assert!(books.blades()[0].left.is_zero());
}

#[test]
fn runs_of_the_day_a_blade_comes_off_belong_to_the_next_and_what_is_left_is_a_loss() {
    let it = fixture(
        "
        person Ana
        build bench
        tool saw at cut:1
        blade first of saw cost 64 life 40 off 2026-02-10 on 2026-02-01
        blade second of saw cost 80 life 40 on 2026-02-10
        stretch Ana cut min 600 for bench on 2026-02-09
        stretch Ana cut min 600 for bench on 2026-02-10
        ",
    );
    let books = it.books();
    let worn: Vec<String> = books.blades().iter().map(|blade| blade.worn.shown(2)).collect();
    assert_eq!(worn, ["16.00", "20.00"]);
    assert!(books.blades()[0].off && books.blades()[0].left.shown(2) == "48.00");
}

#[test]
fn a_lent_tool_does_not_wear_and_a_camera_runs_while_it_rolls() {
    let it = fixture(
        "
        person Ana
        person Bo
        build bench
        tool camera price 1200 resale 400 life 2000 rolls at shoot:1
        tool jointer price 900 life 1000 lent at mill:1
        stretch Ana mill from 09:00 to 11:00 roll 09:30-10:15 for bench
        stretch Bo shoot from 10:00 to 11:00 for bench side film
        ",
    );
    let books = it.books();
    // 09:30 to 11:00, as one union, and on the film's side.
    assert_eq!(books.tool(it.id("camera")).expect("there").hours.shown_trimmed(), "1.5");
    assert_eq!(books.build_cost(it.id("bench")).side_parts.1.tools().shown(2), "0.60");
    assert!(books.tool(it.id("jointer")).expect("there").rate().is_zero());
}

/// Shop 360 over 90 h, film 45 over 36 h.
const MONTH: &str = "
    setting normal 90
    setting normal-film 36
    person Ana
    build bench
    monthly rent 360
    monthly storage 45 film";

#[test]
fn overhead_goes_by_hours_in_two_pools() {
    let of = |work: &str| {
        let it = fixture(&format!("{MONTH}\n{work}"));
        let books = it.books();
        (it.books().build_cost(it.id("bench")).parts.overhead().shown(2), books.months(&it.shop())[0])
    };
    // 40 h at 4.00, 20 h at 4.00 + 1.25.
    let (borne, _) = of("stretch Ana mill min 2400 for bench\nstretch Ana edit min 1200 for bench side film");
    assert_eq!(borne, "265.00");
    // 70 h, 28 of them film: 315 borne of 405, 90 not.
    let (_, month) = of("stretch Ana mill min 2520 for bench\nstretch Ana edit min 1680 for bench side film");
    let told = [month.applied, month.actual(), month.not_borne()].map(|it| it.shown(2));
    assert_eq!(told, ["315.00", "405.00", "90.00"]);
    // Admin carries none, nor does the shop's own time.
    assert_eq!(of("stretch Ana admin min 600 for bench\nstretch Ana clean-up min 600 for shop").0, "0.00");
}

#[test]
fn the_hours_of_a_lot_bear_overhead_and_take_it_into_the_timber() {
    let it = fixture(&format!(
        "{MONTH}
        lot oak salvaged 100 paid 0 yield 1 for bench
        stretch Ana buy-and-haul min 60 for oak
        stretch Ana reclaim min 120 for oak
        sort oak good 50 culled 0
        draw 25 oak for bench"
    ));
    // Haul 4.00 over 100, reclaiming 8.00 over 50: a draw of 25 takes 1.00 and 4.00.
    assert_eq!(it.books().build_cost(it.id("bench")).parts.overhead().shown(2), "5.00");
}

#[test]
fn a_bill_that_is_less_than_what_the_tools_drew_leaves_nothing_and_says_so() {
    let shop = |kwh: &str, costs: &str| {
        let it = fixture(&format!(
            "
            setting kwh 0.15
            setting normal 30
            person Ana 20
            build bench
            tool saw kw 2 load 0.5 at cut:1
            monthly power 48 tools-kwh {kwh} as power
            {costs}
            stretch Ana cut from 09:00 to 12:00 for bench
            "
        ));
        let cost = it.books().build_cost(it.id("bench"));
        let flag = Flag::MeteredBeyondBill { cost: it.id("power") };
        let month = it.books().months(&it.shop())[0].actual();
        (cost.true_cost.flags.contains(&flag), month.shown(2), cost.parts.overhead().shown(2))
    };
    assert_eq!(shop("320", ""), (false, "0.00".into(), "0.00".into()));
    // 400 kWh × 0.15 = 60.00: 12.00 more than the bill.
    assert_eq!(shop("400", ""), (true, "0.00".into(), "0.00".into()));
    // 3 h of rent, 60.00 over 30 h.
    assert_eq!(shop("400", "monthly rent 60"), (true, "60.00".into(), "6.00".into()));
}
