//! A sum by hand: sign, words over the working, figure; the row is the link. A total stands over a double rule.
use crate::dom::prelude::*;

use super::stick_fraction::stick;

/// Where a row leads.
#[derive(Clone, Default)]
pub enum Leads {
    #[default]
    Nowhere,
    /// Another sheet.
    To(String),
    /// An act of this sheet (open in place).
    Tap(Callback<()>),
}

/// One row of a sum.
#[derive(Clone, Default)]
pub struct SumText {
    /// `+`, `−`, `×`; empty for the first row.
    pub sign: String,
    pub label: String,
    /// "69 × 9.80 ÷ 0.85", under the words.
    pub working: Option<String>,
    /// The figure as text; or, with `lacks`, what is missing.
    pub figure: String,
    /// The figure cannot be worked out: `figure` says which entry is missing, in red.
    pub lacks: bool,
}

/// A list of rows under one rule.
#[component]
pub fn Sums(children: Children) -> impl IntoView {
    view! { <div class="sums">{children()}</div> }
}

/// A heading over rows: what follows, a note in size.
#[component]
pub fn Group(#[prop(into)] title: Signal<String>) -> impl IntoView {
    view! { <h2 class="group">{move || title.get()}</h2> }
}

/// A row. `signed` keeps the column of signs; lists that are no sums go without.
#[component]
pub fn SumRow(
    text: SumText,
    #[prop(optional)] leads: Leads,
    #[prop(default = true)] signed: bool,
) -> impl IntoView {
    let class = match (signed, text.lacks) {
        (true, false) => "sr",
        (true, true) => "sr lacks",
        (false, false) => "sr unsigned",
        (false, true) => "sr unsigned lacks",
    };
    let opens = !matches!(leads, Leads::Nowhere);
    let inner = row(text, signed, opens);
    match leads {
        Leads::Nowhere => view! { <p class=class>{inner}</p> },
        Leads::To(href) => view! { <a class=class href=href>{inner}</a> },
        Leads::Tap(tap) => view! {
            <button type="button" class=class on:click=move |_| tap.run(())>{inner}</button>
        },
    }
}

/// The total under a rule, its figure over a double rule.
#[component]
pub fn SumTotal(#[prop(into)] label: Signal<String>, #[prop(into)] figure: Signal<String>) -> impl IntoView {
    view! {
        <p class="sr tot">
            <span class="sign"></span>
            <span>{move || label.get()}</span>
            <span class="figure dbl">{move || figure.get()}</span>
        </p>
    }
}

fn row(text: SumText, signed: bool, opens: bool) -> AnyView {
    let sign = signed.then(|| view! { <span class="sign">{text.sign}</span> });
    let working = text.working.map(|working| view! { " "<small>{stick(&working)}</small> });
    view! {
        {sign}
        <span><span class:open=opens>{stick(&text.label)}</span>{working}</span>
        <span class="figure">{stick(&text.figure)}</span>
    }
}
