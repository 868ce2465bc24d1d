//! The shop: people and rates, what is set once, where the journal lies.

/// The head while the shop has no name.
pub fn the_shop() -> &'static str {
    "The shop"
}

/// Beside the head: `CAD, Toronto`.
pub fn counted_where(currency: Option<&str>, zone: &str) -> String {
    let town = zone.rsplit('/').next().unwrap_or(zone).replace('_', " ");
    let mut text = String::new();
    if let Some(currency) = currency {
        text.push_str(currency);
        text.push_str(", ");
    }
    text.push_str(&town);
    text
}

/// Over the people.
pub fn people() -> &'static str {
    "People, an hour"
}

/// A person without a rate.
pub fn no_rate_yet() -> &'static str {
    "no rate yet"
}

/// Since when a rate holds, and what it was: `since Wed 1 Jul; 26.00 before`.
pub fn since(day: &str, before: Option<&str>) -> String {
    let mut text = String::from("since ");
    text.push_str(day);
    if let Some(before) = before {
        text.push_str("; ");
        text.push_str(before);
        text.push_str(" before");
    }
    text
}

/// Paid wages.
pub fn paid() -> &'static str {
    "paid"
}

/// Not paid wages.
pub fn unpaid() -> &'static str {
    "not paid"
}

/// Joins what stands under a row.
pub fn and_also(first: &str, second: &str) -> String {
    let mut text = String::from(first);
    text.push_str("; ");
    text.push_str(second);
    text
}

/// One more person.
pub fn add_a_person() -> &'static str {
    "Add a person"
}

/// Beside it.
pub fn partner_or_helper() -> &'static str {
    "a partner, a helper"
}

/// Over what is set once.
pub fn set_once() -> &'static str {
    "Set once"
}

/// A rate.
pub fn vehicle() -> &'static str {
    "Vehicle, a km"
}

/// Under it.
pub fn fuel_once() -> &'static str {
    "What a kilometre costs has the fuel in it. Who keeps fuel by its receipts types 0 there: one or the other, never both."
}

/// A share.
pub fn tax() -> &'static str {
    "Sales tax"
}

/// What the shop goes by.
pub fn counted_in() -> &'static str {
    "Currency, units, week"
}

/// Days are cut there.
pub fn zone() -> &'static str {
    "Time zone"
}

/// Nothing chosen.
pub fn not_set() -> &'static str {
    "not set"
}

/// Hundredths: `13 %`.
pub fn percent(figure: &str) -> String {
    let mut text = String::from(figure);
    text.push_str(" %");
    text
}

/// `CAD, inches, from Sunday`.
pub fn goes_by(currency: &str, units: &str, day: &str) -> String {
    let mut text = String::from(currency);
    for word in [units, day] {
        text.push_str(", ");
        text.push_str(word);
    }
    text
}

/// How timber is measured.
pub fn units(inches: bool) -> &'static str {
    if inches { "inches" } else { "metric" }
}

/// Over the choice of light and dark.
pub fn look() -> &'static str {
    "Look of this phone"
}

/// Light, dark, or as the phone.
pub fn looks() -> [&'static str; 3] {
    ["by day", "by night", "as the phone"]
}

/// Over the choice of hands.
pub fn hand() -> &'static str {
    "Hand that holds it"
}

/// Right, left.
pub fn hands() -> [&'static str; 2] {
    ["right hand", "left hand"]
}

/// Over what is kept here.
pub fn kept_here() -> &'static str {
    "Kept here"
}

/// How much.
pub fn journal() -> &'static str {
    "Journal"
}

/// `3 lines`.
pub fn lines(tongue: &super::Tongue, count: usize) -> String {
    let mut text = tongue.number(&count.to_string());
    text.push_str(if count == 1 { " line" } else { " lines" });
    text
}

/// Room used: `0.4 MB`.
pub fn room(tongue: &super::Tongue, bytes: f64) -> String {
    let tenths = (bytes / 100_000.0).ceil().max(1.0);
    let mut text = tongue.number(&decimal(tenths));
    text.push_str(" MB");
    text
}

fn decimal(tenths: f64) -> String {
    let tenths = tenths as u64;
    if tenths >= 100 {
        (tenths / 10).to_string()
    } else {
        [(tenths / 10).to_string(), (tenths % 10).to_string()].join(".")
    }
}

/// The browser's promise.
pub fn promise() -> &'static str {
    "The browser"
}

/// It keeps it.
pub fn promised() -> &'static str {
    "never clears it by itself"
}

/// It may not.
pub fn not_promised() -> &'static str {
    "may clear it when room is short"
}

/// Asks for the promise.
pub fn ask_it() -> &'static str {
    "Ask it to keep everything"
}

/// The promise was refused.
pub fn refused() -> &'static str {
    "It will not say yes yet: put Benchslate on the home screen, or use it more, and ask again."
}

/// Lines of one id and other bytes.
pub fn put_aside() -> &'static str {
    "Put aside"
}

/// `2 lines that clashed with what was here`.
pub fn clashed(count: u64) -> String {
    let mut text = count.to_string();
    text.push_str(if count == 1 { " line that clashed" } else { " lines that clashed" });
    text.push_str(" with what was here");
    text
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "power, both sides, look, what is kept here"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Shop keys"
}

/// The head of a new person.
pub fn new_person() -> &'static str {
    "New person"
}

/// A field.
pub fn name() -> &'static str {
    "Name"
}

/// The choice between them, read aloud.
pub fn wages() -> &'static str {
    "Wages"
}

/// Under the choice.
pub fn own_time() -> &'static str {
    "own time"
}

/// Under the choice.
pub fn money_out() -> &'static str {
    "money out"
}

/// A field.
pub fn rate() -> &'static str {
    "An hour"
}

/// A field: the first day in force.
pub fn from_a_day() -> &'static str {
    "From day"
}

/// While the field is empty: since ever.
pub fn the_beginning() -> &'static str {
    "the beginning"
}

/// While the field is empty: today.
pub fn today() -> &'static str {
    "today"
}

/// Over the rates.
pub fn rates() -> &'static str {
    "Rates"
}

/// A row of them: `from Wed 1 Jul`.
pub fn from(day: &str) -> String {
    let mut text = String::from("from ");
    text.push_str(day);
    text
}

/// Under a rate.
pub fn tap_to_take_off() -> &'static str {
    "tap to take it off the list"
}

/// What a rate does to hours that are logged already.
pub fn rates_reach_back() -> &'static str {
    "Hours follow the rate of their day. A rate from an earlier day changes what those hours cost."
}

/// Keeps a form.
pub fn keep() -> &'static str {
    "Keep"
}

/// Why a name can't be kept.
pub fn bad_name(name: &str) -> Option<&'static str> {
    if name.is_empty() {
        return Some("No name yet: as you call them at the bench.");
    }
    (name.chars().count() > 30).then_some("Longer than a key is wide: 30 letters fit. Kept as typed.")
}

/// Nothing of a form differs from what is kept.
pub fn nothing_typed() -> &'static str {
    "Nothing new typed yet."
}

/// A mark of somebody: `Wren, 28.00 an hour`.
pub fn an_hour(name: &str, rate: Option<&str>) -> String {
    let mut text = String::from(name);
    if let Some(rate) = rate {
        text.push_str(", ");
        text.push_str(rate);
        text.push_str(" an hour");
    }
    text
}

/// What a mark calls them.
pub fn person() -> &'static str {
    "person"
}

/// A mark: a rate left the list.
pub fn rate_off(name: &str, rate: &str) -> String {
    let mut text = String::from(name);
    text.push_str(", ");
    text.push_str(rate);
    text.push_str(" off the list");
    text
}

/// The head of the choices.
pub fn choices() -> &'static str {
    "Set once"
}

/// Beside it.
pub fn for_the_shop() -> &'static str {
    "for the whole shop"
}

/// A field.
pub fn shop_name() -> &'static str {
    "Name of the shop"
}

/// A field, and what a mark calls it.
pub fn currency() -> &'static str {
    "Currency"
}

/// The field that finds one.
pub fn find_currency() -> &'static str {
    "Find another: code or name"
}

/// Beside the currency while nobody has chosen.
pub fn guessed() -> &'static str {
    "going by where this phone is"
}

/// Beside a guess: takes it.
pub fn take_the_guess() -> &'static str {
    "tap to take it"
}

/// No currency is known under what was typed.
pub fn no_such_currency() -> &'static str {
    "No currency of that code or name is in use."
}

/// Amounts are written: the currency stays.
pub fn currency_stays() -> &'static str {
    "Amounts are written in it, so it stays: another one would rename them all, and nothing here converts. What was paid in another currency is typed beside its amount, as the statement shows it."
}

/// A row.
pub fn wrong_from_the_first() -> &'static str {
    "Was it wrong from the first day?"
}

/// Beside it.
pub fn strike_its_line() -> &'static str {
    "strike out its line, then choose"
}

/// A row.
pub fn shop_changes_over() -> &'static str {
    "Does the shop change over?"
}

/// Beside it.
pub fn backup_then_anew() -> &'static str {
    "keep a backup, start anew"
}

/// Amounts stay as they are.
pub fn not_converted() -> &'static str {
    "Amounts that are written stay as they are: nothing is converted."
}

/// A set, and what a mark calls it.
pub fn units_set() -> &'static str {
    "Units"
}

/// A set, and what a mark calls it.
pub fn smallest_fraction() -> &'static str {
    "Smallest fraction"
}

/// `1/16 in`.
pub fn a_part_of_an_inch(under: u32) -> String {
    format!("1/{under} in")
}

/// A set, and what a mark calls it.
pub fn week_begins() -> &'static str {
    "The week begins"
}

/// Days by their number, 1 Monday to 7 Sunday.
pub fn weekday(number: u8) -> &'static str {
    match number {
        1 => "Monday",
        2 => "Tuesday",
        3 => "Wednesday",
        4 => "Thursday",
        5 => "Friday",
        6 => "Saturday",
        _ => "Sunday",
    }
}

/// `from Sunday`.
pub fn from_weekday(number: u8) -> String {
    from(weekday(number))
}

/// A zone that the browser doesn't know.
pub fn no_such_zone() -> &'static str {
    "This browser knows no such zone. Type it as America/Toronto or Europe/Dublin. Kept as typed."
}

/// What a zone does.
pub fn days_are_cut() -> &'static str {
    "Days are cut at midnight there, whatever the phone's clock says."
}

/// A mark: `Vehicle, a km: 0.55`.
pub fn set_to(what: &str, value: &str) -> String {
    let mut text = String::from(what);
    text.push_str(": ");
    text.push_str(value);
    text
}

/// A mark of several: the first, and how many more.
pub fn set_and_more(first: &str, more: usize) -> String {
    let mut text = String::from(first);
    if more > 0 {
        text.push_str(" and ");
        text.push_str(&more.to_string());
        text.push_str(" more");
    }
    text
}

/// What stands past the lower edge of a person.
pub fn rates_below() -> &'static str {
    "wages, rates"
}

/// What stands past the lower edge of the choices.
pub fn choices_below() -> &'static str {
    "week, name, rates, power, both sides"
}

/// What a mark calls a choice.
pub fn set() -> &'static str {
    "set"
}

/// An address of somebody who is not there.
pub fn nobody() -> &'static str {
    "No such person"
}

/// Under it.
pub fn nobody_why() -> &'static str {
    "Struck out, or never on this device. The shop lists who works here."
}

/// Hours of a month, in a mark.
pub fn hours(figure: &str) -> String {
    let mut text = String::from(figure);
    text.push_str(" h");
    text
}
