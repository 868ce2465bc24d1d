//! Tools: what a run hour costs, what wear has taken, blades, and how long they last.

use benchslate_core::journal::kinds::ToolFrom;

/// How a tool was come by.
pub fn come_by(from: ToolFrom) -> &'static str {
    match from {
        ToolFrom::Bought => "our own",
        ToolFrom::Supplied => "given by a sponsor",
        ToolFrom::Lent => "lent",
    }
}

/// The list, and its heading in the shop.
pub fn title() -> &'static str {
    "Tools"
}

/// Beside the title of the list.
pub fn a_run_hour_note() -> &'static str {
    "a run hour"
}

/// What stands past the lower edge of the list.
pub fn more_tools() -> &'static str {
    "more tools"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Tool keys"
}

/// No tool yet.
pub fn none_yet() -> &'static str {
    "No tools yet. A name is enough; price and life make the rate."
}

/// Under the list.
pub fn what_wears() -> &'static str {
    "What wears by the hour and is used again. Discs and glue are stock; a blade is fitted to its tool."
}

/// A key.
pub fn add() -> &'static str {
    "Add a tool"
}

/// A row of the shop while there is none.
pub fn add_note() -> &'static str {
    "wear, upkeep and power of an hour"
}

/// Under the fields of a tool.
pub fn price_note() -> &'static str {
    "The price makes its wear. What was paid for it is in no sum of the year: that is an expense of the shop."
}

/// Over tools that are gone.
pub fn gone() -> &'static str {
    "Gone"
}

/// Under the names of tools in the shop.
pub fn worth_note() -> &'static str {
    "book value; what each has carried"
}

/// Names in a row: `Saw, planer, sander and 2 more`.
pub fn names(names: &[String]) -> String {
    let shown = names.get(..4).unwrap_or(names).join(", ");
    match names.len().saturating_sub(4) {
        0 => shown,
        more => format!("{shown} and {more} more"),
    }
}

/// Hours.
pub fn hours(figure: &str) -> String {
    format!("{figure} h")
}

/// How long it has run.
pub fn ran(hours: &str) -> String {
    format!("{hours} run")
}

/// Two facts in a row; the first may be missing.
pub fn and_then(first: Option<&str>, second: &str) -> String {
    first.map_or_else(|| second.to_owned(), |first| format!("{first}; {second}"))
}

/// A tool that isn't there.
pub fn no_tool() -> &'static str {
    "No such tool"
}

/// What stands past the lower edge of a tool.
pub fn sheet_below() -> &'static str {
    "its rate, what it has carried"
}

/// A dimension.
pub fn price(figure: &str) -> String {
    format!("price {figure}")
}

/// A dimension.
pub fn resale(figure: &str) -> String {
    format!("resale {figure}")
}

/// Beside the dashed end.
pub fn worn(figure: &str) -> String {
    format!("worn {figure}")
}

/// A dimension.
pub fn book_value(figure: &str) -> String {
    format!("book value {figure}")
}

/// The drawing, read aloud.
pub fn worth_name(price: &str, worn: &str, book: &str) -> String {
    format!("Price {price}, worn {worn}, book value {book}")
}

/// A row of the rate.
pub fn wear() -> &'static str {
    "Wear"
}

/// A row of the rate.
pub fn upkeep() -> &'static str {
    "Upkeep"
}

/// Under it.
pub fn no_blades_in_it() -> &'static str {
    "no blades in it"
}

/// A row of the rate.
pub fn power() -> &'static str {
    "Power"
}

/// In the place of a figure.
pub fn not_known() -> &'static str {
    "not known"
}

/// The working of wear.
pub fn wear_working(price: &str, resale: Option<&str>, life: &str) -> String {
    match resale {
        Some(resale) => format!("({price} \u{2212} {resale}) \u{f7} {life} h"),
        None => format!("{price} \u{f7} {life} h"),
    }
}

/// The working of wear after its life was thought anew.
pub fn left_since(hours: &str, day: &str) -> String {
    format!("what was left over {hours} h, from {day}")
}

/// Why a tool doesn't wear.
pub fn lent_no_wear() -> &'static str {
    "lent: no wear of ours"
}

/// Why a tool doesn't wear.
pub fn supplied_no_wear() -> &'static str {
    "given: it cost nothing"
}

/// The working of power.
pub fn power_working(kw: &str, load: &str, price: &str) -> String {
    format!("{kw} kW \u{d7} {load} \u{d7} {price}")
}

/// Why power is nothing here.
pub fn power_in_the_month() -> &'static str {
    "in the monthly costs"
}

/// Why power is nothing here.
pub fn draws_none() -> &'static str {
    "draws none"
}

/// The working of a blade.
pub fn blade_working(cost: &str, life: &str, day: &str) -> String {
    format!("{cost} \u{f7} {life} h, fitted {day}")
}

/// The total of the rate.
pub fn a_run_hour() -> &'static str {
    "A run hour"
}

/// Where it runs: `0.6 of mill`.
pub fn share_of(share: &str, stage: &str) -> String {
    if share == "1" { format!("all of {stage}") } else { format!("{share} of {stage}") }
}

/// Where it runs, all of it.
pub fn runs(at: &[String]) -> String {
    if at.is_empty() {
        return "Runs at no stage yet: correct it and tap the stages, or type its hours by hand.".to_owned();
    }
    format!("Runs {}; two people at it count once.", at.join(", "))
}

/// Where a camera runs.
pub fn runs_rolling() -> &'static str {
    "Runs while the camera rolls; borne by the film."
}

/// Over what it has carried.
pub fn carried() -> &'static str {
    "Carried"
}

/// Over its blades.
pub fn blades() -> &'static str {
    "Blades and bits, worn so far"
}

/// Under a blade.
pub fn blade_on(day: &str, left: &str) -> String {
    format!("on since {day}; {left} left in it")
}

/// Under a blade.
pub fn blade_off(day: &str, left: &str) -> String {
    format!("off {day}; {left} left in it, a loss of the shop")
}

/// Over hours that were typed.
pub fn read_off() -> &'static str {
    "Hours by hand"
}

/// Where such hours went.
pub fn at_for(stage: &str, bearer: &str) -> String {
    format!("{stage}, {bearer}")
}

/// A key.
pub fn hours_by_hand() -> &'static str {
    "Hours by hand"
}

/// A key.
pub fn new_blade() -> &'static str {
    "New blade"
}

/// A key.
pub fn blade_comes_off() -> &'static str {
    "Blade off"
}

/// Under it.
pub fn rest_is_lost() -> &'static str {
    "its rest is lost"
}

/// A key.
pub fn life_key() -> &'static str {
    "Life"
}

/// Under it.
pub fn life_note() -> &'static str {
    "from a day"
}

/// A key.
pub fn gone_key() -> &'static str {
    "Gone"
}

/// Under it.
pub fn gone_note() -> &'static str {
    "sold, broken"
}

/// A key.
pub fn back_label() -> &'static str {
    "Back"
}

/// Under it.
pub fn back_note() -> &'static str {
    "not gone"
}

/// A key.
pub fn correct() -> &'static str {
    "Correct"
}

/// Beside the title: since when it is gone.
pub fn gone_since(day: &str) -> String {
    format!("gone {day}")
}

/// A mark.
pub fn marked_off(left: &str) -> String {
    format!("off; {left} left, a loss of the shop")
}

/// A mark.
pub fn marked_gone() -> &'static str {
    "gone from today"
}

/// A mark.
pub fn marked_back() -> &'static str {
    "back again"
}

/// A mark.
pub fn marked_life() -> &'static str {
    "its life thought anew"
}

/// The head of the form.
pub fn life_title() -> &'static str {
    "Hours left in it"
}

/// A field.
pub fn hours_left() -> &'static str {
    "Hours left"
}

/// A field.
pub fn from_day() -> &'static str {
    "From"
}

/// What the form comes to.
pub fn wear_then() -> &'static str {
    "Wear a run hour then"
}

/// Under the form.
pub fn what_life_does() -> &'static str {
    "What is left of it goes over these hours from that day on. What it wore before stays."
}

/// A key.
pub fn keep_life() -> &'static str {
    "Keep"
}

/// Over changed views of its life, in the form.
pub const fn life_changed() -> &'static str {
    "Life thought anew"
}

/// Adds one.
pub const fn life_changes() -> &'static str {
    "Its life from a day on"
}

/// Over the stages, in the form.
pub fn runs_at() -> &'static str {
    "Runs at"
}

/// A field: the share of the time at a stage.
pub fn share_at(stage: &str) -> String {
    format!("Share of {stage}")
}

/// In it while it is empty.
pub fn all_the_time() -> &'static str {
    "all of it"
}
