//! Finds: is it worth taking home?

/// The sheet of a find; a key.
pub fn find() -> &'static str {
    "Find"
}

/// A key on the shelf.
pub fn worth_it() -> &'static str {
    "Worth it?"
}

/// Beside a find's name.
pub fn not_home() -> &'static str {
    "not home yet"
}

/// A mark, and beside a find's name.
pub fn taken_home() -> &'static str {
    "taken home"
}

/// A mark.
pub fn looked_at() -> &'static str {
    "looked at"
}

/// Read aloud.
pub fn keys() -> &'static str {
    "Find keys"
}

/// A key.
pub fn keep() -> &'static str {
    "Keep"
}

/// A key.
pub fn leave_it() -> &'static str {
    "Leave it"
}

/// The filled key.
pub fn take_it_home() -> &'static str {
    "Take it home"
}

/// Under the long-break line of the form.
pub fn more_fields() -> &'static str {
    "how it may go, and from where"
}

/// Under the long-break line of a kept one.
pub fn more() -> &'static str {
    "all three ways"
}

/// A field.
pub fn what() -> &'static str {
    "what it is"
}

/// A field.
pub fn asked() -> &'static str {
    "asked"
}

/// A field.
pub fn species() -> &'static str {
    "species"
}

/// A field.
pub fn or_in_all() -> &'static str {
    "or how much in all"
}

/// A field.
pub fn usable() -> &'static str {
    "usable"
}

/// A field: minutes.
pub fn minutes(boards: bool) -> &'static str {
    if boards { "to reclaim a board" } else { "to reclaim all of it" }
}

/// The set of three; also a heading.
pub fn if_it_goes() -> &'static str {
    "if it goes"
}

/// The three ways.
pub fn cases() -> [&'static str; 3] {
    ["badly", "usually", "well"]
}

/// Where the shares come from.
pub fn usable_offered(shares: &[String; 3], lots: Option<usize>) -> String {
    let shares = shares.join(" / ");
    match lots {
        Some(lots) => format!("Usable, yours from there: {shares} %, of {lots} lots."),
        None => format!("Usable {shares} %: common practice, you have no three lots from there."),
    }
}

/// Where the minutes come from.
pub fn minutes_offered(minutes: &[String; 3], lots: Option<usize>) -> String {
    let minutes = minutes.join(" / ");
    match lots {
        Some(lots) => format!("Time, yours from there: {minutes} min, of {lots} lots."),
        None => format!("Time {minutes} min: common practice, you have no three lots with hours from there."),
    }
}

/// Beside "Worth it?".
pub fn usually_pays(figure: &str) -> String {
    format!("usually an hour would pay {figure}")
}

/// Over the boards.
pub fn caption(rate: Option<&str>) -> String {
    match rate {
        Some(rate) => format!("cash, hours at {rate}, saved against new"),
        None => "cash, saved against new; own time free".to_owned(),
    }
}

/// One way read aloud: `badly -32.09`.
pub fn told(label: &str, outcome: &str) -> String {
    format!("{label} {outcome}")
}

/// What it lacks.
pub fn still_missing(what: &[&str]) -> String {
    format!("Still missing: {}.", what.join("; "))
}

/// Missing.
pub fn no_quantity() -> &'static str {
    "how much there is"
}

/// Missing.
pub fn not_asked() -> &'static str {
    "what is asked, 0 if nothing"
}

/// Missing.
pub fn no_km_rate() -> &'static str {
    "what a kilometre costs, in the shop\u{2019}s choices"
}

/// Missing.
pub fn no_new_price() -> &'static str {
    "what the same thing costs new"
}

/// Missing.
pub fn no_other_measure() -> &'static str {
    "how much it is in the measure in which new stock is sold"
}

/// Missing.
pub fn no_rate() -> &'static str {
    "what an hour of yours costs"
}

/// Neither counted nor measured as timber is.
pub fn how_long() -> &'static str {
    "Say how long reclaiming it takes, or count the boards."
}

/// The figure.
pub fn would_save() -> &'static str {
    "Would save against new"
}

/// The figure.
pub fn hour_would_pay() -> &'static str {
    "An hour of it would pay"
}

/// Under the figure: `if it goes badly, at 28.00 an hour`.
pub fn under(case: usize, rate: Option<&str>) -> String {
    let goes = match case {
        0 => "if it goes badly",
        1 => "as it usually goes",
        _ => "if it goes well",
    };
    rate.map_or_else(|| goes.to_owned(), |rate| format!("{goes}, at {rate} an hour"))
}

/// On a key.
pub fn pays_an_hour() -> &'static str {
    "pays an h"
}

/// On the board.
pub fn usable_word() -> &'static str {
    "usable"
}

/// The sum in one line.
pub fn working([instead, cash, rate, saved]: &[String; 4], hours: &str, an_hour: Option<&str>) -> String {
    let sum = format!("{instead} \u{2212} {cash} \u{2212} {hours} \u{d7} {rate} = {saved}.");
    match an_hour {
        Some(pay) => format!("{sum} An hour of it would pay {pay}."),
        None => sum,
    }
}

/// What it is compared with, and what is left out.
pub fn against(day: &str) -> String {
    format!(
        "Against the price you noted on {day}, in the same measure, for what would be usable; overhead left out."
    )
}

/// Leads to the lot.
pub fn the_lot() -> &'static str {
    "The lot it became"
}

/// Beside it.
pub fn expected_there() -> &'static str {
    "expected against actual"
}

/// A heading of the shelf.
pub fn not_home_yet() -> &'static str {
    "Not home yet"
}

/// A heading on a lot's sheet.
pub fn as_expected() -> &'static str {
    "Expected when it was looked at, and so far"
}

/// Rows under it.
pub fn rows() -> [&'static str; 4] {
    ["Usable", "Time to reclaim", "Cash", "An hour pays"]
}

/// Badly, usually, well: `expected 53 / 66 / 75`.
pub fn expected(all: &str) -> String {
    format!("expected {all}")
}
