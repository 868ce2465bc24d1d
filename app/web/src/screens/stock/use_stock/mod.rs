//! Use stock: what it costs and what it leaves are said before the tap.

mod draw;
mod pick;
mod side;
mod slots;
mod strips;

pub use pick::{bearers, into, title};
pub use slots::stroke;

use super::{
    form::Form,
    mix::may_be_mixed,
    thing::{self, Thing},
};
use crate::dom::{nothing, prelude::*};
use crate::{
    parts::{
        answer::{AnswerText, Outcome, RowLink},
        key::{Key, KeyKind, KeyLink},
        message::Message,
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    screens::{cautions, parts_list},
    shell::{
        Desk, Go, Place,
        desk::{After, Mark, Marked, View},
        frame::Places,
    },
    words::{common, mix, stock as words, units},
};
use benchslate_core::{
    journal::{
        Change, Id, On,
        cautions::{Caution, of_source},
        kinds::{Bearer, Draw, Side, Source},
    },
    measure::Quantity,
    timing::likely,
};
use slots::{Amount, Said, Slot, Wrong};

/// Opens with the latest thing, unless one is given.
#[component]
pub fn UseSheet(of: Option<Id>) -> impl IntoView {
    let desk = Desk::here();
    let chooses = RwSignal::new(false);
    let (opened_for, bearer) = (crate::screens::opened_for(), RwSignal::new(None::<Bearer>));
    let form = Form::open(desk, "use");
    let thing = Memo::new(move |_| {
        desk.read(|view| match of {
            Some(id) => Thing::of(view.shop, id),
            None => thing::all(view.shop).into_iter().next(),
        })
    });
    move || {
        if chooses.get() {
            return view! { <pick::Pick chooses bearer/> };
        }
        match thing.get() {
            Some(thing) => view! { <One thing form chooses opened_for bearer/> },
            None => view! { <Nothing/> },
        }
    }
}

/// Nothing ever came.
#[component]
fn Nothing() -> impl IntoView {
    view! {
        <Sheet>
            <Head title=words::use_stock().to_owned() tight=true/>
            <Above>
                <Read name=words::use_stock().to_owned()>
                    <Message
                        title=words::nothing_to_use().to_owned()
                        lines=Signal::stored(vec![words::what_goes_here().to_owned()])
                    />
                </Read>
            </Above>
            <Below>
                <Hand name=words::use_keys().to_owned()>
                    <Keys>
                        <KeyLink
                            label=words::add_a_lot().to_owned()
                            note=words::salvaged_or_bought().to_owned()
                            kind=KeyKind::Filled
                            href=Place::NewLot.href()
                        />
                    </Keys>
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

/// One thing, and how much of it.
#[component]
fn One(
    thing: Thing,
    form: Form,
    chooses: RwSignal<bool>,
    opened_for: Option<Bearer>,
    bearer: RwSignal<Option<Bearer>>,
) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let said = Said::of(form, &thing);
    let slots = StoredValue::new(slots::slots(&thing));
    let chosen = RwSignal::new(0_usize);
    let slot = Memo::new(move |_| {
        slots.with_value(|slots| slots.get(chosen.get()).copied()).unwrap_or(Slot::Amount)
    });
    let thing = StoredValue::new(thing);
    let into = Memo::new(move |_| {
        bearer.get().or_else(|| thing.with_value(|thing| likely(desk, thing, opened_for)))
    });
    let amount = Memo::new(move |_| {
        desk.read(|view| thing.with_value(|thing| slots::amount(view, thing, said, slot.get())))
    });
    let note = Signal::derive(move || into.get().map(|into| pick::into(desk, into)));
    let (source, opens) = (thing.with_value(|thing| thing.source), RwSignal::new(false));
    let of_side = Memo::new(move |_| side::side(desk, source, said, into.get()));
    let label = move || match amount.get() {
        Ok(amount) => words::use_so_much(&amount.said),
        Err(_) => words::use_it().to_owned(),
    };
    let tap = move |()| match amount.get_untracked() {
        Ok(amount) => {
            let goes = Goes { into: into.get_untracked(), side: of_side.get_untracked() };
            draw(desk, go, thing.get_value(), said, amount, goes);
        }
        Err(wrong) => say_wrong(said, slots, chosen, wrong),
    };
    let head = thing.with_value(|thing| thing.name.clone());
    let name = head.clone();
    view! {
        <Sheet>
            <Head title=head note=note tight=true on_tap=Callback::new(move |()| chooses.set(true))/>
            <Above>
                <Read name=name>
                    {thing.with_value(|thing| slots.with_value(|slots| draw::ways(desk, thing, slots, said, chosen)))}
                    {move || well(desk, thing, said, slot.get())}
                    {move || says(desk, thing, said, slot.get(), amount)}
                    {beside(desk, thing, into)}
                    {minds(desk, thing)}
                </Read>
            </Above>
            <Below>
                <Hand name=words::use_keys().to_owned() kind=HandKind::Tall>
                    {move || draw::keys(desk, thing.get_value(), said, slot.get())}
                    <Keys>
                        {move || (!opens.get()).then(|| {
                            view! { <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/> }
                        })}
                        {move || of_side.get().map(|of_side| side::key(said, of_side, opens))}
                        <Key
                            class="wide"
                            label=Signal::derive(label)
                            kind=KeyKind::Filled
                            on_tap=Callback::new(tap)
                        />
                    </Keys>
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

/// What the sheet was opened for, else what the bench works for; stock never goes into itself, so after hours on a
/// lot it is the build worked on last.
fn likely(desk: Desk, thing: &Thing, opened_for: Option<Bearer>) -> Option<Bearer> {
    let likely = opened_for.or_else(|| desk.bench().and_then(|bench| bench.bearer));
    if likely != Some(Bearer::Lot(thing.id())) {
        return likely;
    }
    desk.read(|view| {
        let is_build =
            |bearer: &Bearer| matches!(bearer, Bearer::Build(_)) && likely::offers_bearer(view.shop, *bearer);
        let worked = view.shop.stretches.iter().rev().map(|stretch| stretch.bearer).find(is_build);
        let open = || view.shop.builds.iter().filter(|(id, _)| view.shop.offers(**id));
        let newest = || open().max_by_key(|(_, build)| build.order).map(|(id, _)| Bearer::Build(*id));
        worked.or_else(newest).or(Some(Bearer::Shop))
    })
}

/// The key says by the field what is missing, and goes to the field.
fn say_wrong(said: Said, slots: StoredValue<Vec<Slot>>, chosen: RwSignal<usize>, wrong: Wrong) {
    if let Some(at) = slots.with_value(|slots| slots.iter().position(|slot| *slot == wrong.slot)) {
        chosen.set(at);
    }
    said.wrong(wrong);
}

fn well(desk: Desk, thing: StoredValue<Thing>, said: Said, slot: Slot) -> AnyView {
    if slot == Slot::Share {
        return nothing();
    }
    thing.with_value(|thing| draw::well(desk, thing, said, slot))
}

/// What it comes to: how much, what it costs, what it leaves; or what is wrong with a share.
fn says(
    desk: Desk,
    thing: StoredValue<Thing>,
    said: Said,
    slot: Slot,
    amount: Memo<Result<Amount, Wrong>>,
) -> AnyView {
    let text = move || {
        let amount = amount.get().ok()?;
        Some(desk.books(|books, view| thing.with_value(|thing| outcome(books, view, thing, slot, &amount))))
    };
    let share_error = (slot == Slot::Share).then(|| {
        view! { <crate::parts::field::FieldError id="use-share-error" error=said.error(Slot::Share)/> }
    });
    view! { {move || text().map(|text| view! { <Outcome text/> })}{share_error} }
}

fn outcome(
    books: &benchslate_core::costing::Books,
    view: &View,
    thing: &Thing,
    slot: Slot,
    amount: &Amount,
) -> AnswerText {
    let cost = books.preview(thing.source, amount.in_stock);
    let leaves = draw::leaves(books, view, thing, amount.in_stock);
    let label = thing.amount(view.tongue, amount.in_stock);
    let label = match slot {
        Slot::Share => {
            let one = slots::quarters().get(3).and_then(|one| books.preview(thing.source, *one));
            one.map_or(label.clone(), |one| words::worth(&label, &view.tongue.money(one)))
        }
        _ => label,
    };
    let mut note = amount.size.clone().unwrap_or_default();
    if let Some(leaves) = leaves {
        if !note.is_empty() {
            note.push_str("; ");
        }
        note.push_str(&leaves);
    }
    AnswerText {
        label,
        note: (!note.is_empty()).then_some(note),
        figure: cost.map_or_else(|| words::cost_not_known().to_owned(), |cost| view.tongue.money(cost)),
        lacks: cost.is_none(),
    }
}

/// What else it may be about: a pour of two parts, the parts that it is cut into.
fn beside(desk: Desk, thing: StoredValue<Thing>, into: Memo<Option<Bearer>>) -> AnyView {
    let build = Signal::derive(move || build_of(into.get()?));
    view! { {mixed(desk, thing)}{parts_list::way_here(desk, build)} }
}

/// To the pour of two parts, for what may be one of them.
fn mixed(desk: Desk, thing: StoredValue<Thing>) -> AnyView {
    let may = Memo::new(move |_| desk.read(|view| thing.with_value(|thing| may_be_mixed(view, thing))));
    let row = move || {
        may.get().then(|| {
            let to = Leads::To(Place::Mix(thing.with_value(Thing::id)).href());
            view! { <RowLink label=mix::fill_a_void().to_owned() end=mix::both_at_once().to_owned() leads=to/> }
        })
    };
    view! { {row} }
}

fn build_of(bearer: Bearer) -> Option<Id> {
    match bearer {
        Bearer::Build(build) => Some(build),
        Bearer::Lot(_) | Bearer::Shop => None,
    }
}

fn minds(desk: Desk, thing: StoredValue<Thing>) -> AnyView {
    let of = move || desk.read(|view| thing.with_value(|thing| caution(view, thing)));
    cautions::once(Signal::derive(of))
}

/// What goes with an item that is used; a lot's cautions came up when it came in and when it is sorted.
fn caution(view: &View, thing: &Thing) -> Vec<Caution> {
    match thing.source {
        Source::Item(_) => of_source(view.shop, thing.source),
        Source::Lot(_) => Vec::new(),
    }
}

/// Where a draw goes: what bears it, and what it is for there.
struct Goes {
    into: Option<Bearer>,
    side: Option<Side>,
}

fn draw(desk: Desk, go: Go, thing: Thing, said: Said, amount: Amount, goes: Goes) {
    let (entry, bearer) = (desk.fresh(), goes.into.unwrap_or(Bearer::Shop));
    // None is the piece.
    let side = goes.side.filter(|side| *side != Side::Piece);
    let stage = stage_at(desk, bearer).map(|(stage, _)| stage);
    let (source, size) = (thing.source, amount.size.clone());
    let (quantity, unit) = (amount.quantity, amount.unit);
    desk.act_then(
        move |hand| {
            let draw = Draw {
                on: On::At(hand.shop.zone.when(hand.now)),
                from: source,
                quantity,
                unit,
                bearer,
                side,
                stage,
                returns: None,
                note: size.clone(),
            };
            vec![Change::write(entry, draw)]
        },
        move |after| used(after, entry, &amount.said, source),
        move |done| {
            if done.is_ok() {
                said.used();
                go.back();
            }
        },
    );
}

/// The stage at which somebody works just now for what bears a draw, and what their hours are for.
pub fn stage_at(desk: Desk, bearer: Bearer) -> Option<(Id, Side)> {
    let bench = desk.bench()?;
    bench.clock_for(bearer).map(|clock| (clock.stage.id, clock.side))
}

/// The mark of a draw: how much of what, what it cost, what it left.
pub fn used(after: &After, entry: Id, amount: &str, source: Source) -> Marked {
    let books = after.books();
    let (Source::Lot(id) | Source::Item(id)) = source;
    let thing = Thing::of(after.shop, id);
    let what = match books.draw_cost(entry) {
        Some(cost) => words::used_for(amount, &after.tongue.money(cost)),
        None => amount.to_owned(),
    };
    let second = thing.map(|thing| {
        let left: Option<Quantity> = thing::left(books, &thing);
        match (left, &thing.word) {
            (Some(left), Some(_)) => words::left_on_shelf(&thing.amount_short(after.tongue, left)),
            (Some(left), None) => words::left_of(&thing.name, &units::figure(after.tongue, left, thing.unit)),
            (None, _) => thing.name,
        }
    });
    Mark { kind: words::used().to_owned(), what, second }.into()
}
