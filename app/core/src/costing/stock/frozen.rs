//! What the draws of closed builds cost when they were closed: it stays so.
//!
//! What comes later is borne by the rest of the lot: (C − frozen C) ÷ (U − frozen quantity). With no stock left it is a
//! difference of the shop. What comes back after closing comes back at nothing. Source: our own rule, DEVELOPERS.md
//! § Figures. Not here: what is on an entry of closing (`journal::kinds::build_state`).

use super::Stock;
use crate::{
    costing::{Books, Parts},
    journal::{
        Id, Shop,
        kinds::{self, Bearer, State},
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

/// What had come back of frozen draws by the time they were frozen, as returns go by: so much of each is in what was
/// frozen, and what comes back beyond it comes back at nothing.
#[derive(Clone, Debug, Default)]
pub(crate) struct CameBack {
    by_draw: FxHashMap<usize, Quantity>,
}

impl CameBack {
    /// How much of a return is in what was frozen. `known`: what had come back of its draw by then.
    pub(crate) fn of(&mut self, draw: usize, quantity: Quantity, known: Quantity) -> Quantity {
        let so_far = self.by_draw.entry(draw).or_default();
        let takes = quantity.min(known.minus(*so_far)).max(Quantity::ZERO);
        *so_far = so_far.plus(takes);
        takes
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
        for build in shop.builds.keys() {
            let Some(state) = shop.last_state(*build, last).filter(|it| it.state == State::Closed) else {
                continue;
            };
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
        let rows = bearing.draws.iter().filter_map(|at| Some((*at, self.stock.rows.get(*at)?)));
        let draws = rows.filter(|(_, row)| row.returns.is_none() && row.known && row.quantity.is_some());
        let frozen = draws.filter_map(|(at, row)| {
            let (fetched, reclaimed) = self.stock.net_pools(at);
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
    /// What stays of a draw's cost, returns taken off, by pool; all of an item's is fetched.
    fn net_pools(&self, at: usize) -> (Parts, Parts) {
        let Some(row) = self.rows.get(at) else { return (Parts::ZERO, Parts::ZERO) };
        let back = self.rows.iter().filter(|back| back.returns == Some(at));
        let net = back.fold(row.parts, |sum, back| sum.plus(back.parts));
        (net.minus(row.reclaimed), row.reclaimed)
    }
}
