//! A build on one page of paper: what it cost, where the hours went, what was used. Lists are cut, so that it stays one.

use crate::dom::prelude::*;
use crate::{
    parts::{
        core_column::{CoreColumn, Layer},
        key::{Key, KeyKind},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    screens::cost::{self, At, Row, Say},
    shell::{Desk, Go, desk::View, frame::Places},
    words::{common, cost as costs, gaps, print as words},
};
use benchslate_core::{
    costing::{
        Books, BuildCost, Part, Path, Rule, Statement,
        present::{self, Level},
    },
    journal::{
        Id,
        kinds::{Bearer, State},
    },
    measure::{Day, InOrder, Weekday},
    timing::breakdown::{Of, breakdown},
};
use std::cmp::Reverse;

/// As many rows of each list have room on the shorter of the two papers.
const STAGES: usize = 10;
const USED: usize = 12;
const LACKS: usize = 4;

/// The sheet.
#[component]
pub fn PrintSheet(of: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let page = Memo::new(move |_| desk.books(|books, view| page(books, view, of)));
    let title = Signal::derive(move || {
        page.read().as_ref().map_or_else(|| costs::no_build().to_owned(), |page| page.title.clone())
    });
    let print = move |()| {
        if let Some(window) = web_sys::window() {
            let _ = window.print();
        }
    };
    view! {
        <Sheet>
            <Head title=title note=Some(words::title().to_owned()) tight=true/>
            <Above>
                <Read name=title below=words::below().to_owned()>{move || page.get().map(drawn)}</Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <Key class="wide" label=words::print().to_owned() kind=KeyKind::Filled on_tap=Callback::new(print)/>
                    </Keys>
                </Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, None)))/>
            </Below>
        </Sheet>
    }
}

/// The page in plain words.
#[derive(Clone, Debug, PartialEq)]
struct Page {
    title: String,
    stands: String,
    total: String,
    kinds: Vec<Kind>,
    groups: Vec<(&'static str, Vec<(String, String)>)>,
}

#[derive(Clone, Debug, PartialEq)]
struct Kind {
    kind: crate::parts::hatch::Hatch,
    label: String,
    figure: String,
    size: f64,
}

fn page(books: &Books, view: &View, of: Id) -> Option<Page> {
    let build = view.shop.builds.get(&of)?;
    let (say, cost) = (Say { books, view }, books.build_cost(of));
    let whole = present::alone(&cost.true_cost, view.tongue.minor());
    let mut groups = vec![
        (words::spent_and_used(), bridge(say, &cost, of)),
        (words::sides(), rows(say, &cost.sides, of)),
        (words::salvage(), cost.saving.as_ref().map(|it| with_sum(say, &it.at_rate, of)).unwrap_or_default()),
        (words::hours(), stages(books, view, of)),
        (words::used(), used(say, &cost.true_cost)),
        (
            words::lacks(),
            cut(
                cost.true_cost
                    .gaps
                    .iter()
                    .map(|gap| (gaps::gap(gap, view.shop).says, String::new()))
                    .collect(),
                LACKS,
            ),
        ),
    ];
    if let Some((_, rows)) = groups.get_mut(1) {
        rows.extend(one_item(say, &cost));
    }
    Some(Page {
        title: build.title.clone(),
        stands: stands(view, books, of, build.order.day),
        total: say.figure(whole.shown, None).unwrap_or_else(|| costs::not_known().to_owned()),
        kinds: kinds(say, &whole, of),
        groups: groups.into_iter().filter(|(_, rows)| !rows.is_empty()).collect(),
    })
}

fn stands(view: &View, books: &Books, build: Id, begun: Day) -> String {
    let day = |day| view.tongue.day_year(day);
    let stands = match view.shop.state_on(build, view.shop.zone.day(books.as_of)) {
        Some((State::Closed, on)) => costs::closed(&day(on)),
        Some((State::Paused, on)) => costs::paused(&day(on)),
        Some((State::Begun | State::Reopened, _)) | None => costs::so_far().to_owned(),
    };
    words::begun(&day(begun), &stands)
}

fn plain(row: Row) -> (String, String) {
    let mut figure = row.sign.replace('+', "");
    figure.push_str(&row.figure);
    (row.label, figure)
}

fn rows(say: Say, statement: &Statement, of: Id) -> Vec<(String, String)> {
    let path = Path { steps: vec![statement.rule.step()] };
    let level = present::alone(statement, say.view.tongue.minor());
    cost::rows(say, &level, At { of, path: &path }).into_iter().map(plain).collect()
}

/// The terms, then what they come to.
fn with_sum(say: Say, statement: &Statement, of: Id) -> Vec<(String, String)> {
    let mut all = rows(say, statement, of);
    let shown = present::alone(statement, say.view.tongue.minor()).shown;
    all.extend(say.figure(shown, None).map(|figure| (say.name(&statement.rule), figure)));
    all
}

/// Spent, what stands between, used up; as in the bridge.
fn bridge(say: Say, cost: &BuildCost, of: Id) -> Vec<(String, String)> {
    let path = Path { steps: vec![Rule::FromUsedUp.step(), Rule::UsedUp.step()] };
    let levels = present::open(&cost.bridge, &path, say.view.tongue.minor());
    let Some(used) = levels.as_ref().and_then(|levels| levels.last()) else { return Vec::new() };
    let mut all: Vec<_> = cost::rows(say, used, At { of, path: &path }).into_iter().map(plain).collect();
    all.extend(say.figure(used.shown, None).map(|figure| (say.name(&Rule::UsedUp), figure)));
    all
}

fn one_item(say: Say, cost: &BuildCost) -> Option<(String, String)> {
    let shown = present::alone(&cost.batch.item, say.view.tongue.minor()).shown;
    let figure = say.figure(shown, None)?;
    Some((words::one_item(&say.view.tongue.number(&cost.items.good.to_string())), figure))
}

fn stages(books: &Books, view: &View, of: Id) -> Vec<(String, String)> {
    let all = breakdown(view.shop, Bearer::Build(of), books.as_of, Weekday::Monday);
    let mut stages: Vec<_> = all.by_stage.iter().flat_map(|side| &side.rows).collect();
    stages.order_by_key(|row| Reverse(row.worked));
    let named = stages.into_iter().filter_map(|row| match row.of {
        Of::Stage(stage) => {
            let name = view.shop.stages.get(&stage).map(|it| it.name.clone()).unwrap_or_default();
            Some((name, view.tongue.hours(row.shown)))
        }
        _ => None,
    });
    cut(named.collect(), STAGES)
}

/// Every lot and item, with how much of it.
fn used(say: Say, cost: &Statement) -> Vec<(String, String)> {
    let kinds = cost.parts.iter().filter_map(Part::statement);
    let drawn = kinds.flat_map(|kind| kind.parts.iter().filter_map(Part::statement));
    let drawn = drawn.filter(|it| matches!(it.rule, Rule::Drawn { .. }));
    let rows = drawn.map(|it| (say.name(&it.rule), say.how_much(&it.rule).unwrap_or_default()));
    cut(rows.collect(), USED)
}

/// So many, and how many more there are.
fn cut(mut rows: Vec<(String, String)>, most: usize) -> Vec<(String, String)> {
    if rows.len() > most {
        let more = rows.len().saturating_sub(most);
        rows.truncate(most);
        rows.push((words::and_more(more), String::new()));
    }
    rows
}

fn kinds(say: Say, whole: &Level, of: Id) -> Vec<Kind> {
    let path = Path { steps: vec![Rule::TrueCost.step()] };
    let rows = cost::rows(say, whole, At { of, path: &path });
    let kinds = whole.statement.parts.iter().zip(rows).filter_map(|(part, row)| {
        let Rule::Kind { kind, .. } = part.statement()?.rule else { return None };
        let minus = row.sign == "\u{2212}";
        let (label, figure) = plain(row);
        let size = if minus { 0.0 } else { cost::size(part.value()) };
        Some(Kind { kind: cost::hatch(kind), label, figure, size })
    });
    kinds.collect()
}

fn drawn(page: Page) -> AnyView {
    let sum: f64 = page.kinds.iter().map(|kind| kind.size).sum();
    let layers = page.kinds.into_iter().map(|kind| Layer {
        kind: kind.kind,
        label: kind.label,
        figure: kind.figure,
        share: if sum > 0.0 { kind.size / sum } else { 0.0 },
        leads: Leads::Nowhere,
        ..Layer::default()
    });
    let layers: Vec<Layer> = layers.collect();
    let core = (!layers.is_empty()).then(|| view! { <CoreColumn layers total=page.total.clone()/> });
    let groups = page.groups.into_iter().map(|(title, rows)| {
        let rows = rows.into_iter().map(|(label, figure)| view! { <dt>{label}</dt><dd>{figure}</dd> });
        view! { <section><h2>{title}</h2><dl>{rows.collect::<Vec<_>>()}</dl></section> }
    });
    view! {
        <article class="paper">
            <p class="paper-title">{page.title}</p>
            <p class="paper-stands">{page.stands}</p>
            <p class="paper-total"><span>{costs::true_cost()}</span><b>{page.total}</b></p>
            <div class="paper-core">{core}</div>
            <div class="paper-groups">{groups.collect::<Vec<_>>()}</div>
            <p class="paper-foot">{words::no_tax_advice()}</p>
        </article>
    }
}
