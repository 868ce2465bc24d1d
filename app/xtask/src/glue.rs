//! The script between the program and the browser, made shorter: each of the browser's functions that the program
//! imports has a name of some forty letters, once in the script and once in the program. They get short names in both,
//! and the script loses its comments and indentation.
//!
//! The short names follow from the long ones alone, so a script and a program that were built from the same code fit
//! each other even where one of them comes from a cache.

use crate::shell::{Done, files_below, read, write};
use std::collections::BTreeMap;
use std::path::Path;

/// Long names and short ones.
type Names = BTreeMap<String, String>;

/// Shortens the one pair of script and program in this folder.
pub fn shorten(staging: &Path) -> Done {
    for program in files_below(staging) {
        let name = program.to_string_lossy().to_string();
        let Some(stem) = name.strip_suffix("_bg.wasm") else { continue };
        let script = Path::new(stem).with_extension("js");
        let bytes = std::fs::read(&program).map_err(|why| format!("{name}: {why}"))?;
        let names = short_names(&imported(&bytes)?);
        write(&program, with_names(&bytes, &names)?)?;
        write(&script, shortened(&read(&script)?, &names)?)?;
    }
    Ok(())
}

/// `_0`, `_1`, … in the order of the long names; only for those that end in the tool's sixteen digits.
fn short_names(imported: &[String]) -> Names {
    let digits = |name: &str| {
        name.starts_with("__wb")
            && name
                .rsplit('_')
                .next()
                .is_some_and(|end| end.len() == 16 && end.bytes().all(|byte| byte.is_ascii_hexdigit()))
    };
    let long: BTreeMap<&String, ()> =
        imported.iter().filter(|name| digits(name)).map(|name| (name, ())).collect();
    long.into_keys().enumerate().map(|(at, name)| (name.clone(), format!("_{at}"))).collect()
}

/// The script with short names, without comments and indentation.
fn shortened(script: &str, names: &Names) -> Done<String> {
    let mut whole = String::with_capacity(script.len());
    let mut rest = script;
    while let Some((before, after)) = rest.split_once("/**") {
        whole.push_str(before);
        rest = after.split_once("*/").ok_or("a comment of the script has no end")?.1;
    }
    whole.push_str(rest);
    if whole.lines().any(|line| line.matches('`').count() % 2 == 1) {
        return Err("a text of the script goes over several lines: it can't be cut by lines".to_string());
    }
    let lines = whole.lines().map(str::trim).filter(|line| !line.is_empty() && !line.starts_with("//"));
    let whole = lines.collect::<Vec<_>>().join("\n");
    let mut short = String::with_capacity(whole.len());
    let mut word = String::new();
    for letter in whole.chars().chain(['\n']) {
        if letter.is_ascii_alphanumeric() || letter == '_' || letter == '$' {
            word.push(letter);
            continue;
        }
        short.push_str(names.get(&word).unwrap_or(&word));
        word.clear();
        short.push(letter);
    }
    match names.keys().find(|name| short.contains(name.as_str())) {
        Some(name) => Err(format!("`{name}` is still in the script")),
        None => Ok(short),
    }
}

/// Names of what the program imports.
fn imported(program: &[u8]) -> Done<Vec<String>> {
    let mut names = Vec::new();
    walk(program, &mut |name| {
        names.push(name.to_string());
        name.to_string()
    })?;
    Ok(names)
}

/// The program with other names for what it imports.
fn with_names(program: &[u8], names: &Names) -> Done<Vec<u8>> {
    walk(program, &mut |name| names.get(name).cloned().unwrap_or_else(|| name.to_string()))
}

/// Writes the program anew, its import section by way of `rename` (WebAssembly core specification, 5.5.5).
fn walk(program: &[u8], rename: &mut dyn FnMut(&str) -> String) -> Done<Vec<u8>> {
    let mut bytes = Bytes { of: program, at: 0 };
    let mut whole = bytes.take(8)?.to_vec();
    while bytes.at < program.len() {
        let id = bytes.byte()?;
        let length = bytes.number()?;
        let content = bytes.take(length)?;
        let renamed;
        let content = if id == 2 {
            renamed = imports(content, rename)?;
            &renamed
        } else {
            content
        };
        whole.push(id);
        whole.extend(number(content.len()));
        whole.extend(content);
    }
    Ok(whole)
}

fn imports(section: &[u8], rename: &mut dyn FnMut(&str) -> String) -> Done<Vec<u8>> {
    let mut bytes = Bytes { of: section, at: 0 };
    let count = bytes.number()?;
    let mut whole = number(count);
    for _ in 0..count {
        for part in 0..2 {
            let length = bytes.number()?;
            let name = std::str::from_utf8(bytes.take(length)?).map_err(|why| why.to_string())?;
            let name = if part == 1 { rename(name) } else { name.to_string() };
            whole.extend(number(name.len()));
            whole.extend(name.as_bytes());
        }
        // What it is: a function by its type, or a table, memory or global with its limits.
        let from = bytes.at;
        match bytes.byte()? {
            0 => {
                bytes.number()?;
            }
            3 => {
                bytes.take(2)?;
            }
            other => {
                return Err(format!("an import of sort {other}: only functions and globals are known here"));
            }
        }
        whole.extend(section.get(from..bytes.at).unwrap_or_default());
    }
    Ok(whole)
}

struct Bytes<'a> {
    of: &'a [u8],
    at: usize,
}

impl<'a> Bytes<'a> {
    fn take(&mut self, count: usize) -> Done<&'a [u8]> {
        let taken = self.of.get(self.at..self.at + count).ok_or("the program ends too early")?;
        self.at += count;
        Ok(taken)
    }

    fn byte(&mut self) -> Done<u8> {
        self.take(1).map(|bytes| bytes.first().copied().unwrap_or_default())
    }

    /// Seven bits a byte, the least first.
    fn number(&mut self) -> Done<usize> {
        let (mut number, mut shift) = (0, 0);
        loop {
            let byte = self.byte()?;
            number |= usize::from(byte & 0x7F) << shift;
            shift += 7;
            if byte & 0x80 == 0 {
                return Ok(number);
            }
        }
    }
}

fn number(mut rest: usize) -> Vec<u8> {
    let mut bytes = Vec::new();
    loop {
        let byte = (rest & 0x7F) as u8;
        rest >>= 7;
        if rest == 0 {
            bytes.push(byte);
            return bytes;
        }
        bytes.push(byte | 0x80);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const LONG: &str = "__wbg_append_0123456789abcdef";

    fn program(name: &str) -> Vec<u8> {
        let mut section = number(2);
        for name in [name, "memory_of_more_than_one_hundred_and_twenty_seven_letters"] {
            section.extend(number(4));
            section.extend(b"./js");
            section.extend(number(name.len()));
            section.extend(name.as_bytes());
            section.extend([0, 1]);
        }
        let mut whole = b"\0asm\x01\0\0\0".to_vec();
        whole.extend([1, 1, 9, 2]);
        whole.extend(number(section.len()));
        whole.extend(section);
        whole.extend([10, 2, 7, 8]);
        whole
    }

    #[test]
    fn a_long_name_is_short_in_both_and_the_rest_is_as_it_was() {
        let names = short_names(&imported(&program(LONG)).unwrap());
        assert_eq!(names.get(LONG).map(String::as_str), Some("_0"));
        assert_eq!(with_names(&program(LONG), &names).unwrap(), program("_0"));
        let script =
            format!("/** says\n * more */\n  {LONG}: function() {{\n    // why\n    return `a`;\n  }},\n");
        assert_eq!(shortened(&script, &names).unwrap(), "_0: function() {\nreturn `a`;\n},\n");
    }

    #[test]
    fn a_name_that_is_no_tools_stays() {
        assert!(short_names(&["memory".to_string(), "__wbindgen_init".to_string()]).is_empty());
    }

    #[test]
    fn a_text_over_several_lines_is_refused() {
        assert!(shortened("a(`one\n  two`)", &Names::new()).is_err());
    }
}
