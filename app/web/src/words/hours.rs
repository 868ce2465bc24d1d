//! Hours logged after the work.

/// The head of the form.
pub fn title() -> &'static str {
    "Hours afterwards"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Hours keys"
}

/// The set of days, read aloud.
pub fn which_day() -> &'static str {
    "Which day"
}

/// Days in one tap.
pub fn today() -> &'static str {
    "today"
}

/// Days in one tap.
pub fn yesterday() -> &'static str {
    "yesterday"
}

/// Any other day.
pub fn other_day() -> &'static str {
    "other day"
}

/// The field of another day.
pub fn day() -> &'static str {
    "Day"
}

/// How the time is said, read aloud.
pub fn how_said() -> &'static str {
    "How the time is said"
}

/// One way to say it.
pub fn how_long() -> &'static str {
    "how long"
}

/// The other.
pub fn from_to() -> &'static str {
    "from and to"
}

/// The field of a length.
pub fn length() -> &'static str {
    "How long"
}

/// Said in it while it is empty.
pub fn length_hint() -> &'static str {
    "2 h 15"
}

/// Fields of a start and an end.
pub fn from() -> &'static str {
    "From"
}

/// Fields of a start and an end.
pub fn to() -> &'static str {
    "To"
}

/// Said in them while they are empty.
pub fn from_hint() -> &'static str {
    "08:05"
}

/// Said in them while they are empty.
pub fn to_hint() -> &'static str {
    "10:20"
}

/// Said in the end of a clock.
pub fn still_runs() -> &'static str {
    "still runs"
}

/// A field.
pub fn stage() -> &'static str {
    "Stage"
}

/// A field.
pub fn who() -> &'static str {
    "Who"
}

/// A field.
pub fn for_what() -> &'static str {
    "Worked for"
}

/// A set of sides, read aloud.
pub fn side() -> &'static str {
    "Side"
}

/// A field.
pub fn note() -> &'static str {
    "Note, if any"
}

/// The filled key.
pub fn keep() -> &'static str {
    "Keep hours"
}

/// What a mark says beside the stage: `2 h 15, Wren`.
pub fn mark(hours: &str, who: &str) -> String {
    format!("{hours}, {who}")
}

/// The second line of a mark: `Thu 19 Nov, Gym-floor trays`.
pub fn mark_second(day: &str, home: &str) -> String {
    format!("{day}, {home}")
}

/// The second line of a mark where hours overlap.
pub fn mark_overlaps() -> &'static str {
    "overlaps other hours, counted once"
}

/// Nobody works here yet.
pub fn nobody() -> &'static str {
    "Nobody works here yet. Start a build, or add a person in the shop."
}

/// Not in the past, by a field.
pub fn not_since(from: &str, typed: &str) -> String {
    format!("Begun {from}, and {typed} has not come since. Type a time up to now. Kept as typed.")
}

/// Not in the past, by a field.
pub fn still_to_come(typed: &str) -> String {
    format!("{typed} is still to come. Type the time it began. Kept as typed.")
}

/// Beside the typed times: which day the start falls on.
pub fn begun_day(day: &str) -> String {
    format!("begun {day}")
}

/// Hours that were logged as an amount.
pub fn only_an_amount() -> &'static str {
    "No begin and no end"
}

/// Under it.
pub fn only_an_amount_why() -> &'static str {
    "Only how long it took was logged. From and to can be typed where the entry is corrected."
}

/// An entry that is no stretch.
pub fn no_stretch() -> &'static str {
    "No such stretch"
}

/// Under it.
pub fn no_stretch_why() -> &'static str {
    "It was struck out, or never on this device. The bench shows what runs."
}

/// A mark: times put right. `08:05 to 10:00`.
pub fn mark_times(from: &str, to: Option<&str>) -> String {
    to.map_or_else(|| format!("begun {from}"), |to| format!("{from} to {to}"))
}

/// A switch: the hours or the money went into something that is made once.
pub fn one_off() -> &'static str {
    "One-off: jig, template, design"
}

/// Under it.
pub fn one_off_note() -> &'static str {
    "borne by all that will be made with it"
}

/// A mark.
pub fn marked_one_off(is: bool) -> &'static str {
    if is { "one-off work" } else { "for the pieces" }
}
