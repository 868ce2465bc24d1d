//! What is on the shelf: rows to scale, find as you type, and the keys of stock.

use super::thing::{self, Thing};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        field::{Field, Typing},
        key::{KeyKind, KeyLink},
        message::Message,
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        shelf_row::{Shelf, ShelfRow, ShelfText},
        sum_row::{Group, Leads},
    },
    screens::trouble::Troubles,
    shell::{Desk, Place, frame::Places, mark::LastMarkHere},
    words::{across, buying, finds as find_words, gaps, receipts, shelf, stock as words},
};
use benchslate_core::measure::InOrder;
use benchslate_core::{
    costing::{Flag, ShelfLine},
    journal::kinds::{Origin, Source},
    measure::Money,
};

/// A row with where it leads.
#[derive(Clone, PartialEq)]
struct Row {
    source: Source,
    hatch: crate::parts::hatch::Hatch,
    left: f64,
    name: String,
    note: String,
    red: bool,
    figure: String,
}

/// The shelf.
#[component]
pub fn StockSheet() -> impl IntoView {
    let desk = Desk::here();
    let text = RwSignal::new(String::new());
    let rows = Memo::new(move |_| rows(desk));
    let found = Memo::new(move |_| {
        let text = text.get();
        rows.get().into_iter().filter(|row| thing::is_found(&row.name, &text)).collect::<Vec<Row>>()
    });
    let note = Signal::derive(move || (!rows.read().is_empty()).then(|| head_note(desk, rows.read().len())));
    view! {
        <Sheet>
            <Head title=words::shelf().to_owned() note=note tight=true/>
            <Above>
                <Troubles/>
                <Read
                    name=words::shelf().to_owned()
                    below=Signal::derive(move || Some(words::more_rows(found.read().len())))
                >
                    {move || receipts_that_wait(desk)}
                    {move || list(found.get(), rows.read().is_empty(), &text.get())}
                    {move || finds(desk)}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::shelf_keys().to_owned() kind=HandKind::Dense>
                    {move || (!rows.read().is_empty()).then(|| find_field(text))}
                    {move || keys(desk, rows.read().is_empty())}
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

/// Receipts whose lines are still to be said: what they bought is not on the shelf yet.
fn receipts_that_wait(desk: Desk) -> AnyView {
    let row = |(place, label, end): (Place, String, String)| {
        view! { <RowLink label end leads=Leads::To(place.href())/> }
    };
    let waiting = desk.read(crate::screens::receipts::waiting);
    waiting.into_iter().map(row).collect::<Vec<_>>().draw()
}

/// Timber that was looked at and is not home.
fn finds(desk: Desk) -> AnyView {
    let open = desk.read(super::finds::open);
    let row = |(id, name): (benchslate_core::journal::Id, String)| {
        let leads = Leads::To(Place::Find(id).href());
        view! { <RowLink label=name end=find_words::worth_it().to_owned() leads/> }
    };
    let title = (!open.is_empty()).then(|| view! { <Group title=find_words::not_home_yet().to_owned()/> });
    let salvaged = desk.read(|view| view.shop.lots.values().any(|lot| lot.origin == Origin::Salvaged));
    let across = salvaged.then(|| {
        let leads = Leads::To(Place::Across.href());
        view! { <RowLink label=across::title().to_owned() end=across::by_source_and_species().to_owned() leads/> }
    });
    view! { {title}{open.into_iter().map(row).collect::<Vec<_>>()}{across} }
}

fn find_field(text: RwSignal<String>) -> AnyView {
    view! {
        <Field
            id="find"
            class="found"
            label=words::find().to_owned()
            hint=words::find().to_owned()
            typing=Typing::Search
            value=text
            on_input=Callback::new(move |typed| text.set(typed))
        />
    }
}

fn keys(desk: Desk, empty: bool) -> AnyView {
    if empty {
        return view! {
            <Keys class="tall">
                <KeyLink
                    label=words::add_a_lot().to_owned()
                    note=words::salvaged_or_bought().to_owned()
                    kind=KeyKind::Filled
                    href=Place::NewLot.href()
                />
                <KeyLink label=find_words::worth_it().to_owned() href=Place::NewFind.href()/>
                <KeyLink
                    label=receipts::receipt_now().to_owned()
                    note=receipts::lines_later().to_owned()
                    href=Place::Receipt(None).href()
                />
            </Keys>
        };
    }
    let sort = desk.read(|view| super::sort::waiting(view.shop).first().map(|lot| Place::Sort(*lot)));
    let sort = sort.map(|place| view! { <KeyLink label=words::sort().to_owned() href=place.href()/> });
    view! {
        <Keys class="low">
            <KeyLink label=words::add_a_lot().to_owned() href=Place::NewLot.href()/>
            <KeyLink
                label=receipts::receipt_now().to_owned()
                note=receipts::lines_later().to_owned()
                href=Place::Receipt(None).href()
            />
            {sort}
            <KeyLink label=shelf::count().to_owned() href=Place::Count.href()/>
        </Keys>
        <Keys>
            <KeyLink
                label=buying::to_buy().to_owned()
                note=desk.read(|view| buying::lines(view.shop.to_buy().count()))
                href=Place::Buying.href()
            />
            <KeyLink label=find_words::worth_it().to_owned() href=Place::NewFind.href()/>
            <KeyLink class="wide" label=words::use_stock().to_owned() kind=KeyKind::Filled href=Place::Use(None).href()/>
        </Keys>
    }
}

fn list(found: Vec<Row>, empty: bool, text: &str) -> AnyView {
    if empty {
        return view! {
            <Message
                title=words::empty_shelf().to_owned()
                lines=Signal::stored(vec![words::what_goes_here().to_owned()])
            />
        };
    }
    if found.is_empty() {
        return view! { <p class="note">{words::nothing_found(text)}</p> };
    }
    let row = |row: Row| {
        let place = match row.source {
            Source::Lot(id) | Source::Item(id) => Place::Lot(id),
        };
        let text = ShelfText {
            kind: row.hatch,
            left: row.left,
            name: row.name,
            note: row.note,
            low: row.red,
            figure: row.figure,
        };
        view! { <ShelfRow text leads=Leads::To(place.href())/> }
    };
    view! {
        <Shelf>{found.into_iter().map(row).collect::<Vec<_>>()}</Shelf>
        <RowLink label=shelf::held_title().to_owned() end=shelf::on_any_day().to_owned() leads=Leads::To(Place::OnTheShelf.href())/>
    }
}

/// Dearest first; what runs low or below nothing is said in its row.
fn rows(desk: Desk) -> Vec<Row> {
    desk.books(|books, view| {
        let mut lines: Vec<(Money, Row)> = books
            .shelf()
            .iter()
            .filter_map(|line| {
                let (Source::Lot(id) | Source::Item(id)) = line.source;
                let thing = Thing::of(view.shop, id)?;
                Some((line.value, row(view, &thing, line)))
            })
            .collect();
        lines.order_by(|a, b| (b.0, &a.1.name).cmp(&(a.0, &b.1.name)));
        lines.into_iter().map(|(_, row)| row).collect()
    })
}

fn row(view: &crate::shell::desk::View, thing: &Thing, line: &ShelfLine) -> Row {
    let below_nothing = line.quantity.is_some_and(|left| left.is_negative());
    let overdrawn =
        line.flags.iter().any(|flag| matches!(flag, Flag::NegativeShelf { .. } | Flag::Overdrawn { .. }));
    let figure = match line.gaps.first() {
        Some(gap) if line.value.is_zero() => gaps::short(gap).to_owned(),
        _ => view.tongue.money(line.value),
    };
    Row {
        source: line.source,
        hatch: thing::hatch(line.kind),
        left: thing::share_left(line),
        name: thing.name.clone(),
        note: thing::left_says(view, thing, line),
        red: line.low || below_nothing || overdrawn,
        figure,
    }
}

fn head_note(desk: Desk, count: usize) -> String {
    desk.books(|books, view| {
        let value = books.shelf_value();
        words::kinds(count, Some(&view.tongue.money(value)))
    })
}
