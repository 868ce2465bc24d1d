//! What lay on the shelf at the end of a day and what it was worth, for the books; each line opens to its entries.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, Typing},
        key::{Key, KeyLink},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText, SumTotal},
    },
    screens::{hours::fields, journal::line, stock::form::Form, stock::thing::Thing},
    shell::{
        Desk, Go, Place, Tab,
        desk::{Phase, View},
        frame::Places,
    },
    words::{common, gaps, shelf as words, units},
};
use benchslate_core::{
    costing::{Books, Part, PartOf, Rule, Statement, Working, present},
    journal::{Id, kinds::Source},
    measure::{Instant, Shown, day, letters::small},
};

const DAY: &str = "shelf-day";

/// One lot or item.
#[derive(Clone, PartialEq)]
struct Line {
    source: Source,
    name: String,
    many: String,
    figure: String,
    lacks: bool,
    entries: Vec<Entry>,
}

/// What came of it, or went.
#[derive(Clone, PartialEq)]
struct Entry {
    entry: Id,
    what: String,
    day: String,
    figure: String,
}

/// What lies in an open build.
#[derive(Clone, PartialEq)]
struct InBuild {
    build: Id,
    title: String,
    /// Of a batch, how much of it has not left.
    of: Option<String>,
    figure: String,
}

#[derive(Clone, PartialEq)]
struct Look {
    lines: Vec<Line>,
    total: String,
    builds: Vec<InBuild>,
    under_way: String,
    ahead: bool,
}

/// The sheet.
#[component]
pub fn OnTheShelfSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "shelf-day");
    let today = desk.now_read(|view| view.shop.zone.day(desk.at_tap()));
    form.offer(vec![(DAY.to_owned(), today.to_string())]);
    let opened = RwSignal::new(None::<Source>);
    let look = Memo::new(move |_| {
        let (typed, now) = (form.get(DAY), desk.minute());
        if desk.phase.get() != Phase::Ready {
            return None;
        }
        desk.read(|view| look(view, &typed, now))
    });
    let told = move || {
        let look = look.get()?;
        if look.lines.is_empty() && look.builds.is_empty() {
            return Some(view! { <p class="lead">{words::nothing_lay_there()}</p> });
        }
        let ahead = look.ahead.then(|| view! { <p class="note">{words::day_ahead()}</p> });
        let under_way = (!look.builds.is_empty()).then(|| under_way(look.builds, look.under_way));
        let lines = look.lines.into_iter().map(move |line| drawn(line, opened));
        Some(view! {
            {ahead}
            {lines.collect::<Vec<_>>()}
            <SumTotal label=words::worth().to_owned() figure=look.total/>
            {under_way}
            <p class="note">{words::for_the_books()}</p>
        })
    };
    view! {
        <Sheet>
            <Head title=words::held_title().to_owned() tight=true/>
            <Above>
                <Read name=words::held_title().to_owned() below=words::worth_below().to_owned()>
                    <div class="form">
                        <Cells>{fields::typed(form, DAY, words::at_the_end_of(), "", "whole", Typing::Date)}</Cells>
                    </div>
                    {told}
                </Read>
            </Above>
            <Below>
                <Hand name=words::held_keys().to_owned()>
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <KeyLink label=words::losses().to_owned() href=Place::Losses.href()/>
                        <KeyLink label=words::count().to_owned() href=Place::Count.href()/>
                    </Keys>
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

/// Beside the shelf: what lies in builds that are open.
fn under_way(builds: Vec<InBuild>, total: String) -> AnyView {
    let row = |it: InBuild| {
        let text = SumText { label: it.title, working: it.of, figure: it.figure, ..SumText::default() };
        view! { <SumRow text leads=Leads::To(Place::Build(it.build, Tab::Cost).href()) signed=false/> }
    };
    let rows: Vec<AnyView> = builds.into_iter().map(row).collect();
    view! {
        <Group title=words::under_way().to_owned()/>
        {rows}
        <SumTotal label=words::under_way_in_all().to_owned() figure=total/>
    }
}

fn drawn(line: Line, opened: RwSignal<Option<Source>>) -> AnyView {
    let source = line.source;
    let tap = move |()| {
        opened.update(|opened| *opened = if *opened == Some(source) { None } else { Some(source) });
    };
    let text = SumText {
        label: line.name,
        working: Some(line.many),
        figure: line.figure,
        lacks: line.lacks,
        ..SumText::default()
    };
    let entries = line.entries;
    let below = move || {
        (opened.get() == Some(source)).then(|| entries.iter().cloned().map(entry).collect::<Vec<_>>())
    };
    view! { <SumRow text leads=Leads::Tap(Callback::new(tap)) signed=false/>{below} }
}

fn entry(it: Entry) -> AnyView {
    let text = SumText { label: it.what, working: Some(it.day), figure: it.figure, ..SumText::default() };
    view! { <SumRow text leads=Leads::To(Place::Entry(it.entry).href())/> }
}

/// None: no day can be read.
fn look(view: &View, typed: &str, now: Instant) -> Option<Look> {
    let (zone, today) = (&view.shop.zone, view.shop.zone.day(now));
    let day = day::typed_near(typed, today).ok()?;
    let ahead = today < day;
    let books = Books::close(view.shop, if day < today { zone.end_of(day) } else { now });
    let held = books.on_the_shelf(view.shop);
    let root = present::alone(&held, view.tongue.minor());
    let mut lines: Vec<Line> = held
        .parts
        .iter()
        .zip(&root.parts)
        .filter_map(|(part, shown)| line_of(view, part.statement()?, *shown))
        .collect();
    benchslate_core::measure::InOrder::order_by(&mut lines[..], |a: &Line, b: &Line| {
        small(&a.name).cmp(&small(&b.name))
    });
    let total = root.shown.map(|shown| view.tongue.shown(shown)).unwrap_or_default();
    let (builds, under_way) = in_builds(view, &books);
    Some(Look { lines, total, builds, under_way, ahead })
}

fn in_builds(view: &View, books: &Books) -> (Vec<InBuild>, String) {
    let open = books.under_way(view.shop);
    let root = present::alone(&open, view.tongue.minor());
    let said = |shown: Option<Shown>| shown.map(|shown| view.tongue.shown(shown)).unwrap_or_default();
    let one = |(part, shown): (&Part, &Option<Shown>)| {
        let PartOf::Entry { entry: build, working, .. } = part.of else { return None };
        let of = match working {
            Working::Share { part, whole, .. } if part != whole => {
                let [left, all] = [part, whole].map(|it| view.tongue.quantity(it));
                Some(words::so_many_left(&left, &all))
            }
            _ => None,
        };
        let title = view.shop.builds.get(&build)?.title.clone();
        Some(InBuild { build, title, of, figure: said(*shown) })
    };
    (open.parts.iter().zip(&root.parts).filter_map(one).collect(), said(root.shown))
}

fn line_of(view: &View, statement: &Statement, shown: Option<Shown>) -> Option<Line> {
    let Rule::Held { source, quantity, unit, unit_cost, .. } = statement.rule else { return None };
    let (Source::Lot(id) | Source::Item(id)) = source;
    let word = Thing::of(view.shop, id).and_then(|thing| thing.word);
    let many = quantity.map_or_else(
        || words::some().to_owned(),
        |many| units::amount_short(view.tongue, many, unit, word.as_deref()),
    );
    let one = unit_cost.filter(|cost| !cost.is_zero()).map(|cost| view.tongue.money(cost));
    let lacks = statement.gaps.first();
    let figures = shown.map(|shown| present::below(statement, shown)).unwrap_or_default();
    let entries = statement.parts.iter().zip(figures);
    Some(Line {
        source,
        name: gaps::name(view.shop, source),
        many: match lacks {
            Some(gap) => crate::words::journal::comma(&many, gaps::short(gap)),
            None => words::so_many_at(&many, one.as_deref()),
        },
        figure: shown.map(|shown| view.tongue.shown(shown)).unwrap_or_default(),
        lacks: false,
        entries: entries.filter_map(|(part, shown)| entry_of(view, part, shown)).collect(),
    })
}

fn entry_of(view: &View, part: &Part, shown: Option<Shown>) -> Option<Entry> {
    let PartOf::Entry { entry, .. } = part.of else { return None };
    let day = view.journal.body(entry).map(|body| view.tongue.day_year(body.on().day(&view.shop.zone)));
    let what = crate::words::journal::comma(&line::kind(view, entry), &line::what(view, entry));
    let figure = shown.map(|shown| view.tongue.shown(shown)).unwrap_or_default();
    Some(Entry { entry, what, day: day.unwrap_or_default(), figure })
}
