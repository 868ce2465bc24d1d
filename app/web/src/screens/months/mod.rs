//! What the shop costs every month, what an hour bears of it, and month by month what nobody bore.

use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind, KeyLink},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    shell::{Desk, Go, Place, desk::View, frame::Places, mark::LastMarkHere},
    words::{common, months as words},
};
use benchslate_core::{
    costing::{Books, MonthBorne},
    journal::{Id, Kind},
    measure::Money,
};

/// How many months stand in the list.
const SHOWN: usize = 14;

/// The sheet.
#[component]
pub fn MonthsSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let look = Memo::new(move |_| desk.books(look));
    let all = move || {
        let Look { rates, costs, months } = look.get();
        let none = costs.is_empty();
        view! {
            {drawn(rates)}
            <Group title=words::every_month().to_owned()/>
            {none.then(|| view! { <p class="lead">{words::none_yet()}</p> })}
            {drawn(costs)}
            {(!months.is_empty()).then(|| view! { <Group title=words::month_by_month().to_owned()/> })}
            {drawn(months)}
            <p class="note">{words::what_is_borne()}</p>
        }
    };
    view! {
        <Sheet>
            <Head title=words::title().to_owned() tight=true/>
            <Above><Read name=words::title().to_owned() below=words::below().to_owned()>{all}</Read></Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <KeyLink
                            label=words::normal_hours().to_owned()
                            note=words::of_a_month().to_owned()
                            href=Place::Choices.href()
                        />
                        <KeyLink
                            class="half-more"
                            label=words::add().to_owned()
                            kind=KeyKind::Filled
                            href=Place::Add(Kind::MonthlyCost, None).href()
                        />
                    </Keys>
                </Hand>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

/// A row as it is drawn.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Row {
    pub label: String,
    pub working: String,
    pub figure: String,
    pub lacks: bool,
    pub href: Option<String>,
}

#[derive(Clone, Debug, PartialEq)]
struct Look {
    rates: Vec<Row>,
    costs: Vec<Row>,
    months: Vec<Row>,
}

fn look(books: &Books, view: &View) -> Look {
    let months = books.months(view.shop);
    Look {
        rates: rates(books, view, &Place::Choices),
        costs: costs(view, books.month(view.shop).beyond),
        months: months.iter().rev().take(SHOWN).map(|it| month(view, it)).collect(),
    }
}

/// An hour worked, in both pools; the film's only where something goes over film hours.
pub fn rates(books: &Books, view: &View, leads: &Place) -> Vec<Row> {
    let month = books.month(view.shop);
    let href = Some(leads.href());
    let mut rows = Vec::new();
    if !month.shop.is_zero() || month.film.is_zero() {
        rows.push(rate(view, words::all_hours(), month.shop, month.hours, month.an_hour(), href.clone()));
    }
    if !month.film.is_zero() {
        rows.push(rate(view, words::film_hours(), month.film, month.film_hours, month.film_hour(), href));
    }
    rows
}

fn rate(
    view: &View,
    label: &str,
    cost: Money,
    hours: Option<benchslate_core::measure::Quantity>,
    rate: Option<Money>,
    href: Option<String>,
) -> Row {
    let cost = view.tongue.money(cost);
    let over = hours.map(|hours| view.tongue.quantity(hours));
    Row {
        label: label.to_owned(),
        working: words::over_hours(&cost, over.as_deref()),
        figure: rate.map_or_else(|| words::no_hours().to_owned(), |rate| view.tongue.money(rate)),
        lacks: rate.is_none(),
        href,
    }
}

fn costs(view: &View, beyond: Option<Id>) -> Vec<Row> {
    let row = |it: &benchslate_core::journal::shop::MonthlyCost| {
        let day = |day: benchslate_core::measure::Day| view.tongue.day_year(day);
        Row {
            label: it.what.clone(),
            working: words::in_force(
                it.film,
                it.from.map(day).as_deref(),
                it.to.map(day).as_deref(),
                beyond == Some(it.order.entry),
            ),
            figure: view.tongue.money(it.a_month),
            lacks: false,
            href: Some(Place::Entry(it.order.entry).href()),
        }
    };
    view.shop.monthly.iter().map(row).collect()
}

fn month(view: &View, it: &MonthBorne) -> Row {
    let money = |it: Money| view.tongue.money(it);
    let not_borne = it.not_borne();
    Row {
        label: words::month(&view.tongue.month(it.first), it.under_way),
        working: words::actual_and_borne(&money(it.actual()), &money(it.applied)),
        figure: money(not_borne),
        lacks: false,
        href: None,
    }
}

/// Rows that lead somewhere, or don't.
pub fn drawn(rows: Vec<Row>) -> Vec<AnyView> {
    rows.into_iter().map(|it| row(it, None)).collect()
}

/// The same as the terms of a sum.
pub fn summed(rows: Vec<Row>) -> Vec<AnyView> {
    let terms = rows.into_iter().enumerate();
    terms.map(|(at, it)| row(it, Some(if at == 0 { "" } else { "+" }))).collect()
}

fn row(it: Row, sign: Option<&str>) -> AnyView {
    let text = SumText {
        sign: sign.unwrap_or_default().to_owned(),
        label: it.label,
        working: Some(it.working).filter(|working| !working.is_empty()),
        figure: it.figure,
        lacks: it.lacks,
    };
    view! { <SumRow text leads=it.href.map_or(Leads::Nowhere, Leads::To) signed=sign.is_some()/> }
}
