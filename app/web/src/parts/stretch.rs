//! A stretch of work drawn to scale, a quarter hour 60 px, with the pieces that lengthen it by a tap.
use crate::dom::{prelude::*, several};

use super::dim::Dim;
use super::plain::Plain;
use super::tally::Tally;

/// Where the dashed pieces stand: before the start of what runs, or at the end of what was stopped.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum EarlierAt {
    #[default]
    Start,
    End,
}

/// A dashed piece that is a key: a quarter hour to the same scale.
#[derive(Clone, PartialEq, Eq)]
pub struct EarlierKey {
    /// `30`.
    pub minutes: String,
    /// `earlier`.
    pub word: String,
    /// Read aloud: "30 minutes earlier".
    pub name: String,
}

/// What the drawing says.
#[derive(Clone, Default, PartialEq)]
pub struct StretchText {
    /// Length in quarter hours, for the drawing only.
    pub quarters: f64,
    /// `1 h 55`, on the dimension line.
    pub length: String,
    /// `08:05`, in the solid end.
    pub start: String,
    /// Read aloud when the start is a key: "started 08:05, change".
    pub start_name: String,
    /// The far end is dashed: still running.
    pub going: bool,
}

/// `earlier` stands in reading order: 30, 15 before a start, 15, 30 after an end. `on_earlier` gets the place in it;
/// `on_start` makes the start time a key (type any other minute).
#[component]
pub fn Stretch(
    #[prop(into)] text: Signal<StretchText>,
    earlier: Vec<EarlierKey>,
    #[prop(optional)] at: EarlierAt,
    #[prop(into)] on_earlier: Callback<usize>,
    #[prop(optional, into)] on_start: Option<Callback<()>>,
) -> impl IntoView {
    let quarters = Memo::new(move |_| text.read().quarters);
    let going = Memo::new(move |_| text.read().going);
    let length = Memo::new(move |_| text.read().length.clone());
    let short = move || quarters.get() < 2.0;
    let drawn = view! {
        <div class="drawn">
            <div class="span" class:short=short style:--quarters=move || format!("{:.3}", Plain(quarters.get().max(0.0)))>
                <Dim text=length going=going/>
                <div class="length" class:going=move || going.get()>
                    {start_end(text, on_start)}
                    {break_line()}
                    {move || (!short()).then(|| view! { <Tally quarters=whole(quarters.get())/> })}
                </div>
            </div>
        </div>
    };
    let keys = earlier_keys(earlier, on_earlier);
    match at {
        EarlierAt::Start => view! { <div class="stretch">{keys}{drawn}</div> },
        EarlierAt::End => view! { <div class="stretch at-end">{drawn}{keys}</div> },
    }
}

/// The dashed pieces alone, for a slate that two clocks share. They follow nothing: a finger may be on them.
pub fn earlier_keys(keys: Vec<EarlierKey>, on_earlier: Callback<usize>) -> AnyView {
    several(keys.into_iter().enumerate().map(|(at, key)| {
        view! {
            <button type="button" class="earlier" aria-label=key.name on:click=move |_| on_earlier.run(at)>
                {key.minutes}<small>{key.word}</small>
            </button>
        }
    }))
}

/// Quarters that are full, for the strokes.
fn whole(quarters: f64) -> u32 {
    quarters.clamp(0.0, 1e6) as u32
}

fn start_end(text: Signal<StretchText>, on_start: Option<Callback<()>>) -> AnyView {
    let start = Memo::new(move |_| text.read().start.clone());
    match on_start {
        Some(on_start) => view! {
            <button
                type="button"
                class="start"
                aria-label=move || text.read().start_name.clone()
                on:click=move |_| on_start.run(())
            >
                {move || start.get()}
            </button>
        },
        None => view! { <span class="start">{move || start.get()}</span> },
    }
}

fn break_line() -> AnyView {
    view! {
        <span class="break" aria-hidden="true">
            <svg viewBox="0 0 26 62">
                <path class="gap" d="M5 0l4 20 -7 7 10 9 -5 26h13l5 -26 -10 -9 7 -7 -4 -20z"/>
                <path class="edge" d="M5 0l4 20 -7 7 10 9 -5 26M18 0l4 20 -7 7 10 9 -5 26"/>
            </svg>
        </span>
    }
}
