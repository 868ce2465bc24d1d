//! Notes: a line of words for whatever the bench works for, or without a home yet.

mod homeless;

pub use homeless::{HomelessSheet, count};

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::LongField,
        key::{Key, KeyKind, KeyLink},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
    },
    screens::{
        hours::{choices, fields},
        journal::facts,
        stock::form::Form,
        trouble::Troubles,
    },
    shell::{
        Desk, Go, Place,
        desk::{Mark, Marked},
        frame::Places,
    },
    words::{common, journal, notes as words},
};
use benchslate_core::journal::{Change, On, kinds::Note};

/// Longest note, in letters.
const MOST: usize = 4000;

/// The form.
#[component]
pub fn NoteSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "note");
    let opened_for = crate::screens::opened_for();
    let home = Memo::new(move |_| {
        // Only what is going on now: a thought between two jobs may well be of neither.
        let bench = desk.bench().filter(|bench| !bench.clocks.is_empty()).and_then(|bench| bench.bearer);
        opened_for.or(bench).map_or_else(|| choices::NO_HOME.to_owned(), choices::code)
    });
    let keep = Callback::new(move |()| keep(desk, go, form, &home.get_untracked()));
    let waiting = Memo::new(move |_| homeless::count(desk));
    let where_to = fields::Choosing { field: "home", label: words::home(), class: "", of: choices::homes };
    view! {
        <Sheet>
            <Head title=words::title().to_owned() tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::title().to_owned()>
                    <div class="form">
                        <LongField
                            id="note-text"
                            label=words::text().to_owned()
                            value=form.signal("note-text")
                            error=form.error("note-text")
                            on_input=Callback::new(move |text: String| form.set("note-text", text))
                        />
                        {fields::choice(desk, form, where_to, home.into())}
                    </div>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        {move || (waiting.get() > 0).then(|| view! {
                            <KeyLink
                                label=words::homeless().to_owned()
                                note=words::waiting(waiting.get())
                                href=Place::Homeless.href()
                            />
                        })}
                        <Key class="wide" label=words::keep().to_owned() kind=KeyKind::Filled on_tap=keep/>
                    </Keys>
                </Hand>
                <Places cell=1/>
            </Below>
        </Sheet>
    }
}

fn keep(desk: Desk, go: Go, form: Form, home: &str) {
    form.all_right();
    let text = form.now("note-text").trim().to_owned();
    if text.is_empty() {
        form.wrong("note-text", journal::words_missing().to_owned());
    } else if text.chars().count() > MOST {
        form.wrong("note-text", journal::too_long(MOST));
    }
    if form.is_wrong() {
        return;
    }
    let chosen = form.now("home");
    let bearer = choices::bearer(if chosen.is_empty() { home } else { &chosen });
    let (entry, said) = (desk.fresh(), text.clone());
    desk.act_then(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write(entry, Note { on, text: text.clone(), bearer })]
        },
        move |after| {
            let home =
                bearer.map_or_else(|| words::no_home().to_owned(), |at| facts::bearer(&after.view(), at));
            let kind = journal::kind(benchslate_core::journal::Kind::Note).to_owned();
            Marked::from(Mark { kind, what: words::beginning(&said), second: Some(home) })
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
