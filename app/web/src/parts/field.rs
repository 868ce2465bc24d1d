//! Fields: label, well, error. What was typed stays; an error says what stopped and what is accepted.
use crate::dom::prelude::*;

use super::stick_fraction::stick;
use wasm_bindgen::JsCast;

/// Which keyboard a phone shows.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
pub enum Typing {
    #[default]
    Words,
    Decimal,
    Search,
    Date,
    /// None: a pad of ours stands in the hand. Keys of a real keyboard still work.
    Pad,
}

impl Typing {
    fn mode(self) -> &'static str {
        match self {
            Typing::Words | Typing::Date => "text",
            Typing::Decimal => "decimal",
            Typing::Search => "search",
            Typing::Pad => "none",
        }
    }

    fn input(self) -> &'static str {
        match self {
            Typing::Date => "date",
            Typing::Search => "search",
            Typing::Words | Typing::Decimal | Typing::Pad => "text",
        }
    }
}

/// A field with a native input. Stands alone, or as a ruled cell inside `Cells`.
#[component]
pub fn Field(
    /// Unique on the page; label and error refer to it.
    #[prop(into)]
    id: String,
    #[prop(into)] label: Signal<String>,
    #[prop(into)] value: Signal<String>,
    #[prop(optional)] typing: Typing,
    /// At the right end of the well: `in`, `CAD`.
    #[prop(optional, into)]
    unit: MaybeProp<String>,
    /// After what was typed: its sum (`19 + 1/4 + 1/8`), or what it comes to.
    #[prop(optional, into)]
    adds: MaybeProp<String>,
    /// Said in the well while it is empty.
    #[prop(optional, into)]
    hint: MaybeProp<String>,
    #[prop(optional, into)] error: MaybeProp<String>,
    /// The large well of a pad.
    #[prop(optional)]
    large: bool,
    #[prop(optional, into)] class: String,
    #[prop(into)] on_input: Callback<String>,
    #[prop(optional, into)] on_enter: Option<Callback<()>>,
    #[prop(optional, into)] on_focus: Option<Callback<()>>,
) -> impl IntoView {
    let wrong = Memo::new(move |_| error.get().is_some());
    let err_id = format!("{id}-error");
    let described = err_id.clone();
    let padded = typing == Typing::Pad;
    let drawn = padded.then(|| drawn(value));
    view! {
        <div class=format!("field {class}") class:wrong=move || wrong.get()>
            <label class="label" for=id.clone()>{move || label.get()}</label>
            <div class="well" class:large=large class:padded=padded>
                {drawn}
                <input
                    id=id
                    type=typing.input()
                    inputmode=typing.mode()
                    autocomplete="off"
                    prop:value=move || value.get()
                    placeholder=move || hint.get()
                    aria-invalid=move || wrong.get().then_some("true")
                    aria-describedby=move || wrong.get().then(|| described.clone())
                    on:input=move |ev| on_input.run(typed(&ev))
                    on:keydown=move |ev| if let (Some(enter), true) = (on_enter, is_enter(&ev)) { enter.run(()) }
                    on:focus=move |_| if let Some(focus) = on_focus { focus.run(()) }
                />
                {move || adds.get().map(|adds| view! { <span class="adds">{stick(&adds)}</span> })}
                {move || unit.get().map(|unit| view! { <span class="unit">{unit}</span> })}
            </div>
            <FieldError id=err_id error/>
        </div>
    }
}

/// Several lines of words.
#[component]
pub fn LongField(
    #[prop(into)] id: String,
    #[prop(into)] label: Signal<String>,
    #[prop(into)] value: Signal<String>,
    #[prop(optional, into)] error: MaybeProp<String>,
    #[prop(into)] on_input: Callback<String>,
) -> impl IntoView {
    let wrong = Memo::new(move |_| error.get().is_some());
    let err_id = format!("{id}-error");
    let described = err_id.clone();
    view! {
        <div class="field" class:wrong=move || wrong.get()>
            <label class="label" for=id.clone()>{move || label.get()}</label>
            <div class="well">
                <textarea
                    id=id
                    rows="3"
                    prop:value=move || value.get()
                    aria-invalid=move || wrong.get().then_some("true")
                    aria-describedby=move || wrong.get().then(|| described.clone())
                    on:input=move |ev| on_input.run(typed(&ev))
                ></textarea>
            </div>
            <FieldError id=err_id error/>
        </div>
    }
}

/// Fields as ruled cells, two a row (`Field class="whole"` takes the row).
#[component]
pub fn Cells(children: Children) -> impl IntoView {
    view! { <div class="cells">{children()}</div> }
}

/// The sentence under a field, or under a form when it is about more than one.
#[component]
pub fn FieldError(#[prop(into)] id: String, #[prop(into)] error: MaybeProp<String>) -> impl IntoView {
    // The alert itself stays in the page, so that its coming is announced.
    view! {
        <div role="alert" id=id>
            {move || error.get().map(|error| view! { <p class="err"><b aria-hidden="true">"!"</b><span>{stick(&error)}</span></p> })}
        </div>
    }
}

/// What a pad has written, drawn: fractions stacked, a hole where the lower part is still missing, a caret.
fn drawn(value: Signal<String>) -> AnyView {
    let text = move || {
        let value = value.get();
        match value.strip_suffix('/').and_then(split_number) {
            Some((whole, over)) => view! {
                <span>{whole}</span>
                <span class="fr"><span>{over}</span><span><span class="hole"></span></span></span>
            },
            None => stick(&value).draw(),
        }
    };
    view! { <span class="drawn" aria-hidden="true">{text}<i class="caret"></i></span> }
}

/// `19 3` as `("19", "3")`: the digits at the end are the upper part of a fraction.
fn split_number(text: &str) -> Option<(String, String)> {
    let over_from = text.rfind(|c: char| !c.is_ascii_digit()).map_or(0, |at| at + 1);
    let (whole, over) = text.split_at_checked(over_from)?;
    (!over.is_empty()).then(|| (whole.trim_end().to_owned(), over.to_owned()))
}

fn is_enter(event: &web_sys::Event) -> bool {
    event.dyn_ref::<web_sys::KeyboardEvent>().is_some_and(|event| event.key() == "Enter")
}
