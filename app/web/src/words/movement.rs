//! How a part moves with its moisture, and what it weighs.

use benchslate_core::measure::sums::species::Species;

/// The head.
pub fn title(part: &str) -> String {
    format!("{part}, moving")
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "width, weight"
}

/// A field.
pub fn species() -> &'static str {
    "Which wood"
}

/// The choice before one is made.
pub fn which() -> &'static str {
    "choose one"
}

/// A field.
pub fn from() -> &'static str {
    "Moisture now"
}

/// A field.
pub fn to() -> &'static str {
    "Where it will stand"
}

/// Read aloud.
pub fn how_sawn() -> &'static str {
    "How it is sawn"
}

/// A way.
pub fn flat_sawn() -> &'static str {
    "flat sawn"
}

/// A way.
pub fn quarter_sawn() -> &'static str {
    "quarter sawn"
}

/// By the field.
pub fn no_species() -> &'static str {
    "No wood chosen yet."
}

/// By the field.
pub fn no_width() -> &'static str {
    "The part has no width yet: correct it first."
}

/// A field: of a board of a lot.
pub fn board_width() -> &'static str {
    "How wide a board or panel"
}

/// By the field.
pub fn no_board_width() -> &'static str {
    "Type the width of a board, or of the panel glued up of them."
}

/// The second answer, of a lot.
pub fn left_weighs() -> &'static str {
    "What is left weighs"
}

/// A row of a lot.
pub fn moves_and_weighs() -> &'static str {
    "How it moves"
}

/// Beside it.
pub fn width_and_weight() -> &'static str {
    "width by moisture, weight"
}

/// By the field: below 6 or above 14 %.
pub fn beyond() -> &'static str {
    "Only from 6 to 14 %: beyond it wood moves by another rule."
}

/// By the field.
pub fn not_known() -> &'static str {
    "How much this wood moves is not in the table."
}

/// The answer.
pub fn moves(shrinks: bool) -> &'static str {
    if shrinks { "Narrower by" } else { "Wider by" }
}

/// Its working.
pub fn working(species: &str, quarter: bool, width: &str, from: &str, to: &str) -> String {
    let sawn = if quarter { quarter_sawn() } else { flat_sawn() };
    format!("{species}, {sawn}, {width} wide, {from} to {to} %")
}

/// The second answer.
pub fn weighs(count: u32) -> String {
    if count == 1 { "It weighs".to_owned() } else { format!("All {count} weigh") }
}

/// Under it.
pub fn at_moisture(percent: &str) -> String {
    format!("at {percent} %, by the mean of the species")
}

/// Under the answers.
pub fn only_between() -> &'static str {
    "From 6 to 14 % of moisture, by the mean of the species: one board differs by a tenth or more (Wood Handbook, tables 5-3 and 13-5)."
}

/// As it is kept.
pub fn note(part: &str, said: &str, working: &str) -> String {
    format!("{part}: {said}. {working}")
}

/// Of a mark.
pub fn kind() -> &'static str {
    "note"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Keys of the movement"
}

/// The filled key.
pub fn keep() -> &'static str {
    "Keep it as a note"
}

/// A key of a part.
pub fn its_movement() -> &'static str {
    "How it moves"
}

/// Under it.
pub fn and_weight() -> &'static str {
    "and what it weighs"
}

/// As the trade calls it.
pub fn name(species: Species) -> &'static str {
    match species {
        Species::AshWhite => "white ash",
        Species::AspenQuaking => "quaking aspen",
        Species::Basswood => "basswood",
        Species::BeechAmerican => "American beech",
        Species::BirchYellow => "yellow birch",
        Species::CherryBlack => "black cherry",
        Species::CottonwoodEastern => "eastern cottonwood",
        Species::DouglasFir => "Douglas-fir",
        Species::ElmAmerican => "American elm",
        Species::FirWhite => "white fir",
        Species::MapleRed => "red maple",
        Species::MapleSugar => "sugar maple",
        Species::OakRed => "northern red oak",
        Species::OakWhite => "white oak",
        Species::PineLoblolly => "loblolly pine",
        Species::PinePonderosa => "ponderosa pine",
        Species::RedcedarWestern => "western redcedar",
        Species::Sweetgum => "sweetgum",
        Species::WalnutBlack => "black walnut",
        Species::YellowPoplar => "yellow-poplar",
    }
}
