//! Who works here, and what an hour of theirs counts for today.

use crate::dom::prelude::*;
use crate::{
    parts::sum_row::{Group, Leads, SumRow, SumText},
    shell::{Desk, Place, desk::View},
    words::shop as words,
};
use benchslate_core::{
    journal::{Id, shop::Person},
    measure::Day,
};

/// A row each, and one to add somebody.
#[component]
pub fn People() -> impl IntoView {
    let desk = Desk::here();
    let rows = move || {
        let today = desk.minute();
        let rows: Vec<(Id, SumText)> = desk.read(|view| {
            let today = view.shop.zone.day(today);
            let here = view.shop.people.iter().filter(|(id, _)| view.shop.offers(**id));
            here.map(|(id, person)| (*id, row(view, person, today))).collect()
        });
        let row = |(id, text): (Id, SumText)| lead(text, Place::Person(Some(id)));
        rows.into_iter().map(row).collect::<Vec<_>>()
    };
    let more = SumText {
        label: words::add_a_person().to_owned(),
        working: Some(words::partner_or_helper().to_owned()),
        ..SumText::default()
    };
    view! { <Group title=words::people().to_owned()/>{rows}{lead(more, Place::Person(None))} }
}

fn lead(text: SumText, place: Place) -> AnyView {
    view! { <SumRow text leads=Leads::To(place.href()) signed=false/> }
}

fn row(view: &View, person: &Person, today: Day) -> SumText {
    let rate = person.rate_on(today);
    let paid = person.paid.then(|| words::paid().to_owned());
    let working = match (paid, since(view, person, today)) {
        (Some(paid), Some(since)) => Some(words::and_also(&paid, &since)),
        (paid, since) => paid.or(since),
    };
    SumText {
        label: person.name.clone(),
        working,
        figure: rate.map_or_else(|| words::no_rate_yet().to_owned(), |rate| view.tongue.money(rate)),
        lacks: rate.is_none(),
        ..SumText::default()
    }
}

/// Since when today's rate holds, and the one before it.
fn since(view: &View, person: &Person, today: Day) -> Option<String> {
    let begun = person.rates.iter().filter(|rate| rate.from.is_none_or(|from| from <= today));
    let mut latest = begun.rev();
    let from = latest.next()?.from?;
    let before = latest.find(|rate| rate.from != Some(from)).map(|rate| view.tongue.money(rate.an_hour));
    Some(words::since(&day(view, from, today), before.as_deref()))
}

/// With its year where that isn't this one.
pub fn day(view: &View, day: Day, today: Day) -> String {
    if day.year() == today.year() { view.tongue.day(day) } else { view.tongue.day_year(day) }
}
