//! The money of a build: what came in, what is still to come, what became of the pieces, closing.

use benchslate_core::journal::kinds::State;

/// The head.
pub fn money_of(title: &str) -> String {
    format!("Money, {title}")
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "what arrived, the plan, the pieces"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Money keys"
}

/// Nothing is written down.
pub fn nothing_yet() -> &'static str {
    "Nothing came in yet, and nothing is expected. A deposit, a sale, a sponsor\u{2019}s fee goes here."
}

/// The two figures at the head, read aloud.
pub fn leading() -> &'static str {
    "An hour and a piece"
}

/// A figure.
pub fn an_hour_earned() -> &'static str {
    "An hour earned"
}

/// A figure.
pub fn a_good_item() -> &'static str {
    "One good piece"
}

/// Over what arrived.
pub fn came_in() -> &'static str {
    "Came in"
}

/// Its sum.
pub fn net() -> &'static str {
    "Net"
}

/// How a line comes to its net: `565.00 − tax 65.00 − fee 16.95`, and whose part.
pub fn received(amount: &str, tax: Option<&str>, fee: Option<&str>, share: Option<(u64, u64)>) -> String {
    let mut text = amount.to_owned();
    if let Some(tax) = tax {
        text.push_str(&format!(" \u{2212} tax {tax}"));
    }
    if let Some(fee) = fee {
        text.push_str(&format!(" \u{2212} fee {fee}"));
    }
    if let Some((parts, whole)) = share {
        text.push_str(&format!("; {parts} of {whole} parts"));
    }
    text
}

/// A row under the net.
pub fn tax_in_it() -> &'static str {
    "Tax that came with it"
}

/// Under it.
pub fn owed() -> &'static str {
    "owed, no income"
}

/// Over lines that are still expected.
pub fn still_expected() -> &'static str {
    "Still expected"
}

/// Their sum.
pub fn in_all() -> &'static str {
    "In all"
}

/// By when.
pub fn due(day: &str) -> String {
    format!("by {day}")
}

/// What is in already.
pub fn in_so_far(net: &str, expected: &str) -> String {
    format!("{net} of {expected} in")
}

/// A key.
pub fn not_now() -> &'static str {
    "Not now"
}

/// A key.
pub fn other_amount() -> &'static str {
    "Other"
}

/// Under it.
pub fn tax_and_fee() -> &'static str {
    "tax, fee, part"
}

/// The filled key.
pub fn received_now(rest: &str) -> String {
    format!("Received {rest}")
}

/// Under it.
pub fn today() -> &'static str {
    "today"
}

/// A mark.
pub fn marked_received() -> &'static str {
    "received"
}

/// A group: outlook, steps, what became of the plan.
pub fn the_plan() -> &'static str {
    "The plan"
}

/// A group: what was made, and what to ask for it.
pub fn pieces_and_price() -> &'static str {
    "Pieces and price"
}

/// On the row of what came in: `3 lines`.
pub fn so_many_lines(count: usize) -> String {
    format!("{count} lines, net")
}

/// On the row of the pieces: `10 good, 2 still here`.
pub fn good_and_left(good: u32, left: u32) -> String {
    if good == 0 { "none finished yet".to_owned() } else { format!("{good} good, {left} still here") }
}

/// A hint.
pub fn above_fetch() -> &'static str {
    "Above what it will fetch"
}

/// Under it.
pub fn above_fetch_note() -> &'static str {
    "money used up and to come, less what comes in"
}

/// Over what was made and what left.
pub fn pieces() -> &'static str {
    "Pieces"
}

/// Under what was made.
pub fn made_on(day: &str) -> String {
    format!("made {day}")
}

/// Under what left.
pub fn left_on(day: &str) -> String {
    format!("left {day}")
}

/// How many are left.
pub fn still_here() -> &'static str {
    "Still here"
}

/// A row.
pub fn profit_on_sold() -> &'static str {
    "Profit on sold"
}

/// Its working.
pub fn net_less_cost(net: &str, count: u32) -> String {
    format!("{net} net \u{2212} cost of {count}")
}

/// A row.
pub fn given_at_cost() -> &'static str {
    "Given, at cost"
}

/// A row.
pub fn kept_at_cost() -> &'static str {
    "Kept, at cost"
}

/// A row.
pub fn left_at_cost() -> &'static str {
    "Left, at cost"
}

/// How many.
pub fn so_many(count: u32) -> String {
    format!("{count} of them")
}

/// A row.
pub fn lost_to_spoilage() -> &'static str {
    "Lost to spoilage"
}

/// Under it.
pub fn beyond_usual() -> &'static str {
    "beyond what usually spoils"
}

/// Over one-off work.
pub fn one_off() -> &'static str {
    "Jigs, templates, design"
}

/// A row.
pub fn one_off_pool() -> &'static str {
    "In all"
}

/// Its working.
pub fn over_run(run: u32, each: &str) -> String {
    format!("over {run}, {each} each")
}

/// A row.
pub fn borne_here() -> &'static str {
    "Borne here"
}

/// A row.
pub fn still_to_be_borne() -> &'static str {
    "Still to be borne"
}

/// The same once the run has ended: `Written off, run ended Wed, Apr 1`.
pub fn written_off(day: &str) -> String {
    format!("Written off, run ended {day}")
}

/// A tap on what is still to be borne.
pub fn no_more_made() -> &'static str {
    "No more of it will be made"
}

/// What that does.
pub fn writes_it_off() -> &'static str {
    "writes it off"
}

/// A mark: the run has ended.
pub fn marked_run_ended() -> &'static str {
    "no more will be made, the rest of its one-off work is written off"
}

/// A group: what the runs of a design have taught.
pub fn learned() -> &'static str {
    "Learned from run to run"
}

/// A row: each time the number of pieces doubles, the next one takes so much of the time.
pub fn each_doubling() -> &'static str {
    "At each doubling"
}

/// Its figure: `87.8 % of the time`.
pub fn of_the_time(per_cent: &str) -> String {
    format!("{per_cent} % of the time")
}

/// A share in thousandths, in hundredths with one digit: 878 is 87.8.
pub fn tenths(thousandths: u32) -> String {
    let digits = format!("{thousandths:02}");
    let (whole, tenth) = digits.split_at_checked(digits.len().saturating_sub(1)).unwrap_or(("0", "0"));
    format!("{whole}.{tenth}")
}

/// One batch: `24 in 35 h 30`.
pub fn batch_took(pieces: u32, hours: &str) -> String {
    format!("{pieces} in {hours}")
}

/// Batches, and the stages that are compared.
pub fn batches(batches: &[String], stages: &[String]) -> String {
    format!("{}, at {}", batches.join(", "), stages.join(", "))
}

/// A row: the next so many.
pub fn the_next(pieces: u32) -> String {
    if pieces == 1 { "The next one".to_owned() } else { format!("The next {pieces}") }
}

/// Its range.
pub fn between(low: &str, high: &str) -> String {
    format!("1 in 10 under {low}, 1 in 10 over {high}")
}

/// It has none.
pub fn of_two_runs() -> &'static str {
    "of two runs, so nothing is known of its range"
}

/// More left than were made: beside how many are left. Nothing where all is well.
pub fn beyond_made(more: u32) -> String {
    if more == 0 { String::new() } else { format!("{more} more left than were made") }
}

/// A row: what will be left once all that is planned is done.
pub fn outlook() -> &'static str {
    "Outlook"
}

/// Under it.
pub fn outlook_note() -> &'static str {
    "in and expected, less cost so far and to come"
}

/// In its place.
pub fn no_steps() -> &'static str {
    "no steps yet"
}

/// A row: what is still to be done.
pub fn steps() -> &'static str {
    "Steps still to do"
}

/// Where a build stands, beside its title.
pub fn stands(state: State, closed: Option<&str>) -> String {
    match (state, closed) {
        (State::Closed, Some(day)) => format!("closed {day}"),
        (State::Closed, None) => "closed".to_owned(),
        (State::Paused, _) => "paused".to_owned(),
        (State::Begun | State::Reopened, _) => "under way".to_owned(),
    }
}

/// What it cost when it was closed.
pub fn closed_at() -> &'static str {
    "Closed at"
}

/// What it would be today.
pub fn by_todays_knowledge(figure: &str) -> String {
    format!("by today\u{2019}s knowledge {figure}")
}

/// Over what closing does.
pub fn closing() -> &'static str {
    "Close this build?"
}

/// What it freezes: so many draws, at what they cost.
pub fn draws(count: usize, figure: &str) -> String {
    match count {
        0 => "it drew no stock".to_owned(),
        1 => format!("its one draw stays at {figure}"),
        _ => format!("its {count} draws stay at {figure}"),
    }
}

/// What it freezes.
pub fn closing_freezes(draws: &str) -> String {
    format!("What it drew from stock is frozen: {draws}. What a lot costs later is borne by the rest of it.")
}

/// What comes after.
pub fn closing_after() -> &'static str {
    "Hours, stock, money or pieces put on it later are asked about: reopen it, or the shop bears what it can."
}

/// A key.
pub fn close() -> &'static str {
    "Close"
}

/// The filled key.
pub fn close_it() -> &'static str {
    "Close it"
}

/// A key.
pub fn reopen() -> &'static str {
    "Reopen"
}

/// A key.
pub fn pause() -> &'static str {
    "Pause"
}

/// A key.
pub fn go_on() -> &'static str {
    "Go on"
}

/// A key.
pub fn made() -> &'static str {
    "Made"
}

/// Under it.
pub fn good_spoiled() -> &'static str {
    "good ones"
}

/// A key.
pub fn left_us() -> &'static str {
    "Left"
}

/// Under it.
pub fn sold_given() -> &'static str {
    "sold, given"
}

/// The filled key.
pub fn money_in() -> &'static str {
    "Money in"
}

/// Under it.
pub fn expected_or_arrived() -> &'static str {
    "expected, or arrived"
}

/// What a mark calls it.
pub fn build() -> &'static str {
    "build"
}

/// A mark.
pub fn marked_closed(figure: &str, clock_stopped: bool) -> String {
    let clock = if clock_stopped { ", its clock stopped" } else { "" };
    format!("closed at {figure}{clock}")
}

/// A mark.
pub fn marked_reopened() -> &'static str {
    "open again"
}

/// A mark.
pub fn marked_stands(paused: bool) -> &'static str {
    if paused { "paused" } else { "goes on" }
}
