//! Money that comes in: expected, received bit by bit, shared among builds. New, and put right.

use super::{
    Choices, DAY, How, Spec, Typed, dec,
    rows::{self, Rows, field},
    tick, trip,
};
use crate::{
    screens::hours::{choices, fields::side_code},
    words::{income as said, journal as words, journal::Label, refusal},
};
use benchslate_core::{
    journal::{
        kinds::{Bearer, Income, Received, Share},
        shop::tax_in_typed,
    },
    measure::{Dec, number},
};

pub const INCOME: [Spec; 6] = [
    ("kind", Label::Kind, How::OneOf(Choices::IncomeKind)),
    ("what", Label::What, How::Words),
    ("expected", Label::Expected, How::Money),
    ("due", Label::ExpectedBy, How::Day),
    (DAY, Label::Day, How::Day),
    ("settled", Label::Settled, How::Tick),
];

pub const RECEIVED: Rows = Rows {
    count: "payments",
    title: said::received(),
    more: said::one_more(),
    cells: &[
        ("received", Label::Received, How::Money, ""),
        ("received-on", Label::On, How::Day, ""),
        ("received-tax", Label::TaxIn, How::Words, said::tax_in_hint()),
        ("received-fee", Label::FeeKept, How::Money, ""),
    ],
};

/// The bearer of a new one is the build; of one that names none, the shop.
fn parts(it: &Income) -> Vec<Share> {
    if it.shares.is_empty() { vec![Share { bearer: Bearer::Shop, parts: 1 }] } else { it.shares.clone() }
}

pub fn fill_income(it: &Income) -> Vec<(String, String)> {
    let mut filled = super::owned(vec![
        ("kind", super::chosen::income_kind_code(it.kind)),
        ("what", it.what.clone().unwrap_or_default()),
        ("side", side_code(it.side).to_owned()),
        ("expected", dec(it.expected)),
        ("due", super::day_code(it.due)),
        ("settled", tick(it.settled)),
        ("payments", it.received.len().to_string()),
    ]);
    for (at, got) in it.received.iter().enumerate() {
        filled.push((field("received", at), super::given(got.amount)));
        filled.push((field("received-on", at), got.on.to_string()));
        filled.push((field("received-tax", at), dec(got.tax)));
        filled.push((field("received-fee", at), dec(got.fee)));
    }
    let parts = parts(it);
    let codes: Vec<String> = parts.iter().map(|share| choices::code(share.bearer)).collect();
    filled.push((trip::SHARED.to_owned(), codes.join(" ")));
    filled.extend(parts.iter().enumerate().map(|(at, share)| (trip::field(at), share.parts.to_string())));
    filled
}

pub fn income(typed: &Typed, before: &Income) -> Income {
    let form = typed.form;
    let received: Vec<Received> =
        (0..rows::count(form, RECEIVED.count)).filter_map(|at| received(typed, at)).collect();
    let expected = typed.money("expected");
    if expected.is_none() && received.is_empty() && !form.is_wrong() {
        form.wrong("expected", words::no_amount_yet().to_owned());
    }
    let shares = trip::shares(form);
    Income {
        on: typed.on(before.on),
        kind: super::chosen::income_kind(&form.now("kind")).unwrap_or(before.kind),
        side: typed.side(),
        what: typed.maybe_words("what", 80),
        // What comes to the same stays as it was written.
        shares: if shares == parts(before) { before.shares.clone() } else { shares },
        expected,
        due: typed.day("due"),
        received,
        settled: typed.ticked("settled"),
    }
}

/// One payment; an empty one is none. Below zero: paid back.
fn received(typed: &Typed, at: usize) -> Option<Received> {
    let [amount, on, tax, fee] =
        ["received", "received-on", "received-tax", "received-fee"].map(|name| field(name, at));
    let form = typed.form;
    let got = form.read(&amount, number::signed_amount).map(Dec);
    let beside = [&tax, &fee].into_iter().any(|it| !form.now(it).trim().is_empty());
    if got.is_none() && form.now(&amount).trim().is_empty() {
        if beside {
            form.wrong(&amount, words::no_amount_yet().to_owned());
        }
        return None;
    }
    let got = got?;
    typed.in_currency(&amount);
    let text = form.now(&tax);
    let read = match text.trim() {
        "" => Ok(None),
        text => tax_in_typed(text, Some(got), typed.view.tongue.minor()),
    };
    let in_it = read.unwrap_or_else(|refused| {
        form.wrong(&tax, refusal::sentence(&refused));
        None
    });
    let fee = form.read(&fee, number::signed_amount).map(Dec);
    Some(Received { on: typed.day(&on).unwrap_or(typed.today), amount: got, tax: in_it, fee })
}
