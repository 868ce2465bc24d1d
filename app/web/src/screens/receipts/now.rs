//! Receipt now, lines later: the total and a photo at the till, two taps. A form left half-way is there when one
//! comes back; its photo is kept from the moment it is taken, and waits with what has no home yet until the receipt is.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, Field, FieldError, Typing},
        key::{Key, KeyKind},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    screens::{
        abroad, first_amount,
        hours::choices,
        photos::{self, About, PhotoKey},
        stock::{
            form::{Cell, Form},
            pad, use_stock,
        },
    },
    shell::{
        Desk, Go,
        desk::{After, Mark, Marked, View},
        frame::Places,
    },
    words::{common, journal, money, notes, receipts as words},
};
use benchslate_core::{
    journal::{
        Body, Change, Id, Kind, On,
        kinds::{Bearer, Photo, Receipt, SettingKey},
        shop::tax_in,
    },
    measure::{Dec, InOrder, number},
};

const TOTAL: &str = "receipt-total";
const FROM: &str = "receipt-from";
const FOR: &str = "receipt-for";
const PHOTO: &str = "receipt-photo";
/// Longest name of a place, in letters.
const MOST_FROM: usize = 80;
/// How many places are offered, the last first.
const OFFERED: usize = 6;

/// What stands in place of the fields.
#[derive(Clone, Copy, PartialEq)]
enum Asks {
    Nothing,
    For,
    From,
}

/// The form.
#[component]
pub fn ReceiptNowSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "receipt");
    let opened_for = crate::screens::opened_for();
    let bearer = Memo::new(move |_| {
        let bench = || desk.bench().and_then(|bench| bench.bearer);
        choices::bearer(&form.get(FOR)).or(opened_for).or_else(bench).unwrap_or(Bearer::Shop)
    });
    let asks = RwSignal::new(Asks::Nothing);
    let pictured = Memo::new(move |_| Id::parse(&form.get(PHOTO)));
    let keep = Callback::new(move |()| keep(desk, go, form, bearer.get_untracked()));
    let on_photo = Callback::new(move |entry: Id| {
        // The one before it is struck out: it was not good enough.
        if let Some(before) = Id::parse(&form.now(PHOTO)) {
            strike(desk, before);
        }
        form.right(TOTAL);
        form.set(PHOTO, entry.to_string());
    });
    pad::focus(TOTAL);
    view! {
        <Sheet>
            <Head title=words::title().to_owned() note=words::lines_later().to_owned() tight=true/>
            <Above>
                <Read name=words::title().to_owned()>
                    {move || match asks.get() {
                        Asks::Nothing => fields(desk, form, bearer, pictured, asks),
                        Asks::For => {
                            let choose = move |to: Bearer| {
                                form.set(FOR, choices::code(to));
                                asks.set(Asks::Nothing);
                            };
                            super::bearers(use_stock::bearers(desk), Callback::new(choose))
                        }
                        Asks::From => from(desk, form, asks),
                    }}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Tall>
                    {move || (asks.get() == Asks::Nothing).then(|| pad::figures(desk, form, RwSignal::new(TOTAL)))}
                    <Keys class="go">
                        {move || match asks.get() {
                            Asks::Nothing => view! { <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/> },
                            _ => view! { <Key label=words::so().to_owned() on_tap=Callback::new(move |()| asks.set(Asks::Nothing))/> },
                        }}
                        <PhotoKey
                            about=Signal::stored(About::default())
                            note=Signal::derive(move || pictured.get().map(|_| words::again().to_owned()))
                            on_kept=on_photo
                        />
                        <Key class="wide" label=words::keep().to_owned() kind=KeyKind::Filled on_tap=keep/>
                    </Keys>
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn fields(
    desk: Desk,
    form: Form,
    bearer: Memo<Bearer>,
    pictured: Memo<Option<Id>>,
    asks: RwSignal<Asks>,
) -> AnyView {
    let borne = Signal::derive(move || use_stock::title(desk, bearer.get()));
    let row = move |label: &'static str, note: &'static str, figure: String, to: Asks| {
        let text =
            SumText { label: label.to_owned(), working: Some(note.to_owned()), figure, ..SumText::default() };
        view! { <SumRow text leads=Leads::Tap(Callback::new(move |()| asks.set(to))) signed=false/> }
    };
    let from = move || {
        let typed = form.get(FROM);
        let from = if typed.trim().is_empty() { words::nobody().to_owned() } else { typed };
        row(words::from(), words::may_stay_empty(), from, Asks::From)
    };
    let photo = move || {
        let entry = pictured.get()?;
        desk.read(|view| match view.journal.body(entry) {
            Some(Body::Photo(photo)) => Some(photos::thumb(photos::pictured(view, photo))),
            _ => None,
        })
    };
    let no_photo = photos::why_none(desk);
    let no_photo = Signal::derive(move || no_photo.get().map(|(what, todo)| words::no_photo(&what, todo)));
    view! {
        <Field
            id=TOTAL
            label=words::total().to_owned()
            value=form.signal(TOTAL)
            typing=Typing::Pad
            large=true
            unit=first_amount::beside(desk)
            error=form.error(TOTAL)
            on_input=Callback::new(move |text: String| form.set(TOTAL, text))
        />
        {first_amount::offer(desk)}
        {abroad::fields(form)}
        <p class="note">{move || desk.read(|view| says(view, &form.get(TOTAL)))}</p>
        <div class="receipt-now">
            <div>
                {move || row(words::for_what(), words::at_work(), borne.get(), Asks::For)}
                {from}
            </div>
            <div>{photo}</div>
        </div>
        <FieldError id="receipt-photo-error" error=no_photo/>
    }
}

/// That it counts at once; and the tax that is in it, where the shop's share is known.
fn says(view: &View, typed: &str) -> String {
    let share = view.shop.settings.latest(SettingKey::TaxRate).and_then(|share| Dec::parse(share).ok());
    let total = number::amount(typed).ok().map(Dec);
    let tax = total.zip(share).and_then(|(total, share)| tax_in(total, share, view.tongue.minor())?.money());
    words::spent_at_once(tax.filter(|tax| !tax.is_zero()).map(|tax| view.tongue.money(tax)).as_deref())
}

/// Where it was bought: typed, or one of the last.
fn from(desk: Desk, form: Form, asks: RwSignal<Asks>) -> AnyView {
    let row = move |name: String| {
        let text = SumText { label: name.clone(), ..SumText::default() };
        let tap = move |()| {
            form.set(FROM, name.clone());
            asks.set(Asks::Nothing);
        };
        view! { <SumRow text leads=Leads::Tap(Callback::new(tap)) signed=false/> }
    };
    let last = untrack(|| desk.read(places));
    let last = (!last.is_empty()).then(|| {
        view! { <Group title=words::last_ones().to_owned()/>{last.into_iter().map(row).collect::<Vec<_>>()} }
    });
    view! {
        <Cells>{Cell::words(FROM, words::from_whom()).hint(words::from_hint()).whole().draw(form)}</Cells>
        {last}
    }
}

/// From whom receipts and lots came, the last first, each once.
fn places(view: &View) -> Vec<String> {
    let receipts = view.shop.receipts.values().filter_map(|it| Some((it.order, it.whence.clone()?)));
    let lots = view.shop.lots.values().filter_map(|it| Some((it.order, it.whence.clone()?)));
    let mut all: Vec<_> = receipts.chain(lots).collect();
    all.order_by(|a, b| b.cmp(a));
    let mut places: Vec<String> = Vec::new();
    for (_, place) in all {
        if !places.contains(&place) && places.len() < OFFERED {
            places.push(place);
        }
    }
    places
}

fn strike(desk: Desk, photo: Id) {
    desk.act(
        move |_| vec![Change::strike(photo)],
        |_| {
            let second = Some(journal::mark_struck().to_owned());
            Mark { kind: journal::kind(Kind::Photo).to_owned(), what: String::new(), second }.into()
        },
    );
}

fn keep(desk: Desk, go: Go, form: Form, bearer: Bearer) {
    form.all_right();
    let total = form.read(TOTAL, number::amount).map(Dec);
    let photo = Id::parse(&form.now(PHOTO));
    if total.is_none() && photo.is_none() && !form.is_wrong() {
        form.wrong(TOTAL, words::nothing_to_keep().to_owned());
    }
    let whence = form.now(FROM).trim().to_owned();
    if whence.chars().count() > MOST_FROM {
        form.wrong(TOTAL, words::long_from().to_owned());
    }
    let in_another = abroad::read(form);
    if in_another.is_some() && total.is_none() {
        form.wrong(TOTAL, money::charged_too().to_owned());
    }
    if total.is_some() && !first_amount::can_be_kept(desk) {
        form.wrong(TOTAL, money::no_currency().to_owned());
    }
    if form.is_wrong() {
        return;
    }
    let entry = desk.fresh();
    desk.act_then(
        move |hand| {
            let mut changes = if total.is_some() { first_amount::settings(hand) } else { Vec::new() };
            let on = On::At(hand.shop.zone.when(hand.now));
            let whence = Some(whence.clone()).filter(|it| !it.is_empty());
            let (bearer, plain) = (Some(bearer), (None, None, None));
            let (freight, discount, tax) = plain;
            changes.push(Change::write(
                entry,
                Receipt {
                    on,
                    whence,
                    freight,
                    discount,
                    tax,
                    tax_back: false,
                    total,
                    bearer,
                    abroad: in_another.clone(),
                },
            ));
            // Its photo has its home now: with it.
            if let Some(photo) = photo
                && let Some(Body::Photo(body)) = hand.journal.body(photo)
            {
                changes
                    .push(Change::write(photo, Photo { entry: Some(entry), bearer: None, ..body.clone() }));
            }
            changes
        },
        move |after| mark(after, total, bearer),
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}

fn mark(after: &After, total: Option<Dec>, bearer: Bearer) -> Marked {
    let total = total.and_then(Dec::money).map(|total| after.tongue.money(total));
    let what = total.unwrap_or_else(|| words::no_total().to_owned());
    let home = crate::screens::journal::facts::bearer(&after.view(), bearer);
    let second = Some(notes::mark_home(&home));
    Mark { kind: journal::kind(Kind::Receipt).to_owned(), what, second }.into()
}
