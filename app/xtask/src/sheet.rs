//! `cargo xtask sheet`: the one style sheet the page links to, out of `style/main.css` and what it imports.
//! Several files to write in, one request on the phone. Called by Trunk before each build.

use crate::shell::{Done, read, root, write};
use std::path::{Path, PathBuf};

/// Writes `target/sheet/main.css`. An unchanged sheet is left alone, so that nobody rebuilds for nothing.
pub fn command() -> Done {
    let whole = sheet(&root().join("style/main.css"), &mut Vec::new())?;
    let file = root().join("target/sheet/main.css");
    if std::fs::read_to_string(&file).is_ok_and(|old| old == whole) {
        return Ok(());
    }
    write(&file, whole)
}

/// The file with its imports in their places, without comments and indentation.
fn sheet(file: &Path, above: &mut Vec<PathBuf>) -> Done<String> {
    let file = file.canonicalize().map_err(|why| format!("{}: {why}", file.display()))?;
    if above.contains(&file) {
        return Err(format!("{}: imports itself", file.display()));
    }
    let folder = file.parent().unwrap_or(&file).to_path_buf();
    above.push(file.clone());
    let mut whole = String::new();
    for line in without_comments(&read(&file)?).lines().map(str::trim).filter(|line| !line.is_empty()) {
        match imported(line) {
            Some(name) => whole.push_str(&sheet(&folder.join(name), above)?),
            None => {
                whole.push_str(line);
                whole.push('\n');
            }
        }
    }
    above.pop();
    Ok(whole)
}

/// The file named by an `@import "name.css";` line, with or without `url(…)`.
fn imported(line: &str) -> Option<&str> {
    let rest = line.strip_prefix("@import")?.trim().strip_suffix(';')?;
    let rest = rest.strip_prefix("url(").map_or(Some(rest), |inner| inner.strip_suffix(')'))?;
    Some(rest.trim_matches(['"', '\'']))
}

fn without_comments(css: &str) -> String {
    let mut kept = String::new();
    let mut rest = css;
    while let Some((before, after)) = rest.split_once("/*") {
        kept.push_str(before);
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    kept.push_str(rest);
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_import_is_read_in_each_of_its_writings_and_nothing_else_is() {
        assert_eq!(imported("@import \"tokens.css\";"), Some("tokens.css"));
        assert_eq!(imported("@import url('parts/key.css');"), Some("parts/key.css"));
        assert_eq!(imported(".key { color: red; }"), None);
    }

    #[test]
    fn the_sheet_stands_in_the_order_of_its_imports_without_comments() {
        let folder = crate::shell::scratch();
        write(&folder.join("main.css"), "/* first */\n@import \"a/one.css\";\n.two {\n  top: 0;\n}\n")
            .unwrap();
        write(&folder.join("a/one.css"), ".one { top: 1px; } /* why\n because */\n").unwrap();
        let whole = sheet(&folder.join("main.css"), &mut Vec::new());
        assert_eq!(whole.as_deref(), Ok(".one { top: 1px; }\n.two {\ntop: 0;\n}\n"));
        write(&folder.join("a/one.css"), "@import \"../main.css\";").unwrap();
        assert!(
            sheet(&folder.join("main.css"), &mut Vec::new()).is_err_and(|why| why.contains("imports itself"))
        );
        std::fs::remove_dir_all(folder).unwrap();
    }
}
