//! The money of a build: what came in, what is still to come, what was made and what left, and where it stands.

mod acts;
mod against;
mod look;
mod pieces;

pub use against::AgainstSheet;

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText, Leading, SideAnswer},
        fold::{FoldText, fold},
        key::{Key, KeyKind, KeyLink},
        message::Message,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText, SumTotal},
    },
    screens::months,
    shell::{Desk, Place, desk::Phase, frame::Places, mark::LastMarkHere},
    words::{cost, earned as words, what_if as tries},
};
use benchslate_core::journal::{Id, Kind, kinds::State};
use look::{Look, Open};

/// What the hand is about.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Doing {
    /// Nothing in particular.
    #[default]
    Nothing,
    /// A line that is still expected was tapped.
    Receiving(Id),
    /// Close was tapped: what it freezes is said.
    Closing,
}

/// The sheet.
#[component]
pub fn MoneySheet(of: Id) -> impl IntoView {
    let desk = Desk::here();
    let look = Memo::new(move |_| desk.books(|books, view| look::look(books, view, of)));
    let doing = RwSignal::new(Doing::default());
    let folds = Folds::default();
    let ready = move || desk.phase.get() == Phase::Ready;
    let title = Signal::derive(move || match look.read().as_ref() {
        Some(look) => words::money_of(&look.title),
        None if ready() => cost::no_build().to_owned(),
        None => String::new(),
    });
    let note = Signal::derive(move || look.read().as_ref().map(|look| look.stands.clone()));
    let closing = move |look: &Look| {
        let lines =
            Signal::stored(vec![words::closing_freezes(&look.freezes), words::closing_after().to_owned()]);
        view! { <Message title=words::closing().to_owned() lines/> }
    };
    // What closing does stands alone: nothing of it may be scrolled out of sight.
    let closes = Memo::new(move |_| doing.get() == Doing::Closing);
    let all = move || {
        look.get()
            .map(|look| if closes.get() { closing(&look) } else { drawn(desk, of, look, (doing, folds)) })
    };
    // Nothing but what the keys say: they stand while figures change.
    let asks = Memo::new(move |_| look.read().as_ref().map(|look| asks(doing.get(), look)));
    let state = Memo::new(move |_| look.read().as_ref().map_or(State::Begun, |look| look.state));
    let keys = move || asks.get().map(|asks| hand(desk, of, doing, state, asks));
    view! {
        <Sheet>
            <Head title=title note=note tight=true/>
            <Above>
                <Read name=title below=Signal::derive(move || (!closes.get()).then(|| words::below().to_owned()))>
                    {all}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>{keys}</Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, None)))/>
            </Below>
        </Sheet>
    }
}

/// Groups that are open: they stay so while the sheet is drawn anew.
#[derive(Clone, Copy)]
struct Folds {
    came: RwSignal<bool>,
    pieces: RwSignal<bool>,
    one_off: RwSignal<bool>,
    learned: RwSignal<bool>,
}

impl Default for Folds {
    fn default() -> Folds {
        let [came, pieces, one_off, learned] = [(); 4].map(|()| RwSignal::new(false));
        Folds { came, pieces, one_off, learned }
    }
}

/// What comes in first; what was made and what is planned opens.
fn drawn(desk: Desk, build: Id, look: Look, (doing, folds): (RwSignal<Doing>, Folds)) -> AnyView {
    let Look { closed, net, lines, tax, hour, open, open_sum, pieces, above, plan, .. } = look;
    let closed = closed.map(|(label, figure, note)| {
        view! { <Answer text=AnswerText { label, figure, note, lacks: false }/> }
    });
    let none = lines.is_empty() && open.is_empty();
    let lead = none.then(|| view! { <p class="lead">{words::nothing_yet()}</p> });
    let came = (!lines.is_empty()).then(|| came_in(lines, net, tax, folds.came));
    let expected = (!open.is_empty()).then(|| {
        view! {
            <Group title=words::still_expected().to_owned()/>
            {open.into_iter().map(|it| still(it, doing)).collect::<Vec<_>>()}
            {open_sum.map(|sum| view! { <SumTotal label=words::in_all().to_owned() figure=sum/> })}
        }
    });
    let leading = hour.map(|(hour, item)| {
        view! {
            <Leading name=words::leading().to_owned()>
                {side(words::an_hour_earned(), hour)}
                {side(words::a_good_item(), item)}
            </Leading>
        }
    });
    let ends = Callback::new(move |()| acts::end_run(desk, build));
    view! {
        {closed}
        {leading}
        {lead}
        {above.map(|it| months::drawn(vec![it]))}
        {expected}
        {came}
        <Group title=words::the_plan().to_owned()/>
        {months::drawn(plan)}
        <Group title=words::pieces_and_price().to_owned()/>
        {pieces::drawn(pieces, [folds.pieces, folds.one_off, folds.learned], ends)}
        {ways(build)}
    }
}

/// One line stands as it is; several stand behind what they come to.
fn came_in(lines: Vec<months::Row>, net: String, tax: Vec<months::Row>, open: RwSignal<bool>) -> AnyView {
    let few = lines.len() == 1;
    let text = FoldText {
        label: words::came_in().to_owned(),
        note: words::so_many_lines(lines.len()),
        figure: net.clone(),
    };
    let rows = move || {
        view! {
            {months::summed(lines.clone())}
            <SumTotal label=words::net().to_owned() figure=net.clone()/>
            {months::drawn(tax.clone())}
        }
    };
    if few {
        return view! { <Group title=words::came_in().to_owned()/>{rows()} };
    }
    fold(text, open, rows)
}

/// To what can be tried and asked.
fn ways(build: Id) -> AnyView {
    let row = |label: &str, working: &str, place: Place| months::Row {
        label: label.to_owned(),
        working: working.to_owned(),
        href: Some(place.href()),
        ..months::Row::default()
    };
    let ask = row(tries::what_to_ask(), tries::what_to_ask_note(), Place::Price(build));
    let what_if = row(tries::what_if(), tries::what_if_note(), Place::WhatIf(build));
    view! { {months::drawn(vec![ask, what_if])} }
}

/// A figure, a note, whether it lacks something, and where it opens.
type Figure = (String, Option<String>, bool, Option<String>);

fn side(label: &str, (figure, note, lacks, href): Figure) -> AnyView {
    let text = AnswerText { label: label.to_owned(), figure, note, lacks };
    view! { <SideAnswer text leads=href.map_or(Leads::Nowhere, Leads::To)/> }
}

/// A line that is still expected: a tap makes ready to receive it.
fn still(it: Open, doing: RwSignal<Doing>) -> AnyView {
    let entry = it.entry;
    let tap = Callback::new(move |()| {
        let same = doing.get_untracked() == Doing::Receiving(entry);
        doing.set(if same { Doing::Nothing } else { Doing::Receiving(entry) });
    });
    let text = SumText { label: it.label, working: it.working, figure: it.rest, ..SumText::default() };
    view! { <SumRow text leads=Leads::Tap(tap) signed=false/> }
}

/// What the hand asks, as the money stands.
#[derive(Clone, PartialEq)]
enum Asks {
    Usual,
    /// A line, and the whole of what is still expected of it.
    Receive(Id, String),
    Close,
}

fn asks(doing: Doing, look: &Look) -> Asks {
    match doing {
        Doing::Nothing => Asks::Usual,
        Doing::Closing => Asks::Close,
        Doing::Receiving(entry) => {
            let line = look.open.iter().find(|it| it.entry == entry);
            line.map_or(Asks::Usual, |it| Asks::Receive(entry, it.whole.clone()))
        }
    }
}

fn hand(desk: Desk, build: Id, doing: RwSignal<Doing>, state: Memo<State>, asks: Asks) -> AnyView {
    let quit = move || Callback::new(move |()| doing.set(Doing::Nothing));
    match asks {
        Asks::Receive(entry, rest) => {
            let receive = Callback::new(move |()| {
                acts::receive(desk, entry);
                doing.set(Doing::Nothing);
            });
            view! {
                <Keys class="tall">
                    <Key label=words::not_now().to_owned() on_tap=quit()/>
                    <KeyLink
                        label=words::other_amount().to_owned()
                        note=words::tax_and_fee().to_owned()
                        href=Place::Entry(entry).href()
                    />
                    <Key
                        class="half-more"
                        label=words::received_now(&rest)
                        note=words::today().to_owned()
                        kind=KeyKind::Filled
                        on_tap=receive
                    />
                </Keys>
            }
        }
        Asks::Close => {
            let close = Callback::new(move |()| {
                acts::close(desk, build);
                doing.set(Doing::Nothing);
            });
            view! {
                <Keys class="tall">
                    <Key label=words::not_now().to_owned() on_tap=quit()/>
                    <Key class="wide" label=words::close_it().to_owned() kind=KeyKind::Filled on_tap=close/>
                </Keys>
            }
        }
        Asks::Usual => usual(desk, build, doing, state),
    }
}

fn usual(desk: Desk, build: Id, doing: RwSignal<Doing>, state: Memo<State>) -> AnyView {
    let add = move |kind: Kind| Place::Add(kind, Some(build)).href();
    let say = move |state: State| Callback::new(move |()| acts::stands(desk, build, state));
    let close = Callback::new(move |()| doing.set(Doing::Closing));
    let standing = move || match state.get() {
        State::Closed => view! {
            <Key label=words::reopen().to_owned() on_tap=Callback::new(move |()| acts::reopen(desk, build))/>
        },
        State::Paused => view! {
            <Key label=words::go_on().to_owned() on_tap=say(State::Begun)/>
            <Key label=words::close().to_owned() on_tap=close/>
        },
        State::Begun | State::Reopened => view! {
            <Key label=words::pause().to_owned() on_tap=say(State::Paused)/>
            <Key label=words::close().to_owned() on_tap=close/>
        },
    };
    view! {
        <Keys class="mid">
            <KeyLink label=words::made().to_owned() note=words::good_spoiled().to_owned() href=add(Kind::Made)/>
            <KeyLink label=words::left_us().to_owned() note=words::sold_given().to_owned() href=add(Kind::HandOver)/>
            {standing}
        </Keys>
        <Keys class="tall">
            <KeyLink
                class="wide"
                label=words::money_in().to_owned()
                note=words::expected_or_arrived().to_owned()
                kind=KeyKind::Filled
                href=add(Kind::Income)
            />
        </Keys>
    }
}
