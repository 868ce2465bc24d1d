//! What is still to be done for a build.

use benchslate_core::planning::starters::{Called, Construction};

/// The head.
pub fn title(build: &str) -> String {
    format!("Steps, {build}")
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "more steps"
}

/// A key.
pub fn new_step() -> &'static str {
    "New step"
}

/// Under it.
pub fn a_usual_time_is_enough() -> &'static str {
    "what it usually takes is enough"
}

/// Beside a step: what is left of it.
pub fn left_of(left: &str, of: Option<&str>) -> String {
    match of {
        Some(of) if of != left => format!("{left} left of {of}"),
        Some(_) | None => format!("{left} left"),
    }
}

/// Beside a step of which nobody has said how long it takes.
pub fn no_estimate() -> &'static str {
    "no estimate"
}

/// Beside a step that is done.
pub fn done_on(day: &str) -> String {
    format!("done {day}")
}

/// A row's key.
pub fn done() -> &'static str {
    "Done"
}

/// At the bench, over a step's title.
pub fn step_done() -> &'static str {
    "Step done"
}

/// The same on a step that is done.
pub fn not_done() -> &'static str {
    "Not yet"
}

/// Read aloud.
pub fn key_name(key: &str, step: &str) -> String {
    format!("{key}: {step}")
}

/// No step is open.
pub fn nothing_left() -> &'static str {
    "Nothing is planned. With the steps that are left, the outlook says what the build will bring."
}

/// Under the rows.
pub fn in_all() -> &'static str {
    "Left in all"
}

/// A group.
pub fn done_already() -> &'static str {
    "Done"
}

/// A key: steps as an earlier build took them.
pub fn take_over() -> &'static str {
    "Take over the hours"
}

/// Over other builds to take them from.
pub fn or_of_another() -> &'static str {
    "Or take over the hours of another build"
}

/// Under it.
pub fn from_build(title: &str) -> String {
    format!("of {title}, by number of items")
}

/// A mark.
pub fn marked_steps(steps: usize) -> String {
    match steps {
        1 => "1 step".to_owned(),
        many => format!("{many} steps"),
    }
}

/// How the spread of what was taken over is known.
pub fn spread_of(builds: usize) -> String {
    match builds {
        0 => "how long is still to be said".to_owned(),
        1 => "of one build: quick and slow are common practice".to_owned(),
        2 => "of two builds: quick and slow are common practice".to_owned(),
        many => format!("quick and slow of {many} builds"),
    }
}

/// A group: plain lists of steps.
pub fn or_from_a_list() -> &'static str {
    "Or a plain list: how is it put together?"
}

/// A way to put a piece together.
pub fn construction(of: Construction) -> &'static str {
    match of {
        Construction::Panel => "a panel",
        Construction::Frame => "a frame",
        Construction::Box => "a box",
        Construction::Turned => "turned",
        Construction::Upholstered => "upholstered",
    }
}

/// Under it.
pub fn such_as(of: Construction) -> &'static str {
    match of {
        Construction::Panel => "a top, a shelf, a board",
        Construction::Frame => "a table, a bench, a chair",
        Construction::Box => "a chest, a drawer, a tray",
        Construction::Turned => "a bowl, a leg, a handle",
        Construction::Upholstered => "a seat or a back over a frame",
    }
}

/// A switch.
pub fn with_its_film() -> &'static str {
    "with its film"
}

/// Under it.
pub fn film_steps() -> &'static str {
    "first edit, the finished piece, edit lock"
}

/// Under the lists.
pub fn lists_are_common_practice() -> &'static str {
    "Steps and 24 h of drying after a glue-up or a coat are common practice; the label of yours says what holds."
}

/// What a step of a list is called.
pub fn called(called: Called, stage: &str) -> String {
    match called {
        Called::Stage => stage.to_owned(),
        Called::FirstCoat => "first coat".to_owned(),
        Called::SecondCoat => "second coat".to_owned(),
        Called::Upholster => "seat and back".to_owned(),
        Called::ShootFinished => "shoot the finished piece".to_owned(),
        Called::EditLock => "edit lock".to_owned(),
    }
}

/// The head where a step is gone.
pub fn no_such_step() -> &'static str {
    "No such step"
}

/// A field.
pub fn usually() -> &'static str {
    "Usually"
}

/// A field.
pub fn one_in_ten_quicker() -> &'static str {
    "1 in 10 quicker"
}

/// A field.
pub fn one_in_ten_slower() -> &'static str {
    "1 in 10 slower"
}

/// At the end of a field.
pub fn hour_sign() -> &'static str {
    "h"
}

/// A field, once it has begun: better known than what was said before.
pub fn hours_left() -> &'static str {
    "Still to do"
}

/// Under the fields.
pub fn usual_alone() -> &'static str {
    "Hours that each person at it takes. The usual alone is enough: quick and slow are then taken as about three fifths \
     and five thirds of it, to the quarter hour (common practice). The plan counts three tenths of quick, four of usual, \
     three of slow."
}

/// What earlier builds say, taken in one tap.
pub fn as_your_own(builds: usize, own_spread: bool) -> String {
    match (builds, own_spread) {
        (1, _) => "As your one build before".to_owned(),
        (many, true) => format!("As your {many} builds before, quick and slow too"),
        (many, false) => format!("As your {many} builds before"),
    }
}

/// At the right of it.
pub fn usually_between(usual: &str, quick: &str, slow: &str) -> String {
    format!("{usual} h, {quick} to {slow}")
}

/// Under what is left in all: steps of which nobody has said how long they take.
pub fn not_said(many: usize) -> String {
    if many == 1 {
        "One step is not in it: nobody has said how long it takes.".to_owned()
    } else {
        format!("{many} steps are not in it: nobody has said how long they take.")
    }
}

/// Leads to all fields.
pub fn all_of_the_step() -> &'static str {
    "All of the step"
}

/// At its end.
pub fn who_after_what() -> &'static str {
    "who, after what, what dries"
}

/// A key.
pub fn keep_and_next() -> &'static str {
    "Keep, next"
}

/// Nothing was typed.
pub fn say_how_long() -> &'static str {
    "How long it usually takes is missing: type hours, as 2.25. Kept as typed."
}

/// A mark.
pub fn takes(step: &str, hours: &str) -> String {
    format!("{step}: {hours} h")
}

/// After it.
pub fn between(quick: &str, slow: &str) -> String {
    format!("{quick} to {slow}")
}

/// A mark.
pub fn marked_done(step: &str, done: bool) -> String {
    if done { format!("{step} is done") } else { format!("{step} is not done yet") }
}

/// Of a mark.
pub fn kind() -> &'static str {
    "steps"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Keys of the steps"
}
