//! The address of a figure inside a sheet: stable, and short enough for a place's address.
//!
//! `true.labour.stage_0190f3c2-…`: steps joined by full stops, each the code of a [`Rule`] and, where it
//! is about one thing, an underscore and that thing's id. Not here: what is at an address (`present`).

use super::{Rule, Statement, salvage::By, sides::OneSide};
use crate::journal::{Id, kinds::Source};
use std::fmt;

/// One step down: the code of a figure among the parts of another.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Step(String);

/// From a root figure down to one of its parts.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Path {
    /// The root first.
    pub steps: Vec<Step>,
}

impl Path {
    /// Reads an address. Anything reads; what names nothing opens nothing.
    pub fn parse(text: &str) -> Path {
        let steps = text.split('.').filter(|step| !step.is_empty());
        Path { steps: steps.map(|step| Step(step.to_owned())).collect() }
    }

    /// One level further down.
    #[must_use]
    pub fn to(&self, step: Step) -> Path {
        let mut path = self.clone();
        path.steps.push(step);
        path
    }

    /// One level back up; none at the root.
    pub fn up(&self) -> Option<Path> {
        let (_, rest) = self.steps.split_last()?;
        (!rest.is_empty()).then(|| Path { steps: rest.to_vec() })
    }

    /// The figures from a root to the end of this address, the root first.
    pub fn walk<'a>(&self, root: &'a Statement) -> Option<Vec<&'a Statement>> {
        let (first, rest) = self.steps.split_first()?;
        if *first != root.rule.step() {
            return None;
        }
        let mut levels = vec![root];
        for step in rest {
            let below = levels.last()?.part(|rule| rule.step() == *step)?;
            levels.push(below);
        }
        Some(levels)
    }
}

impl fmt::Display for Path {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (at, Step(step)) in self.steps.iter().enumerate() {
            if at > 0 {
                out.write_str(".")?;
            }
            out.write_str(step)?;
        }
        Ok(())
    }
}

impl Rule {
    /// Its step in an address, its own among the parts of one figure.
    pub fn step(&self) -> Step {
        match self {
            Rule::TrueCost => Step("true".into()),
            Rule::Kind { kind, .. } => Step(kind.code().into()),
            Rule::Stage { stage, .. } => of("stage", stage),
            Rule::Drawn { source, .. } | Rule::Held { source, .. } => of_source(source),
            Rule::Spent => Step("spent".into()),
            Rule::UsedUp => Step("used".into()),
            Rule::UsedUpByKind => Step("used-by-kind".into()),
            Rule::NotDrawn => Step("not-drawn".into()),
            Rule::OtherStock => Step("other-stock".into()),
            Rule::LotMoney { lot } => of("money", lot),
            Rule::LotNotDrawn { lot } => of("left", lot),
            Rule::FromUsedUp => Step("bridge".into()),
            Rule::Rest { kind, .. } => of("rest", &kind.code()),
            Rule::DirectMoney => Step("direct-money".into()),
            Rule::PaidLabour { .. } => Step("paid-labour".into()),
            Rule::TaxBack => Step("tax-back".into()),
            Rule::OwnHours => Step("own-hours".into()),
            Rule::InTheTimber => Step("timber".into()),
            Rule::HourEarned { .. } => Step("hour-earned".into()),
            Rule::Tool { tool, .. } => of("tool", tool),
            Rule::OneOffMoney => Step("one-off-money".into()),
            Rule::Sides => Step("sides".into()),
            Rule::Side { side, .. } => Step(side_code(*side).into()),
            Rule::Net => Step("net".into()),
            Rule::InKind => Step("in-kind".into()),
            Rule::StillExpected => Step("expected".into()),
            Rule::Outlook => Step("outlook".into()),
            Rule::ToCome { .. } => Step("to-come".into()),
            Rule::ToComeLabour { .. } => Step("labour".into()),
            Rule::ToComeOverhead => Step("overhead".into()),
            Rule::ToComeTools => Step("tools".into()),
            Rule::ToComeOneOff => Step("one-off".into()),
            Rule::ToComeMaterials => Step("materials".into()),
            Rule::ToComeMoney => Step("to-come-money".into()),
            Rule::AboveFetch => Step("above".into()),
            Rule::AboveNew { lot } => of("above-new", lot),
            Rule::LotSaved { lot, .. } => of("lot", lot),
            Rule::TaxIn => Step("tax-in".into()),
            Rule::Item { .. } => Step("item".into()),
            Rule::Batch => Step("batch".into()),
            Rule::Loss => Step("loss".into()),
            Rule::Scrap => Step("scrap".into()),
            Rule::OneOffEach => Step("one-off-each".into()),
            Rule::ProfitOnSold { .. } => Step("profit".into()),
            Rule::ItemsAtCost { .. } => Step("at-cost".into()),
            Rule::BuildInstead => Step("instead".into()),
            Rule::BuildTook => Step("took".into()),
            Rule::BuildOwnTime { .. } => Step("own-time-all".into()),
            Rule::OnTheShelf | Rule::UnderWay => of_books(self),
            Rule::StockLosses => Step("stock-losses".into()),
            Rule::WrittenOff { why } => Step(why.code().into()),
            Rule::AcrossSaved { by, at_rate } => across(*by, if *at_rate { "at-rate" } else { "free" }, None),
            Rule::GroupSaved { of: lot, .. } => of("group", lot),
            Rule::AcrossAnHour { by, of, .. } => across(*by, "an-hour", *of),
            Rule::LotCost { lot } => of("cost", lot),
            Rule::ChainCost { lot } => of("chain", lot),
            Rule::LinkCost { at, .. } => Step(at.code().into()),
            Rule::Fetched { .. } => Step("fetched".into()),
            Rule::Reclaimed { .. } => Step("reclaimed".into()),
            Rule::Draw { entry } => of("draw", entry),
            Rule::BoughtInstead { .. } => Step("bought-instead".into()),
            Rule::MoneyAndVehicle { .. } => Step("money-and-vehicle".into()),
            Rule::OwnTime { .. } => Step("own-time".into()),
            Rule::BuildSavedFree | Rule::SavedTimeFree { .. } => Step("saved-free".into()),
            Rule::BuildSavedAtRate | Rule::SavedAtRate { .. } => Step("saved-at-rate".into()),
            Rule::BuildPaidAnHour { .. } | Rule::PaidAnHour { .. } => Step("paid-an-hour".into()),
        }
    }
}

/// What is there at the end of a day.
fn of_books(rule: &Rule) -> Step {
    Step(if *rule == Rule::UnderWay { "under-way" } else { "shelf" }.into())
}

fn of(code: &str, id: &dyn fmt::Display) -> Step {
    Step(format!("{code}_{id}"))
}

fn of_source(source: &Source) -> Step {
    match source {
        Source::Lot(lot) => of("lot", lot),
        Source::Item(item) => of("item", item),
    }
}

fn side_code(side: OneSide) -> &'static str {
    match side {
        OneSide::Piece => "piece",
        OneSide::Film => "film",
    }
}

/// Over all lots that were put together so, or over one group of them.
fn across(by: By, figure: &str, group: Option<Id>) -> Step {
    let whole = format!("across-{figure}_{}", by.code());
    Step(group.map_or(whole.clone(), |first| format!("{whole}_{first}")))
}
