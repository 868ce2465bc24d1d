//! What builds cost as a table: a row a leaf of the true cost, in the order of the sheet.
//!
//! Figures are those of the sheet, apportioned under its true cost: the rows of a build add up to what the phone shows.
//! `own_hours`: worked on it, or in the timber; `quantity` of a tool: hours that it ran.

use super::{Sources, Writer, names::Names};
use crate::{
    costing::{CostKind, Hours, Part, PartOf, Rule, Statement, Working, present},
    exchange::csv::Cell,
    journal::{Body, Id, kinds::Source},
    measure::{InOrder, Quantity, Shown, Unit},
};

pub(super) const HEAD: &[&str] =
    &["build", "kind", "group", "day", "entry", "what", "quantity", "unit", "money_¤", "own_hours"];

pub(super) fn rows(from: Sources, to: Writer, build: Option<Id>) -> Vec<Vec<Cell>> {
    let mut builds: Vec<_> =
        from.shop.builds.iter().filter(|(id, _)| build.is_none_or(|it| it == **id)).collect();
    builds.order_by_key(|(_, build)| build.order);
    let mut rows = Vec::new();
    for (id, build) in builds {
        let whole = from.books.true_cost(*id);
        let shown = present::alone(&whole, to.minor).shown;
        let mut sheet = Sheet { from, to, build: &build.title, rows: &mut rows };
        sheet.leaves(&whole, shown, None, "");
    }
    rows
}

struct Sheet<'a, 'b> {
    from: Sources<'a>,
    to: Writer<'a>,
    build: &'a str,
    rows: &'b mut Vec<Vec<Cell>>,
}

impl<'a> Sheet<'a, '_> {
    /// Every line of the journal below a figure, in order.
    fn leaves(&mut self, of: &Statement, shown: Option<Shown>, kind: Option<CostKind>, group: &'a str) {
        let sizes = present::under(of, shown, self.to.minor).parts;
        for (part, shown) in of.parts.iter().zip(sizes) {
            match &part.of {
                PartOf::Statement(below) => {
                    let kind = if let Rule::Kind { kind, .. } = below.rule { Some(kind) } else { kind };
                    self.leaves(below, shown, kind, self.group(&below.rule).unwrap_or(group));
                }
                PartOf::Entry { entry, working, .. } => {
                    self.leaf(*entry, working, part, shown, (kind, group))
                }
            }
        }
    }

    fn leaf(
        &mut self,
        entry: Id,
        working: &Working,
        part: &Part,
        shown: Option<Shown>,
        of: (Option<CostKind>, &str),
    ) {
        let (kind, group) = of;
        let (quantity, unit, own) = how_much(working);
        let day = self.from.journal.body(entry).map(|body| body.on().day(&self.from.shop.zone));
        self.rows.push(vec![
            Cell::text(self.build),
            Cell::text(kind.map(CostKind::code).unwrap_or_default()),
            Cell::text(group),
            Cell::plain(day),
            Cell::plain(Some(entry)),
            Cell::text(&self.what(entry)),
            self.to.quantity(quantity),
            Cell::text(quantity.and(unit).unwrap_or_default()),
            Cell::plain(part.value().and(shown).map(|it| it.text())),
            self.to.quantity(own.filter(|own| !own.is_zero()).map(Hours::in_hours)),
        ]);
    }

    /// The stage, lot, item or tool that lines stand together under.
    fn group(&self, rule: &Rule) -> Option<&'a str> {
        let names = Names(self.from.shop);
        if let Rule::Stage { stage, .. } = rule {
            Some(names.stage(*stage))
        } else if let Rule::Drawn { source, .. } = rule {
            Some(names.source(*source))
        } else if let Rule::Tool { tool, .. } = rule {
            Some(names.tool(*tool))
        } else {
            None
        }
    }

    fn what(&self, entry: Id) -> String {
        let names = Names(self.from.shop);
        match self.from.journal.body(entry) {
            Some(Body::Stretch(it)) => names.person(it.person).to_owned(),
            Some(Body::Draw(it)) => names.source(it.from).to_owned(),
            Some(Body::Expense(it)) => it.what.clone(),
            Some(Body::ByProduct(it)) => it.what.clone(),
            Some(Body::Receipt(it)) => it.whence.clone().unwrap_or_default(),
            Some(Body::Trip(it)) => names.bearers(it.shares.iter().map(|share| share.bearer)),
            Some(Body::ToolHours(it)) => names.tool(it.tool).to_owned(),
            Some(Body::Lot(_)) => names.source(Source::Lot(entry)).to_owned(),
            _ => String::new(),
        }
    }
}

/// Quantity with its unit, and the own hours in it.
fn how_much(working: &Working) -> (Option<Quantity>, Option<&'static str>, Option<Hours>) {
    const HOUR: Option<&str> = Some("h");
    match working {
        Working::Hours { seconds, paid, .. } => {
            let hours = Hours::of(*seconds);
            (Some(hours.in_hours()), HOUR, (!paid).then_some(hours))
        }
        Working::Draw { quantity, unit, hours, .. } => (*quantity, Some(Unit::code(*unit)), Some(*hours)),
        Working::Trip { km, .. } => (*km, Some("km"), None),
        Working::Overhead { seconds, .. } => (Some(Hours::of(*seconds).in_hours()), HOUR, None),
        Working::Tool { seconds, duty, .. } => {
            (Hours::of(*seconds).in_hours().times(Quantity::from_micros(duty.micros())), HOUR, None)
        }
        Working::Price { .. }
        | Working::OneOff { .. }
        | Working::Received { .. }
        | Working::Amount
        | Working::Share { .. }
        | Working::BoughtInstead { .. } => (None, None, None),
    }
}
