//! The list: filled from what is low and what repeats will take, added to by hand, ticked in the store with the price.

use super::{many, name};
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, Field, Typing},
        key::{Key, KeyKind, KeyLink},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
        tick_row::TickRow,
    },
    screens::{first_amount, journal::facts, shop, stock::form::Form, trouble::Troubles},
    shell::{
        Desk, Go, Place,
        desk::{Mark, Marked, Phase, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{buying as words, common, journal},
};
use benchslate_core::{
    costing::Books,
    journal::{
        Body, Change, Id, Kind, On,
        kinds::{Bearer, BuyLine},
    },
    measure::{Dec, number},
    planning::buying,
};

const PRICE: &str = "buy-price";
/// So many that were bought stand under the list.
const SHOWN: usize = 8;

/// A line as it is drawn.
#[derive(Clone, PartialEq, Eq, Hash)]
struct Line {
    entry: Id,
    what: String,
    many: String,
}

/// Lines of one build, or of the shop.
#[derive(Clone, PartialEq)]
struct Together {
    title: String,
    lines: Vec<Line>,
}

/// What was bought.
#[derive(Clone, PartialEq)]
struct Ticked {
    lot: Id,
    what: String,
    day: String,
    paid: Option<String>,
}

#[derive(Clone, Default, PartialEq)]
struct Look {
    sets: Vec<Together>,
    ticked: Vec<Ticked>,
    count: usize,
    missing: usize,
}

/// The sheet.
#[component]
pub fn BuyingSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "buying");
    let chosen = RwSignal::new(None::<Id>);
    let look =
        Memo::new(move |_| if desk.phase.get() == Phase::Ready { desk.books(look) } else { Look::default() });
    let list = move || {
        let look = look.get();
        let none = (look.count == 0).then(|| view! { <p class="lead">{words::nothing()}</p> });
        let sets = look.sets.into_iter().map(move |set| drawn(set, chosen));
        let ticked = (!look.ticked.is_empty()).then(|| bought(look.ticked));
        view! { {none}{sets.collect::<Vec<_>>()}{ticked} }
    };
    let hand = move || match chosen.get() {
        Some(line) => untrack(|| price(desk, form, chosen, line)),
        None => keys(desk, go, look.with(|look| look.missing)),
    };
    view! {
        <Sheet>
            <Head
                title=words::to_buy().to_owned()
                note=Signal::derive(move || words::lines(look.with(|look| look.count)))
                tight=true
            />
            <Above>
                <Troubles/>
                <Read name=words::to_buy().to_owned() below=words::bought().to_owned()>{list}</Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>{hand}</Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn keys(desk: Desk, go: Go, missing: usize) -> AnyView {
    let kind = |filled: bool| if filled { KeyKind::Filled } else { KeyKind::Plain };
    let fill = (missing > 0).then(|| {
        view! {
            <Key
                label=words::fill().to_owned()
                note=words::missing(missing)
                kind=KeyKind::Filled
                on_tap=Callback::new(move |()| fill(desk))
            />
        }
    });
    view! {
        <Keys class="tall">
            <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
            <KeyLink
                label=words::add().to_owned()
                kind=kind(missing == 0)
                href=Place::Add(Kind::BuyLine, None).href()
            />
            {fill}
        </Keys>
    }
}

/// What was paid for the line that is ticked.
fn price(desk: Desk, form: Form, chosen: RwSignal<Option<Id>>, line: Id) -> AnyView {
    let what = desk.now_read(|view| match view.journal.body(line) {
        Some(Body::BuyLine(it)) => name(view, it),
        _ => String::new(),
    });
    crate::screens::stock::pad::focus(PRICE);
    let not_yet = move |()| {
        form.set(PRICE, "");
        chosen.set(None);
    };
    let tick = Callback::new(move |()| tick(desk, form, chosen, line));
    view! {
        <Cells>
            <Field
                id=PRICE
                class="whole"
                label=words::price_of(&what)
                typing=Typing::Decimal
                unit=first_amount::beside(desk)
                value=form.signal(PRICE)
                error=form.error(PRICE)
                on_input=Callback::new(move |text: String| form.set(PRICE, text))
                on_enter=tick
            />
        </Cells>
        <Keys>
            <Key label=words::not_yet().to_owned() on_tap=Callback::new(not_yet)/>
            <Key
                class="wide"
                label=words::buy().to_owned()
                note=words::price_later().to_owned()
                kind=KeyKind::Filled
                on_tap=tick
            />
        </Keys>
    }
}

fn drawn(set: Together, chosen: RwSignal<Option<Id>>) -> AnyView {
    let row = move |line: Line| {
        let entry = line.entry;
        let tap = move |()| chosen.update(|at| *at = if *at == Some(entry) { None } else { Some(entry) });
        view! {
            <TickRow
                label=line.what
                note=line.many
                ticked=Signal::derive(move || chosen.get() == Some(entry))
                on_tap=Callback::new(tap)
            />
        }
    };
    view! {
        <Group title=set.title/>
        {set.lines.into_iter().map(row).collect::<Vec<_>>()}
    }
}

fn bought(ticked: Vec<Ticked>) -> AnyView {
    let row = |it: Ticked| {
        let text = SumText {
            label: it.what,
            working: Some(it.day),
            lacks: it.paid.is_none(),
            figure: it.paid.unwrap_or_else(|| crate::words::stock::no_price().to_owned()),
            ..SumText::default()
        };
        view! { <SumRow text leads=Leads::To(Place::Entry(it.lot).href()) signed=false/> }
    };
    view! {
        <Group title=words::bought().to_owned()/>
        {ticked.into_iter().map(row).collect::<Vec<_>>()}
    }
}

fn look(books: &Books, view: &View) -> Look {
    let mut look = Look { missing: buying::wanted(view.shop, books).len(), ..Look::default() };
    for line in view.shop.to_buy() {
        let Some(Body::BuyLine(body)) = view.journal.body(line.entry()) else { continue };
        let title = match line.for_build {
            Some(build) => words::for_build(&facts::bearer(view, Bearer::Build(build))),
            None => words::for_the_shop().to_owned(),
        };
        let drawn = Line { entry: line.entry(), what: name(view, body), many: many(view, body) };
        look.count = look.count.saturating_add(1);
        match look.sets.iter_mut().find(|set| set.title == title) {
            Some(set) => set.lines.push(drawn),
            None => look.sets.push(Together { title, lines: vec![drawn] }),
        }
    }
    for (line, lot) in view.shop.bought().take(SHOWN) {
        let (Some(Body::BuyLine(body)), Some(it)) =
            (view.journal.body(line.entry()), view.shop.lots.get(&lot))
        else {
            continue;
        };
        look.ticked.push(Ticked {
            lot,
            what: journal::comma(&name(view, body), &many(view, body)),
            day: view.tongue.day(it.order.day),
            paid: it.till().map(|paid| view.tongue.money(paid)),
        });
    }
    look
}

/// Puts on the list what is low and what open builds will take, all in one act.
fn fill(desk: Desk) {
    desk.act(
        |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            let wanted = buying::wanted(hand.shop, &Books::close(hand.shop, hand.now));
            let lines =
                wanted.iter().map(|it| Change::write((hand.fresh)(), buying::line(hand.shop, on, it)));
            lines.collect()
        },
        |after| {
            let view = after.view();
            let first = after.entries.first().and_then(|entry| match view.journal.body(*entry) {
                Some(Body::BuyLine(line)) => Some(journal::comma(&name(&view, line), &many(&view, line))),
                _ => None,
            });
            let what = words::filled(&first.unwrap_or_default(), after.entries.len().saturating_sub(1));
            Marked::from(Mark { kind: journal::kind(Kind::BuyLine).to_owned(), what, second: None })
        },
    );
}

fn tick(desk: Desk, form: Form, chosen: RwSignal<Option<Id>>, entry: Id) {
    form.all_right();
    let paid = form.read(PRICE, number::amount).map(Dec);
    if paid.is_some() && !first_amount::can_be_kept(desk) {
        form.wrong(PRICE, crate::words::money::no_currency().to_owned());
    }
    if form.is_wrong() {
        return shop::to_the_wrong();
    }
    let lot = desk.fresh();
    desk.act_then(
        move |hand| {
            let Some(Body::BuyLine(line)) = hand.journal.body(entry).cloned() else { return Vec::new() };
            // Another window may have ticked it meanwhile.
            if !hand.shop.to_buy().any(|it| it.entry() == entry) {
                return Vec::new();
            }
            let mut changes = if paid.is_some() { first_amount::settings(hand) } else { Vec::new() };
            let on = On::At(hand.shop.zone.when(hand.now));
            changes.extend(buying::buy(hand.shop, on, (entry, &line), lot, paid));
            changes
        },
        move |after| {
            let view = after.view();
            let said = |line: &BuyLine| journal::comma(&name(&view, line), &many(&view, line));
            let what = match view.journal.body(entry) {
                Some(Body::BuyLine(line)) => said(line),
                _ => String::new(),
            };
            let money = paid.and_then(Dec::money).map(|paid| words::paid(&view.tongue.money(paid)));
            let second = Some(money.unwrap_or_else(|| words::no_price_yet().to_owned()));
            Marked::from(Mark { kind: words::bought_kind().to_owned(), what, second })
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                chosen.set(None);
            }
        },
    );
}
