//! Receipts: the total at the till in a moment, what it bought in the evening; and money that by-products bring.

mod by_product;
mod later;
mod now;

pub use by_product::ByProductSheet;

use crate::dom::prelude::*;
use crate::{
    parts::sum_row::{Group, Leads, SumRow, SumText},
    shell::desk::View,
    words::receipts as words,
};
use benchslate_core::journal::{Id, kinds::Bearer, shop};

/// A receipt's lines; none: a new one, at the till.
pub fn sheet(of: Option<Id>) -> AnyView {
    match of {
        None => view! { <now::ReceiptNowSheet/> },
        Some(id) => view! { <later::ReceiptSheet receipt=id/> },
    }
}

/// What its lines have still to say: `47.20 of 82.00 still to be said`; none where they say all of it.
pub fn still_to_say(view: &View, receipt: Id) -> Option<String> {
    let receipt = view.shop.receipts.get(&receipt).filter(|receipt| receipt.waits())?;
    Some(unsaid(view, receipt))
}

fn unsaid(view: &View, receipt: &shop::Receipt) -> String {
    match (receipt.open(), receipt.total) {
        (Some(open), Some(total)) => words::still_to_say(&view.tongue.money(open), &view.tongue.money(total)),
        _ => words::no_line_yet().to_owned(),
    }
}

/// A choice of what bears it, in place of the form.
fn bearers(all: Vec<(Bearer, String)>, choose: Callback<Bearer>) -> AnyView {
    let row = move |(to, label): (Bearer, String)| {
        let text = SumText { label, ..SumText::default() };
        view! { <SumRow text leads=Leads::Tap(Callback::new(move |()| choose.run(to))) signed=false/> }
    };
    view! {
        <Group title=words::what_for().to_owned()/>
        {all.into_iter().map(row).collect::<Vec<_>>()}
    }
}
