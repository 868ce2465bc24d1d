//! A line of the journal: time | red rule | kind in the second pen | amount.
use crate::dom::prelude::*;

use super::stick_fraction::stick;
use super::sum_row::Leads;

/// How a line stands.
#[derive(Clone, Default)]
pub enum Standing {
    #[default]
    AsWritten,
    /// Corrected: a triangle with how many times it was written. `name` is read aloud ("version 2").
    Corrected { version: String, name: String },
    /// Struck out: a red line through it, and the key that brings it back.
    Struck { put_back: String, on_put_back: Callback<()> },
}

/// The words of a line.
#[derive(Clone, Default)]
pub struct LineText {
    pub time: String,
    /// "used", "sand", "note".
    pub kind: String,
    pub what: String,
    pub second: Option<String>,
    pub amount: String,
}

/// A day's head: the day, and what it came to.
#[component]
pub fn DayHead(
    #[prop(into)] day: Signal<String>,
    #[prop(optional, into)] sum: MaybeProp<String>,
) -> impl IntoView {
    view! { <div class="day"><h2>{move || day.get()}</h2><span>{move || sum.get()}</span></div> }
}

/// A list of lines.
#[component]
pub fn Lines(#[prop(optional, into)] name: MaybeProp<String>, children: Children) -> impl IntoView {
    view! { <ol aria-label=move || name.get()>{children()}</ol> }
}

/// One line; `leads` opens the entry.
#[component]
pub fn JournalLine(
    text: LineText,
    #[prop(optional)] standing: Standing,
    #[prop(optional)] leads: Leads,
    /// Beside its words.
    #[prop(optional_no_strip)]
    picture: Option<AnyView>,
) -> impl IntoView {
    let struck = matches!(standing, Standing::Struck { .. });
    let back = match &standing {
        Standing::Struck { put_back, on_put_back } => Some(put_back_key(put_back.clone(), *on_put_back)),
        Standing::AsWritten | Standing::Corrected { .. } => None,
    };
    let inner = line(text, standing, picture);
    let line = match leads {
        Leads::Nowhere => view! { <p class="ln">{inner}</p> },
        Leads::To(href) => view! { <a class="ln" href=href>{inner}</a> },
        Leads::Tap(tap) => view! {
            <button type="button" class="ln" on:click=move |_| tap.run(())>{inner}</button>
        },
    };
    view! { <li class="line" class:out=struck>{line}{back}</li> }
}

fn line(text: LineText, standing: Standing, picture: Option<AnyView>) -> AnyView {
    let second = text.second.map(|second| view! { " "<small>{stick(&second)}</small> });
    let words = view! { <b>{text.kind}</b>" "{stick(&text.what)} };
    let words = match standing {
        Standing::AsWritten => words.draw(),
        Standing::Struck { .. } => view! { <s class="struck">{words}</s> },
        Standing::Corrected { version, name } => view! { {words}" "{delta(version, name)} },
    };
    let amount =
        (!text.amount.is_empty()).then(|| view! { <span class="amount">{stick(&text.amount)}</span> });
    let pictured = picture.is_some();
    let words = view! { {words}{second} };
    // Words that stand beside a picture are one box.
    let words = if pictured {
        view! { {picture}<span>{words}</span> }
    } else {
        words
    };
    view! { <time>{text.time}</time><span class="what" class:pictured=pictured>{words}</span>{amount} }
}

fn delta(version: String, name: String) -> AnyView {
    view! {
        <span class="delta" role="img" aria-label=name>
            <svg viewBox="0 0 20 18" aria-hidden="true"><path d="M10 1.5L19 17H1z"/></svg>
            {version}
        </span>
    }
}

fn put_back_key(word: String, on_put_back: Callback<()>) -> AnyView {
    view! { <button type="button" class="back open" on:click=move |_| on_put_back.run(())>{word}</button> }
}
