//! The sheet where any other time is typed: how long, or until when.

use super::{keep, near, offer::OfferKeys};
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, Typing},
        message::Message,
        sheet::{Above, Below, Hand, Head, Read, Sheet},
    },
    screens::{
        form_keys::{form_keys, leave_key},
        hours::fields::{must, set, text, typed},
        journal::facts,
        stock::form::Form,
        trouble::Troubles,
    },
    shell::{
        Desk, Go,
        desk::{Phase, View},
        frame::Places,
    },
    words::drying as words,
};
use benchslate_core::{
    journal::{Body, Id},
    measure::{Instant, Seconds, clock_text, day, duration},
    timing::drying,
};

const OF: &str = "of";
const WAYS: [&str; 2] = ["length", "until"];

/// The sheet.
#[component]
pub fn DryingSheet(stretch: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "drying");
    let work = Memo::new(move |_| desk.read(|view| work(view, stretch)));
    // What was typed for another stretch is not for this one.
    Effect::new(move || {
        let of = form.get(OF);
        if !of.is_empty() && of != stretch.to_string() {
            form.done(desk);
        }
    });
    let title =
        move || work.get().map_or_else(|| words::no_stretch().to_owned(), |(stage, _)| words::title(&stage));
    let note = move || {
        let (_, ended) = work.get()?;
        let now = desk.minute();
        Some(desk.read(|view| words::ended_at(&near(view, ended, now))))
    };
    let keep = Callback::new(move |()| keep_typed(desk, go, form, stretch));
    let ready = move || desk.phase.get() == Phase::Ready;
    view! {
        <Sheet>
            <Head title=Signal::derive(title) note=Signal::derive(note) tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::offered().to_owned()>
                    {move || match work.get() {
                        Some(_) => fields(form),
                        None => ready().then(nothing).draw(),
                    }}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    {move || match work.get() {
                        Some(_) => view! {
                            <OfferKeys stretch beside_a_form=true then=Callback::new(move |()| {
                                form.done(desk);
                                go.back();
                            })/>
                            {form_keys(go, words::keep(), keep)}
                        },
                        None => leave_key(go),
                    }}
                </Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

/// The stage, and when the work ended.
fn work(view: &View, stretch: Id) -> Option<(String, Instant)> {
    match view.journal.body(stretch) {
        Some(Body::Stretch(it)) => Some((facts::stage(view, it.stage), it.to?.instant)),
        _ => None,
    }
}

fn nothing() -> AnyView {
    let lines = Signal::stored(vec![words::no_stretch_why().to_owned()]);
    view! { <Message title=words::no_stretch().to_owned() lines/> }
}

fn fields(form: Form) -> AnyView {
    let when = move || {
        if form.get("by") == "until" {
            view! {
                <Cells>
                    {text(form, "until", words::until_time(), words::until_hint(), "")}
                    {typed(form, "until-day", words::until_day(), "", "", Typing::Date)}
                </Cells>
            }
        } else {
            text(form, "next", words::next_after(), words::next_hint(), "")
        }
    };
    view! {
        <div class="form">
            {set(form, "by", words::how_said(), &words::ways(), &WAYS)}
            {when}
            {text(form, "held", words::held_field(), words::held_hint(), "")}
            <p class="note">{words::bench_shows()}" "{words::no_ring()}</p>
        </div>
    }
}

fn keep_typed(desk: Desk, go: Go, form: Form, stretch: Id) {
    form.all_right();
    form.set(OF, stretch.to_string());
    let Some((_, ended)) = desk.now_read(|view| work(view, stretch)) else { return };
    let next = if form.now("by") == "until" {
        until(desk, form, ended)
    } else {
        must(form, "next", duration::hours)
    };
    let held = form.read("held", duration::hours);
    let Some(next) = next.filter(|_| !form.is_wrong()) else { return };
    keep(desk, stretch, held, next, move || {
        form.done(desk);
        go.back();
    });
}

fn until(desk: Desk, form: Form, ended: Instant) -> Option<Seconds> {
    let time = must(form, "until", clock_text::time_of_day);
    let now = desk.at_tap();
    let (zone, today) = desk.now_read(|view| (view.shop.zone.clone(), view.shop.zone.day(now)));
    let typed = form.now("until-day");
    let day = if typed.trim().is_empty() {
        None
    } else {
        Some(must(form, "until-day", |text| day::typed_near(text, today))?)
    };
    let length = drying::until(&zone, ended, day, time?);
    if length.is_none() {
        form.wrong("until", words::before_the_end(&desk.now_read(|view| near(view, ended, now))));
    }
    length
}
