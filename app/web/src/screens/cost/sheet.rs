//! The cost sheet: true cost, an hour earned, salvage saved; the row to the bridge; cost by kind to scale.

use super::{
    beside::Opened,
    figures::{self, At, Remarks, Row},
    missing,
    say::Say,
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText, Leading, RowLink, SideAnswer},
        core_column::{CoreColumn, Layer},
        hatch::Hatch,
        sheet::{Above, Below, Head, Read, Sheet},
        sum_row::{Leads, Sums},
    },
    screens::out,
    shell::{
        Desk, Place, Tab,
        desk::{Phase, View},
        frame::Places,
    },
    words::{cost as words, gaps},
};
use benchslate_core::measure::InOrder;
use benchslate_core::{
    costing::{
        Books, BuildCost, CostKind, Gap, OneSide, Part, Path, Rule, Statement,
        present::{self, Level},
    },
    journal::{Id, kinds::State},
    measure::Shown,
};

/// What a build cost.
#[component]
pub fn CostSheet(of: Id) -> impl IntoView {
    let build = of;
    let desk = Desk::here();
    let cost = Memo::new(move |_| desk.books(|books, view| look(books, view, build)));
    let title = Signal::derive(move || match cost.read().as_ref() {
        Some(cost) => cost.title.clone(),
        // Until the journal is read there may well be such a build.
        None if desk.phase.get() == Phase::Ready => words::no_build().to_owned(),
        None => String::new(),
    });
    let below = Signal::derive(move || cost.read().as_ref().map(below));
    let empty = Memo::new(move |_| cost.read().as_ref().is_some_and(|cost| cost.empty));
    // On a wide screen a kind opens beside the column: the one that was tapped, else the largest.
    let (wide, tapped) = (RwSignal::new(false), RwSignal::new(None::<CostKind>));
    let chosen = Memo::new(move |_| {
        let largest = || cost.read().as_ref().and_then(|cost| cost.largest);
        wide.get().then(|| tapped.get().or_else(largest)).flatten()
    });
    let all = move || match cost.get() {
        _ if desk.phase.get() != Phase::Ready => ().draw(),
        None => missing::no_build(),
        Some(cost) if cost.empty => view! { {missing::nothing_yet()}{out::to_publishing(build)} },
        Some(cost) => whole(cost, wide.get().then_some(Choice { chosen: chosen.get(), tapped })),
    };
    view! {
        <Sheet>
            <Head title=title note=Signal::derive(move || cost.read().as_ref().map(|cost| cost.state.clone())) tight=true/>
            <Above><Read name=words::true_cost().to_owned() below=below>{all}</Read></Above>
            <Below>
                <Opened of=build kind=chosen wide=wide/>
                {move || empty.get().then(|| missing::first_acts(build))}
                <Places cell=1 of_build=Signal::stored(Some((build, Some(Tab::Cost))))/>
            </Below>
        </Sheet>
    }
}

/// The sheet in plain words.
#[derive(Clone, Debug, PartialEq)]
struct Cost {
    build: Id,
    title: String,
    /// Beside the title: how it stands.
    state: String,
    empty: bool,
    figure: String,
    lacks: bool,
    note: String,
    /// To the true cost opened.
    href: String,
    hour: Side,
    saved: Side,
    /// None where no money was in it at all.
    spent_and_used: Option<String>,
    bridge: String,
    /// To what came in, the items, and closing.
    money: String,
    kinds: Vec<Kind>,
    /// The largest of them that opens.
    largest: Option<CostKind>,
    /// Sides, and what one good item cost.
    more: Vec<Row>,
    remarks: Remarks,
}

/// One of the two cells under the true cost.
#[derive(Clone, Debug, PartialEq)]
struct Side {
    figure: String,
    lacks: bool,
    red: bool,
    note: Option<String>,
    href: Option<String>,
}

/// Which kind is opened beside the column, and what a tap on another sets.
#[derive(Clone, Copy)]
struct Choice {
    chosen: Option<CostKind>,
    tapped: RwSignal<Option<CostKind>>,
}

/// A kind of cost: its layer and its row.
#[derive(Clone, Debug, PartialEq)]
struct Kind {
    of: CostKind,
    kind: Hatch,
    label: &'static str,
    figure: String,
    lacks: bool,
    size: f64,
    href: Option<String>,
}

fn look(books: &Books, view: &View, build: Id) -> Option<Cost> {
    let title = view.shop.builds.get(&build)?.title.clone();
    let (say, cost) = (Say { books, view }, books.build_cost(build));
    let whole = present::alone(&cost.true_cost, view.tongue.minor());
    let at = Path { steps: vec![Rule::TrueCost.step()] };
    let figure = say.figure(whole.shown, cost.true_cost.value);
    let mut remarks = Remarks::of(say, &cost.true_cost);
    // Kinds that are not kept yet have rows of their own.
    remarks.lacks = told(&cost.true_cost).map(|gap| gaps::gap(gap, view.shop)).collect();
    let kinds = kinds(say, &whole, At { of: build, path: &at });
    let opening = kinds.iter().filter(|kind| kind.href.is_some());
    let largest = opening.max_by(|a, b| a.size.total_cmp(&b.size)).map(|kind| kind.of);
    let nothing_spent = cost.spent().is_none_or(|spent| spent.parts.is_empty());
    Some(Cost {
        build,
        title,
        state: state(view, books, build),
        empty: cost.true_cost.parts.is_empty() && nothing_spent && remarks.is_empty(),
        lacks: figure.is_none(),
        figure: figure.unwrap_or_else(|| figures::missing(&cost.true_cost).to_owned()),
        note: in_it(&cost),
        href: Place::Opened(build, at.to_string()).href(),
        hour: hour_earned(say, &cost, build),
        saved: salvage_saved(say, &cost, build),
        spent_and_used: spent_and_used(say, &cost),
        bridge: Place::Build(build, Tab::Spent).href(),
        money: Place::Money(build).href(),
        kinds,
        largest,
        more: more(say, &cost, build),
        remarks,
    })
}

fn told(statement: &Statement) -> impl Iterator<Item = &Gap> {
    statement.gaps.iter().filter(|gap| !matches!(gap, Gap::NotKept { .. }))
}

/// What is in it beside the money that was paid, and how many entries it lacks.
fn in_it(cost: &BuildCost) -> String {
    let parts = &cost.parts;
    let worked = !parts.own_hours().is_zero() || !parts.paid_hours().is_zero();
    let what = [
        (worked, words::hours()),
        // Where more is in it than that, they go with the rest.
        (
            !parts.vehicle().is_zero() && parts.tools().is_zero() && parts.overhead().is_zero(),
            words::drives(),
        ),
        (!parts.tools().is_zero(), words::tools()),
        (!parts.overhead().is_zero(), words::the_shop()),
        (!parts.supplied().is_zero(), words::gifts()),
    ];
    let what: Vec<&str> = what.into_iter().filter(|(there, _)| *there).map(|(_, word)| word).collect();
    let mut text = words::in_it(&what);
    let lacking = told(&cost.true_cost).count();
    if lacking > 0 {
        text.push_str("; ");
        text.push_str(&words::not_all(lacking));
    }
    text
}

/// What an hour earned; before anything comes in, the hours that it would be divided by.
fn hour_earned(say: Say, cost: &BuildCost, build: Id) -> Side {
    let hours = cost.own_hours.hours().filter(|hours| !hours.is_zero());
    let shown = present::alone(&cost.hour_earned, say.view.tongue.minor()).shown;
    let root = if shown.is_some() { &cost.hour_earned } else { &cost.own_hours };
    let path = Path { steps: vec![root.rule.step()] };
    let figure = say.figure(shown, None);
    Side {
        lacks: figure.is_none(),
        red: shown.is_some_and(Shown::is_negative),
        figure: figure.unwrap_or_else(|| figures::missing(&cost.hour_earned).to_owned()),
        note: hours.map(|hours| words::of_hours(&say.hours(hours), shown.is_some())),
        // Before anything is written down of what comes in, the cell leads to where that is done.
        href: match (cost.earned.kept, hours) {
            (false, _) => Some(Place::Money(build).href()),
            (true, Some(_)) => Some(Place::Opened(build, path.to_string()).href()),
            (true, None) => None,
        },
    }
}

/// With own time at its rate, over every lot that it drew.
fn salvage_saved(say: Say, cost: &BuildCost, build: Id) -> Side {
    let Some(saving) = &cost.saving else {
        let figure = words::nothing_salvaged().to_owned();
        return Side { figure, lacks: true, red: false, note: None, href: None };
    };
    let shown = present::alone(&saving.at_rate, say.view.tongue.minor()).shown;
    let figure = say.figure(shown, None);
    Side {
        lacks: figure.is_none(),
        red: shown.is_some_and(Shown::is_negative),
        note: figure.is_some().then(|| words::at_your_rate().to_owned()),
        figure: figure.unwrap_or_else(|| figures::missing(&saving.at_rate).to_owned()),
        href: Some(Place::Saving(build).href()),
    }
}

/// Closed on which day, paused, or so far.
fn state(view: &View, books: &Books, build: Id) -> String {
    let last = view.shop.zone.day(books.as_of);
    match view.shop.state_on(build, last) {
        Some((State::Closed, day)) => words::closed(&view.tongue.day(day)),
        Some((State::Paused, day)) => words::paused(&view.tongue.day(day)),
        Some((State::Begun | State::Reopened, _)) | None => words::so_far().to_owned(),
    }
}

/// Piece and film, and one good item: out of sight until there is something of it.
fn more(say: Say, cost: &BuildCost, build: Id) -> Vec<Row> {
    let minor = say.view.tongue.minor();
    let mut rows = Vec::new();
    let film = cost.sides.parts.iter().filter_map(Part::statement).any(|it| {
        matches!(it.rule, Rule::Side { side: OneSide::Film, .. })
            && it.value.is_some()
            && !it.parts.is_empty()
    });
    if film {
        let path = Path { steps: vec![cost.sides.rule.step()] };
        rows.extend(figures::rows(say, &present::alone(&cost.sides, minor), At { of: build, path: &path }));
    }
    let items = &cost.items;
    let many = say.view.shop.builds.get(&build).is_some_and(|it| it.items > 1 || it.repeat_of.is_some());
    if many || items.worked() > 1 {
        let item = &cost.batch.item;
        let shown = present::alone(item, minor).shown;
        let figure = say.figure(shown, None);
        rows.push(Row {
            label: words::item().to_owned(),
            working: Some(words::of_worked(items.good, items.worked())),
            lacks: figure.is_none(),
            href: figure
                .is_some()
                .then(|| Place::Opened(build, Path { steps: vec![item.rule.step()] }.to_string()).href()),
            figure: figure.unwrap_or_else(|| figures::missing(item).to_owned()),
            sign: "",
        });
    }
    rows
}

/// Both as they stand in the bridge.
fn spent_and_used(say: Say, cost: &BuildCost) -> Option<String> {
    let path = Path { steps: vec![Rule::FromUsedUp.step(), Rule::UsedUp.step()] };
    let levels = present::open(&cost.bridge, &path, say.view.tongue.minor())?;
    let used = levels.last()?;
    let mut terms = used.statement.parts.iter().filter_map(Part::statement);
    if terms.all(|term| term.parts.is_empty()) {
        return None;
    }
    let text = |shown, statement: Option<&Statement>| {
        let value = statement.and_then(|it| it.value);
        say.figure(shown, value).unwrap_or_else(|| words::not_known().to_owned())
    };
    let spent = text(used.parts.first().copied().flatten(), cost.spent());
    Some(words::spent_and_used(&spent, &text(used.shown, Some(used.statement))))
}

fn kinds(say: Say, whole: &Level, at: At) -> Vec<Kind> {
    let parts = whole.statement.parts.iter().zip(&whole.parts);
    let mut kinds: Vec<Kind> = parts
        .filter_map(|(part, shown)| {
            let statement = part.statement()?;
            let Rule::Kind { kind, .. } = statement.rule else { return None };
            let row = figures::row(say, true, part, *shown, at);
            let mut figure = row.sign.to_owned();
            figure.push_str(&row.figure);
            let size = if row.sign.is_empty() { figures::size(part.value()) } else { 0.0 };
            let (hatch, label) = (figures::hatch(kind), words::kind(kind));
            Some(Kind { of: kind, kind: hatch, label, figure, lacks: row.lacks, size, href: row.href })
        })
        .collect();
    for gap in &whole.statement.gaps {
        if let Gap::NotKept { kind } = gap {
            let (hatch, label, figure) =
                (figures::hatch(*kind), words::kind(*kind), gaps::short(gap).to_owned());
            kinds.push(Kind { of: *kind, kind: hatch, label, figure, lacks: true, size: 0.0, href: None });
        }
    }
    kinds.order_by_key(|kind| kind.of);
    kinds
}

fn below(cost: &Cost) -> String {
    let more = if cost.remarks.is_empty() { words::more_kinds() } else { words::more_missing() };
    more.to_owned()
}

fn whole(cost: Cost, choice: Option<Choice>) -> AnyView {
    let text = AnswerText {
        label: words::true_cost().to_owned(),
        note: Some(cost.note),
        figure: cost.figure.clone(),
        lacks: cost.lacks,
    };
    let sum: f64 = cost.kinds.iter().map(|kind| kind.size).sum();
    let layer = |kind: Kind| Layer {
        kind: kind.kind,
        label: kind.label.to_owned(),
        figure: kind.figure,
        lacks: kind.lacks,
        share: if sum > 0.0 { kind.size / sum } else { 0.0 },
        chosen: choice.is_some_and(|it| it.chosen == Some(kind.of)),
        leads: match choice {
            Some(Choice { tapped, .. }) if kind.href.is_some() => {
                Leads::Tap(Callback::new(move |()| tapped.set(Some(kind.of))))
            }
            _ => leads(kind.href),
        },
    };
    let layers: Vec<Layer> = cost.kinds.into_iter().map(layer).collect();
    let core = (!layers.is_empty()).then(|| view! { <CoreColumn layers total=cost.figure/> });
    let to = cost.bridge;
    let bridge = cost.spent_and_used.map(|label| {
        view! { <RowLink label end=words::bridge().to_owned() ruled=true leads=Leads::To(to)/> }
    });
    let more = cost.more.into_iter().map(figures::drawn).collect::<Vec<_>>();
    view! {
        <div class="cost-two">
            <div>
                <Leading name=words::leading_name().to_owned()>
                    <Answer text leads=Leads::To(cost.href)/>
                    {side(words::hour_earned(), cost.hour)}
                    {side(words::salvage_saved(), cost.saved)}
                </Leading>
                {bridge}
            </div>
            <div class="core-side">{core}</div>
            <div>
                {(!more.is_empty()).then(|| view! { <Sums>{more}</Sums> })}
                <RowLink label=words::the_money().to_owned() leads=Leads::To(cost.money)/>
                {out::ways(cost.build)}
                {figures::remarks(cost.remarks)}
            </div>
        </div>
    }
}

fn side(label: &'static str, side: Side) -> AnyView {
    let text =
        AnswerText { label: label.to_owned(), figure: side.figure, lacks: side.lacks, note: side.note };
    view! { <SideAnswer text leads=leads(side.href)/> }
}

fn leads(href: Option<String>) -> Leads {
    href.map_or(Leads::Nowhere, Leads::To)
}
