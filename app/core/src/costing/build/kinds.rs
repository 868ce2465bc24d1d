//! The kinds of a build's cost, each down to its entries, seen whole or in some of their parts.
//!
//! Labour by stage, stock by lot or item, then the lines of the journal. A kind without a line is left
//! out: nothing was logged, and a nought would say more than is known.

use crate::{
    costing::{
        Books, CostKind, Flag, Gap, Hours, Part, Parts, Rule, Statement, Value, books::Bearing, parts::Lens,
        stock::DrawRow,
    },
    journal::{Id, kinds::Source},
    measure::{Money, Quantity},
};
use std::collections::BTreeMap;

/// The rows of one bearer.
#[derive(Clone, Copy)]
pub(super) struct Rows<'a> {
    pub books: &'a Books,
    pub bearing: &'a Bearing,
}

/// True cost = all parts, by kind.
pub(super) fn true_cost(rows: &Rows) -> Statement {
    rows.by_kind(Rule::TrueCost, Lens::All)
}

/// Money parts, by kind.
pub(super) fn used_up(rows: &Rows) -> Statement {
    rows.by_kind(Rule::UsedUpByKind, Lens::Cash)
}

impl<'a> Rows<'a> {
    /// Everything that the bearer bears.
    pub fn parts(&self) -> Parts {
        let Rows { books, bearing } = *self;
        let labour =
            bearing.labour.iter().filter_map(|at| books.ledgers.labour.get(*at)).map(|row| row.parts());
        let trips = bearing.trips.iter().filter_map(|at| books.ledgers.trips.get(*at)).map(|row| row.parts());
        let expenses = bearing.expenses.iter().filter_map(|at| books.ledgers.expenses.get(*at));
        let draws = self.draws().map(|row| row.parts);
        let all = labour.chain(trips).chain(expenses.map(|row| row.parts())).chain(draws);
        all.fold(Parts::ZERO, Parts::plus)
    }

    /// Its draws and returns, in order.
    pub fn draws(&self) -> impl Iterator<Item = &'a DrawRow> + use<'a> {
        let books = self.books;
        self.bearing.draws.iter().filter_map(move |at| books.stock.rows.get(*at))
    }

    fn by_kind(&self, rule: Rule, lens: Lens) -> Statement {
        let kinds = self
            .kinds(lens)
            .into_iter()
            .map(|(kind, hours, parts)| Part::plus(sum_of(Rule::Kind { kind, hours }, parts)));
        Statement::sum(rule, kinds.collect(), Vec::new(), Vec::new())
    }

    /// The lines of every kind that has any, in the order of the sheet, with the hours in it.
    pub fn kinds(&self, lens: Lens) -> Vec<(CostKind, Hours, Lines)> {
        let mut kinds: BTreeMap<CostKind, (Hours, Lines)> = BTreeMap::new();
        for ((kind, source), draws) in self.by_source(lens) {
            let (hours, lines) = kinds.entry(kind).or_default();
            for row in &draws {
                *hours = hours.plus(row.parts.own_hours());
            }
            lines.parts.push(Part::plus(drawn(self.books, source, &draws, lens)));
        }
        let direct = self.direct(lens);
        if !direct.parts.is_empty() {
            kinds.insert(CostKind::Direct, (Hours::ZERO, direct));
        }
        let (hours, labour) = self.labour(lens);
        if !labour.parts.is_empty() {
            kinds.insert(CostKind::Labour, (hours, labour));
        }
        kinds.into_iter().map(|(kind, (hours, lines))| (kind, hours, lines)).collect()
    }

    /// Draws by kind and source; those that add nothing to a part of the cost are left out of it.
    fn by_source(&self, lens: Lens) -> BTreeMap<(CostKind, Source), Vec<&'a DrawRow>> {
        let mut sources: BTreeMap<(CostKind, Source), Vec<&DrawRow>> = BTreeMap::new();
        for row in self.draws().filter(|row| lens == Lens::All || !row.parts.through(lens).is_zero()) {
            sources.entry((row.kind, row.account)).or_default().push(row);
        }
        sources
    }

    /// Expenses and drives.
    pub fn direct(&self, lens: Lens) -> Lines {
        let mut lines = Lines::default();
        let ledgers = &self.books.ledgers;
        for row in self.bearing.expenses.iter().filter_map(|at| ledgers.expenses.get(*at)) {
            let value = row.cost.map(|_| row.parts().through(lens));
            lines.add(self.books, row.entry, value, super::super::Working::Amount, row.gap(), lens);
        }
        for row in self.bearing.trips.iter().filter_map(|at| ledgers.trips.get(*at)) {
            let parts = row.parts();
            let value = (row.gap().is_none() || !parts.is_zero()).then(|| parts.through(lens));
            lines.add(self.books, row.entry, value, row.working(), row.gap(), lens);
        }
        lines
    }

    /// Hours by stage: the stages in the order of the picker.
    fn labour(&self, lens: Lens) -> (Hours, Lines) {
        let mut stages: BTreeMap<(u8, Id), (Hours, Lines)> = BTreeMap::new();
        let mut all = Hours::ZERO;
        for row in self.bearing.labour.iter().filter_map(|at| self.books.ledgers.labour.get(*at)) {
            let value = row.value.map(|_| row.parts().through(lens));
            let place = self.books.shop.stage_place(row.stage);
            let mut line = Lines::default();
            line.add(self.books, row.entry, value, row.working(), row.gap(), lens);
            if line.parts.is_empty() {
                continue;
            }
            line.flags.extend(row.flags());
            let (hours, lines) = stages.entry((place, row.stage)).or_default();
            let worked = Hours::of(row.seconds);
            (*hours, all) = (hours.plus(worked), all.plus(worked));
            lines.append(line);
        }
        let mut lines = Lines::default();
        for ((_, stage), (hours, of_stage)) in stages {
            lines.parts.push(Part::plus(sum_of(Rule::Stage { stage, hours }, of_stage)));
        }
        (all, lines)
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

    fn append(&mut self, more: Lines) {
        self.parts.extend(more.parts);
        self.gaps.extend(more.gaps);
        self.flags.extend(more.flags);
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
    let unit = draws.first().map_or(crate::measure::Unit::Each, |row| row.unit);
    sum_of(Rule::Drawn { source, quantity, unit }, lines)
}
