//! `cargo xtask tidy`: the laws of the house that neither the compiler nor clippy can hold. Each message says where,
//! which law, and what to use instead; each law has a test with a bad snippet that it must find.

mod arrows;
mod contrast;
mod crates;
mod sizes;
mod source;
mod tags;
mod views;

use crate::shell::{Done, root};
use source::Source;
use std::fmt;

/// One breach of a law.
pub struct Finding {
    path: String,
    line: usize,
    law: String,
    instead: String,
}

/// A law by name, with its breaches.
pub struct Law {
    pub name: &'static str,
    pub findings: Vec<Finding>,
}

impl Finding {
    fn new(source: &Source, line: usize, law: String, instead: String) -> Finding {
        Finding { path: source.path.clone(), line, law, instead }
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:{}: {}; {}", self.path, self.line, self.law, self.instead)
    }
}

/// Prints every breach; any is an error.
pub fn command() -> Done {
    let laws = laws()?;
    let breaches: usize = laws.iter().map(|law| law.findings.len()).sum();
    for finding in laws.iter().flat_map(|law| &law.findings) {
        eprintln!("{finding}");
    }
    if breaches > 0 {
        return Err(format!("tidy: {breaches} breaches"));
    }
    eprintln!("tidy: {} laws kept", laws.len());
    Ok(())
}

/// Reads the project and holds every law against it.
pub fn laws() -> Done<Vec<Law>> {
    let root = root();
    let rust: Vec<Source> =
        ["app", "tests"].iter().flat_map(|folder| Source::below(&root, folder, &[".rs"])).collect();
    let style = Source::below(&root, "style", &[".css", ".txt"]);
    let read = ["app/web/src", "style", "public"];
    let ends = [".rs", ".css", ".js", ".svg", ".webmanifest"];
    let mut shipped: Vec<Source> =
        read.iter().flat_map(|folder| Source::below(&root, folder, &ends)).collect();
    shipped.extend(Source::below(&root, "app/web", &["index.html"]));
    let drawn: Vec<Source> = [("style", ".css"), ("app/web/src", ".rs")]
        .iter()
        .flat_map(|(folder, end)| Source::below(&root, folder, &[end]))
        .collect();
    let law = |name, findings| Law { name, findings };
    Ok(vec![
        law("arrows inside core run one way", arrows::arrows(&rust)),
        law("core reads no clock, disk or chance", arrows::closed(&rust)),
        law("every file says what it is", sizes::headers(&rust)),
        law("files and functions stay short", sizes::sizes(&rust)),
        law("one door to storage", views::door(&rust)),
        law("no inline style, no raw HTML", views::inline(&rust)),
        law("no address of another host", views::foreign(&shipped)),
        law("no colour outside the tokens", views::colours(&drawn)),
        law("declared pairs reach their contrast", contrast::contrast(&style)),
        law("reference checks name their source", tags::tags(&rust)),
        law("core's crates hold no browser, clock or chance", crates::crates(&crates::tree()?)),
    ])
}
