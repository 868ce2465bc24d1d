//! A tin from the front: used up, this coat, left; its quarters as choices at its side.
use crate::dom::prelude::*;

use super::plain::Plain;
use super::tick_row::TickRow;

/// A share to use. What is more than there is stays a choice and says so.
#[derive(Clone, Default, PartialEq, Eq)]
pub struct TinChoice {
    /// `1/4 tin`.
    pub label: String,
    /// "leaves 1/4", "empties it", "more than is left".
    pub note: String,
    pub figure: String,
}

/// The three levels' words.
#[derive(Clone, Default)]
pub struct TinWords {
    pub used_up: String,
    pub this_time: String,
    pub left: String,
}

/// `left` is what is in the tin now and `takes` what the choice takes, both 0 to 1 of a full one; for the drawing.
#[component]
pub fn Tin(
    #[prop(into)] name: Signal<String>,
    words: TinWords,
    #[prop(into)] left: Signal<f64>,
    #[prop(into)] takes: Signal<f64>,
    #[prop(into)] choices: Signal<Vec<TinChoice>>,
    #[prop(into)] chosen: Signal<Option<usize>>,
    #[prop(into)] on_choose: Callback<usize>,
) -> impl IntoView {
    let choice = move |(at, choice): (usize, TinChoice)| {
        view! {
            <TickRow
                label=choice.label
                note=choice.note
                figure=choice.figure
                ticked=Signal::derive(move || chosen.get() == Some(at))
                on_tap=move |()| on_choose.run(at)
            />
        }
    };
    view! {
        <div class="tin">
            {move || drawing(&words, left.get(), takes.get())}
            <div class="choices" role="group" aria-label=move || name.get()>
                {move || choices.get().into_iter().enumerate().map(choice).collect::<Vec<_>>()}
            </div>
        </div>
    }
}

/// The full tin's surface and its foot, in px of the drawing.
const FULL: f64 = 22.0;
const FOOT: f64 = 222.0;

fn drawing(words: &TinWords, left: f64, takes: f64) -> AnyView {
    let level = |share: f64| FOOT - share.clamp(0.0, 1.0) * (FOOT - FULL);
    let now = level(left);
    let after = level(left - takes);
    let quarters = [0.75, 0.5, 0.25].map(|share| rim(level(share))).concat();
    let text = |from: f64, to: f64, class: &'static str, word: &str| {
        (to - from > 24.0).then(|| {
            let middle = (from + to) / 2.0 + 14.0;
            let word = word.to_owned();
            view! { <text class=class x="58" y=format!("{:.1}", Plain(middle))>{word}</text> }
        })
    };
    view! {
        <svg viewBox="0 0 116 236" aria-hidden="true">
            <path class="tin-body" d=band(FULL, FOOT)/>
            <ellipse class="tin-rim" cx="58" cy=FULL.to_string() rx="56" ry="11"/>
            <ellipse class="tin-rim" cx="58" cy=FULL.to_string() rx="44" ry="7.5"/>
            <path class="wash consumables" d=band(after, FOOT)/>
            <path fill="url(#h-consumables)" d=band(after, FOOT)/>
            <path class="tin-coat" d=band(now, after)/>
            <path class="tin-quarter" d=quarters/>
            <path class="tin-line" d=format!("{}{}", rim(now), rim(after))/>
            <path class="tin-edge" d=format!("M2 {FULL}V{FOOT}a56 11 0 0 0 112 0V{FULL}{}", rim(FULL))/>
            {text(FULL, now, "", &words.used_up)}
            {text(now, after, "strong", &words.this_time)}
            {text(after, FOOT, "strong on-left", &words.left)}
        </svg>
    }
}

/// The near edge of a level.
fn rim(level: f64) -> String {
    format!("M2 {:.1}a56 11 0 0 0 112 0", Plain(level))
}

/// What stands between two levels.
fn band(from: f64, to: f64) -> String {
    format!("M2 {:.1}a56 11 0 0 0 112 0V{:.1}a56 11 0 0 1 -112 0z", Plain(from), Plain(to))
}
