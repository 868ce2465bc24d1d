//! The journal as a table: a row an entry, in time. A struck line is in it, without figures: it counts for nothing.
//!
//! `money`: what the line came to. Of work and draws what they cost, of a lot and a receipt what was paid, of an income what
//! arrived, of a tool and a blade the price, of a monthly cost a month of it.

use super::{
    Sources, Writer,
    names::{Names, code},
};
use crate::{
    costing::Amount,
    exchange::csv::Cell,
    journal::{
        Body, Id,
        kinds::{Bearer, Draw, FreeDay, Income, Lot, Side, Stretch, Take, ToolHours},
        listing::{self, State},
    },
    measure::{Dec, InOrder, Money, Quantity, Seconds, Unit},
};

pub(super) const HEAD: &[&str] = &[
    "entry", "state", "kind", "day", "from", "to", "for", "side", "what", "person", "stage", "hours",
    "quantity", "unit", "money_¤", "note",
];

pub(super) fn rows(from: Sources, to: Writer, build: Option<Id>) -> Vec<Vec<Cell>> {
    let listed = match build {
        Some(build) => listing::listing(from.journal, from.shop, Bearer::Build(build)),
        None => listing::all(from.journal, from.shop),
    };
    let amounts = match build {
        Some(build) => from.books.amounts(Bearer::Build(build)),
        None => from.books.all_amounts(),
    };
    let mut rows: Vec<_> =
        listed.into_iter().filter_map(|at| Some((at, line(from, at.entry, build)?))).collect();
    rows.order_by_key(|(at, _)| (at.day, at.time, at.entry));
    let cells = |(at, mut line): (listing::Listed, Line)| {
        let amount = amounts.of(at.entry).filter(|_| line.counts);
        match amount {
            Some(Amount::Worked { seconds, value, .. }) => (line.hours, line.money) = (Some(seconds), value),
            Some(Amount::Used(cost) | Amount::Paid(cost)) => line.money = cost,
            None => {}
        }
        let counts = line.counts;
        let moment = |at: Option<_>| Cell::plain(at.map(|at| from.shop.zone.when(at)));
        vec![
            Cell::plain(Some(at.entry)),
            Cell::text(line.state),
            Cell::text(&line.kind),
            Cell::plain(Some(at.day)),
            moment(at.time),
            moment(line.until),
            Cell::text(&line.of),
            Cell::text(&line.side.map(code).unwrap_or_default()),
            Cell::text(&line.what),
            Cell::text(line.person),
            Cell::text(line.stage),
            to.hours(line.hours.filter(|_| counts)),
            to.quantity(line.quantity.filter(|_| counts)),
            Cell::text(
                line.unit.filter(|_| line.quantity.is_some() && counts).map(Unit::code).unwrap_or_default(),
            ),
            to.money(line.money.filter(|_| counts)),
            Cell::text(&line.note),
        ]
    };
    rows.into_iter().map(cells).collect()
}

#[derive(Default)]
struct Line<'a> {
    state: &'static str,
    counts: bool,
    kind: String,
    until: Option<crate::measure::Instant>,
    of: String,
    side: Option<Side>,
    what: String,
    person: &'a str,
    stage: &'a str,
    hours: Option<Seconds>,
    quantity: Option<Quantity>,
    unit: Option<Unit>,
    money: Option<Money>,
    note: String,
}

fn line<'a>(from: Sources<'a>, entry: Id, build: Option<Id>) -> Option<Line<'a>> {
    let state = listing::standing(from.journal, entry)?.state;
    let (state, counts) = match state {
        State::Stands => ("stands", true),
        State::Struck { .. } => ("struck", false),
        State::Newer => ("newer", false),
        State::Unreadable => ("unreadable", false),
    };
    let kind = from.journal.shown(entry)?.kind.to_string();
    let said = from.journal.last_body(entry).map(|body| said(from, entry, body));
    let mut line = Line { state, counts, kind, ..said.unwrap_or_default() };
    if let Some(build) = build.filter(|_| line.of.is_empty()) {
        line.of = Names(from.shop).build(build).to_owned();
    }
    Some(line)
}

fn said<'a>(from: Sources<'a>, entry: Id, body: &'a Body) -> Line<'a> {
    let names = Names(from.shop);
    let of = |bearer: Bearer| names.bearer(bearer).to_owned();
    let plain = |what: &str| Line { what: what.to_owned(), ..Line::default() };
    match body {
        Body::Stretch(it) => stretch(names, it),
        Body::Draw(it) => draw(names, it),
        Body::Expense(it) => Line { of: of(it.bearer), side: Some(it.side), ..plain(&it.what) },
        Body::Lot(it) => lot(from, entry, it),
        Body::Sort(it) => Line {
            of: names.lot(it.lot).to_owned(),
            quantity: it.good.quantity(),
            unit: from.shop.lots.get(&it.lot).map(|lot| lot.unit),
            ..plain(names.lot(it.lot))
        },
        Body::Shelf(it) => plain(names.source(it.of)),
        Body::ByProduct(it) => Line { of: of(it.of), money: it.amount.money(), ..plain(&it.what) },
        Body::Receipt(it) => Line {
            of: it.bearer.map(of).unwrap_or_default(),
            money: it.total.and_then(Dec::money),
            ..plain(it.whence.as_deref().unwrap_or_default())
        },
        Body::Trip(it) => Line {
            of: names.bearers(it.shares.iter().map(|share| share.bearer)),
            ..plain(&format!("{} km", it.km.plain()))
        },
        Body::Income(it) => income(from, entry, it),
        Body::Note(it) => Line { of: it.bearer.map(of).unwrap_or_default(), ..plain(&it.text) },
        Body::Photo(it) => Line {
            of: it.bearer.map(of).unwrap_or_default(),
            ..plain(it.caption.as_deref().unwrap_or_default())
        },
        Body::Setting(_)
        | Body::Person(_)
        | Body::Stage(_)
        | Body::Build(_)
        | Body::Item(_)
        | Body::Tool(_)
        | Body::ToolHours(_)
        | Body::Blade(_)
        | Body::MonthlyCost(_)
        | Body::Made(_)
        | Body::HandOver(_)
        | Body::BuildState(_)
        | Body::Drying(_)
        | Body::Retired(_)
        | Body::Same(_)
        | Body::Film(_)
        | Body::SeriesEnd(_)
        | Body::Step(_)
        | Body::BuyLine(_)
        | Body::Cull(_)
        | Body::Find(_)
        | Body::Part(_)
        | Body::Resource(_)
        | Body::FreeDay(_)
        | Body::Shot(_)
        | Body::Take(_)
        | Body::CardCopied(_)
        | Body::Chapter(_)
        | Body::Outsider(_)
        | Body::Due(_) => thing(names, body),
    }
}

fn lot<'a>(from: Sources<'a>, entry: Id, it: &Lot) -> Line<'a> {
    let lot = from.shop.lots.get(&entry);
    let name = lot.map_or(&it.name, |lot| &lot.name);
    Line {
        of: it.for_build.map(|build| Names(from.shop).build(build).to_owned()).unwrap_or_default(),
        quantity: it.rough.quantity(),
        unit: Some(it.unit),
        money: lot.and_then(|lot| lot.till()),
        note: it.whence.clone().unwrap_or_default(),
        what: name.clone(),
        ..Line::default()
    }
}

fn income<'a>(from: Sources<'a>, entry: Id, it: &Income) -> Line<'a> {
    let arrived = from.shop.incomes.iter().find(|income| income.order.entry == entry);
    Line {
        of: Names(from.shop).bearers(it.shares.iter().map(|share| share.bearer)),
        side: Some(it.side),
        money: arrived.and_then(|it| it.arrived()),
        note: code(it.kind),
        what: it.what.clone().unwrap_or_default(),
        ..Line::default()
    }
}

fn draw<'a>(names: Names<'a>, it: &Draw) -> Line<'a> {
    let taken = it.quantity.quantity();
    Line {
        of: names.bearer(it.bearer).to_owned(),
        side: it.side,
        what: names.source(it.from).to_owned(),
        quantity: if it.returns.is_some() { taken.map(Quantity::negated) } else { taken },
        unit: Some(it.unit),
        note: it.note.clone().unwrap_or_default(),
        ..Line::default()
    }
}

fn stretch<'a>(names: Names<'a>, it: &Stretch) -> Line<'a> {
    Line {
        until: it.to.map(|to| to.instant),
        of: names.bearer(it.bearer).to_owned(),
        side: Some(it.side),
        person: names.person(it.person),
        stage: names.stage(it.stage),
        note: it.note.clone().unwrap_or_default(),
        ..Line::default()
    }
}

fn tool_hours<'a>(names: Names<'a>, it: &ToolHours) -> Line<'a> {
    Line {
        of: names.bearer(it.bearer).to_owned(),
        stage: names.stage(it.stage),
        quantity: it.hours.quantity(),
        what: names.tool(it.tool).to_owned(),
        ..Line::default()
    }
}

fn free_day<'a>(names: Names<'a>, it: &FreeDay) -> Line<'a> {
    let note = if it.extra.is_empty() { "off" } else { "extra" };
    let (person, what) = (names.person(it.person), it.day.to_string());
    Line { person, what, note: note.to_owned(), ..Line::default() }
}

fn take<'a>(names: Names<'a>, it: &Take) -> Line<'a> {
    let note = it.clip.clone().unwrap_or_default();
    let Some(shot) = names.0.shots.get(&it.shot) else { return Line { note, ..Line::default() } };
    let of = names.build(shot.body.build).to_owned();
    Line { of, what: shot.body.what.clone(), note, ..Line::default() }
}

/// People, tools and settings, and what is said of a build.
fn thing<'a>(names: Names<'a>, body: &Body) -> Line<'a> {
    let built = |build: Id| Line { of: names.build(build).to_owned(), ..Line::default() };
    let plain = |what: &str| Line { what: what.to_owned(), ..Line::default() };
    let count = |count: u32| Quantity::from_decimal(count.into());
    match body {
        Body::Setting(it) => Line { note: it.value.clone(), ..plain(&code(it.key)) },
        Body::Person(it) => plain(&it.name),
        Body::Stage(it) => Line { side: Some(it.side), ..plain(&it.name) },
        Body::Build(it) => Line { of: it.title.clone(), ..plain(&it.title) },
        Body::Item(it) => Line { unit: Some(it.unit), ..plain(&it.name) },
        Body::Tool(it) => Line { money: it.price.and_then(Dec::money), ..plain(&it.name) },
        Body::ToolHours(it) => tool_hours(names, it),
        Body::Blade(it) => {
            Line { money: it.cost.money(), of: names.tool(it.tool).to_owned(), ..plain(&it.what) }
        }
        Body::MonthlyCost(it) => Line { money: it.a_month.money(), side: Some(it.side), ..plain(&it.what) },
        Body::Made(it) => Line { quantity: count(it.good), unit: Some(Unit::Each), ..built(it.build) },
        Body::HandOver(it) => {
            Line { quantity: count(it.count), unit: Some(Unit::Each), note: code(it.how), ..built(it.build) }
        }
        Body::BuildState(it) => Line { note: code(it.state), ..built(it.build) },
        Body::Drying(it) => plain(it.item.map(|item| names.item(item)).unwrap_or_default()),
        Body::Retired(it) => plain(names.thing(it.what)),
        Body::Same(it) => plain(names.item(it.is)),
        Body::Film(it) => Line { note: it.address.clone().unwrap_or_default(), ..built(it.build) },
        Body::SeriesEnd(it) => built(it.build),
        Body::Step(it) => Line { stage: names.stage(it.stage), what: it.title.clone(), ..built(it.build) },
        Body::BuyLine(it) => Line {
            of: it.for_build.map(|build| names.build(build).to_owned()).unwrap_or_default(),
            quantity: it.quantity.and_then(Dec::quantity),
            unit: it.unit,
            money: it.price.and_then(Dec::money),
            ..plain(it.item.map_or(&it.what, |item| names.item(item)))
        },
        Body::Cull(it) => Line {
            of: names.lot(it.lot).to_owned(),
            quantity: it.quantity.quantity(),
            unit: names.0.lots.get(&it.lot).map(|lot| lot.unit),
            ..plain(names.lot(it.lot))
        },
        Body::Find(it) => plain(&it.name),
        Body::Part(it) => Line { what: it.name.clone(), ..built(it.build) },
        Body::Resource(it) => Line { quantity: count(it.count), unit: Some(Unit::Each), ..plain(&it.name) },
        Body::FreeDay(it) => free_day(names, it),
        Body::Shot(it) => Line { what: it.what.clone(), ..built(it.build) },
        Body::Take(it) => take(names, it),
        Body::CardCopied(it) => built(it.build),
        Body::Chapter(it) => Line { what: it.title.clone(), ..built(it.build) },
        Body::Outsider(it) => Line { note: code(it.kind), ..plain(&it.name) },
        Body::Due(it) => {
            Line { what: it.words.clone().unwrap_or_default(), note: code(it.what), ..built(it.build) }
        }
        Body::Stretch(_)
        | Body::Draw(_)
        | Body::Expense(_)
        | Body::Lot(_)
        | Body::Sort(_)
        | Body::Shelf(_)
        | Body::ByProduct(_)
        | Body::Receipt(_)
        | Body::Trip(_)
        | Body::Income(_)
        | Body::Note(_)
        | Body::Photo(_) => Line::default(),
    }
}
