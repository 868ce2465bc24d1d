//! Spent: money of lots bought for a build, whole, its direct expenses and paid labour; and tax apart.
//!
//! Only lots that are drawn by name can be bought for a build; wages paid on such a lot are money of it.
//! Source: our own rule, DEVELOPERS.md § Figures. Not here: what became of it (`bridge`).

use super::kinds::{Lines, Rows, sum_of};
use crate::{
    costing::{Books, Hours, Part, Rule, Statement, Working, parts::Lens, stock::LotAccount},
    journal::kinds::Bearer,
    measure::Money,
};

/// What was spent on a build.
pub(super) fn spent(rows: &Rows, bearer: Bearer) -> Statement {
    let lots = rows.books.got_for(bearer).map(|lot| lot_money(rows.books, lot));
    let mut parts: Vec<Part> = lots.map(Part::plus).collect();
    let direct = rows.direct(Lens::Cash);
    if !direct.parts.is_empty() {
        parts.push(Part::plus(sum_of(Rule::DirectMoney, direct)));
    }
    parts.extend(paid_labour(rows).map(Part::plus));
    Statement::sum(Rule::Spent, parts, Vec::new(), Vec::new())
}

/// What a lot cost in money, line by line.
pub(super) fn lot_money(books: &Books, lot: &LotAccount) -> Statement {
    let mut lines = Lines::default();
    for line in books.lot_lines(&lot.facts) {
        let known = line.gap.is_none() || !line.parts.is_zero();
        let value = known.then(|| line.parts.through(Lens::Cash));
        lines.add(books, line.entry, value, line.working, line.gap, Lens::Cash);
    }
    sum_of(Rule::LotMoney { lot: lot.facts.entry() }, lines)
}

/// Hours of people who are paid.
fn paid_labour(rows: &Rows) -> Option<Statement> {
    let mut lines = Lines::default();
    let mut hours = Hours::ZERO;
    let ledgers = &rows.books.ledgers;
    let labour = rows.bearing.labour.iter().filter_map(|at| ledgers.labour.get(*at));
    for row in labour.filter(|row| row.paid) {
        hours = hours.plus(Hours::of(row.seconds));
        lines.add(rows.books, row.entry, row.value, row.working(), row.gap(), Lens::Cash);
        lines.flags.extend(row.flags());
    }
    (!lines.parts.is_empty()).then(|| sum_of(Rule::PaidLabour { hours }, lines))
}

/// Tax to be got back, of its expenses and of lots bought for it.
pub(super) fn tax_back(rows: &Rows, bearer: Bearer) -> Statement {
    let mut lines = Lines::default();
    let mut add = |entry, tax: Money| {
        if !tax.is_zero() {
            lines.add(rows.books, entry, Some(tax), Working::Amount, None, Lens::All);
        }
    };
    for lot in rows.books.got_for(bearer) {
        add(lot.facts.entry(), lot.facts.whole_tax_back());
    }
    for row in rows.bearing.expenses.iter().filter_map(|at| rows.books.ledgers.expenses.get(*at)) {
        add(row.entry, row.tax_back);
    }
    sum_of(Rule::TaxBack, lines)
}
