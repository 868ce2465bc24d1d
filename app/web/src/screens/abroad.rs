//! Money of another country, in the forms where money is typed: as the statement shows it, beside what was charged in
//! the shop's currency. Folded away until it is asked for.

use super::stock::form::{Cell, Form};
use crate::dom::prelude::*;
use crate::{
    parts::{answer::RowLink, field::Cells, sum_row::Leads},
    words::money as words,
};
use benchslate_core::{
    journal::kinds::Abroad,
    measure::{Dec, currency, number},
};

pub const AMOUNT: &str = "abroad";
pub const CURRENCY: &str = "abroad-currency";
/// The fields are on view.
const OPEN: &str = "abroad-open";

/// A row that opens to both fields.
pub fn fields(form: Form) -> AnyView {
    let open =
        Memo::new(move |_| [OPEN, AMOUNT, CURRENCY].iter().any(|field| !form.get(field).trim().is_empty()));
    (move || {
        if !open.get() {
            let tap = Callback::new(move |()| form.set(OPEN, "1"));
            return view! {
                <RowLink
                    label=words::paid_abroad().to_owned()
                    end=words::two_more_fields().to_owned()
                    leads=Leads::Tap(tap)
                />
            };
        }
        view! {
            <Cells>
                {Cell::number(AMOUNT, words::as_the_statement_shows()).draw(form)}
                {Cell::words(CURRENCY, words::its_currency()).hint(words::like_eur()).draw(form)}
            </Cells>
            <p class="note">{words::both_are_kept()}</p>
        }
    })
    .draw()
}

/// Both or neither; what is wrong is said by its field.
pub fn read(form: Form) -> Option<Box<Abroad>> {
    let amount = form.read(AMOUNT, number::amount).map(Dec);
    let code = form.now(CURRENCY).trim().to_ascii_uppercase();
    let known = currency::codes().any(|it| it == code);
    match amount {
        None if code.is_empty() || !form.now(AMOUNT).trim().is_empty() => None,
        None => {
            form.wrong(AMOUNT, words::amount_abroad().to_owned());
            None
        }
        Some(_) if !known => {
            form.wrong(CURRENCY, words::currency_abroad().to_owned());
            None
        }
        Some(amount) => Some(Box::new(Abroad { amount, currency: code })),
    }
}
