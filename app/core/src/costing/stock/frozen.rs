//! What the draws of closed builds cost when they were closed: it stays so.
//!
//! What comes later is borne by the rest of the lot: (C − frozen C) ÷ (U − frozen quantity). With no stock left it is a
//! difference of the shop; so is what closed builds keep of a lot that is struck out. What comes back after closing comes
//! back at nothing. Source: our own rule, DEVELOPERS.md § Figures. Not here: what is on an entry of closing
//! (`journal::kinds::build_state`).

use super::{DrawRow, Stock};
use crate::{
    costing::{Books, Parts},
    journal::{
        Id, Shop,
        kinds::{self, Bearer, State},
        shop::BuildState,
    },
    measure::{Day, Dec, Quantity},
};
use rustc_hash::FxHashMap;

/// What one draw cost.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct AsClosed {
    /// What stayed drawn.
    pub quantity: Quantity,
    pub fetched: Parts,
    pub reclaimed: Parts,
}

impl AsClosed {
    /// From both pools.
    pub(crate) fn cost(&self) -> Parts {
        self.fetched.plus(self.reclaimed)
    }

    /// What had come back of its draw by then, and what that gave back: beside it, what stays is what was frozen.
    pub(crate) fn gave_back(&self, draw: &DrawRow) -> (Quantity, Parts) {
        // Nothing stayed, and yet it cost something: all of it had come back at nothing.
        if self.quantity.is_zero() {
            return (Quantity::ZERO, Parts::ZERO);
        }
        let known = draw.quantity.unwrap_or_default().minus(self.quantity);
        let known = known.min(draw.back).max(Quantity::ZERO);
        (known, self.cost().share(known, self.quantity))
    }
}

/// What had come back of frozen draws by the time they were frozen, as returns go by: so much of each is in what was
/// frozen, and what comes back beyond it comes back at nothing.
#[derive(Clone, Debug, Default)]
pub(crate) struct CameBack {
    /// What of it is still to go by, by row of the draw.
    by_draw: FxHashMap<usize, (Quantity, Parts)>,
}

impl CameBack {
    /// How much of a return is in what was frozen, and what that gave back. `all`: what had come back of its draw by then.
    pub(crate) fn of(
        &mut self,
        draw: usize,
        quantity: Quantity,
        all: (Quantity, Parts),
    ) -> (Quantity, Parts) {
        let left = self.by_draw.entry(draw).or_insert(all);
        let takes = quantity.min(left.0);
        if takes.is_zero() {
            return (Quantity::ZERO, Parts::ZERO);
        }
        let cost = left.1.share(takes, left.0);
        *left = (left.0.minus(takes), left.1.minus(cost));
        (takes, cost)
    }
}

/// Every frozen draw.
#[derive(Clone, Debug, Default)]
pub(crate) struct Frozen {
    by_draw: FxHashMap<Id, AsClosed>,
}

impl Frozen {
    /// Of all builds that are closed at the end of a day.
    pub(crate) fn of(shop: &Shop, last: Day) -> Frozen {
        let mut by_draw = FxHashMap::default();
        // The last word on each build, as `Shop::last_state` says it, in one walk.
        let said = shop.states.iter().filter(|it| it.order.day <= last);
        let states: FxHashMap<Id, &BuildState> = said.map(|it| (it.build, it)).collect();
        for build in shop.builds.keys() {
            let Some(state) = states.get(build).filter(|it| it.state == State::Closed) else { continue };
            for it in &state.frozen {
                let frozen = AsClosed {
                    quantity: it.quantity.quantity().unwrap_or_default(),
                    fetched: Parts::stored(&it.fetched),
                    reclaimed: Parts::stored(&it.reclaimed),
                };
                by_draw.insert(it.draw, frozen);
            }
        }
        Frozen { by_draw }
    }

    pub(crate) fn get(&self, draw: Id) -> Option<&AsClosed> {
        self.by_draw.get(&draw)
    }
}

impl Books {
    /// What is written on the entry that closes a build: what each of its draws cost.
    pub fn freeze(&self, build: Id) -> Vec<kinds::Frozen> {
        let bearing = self.ledgers.borne_by(Bearer::Build(build));
        let draws = self.stock.net(&bearing.draws).into_iter();
        let draws = draws.filter(|(row, _)| row.known && row.quantity.is_some());
        let frozen = draws.filter_map(|(row, net)| {
            // By pool; all of an item's is fetched.
            let (fetched, reclaimed) = (net.minus(row.reclaimed), row.reclaimed);
            // All of it came back: nothing stays that could change.
            if row.net().is_zero() && fetched.is_zero() && reclaimed.is_zero() {
                return None;
            }
            Some(kinds::Frozen {
                draw: row.entry(),
                quantity: Dec::from(row.net()),
                fetched: fetched.to_stored(),
                reclaimed: reclaimed.to_stored(),
            })
        });
        frozen.collect()
    }
}

impl Stock {
    /// The draws among these rows of one bearer, each with what stays of its cost: returns stand with their draw.
    pub(crate) fn net(&self, rows: &[usize]) -> Vec<(&DrawRow, Parts)> {
        let of = |at: &usize| Some((*at, self.rows.get(*at)?));
        let mut back: FxHashMap<usize, Parts> = FxHashMap::default();
        for (_, row) in rows.iter().filter_map(of) {
            if let Some(draw) = row.returns {
                let sum = back.entry(draw).or_default();
                *sum = sum.plus(row.parts);
            }
        }
        let draws = rows.iter().filter_map(of).filter(|(_, row)| row.returns.is_none());
        draws.map(|(at, row)| (row, row.parts.plus(back.get(&at).copied().unwrap_or_default()))).collect()
    }
}
