//! A part of the invented sample shop, against figures that were summed by two programs written apart.

use super::{check, fixture};

/// Two builds that share a bottle of glue, discs and screws, bought in different ways. No hours, so
/// no overhead; the receipt's lines stand with the tax and freight that fell to each.
const SHELVES: &str = "
    build bench
    build trays
    item screw fitting each
    item disc consumable each
    lot screws1 bought 100 of screw unit each paid 18 tax 2.34 on 2026-01-20
    lot brackets bought 4 unit each use fitting paid 24 freight 2.01 discount 1.68 tax 3.16 for bench on 2026-02-05
    lot glue bought 1 unit bottle use consumable paid 16.50 freight 1.39 discount 1.15 tax 2.18 for bench
    lot discs bought 50 of disc unit each paid 31 freight 2.60 discount 2.17 tax 4.09
    draw 0.5 glue for bench on 2026-02-22
    draw 4 brackets for bench on 2026-03-07
    draw 32 screw for bench
    draw 14 disc for bench on 2026-03-14
    draw 0.25 glue for trays on 2026-06-07
    lot screws2 bought 100 of screw unit each paid 22 tax 2.86 on 2026-06-10
    draw 20 disc for trays on 2026-06-20
    draw 48 screw for trays on 2026-06-27
    expense card 38 for bench side film
    expense van 55 for bench";

#[test]
fn earlier_stock_and_bought_stock_of_the_sample_shop() {
    check(
        SHELVES,
        "bridge.used",
        2,
        "
        used 146.40
          spent 139.41
            money_brackets 27.49
            money_glue 18.92
            direct-money 93.00
        - not-drawn 9.46
            left_brackets 0.00
            left_glue 9.46
          other-stock 16.45
            item_screw 6.51
            item_disc 9.95
    ",
    );
    let it = fixture(SHELVES);
    let trays = it.books().build_cost(it.id("trays"));
    let used = trays.used_up().expect("there");
    super::same(
        &it,
        used,
        2,
        "
        used 29.99
          spent 0.00
        - not-drawn 0.00
          other-stock 29.99
            lot_glue 4.73
            item_screw 11.05
            item_disc 14.21
    ",
    );
}
