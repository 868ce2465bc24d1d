//! The sheet of a lot or item: what became of it, what it cost, and whether salvage saved anything.

use benchslate_core::costing::salvage::Reached;

/// The figure of a salvaged lot.
pub fn saved() -> &'static str {
    "Saved against new"
}

/// The same below zero.
pub fn dearer() -> &'static str {
    "Dearer than new by"
}

/// The figure with what an hour paid.
pub fn hour_paid() -> &'static str {
    "An hour of reclaiming paid"
}

/// Under it: `on the 69 board feet drawn so far`.
pub fn on_drawn(amount: &str) -> String {
    format!("on the {amount} drawn so far")
}

/// Under it, where stock was written off: it counts too.
pub fn nothing_drawn() -> &'static str {
    "nothing drawn yet"
}

/// In the place of the figure: there are no own hours to divide by.
pub fn no_hours() -> &'static str {
    "no hours"
}

/// In the place of a figure on a key.
pub fn no_figure() -> &'static str {
    "\u{2013}"
}

/// A build that drew nothing salvaged.
pub fn build_drew_none() -> &'static str {
    "It drew nothing from a salvaged lot."
}

/// Beside the build's name.
pub fn of_the_build() -> &'static str {
    "salvage"
}

/// Under the figure of a build.
pub fn on_what_it_drew() -> &'static str {
    "on all it drew of salvaged lots"
}

/// What is left out of a build's saving.
pub fn overhead_left_out(figure: &str) -> String {
    format!("Overhead left out, it would be paid anyway: {figure} in the timber.")
}

/// Reclaiming that was logged on the build and not on its lots.
pub fn reclaimed_here(hours: &str) -> String {
    format!("{hours} of reclaiming was logged on the build itself: it is in its labour, not in this saving.")
}

/// Over the lots of a build.
pub fn lot_by_lot() -> &'static str {
    "What it drew, lot by lot, at your rate"
}

/// The set of three.
pub fn count_own_time() -> &'static str {
    "count own time"
}

/// Own time counts nothing.
pub fn free() -> &'static str {
    "free"
}

/// Own time at its rate.
pub fn at_rate() -> &'static str {
    "at rate"
}

/// What an hour of it paid.
pub fn an_hour() -> &'static str {
    "paid an hour"
}

/// Beside the title.
pub fn paid(figure: &str) -> String {
    format!("paid {figure}")
}

/// On the board.
pub fn in_the_bench() -> &'static str {
    "drawn"
}

/// On the board.
pub fn shelf() -> &'static str {
    "shelf"
}

/// On the dimension under the board: `sound 112, 80 %`.
pub fn sound(figure: &str, share: Option<&str>) -> String {
    match share {
        Some(share) => format!("sound {figure}, {share}"),
        None => format!("sound {figure}"),
    }
}

/// On the money board's dimension.
pub fn bought_instead(figure: &str) -> String {
    format!("bought instead {figure}")
}

/// Under the money board.
pub fn cash(figure: &str) -> String {
    format!("cash {figure}")
}

/// Under the money board.
pub fn own_time(figure: &str) -> String {
    format!("own time {figure}")
}

/// In the money board.
pub fn saved_so_much(figure: &str) -> String {
    format!("saved {figure}")
}

/// Past its end.
pub fn dearer_by(figure: &str) -> String {
    format!("dearer by {figure}")
}

/// The total of the sum.
pub fn saved_total() -> &'static str {
    "Saved"
}

/// The total of the sum where it is below zero.
pub fn dearer_total() -> &'static str {
    "Dearer than new"
}

/// What it is compared with, and what is left out.
pub fn against(day: &str) -> String {
    format!(
        "Against the price you noted on {day}, in the same measure, for what you used; overhead left out."
    )
}

/// A link of the yield chain.
pub fn link(at: Reached) -> &'static str {
    match at {
        Reached::Gathered => "Gathered",
        Reached::NailsOut => "Nails out",
        Reached::Sorted => "Sorted",
        Reached::Milled => "Milled",
        Reached::InThePiece => "In the piece",
    }
}

/// Leads to the yield chain; its title too.
pub fn the_chain() -> &'static str {
    "From the yard to the piece"
}

/// Beside it: `69 of 140 bd ft in the piece`.
pub fn reaches(drawn: &str, gathered: &str) -> String {
    format!("{drawn} of {gathered} in the piece")
}

/// Beside a link: `114 bd ft, 95 %`.
pub fn reached(amount: &str, share: Option<&str>) -> String {
    share.map_or_else(|| amount.to_owned(), |share| format!("{amount}, {share}"))
}

/// What was lost on the way to a link, what waits before it, how long it took and what that cost:
/// `culled 6; 4 wait; 6 h 00`.
pub fn on_the_way(
    lost: Option<&str>,
    mishap: Option<&str>,
    waits: Option<&str>,
    hours: Option<&str>,
) -> String {
    let told = [
        lost.map(|it| format!("culled {it}")),
        mishap.map(|it| format!("gone {it}")),
        waits.map(|it| format!("{it} not yet")),
        hours.map(str::to_owned),
    ];
    told.into_iter().flatten().collect::<Vec<String>>().join("; ")
}

/// The figure of the chain: what reached the piece.
pub fn of_all_gathered() -> &'static str {
    "In the piece, of all gathered"
}

/// Under the chain: what its links cost.
pub fn all_links_cost() -> &'static str {
    "All links together: what the lot cost"
}

/// What stands under the long-break line of the chain.
pub fn all_links_below() -> &'static str {
    "what all links cost"
}

/// More there than was written down.
pub fn more_was_there(amount: &str) -> String {
    format!("{amount} more was there than was written down as gathered.")
}

/// How a link's hours are told: by stage.
pub fn links_by_stage() -> &'static str {
    "Hauling is gathering, reclaiming pulls the nails, mill and flatten mill; other hours of the lot are sorting."
}

/// Leads to the two pools.
pub fn what_it_cost() -> &'static str {
    "What it cost"
}

/// Beside it, for a salvaged lot.
pub fn in_two_pools() -> &'static str {
    "fetching and reclaiming"
}

/// Beside it, else.
pub fn line_by_line() -> &'static str {
    "line by line"
}

/// Under the answer: what one comes to. `a bd ft comes to 3.50`.
pub fn one_comes_to(one: &str, figure: &str) -> String {
    format!("{one} comes to {figure}")
}

/// While nothing is drawn.
pub fn counted_on_what_is_used() -> &'static str {
    "Saving is counted on what is used."
}

/// A group: what drew of it.
pub fn drawn_by() -> &'static str {
    "Drawn by"
}

/// A group: the lots of an item.
pub fn came_in() -> &'static str {
    "Came in"
}

/// Nobody drew of it.
pub fn drawn_by_nobody() -> &'static str {
    "Nothing drawn yet."
}

/// On its value.
pub fn worth() -> &'static str {
    "On the shelf at cost"
}

/// `20 bd ft, Fri 20 Nov`.
pub fn on_day(amount: &str, day: &str) -> String {
    format!("{amount}, {day}")
}

/// What came back in a list of draws.
pub fn back(amount: &str) -> String {
    format!("{amount} came back")
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Lot keys"
}

/// Leads to the entry: correct it, strike it out.
pub fn correct() -> &'static str {
    "Correct"
}

/// Uses some.
pub fn use_some() -> &'static str {
    "Use some"
}

/// What stands under the long-break line.
pub fn more_below() -> &'static str {
    "what it cost, and who drew of it"
}

/// A hint: what is left stands above the same thing new.
pub fn above_new() -> &'static str {
    "Above the same thing new"
}

/// Under it.
pub fn above_new_note() -> &'static str {
    "what is left, in money"
}
