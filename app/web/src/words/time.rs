//! Where the hours of a build went.

/// The head of the sheet.
pub fn title(build: &str) -> String {
    format!("Time, {build}")
}

/// Beside it, while a clock runs.
pub fn so_far() -> &'static str {
    "so far"
}

/// What is cut how, read aloud.
pub fn keys() -> &'static str {
    "How it is cut"
}

/// The ways to cut it.
pub fn ways() -> [&'static str; 4] {
    ["stage", "person", "day", "camera"]
}

/// On the dimension line over the bar.
pub fn person_hours(hours: &str) -> String {
    format!("person-hours {hours}")
}

/// On the one under it.
pub fn on_the_wall(hours: &str) -> String {
    format!("on the wall {hours}")
}

/// Under the bar: `piece 45 h 00`.
pub fn side_hours(side: &str, hours: &str) -> String {
    format!("{side} {hours}")
}

/// What the wall leaves out.
pub fn amounts_apart(hours: &str) -> String {
    format!("{hours} logged as how long only: not on the wall, where nobody knows when it was.")
}

/// No hour has a place on the wall.
pub fn only_amounts() -> &'static str {
    "All of it was logged as how long only, so there is no time on the wall."
}

/// Some hours overlap.
pub fn overlaps(hours: &str) -> String {
    format!("{hours} of one person overlapped and count once, for what was begun later.")
}

/// The head of a group: a side.
pub fn side(side: &str) -> String {
    super::bench::capital(side)
}

/// The head of a group: a week, by its first day.
pub fn week(day: &str) -> String {
    format!("Week of {day}")
}

/// A ratio.
pub fn film_an_hour() -> &'static str {
    "Film, per hour of making"
}

/// Its working: `25 h 45 ÷ 45 h 00`.
pub fn divided(film: &str, piece: &str) -> String {
    format!("{film} ÷ {piece}")
}

/// A ratio.
pub fn edit_a_minute() -> &'static str {
    "Edit, per finished minute"
}

/// A ratio.
pub fn footage_a_minute() -> &'static str {
    "Footage, per finished minute"
}

/// Its working: `8 h 00 ÷ 12.5 min`.
pub fn by_minutes(hours: &str, minutes: &str) -> String {
    format!("{hours} ÷ {minutes} min")
}

/// Minutes and seconds: `38 min 24 s`.
pub fn minutes_seconds(minutes: i64, seconds: i64) -> String {
    format!("{minutes} min {seconds:02} s")
}

/// Camera running.
pub fn camera_rolling() -> &'static str {
    "Camera rolling"
}

/// Under it.
pub fn while_working() -> &'static str {
    "within the hours worked"
}

/// Nothing was filmed.
pub fn never_rolled() -> &'static str {
    "The camera never rolled on this clock. The camera key on the bench marks when it does."
}

/// Hours of own people that sit in drawn stock.
pub fn in_the_timber() -> &'static str {
    "In the timber, own"
}

/// Under it.
pub fn in_the_timber_why() -> &'static str {
    "share of haul and reclaiming; not in the hours above"
}

/// Nothing was worked on it.
pub fn nothing_yet() -> &'static str {
    "No hours yet"
}

/// Under it.
pub fn nothing_yet_why() -> &'static str {
    "Start a stage on the bench, or log hours afterwards: they are drawn here to scale."
}

/// What the long-break line names.
pub fn down_to_ratios() -> &'static str {
    "more rows, and ratios"
}

/// An entry under a row: `Fri 20 Nov, Wren`.
pub fn entry(day: &str, who: &str) -> String {
    format!("{day}, {who}")
}

/// An entry under a row of a person: `Fri 20 Nov`; of a day: `sand, Wren`.
pub fn stage_and_who(stage: &str, who: &str) -> String {
    format!("{stage}, {who}")
}

/// The entry is a clock that runs.
pub fn still_runs() -> &'static str {
    "still runs"
}

/// The entry was logged as how long only.
pub fn as_amount() -> &'static str {
    "logged as how long"
}

/// A ratio.
pub fn piece_an_item() -> &'static str {
    "The piece, per item"
}

/// Under a ratio: the middle of the builds before.
pub fn earlier_builds(middle: &str, many: usize) -> String {
    if many == 1 {
        format!("{middle} in the build before")
    } else {
        format!("{middle} in the middle of {many} before")
    }
}

/// The row to the whole line.
pub fn whole_line() -> &'static str {
    "All of it on one line"
}

/// Beside it.
pub fn whole_line_note() -> &'static str {
    "to scale, to print"
}

/// The head of that sheet.
pub fn line_title(build: &str) -> String {
    format!("Line, {build}")
}

/// On the dimension line over it.
pub fn line_days(days: i64, hours: &str) -> String {
    if days == 1 { format!("1 day, {hours}") } else { format!("{days} days, {hours}") }
}

/// The rows of the line.
pub fn line_rows() -> [&'static str; 4] {
    ["work: piece filled, film open", "camera", "dries", "gaps"]
}

/// In a gap.
pub fn gap_days(days: i64) -> String {
    format!("{days} days")
}

/// Over the milestones.
pub fn milestones() -> &'static str {
    "Milestones"
}

/// Over what the line comes to.
pub fn in_figures() -> &'static str {
    "In figures"
}

/// Days on which somebody worked.
pub fn days_worked() -> &'static str {
    "Days worked"
}

/// Days on which the camera was there.
pub fn days_shot() -> &'static str {
    "Days with the camera"
}

/// Things that dried.
pub fn times_dried() -> &'static str {
    "Left to dry"
}

/// The longest gap, and when.
pub fn longest_gap() -> &'static str {
    "Longest gap"
}

/// `15 days from Feb 4`.
pub fn gap_from(days: i64, day: &str) -> String {
    format!("{days} days from {day}")
}

/// A milestone.
pub fn begun() -> &'static str {
    "begun"
}

/// A step that is done.
pub fn step_done(step: &str) -> String {
    format!("{step}, done")
}

/// The film went out.
pub fn went_out() -> &'static str {
    "film out"
}

/// To be finished by then.
pub fn due() -> &'static str {
    "due"
}

/// The keys, read aloud.
pub fn line_keys() -> &'static str {
    "Line keys"
}

/// What stands past the lower edge.
pub fn line_below() -> &'static str {
    "milestones and figures"
}

/// A milestone under its number.
pub fn numbered(number: usize, what: &str) -> String {
    format!("{number}  {what}")
}

/// Items that left.
pub fn handed_over(count: u32) -> String {
    format!("{count} handed over")
}
