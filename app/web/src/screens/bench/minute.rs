//! When a stretch that runs or was just stopped began and ended, typed to the minute; and what it is for.

use super::taps;
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::Cells,
        message::Message,
        seg::{Choice, Seg},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
    },
    screens::form_keys::{form_keys, leave_key},
    screens::{hours::fields, journal::facts, stock::form::Form, trouble::Troubles},
    shell::{
        Desk, Go,
        desk::{After, Mark, Marked, Phase, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{bench as words, common, hours},
};
use benchslate_core::{
    journal::{
        Body, Id,
        kinds::{Side, Stretch},
    },
    measure::{Instant, TimeOfDay, clock_text},
    timing::afterwards,
};

const OF: &str = "of";
const BEGUN: &str = "begun";
const ENDED: &str = "ended";
const SIDES: [Side; 3] = [Side::Piece, Side::Film, Side::Both];

/// The sheet.
#[component]
pub fn MinuteSheet(entry: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "minute");
    let stretch = Memo::new(move |_| desk.read(|view| stored(view, entry)));
    // What was typed for another stretch is not for this one.
    Effect::new(move || {
        let of = form.get(OF);
        if !of.is_empty() && of != entry.to_string() {
            form.done(desk);
        }
    });
    let title =
        move || stretch.with(|it| it.as_ref().map(|it| desk.read(|view| facts::stage(view, it.stage))));
    let note = move || stretch.with(|it| it.as_ref().map(|it| desk.read(|view| who(view, it))));
    let keep = Callback::new(move |()| keep(desk, go, form, entry));
    let name = Signal::derive(move || title().unwrap_or_else(|| words::begun_and_ended().to_owned()));
    view! {
        <Sheet>
            <Head title=name note=Signal::derive(note) tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::begun_and_ended().to_owned()>
                    {move || match stretch.get() {
                        Some(it) => typed(desk, form, entry, &it),
                        None => nothing(desk, entry),
                    }}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>
                    {move || stretch.get().filter(|it| it.to.is_none()).map(|it| side(desk, entry, it.side))}
                    {move || if stretch.read().is_some() { form_keys(go, words::keep_these(), keep) } else { leave_key(go) }}
                </Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

fn stored(view: &View, entry: Id) -> Option<Stretch> {
    match view.journal.body(entry) {
        Some(Body::Stretch(stretch)) if stretch.from.is_some() => Some(stretch.clone()),
        _ => None,
    }
}

fn who(view: &View, it: &Stretch) -> String {
    let person = facts::person(view, it.person);
    let Some(from) = it.from else { return person };
    hours::mark(&person, &hours::begun_day(&view.tongue.day_of(from.instant)))
}

/// No such stretch, or one of which only an amount of hours is known.
fn nothing(desk: Desk, entry: Id) -> AnyView {
    let ready = desk.phase.get() == Phase::Ready;
    let amount = desk.read(|view| matches!(view.journal.body(entry), Some(Body::Stretch(_))));
    let (title, why) = if amount {
        (hours::only_an_amount(), hours::only_an_amount_why())
    } else {
        (hours::no_stretch(), hours::no_stretch_why())
    };
    let lines = Signal::stored(vec![why.to_owned()]);
    ready.then(|| view! { <Message title=title.to_owned() lines/> }).draw()
}

fn typed(desk: Desk, form: Form, entry: Id, it: &Stretch) -> AnyView {
    let time = |at: Option<benchslate_core::measure::When>| {
        desk.now_read(|view| at.map(|at| view.tongue.time(at.instant)).unwrap_or_default())
    };
    let (begun, ended) =
        (time(it.from), it.to.map_or_else(|| words::still_runs().to_owned(), |to| time(Some(to))));
    let field = move |field: &'static str, label: &'static str, hint: String| {
        view! {
            <crate::parts::field::Field
                id=field
                label=label.to_owned()
                hint=Signal::stored(Some(hint))
                value=form.signal(field)
                error=form.error(field)
                on_input=Callback::new(move |text: String| {
                    form.set(OF, entry.to_string());
                    form.set(field, text);
                })
            />
        }
    };
    view! {
        <Cells>
            {field(BEGUN, words::begun(), begun)}
            {field(ENDED, words::ended(), ended)}
        </Cells>
    }
}

/// What a running stretch is for: written at the tap.
fn side(desk: Desk, entry: Id, side: Side) -> AnyView {
    let at = SIDES.iter().position(|it| *it == side).unwrap_or(0);
    let choose = move |at: usize| {
        let clock =
            desk.bench().and_then(|bench| bench.clocks.into_iter().find(|clock| clock.entry == entry));
        if let (Some(clock), Some(side)) = (clock, SIDES.get(at)) {
            taps::side(desk, &clock, *side);
        }
    };
    view! {
        <Keys class="minute-side" lead=words::for_what().to_owned()>
            <Seg
                name=words::for_what().to_owned()
                choices=Signal::stored(SIDES.map(|side| Choice::plain(common::side(side))).to_vec())
                chosen=Signal::stored(at)
                on_choose=Callback::new(choose)
            />
        </Keys>
    }
}

fn keep(desk: Desk, go: Go, form: Form, entry: Id) {
    form.all_right();
    let Some(stretch) = desk.now_read(|view| stored(view, entry)) else { return };
    let Some(from) = stretch.from.map(|from| from.instant) else { return };
    let now = desk.at_tap();
    let zone = desk.now_read(|view| view.shop.zone.clone());
    let end = stretch.to.map_or(now, |to| to.instant);
    let begun =
        put(form, BEGUN, |time| afterwards::begun(&zone, from, end.max(now), time), hours::still_to_come);
    let start = begun.unwrap_or(from);
    let said = desk.now_read(|view| view.tongue.time(start));
    let ended = put(
        form,
        ENDED,
        |time| afterwards::ended(&zone, start, now, time),
        |typed| hours::not_since(&said, typed),
    );
    if begun.is_some() && ended.is_none() && stretch.to.is_some_and(|to| to.instant < start) {
        let stopped = desk.now_read(|view| view.tongue.time(end));
        form.wrong(BEGUN, crate::words::journal::stopped_before(&stopped));
    }
    if form.is_wrong() {
        return;
    }
    desk.act_then(
        move |hand| hand.put_right(entry, begun, ended),
        move |after| mark(after, entry),
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}

/// A typed time as a moment; none where nothing was typed, or it can't be.
fn put(
    form: Form,
    field: &str,
    moment: impl FnOnce(TimeOfDay) -> Option<Instant>,
    sentence: impl FnOnce(&str) -> String,
) -> Option<Instant> {
    let text = form.now(field).trim().to_owned();
    if text.is_empty() {
        return None;
    }
    let time = fields::must(form, field, clock_text::time_of_day)?;
    let at = moment(time);
    if at.is_none() {
        form.wrong(field, sentence(&text));
    }
    at
}

fn mark(after: &After, entry: Id) -> Marked {
    let view = after.view();
    let Some(it) = stored(&view, entry) else { return Marked::default() };
    let time = |at: benchslate_core::measure::When| after.tongue.time(at.instant);
    let from = it.from.map(time).unwrap_or_default();
    let to = it.to.map(time);
    let what = hours::mark_times(&from, to.as_deref());
    let mark = Mark { kind: facts::stage(&view, it.stage), what, second: None };
    Marked { mark, stopped: it.to.map(|_| entry) }
}
