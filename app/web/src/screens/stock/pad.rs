//! Number pads over a form: a tap writes into the field that has the focus, or the first.

use super::form::Form;
use crate::dom::prelude::*;
use crate::{
    parts::pad::{Pad, PadKey, PadTap, PadWords, figure_keys},
    shell::Desk,
    words::stock as words,
};
use benchslate_core::measure::rule;
use wasm_bindgen::JsCast;

/// `1 2 3 4 5 rub out` over `6 7 8 9 0 .`
pub fn figures(desk: Desk, form: Form, current: RwSignal<&'static str>) -> AnyView {
    written(form, current, figure_keys(&pad_words(), decimal(desk)))
}

/// The same for a place in a film: a colon takes the place of the decimal mark. It writes into one field.
pub fn film_time(form: Form, field: &'static str) -> AnyView {
    let says = PadWords { point: words::colon().to_owned(), ..pad_words() };
    written(form, RwSignal::new(field), figure_keys(&says, ':'))
}

fn written(form: Form, current: RwSignal<&'static str>, keys: Vec<PadKey>) -> AnyView {
    let tap = move |tap: PadTap| {
        let field = current.get_untracked();
        if let Some(text) = tapped(form.now(field), &tap) {
            form.set(field, text);
        }
    };
    view! { <Pad name=words::pad_name().to_owned() keys=Signal::stored(keys) on_tap=Callback::new(tap)/> }
}

/// A text after a tap that writes; none for a unit.
pub fn tapped(mut text: String, tap: &PadTap) -> Option<String> {
    match tap {
        PadTap::Write(more) => text.push_str(more),
        PadTap::RubOut => {
            text.pop();
        }
        PadTap::Unit(_) => return None,
    }
    Some(text)
}

/// The same on a pad of lengths: a digit that no fraction of a rule goes on with is not written.
pub fn length_tapped(text: String, tap: &PadTap) -> Option<String> {
    match tap {
        PadTap::Write(more) => match more.chars().next().filter(char::is_ascii_digit) {
            Some(digit) => rule::goes_on(&text, digit),
            None => tapped(text, tap),
        },
        PadTap::RubOut | PadTap::Unit(_) => tapped(text, tap),
    }
}

/// What stands on a pad.
pub fn pad_words() -> PadWords {
    PadWords {
        rub_out: words::rub_out().to_owned(),
        point: words::point().to_owned(),
        over: words::over().to_owned(),
    }
}

/// The reader's decimal mark.
pub fn decimal(desk: Desk) -> char {
    let comma = desk.now_read(|view| view.tongue.number("0.5").contains(','));
    if comma { ',' } else { '.' }
}

/// Puts the cursor in a field once it stands on the page, so that it is seen where the pad writes. A field that a thumb
/// has gone to meanwhile keeps it.
pub fn focus(id: &'static str) {
    Effect::new(move || {
        // As a rule the sheet stands by now: nobody can have touched it yet.
        if !focused(id) {
            request_animation_frame(move || {
                if !types_already() {
                    focused(id);
                }
            });
        }
    });
}

fn focused(id: &str) -> bool {
    let field = document().get_element_by_id(id);
    field.and_then(|it| it.dyn_into::<web_sys::HtmlElement>().ok()).is_some_and(|field| field.focus().is_ok())
}

fn types_already() -> bool {
    document().active_element().is_some_and(|it| it.tag_name() == "INPUT")
}
