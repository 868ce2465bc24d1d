//! The way back from a publish date in plain words.

use super::chapter::found_by;
use crate::{
    screens::journal::publishing_facts::{due, outsider},
    shell::desk::View,
    words::{publishing as words, publishing_troubles as troubles},
};
use benchslate_core::{
    exchange::chapters::{self, Fault},
    journal::{Id, Shop},
    measure::{Day, InOrder, Instant, Seconds, film_time, minutes},
    planning::{
        Asked, Plan,
        publishing::{Edit, Link, Owed, Publishing, Trouble, edit, publishing},
    },
};

/// All of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Look {
    pub title: String,
    pub troubles: Vec<String>,
    /// The one answer; none without a date.
    pub answer: Option<Answer>,
    /// The publish date, where there is one.
    pub publish: Option<String>,
    /// The stops before it, the last of them apart: it is the answer.
    pub stops: Vec<Stop>,
    pub own_list: bool,
    pub edit: EditSaid,
    pub owed: Vec<OwedRow>,
    pub chapters: Vec<(Id, String)>,
    /// Shots that can be chapters, each with what it is found by.
    pub taken: Vec<(Id, String, String)>,
    /// Why they can't be given out; none where there are none.
    pub fault: Option<String>,
    pub outside: Vec<(Id, String, &'static str)>,
}

/// What leads.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    pub label: &'static str,
    pub figure: String,
    pub note: Option<String>,
    /// It is over.
    pub red: bool,
}

/// A stop of the chain.
#[derive(Clone, Debug, PartialEq)]
pub struct Stop {
    pub label: String,
    pub working: Option<String>,
    pub figure: String,
    /// It is over.
    pub red: bool,
}

/// What the edit takes, or what is missing to tell.
#[derive(Clone, Debug, PartialEq)]
pub struct EditSaid {
    pub figure: String,
    pub working: Option<String>,
    pub lacks: bool,
}

/// Something owed.
#[derive(Clone, Debug, PartialEq)]
pub struct OwedRow {
    pub due: Id,
    pub what: String,
    pub note: String,
    pub done: bool,
    pub late: bool,
}

/// None: no such build.
pub fn look(view: &View, build: Id, now: Instant) -> Option<Look> {
    let it = view.shop.builds.get(&build)?;
    let today = view.shop.zone.day(now);
    let plan = Plan::of(&Asked::of(view.shop, now, Some(build)).asking(view.shop));
    let all = publishing(view.shop, build, today, plan.piece_over(view.shop, build));
    let stops = all.links.iter().map(|link| stop(view, link, all.published.is_some()));
    let marks = chapters::of_build(view.shop, build);
    let fault = chapters::check(&marks, chapters::length(view.shop, build)).err();
    Some(Look {
        title: it.title.clone(),
        troubles: all.troubles.iter().map(|trouble| told(view, *trouble)).collect(),
        answer: answer(view, &all, today),
        publish: all.publish.map(|day| view.tongue.day(day)),
        stops: stops.collect(),
        own_list: all.own_list,
        edit: edit_said(view, edit(view.shop, build, now)),
        owed: owed(view, &all.owed),
        chapters: chapters_of(view.shop, build),
        taken: taken(view, build),
        fault: fault.filter(|fault| *fault != Fault::None).map(words::fault),
        outside: outside(view),
    })
}

fn told(view: &View, trouble: Trouble) -> String {
    let due = match trouble {
        Trouble::Circle { due } | Trouble::NegativeLead { due } | Trouble::DueBeforePublish { due, .. } => {
            view.shop.dues.get(&due).map(|it| self::due(&it.body))
        }
        _ => None,
    };
    troubles::trouble(view.tongue, trouble, &due.unwrap_or_default())
}

fn answer(view: &View, all: &Publishing, today: Day) -> Option<Answer> {
    if let Some(day) = all.published {
        let (label, figure) = (words::went_out(), view.tongue.day(day));
        return Some(Answer { label, figure, note: None, red: false });
    }
    let by = all.cut_by?;
    let days = by.days_since(today);
    let red = days < 0;
    let note = if red { words::days_over(days.saturating_neg()) } else { words::days_left(days) };
    Some(Answer { label: words::cut_by(), figure: view.tongue.day(by), note: Some(note), red })
}

fn stop(view: &View, link: &Link, published: bool) -> Stop {
    let takes = link.takes().map(|(days, of)| words::takes(days, of)).unwrap_or_default();
    let promised = link.promised.and_then(|id| view.shop.dues.get(&id));
    let promised = promised.map(|it| words::promised(&due(&it.body))).unwrap_or_default();
    let working = match (takes.is_empty(), promised.is_empty()) {
        (true, _) => promised,
        (false, _) => crate::words::journal::comma(&takes, &promised),
    };
    Stop {
        label: words::lead(&link.lead),
        working: Some(working).filter(|it| !it.is_empty()),
        figure: view.tongue.day(link.by),
        red: link.past && !published,
    }
}

fn edit_said(view: &View, edit: Edit) -> EditSaid {
    let figure = |it: benchslate_core::measure::Quantity| view.tongue.number(&it.shown_trimmed());
    match edit {
        Edit::NoLength => EditSaid { figure: words::edit_no_length().to_owned(), working: None, lacks: true },
        Edit::NoneBefore { .. } => EditSaid {
            figure: words::edit_none_before().to_owned(),
            working: Some(words::edit_none_before_how().to_owned()),
            lacks: true,
        },
        Edit::Takes { minutes: long, a_minute, films, whole, worked, left } => {
            let hours = |it: Seconds| view.tongue.hours(minutes::alone(it));
            let worked = Some(worked).filter(|it| !it.is_zero()).map(hours);
            let working =
                words::edit_working(&figure(long), &hours(a_minute), &hours(whole), films, worked.as_deref());
            EditSaid { figure: hours(left), working: Some(working), lacks: false }
        }
    }
}

fn owed(view: &View, all: &[Owed]) -> Vec<OwedRow> {
    let row = |it: &Owed| {
        let to = it.outsider.map(|id| outsider(view, id));
        let by = words::by(it.by.map(|day| view.tongue.day(day)).as_deref(), to.as_deref());
        let note = match it.done {
            Some(day) => words::done_on(&view.tongue.day(day)),
            None if it.late => words::late(&by),
            None if it.over => words::over(&it.by.map(|day| view.tongue.day(day)).unwrap_or_default()),
            None => by,
        };
        let what = if it.words.is_empty() { words::due_what(it.what).to_owned() } else { it.words.clone() };
        OwedRow { due: it.due, what, note, done: it.done.is_some(), late: it.late }
    };
    let mut rows: Vec<(bool, Option<Day>, OwedRow)> =
        all.iter().map(|it| (it.done.is_some() || it.over, it.by, row(it))).collect();
    // Open ones first, the next of them at the top; without a day last.
    rows.order_by_key(|(done, by, _)| (*done, by.is_none(), *by));
    rows.into_iter().map(|(.., row)| row).collect()
}

fn chapters_of(shop: &Shop, build: Id) -> Vec<(Id, String)> {
    let all = shop.chapters_of(build).into_iter();
    all.map(|it| (it.order.entry, [&film_time::shown(it.body.at), " ", &it.body.title].concat())).collect()
}

fn taken(view: &View, build: Id) -> Vec<(Id, String, String)> {
    let all = chapters::from_takes(view.shop, build).into_iter();
    all.map(|it| (it.shot, it.title.clone(), found_by(view, &it))).collect()
}

fn outside(view: &View) -> Vec<(Id, String, &'static str)> {
    let mut all: Vec<_> = view.shop.outsiders.iter().collect();
    all.order_by_key(|(_, it)| it.order);
    all.into_iter().map(|(id, it)| (*id, it.name.clone(), words::outsider_kind(it.kind))).collect()
}
