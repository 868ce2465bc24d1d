//! The cost of a lot in its two pools, line by line; and a draw down to what it took of each line.

use crate::measure::InOrder;
use crate::{
    costing::{
        Books, Part, Rule, Statement, Value, Working,
        build::{Lines, sum_of},
        parts::Lens,
        stock::{LotAccount, LotLine, Pool},
    },
    journal::{Id, kinds::Source},
    measure::{Money, Quantity, fixed},
};

/// Fetched and reclaimed.
pub(super) fn cost(books: &Books, lot: &LotAccount) -> Statement {
    let id = lot.facts.entry();
    let lines = books.lot_lines(&lot.facts);
    let pool = |pool: Pool, rule: Rule| {
        let mut of_pool = Lines::default();
        for line in lines.iter().filter(|line| line.pool == pool) {
            let known = line.gap.is_none() || !line.parts.is_zero();
            let value = known.then(|| line.parts.total());
            of_pool.add(books, line.entry, value, line.working, line.gap, Lens::All);
        }
        Part::plus(sum_of(rule, of_pool))
    };
    let parts = vec![
        pool(Pool::Fetched, Rule::Fetched { lot: id, over: lot.usable }),
        pool(Pool::Reclaimed, Rule::Reclaimed { lot: id, over: lot.sorted }),
    ];
    Statement::sum(Rule::LotCost { lot: id }, parts, lot.gaps.clone(), lot.flags.clone())
}

/// A draw or return of a lot by itself.
pub(super) fn draw(books: &Books, entry: Id) -> Option<Statement> {
    let row = books.stock.row_of(entry)?;
    let Source::Lot(lot) = row.account else { return None };
    let lot = books.stock.lots.get(&lot)?;
    if row.frozen {
        // As it was when its build was closed: what the lot's lines come to today makes up another figure.
        let part = Part::entry(entry, Some(Value::Money(row.parts.total())), Working::Amount);
        let statement = Statement::sum(Rule::Draw { entry }, vec![part], row.gaps.clone(), row.flags.clone());
        return Some(statement);
    }
    let taken = row.signed_quantity()?;
    let parts = shares(&books.lot_lines(&lot.facts), row.parts.total(), Lens::All, |line| {
        Some((taken, over(lot, line.pool)?))
    });
    let statement = Statement::sum(Rule::Draw { entry }, parts, row.gaps.clone(), row.flags.clone());
    row.known.then_some(statement)
}

/// Over how much a pool is spread.
pub(super) fn over(lot: &LotAccount, pool: Pool) -> Option<Quantity> {
    let over = match pool {
        Pool::Fetched => lot.usable,
        Pool::Reclaimed => lot.sorted,
    };
    over.filter(|over| !over.is_zero())
}

/// What a figure took of each line, by entry; `taken` says how much of how much. The shares make up the
/// figure: each is rounded by itself, and the few millionths left over or short go by size.
pub(super) fn shares(
    lines: &[LotLine],
    figure: Money,
    lens: Lens,
    taken: impl Fn(&LotLine) -> Option<(Quantity, Quantity)>,
) -> Vec<Part> {
    let mut shares = Vec::new();
    for line in lines {
        let of = line.parts.through(lens);
        let Some((part, whole)) = taken(line).filter(|_| !of.is_zero()) else { continue };
        let share = fixed::mul_div(of.micros(), part.micros(), whole.micros()).unwrap_or(0);
        shares.push((line.entry, share, Working::Share { of, part, whole }));
    }
    shares.order_by_key(|(entry, ..)| *entry);
    let sizes: Vec<i128> = shares.iter().map(|(_, share, _)| share.saturating_abs()).collect();
    let rest = shares.iter().fold(figure.micros(), |rest, (_, share, _)| rest.saturating_sub(*share));
    let corrections = fixed::allocate(rest, &sizes);
    let exact = shares.into_iter().zip(corrections).map(|((entry, share, working), correction)| {
        let value = Money::from_micros(share.saturating_add(correction));
        Part::entry(entry, Some(Value::Money(value)), working)
    });
    exact.collect()
}
