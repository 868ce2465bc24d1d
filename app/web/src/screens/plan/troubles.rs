//! What is wrong with a plan, each with the way out: the step, the person or the build that mends it.

use super::look::step;
use crate::dom::prelude::*;
use crate::{
    parts::sum_row::{Group, Leads, SumRow, SumText},
    screens::journal::facts,
    shell::{Desk, Place, Way, desk::View},
    words::{plan as plan_words, plan_troubles as words},
};
use benchslate_core::{
    journal::Id,
    measure::{Instant, minutes},
    planning::{Plan, Trouble},
};

/// Those of a build, and of none: whose, what, and where it is mended.
type Row = (String, String, String);

/// All of them.
pub fn of_build(desk: Desk, plan: &Plan, build: Id) -> Vec<Row> {
    desk.read(|view| {
        let own = |id: Id| view.shop.steps.get(&id).is_none_or(|it| it.build() == build);
        let mut all: Vec<Row> = Vec::new();
        let unsaid = |it: &&Trouble| matches!(it, Trouble::NoEstimate { .. });
        let other = |it: &Trouble| matches!(it, Trouble::PieceMissed { build: of, .. } if *of != build);
        let mine = || plan.troubles.iter().filter(|it| of(it).is_none_or(own) && !other(it));
        for it in mine().filter(|it| !unsaid(it)) {
            let row = said(view, it);
            // Somebody without free hours stands behind every step of theirs: said once.
            if !all.contains(&row) {
                all.push(row);
            }
        }
        // So do steps of which nobody has said how long they take.
        let count = mine().filter(unsaid).count();
        if let Some(first) = mine().find(unsaid) {
            let (title, says, href) = said(view, first);
            all.push((words::and_more_steps(&title, count.saturating_sub(1)), says, href));
        }
        all
    })
}

/// Under the chance: that something is wrong, and what is the first of it. It is worth less than it says.
pub fn first(rows: &[Row]) -> Option<AnyView> {
    let (title, says, href) = rows.first()?.clone();
    let label = words::first_of(rows.len());
    let text =
        SumText { label, working: Some(crate::words::journal::comma(&title, &says)), ..SumText::default() };
    Some(view! { <SumRow text leads=Leads::To(href) signed=false/> })
}

/// All of them, with their ways out.
pub fn rows(rows: Vec<Row>) -> Option<AnyView> {
    let row = |(label, working, href): Row| {
        let text = SumText { label, working: Some(working), ..SumText::default() };
        view! { <SumRow text leads=Leads::To(href) signed=false/> }
    };
    (!rows.is_empty()).then(|| {
        view! { <Group title=words::to_mend().to_owned()/>{rows.into_iter().map(row).collect::<Vec<_>>()} }
    })
}

/// The way on where nothing is planned, or no date stands: who has no free hours, what has no hours, the date.
pub fn way_on(plan: &Plan, build: Id) -> Option<(&'static str, Place)> {
    let free = plan.troubles.iter().find_map(|it| match it {
        Trouble::NoFreeHours { person, .. } => Some(*person),
        _ => None,
    });
    let unsaid = plan.troubles.iter().find_map(|it| match it {
        Trouble::NoEstimate { step } => Some(*step),
        _ => None,
    });
    let no_date = plan.build(build).is_none_or(|it| it.due.is_none());
    match (unsaid, free) {
        (Some(step), _) => Some((plan_words::say_how_long(), Place::HowLong(step))),
        (None, Some(person)) => Some((plan_words::say_when_free(), Place::Free(person))),
        (None, None) => no_date.then_some((plan_words::a_date(), Place::Out(build, Way::GoesOut))),
    }
}

/// The step that it is about.
pub fn of(trouble: &Trouble) -> Option<Id> {
    match trouble {
        Trouble::Circle { steps } => steps.first().copied(),
        Trouble::DatePast { .. } | Trouble::PieceMissed { .. } => None,
        Trouble::AfterGone { step, .. }
        | Trouble::NobodyNamed { step }
        | Trouble::PersonGone { step, .. }
        | Trouble::NoEstimate { step }
        | Trouble::OutOfOrder { step }
        | Trouble::NoFreeHours { step, .. }
        | Trouble::NeverTogether { step }
        | Trouble::LongerThanAWindow { step, .. }
        | Trouble::ResourceGone { step, .. }
        | Trouble::TooFew { step, .. }
        | Trouble::StartPast { step, .. }
        | Trouble::EndPast { step, .. }
        | Trouble::StartMissed { step, .. }
        | Trouble::EndMissed { step, .. }
        | Trouble::NoRoom { step } => Some(*step),
    }
}

/// What is wrong, what was made of it, and where it is mended.
fn said(view: &View, trouble: &Trouble) -> (String, String, String) {
    let title = of(trouble).map(|id| step(view, id)).unwrap_or_default();
    let entry = |id: Id| Place::Entry(id).href();
    let day = |at: Instant| view.tongue.day(view.shop.zone.day(at));
    let who = |id: Id| facts::person(view, id);
    let thing = |id: &Id| view.shop.resources.get(id).map(|it| it.name.clone()).unwrap_or_default();
    let hours = |it| view.tongue.hours(minutes::alone(it));
    let (says, place) = match trouble {
        Trouble::Circle { steps } => {
            let titles: Vec<String> = steps.iter().map(|id| step(view, *id)).collect();
            (words::circle(&titles), steps.first().map(|id| entry(*id)).unwrap_or_default())
        }
        Trouble::DatePast { build, due } => (words::date_past(&day(*due)), entry(*build)),
        Trouble::PieceMissed { build, should, is } => {
            let out = Place::Out(*build, Way::GoesOut).href();
            (words::piece_missed(&day(*should), &day(*is)), out)
        }
        Trouble::AfterGone { step, .. } => (words::after_gone().to_owned(), entry(*step)),
        Trouble::NobodyNamed { step } => (words::nobody_named().to_owned(), entry(*step)),
        Trouble::PersonGone { step, .. } => (words::person_gone().to_owned(), entry(*step)),
        Trouble::NoEstimate { step } => (words::no_estimate().to_owned(), Place::HowLong(*step).href()),
        Trouble::OutOfOrder { step } => (words::out_of_order().to_owned(), Place::HowLong(*step).href()),
        Trouble::NoFreeHours { person, .. } => {
            (words::no_free_hours().to_owned(), Place::Free(*person).href())
        }
        Trouble::NeverTogether { step } => (words::never_together().to_owned(), entry(*step)),
        Trouble::LongerThanAWindow { step, slow, longest } => {
            (words::longer_than_a_window(&hours(*slow), &hours(*longest)), entry(*step))
        }
        Trouble::ResourceGone { step, .. } => (words::resource_gone().to_owned(), entry(*step)),
        Trouble::TooFew { step, resource, needs, there } => {
            (words::too_few(&thing(resource), *needs, *there), entry(*step))
        }
        Trouble::StartPast { step, start } => (words::start_past(&day(*start)), entry(*step)),
        Trouble::EndPast { step, end } => (words::end_past(&day(*end)), entry(*step)),
        Trouble::StartMissed { step, should, can } => {
            (words::start_missed(&day(*should), &day(*can)), entry(*step))
        }
        Trouble::EndMissed { step, should, is } => {
            (words::end_missed(&day(*should), &day(*is)), entry(*step))
        }
        Trouble::NoRoom { step } => (words::no_room().to_owned(), entry(*step)),
    };
    let title = match trouble {
        Trouble::NoFreeHours { person, .. } => plan_words::you_or(&who(*person)),
        _ if title.is_empty() => words::the_build().to_owned(),
        _ => title,
    };
    (title, says, place)
}
