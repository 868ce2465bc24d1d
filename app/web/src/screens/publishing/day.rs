//! When a build is due, when its film goes out, and how long that is to become: a short form.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, Typing},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
    },
    screens::{
        form_keys::form_keys, hours::fields, shop::to_the_wrong, stock::form::Form, trouble::Troubles,
    },
    shell::{
        Desk, Go, Tab,
        desk::{Mark, Marked, Phase},
        frame::Places,
    },
    words::publish_day as words,
};
use benchslate_core::{
    journal::{Body, Change, Id, kinds::Build},
    measure::{Dec, day, number},
};

/// The form. What stands already is offered.
#[component]
pub fn DaySheet(of: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "publish-day");
    let ready = Memo::new(move |_| desk.phase.get() == Phase::Ready);
    let cells = move || ready.get().then(|| untrack(|| cells(desk, form, of)));
    let about =
        Signal::derive(move || desk.read(|view| view.shop.builds.get(&of).map(|build| build.title.clone())));
    let keep = Callback::new(move |()| keep(desk, go, form, of));
    view! {
        <Sheet>
            <Head title=words::title().to_owned() note=about tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::title().to_owned()>
                    <div class="form">{cells}<p class="note">{words::what_it_does()}</p></div>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>{form_keys(go, crate::words::add::keep(), keep)}</Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, Some(Tab::Film))))/>
            </Below>
        </Sheet>
    }
}

fn cells(desk: Desk, form: Form, of: Id) -> AnyView {
    let build = desk.now_read(|view| view.shop.builds.get(&of).cloned());
    if let Some(build) = build {
        let day = build.publish.map(|day| day.to_string()).unwrap_or_default();
        let film = build.film_planned.map(|it| it.shown_trimmed()).unwrap_or_default();
        let due = build.due.map(|day| day.to_string()).unwrap_or_default();
        form.offer(vec![("due".to_owned(), due), ("publish".to_owned(), day), ("film".to_owned(), film)]);
    }
    view! {
        <Cells>
            {fields::typed(form, "due", words::piece_due(), "", "whole", Typing::Date)}
            {fields::typed(form, "publish", words::goes_out(), "", "", Typing::Date)}
            {fields::typed(form, "film", words::film_length(), "", "", Typing::Decimal)}
        </Cells>
    }
}

fn keep(desk: Desk, go: Go, form: Form, of: Id) {
    form.all_right();
    let today = desk.now_read(|view| view.shop.zone.day(desk.at_tap()));
    let [due, publish] =
        ["due", "publish"].map(|field| form.read(field, |text| day::typed_near(text, today)));
    let film = form.read("film", number::amount).map(Dec);
    if film == Some(Dec::default()) {
        form.wrong("film", words::more_than_none().to_owned());
    }
    if form.is_wrong() {
        return to_the_wrong();
    }
    desk.act_then(
        move |hand| {
            let Some(Body::Build(before)) = hand.journal.body(of) else { return Vec::new() };
            vec![Change::write(of, Build { due, publish, film_planned: film, ..before.clone() })]
        },
        move |after| {
            let day = |day: Option<_>| day.map(|day| after.view().tongue.day(day));
            let second = after.shop.builds.get(&of).map(|build| build.title.clone());
            Marked::from(Mark {
                kind: words::kind().to_owned(),
                what: words::marked(day(due).as_deref(), day(publish).as_deref()),
                second,
            })
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
