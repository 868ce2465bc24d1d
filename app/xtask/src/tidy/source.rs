//! A file as tidy reads it: its text, its code without comments and strings, and its text without comments. Line
//! numbers stay true in all three.

use std::path::Path;

/// One file of the project.
pub struct Source {
    /// From the root of the project, with `/`.
    pub path: String,
    /// As it is.
    pub text: String,
    /// Rust without comments, with empty strings: only what the compiler acts on.
    pub code: String,
    /// Rust without comments, strings left.
    pub spoken: String,
}

impl Source {
    pub fn new(path: &str, text: &str) -> Source {
        let rust = path.ends_with(".rs");
        let blanked = |strings| if rust { blank(text, strings) } else { text.to_string() };
        Source { path: path.to_string(), text: text.to_string(), code: blanked(true), spoken: blanked(false) }
    }

    /// Reads every file below a folder whose name ends so.
    pub fn below(root: &Path, folder: &str, ends: &[&str]) -> Vec<Source> {
        let files = crate::shell::files_below(&root.join(folder)).into_iter();
        let named = files.filter_map(|file| {
            let path = file.strip_prefix(root).ok()?.to_string_lossy().replace('\\', "/");
            let skipped = path.contains("/node_modules/") || path.contains("/target/");
            let wanted = !skipped && ends.iter().any(|end| path.ends_with(end));
            wanted.then(|| std::fs::read_to_string(&file).ok().map(|text| Source::new(&path, &text)))?
        });
        named.collect()
    }
}

/// The line, counted from 1, that holds this byte.
pub fn line_of(text: &str, at: usize) -> usize {
    1 + text.bytes().take(at).filter(|byte| *byte == b'\n').count()
}

/// Does a word stand at this byte, and not the middle of a longer one?
pub fn is_word(text: &str, at: usize, word: &str) -> bool {
    let part = |c: char| c.is_alphanumeric() || c == '_';
    let before = text.get(..at).and_then(|before| before.chars().next_back());
    let after = text.get(at + word.len()..).and_then(|after| after.chars().next());
    !before.is_some_and(part) && !after.is_some_and(part)
}

/// Blanks comments, and on demand what stands in strings, leaving every line where it is.
fn blank(text: &str, strings: bool) -> String {
    let chars: Vec<char> = text.chars().collect();
    let mut out = String::with_capacity(text.len());
    let mut at = 0;
    while at < chars.len() {
        let rest = chars.get(at..).unwrap_or_default();
        let (length, kept) = match rest {
            ['/', '/', ..] => (until_newline(rest), false),
            ['/', '*', ..] => (block_comment(rest), false),
            ['r', '"' | '#', ..] if !after_word(&chars, at) => match raw_string(rest) {
                0 => (1, true),
                length => (length, !strings),
            },
            ['"', ..] => (string(rest), !strings),
            ['\'', ..] => match char_literal(rest) {
                1 => (1, true),
                length => (length, !strings),
            },
            _ => (1, true),
        };
        for c in rest.iter().take(length) {
            match c {
                '\n' => out.push('\n'),
                c if kept => out.push(*c),
                c => out.extend(std::iter::repeat_n(' ', c.len_utf8())),
            }
        }
        at += length.max(1);
    }
    out
}

fn after_word(chars: &[char], at: usize) -> bool {
    at.checked_sub(1).and_then(|before| chars.get(before)).is_some_and(|c| c.is_alphanumeric() || *c == '_')
}

fn until_newline(rest: &[char]) -> usize {
    rest.iter().position(|c| *c == '\n').unwrap_or(rest.len())
}

fn block_comment(rest: &[char]) -> usize {
    let (mut depth, mut at) = (0_usize, 0);
    while at < rest.len() {
        match rest.get(at..).unwrap_or_default() {
            ['/', '*', ..] => (depth, at) = (depth + 1, at + 2),
            ['*', '/', ..] => (depth, at) = (depth - 1, at + 2),
            _ => at += 1,
        }
        if depth == 0 {
            break;
        }
    }
    at
}

/// The length of `r#"…"#`, or 0 if none begins here (`r#type` is a name).
fn raw_string(rest: &[char]) -> usize {
    let hashes = rest.iter().skip(1).take_while(|c| **c == '#').count();
    if rest.get(hashes + 1) != Some(&'"') {
        return 0;
    }
    let closing: Vec<char> = std::iter::once('"').chain(std::iter::repeat_n('#', hashes)).collect();
    let body = rest.get(hashes + 2..).unwrap_or_default();
    let end = body.windows(closing.len()).position(|window| window == closing.as_slice());
    end.map_or(rest.len(), |end| hashes + 2 + end + closing.len())
}

fn string(rest: &[char]) -> usize {
    let mut at = 1;
    while let Some(c) = rest.get(at) {
        match c {
            '\\' => at += 2,
            '"' => return at + 1,
            _ => at += 1,
        }
    }
    rest.len()
}

/// The length of `'x'` or `'\n'`; 1 for the tick of a lifetime.
fn char_literal(rest: &[char]) -> usize {
    match rest {
        ['\'', '\\', ..] => 4 + rest.iter().skip(3).position(|c| *c == '\'').unwrap_or(0),
        ['\'', _, '\'', ..] => 3,
        _ => 1,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(text: &str, code: &str) {
        assert_eq!(blank(text, true).trim_end(), code);
    }

    #[test]
    fn comments_and_strings_are_blank_and_code_stays() {
        check("a // b", "a");
        check("a /* b /* c */ d */ e", "a                   e");
        check("f(\"x\\\"y\") g", "f(      ) g");
        check("r#\"say \"x\"\"# g", "             g");
        check("let r#type = 'a';", "let r#type =    ;");
        check("fn f<'a>(x: &'a str) {'\\'';}", "fn f<'a>(x: &'a str) {    ;}");
        check("\"a\nb\" c", "  \n   c");
    }

    #[test]
    fn without_comments_strings_are_still_there() {
        assert_eq!(blank("f(\"a // b\") // c", false).trim_end(), "f(\"a // b\")");
    }
}
