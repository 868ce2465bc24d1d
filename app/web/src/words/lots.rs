//! A new lot: what came, how, and for how much.

/// What a finish covers, by its tin or data sheet.
pub fn covers() -> &'static str {
    "one coat covers"
}

/// In that field.
pub fn covers_hint() -> &'static str {
    "12 m2 a litre, or 65 % at 125 µm"
}

/// How a finish dries.
pub fn oxidises() -> &'static str {
    "Dries by oxidation"
}

/// Under it.
pub fn oxidises_note() -> &'static str {
    "oils, and varnishes made with them: their rags can set themselves alight"
}

/// What its maker states.
pub fn food_safe() -> &'static str {
    "Stated for contact with food"
}

/// Under it.
pub fn food_safe_note() -> &'static str {
    "on its data sheet, once fully cured"
}

/// The head of the form: `New lot, salvaged`.
pub fn new_lot(origin: &str) -> String {
    format!("New lot, {origin}")
}

/// The set of origins.
pub fn how_it_came() -> &'static str {
    "How it was come by"
}

/// The set of uses.
pub fn what_for() -> &'static str {
    "What it is for"
}

/// A field: the lot's name.
pub fn what() -> &'static str {
    "what, or from where"
}

/// In it.
pub fn what_hint() -> &'static str {
    "gymnasium maple"
}

/// A field: the item's name.
pub fn what_item() -> &'static str {
    "what"
}

/// In it.
pub fn item_hint() -> &'static str {
    "hard oil, screws, discs"
}

/// Over items that what is typed could mean.
pub fn on_the_shelf_already() -> &'static str {
    "kept already; tap to add to it"
}

/// The name is that of an item.
pub fn adds_to_it() -> &'static str {
    "More of what is kept already: drawn together with the rest of it."
}

/// A field.
pub fn rough() -> &'static str {
    "rough quantity"
}

/// A field.
pub fn quantity() -> &'static str {
    "how much"
}

/// In it.
pub fn rough_hint() -> &'static str {
    "88"
}

/// In it, for packs.
pub fn packs_hint() -> &'static str {
    "2 tins, 16 discs"
}

/// A field.
pub fn paid() -> &'static str {
    "paid"
}

/// In it.
pub fn paid_hint() -> &'static str {
    "0 is a price too"
}

/// A field.
pub fn price() -> &'static str {
    "price, before tax"
}

/// A field, of what a sponsor gave.
pub fn worth() -> &'static str {
    "what it is worth"
}

/// A set of two.
pub fn supplied_by() -> &'static str {
    "Supplied by"
}

/// One of the two.
pub fn a_sponsor() -> &'static str {
    "a sponsor"
}

/// One of the two.
pub fn the_client() -> &'static str {
    "the client"
}

/// Under them, for a client's own goods.
pub fn clients_note() -> &'static str {
    "The client’s own goods: only how much there is, no money anywhere."
}

/// A field.
pub fn tax() -> &'static str {
    "tax"
}

/// In it.
pub fn tax_hint() -> &'static str {
    "13 % or 9.43"
}

/// Under the fields: `Tax 2.41, with it 20.95`.
pub fn tax_comes_to(tax: &str, in_all: &str) -> String {
    format!("Tax {tax}, with it {in_all}")
}

/// A switch.
pub fn tax_back() -> &'static str {
    "The tax can be got back"
}

/// Under it.
pub fn tax_back_note() -> &'static str {
    "then it is no cost"
}

/// A field.
pub fn fee() -> &'static str {
    "fee at the place"
}

/// A field.
pub fn haul() -> &'static str {
    "haul, there and back"
}

/// A field.
pub fn usable() -> &'static str {
    "usable, as you expect"
}

/// Beside what is typed in it: `= 70 %`.
pub fn read_as(hundredths: &str) -> String {
    format!("= {hundredths} %")
}

/// A field: `same thing new, a bd ft`.
pub fn same_new(one: &str) -> String {
    format!("same thing new, {one}")
}

/// A field.
pub fn waste() -> &'static str {
    "new: cut to waste"
}

/// A field.
pub fn new_tax() -> &'static str {
    "new: tax"
}

/// A field.
pub fn whence() -> &'static str {
    "from whom or where"
}

/// A field: when it came.
pub fn day() -> &'static str {
    "came on"
}

/// In it.
pub fn day_hint() -> &'static str {
    "today"
}

/// An error: both a quantity and sizes.
pub fn quantity_or_sizes() -> &'static str {
    "A quantity and sizes are typed: leave one of them empty, so that it is clear which counts. Kept as typed."
}

/// A field: what a tin holds.
pub fn tin() -> &'static str {
    "one tin holds"
}

/// In it.
pub fn tin_hint() -> &'static str {
    "750 ml"
}

/// A field.
pub fn low() -> &'static str {
    "say when under"
}

/// A group of fields.
pub fn by_size() -> &'static str {
    "By size"
}

/// A field.
pub fn thick() -> &'static str {
    "thick"
}

/// A field.
pub fn wide() -> &'static str {
    "wide"
}

/// A field.
pub fn long() -> &'static str {
    "long"
}

/// A field.
pub fn boards() -> &'static str {
    "boards"
}

/// Two ways to measure.
pub fn sizes_are() -> &'static str {
    "These sizes are"
}

/// Two ways to measure.
pub fn as_it_is() -> &'static str {
    "as it is"
}

/// Two ways to measure.
pub fn as_sold() -> &'static str {
    "as it is sold"
}

/// `16.5 bd ft of wood`.
pub fn of_wood(amount: &str) -> String {
    format!("{amount} of wood")
}

/// `24 bd ft nominal`, and why that is more than the wood that is there.
pub fn nominal(amount: &str) -> String {
    format!("{amount} nominal: the size it is sold by, before planing")
}

/// The price new is for nominal measure.
pub fn new_nominal() -> &'static str {
    "New is sold by nominal size"
}

/// Under it.
pub fn new_nominal_note() -> &'static str {
    "the saving is compared in that measure"
}

/// A switch: `Got for trays, run 2`.
pub fn got_for(title: &str) -> String {
    format!("Got for {title}")
}

/// Under it.
pub fn got_for_note() -> &'static str {
    "counts as spent on it, whole"
}

/// What one costs: `A bd ft comes to`.
pub fn one_comes_to(one: &str) -> String {
    format!("{} comes to", benchslate_core::measure::letters::capital(one))
}

/// Under it, for a salvaged lot.
pub fn before_hours() -> &'static str {
    "of what is expected usable, before your hours"
}

/// Under it, else.
pub fn as_it_came() -> &'static str {
    "as it came"
}

/// Nothing can be said of the cost of one yet.
pub fn yield_missing() -> &'static str {
    "needs a yield, or sorting"
}

/// There is no rate a kilometre.
pub fn no_km_rate() -> &'static str {
    "No rate a kilometre yet"
}

/// Beside it.
pub fn add_it() -> &'static str {
    "add it"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Lot keys"
}

/// Leaves the form; what is typed stays.
pub fn not_now() -> &'static str {
    "Not now"
}

/// Keeps it.
pub fn keep_the_lot() -> &'static str {
    "Keep the lot"
}

/// What a mark calls it.
pub fn lot() -> &'static str {
    "lot"
}

/// `88 board feet, gymnasium maple`.
pub fn came(amount: &str, name: &str) -> String {
    format!("{amount}, {name}")
}

/// Under it: `paid 60.00`.
pub fn paid_so_much(amount: &str) -> String {
    format!("paid {amount}")
}

/// An error.
pub fn no_name() -> &'static str {
    "No name yet. Two words are enough: pew oak, wood glue."
}

/// An error.
pub fn long_name() -> &'static str {
    "Longer than a label: 80 letters fit. Kept as typed."
}

/// An error.
pub fn no_quantity() -> &'static str {
    "How much came? Type it as 88, 12 board feet, 2 tins, 16 discs."
}

/// An error.
pub fn nothing_came() -> &'static str {
    "Nothing came of 0. Type how much there is. Kept as typed."
}

/// An error.
pub fn side_missing() -> &'static str {
    "Board measure needs all three sides."
}

/// An error.
pub fn kept_in(unit: &str) -> String {
    if unit.is_empty() {
        return "This is counted by the piece, and what is typed can't be turned into that. Kept as typed."
            .to_owned();
    }
    format!("This is kept in {unit}, and what is typed can't be turned into that. Kept as typed.")
}

/// An error.
pub fn tin_needs_unit() -> &'static str {
    "What does one hold? Type it as 750 ml, 1 l, 1 kg."
}

/// An error.
pub fn over_hundred() -> &'static str {
    "At most 100 of a hundred. Kept as typed."
}

/// An error.
pub fn all_wasted() -> &'static str {
    "If all of it is wasted nothing is left to compare: type less than 100. Kept as typed."
}

/// An error.
pub fn tax_of_nothing() -> &'static str {
    "A share of what? Type what was paid first, or the tax as money. Kept as typed."
}

/// On the long-break line.
pub fn more_fields() -> &'static str {
    "more about it"
}

/// By the price new: waste or tax of it was typed, and no price.
pub fn price_new_first() -> &'static str {
    "Waste and tax are of a price: type what it costs new, or leave them empty."
}
