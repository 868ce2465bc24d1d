//! What is low on the shelf, under the maker's own mark.

use crate::{
    parts::facts::Fact,
    shell::{
        Desk,
        desk::{Phase, View},
    },
    words::{bench as words, gaps, units},
};
use benchslate_core::{
    costing::ShelfLine, journal::kinds::Source, measure::Quantity, timing::likely::offers_stock,
};

/// The most that are named one by one.
const MOST: usize = 3;

/// Nothing before the journal is read: what is left is in no small record.
pub fn facts(desk: Desk) -> Vec<Fact> {
    if desk.phase.get() != Phase::Ready {
        return Vec::new();
    }
    desk.books(|books, view| {
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
    })
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
        note: item.and_then(|item| item.low).map(|mark| words::under_the_mark(&amount(mark))),
    }
}
