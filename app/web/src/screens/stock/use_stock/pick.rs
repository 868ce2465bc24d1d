//! Another thing to use, or something else to use it for.

use super::super::thing;
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Field, Typing},
        key::Key,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    shell::{Desk, Go, Place, frame::Places},
    words::{common, stock as words},
};
use benchslate_core::measure::{InOrder, letters::uncapital};
use benchslate_core::{
    journal::{Id, kinds::Bearer},
    timing::bench,
};

/// Lots and items, latest first; then what it can go into. `chooses` goes out with a choice.
#[component]
pub fn Pick(chooses: RwSignal<bool>, bearer: RwSignal<Option<Bearer>>) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let text = RwSignal::new(String::new());
    let things = Memo::new(move |_| things(desk, &text.get()));
    let thing = move |(id, label, note): (Id, String, String)| {
        let text = SumText { label, working: Some(note), ..SumText::default() };
        let tap = move |()| {
            chooses.set(false);
            go.instead(&Place::Use(Some(id)));
        };
        view! { <SumRow text leads=Leads::Tap(Callback::new(tap)) signed=false/> }
    };
    let into = move |(to, label): (Bearer, String)| {
        let text = SumText { label, ..SumText::default() };
        let tap = move |()| {
            bearer.set(Some(to));
            chooses.set(false);
        };
        view! { <SumRow text leads=Leads::Tap(Callback::new(tap)) signed=false/> }
    };
    view! {
        <Sheet>
            <Head title=words::use_what().to_owned() note=words::latest_first().to_owned() tight=true/>
            <Above>
                <Read name=words::use_what().to_owned() below=words::into_what().to_owned()>
                    {move || things.get().into_iter().map(thing).collect::<Vec<_>>()}
                    <Group title=words::into_what().to_owned()/>
                    {move || bearers(desk).into_iter().map(into).collect::<Vec<_>>()}
                </Read>
            </Above>
            <Below>
                <Hand name=words::use_keys().to_owned()>
                    <Field
                        id="find-use"
                        class="found"
                        label=words::find().to_owned()
                        hint=words::find().to_owned()
                        typing=Typing::Search
                        value=text
                        on_input=Callback::new(move |typed| text.set(typed))
                    />
                    <Keys>
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| chooses.set(false))/>
                    </Keys>
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn things(desk: Desk, text: &str) -> Vec<(Id, String, String)> {
    desk.books(|books, view| {
        let found = thing::all(view.shop).into_iter().filter(|thing| thing::is_found(&thing.name, text));
        let row = |thing: thing::Thing| {
            let line = books.shelf_line(thing.source);
            let gone = line.as_ref().and_then(|line| line.quantity).is_some_and(|left| left.is_zero());
            let note = line.map(|line| thing::left_says(view, &thing, &line)).unwrap_or_default();
            (gone, (thing.id(), thing.name, note))
        };
        // What is all gone is still there to be found, below what isn't.
        let (gone, there): (Vec<_>, Vec<_>) = found.map(row).partition(|(gone, _)| *gone);
        there.into_iter().chain(gone).map(|(_, row)| row).collect()
    })
}

/// Builds, latest first, then lots, then the shop.
pub fn bearers(desk: Desk) -> Vec<(Bearer, String)> {
    desk.read(|view| {
        let mut builds: Vec<_> = view
            .shop
            .builds
            .iter()
            .filter(|(id, _)| view.shop.offers(**id))
            .map(|(id, it)| (it.order, Bearer::Build(*id), it.title.clone()))
            .collect();
        builds.order_by(|a, b| b.cmp(a));
        let mut lots: Vec<_> = view
            .shop
            .lots
            .iter()
            .filter(|(id, it)| it.item.is_none() && view.shop.offers(**id))
            .map(|(id, it)| (it.order, Bearer::Lot(*id), it.name.clone()))
            .collect();
        lots.order_by(|a, b| b.cmp(a));
        let shop = (Bearer::Shop, common::the_shop().to_owned());
        builds.into_iter().chain(lots).map(|(_, bearer, title)| (bearer, title)).chain([shop]).collect()
    })
}

/// "into" and the name of what bears it.
pub fn into(desk: Desk, bearer: Bearer) -> String {
    match desk.read(|view| bench::title(view.shop, bearer)) {
        Some(title) => words::into(&title),
        None => words::into(&uncapital(common::the_shop())),
    }
}

/// What a bearer is called.
pub fn title(desk: Desk, bearer: Bearer) -> String {
    desk.read(|view| bench::title(view.shop, bearer)).unwrap_or_else(|| common::the_shop().to_owned())
}
