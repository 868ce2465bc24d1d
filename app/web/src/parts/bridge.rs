//! The bridge: spent and used up as two bars of one scale, what both hold under itself; then used up within the true cost.
use crate::dom::{prelude::*, several};

use super::dim::Dim;
use super::hatch::{DashedEdge, Hatch, Hatching};
use super::plain::Plain;

/// Amounts for the drawing only, in one unit of the caller's; texts as lettered.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct BridgeText {
    /// Bought for it and not drawn yet.
    pub shelf: f64,
    /// What was bought for it and went into it, by kind.
    pub common: Vec<(Hatch, f64)>,
    /// What went into it from earlier stock, by kind.
    pub earlier: Vec<(Hatch, f64)>,
    /// The rest of the true cost, by kind, after what was used up.
    pub rest: Vec<(Hatch, f64)>,
    /// "spent 259.41", "shelf", "55.53", "16.45 earlier", "used up 220.33", "true cost 2,994.01".
    pub spent_text: String,
    pub shelf_word: String,
    pub shelf_text: String,
    pub earlier_text: String,
    pub used_text: String,
    pub true_text: String,
    /// The whole in one sentence, read aloud.
    pub name: String,
}

/// Hundredths of the width from which a bar has room for its words, twice as large too.
const SHORT: f64 = 65.0;

/// The drawing.
#[component]
pub fn Bridge(text: BridgeText) -> impl IntoView {
    let (common, earlier, rest) = (sum(&text.common), sum(&text.earlier), sum(&text.rest));
    let scale = positive(text.shelf + common + earlier);
    let spent = (text.shelf + common) / scale * 100.0;
    let shelf = text.shelf / scale * 100.0;
    // A bar too short for its words has them under its line.
    let side = |share: f64, class: &'static str| if share < SHORT { class } else { "" };
    let used_class = side(100.0 - shelf, "under at-right");
    let spent_class = side(spent, "under at-left");
    let used = (common + earlier) / positive(common + earlier + rest);
    let shelf_piece = (shelf > 0.0).then(|| {
        view! { <span class="piece shelf" style:inline-size=per_cent(shelf)>
            <DashedEdge/>
            {(!text.shelf_word.is_empty()).then(|| view! { <span>{text.shelf_word}</span> })}
        </span> }
    });
    let shelf_dim =
        (shelf > 0.0).then(|| view! { <Dim text=text.shelf_text.clone() class="under at-left"/> });
    let earlier_says = (earlier > 0.0).then(|| view! { <span class="right">{text.earlier_text}</span> });
    view! {
        <div class="bridge" role="img" aria-label=text.name>
            <div style:inline-size=per_cent(spent)><Dim text=text.spent_text class=spent_class/></div>
            <div class="bar">{shelf_piece}{pieces(&text.common, scale)}</div>
            <div class="off"><span class="left" style:min-inline-size=per_cent(shelf)>{shelf_dim}</span>{earlier_says}</div>
            <div style:margin-inline-start=per_cent(shelf)>
                <div class="bar thick">
                    {pieces(&text.common, common + earlier)}{pieces(&text.earlier, common + earlier)}
                </div>
                <Dim text=text.used_text class=used_class/>
            </div>
            {fan(shelf / 100.0, used)}
            <div class="bar thick">
                <span class="piece thick first" style:inline-size=per_cent(used * 100.0)></span>
                {pieces(&text.rest, common + earlier + rest)}
            </div>
            <Dim text=text.true_text/>
        </div>
    }
}

fn sum(kinds: &[(Hatch, f64)]) -> f64 {
    kinds.iter().map(|(_, amount)| amount.max(0.0)).sum()
}

/// A divisor: an empty bridge is drawn empty, not as NaN.
fn positive(amount: f64) -> f64 {
    if amount > 0.0 { amount } else { 1.0 }
}

fn per_cent(share: f64) -> String {
    format!("{:.3}%", Plain(share))
}

fn pieces(kinds: &[(Hatch, f64)], whole: f64) -> AnyView {
    let whole = positive(whole);
    let there = kinds.iter().filter(|(_, amount)| *amount > 0.0).enumerate();
    several(there.map(|(at, &(kind, amount))| {
        view! {
            <span class="piece" class:first=at == 0 style:inline-size=per_cent(amount / whole * 100.0)>
                <Hatching kind/>
            </span>
        }
    }))
}

/// From the used-up bar (its left end at `from`, its right at the edge) to its place in the true cost, 0 to `to`.
fn fan(from: f64, to: f64) -> AnyView {
    let (from, to) = (from * 1000.0, to * 1000.0);
    view! {
        <svg class="fan" viewBox="0 0 1000 22" preserveAspectRatio="none" aria-hidden="true">
            <polygon points=format!("{:.1},0 1000,0 {:.1},22 0,22", Plain(from), Plain(to))/>
            <path d=format!("M{:.1} 0L0 22M1000 0L{:.1} 22", Plain(from), Plain(to))/>
        </svg>
    }
}
