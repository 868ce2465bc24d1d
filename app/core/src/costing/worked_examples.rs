//! The worked examples of our own rules, each as a history in a few lines. Invented numbers.

use crate::fixture::fixture;

/// A history, a figure's address in the sheet of `bench`, and the figure with its parts two levels down.
#[track_caller]
fn check(history: &str, root: &str, depth: usize, want: &str) {
    let it = fixture(history);
    let cost = it.books().build_cost(it.id("bench"));
    let path = crate::costing::Path::parse(root);
    let statement = cost.open(&path).and_then(|levels| levels.last().copied()).expect("opens");
    let want: Vec<&str> =
        want.lines().map(|line| line.strip_prefix("            ").unwrap_or(line)).collect();
    assert_eq!(it.tree(statement, depth).trim_end(), want.join("\n").trim());
}

#[test]
fn spent_less_the_shelf_plus_earlier_stock_is_used_up() {
    // Tin 30 (half drawn), hinges 8 (all), direct 12, glue from earlier stock 10: 50 - 15 + 10 = 45.
    check(
        "build bench
        lot tin bought 1 unit tin use consumable paid 30 for bench
        lot hinges bought 4 unit each use fitting paid 8 for bench
        lot glue bought 2 unit bottle use consumable paid 20
        draw 0.5 tin for bench
        draw 4 hinges for bench
        draw 1 glue for bench
        expense card 12 for bench",
        "bridge.used",
        2,
        "used 45.00
              spent 50.00
                money_tin 30.00
                money_hinges 8.00
                direct-money 12.00
            - not-drawn 15.00
                left_tin 15.00
                left_hinges 0.00
              other-stock 10.00
                lot_glue 10.00",
    );
}
