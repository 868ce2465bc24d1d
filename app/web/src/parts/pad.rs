//! Number pads: six keys a row for figures, or three with a column of units at their right.
use crate::dom::prelude::*;

/// A key of the pad.
#[derive(Clone, PartialEq, Eq)]
pub struct PadKey {
    /// What stands on it: `7`, `rub out`, `in`.
    pub face: String,
    /// Read aloud, where the face is a sign ("point", "over").
    pub name: Option<String>,
    /// What its tap gives.
    pub gives: PadTap,
}

/// What a tap gives.
#[derive(Clone, PartialEq, Eq)]
pub enum PadTap {
    /// Write this at the end.
    Write(String),
    /// Take the last sign off again.
    RubOut,
    /// Measure in this unit from here on (its place in the caller's list).
    Unit(usize),
}

impl PadKey {
    /// A digit.
    pub fn digit(digit: char) -> Self {
        Self { face: digit.to_string(), name: None, gives: PadTap::Write(digit.to_string()) }
    }

    /// A sign, read aloud as `name`.
    pub fn sign(sign: &str, name: impl Into<String>) -> Self {
        Self { face: sign.to_owned(), name: Some(name.into()), gives: PadTap::Write(sign.to_owned()) }
    }

    /// A word on a key.
    pub fn word(face: impl Into<String>, gives: PadTap) -> Self {
        Self { face: face.into(), name: None, gives }
    }
}

/// The words a pad of figures needs.
#[derive(Clone)]
pub struct PadWords {
    pub rub_out: String,
    /// Read aloud for the decimal sign.
    pub point: String,
    /// Read aloud for the fraction stroke.
    pub over: String,
}

/// How the keys are laid out.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum PadShape {
    /// `1 2 3 4 5 rub out` over `6 7 8 9 0 .`
    #[default]
    Six,
    /// Three columns of digits and one of units.
    Units,
}

/// Twelve keys in reading order for [`PadShape::Six`].
pub fn figure_keys(words: &PadWords, decimal: char) -> Vec<PadKey> {
    let mut keys: Vec<PadKey> = "12345".chars().map(PadKey::digit).collect();
    keys.push(PadKey::word(&words.rub_out, PadTap::RubOut));
    keys.extend("67890".chars().map(PadKey::digit));
    keys.push(PadKey::sign(&decimal.to_string(), &words.point));
    keys
}

/// Sixteen keys in reading order for [`PadShape::Units`]: digits, point, stroke; three units and the rub-out.
pub fn measure_keys(words: &PadWords, decimal: char, units: [&str; 3]) -> Vec<PadKey> {
    let mut keys = Vec::new();
    for (at, (row, unit)) in ["789", "456", "123"].into_iter().zip(units).enumerate() {
        keys.extend(row.chars().map(PadKey::digit));
        keys.push(PadKey::word(unit, PadTap::Unit(at)));
    }
    keys.push(PadKey::digit('0'));
    keys.push(PadKey::sign(&decimal.to_string(), &words.point));
    keys.push(PadKey::sign("/", &words.over));
    keys.push(PadKey::word(&words.rub_out, PadTap::RubOut));
    keys
}

/// The pad. Its taps leave the focus where it was, so that the well keeps its cursor.
#[component]
pub fn Pad(
    #[prop(into)] name: Signal<String>,
    #[prop(into)] keys: Signal<Vec<PadKey>>,
    #[prop(optional)] shape: PadShape,
    #[prop(into)] on_tap: Callback<PadTap>,
) -> impl IntoView {
    let class = match shape {
        PadShape::Six => "pad",
        PadShape::Units => "pad units",
    };
    let key = move |key: PadKey| {
        let says = key.face.chars().count() > 1;
        view! {
            <button
                type="button"
                class="key"
                class:says=says
                aria-label=key.name
                on:pointerdown=|ev| ev.prevent_default()
                on:click=move |_| on_tap.run(key.gives.clone())
            >
                {key.face}
            </button>
        }
    };
    view! {
        <div class=class role="group" aria-label=move || name.get()>
            {move || keys.get().into_iter().map(key).collect::<Vec<_>>()}
        </div>
    }
}
