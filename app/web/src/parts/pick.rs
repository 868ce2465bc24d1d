//! One of many: a field whose well opens the device's own list.
use crate::dom::prelude::*;

use super::field::FieldError;

/// A choice: what is kept, and its word.
pub type Choosable = (String, String);

/// `value` is the one that is chosen; none of them where it stands in no choice.
#[component]
pub fn Pick(
    #[prop(into)] id: String,
    #[prop(into)] label: Signal<String>,
    #[prop(into)] choices: Signal<Vec<Choosable>>,
    #[prop(into)] value: Signal<String>,
    #[prop(optional, into)] error: MaybeProp<String>,
    #[prop(optional, into)] class: String,
    #[prop(into)] on_choose: Callback<String>,
) -> impl IntoView {
    let wrong = Memo::new(move |_| error.get().is_some());
    let err_id = format!("{id}-error");
    let described = err_id.clone();
    let option = move |(code, word): Choosable| {
        let chosen = code.clone();
        view! { <option value=code selected=move || value.get() == chosen>{word}</option> }
    };
    view! {
        <div class=format!("field {class}") class:wrong=move || wrong.get()>
            <label class="label" for=id.clone()>{move || label.get()}</label>
            <div class="well picks">
                <select
                    id=id
                    prop:value=move || {
                        // Set again once the choices are there.
                        choices.track();
                        value.get()
                    }
                    aria-invalid=move || wrong.get().then_some("true")
                    aria-describedby=move || wrong.get().then(|| described.clone())
                    on:change=move |event| on_choose.run(typed(&event))
                >
                    {move || choices.get().into_iter().map(option).collect::<Vec<_>>()}
                </select>
                <svg class="opens" viewBox="0 0 14 8" aria-hidden="true"><path d="M1 1l6 6 6-6"/></svg>
            </div>
            <FieldError id=err_id error/>
        </div>
    }
}
