//! What went wrong with storage, and the offer of a newer version: on the sheet, never in front of it.

use crate::{
    parts::{
        key::Key,
        message::{Message, MessageKind},
        sheet::Keys,
    },
    screens::UpdateWaits,
    shell::{Desk, update},
    words::{failure as words, update as update_words},
};
use leptos::prelude::*;

/// Both, where there is one.
#[component]
pub fn Troubles() -> impl IntoView {
    let desk = Desk::here();
    let UpdateWaits(waits) = expect_context();
    let trouble = move || {
        desk.trouble.get().map(|trouble| {
            view! {
                <Message
                    title=words::title(trouble).to_owned()
                    lines=Signal::stored(vec![words::text(trouble).to_owned()])
                    kind=MessageKind::Lost
                />
            }
        })
    };
    let offer = move || {
        waits.get().then(|| {
            view! {
                <Message
                    title=update_words::title().to_owned()
                    lines=Signal::stored(vec![update_words::text().to_owned()])
                >
                    <Keys class="low">
                        <Key label=update_words::take().to_owned() on_tap=Callback::new(move |()| update::take(desk))/>
                    </Keys>
                </Message>
            }
        })
    };
    view! { {trouble}{offer} }
}
