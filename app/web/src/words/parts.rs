//! The parts list of a build, and the boards it is cut from.

/// The head.
pub fn title(build: &str) -> String {
    format!("Parts, {build}")
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "more parts"
}

/// No part is written down.
pub fn nothing_yet() -> &'static str {
    "No parts yet. A name and how many are enough; with lengths, the boards to cut them from can be planned."
}

/// A key.
pub fn new_part() -> &'static str {
    "New part"
}

/// Under it.
pub fn how_many_how_long() -> &'static str {
    "how many, how long"
}

/// A key.
pub fn boards() -> &'static str {
    "Boards"
}

/// Under it.
pub fn which_to_cut() -> &'static str {
    "cuts, what to buy"
}

/// `4 × Leg`.
pub fn so_many(count: u32, name: &str) -> String {
    format!("{count} \u{d7} {name}")
}

/// `28 × 2 × 2 in`.
pub fn size(sides: &[String], unit: Option<&str>) -> String {
    let mut text = sides.join(" \u{d7} ");
    if let Some(unit) = unit.filter(|_| !sides.is_empty()) {
        text.push(' ');
        text.push_str(unit);
    }
    text
}

/// Under a part: `28 × 2 × 2 in, 1 of 4 cut`.
pub fn cut_of(size: &str, cut: u32, count: u32) -> String {
    let cut = if cut == count { format!("all {count} cut") } else { format!("{cut} of {count} cut") };
    if size.is_empty() { cut } else { format!("{size}, {cut}") }
}

/// A row's key: one more is cut.
pub fn cut_one() -> &'static str {
    "Cut one"
}

/// The same where all are.
pub fn one_less() -> &'static str {
    "One less"
}

/// Read aloud.
pub fn key_name(key: &str, part: &str) -> String {
    format!("{key}: {part}")
}

/// Under the rows.
pub fn still_to_cut() -> &'static str {
    "Still to cut"
}

/// A group.
pub fn all_cut() -> &'static str {
    "Cut"
}

/// A mark.
pub fn marked_cut(name: &str, cut: u32, count: u32) -> String {
    format!("{name}, {cut} of {count}")
}

/// Of a mark.
pub fn kind() -> &'static str {
    "cut"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Keys of the parts"
}

/// The row on the money sheet.
pub fn parts_list() -> &'static str {
    "Parts list"
}

/// At its end: `3 of 12 cut`.
pub fn so_far(cut: u32, count: u32) -> String {
    format!("{cut} of {count} cut")
}

/// The head of the sheet of boards.
pub fn boards_for(build: &str) -> String {
    format!("Boards for {build}")
}

/// What stands past its lower edge.
pub fn cuts_below() -> &'static str {
    "board by board"
}

/// A field: lengths of the boards.
pub fn board_lengths() -> &'static str {
    "Boards, 8 ft x 3 for three that are there"
}

/// A field: what one cut takes.
pub fn kerf() -> &'static str {
    "A cut takes"
}

/// Which width and thickness is planned, read aloud.
pub fn which_section() -> &'static str {
    "Which boards"
}

/// Boards whose width and thickness nobody has said.
pub fn any_section() -> &'static str {
    "any width"
}

/// `11 boards`.
pub fn so_many_boards(boards: u32) -> String {
    if boards == 1 { "1 board".to_owned() } else { format!("{boards} boards") }
}

/// Beside them, by number: what can't be beaten.
pub fn fewer_cant_be(least: u32, boards: u32) -> String {
    if least == boards {
        "fewer can\u{2019}t be".to_owned()
    } else {
        format!("fewer than {least} can\u{2019}t be")
    }
}

/// The same by the length that is bought.
pub fn less_cant_be(least: &str, bought: &str) -> String {
    if least == bought {
        format!("{bought} to buy, less can\u{2019}t be")
    } else {
        format!("{bought} to buy; less than {least} can\u{2019}t be")
    }
}

/// All of it is there.
pub fn nothing_to_buy() -> &'static str {
    "nothing to buy"
}

/// Of the boards that are bought: as they are, and as they are sold where less than an inch counts as one.
pub fn feet_to_buy(actual: &str, sold: &str) -> String {
    if actual == sold {
        actual.to_owned()
    } else {
        format!("{actual}; {sold} as sold, under 1 in counted as 1")
    }
}

/// A board, or several cut alike: `3 × 8 ft:`.
pub fn alike(boards: u32, length: &str) -> String {
    if boards == 1 { format!("{length}:") } else { format!("{boards} \u{d7} {length}:") }
}

/// Pieces out of one: `2 × Leg 28 in`.
pub fn piece(count: u32, name: &str, length: &str) -> String {
    if count == 1 { format!("{name} {length}") } else { format!("{count} \u{d7} {name} {length}") }
}

/// Left of each: `1 3/4 in left`.
pub fn left(rest: &str) -> String {
    format!("{rest} left")
}

/// Pieces that no board is left or long enough for.
pub fn no_board_for(pieces: &str) -> String {
    format!("No board is left or long enough for {pieces}.")
}

/// Nothing has a length, or all is cut.
pub fn nothing_to_cut() -> &'static str {
    "Nothing is left to cut that has a length."
}

/// By the field: too many pieces for one plan.
pub fn too_many() -> &'static str {
    "Too many pieces for one plan: plan some of them first."
}

/// By the field: lengths that can't be.
pub fn cant_be() -> &'static str {
    "A length here can\u{2019}t be."
}

/// By the field: no board at all.
pub fn no_boards() -> &'static str {
    "No board to cut from. Type it like 8 ft, 10 ft, or 8 ft x 3 for three that are there."
}

/// The filled key: a note of the build.
pub fn keep_plan() -> &'static str {
    "Keep the plan"
}

/// A mark.
pub fn marked_plan() -> &'static str {
    "the plan of cuts"
}

/// The plan as it is kept: which boards, what one cut takes, what can't be beaten, and board by board.
pub fn plan_note(section: &str, boards: &str, kerf: &str, bound: &str, cuts: &[String]) -> String {
    format!("Boards {section}: {boards}, {kerf} a cut; {bound}. {}", cuts.join(". "))
}
