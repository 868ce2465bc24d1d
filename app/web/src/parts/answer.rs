//! The one figure a sheet is about; the leading three of a cost sheet; a ruled row that opens.
use crate::dom::prelude::*;

use super::stick_fraction::stick;
use super::sum_row::Leads;

/// A figure with its words, or what it lacks.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct AnswerText {
    pub label: String,
    /// What is in it, or under which condition it holds.
    pub note: Option<String>,
    pub figure: String,
    /// The figure cannot be worked out: `figure` says what is missing.
    pub lacks: bool,
}

/// How the figure is inked.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum Tone {
    #[default]
    Ink,
    /// Red: a loss, or too late.
    Red,
}

/// One answer across the sheet: 34 px, second pen.
#[component]
pub fn Answer(
    text: AnswerText,
    #[prop(optional)] tone: Tone,
    #[prop(optional)] leads: Leads,
) -> impl IntoView {
    let opens = !matches!(leads, Leads::Nowhere);
    let note = text.note.map(|note| view! { " "<small>{stick(&note)}</small> });
    let (lacks, red) = (text.lacks, tone == Tone::Red);
    let inner = view! {
        <span><span class:open=opens>{stick(&text.label)}</span>{note}</span>
        " "
        <b class:lacks=lacks class:red=red>{stick(&text.figure)}</b>
    };
    led("big", leads, inner)
}

/// What a form comes to so far: words over their working, the figure at the right; no rule of its own.
#[component]
pub fn Outcome(text: AnswerText) -> impl IntoView {
    let note = text.note.map(|note| view! { " "<small>{stick(&note)}</small> });
    view! {
        <p class="outcome">
            <span>{stick(&text.label)}{note}</span>
            " "
            <b class:lacks=text.lacks>{stick(&text.figure)}</b>
        </p>
    }
}

/// The leading three: an `Answer` over two `SideAnswer` in ruled cells.
#[component]
pub fn Leading(#[prop(into)] name: Signal<String>, children: Children) -> impl IntoView {
    view! { <section class="leading" aria-label=move || name.get()>{children()}</section> }
}

/// One of the two cells under the first answer.
#[component]
pub fn SideAnswer(text: AnswerText, #[prop(optional)] leads: Leads) -> impl IntoView {
    let opens = !matches!(leads, Leads::Nowhere);
    let note = text.note.map(|note| view! { " "<small>{stick(&note)}</small> });
    let lacks = text.lacks;
    let inner = view! {
        <span class:open=opens>{text.label}</span>
        " "
        <span class="two"><b class:lacks=lacks>{stick(&text.figure)}</b>{note}</span>
    };
    led("side", leads, inner)
}

/// A ruled row that opens: words in blue pencil, at its right what it is about.
#[component]
pub fn RowLink(
    #[prop(into)] label: String,
    #[prop(optional, into)] end: Option<String>,
    /// A figure at its right.
    #[prop(optional, into)]
    figure: Option<String>,
    /// Ruled in ink (the row to the bridge) and not by a hair.
    #[prop(optional)]
    ruled: bool,
    leads: Leads,
) -> impl IntoView {
    let end = end.map(|end| view! { " "<span class="note">{stick(&end)}</span> });
    let figure = figure.map(|figure| view! { " "<span class="figure">{figure}</span> });
    let inner = view! { <span class="open">{stick(&label)}</span>{end}{figure} };
    led(if ruled { "rowlink ruled" } else { "rowlink" }, leads, inner)
}

/// A box that is a link, a key or neither.
pub(super) fn led(class: &'static str, leads: Leads, inner: impl Draw + 'static) -> AnyView {
    match leads {
        Leads::Nowhere => view! { <p class=class>{inner}</p> },
        Leads::To(href) => view! { <a class=class href=href>{inner}</a> },
        Leads::Tap(tap) => {
            view! { <button type="button" class=class on:click=move |_| tap.run(())>{inner}</button> }
        }
    }
}
