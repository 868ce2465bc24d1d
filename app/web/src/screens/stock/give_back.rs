//! Stock that comes back from a draw: at what it cost when it was drawn.

use super::{
    form::{Cell, Form},
    pad,
    thing::Thing,
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{AnswerText, Outcome},
        field::Cells,
        key::{Key, KeyKind},
        message::Message,
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
    },
    screens::first_amount,
    shell::{Desk, Go, desk::Mark, frame::Places},
    words::{common, refusal, stock as words, units},
};
use benchslate_core::{
    journal::{
        Change, Id, On,
        kinds::{Draw, Source},
        shop,
    },
    measure::{
        Money, Quantity, Unit,
        marks::{self, Hint},
    },
};

const BACK: &str = "return-quantity";
const OF: &str = "of";

/// The sheet of a return.
#[component]
pub fn ReturnSheet(draw: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "return");
    let of = Memo::new(move |_| desk.read(|view| drawn(view.shop, draw)));
    let title = Signal::derive(move || {
        of.get().map_or_else(|| words::no_such_draw().to_owned(), |(thing, _)| thing.name)
    });
    let note = Signal::derive(move || of.read().as_ref().map(|_| words::what_comes_back().to_owned()));
    view! {
        <Sheet>
            <Head title note tight=true/>
            <Above>
                <Read name=title>
                    {move || match of.get() {
                        Some((thing, of)) => body(desk, form, &thing, &of),
                        None => view! { <Message title=words::no_such_draw().to_owned()/> },
                    }}
                </Read>
            </Above>
            <Below>
                <Hand name=words::use_keys().to_owned() kind=HandKind::Tall>
                    {move || of.get().map(|(thing, of)| hand(desk, go, form, thing, of))}
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn drawn(shop: &benchslate_core::journal::Shop, draw: Id) -> Option<(Thing, shop::Draw)> {
    let draw = shop.draws.iter().find(|it| it.entry() == draw && it.returns.is_none())?.clone();
    let (Source::Lot(id) | Source::Item(id)) = draw.from;
    Some((Thing::of(shop, id)?, draw))
}

/// What is typed for this draw; what was typed for another is not shown.
fn typed(form: Form, draw: &shop::Draw) -> String {
    if form.get(OF) == draw.entry().to_string() { form.get(BACK) } else { String::new() }
}

fn read(form: Form, thing: &Thing, draw: &shop::Draw) -> Option<Result<(Quantity, Unit), String>> {
    let text = typed(form, draw);
    if text.trim().is_empty() {
        return None;
    }
    let hint = Hint { unit: Some(thing.unit), gallons: first_amount::gallons() };
    let typed = marks::quantity(&text, hint).map_err(|it| refusal::sentence(&it));
    Some(typed.map(|typed| (typed.quantity(), typed.unit.unwrap_or(thing.unit))))
}

fn body(desk: Desk, form: Form, thing: &Thing, draw: &shop::Draw) -> AnyView {
    let amount =
        desk.read(|view| draw.quantity.map(|it| thing.amount_short(view.tongue, it))).unwrap_or_default();
    let day = desk.read(|view| view.tongue.day(draw.order.day));
    let text = AnswerText { label: words::of_draw(&amount, &day), ..AnswerText::default() };
    let unit = units::short(thing.unit).to_owned();
    let unit = Signal::stored((!unit.is_empty()).then_some(unit));
    let current = RwSignal::new(BACK);
    let over = {
        let (thing, draw) = (thing.clone(), draw.clone());
        move || {
            let typed = read(form, &thing, &draw)?.ok()?;
            let back = desk.read(|view| view.shop.in_stock_unit(thing.source, typed.0, typed.1))?;
            (Some(back) > draw.quantity).then(|| view! { <p class="note">{words::more_than_drawn()}</p> })
        }
    };
    // What was typed for another draw goes.
    if form.now(OF) != draw.entry().to_string() {
        form.set(OF, draw.entry().to_string());
        form.set(BACK, "");
    }
    pad::focus(BACK);
    view! {
        <Outcome text/>
        <Cells>{Cell::number(BACK, words::how_much()).unit(unit).padded(current).whole().draw(form)}</Cells>
        {over}
        <p class="note">{words::return_says()}</p>
    }
}

fn hand(desk: Desk, go: Go, form: Form, thing: Thing, draw: shop::Draw) -> AnyView {
    let current = RwSignal::new(BACK);
    let (for_label, of) = (thing.clone(), draw.clone());
    let label = move || match read(form, &for_label, &of) {
        Some(Ok((quantity, unit))) => {
            let word = for_label.word.as_deref().filter(|_| unit == for_label.unit);
            words::bring_back(&desk.read(|view| units::amount_short(view.tongue, quantity, unit, word)))
        }
        Some(Err(_)) | None => words::bring_back_it().to_owned(),
    };
    let tap = move |()| untrack(|| keep(desk, go, form, &thing, &draw));
    view! {
        {pad::figures(desk, form, current)}
        <Keys>
            <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
            <Key class="wide" label=Signal::derive(label) kind=KeyKind::Filled on_tap=Callback::new(tap)/>
        </Keys>
    }
}

fn keep(desk: Desk, go: Go, form: Form, thing: &Thing, draw: &shop::Draw) {
    form.all_right();
    let (quantity, unit) = match read(form, thing, draw) {
        Some(Ok(typed)) => typed,
        Some(Err(sentence)) => return form.wrong(BACK, sentence),
        None => return form.wrong(BACK, words::say_how_much_back().to_owned()),
    };
    if desk.now_read(|view| view.shop.in_stock_unit(thing.source, quantity, unit)).is_none() {
        let kept_in = units::each_one(thing.unit, thing.word.as_deref());
        return form.wrong(BACK, words::unit_does_not_fit(&kept_in));
    }
    let (entry, draw, thing) = (desk.fresh(), draw.clone(), thing.clone());
    desk.act_then(
        move |hand| {
            let back = Draw {
                on: On::At(hand.shop.zone.when(hand.now)),
                from: draw.from,
                quantity: quantity.into(),
                unit,
                bearer: draw.bearer,
                side: Some(draw.side),
                stage: None,
                returns: Some(draw.entry()),
                note: None,
            };
            vec![Change::write(entry, back)]
        },
        move |after| {
            let word = thing.word.as_deref().filter(|_| unit == thing.unit);
            let amount = units::amount_short(after.tongue, quantity, unit, word);
            let cost: Option<Money> = after.books().draw_cost(entry);
            let second = cost.map(|cost| after.tongue.money(cost));
            Mark {
                kind: words::came_back().to_owned(),
                what: words::came_back_of(&amount, &thing.name),
                second,
            }
            .into()
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
