//! Lots, what they saved, and the items on the shelf.

use super::{BUILDS, Figures, Sample, money, of, parts, put, quantity, sum};
use benchslate_core::{
    costing::{Books, LotBook, Rule},
    journal::{
        Id,
        kinds::{Bearer, Source},
    },
    measure::{Day, Instant, Money, Quantity},
};

pub(super) fn lots(all: &mut Figures, sample: &Sample, books: &Books) {
    for (name, id) in sample.lots() {
        let Some(lot) = books.lot(id) else { continue };
        let at = format!("lots.{name}");
        let board = &lot.board;
        put(all, &at, "cost", of(Some(&lot.cost)));
        parts(all, &format!("{at}.by_part"), &lot.parts);
        put(all, &at, "own_hours", quantity(lot.parts.own_hours().in_hours()));
        put(all, &at, "usable", quantity(board.usable.unwrap()));
        put(all, &at, "drawn", quantity(board.drawn));
        let line = books.shelf_line(Source::Lot(id)).unwrap();
        put(all, &at, "shelf_qty", quantity(line.quantity.unwrap()));
        put(all, &at, "shelf_value", money(line.value));
        parts(all, &format!("{at}.shelf_by_part"), &lot.shelf);
        put(all, &at, "sorted_good", quantity(board.good));
        put(all, &at, "culled", quantity(board.culled));
        put(all, &at, "unsorted", quantity(board.unsorted));
        put(all, &at, "lost_not_expected", quantity(Quantity::default()));
        let so_far = board.yield_so_far.map(|it| Quantity::from_decimal(it.to_decimal()).unwrap());
        put(all, &at, "yield_of_sorted", quantity(so_far.unwrap_or_default()));
        let pool = |fetched: bool| {
            let of_pool = |rule: &Rule| match rule {
                Rule::Fetched { .. } => fetched,
                Rule::Reclaimed { .. } => !fetched,
                _ => false,
            };
            of(lot.cost.part(of_pool))
        };
        put(all, &at, "fetched", pool(true));
        put(all, &at, "reclaimed", pool(false));
        for (ending, unit) in [("live", lot.unit_cost), ("all", lot.unit_of_all)] {
            let Some(unit) = unit else { continue };
            let one = |pool: Option<(Money, Quantity)>| {
                pool.map(|(cost, over)| cost.to_decimal() / over.to_decimal()).unwrap_or_default()
            };
            let (fetched, reclaimed) = (one(unit.fetched), one(unit.reclaimed));
            let whole = if ending == "live" { "unit_live" } else { "unit_all" };
            put(
                all,
                &at,
                &format!("unit_{}fetched{}", all_of(ending), live_of(ending)),
                fetched.round_dp(6).to_string(),
            );
            put(
                all,
                &at,
                &format!("unit_{}reclaimed{}", all_of(ending), live_of(ending)),
                reclaimed.round_dp(6).to_string(),
            );
            put(all, &at, whole, (fetched + reclaimed).round_dp(6).to_string());
        }
        saving(all, &format!("{at}.saving"), &lot);
    }
}

fn all_of(ending: &str) -> &str {
    if ending == "all" { "all_" } else { "" }
}

fn live_of(ending: &str) -> &str {
    if ending == "live" { "_live" } else { "" }
}

fn saving(all: &mut Figures, at: &str, lot: &LotBook) {
    let saving = &lot.saving;
    let part = |rule: &dyn Fn(&Rule) -> bool| saving.at_rate.part(|it| rule(it));
    put(all, at, "qty", quantity(saving.quantity.unwrap_or_default()));
    put(all, at, "bought_instead", of(part(&|rule| matches!(rule, Rule::BoughtInstead { .. }))));
    put(all, at, "cash_part", of(part(&|rule| matches!(rule, Rule::MoneyAndVehicle { .. }))));
    let own = part(&|rule| matches!(rule, Rule::OwnTime { .. }));
    put(all, at, "own_labour", of(own));
    if let Some(Rule::OwnTime { hours, .. }) = own.map(|own| own.rule) {
        put(all, at, "own_hours", quantity(hours.in_hours()));
    }
    put(all, at, "overhead_left_out", money(saving.overhead_left_out));
    put(all, at, "own_time_free", of(Some(&saving.time_free)));
    put(all, at, "own_time_at_rate", of(Some(&saving.at_rate)));
    put(all, at, "hour_of_reclaiming_paid", of(Some(&saving.paid_an_hour)));
}

pub(super) fn items(all: &mut Figures, sample: &Sample, books: &Books) {
    for (name, called) in [("screws", "brass screw, no. 6 x 3/4 in"), ("discs", "sanding disc")] {
        let id = *sample.shop.items.iter().find(|(_, item)| item.name == called).unwrap().0;
        let at = format!("items.{name}");
        let lots: Vec<_> = sample.shop.lots.values().filter(|lot| lot.item == Some(id)).collect();
        let received = lots.iter().filter_map(|lot| lot.rough).map(|it| it.to_decimal()).sum();
        put(all, &at, "received", quantity(Quantity::from_decimal(received).unwrap()));
        put(all, &at, "paid", money(sum(lots.iter().filter_map(|lot| lot.till()))));
        let builds = BUILDS.iter().flat_map(|it| books.drawn_by(Bearer::Build(sample.build(it.1))));
        let drawn: Vec<_> = builds.filter(|it| it.source == Source::Item(id)).collect();
        let of_it = drawn.iter().map(|it| it.quantity.to_decimal()).sum();
        put(all, &at, "drawn", quantity(Quantity::from_decimal(of_it).unwrap()));
        put(all, &at, "drawn_cost", money(sum(drawn.iter().map(|it| it.parts.total()))));
        let lost = books.losses().into_iter().filter(|it| it.0 == Source::Item(id));
        put(all, &at, "count_value", money(sum(lost.map(|it| it.1.total()))));
        put(all, &at, "count_qty", quantity(Quantity::default()));
        let line = books.shelf_line(Source::Item(id)).unwrap();
        put(all, &at, "shelf_qty", quantity(line.quantity.unwrap()));
        put(all, &at, "shelf_value", money(line.value));
        put(all, &at, "unit", money(books.unit_cost(Source::Item(id)).unwrap().rounded()));
        log(all, &at, sample, id, &drawn.iter().map(|it| it.entry).collect::<Vec<Id>>());
    }
}

/// The shelf after each thing that touched it: the books as of the end of that day.
fn log(all: &mut Figures, at: &str, sample: &Sample, id: Id, draws: &[Id]) {
    let lots =
        sample.shop.lots.iter().filter(|(_, lot)| lot.item == Some(id)).map(|it| (it.1.order.day, *it.0));
    let drawn = sample.shop.draws.iter().filter(|draw| draws.contains(&draw.entry()));
    let mut events: Vec<(Day, Id)> = lots.chain(drawn.map(|draw| (draw.order.day, draw.entry()))).collect();
    events.sort();
    for (number, (day, entry)) in events.into_iter().enumerate() {
        let end = Instant(sample.zone.start_of(day.succ()).0 - 1);
        let line = Books::close(&sample.shop, end).shelf_line(Source::Item(id)).unwrap();
        let at = format!("{at}.log[{number}]");
        all.insert(format!("{at}[0]"), day.to_string());
        let lot = sample.lots().into_iter().find(|it| it.1 == entry);
        all.insert(format!("{at}[1]"), lot.map_or_else(|| sample.draw(entry), |it| it.0.to_owned()));
        all.insert(format!("{at}[2]"), quantity(line.quantity.unwrap()));
        all.insert(format!("{at}[3]"), money(line.value));
    }
}
