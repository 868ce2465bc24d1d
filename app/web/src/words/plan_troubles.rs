//! What is wrong with a plan: what was found, what the plan made of it.

/// A group.
pub fn to_mend() -> &'static str {
    "To mend"
}

/// Under the chance: so many things are wrong, and this is the first.
pub fn first_of(many: usize) -> String {
    if many == 1 { "To mend".to_owned() } else { format!("{many} to mend, the first") }
}

/// Steps of which nobody has said how long they take: the first, and so many more.
pub fn and_more_steps(first: &str, more: usize) -> String {
    match more {
        0 => first.to_owned(),
        1 => format!("{first} and one more step"),
        _ => format!("{first} and {more} more steps"),
    }
}

/// Over what is about the build itself.
pub fn the_build() -> &'static str {
    "The build"
}

/// Steps that wait for each other; the first waits for the last.
pub fn circle(steps: &[String]) -> String {
    let first = steps.first().cloned().unwrap_or_default();
    if steps.len() == 1 {
        return format!("{first} comes after itself. Planned as if it didn\u{2019}t.");
    }
    format!(
        "They wait for each other in a ring: {}, and again {first}. Planned as if {first} waited for none of them.",
        steps.join(", then ")
    )
}

/// A build's date.
pub fn date_past(day: &str) -> String {
    format!("Its date, {day}, is past: give it another one.")
}

/// The piece is planned past its day, whose film has a date of its own.
pub fn piece_missed(should: &str, is: &str) -> String {
    format!("The piece is due {should}; by the plan it is done {is}.")
}

/// What it waits for is gone.
pub fn after_gone() -> &'static str {
    "The step that it comes after is struck out, or of a build that isn't open: planned without."
}

/// Nobody does it.
pub fn nobody_named() -> &'static str {
    "Nobody is named who does it: left out until somebody is."
}

/// Who does it is gone.
pub fn person_gone() -> &'static str {
    "Who does it is struck out: name somebody else."
}

/// No hours.
pub fn no_estimate() -> &'static str {
    "Nobody has said how long it takes: left out until somebody does."
}

/// Low above high.
pub fn out_of_order() -> &'static str {
    "Quick is longer than usual, or usual longer than slow: taken in their order."
}

/// No free hours at all.
pub fn no_free_hours() -> &'static str {
    "No free hours at all: steps are left out until there are some. A tap gives them."
}

/// All are needed and never free at once.
pub fn never_together() -> &'static str {
    "All of them are needed, and there is no hour at which all are free: left out."
}

/// One go, longer than any window.
pub fn longer_than_a_window(slow: &str, longest: &str) -> String {
    format!(
        "In one go, and up to {slow} when it is slow; the longest free time is {longest}. Planned as long as that."
    )
}

/// What it needs is gone.
pub fn resource_gone() -> &'static str {
    "What it needs is struck out: planned without."
}

/// More is needed than there is.
pub fn too_few(what: &str, needs: u32, there: u32) -> String {
    format!("It needs {needs} of {what}, and there are {there}: planned with those.")
}

/// Its date to begin is past.
pub fn start_past(day: &str) -> String {
    format!("It should begin on {day}, which is past: planned from now on.")
}

/// Its date to end is past.
pub fn end_past(day: &str) -> String {
    format!("It should be over by {day}, which is past.")
}

/// It can't begin in time.
pub fn start_missed(should: &str, can: &str) -> String {
    format!("It should begin on {should} and can't before {can}.")
}

/// It can't be over in time.
pub fn end_missed(should: &str, is: &str) -> String {
    format!("It should be over by {should} and is on {is}.")
}

/// No room for two years.
pub fn no_room() -> &'static str {
    "There is no room for it within two years of free hours."
}
