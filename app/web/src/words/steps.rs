//! What is still to be done for a build.

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

/// Under it.
pub fn from_build(title: &str) -> String {
    format!("of {title}, by number of items")
}

/// A mark.
pub fn marked_taken_over(steps: usize) -> String {
    match steps {
        1 => "1 step; of one build, so quick and slow are common practice".to_owned(),
        many => format!("{many} steps; of one build, so quick and slow are common practice"),
    }
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
