//! The money of a build in plain words.

use super::{
    Figure, against,
    pieces::{self, Pieces},
};
use crate::{
    screens::{cost::Say, journal::line, months::Row},
    shell::{Place, desk::View},
    words::{earned as words, gaps, journal as journal_words, parts as list},
};
use benchslate_core::{
    costing::{Books, BuildCost, Gap, Part, PartOf, Path, Rule, Statement, Working, present},
    journal::{
        Id,
        kinds::{Bearer, State},
        shop::Income,
    },
    measure::{Money, Shown, minutes},
};

/// All of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Look {
    pub title: String,
    /// Where it stands, beside the title.
    pub stands: String,
    pub state: State,
    /// Closed at what, and by today's knowledge.
    pub closed: Option<(String, String, Option<String>)>,
    /// Lines that arrived, and their sum.
    pub lines: Vec<Row>,
    pub net: String,
    /// Tax that came with it; none of it, no row.
    pub tax: Vec<Row>,
    /// An hour earned, and one good item; none before anything is written down of either.
    pub hour: Option<(Figure, Figure)>,
    pub open: Vec<Open>,
    /// Where more than one is still expected.
    pub open_sum: Option<String>,
    pub pieces: Pieces,
    /// It stands above what it will fetch.
    pub above: Option<Row>,
    /// The outlook while it is open, steps, parts, and what became of the plan.
    pub plan: Vec<Row>,
    /// What closing would freeze.
    pub freezes: String,
}

/// A line that is still expected.
#[derive(Clone, Debug, PartialEq)]
pub struct Open {
    pub entry: Id,
    pub label: String,
    pub working: Option<String>,
    /// This build's share of the rest.
    pub rest: String,
    /// The whole rest, as it is received.
    pub whole: String,
}

/// None: no such build.
pub fn look(books: &Books, view: &View, build: Id) -> Option<Look> {
    let title = view.shop.builds.get(&build)?.title.clone();
    let today = view.shop.zone.day(books.as_of);
    let cost = books.build_cost(build);
    let state = view.shop.state_of(build, today);
    let lines = lines(view, &cost.earned.net);
    let tax = cost.earned.tax.money().filter(|tax| !tax.is_zero());
    let open = open(view, &cost.earned.expected);
    let known = !lines.is_empty() || !open.is_empty() || cost.items.worked() > 0;
    Some(Look {
        title,
        stands: stands(view, state, view.shop.closed_on(build, today)),
        state,
        closed: closed(books, view, &cost, build, state),
        net: money(view, cost.earned.net.money()),
        tax: tax.map(|tax| tax_row(view, tax)).into_iter().collect(),
        hour: known.then(|| (hour(view, &cost, build), item(view, &cost, build))),
        open_sum: (open.len() > 1).then(|| money(view, cost.earned.expected.money())),
        pieces: pieces::look(view, build, &cost, books.as_of),
        above: cost.above.as_ref().filter(|_| state != State::Closed).map(|it| above(view, it, build)),
        plan: plan(books, view, &cost, (build, state)),
        freezes: freezes(books, view, build),
        lines,
        open,
    })
}

fn plan(books: &Books, view: &View, cost: &BuildCost, (build, state): (Id, State)) -> Vec<Row> {
    let (look_ahead, steps) = outlook(view, cost, build);
    let ahead = (state != State::Closed).then_some([look_ahead, steps]).into_iter().flatten();
    ahead.chain(against::row(Say { books, view }, build)).chain([parts(view, build)]).collect()
}

/// Money used up and to come beyond what comes in; opens to both.
fn above(view: &View, it: &Statement, build: Id) -> Row {
    Row {
        label: words::above_fetch().to_owned(),
        working: words::above_fetch_note().to_owned(),
        figure: money(view, it.money()),
        lacks: true,
        href: Some(Place::Opened(build, path(it)).href()),
    }
}

/// The outlook where it can be said, and what it goes by: the steps.
fn outlook(view: &View, cost: &BuildCost, build: Id) -> (Row, Row) {
    let path = Path { steps: vec![cost.outlook.rule.step()] };
    let figure = cost.outlook.money();
    let steps = Place::Steps(build).href();
    let plan = cost.outlook.part(|rule| matches!(rule, Rule::ToCome { .. }));
    let hours = plan.and_then(|it| match it.rule {
        Rule::ToCome { hours } => Some(view.tongue.hours(minutes::alone(hours.seconds()))),
        _ => None,
    });
    let row = Row {
        label: words::outlook().to_owned(),
        working: words::outlook_note().to_owned(),
        figure: figure.map_or_else(|| words::no_steps().to_owned(), |it| view.tongue.money(it)),
        href: figure.map(|_| Place::Opened(build, path.to_string()).href()),
        ..Row::default()
    };
    let left = Row {
        label: words::steps().to_owned(),
        figure: hours.unwrap_or_default(),
        href: Some(steps),
        ..Row::default()
    };
    (row, left)
}

fn parts(view: &View, build: Id) -> Row {
    let (left, all) = view.shop.pieces_of(build);
    let cut = all.saturating_sub(left);
    Row {
        label: list::parts_list().to_owned(),
        figure: if all == 0 { String::new() } else { list::so_far(cut, all) },
        href: Some(Place::Parts(build).href()),
        ..Row::default()
    }
}

pub fn money(view: &View, money: Option<Money>) -> String {
    money.map(|money| view.tongue.money(money)).unwrap_or_default()
}

fn stands(view: &View, state: State, closed: Option<benchslate_core::measure::Day>) -> String {
    let day = closed.map(|day| view.tongue.day(day));
    words::stands(state, day.as_deref())
}

fn closed(
    books: &Books,
    view: &View,
    cost: &BuildCost,
    build: Id,
    state: State,
) -> Option<(String, String, Option<String>)> {
    if state != State::Closed {
        return None;
    }
    let as_closed = cost.true_cost.money()?;
    let known = Books::by_todays_knowledge(view.shop, books.as_of).build_cost(build).true_cost.money()?;
    let note = (known != as_closed).then(|| words::by_todays_knowledge(&view.tongue.money(known)));
    Some((words::closed_at().to_owned(), view.tongue.money(as_closed), note))
}

/// What arrived, each with its working; shown so that they add up.
fn lines(view: &View, net: &Statement) -> Vec<Row> {
    let level = present::alone(net, view.tongue.minor());
    let rows = net.parts.iter().zip(&level.parts).filter_map(|(part, shown)| line(view, part, *shown));
    rows.collect()
}

fn line(view: &View, part: &Part, shown: Option<Shown>) -> Option<Row> {
    let PartOf::Entry { entry, working, .. } = &part.of else { return None };
    let Working::Received { amount, tax, fee, share } = working else { return None };
    if amount.is_zero() {
        return None;
    }
    let some = |it: &Money| (!it.is_zero()).then(|| view.tongue.money(*it));
    let working = words::received(
        &view.tongue.money(*amount),
        some(tax).as_deref(),
        some(fee).as_deref(),
        (share.0 != share.1).then_some(*share),
    );
    Some(Row {
        label: line::what(view, *entry),
        working,
        figure: shown.map(|it| view.tongue.shown(it)).unwrap_or_default(),
        lacks: false,
        href: Some(Place::Entry(*entry).href()),
    })
}

fn tax_row(view: &View, tax: Money) -> Row {
    Row {
        label: words::tax_in_it().to_owned(),
        working: words::owed().to_owned(),
        figure: view.tongue.money(tax),
        ..Row::default()
    }
}

fn open(view: &View, expected: &Statement) -> Vec<Open> {
    let level = present::alone(expected, view.tongue.minor());
    let rows = expected.parts.iter().zip(&level.parts).filter_map(|(part, shown)| {
        let PartOf::Entry { entry, .. } = &part.of else { return None };
        let income = view.shop.incomes.iter().find(|it| it.order.entry == *entry)?;
        Some(Open {
            entry: *entry,
            label: line::what(view, *entry),
            working: so_far(view, income),
            rest: shown.map(|it| view.tongue.shown(it)).unwrap_or_default(),
            whole: money(view, income.open()),
        })
    });
    rows.collect()
}

/// By when, and what is in already: a deposit.
fn so_far(view: &View, income: &Income) -> Option<String> {
    let due = income.due.map(|day| words::due(&view.tongue.day(day)));
    let net = income.net();
    let deposit =
        (!net.is_zero()).then(|| words::in_so_far(&view.tongue.money(net), &money(view, income.expected)));
    match (due, deposit) {
        (Some(due), Some(deposit)) => Some(journal_words::comma(&due, &deposit)),
        (due, deposit) => due.or(deposit),
    }
}

fn hour(view: &View, cost: &BuildCost, build: Id) -> Figure {
    figure(view, &cost.hour_earned, path(&cost.hour_earned), build)
}

fn item(view: &View, cost: &BuildCost, build: Id) -> Figure {
    figure(view, &cost.batch.item, path(&cost.batch.item), build)
}

fn figure(view: &View, of: &Statement, path: String, build: Id) -> Figure {
    let href = Some(Place::Opened(build, path).href());
    match of.money() {
        Some(it) => (view.tongue.money(it), None, false, href),
        None => {
            let gap = of.gaps.iter().find(|gap| !matches!(gap, Gap::NotKept { .. })).or(of.gaps.first());
            (gap.map(gaps::short).unwrap_or_default().to_owned(), None, true, None)
        }
    }
}

fn freezes(books: &Books, view: &View, build: Id) -> String {
    let drawn = books.drawn_by(Bearer::Build(build));
    let cost = books.build_cost(build).drawn.total();
    words::draws(drawn.len(), &view.tongue.money(cost))
}

fn path(of: &Statement) -> String {
    Path { steps: vec![of.rule.step()] }.to_string()
}
