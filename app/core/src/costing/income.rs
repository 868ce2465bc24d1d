//! What came in for a build, what is still to come, and what an hour earned.
//!
//! Net = received − tax in it − fee. Still expected, line by line: settled → 0, else the greater of expected − net and 0.
//! Supplied goods that were drawn are income in kind of the film. An hour earned = (net + in kind − true cost + own
//! labour) ÷ own hours, those in the timber included. Worked example: 780 + 20 in kind, other cost 187, 30 h → 20.43.
//! Source: our own rule, DEVELOPERS.md § Figures. Not here: the money view for tax.

use super::{
    Books, Gap, Hours, Part, Parts, Rule, Statement, Value, Working,
    sides::{OneSide, Split},
};
use crate::{
    journal::{Id, Shop, kinds::Bearer, shop::Income},
    measure::{Day, Money, fixed},
};

/// What came in for one bearer.
#[derive(Clone, Debug, PartialEq)]
pub struct Earned {
    /// Somebody wrote down that something comes in.
    pub kept: bool,
    /// Less tax and fees.
    pub net: Statement,
    /// Of the piece.
    pub net_piece: Money,
    /// Of the film.
    pub net_film: Money,
    /// Still expected.
    pub expected: Statement,
    /// Tax that came with it.
    pub tax: Statement,
}

/// One income's share for one bearer.
#[derive(Clone, Copy, Debug)]
pub(crate) struct IncomeRow {
    pub entry: Id,
    pub bearer: Bearer,
    pub amount: Money,
    pub tax: Money,
    pub fee: Money,
    pub net: Money,
    pub expected: Money,
    pub share: (u64, u64),
    pub side: crate::journal::kinds::Side,
}

/// A row for each bearer of each income, received up to `last`.
pub(crate) fn rows(shop: &Shop, last: Day) -> Vec<IncomeRow> {
    let known = shop.incomes.iter().filter(|it| it.order.day <= last);
    known.flat_map(|income| shares(income, last)).collect()
}

pub(super) fn shares(income: &Income, last: Day) -> Vec<IncomeRow> {
    let received = income.received.iter().filter(|it| it.on <= last);
    let zero = (Money::ZERO, Money::ZERO, Money::ZERO);
    let (amount, tax, fee) =
        received.fold(zero, |sum, it| (sum.0.plus(it.amount), sum.1.plus(it.tax), sum.2.plus(it.fee)));
    let net = amount.minus(tax).minus(fee);
    let open = income.expected.filter(|_| !income.settled).map(|expected| expected.minus(net));
    let open = open.unwrap_or_default().max(Money::ZERO);
    let the_shop = [(Bearer::Shop, 1)];
    let shares = if income.shares.is_empty() { the_shop.as_slice() } else { income.shares.as_slice() };
    let weights: Vec<i128> = shares.iter().map(|(_, parts)| i128::from(*parts)).collect();
    let whole = shares.iter().fold(0_u64, |sum, (_, parts)| sum.saturating_add(u64::from(*parts)));
    let of = |money: Money| fixed::allocate(money.micros(), &weights).into_iter().map(Money::from_micros);
    let parts = of(amount).zip(of(tax)).zip(of(fee)).zip(of(open));
    let rows =
        shares.iter().zip(parts).map(|((bearer, parts), (((amount, tax), fee), expected))| IncomeRow {
            entry: income.order.entry,
            bearer: *bearer,
            amount,
            tax,
            fee,
            net: amount.minus(tax).minus(fee),
            expected,
            share: (u64::from(*parts), whole),
            side: income.side,
        });
    rows.collect()
}

pub(crate) fn earned(books: &Books, bearer: Bearer) -> Earned {
    let of_bearer = books.ledgers.borne_by(bearer).incomes.iter();
    let rows: Vec<&IncomeRow> = of_bearer.filter_map(|at| books.incomes.get(*at)).collect();
    let both = books.ledgers.keys.of_bearer(bearer).split;
    let film = rows.iter().fold(Money::ZERO, |sum, row| {
        let part = Split::of(row.side, both).part(Parts::of_money(row.net), OneSide::Film);
        sum.plus(part.money())
    });
    let sum = |rule: Rule, of: fn(&IncomeRow) -> Money, all: bool| {
        let shown = rows.iter().filter(|row| all || !of(row).is_zero());
        let parts = shown.map(|row| {
            let IncomeRow { amount, tax, fee, share, .. } = **row;
            let working = if rule == Rule::Net {
                Working::Received { amount, tax, fee, share }
            } else {
                Working::Amount
            };
            Part::entry(row.entry, Some(Value::Money(of(row))), working)
        });
        Statement::sum(rule, parts.collect(), Vec::new(), Vec::new())
    };
    let net = sum(Rule::Net, |row| row.net, false);
    Earned {
        kept: !rows.is_empty(),
        net_piece: net.money().unwrap_or_default().minus(film),
        net_film: film,
        net,
        expected: sum(Rule::StillExpected, |row| row.expected, false),
        tax: sum(Rule::TaxIn, |row| row.tax, false),
    }
}

/// Own hours are those in the timber too. Nothing is said before anybody wrote down that something comes in.
pub(crate) fn hour_earned(
    build: Id,
    earned: &Earned,
    in_kind: &Statement,
    true_cost: &Statement,
    own_labour: &Statement,
    hours: Hours,
) -> Statement {
    let parts = vec![
        Part::plus(earned.net.clone()),
        Part::plus(in_kind.clone()),
        Part::minus(true_cost.clone()),
        Part::plus(own_labour.clone()),
    ];
    let rule = Rule::HourEarned { hours };
    let mut gaps = Vec::new();
    if !earned.kept {
        gaps.push(Gap::IncomeNotKept);
    }
    if hours.is_zero() {
        gaps.push(Gap::NoOwnHours { build });
    }
    let sum = parts.iter().filter_map(Part::signed_money).fold(Money::ZERO, Money::plus);
    let an_hour = fixed::mul_div(sum.micros(), fixed::SCALE.saturating_mul(3600), hours.micros());
    let value = an_hour.filter(|_| earned.kept).map(|it| Value::PerHour(Money::from_micros(it)));
    Statement { value, ..Statement::carrying(rule, parts, gaps, Vec::new()) }
}
