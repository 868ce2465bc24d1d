//! A take: what the camera calls its clip, typed when the card is copied, and whether it is a keeper.

use super::acts;
use crate::dom::prelude::*;
use crate::{
    parts::{
        message::Message,
        sheet::{Above, Below, Hand, Head, Read, Sheet},
        tick_row::TickRow,
    },
    screens::{
        form_keys::{form_keys, leave_key},
        stock::form::{Cell, Form},
        trouble::Troubles,
    },
    shell::{Desk, Go, Tab, desk::Phase, frame::Places},
    words::{
        film as words,
        journal::{self, Label, too_long},
    },
};
use benchslate_core::{
    journal::{Body, Change, Id, kinds::Take},
    measure::limits,
};

const OF: &str = "of";
const KEEPS: &str = "1";

/// The sheet.
#[component]
pub fn TakeSheet(take: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "take-clip");
    let it = Memo::new(move |_| {
        desk.read(|view| match view.journal.body(take) {
            Some(Body::Take(it)) => Some(it.clone()),
            _ => None,
        })
    });
    // What was typed for another take is not for this one.
    Effect::new(move || {
        let of = form.get(OF);
        if !of.is_empty() && of != take.to_string() {
            form.done(desk);
        }
    });
    let what = Memo::new(move |_| {
        let shot = it.read().as_ref().map(|it| it.shot);
        shot.map(|shot| desk.read(|view| super::what(view, shot)))
    });
    let build = Signal::derive(move || {
        let shot = it.read().as_ref()?.shot;
        desk.read(|view| Some((view.shop.shots.get(&shot)?.body.build, Some(Tab::Film))))
    });
    let drawn = move || match it.get() {
        _ if desk.phase.get() != Phase::Ready => ().draw(),
        Some(it) => untrack(|| fields(form, &it)),
        None => {
            let lines = Signal::stored(vec![words::no_shot_why().to_owned()]);
            view! { <Message title=words::no_shot().to_owned() lines/> }
        }
    };
    let there = Memo::new(move |_| it.read().is_some());
    let keys = move || {
        if there.get() {
            form_keys(go, words::keep(), Callback::new(move |()| keep(desk, go, form, take)))
        } else {
            leave_key(go)
        }
    };
    view! {
        <Sheet>
            <Head title=words::take_title().to_owned() note=Signal::derive(move || what.get()) tight=true/>
            <Above><Troubles/><Read name=words::take_title().to_owned()>{drawn}</Read></Above>
            <Below>
                <Hand name=words::keys().to_owned()>{keys}</Hand>
                <Places cell=1 of_build=build/>
            </Below>
        </Sheet>
    }
}

fn fields(form: Form, it: &Take) -> AnyView {
    let keeps = if it.keep { KEEPS.to_owned() } else { String::new() };
    form.offer(vec![("clip".to_owned(), it.clip.clone().unwrap_or_default()), ("keep".to_owned(), keeps)]);
    let ticked = move || form.get("keep") == KEEPS;
    view! {
        <div class="form">
            {Cell::words("clip", journal::label(Label::Clip)).hint(words::clip_hint()).whole().draw(form)}
            <TickRow
                label=journal::label(Label::Keeper).to_owned()
                ticked=Signal::derive(ticked)
                on_tap=Callback::new(move |()| form.set("keep", if form.now("keep") == KEEPS { "" } else { KEEPS }))
            />
        </div>
    }
}

fn keep(desk: Desk, go: Go, form: Form, entry: Id) {
    form.set(OF, entry.to_string());
    let clip = form.now("clip").trim().to_owned();
    if clip.chars().count() > limits::MOST_CLIP {
        return form.wrong("clip", too_long(limits::MOST_CLIP));
    }
    let (clip, keep) = (Some(clip).filter(|it| !it.is_empty()), form.now("keep") == KEEPS);
    desk.act_then(
        move |hand| {
            let Some(Body::Take(it)) = hand.journal.body(entry) else { return Vec::new() };
            vec![Change::write(entry, Take { clip: clip.clone(), keep, ..it.clone() })]
        },
        move |after| acts::taken(after, entry),
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
