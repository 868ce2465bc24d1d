//! What is still to be done for a build: its steps, with what is left of each; taken over from an earlier build, or from a
//! plain list, in one tap.

mod beginning;
mod done;
mod how_long;

pub use done::done_key;

use crate::dom::prelude::*;
use crate::{
    parts::{
        kept_row::{KeptRow, KeptText},
        key::{KeyKind, KeyLink},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumTotal},
    },
    screens::journal::facts,
    shell::{
        Desk, Place,
        desk::{Mark, Marked, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::steps as words,
};
use benchslate_core::{
    journal::{Id, Kind},
    measure::{InOrder, Instant, Seconds, minutes},
    timing::{
        steps::{self, Planned},
        worked,
    },
};

/// The steps of a build, or how long one of them takes.
pub fn sheet(place: &Place) -> AnyView {
    match place {
        Place::Steps(of) => view! { <StepsSheet of=*of/> },
        Place::HowLong(step) => view! { <how_long::HowLongSheet step=*step/> },
        _ => ().draw(),
    }
}

/// The sheet.
#[component]
pub fn StepsSheet(of: Id) -> impl IntoView {
    let desk = Desk::here();
    let minute = desk.minute();
    let look = Memo::new(move |_| desk.read(|view| look(view, of, minute)));
    let title = Signal::derive(move || look.read().as_ref().map(|it| it.title.clone()).unwrap_or_default());
    let rows = move || {
        let look = look.read();
        look.as_ref().map(|it| drawn(desk, it))
    };
    view! {
        <Sheet>
            <Head title=title tight=true/>
            <Above><Read name=title below=words::below().to_owned()>{rows}</Read></Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>
                    {move || look.read().as_ref().and_then(|it| it.earlier.first().cloned()).map(|from| beginning::over(desk, of, from))}
                    <Keys class="go">
                        <KeyLink
                            label=words::new_step().to_owned()
                            note=words::a_usual_time_is_enough().to_owned()
                            kind=KeyKind::Filled
                            href=Place::Add(Kind::Step, Some(of)).href()
                        />
                    </Keys>
                </Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, None)))/>
            </Below>
        </Sheet>
    }
}

#[derive(Clone, Debug, PartialEq)]
struct Look {
    build: Id,
    title: String,
    open: Vec<Row>,
    done: Vec<Row>,
    left: String,
    /// Open steps of which nobody has said how long they take.
    not_said: usize,
    /// Builds whose hours may be taken over, where that adds a step.
    earlier: Vec<(Id, String)>,
}

#[derive(Clone, Debug, PartialEq)]
struct Row {
    step: Id,
    title: String,
    note: String,
}

fn look(view: &View, build: Id, now: Instant) -> Option<Look> {
    let title = words::title(&view.shop.builds.get(&build)?.title);
    let worked = worked(view.shop, now);
    let planned = steps::planned(view.shop, &worked);
    let mut of_build: Vec<_> = view.shop.steps.iter().filter(|(_, it)| it.build() == build).collect();
    of_build.order_by_key(|(_, it)| it.order);
    let left = minutes::alone(steps::left_in_all(view.shop, &planned, build));
    // What is left of each, to the minute, adds up to what is left in all.
    let each: Vec<Seconds> =
        of_build.iter().map(|(id, _)| planned.get(*id).map_or(Seconds::ZERO, |it| it.left)).collect();
    let each = minutes::parts(left, &each);
    let row = |(id, it): &(&Id, &benchslate_core::journal::shop::Step)| {
        let place = of_build.iter().position(|(other, _)| other == id);
        let left = place.and_then(|place| each.get(place)).copied().unwrap_or_default();
        Row { step: **id, title: it.body.title.clone(), note: note(view, it, planned.get(*id), left) }
    };
    let (done, open): (Vec<_>, Vec<_>) = of_build.iter().partition(|(_, it)| it.done().is_some());
    let unsaid = |it: &&benchslate_core::journal::shop::Step| {
        it.done().is_none() && it.left.is_none() && steps::mean(it.hours).is_none()
    };
    let not_said = of_build.iter().map(|(_, it)| *it).filter(unsaid).count();
    Some(Look {
        build,
        title,
        left: view.tongue.hours(left),
        not_said,
        open: open.iter().map(row).collect(),
        done: done.iter().map(row).collect(),
        earlier: beginning::earlier(view, &worked, build, now),
    })
}

fn note(
    view: &View,
    step: &benchslate_core::journal::shop::Step,
    planned: Option<&Planned>,
    left: Seconds,
) -> String {
    let hours = |it: Seconds| view.tongue.hours(minutes::alone(it));
    let who: Vec<String> = step.body.who.iter().map(|id| facts::person(view, *id)).collect();
    let much = match (step.done(), planned) {
        (Some(day), _) => words::done_on(&view.tongue.day(day)),
        (None, Some(Planned { mean: None, .. })) if step.left.is_none() => words::no_estimate().to_owned(),
        (None, Some(it)) => words::left_of(&hours(left), it.mean.map(hours).as_deref()),
        (None, None) => String::new(),
    };
    crate::words::journal::comma(&much, &who.join(", "))
}

fn drawn(desk: Desk, look: &Look) -> AnyView {
    let row = move |row: &Row, done: bool| {
        let (step, key) = (row.step, if done { words::not_done() } else { words::done() });
        let text = KeptText {
            label: row.title.clone(),
            note: Some(row.note.clone()),
            key: key.to_owned(),
            key_name: words::key_name(key, &row.title),
        };
        let tap = Callback::new(move |()| done::mark_done(desk, step, !done, None));
        let leads = if done { Place::Entry(step) } else { Place::HowLong(step) };
        view! { <KeptRow text leads=Leads::To(leads.href()) on_tap=tap/> }
    };
    let lead = look.open.is_empty().then(|| view! { <p class="lead">{words::nothing_left()}</p> });
    let lists = (look.open.is_empty() && look.done.is_empty()).then(|| beginning::lists(desk, look.build));
    let open: Vec<AnyView> = look.open.iter().map(|it| row(it, false)).collect();
    let total = (!look.open.is_empty())
        .then(|| view! { <SumTotal label=words::in_all().to_owned() figure=look.left.clone()/> });
    let not_said =
        (look.not_said > 0).then(|| view! { <p class="note">{words::not_said(look.not_said)}</p> });
    let done: Vec<AnyView> = look.done.iter().map(|it| row(it, true)).collect();
    let group = (!done.is_empty()).then(|| view! { <Group title=words::done_already().to_owned()/> });
    let others = beginning::others(desk, look.build, &look.earlier);
    view! { {lead}{open}{total}{not_said}{group}{done}{others}{lists} }
}

fn marked(what: String, view: &View, build: Id) -> Marked {
    let second = view.shop.builds.get(&build).map(|it| it.title.clone());
    Mark { kind: words::kind().to_owned(), what, second }.into()
}
