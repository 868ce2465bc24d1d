//! The bridge: Spent − bought for it and not drawn by it + drawn from other stock = Used up; then the rest
//! of every kind, which is no money that was paid, up to the true cost.
//!
//! Draws of an item count as other stock. Source: our own rule, DEVELOPERS.md § Figures.

use super::{
    kinds::{Rows, drawn, kinds, sum_of},
    lines::{CostLine, Group},
    spent,
};
use crate::measure::Map;
use crate::{
    costing::{CostKind, Part, Rule, Statement, parts::Lens, stock::DrawRow},
    journal::kinds::{Bearer, Source},
};

/// The true cost by way of what was spent.
pub(super) fn from_used_up(rows: &Rows, bearer: Bearer) -> Statement {
    let mut parts = vec![Part::plus(used_up(rows, bearer))];
    for (kind, hours, lines) in kinds(rows.lines.iter(), Lens::Rest, None) {
        parts.push(Part::plus(sum_of(Rule::Rest { kind, hours }, lines)));
    }
    // One-off money is in Used up whole; the true cost bears a share of the work, whatever part it is.
    for (_, hours, lines) in kinds(rows.pooled.iter().map(alone).collect::<Vec<_>>().iter(), Lens::Cash, None)
    {
        let _ = hours;
        parts.push(Part::minus(sum_of(Rule::OneOffMoney, lines)));
    }
    for (kind, hours, lines) in kinds(rows.share.iter(), Lens::All, None) {
        parts.push(Part::plus(sum_of(Rule::Rest { kind, hours }, lines)));
    }
    Statement::sum(Rule::FromUsedUp, parts, Vec::new(), Vec::new())
}

/// A line of one-off work, by itself whatever its kind.
fn alone(line: &CostLine) -> CostLine {
    CostLine { kind: CostKind::OneOff, group: Group::None, ..line.clone() }
}

fn used_up(rows: &Rows, bearer: Bearer) -> Statement {
    let mut own: Map<Source, Vec<&DrawRow>> = Map::new();
    let mut other: Map<Source, Vec<&DrawRow>> = Map::new();
    for row in rows.draws() {
        let side = if rows.books.is_got_for(bearer, row.account) { &mut own } else { &mut other };
        side.entry(row.account).or_default().push(row);
    }
    let parts = vec![
        Part::plus(spent::spent(rows, bearer)),
        Part::minus(not_drawn(rows, bearer, &own)),
        Part::plus(other_stock(rows, &other)),
    ];
    Statement::sum(Rule::UsedUp, parts, Vec::new(), Vec::new())
}

/// Of each lot bought for it: its money, less the money in what the build drew.
fn not_drawn(rows: &Rows, bearer: Bearer, own: &Map<Source, Vec<&DrawRow>>) -> Statement {
    let lots = rows.books.got_for(bearer).map(|lot| {
        let source = Source::Lot(lot.facts.entry());
        let draws = own.get(&source).map(Vec::as_slice).unwrap_or_default();
        let parts = vec![
            Part::plus(spent::lot_money(rows.books, lot)),
            Part::minus(drawn(rows.books, source, draws, Lens::Cash)),
        ];
        let rule = Rule::LotNotDrawn { lot: lot.facts.entry() };
        Part::plus(Statement::sum(rule, parts, Vec::new(), Vec::new()))
    });
    Statement::sum(Rule::NotDrawn, lots.collect(), Vec::new(), Vec::new())
}

fn other_stock(rows: &Rows, other: &Map<Source, Vec<&DrawRow>>) -> Statement {
    let stock = other.iter().map(|(source, draws)| Part::plus(drawn(rows.books, *source, draws, Lens::Cash)));
    Statement::sum(Rule::OtherStock, stock.collect(), Vec::new(), Vec::new())
}
