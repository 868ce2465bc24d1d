//! Chapters, those outside, and what is owed: new, and put right.

use super::{
    Choices, How, Spec, Typed, chosen, day_code,
    rows::{self, Rows, field},
    tick,
};
use crate::dom::prelude::*;
use crate::{
    parts::{key::Key, sum_row::Group},
    screens::stock::form::Form,
    words::{
        journal::{self as words, Label},
        publishing as said, shop,
    },
};
use benchslate_core::{
    exchange::chapters::{self, Misfit},
    journal::{
        Id,
        kinds::{Chapter, DaysOf, Due, DueLead, DueWhat, Outsider},
    },
    measure::{film_time, limits, number},
    planning::publishing::in_a_circle,
};

pub const CHAPTER: [Spec; 2] = [("name", Label::Name, How::Words), ("at", Label::AtTime, How::Words)];

pub const OUTSIDER: [Spec; 2] =
    [("name", Label::Name, How::Words), ("kind", Label::ToTheShop, How::OneOf(Choices::OutsiderKind))];

pub const OFF: Rows = Rows {
    count: "offs",
    title: said::days_off(),
    more: said::one_more_day_off(),
    cells: &[("off", Label::DayOff, How::Day, "")],
};

pub const DUE: [Spec; 9] = [
    ("what", Label::What, How::OneOf(Choices::DueWhat)),
    ("words", Label::Text, How::Words),
    ("by-day", Label::ByDay, How::Day),
    ("lead", Label::LeadDays, How::Number),
    ("done", Label::DoneOn, How::Day),
    ("lead-of", Label::LeadOf, How::OneOf(Choices::DaysOf)),
    ("after", Label::CountsFrom, How::OneOf(Choices::Due)),
    ("outsider", Label::ToWhom, How::OneOf(Choices::Outsider)),
    ("later", Label::AfterIt, How::Tick),
];

const MOST_NAME: usize = 80;
const MOST_WORDS: usize = 200;
/// Where a form keeps the place that was said to be out of order.
const MEANT: &str = "meant";
/// Where a form keeps the days of a working week: their numbers, one after the other.
const WEEK: &str = "week";

pub fn fill_chapter(it: &Chapter) -> Vec<(&'static str, String)> {
    vec![("name", it.title.clone()), ("at", film_time::shown(it.at))]
}

pub fn chapter(typed: &Typed, before: &Chapter, entry: Id) -> Chapter {
    let at = super::fields::must(typed.form, "at", film_time::typed).unwrap_or_default();
    // The words of a shot fit.
    let after = Chapter { title: typed.name("name", limits::MOST_SHOT), at, ..before.clone() };
    if !typed.form.is_wrong()
        && let Err(misfit) = chapters::fits(typed.view.shop, &after, entry, typed.id("of"))
        && !is_meant(typed, &misfit)
    {
        typed.form.wrong("at", said::misfit(&misfit));
    }
    after
}

/// A film may show things in another order than they were taken: who says so twice means it.
fn is_meant(typed: &Typed, misfit: &Misfit) -> bool {
    let ordered = matches!(misfit, Misfit::BeforeEarlier { .. } | Misfit::AfterLater { .. });
    let at = typed.form.now("at");
    let meant = ordered && typed.form.now(MEANT) == at;
    typed.form.set(MEANT, if ordered { at } else { String::new() });
    meant
}

pub fn fill_outsider(it: &Outsider) -> Vec<(String, String)> {
    let mut filled = super::owned(vec![
        ("name", it.name.clone()),
        ("kind", chosen::outsider_kind_code(it.kind)),
        (WEEK, it.week.iter().map(u8::to_string).collect()),
        ("offs", if it.off.is_empty() { String::new() } else { it.off.len().to_string() }),
    ]);
    filled.extend(it.off.iter().enumerate().map(|(at, day)| (field("off", at), day.to_string())));
    filled
}

pub fn outsider(typed: &Typed, before: &Outsider) -> Outsider {
    let off = (0..rows::count(typed.form, OFF.count)).filter_map(|at| typed.day(&field("off", at)));
    let off = off.collect();
    let week = week(&typed.form.now(WEEK));
    if week.is_empty() {
        typed.form.wrong(WEEK, said::no_day_of_the_week().to_owned());
    }
    Outsider {
        on: before.on,
        name: typed.name("name", MOST_NAME),
        kind: chosen::outsider_kind(&typed.form.now("kind")).unwrap_or(before.kind),
        week,
        off,
    }
}

fn week(code: &str) -> Vec<u8> {
    (1..=7).filter(|day| code.contains(&day.to_string())).collect()
}

/// The days of their working week, as keys.
pub fn working_week(form: Form) -> AnyView {
    let pressed = Memo::new(move |_| week(&form.get(WEEK)));
    let key = move |day: u8| {
        let tap = Callback::new(move |()| {
            let days = pressed.get_untracked();
            let all = (1..=7).filter(|it| days.contains(it) != (*it == day));
            form.set(WEEK, all.map(|it: u8| it.to_string()).collect::<String>());
        });
        let on = Signal::derive(move || pressed.read().contains(&day));
        view! {
            <Key
                label=said::short_weekday(day).to_owned()
                name=shop::weekday(day).to_owned()
                pressed=Signal::derive(move || Some(on.get()))
                on_tap=tap
            />
        }
    };
    let wrong = form.error(WEEK);
    view! {
        <Group title=said::working_week().to_owned()/>
        <div class="keys low week" role="group" aria-label=said::working_week()>
            {(1..=7).map(key).collect::<Vec<_>>()}
        </div>
        {move || wrong.get().map(|text| view! { <p class="error" role="alert">{text}</p> })}
    }
}

pub fn fill_due(it: &Due) -> Vec<(&'static str, String)> {
    let id = |it: Option<Id>| it.map(|id| id.to_string()).unwrap_or_default();
    vec![
        ("what", chosen::due_what_code(it.what)),
        ("words", it.words.clone().unwrap_or_default()),
        ("by-day", day_code(it.day)),
        ("lead", it.lead.map(|lead| lead.days.to_string()).unwrap_or_default()),
        ("lead-of", chosen::days_of_code(it.lead.map(|lead| lead.of).unwrap_or_default())),
        ("after", id(it.after)),
        ("outsider", id(it.outsider)),
        ("done", day_code(it.done)),
        ("later", tick(it.lead.is_some_and(|lead| lead.later))),
    ]
}

pub fn due(typed: &Typed, before: &Due, entry: Id) -> Due {
    let what = chosen::due_what(&typed.form.now("what")).unwrap_or(before.what);
    let said = typed.maybe_words("words", MOST_WORDS);
    if what == DueWhat::Other && said.is_none() {
        typed.form.wrong("words", words::words_missing().to_owned());
    }
    let days = typed.form.read("lead", number::whole).and_then(|days| i32::try_from(days).ok());
    let of = chosen::days_of(&typed.form.now("lead-of")).unwrap_or(DaysOf::Calendar);
    let lead = days.map(|days| DueLead { days, of, later: typed.ticked("later") });
    let after = typed.id("after");
    if let Some(after) = after {
        if in_a_circle(typed.view.shop, entry, after) {
            typed.form.wrong("after", said::counts_from_itself().to_owned());
        } else if lead.is_none() && !typed.form.is_wrong() {
            typed.form.wrong("lead", said::how_many_days().to_owned());
        }
    }
    Due {
        on: before.on,
        build: before.build,
        what,
        words: said,
        day: typed.day("by-day"),
        lead,
        after,
        outsider: typed.id("outsider"),
        done: typed.day("done"),
    }
}
