//! A shot, new or put right, and a take of one.

use super::{DAY, How, Spec, Typed, tick};
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::Cells,
        pick::{Choosable, Pick},
        sum_row::Group,
        tick_row::TickRow,
    },
    screens::{
        hours::fields::{self, must},
        stock::form::{Cell, Form},
    },
    shell::{Desk, desk::View},
    words::{
        common, film,
        journal::{self as words, Label},
    },
};
use benchslate_core::{
    journal::{
        Id, On,
        kinds::{Shot, ShotWindow, Take},
    },
    measure::{footage, limits},
    timing::shots,
};

pub const TAKE: [Spec; 3] =
    [("clip", Label::Clip, How::Words), ("keep", Label::Keeper, How::Tick), (DAY, Label::Day, How::Day)];

const WINDOWS: [ShotWindow; 3] = [ShotWindow::Before, ShotWindow::During, ShotWindow::After];
const CODES: [&str; 3] = ["before", "during", "after"];

/// At the step that is at work, a take of nothing known.
pub fn blank(view: &View, on: On, build: Id) -> Shot {
    let number = Some(shots::next_number(view.shop, build));
    Shot { number, step: shots::likely_step(view.shop, build), ..Shot::blank(on, build) }
}

pub fn fill(it: &Shot) -> Vec<(&'static str, String)> {
    let number = |it: Option<u32>| it.map(|it| it.to_string()).unwrap_or_default();
    let at = WINDOWS.iter().position(|window| *window == it.window);
    vec![
        ("what", it.what.clone()),
        ("takes", it.takes.to_string()),
        ("seconds", number(it.seconds)),
        ("set-up", number(it.set_up)),
        ("step", it.step.map(|id| id.to_string()).unwrap_or_default()),
        ("window", at.and_then(|at| CODES.get(at)).copied().unwrap_or_default().to_owned()),
        ("once", tick(it.once)),
        ("nice", tick(it.nice)),
        ("waived", tick(it.waived.is_some())),
    ]
}

pub fn shot(typed: &Typed, before: &Shot) -> Shot {
    let form = typed.form;
    let code = form.now("window");
    let at = CODES.iter().position(|it| *it == code);
    let today = typed.today;
    Shot {
        what: typed.name("what", limits::MOST_SHOT),
        takes: must(form, "takes", footage::takes).unwrap_or(before.takes),
        seconds: form.read("seconds", footage::seconds),
        set_up: form.read("set-up", footage::minutes),
        step: typed.id("step"),
        window: at.and_then(|at| WINDOWS.get(at)).copied().unwrap_or(before.window),
        once: typed.ticked("once"),
        nice: typed.ticked("nice"),
        waived: typed.ticked("waived").then(|| before.waived.unwrap_or(today)),
        ..before.clone()
    }
}

/// What it is, first and alone; all else has a good default under it.
pub fn draw(desk: Desk, form: Form, build: Id) -> AnyView {
    let label = |it: Label| words::label(it);
    let ticked = |field: &'static str, label: &'static str, note: Option<&'static str>| {
        view! {
            <TickRow
                label=label.to_owned()
                note=note.map(str::to_owned)
                ticked=Signal::derive(move || form.get(field) == tick(true))
                on_tap=Callback::new(move |()| form.set(field, tick(form.now(field) != tick(true))))
            />
        }
    };
    view! {
        <Cells>
            {Cell::words("what", label(Label::Shot)).whole().draw(form)}
            {Cell::number("takes", label(Label::Takes)).draw(form)}
            {Cell::words("seconds", label(Label::TakeLength)).hint(film::length_hint()).draw(form)}
            {Cell::words("set-up", label(Label::SetUp)).hint(film::set_up_hint()).draw(form)}
            {step(desk, form, build)}
        </Cells>
        <Group title=film::against_its_step().to_owned()/>
        {fields::set(form, "window", label(Label::Window), &film::windows(), &CODES)}
        {ticked("once", label(Label::OnceOnly), Some(film::once_note()))}
        {ticked("nice", label(Label::Nice), Some(film::nice_note()))}
    }
}

fn step(desk: Desk, form: Form, build: Id) -> AnyView {
    let choices = Memo::new(move |_| desk.read(|view| steps(view, build)));
    view! {
        <Pick
            id="step"
            label=words::label(Label::AtStep).to_owned()
            choices=Signal::derive(move || choices.get())
            value=form.signal("step")
            error=form.error("step")
            on_choose=Callback::new(move |code: String| form.set("step", code))
        />
    }
}

/// The steps of the build, in order; none: the shot is of the build as a whole.
fn steps(view: &View, build: Id) -> Vec<Choosable> {
    let along = shots::along(view.shop, build);
    let named = along.steps().iter().filter_map(|id| {
        let step = view.shop.steps.get(id)?;
        Some((id.to_string(), step.body.title.clone()))
    });
    std::iter::once((String::new(), common::none().to_owned())).chain(named).collect()
}

pub fn fill_take(it: &Take) -> Vec<(&'static str, String)> {
    vec![("clip", it.clip.clone().unwrap_or_default()), ("keep", tick(it.keep))]
}

pub fn take(typed: &Typed, before: &Take) -> Take {
    Take {
        on: typed.on(before.on),
        clip: typed.maybe_words("clip", limits::MOST_CLIP),
        keep: typed.ticked("keep"),
        ..before.clone()
    }
}
