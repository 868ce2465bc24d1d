//! What is low on the shelf: under the maker's own mark, else under what the last like build drew.

use crate::dom::prelude::*;
use crate::{
    parts::{answer::RowLink, facts::Fact, sum_row::Leads},
    screens::journal::facts::bearer,
    shell::{
        Desk, Place,
        desk::{Phase, View},
    },
    words::{bench as words, buying, gaps, units},
};
use benchslate_core::{
    costing::{LowUnder, ShelfLine},
    journal::kinds::{Bearer, Source},
    measure::Quantity,
    timing::likely::offers_stock,
};

/// The most that are named one by one.
const MOST: usize = 3;

/// Nothing before the journal is read: what is left is in no small record.
pub fn facts(desk: Desk) -> Vec<Fact> {
    if desk.phase.get() != Phase::Ready {
        return Vec::new();
    }
    let facts = desk.books_at_leisure(|books, view| {
        let low: Vec<ShelfLine> = books
            .shelf()
            .into_iter()
            .filter(|line| line.low && offers_stock(view.shop, line.source))
            .collect();
        let more = low.len().saturating_sub(MOST);
        let mut facts: Vec<Fact> = low.iter().take(MOST).map(|line| fact(view, line)).collect();
        if let Some(last) = facts.last_mut().filter(|_| more > 0) {
            last.note = Some(words::more_low(more));
        }
        facts
    });
    facts.unwrap_or_default()
}

fn fact(view: &View, line: &ShelfLine) -> Fact {
    let item = match line.source {
        Source::Item(id) => view.shop.items.get(&id),
        Source::Lot(_) => None,
    };
    let amount = |it: Quantity| {
        let word = item.and_then(|item| item.word.as_deref());
        units::amount_short(view.tongue, it, line.unit, word)
    };
    let left = line.quantity.map(amount).unwrap_or_default();
    Fact {
        label: words::low().to_owned(),
        text: words::left(&gaps::name(view.shop, line.source), &left),
        note: line.low_under.map(|under| match under {
            LowUnder::Mark(mark) => words::under_the_mark(&amount(mark)),
            LowUnder::Like(like) => {
                words::went_into(&amount(like.quantity), &bearer(view, Bearer::Build(like.build)))
            }
        }),
    }
}

/// To the list of what is to be bought, where something is low or stands on it.
pub fn to_buy(desk: Desk, low: bool) -> AnyView {
    if desk.phase.get() != Phase::Ready {
        return ().draw();
    }
    let lines = desk.read(|view| view.shop.to_buy().count());
    if !low && lines == 0 {
        return ().draw();
    }
    let end = buying::lines(lines).unwrap_or_default();
    view! { <RowLink label=buying::to_buy().to_owned() end leads=Leads::To(Place::Buying.href())/> }
}
