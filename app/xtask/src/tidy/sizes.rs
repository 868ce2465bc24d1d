//! Law: every file says in its first line what it is; a file stops at 600 lines, a function at 70.

use super::Finding;
use super::source::{Source, is_word, line_of};

/// Lines of a file, and of a function.
const FILE_LINES: usize = 600;
const FUNCTION_LINES: usize = 70;

/// What may be longer: the file, the function (empty: the file itself), its own limit, and why. An exception that is
/// no longer needed is a finding too.
const EXCEPTIONS: [(&str, &str, usize, &str); 0] = [];

/// Files without a header line.
pub fn headers(sources: &[Source]) -> Vec<Finding> {
    let missing = sources.iter().filter(|source| !source.text.starts_with("//! "));
    let finding = |source| {
        let instead = "open it with `//! ` and a sentence: what it is, and what is not here";
        Finding::new(source, 1, "every file says what it is".into(), instead.into())
    };
    missing.map(finding).collect()
}

/// Files and functions that are too long.
pub fn sizes(sources: &[Source]) -> Vec<Finding> {
    sizes_but_for(sources, &EXCEPTIONS)
}

fn sizes_but_for(sources: &[Source], exceptions: &[(&str, &str, usize, &str)]) -> Vec<Finding> {
    let mut findings = Vec::new();
    let mut used = Vec::new();
    for source in sources {
        let whole = ("", 1, source.text.lines().count(), FILE_LINES);
        let functions = functions(&source.code).into_iter();
        let measured = functions.map(|(name, line, lines)| (name, line, lines, FUNCTION_LINES));
        for (name, line, lines, limit) in std::iter::once(whole).chain(measured) {
            if lines <= limit {
                continue;
            }
            let exception =
                exceptions.iter().find(|(file, function, ..)| *file == source.path && *function == name);
            used.extend(exception.map(|(file, function, ..)| (*file, *function)));
            let limit = exception.map_or(limit, |(_, _, own, _)| *own);
            if lines > limit {
                let what = if name.is_empty() { "file".to_string() } else { format!("function `{name}`") };
                findings.push(Finding::new(
                    source,
                    line,
                    format!("a {what} stops at {limit} lines; this one has {lines}"),
                    "split it where its own headings would stand".into(),
                ));
            }
        }
    }
    for (file, function, _, why) in exceptions {
        if !used.contains(&(*file, *function)) {
            let source = Source::new(file, "");
            let law = format!("an exception for `{function}` that nobody needs any more ({why})");
            findings.push(Finding::new(
                &source,
                1,
                law,
                "take its line out of EXCEPTIONS in tidy/sizes.rs".into(),
            ));
        }
    }
    findings
}

/// Name, first line and number of lines of every function with a body.
fn functions(code: &str) -> Vec<(&str, usize, usize)> {
    let mut found = Vec::new();
    for (at, _) in code.match_indices("fn ").filter(|(at, _)| is_word(code, *at, "fn")) {
        let rest = code.get(at + 3..).unwrap_or_default();
        let name = rest.split(|c: char| !(c.is_alphanumeric() || c == '_')).next().unwrap_or_default();
        if name.is_empty() {
            continue;
        }
        if let Some(length) = body_end(rest) {
            let body = rest.get(..length).unwrap_or_default();
            found.push((name, line_of(code, at), 1 + body.matches('\n').count()));
        }
    }
    found
}

/// Where the body closes, or none for a declaration that ends in `;`.
fn body_end(rest: &str) -> Option<usize> {
    let (mut braces, mut brackets) = (0_i32, 0_i32);
    for (at, c) in rest.char_indices() {
        match c {
            '(' | '[' if braces == 0 => brackets += 1,
            ')' | ']' if braces == 0 => brackets -= 1,
            ';' if braces == 0 && brackets == 0 => return None,
            '{' => braces += 1,
            '}' => {
                braces -= 1;
                if braces == 0 {
                    return Some(at);
                }
            }
            _ => {}
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    fn long(lines: usize) -> Source {
        Source::new(
            "a.rs",
            &format!("//! A.\nfn short(x: [u8; 3]) {{}}\nfn long() {{\n{}}}\n", "    f();\n".repeat(lines)),
        )
    }

    #[test]
    fn a_function_of_seventy_lines_passes_and_one_of_seventy_one_does_not() {
        assert_eq!(sizes(&[long(68)]).len(), 0);
        let findings = sizes(&[long(69)]);
        assert_eq!(findings.len(), 1);
        assert!(findings.first().unwrap().to_string().starts_with("a.rs:3: a function `long` stops at 70"));
    }

    #[test]
    fn a_file_past_six_hundred_lines_is_found() {
        let text = "//! A.\n".to_string() + &"fn a() {}\n".repeat(600);
        assert_eq!(sizes(&[Source::new("a.rs", &text)]).len(), 1);
    }

    #[test]
    fn an_exception_holds_to_its_own_limit_and_is_found_when_idle() {
        let exceptions = [("a.rs", "long", 80, "a table")];
        assert_eq!(sizes_but_for(&[long(70)], &exceptions).len(), 0);
        assert_eq!(sizes_but_for(&[long(90)], &exceptions).len(), 1);
        assert_eq!(sizes_but_for(&[long(10)], &exceptions).len(), 1);
    }

    #[test]
    fn a_file_without_a_header_is_found() {
        assert_eq!(headers(&[Source::new("a.rs", "use a;\n//! late")]).len(), 1);
        assert_eq!(headers(&[long(1)]).len(), 0);
    }
}
