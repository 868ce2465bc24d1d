//! Receipts: the total at the till in a moment, what it bought in the evening; and money that by-products bring.

mod by_product;
mod later;
mod now;

pub use by_product::ByProductSheet;

use crate::dom::prelude::*;
use crate::{
    parts::sum_row::{Group, Leads, SumRow, SumText},
    shell::{Place, desk::View},
    words::{journal::comma, receipts as words},
};
use benchslate_core::{
    journal::{Id, kinds::Bearer, shop},
    measure::InOrder,
};

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

/// Those that wait for their lines, the latest first: where they are said, the words of that row, and at its end what
/// is still to be said. Of more than a few the rest stand together.
pub fn waiting(view: &View) -> Vec<(Place, String, String)> {
    let mut all: Vec<_> = view.shop.receipts.iter().filter(|(_, receipt)| receipt.waits()).collect();
    all.order_by_key(|(_, receipt)| receipt.order);
    let (all_of_them, more) = (all.len(), all.len().saturating_sub(MOST_NAMED));
    let one = |(id, receipt): (&Id, &shop::Receipt)| {
        let open = unsaid(view, receipt);
        let from = receipt.whence.as_deref().map(|from| comma(from, &open));
        (Place::Receipt(Some(*id)), words::say_the_lines().to_owned(), from.unwrap_or(open))
    };
    let mut rows: Vec<_> = all.into_iter().rev().take(MOST_NAMED).map(one).collect();
    if more > 0 {
        rows.push((Place::Homeless, words::more_receipts(more), words::in_all(all_of_them)));
    }
    rows
}

/// So many stand on the shelf by name.
const MOST_NAMED: usize = 2;

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
