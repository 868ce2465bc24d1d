//! The last mark: a journal line laid on the seam between read and do, with Undo.
use crate::dom::prelude::*;

use super::stick_fraction::{StickFraction, stick};

/// Whether the last act is on the disk yet.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum Safety {
    /// A drawn tick.
    #[default]
    Kept,
    /// A dashed tick.
    Pending,
    /// Red: the write failed.
    NotSafe,
    /// What is shown is only tried.
    Tried,
}

/// The words of the last mark.
#[derive(Clone, Default, PartialEq, Eq)]
pub struct MarkText {
    /// `10:00`, or a day when it is of another day.
    pub time: String,
    /// In the second pen: "used".
    pub kind: String,
    /// What was done: "4 discs, 2.84".
    pub what: String,
    /// What it left: "12 left on the shelf".
    pub second: Option<String>,
    pub safety: Safety,
    /// "kept", "being kept", "not safe".
    pub state: String,
}

/// Stands at one place on every screen with acts. `undo` is the key's word ("Undo", "Put back").
#[component]
pub fn LastMark(
    #[prop(into)] name: Signal<String>,
    #[prop(into)] mark: Signal<MarkText>,
    #[prop(into)] undo: Signal<String>,
    #[prop(into)] on_undo: Callback<()>,
) -> impl IntoView {
    let second = move || mark.read().second.clone().map(|text| view! { " "<small>{stick(&text)}</small> });
    let what = Signal::derive(move || mark.read().what.clone());
    view! {
        <section class="mark" aria-label=move || name.get()>
            <time>{move || mark.read().time.clone()}</time>
            <div class="said" role="status">
                <p><b>{move || mark.read().kind.clone()}</b>" "<StickFraction text=what/>{second}</p>
                {move || state(&mark.read())}
            </div>
            <button type="button" class="undo" on:click=move |_| on_undo.run(())>{move || undo.get()}</button>
        </section>
    }
}

fn state(mark: &MarkText) -> AnyView {
    let (class, ticked) = match mark.safety {
        Safety::Kept => ("state", true),
        Safety::Pending => ("state pending", true),
        Safety::NotSafe => ("state not-safe", false),
        Safety::Tried => ("state", false),
    };
    let tick = ticked
        .then(|| view! { <svg viewBox="0 0 16 14" aria-hidden="true"><path d="M2 7.5l4 4.5L14 1.5"/></svg> });
    view! { <span class=class>{tick}{mark.state.clone()}</span> }
}
