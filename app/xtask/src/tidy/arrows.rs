//! Law: inside core arrows run one way, `measure <- journal <- timing <- costing <- planning <- exchange`, and core
//! never reads a clock, a disk or a random source.

use super::Finding;
use super::source::{Source, is_word, line_of};

const CORE: &str = "app/core/src/";

/// A room may name those before it, never those after.
const ROOMS: [&str; 6] = ["measure", "journal", "timing", "costing", "planning", "exchange"];

/// What core may not read, and what it takes in its place.
const CLOSED: [(&str, &str); 9] = [
    ("SystemTime", "an `Instant` passed in"),
    ("Instant::now", "an `Instant` passed in"),
    ("Local::now", "an `Instant` and a `Zone` passed in"),
    ("Utc::now", "an `Instant` passed in"),
    ("std::env", "an argument"),
    ("std::fs", "bytes passed in"),
    ("std::net", "bytes passed in"),
    ("std::thread", "slices of work that the caller spreads"),
    ("RandomState", "`FxHashMap`, or a `BTreeMap` for what a file may fill"),
];

/// Arrows that point the wrong way.
pub fn arrows(sources: &[Source]) -> Vec<Finding> {
    let mut findings = Vec::new();
    for source in sources {
        let Some((room, own)) = room(&source.path) else { continue };
        for (at, target) in named_rooms(source) {
            if ROOMS.iter().position(|name| *name == target).is_some_and(|place| place > own) {
                findings.push(Finding::new(
                    source,
                    line_of(&source.code, at),
                    format!("{room} may not know {target} (arrows run {})", ROOMS.join(" <- ")),
                    format!("move what both need down into {room} or below, or this up into {target}"),
                ));
            }
        }
    }
    findings
}

/// Doors to the outside that core must not have.
pub fn closed(sources: &[Source]) -> Vec<Finding> {
    let mut findings = Vec::new();
    for source in sources.iter().filter(|source| source.path.starts_with(CORE)) {
        for (word, instead) in CLOSED {
            for (at, _) in source.code.match_indices(word).filter(|(at, _)| is_word(&source.code, *at, word))
            {
                let law = format!("core has no clock, no disk, no chance: `{word}`");
                findings.push(Finding::new(source, line_of(&source.code, at), law, instead.to_string()));
            }
        }
    }
    findings
}

fn room(path: &str) -> Option<(&'static str, usize)> {
    let rest = path.strip_prefix(CORE)?;
    let first = rest.split(['/', '.']).next()?;
    let place = ROOMS.iter().position(|name| *name == first)?;
    Some((ROOMS.get(place)?, place))
}

/// Every room named by a path of this file, with where: `crate::room`, `crate::{room, …}`, `super::super::room`.
fn named_rooms(source: &Source) -> Vec<(usize, String)> {
    let code = &source.code;
    let mut named = Vec::new();
    for (at, _) in code.match_indices("crate::").filter(|(at, _)| is_word(code, *at, "crate")) {
        let rest = code.get(at + "crate::".len()..).unwrap_or_default();
        named.extend(firsts(rest).into_iter().map(|name| (at, name)));
    }
    let depth = depth(&source.path);
    for (at, _) in code.match_indices("super::") {
        if code.get(..at).is_some_and(|before| before.ends_with("super::")) {
            continue;
        }
        let chain = code.get(at..).unwrap_or_default();
        let rest = chain.trim_start_matches("super::");
        // As many steps as reach the crate, or one more from an inner module.
        if ((chain.len() - rest.len()) / "super::".len()).saturating_sub(depth) <= 1 {
            let long_enough = (chain.len() - rest.len()) / "super::".len() >= depth;
            named.extend(firsts(rest).into_iter().filter(|_| long_enough).map(|name| (at, name)));
        }
    }
    named
}

/// The first names of a path: one, or those of a `{…}` list at its outer level.
fn firsts(rest: &str) -> Vec<String> {
    let name =
        |text: &str| text.trim_start().chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect();
    let Some(list) = rest.strip_prefix('{') else { return vec![name(rest)] };
    let (mut depth, mut start, mut names) = (0_i32, 0, Vec::new());
    for (at, c) in list.char_indices() {
        match c {
            '{' => depth += 1,
            '}' | ',' if depth == 0 => {
                names.push(name(list.get(start..at).unwrap_or_default()));
                start = at + 1;
                if c == '}' {
                    break;
                }
            }
            '}' => depth -= 1,
            _ => {}
        }
    }
    names
}

/// How many modules below the crate a file's own module stands.
fn depth(path: &str) -> usize {
    let rest = path.strip_prefix(CORE).unwrap_or(path);
    let rest = rest.trim_end_matches(".rs").trim_end_matches("/mod");
    rest.split('/').count()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(path: &str, text: &str, findings: usize) {
        assert_eq!(arrows(&[Source::new(path, text)]).len(), findings, "{path}: {text}");
    }

    #[test]
    fn an_arrow_against_the_grain_is_found_in_each_of_its_writings() {
        check("app/core/src/measure/money.rs", "use crate::costing::Statement;", 1);
        check("app/core/src/journal/mod.rs", "use crate::{measure::Money, timing::{Act, Clock}};", 1);
        check("app/core/src/timing/acts.rs", "fn f(x: crate::exchange::Bad) {}", 1);
        check("app/core/src/timing/acts.rs", "use super::super::costing::Rule;", 1);
        check("app/core/src/journal/kinds/lot.rs", "use super::super::super::{costing, measure};", 1);
    }

    #[test]
    fn an_arrow_with_the_grain_and_a_word_in_a_comment_are_left_alone() {
        check("app/core/src/exchange/mod.rs", "use crate::{costing, measure};", 0);
        check(
            "app/core/src/measure/mod.rs",
            "// crate::costing rounds later\nlet a = \"crate::costing\";",
            0,
        );
        check("app/core/src/journal/kinds/lot.rs", "use super::costing_notes; use super::super::order;", 0);
        check("app/web/src/main.rs", "use crate::exchange;", 0);
    }

    #[test]
    fn a_clock_of_its_own_is_found_in_core_and_nowhere_else() {
        let text = "let now = std::time::Instant::now();";
        assert_eq!(closed(&[Source::new("app/core/src/timing/mod.rs", text)]).len(), 1);
        assert_eq!(closed(&[Source::new("app/xtask/src/bench.rs", text)]).len(), 0);
    }
}
