//! What the salvage of a build saved: every salvaged lot that it drew, together.
//!
//! For each lot: bought instead, for what this build drew, less what its draws hold of money, helpers, vehicle and wear
//! (own time free), and of own labour (at its rate). Overhead is left out. A lot without a price new is left out of both
//! sides, and said. Reclaiming that was logged on the build itself and not on a lot is labour of the build: it is in none of
//! these, and its hours stand beside them. Source: our own rule, DEVELOPERS.md § Salvage. Not here: the lot by itself
//! (`saving`).

use super::saving::priced;
use crate::{
    costing::{
        Books, Gap, Hours, Part, Parts, Rule, Statement, Value,
        parts::Lens,
        stock::{DrawRow, LotAccount},
    },
    journal::{
        Id,
        kinds::{Bearer, Origin, Role, Source},
    },
    measure::{Money, Quantity, Seconds, Shown, fixed},
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
    pub lots: Vec<OfLot>,
    /// Reclaiming that the build bears itself: counted in its labour, and in no saving.
    pub reclaimed_here: Seconds,
}

/// A lot's part in what a build saved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OfLot {
    /// Which.
    pub lot: Id,
    /// With own time at its rate, of what this build drew of it; none: what it took is not known.
    pub at_rate: Option<Money>,
}

impl BuildSaving {
    /// What the build saved lot by lot, own time at its rate, rounded so that it adds up to what is shown of the whole.
    pub fn lot_by_lot(&self, minor: u8) -> Vec<(Id, Option<Shown>)> {
        let exact: Vec<Money> = self.lots.iter().map(|it| it.at_rate.unwrap_or_default()).collect();
        let shown = Shown::alone(self.at_rate.money().unwrap_or_default(), minor).parts(&exact);
        let of_lot = |(it, shown): (&OfLot, Shown)| (it.lot, it.at_rate.map(|_| shown));
        self.lots.iter().zip(shown).map(of_lot).collect()
    }
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
                    let took = draws.iter().fold(Parts::ZERO, |sum, row| sum.plus(row.parts));
                    let took = took.through(Lens::CashAndWear).plus(took.through(Lens::OwnLabour));
                    let known = draws.iter().all(|row| row.known);
                    let at_rate = part.signed_money().filter(|_| known).map(|instead| instead.minus(took));
                    lots.push(OfLot { lot: lot.facts.entry(), at_rate });
                    instead.push(part);
                    rows.extend(draws);
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
        let (overhead_left_out, reclaimed_here) = (sums.overhead(), self.reclaimed_on(build));
        Some(BuildSaving { time_free, at_rate, paid_an_hour, overhead_left_out, lots, reclaimed_here })
    }

    /// Hours of reclaiming that a build bears itself.
    fn reclaimed_on(&self, build: Id) -> Seconds {
        let bearing = self.ledgers.borne_by(Bearer::Build(build));
        let rows = bearing.labour.iter().filter_map(|at| self.ledgers.labour.get(*at));
        let reclaiming = rows.filter(|row| self.shop.has_role(row.stage, Role::Reclaim));
        reclaiming.fold(Seconds::ZERO, |sum, row| sum.plus(row.seconds))
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
