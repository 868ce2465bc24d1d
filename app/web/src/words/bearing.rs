//! Choices about what hours bear: power, a normal month, both sides.

/// Over the choice, and what a mark calls it.
pub fn power() -> &'static str {
    "Power"
}

/// One of the two.
pub fn power_in(month: bool) -> &'static str {
    if month { "in the month" } else { "in the tools" }
}

/// The same in a mark.
pub fn power_is(month: bool) -> String {
    format!("Power: {}", power_in(month))
}

/// A field.
pub fn a_kwh() -> &'static str {
    "A kWh"
}

/// Over the hours of a normal month.
pub fn normal_month() -> &'static str {
    "A normal month"
}

/// A field.
pub fn all_hours() -> &'static str {
    "Hours, all"
}

/// A field.
pub fn film_hours() -> &'static str {
    "Of them, film"
}

/// Own hours, as a suggestion.
pub fn suggested(hours: &str, film: &str, months: usize) -> String {
    let over = match months {
        1 => "last month".to_owned(),
        _ => format!("the last {months} months"),
    };
    format!("Your own over {over}: {hours} h a month on builds and lots, {film} h of them film.")
}

/// Over the key.
pub fn both_sides() -> &'static str {
    "What is for both sides"
}

/// One of the keys.
pub fn key(at: usize) -> &'static str {
    match at {
        0 => "by hours",
        1 => "fixed",
        _ => "by income",
    }
}

/// A field.
pub fn film_share() -> &'static str {
    "Film, fixed share"
}

/// A field.
pub fn slow_down() -> &'static str {
    "Filming slows by"
}

/// Fixed was tapped, and no share is typed.
pub fn type_the_share() -> &'static str {
    "Type the film\u{2019}s share, as 40, then keep it."
}

/// Under them.
pub fn how_both() -> &'static str {
    "By hours: as the direct hours of piece and film stand to each other. By income: as what each side is expected to bring in."
}

/// A row of the shop.
pub fn power_a_kwh() -> &'static str {
    "Power, a kWh"
}

/// The fixed share, in a row.
pub fn film_takes(share: &str) -> String {
    format!("film {share} %")
}

/// From when a price or hours hold.
pub fn from_when() -> &'static str {
    "The first ones hold from the beginning; new ones from the day above, else from today."
}
