//! Messages between two rules, and cautions. What stopped, what was found, what to do; no blame.
use crate::dom::prelude::*;

/// What a message is about.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum MessageKind {
    /// An offer, or plain news: ink rules, its keys beside it.
    #[default]
    Offer,
    /// Something was not kept: red rules; said at once.
    Lost,
}

/// `title` and `lines`; children are keys (an offer's) or a drawing (what fills the device).
#[component]
pub fn Message(
    #[prop(into)] title: Signal<String>,
    #[prop(optional, into)] lines: Signal<Vec<String>>,
    #[prop(optional)] kind: MessageKind,
    #[prop(optional)] children: Option<Children>,
) -> impl IntoView {
    let (class, role) = match kind {
        MessageKind::Offer => ("msg offer", "status"),
        MessageKind::Lost => ("msg lost", "alert"),
    };
    let bang = (kind == MessageKind::Lost).then(|| view! { <span aria-hidden="true">"!"</span> });
    let lines = move || lines.get().into_iter().map(|line| view! { <p>{line}</p> }).collect::<Vec<_>>();
    view! {
        <section class=class aria-label=move || title.get()>
            <div class="told" role=role><h2>{bang}<span>{move || title.get()}</span></h2>{lines}</div>
            {children.map(|children| children())}
        </section>
    }
}

/// A caution beside a red rule: what can hurt, in one sentence; at its right a key that takes it away.
#[component]
pub fn Caution(
    #[prop(into)] text: Signal<String>,
    /// On the key.
    #[prop(optional, into)]
    key: String,
    /// The key read aloud.
    #[prop(optional, into)]
    key_name: String,
    #[prop(optional, into)] on_tap: Option<Callback<()>>,
) -> impl IntoView {
    let key = on_tap.map(|tap| {
        view! {
            <button type="button" class="open" aria-label=key_name on:click=move |_| tap.run(())>{key}</button>
        }
    });
    view! { <div class="caut"><p>{move || text.get()}</p>{key}</div> }
}
