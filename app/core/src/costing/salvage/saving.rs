//! Did the salvage save anything? On what was drawn so far; the shelf stands apart, what was lost counts.
//!
//! Bought instead = quantity in the sold measure × price ÷ (1 − waste) × (1 + tax) + delivery × share of
//! the quantity. Three ways: own time free, own time at its rate, and what an hour of reclaiming paid.
//! Overhead is left out: it would be paid anyway. Negative is an answer.
//! Source: our own rule, DEVELOPERS.md § Salvage.

use super::cost::{over, shares};
use crate::{
    costing::{
        Books, CostKind, Gap, Hours, Part, Rule, Statement, Value, Working,
        parts::Lens,
        stock::{LotAccount, Pool},
    },
    journal::{Id, shop::NewStock},
    measure::{Money, Quantity, fixed},
};

/// The same timber new against what it took.
#[derive(Clone, Debug, PartialEq)]
pub struct Saving {
    /// What it is measured against.
    pub new: Option<NewStock>,
    /// How much was drawn, in the measure in which new stock is sold; none where that can't be said.
    pub quantity: Option<Quantity>,
    /// Own hours in what was drawn or lost.
    pub hours: Hours,
    /// Overhead in what was drawn or lost: left out, it would be paid anyway.
    pub overhead_left_out: Money,
    /// Own time counts nothing.
    pub time_free: Statement,
    /// Own time at its rate.
    pub at_rate: Statement,
    /// What an hour of hauling and reclaiming paid.
    pub paid_an_hour: Statement,
}

pub(super) fn saving(books: &Books, lot: &LotAccount) -> Saving {
    let id = lot.facts.entry();
    let used = Used::of(books, lot);
    let instead = bought_instead(lot);
    let time_free = saved(Rule::SavedTimeFree { lot: id }, &instead, &[&used.cash], &used.gaps);
    let at_rate = saved(Rule::SavedAtRate { lot: id }, &instead, &[&used.cash, &used.own], &used.gaps);
    let paid_an_hour = paid_an_hour(id, &time_free, used.hours);
    let quantity = sold_quantity(lot, lot.drawn).ok();
    let overhead_left_out = lot.cost().minus(lot.shelf()).overhead();
    let hours = used.hours;
    Saving {
        new: lot.facts.new.clone(),
        quantity,
        hours,
        overhead_left_out,
        time_free,
        at_rate,
        paid_an_hour,
    }
}

/// What went into the timber that was drawn or lost.
struct Used {
    cash: Statement,
    own: Statement,
    hours: Hours,
    gaps: Vec<Gap>,
}

impl Used {
    fn of(books: &Books, lot: &LotAccount) -> Used {
        let id = lot.facts.entry();
        let lines = books.lot_lines(&lot.facts);
        let out = lot.cost().minus(lot.shelf());
        let [gone_usable, gone_sorted] = lot.gone;
        let taken = lot.drawn.plus(gone_usable);
        let parts = |lens: Lens| {
            shares(&lines, out.through(lens), lens, |line| match over(lot, line.pool) {
                // Nobody can take it any more: all of it counts.
                _ if lot.all_lost => Some((Quantity::ONE, Quantity::ONE)),
                Some(over) => {
                    let gone = if line.pool == Pool::Fetched { gone_usable } else { gone_sorted };
                    Some((lot.drawn.plus(gone), over))
                }
                None => None,
            })
        };
        let hours = out.own_hours();
        let of =
            |rule: Rule, lens: Lens| Statement::sum(rule, parts(lens), lot.gaps.clone(), lot.flags.clone());
        let cash = of(Rule::MoneyAndVehicle { lot: id }, Lens::CashAndWear);
        let own = of(Rule::OwnTime { lot: id, hours }, Lens::OwnLabour);
        // No own hours cost nothing, whatever else the lot lacks. Of hours that round to none a few millionths may stay.
        let sum = own.parts.iter().filter_map(Part::signed_money).fold(Money::ZERO, Money::plus);
        let nothing = hours.is_zero() && sum.is_zero();
        let own = if nothing { Statement { value: Some(Value::Money(Money::ZERO)), ..own } } else { own };
        let mut gaps = Vec::new();
        if taken.is_zero() && lot.lost.is_zero() {
            gaps.push(Gap::NothingDrawn { lot: id });
        }
        // Wear would count, and goes by hours.
        if !books.shop.keeps_tools && lines.iter().any(|line| line.pool == Pool::Reclaimed) {
            gaps.push(Gap::NotKept { kind: CostKind::Tools });
        }
        Used { cash, own, hours, gaps }
    }
}

/// Bought instead less what it took; no value where either can't be said.
fn saved(rule: Rule, instead: &Statement, took: &[&Statement], gaps: &[Gap]) -> Statement {
    let drawn = !gaps.iter().any(|gap| matches!(gap, Gap::NothingDrawn { .. }));
    let sayable = drawn && instead.value.is_some() && took.iter().all(|it| it.value.is_some());
    let took = took.iter().map(|statement| Part::minus((*statement).clone()));
    let parts = std::iter::once(Part::plus(instead.clone())).chain(took).collect();
    let statement = Statement::sum(rule, parts, gaps.to_vec(), Vec::new());
    Statement { value: statement.value.filter(|_| sayable), ..statement }
}

/// `(bought instead − money and vehicle) ÷ own hours`, rounded once.
fn paid_an_hour(lot: Id, free: &Statement, hours: Hours) -> Statement {
    let gaps = if hours.is_zero() { vec![Gap::NoHours { lot }] } else { Vec::new() };
    // Millionths of money over millionths of a second, an hour of 3600.
    let hour = fixed::SCALE.saturating_mul(3600);
    let paid = free.money().and_then(|saved| fixed::mul_div(saved.micros(), hour, hours.micros()));
    let parts = vec![Part::plus(free.clone())];
    let statement = Statement::carrying(Rule::PaidAnHour { lot, hours }, parts, gaps, Vec::new());
    Statement { value: paid.map(|paid| Value::PerHour(Money::from_micros(paid))), ..statement }
}

fn bought_instead(lot: &LotAccount) -> Statement {
    let rule = Rule::BoughtInstead { lot: lot.facts.entry() };
    match priced(lot, lot.drawn) {
        Ok(part) => Statement::sum(rule, vec![part], Vec::new(), Vec::new()),
        Err(gap) => Statement::carrying(rule, Vec::new(), vec![gap], Vec::new()),
    }
}

/// So much of a lot, new; none where that can't be said.
pub(crate) fn bought_instead_of(lot: &LotAccount, quantity: Quantity) -> Option<Statement> {
    let part = priced(lot, quantity).ok()?;
    Some(Statement::sum(Rule::BoughtInstead { lot: lot.facts.entry() }, vec![part], Vec::new(), Vec::new()))
}

/// The one line of it: the lot, with the numbers of its price new.
pub(super) fn priced(lot: &LotAccount, drawn: Quantity) -> Result<Part, Gap> {
    let id = lot.facts.entry();
    let new = lot.facts.new.as_ref().ok_or(Gap::NoNewPrice { lot: id })?;
    let quantity = sold_quantity(lot, drawn)?;
    let delivery = delivery(lot, new, drawn)?;
    let goods = goods(quantity, new).ok_or(Gap::OutOfRange { entry: id })?;
    let NewStock { price, waste, tax, .. } = *new;
    let working = Working::BoughtInstead { quantity, unit: lot.facts.unit, price, waste, tax, delivery };
    Ok(Part::entry(id, Some(Value::Money(goods.plus(delivery))), working))
}

/// `quantity × price × (1 + tax) ÷ (1 − waste)`, rounded once.
pub(super) fn goods(quantity: Quantity, new: &NewStock) -> Option<Money> {
    let priced = quantity.micros().checked_mul(new.price.micros())?;
    let left = new.waste.rest().micros().checked_mul(fixed::SCALE)?;
    fixed::mul_div(priced, new.tax.on_top().micros(), left).map(Money::from_micros)
}

fn delivery(lot: &LotAccount, new: &NewStock, drawn: Quantity) -> Result<Money, Gap> {
    if new.delivery.is_zero() || drawn.is_zero() {
        return Ok(Money::ZERO);
    }
    let id = lot.facts.entry();
    let usable = lot.usable.ok_or(Gap::NoYield { lot: id })?;
    fixed::mul_div(new.delivery.micros(), drawn.micros(), usable.micros())
        .map(Money::from_micros)
        .ok_or(Gap::OutOfRange { entry: id })
}

/// What was drawn, in the measure in which new stock is sold.
fn sold_quantity(lot: &LotAccount, drawn: Quantity) -> Result<Quantity, Gap> {
    let id = lot.facts.entry();
    let sold = lot.facts.new.as_ref().map_or(lot.facts.basis, |new| new.basis);
    if sold == lot.facts.basis {
        return Ok(drawn);
    }
    let other = lot.facts.other_measure.zip(lot.facts.rough).filter(|(_, rough)| !rough.is_zero());
    let (other, rough) = other.ok_or(Gap::NoOtherMeasure { lot: id })?;
    fixed::mul_div(drawn.micros(), other.micros(), rough.micros())
        .map(Quantity::from_micros)
        .ok_or(Gap::OutOfRange { entry: id })
}
