//! Every line of what a bearer bears: one list, from which the sheet, its sides and its bridge are made.

use crate::{
    costing::{
        Books, CostKind, Flag, Gap, Hours, Parts, Working,
        labour::LabourRow,
        parts::Lens,
        sides::{OneSide, Split},
        stock::DrawRow,
        tools::ToolRow,
    },
    journal::{
        Id,
        kinds::{Bearer, Source},
    },
    measure::{Money, Quantity, Unit},
};

/// What lines stand together under a kind, in the order of the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Group {
    /// By themselves.
    None,
    /// Place of the stage in the picker, and the stage.
    Stage(u8, Id),
    Stock(Source),
    Tool(Id),
}

/// A line of the journal, as one term of a cost.
#[derive(Clone, Debug)]
pub(crate) struct CostLine {
    pub kind: CostKind,
    pub group: Group,
    pub entry: Id,
    pub parts: Parts,
    /// What of it is the film's.
    pub film: Parts,
    /// Something can be said of it.
    pub known: bool,
    pub working: Working,
    /// Of a draw: its working goes by the figure that is looked at.
    pub drawn: Option<(Option<Quantity>, Unit)>,
    pub gaps: Vec<Gap>,
    pub flags: Vec<Flag>,
    /// Worked, or in the timber.
    pub hours: Hours,
    pub film_hours: Hours,
    /// Borne by all that will be made with it.
    pub one_off: bool,
}

impl CostLine {
    /// Its parts, on one side or whole.
    pub(crate) fn on(&self, side: Option<OneSide>) -> Parts {
        match side {
            None => self.parts,
            Some(OneSide::Film) => self.film,
            Some(OneSide::Piece) => self.parts.minus(self.film),
        }
    }

    /// Its hours, on one side or whole.
    pub(crate) fn hours_on(&self, side: Option<OneSide>) -> Hours {
        match side {
            None => self.hours,
            Some(OneSide::Film) => self.film_hours,
            Some(OneSide::Piece) => self.hours.minus(self.film_hours),
        }
    }

    /// Its figure; none where nothing can be said.
    pub(crate) fn value(&self, lens: Lens, side: Option<OneSide>) -> Option<Money> {
        self.known.then(|| self.on(side).through(lens))
    }

    /// How that figure was worked out.
    pub(crate) fn working(&self, figure: Money) -> Working {
        match self.drawn {
            Some((quantity, unit)) => super::super::stock::rows::working(quantity, unit, figure, self.hours),
            None => self.working,
        }
    }

    /// Whether it stands in a figure: seen in some of its parts or on one side, a line that has none of them is left out,
    /// but for one that lacks something.
    pub(crate) fn shows(&self, lens: Lens, side: Option<OneSide>) -> bool {
        let nothing = self.on(side).through(lens).is_zero();
        let lacking = !self.known && !self.gaps.is_empty();
        let whole = lens == Lens::All && side.is_none();
        whole || !nothing || (lacking && side != Some(OneSide::Film))
    }
}

/// Every line of a bearer, in the order of the books.
pub(crate) fn lines(books: &Books, bearer: Bearer) -> Vec<CostLine> {
    those(books, bearer, false)
}

/// The lines of one-off work alone, in the same order. Asked of every build of a run whenever books are made, so the
/// others are not made first.
pub(crate) fn one_off_lines(books: &Books, bearer: Bearer) -> Vec<CostLine> {
    those(books, bearer, true)
}

fn those(books: &Books, bearer: Bearer, one_off: bool) -> Vec<CostLine> {
    let bearing = books.ledgers.borne_by(bearer);
    let ledgers = &books.ledgers;
    let wanted = |is: bool| is || !one_off;
    let mut lines = Vec::new();
    for row in bearing.draws.iter().filter(|_| wanted(false)).filter_map(|at| books.stock.rows.get(*at)) {
        lines.push(draw(books, row));
    }
    let expenses = bearing.expenses.iter().filter_map(|at| ledgers.expenses.get(*at));
    for row in expenses.filter(|row| wanted(row.one_off)) {
        let split = Split::of(row.side, ledgers.keys.of_bearer(bearer).split);
        let parts = row.parts();
        lines.push(CostLine {
            one_off: row.one_off,
            ..plain(books, row.entry, CostKind::Direct, parts, split, Working::Amount, row.gap())
        });
    }
    for row in bearing.trips.iter().filter(|_| wanted(false)).filter_map(|at| ledgers.trips.get(*at)) {
        let (parts, gap) = (row.parts(), row.gap());
        let line = plain(books, row.entry, CostKind::Direct, parts, Split::PIECE, row.working(), gap);
        lines.push(CostLine { known: gap.is_none() || !parts.is_zero(), ..line });
    }
    let hours =
        || bearing.labour.iter().filter_map(|at| ledgers.labour.get(*at)).filter(|row| wanted(row.one_off));
    lines.extend(hours().map(|row| labour(books, row)));
    let runs = bearing.tools.iter().filter_map(|at| ledgers.tools.rows.get(*at));
    lines.extend(runs.filter(|row| wanted(row.one_off)).map(|row| tool(books, row)));
    lines.extend(hours().filter_map(|row| overhead(books, row)));
    lines
}

fn plain(
    books: &Books,
    entry: Id,
    kind: CostKind,
    parts: Parts,
    split: Split,
    working: Working,
    gap: Option<Gap>,
) -> CostLine {
    CostLine {
        kind,
        group: Group::None,
        entry,
        parts,
        film: split.part(parts, OneSide::Film),
        known: gap.is_none(),
        working,
        drawn: None,
        gaps: gap.into_iter().collect(),
        flags: books.odd(entry).collect(),
        hours: Hours::ZERO,
        film_hours: Hours::ZERO,
        one_off: false,
    }
}

fn draw(books: &Books, row: &DrawRow) -> CostLine {
    let split = Split::of(row.side, books.ledgers.keys.of_bearer(row.bearer).split);
    let hours = row.parts.own_hours();
    let line = plain(books, row.entry(), row.kind, row.parts, split, Working::Amount, None);
    CostLine {
        group: Group::Stock(row.account),
        known: row.known,
        drawn: Some((row.signed_quantity(), row.unit)),
        gaps: row.gaps.clone(),
        flags: row.flags.iter().copied().chain(books.odd(row.entry())).collect(),
        hours,
        film_hours: split.hours(hours, OneSide::Film),
        ..line
    }
}

fn labour(books: &Books, row: &LabourRow) -> CostLine {
    let hours = Hours::of(row.seconds);
    let line = plain(books, row.entry, CostKind::Labour, row.parts(), row.split, row.working(), row.gap());
    CostLine {
        group: Group::Stage(books.shop.stage_place(row.stage), row.stage),
        known: row.value.is_some(),
        flags: books.odd(row.entry).chain(row.flags()).collect(),
        hours,
        film_hours: row.split.hours(hours, OneSide::Film),
        one_off: row.one_off,
        ..line
    }
}

fn overhead(books: &Books, row: &LabourRow) -> Option<CostLine> {
    let borne = row.overhead;
    let parts = borne.parts();
    if parts.is_zero() && borne.gap.is_none() && borne.flag().is_none() {
        return None;
    }
    let working = borne.working(row.seconds);
    let line = plain(books, row.entry, CostKind::Overhead, parts, row.split, working, borne.gap);
    Some(CostLine {
        group: Group::Stage(books.shop.stage_place(row.stage), row.stage),
        film: borne.part(row.split, OneSide::Film),
        known: borne.gap.is_none() || !parts.is_zero(),
        flags: borne.flag().into_iter().collect(),
        hours: Hours::of(row.seconds),
        film_hours: row.split.hours(Hours::of(row.seconds), OneSide::Film),
        one_off: row.one_off,
        ..line
    })
}

fn tool(books: &Books, row: &ToolRow) -> CostLine {
    let parts = row.parts();
    let line = plain(books, row.entry, CostKind::Tools, parts, row.split, row.working(), None);
    CostLine {
        group: Group::Tool(row.tool),
        known: row.gaps.is_empty() || !parts.is_zero(),
        gaps: row.gaps.clone(),
        flags: row.flags.clone(),
        hours: row.run.hours(),
        film_hours: row.split.hours(row.run.hours(), OneSide::Film),
        one_off: row.one_off,
        ..line
    }
}
