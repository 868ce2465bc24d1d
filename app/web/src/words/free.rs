//! Free hours: the week, days off, more time; and what there is a count of.

/// Over the list, and a row that leads there.
pub fn free_hours() -> &'static str {
    "Free hours"
}

/// Beside that row.
pub fn week_there() -> &'static str {
    "the week, days off"
}

/// Nothing was said yet.
pub fn none_yet() -> &'static str {
    "none yet"
}

/// How many windows a week.
pub fn so_many(windows: usize) -> String {
    if windows == 1 { "once a week".to_owned() } else { format!("{windows} a week") }
}

/// Under the fields.
pub fn how_typed() -> &'static str {
    "Free for the shop, as 18:00-21:00; several after a comma, as 9-13, 14-16. Over midnight: 22-2. The plan puts steps here and nowhere else."
}

/// After what is typed for a day: how it was read.
pub fn comes_to(hours: &str) -> String {
    format!("= {hours}")
}

/// Over days off and extra time.
pub fn other_days() -> &'static str {
    "Other days"
}

/// The key that adds one.
pub fn add_a_day() -> &'static str {
    "Day off or extra"
}

/// On it.
pub fn one_day() -> &'static str {
    "one day, or more"
}

/// Past the lower edge.
pub fn below() -> &'static str {
    "the week, days off"
}

/// Keeps the week.
pub fn keep() -> &'static str {
    "Keep the week"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Free hours"
}

/// From one day to another: `Sat 5 Dec to Mon 7 Dec`.
pub fn days(first: &str, last: Option<String>) -> String {
    match last {
        Some(last) => format!("{first} to {last}"),
        None => first.to_owned(),
    }
}

/// `off, Sat 5 Dec`; `18:00-21:00, Tue 1 Dec`.
pub fn off_or(extra: &str, day: &str) -> String {
    let what = if extra.is_empty() { "off" } else { extra };
    format!("{what}, {day}")
}

/// What a mark says when the week was kept.
pub fn week_of(name: &str) -> String {
    format!("{name}, the week")
}

/// A last day that is before the first.
pub fn last_is_first() -> &'static str {
    "The last day is before the first. One day needs none."
}

/// Over what there is a count of.
pub fn resources() -> &'static str {
    "Clamps, bench, corners"
}

/// Adds one.
pub fn add_a_resource() -> &'static str {
    "Add what steps share"
}

/// Beside it.
pub fn and_give_back() -> &'static str {
    "clamps, the bench"
}

/// One window: `18:00–21:00`.
pub fn window(from: &str, to: &str) -> String {
    format!("{from}\u{2013}{to}")
}

/// Several windows.
pub fn and_then(all: &[String]) -> String {
    all.join(", ")
}
