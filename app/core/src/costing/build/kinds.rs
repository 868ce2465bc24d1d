//! The kinds of a build's cost, each down to its entries, seen whole, in some of their parts, or on one side.
//!
//! Labour and overhead by stage, tools by tool, stock by lot or item, then the lines of the journal. A kind without a
//! line is left out: nothing was logged, and a nought would say more than is known.

use super::lines::{CostLine, Group, lines};
use crate::{
    costing::{
        Books, CostKind, Flag, Gap, Hours, Part, Parts, Rule, Statement, Value, books::Bearing,
        one_off::Series, parts::Lens, sides::OneSide, stock::DrawRow,
    },
    journal::{
        Id,
        kinds::{Bearer, Source},
    },
    measure::{Map, Money, Quantity, Unit},
};

/// The lines of one bearer.
pub(super) struct Rows<'a> {
    pub books: &'a Books,
    pub bearing: &'a Bearing,
    /// What it bears itself.
    pub lines: Vec<CostLine>,
    /// Its one-off work, where that goes into a pool of all that will be made with it.
    pub pooled: Vec<CostLine>,
    /// Its share of that pool.
    pub share: Vec<CostLine>,
}

impl<'a> Rows<'a> {
    pub fn of(books: &'a Books, bearer: Bearer) -> Rows<'a> {
        let bearing = books.ledgers.borne_by(bearer);
        let all = lines(books, bearer);
        let (build, series) = match bearer {
            Bearer::Build(build) => (Some(build), books.series_of(build)),
            Bearer::Lot(_) | Bearer::Shop => (None, None),
        };
        let (pooled, lines) = all.into_iter().partition(|line| line.one_off && series.is_some());
        let share = build.zip(series).map(|(build, series)| series.share_lines(build)).unwrap_or_default();
        Rows { books, bearing, lines, pooled, share }
    }

    /// Everything that the bearer bears.
    pub fn parts(&self) -> Parts {
        self.lines.iter().chain(&self.share).fold(Parts::ZERO, |sum, line| sum.plus(line.parts))
    }

    /// What of it is one side's.
    pub fn parts_on(&self, side: OneSide) -> Parts {
        self.lines.iter().chain(&self.share).fold(Parts::ZERO, |sum, line| sum.plus(line.on(Some(side))))
    }

    /// Its draws and returns, in order.
    pub fn draws(&self) -> impl Iterator<Item = &'a DrawRow> + use<'a> {
        let books = self.books;
        self.bearing.draws.iter().filter_map(move |at| books.stock.rows.get(*at))
    }

    /// Expenses, drives and what by-products brought, one-off ones too.
    pub fn direct(&self, lens: Lens) -> Lines {
        let mut all = Lines::default();
        let direct = self.lines.iter().chain(&self.pooled).filter(|line| line.kind == CostKind::Direct);
        direct.filter(|line| line.shows(lens, None)).for_each(|line| all.push(line, lens, None));
        all
    }
}

/// True cost = all parts, by kind; or one side of it.
pub(super) fn true_cost(rows: &Rows, rule: Rule, side: Option<OneSide>) -> Statement {
    let all = rows.lines.iter().chain(&rows.share);
    by_kind(rule, all, Lens::All, side)
}

/// Money parts, by kind: one-off money whole.
pub(super) fn used_up(rows: &Rows) -> Statement {
    let pooled = rows.pooled.iter().map(|line| CostLine {
        kind: CostKind::OneOff,
        group: Group::None,
        ..line.clone()
    });
    let pooled: Vec<CostLine> = pooled.collect();
    by_kind(Rule::UsedUpByKind, rows.lines.iter().chain(&pooled), Lens::Cash, None)
}

fn by_kind<'a>(
    rule: Rule,
    all: impl Iterator<Item = &'a CostLine>,
    lens: Lens,
    side: Option<OneSide>,
) -> Statement {
    let kinds = kinds(all, lens, side)
        .into_iter()
        .map(|(kind, hours, parts)| Part::plus(sum_of(Rule::Kind { kind, hours }, parts)));
    Statement::sum(rule, kinds.collect(), Vec::new(), Vec::new())
}

/// The lines of every kind that has any, in the order of the sheet, with the hours in it.
pub(super) fn kinds<'a>(
    all: impl Iterator<Item = &'a CostLine>,
    lens: Lens,
    side: Option<OneSide>,
) -> Vec<(CostKind, Hours, Lines)> {
    let mut groups: Map<(CostKind, Group), Vec<&CostLine>> = Map::new();
    for line in all.filter(|line| line.shows(lens, side)) {
        groups.entry((line.kind, line.group)).or_default().push(line);
    }
    let mut kinds: Vec<(CostKind, Hours, Lines)> = Vec::new();
    for ((kind, group), lines) in groups {
        if kinds.last().is_none_or(|last| last.0 != kind) {
            kinds.push((kind, Hours::ZERO, Lines::default()));
        }
        let Some((_, hours, of_kind)) = kinds.last_mut() else { continue };
        *hours = lines.iter().fold(*hours, |sum, line| sum.plus(line.hours_on(side)));
        match rule_of(group, &lines, side) {
            None => lines.iter().for_each(|line| of_kind.push(line, lens, side)),
            Some(rule) => {
                let mut of_group = Lines::default();
                lines.iter().for_each(|line| of_group.push(line, lens, side));
                of_kind.parts.push(Part::plus(sum_of(rule, of_group)));
            }
        }
    }
    kinds
}

fn rule_of(group: Group, lines: &[&CostLine], side: Option<OneSide>) -> Option<Rule> {
    let hours = lines.iter().fold(Hours::ZERO, |sum, line| sum.plus(line.hours_on(side)));
    match group {
        Group::None => None,
        Group::Stage(_, stage) => Some(Rule::Stage { stage, hours }),
        Group::Tool(tool) => Some(Rule::Tool { tool, hours: hours.in_hours() }),
        Group::Stock(source) => {
            let quantities = lines.iter().map(|line| line.drawn.and_then(|drawn| drawn.0));
            let mut quantities = quantities;
            let quantity = quantities.try_fold(Quantity::ZERO, |sum, it| Some(sum.plus(it?)));
            let unit = lines.first().and_then(|line| line.drawn).map_or(Unit::Each, |(_, unit)| unit);
            Some(Rule::Drawn { source, quantity, unit })
        }
    }
}

/// Terms of a sum, with what they lack and what is odd about them.
#[derive(Clone, Debug, Default)]
pub(crate) struct Lines {
    pub parts: Vec<Part>,
    pub gaps: Vec<Gap>,
    pub flags: Vec<Flag>,
}

impl Lines {
    fn push(&mut self, line: &CostLine, lens: Lens, side: Option<OneSide>) {
        let value = line.value(lens, side);
        let working = line.working(value.unwrap_or_default());
        self.parts.push(Part::entry(line.entry, value.map(Value::Money), working));
        self.gaps.extend_from_slice(&line.gaps);
        self.flags.extend_from_slice(&line.flags);
    }

    /// A line of the journal. Seen in some of its parts only, one that has none of them is left out.
    pub(crate) fn add(
        &mut self,
        books: &Books,
        entry: Id,
        value: Option<Money>,
        working: super::super::Working,
        gap: Option<Gap>,
        lens: Lens,
    ) {
        let nothing = value.is_none_or(|value| value.is_zero());
        if lens != Lens::All && nothing && (gap.is_none() || value.is_some()) {
            return;
        }
        self.parts.push(Part::entry(entry, value.map(Value::Money), working));
        self.gaps.extend(gap);
        self.flags.extend(books.odd(entry));
    }
}

/// The sum of lines.
pub(crate) fn sum_of(rule: Rule, lines: Lines) -> Statement {
    Statement::sum(rule, lines.parts, lines.gaps, lines.flags)
}

/// What was drawn from one lot or item.
pub(crate) fn drawn(books: &Books, source: Source, draws: &[&DrawRow], lens: Lens) -> Statement {
    let mut lines = Lines::default();
    let mut quantity = Some(Quantity::ZERO);
    for row in draws {
        let value = row.parts.through(lens);
        lines.parts.push(Part::entry(
            row.entry(),
            row.known.then_some(Value::Money(value)),
            row.working(value),
        ));
        lines.gaps.extend_from_slice(&row.gaps);
        lines.flags.extend_from_slice(&row.flags);
        lines.flags.extend(books.odd(row.entry()));
        quantity = quantity.zip(row.signed_quantity()).map(|(sum, it)| sum.plus(it));
    }
    let unit = draws.first().map_or(Unit::Each, |row| row.unit);
    sum_of(Rule::Drawn { source, quantity, unit }, lines)
}

impl Books {
    /// The pool of one-off work that a build shares in; none: it bears its own.
    pub(crate) fn series_of(&self, build: Id) -> Option<&Series> {
        self.series.get(*self.in_series.get(&build)?)
    }
}
