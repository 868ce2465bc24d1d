//! Planned materials of a build: what is on the list for it, and what was bought from the list and is not drawn yet.
//!
//! A line costs what was typed for it, else its quantity at the last unit cost of its item, else a gap. Bought: of an
//! item what the build has drawn comes off, and the rest is taken at what a draw now would cost; a lot that is drawn by
//! name is taken for what is left of it. So neither ticking a line nor drawing from it moves the outlook by more than
//! what was paid otherwise than thought. Worked example: 10 discs on the list at a last unit cost of 2 are 20.00; bought
//! for 22 and 4 of them drawn, 13.20 are to come.
//! Source: our own rule, DEVELOPERS.md § Why. Not here: what ought to be on the list (`planning::buying`).

use super::{Books, Gap, Hours, Part, Value, Working, stock::rows};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Source},
        shop::BuyLine,
    },
    measure::{InOrder, Map, Money, Quantity, Unit},
};

/// What a planned line is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Material {
    /// An item, or a lot that is drawn by name.
    Stock(Source),
    /// Words only, not bought yet: the line.
    Words(Id),
}

/// One line of the list for a build.
#[derive(Clone, Debug)]
pub(crate) struct PlannedLine {
    pub entry: Id,
    pub material: Material,
    /// How much; one where nobody has said.
    pub quantity: Quantity,
    pub unit: Unit,
    /// What it was thought to cost, else what it did; none: nobody can say.
    pub cost: Option<Money>,
    /// As typed; else worked out from a unit cost.
    pub typed: bool,
    /// It is there.
    pub bought: bool,
}

/// Every line for a build, in the order in which they were written.
pub(crate) fn lines(books: &Books, shop: &Shop, build: Id) -> Vec<PlannedLine> {
    let of_build = shop.buy_lines.iter().filter(|line| line.for_build == Some(build));
    of_build.map(|it| line(books, shop, it)).collect()
}

fn line(books: &Books, shop: &Shop, it: &BuyLine) -> PlannedLine {
    let entry = it.entry();
    let lot = it.bought.and_then(|lot| Some((lot, shop.lots.get(&lot)?)));
    if let Some((id, lot)) = lot {
        let source = lot.item.map_or(Source::Lot(id), Source::Item);
        return PlannedLine {
            entry,
            material: Material::Stock(source),
            quantity: lot.rough.or(it.quantity).unwrap_or(Quantity::ONE),
            unit: lot.unit,
            cost: it.price.or_else(|| lot.till()),
            typed: it.price.is_some(),
            bought: true,
        };
    }
    let quantity = it.quantity.unwrap_or(Quantity::ONE);
    let account = it.item.and_then(|item| books.stock.items.get(&item));
    let last = account.and_then(|it| it.last).filter(|(_, of)| !of.is_zero());
    PlannedLine {
        entry,
        material: it.item.map_or(Material::Words(entry), |item| Material::Stock(Source::Item(item))),
        quantity,
        unit: it.unit,
        cost: it.price.or_else(|| last.map(|(cost, of)| cost.share(quantity, of).total())),
        typed: it.price.is_some(),
        bought: false,
    }
}

/// What of it is still to come as cost of the build, and what can't be said.
pub(crate) fn to_come(books: &Books, shop: &Shop, build: Id) -> (Vec<Part>, Vec<Gap>) {
    let (mut parts, mut gaps) = (Vec::new(), Vec::new());
    let mut there: Map<Material, (Id, Quantity, Unit)> = Map::new();
    for line in lines(books, shop, build) {
        if line.bought {
            let sum = there.entry(line.material).or_insert((line.entry, Quantity::ZERO, line.unit));
            sum.1 = sum.1.plus(line.quantity);
            continue;
        }
        if line.cost.is_none() {
            gaps.push(Gap::NoBuyPrice { line: line.entry });
        }
        let quantity = Some(line.quantity);
        let working = match line.cost {
            Some(cost) if !line.typed => rows::working(quantity, line.unit, cost, Hours::ZERO),
            Some(_) | None => Working::Amount,
        };
        parts.push(Part::entry(line.entry, line.cost.map(Value::Money), working));
    }
    let drawn = drawn(books, build);
    for (material, (entry, bought, unit)) in there.iter() {
        let Material::Stock(source) = *material else { continue };
        let out = drawn.iter().find(|it| it.0 == source).map(|it| it.1).unwrap_or_default();
        let (rest, cost) = match source {
            Source::Item(_) => {
                let rest = bought.minus(out).max(Quantity::ZERO);
                (rest, books.preview(source, rest))
            }
            Source::Lot(lot) => {
                let account = books.stock.lots.get(&lot);
                let left = account.and_then(super::stock::LotAccount::left).unwrap_or(*bought);
                (left, account.map(|it| it.shelf().total()))
            }
        };
        if rest.is_zero() {
            continue;
        }
        // A lot without a price: its own gap says so once it is drawn; the list says it before.
        let unknown = !books.shelf_line(source).is_some_and(|line| line.gaps.is_empty());
        let cost = cost.filter(|cost| !unknown || !cost.is_zero());
        if cost.is_none() {
            gaps.push(Gap::NoBuyPrice { line: *entry });
        }
        let working = rows::working(Some(rest), *unit, cost.unwrap_or_default(), Hours::ZERO);
        parts.push(Part::entry(*entry, cost.map(Value::Money), working));
    }
    parts.order_by_key(Part::entry_id);
    (parts, gaps)
}

/// What stays drawn by a build, by lot and item: how much, what it cost (none: that can't be said), in which unit.
pub(crate) fn drawn(books: &Books, build: Id) -> Vec<(Source, Quantity, Option<Money>, Unit)> {
    let mut all: Vec<(Source, Quantity, Option<Money>, Unit)> = Vec::new();
    let bearing = books.ledgers.borne_by(Bearer::Build(build));
    for row in bearing.draws.iter().filter_map(|at| books.stock.rows.get(*at)) {
        let quantity = row.signed_quantity().unwrap_or_default();
        let cost = row.known.then(|| row.parts.total());
        match all.iter_mut().find(|it| it.0 == row.account) {
            Some(sum) => {
                sum.1 = sum.1.plus(quantity);
                sum.2 = sum.2.zip(cost).map(|(sum, cost)| sum.plus(cost));
            }
            None => all.push((row.account, quantity, cost, row.unit)),
        }
    }
    all
}
