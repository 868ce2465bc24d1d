//! Own hours of a build: those worked on it, its share of one-off ones, and those in the timber it drew, shown apart.

use super::{kinds::Rows, lines::CostLine};
use crate::costing::{CostKind, Hours, Part, Rule, Statement, Value, parts::Lens};

/// Hours of people who are not paid.
pub(super) fn own(rows: &Rows) -> Statement {
    let worked = rows.lines.iter().filter(|line| line.kind == CostKind::Labour);
    let mut parts = vec![of_kind(CostKind::Labour, worked)];
    if rows.share.iter().any(|line| !line.parts.own_hours().is_zero()) {
        parts.push(of_kind(CostKind::OneOff, rows.share.iter()));
    }
    parts.push(Part::plus(in_the_timber(rows)));
    Statement::hours_sum(Rule::OwnHours, parts, Vec::new(), Vec::new())
}

/// What they are worth at their rates.
pub(super) fn labour(rows: &Rows) -> Statement {
    let all = rows.lines.iter().chain(&rows.share).filter(|line| line.shows(Lens::OwnLabour, None));
    let parts = all.map(|line| {
        let value = line.parts.own_labour();
        Part::entry(line.entry, Some(Value::Money(value)), line.working(value))
    });
    let hours = rows.parts().own_hours();
    Statement::sum(Rule::Kind { kind: CostKind::Labour, hours }, parts.collect(), Vec::new(), Vec::new())
}

fn of_kind<'a>(kind: CostKind, lines: impl Iterator<Item = &'a CostLine>) -> Part {
    let mut hours = Hours::ZERO;
    let mut parts = Vec::new();
    for line in lines.filter(|line| !line.parts.own_hours().is_zero()) {
        hours = hours.plus(line.parts.own_hours());
        parts.push(Part::entry(line.entry, Some(Value::Hours(line.parts.own_hours())), line.working));
    }
    Part::plus(Statement::hours_sum(Rule::Kind { kind, hours }, parts, Vec::new(), Vec::new()))
}

fn in_the_timber(rows: &Rows) -> Statement {
    let draws = rows.draws().filter(|row| !row.parts.own_hours().is_zero());
    let parts = draws.map(|row| {
        let hours = row.parts.own_hours();
        Part::entry(row.entry(), Some(Value::Hours(hours)), row.working(row.parts.own_labour()))
    });
    Statement::hours_sum(Rule::InTheTimber, parts.collect(), Vec::new(), Vec::new())
}
