//! Laws of what a browser reads: one door to storage, no inline style, no raw HTML, no address of anyone else's, no
//! colour outside the tokens.

use super::Finding;
use super::source::{Source, is_word, line_of};

const WEB: &str = "app/web/src/";
const DOOR: &str = "app/web/src/store/";
const TOKENS: &str = "style/tokens.css";

/// Words by which the browser's storage is reached.
const STORAGE: [&str; 8] = [
    "IdbFactory",
    "IdbDatabase",
    "IdbTransaction",
    "IdbObjectStore",
    "indexed_db",
    "local_storage",
    "session_storage",
    "gloo_storage",
];

/// Ways to put text on a page as HTML.
const RAW_HTML: [&str; 4] = ["inner_html", "set_inner_html", "outer_html", "insert_adjacent_html"];

/// Colour words that a sheet could be tempted by.
const COLOUR_WORDS: [&str; 10] =
    ["black", "white", "gray", "grey", "silver", "red", "blue", "green", "yellow", "orange"];

const COLOUR_FUNCTIONS: [&str; 7] = ["rgb(", "rgba(", "hsl(", "hsla(", "oklch(", "oklab(", "lab("];

/// Storage reached from outside `store/`.
pub fn door(sources: &[Source]) -> Vec<Finding> {
    let outside = |source: &&Source| source.path.starts_with(WEB) && !source.path.starts_with(DOOR);
    let mut findings = Vec::new();
    for source in sources.iter().filter(outside) {
        for word in STORAGE {
            for line in lines_with(&source.code, word) {
                let law = format!("one door to storage: `{word}` outside {DOOR}");
                findings.push(Finding::new(
                    source,
                    line,
                    law,
                    "ask crate::store, or add what is missing there".into(),
                ));
            }
        }
    }
    findings
}

/// Inline styles and raw HTML in views: the security policy blocks the one, and the other trusts what was typed.
pub fn inline(sources: &[Source]) -> Vec<Finding> {
    let mut findings = Vec::new();
    for source in sources.iter().filter(|source| source.path.starts_with(WEB)) {
        for (at, _) in source.spoken.match_indices("style=") {
            if is_word(&source.spoken, at, "style")
                && !source.spoken.get(..at).is_some_and(|t| t.ends_with('-'))
            {
                let law = "no `style=` in a view: the security policy blocks it".to_string();
                let instead = "a class, or `style:property=` for one value".to_string();
                findings.push(Finding::new(source, line_of(&source.spoken, at), law, instead));
            }
        }
        for word in RAW_HTML {
            for line in lines_with(&source.code, word) {
                let law = format!("no raw HTML in a view: `{word}`");
                findings.push(Finding::new(source, line, law, "elements in `view!`, text as text".into()));
            }
        }
    }
    findings
}

/// Addresses of other hosts. The names of XML's namespaces are no addresses: nothing is fetched from them.
pub fn foreign(sources: &[Source]) -> Vec<Finding> {
    let mut findings = Vec::new();
    for source in sources {
        for scheme in
            ["http://", "https://", "ws://", "wss://", "url(//", "url(\"//", "src=\"//", "href=\"//"]
        {
            for (at, _) in source.spoken.match_indices(scheme) {
                let rest = source.spoken.get(at..).unwrap_or_default();
                if !rest.starts_with("http://www.w3.org/") {
                    let law = "no address of another host: nothing leaves this device".to_string();
                    let instead = "ship the file in public/, or leave it out".to_string();
                    findings.push(Finding::new(source, line_of(&source.spoken, at), law, instead));
                }
            }
        }
    }
    findings
}

/// Colours written out anywhere but in the tokens.
pub fn colours(sources: &[Source]) -> Vec<Finding> {
    let mut findings = Vec::new();
    for source in sources.iter().filter(|source| source.path != TOKENS) {
        let sheet = source.path.ends_with(".css");
        let text = if sheet { without_comments(&source.text) } else { source.spoken.clone() };
        for (number, line) in text.lines().enumerate() {
            if let Some(colour) = colour_in(line, sheet) {
                let law = format!("no colour outside {TOKENS}: `{colour}`");
                let instead = "a role of the tokens: var(--…)".to_string();
                findings.push(Finding::new(source, number + 1, law, instead));
            }
        }
    }
    findings
}

/// The first colour written out in a line of a style sheet, or as an attribute's value in a view.
fn colour_in(line: &str, sheet: bool) -> Option<String> {
    for (at, _) in line.match_indices('#') {
        let rest = line.get(at + 1..).unwrap_or_default();
        let name: String =
            rest.chars().take_while(|c| c.is_alphanumeric() || matches!(c, '-' | '_')).collect();
        let hex = matches!(name.len(), 3 | 4 | 6 | 8) && name.chars().all(|c| c.is_ascii_hexdigit());
        // In a sheet `#name {` picks an element; a value follows a colon, a comma, a bracket or a blank within one.
        let value = if sheet {
            line.get(..at).is_some_and(|t| t.contains(':'))
        } else {
            line.get(..at)?.ends_with('"')
        };
        if hex && value {
            return Some(format!("#{name}"));
        }
    }
    if !sheet {
        return None;
    }
    let (_, value) = line.split_once(':')?;
    let function = COLOUR_FUNCTIONS.iter().find(|name| value.contains(**name));
    let word = COLOUR_WORDS.iter().find(|word| {
        value.match_indices(**word).any(|(at, _)| {
            let before =
                value.get(..at).and_then(|t| t.chars().next_back()).is_none_or(|c| " :,(".contains(c));
            let after = value.get(at + word.len()..).and_then(|t| t.chars().next());
            before && after.is_none_or(|c| " ;,)!}".contains(c))
        })
    });
    function.or(word).map(|found| found.to_string())
}

/// CSS with its comments blanked, lines kept.
pub fn without_comments(css: &str) -> String {
    let mut kept = String::new();
    let mut rest = css;
    while let Some((before, after)) = rest.split_once("/*") {
        let (comment, after) = after.split_once("*/").unwrap_or((after, ""));
        kept.push_str(before);
        kept.extend(comment.chars().filter(|c| *c == '\n'));
        rest = after;
    }
    kept + rest
}

fn lines_with<'a>(code: &'a str, word: &'a str) -> impl Iterator<Item = usize> + 'a {
    code.match_indices(word)
        .filter(move |(at, _)| is_word(code, *at, word))
        .map(move |(at, _)| line_of(code, at))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(law: fn(&[Source]) -> Vec<Finding>, path: &str, text: &str, findings: usize) {
        assert_eq!(law(&[Source::new(path, text)]).len(), findings, "{path}: {text}");
    }

    #[test]
    fn storage_is_reached_through_the_door_alone() {
        check(door, "app/web/src/screens/bench/mod.rs", "use gloo_storage::LocalStorage;", 1);
        check(door, "app/web/src/shell/mod.rs", "window().indexed_db()", 1);
        check(door, "app/web/src/store/door.rs", "window().indexed_db()", 0);
        check(door, "app/web/src/shell/mod.rs", "StoredValue<Shop, LocalStorage>", 0);
    }

    #[test]
    fn a_style_attribute_is_found_and_a_style_property_is_not() {
        check(inline, "app/web/src/parts/bar.rs", "view! { <i style=\"top:0\"/> }", 1);
        check(inline, "app/web/src/parts/bar.rs", "view! { <i attr:style=x/> }", 1);
        check(inline, "app/web/src/parts/bar.rs", "view! { <i style:top=x font-style=\"n\"/> }", 0);
        check(inline, "app/web/src/parts/bar.rs", "let style = 1; // style=\"a\"", 0);
        check(inline, "app/web/src/parts/bar.rs", "<p inner_html=typed/>", 1);
    }

    #[test]
    fn an_address_of_another_host_is_found_wherever_it_stands() {
        check(foreign, "app/web/src/words/shop.rs", "let a = \"https://example.org\";", 1);
        check(foreign, "style/base.css", "a { background: url(//example.org/a.png) }", 1);
        check(foreign, "public/icons/mark.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", 0);
    }

    #[test]
    fn a_colour_written_out_is_found_in_sheets_and_in_views() {
        check(colours, "style/base.css", ".a { color: #16212b; }", 1);
        check(colours, "style/base.css", ".a { border: 1px solid black; }", 1);
        check(colours, "style/base.css", ".a { background: rgb(0 0 0 / 5%); }", 1);
        check(colours, "app/web/src/parts/hatch.rs", "<path fill=\"#fff\"/>", 1);
    }

    #[test]
    fn roles_ids_and_comments_are_no_colours() {
        check(colours, "style/base.css", ".red { color: var(--red); white-space: nowrap }", 0);
        check(colours, "style/base.css", "#fade { fill: url(#h-bought); } /* was #fff */", 0);
        check(colours, "app/web/src/parts/hatch.rs", "<use href=\"#bead-1\"/>", 0);
        check(colours, "style/tokens.css", "--ink: #16212b;", 0);
    }
}
