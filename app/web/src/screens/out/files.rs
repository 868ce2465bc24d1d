//! Tables for a spreadsheet, of the whole shop or of one build: a tap saves one.

use crate::dom::prelude::*;
use crate::{
    parts::{
        key::Key,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{SumRow, SumText},
        tick_row::TickRow,
    },
    platform::{announce, download},
    screens::{publishing::calendar, sample},
    shell::{Desk, desk::View, frame::Places},
    words::{calendar as dates, cost, exchange, files as words},
};
use benchslate_core::{
    costing::Books,
    exchange::{
        calendar as ics,
        csv::{MEDIA_TYPE, Table},
        tables::{self, Of, Sources},
    },
    journal::Id,
};

/// The sheet. `of`: one build; none: the shop.
#[component]
pub fn FilesSheet(of: Option<Id>) -> impl IntoView {
    let desk = Desk::here();
    let (said, rings) = (RwSignal::new(None::<String>), RwSignal::new(true));
    let title = Signal::derive(move || match of {
        None => words::title().to_owned(),
        Some(build) => desk.read(|view| match view.shop.builds.get(&build) {
            Some(build) => build.title.clone(),
            None => cost::no_build().to_owned(),
        }),
    });
    let note = of.map(|_| words::title().to_owned());
    let rows = move || {
        desk.books(|books, view| {
            let counted = tables_of(of).iter().map(|it| row(*it, view, &table(books, view, *it, of)));
            counted.collect::<Vec<_>>()
        })
    };
    let key = move |it: Of| {
        let save = move |()| said.set(Some(save(desk, it, of)));
        view! { <Key label=words::table(it).to_owned() note=words::ends_in().to_owned() on_tap=Callback::new(save)/> }
    };
    let keys = tables_of(of).chunks(3).map(move |row| {
        view! { <Keys class="mid">{row.iter().map(|it| key(*it)).collect::<Vec<_>>()}</Keys> }
    });
    let dated = Callback::new(move |()| said.set(Some(save_calendar(desk, of, rings.get_untracked()))));
    let status = move || said.get().unwrap_or_else(|| words::tap_saves().to_owned());
    view! {
        <Sheet>
            <Head title=title note=note tight=true/>
            <Above>
                <Read name=title below=words::below().to_owned()>
                    <p class="lead">{words::what_they_are()}</p>
                    {rows}
                    <p class="note">{words::how_written()}</p>
                    <TickRow
                        label=dates::reminders().to_owned()
                        note=dates::when_they_ring().to_owned()
                        ticked=rings
                        on_tap=Callback::new(move |()| rings.update(|on| *on = !*on))
                    />
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    <p class="only-here" role="status">{status}</p>
                    {keys.collect::<Vec<_>>()}
                    <Keys class="low">
                        <Key label=dates::calendar().to_owned() note=dates::ends_in().to_owned() on_tap=dated/>
                    </Keys>
                </Hand>
                <Places cell=if of.is_some() { 1 } else { 4 } of_build=Signal::stored(of.map(|build| (build, None)))/>
            </Below>
        </Sheet>
    }
}

/// Stock and tools are the shop's.
fn tables_of(build: Option<Id>) -> &'static [Of] {
    match build {
        None => &Of::ALL,
        Some(_) => &[Of::Entries, Of::Cost, Of::Income],
    }
}

fn table(books: &Books, view: &View, of: Of, build: Option<Id>) -> Table {
    tables::table(Sources { journal: view.journal, shop: view.shop, books }, of, build)
}

fn row(of: Of, view: &View, table: &Table) -> AnyView {
    let text = SumText {
        label: words::table(of).to_owned(),
        working: Some(words::a_row_is(of).to_owned()),
        figure: words::rows(view.tongue, table.rows.len()),
        ..SumText::default()
    };
    view! { <SumRow text signed=false/> }
}

/// Hands it to the reader; says what became of it.
fn save(desk: Desk, of: Of, build: Option<Id>) -> String {
    let (name, text) = desk.books(|books, view| {
        let title = build.and_then(|id| view.shop.builds.get(&id)).map(|it| it.title.as_str());
        (of.file_name(title, sample::is_open()), table(books, view, of, build).csv())
    });
    if !download::save(&name, MEDIA_TYPE, text.as_bytes()) {
        return exchange::not_saved().to_owned();
    }
    let said = exchange::saved(&name);
    announce::say(&said);
    said
}

/// What of a build, or of the shop, has a date.
fn save_calendar(desk: Desk, build: Option<Id>, rings: bool) -> String {
    let now = desk.at_tap();
    let (title, file) = desk.now_read(|view| {
        let title = build.and_then(|id| view.shop.builds.get(&id)).map(|it| it.title.clone());
        (title, calendar::file(view, build, now, rings))
    });
    let Some(file) = file else { return dates::no_dates().to_owned() };
    let whose = if sample::is_open() { "sample" } else { "benchslate" };
    let name = dates::file_name(whose, title.as_deref().map(tables::file_word).as_deref());
    if !download::save(&name, ics::MEDIA_TYPE, file.as_bytes()) {
        return exchange::not_saved().to_owned();
    }
    let said = exchange::saved(&name);
    announce::say(&said);
    said
}
