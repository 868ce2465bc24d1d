//! Why typed text was not taken, and what would be: one sentence by the field. Nothing typed is ever lost.

use benchslate_core::measure::{Accepts, Dimension, Refusal, Why};

/// What stopped it and what is accepted instead.
pub fn sentence(refusal: &Refusal) -> String {
    let Refusal { why, accepts, .. } = refusal;
    match whole(*why) {
        Some(sentence) => sentence,
        // Nothing was typed, so nothing is kept as it was.
        None if *why == Why::Empty => [&stopped(*why), " ", accepted(*accepts)].concat(),
        None => together(&stopped(*why), accepted(*accepts)),
    }
}

/// What a field takes, in examples.
pub fn accepted(accepts: Accepts) -> &'static str {
    match accepts {
        Accepts::Quantity => "Type it as 23 3/4, 3' 4 5/8\", 22 mm, 1.2 m, 12 board feet or 946 ml.",
        Accepts::Amount => "Type an amount as 12, 12.50 or 12,50.",
        Accepts::Percent => "Type hundredths as 13 or 12.5 %.",
        Accepts::Whole => "Type a whole number, as 24.",
        Accepts::Footage => "Type it as 40, 40 s or 1:30.",
        Accepts::SetUp => "Type minutes as 15, or 1 h 15.",
        Accepts::Hours => "Type hours as 2 h 15, 2:15, 2.25 or 135 min.",
        Accepts::FilmTime => "Type a place in the film as 1:35 or 1:02:03.",
        Accepts::TimeOfDay => "Type a time as 08:05, 8.05 or 8 05 pm.",
        Accepts::FreeHours => "Type free hours as 18:00-21:00, or 9-13, 14-16.",
        Accepts::Day => "Type a day as 20 nov, 20.11., 2026-11-20 or yesterday.",
        Accepts::StoredDecimal => "A number in plain digits, as 12.50, belongs here.",
        Accepts::StoredDay => "A day as 2026-11-20 belongs here.",
        Accepts::StoredWhen => "A moment as 2026-11-20T08:05:00-05:00 belongs here.",
        Accepts::StoredUnit => "The code of a unit belongs here.",
    }
}

/// Causes whose sentence says by itself what to type.
fn whole(why: Why) -> Option<String> {
    Some(match why {
        Why::NothingUnderLine => {
            "The fraction has no bottom yet: type 2, 4, 8, 16 or 32, or tap one on the rule. Kept as typed."
                .to_owned()
        }
        Why::NoSuchMark => {
            "No rule has such a mark: type 2, 4, 8, 16, 32 or 64 under the line. Kept as typed.".to_owned()
        }
        Why::GroupedOrDecimal { grouped, decimal } => {
            format!(
                "Is it {0} or {1}? Type {0} without a mark, or {1}0. Kept as typed.",
                grouped.normalize(),
                decimal
            )
        }
        Why::DayOrMonthFirst { day_first, month_first } => {
            format!("Is it {day_first} or {month_first}? Type it that way. Kept as typed.")
        }
        Why::UnitMissing => {
            "A unit is missing: add in, ft, mm, m, board feet, ml or the like. Kept as typed.".to_owned()
        }
        Why::OtherKind { wanted, found } => {
            format!("This is {}, and {} is asked for. Kept as typed.", kind(found), kind(wanted))
        }
        Why::OverADay { minutes: Some(bare) } => format!(
            "{bare} is hours; for minutes type {bare} min or {}:{:02}. A stretch is 24 h at most. Kept as typed.",
            bare / 60,
            bare % 60
        ),
        Why::OverADay { minutes: None } => {
            "A stretch is 24 h at most: put what was worked on other days under those days. Kept as typed."
                .to_owned()
        }
        Why::Empty
        | Why::TooLong { .. }
        | Why::Unexpected { .. }
        | Why::Unfinished
        | Why::Grouping
        | Why::NothingAboveLine
        | Why::ZeroUnderLine
        | Why::FractionOverOne
        | Why::NotWhole
        | Why::Negative
        | Why::Nought
        | Why::TooLarge { .. }
        | Why::TooFine { .. }
        | Why::UnknownUnit
        | Why::FinerFirst
        | Why::MinutesOver59
        | Why::SecondsOver59
        | Why::SameTimes
        | Why::LongWindow { .. }
        | Why::NoSuchHour
        | Why::NoSuchDay
        | Why::AnotherCentury { .. }
        | Why::Exponent
        | Why::UnknownCode => return None,
    })
}

/// What stopped it; the sentence that says what is accepted follows.
fn stopped(why: Why) -> String {
    match why {
        Why::Empty => "Nothing typed yet.".to_owned(),
        Why::TooLong { most } => format!("Too long for this field: {most} signs fit, the rest is a note."),
        Why::Unexpected { found } => format!("“{found}” has no place here."),
        Why::Unfinished => "It stops half way.".to_owned(),
        Why::Grouping => "Leave out the marks between thousands.".to_owned(),
        Why::NothingAboveLine => "The fraction has no top yet.".to_owned(),
        Why::ZeroUnderLine => "Nothing can be divided by 0.".to_owned(),
        Why::FractionOverOne => "Beside a whole number a fraction is less than one.".to_owned(),
        Why::NotWhole => "Things come whole here.".to_owned(),
        Why::Negative => "It can't be less than 0.".to_owned(),
        Why::Nought => "It can't be 0.".to_owned(),
        Why::TooLarge { most } => format!("Larger than this field goes: at most {}.", most.normalize()),
        Why::TooFine { most } => format!("Finer than is kept: at most {most} digits after the point."),
        Why::UnknownUnit => "That is no unit known here.".to_owned(),
        Why::FinerFirst => "The larger unit comes first.".to_owned(),
        Why::MinutesOver59 => "Beside hours there are 59 minutes at most.".to_owned(),
        Why::SecondsOver59 => "Beside minutes there are 59 seconds at most.".to_owned(),
        Why::SameTimes => "It ends when it begins.".to_owned(),
        Why::LongWindow { hours, most } => format!(
            "That is {hours} h in one go, and {most} h is the most: the earlier time comes first, or make two of it."
        ),
        Why::NoSuchHour => "No clock shows that hour.".to_owned(),
        Why::NoSuchDay => "There is no such day in that month.".to_owned(),
        Why::AnotherCentury { first, last } => format!("Years from {first} to {last} are kept."),
        Why::Exponent => "Write the number out, without an e.".to_owned(),
        Why::UnknownCode => "A newer version wrote this code.".to_owned(),
        // Said by `whole`.
        Why::NothingUnderLine
        | Why::NoSuchMark
        | Why::GroupedOrDecimal { .. }
        | Why::DayOrMonthFirst { .. }
        | Why::UnitMissing
        | Why::OverADay { .. }
        | Why::OtherKind { .. } => String::new(),
    }
}

fn together(stopped: &str, accepted: &str) -> String {
    let mut sentence = String::from(stopped);
    sentence.push(' ');
    sentence.push_str(accepted);
    sentence.push_str(" Kept as typed.");
    sentence
}

fn kind(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Count => "a count",
        Dimension::Pack => "a number of packs",
        Dimension::Length => "a length",
        Dimension::Area => "an area",
        Dimension::Volume => "a volume",
        Dimension::Mass => "a weight",
        Dimension::BoardMeasure => "board measure",
    }
}

#[cfg(test)]
mod tests {
    use super::sentence;
    use benchslate_core::measure::{
        Unit, clock_text, duration,
        marks::{self, Hint},
        number,
    };

    #[track_caller]
    fn check(typed: &str, says: &str) {
        let hint = Hint { unit: Some(Unit::Inch), ..Hint::default() };
        let refusal = marks::quantity(typed, hint).err();
        let said = refusal.map(|refusal| sentence(&refusal)).unwrap_or_default();
        assert!(said.starts_with(says), "{typed}: {said}");
        assert_eq!(said.ends_with("Kept as typed."), !typed.is_empty(), "{typed}: {said}");
    }

    #[test]
    fn half_a_fraction_says_what_is_missing() {
        check("19 3/", "The fraction has no bottom yet: type 2, 4, 8, 16 or 32");
        check("/8", "The fraction has no top yet.");
        check("7/0", "Nothing can be divided by 0.");
    }

    #[test]
    fn what_can_be_read_in_two_ways_is_asked_about_with_both() {
        check("1,234", "Is it 1234 or 1.234? Type 1234 without a mark, or 1.2340.");
    }

    #[test]
    fn every_other_text_says_what_is_accepted() {
        check("", "Nothing typed yet. Type it as");
        check("-3", "It can't be less than 0. Type it as");
        check("1e30", "Write the number out");
        check("9999999999999999", "Larger than this field goes");
        check("12 furlongs", "That is no unit known here.");
        check(&"9".repeat(5000), "Too long for this field");
    }

    #[test]
    fn hours_of_more_than_a_day_say_how_minutes_are_typed() {
        let said = |typed| duration::stretch(typed).err().map(|it| sentence(&it)).unwrap_or_default();
        assert!(said("90").starts_with("90 is hours; for minutes type 90 min or 1:30."), "{}", said("90"));
        assert!(said("90 h").starts_with("A stretch is 24 h at most"), "{}", said("90 h"));
        assert!(said("0").starts_with("It can't be 0. Type hours as"), "{}", said("0"));
    }

    #[test]
    fn free_hours_that_make_no_window_say_the_way_out() {
        let said = |typed| clock_text::windows(typed).err().map(|it| sentence(&it)).unwrap_or_default();
        assert!(said("21-18").starts_with("That is 21 h in one go"), "{}", said("21-18"));
        assert!(said("9-9").starts_with("It ends when it begins. Type free hours as"), "{}", said("9-9"));
    }

    #[test]
    fn the_second_reading_is_taken_when_it_is_typed_as_said() {
        assert_eq!(
            number::amount("1.2340").ok().map(|it| it.normalize().to_string()),
            Some("1.234".to_owned())
        );
        assert_eq!(number::amount("1234").ok().map(|it| it.to_string()), Some("1234".to_owned()));
    }
}
