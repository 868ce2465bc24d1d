//! What if: the answers of a build follow the thumb; nothing is kept until it is taken.

mod price;

pub use price::PriceSheet;

use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind},
        scale::Scale,
        seg::{Choice, Seg},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::{Leads, SumRow, SumText},
    },
    shell::{
        Desk, Go,
        desk::{Mark, Marked, View},
        frame::Places,
    },
    words::what_if as words,
};
use benchslate_core::{
    costing::{
        Books,
        what_if::{At, Knob, NotTaken, Trial, Tried, not_taken, take},
    },
    journal::Id,
    measure::Money,
};

const KNOBS: [Knob; 4] = [Knob::Rate, Knob::Price, Knob::Pieces, Knob::NewStock];

/// The sheet.
#[component]
pub fn WhatIfSheet(of: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let trial = Memo::new(move |_| desk.books(|books, view| laid_out(books, view, of)));
    let (tried, knob) = (RwSignal::new(Tried::default()), RwSignal::new(Knob::Price));
    let title =
        Signal::derive(move || trial.read().as_ref().map(|it| words::title(&it.title)).unwrap_or_default());
    let some = Memo::new(move |_| tried.get() != Tried::default());
    let why_not = Memo::new(move |_| {
        let what = tried.get();
        let sales = trial.with(|it| it.as_ref().and_then(|it| it.trial.sales(what)));
        desk.read(|view| not_taken(view.journal, view.shop, (of, sales), what, desk.minute()))
    });
    let rows = move || {
        let trial = trial.read();
        trial.as_ref().map(|it| desk.read(|view| drawn(view, &it.trial, tried.get(), why_not.get())))
    };
    let scale = move || trial.get().map(|it| hand(desk, it.trial, knob, tried));
    let put_back = Callback::new(move |()| tried.set(Tried::default()));
    let taken = Callback::new(move |()| taken(desk, go, of, trial.get_untracked(), tried));
    let keys = move || {
        some.get().then(|| {
            let take_it = why_not.get().is_none().then(|| {
                let note = words::is_written(tried.read().rate.is_some()).to_owned();
                view! {
                    <Key class="wide" label=words::take_it().to_owned() note=note kind=KeyKind::Filled on_tap=taken/>
                }
            });
            view! {
                <Keys class="go">
                    <Key label=words::put_back().to_owned() on_tap=put_back/>
                    {take_it}
                </Keys>
            }
        })
    };
    let note = Signal::derive(move || {
        Some(if some.get() { words::tried() } else { words::as_it_stands() }.to_owned())
    });
    view! {
        <Sheet>
            <Head title=title note=note tight=true/>
            <Above><Read name=title>{rows}</Read></Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>{scale}{keys}</Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, None)))/>
            </Below>
        </Sheet>
    }
}

#[derive(Clone, PartialEq)]
struct LaidOut {
    title: String,
    trial: Trial,
}

fn laid_out(books: &Books, view: &View, build: Id) -> Option<LaidOut> {
    let title = view.shop.builds.get(&build)?.title.clone();
    Some(LaidOut { title, trial: books.trial(view.shop, build)? })
}

/// Each answer as tried, with how it stands under it.
fn drawn(view: &View, trial: &Trial, tried: Tried, why_not: Option<NotTaken>) -> AnyView {
    let (stands, then) = (trial.answers(Tried::default()), trial.answers(tried));
    let rows = [
        (words::true_cost(), Some(stands.true_cost), Some(then.true_cost), words::nothing()),
        (words::one_piece(), stands.one_piece, then.one_piece, words::no_pieces()),
        (words::an_hour(trial.stands.ahead), stands.an_hour, then.an_hour, words::no_hours()),
        (words::saved(), stands.saved, then.saved, words::nothing_salvaged()),
    ];
    let money = |it: Money| view.tongue.money(it);
    let row = |(label, stands, then, none): (&str, Option<Money>, Option<Money>, &str)| {
        let text = SumText {
            label: label.to_owned(),
            working: stands.filter(|it| Some(*it) != then).map(|it| words::stands(&money(it))),
            figure: then.map_or_else(|| none.to_owned(), money),
            lacks: then.is_none(),
            ..SumText::default()
        };
        view! { <SumRow text leads=Leads::Nowhere signed=false/> }
    };
    let all: Vec<AnyView> = rows.into_iter().map(row).collect();
    let why_not = why_not.map(|why| view! { <p class="lead">{words::not_taken(why)}</p> });
    view! { <div class="answers" role="status">{all}{why_not}</div><p class="note">{words::how()}</p> }
}

fn hand(desk: Desk, trial: Trial, knob: RwSignal<Knob>, tried: RwSignal<Tried>) -> AnyView {
    let here: Vec<Knob> = KNOBS.into_iter().filter(|it| trial.steps(*it).is_some()).collect();
    let choices: Vec<Choice> = here.iter().map(|it| Choice::plain(words::knob(*it))).collect();
    let (place, of) = (here.clone(), here);
    let chosen = Signal::derive(move || place.iter().position(|it| *it == knob.get()).unwrap_or(usize::MAX));
    let choose = Callback::new(move |at: usize| {
        if let Some(it) = of.get(at) {
            knob.set(*it);
        }
    });
    let says = Signal::derive(move || desk.read(|view| said(view, trial.at(&tried.get(), knob.get()))));
    let moved = Callback::new(move |step: u32| {
        tried.set(trial.moved(tried.get_untracked(), knob.get_untracked(), step))
    });
    view! {
        <Seg name=words::what().to_owned() choices=Signal::stored(choices) chosen=chosen on_choose=choose/>
        <Scale
            name=Signal::derive(move || words::knob(knob.get()).to_owned())
            at=Signal::derive(move || trial.step(&tried.get(), knob.get()))
            last=Signal::derive(move || trial.steps(knob.get()).unwrap_or(1))
            says=says
            on_move=moved
        />
    }
}

fn said(view: &View, at: At) -> String {
    match at {
        At::Money(money) => view.tongue.money(money),
        At::Count(count) => count.to_string(),
        At::Hundredths(share) => words::of_noted(share),
    }
}

fn taken(desk: Desk, go: Go, build: Id, laid_out: Option<LaidOut>, tried: RwSignal<Tried>) {
    let Some(LaidOut { title, trial }) = laid_out else { return };
    let what = tried.get_untracked();
    let sales = trial.sales(what);
    desk.act_then(
        move |hand| {
            take(hand.journal, hand.shop, (build, sales), what, hand.now, hand.fresh).unwrap_or_default()
        },
        move |_| {
            Marked::from(Mark {
                kind: words::kind().to_owned(),
                what: words::marked().to_owned(),
                second: Some(title.clone()),
            })
        },
        move |done| {
            if done.is_ok() {
                go.back();
            }
        },
    );
}
