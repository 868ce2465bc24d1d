//! What all salvage saved: by the place that it came from, or by its species.
//!
//! Sums of the lots' savings, each on what was drawn of it so far; a group's figure is the sum of its lots', and the whole
//! the sum of the groups'. What an hour paid: their savings with own time free ÷ their own hours. A lot of which nothing
//! was drawn is not in it yet; one without a price new is a gap that says so.
//! Source: our own rule, DEVELOPERS.md § Salvage. Not here: the lot by itself (`saving`).

use super::saving::{Saving, saving};
use crate::{
    costing::{Books, Gap, Hours, Part, Path, Rule, Statement, Value, stock::LotAccount},
    journal::{Id, kinds::Origin},
    measure::{InOrder, Map, Money, fixed},
};
use std::cmp::Reverse;

/// By what lots are put together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum By {
    /// From whom or from where.
    Source,
    /// What it is.
    Species,
}

impl By {
    /// Both.
    pub const ALL: [By; 2] = [By::Source, By::Species];

    /// Its name in an address.
    pub fn code(self) -> &'static str {
        match self {
            By::Source => "source",
            By::Species => "species",
        }
    }
}

/// Lots that came from one place, or are of one species.
#[derive(Clone, Debug, PartialEq)]
pub struct Group {
    /// Which; none: nobody said.
    pub name: Option<String>,
    /// Its lots of which something was drawn, by id.
    pub lots: Vec<Id>,
    /// Own time counts nothing.
    pub time_free: Statement,
    /// Own time at its rate.
    pub at_rate: Statement,
    /// What an hour of hauling and reclaiming paid.
    pub paid_an_hour: Statement,
}

/// All of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Across {
    /// Those that saved most first, own time at its rate.
    pub groups: Vec<Group>,
    /// Own time counts nothing.
    pub time_free: Statement,
    /// Own time at its rate.
    pub at_rate: Statement,
    /// What an hour of hauling and reclaiming paid.
    pub paid_an_hour: Statement,
}

impl Across {
    /// Every figure that an address can begin with.
    pub fn roots(&self) -> Vec<&Statement> {
        let all = [&self.time_free, &self.at_rate, &self.paid_an_hour].into_iter();
        all.chain(self.groups.iter().map(|group| &group.paid_an_hour)).collect()
    }

    /// The figures from a root down to the end of an address, the root first.
    pub fn open(&self, path: &Path) -> Option<Vec<&Statement>> {
        self.roots().into_iter().find_map(|root| path.walk(root))
    }
}

impl Books {
    /// Every salvaged lot of which something was drawn or lost, put together. None: there is none.
    pub fn across(&self, by: By) -> Option<Across> {
        let mut together: Map<Option<&str>, Vec<(Id, Saving)>> = Map::new();
        for (id, lot) in self.stock.lots.iter().filter(|(_, lot)| lot.facts.origin == Origin::Salvaged) {
            let saving = saving(self, lot);
            if !saving.at_rate.gaps.iter().any(|gap| matches!(gap, Gap::NothingDrawn { .. })) {
                together.entry(name(lot, by)).or_default().push((*id, saving));
            }
        }
        let groups = together.into_iter().filter_map(|(name, lots)| group(by, name, lots));
        let mut all: Vec<(Group, Hours)> = groups.collect();
        all.order_by_key(|(group, _)| Reverse(group.at_rate.money()));
        let first = all.iter().filter_map(|(group, _)| group.lots.first().copied()).min()?;
        let hours = all.iter().fold(Hours::ZERO, |sum, (_, hours)| sum.plus(*hours));
        let sum = |rule: Rule, of: fn(&Group) -> &Statement| {
            let parts = all.iter().map(|(group, _)| Part::plus(of(group).clone()));
            Statement::sum(rule, parts.collect(), Vec::new(), Vec::new())
        };
        let time_free = sum(Rule::AcrossSaved { by, at_rate: false }, |group| &group.time_free);
        let at_rate = sum(Rule::AcrossSaved { by, at_rate: true }, |group| &group.at_rate);
        let paid_an_hour = an_hour(Rule::AcrossAnHour { by, of: None, hours }, &time_free, hours, first);
        let groups = all.into_iter().map(|(group, _)| group).collect();
        Some(Across { groups, time_free, at_rate, paid_an_hour })
    }
}

fn name(lot: &LotAccount, by: By) -> Option<&str> {
    let said = match by {
        By::Source => lot.facts.whence.as_deref(),
        By::Species => lot.facts.species.as_deref(),
    };
    said.map(str::trim).filter(|it| !it.is_empty())
}

/// One group, and the own hours of its lots that have a figure.
fn group(by: By, name: Option<&str>, lots: Vec<(Id, Saving)>) -> Option<(Group, Hours)> {
    let first = lots.first()?.0;
    let told = lots.iter().filter(|(_, saving)| saving.time_free.value.is_some());
    let hours = told.fold(Hours::ZERO, |sum, (_, saving)| sum.plus(saving.hours));
    let sum = |at_rate: bool, of: fn(&Saving) -> &Statement| {
        // Each under its own name, so that an address finds it among the others.
        let parts = lots.iter().map(|(lot, saving)| {
            let rule = Rule::LotSaved { lot: *lot, at_rate };
            Part::plus(Statement { rule, ..of(saving).clone() })
        });
        let rule = Rule::GroupSaved { by, of: first, at_rate };
        Statement::sum(rule, parts.collect(), Vec::new(), Vec::new())
    };
    let time_free = sum(false, |saving| &saving.time_free);
    let at_rate = sum(true, |saving| &saving.at_rate);
    let paid_an_hour = an_hour(Rule::AcrossAnHour { by, of: Some(first), hours }, &time_free, hours, first);
    let lots = lots.iter().map(|(id, _)| *id).collect();
    Some((Group { name: name.map(str::to_owned), lots, time_free, at_rate, paid_an_hour }, hours))
}

/// Saved with own time free ÷ own hours, rounded once; no hours: no figure.
fn an_hour(rule: Rule, free: &Statement, hours: Hours, lot: Id) -> Statement {
    let gaps = if hours.is_zero() { vec![Gap::NoHours { lot }] } else { Vec::new() };
    let hour = fixed::SCALE.saturating_mul(3600);
    let paid = free.money().and_then(|saved| fixed::mul_div(saved.micros(), hour, hours.micros()));
    let statement = Statement::carrying(rule, vec![Part::plus(free.clone())], gaps, Vec::new());
    Statement { value: paid.map(|paid| Value::PerHour(Money::from_micros(paid))), ..statement }
}
