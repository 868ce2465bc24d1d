//! Money to scale: what the same thing new would have cost at full length, cash and own time within it, and what is
//! saved, dashed; a loss is drawn past a thick mark at the price of new, in red.
use crate::dom::prelude::*;

use super::dim::Dim;
use super::hatch::{DashedEdge, Hatch, Hatching};
use super::plain::Plain;

/// Amounts of one unit of the caller's; for the drawing only.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Amounts {
    pub instead: f64,
    pub cash: f64,
    pub own_time: f64,
}

impl Amounts {
    fn paid(self) -> f64 {
        self.cash.max(0.0) + self.own_time.max(0.0)
    }

    fn longest(self) -> f64 {
        self.paid().max(self.instead)
    }
}

/// The texts beside the drawing.
#[derive(Clone, Default)]
pub struct MoneyText {
    /// "bought instead 898.95".
    pub instead: String,
    /// "cash 95.62".
    pub cash: String,
    /// "own time 253.20"; empty where own time is free.
    pub own_time: String,
    /// "saved 550.13" or "dearer by 32.09".
    pub outcome: String,
    /// All of it in one sentence, read aloud.
    pub name: String,
}

/// One board at full width.
#[component]
pub fn MoneyBoard(amounts: Amounts, text: MoneyText) -> impl IntoView {
    let scale = positive(amounts.longest());
    let loss = amounts.paid() > amounts.instead;
    let saved = (!loss).then(|| text.outcome.clone());
    let dearer = loss.then(|| view! { <span class="dearer">{text.outcome}</span> });
    view! {
        <div class="money-board" role="img" aria-label=text.name>
            <div style:inline-size=per_cent(amounts.instead / scale)><Dim text=text.instead/></div>
            {bars(amounts, scale, saved)}
            <p class="money-says"><span>{text.cash}</span><span>{text.own_time}</span>{dearer}</p>
        </div>
    }
}

fn bars(amounts: Amounts, scale: f64, saved: Option<String>) -> AnyView {
    let part = |kind: Hatch, amount: f64| {
        (amount > 0.0).then(|| {
            view! { <span class="part" style:inline-size=per_cent(amount / scale)><Hatching kind/></span> }
        })
    };
    let gap = amounts.instead - amounts.paid();
    let at_new = per_cent(amounts.instead / scale);
    let saved = saved.map(|text| {
        view! { <span class="part saved" style:inline-size=per_cent(gap / scale)>
            <DashedEdge/>
            <span>{text}</span>
        </span> }
    });
    let loss = (gap < 0.0).then(|| {
        view! {
            <span class="dearer" style:inset-inline-start=at_new.clone() style:inline-size=per_cent(-gap / scale)>
                <Hatching kind=Hatch::Loss/>
            </span>
        }
    });
    view! {
        <div class="money">
            {part(Hatch::Salvaged, amounts.cash)}
            {part(Hatch::Labour, amounts.own_time)}
            {saved}
            {loss}
            <span class="at-new" style:inset-inline-start=at_new></span>
        </div>
    }
}

fn per_cent(share: f64) -> String {
    format!("{:.3}%", Plain(share * 100.0))
}

/// A divisor: with nothing to draw the board is empty, not NaN.
fn positive(amount: f64) -> f64 {
    if amount > 0.0 { amount } else { 1.0 }
}

/// One way it may go.
#[derive(Clone, Default, PartialEq)]
pub struct WorthRow {
    pub label: String,
    /// The one that is reckoned with: second pen.
    pub usual: bool,
    pub amounts: Amounts,
    /// "215.63", or "-32.09" past the end.
    pub outcome: String,
}

/// Money boards under one another at one scale, each with a thick mark at its own price of new.
#[component]
pub fn Worth(
    #[prop(into)] name: String,
    #[prop(into)] caption: String,
    rows: Vec<WorthRow>,
) -> impl IntoView {
    let scale = positive(rows.iter().fold(0.0, |most: f64, row| most.max(row.amounts.longest())));
    let row = |row: WorthRow| {
        let loss = row.amounts.paid() > row.amounts.instead;
        let end = per_cent(row.amounts.longest() / scale);
        // What does not fit into the dashed piece stands past its end.
        let narrow = row.amounts.instead - row.amounts.paid() < 0.3 * scale;
        let past = (loss || narrow).then(|| {
            let class = if loss { "loss" } else { "loss kept" };
            view! { <span class=class style:inset-inline-start=end>{row.outcome.clone()}</span> }
        });
        let inside = (!loss).then(|| if narrow { String::new() } else { row.outcome });
        view! {
            <span class:usual=row.usual>{row.label}</span>
            <span class="track"><span class="at-scale">{bars(row.amounts, scale, inside)}{past}</span></span>
        }
    };
    view! {
        <div class="worth" role="img" aria-label=name>
            <span class="caption">{caption}</span>
            {rows.into_iter().map(row).collect::<Vec<_>>()}
        </div>
    }
}
