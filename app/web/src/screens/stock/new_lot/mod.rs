//! A new lot: one screen of ruled cells. What is typed is kept; only a name and a quantity are asked for.

pub(in crate::screens) mod fields;
pub(in crate::screens) mod plan;

pub use plan::spread;

use super::{form::Form, thing::Thing};
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind},
        seg::{Choice, Seg},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
    },
    screens::first_amount,
    shell::{
        Desk, Go, Place,
        desk::{After, Mark, Marked},
        frame::Places,
    },
    words::{lots as words, money, stock},
};
use benchslate_core::{
    journal::{Change, Id, shop::with_tax},
    measure::Quantity,
};
use plan::{ORIGINS, Plan, Reader, USES};

/// The form.
#[component]
pub fn NewLotSheet(
    /// The receipt that it is a line of.
    #[prop(optional)]
    of: Option<Id>,
) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open_of(desk, if of.is_some() { "line-lot" } else { "new-lot" }, of);
    let kind = Memo::new(move |_| (plan::origin(form), plan::purpose(form)));
    let title = Signal::derive(move || words::new_lot(stock::origin(kind.get().0)));
    let note = Signal::derive(move || Some(form.get(plan::NAME)).filter(|name| !name.trim().is_empty()));
    let keep = Callback::new(move |()| keep(desk, go, form));
    view! {
        <Sheet>
            <Head title=title note=note tight=true/>
            <Above>
                <Read name=title below=words::more_fields().to_owned()>
                    {move || {
                        let (origin, purpose) = kind.get();
                        fields::fields(desk, form, origin, purpose)
                    }}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    {set(form, plan::USE, words::what_for(), uses(), Signal::derive(move || at(&USES, kind.get().1)))}
                    {set(form, plan::ORIGIN, words::how_it_came(), origins(), Signal::derive(move || at(&ORIGINS, kind.get().0)))}
                    <Keys>
                        <Key label=words::not_now().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <Key class="wide" label=words::keep_the_lot().to_owned() kind=KeyKind::Filled on_tap=keep/>
                    </Keys>
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn set(
    form: Form,
    field: &'static str,
    name: &'static str,
    choices: Vec<Choice>,
    chosen: Signal<usize>,
) -> AnyView {
    let choose = move |at: usize| form.set(field, at.to_string());
    view! {
        <Keys class="low">
            <Seg name=name.to_owned() choices=Signal::stored(choices) chosen on_choose=Callback::new(choose)/>
        </Keys>
    }
}

fn origins() -> Vec<Choice> {
    ORIGINS.iter().map(|origin| Choice::plain(stock::origin(*origin))).collect()
}

fn uses() -> Vec<Choice> {
    USES.iter().map(|purpose| Choice::plain(stock::purpose(*purpose))).collect()
}

fn at<T: PartialEq>(of: &[T], one: T) -> usize {
    of.iter().position(|it| *it == one).unwrap_or_default()
}

fn keep(desk: Desk, go: Go, form: Form) {
    form.all_right();
    let ids: [Id; 3] = [desk.fresh(), desk.fresh(), desk.fresh()];
    let now = desk.at_tap();
    let plan = desk.now_read(|view| untrack(|| Reader { view, form, loud: true, now, ids }.plan()));
    let Some(plan) = plan.filter(|_| !form.is_wrong()) else { return };
    if plan.has_money() && !first_amount::can_be_kept(desk) {
        form.wrong(plan::PAID, money::no_currency().to_owned());
        return;
    }
    let written = plan.clone();
    desk.act_then(
        move |hand| {
            let mut changes = if written.has_money() { first_amount::settings(hand) } else { Vec::new() };
            changes.extend(written.entries().into_iter().map(|(id, body)| Change::write(id, body)));
            changes
        },
        move |after| mark(after, &plan),
        move |done| {
            if done.is_ok() {
                form.done(desk);
                if form.of.is_some() { go.back() } else { go.instead(&Place::Stock) }
            }
        },
    );
}

fn mark(after: &After, plan: &Plan) -> Marked {
    let (id, lot) = &plan.lot;
    let thing = Thing::of(after.shop, *id);
    let amount = lot.rough.quantity().unwrap_or(Quantity::ZERO);
    let word = thing.as_ref().and_then(|thing| thing.word.as_deref());
    let amount = crate::words::units::amount_short(after.tongue, amount, lot.unit, word);
    let name = thing.map(|thing| thing.name).unwrap_or_default();
    let paid = lot
        .paid
        .or(lot.value)
        .and_then(|paid| with_tax(paid, lot.tax))
        .map(|paid| words::paid_so_much(&after.tongue.money(paid)));
    Mark { kind: words::lot().to_owned(), what: words::came(&amount, &name), second: paid }.into()
}
