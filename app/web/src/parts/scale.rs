//! A scale that a thumb moves along, with a key at each end for one step; what it says stands over it.
use crate::dom::prelude::*;

use super::stick_fraction::stick;

/// `at` is the step it stands on, of `0..=last`; `says` what that comes to, `stands` what it was, and where that lies.
#[component]
pub fn Scale(
    #[prop(into)] name: Signal<String>,
    #[prop(into)] at: Signal<u32>,
    #[prop(into)] last: Signal<u32>,
    #[prop(into)] says: Signal<String>,
    on_move: Callback<u32>,
) -> impl IntoView {
    let step = move |forth: bool| {
        let now = at.get_untracked();
        let next =
            if forth { now.saturating_add(1).min(last.get_untracked()) } else { now.saturating_sub(1) };
        on_move.run(next);
    };
    let moved = move |event: web_sys::Event| {
        if let Ok(step) = typed(&event).parse() {
            on_move.run(step);
        }
    };
    view! {
        <div class="scale">
            <button type="button" aria-label=move || format!("{}: \u{2212}", name.get()) on:click=move |_| step(false)>"\u{2212}"</button>
            <label>
                <span class="figure">{move || stick(&says.get())}</span>
                <input
                    type="range"
                    min="0"
                    max=move || last.get().to_string()
                    step="1"
                    aria-label=move || name.get()
                    aria-valuetext=move || says.get()
                    prop:value=move || at.get().to_string()
                    on:input=moved
                />
            </label>
            <button type="button" aria-label=move || format!("{}: +", name.get()) on:click=move |_| step(true)>"+"</button>
        </div>
    }
}
