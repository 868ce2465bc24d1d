//! A row for each draw and return, before and after it is costed.
//!
//! A return belongs to the draw that it names: its account, its bearer, and never more than was drawn.

use crate::{
    costing::{CostKind, Flag, Gap, Hours, Parts, Working},
    journal::{
        Id, Shop,
        kinds::{Bearer, Side, Source},
        order::Order,
        shop::Draw,
    },
    measure::{Day, Money, Quantity, Unit, fixed},
};
use rustc_hash::FxHashMap;

/// A draw or a return, costed.
#[derive(Clone, Debug)]
pub(crate) struct DrawRow {
    pub order: Order,
    /// Where the cost comes from: an item, or a lot by itself.
    pub account: Source,
    pub kind: CostKind,
    pub bearer: Bearer,
    pub side: Side,
    pub stage: Option<Id>,
    pub unit: Unit,
    /// What counts: for a return, what of it was accepted. Never below zero; none: a gap.
    pub quantity: Option<Quantity>,
    /// Row of the draw that this comes back from.
    pub returns: Option<usize>,
    /// What came back of this draw.
    pub back: Quantity,
    /// Below zero for a return.
    pub parts: Parts,
    /// What stays of it from the pool of what was reclaimed.
    pub reclaimed: Parts,
    /// As it was when its build was closed.
    pub frozen: bool,
    /// Something can be said of its cost.
    pub known: bool,
    pub gaps: Vec<Gap>,
    pub flags: Vec<Flag>,
}

impl DrawRow {
    pub(crate) fn entry(&self) -> Id {
        self.order.entry
    }

    /// What stays drawn.
    pub(crate) fn net(&self) -> Quantity {
        self.quantity.unwrap_or_default().minus(self.back)
    }

    /// How a figure of this row, such as its money parts, was worked out.
    pub(crate) fn working(&self, figure: Money) -> Working {
        working(self.signed_quantity(), self.unit, figure, self.parts.own_hours())
    }

    /// Below zero for a return.
    pub(crate) fn signed_quantity(&self) -> Option<Quantity> {
        self.quantity.map(|it| if self.returns.is_some() { it.negated() } else { it })
    }
}

/// How a figure of a draw was worked out.
pub(crate) fn working(quantity: Option<Quantity>, unit: Unit, figure: Money, hours: Hours) -> Working {
    let unit_cost = quantity.and_then(|of| fixed::mul_div(figure.micros(), fixed::SCALE, of.micros()));
    Working::Draw { quantity, unit, unit_cost: unit_cost.map(Money::from_micros), hours }
}

/// The account that a source draws from.
pub(crate) fn account(shop: &Shop, source: Source) -> Source {
    match source {
        Source::Lot(lot) => shop.lots.get(&lot).and_then(|lot| lot.item).map_or(source, Source::Item),
        Source::Item(_) => source,
    }
}

/// Rows of everything up to `last`, in the order in which things count.
pub(crate) fn rows(shop: &Shop, last: Day) -> Vec<DrawRow> {
    let draws = shop.draws.iter().filter(|draw| draw.order.day <= last);
    let mut rows: Vec<DrawRow> = draws.clone().map(|draw| row(shop, draw)).collect();
    let at: FxHashMap<Id, usize> = rows.iter().enumerate().map(|(at, row)| (row.entry(), at)).collect();
    for (back, draw) in draws.enumerate() {
        if let Some(returns) = draw.returns {
            give_back(&mut rows, back, at.get(&returns).copied());
        }
    }
    rows
}

fn row(shop: &Shop, draw: &Draw) -> DrawRow {
    let account = account(shop, draw.from);
    let (kind, unit) = match account {
        Source::Lot(id) => {
            shop.lots.get(&id).map(|lot| (CostKind::of_stock(lot.purpose, lot.origin), lot.unit))
        }
        Source::Item(id) => shop.items.get(&id).map(|item| {
            // Mixed origins count as bought; `average` knows better where all lots are of one origin.
            (CostKind::of_stock(item.purpose, crate::journal::kinds::Origin::Bought), item.unit)
        }),
    }
    .unwrap_or((CostKind::Bought, draw.typed.1));
    DrawRow {
        order: draw.order,
        account,
        kind,
        bearer: draw.bearer,
        side: draw.side,
        stage: draw.stage,
        unit,
        quantity: draw.quantity,
        returns: None,
        back: Quantity::ZERO,
        parts: Parts::ZERO,
        reclaimed: Parts::ZERO,
        frozen: false,
        known: false,
        gaps: draw.quantity.is_none().then(|| Gap::NoQuantity { entry: draw.entry() }).into_iter().collect(),
        flags: Vec::new(),
    }
}

/// Ties a return to its draw; one that can't be tied counts for nothing and is flagged.
fn give_back(rows: &mut [DrawRow], back: usize, drawn: Option<usize>) {
    let Some(row) = rows.get(back) else { return };
    let (entry, account, quantity) = (row.entry(), row.account, row.quantity.unwrap_or_default());
    // A return of a return, of itself, or of other stock is no return.
    let draw = drawn.and_then(|at| rows.get(at).map(|row| (at, row)));
    let draw = draw.filter(|(at, draw)| {
        *at != back && draw.returns.is_none() && draw.account == account && draw.quantity.is_some()
    });
    let Some((at, draw)) = draw else {
        if let Some(row) = rows.get_mut(back) {
            row.quantity = Some(Quantity::ZERO);
            row.known = true;
            row.flags.push(Flag::ReturnOfNothing { entry });
        }
        return;
    };
    let (accepted, bearer, side, kind) = (quantity.min(draw.net()), draw.bearer, draw.side, draw.kind);
    if let Some(draw) = rows.get_mut(at) {
        draw.back = draw.back.plus(accepted);
    }
    if let Some(row) = rows.get_mut(back) {
        if accepted < quantity {
            row.flags.push(Flag::ReturnsTooMuch { entry });
        }
        row.quantity = row.quantity.map(|_| accepted);
        (row.returns, row.bearer, row.side, row.kind) = (Some(at), bearer, side, kind);
    }
}
