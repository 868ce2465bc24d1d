//! Slates: what is going on now, chalked. One running clock, two in one band, a slim band, what comes next.
use crate::dom::prelude::*;

use super::dim::Dim;
use super::stretch::{EarlierKey, earlier_keys};

/// Elapsed time as digits: `1:55` and its `h`; `name` is read aloud ("1 h 55").
#[derive(Clone, Default, PartialEq, Eq)]
pub struct ClockText {
    pub digits: String,
    pub unit: String,
    pub name: String,
}

/// One clock in the whole band; its `Stretch` is the child.
#[component]
pub fn RunningSlate(
    #[prop(into)] name: Signal<String>,
    #[prop(into)] stage: Signal<String>,
    /// Who, and for which side.
    #[prop(into)]
    who: Signal<String>,
    /// "camera off", "rolling", "paused 09:40".
    #[prop(into)]
    state: Signal<String>,
    /// The camera rolls: a ring before `state`.
    #[prop(optional, into)]
    rolling: Signal<bool>,
    /// Begun just now by a tap: the slate grows down from the head.
    #[prop(optional, into)]
    starting: Signal<bool>,
    #[prop(into)] clock: Signal<ClockText>,
    children: Children,
) -> impl IntoView {
    view! {
        <section class="slate run" class:starting=move || starting.get() aria-label=move || name.get()>
            <div class="top">
                <h2>{chalked(stage)}</h2>
                <p class="note">{move || who.get()}</p>
                <p class="end" class:rolling=move || rolling.get()>{move || state.get()}</p>
            </div>
            {digits(clock)}
            {children()}
        </section>
    }
}

/// The band that two clocks share; its children are two `SlateHalf`.
#[component]
pub fn TwoClocks(#[prop(into)] name: Signal<String>, children: Children) -> impl IntoView {
    view! { <section class="slate run two" aria-label=move || name.get()>{children()}</section> }
}

/// One of two clocks. `acting`: the keys of the hand are this one's.
#[component]
pub fn SlateHalf(
    #[prop(into)] stage: Signal<String>,
    #[prop(into)] who: Signal<String>,
    /// The camera rolls: a ring before `who`.
    #[prop(into)]
    rolling: Signal<bool>,
    /// "since 08:05", on the dimension line, which is a key: type any other start.
    #[prop(into)]
    since: Signal<String>,
    /// Read aloud: "begun 08:05, change it".
    #[prop(into)]
    start_name: Signal<String>,
    #[prop(optional, into)] going: Signal<bool>,
    #[prop(into)] acting: Signal<bool>,
    #[prop(into)] clock: Signal<ClockText>,
    earlier: Vec<EarlierKey>,
    #[prop(into)] on_earlier: Callback<usize>,
    #[prop(into)] on_start: Callback<()>,
) -> impl IntoView {
    view! {
        <div class="duo" class:acting=move || acting.get()>
            <h2>{chalked(stage)}</h2>
            <p class="note" class:rolling=move || rolling.get()>{move || who.get()}</p>
            {digits(clock)}
            <div class="stretch">
                {earlier_keys(earlier, on_earlier)}
                <button type="button" class="drawn" aria-label=move || start_name.get() on:click=move |_| on_start.run(())>
                    <Dim text=since going=going/>
                </button>
            </div>
        </div>
    }
}

/// A running clock on a screen that is about something else.
#[component]
pub fn SlimSlate(
    #[prop(into)] name: Signal<String>,
    #[prop(into)] stage: Signal<String>,
    #[prop(into)] who: Signal<String>,
    #[prop(into)] clock: Signal<ClockText>,
) -> impl IntoView {
    view! {
        <section class="slate slim" aria-label=move || name.get()>
            <h2>{chalked(stage)}</h2>
            <p class="note">{move || who.get()}</p>
            {digits(clock)}
        </section>
    }
}

/// What comes next, with its keys as children.
#[component]
pub fn NextSlate(
    #[prop(into)] name: Signal<String>,
    #[prop(into)] title: Signal<String>,
    #[prop(optional, into)] note: MaybeProp<String>,
    children: Children,
) -> impl IntoView {
    let note = move || note.get().map(|note| view! { <p class="note">{note}</p> });
    view! {
        <section class="slate next" aria-label=move || name.get()>
            <h2>{move || title.get()}</h2>
            {note}
            {children()}
        </section>
    }
}

/// A word that is chalked in when it changes: a new element each time, so that its drawing starts anew.
fn chalked(word: Signal<String>) -> AnyView {
    let word = Memo::new(move |_| word.get());
    (move || view! { <span class="chalked">{word.get()}</span> }).draw()
}

fn digits(clock: Signal<ClockText>) -> AnyView {
    // Five characters (12:05) are lettered smaller, so that they fit the band.
    let five = move || clock.read().digits.chars().count() > 4;
    view! {
        <p class="clock" class:five=five role="timer" aria-label=move || clock.read().name.clone()>
            {move || clock.read().digits.clone()}<i>{move || clock.read().unit.clone()}</i>
        </p>
    }
}
