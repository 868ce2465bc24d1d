//! What the bench says.

use benchslate_core::measure::letters;

/// First run.
pub fn nothing_yet() -> &'static str {
    "Nothing drawn yet"
}

/// First run, what it is for.
pub fn what_it_does() -> &'static str {
    "Write down what you do, use and film. Benchslate works out what it truly cost and where the hours went."
}

/// First run, where it stays.
pub fn stays_here() -> &'static str {
    "It all stays on this phone, and works with no signal."
}

/// First run, beside the drawing.
pub fn questions() -> [&'static str; 3] {
    ["how many hours?", "what cost?", "done when?"]
}

/// First run, the drawing read aloud.
pub fn not_drawn_yet() -> &'static str {
    "A tray in outline, not there yet: how many hours, what cost, done when?"
}

/// Start a build.
pub fn start_a_build() -> &'static str {
    "Start a build"
}

/// Under it.
pub fn a_name_is_enough() -> &'static str {
    "a name is enough"
}

/// What the slate is, read aloud.
pub fn clock_running() -> &'static str {
    "Clock running"
}

/// Who, and for which side, on the slate.
pub fn who_for(name: &str, side: &str) -> String {
    format!("{name}, for the {side}")
}

/// As above, where the hours are for piece and film.
pub fn who_for_both(name: &str) -> String {
    format!("{name}, for both")
}

/// The camera on the slate.
pub fn camera_off() -> &'static str {
    "camera off"
}

/// The camera on the slate and on its key.
pub fn rolling() -> &'static str {
    "rolling"
}

/// With two clocks: whose camera rolls.
pub fn and_rolling(who: &str) -> String {
    format!("{who}, rolling")
}

/// Under "rolling" on its key.
pub fn tap_to_cut() -> &'static str {
    "tap to cut"
}

/// The camera's key.
pub fn camera() -> &'static str {
    "camera"
}

/// Under it.
pub fn off() -> &'static str {
    "off"
}

/// A paused clock.
pub fn paused_since(time: &str) -> String {
    format!("paused {time}")
}

/// Keys of the clock.
pub fn pause() -> &'static str {
    "Pause"
}

/// The pause key while paused.
pub fn go_on() -> &'static str {
    "Go on"
}

/// Ends the stretch.
pub fn stop() -> &'static str {
    "Stop"
}

/// With two clocks: whose keys these are.
pub fn pause_of(name: &str) -> String {
    format!("Pause {name}")
}

/// With two clocks: whose keys these are.
pub fn go_on_of(name: &str) -> String {
    format!("{name} goes on")
}

/// With two clocks: whose keys these are.
pub fn stop_of(name: &str) -> String {
    format!("Stop {name}")
}

/// Two people, one stretch each.
pub fn both() -> &'static str {
    "both"
}

/// The set of people.
pub fn who() -> &'static str {
    "Who"
}

/// Before the likeliest stages, while a clock runs.
pub fn change_over_to() -> &'static str {
    "change over to"
}

/// With two clocks: who goes over.
pub fn goes_to(name: &str) -> String {
    format!("{name} goes to")
}

/// Before the likeliest stages, while none runs.
pub fn or_start() -> &'static str {
    "or start"
}

/// The key for all stages.
pub fn all_stages(count: usize) -> String {
    format!("all {count}")
}

/// The keys of the bench, read aloud.
pub fn keys() -> &'static str {
    "Bench keys"
}

/// Use something else than the usual.
pub fn other() -> &'static str {
    "Other"
}

/// The same where nothing is usual at this stage.
pub fn use_stock() -> &'static str {
    "Use stock"
}

/// Note.
pub fn note() -> &'static str {
    "Note"
}

/// Under it, on the bench.
pub fn a_line() -> &'static str {
    "a line"
}

/// Hours afterwards.
pub fn hours() -> &'static str {
    "hours"
}

/// Under it.
pub fn after() -> &'static str {
    "afterwards"
}

/// The dashed pieces.
pub fn earlier() -> &'static str {
    "earlier"
}

/// The dashed pieces, read aloud.
pub fn minutes_earlier(minutes: &str) -> String {
    format!("{minutes} minutes earlier")
}

/// The start time as a key, read aloud.
pub fn begun_at_change(time: &str) -> String {
    format!("Begun {time}, change it")
}

/// On the dimension line of one of two clocks.
pub fn since(time: &str) -> String {
    format!("since {time}")
}

/// After a gap.
pub fn where_was_i(title: &str) -> String {
    format!("Where was I: {title}")
}

/// The dimension line of a gap of days.
pub fn days_since(days: i64, day: &str) -> String {
    match days {
        0 => format!("today, {day}"),
        1 => format!("1 day since {day}"),
        _ => format!("{days} days since {day}"),
    }
}

/// The row of what was done last.
pub fn last_done() -> &'static str {
    "Last done"
}

/// `Joinery, Wren 3 h 00, Tobin 1 h 30`.
pub fn stage_and_people(stage: &str, people: &[(String, String)]) -> String {
    let people: Vec<String> = people.iter().map(|(name, hours)| format!("{name} {hours}")).collect();
    format!("{}, {}", capital(stage), people.join(", "))
}

/// The row of what was done last on the film.
pub fn film() -> &'static str {
    "Film"
}

/// The row of what is low.
pub fn low() -> &'static str {
    "Low"
}

/// `disc 120, 16 left`.
pub fn left(name: &str, amount: &str) -> String {
    format!("{name}, {amount} left")
}

/// Under it: the maker's own mark.
pub fn under_the_mark(mark: &str) -> String {
    format!("under your mark of {mark}")
}

/// Under it: what the last like build drew.
pub fn went_into(amount: &str, build: &str) -> String {
    format!("{amount} went into {build}")
}

/// Under the last of them.
pub fn more_low(count: usize) -> String {
    format!("and {count} more, on the shelf")
}

/// What the long-break line names.
pub fn more_below() -> &'static str {
    "more on how it stands"
}

/// Nothing was done on it yet.
pub fn nothing_done() -> &'static str {
    "Nothing yet. One tap on a stage starts the clock."
}

/// The likeliest stage.
pub fn next(stage: &str) -> String {
    format!("Next: {stage}")
}

/// What is next, read aloud.
pub fn next_name() -> &'static str {
    "What comes next"
}

/// Start the likeliest stage.
pub fn start(stage: &str) -> String {
    format!("Start {stage}")
}

/// The picker of all stages.
pub fn change_over_title() -> &'static str {
    "Change over to"
}

/// The picker while no clock runs.
pub fn start_title() -> &'static str {
    "Start"
}

/// Beside it.
pub fn one_tap_same_minute() -> &'static str {
    "one tap, same minute"
}

/// Beside it while no clock runs.
pub fn one_tap() -> &'static str {
    "one tap"
}

/// A stage of the maker's own.
pub fn new_stage() -> &'static str {
    "new stage"
}

/// Whom a running clock on another screen belongs to.
pub fn who_since(name: &str, time: &str) -> String {
    format!("{name}, since {time}")
}

/// A stopped stretch on the film, read aloud.
pub fn stopped() -> &'static str {
    "Just stopped"
}

/// The head of the sheet of bearers.
pub fn work_for() -> &'static str {
    "Work for"
}

/// The same with two clocks: whose work it is about.
pub fn works_for(name: &str) -> String {
    format!("{name} works for")
}

/// Beside it while a clock runs.
pub fn from_now_on() -> &'static str {
    "from now on"
}

/// Groups of bearers.
pub fn open_builds() -> &'static str {
    "Builds"
}

/// The last group of bearers: closed builds, and stock that nobody works on.
pub fn settled() -> &'static str {
    "Closed, empty, or used as it comes"
}

/// Groups of bearers.
pub fn lots() -> &'static str {
    "Lots"
}

/// A mark: begun.
pub fn mark_begun(who: &str) -> String {
    format!("begun, {who}")
}

/// A mark: changed over. `sand 1 h 55, now finish`.
pub fn mark_changed_over(hours: &str, to: &str) -> String {
    format!("{hours}, now {to}")
}

/// A mark: stopped. `sand 1 h 55, Wren`.
pub fn mark_stopped(hours: &str, who: &str) -> String {
    format!("{hours}, {who}")
}

/// A mark: paused.
pub fn mark_paused() -> &'static str {
    "paused"
}

/// A mark: going on.
pub fn mark_goes_on() -> &'static str {
    "goes on"
}

/// A mark: begun earlier.
pub fn mark_begun_at(time: &str) -> String {
    format!("begun {time}")
}

/// A mark: ended earlier.
pub fn mark_ended_at(time: &str, hours: &str) -> String {
    format!("ended {time}, {hours}")
}

/// A mark: camera.
pub fn mark_camera(rolls: bool) -> &'static str {
    if rolls { "rolling" } else { "cut" }
}

/// The camera in a mark.
pub fn mark_camera_kind() -> &'static str {
    "camera"
}

/// A mark: who is at it.
pub fn mark_who(who: &str) -> String {
    format!("by {who}")
}

/// A mark: whom it is for.
pub fn mark_for(title: &str) -> String {
    format!("for {title}")
}

/// A mark: which side it is for.
pub fn mark_side(side: &str) -> String {
    format!("for the {side}")
}

/// Joins names.
pub fn and(names: &[String]) -> String {
    names.join(" and ")
}

/// A clock that has run long without an act.
pub fn still_going(stage: &str, hours: &str) -> String {
    format!("Still {stage}? {hours} on the clock, and nothing written.")
}

/// A clock that ran past midnight.
pub fn past_midnight(stage: &str, begun: &str) -> String {
    format!("Still {stage}? It has run since {begun}, past midnight.")
}

/// The question, read aloud.
pub fn asked_name() -> &'static str {
    "Is this clock right?"
}

/// It goes on.
pub fn it_goes_on() -> &'static str {
    "Goes on"
}

/// It ended at a guess.
pub fn ended_at(time: &str) -> String {
    format!("Ended {time}")
}

/// Under it.
pub fn last_written() -> &'static str {
    "last thing written"
}

/// It ended at some other minute.
pub fn other_minute() -> &'static str {
    "Other"
}

/// Under it.
pub fn type_it() -> &'static str {
    "type the time"
}

/// The sheet where minutes are typed.
pub fn begun_and_ended() -> &'static str {
    "Begun and ended"
}

/// A field.
pub fn begun() -> &'static str {
    "Begun"
}

/// A field.
pub fn ended() -> &'static str {
    "Ended"
}

/// Said in an empty field.
pub fn still_runs() -> &'static str {
    "still runs"
}

/// The side as a choice.
pub fn for_what() -> &'static str {
    "It is for the"
}

/// Keeps typed minutes.
pub fn keep_these() -> &'static str {
    "Keep these times"
}

/// With a capital, at the head of a line.
pub fn capital(word: &str) -> String {
    letters::capital(word)
}
