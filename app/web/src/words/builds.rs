//! Builds: the list, a new one.

/// The head of the form.
pub fn new_build() -> &'static str {
    "New build"
}

/// Its one field.
pub fn what_is_it() -> &'static str {
    "What is it?"
}

/// Under the field.
pub fn more_can_wait() -> &'static str {
    "Everything else can wait until there is a hand free."
}

/// The keys of the form, read aloud.
pub fn keys() -> &'static str {
    "Build keys"
}

/// Begins it.
pub fn start_it() -> &'static str {
    "Start it"
}

/// What a mark calls it.
pub fn build() -> &'static str {
    "build"
}

/// Whoever holds the phone, until there is a name.
pub fn me() -> &'static str {
    "Me"
}

/// Why a title can't be kept.
pub fn bad_title(title: &str) -> Option<&'static str> {
    if title.is_empty() {
        return Some("No name yet. One word is enough: tray, bench, shelf.");
    }
    (title.chars().count() > 80).then_some("Longer than a title: 80 letters fit. The rest is a note.")
}

/// The head of the list.
pub fn count(builds: usize) -> String {
    match builds {
        0 => "No builds yet".to_owned(),
        1 => "1 build".to_owned(),
        _ => format!("{builds} builds"),
    }
}

/// Beside it: what the strips are.
pub fn cost_by_kind() -> &'static str {
    "cost by kind"
}

/// The list, read aloud.
pub fn list() -> &'static str {
    "Builds, latest first"
}

/// What goes here.
pub fn what_goes_here() -> &'static str {
    "Each build stands here with what is going on and what it cost so far. A name is enough to begin one."
}

/// `sanding now, Wren` would need a grammar of every stage: `sand now, Wren`.
pub fn going_on(stage: &str, who: &str) -> String {
    format!("{stage} now, {who}")
}

/// A clock that stands.
pub fn paused(stage: &str, who: &str) -> String {
    format!("{stage} paused, {who}")
}

/// What was done last.
pub fn last_done(stage: &str, day: &str) -> String {
    format!("{stage}, {day}")
}

/// A build that is closed or laid aside.
pub fn stands(state: &str, day: &str) -> String {
    format!("{state}, {day}")
}

/// Nothing was done on it.
pub fn not_begun(day: &str) -> String {
    format!("no hours yet; since {day}")
}

/// When it is due.
pub fn due(day: &str) -> String {
    format!("due {day}")
}

/// Its cost.
pub fn cost_of_closed(figure: &str) -> String {
    format!("true cost {figure}")
}

/// Under a build that is under way.
pub fn so_far(figure: &str) -> String {
    format!("true cost so far {figure}")
}

/// Its cost where entries are missing.
pub fn so_far_without(figure: &str, missing: &str) -> String {
    format!("so far {figure}, {missing}")
}

/// Nothing to reckon with.
pub fn no_cost() -> &'static str {
    "no cost yet"
}

/// Its cost can't be worked out.
pub fn cost_lacks(what: &str) -> String {
    format!("cost can’t be worked out: {what}")
}

/// Keys.
pub fn note() -> &'static str {
    "Note"
}

/// Under it.
pub fn no_home_yet() -> &'static str {
    "no home yet"
}

/// Keys.
pub fn hours() -> &'static str {
    "Hours"
}

/// Under it.
pub fn afterwards() -> &'static str {
    "afterwards"
}

/// The filled key.
pub fn start_a_build() -> &'static str {
    "Start a build"
}

/// What the long-break line names.
pub fn more_below(count: usize) -> String {
    format!("{count} builds in all")
}

/// A stage of the maker's own.
pub fn new_stage() -> &'static str {
    "New stage"
}

/// Its field.
pub fn stage_name() -> &'static str {
    "What is it called?"
}

/// Its side.
pub fn stage_side() -> &'static str {
    "Its hours are for"
}

/// Under the fields.
pub fn stage_note() -> &'static str {
    "It stands among all stages from now on. A stretch can still be for another side."
}

/// The filled key.
pub fn keep_stage() -> &'static str {
    "Keep stage"
}

/// There is one of that name.
pub fn stage_there(name: &str) -> String {
    format!("There is a stage called {name} already. Kept as typed.")
}
