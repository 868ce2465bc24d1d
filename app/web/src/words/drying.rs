//! What dries until when, and the times that are offered.

use super::Tongue;
use benchslate_core::measure::Seconds;

/// `24 h`, `2 h 30`, `45 min`.
pub fn length(tongue: &Tongue, length: Seconds) -> String {
    match length.hours_minutes() {
        (0, minutes) => format!("{minutes} min"),
        (hours, 0) => format!("{} h", tongue.number(&hours.to_string())),
        _ => tongue.hours(length),
    }
}

/// The end of it: `until 14:20`, `until Mon 23 Nov, 11:20`.
pub fn until(when: &str) -> String {
    format!("until {when}")
}

/// It is past.
pub fn since(when: &str) -> String {
    format!("since {when}")
}

/// A moment of the week around: `Sat 10:20`.
pub fn on_at(weekday: &str, time: &str) -> String {
    format!("{weekday} {time}")
}

/// The question over the offer, and in the row that leads to it.
pub fn how_long() -> &'static str {
    "How long does it dry?"
}

/// What is offered, read aloud.
pub fn offered() -> &'static str {
    "Drying times"
}

/// Where the offer comes from: the times given last at that stage.
pub fn drawn_from(length: &str, title: &str, day: &str) -> String {
    format!("Drawn: {length}, as for {title} on {day}.")
}

/// Where it comes from, if the same thing was used then as now.
pub fn drawn_from_item(length: &str, item: &str) -> String {
    format!("Drawn: {length}, the last time {item} was used.")
}

/// Nothing was given at that stage yet.
pub fn none_yet(stage: &str) -> String {
    format!("No time was given for {stage} yet. What the tin or the bottle says goes before any habit.")
}

/// What becomes of it.
pub fn bench_shows() -> &'static str {
    "The bench shows what dries until when."
}

/// Said once, and on the sheet where times are typed.
pub fn no_ring() -> &'static str {
    "It can’t ring: a closed page makes no sound. Look here, or set an alarm."
}

/// On the bar: clamps, or the dust-free corner.
pub fn held() -> &'static str {
    "clamps or corner taken"
}

/// On the bar: the rest of it.
pub fn still_drying() -> &'static str {
    "still drying"
}

/// On the dimension line over the bar: `12 h, to 23:20`.
pub fn held_to(length: &str, when: &str) -> String {
    format!("{length}, to {when}")
}

/// On the dimension line under it: `24 h: next from Mon 11:20`.
pub fn next_from(length: &str, when: &str) -> String {
    format!("{length}: next from {when}")
}

/// Under an offered time: for what it was given.
pub fn given_for(title: &str, day: &str) -> String {
    format!("{title}, {day}")
}

/// Under an offered time that holds clamps or a corner.
pub fn held_for(length: &str) -> String {
    format!("held {length}")
}

/// Under a day, while nothing of the maker's own is there.
pub fn common_practice() -> &'static str {
    "common practice"
}

/// Any other time.
pub fn other() -> &'static str {
    "Other"
}

/// The same, while nothing else is offered.
pub fn type_it() -> &'static str {
    "Type it"
}

/// Under it.
pub fn hours_or_until() -> &'static str {
    "hours, or until when"
}

/// Nothing dries.
pub fn nothing_dries() -> &'static str {
    "Doesn’t dry"
}

/// Under it.
pub fn go_on() -> &'static str {
    "go on"
}

/// Before the stages, under the offer.
pub fn next_start() -> &'static str {
    "next, start"
}

/// The key on the sheet of a stretch.
pub fn times() -> &'static str {
    "Drying"
}

/// Under it.
pub fn after_it() -> &'static str {
    "how long it dries"
}

/// The row of what dries: facts of the bench.
pub fn drying() -> &'static str {
    "Drying"
}

/// Under it, as long as clamps or the corner are taken.
pub fn held_until(when: &str) -> String {
    format!("clamps or corner taken until {when}")
}

/// The row of what has dried.
pub fn dry() -> &'static str {
    "Dry"
}

/// Nothing does.
pub fn nothing() -> &'static str {
    "Nothing"
}

/// While a clock runs: `glue-up dries`.
pub fn dries(stage: &str) -> String {
    format!("{stage} dries")
}

/// While a clock runs: `glue-up is dry`.
pub fn is_dry(stage: &str) -> String {
    format!("{stage} is dry")
}

/// While a clock runs: how many more there are.
pub fn and_more(count: usize) -> String {
    format!("and {count} more")
}

/// A stretch of which it was not said yet: `glue-up, ended 09:20`.
pub fn ended(stage: &str, time: &str) -> String {
    format!("{stage}, ended {time}")
}

/// The sheet where a time is typed.
pub fn title(stage: &str) -> String {
    format!("How long {stage} dries")
}

/// Beside it: when the work ended.
pub fn ended_at(time: &str) -> String {
    format!("ended {time}")
}

/// How the time is said, read aloud.
pub fn how_said() -> &'static str {
    "How the time is said"
}

/// Ways to say it.
pub fn ways() -> [&'static str; 2] {
    ["how long", "until when"]
}

/// A field.
pub fn next_after() -> &'static str {
    "Next step after"
}

/// Said in it while it is empty.
pub fn next_hint() -> &'static str {
    "24 h"
}

/// A field.
pub fn until_time() -> &'static str {
    "Until"
}

/// Said in it while it is empty.
pub fn until_hint() -> &'static str {
    "11:20"
}

/// A field.
pub fn until_day() -> &'static str {
    "On, if not at once"
}

/// A field: clamps or the dust-free corner.
pub fn held_field() -> &'static str {
    "Clamps or corner taken for"
}

/// Said in it while it is empty.
pub fn held_hint() -> &'static str {
    "if any"
}

/// The filled key.
pub fn keep() -> &'static str {
    "Keep this time"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Drying keys"
}

/// By a field: it is before the work ended.
pub fn before_the_end(ended: &str) -> String {
    format!("The work ended {ended}. Type a later time, or a later day. Kept as typed.")
}

/// No such stretch, or one that still runs.
pub fn no_stretch() -> &'static str {
    "Nothing to dry"
}

/// Under it.
pub fn no_stretch_why() -> &'static str {
    "This work was struck out, still runs, or was never on this device."
}

/// A mark: `dries until Mon 23 Nov, 11:20`.
pub fn mark(when: &str) -> String {
    format!("dries until {when}")
}
