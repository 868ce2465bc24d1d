//! A receipt in the evening: what it comes to, what its lines say already, and the keys that add the rest.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText, RowLink, Tone},
        key::{Key, KeyKind, KeyLink},
        message::{Message, MessageKind},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText, SumTotal, Sums},
    },
    screens::{
        journal::{line, put_right},
        photos::{self, About, PhotoKey},
        trouble::Troubles,
    },
    shell::{
        Desk, Go, Place,
        desk::{Mark, Phase, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{common, journal, receipts as words, shop as shop_words},
};
use benchslate_core::{
    journal::{
        Body, Change, Id, Kind,
        kinds::{Receipt, SettingKey},
        shop::{self, tax_in},
    },
    measure::{Dec, Money},
};

/// The sheet.
#[component]
pub fn ReceiptSheet(receipt: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let there = Memo::new(move |_| desk.read(|view| view.shop.receipts.contains_key(&receipt)));
    let title = Signal::derive(move || {
        let from = desk.read(|view| view.shop.receipts.get(&receipt).and_then(|it| it.whence.clone()));
        from.map_or_else(|| words::receipt().to_owned(), |from| words::receipt_from(&from))
    });
    let day = Signal::derive(move || {
        desk.read(|view| view.shop.receipts.get(&receipt).map(|it| view.tongue.day(it.order.day)))
    });
    let keys = move || {
        there.get().then(|| {
            view! {
                <Key
                    label=words::put_right().to_owned()
                    note=words::freight_tax().to_owned()
                    on_tap=Callback::new(move |()| put_right(desk, go, receipt))
                />
                <PhotoKey about=Signal::stored(About { entry: Some(receipt), bearer: None })/>
            }
        })
    };
    let lines = move || {
        there.get().then(|| {
            view! {
                <Keys class="tall">
                    <KeyLink
                        label=words::straight_to().to_owned()
                        note=words::not_shelved().to_owned()
                        href=Place::LineExpense(receipt).href()
                    />
                    <KeyLink
                        class="wide"
                        label=words::add_a_lot().to_owned()
                        note=words::onto_the_shelf().to_owned()
                        kind=KeyKind::Filled
                        href=Place::LineLot(receipt).href()
                    />
                </Keys>
            }
        })
    };
    view! {
        <Sheet>
            <Head title note=day tight=true/>
            <Above>
                <Troubles/>
                <Read name=title below=words::more_below().to_owned()>{move || body(desk, receipt)}</Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>
                    <Keys class="mid">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        {keys}
                    </Keys>
                    {lines}
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn body(desk: Desk, id: Id) -> AnyView {
    let drawn = desk.read(|view| {
        let Some(Body::Receipt(stored)) = view.journal.body(id) else { return None };
        let receipt = view.shop.receipts.get(&id)?;
        Some(view! {
            {answer(view, receipt)}
            {sum(view, receipt)}
            {tax_offer(desk, view, id, stored)}
            {photos::of_entry(view, id)}
        })
    });
    drawn.unwrap_or_else(|| {
        let ready = desk.phase.get() == Phase::Ready;
        ready.then(|| view! { <Message title=words::not_there().to_owned() kind=MessageKind::Offer/> }).draw()
    })
}

/// What is left to say; or that all of it is said.
fn answer(view: &View, receipt: &shop::Receipt) -> AnyView {
    let open = receipt.open().unwrap_or(Money::ZERO);
    let total = receipt.total.map(|total| view.tongue.money(total));
    let of = total.as_deref().map(words::of_total);
    let (label, tone, figure) = if let Some(beyond) = receipt.beyond() {
        (words::too_much(), Tone::Red, view.tongue.money(beyond))
    } else if receipt.waits() && receipt.total.is_some() {
        (words::left_to_say(), Tone::Ink, view.tongue.money(open))
    } else if receipt.waits() {
        return view! { <p class="lead">{words::no_total_no_line()}</p> };
    } else {
        (words::all_said(), Tone::Ink, view.tongue.money(receipt.comes_to()))
    };
    let text = AnswerText { label: label.to_owned(), note: of, figure, lacks: false };
    view! { <Answer text tone/> }
}

/// Its lines, what stands once, and the total.
fn sum(view: &View, receipt: &shop::Receipt) -> AnyView {
    let line = |(entry, value): &(Id, Money)| {
        let text = SumText {
            label: line::what(view, *entry),
            working: Some(line::kind(view, *entry)),
            figure: view.tongue.money(*value),
            ..SumText::default()
        };
        view! { <SumRow text leads=Leads::To(Place::Entry(*entry).href())/> }
    };
    let whole = receipt.whole;
    let once = [
        ("+", words::freight(), whole.freight),
        ("\u{2212}", words::discount(), whole.discount),
        ("+", words::tax(), whole.tax),
        ("+", words::tax_back(), whole.tax_back),
    ];
    let once = once.into_iter().filter(|(.., money)| !money.is_zero()).map(|(sign, label, money)| {
        let text = SumText {
            sign: sign.to_owned(),
            label: label.to_owned(),
            working: Some(words::shared_by_value().to_owned()),
            figure: view.tongue.money(money),
            ..SumText::default()
        };
        view! { <SumRow text/> }
    });
    let open = receipt.open().filter(|open| *open > Money::ZERO).map(|open| {
        let text = SumText {
            sign: "+".to_owned(),
            label: words::left_to_say().to_owned(),
            figure: view.tongue.money(open),
            lacks: true,
            ..SumText::default()
        };
        view! { <SumRow text/> }
    });
    let rows: Vec<AnyView> = receipt.lines.iter().map(line).chain(once).chain(open).collect();
    let total = receipt.total.map(|total| {
        view! { <SumTotal label=words::paid_in_all().to_owned() figure=view.tongue.money(total)/> }
    });
    let none = receipt.lines.is_empty().then(|| view! { <p class="note">{words::what_lines_are()}</p> });
    view! { <Group title=words::lines().to_owned()/>{none}<Sums>{rows}{total}</Sums> }
}

/// The shop's sales tax that would be in the total, kept by one tap.
fn tax_offer(desk: Desk, view: &View, id: Id, stored: &Receipt) -> Option<AnyView> {
    let share = Dec::parse(view.shop.settings.latest(SettingKey::TaxRate)?).ok()?;
    let total = stored.total.filter(|_| stored.tax.is_none())?;
    let tax = tax_in(total, share, view.tongue.minor())
        .filter(|tax| tax.money().is_some_and(|it| !it.is_zero()))?;
    let figure = view.tongue.money(tax.money()?);
    let label = words::tax_in_it(&shop_words::percent(&share.hundredths()));
    let tap = move |()| {
        desk.act(
            move |hand| match hand.journal.body(id) {
                Some(Body::Receipt(it)) => vec![Change::write(id, Receipt { tax: Some(tax), ..it.clone() })],
                _ => Vec::new(),
            },
            |_| {
                let second = Some(words::mark_tax().to_owned());
                Mark { kind: journal::kind(Kind::Receipt).to_owned(), what: String::new(), second }.into()
            },
        );
    };
    let leads = Leads::Tap(Callback::new(tap));
    Some(view! { <RowLink label end=words::keep_it_so().to_owned() figure=figure leads/> })
}
