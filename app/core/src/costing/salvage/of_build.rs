//! What the salvage of a build saved: every salvaged lot that it drew, together.
//!
//! For each lot: bought instead, for what this build drew, less what its draws hold of money, helpers, vehicle and wear
//! (own time free), and of own labour (at its rate). Overhead is left out. A lot without a price new is left out of both
//! sides, and said. Source: our own rule, DEVELOPERS.md § Salvage. Not here: the lot by itself (`saving`).

use super::saving::priced;
use crate::{
    costing::{
        Books, Gap, Hours, Part, Parts, Rule, Statement, Value,
        parts::Lens,
        stock::{DrawRow, LotAccount},
    },
    journal::{
        Id,
        kinds::{Bearer, Origin, Source},
    },
    measure::{Money, Quantity, fixed},
};

/// The salvage of a build.
#[derive(Clone, Debug, PartialEq)]
pub struct BuildSaving {
    /// Own time counts nothing.
    pub time_free: Statement,
    /// Own time at its rate.
    pub at_rate: Statement,
    /// What an hour of hauling and reclaiming paid.
    pub paid_an_hour: Statement,
    /// Overhead in what was drawn: left out.
    pub overhead_left_out: Money,
    /// The lots that are in it.
    pub lots: Vec<Id>,
}

impl Books {
    /// What the salvage of a build saved. None: it drew none.
    pub fn build_saving(&self, build: Id) -> Option<BuildSaving> {
        let drawn = self.salvage_drawn(build);
        if drawn.is_empty() {
            return None;
        }
        let (mut instead, mut gaps, mut rows, mut lots) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
        for (lot, draws) in drawn {
            let net = draws.iter().filter(|row| row.returns.is_none());
            let quantity = net.fold(Quantity::ZERO, |sum, row| sum.plus(row.net()));
            match priced(lot, quantity) {
                Ok(part) => {
                    instead.push(part);
                    rows.extend(draws);
                    lots.push(lot.facts.entry());
                }
                Err(gap) => gaps.push(gap),
            }
        }
        let sums = rows.iter().fold(Parts::ZERO, |sum, row| sum.plus(row.parts));
        let hours = sums.own_hours();
        let instead = Statement::sum(Rule::BuildInstead, instead, gaps.clone(), Vec::new());
        let took = of_draws(Rule::BuildTook, &rows, Lens::CashAndWear);
        let own = of_draws(Rule::BuildOwnTime { hours }, &rows, Lens::OwnLabour);
        let time_free = saved(Rule::BuildSavedFree, &instead, &[&took], lots.is_empty());
        let at_rate = saved(Rule::BuildSavedAtRate, &instead, &[&took, &own], lots.is_empty());
        let paid_an_hour = paid_an_hour(build, &time_free, hours);
        Some(BuildSaving { time_free, at_rate, paid_an_hour, overhead_left_out: sums.overhead(), lots })
    }

    /// Salvaged lots that a build drew, with its draws and returns of each.
    fn salvage_drawn(&self, build: Id) -> Vec<(&LotAccount, Vec<&DrawRow>)> {
        let bearing = self.ledgers.borne_by(Bearer::Build(build));
        let mut all: Vec<(&LotAccount, Vec<&DrawRow>)> = Vec::new();
        for row in bearing.draws.iter().filter_map(|at| self.stock.rows.get(*at)) {
            let Source::Lot(id) = row.account else { continue };
            let lot = self.stock.lots.get(&id).filter(|lot| lot.facts.origin == Origin::Salvaged);
            let Some(lot) = lot else { continue };
            match all.iter_mut().find(|(it, _)| it.facts.entry() == id) {
                Some((_, rows)) => rows.push(row),
                None => all.push((lot, vec![row])),
            }
        }
        all
    }
}

fn of_draws(rule: Rule, rows: &[&DrawRow], lens: Lens) -> Statement {
    let parts = rows.iter().map(|row| {
        let value = row.parts.through(lens);
        Part::entry(row.entry(), row.known.then_some(Value::Money(value)), row.working(value))
    });
    let gaps = rows.iter().flat_map(|row| row.gaps.iter().copied()).collect();
    let flags = rows.iter().flat_map(|row| row.flags.iter().copied()).collect();
    Statement::sum(rule, parts.collect(), gaps, flags)
}

fn saved(rule: Rule, instead: &Statement, took: &[&Statement], nothing: bool) -> Statement {
    let minus = took.iter().map(|it| Part::minus((*it).clone()));
    let parts = std::iter::once(Part::plus(instead.clone())).chain(minus).collect();
    let statement = Statement::sum(rule, parts, Vec::new(), Vec::new());
    Statement { value: statement.value.filter(|_| !nothing), ..statement }
}

fn paid_an_hour(build: Id, free: &Statement, hours: Hours) -> Statement {
    let gaps = if hours.is_zero() { vec![Gap::NoOwnHours { build }] } else { Vec::new() };
    let hour = fixed::SCALE.saturating_mul(3600);
    let paid = free.money().and_then(|saved| fixed::mul_div(saved.micros(), hour, hours.micros()));
    let parts = vec![Part::plus(free.clone())];
    let statement = Statement::carrying(Rule::BuildPaidAnHour { hours }, parts, gaps, Vec::new());
    Statement { value: paid.map(|paid| Value::PerHour(Money::from_micros(paid))), ..statement }
}
