//! A stage of the maker's own: a name, and what its hours are for.

use crate::dom::prelude::*;
use crate::{
    parts::sheet::{Above, Below, Hand, Head, Read, Sheet},
    screens::form_keys::form_keys,
    screens::{hours::fields, stock::form::Form, trouble::Troubles},
    shell::{
        Desk, Go,
        desk::{Mark, Marked},
        frame::Places,
    },
    words::{builds as words, common, journal},
};
use benchslate_core::{
    journal::{
        Change, Kind, On,
        kinds::{Side, Stage},
    },
    measure::letters::small,
};

/// Longest name that a key can carry, in letters.
const MOST: usize = 24;

/// The form.
#[component]
pub fn NewStageSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "new-stage");
    let keep = Callback::new(move |()| keep(desk, go, form));
    view! {
        <Sheet>
            <Head title=words::new_stage().to_owned() tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::new_stage().to_owned()>
                    <div class="form">
                        {fields::text(form, "stage-name", words::stage_name(), "", "")}
                        <p class="label">{words::stage_side()}</p>
                        {fields::sides(form)}
                        <p class="note">{words::stage_note()}</p>
                    </div>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    {form_keys(go, words::keep_stage(), keep)}
                </Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

fn keep(desk: Desk, go: Go, form: Form) {
    form.all_right();
    let name = form.now("stage-name").trim().to_owned();
    let there = desk.now_read(|view| view.shop.stages.values().any(|it| small(&it.name) == small(&name)));
    if name.is_empty() {
        form.wrong("stage-name", journal::name_missing().to_owned());
    } else if name.chars().count() > MOST {
        form.wrong("stage-name", journal::too_long(MOST));
    } else if there {
        form.wrong("stage-name", words::stage_there(&name));
    }
    if form.is_wrong() {
        return;
    }
    let side = fields::side_of(&form.now("side")).unwrap_or(Side::Piece);
    let (entry, said) = (desk.fresh(), name.clone());
    desk.act_then(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write(entry, Stage { on, name: name.clone(), side, role: None })]
        },
        move |_| {
            let kind = journal::kind(Kind::Stage).to_owned();
            Marked::from(Mark { kind, what: said.clone(), second: Some(common::side(side).to_owned()) })
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
