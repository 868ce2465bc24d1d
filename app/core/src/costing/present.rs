//! Figures as a screen shows them: rounded once at the top, then apportioned down.
//!
//! The root is rounded by itself; its parts are apportioned under it, theirs under them, so every sum on
//! view adds up and opening a figure keeps the value that was tapped. Source: our own rule,
//! DEVELOPERS.md § Figures. Not here: the currency's sign and grouping.

use super::{Part, Path, Rule, Sign, Statement, Value};
use crate::measure::{Money, Shown};

/// A figure opened: what it shows, and what each part shows, in their order.
#[derive(Clone, Debug, PartialEq)]
pub struct Level<'a> {
    /// The figure.
    pub statement: &'a Statement,
    /// As shown; none for hours and for what can't be said.
    pub shown: Option<Shown>,
    /// Each part as shown: its own size, the sign beside it. None likewise.
    pub parts: Vec<Option<Shown>>,
}

/// A figure that stands alone, with its parts under it. `minor`: digits after the point.
pub fn alone(statement: &Statement, minor: u8) -> Level<'_> {
    let shown = match statement.value {
        Some(Value::Money(money) | Value::PerHour(money)) => Some(Shown::alone(money, minor)),
        Some(Value::Hours(_)) | None => None,
    };
    under(statement, shown, minor)
}

/// The parts of a figure that is shown so, in their order.
pub fn below(statement: &Statement, shown: Shown) -> Vec<Option<Shown>> {
    under(statement, Some(shown), shown.minor()).parts
}

/// From a root down to the end of an address, the root first. None: the address opens nothing here.
pub fn open<'a>(root: &'a Statement, path: &Path, minor: u8) -> Option<Vec<Level<'a>>> {
    let (_, rest) = path.steps.split_first()?;
    path.walk(root)?;
    let mut levels = vec![alone(root, minor)];
    for step in rest {
        let level = levels.last()?;
        let parts = level.statement.parts.iter().zip(&level.parts);
        let mut below = parts.filter_map(|(part, shown)| Some((part.statement()?, *shown)));
        let (statement, shown) = below.find(|(statement, _)| statement.rule.step() == *step)?;
        levels.push(under(statement, shown, minor));
    }
    Some(levels)
}

pub(crate) fn under(statement: &Statement, shown: Option<Shown>, minor: u8) -> Level<'_> {
    let parts = match shown.filter(|_| adds_up(&statement.rule)) {
        Some(shown) => apportioned(&statement.parts, shown),
        None => statement.parts.iter().map(|part| by_itself(part, minor)).collect(),
    };
    Level { statement, shown, parts }
}

/// Parts without a value take nothing and show nothing.
fn apportioned(parts: &[Part], whole: Shown) -> Vec<Option<Shown>> {
    let exact: Vec<Money> = parts.iter().map(|part| part.signed_money().unwrap_or_default()).collect();
    let shown = whole.parts(&exact);
    let sized = parts.iter().zip(shown).map(|(part, shown)| {
        part.signed_money()?;
        Some(match part.sign {
            Sign::Plus => shown,
            Sign::Minus => shown.negated(),
        })
    });
    sized.collect()
}

fn by_itself(part: &Part, minor: u8) -> Option<Shown> {
    match part.value()? {
        Value::Money(money) | Value::PerHour(money) => Some(Shown::alone(money, minor)),
        Value::Hours(_) => None,
    }
}

/// Whether a figure is the sum of its parts; the others divide.
fn adds_up(rule: &Rule) -> bool {
    !matches!(
        rule,
        Rule::PaidAnHour { .. }
            | Rule::AcrossAnHour { .. }
            | Rule::HourEarned { .. }
            | Rule::Item { .. }
            | Rule::BuildPaidAnHour { .. }
    )
}
