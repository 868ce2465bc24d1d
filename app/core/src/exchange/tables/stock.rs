//! Stock as a table: a row a lot that is drawn by name, a row an item with all its lots; also where nothing is left.

use super::{Sources, Writer, names::code};
use crate::{
    exchange::csv::Cell,
    journal::{
        Id,
        kinds::Source,
        shop::{Item, Lot},
    },
    measure::InOrder,
};

pub(super) const HEAD: &[&str] = &[
    "name",
    "what",
    "use",
    "origin",
    "came",
    "for",
    "whence",
    "got",
    "left",
    "sorted",
    "to_come",
    "unit",
    "paid_¤",
    "left_cost_¤",
    "a_unit_¤",
    "low_mark",
    "lacks",
];

pub(super) fn rows(from: Sources, to: Writer) -> Vec<Vec<Cell>> {
    let mut lots: Vec<_> = from.shop.lots.iter().filter(|(_, lot)| lot.item.is_none()).collect();
    lots.order_by_key(|(_, lot)| lot.order);
    let mut items: Vec<_> = from.shop.items.iter().collect();
    items.order_by(|one, other| (&one.1.name, one.0).cmp(&(&other.1.name, other.0)));
    let lots = lots.into_iter().map(|(id, lot)| of_lot(from, to, *id, lot));
    let items = items.into_iter().map(|(id, item)| of_item(from, to, *id, item));
    lots.chain(items).collect()
}

fn of_lot(from: Sources, to: Writer, id: Id, lot: &Lot) -> Vec<Cell> {
    let [left, sorted, to_come, cost, a_unit, lacks] = held(from, to, Source::Lot(id));
    vec![
        Cell::text(&lot.name),
        Cell::text("lot"),
        Cell::text(&code(lot.purpose)),
        Cell::text(&code(lot.origin)),
        Cell::plain(Some(lot.order.day)),
        Cell::text(lot.for_build.map(|build| to.names.build(build)).unwrap_or_default()),
        Cell::text(lot.whence.as_deref().unwrap_or_default()),
        to.quantity(lot.rough),
        left,
        sorted,
        to_come,
        Cell::text(lot.unit.code()),
        to.money(lot.till()),
        cost,
        a_unit,
        Cell::Empty,
        lacks,
    ]
}

fn of_item(from: Sources, to: Writer, id: Id, item: &Item) -> Vec<Cell> {
    let [left, sorted, to_come, cost, a_unit, lacks] = held(from, to, Source::Item(id));
    vec![
        Cell::text(&item.name),
        Cell::text("item"),
        Cell::text(&code(item.purpose)),
        Cell::Empty,
        Cell::Empty,
        Cell::Empty,
        Cell::Empty,
        Cell::Empty,
        left,
        sorted,
        to_come,
        Cell::text(item.unit.code()),
        Cell::Empty,
        cost,
        a_unit,
        to.quantity(item.low),
        lacks,
    ]
}

/// Left, sorted, to come, what it cost, what one of it costs now, and how many things its cost lacks.
fn held(from: Sources, to: Writer, source: Source) -> [Cell; 6] {
    let Some(line) = from.books.shelf_line(source) else { return [const { Cell::Empty }; 6] };
    [
        to.quantity(line.quantity),
        to.quantity(Some(line.sorted)),
        to.quantity(Some(line.to_come)),
        to.money(Some(line.value)),
        to.rate(from.books.known_unit_cost(source).ok().map(|it| it.rounded())),
        Cell::plain(Some(line.gaps.len()).filter(|lacks| *lacks > 0)),
    ]
}
