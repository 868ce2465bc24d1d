//! The plain sheet of what was bought, left over or is kept as an item: what it cost, who drew of it, what is left.

use super::{Drawn, drawn, drawn_rows, keys};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText},
        sheet::{Above, Below, Hand, HandKind, Head, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    screens::{
        cautions,
        cost::{Remarks, remarks},
        months::{self, Row},
        stock::thing::Thing,
    },
    shell::{Desk, Place, desk::View, frame::Places, mark::LastMarkHere},
    words::{gaps, salvage as words, same, stock, units},
};
use benchslate_core::measure::InOrder;
use benchslate_core::{
    costing::{Books, Path},
    journal::{Id, kinds::Source},
};

#[component]
pub fn Plain(thing: Thing) -> impl IntoView {
    let desk = Desk::here();
    let (title, keys) = (thing.name.clone(), keys(desk, &thing));
    let (name, id, moves) = (title.clone(), thing.id(), super::moves(&thing));
    let looks = Memo::new(move |_| desk.books(|books, view| look(books, view, &thing)));
    view! {
        <Sheet>
            <Head title=title note=Signal::derive(move || looks.read().origin.clone()) tight=true/>
            <Above>
                <Read name=name below=words::more_below().to_owned()>
                    {move || sheet(looks.get())}
                    {moves}
                    {cautions::way(desk, id)}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>{keys}</Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

/// The sheet in plain words.
#[derive(Clone, PartialEq)]
struct Look {
    origin: Option<String>,
    left: Left,
    one: Option<String>,
    cost: Option<(Id, String, String)>,
    above: Option<Row>,
    came: Vec<(Id, String, String, String)>,
    drawn: Vec<Drawn>,
    also: Vec<(Id, String, String)>,
    remarks: Remarks,
}

/// What is left, and what it cost.
#[derive(Clone, PartialEq)]
struct Left {
    note: Option<String>,
    figure: String,
    lacks: bool,
}

fn look(books: &Books, view: &View, thing: &Thing) -> Look {
    let tongue = view.tongue;
    let line = books.shelf_line(thing.source);
    let left = line.as_ref().and_then(|line| line.quantity);
    let figure = line.as_ref().map(|line| tongue.money(line.value));
    let one = books.unit_cost(thing.source).map(|cost| tongue.money(cost.rounded()));
    let book = match thing.source {
        Source::Lot(lot) => books.lot(lot),
        Source::Item(_) => None,
    };
    let cost = book.as_ref().map(|book| {
        let figure = book.cost.money().map(|cost| tongue.money(cost)).unwrap_or_default();
        (book.lot, figure, Path { steps: vec![book.cost.rule.step()] }.to_string())
    });
    let told = line.as_ref().map(|line| Remarks {
        lacks: line.gaps.iter().map(|gap| gaps::gap(gap, view.shop)).collect(),
        odd: line.flags.iter().map(|flag| gaps::flag(flag, view.shop, tongue)).collect(),
    });
    Look {
        origin: thing.origin.map(|origin| stock::origin(origin).to_owned()),
        left: Left {
            note: left.map(|left| thing.amount(tongue, left)),
            lacks: figure.is_none(),
            figure: figure.unwrap_or_else(|| stock::no_price().to_owned()),
        },
        one: one.map(|one| {
            let unit = units::each_one(thing.unit, thing.word.as_deref());
            words::one_comes_to(&unit, &one)
        }),
        cost,
        above: book.as_ref().and_then(|book| super::above(view, book)),
        came: came(view, thing),
        also: also(view, thing),
        drawn: drawn(books, view, thing),
        remarks: told.unwrap_or_default(),
    }
}

/// The lots of an item, newest first.
fn came(view: &View, thing: &Thing) -> Vec<(Id, String, String, String)> {
    let Source::Item(item) = thing.source else { return Vec::new() };
    let mut lots: Vec<_> = view.shop.lots.iter().filter(|(_, lot)| lot.item == Some(item)).collect();
    lots.order_by_key(|(_, lot)| std::cmp::Reverse(lot.order));
    let row = |(id, lot): (&Id, &benchslate_core::journal::shop::Lot)| {
        let amount = lot.rough.map(|it| thing.amount(view.tongue, it)).unwrap_or_default();
        let paid = lot.till().map_or_else(|| stock::no_price().to_owned(), |till| view.tongue.money(till));
        let whence = lot.whence.clone().unwrap_or_else(|| stock::origin(lot.origin).to_owned());
        (*id, words::on_day(&amount, &view.tongue.day(lot.order.day)), whence, paid)
    };
    lots.into_iter().map(row).collect()
}

/// The other names under which it was typed: the entry that says so, the name, since when.
fn also(view: &View, thing: &Thing) -> Vec<(Id, String, String)> {
    let Source::Item(item) = thing.source else { return Vec::new() };
    let row = |(entry, typed): (Id, &benchslate_core::journal::shop::Item)| {
        let on = view.journal.body(entry)?.on();
        let day = view.tongue.day_year(on.day(&view.shop.zone));
        Some((entry, typed.name.clone(), same::since(&day)))
    };
    view.shop.also(item).into_iter().filter_map(row).collect()
}

fn sheet(look: Look) -> AnyView {
    let text = AnswerText {
        label: words::worth().to_owned(),
        note: look.left.note,
        figure: look.left.figure,
        lacks: look.left.lacks,
    };
    let one = look.one.map(|one| view! { <p class="note">{one}</p> });
    let cost =
        look.cost.map(|(lot, figure, path)| super::cost_link(lot, figure, path, words::line_by_line()));
    let row = |(id, label, working, figure): (Id, String, String, String)| {
        let text = SumText { label, working: Some(working), figure, ..SumText::default() };
        view! { <SumRow text leads=Leads::To(Place::Entry(id).href()) signed=false/> }
    };
    let came = (!look.came.is_empty()).then(|| {
        view! { <Group title=words::came_in().to_owned()/>{look.came.into_iter().map(row).collect::<Vec<_>>()} }
    });
    let named = |(entry, label, working): (Id, String, String)| {
        let text = SumText { label, working: Some(working), ..SumText::default() };
        view! { <SumRow text leads=Leads::To(Place::Entry(entry).href()) signed=false/> }
    };
    let also = (!look.also.is_empty()).then(|| {
        view! { <Group title=same::also().to_owned()/>{look.also.into_iter().map(named).collect::<Vec<_>>()} }
    });
    view! {
        <Answer text/>
        {one}
        {look.above.map(|it| months::drawn(vec![it]))}
        {cost}
        {came}
        {also}
        {drawn_rows(look.drawn)}
        {remarks(look.remarks)}
    }
}
