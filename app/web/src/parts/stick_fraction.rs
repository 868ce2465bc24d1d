//! Text in which proper fractions are drawn as on a stick: `19 3/8` with its 3 over its 8.
//!
//! Halves, quarters and eighths are signs of the face; sixteenths and finer are stacked by hand.
//! The text read aloud stays as written.
use crate::dom::{prelude::*, several};

/// A run of text, or a fraction drawn in its place.
#[derive(Debug, PartialEq, Eq)]
enum Run {
    Plain(String),
    Fraction { over: String, under: String },
}

/// `text` with its proper fractions stacked.
#[component]
pub fn StickFraction(#[prop(into)] text: Signal<String>) -> impl IntoView {
    move || stick(&text.read())
}

/// The same for a text that does not change.
pub fn stick(text: &str) -> AnyView {
    several(runs(text).into_iter().map(draw))
}

fn draw(run: Run) -> AnyView {
    match run {
        Run::Plain(text) => text.draw(),
        Run::Fraction { over, under } => {
            let said = format!(" {over}/{under}");
            let drawn = match sign(&over, &under) {
                Some(sign) => view! { <span aria-hidden="true">{sign}</span> },
                None => view! {
                    <span class="fr" aria-hidden="true"><span>{over}</span><span>{under}</span></span>
                },
            };
            view! { {drawn}<span class="vh">{said}</span> }
        }
    }
}

/// The face's own sign for a fraction.
fn sign(over: &str, under: &str) -> Option<&'static str> {
    Some(match (over, under) {
        ("1", "2") => "½",
        ("1", "4") => "¼",
        ("3", "4") => "¾",
        ("1", "8") => "⅛",
        ("3", "8") => "⅜",
        ("5", "8") => "⅝",
        ("7", "8") => "⅞",
        _ => return None,
    })
}

fn runs(text: &str) -> Vec<Run> {
    let mut out = Vec::new();
    let mut plain = String::new();
    for word in text.split_inclusive(' ') {
        let Some((over, under, rest)) = fraction(word) else {
            plain.push_str(word);
            continue;
        };
        // A fraction after a whole number stands against it, without the gap.
        if plain.trim_end().ends_with(|c: char| c.is_ascii_digit()) {
            plain.truncate(plain.trim_end().len());
        }
        out.push(Run::Plain(std::mem::take(&mut plain)));
        out.push(Run::Fraction { over: over.to_owned(), under: under.to_owned() });
        plain.push_str(rest);
    }
    out.push(Run::Plain(plain));
    out.retain(|run| !matches!(run, Run::Plain(text) if text.is_empty()));
    out
}

/// `3/8"` as `("3", "8", "\"")`; `None` for what is no proper fraction (`8/4`, a stock thickness) or goes on (`3/4/5`).
fn fraction(word: &str) -> Option<(&str, &str, &str)> {
    let (over, after) = word.split_once('/')?;
    let end = after.find(|c: char| !c.is_ascii_digit()).unwrap_or(after.len());
    let (under, rest) = after.split_at_checked(end)?;
    let proper = over.parse::<u16>().ok()? < under.parse::<u16>().ok()?;
    (proper && !rest.starts_with(['/', '.'])).then_some((over, under, rest))
}

#[cfg(test)]
mod tests {
    use super::{Run, runs};

    #[track_caller]
    fn check(text: &str, want: &str) {
        let drawn: String = runs(text)
            .into_iter()
            .map(|run| match run {
                Run::Plain(text) => text,
                Run::Fraction { over, under } => format!("[{over}:{under}]"),
            })
            .collect();
        assert_eq!(drawn, want);
    }

    #[test]
    fn a_proper_fraction_stands_against_its_whole_number() {
        check("Use 19 3/8 in", "Use 19[3:8] in");
        check("3' 4 5/16\"", "3' 4[5:16]\"");
        check("1/4 tin", "[1:4] tin");
    }

    #[test]
    fn a_stock_thickness_and_a_date_stay_as_written() {
        check("Walnut, 8/4", "Walnut, 8/4");
        check("on 1/2/26", "on 1/2/26");
        check("3/", "3/");
    }
}
