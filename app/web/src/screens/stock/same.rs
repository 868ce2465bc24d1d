//! An item that was typed in twice is said to be the other one: one tap, taken back by the last mark.

use super::thing::{self, Thing};
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Field, Typing},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
        sum_row::{Leads, SumRow, SumText},
    },
    screens::form_keys::leave_key,
    shell::{
        Desk, Go, Place,
        desk::{Mark, Marked, View},
        frame::Places,
    },
    words::{gaps, journal, same as words, stock, units},
};
use benchslate_core::{
    journal::{
        Change, Id, On,
        kinds::{Same, Source},
        shop::Odd,
    },
    measure::{InOrder, letters::small},
};

/// Another item, and whether it can be that one.
#[derive(Clone, PartialEq, Eq, Hash)]
struct Other {
    id: Id,
    name: String,
    note: String,
    fits: bool,
}

/// The items that it can be, as they are called.
#[component]
pub fn SameSheet(item: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let text = RwSignal::new(String::new());
    let named = Memo::new(move |_| desk.read(|view| gaps::name(view.shop, Source::Item(item))));
    let others = Memo::new(move |_| {
        let text = text.get();
        desk.read(|view| others(view, item, &text))
    });
    let none = move || {
        let none = others.read().is_empty();
        none.then(|| {
            let typed = text.get();
            let says = if typed.trim().is_empty() {
                words::no_other().to_owned()
            } else {
                stock::nothing_found(&typed)
            };
            view! { <p class="lead" role="status">{says}</p> }
        })
    };
    view! {
        <Sheet>
            <Head title=words::same_as().to_owned() note=Signal::derive(move || Some(named.get())) tight=true/>
            <Above>
                <Read name=words::same_as().to_owned() below=words::same_as().to_owned()>
                    <p class="lead">{words::what_happens()}</p>
                    {none}
                    {each(move || others.get(), move |other| row(desk, go, item, other))}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    <Field
                        id="find-same"
                        class="found"
                        label=stock::find().to_owned()
                        hint=stock::find().to_owned()
                        typing=Typing::Search
                        value=text
                        on_input=Callback::new(move |typed| text.set(typed))
                    />
                    {leave_key(go)}
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn row(desk: Desk, go: Go, item: Id, other: Other) -> AnyView {
    let Other { id, name, note, fits } = other;
    let text = SumText { label: name, working: Some(note), lacks: !fits, ..SumText::default() };
    let leads =
        if fits { Leads::Tap(Callback::new(move |()| join(desk, go, item, id))) } else { Leads::Nowhere };
    view! { <SumRow text leads signed=false/> }
}

fn others(view: &View, item: Id, text: &str) -> Vec<Other> {
    let all = view.shop.items.iter().filter_map(|(id, it)| {
        let why = view.shop.cannot_be(item, *id);
        let fits = match why {
            None => true,
            Some(Odd::UnitDoesNotFit) => false,
            Some(_) => return None,
        };
        let each = units::each_one(it.unit, it.word.as_deref());
        let unit = || it.word.clone().unwrap_or_else(|| units::long(it.unit, false));
        let note = if fits { each } else { words::does_not_fit(&unit()) };
        Some(Other { id: *id, name: it.name.clone(), note, fits })
    });
    let mut found: Vec<Other> = all.filter(|other| thing::is_found(&other.name, text)).collect();
    found.order_by(|a, b| (!a.fits, small(&a.name)).cmp(&(!b.fits, small(&b.name))));
    found
}

fn join(desk: Desk, go: Go, item: Id, is: Id) {
    let entry = desk.fresh();
    desk.act_then(
        move |hand| {
            // Another window may have said so meanwhile.
            if hand.shop.cannot_be(item, is).is_some() {
                return Vec::new();
            }
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write(entry, Same { on, item, is })]
        },
        move |after| {
            let view = after.view();
            let typed = crate::screens::journal::facts::item_as_typed(&view, item);
            let what = journal::same_as(&typed, &gaps::name(after.shop, Source::Item(is)));
            let left = Thing::of(after.shop, is).and_then(|thing| {
                thing::left(after.books(), &thing).map(|left| thing.amount_short(after.tongue, left))
            });
            let second = left.map(|left| stock::left_on_shelf(&left));
            Marked::from(Mark { kind: words::one_item().to_owned(), what, second })
        },
        move |done| {
            if done.is_ok() {
                go.instead(&Place::Lot(is));
            }
        },
    );
}
