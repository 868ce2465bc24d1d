//! Somebody who works here: name, paid or not, and what an hour counts for from a day on.

use super::people::day;
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        field::{Cells, Typing},
        message::Message,
        seg::{Choice, Seg, SegKind},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    screens::form_keys::{form_keys, leave_key},
    screens::{away, first_amount, stock::form::Form, trouble::Troubles},
    shell::{
        Desk, Go, Place,
        desk::{After, Mark, Marked, Phase},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{away as away_words, free, money, shop as words},
};
use benchslate_core::measure::InOrder;
use benchslate_core::{
    journal::{
        Body, Change, Id, On,
        kinds::{Person, Rate},
    },
    measure::{Day, Dec, day as days, number},
    timing::Hand as Deciding,
};

/// What was typed, read.
#[derive(Clone)]
struct Typed {
    name: String,
    paid: Option<bool>,
    rate: Option<Rate>,
}

/// A person; none: a new one.
#[component]
pub fn PersonSheet(of: Option<Id>) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let entry = of.unwrap_or_else(|| desk.fresh());
    let form = Form::open(desk, draft_of(of));
    let now = Memo::new(move |_| desk.read(|view| stored(view.journal.body(entry))));
    // An address can name somebody who was struck out, or was never on this phone.
    let known =
        Memo::new(move |_| of.is_none() || desk.phase.get() != Phase::Ready || now.with(Option::is_some));
    let title = Signal::derive(move || {
        let named = now.read().as_ref().map(|person| person.name.clone());
        let other = if known.get() { words::new_person() } else { words::nobody() };
        named.unwrap_or_else(|| other.to_owned())
    });
    let keep = Callback::new(move |()| keep(desk, go, form, entry));
    view! {
        <Sheet>
            <Head title=title/>
            <Above>
                <Troubles/>
                <Read name=title below=words::rates_below().to_owned()>
                    {move || if known.get() { form_of(desk, form, entry, now) } else { nobody() }}
                    {move || now.with(Option::is_some).then(|| free_row(desk, entry))}
                    {move || now.with(Option::is_some).then(|| away_row(desk, entry))}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::person().to_owned()>
                    {move || if known.get() { form_keys(go, words::keep(), keep) } else { leave_key(go) }}
                </Hand>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

fn form_of(desk: Desk, form: Form, entry: Id, now: Memo<Option<Person>>) -> AnyView {
    view! {
        <div class="form">{fields(desk, form, now)}</div>
        {first_amount::offer(desk)}
        {move || rates(desk, entry, now)}
        <p class="note">{words::rates_reach_back()}</p>
    }
}

/// The way to when they are free.
fn free_row(desk: Desk, entry: Id) -> AnyView {
    let windows = desk.read(|view| view.shop.people.get(&entry).map_or(0, |it| it.free.len()));
    let end = if windows == 0 { free::none_yet().to_owned() } else { free::so_many(windows) };
    view! { <RowLink label=free::free_hours().to_owned() end leads=Leads::To(Place::Free(entry).href())/> }
}

/// Not offered any more; hours and rates stay.
fn away_row(desk: Desk, entry: Id) -> AnyView {
    let away = desk.read(|view| !view.shop.offers(entry));
    let (label, end) = if away {
        (away_words::take_back(), away_words::offered_again())
    } else {
        (away_words::put_away(), away_words::stays_whole())
    };
    let tap = Callback::new(move |()| away::put(desk, entry, away));
    view! { <RowLink label=label.to_owned() end=end.to_owned() leads=Leads::Tap(tap)/> }
}

fn nobody() -> AnyView {
    let lines = Signal::stored(vec![words::nobody_why().to_owned()]);
    view! { <Message title=words::nobody().to_owned() lines/> }
}

/// A draft for each. Its name lives as long as the page: a few dozen bytes for each sheet that is opened.
fn draft_of(of: Option<Id>) -> &'static str {
    of.map_or("person", |id| Box::leak(format!("person.{id}").into_boxed_str()))
}

fn stored(body: Option<&Body>) -> Option<Person> {
    match body {
        Some(Body::Person(person)) => Some(person.clone()),
        _ => None,
    }
}

fn fields(desk: Desk, form: Form, now: Memo<Option<Person>>) -> AnyView {
    let name = Signal::derive(move || now.read().as_ref().map(|person| person.name.clone()));
    let from = Signal::derive(move || {
        let first = now.read().as_ref().is_none_or(|person| person.rates.is_empty());
        Some(if first { words::the_beginning() } else { words::today() }.to_owned())
    });
    let currency = first_amount::beside(desk);
    view! {
        <Cells>
            {super::set::cell(form, "name", words::name(), name, None, "whole", Typing::Words)}
            {super::set::cell(form, "rate", words::rate(), Signal::stored(None), Some(currency), "", Typing::Decimal)}
            {super::set::cell(form, "from", words::from_a_day(), from, None, "", Typing::Words)}
        </Cells>
        {wages(form, now)}
    }
}

fn wages(form: Form, now: Memo<Option<Person>>) -> AnyView {
    let chosen = Signal::derive(move || {
        let paid = paid(&form.get("paid")).unwrap_or_else(|| now.read().as_ref().is_some_and(|it| it.paid));
        usize::from(paid)
    });
    let choices = vec![
        Choice { label: words::unpaid().to_owned(), note: Some(words::own_time().to_owned()) },
        Choice { label: words::paid().to_owned(), note: Some(words::money_out().to_owned()) },
    ];
    view! {
        <Seg
            name=words::wages().to_owned()
            kind=SegKind::Modes
            class="sides"
            choices=Signal::stored(choices)
            chosen
            on_choose=Callback::new(move |at| form.set("paid", if at == 1 { "yes" } else { "no" }))
        />
    }
}

fn paid(code: &str) -> Option<bool> {
    match code {
        "yes" => Some(true),
        "no" => Some(false),
        _ => None,
    }
}

/// The dated rates, the latest first.
fn rates(desk: Desk, entry: Id, now: Memo<Option<Person>>) -> Option<AnyView> {
    let mut rates = now.get()?.rates;
    rates.order_by_key(|rate| rate.from);
    let at = desk.at_tap();
    let row = |rate: Rate| {
        let text = desk.now_read(|view| SumText {
            label: match rate.from {
                Some(from) => words::from(&day(view, from, view.shop.zone.day(at))),
                None => words::from(words::the_beginning()),
            },
            working: Some(words::tap_to_take_off().to_owned()),
            figure: rate.an_hour.money().map(|money| view.tongue.money(money)).unwrap_or_default(),
            ..SumText::default()
        });
        let tap = Callback::new(move |()| take_off(desk, entry, rate.clone()));
        view! { <SumRow text leads=Leads::Tap(tap) signed=false/> }
    };
    let rows: Vec<AnyView> = rates.into_iter().rev().map(row).collect();
    (!rows.is_empty()).then(|| view! { <Group title=words::rates().to_owned()/>{rows} })
}

fn take_off(desk: Desk, entry: Id, rate: Rate) {
    let gone = rate.clone();
    desk.act(
        move |hand| {
            let Some(mut person) = stored(hand.journal.body(entry)) else { return Vec::new() };
            person.rates.retain(|it| *it != rate);
            vec![Change::write(entry, person)]
        },
        move |after| {
            let name = after.shop.people.get(&entry).map(|it| it.name.clone()).unwrap_or_default();
            let rate = gone.an_hour.money().map(|money| after.tongue.money(money)).unwrap_or_default();
            marked(words::rate_off(&name, &rate))
        },
    );
}

fn keep(desk: Desk, go: Go, form: Form, entry: Id) {
    let Some(typed) = read(desk, form, entry) else { return super::set::to_the_wrong() };
    let rated = typed.rate.is_some();
    desk.act_then(
        move |hand| {
            // The first amount settles what the shop counts in.
            let mut changes = if rated { first_amount::settings(hand) } else { Vec::new() };
            changes.push(Change::write(entry, written(hand, entry, &typed)));
            changes
        },
        move |after| said(after, entry),
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.instead(&Place::Shop);
            }
        },
    );
}

/// None: something is wrong, and said by its field.
fn read(desk: Desk, form: Form, entry: Id) -> Option<Typed> {
    form.all_right();
    let at = desk.at_tap();
    let (today, now) = desk.now_read(|view| (view.shop.zone.day(at), stored(view.journal.body(entry))));
    let name = match (form.now("name").trim(), &now) {
        ("", Some(person)) => person.name.clone(),
        (name, _) => name.to_owned(),
    };
    if let Some(wrong) = words::bad_name(&name) {
        form.wrong("name", wrong.to_owned());
    }
    let from = form.read("from", |text| days::typed_near(text, today));
    let rate = form.read("rate", number::amount);
    if rate.is_some() && !first_amount::can_be_kept(desk) {
        form.wrong("rate", money::no_currency().to_owned());
    }
    let first = now.is_none_or(|person| person.rates.is_empty());
    let rate = rate.map(|rate| Rate { from: from.or((!first).then_some(today)), an_hour: Dec(rate) });
    (!form.is_wrong()).then(|| Typed { name, paid: paid(&form.now("paid")), rate })
}

fn written(hand: &Deciding, entry: Id, typed: &Typed) -> Person {
    let on = On::At(hand.shop.zone.when(hand.now));
    let fresh = || Person { on, name: String::new(), paid: false, rates: Vec::new(), free: Vec::new() };
    let mut person = stored(hand.journal.body(entry)).unwrap_or_else(fresh);
    person.name.clone_from(&typed.name);
    person.paid = typed.paid.unwrap_or(person.paid);
    if let Some(rate) = &typed.rate {
        let from: Option<Day> = rate.from;
        person.rates.retain(|it| it.from != from);
        person.rates.push(rate.clone());
    }
    person
}

fn said(after: &After, entry: Id) -> Marked {
    let today = after.shop.zone.day(after.now);
    let Some(person) = after.shop.people.get(&entry) else { return Marked::default() };
    let rate = person.rate_on(today).map(|rate| after.tongue.money(rate));
    marked(words::an_hour(&person.name, rate.as_deref()))
}

fn marked(what: String) -> Marked {
    Mark { kind: words::person().to_owned(), what, second: None }.into()
}
