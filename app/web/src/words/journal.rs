//! The journal: its lines, its days, an entry with its history.

pub use super::correcting::{
    and_it_moves, borne_there, closed_keeps, end_before_start, in_and_closing, more_than_none, moves_to,
    name_missing, names_gone, no_amount_yet, no_parts, nobody_bears_it, not_chosen, one_at_least,
    one_part_at_least, over_the_whole, parts_for, parts_of_this_lot, shared_in_parts, shared_with_more,
    so_many_here, some_moved, stopped_before, the_money, the_months, the_tool, too_long, too_many_spoiled,
    words_missing, worth_there,
};

pub use super::labels::{Label, label};

pub use super::versions::{
    changed, counts_now, history, newer_text, newer_title, other_device, this_device, this_one, two_text,
    two_title, unreadable_text, unreadable_title, v_back, v_corrected, v_newer, v_struck, v_went_on,
    v_written,
};

use super::Tongue;
use benchslate_core::{
    costing::DaySum,
    journal::{
        Kind,
        kinds::{Bearer, Link, Origin, Role, SettingKey, SuppliedBy},
    },
    measure::Money,
};

/// The head of a journal: whose it is.
pub fn journal_of(title: &str) -> String {
    format!("Journal, {title}")
}

/// Whose journal it is, while the shop has no name.
pub fn of_the_shop() -> &'static str {
    "the shop"
}

/// The key that leads to it from a lot or from the shop.
pub fn the_journal() -> &'static str {
    "Journal"
}

/// The head where there is no such lot.
pub fn no_lot() -> &'static str {
    "No such lot"
}

/// Beside it.
pub fn newest_first() -> &'static str {
    "newest first"
}

/// What the long-break line names.
pub fn down_to(day: &str) -> String {
    format!("down to {day}")
}

/// The field that finds, read aloud.
pub fn find() -> &'static str {
    "Find in the journal"
}

/// Said in it while it is empty.
pub fn find_hint() -> &'static str {
    "find: a word, a day, a person, an amount"
}

/// Nothing holds what was asked for.
pub fn nothing_found(typed: &str) -> String {
    format!("No line says “{typed}”. Whole days and names are found too.")
}

/// The row that shows more.
pub fn earlier() -> &'static str {
    "earlier"
}

/// At its right: how many there are.
pub fn lines_more(count: usize) -> String {
    if count == 1 { "1 line more".to_owned() } else { format!("{count} lines more") }
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Journal keys"
}

/// The lines, read aloud.
pub fn lines() -> &'static str {
    "Lines of the day"
}

/// What stands further down on the sheet of an entry.
pub fn entry_below() -> &'static str {
    "every version of it"
}

/// Before the keys that add a line: they are no filters of what stands above.
pub fn write_down() -> &'static str {
    "write down"
}

/// Keys: what can be written from here.
pub fn new_lines() -> [&'static str; 4] {
    ["hours", "stock", "money", "note"]
}

/// What a day came to: `6 h 00, 4.30 used, 60.00 paid`.
pub fn day_sum(tongue: &Tongue, sum: &DaySum) -> Option<String> {
    let mut parts = Vec::new();
    if sum.runs {
        parts.push(format!("{} so far", tongue.hours(sum.worked)));
    } else if !sum.worked.is_zero() {
        parts.push(tongue.hours(sum.worked));
    }
    let money =
        |money: Money, what: &str| (!money.is_zero()).then(|| format!("{} {what}", tongue.money(money)));
    parts.extend(money(sum.used, "used"));
    parts.extend(money(sum.paid, "paid"));
    (!parts.is_empty()).then(|| parts.join(", "))
}

/// What a line is called, in the second pen. Stretches go by their stage.
pub fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Setting => "choice",
        Kind::Person => "person",
        Kind::Stage => "stage",
        Kind::Build => "begun",
        Kind::Stretch => "hours",
        Kind::Item => "item",
        Kind::Lot => "came in",
        Kind::Trip => "drive",
        Kind::Sort => "sorted",
        Kind::Draw => "used",
        Kind::Shelf => "empty",
        Kind::Expense => "paid",
        Kind::Note => "note",
        Kind::Receipt => "receipt",
        Kind::ByProduct => "by-product",
        Kind::Tool => "tool",
        Kind::ToolHours => "run hours",
        Kind::Blade => "fitted",
        Kind::MonthlyCost => "every month",
        Kind::Income => "income",
        Kind::Made => "made",
        Kind::HandOver => "handed over",
        Kind::Film => "film",
        Kind::Step => "step",
        Kind::Part => "part",
        Kind::Resource => "in the shop",
        Kind::FreeDay => "free time",
        Kind::Shot => "shot",
        Kind::Take => "take",
        Kind::CardCopied => "card",
        Kind::SeriesEnd => "end of the run",
        Kind::BuildState => "build",
        Kind::Drying => "dries",
        Kind::Photo => "photo",
        Kind::Retired => "put away",
        Kind::Same => "same",
        Kind::BuyLine => "to buy",
        Kind::Cull => "culled",
        Kind::Find => "looked at",
        Kind::Chapter => "chapter",
        Kind::Outsider => "outside",
        Kind::Due => "owed",
    }
}

/// A draw that comes back.
pub fn came_back() -> &'static str {
    "back"
}

/// Between what and how much: `wood glue, 1/4 bottle`.
pub fn comma(what: &str, more: &str) -> String {
    if more.is_empty() { what.to_owned() } else { format!("{what}, {more}") }
}

/// How a lot was come by.
pub fn origin(origin: Origin) -> &'static str {
    match origin {
        Origin::Salvaged => "salvaged",
        Origin::Bought => "bought",
        Origin::Supplied => "supplied",
        Origin::Offcut => "offcut",
    }
}

/// What sorting found.
pub fn good_and_culled(good: &str, culled: &str) -> String {
    format!("{good} good, {culled} culled")
}

/// How far timber had come when it was thrown out.
pub fn link(link: Link) -> &'static str {
    match link {
        Link::Gathered => "as it came",
        Link::NailsOut => "nails out",
        Link::Milled => "sorted good before",
    }
}

/// A cull that nobody could expect.
pub fn not_to_be_expected() -> &'static str {
    "not to be expected"
}

/// A drive.
pub fn km(km: &str) -> String {
    format!("{km} km")
}

/// One of those that a drive is shared among: `gymnasium maple, 2 of 3 parts`.
pub fn part_of(title: &str, parts: u32, whole: u64) -> String {
    format!("{title}, {parts} of {whole} parts")
}

/// Camera time within a stretch.
pub fn rolling(hours: &str) -> String {
    format!("rolling {hours}")
}

/// Hours for another side than the stage's.
pub fn for_side(side: &str) -> String {
    format!("for the {side}")
}

/// A stretch without an end.
pub fn clock_running() -> &'static str {
    "clock running"
}

/// A clock that stands.
pub fn clock_paused() -> &'static str {
    "clock paused"
}

/// Some of it is counted elsewhere.
pub fn overlaps() -> &'static str {
    "overlaps later hours, counted once"
}

/// The end lies before the start.
pub fn ends_before_start() -> &'static str {
    "ends before it begins: no hours"
}

/// An item that is another one.
pub fn same_as(item: &str, other: &str) -> String {
    format!("{item} is the same as {other}")
}

/// A build that would be a repeat of itself.
pub fn repeats_itself() -> &'static str {
    "It can’t be a repeat of itself, or of one that is a repeat of it."
}

/// A choice of another currency than the first.
pub fn other_currency() -> &'static str {
    "not counted in: another currency came first"
}

/// Two items that are one already.
pub fn one_already() -> &'static str {
    "they are one item already"
}

/// A figure can't be said.
pub fn no_figure() -> &'static str {
    "no figure"
}

/// Under a struck line.
pub fn struck_out(when: &str) -> String {
    format!("struck out {when}")
}

/// The key on a struck line.
pub fn put_back() -> &'static str {
    "put back"
}

/// What was put right last.
pub fn start_moved(from: &str) -> String {
    format!("start moved from {from}")
}

/// What was put right last.
pub fn end_moved(from: &str) -> String {
    format!("end moved from {from}")
}

/// What was put right last.
pub fn corrected(when: &str) -> String {
    format!("corrected {when}")
}

/// The triangle, read aloud.
pub fn version_name(version: usize) -> String {
    format!("version {version}")
}

/// Changed in two places at once.
pub fn two_versions() -> &'static str {
    "two versions: one must be picked"
}

/// Under a line whose body isn't known here.
pub fn written_newer() -> &'static str {
    "written by a newer Benchslate"
}

/// Under a line that can't be read.
pub fn cant_be_read() -> &'static str {
    "can’t be read; kept as it is"
}

/// Somebody or something that isn't there any more.
pub fn gone() -> &'static str {
    "struck out since"
}

/// Whoever bears it, where its name isn't there.
pub fn no_home() -> &'static str {
    "no home yet"
}

/// Who supplied a lot.
pub fn supplied_by(by: SuppliedBy) -> &'static str {
    match by {
        SuppliedBy::Sponsor => "a sponsor",
        SuppliedBy::Client => "a client",
    }
}

/// A receipt whose lines are more than its total.
pub fn lines_beyond_total() -> &'static str {
    "lines come to more than was paid"
}

/// Which choice a setting is.
pub fn setting(key: SettingKey) -> &'static str {
    match key {
        SettingKey::Currency => "currency",
        SettingKey::Zone => "time zone",
        SettingKey::Units => "units",
        SettingKey::WeekStart => "first day of the week",
        SettingKey::KmRate => "rate a kilometre",
        SettingKey::TaxRate => "sales tax",
        SettingKey::ShopName => "name of the shop",
        SettingKey::KwhPrice => "price a kWh",
        SettingKey::PowerIn => "power",
        SettingKey::NormalHours => "hours of a normal month",
        SettingKey::NormalFilmHours => "film hours of a normal month",
        SettingKey::BothKey => "how \u{201c}both\u{201d} is shared",
        SettingKey::SlowDown => "filming slows work by",
        SettingKey::StockFormula => "stock is drawn by",
        SettingKey::ShootingSeconds => super::film::real_seconds(),
        SettingKey::SmallestFraction => super::shop::smallest_fraction(),
        SettingKey::PublishLeads => super::publishing::the_leads(),
        SettingKey::BuildOrder => super::plan::build_order(),
    }
}

/// What a stage counts as.
pub fn role(role: Role) -> &'static str {
    match role {
        Role::Haul => "hauling",
        Role::Reclaim => "reclaiming",
        Role::GlueUp => "glue-up",
        Role::Finish => "a coat",
        Role::Shoot => "shooting",
        Role::Edit => "cutting the film",
        Role::Admin => "office",
    }
}

/// `2.5 h`: hours as they were said, not by the clock.
pub fn with_hours(number: &str) -> String {
    format!("{number} h")
}

/// Hundredths.
pub fn per_cent(figure: &str) -> String {
    format!("{figure} %")
}

/// A rate and from when.
pub fn rate_from(figure: &str, day: Option<&str>) -> String {
    day.map_or_else(|| format!("{figure} an hour"), |day| format!("{figure} an hour from {day}"))
}

/// Is or isn't.
pub fn yes_no(yes: bool) -> &'static str {
    if yes { "yes" } else { "no" }
}

/// What an entry says, read aloud.
pub fn entry_name(kind: &str) -> String {
    format!("Entry: {kind}")
}

/// An entry that isn't there.
pub fn no_entry() -> &'static str {
    "No such entry"
}

/// Under it.
pub fn no_entry_why() -> &'static str {
    "It was never on this device, or its address was cut short."
}

/// Keys of an entry.
pub fn strike_out() -> &'static str {
    "Strike out"
}

/// Under it.
pub fn stays_on_view() -> &'static str {
    "stays on view"
}

/// Keys of an entry.
pub fn bring_back() -> &'static str {
    "Put back"
}

/// Keys of an entry.
pub fn correct() -> &'static str {
    "Correct"
}

/// Keys of an entry.
pub fn keep_correction() -> &'static str {
    "Keep it so"
}

/// Keys of a draw.
pub fn some_back() -> &'static str {
    "Some back"
}

/// Under it.
pub fn to_the_shelf() -> &'static str {
    "to the shelf"
}

/// Keys of a lot.
pub fn the_lot() -> &'static str {
    "The lot"
}

/// Under it.
pub fn board_and_saving() -> &'static str {
    "board, saving"
}

/// Keys of a person.
pub fn the_person() -> &'static str {
    "The person"
}

/// Under it.
pub fn rates_there() -> &'static str {
    "rates"
}

/// Keys of a setting.
pub fn the_choices() -> &'static str {
    "Choices"
}

/// Under it.
pub fn changed_there() -> &'static str {
    "changed there"
}

/// A mark.
pub fn mark_corrected() -> &'static str {
    "corrected"
}

/// A mark.
pub fn mark_struck() -> &'static str {
    "struck out"
}

/// A mark.
pub fn mark_back() -> &'static str {
    "put back"
}

/// A mark.
pub fn mark_picked() -> &'static str {
    "one version picked"
}

/// Beside a form that is half filled.
pub fn correcting() -> &'static str {
    "correcting"
}

/// Whoever bears it, without a name.
pub fn bearer_lost(bearer: Bearer) -> &'static str {
    match bearer {
        Bearer::Build(_) => "a build struck out since",
        Bearer::Lot(_) => "a lot struck out since",
        Bearer::Shop => super::common::the_shop(),
    }
}

/// The length of a film.
pub fn minutes(minutes: &str) -> String {
    format!("{minutes} min")
}

/// A key of a step: all steps of its build.
pub fn the_steps() -> &'static str {
    "The steps"
}

/// Under it.
pub fn all_that_is_left() -> &'static str {
    "still to do"
}

/// A key of a part: the whole list.
pub fn the_parts() -> &'static str {
    "The parts list"
}

/// Under it.
pub fn cuts_there() -> &'static str {
    "what is cut, boards to buy"
}

/// By the field: more are cut than there are.
pub fn more_than_there_are(count: u32) -> String {
    format!("There are {count} of them.")
}

/// By the field: quick is longer than usual or slow.
pub fn quick_above() -> &'static str {
    "Quick is the shortest of the three."
}

/// By the field: slow is shorter than usual.
pub fn over_before_it_begins() -> &'static str {
    "It is over before it may begin."
}

/// A step that something comes after, and how long that dries.
pub fn dries_for(step: &str, hours: &str) -> String {
    format!("{step}, {hours} h to dry")
}

/// A step by its build.
pub fn step_of(step: &str, build: &str) -> String {
    format!("{step}, {build}")
}

/// By a field.
pub fn slow_below() -> &'static str {
    "Slow is the longest of the three."
}

/// Under the key to the list of what is to be bought.
pub fn the_whole_list() -> &'static str {
    "the whole list"
}
