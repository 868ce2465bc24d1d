//! Worth it? What is typed, weighed in three ways while it is typed.

use super::super::{
    form::Form,
    new_lot::{
        fields::reader,
        plan::{self, Plan},
    },
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{AnswerText, Outcome as Drawn},
        money_board::{Amounts, Worth, WorthRow},
        plain,
    },
    shell::{Desk, desk::View},
    words::finds as words,
};
use benchslate_core::{
    costing::{
        Books,
        salvage::{Appraisal, Missing, Offer, OfferFrom, Pile, TypedCase, appraise},
    },
    journal::{
        Body, Id,
        kinds::{Cases, Find},
    },
    measure::{Dec, Money, number},
};

/// Of each way: share usable, and minutes a board or in all.
pub const CASES: [[&str; 2]; 3] = [
    ["case-badly-usable", "case-badly-minutes"],
    [plan::YIELD, "case-usually-minutes"],
    ["case-well-usable", "case-well-minutes"],
];

/// Boards that are counted.
pub fn boards(form: Form) -> Option<u32> {
    number::whole(&form.get(plan::BOARDS)).ok().filter(|boards| *boards > 0)
}

/// What is offered for what is typed, and the three ways that come of both.
pub struct Ways {
    pub offer: Offer,
    pub minutes: Option<[u32; 3]>,
    pub cases: Option<Cases>,
}

/// None while it can't be said how much there is.
pub fn ways(books: &Books, form: Form, plan: &Plan) -> Option<Ways> {
    let (lot, boards) = (&plan.lot.1, boards(form));
    let pile = Pile { quantity: lot.rough.quantity()?, unit: lot.unit, boards };
    let offer = books.offer(lot.whence.as_deref(), pile);
    let typed = CASES.map(|[usable, minutes]| -> TypedCase {
        (number::part(&form.get(usable)).ok().map(Dec), number::whole(&form.get(minutes)).ok())
    });
    Some(Ways { minutes: offer.minutes(boards), cases: offer.cases(boards, typed), offer })
}

/// What is typed as a find; none while how much there is, or how long it takes, can't be said.
pub fn find(books: &Books, form: Form, plan: &Plan) -> Option<Find> {
    let lot = &plan.lot.1;
    Some(Find {
        on: lot.on,
        name: lot.name.clone(),
        whence: lot.whence.clone(),
        species: lot.species.clone(),
        boards: boards(form),
        rough: lot.rough,
        unit: lot.unit,
        basis: lot.basis,
        other_measure: lot.other_measure,
        asked: lot.paid,
        fee: lot.fee,
        km: plan.trip.as_ref().map(|(_, trip)| trip.km),
        cases: ways(books, form, plan)?.cases?,
        new: lot.new.clone(),
        mark: lot.mark,
        lot: None,
    })
}

/// Where an offer comes from, in words: `yours from there: 60 / 70 / 90 %, 3 lots`.
pub fn comes_from(view: &View, ways: &Ways) -> [String; 2] {
    let tongue = view.tongue;
    let shares = ways.offer.usable.map(|it| tongue.number(&it.hundredths().shown_to(0)));
    let minutes = ways.minutes.map(|all| all.map(|it| it.to_string()));
    let from = |from: OfferFrom| match from {
        OfferFrom::Own { lots } => Some(lots),
        OfferFrom::CommonPractice => None,
    };
    [
        words::usable_offered(&shares, from(ways.offer.usable_from)),
        minutes.map_or_else(String::new, |all| words::minutes_offered(&all, from(ways.offer.time_from))),
    ]
}

/// The boards in plain words.
#[derive(Clone, PartialEq)]
pub struct Look {
    pub rows: Vec<WorthRow>,
    pub usually: Option<String>,
    pub caption: String,
    pub missing: Vec<&'static str>,
}

/// Of what an appraisal came to.
pub fn look(view: &View, told: &Appraisal) -> Look {
    let tongue = view.tongue;
    let rows = told.outcomes.iter().zip(words::cases()).enumerate().filter_map(|(at, (outcome, label))| {
        let saved = outcome.at_rate.or(outcome.time_free)?;
        Some(WorthRow {
            label: label.to_owned(),
            usual: at == 1,
            amounts: Amounts {
                instead: drawn(outcome.instead),
                cash: drawn(told.cash),
                own_time: drawn(outcome.own_time),
            },
            outcome: tongue.money(saved),
        })
    });
    let [_, usually, _] = &told.outcomes;
    Look {
        rows: rows.collect(),
        usually: usually.an_hour.map(|pay| words::usually_pays(&tongue.money(pay))),
        caption: words::caption(told.rate.map(|rate| tongue.money(rate)).as_deref()),
        missing: told.missing.iter().map(|it| missing(*it)).collect(),
    }
}

/// For the drawing only.
fn drawn(money: Option<Money>) -> f64 {
    money.map_or(0.0, |it| plain::read(&it.shown(2)))
}

fn missing(what: Missing) -> &'static str {
    match what {
        Missing::Quantity => words::no_quantity(),
        Missing::Asked => words::not_asked(),
        Missing::KmRate => words::no_km_rate(),
        Missing::NewPrice => words::no_new_price(),
        Missing::OtherMeasure => words::no_other_measure(),
        Missing::Rate => words::no_rate(),
    }
}

/// Under a form that the reader of a new lot reads.
pub fn worth(desk: Desk, form: Form) -> AnyView {
    let looks = Memo::new(move |_| {
        desk.books(|books, view| {
            let plan = named(view, desk, form)?;
            let find = find(books, form, &plan)?;
            let id = Id::of([0xfc; 16]);
            let with = view.shop.with(&[(id, Body::Find(find))]);
            Some(look(view, &appraise(&with, with.finds.get(&id)?)))
        })
    });
    (move || looks.get().map(sheet)).draw()
}

/// What the reader makes of the form, as if it had a name.
pub fn named(view: &View, desk: Desk, form: Form) -> Option<Plan> {
    reader(view, desk, form, false).plan_unnamed()
}

/// The boards, drawn.
pub fn sheet(look: Look) -> AnyView {
    let told =
        look.rows.iter().map(|row| words::told(&row.label, &row.outcome)).collect::<Vec<_>>().join("; ");
    let text =
        AnswerText { label: words::worth_it().to_owned(), note: look.usually, ..AnswerText::default() };
    let boards = (!look.rows.is_empty()).then(|| {
        view! { <Worth name=words::told(words::worth_it(), &told) caption=look.caption rows=look.rows/> }
    });
    let missing = (!look.missing.is_empty())
        .then(|| view! { <p class="note">{words::still_missing(&look.missing)}</p> });
    view! { <Drawn text/>{boards}{missing} }
}
