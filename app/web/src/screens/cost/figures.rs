//! Figures as a sheet shows them: rows of a sum, pieces of a bar, what is missing and what is odd.
//!
//! Shown figures come from core's `present`, so every sum on view adds up. Shares are for drawing only.

use super::say::{self, Say};
use crate::dom::prelude::*;
use crate::{
    parts::{
        growth::{Level as Bar, Piece},
        hatch::Hatch,
        sum_row::{Leads, SumRow, SumText},
    },
    shell::Place,
    words::{
        cost as words,
        gaps::{self, Told},
    },
};
use benchslate_core::{
    costing::{
        CostKind, Gap, OneSide, Part, PartOf, Path, Rule, Sign, Statement, Step, Value, present::Level,
    },
    journal::Id,
    measure::Shown,
};

/// A row of a sum, plain.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Row {
    pub sign: &'static str,
    pub label: String,
    pub working: Option<String>,
    pub figure: String,
    pub lacks: bool,
    pub href: Option<String>,
}

/// Where the figures of a sheet open.
#[derive(Clone, Copy)]
pub struct At<'a> {
    /// The build or lot that the sheet is of.
    pub of: Id,
    /// The figure that the rows are parts of.
    pub path: &'a Path,
}

impl At<'_> {
    pub fn href(self, step: Step) -> String {
        Place::Opened(self.of, self.path.to(step).to_string()).href()
    }
}

/// The terms of a figure as rows.
pub fn rows(say: Say, level: &Level, at: At) -> Vec<Row> {
    let parts = level.statement.parts.iter().zip(&level.parts).enumerate();
    let mut rows: Vec<Row> =
        parts.map(|(place, (part, shown))| row(say, place == 0, part, *shown, at)).collect();
    if let Some(by) = divided_by(say, &level.statement.rule) {
        // What stands beside the quotient is not divided with the rest.
        let each = |part: &Part| part.statement().is_some_and(|it| it.rule == Rule::OneOffEach);
        let beside = level.statement.parts.iter().position(each);
        rows.insert(beside.unwrap_or(rows.len()).min(rows.len()), by);
    }
    rows
}

/// What the terms of a figure are divided by, where it is no sum of them.
fn divided_by(say: Say, rule: &Rule) -> Option<Row> {
    let (label, figure) = match rule {
        Rule::Item { good } if *good > 0 => (words::good_ones(), good.to_string()),
        Rule::HourEarned { hours } if !hours.is_zero() => (words::own_hours_and_timber(), say.hours(*hours)),
        Rule::BuildPaidAnHour { hours }
        | Rule::PaidAnHour { hours, .. }
        | Rule::AcrossAnHour { hours, .. }
            if !hours.is_zero() =>
        {
            (words::own_hours_in_timber(), say.hours(*hours))
        }
        _ => return None,
    };
    Some(Row { sign: "\u{f7}", label: label.to_owned(), figure, ..Row::default() })
}

/// One term. A minus before it, or in it, stands in the column of signs.
pub fn row(say: Say, first: bool, part: &Part, shown: Option<Shown>, at: At) -> Row {
    let below = shown.is_some_and(Shown::is_negative);
    let shown = shown.map(|shown| if below { shown.negated() } else { shown });
    let sign = match (part.sign, below) {
        (Sign::Plus, true) | (Sign::Minus, false) => "\u{2212}",
        (Sign::Plus, false) | (Sign::Minus, true) => {
            if first {
                ""
            } else {
                "+"
            }
        }
    };
    let figure = say.figure(shown, part.value());
    let lacks = figure.is_none();
    match &part.of {
        PartOf::Statement(statement) => Row {
            sign,
            label: say.name(&statement.rule),
            working: say.about(statement),
            figure: figure.unwrap_or_else(|| missing(statement).to_owned()),
            lacks,
            href: (!statement.parts.is_empty()).then(|| at.href(statement.rule.step())),
        },
        PartOf::Entry { entry, working, .. } => {
            let line = say.line(*entry, working);
            let opens = say.opens(*entry, working).filter(|_| !lacks);
            Row {
                sign,
                label: line.label,
                working: line.working,
                figure: figure.unwrap_or_else(|| words::not_known().to_owned()),
                lacks,
                href: Some(opens.map_or_else(|| Place::Entry(*entry).href(), |rule| at.href(rule.step()))),
            }
        }
    }
}

/// What stands in the place of a figure that can't be said.
pub fn missing(statement: &Statement) -> &'static str {
    // What isn't kept at all is missing everywhere; what is missing here comes first.
    let here = statement.gaps.iter().find(|gap| !matches!(gap, Gap::NotKept { .. }));
    here.or(statement.gaps.first()).map_or_else(words::not_known, gaps::short)
}

/// A row drawn. Words of a part are cloned into it, so that a sheet redraws only what has changed.
pub fn drawn(row: Row) -> AnyView {
    let text = SumText {
        sign: row.sign.to_owned(),
        label: row.label,
        working: row.working,
        figure: row.figure,
        lacks: row.lacks,
    };
    let leads = row.href.map_or(Leads::Nowhere, Leads::To);
    view! { <SumRow text leads/> }
}

/// The bar of a level, the piece that was opened edged.
pub fn bar(say: Say, level: &Level, opened: Option<&Level>, last: bool) -> Bar {
    let statement = level.statement;
    let label = match say.how_much(&statement.rule) {
        Some(much) => words::so_much(&say.name(&statement.rule), &much),
        None => say.name(&statement.rule),
    };
    let figure = say.figure(level.shown, statement.value).unwrap_or_else(|| missing(statement).to_owned());
    let sizes: Vec<f64> = statement.parts.iter().map(|part| size(part.value())).collect();
    let whole: f64 = sizes.iter().sum();
    let hatch = |part: &Part| match &part.of {
        // What is taken off is not hatched: it is not there.
        PartOf::Statement(_) if part.sign == Sign::Minus => Hatch::Plain,
        PartOf::Statement(Statement { rule: Rule::Side { side, .. }, .. }) => match side {
            OneSide::Piece => Hatch::Piece,
            OneSide::Film => Hatch::Film,
        },
        PartOf::Statement(Statement { rule: Rule::Batch, .. }) => Hatch::Piece,
        // Stages stand under labour, and under what the shop costs by their hours.
        PartOf::Statement(_) if say::kind(&statement.rule, say.view.shop) == Some(CostKind::Overhead) => {
            Hatch::Overhead
        }
        PartOf::Statement(below) => say::kind(&below.rule, say.view.shop)
            .or_else(|| say::kind(&statement.rule, say.view.shop))
            .map_or(Hatch::Plain, hatch),
        PartOf::Entry { .. } => say::kind(&statement.rule, say.view.shop).map_or(Hatch::Plain, hatch),
    };
    let pieces = statement.parts.iter().zip(&sizes).map(|(part, size)| {
        let (text, quarters) = match &part.of {
            PartOf::Entry { entry, working, .. } if last => {
                let line = say.line(*entry, working);
                (line.short, line.quarters)
            }
            PartOf::Entry { .. } | PartOf::Statement(_) => (None, 0),
        };
        Piece { share: if whole > 0.0 { size / whole } else { 0.0 }, kind: hatch(part), text, quarters }
    });
    let opened = opened.and_then(|below| place_of(statement, &below.statement.rule));
    let fold_name = words::fold_to(&say.within(&statement.rule), &figure);
    Bar { label, figure, fold_name, pieces: pieces.collect(), opened }
}

/// Where a figure stands among the parts of another.
pub fn place_of(statement: &Statement, below: &Rule) -> Option<usize> {
    let step = below.step();
    statement.parts.iter().position(|part| match &part.of {
        PartOf::Statement(it) => it.rule.step() == step,
        PartOf::Entry { entry, .. } => matches!(below, Rule::Draw { entry: it } if it == entry),
    })
}

/// Hatching by kind.
pub fn hatch(kind: CostKind) -> Hatch {
    match kind {
        CostKind::Salvaged => Hatch::Salvaged,
        CostKind::Bought => Hatch::Bought,
        CostKind::Offcut => Hatch::Offcut,
        CostKind::Consumables => Hatch::Consumables,
        CostKind::Direct => Hatch::Direct,
        CostKind::Supplied => Hatch::Supplied,
        CostKind::Labour => Hatch::Labour,
        CostKind::Tools => Hatch::Tools,
        CostKind::Overhead => Hatch::Overhead,
        CostKind::OneOff => Hatch::OneOff,
    }
}

/// How large it is drawn.
pub fn size(value: Option<Value>) -> f64 {
    match value {
        Some(Value::Money(money) | Value::PerHour(money)) => {
            f64::try_from(money.to_decimal()).map_or(0.0, f64::abs)
        }
        Some(Value::Hours(hours)) => f64::try_from(hours.in_hours().to_decimal()).map_or(0.0, f64::abs),
        None => 0.0,
    }
}

/// What a figure lacks, then what is odd about it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Remarks {
    pub lacks: Vec<Told>,
    pub odd: Vec<Told>,
}

impl Remarks {
    pub fn of(say: Say, statement: &Statement) -> Remarks {
        let (shop, tongue) = (say.view.shop, say.view.tongue);
        Remarks {
            lacks: statement.gaps.iter().map(|it| gaps::gap(it, shop)).collect(),
            odd: statement.flags.iter().map(|it| gaps::flag(it, shop, tongue)).collect(),
        }
    }

    pub fn is_empty(&self) -> bool {
        self.lacks.is_empty() && self.odd.is_empty()
    }
}

/// Both as rows, each leading to where it is put right.
pub fn remarks(remarks: Remarks) -> AnyView {
    let group = |title: &'static str, told: Vec<Told>| {
        (!told.is_empty()).then(|| {
            let rows = told.into_iter().map(remark).collect::<Vec<_>>();
            view! { <h2 class="group">{title}</h2>{rows} }
        })
    };
    view! { {group(words::not_in_it(), remarks.lacks)}{group(words::odd(), remarks.odd)} }
}

fn remark(told: Told) -> AnyView {
    let text = SumText { label: told.says, working: Some(told.how.to_owned()), ..SumText::default() };
    let leads = told.place.map_or(Leads::Nowhere, |place| Leads::To(place.href()));
    view! { <SumRow text leads signed=false/> }
}
