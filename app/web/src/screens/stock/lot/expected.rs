//! What was expected of a lot when it was a find, beside what it has come to.

use crate::dom::prelude::*;
use crate::{
    parts::sum_row::{Group, Leads, SumRow, SumText},
    screens::stock::thing::Thing,
    shell::{Place, desk::View},
    words::{finds as words, salvage},
};
use benchslate_core::{
    costing::Books,
    journal::Id,
    measure::{Money, Quantity},
};

/// The find, and of each row: what, as expected, so far. None: it was never a find.
pub fn rows(books: &Books, view: &View, lot: Id, thing: &Thing) -> Option<(Id, Vec<[String; 3]>)> {
    let it = books.expected(view.shop, lot)?;
    let tongue = view.tongue;
    let none = || salvage::no_figure().to_owned();
    let money = |it: Option<Money>| it.map_or_else(none, |it| tongue.money(it));
    let quantity = |it: Option<Quantity>| it.map_or_else(none, |it| tongue.quantity(it));
    let [usable, time, cash, an_hour] = words::rows();
    let row =
        |label: &str, expected: String, now: String| [label.to_owned(), words::expected(&expected), now];
    let now = it.usable_now.map_or_else(none, |now| thing.amount_short(tongue, now));
    Some((
        it.find,
        vec![
            row(usable, it.usable.map(quantity).join(" / "), now),
            row(time, it.time.map(|it| tongue.hours(it)).join(" / "), tongue.hours(it.hours_now.seconds())),
            row(cash, money(it.cash), tongue.money(it.cash_now)),
            row(an_hour, it.an_hour.map(money).join(" / "), money(it.an_hour_now)),
        ],
    ))
}

/// Rows that lead to the find.
pub fn draw((find, rows): (Id, Vec<[String; 3]>)) -> AnyView {
    let row = |[label, expected, figure]: [String; 3]| {
        let text = SumText { label, working: Some(expected), figure, ..SumText::default() };
        view! { <SumRow text leads=Leads::To(Place::Find(find).href()) signed=false/> }
    };
    view! {
        <Group title=words::as_expected().to_owned()/>
        {rows.into_iter().map(row).collect::<Vec<_>>()}
    }
}
