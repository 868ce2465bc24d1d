//! Ways to make it surer: the best three in the hand, the rest under the drawing; one that is tried, with its two keys.

use super::{State, Tried, first_keys, look, run::Looking, troubles};
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind, KeyLink},
        mark::{LastMark, MarkText, Safety},
        sheet::{Hand, HandKind, Keys},
        sum_row::Group,
        way_row::WayRow,
    },
    shell::{
        desk::{Mark, Marked},
        mark::LastMarkHere,
    },
    words::plan as words,
};
use benchslate_core::{
    journal::Id,
    planning::{Helped, Trial, taking},
};
use std::sync::Arc;

/// In the hand, at most.
const IN_HAND: usize = 3;

/// The hand: ways, or the keys that make a plan.
pub fn hand(state: State, build: Memo<Option<Id>>) -> AnyView {
    let planned = move || {
        let build = build.get();
        let made = state.made.get();
        made.filter(|it| it.plan.steps.iter().any(|step| Some(step.build) == build)).is_some()
    };
    let planned = Memo::new(move |_| planned());
    let keys = move || match (planned.get(), state.tried.get()) {
        (false, _) => first_keys(state, build.get()),
        (true, Some(tried)) => {
            view! {
                {strip(state, &tried)}
                <Hand name=words::keys().to_owned() kind=HandKind::Tall>{take_key(state, tried)}{rows(state, 2)}</Hand>
            }
        }
        (true, None) => match date_key(state, build.get()) {
            Some(key) => view! { <LastMarkHere/><Hand name=words::keys().to_owned()>{key}</Hand> },
            None => view! {
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Tall>{over(state)}{rows(state, IN_HAND)}</Hand>
            },
        },
    };
    keys.draw()
}

/// Without a date there is nothing to be late for: the way to one.
fn date_key(state: State, build: Option<Id>) -> Option<AnyView> {
    let build = build?;
    let made = state.made.get()?;
    let (label, place) = troubles::way_on(&made.plan, build)?;
    made.plan.build(build).is_some_and(|it| it.due.is_none()).then(|| {
        view! { <Keys class="go"><KeyLink label=label.to_owned() kind=KeyKind::Filled href=place.href()/></Keys> }
    })
}

/// Those that gain something, best first, but the one that is tried.
fn helpful(state: State) -> Vec<Helped> {
    let tried = state.tried.get().map(|it| it.trial);
    let mut ways = state.runs.ways.get();
    ways.retain(|it| it.gained > 0 && Some(it.trial) != tried);
    ways
}

/// The line over the ways.
fn over(state: State) -> AnyView {
    let says = move || {
        let all = helpful(state).len();
        match state.runs.looking.get() {
            Looking::Waits => String::new(),
            Looking::Goes(hundredths) => words::looking_for_ways(hundredths),
            Looking::Stopped => words::stopped().to_owned(),
            Looking::Done if all == 0 => words::nothing_helps().to_owned(),
            Looking::Done => words::surer(all.min(IN_HAND), all),
        }
    };
    let stop = move || {
        let goes = matches!(state.runs.looking.get(), Looking::Goes(_));
        goes.then(|| {
            view! { <button type="button" class="open" on:click=move |_| state.runs.stop()>{words::stop()}</button> }
        })
    };
    view! { <p class="over-ways note"><span>{says}</span>{stop}</p> }
}

fn rows(state: State, many: usize) -> AnyView {
    let list = move || drawn(state, helpful(state).into_iter().take(many).collect());
    view! { <ul class="ways">{list}</ul> }
}

/// Ways that have no room in the hand.
pub fn rest(state: State) -> AnyView {
    let list = move || {
        let shown = if state.tried.with(Option::is_some) { 2 } else { IN_HAND };
        let rest: Vec<Helped> = helpful(state).into_iter().skip(shown).collect();
        (!rest.is_empty()).then(|| {
            view! { <Group title=words::more_ways().to_owned()/><ul class="ways">{drawn(state, rest)}</ul> }
        })
    };
    list.draw()
}

fn drawn(state: State, ways: Vec<Helped>) -> Vec<AnyView> {
    let row = move |it: Helped| {
        let text = state.desk.read(|view| look::way_row(view, &it));
        let tap = Callback::new(move |()| try_it(state, it.trial));
        view! { <WayRow text on_tap=tap/> }
    };
    ways.into_iter().map(row).collect()
}

fn try_it(state: State, trial: Trial) {
    let Some(made) = state.made.get_untracked() else { return };
    let was = state
        .desk
        .now_read(|view| look::chance(view, &made, &made.plan, state.runs.told.get_untracked().as_ref()));
    let plan = state.desk.now_read(|view| made.plan.with(&made.asking(view.shop), &[trial]));
    state.runs.tried.set(None);
    state.tried.set(Some(Tried { trial, plan: Arc::new(plan.clone()), was: was.0 }));
    state.runs.try_out(made, plan);
}

/// The strip at the seam: what is tried, and the way back.
fn strip(state: State, tried: &Tried) -> AnyView {
    let what = state.desk.read(|view| look::way(view, tried.trial).0);
    let mark = MarkText {
        time: words::tried().to_owned(),
        kind: String::new(),
        what,
        second: Some(words::was(&tried.was)),
        safety: Safety::Tried,
        state: words::not_kept_yet().to_owned(),
    };
    let back = Callback::new(move |()| state.tried.set(None));
    view! {
        <LastMark
            name=crate::words::common::last_mark().to_owned()
            mark=Signal::stored(mark)
            undo=words::put_back().to_owned()
            on_undo=back
        />
    }
}

fn take_key(state: State, tried: Tried) -> AnyView {
    let trial = tried.trial;
    let (label, note) = state.desk.read(|view| look::way(view, trial));
    let tap = Callback::new(move |()| take(state, trial));
    view! {
        <Keys class="go">
            <Key label=words::take_it().to_owned() note=crate::words::journal::comma(&label, &note) kind=KeyKind::Filled on_tap=tap/>
        </Keys>
    }
}

fn take(state: State, trial: Trial) {
    let label = state.desk.now_read(|view| look::way(view, trial).0);
    state.desk.act(
        move |hand| taking::taken(hand, trial),
        move |_| {
            Marked::from(Mark { kind: words::kind().to_owned(), what: words::marked(&label), second: None })
        },
    );
}
