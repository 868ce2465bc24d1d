//! What steps take and give back: clamps, the bench, the dust-free corner, and how many there are.

use crate::dom::prelude::*;
use crate::{
    parts::sum_row::{Group, Leads, SumRow, SumText},
    shell::{Desk, Place},
    words::free as words,
};
use benchslate_core::journal::{Id, Kind};

/// A row each, and one to add something.
#[component]
pub fn Resources() -> impl IntoView {
    let desk = Desk::here();
    let rows = move || {
        let rows: Vec<(Id, SumText)> = desk.read(|view| {
            let here = view.shop.resources.iter().filter(|(id, _)| view.shop.offers(**id));
            let text = |it: &benchslate_core::journal::shop::Resource| SumText {
                label: it.name.clone(),
                figure: it.count.to_string(),
                ..SumText::default()
            };
            here.map(|(id, it)| (*id, text(it))).collect()
        });
        let row = |(id, text): (Id, SumText)| lead(text, Place::Entry(id));
        rows.into_iter().map(row).collect::<Vec<_>>()
    };
    let more = SumText {
        label: words::add_a_resource().to_owned(),
        working: Some(words::and_give_back().to_owned()),
        ..SumText::default()
    };
    view! { <Group title=words::resources().to_owned()/>{rows}{lead(more, Place::Add(Kind::Resource, None))} }
}

fn lead(text: SumText, place: Place) -> AnyView {
    view! { <SumRow text leads=Leads::To(place.href()) signed=false/> }
}
