//! Cautions: each is shown where the work happens until it is tapped away on this device, and stays on a sheet.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        key::{Key, KeyKind},
        message::Caution as Drawn,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    shell::{Desk, Go, Place, desk::View, frame::Places},
    store::device::{self, Small},
    words::{cautions as words, common},
};
use benchslate_core::journal::{
    Id,
    cautions::{self, Caution},
    kinds::Source,
};

/// Those of a list that were not tapped away yet.
pub fn once(list: Signal<Vec<Caution>>) -> AnyView {
    let known = RwSignal::new(seen());
    let tap = move |caution: Caution| {
        remember(caution);
        known.set(seen());
    };
    let one = move |caution: Caution| {
        view! {
            <Drawn
                text=words::says(caution).to_owned()
                key=words::seen().to_owned()
                key_name=words::seen_name(caution)
                on_tap=Callback::new(move |()| tap(caution))
            />
        }
    };
    each(move || list.get().into_iter().filter(|it| !known.read().contains(it)).collect::<Vec<_>>(), one)
}

/// The same of a list that stays as it is.
pub fn once_of(list: Vec<Caution>) -> AnyView {
    once(Signal::stored(list))
}

/// The way back to those that go with a lot or an item. Nothing where none does.
pub fn way(desk: Desk, of: Id) -> AnyView {
    (move || {
        let count = desk.read(|view| of_thing(view, of).len());
        (count > 0).then(|| {
            view! {
                <RowLink
                    label=words::cautions().to_owned()
                    end=words::so_many(count)
                    leads=Leads::To(Place::Cautions(Some(of)).href())
                />
            }
        })
    })
    .draw()
}

/// The way to all of them.
pub fn way_to_all() -> AnyView {
    let leads = Leads::To(Place::Cautions(None).href());
    view! { <RowLink label=words::cautions().to_owned() end=words::each_once().to_owned() leads/> }
}

/// All that go with a lot or an item.
pub fn of_thing(view: &View, of: Id) -> Vec<Caution> {
    let source = if view.shop.lots.contains_key(&of) || view.shop.finds.contains_key(&of) {
        Source::Lot(of)
    } else {
        Source::Item(of)
    };
    cautions::of_source(view.shop, source)
}

fn seen() -> Vec<Caution> {
    let codes = device::recall(Small::Cautions).unwrap_or_default();
    codes.split(',').filter_map(Caution::from_code).collect()
}

fn remember(caution: Caution) {
    let mut all = seen();
    if !all.contains(&caution) {
        all.push(caution);
    }
    let codes: Vec<&str> = all.into_iter().map(Caution::code).collect();
    device::remember(Small::Cautions, &codes.join(","));
}

/// All, or those of one lot or item.
#[component]
pub fn CautionsSheet(of: Option<Id>) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let known = RwSignal::new(seen());
    let list = Memo::new(move |_| match of {
        Some(of) => desk.read(|view| of_thing(view, of)),
        None => Caution::ALL.to_vec(),
    });
    let note = Signal::derive(move || {
        let of = of?;
        Some(desk.read(|view| super::away::name(view.shop, of)))
    });
    let one = move |caution: Caution| {
        let state = move || {
            let seen = known.read().contains(&caution);
            seen.then(|| view! { <p class="note">{words::seen_here()}</p> })
        };
        view! {
            <section class="caution">
                <h2>{words::title(caution)}</h2>
                <Drawn text=words::says(caution).to_owned()/>
                {state}
            </section>
        }
    };
    let again = move |()| {
        device::forget(Small::Cautions);
        known.set(Vec::new());
    };
    let none = move || list.read().is_empty().then(|| view! { <p class="lead">{words::none()}</p> });
    let again_key = move || {
        (!known.read().is_empty()).then(|| {
            view! {
                <Key
                    class="wide"
                    label=words::show_again().to_owned()
                    note=words::where_the_work_is().to_owned()
                    kind=KeyKind::Filled
                    on_tap=Callback::new(again)
                />
            }
        })
    };
    view! {
        <Sheet>
            <Head title=words::cautions().to_owned() note tight=true/>
            <Above>
                <Read name=words::cautions().to_owned() below=words::more().to_owned()>
                    {none}
                    {each(move || list.get(), one)}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        {again_key}
                    </Keys>
                </Hand>
                <Places cell=if of.is_some() { 2 } else { 4 }/>
            </Below>
        </Sheet>
    }
}
