//! Hours afterwards: "2 h 15 milling yesterday".

pub mod choices;
pub mod fields;
pub mod one_off;

use crate::dom::prelude::*;
use crate::{
    parts::sheet::{Above, Below, Hand, Head, Read, Sheet},
    screens::form_keys::form_keys,
    screens::{stock::form::Form, trouble::Troubles},
    shell::{
        Desk, Go,
        desk::{After, Mark, Marked},
        frame::Places,
    },
    words::hours as words,
};
use benchslate_core::{
    journal::{Body, Change, Id},
    timing::{afterwards, worked},
};
use fields::Defaults;

/// The form.
#[component]
pub fn HoursSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "hours");
    let defaults = defaults(desk);
    let keep = Callback::new(move |()| keep(desk, go, form, &defaults.get_untracked()));
    view! {
        <Sheet>
            <Head title=words::title().to_owned() tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::title().to_owned()>
                    <div class="form">{fields::draw(desk, form, defaults.into(), true)}</div>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    {form_keys(go, words::keep(), keep)}
                </Hand>
                <Places cell=1/>
            </Below>
        </Sheet>
    }
}

/// The last choices; the bearer is the one that the form was opened for, else the bench's.
fn defaults(desk: Desk) -> Memo<Defaults> {
    let opened_for = crate::screens::opened_for();
    Memo::new(move |_| {
        let bench = desk.bench().and_then(|bench| bench.bearer);
        desk.read(|view| {
            let first = |of: Vec<(String, String)>| of.into_iter().next().map(|it| it.0).unwrap_or_default();
            let bearer = opened_for.or(bench).map(choices::code);
            Defaults {
                stage: first(choices::stages(view, "")),
                person: first(choices::people(view, "")),
                bearer: bearer.unwrap_or_else(|| first(choices::bearers(view, ""))),
            }
        })
    })
}

fn keep(desk: Desk, go: Go, form: Form, defaults: &Defaults) {
    let Some(logged) = fields::read(desk, form, defaults, true) else { return };
    let stretch = desk.now_read(|view| logged.stretch(view.shop, None));
    let Some(stretch) = stretch else {
        form.wrong("to", crate::words::journal::end_before_start(form.now("from").trim()));
        return;
    };
    let entry = desk.fresh();
    desk.act_then(
        move |_| vec![Change::write(entry, stretch.clone())],
        move |after| mark(after, entry),
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}

/// `mill 2 h 15, Wren; Thu 19 Nov, Trays`.
pub fn mark(after: &After, entry: Id) -> Marked {
    let view = after.view();
    let Some(Body::Stretch(it)) = after.journal.body(entry) else { return Marked::default() };
    let rows = worked(after.shop, after.now);
    let seconds = rows.iter().find(|row| row.entry == entry).map(|row| row.seconds);
    let hours = seconds.map(|seconds| after.tongue.hours(seconds)).unwrap_or_default();
    let second = if afterwards::overlaps(after.shop, entry, after.now) {
        words::mark_overlaps().to_owned()
    } else {
        let day = after.tongue.day(it.on.day(&after.shop.zone));
        words::mark_second(&day, &crate::screens::journal::facts::bearer(&view, it.bearer))
    };
    let who = crate::screens::journal::facts::person(&view, it.person);
    Marked::from(Mark {
        kind: crate::screens::journal::facts::stage(&view, it.stage),
        what: words::mark(&hours, &who),
        second: Some(second),
    })
}
