//! Chapters of a film: a plain list of times, and WebVTT.
//!
//! A chapter ends where the next begins; the last ends with the film. Source: WebVTT, W3C: cues in the order of their
//! start; no arrow and no empty line in their words, `&` and `<` escaped; one may lie within another, none overlaps
//! another in part. Times of ours are whole seconds; cues that others made may have thousandths.
//! Not here: how a time is typed (`measure::film_time`); which shots can be chapters (`from_takes`).

mod from_takes;

pub use from_takes::{Misfit, Taken, fits, from_takes, next_after};

use crate::{
    journal::{Id, Shop},
    measure::{Quantity, film_time, fixed, limits},
};
use std::fmt::Write;

/// The type that WebVTT is saved under.
pub const MEDIA_TYPE: &str = "text/vtt";

/// Where a chapter begins.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mark {
    /// What it is called.
    pub title: String,
    /// Seconds from the start of the film.
    pub at: u32,
}

/// From and to in thousandths of a second, and words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cue {
    /// It begins.
    pub from: u64,
    /// It is over.
    pub to: u64,
    /// What it is called.
    pub title: String,
}

/// Why there is no list. Places count from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// There are no chapters.
    None,
    /// A chapter begins before the one that stands before it.
    Backwards {
        /// Which.
        place: usize,
        /// Where it begins.
        at: u32,
    },
    /// Two begin at one time.
    SameTime {
        /// The second of them.
        place: usize,
        /// Where they begin.
        at: u32,
    },
    /// A chapter begins where the film is over.
    BeyondEnd {
        /// Which.
        place: usize,
        /// Where it begins.
        at: u32,
        /// Length of the film.
        length: u32,
    },
    /// A chapter has no words.
    NoTitle {
        /// Which.
        place: usize,
    },
    /// Nobody has said how long the film is.
    NoLength,
    /// Two cues overlap in part, or one ends before it begins.
    Overlap {
        /// The second of them.
        place: usize,
    },
}

/// The chapters of a build's film, by where they begin.
pub fn of_build(shop: &Shop, build: Id) -> Vec<Mark> {
    let all = shop.chapters_of(build).into_iter();
    all.map(|it| Mark { title: it.body.title.clone(), at: it.body.at }).collect()
}

/// How long the film is, in whole seconds: as it went out, else as it is planned.
pub fn length(shop: &Shop, build: Id) -> Option<u32> {
    let out = shop.films.get(&build).and_then(|it| it.finished);
    let minutes = out.or_else(|| shop.builds.get(&build)?.film_planned)?;
    seconds(minutes).filter(|it| *it <= limits::MOST_FILM_SECONDS)
}

fn seconds(minutes: Quantity) -> Option<u32> {
    u32::try_from(fixed::mul_div(minutes.micros(), 60, fixed::SCALE)?).ok()
}

/// Whether chapters can be given out. `length`: of the film, where it is known.
///
/// # Errors
/// [`Fault`].
pub fn check(marks: &[Mark], length: Option<u32>) -> Result<(), Fault> {
    if marks.is_empty() {
        return Err(Fault::None);
    }
    let mut before = None;
    for (mark, place) in marks.iter().zip(1..) {
        let at = mark.at;
        match before {
            Some(before) if at == before => return Err(Fault::SameTime { place, at }),
            Some(before) if at < before => return Err(Fault::Backwards { place, at }),
            Some(_) | None => {}
        }
        if plain(&mark.title).is_empty() {
            return Err(Fault::NoTitle { place });
        }
        if let Some(length) = length.filter(|length| at >= *length) {
            return Err(Fault::BeyondEnd { place, at, length });
        }
        before = Some(at);
    }
    Ok(())
}

/// As it is pasted under a film: `0:00 The floor comes up`.
///
/// # Errors
/// [`Fault`].
pub fn list(marks: &[Mark], length: Option<u32>) -> Result<String, Fault> {
    check(marks, length)?;
    let line = |mark: &Mark| format!("{} {}", film_time::shown(mark.at), plain(&mark.title));
    Ok(marks.iter().map(line).collect::<Vec<_>>().join("\n"))
}

/// As a file of WebVTT.
///
/// # Errors
/// [`Fault`].
pub fn vtt(marks: &[Mark], length: Option<u32>) -> Result<String, Fault> {
    check(marks, length)?;
    let length = length.ok_or(Fault::NoLength)?;
    let ends = marks.iter().skip(1).map(|it| it.at).chain([length]);
    let thousandths = |seconds: u32| u64::from(seconds).saturating_mul(1000);
    let cue = |(mark, end): (&Mark, u32)| Cue {
        from: thousandths(mark.at),
        to: thousandths(end),
        title: mark.title.clone(),
    };
    cues(&marks.iter().zip(ends).map(cue).collect::<Vec<_>>())
}

/// Cues as they stand: one after the other, or one within another.
///
/// # Errors
/// [`Fault::Backwards`], [`Fault::Overlap`], [`Fault::NoTitle`].
pub fn cues(cues: &[Cue]) -> Result<String, Fault> {
    let mut file = String::from("WEBVTT\n");
    let mut around: Vec<&Cue> = Vec::new();
    for (cue, place) in cues.iter().zip(1..) {
        if cue.to <= cue.from {
            return Err(Fault::Overlap { place });
        }
        let before = place.checked_sub(2).and_then(|at| cues.get(at));
        if before.is_some_and(|before| before.from > cue.from) {
            let at = u32::try_from(cue.from / 1000).unwrap_or(u32::MAX);
            return Err(Fault::Backwards { place, at });
        }
        while around.last().is_some_and(|it| it.to <= cue.from) {
            around.pop();
        }
        if around.last().is_some_and(|it| it.to < cue.to) {
            return Err(Fault::Overlap { place });
        }
        around.push(cue);
        let title = plain(&cue.title);
        if title.is_empty() {
            return Err(Fault::NoTitle { place });
        }
        let _ = write!(file, "\n{} --> {}\n{}\n", stamp(cue.from), stamp(cue.to), escaped(&title));
    }
    Ok(file)
}

/// `00:00:10.700`: hours too, always, and a full stop.
fn stamp(thousandths: u64) -> String {
    let (seconds, rest) = (thousandths / 1000, thousandths % 1000);
    let (minutes, second) = (seconds / 60, seconds % 60);
    format!("{:02}:{:02}:{second:02}.{rest:03}", minutes / 60, minutes % 60)
}

/// On one line: an empty one would end the cue.
fn plain(title: &str) -> String {
    let spaced: String = title.chars().map(|it| if it.is_control() { ' ' } else { it }).collect();
    spaced.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// With the closing bracket escaped too, no arrow is left.
fn escaped(title: &str) -> String {
    title.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn marks(all: &[(u32, &str)]) -> Vec<Mark> {
        all.iter().map(|(at, title)| Mark { title: (*title).to_owned(), at: *at }).collect()
    }

    #[test]
    fn a_chapter_ends_where_the_next_begins() {
        let all =
            marks(&[(0, "The floor comes up"), (95, "Nails & <grit>"), (3_700, "Oil --> wax\n\nand done")]);
        let list = list(&all, Some(3_720)).unwrap();
        assert_eq!(list, "0:00 The floor comes up\n1:35 Nails & <grit>\n1:01:40 Oil --> wax and done");
        let vtt = vtt(&all, Some(3_720)).unwrap();
        let want = "WEBVTT\n\n00:00:00.000 --> 00:01:35.000\nThe floor comes up\n\n\
                    00:01:35.000 --> 01:01:40.000\nNails &amp; &lt;grit&gt;\n\n\
                    01:01:40.000 --> 01:02:00.000\nOil --&gt; wax and done\n";
        assert_eq!(vtt, want);
    }

    #[test]
    fn chapters_out_of_order_or_at_one_time_are_refused() {
        let fault = |all: &[(u32, &str)], length| vtt(&marks(all), length).unwrap_err();
        assert_eq!(fault(&[], Some(60)), Fault::None);
        assert_eq!(fault(&[(30, "a"), (10, "b")], Some(60)), Fault::Backwards { place: 2, at: 10 });
        assert_eq!(fault(&[(0, "a"), (10, "b"), (10, "c")], Some(60)), Fault::SameTime { place: 3, at: 10 });
        assert_eq!(
            fault(&[(0, "a"), (60, "b")], Some(60)),
            Fault::BeyondEnd { place: 2, at: 60, length: 60 }
        );
        assert_eq!(fault(&[(0, " \n")], Some(60)), Fault::NoTitle { place: 1 });
        assert_eq!(fault(&[(0, "a")], None), Fault::NoLength);
        assert_eq!(list(&marks(&[(0, "a")]), None), Ok("0:00 a".to_owned()), "a list needs no length");
    }

    proptest! {
        #[test]
        fn any_titles_make_whole_cues(titles in prop::collection::vec(any::<String>(), 1..8)) {
            let all: Vec<Mark> =
                (0..).step_by(10).zip(&titles).map(|(at, title)| Mark { title: title.clone(), at }).collect();
            let Ok(file) = vtt(&all, Some(1_000)) else {
                prop_assert!(titles.iter().any(|it| plain(it).is_empty()));
                return Ok(());
            };
            let blocks: Vec<&str> = file.trim_end().split("\n\n").collect();
            prop_assert_eq!(blocks.len(), all.len() + 1);
            prop_assert_eq!(file.matches("-->").count(), all.len());
        }
    }
}
