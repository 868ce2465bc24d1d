//! Law: every declared pair of roles reaches its contrast, by day and by night, computed from the tokens by the
//! formula of WCAG 2 (relative luminance and contrast ratio, W3C Recommendation WCAG 2.2).

use super::Finding;
use super::source::{Source, line_of};
use super::views::without_comments;
use std::collections::BTreeMap;

const TOKENS: &str = "style/tokens.css";
const PAIRS: &str = "style/pairs.txt";

/// Roles by name; a value is a colour or another role.
type Roles = BTreeMap<String, String>;

/// One declaration of a custom property.
struct Declared {
    /// The selectors and conditions around it.
    within: String,
    name: String,
    value: String,
    line: usize,
}

/// The declared pairs against the tokens. Either file missing is a finding.
pub fn contrast(sources: &[Source]) -> Vec<Finding> {
    let file = |path: &str| sources.iter().find(|source| source.path == path);
    let (Some(tokens), Some(pairs)) = (file(TOKENS), file(PAIRS)) else {
        let law = "words 7:1, lines 3:1".to_string();
        let instead = format!("{TOKENS} with the roles and {PAIRS} with `role on role ratio` lines");
        return vec![Finding::new(&Source::new(PAIRS, ""), 1, law, instead)];
    };
    let declared = declared(&without_comments(&tokens.text));
    let mut findings = two_nights(tokens, &declared);
    for night in [false, true] {
        findings.extend(pairs_in(pairs, &roles(&declared, night), night));
    }
    findings
}

/// Contrast of two colours, 1 to 21.
fn ratio(a: [u8; 3], b: [u8; 3]) -> f64 {
    let (a, b) = (luminance(a), luminance(b));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

fn luminance(colour: [u8; 3]) -> f64 {
    let [red, green, blue] = colour.map(|channel| {
        let part = f64::from(channel) / 255.0;
        if part <= 0.04045 { part / 12.92 } else { ((part + 0.055) / 1.055).powf(2.4) }
    });
    0.2126 * red + 0.7152 * green + 0.0722 * blue
}

fn pairs_in(pairs: &Source, roles: &Roles, night: bool) -> Vec<Finding> {
    let mut findings = Vec::new();
    let mut seen = 0;
    for (number, line) in pairs.text.lines().enumerate() {
        let words: Vec<&str> = line.split('#').next().unwrap_or_default().split_whitespace().collect();
        if words.is_empty() {
            continue;
        }
        seen += 1;
        let when = if night { "by night" } else { "by day" };
        let (law, instead) = match words.as_slice() {
            [ink, "on", ground, least] => {
                match (colour(roles, ink), colour(roles, ground), least.parse::<f64>()) {
                    (Some(a), Some(b), Ok(least)) if least >= 3.0 && ratio(a, b) >= least => continue,
                    (Some(a), Some(b), Ok(_)) => (
                        format!("{ink} on {ground} is {:.2}:1 {when}, wanted {least}:1", ratio(a, b)),
                        "another value in the tokens; words 7, lines 3 at least".to_string(),
                    ),
                    _ => (
                        format!("no such roles or ratio {when}: {line}"),
                        format!("roles as named in {TOKENS}"),
                    ),
                }
            }
            _ => (format!("not a pair: {line}"), "write `role on role ratio`".to_string()),
        };
        findings.push(Finding::new(pairs, number + 1, law, instead));
    }
    if seen == 0 {
        findings.push(Finding::new(
            pairs,
            1,
            "no pair is declared".into(),
            "`role on role ratio` lines".into(),
        ));
    }
    findings
}

/// The values that hold by day, or by night. Forced colours are the system's own.
fn roles(declared: &[Declared], night: bool) -> Roles {
    let holds = |one: &&Declared| !one.within.contains("forced-colors") && (night || !is_night(&one.within));
    declared.iter().filter(holds).map(|one| (one.name.clone(), one.value.clone())).collect()
}

fn is_night(within: &str) -> bool {
    within.contains("dark")
}

/// Night may stand twice, as the device asks and as the shop chose: then it must be the same night.
fn two_nights(tokens: &Source, declared: &[Declared]) -> Vec<Finding> {
    let mut first: BTreeMap<&str, &Declared> = BTreeMap::new();
    let mut findings = Vec::new();
    for one in declared.iter().filter(|one| is_night(&one.within)) {
        let before = *first.entry(&one.name).or_insert(one);
        if before.value != one.value {
            let law = format!("--{} has two nights: {} and {}", one.name, before.value, one.value);
            findings.push(Finding::new(tokens, one.line, law, format!("the value of line {}", before.line)));
        }
    }
    findings
}

/// The colour behind a role, through as many roles as it takes.
fn colour(roles: &Roles, name: &str) -> Option<[u8; 3]> {
    let mut value = roles.get(name)?;
    for _ in 0..roles.len() {
        match value.strip_prefix("var(--").and_then(|rest| rest.strip_suffix(')')) {
            Some(next) => value = roles.get(next.trim())?,
            None => break,
        }
    }
    let hex = value.strip_prefix('#').filter(|hex| hex.len() == 6)?;
    let channel = |at: usize| u8::from_str_radix(hex.get(at..at + 2)?, 16).ok();
    Some([channel(0)?, channel(2)?, channel(4)?])
}

/// Every custom property with what stands around it.
fn declared(css: &str) -> Vec<Declared> {
    let mut found = Vec::new();
    let mut around: Vec<&str> = Vec::new();
    let mut start = 0;
    for (at, c) in css.char_indices().filter(|(_, c)| matches!(c, '{' | '}' | ';')) {
        let piece = css.get(start..at).unwrap_or_default();
        match piece.trim().strip_prefix("--").and_then(|rest| rest.split_once(':')) {
            Some((name, value)) if c != '{' => found.push(Declared {
                within: around.join(" "),
                name: name.trim().to_string(),
                value: value.trim().to_string(),
                line: line_of(css, at),
            }),
            _ => {}
        }
        match c {
            '{' => around.push(piece.trim()),
            '}' => drop(around.pop()),
            _ => {}
        }
        start = at + 1;
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    const DAY: &str =
        ":root { --raw-ink: #000000; --film: #ffffff; --ink: var(--raw-ink); --hair: #777777; }";
    const NIGHT: &str =
        "@media (prefers-color-scheme: dark) { :root { --raw-ink: #ffffff; --film: #000000; } }";

    fn check(tokens: &str, pairs: &str) -> Vec<String> {
        let sources = [Source::new(TOKENS, tokens), Source::new(PAIRS, pairs)];
        contrast(&sources).iter().map(Finding::to_string).collect()
    }

    #[test]
    fn black_on_white_is_twenty_one_and_the_first_grey_that_passes_four_and_a_half_is_767676() {
        // Source: published. WCAG 2.2 gives 21:1 as the greatest ratio; #767676 on white is the W3C's own example of 4.54:1.
        assert!((ratio([0; 3], [255; 3]) - 21.0).abs() < 1e-9);
        assert!((ratio([0x76; 3], [255; 3]) - 4.54).abs() < 0.005);
        assert!(ratio([0x77; 3], [255; 3]) < 4.5);
    }

    #[test]
    fn a_pair_that_reaches_its_ratio_by_day_and_night_passes() {
        assert_eq!(check(&format!("{DAY} {NIGHT}"), "# words\nink on film 7\n"), Vec::<String>::new());
    }

    #[test]
    fn a_pair_too_faint_in_one_light_is_found_with_its_line() {
        let found = check(&format!("{DAY} {NIGHT}"), "ink on film 7\nhair on film 4.5\n");
        assert_eq!(found.len(), 1, "{found:?}");
        assert!(found.concat().starts_with("style/pairs.txt:2: hair on film is 4.48:1 by day"), "{found:?}");
    }

    #[test]
    fn a_missing_role_a_missing_file_and_an_empty_list_are_found() {
        assert_eq!(check(DAY, "ink on slate 7").len(), 2);
        assert_eq!(check(DAY, "").len(), 2);
        assert_eq!(contrast(&[]).len(), 1);
    }

    #[test]
    fn two_nights_that_differ_are_found() {
        let chosen = ":root[data-theme=\"dark\"] { --film: #000001; --raw-ink: #ffffff; }";
        let found = check(&format!("{DAY} {NIGHT} {chosen}"), "ink on film 7");
        assert!(found.concat().contains("two nights"), "{found:?}");
    }
}
