//! What things cost: names of figures, and the sheets around them; how their lines were worked out in `workings`.

mod to_come;
mod workings;

pub use to_come::*;
pub use workings::*;

use benchslate_core::{
    costing::{CostKind, OneSide},
    measure::letters,
};

/// A kind of cost.
pub fn kind(kind: CostKind) -> &'static str {
    match kind {
        CostKind::Salvaged => "Salvaged",
        CostKind::Bought => "Bought",
        CostKind::Offcut => "Offcut",
        CostKind::Consumables => "Consumables",
        CostKind::Direct => "Direct",
        CostKind::Supplied => "Supplied",
        CostKind::Labour => "Labour",
        CostKind::Tools => "Tools",
        CostKind::Overhead => "Overhead",
        CostKind::OneOff => "One-off share",
    }
}

/// What of a kind is no money that was paid.
pub fn rest_of(kind: CostKind) -> &'static str {
    match kind {
        CostKind::Salvaged => "Rest of the salvaged",
        CostKind::Bought => "Rest of the bought",
        CostKind::Offcut => "Rest of the offcuts",
        CostKind::Consumables => "Rest of the consumables",
        CostKind::Direct => "Drives",
        CostKind::Supplied => "Supplied",
        CostKind::Labour => "Own labour",
        CostKind::Tools => "Tools",
        CostKind::Overhead => "Overhead",
        CostKind::OneOff => "One-off share",
    }
}

/// The figure a build's sheet leads with.
pub fn true_cost() -> &'static str {
    "True cost"
}

/// Beside the title: the build is not closed.
pub fn so_far() -> &'static str {
    "so far"
}

/// What is in the true cost beside money: `hours, gifts in it`.
pub fn in_it(what: &[&str]) -> String {
    if what.is_empty() { "money paid".to_owned() } else { format!("{} in it", what.join(", ")) }
}

/// Own hours.
pub fn hours() -> &'static str {
    "hours"
}

/// Kilometres at the shop's rate.
pub fn drives() -> &'static str {
    "drives"
}

/// Supplied value.
pub fn gifts() -> &'static str {
    "gifts"
}

/// After what is in it.
pub fn not_all(lacking: usize) -> String {
    if lacking == 1 { "1 thing missing".to_owned() } else { format!("{lacking} things missing") }
}

/// The leading figures, read aloud.
pub fn leading_name() -> &'static str {
    "What it comes to"
}

/// The second of the leading three.
pub fn hour_earned() -> &'static str {
    "An hour earned"
}

/// Its condition.
pub fn of_hours(hours: &str, came: bool) -> String {
    if came { format!("on what came in, over {hours} own") } else { format!("over {hours} own") }
}

/// The third of the leading three.
pub fn salvage_saved() -> &'static str {
    "Salvage saved"
}

/// Its condition.
pub fn at_your_rate() -> &'static str {
    "at your rate"
}

/// Beside the title.
pub fn closed(day: &str) -> String {
    format!("closed {day}")
}

/// Beside the title.
pub fn paused(day: &str) -> String {
    format!("laid aside {day}")
}

/// To what came in, the items made, and closing.
pub fn the_money() -> &'static str {
    "What came in, items, closing"
}

/// Wear and power.
pub fn tools() -> &'static str {
    "tools"
}

/// Overhead.
pub fn the_shop() -> &'static str {
    "shop"
}

/// Under what one cost.
pub fn of_worked(good: u32, worked: u32) -> String {
    if good == worked { format!("{good} made") } else { format!("{good} good of {worked} worked") }
}

/// Nothing salvaged was drawn.
pub fn nothing_salvaged() -> &'static str {
    "no salvage drawn"
}

/// The row to the bridge.
pub fn spent_and_used(spent: &str, used: &str) -> String {
    format!("Spent {spent}, used up {used}")
}

/// What that row leads to.
pub fn bridge() -> &'static str {
    "bridge"
}

/// The break line of the cost sheet.
pub fn more_kinds() -> &'static str {
    "money, cards, files"
}

/// The break line where something is missing or odd.
pub fn more_missing() -> &'static str {
    "and what is missing"
}

/// The break line of the bridge.
pub fn more_to_the_true_cost() -> &'static str {
    "more lines to the true cost"
}

/// The break line of an opened figure.
pub fn more_lines(to: &str) -> String {
    let mut text = "more lines to ".to_owned();
    text.push_str(to);
    text
}

/// Where nothing can be said of a figure.
pub fn not_known() -> &'static str {
    "not known"
}

/// The head of the bridge's sheet.
pub fn spent_title() -> &'static str {
    "Spent, used up, true cost"
}

/// Money that went out for it.
pub fn spent() -> &'static str {
    "Spent"
}

/// Money in what went into it.
pub fn used_up() -> &'static str {
    "Used up"
}

/// Lots bought for it, less what it drew of them.
pub fn not_drawn() -> &'static str {
    "Bought for it, not drawn"
}

/// Stock that was not bought for it.
pub fn earlier_stock() -> &'static str {
    "Drawn from earlier stock"
}

/// Direct expenses.
pub fn direct_money() -> &'static str {
    "Paid directly"
}

/// Hours of paid people.
pub fn paid_labour() -> &'static str {
    "Paid labour"
}

/// Tax apart.
pub fn tax_back() -> &'static str {
    "Tax to be got back"
}

/// Beside the tax.
pub fn apart() -> &'static str {
    "apart from every cost"
}

/// Own hours, those in stock included.
pub fn own_hours() -> &'static str {
    "Own hours"
}

/// Own hours in drawn stock.
pub fn in_the_timber() -> &'static str {
    "In the timber"
}

/// All that a lot cost.
pub fn whole_lot() -> &'static str {
    "The whole lot"
}

/// A pool of a lot.
pub fn fetched() -> &'static str {
    "Fetching it"
}

/// A pool of a lot.
pub fn reclaimed() -> &'static str {
    "Reclaiming it"
}

/// The same thing new.
pub fn bought_instead() -> &'static str {
    "Bought instead"
}

/// A side of the saving.
pub fn money_and_drives() -> &'static str {
    "Money and drives"
}

/// A side of the saving.
pub fn own_time() -> &'static str {
    "Own time"
}

/// The saving while own time is free.
pub fn saved_free() -> &'static str {
    "Saved, own time free"
}

/// The saving with own time at its rate.
pub fn saved_at_rate() -> &'static str {
    "Saved, own time at its rate"
}

/// Money of one-off work, in the bridge.
pub fn one_off_money() -> &'static str {
    "One-off money, borne by the run"
}

/// Both sides of the true cost.
pub fn sides() -> &'static str {
    "Piece and film"
}

/// One side of it.
pub fn one_side(side: OneSide) -> &'static str {
    match side {
        OneSide::Piece => "Piece",
        OneSide::Film => "Film",
    }
}

/// Income, tax and fees out.
pub fn net() -> &'static str {
    "Came in, tax and fees out"
}

/// Supplied goods as income of the film.
pub fn in_kind() -> &'static str {
    "Supplied goods used"
}

/// Income that has not come yet.
pub fn expected() -> &'static str {
    "Still expected"
}

/// Tax that came in with it.
pub fn tax_in() -> &'static str {
    "Tax in it, owed"
}

/// The cost of one.
pub fn item() -> &'static str {
    "One good item"
}

/// What all of them bear.
pub fn batch() -> &'static str {
    "All items"
}

/// Spoilage beyond what is usual.
pub fn loss() -> &'static str {
    "Spoiled beyond the usual"
}

/// What scrap fetched.
pub fn scrap() -> &'static str {
    "Scrap fetched"
}

/// One-off work, for one item.
pub fn one_off_each() -> &'static str {
    "One-off share"
}

/// On what was sold.
pub fn profit() -> &'static str {
    "Left over on those sold"
}

/// Items at their cost.
pub fn items_at_cost() -> &'static str {
    "At cost"
}

/// What an hour of reclaiming paid.
pub fn paid_an_hour() -> &'static str {
    "Paid an hour"
}

/// On the bridge's dimension lines.
pub fn dim_spent(figure: &str) -> String {
    format!("spent {figure}")
}

/// On the bridge's dimension lines.
pub fn dim_used(figure: &str) -> String {
    format!("used up {figure}")
}

/// On the bridge's dimension lines.
pub fn dim_true(figure: &str) -> String {
    format!("true cost {figure}")
}

/// On the bridge's dimension lines, where the piece is too narrow for its word.
pub fn dim_shelf(figure: &str) -> String {
    format!("{figure} shelf")
}

/// On the bridge's dimension lines.
pub fn dim_earlier(figure: &str) -> String {
    format!("{figure} earlier")
}

/// In the dashed piece of the bridge.
pub fn shelf() -> &'static str {
    "shelf"
}

/// The bridge read aloud.
pub fn bridge_name(terms: [&str; 5]) -> String {
    let [spent, shelf, earlier, used, all] = terms;
    format!(
        "Spent {spent}, less {shelf} still on the shelf, plus {earlier} from earlier stock, is {used} used up, within a true cost of {all}."
    )
}

/// The head of an opened figure: `Mill, in the pew bench`.
pub fn opened_in(name: &str, title: &str) -> String {
    format!("{name}, in {title}")
}

/// What will be left once all that is planned is done.
pub fn outlook() -> &'static str {
    "Outlook"
}

/// Over a kind of cost that is opened beside the sheet.
pub fn opened(name: &str) -> String {
    format!("Opened: {name}")
}

/// From there to the same with its bars, piece by piece.
pub fn drawn_out() -> &'static str {
    "Drawn to scale, piece by piece"
}

/// Beside it: how deep it is opened, and how deep it goes.
pub fn opened_deep(level: usize, of: usize) -> String {
    format!("opened {level} of {of}")
}

/// An address that leads to no figure any more.
pub fn nothing_here() -> &'static str {
    "Nothing to open here any more"
}

/// Under it.
pub fn nothing_here_why() -> &'static str {
    "The entries under this figure have changed since. The cost sheet has what there is now."
}

/// A build that is not there.
pub fn no_build() -> &'static str {
    "No such build"
}

/// Under it.
pub fn no_build_why() -> &'static str {
    "It was struck out, or it was never on this device."
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Cost keys"
}

/// One level back.
pub fn fold_back() -> &'static str {
    "Fold back"
}

/// Under it: `to labour`.
pub fn to(name: &str) -> String {
    format!("to {name}")
}

/// Under it, at the first level.
pub fn to_the_cost() -> &'static str {
    "to the cost"
}

/// Under it, at the bridge.
pub fn to_the_bridge() -> &'static str {
    "to the bridge"
}

/// Under it, at the first level of a lot's figure.
pub fn to_the_lot() -> &'static str {
    "to the lot"
}

/// A draw that is opened, as an entry.
pub fn the_draw() -> &'static str {
    "The draw itself"
}

/// Where it stands.
pub fn in_the_journal() -> &'static str {
    "in the journal"
}

/// The next piece of the bar.
pub fn next_piece() -> &'static str {
    "Next piece"
}

/// Under it: `cut, 65.00`.
pub fn piece(name: &str, figure: &str) -> String {
    format!("{name}, {figure}")
}

/// A level's label as a target, read aloud.
pub fn fold_to(name: &str, figure: &str) -> String {
    format!("Fold back to {name} {figure}")
}

/// What stands between the name of a figure and how much of it: `Labour, 71 h 15`.
pub fn so_much(name: &str, how_much: &str) -> String {
    format!("{name}, {how_much}")
}

/// Names in a working, a few of them: `oak, hinges, 3 more`.
pub fn some_of(names: &[String]) -> String {
    const FEW: usize = 3;
    let mut few: Vec<String> = names.iter().take(FEW).cloned().collect();
    let more = names.len().saturating_sub(FEW);
    if more > 0 {
        few.push(format!("{more} more"));
    }
    few.join(", ")
}

/// An empty sheet.
pub fn nothing_yet() -> &'static str {
    "nothing yet"
}

/// What will stand on it.
pub fn what_goes_here() -> &'static str {
    "Hours, stock used and money paid add up here, each as it is written down."
}

/// The first act.
pub fn start_work() -> &'static str {
    "Start work"
}

/// Under it.
pub fn on_the_bench() -> &'static str {
    "on the bench"
}

/// Stock used.
pub fn use_stock() -> &'static str {
    "Use stock"
}

/// Money paid.
pub fn money_paid() -> &'static str {
    "Money paid"
}

/// Over what is missing.
pub fn not_in_it() -> &'static str {
    "Missing from it"
}

/// Over what is odd.
pub fn odd() -> &'static str {
    "Odd in it"
}

/// As the first word of a sentence.
pub fn capital(word: &str) -> String {
    letters::capital(word)
}

/// Within a sentence.
pub fn lower(word: &str) -> String {
    letters::uncapital(word)
}
