//! Hours and money for a jig, a template, the design: borne by all that will be made with it. In sight only where there
//! is a run: more than one item, or one build repeating another.

use crate::dom::prelude::*;
use crate::{parts::tick_row::TickRow, screens::stock::form::Form, shell::Desk, words::hours as words};
use benchslate_core::journal::kinds::Bearer;

/// Where a form keeps it.
pub const FIELD: &str = "one-off";
const TICKED: &str = "1";

/// What a form keeps.
pub fn code(is: bool) -> &'static str {
    if is { TICKED } else { "" }
}

/// Whether it can be said of this bearer.
pub fn can_be(desk: Desk, bearer: Option<Bearer>) -> bool {
    let Some(Bearer::Build(build)) = bearer else { return false };
    desk.read(|view| view.shop.is_run(build))
}

/// As it is kept.
pub fn ticked(form: Form) -> bool {
    form.now(FIELD) == TICKED
}

/// The switch, where it can be said, or has been.
pub fn tick(desk: Desk, form: Form, bearer: Signal<Option<Bearer>>) -> AnyView {
    let shown = Memo::new(move |_| form.get(FIELD) == TICKED || can_be(desk, bearer.get()));
    let tap = Callback::new(move |()| form.set(FIELD, if form.now(FIELD) == TICKED { "" } else { TICKED }));
    (move || {
        shown.get().then(|| {
            view! {
                <TickRow
                    label=words::one_off().to_owned()
                    note=words::one_off_note().to_owned()
                    ticked=Signal::derive(move || form.get(FIELD) == TICKED)
                    on_tap=tap
                />
            }
        })
    })
    .draw()
}
