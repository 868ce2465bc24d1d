//! Money paid for one bearer directly: never through the shelf.

use super::{
    form::{Cell, Form},
    tax, use_stock,
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        field::Cells,
        key::{Key, KeyKind},
        seg::{Choice, Seg},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
        tick_row::TickRow,
    },
    screens::{About, abroad, first_amount, hours::one_off},
    shell::{Desk, Go, Place, desk::Mark, frame::Places},
    words::{common, expense as words, lots, money, receipts},
};
use benchslate_core::{
    journal::{
        Body, Change, Id, On,
        kinds::{Bearer, Expense, Side},
        shop::with_tax,
    },
    measure::{Dec, number},
};

const WHAT: &str = "expense-what";
const PAID: &str = "expense-paid";
const TAX: &str = "expense-tax";
const BACK: &str = "tax-back";
const SIDE: &str = "side";
const SIDES: [Side; 3] = [Side::Piece, Side::Film, Side::Both];

/// The form.
#[component]
pub fn ExpenseSheet(
    /// The receipt that it is a line of.
    #[prop(optional)]
    of: Option<Id>,
) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open_of(desk, if of.is_some() { "line-expense" } else { "expense" }, of);
    let bearer = RwSignal::new(crate::screens::opened_for());
    let receipts = move || desk.read(|view| view.shop.receipts.get(&of?).map(|receipt| receipt.bearer));
    let borne = Memo::new(move |_| {
        bearer.get().or_else(receipts).or_else(|| desk.bench().and_then(|bench| bench.bearer))
    });
    let title = Signal::derive(move || use_stock::title(desk, borne.get().unwrap_or(Bearer::Shop)));
    let chooses = RwSignal::new(false);
    let keep = Callback::new(move |()| keep(desk, go, form, borne.get_untracked().unwrap_or(Bearer::Shop)));
    view! {
        <Sheet>
            <Head
                title=words::title().to_owned()
                note=Signal::derive(move || Some(words::for_bearer(&title.get())))
                tight=true
            />
            <Above>
                <Read name=words::title().to_owned()>
                    {move || if chooses.get() { bearers(desk, bearer, chooses) } else { fields(desk, form, title, borne, chooses) }}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    {sides(form)}
                    <Keys>
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <Key class="wide" label=words::keep().to_owned() kind=KeyKind::Filled on_tap=keep/>
                    </Keys>
                </Hand>
                <Places cell=1/>
            </Below>
        </Sheet>
    }
}

fn fields(
    desk: Desk,
    form: Form,
    title: Signal<String>,
    borne: Memo<Option<Bearer>>,
    chooses: RwSignal<bool>,
) -> AnyView {
    let in_money = first_amount::beside(desk);
    let offered = tax::offer(desk);
    let tax = Signal::derive(move || form.get_or(TAX, offered.get()));
    let taxed = move || form.of.is_none() && !tax.get().trim().is_empty();
    let back = move || {
        let tap = move |()| form.set(BACK, if form.now(BACK) == "1" { "" } else { "1" });
        view! {
            <TickRow
                label=lots::tax_back().to_owned()
                note=lots::tax_back_note().to_owned()
                ticked=Signal::derive(move || form.get(BACK) == "1")
                on_tap=Callback::new(tap)
            />
        }
    };
    view! {
        {form.of.map(|of| super::new_lot::fields::line_of(desk, of))}
        <Cells>
            {Cell::words(WHAT, words::what()).hint(words::what_hint()).whole().draw(form)}
            {Cell::number(PAID, words::paid()).unit(in_money).draw(form)}
            {form.of.is_none().then(|| Cell::words(TAX, words::tax()).hint(lots::tax_hint()).offers(offered).draw(form))}
        </Cells>
        {form.of.is_none().then(|| tax::note(desk, tax, form.signal(PAID)))}
        {first_amount::offer(desk)}
        {abroad::fields(form)}
        {move || taxed().then(back)}
        {move || {
            let leads = Leads::Tap(Callback::new(move |()| chooses.set(true)));
            view! { <RowLink label=words::borne_by(&title.get()) end=words::change().to_owned() leads/> }
        }}
        {one_off::tick(desk, form, borne.into())}
        <p class="note">{words::what_goes_here()}</p>
        {form.of.is_none().then(|| beside(borne))}
    }
}

/// What else money may be: a receipt with several things, or money that came in.
fn beside(borne: Memo<Option<Bearer>>) -> AnyView {
    let (go, About(about)): (Go, About) = (expect_context(), expect_context());
    let to = move |place: Place| {
        Leads::Tap(Callback::new(move |()| {
            about.set(borne.get_untracked());
            go.to(&place);
        }))
    };
    view! {
        <RowLink label=receipts::or_receipt().to_owned() end=receipts::lines_later().to_owned() leads=to(Place::Receipt(None))/>
        <RowLink label=receipts::or_by_product().to_owned() end=receipts::lowers_cost().to_owned() leads=to(Place::ByProduct)/>
    }
}

fn bearers(desk: Desk, bearer: RwSignal<Option<Bearer>>, chooses: RwSignal<bool>) -> AnyView {
    let row = move |(to, label): (Bearer, String)| {
        let text = SumText { label, ..SumText::default() };
        let tap = move |()| {
            bearer.set(Some(to));
            chooses.set(false);
        };
        view! { <SumRow text leads=Leads::Tap(Callback::new(tap)) signed=false/> }
    };
    view! {
        <Group title=words::who_bears_it().to_owned()/>
        {use_stock::bearers(desk).into_iter().map(row).collect::<Vec<_>>()}
    }
}

fn sides(form: Form) -> AnyView {
    let choices: Vec<Choice> = SIDES.iter().map(|side| Choice::plain(common::side(*side))).collect();
    let chosen = Signal::derive(move || form.get(SIDE).parse().unwrap_or(0));
    view! {
        <Keys class="low" lead=words::side().to_owned()>
            <Seg
                name=words::side().to_owned()
                choices=Signal::stored(choices)
                chosen
                on_choose=Callback::new(move |at: usize| form.set(SIDE, at.to_string()))
            />
        </Keys>
    }
}

fn keep(desk: Desk, go: Go, form: Form, bearer: Bearer) {
    form.all_right();
    let what = form.now(WHAT).trim().to_owned();
    if what.is_empty() {
        form.wrong(WHAT, words::no_what().to_owned());
    } else if what.chars().count() > 120 {
        form.wrong(WHAT, words::long_what().to_owned());
    }
    if form.now(PAID).trim().is_empty() {
        form.wrong(PAID, words::no_amount().to_owned());
    }
    let amount = form.read(PAID, number::amount).map(Dec);
    let tax = desk.now_read(|view| {
        if form.of.is_some() {
            // It stands once on the receipt.
            return Ok(None);
        }
        let text = untrack(|| form.get_or(TAX, tax::offered(view).filter(|_| amount.is_some())));
        tax::read(view, &text, amount)
    });
    let tax = tax.unwrap_or_else(|sentence| {
        form.wrong(TAX, sentence);
        None
    });
    let in_another = abroad::read(form);
    if !first_amount::can_be_kept(desk) {
        form.wrong(PAID, money::no_currency().to_owned());
    }
    let Some(amount) = amount.filter(|_| !form.is_wrong()) else { return };
    let side =
        form.now(SIDE).parse::<usize>().ok().and_then(|at| SIDES.get(at).copied()).unwrap_or(Side::Piece);
    let one_off = one_off::ticked(form);
    let (entry, tax_back) = (desk.fresh(), tax.is_some() && form.now(BACK) == "1");
    let said = what.clone();
    desk.act_then(
        move |hand| {
            let mut changes = first_amount::settings(hand);
            let till = form.of.and_then(|of| hand.journal.body(of)).map(Body::on);
            let on = till.unwrap_or_else(|| On::At(hand.shop.zone.when(hand.now)));
            let expense = Expense {
                abroad: in_another.clone(),
                on,
                what: what.clone(),
                amount,
                tax,
                tax_back,
                bearer,
                side,
                receipt: form.of,
                one_off,
            };
            changes.push(Change::write(entry, expense));
            changes
        },
        move |after| {
            let figure = with_tax(amount, tax).map(|money| after.tongue.money(money)).unwrap_or_default();
            Mark { kind: words::kind().to_owned(), what: words::marked(&figure, &said), second: None }.into()
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
