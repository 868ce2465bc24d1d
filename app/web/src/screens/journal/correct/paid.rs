//! Money put right: expenses, receipts, by-products.

use super::{DAY, How, Spec, Typed, abroad, dec, tick};
use crate::{
    screens::hours::{choices, fields::side_code, one_off},
    words::{journal::Label, lots},
};
use benchslate_core::{
    journal::{
        kinds::{ByProduct, Expense, Receipt},
        shop::tax_in,
    },
    measure::{Dec, number},
};

pub const EXPENSE: [Spec; 8] = [
    ("what", Label::What, How::Words),
    (DAY, Label::Day, How::Day),
    ("amount", Label::Amount, How::Money),
    ("tax", Label::Tax, How::Tax),
    ("tax-back", Label::Back, How::Tick),
    ("bearer", Label::For, How::Bearer),
    abroad::AMOUNT,
    abroad::CURRENCY,
];

pub fn fill_expense(it: &Expense) -> Vec<(&'static str, String)> {
    let mut filled = vec![
        ("what", it.what.clone()),
        ("amount", it.amount.plain()),
        ("tax", dec(it.tax)),
        ("tax-back", tick(it.tax_back)),
        ("bearer", choices::code(it.bearer)),
        ("side", side_code(it.side).to_owned()),
        (one_off::FIELD, one_off::code(it.one_off).to_owned()),
    ];
    filled.extend(abroad::fill(it.abroad.as_deref()));
    filled
}

pub fn expense(typed: &Typed, before: &Expense) -> Expense {
    let amount = typed.must_money("amount");
    Expense {
        on: typed.on(before.on),
        what: typed.name("what", 80),
        amount,
        tax: typed.tax("tax", Some(amount)),
        tax_back: typed.ticked("tax-back"),
        bearer: typed.bearer("bearer").unwrap_or(before.bearer),
        side: typed.side(),
        one_off: typed.ticked(one_off::FIELD),
        abroad: abroad::read(typed),
        ..before.clone()
    }
}

pub const RECEIPT: [Spec; 10] = [
    ("whence", Label::Whence, How::Words),
    (DAY, Label::Day, How::Day),
    ("total", Label::Total, How::Money),
    ("tax", Label::Tax, How::Tax),
    ("freight", Label::Freight, How::Money),
    ("discount", Label::Discount, How::Money),
    ("tax-back", Label::Back, How::Tick),
    ("bearer", Label::For, How::Bearer),
    abroad::AMOUNT,
    abroad::CURRENCY,
];

pub fn fill_receipt(it: &Receipt) -> Vec<(&'static str, String)> {
    let mut filled = vec![
        ("whence", it.whence.clone().unwrap_or_default()),
        ("total", dec(it.total)),
        ("tax", dec(it.tax)),
        ("freight", dec(it.freight)),
        ("discount", dec(it.discount)),
        ("tax-back", tick(it.tax_back)),
        ("bearer", it.bearer.map(choices::code).unwrap_or_else(|| "shop".to_owned())),
    ];
    filled.extend(abroad::fill(it.abroad.as_deref()));
    filled
}

pub fn receipt(typed: &Typed, before: &Receipt) -> Receipt {
    let total = typed.money("total");
    let tax = tax_of_total(typed, total);
    Receipt {
        on: typed.on(before.on),
        whence: typed.maybe_words("whence", 80),
        freight: typed.money("freight"),
        discount: typed.money("discount"),
        tax,
        tax_back: tax.is_some() && typed.ticked("tax-back"),
        total,
        bearer: typed.bearer("bearer").or(before.bearer),
        abroad: abroad::read(typed),
    }
}

/// As money, or as a share: then of what is left of the total without it.
fn tax_of_total(typed: &Typed, total: Option<Dec>) -> Option<Dec> {
    let text = typed.form.now("tax");
    if !text.trim_end().ends_with('%') {
        return typed.money("tax");
    }
    match number::percent(&text) {
        Err(refused) => typed.wrong("tax", &refused),
        Ok(share) => {
            let tax = total.and_then(|total| tax_in(total, Dec(share), typed.view.tongue.minor()));
            if tax.is_none() {
                typed.form.wrong("tax", lots::tax_of_nothing().to_owned());
            }
            return tax;
        }
    }
    None
}

pub const BY_PRODUCT: [Spec; 4] = [
    ("what", Label::What, How::Words),
    (DAY, Label::Day, How::Day),
    ("amount", Label::Amount, How::Money),
    ("bearer", Label::Of, How::Bearer),
];

pub fn fill_by_product(it: &ByProduct) -> Vec<(&'static str, String)> {
    vec![("what", it.what.clone()), ("amount", it.amount.plain()), ("bearer", choices::code(it.of))]
}

pub fn by_product(typed: &Typed, before: &ByProduct) -> ByProduct {
    ByProduct {
        on: typed.on(before.on),
        of: typed.bearer("bearer").unwrap_or(before.of),
        what: typed.name("what", 80),
        amount: typed.must_money("amount"),
    }
}
