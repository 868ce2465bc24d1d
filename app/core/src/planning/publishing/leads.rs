//! What stands between the last cut and the publish date, and how many days each takes.
//!
//! Kept as a choice of the shop ([`SettingKey::PublishLeads`]), a line each, the last before publishing first:
//! `upload 1 calendar`, `own 2 working ask the hall`. A line that can't be read is told and left out.
//! Not here: on which days they fall (`super`).

use crate::journal::{Shop, kinds::DaysOf, kinds::SettingKey};
use std::fmt::Write;

macro_rules! leads {
    ($($name:ident $code:literal $says:literal)*) => {
        /// What takes its time.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum LeadOf { $(#[doc = $says] $name,)* }

        impl LeadOf {
            fn code(self) -> &'static str {
                match self { $(LeadOf::$name => $code,)* }
            }

            fn from_code(code: &str) -> Option<LeadOf> {
                match code { $($code => Some(LeadOf::$name),)* _ => None }
            }
        }
    };
}

leads! {
    Publish "publish" "Going out."
    Upload "upload" "Uploading, and what is checked there."
    Words "text" "Words under it, links, disclosure."
    Captions "captions" "Captions."
    Review "review" "Whoever pays for it looks at the cut."
    Lock "lock" "The edit is locked and the cut sent."
    Own "own" "In the maker's own words."
}

/// One of the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Lead {
    /// What.
    pub of: LeadOf,
    /// The maker's words for it; empty: what it is, says it.
    pub words: String,
    /// How many days before what comes after it; below zero is odd, and told.
    pub days: i32,
    /// Of which days.
    pub count: DaysOf,
}

/// What is taken where the maker has no list: a day for each, three of theirs for a review. Source: common practice;
/// said so wherever it is used.
pub fn common() -> Vec<Lead> {
    let lead = |of, days, count| Lead { of, words: String::new(), days, count };
    vec![
        lead(LeadOf::Publish, 0, DaysOf::Working),
        lead(LeadOf::Upload, 1, DaysOf::Calendar),
        lead(LeadOf::Words, 1, DaysOf::Working),
        lead(LeadOf::Captions, 1, DaysOf::Working),
        lead(LeadOf::Review, 3, DaysOf::Theirs),
        lead(LeadOf::Lock, 0, DaysOf::Working),
    ]
}

/// The maker's own list; none: there is none. Beside it, which lines of it can't be read, from 1.
pub fn own(shop: &Shop) -> (Option<Vec<Lead>>, Vec<usize>) {
    let Some(text) = shop.settings.latest(SettingKey::PublishLeads) else { return (None, Vec::new()) };
    let (mut leads, mut odd) = (Vec::new(), Vec::new());
    for (line, at) in text.lines().zip(1..) {
        match read(line) {
            Some(lead) => leads.push(lead),
            None => odd.push(at),
        }
    }
    ((!leads.is_empty()).then_some(leads), odd)
}

/// As it is kept.
pub fn text(leads: &[Lead]) -> String {
    let mut text = String::new();
    for lead in leads {
        let count = match lead.count {
            DaysOf::Calendar => "calendar",
            DaysOf::Working => "working",
            DaysOf::Theirs => "theirs",
        };
        // Words stand on their own line whatever was typed.
        let words = lead.words.split_whitespace().collect::<Vec<_>>().join(" ");
        let _ = writeln!(text, "{} {} {count} {words}", lead.of.code(), lead.days);
    }
    text.lines().map(str::trim_end).collect::<Vec<_>>().join("\n")
}

fn read(line: &str) -> Option<Lead> {
    let mut words = line.splitn(4, ' ');
    let of = LeadOf::from_code(words.next()?)?;
    let days = words.next()?.parse().ok()?;
    let count = match words.next()? {
        "calendar" => DaysOf::Calendar,
        "working" => DaysOf::Working,
        "theirs" => DaysOf::Theirs,
        _ => return None,
    };
    Some(Lead { of, words: words.next().unwrap_or_default().to_owned(), days, count })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixture::fixture;
    use proptest::prelude::*;

    #[test]
    fn a_list_that_is_kept_is_read_again() {
        assert_eq!(text(&common()).lines().filter_map(read).collect::<Vec<_>>(), common());
        assert_eq!(text(&common()).lines().nth(4), Some("review 3 theirs"));
    }

    #[test]
    fn without_a_choice_there_is_no_list_of_ones_own() {
        assert_eq!(own(&fixture("").shop()), (None, Vec::new()));
    }

    #[test]
    fn what_can_not_be_read_is_no_lead() {
        for line in ["", "upload", "upload one calendar", "upload 1", "upload 1 weeks", "dance 1 working"] {
            assert_eq!(read(line), None, "{line}");
        }
        assert_eq!(read("upload -2 calendar").map(|it| it.days), Some(-2), "told as below zero");
    }

    proptest! {
        #[test]
        fn any_words_of_the_maker_survive(words in "\\PC{0,30}", days in any::<i32>()) {
            let lead = Lead { of: LeadOf::Own, words, days, count: DaysOf::Working };
            let kept = text(std::slice::from_ref(&lead));
            let again: Vec<Lead> = kept.lines().filter_map(read).collect();
            let tidy = lead.words.split_whitespace().collect::<Vec<_>>().join(" ");
            prop_assert_eq!(again, vec![Lead { words: tidy, ..lead }]);
        }
    }
}
