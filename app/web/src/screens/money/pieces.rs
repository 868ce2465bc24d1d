//! What was made and what left, with the profit on what was sold; spoilage and one-off work where there is a run.

use super::look::money;
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        fold::{FoldText, fold},
        sum_row::Leads,
    },
    screens::{
        journal::facts,
        months::{self, Row},
    },
    shell::{Place, desk::View},
    words::{earned as words, income as income_words},
};
use benchslate_core::{
    costing::{BuildCost, OneOff},
    journal::{Body, Id},
    measure::{Instant, Money, Seconds, minutes},
    timing::{learning::learned, worked},
};

/// Two groups of rows; empty ones are not drawn.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Pieces {
    pub made: Vec<Row>,
    pub money: Vec<Row>,
    pub one_off: Vec<Row>,
    /// What the runs of the design have taught.
    pub learned: Vec<Row>,
    /// Something of it is still to be borne.
    pub goes_on: bool,
    /// What stands on the rows while they are folded: pieces, one-off work, what was learned.
    pub says: [String; 3],
}

/// What is known of the pieces of a build.
pub fn look(view: &View, build: Id, cost: &BuildCost, now: Instant) -> Pieces {
    let items = &cost.items;
    let mut made: Vec<Row> = items.entries.iter().filter_map(|entry| entry_row(view, *entry)).collect();
    if items.worked() > 0 || !made.is_empty() {
        let more = words::beyond_made(items.beyond());
        made.push(plain(words::still_here(), more, items.left().to_string()));
    }
    let run = view.shop.is_run(build);
    let learned = learning(view, build, now);
    let one_off_rows = cost.one_off.filter(|_| run).map(|it| one_off(view, it)).unwrap_or_default();
    let figure = |rows: &[Row]| rows.first().map(|it| it.figure.clone()).unwrap_or_default();
    Pieces {
        says: [words::good_and_left(items.good, items.left()), figure(&one_off_rows), figure(&learned)],
        made,
        money: if items.worked() > 0 { in_money(view, cost, run) } else { Vec::new() },
        learned,
        goes_on: run && cost.one_off.is_some_and(|it| it.ended.is_none() && !it.rest.total().is_zero()),
        one_off: one_off_rows,
    }
}

fn plain(label: &str, working: String, figure: String) -> Row {
    Row { label: label.to_owned(), working, figure, ..Row::default() }
}

fn entry_row(view: &View, entry: Id) -> Option<Row> {
    let body = view.journal.body(entry)?;
    let day = view.tongue.day(body.on().day(&view.shop.zone));
    let (label, working) = if let Body::Made(it) = body {
        (income_words::made(it.good, it.spoiled.len()), words::made_on(&day))
    } else if let Body::HandOver(it) = body {
        (income_words::handed(it.count, it.how), words::left_on(&day))
    } else {
        return None;
    };
    Some(Row { label, working, href: Some(Place::Entry(entry).href()), ..Row::default() })
}

/// Profit on those sold; what was given, kept, is left, and what spoilage lost, each where there is any.
fn in_money(view: &View, cost: &BuildCost, run: bool) -> Vec<Row> {
    let (items, profit) = (&cost.items, cost.profit());
    let mut rows = Vec::new();
    if items.sold > 0 {
        let net = money(view, Some(cost.earned.net_piece));
        rows.push(plain(
            words::profit_on_sold(),
            words::net_less_cost(&net, items.sold),
            money(view, profit.on_sold),
        ));
    }
    let at_cost = [
        (words::given_at_cost(), items.given, profit.given),
        (words::kept_at_cost(), items.kept, profit.kept),
        (words::left_at_cost(), items.left(), profit.left),
    ];
    let some = at_cost.into_iter().filter(|it| it.1 > 0);
    rows.extend(some.map(|(label, count, at)| plain(label, words::so_many(count), money(view, at))));
    let loss = cost.batch.loss;
    if run && !loss.is_zero() {
        rows.push(plain(
            words::lost_to_spoilage(),
            words::beyond_usual().to_owned(),
            money(view, Some(loss)),
        ));
    }
    rows
}

/// From two runs on: the rate at which they got quicker, and what the next of the same number would take.
fn learning(view: &View, build: Id, now: Instant) -> Vec<Row> {
    let run = view.shop.run_of(build);
    if run.len() < 2 {
        return Vec::new();
    }
    let Some(it) = learned(view.shop, &worked(view.shop, now), &run, now) else { return Vec::new() };
    let hours = |it: Seconds| view.tongue.hours(it);
    let batches =
        it.batches.iter().map(|batch| words::batch_took(batch.units, &hours(minutes::alone(batch.hours))));
    let stages: Vec<String> = it.stages.iter().map(|id| facts::stage(view, *id)).collect();
    let next = it.batches.last().map_or(1, |batch| batch.units);
    let range = it.next_range(next).map(|(low, high)| words::between(&hours(low), &hours(high)));
    let rate = it.rate_in_thousandths();
    vec![
        Row {
            label: words::each_doubling().to_owned(),
            working: words::batches(&batches.collect::<Vec<String>>(), &stages),
            figure: words::of_the_time(&view.tongue.number(&words::tenths(rate))),
            ..Row::default()
        },
        Row {
            label: words::the_next(next),
            working: range.unwrap_or_else(|| words::of_two_runs().to_owned()),
            figure: hours(it.next(next)),
            ..Row::default()
        },
    ]
}

fn one_off(view: &View, it: OneOff) -> Vec<Row> {
    let figure = |it: Money| money(view, Some(it));
    vec![
        plain(words::one_off_pool(), words::over_run(it.run, &figure(it.each)), figure(it.pool.total())),
        plain(words::borne_here(), String::new(), figure(it.share.total())),
        match it.ended {
            Some(day) => {
                plain(&words::written_off(&view.tongue.day(day)), String::new(), figure(it.rest.total()))
            }
            None => plain(words::still_to_be_borne(), String::new(), figure(it.rest.total())),
        },
    ]
}

/// The groups, each behind a row that says what it comes to.
pub fn drawn(
    pieces: Pieces,
    [made_open, one_off_open, learned_open]: [RwSignal<bool>; 3],
    ends: Callback<()>,
) -> AnyView {
    let Pieces { made, money, one_off, learned, goes_on, says } = pieces;
    let [all, borne, doubling] = says;
    let of_pieces = (!made.is_empty() || !money.is_empty()).then(|| {
        let text = FoldText { label: words::pieces().to_owned(), note: all, ..FoldText::default() };
        fold(text, made_open, move || view! { {months::drawn(made.clone())}{months::drawn(money.clone())} })
    });
    let jigs = (!one_off.is_empty()).then(|| {
        let text = FoldText { label: words::one_off().to_owned(), figure: borne, ..FoldText::default() };
        fold(text, one_off_open, move || {
            let end = goes_on.then(|| {
                view! { <RowLink label=words::no_more_made().to_owned() end=words::writes_it_off().to_owned() leads=Leads::Tap(ends)/> }
            });
            view! { {months::drawn(one_off.clone())}{end} }
        })
    });
    let taught = (!learned.is_empty()).then(|| {
        let text = FoldText { label: words::learned().to_owned(), figure: doubling, ..FoldText::default() };
        fold(text, learned_open, move || view! { {months::drawn(learned.clone())} })
    });
    view! { {of_pieces}{jigs}{taught} }
}
