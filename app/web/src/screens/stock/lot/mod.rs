//! A lot or an item: what became of it. A salvaged lot has a board and its saving, anything else a plain sheet.

mod expected;
mod plain;
mod salvaged;

use super::thing::Thing;
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        key::{Key, KeyKind, KeyLink},
        message::{Message, MessageKind},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    screens::{About, months::Row},
    shell::{
        Desk, Go, Place,
        desk::{Mark, Phase, View},
        frame::Places,
    },
    words::{cost, journal, movement, receipts, salvage as words, same, shelf, stock, units},
};
use benchslate_core::{
    costing::{Books, LotBook, Path},
    journal::{
        Change, Id, Kind, On,
        kinds::{Bearer, Origin, Shelf, Source, Use},
    },
    measure::Quantity,
    timing::bench,
};

/// By what it is of.
#[component]
pub fn LotSheet(lot: Id) -> impl IntoView {
    let desk = Desk::here();
    let thing = Memo::new(move |_| desk.read(|view| Thing::of(view.shop, lot)));
    move || match thing.get() {
        Some(thing) if thing.origin == Some(Origin::Salvaged) => {
            view! { <salvaged::Salvaged thing/> }
        }
        Some(thing) => view! { <plain::Plain thing/> },
        None => nothing(desk),
    }
}

/// Struck out, or never here.
fn nothing(desk: Desk) -> AnyView {
    if desk.phase.get() != Phase::Ready {
        return view! { <Sheet><Above><div class="read" aria-busy="true"></div></Above><Below><Places cell=2/></Below></Sheet> };
    }
    view! {
        <Sheet>
            <Head title=stock::shelf().to_owned() tight=true/>
            <Above>
                <Read name=stock::shelf().to_owned()>
                    <Message title=stock::not_there().to_owned() kind=MessageKind::Offer/>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    <Keys><KeyLink label=cost::shelf().to_owned() href=Place::Stock.href()/></Keys>
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

/// Sort, empty, correct; a lot's journal, use.
fn keys(desk: Desk, thing: &Thing) -> AnyView {
    let (source, id) = (thing.source, thing.id());
    let salvaged = thing.origin == Some(Origin::Salvaged);
    let name = thing.name.clone();
    let empty = move |()| found_empty(desk, source, name.clone());
    // Without the row of the saving there is room.
    let (acts, main) = if salvaged { ("low", "mid") } else { ("tall", "tall") };
    let sort =
        salvaged.then(|| view! { <KeyLink label=stock::sort().to_owned() href=Place::Sort(id).href()/> });
    let by_product = salvaged.then(|| by_product(id));
    let items = desk.read(|view| view.shop.items.len());
    let same = (matches!(source, Source::Item(_)) && items > 1).then(|| {
        view! {
            <KeyLink
                label=same::same_as().to_owned()
                note=same::typed_twice().to_owned()
                href=Place::Same(id).href()
            />
        }
    });
    // An item bears nothing: what was done with it is in the journals of what it went into.
    let journal = matches!(source, Source::Lot(_)).then(|| {
        view! { <KeyLink label=journal::the_journal().to_owned() href=Place::LotJournal(id).href()/> }
    });
    // Beside Use where there is room, above it where there is not.
    let gone = view! {
        <KeyLink
            label=shelf::gone().to_owned()
            note=shelf::thrown_or_given().to_owned()
            href=Place::Add(Kind::Shelf, Some(id)).href()
        />
    };
    let (above, beside) =
        if matches!(source, Source::Lot(_)) { (Some(gone), None) } else { (None, Some(gone)) };
    view! {
        <Keys class=acts>
            {sort}
            <Key
                label=stock::marked_empty().to_owned()
                note=stock::nothing_left().to_owned()
                on_tap=Callback::new(empty)
            />
            {above}
            {same}
            <KeyLink label=words::correct().to_owned() href=Place::Entry(id).href()/>
        </Keys>
        <Keys class=main>
            {beside}
            {journal}
            {by_product}
            <KeyLink
                class="wide"
                label=words::use_some().to_owned()
                kind=KeyKind::Filled
                href=Place::Use(Some(id)).href()
            />
        </Keys>
    }
}

/// To the form of what it yielded beside its timber.
fn by_product(lot: Id) -> AnyView {
    let (go, About(about)): (Go, About) = (expect_context(), expect_context());
    let tap = move |()| {
        about.set(Some(Bearer::Lot(lot)));
        go.to(&Place::ByProduct);
    };
    view! { <Key label=receipts::by_product().to_owned() on_tap=Callback::new(tap)/> }
}

fn found_empty(desk: Desk, of: Source, name: String) {
    let entry = desk.fresh();
    desk.act(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write(entry, Shelf::empty(on, of))]
        },
        move |_| Mark { kind: stock::found_empty().to_owned(), what: name.clone(), second: None }.into(),
    );
}

/// A draw or a return of it.
#[derive(Clone, PartialEq)]
struct Drawn {
    entry: Id,
    who: String,
    what: String,
    figure: String,
    lacks: bool,
}

/// The newest draws of a thing.
fn drawn(books: &Books, view: &View, thing: &Thing) -> Vec<Drawn> {
    let of = |from: Source| match from {
        Source::Lot(lot) => view.shop.lots.get(&lot).and_then(|it| it.item).map_or(from, Source::Item),
        Source::Item(_) => from,
    };
    let draws = view.shop.draws.iter().rev().filter(|draw| of(draw.from) == thing.source);
    let row = |draw: &benchslate_core::journal::shop::Draw| {
        let amount = units::amount_short(
            view.tongue,
            Quantity::from_decimal(draw.typed.0.0).unwrap_or_default(),
            draw.typed.1,
            thing.word.as_deref().filter(|_| draw.typed.1 == thing.unit),
        );
        let day = words::on_day(&amount, &view.tongue.day(draw.order.day));
        let cost = books.draw_cost(draw.entry());
        Drawn {
            entry: draw.entry(),
            who: bench::title(view.shop, draw.bearer)
                .unwrap_or_else(|| crate::words::common::the_shop().to_owned()),
            what: if draw.returns.is_some() { words::back(&day) } else { day },
            lacks: cost.is_none(),
            figure: cost.map_or_else(|| stock::no_price().to_owned(), |cost| view.tongue.money(cost)),
        }
    };
    draws.map(row).collect()
}

fn drawn_rows(drawn: Vec<Drawn>) -> AnyView {
    let none = drawn.is_empty().then(|| view! { <p class="note">{words::drawn_by_nobody()}</p> });
    let row = |it: Drawn| {
        let text = SumText {
            label: it.who,
            working: Some(it.what),
            figure: it.figure,
            lacks: it.lacks,
            ..SumText::default()
        };
        view! { <SumRow text leads=Leads::To(Place::Entry(it.entry).href()) signed=false/> }
    };
    view! {
        <Group title=words::drawn_by().to_owned()/>
        {none}
        {drawn.into_iter().map(row).collect::<Vec<_>>()}
    }
}

/// To the two pools of a lot, line by line.
fn cost_link(lot: Id, figure: String, path: String, end: &'static str) -> AnyView {
    view! {
        <RowLink
            label=words::what_it_cost().to_owned()
            end=end.to_owned()
            figure
            leads=Leads::To(Place::Opened(lot, path).href())
        />
    }
}

/// What is left stands above the same thing new; opens to both.
fn above(view: &View, book: &LotBook) -> Option<Row> {
    let it = book.above.as_ref()?;
    Some(Row {
        label: words::above_new().to_owned(),
        working: words::above_new_note().to_owned(),
        figure: view.tongue.money(it.money()?),
        lacks: true,
        href: Some(Place::Opened(book.lot, Path { steps: vec![it.rule.step()] }.to_string()).href()),
    })
}

/// To how a board of it moves and what is left of it weighs; timber only.
fn moves(thing: &Thing) -> Option<AnyView> {
    let timber = thing.purpose == Use::Timber && matches!(thing.source, Source::Lot(_));
    timber.then(|| {
        view! {
            <RowLink
                label=movement::moves_and_weighs().to_owned()
                end=movement::width_and_weight().to_owned()
                leads=Leads::To(Place::Movement(thing.id()).href())
            />
        }
    })
}
