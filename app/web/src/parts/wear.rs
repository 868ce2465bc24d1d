//! What a tool is worth, to scale: its price at full length, what is worn off dashed, book value and resale as dimensions.
use crate::dom::prelude::*;

use super::dim::Dim;
use super::hatch::{DashedEdge, Hatch, Hatching};
use super::plain::Plain;

/// Amounts of one unit of the caller's; for the drawing only.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Worth {
    pub price: f64,
    pub book: f64,
    pub resale: f64,
}

/// The texts beside the drawing.
#[derive(Clone, Default)]
pub struct WorthText {
    /// "price 780.00".
    pub price: String,
    /// "resale 180.00"; empty: it sells for nothing.
    pub resale: String,
    /// "worn 53.40".
    pub worn: String,
    /// "book value 726.60".
    pub book: String,
    /// All of it in one sentence, read aloud.
    pub name: String,
}

/// One bar at full width.
#[component]
pub fn WearBar(worth: Worth, text: WorthText) -> impl IntoView {
    let scale = if worth.price > 0.0 { worth.price } else { 1.0 };
    let (book, resale) = (per_cent(worth.book / scale), per_cent(worth.resale / scale));
    let at_resale = (worth.resale > 0.0).then(|| {
        view! { <i class="at-resale" style:inset-inline-start=resale.clone()></i> }
    });
    let sells = (!text.resale.is_empty()).then(|| {
        view! {
            <div class="sells" style:inline-size=resale><Dim text=String::new()/></div>
            <span>{text.resale}</span>
        }
    });
    view! {
        <div class="wear" role="img" aria-label=text.name>
            <Dim text=text.price/>
            <div class="worn-bar">
                <span class="stays" style:inline-size=book.clone()><Hatching kind=Hatch::Tools/></span>
                <span class="worn-off"><DashedEdge/></span>
                {at_resale}
            </div>
            <div class="worn-says">{sells}<span class="at-end">{text.worn}</span></div>
            <div style:inline-size=book><Dim text=text.book/></div>
        </div>
    }
}

fn per_cent(share: f64) -> String {
    format!("{:.3}%", Plain(share.clamp(0.0, 1.0) * 100.0))
}
