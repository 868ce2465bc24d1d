//! The yield chain of a salvaged lot: what reached each link, what was lost on the way, what getting there took.

use super::thing::{self, Thing};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText, RowLink},
        chain::{LinkText, YieldChain},
        key::{Key, KeyKind, KeyLink},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    screens::cost::{self, Remarks, Say},
    shell::{
        Desk, Go, Place,
        desk::{Phase, View},
        frame::Places,
    },
    words::{common, salvage as words, stock},
};
use benchslate_core::{
    costing::{
        Books, Path,
        salvage::{Link, Reached},
    },
    journal::Id,
    measure::Quantity,
};

/// Link by link.
#[component]
pub fn ChainSheet(lot: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let looks = Memo::new(move |_| desk.books(|books, view| look(books, view, lot)));
    let title =
        Signal::derive(move || looks.read().as_ref().map(|look| look.name.clone()).unwrap_or_default());
    let all = move || match looks.get() {
        Some(look) => sheet(look),
        None if desk.phase.get() == Phase::Ready => view! { <p class="note">{stock::not_there()}</p> },
        None => ().draw(),
    };
    view! {
        <Sheet>
            <Head title tight=true/>
            <Above><Read name=words::the_chain().to_owned() below=words::all_links_below().to_owned()>{all}</Read></Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <KeyLink
                            class="wide"
                            label=stock::sort().to_owned()
                            kind=KeyKind::Filled
                            href=Place::Sort(lot).href()
                        />
                    </Keys>
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

#[derive(Clone, PartialEq)]
struct Look {
    name: String,
    piece: (String, String),
    links: Vec<LinkText>,
    more: Option<String>,
    cost: (String, String),
    remarks: Remarks,
}

fn look(books: &Books, view: &View, lot: Id) -> Option<Look> {
    let (book, thing) = (books.lot(lot)?, Thing::of(view.shop, lot)?);
    let (chain, tongue) = (&book.chain, view.tongue);
    let root = Path { steps: vec![chain.cost.rule.step()] };
    let gathered = chain.links.first()?.quantity;
    let text = |link: &Link| {
        text(
            view,
            &thing,
            link,
            gathered,
            Place::Opened(lot, root.to(link.cost.rule.step()).to_string()).href(),
        )
    };
    let last = chain.links.last()?;
    let share = last.share.map(|share| super::sort::percent(view, share)).unwrap_or_default();
    let cost =
        chain.cost.money().map_or_else(|| cost::missing(&chain.cost).to_owned(), |it| tongue.money(it));
    Some(Look {
        name: thing.name.clone(),
        piece: (
            words::reaches(&tongue.quantity(last.quantity), &thing.amount_short(tongue, gathered)),
            share,
        ),
        links: chain.links.iter().map(text).collect(),
        more: (!chain.more.is_zero()).then(|| words::more_was_there(&thing.amount(tongue, chain.more))),
        cost: (cost, Place::Opened(lot, root.to_string()).href()),
        remarks: Remarks::of(Say { books, view }, &chain.cost),
    })
}

fn text(view: &View, thing: &Thing, link: &Link, gathered: Quantity, href: String) -> LinkText {
    let tongue = view.tongue;
    let told = |quantity: Quantity| (!quantity.is_zero()).then(|| tongue.quantity(quantity));
    let hours = (!link.hours.is_zero()).then(|| tongue.hours(link.hours.seconds()));
    let share = link.share.filter(|_| link.at != Reached::Gathered);
    let share = share.map(|share| super::sort::percent(view, share));
    let [lost, mishap, waits] = [link.lost, link.mishap, link.waits];
    let of = |quantity: Quantity| thing::share(quantity, gathered);
    LinkText {
        label: words::link(link.at).to_owned(),
        reached: words::reached(&thing.amount_short(tongue, link.quantity), share.as_deref()),
        way: words::on_the_way(
            told(lost).as_deref(),
            told(mishap).as_deref(),
            told(waits).as_deref(),
            hours.as_deref(),
        ),
        figure: link.cost.money().filter(|it| !it.is_zero()).map(|it| tongue.money(it)).unwrap_or_default(),
        shares: [of(link.quantity), of(lost) + of(mishap), of(waits)],
        used: link.at == Reached::InThePiece,
        href,
    }
}

fn sheet(look: Look) -> AnyView {
    let (note, figure) = look.piece;
    let text =
        AnswerText { label: words::of_all_gathered().to_owned(), note: Some(note), figure, lacks: false };
    let more = look.more.map(|more| view! { <p class="note">{more}</p> });
    let (cost, href) = look.cost;
    view! {
        <Answer text/>
        <YieldChain links=look.links/>
        <RowLink label=words::all_links_cost().to_owned() figure=cost leads=Leads::To(href)/>
        {more}
        <p class="note">{words::links_by_stage()}</p>
        {cost::remarks(look.remarks)}
    }
}
