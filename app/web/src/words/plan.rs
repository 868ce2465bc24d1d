//! Have I got the time? What is likely, what holds it up, what would make it surer.

use benchslate_core::journal::kinds::Side;

/// The head.
pub fn title() -> &'static str {
    "Have I got the time?"
}

/// No build is open.
pub fn no_build() -> &'static str {
    "No build is open. Once one is, this sheet says when it is likely to be over, and what would make it surer."
}

/// A build without steps.
pub fn no_steps() -> &'static str {
    "No steps yet. What is still to be done, and how long it takes, makes the plan: from an earlier build in one tap, or \
     from a plain list."
}

/// Every step of a build is done.
pub fn all_done() -> &'static str {
    "Every step is done: there is nothing left to plan."
}

/// A key.
pub fn write_steps() -> &'static str {
    "Write the steps"
}

/// Over the builds, in the order in which they are planned.
pub fn in_this_order() -> &'static str {
    "All open builds are planned together, in this order: of two that want the same hours the upper one has them."
}

/// A key: a build goes before all others.
pub fn put_first(title: &str) -> String {
    format!("Plan {title} first")
}

/// What a setting is that says so.
pub fn build_order() -> &'static str {
    "planned first"
}

/// A key: nobody who is in the plan has free hours.
pub fn say_when_free() -> &'static str {
    "Say when you are free"
}

/// A key: nobody has said how long steps take.
pub fn say_how_long() -> &'static str {
    "Say how long they take"
}

/// A key: the plan has no date to hold.
pub fn a_date() -> &'static str {
    "A date that can\u{2019}t move"
}

/// A key.
pub fn start_a_build() -> &'static str {
    "Start a build"
}

/// A chance.
pub fn percent(hundredths: u32) -> String {
    format!("{hundredths} %")
}

/// While nothing has been worked out yet.
pub fn no_chance_yet() -> &'static str {
    "\u{2013}"
}

/// Beside the chance.
pub fn over_by(day: &str) -> String {
    format!("that it is over by {day}")
}

/// The same, of a film; `piece`: the day on which the piece is due beside it.
pub fn cut_out_by(day: &str, piece: Option<&str>) -> String {
    let said = format!("that the cut goes out by {day}");
    piece.map_or_else(|| said.clone(), |piece| format!("{said}, the piece done by {piece}"))
}

/// Beside a build without a date.
pub fn no_date() -> &'static str {
    "no date; four times in five over by then"
}

/// Under it: what is left of free time.
pub fn slack(days: &str, hours: &str, whose: &str) -> String {
    format!("slack {days}; {hours} of {} hours", super::common::whose(whose))
}

/// The same, past the date.
pub fn late(days: &str, hours: &str, whose: &str) -> String {
    format!("late by {days}; {hours} of {} hours", super::common::whose(whose))
}

/// Which of two dates that is of.
pub fn of_side(side: Option<Side>, said: &str) -> String {
    match side {
        Some(Side::Piece) => format!("the piece: {said}"),
        Some(Side::Film) => format!("the film: {said}"),
        Some(Side::Both) | None => said.to_owned(),
    }
}

/// Somebody's name at the head of a row; the maker's own, until they have one.
pub fn you_or(who: &str) -> String {
    if who == super::builds::me() { "You".to_owned() } else { who.to_owned() }
}

/// So many days.
pub fn days(many: u64) -> String {
    if many == 1 { "1 day".to_owned() } else { format!("{many} days") }
}

/// Under a build without slack: nothing could be placed.
pub fn no_end() -> &'static str {
    "no end in sight: not all of it can be placed"
}

/// At a date past the one that can't move.
pub fn late_day(day: &str) -> String {
    format!("late, {day}")
}

/// A date that is not to be seen from here.
pub fn never() -> &'static str {
    "not within two years"
}

/// While finishes are drawn.
pub fn being_worked_out() -> &'static str {
    "being worked out"
}

/// Lanes of the drawing.
pub fn lanes() -> [&'static str; 3] {
    ["piece", "dries", "film"]
}

/// Under the first day.
pub fn now() -> &'static str {
    "now"
}

/// At the date that can't move.
pub fn due(day: &str) -> String {
    format!("due {day}")
}

/// The same, of a film.
pub fn cut_out(day: &str) -> String {
    format!("cut out by {day}")
}

/// The drawing, read aloud.
pub fn drawing(build: &str, dates: &[(String, String)], fixed: Option<&str>) -> String {
    let mut said = format!("{build}: over");
    for (label, day) in dates {
        said.push_str(&format!(" {label} by {day},"));
    }
    match fixed {
        Some(fixed) => format!("{said} {fixed}"),
        None => said.trim_end_matches(',').to_owned(),
    }
}

/// Before the reasons.
pub fn held_up_by() -> &'static str {
    "Held up by"
}

/// A reason: a step that dries.
pub fn dries(step: &str, hours: &str) -> String {
    format!("{step}, {hours} dry")
}

/// A reason: nobody is free.
pub fn next_free(whose: &str, day: &str, short: bool) -> String {
    let whose = super::common::whose(whose);
    if short {
        format!("{whose} next window long enough, {day}")
    } else {
        format!("{whose} next free time, {day}")
    }
}

/// A reason: something is taken.
pub fn taken(what: &str, until: &str) -> String {
    format!("{what}, taken until {until}")
}

/// A reason: somebody is at another build.
pub fn elsewhere(who: &str, step: &str, until: &str) -> String {
    format!("{} at {step} until {until}", super::common::whom(who))
}

/// A reason: a date.
pub fn not_before(step: &str, day: &str) -> String {
    format!("{step}, not before {day}")
}

/// Nothing but the work.
pub fn work(step: &str, hours: &str) -> String {
    format!("the work itself: {step}, {hours}")
}

/// Between reasons.
pub fn then(reasons: &[String]) -> String {
    let mut said = reasons.join(", then ");
    said.push('.');
    said
}

/// Over the ways.
pub fn surer(shown: usize, all: usize) -> String {
    if shown < all { format!("Surer, best first; {shown} of {all}") } else { "Surer, best first".to_owned() }
}

/// The same, where nothing helps.
pub fn nothing_helps() -> &'static str {
    "Nothing that the plan knows makes it surer"
}

/// While ways are worked out.
pub fn looking_for_ways(done: u32) -> String {
    format!("Looking for what makes it surer, {done} %")
}

/// Stops that.
pub fn stop() -> &'static str {
    "Stop"
}

/// It was stopped.
pub fn stopped() -> &'static str {
    "Stopped; as far as it came"
}

/// A group under the drawing.
pub fn more_ways() -> &'static str {
    "More ways"
}

/// The key of a way.
pub fn try_it() -> &'static str {
    "Try"
}

/// A way: a step is left out.
pub fn drop(step: &str) -> String {
    format!("No {step}")
}

/// What falls away.
pub fn frees(hours: &str) -> String {
    format!("frees {hours}")
}

/// A way: somebody else does it.
pub fn other(person: &str, step: &str) -> String {
    format!("{}: {step}", super::common::whom(person))
}

/// A way: shots are left out.
pub fn leave_shots() -> &'static str {
    "Only the shots that must be"
}

/// A way: a shorter film.
pub fn shorter(minutes: u32) -> String {
    if minutes == 1 { "Film a minute shorter".to_owned() } else { format!("Film {minutes} minutes shorter") }
}

/// Under it.
pub fn off_the_edit() -> &'static str {
    "the edit by as much"
}

/// A way: a later date of a film.
pub fn out_later() -> &'static str {
    "Goes out a week later"
}

/// A way: one more window.
pub fn window(person: &str, day: &str) -> String {
    format!("{} also on {day}", super::common::whom(person))
}

/// Under it.
pub fn from_to(from: &str, to: &str) -> String {
    format!("{from} to {to}")
}

/// A way: a later date.
pub fn later(day: &str) -> String {
    format!("Due on {day} instead")
}

/// The strip of a tried way.
pub fn tried() -> &'static str {
    "try"
}

/// In it.
pub fn was(chance: &str) -> String {
    format!("was {chance}")
}

/// In it.
pub fn not_kept_yet() -> &'static str {
    "not kept yet"
}

/// Its key.
pub fn put_back() -> &'static str {
    "Put back"
}

/// The key that keeps it.
pub fn take_it() -> &'static str {
    "Take it"
}

/// A mark.
pub fn marked(way: &str) -> String {
    way.to_owned()
}

/// Of a mark.
pub fn kind() -> &'static str {
    "plan"
}

/// A group: every step with its time.
pub fn steps() -> &'static str {
    "When"
}

/// A row that leads to the list.
pub fn to_buy() -> &'static str {
    "To buy for it"
}

/// A row that leads to all steps.
pub fn all_steps() -> &'static str {
    "Steps"
}

/// At its end.
pub fn write_change() -> &'static str {
    "write, change, done"
}

/// Who, and when.
pub fn who_when(who: &str, when: &str) -> String {
    format!("{when}, {who}")
}

/// A piece of work of one day.
pub fn piece(day: &str, from: &str, to: &str) -> String {
    format!("{day} {from} to {to}")
}

/// More pieces than are named.
pub fn and_more(pieces: usize) -> String {
    if pieces == 1 { "and once more".to_owned() } else { format!("and {pieces} times more") }
}

/// A step that is struck out.
pub fn gone() -> &'static str {
    "struck out"
}

/// Under the chance: how it is known.
pub fn how_known(builds: u32, own: bool) -> String {
    match (own, builds) {
        (true, many) => format!("From your own estimates and {many} past builds, not a promise."),
        (false, _) => {
            "From your own estimates; how far whole builds run over is common practice so far. Not a promise."
                .to_owned()
        }
    }
}

/// Draws of one-go steps that no window holds.
pub fn cut_draws(times: u32, runs: u32) -> String {
    format!(
        "A step in one go was longer than any free window {times} times in {runs} runs, and was taken as long as that."
    )
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "when, and more ways"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "What would make it surer"
}

/// The chooser.
pub fn which_build() -> &'static str {
    "Which build?"
}
