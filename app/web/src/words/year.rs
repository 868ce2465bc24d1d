//! The money of a year, and builds side by side.

use benchslate_core::costing::Gap;

/// The head.
pub fn title(year: i32) -> String {
    format!("The year {year}")
}

/// Beside it.
pub fn in_less_out() -> &'static str {
    "received less paid"
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "months, tax, builds"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Keys"
}

/// The answer.
pub fn left() -> &'static str {
    "Left of it"
}

/// An answer.
pub fn hour_left() -> &'static str {
    "An own hour left"
}

/// Beside it.
pub fn of_hours(hours: &str, in_kind: bool) -> String {
    if in_kind { format!("goods in kind with it, over {hours}") } else { format!("over {hours}") }
}

/// In its place.
pub fn no_hours() -> &'static str {
    "no own hours"
}

/// An answer.
pub fn in_kind() -> &'static str {
    "Goods in kind"
}

/// A group.
pub fn by_kind() -> &'static str {
    "By kind"
}

/// A group.
pub fn by_month() -> &'static str {
    "Month by month"
}

/// A group.
pub fn beside_it() -> &'static str {
    "Beside it"
}

/// A group.
pub fn by_build() -> &'static str {
    "Builds, what an hour earned"
}

/// A kind.
pub fn materials() -> &'static str {
    "timber, fittings, consumables"
}

/// A kind.
pub fn direct() -> &'static str {
    "paid directly, tolls"
}

/// A kind.
pub fn paid_people() -> &'static str {
    "paid people"
}

/// A kind.
pub fn blades() -> &'static str {
    "blades and bits"
}

/// A kind.
pub fn every_month() -> &'static str {
    "every month"
}

/// A row.
pub fn tax_in() -> &'static str {
    "Tax that came in"
}

/// Under it.
pub fn owed() -> &'static str {
    "owed, no income"
}

/// A row.
pub fn tax_back() -> &'static str {
    "Tax to be got back"
}

/// Under it.
pub fn in_no_cost() -> &'static str {
    "in no cost above"
}

/// A row.
pub fn vehicle() -> &'static str {
    "Kilometres at their rate"
}

/// A row.
pub fn wear() -> &'static str {
    "Wear of tools"
}

/// Under both.
pub fn no_money() -> &'static str {
    "no money was paid for it"
}

/// A row.
pub fn not_borne() -> &'static str {
    "Shop costs not borne"
}

/// Under it.
pub fn not_borne_why() -> &'static str {
    "months of fewer hours than usual"
}

/// A row.
pub fn lost() -> &'static str {
    "Lost from stock"
}

/// Under it.
pub fn lost_why() -> &'static str {
    "in this year: counted, thrown out, given"
}

/// Under a build.
pub fn true_cost(figure: &str) -> String {
    format!("true cost {figure}")
}

/// Beside a build.
pub fn an_hour(figure: &str) -> String {
    format!("{figure} an hour")
}

/// In its place: what it lacks.
pub fn no_hour(why: &Gap) -> &'static str {
    if let Gap::NoOwnHours { .. } = why { no_hours() } else { "nothing came in" }
}

/// Under all of it: what is bought as a tool stands in wear.
pub fn tools_apart() -> &'static str {
    "What a tool cost is not in here: its price goes into wear. An expense of the shop puts what was paid into the year."
}

/// Under all of it.
pub fn not_tax_advice() -> &'static str {
    "Own unpaid time is not in these sums; other sheets count it, your books do not. Goods in kind may count as income at their value. Not tax advice."
}

/// A row of the shop.
pub fn way_here() -> &'static str {
    "The year"
}

/// Under it.
pub fn way_here_note() -> &'static str {
    "in and out by month and kind"
}

/// The head of the other sheet.
pub fn side_by_side() -> &'static str {
    "Side by side"
}

/// A key of the list of builds.
pub fn two_compared() -> &'static str {
    "two builds compared"
}

/// What stands past the lower edge.
pub fn more_figures() -> &'static str {
    "more figures"
}

/// A field, and the column under it.
pub fn build(place: usize) -> &'static str {
    if place == 0 { "Left" } else { "Right" }
}

/// No figure.
pub fn none() -> &'static str {
    "\u{2013}"
}

/// Fewer than two.
pub fn two_builds_needed() -> &'static str {
    "Two builds stand here once there are two."
}

/// A row.
pub fn row_true_cost() -> &'static str {
    "True cost"
}

/// A row.
pub fn row_used_up() -> &'static str {
    "Used up"
}

/// A row.
pub fn row_item() -> &'static str {
    "One good piece"
}

/// A row.
pub fn row_hours() -> &'static str {
    "Hours"
}

/// A row.
pub fn row_timber() -> &'static str {
    "In the timber"
}

/// A row.
pub fn row_net() -> &'static str {
    "Came in"
}

/// A row.
pub fn row_hour() -> &'static str {
    "An hour earned"
}

/// A row.
pub fn row_saved() -> &'static str {
    "Salvage saved"
}

/// A row.
pub fn row_film() -> &'static str {
    "Film, per hour of making"
}

/// A row.
pub fn row_edit() -> &'static str {
    "Edit, per finished minute"
}
