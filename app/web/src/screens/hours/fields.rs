//! The fields of a stretch, as they are typed afterwards or put right.

use super::{choices, one_off};
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, Field, Typing},
        pick::{Choosable, Pick},
        seg::{Choice, Seg, SegKind},
    },
    screens::stock::form::Form,
    shell::{Desk, desk::View},
    words::{common, hours as words, journal, refusal},
};
use benchslate_core::{
    journal::{
        Id, On,
        kinds::{Bearer, Side, Stretch},
    },
    measure::{Day, Refusal, clock_text, day, duration},
    timing::afterwards::{Logged, Said},
};

/// What stands in a choice until another is taken.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Defaults {
    /// Codes of the choices, as a form keeps them.
    pub stage: String,
    pub person: String,
    pub bearer: String,
}

/// The ways to say a day, a time, a side: what a form keeps.
const DAYS: [&str; 3] = ["today", "yesterday", "other"];
const WAYS: [&str; 2] = ["length", "times"];
const SIDES: [&str; 3] = ["piece", "film", "both"];

/// All fields. `afterwards`: a new stretch, so the day is a choice first; else one that is put right.
pub fn draw(desk: Desk, form: Form, defaults: Signal<Defaults>, afterwards: bool) -> AnyView {
    view! {
        {afterwards.then(|| set(form, "which", words::which_day(), [words::today(), words::yesterday(), words::other_day()].as_slice(), &DAYS))}
        {move || (!afterwards || form.get("which") == "other").then(|| other_day(form))}
        {set(form, "by", words::how_said(), &[words::how_long(), words::from_to()], &WAYS)}
        {move || if form.get("by") == "times" { times(form, afterwards) } else { length(form) }}
        <Cells>
            {choice(desk, form, Choosing { field: "stage", label: words::stage(), class: "", of: choices::stages }, Signal::derive(move || defaults.read().stage.clone()))}
            {choice(desk, form, Choosing { field: "person", label: words::who(), class: "", of: choices::people }, Signal::derive(move || defaults.read().person.clone()))}
            {choice(desk, form, Choosing { field: "bearer", label: words::for_what(), class: "whole", of: choices::bearers }, Signal::derive(move || defaults.read().bearer.clone()))}
            {text(form, "note", words::note(), "", "whole")}
        </Cells>
        {move || side(desk, form, defaults)}
        {one_off::tick(desk, form, Signal::derive(move || {
            let bearer = form.get("bearer");
            choices::bearer(&if bearer.is_empty() { defaults.read().bearer.clone() } else { bearer })
        }))}
    }
}

/// A stretch as the fields say it. None: something is wrong, and said by its field.
pub fn read(desk: Desk, form: Form, defaults: &Defaults, afterwards: bool) -> Option<Logged> {
    form.all_right();
    let now = desk.at_tap();
    let today = desk.now_read(|view| view.shop.zone.day(now));
    let day = match form.now("which").as_str() {
        "yesterday" if afterwards => Some(today.pred()),
        "other" => must(form, "day", |text| day::typed_near(text, today)),
        _ if afterwards => Some(today),
        _ => must(form, "day", |text| day::typed_near(text, today)),
    };
    let said = said(form, !afterwards);
    let chosen = |field: &str, default: &str| {
        let code = form.now(field);
        if code.is_empty() { default.to_owned() } else { code }
    };
    let stage = need(form, "stage", Id::parse(&chosen("stage", &defaults.stage)));
    let person = Id::parse(&chosen("person", &defaults.person));
    if person.is_none() {
        form.wrong("person", words::nobody().to_owned());
    }
    let bearer = need(form, "bearer", choices::bearer(&chosen("bearer", &defaults.bearer)));
    let note = form.now("note").trim().to_owned();
    if note.chars().count() > MOST_NOTE {
        form.wrong("note", journal::too_long(MOST_NOTE));
    }
    if form.is_wrong() {
        return None;
    }
    let (stage, bearer) = (stage?, bearer?);
    let side = side_of(&form.now("side")).or_else(|| desk.now_read(|view| usual_side(view, stage)));
    Some(Logged {
        day: day?,
        said: said?,
        person: person?,
        stage,
        bearer,
        side: side.unwrap_or(Side::Piece),
        one_off: one_off::ticked(form),
        note: (!note.is_empty()).then_some(note),
    })
}

/// Longest note beside a stretch or a draw, in letters.
pub const MOST_NOTE: usize = 500;

/// What the fields of a stretch hold when it is to be put right.
pub fn fill(view: &View, it: &Stretch) -> Vec<(&'static str, String)> {
    let zone = &view.shop.zone;
    let time = |when: Option<benchslate_core::measure::When>| {
        when.map(|when| zone.local(when.instant).1.to_string()).unwrap_or_default()
    };
    let length = it.logged().map(|length| view.tongue.digits(length)).unwrap_or_default();
    vec![
        ("which", "other".to_owned()),
        ("day", it.on.day(zone).to_string()),
        ("by", if it.from.is_some() { "times" } else { "length" }.to_owned()),
        ("length", length),
        ("from", time(it.from)),
        ("to", time(it.to)),
        ("stage", it.stage.to_string()),
        ("person", it.person.to_string()),
        ("bearer", choices::code(it.bearer)),
        ("side", side_code(it.side).to_owned()),
        (one_off::FIELD, one_off::code(it.one_off).to_owned()),
        ("note", it.note.clone().unwrap_or_default()),
    ]
}

/// Reads a field that must say something.
pub fn must<T>(form: Form, field: &str, read: impl FnOnce(&str) -> Result<T, Refusal>) -> Option<T> {
    read(form.now(field).trim()).map_err(|refusal| form.wrong(field, refusal::sentence(&refusal))).ok()
}

/// Keeps a day where it was, with its time, unless another day was typed.
pub fn moved(view: &View, on: On, day: Day) -> On {
    if on.day(&view.shop.zone) == day { on } else { On::Day(day) }
}

/// A field of words.
pub fn text(
    form: Form,
    field: &'static str,
    label: &'static str,
    hint: &'static str,
    class: &'static str,
) -> AnyView {
    typed(form, field, label, hint, class, Typing::Words)
}

/// A field.
pub fn typed(
    form: Form,
    field: &'static str,
    label: &'static str,
    hint: &'static str,
    class: &'static str,
    typing: Typing,
) -> AnyView {
    let hint = (!hint.is_empty()).then(|| hint.to_owned());
    view! {
        <Field
            id=field
            class
            label=label.to_owned()
            typing
            hint=Signal::stored(hint)
            value=form.signal(field)
            error=form.error(field)
            on_input=Callback::new(move |text: String| form.set(field, text))
        />
    }
}

/// A choice of a form: where it is kept, how it is drawn, what it offers beside what it holds.
#[derive(Clone, Copy)]
pub struct Choosing {
    pub field: &'static str,
    pub label: &'static str,
    pub class: &'static str,
    pub of: fn(&View, &str) -> Vec<Choosable>,
}

/// One of many; the choices follow the journal.
pub fn choice(desk: Desk, form: Form, choosing: Choosing, default: Signal<String>) -> AnyView {
    let field = choosing.field.to_owned();
    choice_of(desk, form, field, choosing, default)
}

/// The same, of a field that is one of several alike.
pub fn choice_of(desk: Desk, form: Form, id: String, choosing: Choosing, default: Signal<String>) -> AnyView {
    let Choosing { label, class, of, .. } = choosing;
    let (kept, field) = (form.signal_of(id.clone()), id.clone());
    let value = Signal::derive(move || {
        let chosen = kept.get();
        if chosen.is_empty() { default.get() } else { chosen }
    });
    let choices = Memo::new(move |_| {
        let held = value.get();
        desk.read(|view| of(view, &held))
    });
    view! {
        <Pick
            id=id.clone()
            class
            label=label.to_owned()
            choices=Signal::derive(move || choices.get())
            value
            error=form.error_of(id)
            on_choose=Callback::new(move |code: String| form.set(&field, code))
        />
    }
}

/// One of a few, as ruled cells; the first until another is taken.
pub fn set(
    form: Form,
    field: &'static str,
    name: &'static str,
    labels: &[&'static str],
    codes: &'static [&'static str],
) -> AnyView {
    let choices: Vec<Choice> = labels.iter().map(|label| Choice::plain(*label)).collect();
    let chosen = Signal::derive(move || {
        let code = form.get(field);
        codes.iter().position(|it| *it == code).unwrap_or(0)
    });
    let choose = move |at: usize| form.set(field, codes.get(at).copied().unwrap_or_default());
    view! {
        <Seg
            name=name.to_owned()
            kind=SegKind::Modes
            choices=Signal::stored(choices)
            chosen
            on_choose=Callback::new(choose)
        />
    }
}

/// The code of a side in a form.
pub fn side_code(side: Side) -> &'static str {
    match side {
        Side::Piece => "piece",
        Side::Film => "film",
        Side::Both => "both",
    }
}

/// The side that a form has kept.
pub fn side_of(code: &str) -> Option<Side> {
    [Side::Piece, Side::Film, Side::Both].into_iter().find(|side| side_code(*side) == code)
}

/// The set of sides of a form that keeps one.
pub fn sides(form: Form) -> AnyView {
    let labels = [Side::Piece, Side::Film, Side::Both].map(common::side);
    set(form, "side", words::side(), &labels, &SIDES)
}

fn need<T>(form: Form, field: &str, value: Option<T>) -> Option<T> {
    if value.is_none() {
        form.wrong(field, journal::not_chosen().to_owned());
    }
    value
}

fn said(form: Form, may_run: bool) -> Option<Said> {
    if form.now("by") != "times" {
        return must(form, "length", duration::stretch).map(Said::Length);
    }
    let from = must(form, "from", clock_text::time_of_day);
    if may_run && form.now("to").trim().is_empty() {
        return from.map(Said::Since);
    }
    let to = must(form, "to", clock_text::time_of_day);
    Some(Said::Times(from?, to?))
}

fn other_day(form: Form) -> AnyView {
    view! { <Cells>{typed(form, "day", words::day(), "", "whole", Typing::Date)}</Cells> }
}

fn length(form: Form) -> AnyView {
    text(form, "length", words::length(), words::length_hint(), "")
}

fn times(form: Form, afterwards: bool) -> AnyView {
    let to_hint = if afterwards { words::to_hint() } else { words::still_runs() };
    view! {
        <Cells>
            {text(form, "from", words::from(), words::from_hint(), "")}
            {text(form, "to", words::to(), to_hint, "")}
        </Cells>
    }
}

/// The side, where it can be chosen: hours on a lot are of the piece.
fn side(desk: Desk, form: Form, defaults: Signal<Defaults>) -> AnyView {
    let bearer = form.get("bearer");
    let bearer = if bearer.is_empty() { defaults.read().bearer.clone() } else { bearer };
    if matches!(choices::bearer(&bearer), Some(Bearer::Lot(_))) {
        return ().draw();
    }
    let stage = form.get("stage");
    let stage = if stage.is_empty() { defaults.read().stage.clone() } else { stage };
    let usual = Id::parse(&stage).and_then(|stage| desk.read(|view| usual_side(view, stage)));
    let chosen = side_of(&form.get("side")).or(usual).unwrap_or(Side::Piece);
    let at = SIDES.iter().position(|code| *code == side_code(chosen)).unwrap_or(0);
    let labels = [Side::Piece, Side::Film, Side::Both].map(|side| Choice::plain(common::side(side)));
    let choose = move |at: usize| form.set("side", SIDES.get(at).copied().unwrap_or_default());
    view! {
        <Seg
            name=words::side().to_owned()
            kind=SegKind::Modes
            choices=Signal::stored(labels.to_vec())
            chosen=Signal::stored(at)
            on_choose=Callback::new(choose)
        />
    }
}

fn usual_side(view: &View, stage: Id) -> Option<Side> {
    view.shop.stages.get(&stage).map(|stage| stage.side)
}
