//! A steel rule's marks as keys: lit ones add, a quarter and an eighth make three eighths.
use crate::dom::prelude::*;

use super::stick_fraction::stick;

/// The marks, coarse to fine: their lower numbers, their class.
const MARKS: [(u32, &str); 5] =
    [(2, "half"), (4, "quarter"), (8, "eighth"), (16, "sixteenth"), (32, "thirty-second")];

/// Five keys. `lit` says which are on, coarse to fine; `names` are read aloud ("add 1 over 2"); `on_tap` gets the
/// place of the mark.
#[component]
pub fn SteelRule(
    #[prop(into)] name: Signal<String>,
    #[prop(into)] names: Signal<[String; 5]>,
    #[prop(into)] lit: Signal<[bool; 5]>,
    #[prop(into)] on_tap: Callback<usize>,
) -> impl IntoView {
    let key = move |(at, (under, class)): (usize, (u32, &'static str))| {
        let on = move || lit.read().get(at).copied().unwrap_or(false);
        view! {
            <button
                type="button"
                class=class
                aria-pressed=move || on().to_string()
                aria-label=move || names.read().get(at).cloned()
                on:pointerdown=|ev| ev.prevent_default()
                on:click=move |_| on_tap.run(at)
            >
                {stick(&format!("1/{under}"))}
            </button>
        }
    };
    view! {
        <div class="steel" role="group" aria-label=move || name.get()>
            {MARKS.into_iter().enumerate().map(key).collect::<Vec<_>>()}
        </div>
    }
}
