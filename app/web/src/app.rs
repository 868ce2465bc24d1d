//! The program: one document, the place in its address, a sheet for each place.

use crate::dom::prelude::*;
use crate::{
    parts::hatch::HatchDefs,
    screens,
    shell::{Desk, Go, Place, frame, painted, titled, update},
};
use leptos_router::{components::Router, hooks::use_query_map};

/// Everything.
#[leptos::component]
pub fn App() -> impl IntoView {
    let desk = Desk::provide();
    update::keep_before_reload(desk);
    // The router wants a child of its own kind; what it gets is drawn as everything else is.
    leptos::view! { {view! { <HatchDefs/> }}<Router>{view! { <Sheets/> }}</Router> }
}

#[component]
fn Sheets() -> impl IntoView {
    let go = Go::provide();
    frame::number_keys(go);
    provide_context(screens::UpdateWaits { waits: update::waiting(), later: RwSignal::new(false) });
    provide_context(screens::About(RwSignal::new(None)));
    provide_context(screens::photos::Taking(RwSignal::new(screens::photos::At::Rest)));
    provide_context(screens::shop::Saving::new());
    provide_context(screens::shop::Bringing::new());
    provide_context(screens::bench::Goes(RwSignal::new(None)));
    provide_context(screens::drying::Skipped::recalled());
    let query = use_query_map();
    let place = Memo::new(move |_| Place::of(query.read().get("at").as_deref().unwrap_or_default()));
    provide_context(place);
    titled::follow(place);
    let desk = Desk::here();
    let no_journal = Memo::new(move |_| screens::trouble::no_journal(desk));
    painted::leaves(desk, move || no_journal.with(Option::is_some) || place.get() != Place::Bench);
    move || match no_journal.get() {
        Some(trouble) => view! { <screens::trouble::NoJournalSheet trouble/> },
        None => screens::sheet(place.get()),
    }
}
