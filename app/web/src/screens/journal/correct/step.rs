//! A step of a plan: who, how long, in one go or not, when it must be. Not here: what it comes after and what it takes
//! (`step_rows`).

use super::{Label, Spec, Typed, chosen::Choices, day_code, dec, step_rows, tick};
use crate::{
    screens::journal::correct::How,
    shell::desk::View,
    words::{journal as words, step_form},
};
use benchslate_core::{
    journal::{Id, kinds::Step},
    measure::{Day, When, duration},
    planning::longer_than_a_window,
};

pub const SPECS: [Spec; 16] = [
    ("any", Label::Any, How::Tick),
    ("one-go", Label::OneGo, How::Tick),
    ("gives-way", Label::GivesWay, How::Tick),
    ("filmed", Label::Filmed, How::Tick),
    ("name", Label::Step, How::Words),
    ("usual", Label::Usual, How::Hours),
    ("quick", Label::Quick, How::Hours),
    ("slow", Label::Slow, How::Hours),
    ("stage", Label::Stage, How::OneOf(Choices::Stage)),
    ("who", Label::Who, How::OneOf(Choices::Person)),
    ("with", Label::With, How::OneOf(Choices::Another)),
    ("start", Label::NotBefore, How::Day),
    ("end", Label::OverBy, How::Day),
    ("left", Label::HoursStill, How::Hours),
    ("done", Label::DoneOn, How::Day),
    ("drops", Label::Drops, How::Words),
];

const MOST_WORDS: usize = 4000;
const MOST_NAME: usize = 80;

pub fn fill(view: &View, it: &Step) -> Vec<(String, String)> {
    let id = |at: usize| it.who.get(at).map(|id| id.to_string()).unwrap_or_default();
    let day = |when: Option<When>| when.map(|it| view.shop.zone.day(it.instant));
    // What must be over by the first moment of a day is over by the evening before.
    let evening = day(it.end).map(|day| if is_morning(view, it.end) { day.pred() } else { day });
    let mut filled = super::owned(vec![
        ("any", tick(it.any)),
        ("one-go", tick(it.one_go)),
        ("gives-way", tick(it.gives_way)),
        ("filmed", tick(it.filmed)),
        ("name", it.title.clone()),
        ("usual", dec(it.usual)),
        ("quick", dec(it.quick)),
        ("slow", dec(it.slow)),
        ("stage", it.stage.to_string()),
        ("who", id(0)),
        ("with", id(1)),
        ("start", day_code(day(it.start))),
        ("end", day_code(evening)),
        ("left", dec(it.left)),
        ("done", day_code(it.done)),
        ("drops", it.drops.clone().unwrap_or_default()),
    ]);
    filled.extend(step_rows::fill(it));
    filled
}

/// Low above high is said by the field; one value alone is enough.
pub fn read(typed: &Typed, before: &Step, entry: Id) -> Step {
    let [quick, usual, slow] = ["quick", "usual", "slow"].map(|field| typed.hours(field));
    let falls = |low: Option<_>, high: Option<_>| low.is_some() && high.is_some() && low > high;
    if falls(quick, usual) || falls(quick, slow) {
        typed.form.wrong("quick", words::quick_above().to_owned());
    } else if falls(usual, slow) {
        typed.form.wrong("slow", words::slow_below().to_owned());
    }
    let mut who: Vec<_> = ["who", "with"].iter().filter_map(|field| typed.id(field)).collect();
    if who.len() > 1 && who.first() == who.get(1) {
        typed.form.wrong("with", step_form::twice().to_owned());
    }
    who.extend(before.who.iter().skip(2).copied());
    let [start, end] = ["start", "end"].map(|field| typed.day(field));
    if start.is_some() && end.is_some() && start > end {
        typed.form.wrong("end", words::over_before_it_begins().to_owned());
    }
    if typed.ticked("one-go") && typed.ticked("gives-way") {
        typed.form.wrong("gives-way", step_form::in_one_go_or_not().to_owned());
    }
    let told = Step {
        on: before.on,
        title: typed.name("name", MOST_NAME),
        stage: typed.chosen("stage").unwrap_or(before.stage),
        any: typed.ticked("any") && who.len() > 1,
        who,
        quick,
        usual,
        slow,
        after: step_rows::after(typed, entry),
        needs: step_rows::needs(typed),
        one_go: typed.ticked("one-go"),
        gives_way: typed.ticked("gives-way"),
        filmed: typed.ticked("filmed"),
        start: kept(typed.view, before.start, start, false),
        end: kept(typed.view, before.end, end, true),
        left: typed.form.read("left", duration::hours).map(|hours| hours.in_hours().into()),
        done: typed.day("done"),
        drops: typed.maybe_words("drops", MOST_WORDS),
        ..before.clone()
    };
    let from = typed.view.shop.zone.start_of(typed.today);
    if let Some(longest) = longer_than_a_window(typed.view.shop, &told, from) {
        let field = if slow.is_some() { "slow" } else { "usual" };
        typed.form.wrong(field, step_form::no_window_holds_it(&typed.view.tongue.hours(longest)));
    }
    told
}

/// A moment that was set to the minute stays while its day stays; else the day's first, or the first after it.
fn kept(view: &View, before: Option<When>, day: Option<Day>, after: bool) -> Option<When> {
    let day = day?;
    let zone = &view.shop.zone;
    let stands = before.filter(|it| zone.day(it.instant) == day && !is_morning(view, before));
    let first = if after { day.succ() } else { day };
    Some(stands.unwrap_or_else(|| zone.when(zone.start_of(first))))
}

/// The first moment of a day.
fn is_morning(view: &View, when: Option<When>) -> bool {
    let zone = &view.shop.zone;
    when.is_some_and(|it| zone.start_of(zone.day(it.instant)) == it.instant)
}
