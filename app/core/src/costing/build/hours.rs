//! Own hours of a build: those worked on it, and those that sit in the timber it drew, shown apart.

use super::kinds::Rows;
use crate::costing::{CostKind, Hours, Part, Rule, Statement, Value};

/// Hours of people who are not paid.
pub(super) fn own(rows: &Rows) -> Statement {
    let ledgers = &rows.books.ledgers;
    let labour = rows.bearing.labour.iter().filter_map(|at| ledgers.labour.get(*at));
    let worked: Vec<Part> = labour
        .filter(|row| !row.paid)
        .map(|row| Part::entry(row.entry, Some(Value::Hours(Hours::of(row.seconds))), row.working()))
        .collect();
    let sum = worked.iter().filter_map(Part::value).fold(Hours::ZERO, |sum, value| match value {
        Value::Hours(hours) => sum.plus(hours),
        Value::Money(_) | Value::PerHour(_) => sum,
    });
    let rule = Rule::Kind { kind: CostKind::Labour, hours: sum };
    let parts = vec![
        Part::plus(Statement::hours_sum(rule, worked, Vec::new(), Vec::new())),
        Part::plus(in_the_timber(rows)),
    ];
    Statement::hours_sum(Rule::OwnHours, parts, Vec::new(), Vec::new())
}

fn in_the_timber(rows: &Rows) -> Statement {
    let draws = rows.draws().filter(|row| !row.parts.own_hours().is_zero());
    let parts = draws.map(|row| {
        let hours = row.parts.own_hours();
        Part::entry(row.entry(), Some(Value::Hours(hours)), row.working(row.parts.own_labour()))
    });
    Statement::hours_sum(Rule::InTheTimber, parts.collect(), Vec::new(), Vec::new())
}
