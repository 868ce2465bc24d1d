//! Sorting a salvaged lot: what is good, what is thrown out, and how far it had come.

/// The sheet of a sorting: `Sort: gymnasium maple`.
pub fn sort_title(name: &str) -> String {
    format!("Sort: {name}")
}

/// Nothing to sort.
pub fn nothing_to_sort() -> &'static str {
    "No salvaged lot is waiting to be sorted."
}

/// Keeps a sorting.
pub fn keep_the_sort() -> &'static str {
    "Keep the sort"
}

/// A field.
pub fn good() -> &'static str {
    "good"
}

/// A field.
pub fn culled() -> &'static str {
    "culled"
}

/// A mark: `44 good, 16 culled`.
pub fn sorted(good: &str, culled: &str) -> String {
    format!("{good} good, {culled} culled")
}

/// A mark's kind.
pub fn sort_kind() -> &'static str {
    "sorted"
}

/// `today 44 good, 16 culled`.
pub fn today_sorted(good: &str, culled: &str) -> String {
    format!("today {good} good, {culled} culled")
}

/// The set of how far culled timber had come, read aloud.
pub fn how_far() -> &'static str {
    "how far it had come"
}

/// A box to tick.
pub fn unexpected() -> &'static str {
    "Not to be expected: flood, rot in store"
}

/// Under it.
pub fn unexpected_note() -> &'static str {
    "then the cull is a loss, not yield"
}

/// On a board: gone without a build.
pub fn lost() -> &'static str {
    "gone"
}

/// `Yield so far, 149 of 210`.
pub fn yield_so_far(good: &str, sorted: &str) -> String {
    format!("Yield so far, {good} of {sorted}")
}

/// `71 %`.
pub fn percent(figure: &str) -> String {
    format!("{figure} %")
}

/// `Usable in all 184, on the shelf 7.`
pub fn usable_in_all(usable: &str, shelf: &str, to_come: &str) -> String {
    format!("Usable in all {usable}: {shelf} sorted and on the shelf, {to_come} to come.")
}

/// Nothing says how much of the rest will be usable.
pub fn usable_not_known() -> &'static str {
    "Usable in all: not known yet."
}

/// More sorted than was gathered.
pub fn more_than_gathered() -> &'static str {
    "More than is still unsorted: so more was gathered than was written down."
}

/// Both fields are empty.
pub fn sort_something() -> &'static str {
    "Type what is good, what is culled, or both. 0 is a number too."
}

/// On a board: neither good nor culled yet.
pub fn not_yet() -> &'static str {
    "not yet"
}

/// On the dimension above a board: `gathered 260 board feet`.
pub fn gathered(amount: &str) -> String {
    format!("gathered {amount}")
}

/// A board read aloud: what was gathered, then each part with its word.
pub fn board_name(gathered: &str, parts: &[(&str, &str)]) -> String {
    let mut text = gathered.to_owned();
    for (word, figure) in parts.iter().filter(|(word, _)| !word.is_empty()) {
        text.push_str("; ");
        text.push_str(word);
        text.push(' ');
        text.push_str(figure);
    }
    text
}
