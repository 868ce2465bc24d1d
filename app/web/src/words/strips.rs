//! Strips ripped out of boards.

/// A cell.
pub fn strips() -> &'static str {
    "Strips"
}

/// A cell.
pub fn strip_wide() -> &'static str {
    "Each wide"
}

/// A cell.
pub fn kerf() -> &'static str {
    "A cut"
}

/// Over the well.
pub fn how_many() -> &'static str {
    "Strips to rip, how many"
}

/// Over the well.
pub fn width_of_one() -> &'static str {
    "Width of one strip"
}

/// Over the well.
pub fn what_a_cut_takes() -> &'static str {
    "A cut takes"
}

/// The cells, read aloud.
pub fn how_ripped() -> &'static str {
    "Strips out of it"
}

/// In the cell of the pieces.
pub fn by_strips() -> &'static str {
    "by strips"
}

/// By the field: not one strip comes out of a board.
pub fn too_wide() -> &'static str {
    "No strip of that width comes out of a board: it is wider than the board, or has no width."
}

/// By the field: nought strips.
pub fn none_wanted() -> &'static str {
    "One strip at least; with none wanted, leave it empty."
}

/// The working, kept with the draw: `22 strips of 7/8 in, 3 a board, 1/2 in left of each, 19 1/4 in side by side`.
pub fn ripped(strips: u32, strip: &str, a_board: u32, rest: &str, panel: &str) -> String {
    let word = if strips == 1 { "strip" } else { "strips" };
    format!("{strips} {word} of {strip}, {a_board} a board, {rest} left of each, {panel} side by side")
}
