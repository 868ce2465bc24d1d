//! A new chapter, typed with one thumb; of a shot that was taken its words stand there, and the next of them comes after it.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::Cells,
        key::{Key, KeyKind},
        sheet::{Hand, HandKind, Keys},
    },
    screens::stock::{
        form::{Cell, Form},
        pad,
    },
    shell::{Desk, Go, Place, desk::View},
    words::{
        add, common, film,
        journal::{self, Label},
        steps,
    },
};
use benchslate_core::{
    exchange::chapters::{Taken, from_takes, next_after},
    journal::{Id, Kind},
};

const NAME: &str = "name";
const AT: &str = "at";
/// What the form was typed for: a build, or one of its shots.
const OF: &str = "of";

/// Step and clip of a shot, so that it is found in the cut.
pub fn found_by(view: &View, taken: &Taken) -> String {
    let clip = taken.clip.as_deref().unwrap_or(film::no_clip());
    match taken.step.and_then(|step| view.shop.steps.get(&step)) {
        Some(step) => journal::comma(&step.body.title, clip),
        None => clip.to_owned(),
    }
}

/// The build of a chapter that is typed for a shot; anything else is the build itself.
pub fn build_of(view: &View, of: Id) -> Id {
    view.shop.shots.get(&of).map_or(of, |shot| shot.body.build)
}

/// What it is called, and where it begins: the pad writes there.
pub fn fields(desk: Desk, form: Form, of: Option<Id>) -> AnyView {
    let current = RwSignal::new(AT);
    let shot = of.and_then(|of| {
        desk.now_read(|view| {
            let all = from_takes(view.shop, build_of(view, of));
            all.iter().find(|it| it.shot == of).map(|it| found_by(view, it))
        })
    });
    if shot.is_some() {
        pad::focus(AT);
    }
    view! {
        <Cells>
            {Cell::words(NAME, journal::label(Label::Name)).whole().draw(form)}
            {Cell::words(AT, journal::label(Label::AtTime)).whole().padded(current).draw(form)}
        </Cells>
        {shot.map(|text| view! { <p class="note">{text}</p> })}
    }
}

/// The pad, and the keys under it.
pub fn hand(desk: Desk, go: Go, form: Form, of: Option<Id>, keep: Callback<()>) -> AnyView {
    let of = of.map(|of| of.to_string()).unwrap_or_default();
    let shot = Id::parse(&of);
    // What was typed for another goes.
    Effect::new(move || {
        let before = form.get(OF);
        if before.is_empty() && form.is_typed() {
            form.set(OF, of.clone());
        } else if !before.is_empty() && before != of {
            form.done(desk);
        }
    });
    let last = Memo::new(move |_| desk.read(|view| shot.and_then(|it| next_after(view.shop, it)).is_none()));
    let keys = move || {
        let label = if last.get() { add::keep() } else { steps::keep_and_next() };
        view! {
            <Keys>
                <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                <Key class="wide" label=label.to_owned() kind=KeyKind::Filled on_tap=keep/>
            </Keys>
        }
    };
    view! {
        <Hand name=add::keys().to_owned() kind=HandKind::Tall>
            {pad::film_time(form, AT)}
            {keys}
        </Hand>
    }
}

/// On to the next of the takes, or back.
pub fn leave(desk: Desk, go: Go, of: Option<Id>) {
    match of.and_then(|of| desk.now_read(|view| next_after(view.shop, of))) {
        Some(next) => go.instead(&Place::Add(Kind::Chapter, Some(next))),
        None => go.back(),
    }
}
