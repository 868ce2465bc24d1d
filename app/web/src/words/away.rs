//! Things that were put away: not offered any more, and nothing that names them changes.

/// The sheet and the key that leads to it.
pub fn put_away() -> &'static str {
    "Put away"
}

/// Beside the head.
pub fn not_offered() -> &'static str {
    "not offered any more"
}

/// How many, on the key that leads there.
pub fn so_many(things: usize) -> String {
    match things {
        0 => "nothing yet".to_owned(),
        1 => "1 thing".to_owned(),
        _ => format!("{things} things"),
    }
}

/// Builds that were put away, on the key of the list of builds.
pub fn so_many_builds(builds: usize) -> String {
    match builds {
        1 => "1 build".to_owned(),
        _ => format!("{builds} builds"),
    }
}

/// The key of one thing, until it is put away.
pub fn stays_whole() -> &'static str {
    "all its lines stay"
}

/// The key of one thing that is put away.
pub fn take_back() -> &'static str {
    "Take back"
}

/// Under it.
pub fn offered_again() -> &'static str {
    "offered again"
}

/// The same keys in a list, read aloud.
pub fn take_back_name(what: &str) -> String {
    format!("Take back {what}")
}

/// The same.
pub fn put_away_name(what: &str) -> String {
    format!("Put away {what}")
}

/// What a mark and a line of the journal call it.
pub fn said(back: bool) -> &'static str {
    if back { "taken back" } else { "put away" }
}

/// Nothing is put away.
pub fn nothing() -> &'static str {
    "Nothing is put away. A build, a lot, an item or a person is put away from its own sheet, a stage here."
}

/// Groups of the sheet.
pub fn builds() -> &'static str {
    "Builds"
}

/// The same.
pub fn stock() -> &'static str {
    "Lots and items"
}

/// The same.
pub fn people() -> &'static str {
    "People"
}

/// The same.
pub fn stages() -> &'static str {
    "Stages"
}

/// Stages that can be put away.
pub fn stages_offered() -> &'static str {
    "Stages that are offered"
}

/// What the long-break line names.
pub fn below() -> &'static str {
    "stages that are offered"
}

/// The hand, read aloud.
pub fn keys() -> &'static str {
    "Keys of what is put away"
}

/// Something that isn't there.
pub fn gone() -> &'static str {
    "something that is not there"
}
