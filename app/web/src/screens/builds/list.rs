//! The builds, what is going on first, then the latest: what is going on, and what each cost so far.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        build_row::{BuildRow, BuildText},
        hatch::Hatch,
        key::{KeyKind, KeyLink},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    screens::{cost, notes, trouble::Troubles},
    shell::{Desk, Place, Tab, desk::View, frame::Places, mark::LastMarkHere},
    words::{
        away as away_words, builds as words, cost as cost_words, gaps, income, notes as note_words, year,
    },
};
use benchslate_core::{
    costing::{Books, Gap, Part, Rule},
    journal::{
        Id,
        kinds::{Bearer, State},
    },
    timing::{
        Clock,
        builds::{OnList, on_list},
        clocks,
    },
};

/// A build of the list.
#[derive(Clone, Debug, PartialEq)]
struct Row {
    id: Id,
    number: usize,
    name: String,
    now: String,
    note: String,
    kinds: Vec<(Hatch, f64)>,
}

/// The sheet.
#[component]
pub fn BuildsSheet() -> impl IntoView {
    let desk = Desk::here();
    let rows = Memo::new(move |_| desk.books(rows));
    let title = Memo::new(move |_| rows.with(|rows| words::count(rows.len())));
    let note = move || rows.with(|rows| (!rows.is_empty()).then(|| words::cost_by_kind().to_owned()));
    let below = move || rows.with(|rows| Some(words::more_below(rows.len())));
    let waiting = Memo::new(move |_| notes::count(desk));
    let away = Memo::new(move |_| desk.read(put_away));
    view! {
        <Sheet>
            <Head title=title note=Signal::derive(note) tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::list().to_owned() below=Signal::derive(below)>
                    {move || (waiting.get() > 0).then(|| view! {
                        <RowLink
                            label=note_words::homeless().to_owned()
                            end=note_words::waiting(waiting.get())
                            leads=Leads::To(Place::Homeless.href())
                        />
                    })}
                    {move || list(&rows.read())}
                    {move || (rows.with(Vec::len) > 1).then(|| view! {
                        <RowLink
                            label=year::side_by_side().to_owned()
                            end=year::two_compared().to_owned()
                            leads=Leads::To(Place::SideBySide.href())
                        />
                    })}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <Keys class="mid">
                        <KeyLink label=words::note().to_owned() note=words::no_home_yet().to_owned() href=Place::Note.href()/>
                        <KeyLink label=words::hours().to_owned() note=words::afterwards().to_owned() href=Place::Hours.href()/>
                        {move || (away.get() > 0).then(|| view! {
                            <KeyLink
                                label=away_words::put_away().to_owned()
                                note=away_words::so_many_builds(away.get())
                                href=Place::PutAway.href()
                            />
                        })}
                    </Keys>
                    <Keys class="tall">
                        <KeyLink
                            label=words::start_a_build().to_owned()
                            kind=KeyKind::Filled
                            href=Place::NewBuild.href()
                        />
                    </Keys>
                </Hand>
                <Places cell=1/>
            </Below>
        </Sheet>
    }
}

/// Builds that stand on another sheet.
fn put_away(view: &View) -> usize {
    view.shop.builds.keys().filter(|id| !view.shop.offers(**id)).count()
}

fn list(rows: &[Row]) -> AnyView {
    if rows.is_empty() {
        return view! { <p class="lead">{words::what_goes_here()}</p> };
    }
    let row = |row: &Row| {
        let text = BuildText {
            number: row.number.to_string(),
            name: row.name.clone(),
            now: row.now.clone(),
            note: row.note.clone(),
            kinds: row.kinds.clone(),
        };
        view! { <BuildRow text leads=Leads::To(Place::Build(row.id, Tab::Journal).href())/> }
    };
    let rows: Vec<AnyView> = rows.iter().map(row).collect();
    view! { <ol class="builds">{rows}</ol> }
}

fn rows(books: &Books, view: &View) -> Vec<Row> {
    let running = clocks(view.shop, books.as_of);
    let today = view.shop.zone.day(books.as_of);
    let listed = on_list(view.shop, &running, today).into_iter().filter(|build| !build.away);
    listed.filter_map(|build| row(books, view, &running, build)).collect()
}

fn row(books: &Books, view: &View, running: &[Clock], on_list: OnList) -> Option<Row> {
    let OnList { id, number, .. } = on_list;
    let build = view.shop.builds.get(&id)?;
    let cost = books.true_cost(id);
    let kinds: Vec<(Hatch, f64)> =
        cost.parts.iter().filter_map(kind).filter(|(_, size)| *size > 0.0).collect();
    let figure = cost.money().filter(|_| !cost.parts.is_empty()).map(|money| view.tongue.money(money));
    // What no version keeps yet is missing everywhere alike: the list says only what this build lacks.
    let missing: Vec<&Gap> = cost.gaps.iter().filter(|gap| !matches!(gap, Gap::NotKept { .. })).collect();
    let today = view.shop.zone.day(books.as_of);
    let closed = view.shop.state_of(id, today) == State::Closed;
    let mut note = match (figure, missing.first()) {
        (Some(figure), None) if closed => words::cost_of_closed(&figure),
        (Some(figure), None) => words::so_far(&figure),
        (Some(figure), Some(_)) => words::so_far_without(&figure, &cost_words::not_all(missing.len())),
        (None, Some(gap)) => words::cost_lacks(gaps::short(gap)),
        (None, None) => words::no_cost().to_owned(),
    };
    if let Some(due) = build.due {
        note = crate::words::journal::comma(&words::due(&view.tongue.day(due)), &note);
    }
    Some(Row { id, number, name: build.title.clone(), now: going_on(view, running, on_list), note, kinds })
}

/// What is going on, else what was done last.
fn going_on(view: &View, running: &[Clock], on_list: OnList) -> String {
    let build = on_list.id;
    let bearer = Bearer::Build(build);
    let stage = |id: Id| crate::screens::journal::facts::stage(view, id);
    let here: Vec<&Clock> = running.iter().filter(|clock| clock.bearer == bearer).collect();
    if let Some(clock) = here.last() {
        let names = here.iter().map(|clock| crate::screens::journal::facts::person(view, clock.person));
        let who = crate::words::bench::and(&names.collect::<Vec<String>>());
        let said = if clock.paused.is_some() { words::paused } else { words::going_on };
        return said(&stage(clock.stage), &who);
    }
    if matches!(on_list.state, State::Closed | State::Paused) {
        return words::stands(income::state(on_list.state), &view.tongue.day(on_list.last));
    }
    let last = view.shop.stretches.iter().rev().find(|stretch| stretch.bearer == bearer);
    match (last, view.shop.builds.get(&build)) {
        (Some(stretch), _) => words::last_done(&stage(stretch.stage), &view.tongue.day(stretch.order.day)),
        (None, Some(build)) => words::not_begun(&view.tongue.day(build.order.day)),
        (None, None) => String::new(),
    }
}

/// A layer of the strip: only drawn, so a share of a float will do.
fn kind(part: &Part) -> Option<(Hatch, f64)> {
    let below = part.statement()?;
    let Rule::Kind { kind, .. } = below.rule else { return None };
    Some((cost::hatch(kind), cost::size(below.value)))
}
