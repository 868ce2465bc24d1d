//! A figure with its working, down to the entries.
//!
//! A parent equals the signed sum of its parts exactly; only what is said of an hour or of
//! one item divides. Gaps and flags of the parts are carried up. No words here.

use super::{Flag, Gap, Hours, Rule, Working};
use crate::measure::InOrder;
use crate::{journal::Id, measure::Money};

/// What a figure says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Value {
    /// Money.
    Money(Money),
    /// Hours of work.
    Hours(Hours),
    /// Money an hour, rounded once to 10⁻⁶.
    PerHour(Money),
}

/// Added or taken off.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sign {
    /// Added.
    Plus,
    /// Taken off.
    Minus,
}

/// What a part is: a figure that opens further, or a line of the journal.
#[derive(Clone, Debug, PartialEq)]
pub enum PartOf {
    /// Opens further.
    Statement(Statement),
    /// A line of the journal.
    Entry {
        /// Which.
        entry: Id,
        /// What it adds; none where a gap stands for it.
        value: Option<Value>,
        /// How it was worked out.
        working: Working,
    },
}

/// One term of a sum.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Added or taken off.
    pub sign: Sign,
    /// What it is.
    pub of: PartOf,
}

/// A figure, its parts, what it lacks and what is odd about it.
#[derive(Clone, Debug, PartialEq)]
pub struct Statement {
    /// What it is.
    pub rule: Rule,
    /// Missing only where nothing can be said.
    pub value: Option<Value>,
    /// The terms, in the order of the sheet.
    pub parts: Vec<Part>,
    /// What it lacks, parts included; each once.
    pub gaps: Vec<Gap>,
    /// What is odd, parts included; each once.
    pub flags: Vec<Flag>,
}

impl Part {
    pub(crate) fn plus(of: Statement) -> Part {
        Part { sign: Sign::Plus, of: PartOf::Statement(of) }
    }

    pub(crate) fn minus(of: Statement) -> Part {
        Part { sign: Sign::Minus, of: PartOf::Statement(of) }
    }

    pub(crate) fn entry(entry: Id, value: Option<Value>, working: Working) -> Part {
        Part { sign: Sign::Plus, of: PartOf::Entry { entry, value, working } }
    }

    /// What it adds, its sign apart.
    pub fn value(&self) -> Option<Value> {
        match &self.of {
            PartOf::Statement(statement) => statement.value,
            PartOf::Entry { value, .. } => *value,
        }
    }

    /// What it adds in money, its sign taken in; none where it isn't money or a gap stands for it.
    pub fn signed_money(&self) -> Option<Money> {
        match (self.sign, self.value()?) {
            (Sign::Plus, Value::Money(money)) => Some(money),
            (Sign::Minus, Value::Money(money)) => Some(money.negated()),
            (_, Value::Hours(_) | Value::PerHour(_)) => None,
        }
    }

    /// The line of the journal, if it is one.
    pub fn entry_id(&self) -> Option<Id> {
        match &self.of {
            PartOf::Entry { entry, .. } => Some(*entry),
            PartOf::Statement(_) => None,
        }
    }

    /// The figure that opens further, if it is one.
    pub fn statement(&self) -> Option<&Statement> {
        match &self.of {
            PartOf::Statement(statement) => Some(statement),
            PartOf::Entry { .. } => None,
        }
    }
}

impl Statement {
    /// The money it says.
    pub fn money(&self) -> Option<Money> {
        match self.value? {
            Value::Money(money) | Value::PerHour(money) => Some(money),
            Value::Hours(_) => None,
        }
    }

    /// The hours it says.
    pub fn hours(&self) -> Option<Hours> {
        match self.value? {
            Value::Hours(hours) => Some(hours),
            Value::Money(_) | Value::PerHour(_) => None,
        }
    }

    /// The first part that is a figure by this rule.
    pub fn part(&self, rule: impl Fn(&Rule) -> bool) -> Option<&Statement> {
        self.parts.iter().filter_map(Part::statement).find(|statement| rule(&statement.rule))
    }

    pub(crate) fn add_gaps(&mut self, gaps: &[Gap]) {
        self.gaps.extend_from_slice(gaps);
        self.gaps.order();
        self.gaps.dedup();
    }

    pub(crate) fn add_flags(&mut self, flags: &[Flag]) {
        self.flags.extend_from_slice(flags);
        self.flags.order();
        self.flags.dedup();
    }

    /// A sum of money. A part without a value adds nothing; nothing at all and a gap: no value.
    pub(crate) fn sum(rule: Rule, parts: Vec<Part>, gaps: Vec<Gap>, flags: Vec<Flag>) -> Statement {
        let values = parts.iter().filter_map(Part::signed_money);
        let sum = values.fold(None, |sum: Option<Money>, it| Some(sum.unwrap_or_default().plus(it)));
        let statement = Statement::carrying(rule, parts, gaps, flags);
        let value = sum.or(statement.gaps.is_empty().then_some(Money::ZERO)).map(Value::Money);
        Statement { value, ..statement }
    }

    /// A sum of hours.
    pub(crate) fn hours_sum(rule: Rule, parts: Vec<Part>, gaps: Vec<Gap>, flags: Vec<Flag>) -> Statement {
        let sum = parts.iter().fold(Hours::ZERO, |sum, part| match (part.sign, part.value()) {
            (Sign::Plus, Some(Value::Hours(hours))) => sum.plus(hours),
            (Sign::Minus, Some(Value::Hours(hours))) => sum.minus(hours),
            (_, Some(Value::Money(_) | Value::PerHour(_)) | None) => sum,
        });
        Statement { value: Some(Value::Hours(sum)), ..Statement::carrying(rule, parts, gaps, flags) }
    }

    /// Without a value; gaps and flags of the parts gathered.
    pub(crate) fn carrying(rule: Rule, parts: Vec<Part>, gaps: Vec<Gap>, flags: Vec<Flag>) -> Statement {
        let (mut all_gaps, mut all_flags) = (gaps, flags);
        for statement in parts.iter().filter_map(Part::statement) {
            all_gaps.extend_from_slice(&statement.gaps);
            all_flags.extend_from_slice(&statement.flags);
        }
        let mut statement = Statement { rule, value: None, parts, gaps: all_gaps, flags: all_flags };
        statement.add_gaps(&[]);
        statement.add_flags(&[]);
        statement
    }
}
