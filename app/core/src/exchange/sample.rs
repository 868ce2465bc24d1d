//! The sample shop: an invented journal, moved by whole weeks so that its last day is no more than six days ago.
//!
//! Days move by weeks; moments keep their local time in the shop's own zone, also over a change of the clock. The clock
//! that runs in it was begun 1 h 55 ago. Nothing of a line changes but its dates, and the stamp with them.
//! Not here: where its lines are kept (a database of its own).

use crate::{
    exchange::jsonl::{self, Bad},
    journal::{Body, Content, Journal, kinds::Stretch, line},
    measure::{Day, Instant, Seconds, When, Zone},
};

/// What its file is called.
pub const FILE_NAME: &str = "sample-shop.jsonl";
/// What the name of its backup begins with where somebody saves it: never as that of their own.
pub const SAVED_STEM: &str = "sample-shop";
/// The zone that its days are cut in (IANA).
pub const ZONE: &str = "America/Toronto";

/// Its last day, a Friday.
const LAST_DAY: (i32, u32, u32) = (2026, 11, 20);
/// How long its clock runs.
const RUNS: Seconds = Seconds(6_900);

/// The file with its dates moved. `zone`: the table of [`ZONE`].
///
/// # Errors
/// [`Bad`] where the file is no journal.
pub fn moved(file: &str, zone: &Zone, now: Instant) -> Result<String, Bad> {
    let incoming = jsonl::check(&Journal::default(), file)?;
    let weeks = weeks_since(zone.day(now));
    let mut text = String::with_capacity(file.len());
    for line in &incoming.lines {
        text.push_str(&moved_line(&line.text, weeks, zone, now));
        text.push('\n');
    }
    Ok(text)
}

/// Whole weeks from the sample's last day to a day; before it: below zero.
fn weeks_since(day: Day) -> i64 {
    let (year, month, date) = LAST_DAY;
    Day::of(year, month, date).map_or(0, |last| day.days_since(last).div_euclid(7))
}

fn moved_line(text: &str, weeks: i64, zone: &Zone, now: Instant) -> String {
    let begun = line::read(text).ok().and_then(|revision| match revision.content {
        Content::Body(Body::Stretch(Stretch { from: Some(from), to: None, .. })) => Some(from),
        Content::Body(_) | Content::Struck | Content::Newer | Content::Unreadable => None,
    });
    let begins = now.plus(Seconds(RUNS.0.saturating_neg())).minute();
    let move_one = |dated: &str| match begun {
        Some(from) if from.to_string() == dated => Some(zone.when(begins).to_string()),
        Some(_) | None => moved_date(dated, weeks, zone),
    };
    let pieces = text.split('"').enumerate().map(|(at, piece)| {
        // Between quotes stand the odd ones; the stamp's number stands between the key and the next.
        let within = !at.is_multiple_of(2);
        within.then(|| move_one(piece)).flatten().unwrap_or_else(|| piece.to_owned())
    });
    stamped(&pieces.collect::<Vec<String>>().join("\""), weeks)
}

/// A day or a moment, moved; anything else is none.
fn moved_date(text: &str, weeks: i64, zone: &Zone) -> Option<String> {
    let days = weeks.saturating_mul(7);
    if text.len() == 10 {
        return Day::parse(text).ok().map(|day| day.plus_days(days).to_string());
    }
    let (day, time) = When::parse(text).ok()?.local();
    Some(zone.when(zone.at(day.plus_days(days), time)).to_string())
}

/// The stamp, moved as far.
fn stamped(text: &str, weeks: i64) -> String {
    const KEY: &str = "\"ms\":";
    const WEEK_MS: i64 = 604_800_000;
    let moved = text.split_once(KEY).and_then(|(before, after)| {
        let digits = after.find(|it: char| !it.is_ascii_digit())?;
        let (number, rest) = after.split_at_checked(digits)?;
        let ms: i64 = number.parse().ok()?;
        Some(format!("{before}{KEY}{}{rest}", ms.saturating_add(weeks.saturating_mul(WEEK_MS))))
    });
    moved.unwrap_or_else(|| text.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{journal::Shop, timing::clocks};

    const SAMPLE: &str = include_str!("../../../../public/sample-shop.jsonl");

    /// Toronto in 2026 and 2027: UTC−5, in summer UTC−4.
    fn toronto() -> Zone {
        let changes = vec![
            (1_762_063_200, -18_000),
            (1_772_953_200, -14_400),
            (1_793_512_800, -18_000),
            (1_805_007_600, -14_400),
            (1_825_567_200, -18_000),
        ];
        Zone { name: ZONE.to_owned(), changes }
    }

    fn at(text: &str) -> Instant {
        When::parse(text).unwrap().instant
    }

    #[test]
    fn on_its_own_day_it_is_the_file_to_the_byte() {
        assert_eq!(moved(SAMPLE, &toronto(), at("2026-11-20T10:00:00-05:00")).unwrap(), SAMPLE);
    }

    #[test]
    fn it_moves_by_whole_weeks_and_keeps_its_local_times() {
        let now = at("2027-06-15T09:00:00-04:00");
        let text = moved(SAMPLE, &toronto(), now).unwrap();
        let mut journal = Journal::default();
        jsonl::check(&journal, &text).unwrap().merge_into(&mut journal);
        let (before, after) = (Shop::fold(&read(SAMPLE), &toronto()), Shop::fold(&journal, &toronto()));
        assert_eq!(before.stretches.len(), after.stretches.len());
        for (old, new) in before.stretches.iter().zip(&after.stretches).filter(|(old, _)| !old.runs()) {
            assert_eq!(new.order.day.days_since(old.order.day), 29 * 7);
            let local = |at: Option<Instant>| toronto().local(at.unwrap()).1;
            assert_eq!(local(new.from()), local(old.from()));
        }
        let clock = &clocks(&after, now)[0];
        assert_eq!(now.since(clock.from).0, RUNS.0);
        assert_eq!(after.odd, []);
    }

    #[test]
    fn before_its_own_day_it_moves_back() {
        assert_eq!(weeks_since(Day::parse("2026-11-19").unwrap()), -1);
        assert_eq!(weeks_since(Day::parse("2026-11-26").unwrap()), 0);
        assert_eq!(weeks_since(Day::parse("2026-11-27").unwrap()), 1);
    }

    fn read(text: &str) -> Journal {
        let mut journal = Journal::default();
        jsonl::check(&journal, text).unwrap().merge_into(&mut journal);
        journal
    }
}
