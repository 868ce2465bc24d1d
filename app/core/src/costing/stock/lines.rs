//! What a lot cost, line by line, and in which of its two pools each line is.
//!
//! Fetched: paid, fee, drives, haul hours, what was paid for the lot directly. Reclaimed: the other hours,
//! and stock drawn for it. Source: our own rule, DEVELOPERS.md § Salvage.
//! Not here: over how much a pool is spread (`named_lot`).

use super::DrawRow;
use crate::{
    costing::{
        Gap, Parts, Working,
        books::{Bearing, Facts, Ledgers},
        labour::LabourRow,
    },
    journal::{Id, kinds::Origin, shop::Lot},
};

/// One of the two pools of a salvaged lot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Pool {
    Fetched,
    Reclaimed,
}

/// One line of a lot's cost.
#[derive(Clone, Debug)]
pub(crate) struct LotLine {
    pub entry: Id,
    pub pool: Pool,
    /// The stage at which it was worked, ran or was drawn.
    pub stage: Option<Id>,
    pub parts: Parts,
    pub working: Working,
    pub gap: Option<Gap>,
}

/// Every line of a lot: its price first, then drives, expenses, work and stock drawn for it.
///
/// `bears`: the rows that the lot bears; draws among them must have been costed.
pub(crate) fn lines(
    facts: &Facts,
    lot: &Lot,
    ledgers: &Ledgers,
    draws: &[DrawRow],
    bears: &Bearing,
) -> Vec<LotLine> {
    let mut lines = vec![price(lot)];
    for row in bears.trips.iter().filter_map(|at| ledgers.trips.get(*at)) {
        let working = row.working();
        let (parts, gap) = (row.parts(), row.gap());
        lines.push(LotLine { entry: row.entry, pool: Pool::Fetched, stage: None, parts, working, gap });
    }
    for row in bears.expenses.iter().filter_map(|at| ledgers.expenses.get(*at)) {
        let (parts, gap) = (row.parts(), row.gap());
        let working = Working::Amount;
        lines.push(LotLine { entry: row.entry, pool: Pool::Fetched, stage: None, parts, working, gap });
    }
    for row in bears.labour.iter().filter_map(|at| ledgers.labour.get(*at)) {
        lines.push(work(facts, row));
        if !row.overhead.parts().is_zero() || row.overhead.gap.is_some() {
            lines.push(LotLine {
                entry: row.entry,
                pool: pool_of(facts, row.stage),
                stage: Some(row.stage),
                parts: row.overhead.parts(),
                working: row.overhead.working(row.seconds),
                gap: row.overhead.gap,
            });
        }
    }
    for row in bears.tools.iter().filter_map(|at| ledgers.tools.rows.get(*at)) {
        lines.push(LotLine {
            entry: row.entry,
            pool: pool_of(facts, row.stage),
            stage: Some(row.stage),
            parts: row.parts(),
            working: row.working(),
            gap: row.gaps.first().copied(),
        });
    }
    for row in bears.draws.iter().filter_map(|at| draws.get(*at)) {
        lines.push(LotLine {
            entry: row.entry(),
            pool: Pool::Reclaimed,
            stage: row.stage,
            parts: row.parts,
            working: row.working(row.parts.total()),
            gap: row.gaps.first().copied(),
        });
    }
    lines
}

/// What was paid is money; what a supplied lot is worth is supplied value; an offcut's cost was borne by
/// the build that it is left of, so no price is no gap there.
fn price(lot: &Lot) -> LotLine {
    let paid = lot.paid.unwrap_or_default();
    let fees = lot.fees.plus(lot.shared.freight);
    let (tax, discount) = (lot.tax.plus(lot.shared.tax), lot.discount.plus(lot.shared.discount));
    let beside = Parts::of_money(fees.plus(tax).minus(discount));
    let parts = match lot.origin {
        Origin::Supplied => beside.plus(Parts::of_supplied(paid)),
        Origin::Salvaged | Origin::Bought | Origin::Offcut => beside.plus(Parts::of_money(paid)),
    };
    let missing = lot.paid.is_none() && lot.origin != Origin::Offcut && !lot.clients_own;
    LotLine {
        entry: lot.entry(),
        pool: Pool::Fetched,
        stage: None,
        parts,
        working: Working::Price { paid: lot.paid, fees, tax, discount },
        gap: missing.then(|| Gap::NoPrice { lot: lot.entry() }),
    }
}

/// Haul hours and all that goes by them are fetched; other hours are reclaimed.
fn pool_of(facts: &Facts, stage: Id) -> Pool {
    if facts.hauls(stage) { Pool::Fetched } else { Pool::Reclaimed }
}

fn work(facts: &Facts, row: &LabourRow) -> LotLine {
    LotLine {
        entry: row.entry,
        pool: pool_of(facts, row.stage),
        stage: Some(row.stage),
        parts: row.parts(),
        working: row.working(),
        gap: row.gap(),
    }
}
