//! A lot or an item as the stock sheets list it.

use crate::{
    parts::{hatch::Hatch, plain},
    shell::desk::View,
    words::{Tongue, units},
};
use benchslate_core::measure::{InOrder, letters::small};
use benchslate_core::{
    costing::{Books, CostKind, ShelfLine},
    journal::{
        Id, Shop,
        kinds::{Basis, Origin, Source, Use},
        order::Order,
    },
    measure::{Quantity, Unit},
};

/// What can be drawn from: an item with all its lots, or a lot by itself.
#[derive(Clone, PartialEq)]
pub struct Thing {
    /// Which.
    pub source: Source,
    /// As written on the shelf.
    pub name: String,
    /// What its quantities are in.
    pub unit: Unit,
    /// The maker's own word for one of it.
    pub word: Option<String>,
    /// What one of it holds.
    pub content: Option<(Quantity, Unit)>,
    /// What one of it covers with one coat.
    pub covers: Option<(Quantity, Unit)>,
    /// What it is for.
    pub purpose: Use,
    /// How a lot by itself was come by.
    pub origin: Option<Origin>,
    /// In which measure a lot by itself is counted.
    pub basis: Basis,
    /// When it was last drawn, or else came: latest is offered first.
    pub latest: Option<Order>,
    /// Drawn at least once.
    pub drawn: bool,
}

impl Thing {
    /// The thing of an entry; none where it is neither lot nor item. A pooled lot is its item.
    pub fn of(shop: &Shop, id: Id) -> Option<Thing> {
        if let Some(id) = shop.item_meant(id)
            && let Some(item) = shop.items.get(&id)
        {
            let latest = shop.lots.values().filter(|lot| lot.item == Some(id)).map(|lot| lot.order).max();
            return Some(Thing {
                source: Source::Item(id),
                name: item.name.clone(),
                unit: item.unit,
                word: item.word.clone(),
                content: item.content,
                covers: item.one_covers(),
                purpose: item.purpose,
                origin: None,
                basis: Basis::Actual,
                latest,
                drawn: false,
            });
        }
        let lot = shop.lots.get(&id)?;
        if let Some(item) = lot.item {
            return Thing::of(shop, item);
        }
        Some(Thing {
            source: Source::Lot(id),
            name: lot.name.clone(),
            unit: lot.unit,
            word: None,
            content: None,
            covers: None,
            purpose: lot.purpose,
            origin: Some(lot.origin),
            basis: lot.basis,
            latest: Some(lot.order),
            drawn: false,
        })
    }

    /// Its entry.
    pub fn id(&self) -> Id {
        match self.source {
            Source::Lot(id) | Source::Item(id) => id,
        }
    }

    /// So much of it: `43 board feet`, `1/4 tin`, `4 discs`.
    pub fn amount(&self, tongue: &Tongue, quantity: Quantity) -> String {
        units::amount(tongue, quantity, self.unit, self.word.as_deref())
    }

    /// The same with short units.
    pub fn amount_short(&self, tongue: &Tongue, quantity: Quantity) -> String {
        units::amount_short(tongue, quantity, self.unit, self.word.as_deref())
    }
}

/// Everything in the shop that is offered to be drawn from, latest first: what was drawn last, then what came last.
pub fn all(shop: &Shop) -> Vec<Thing> {
    let lots = shop.lots.iter().filter(|(_, lot)| lot.item.is_none()).map(|(id, _)| *id);
    let offered = |id: &Id| shop.offers(*id);
    let mut things: Vec<Thing> =
        shop.items.keys().copied().chain(lots).filter(offered).filter_map(|id| Thing::of(shop, id)).collect();
    for draw in shop.draws.iter().filter(|draw| draw.returns.is_none()) {
        let of = match draw.from {
            Source::Lot(lot) => shop.lots.get(&lot).and_then(|it| it.item).map_or(draw.from, Source::Item),
            Source::Item(_) => draw.from,
        };
        if let Some(thing) = things.iter_mut().find(|thing| thing.source == of) {
            thing.latest = thing.latest.max(Some(draw.order));
            thing.drawn = true;
        }
    }
    things.order_by_key(|thing| std::cmp::Reverse((thing.drawn, thing.latest)));
    things
}

/// Whether a text is found in a name: every word of it, wherever it stands.
pub fn is_found(name: &str, text: &str) -> bool {
    let name = small(name);
    small(text).split_whitespace().all(|word| name.contains(word))
}

/// What a kind of cost is drawn as.
pub fn hatch(kind: CostKind) -> Hatch {
    match kind {
        CostKind::Salvaged => Hatch::Salvaged,
        CostKind::Bought => Hatch::Bought,
        CostKind::Offcut => Hatch::Offcut,
        CostKind::Consumables => Hatch::Consumables,
        CostKind::Direct => Hatch::Direct,
        CostKind::Supplied => Hatch::Supplied,
        CostKind::Labour => Hatch::Labour,
        CostKind::Tools => Hatch::Tools,
        CostKind::Overhead => Hatch::Overhead,
        CostKind::OneOff => Hatch::OneOff,
    }
}

/// The share that is left, 0 to 1, for a drawing.
pub fn share_left(line: &ShelfLine) -> f64 {
    line.share.map_or(0.0, |(left, full)| share(left, full))
}

/// One quantity in another, for a drawing only.
pub fn share(part: Quantity, whole: Quantity) -> f64 {
    let whole = number(whole);
    if whole > 0.0 { (number(part) / whole).clamp(0.0, 1.0) } else { 0.0 }
}

/// A quantity as a number, for a drawing only.
pub fn number(quantity: Quantity) -> f64 {
    plain::read(&quantity.shown_trimmed())
}

/// What is left of a thing.
pub fn left(books: &Books, thing: &Thing) -> Option<Quantity> {
    books.shelf_line(thing.source)?.quantity
}

/// What is left in words, to come included: `7 sorted, 35 to come`.
pub fn left_says(view: &View, thing: &Thing, line: &ShelfLine) -> String {
    crate::words::stock::on_the_shelf(
        line.quantity.map(|left| thing.amount_short(view.tongue, left)),
        (!line.to_come.is_zero())
            .then(|| (view.tongue.quantity(line.sorted), thing.amount_short(view.tongue, line.to_come))),
        thing.origin == Some(Origin::Salvaged),
        line.low,
    )
}
