//! Law: every check against the outside world says above it where its figures come from.

use super::Finding;
use super::source::{Source, line_of};

const FOLDER: &str = "tests/reference/";

/// What a source may be, best first.
const KINDS: [&str; 4] = ["published", "library", "common practice", "from memory"];

/// Reference tests without a source line.
pub fn tags(sources: &[Source]) -> Vec<Finding> {
    let mut findings = Vec::new();
    for source in sources.iter().filter(|source| source.path.starts_with(FOLDER)) {
        for (at, _) in source.code.match_indices("#[test]") {
            if !has_source(&source.text, line_of(&source.code, at)) {
                findings.push(Finding::new(
                    source,
                    line_of(&source.code, at),
                    "a check says where its figures come from".into(),
                    format!("`// Source: ` above it, then {}", KINDS.join(", or ")),
                ));
            }
        }
    }
    findings
}

/// Is there a source line in the comment right above this line?
fn has_source(text: &str, line: usize) -> bool {
    let lines: Vec<&str> = text.lines().take(line.saturating_sub(1)).map(str::trim).collect();
    let above = lines.iter().rev().take_while(|line| line.starts_with("//") || line.starts_with("#["));
    above.filter_map(|line| line.trim_start_matches('/').trim().strip_prefix("Source:")).any(|rest| {
        let rest = rest.trim().to_lowercase();
        KINDS.iter().any(|kind| rest.starts_with(kind))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(text: &str, findings: usize) {
        assert_eq!(tags(&[Source::new("tests/reference/units.rs", text)]).len(), findings, "{text}");
    }

    #[test]
    fn a_check_with_its_source_above_passes() {
        check("// Source: published. UCUM 2.2, [in_i].\n#[test]\nfn a() {}", 0);
        check("/// Source: from memory.\n/// More.\n#[test]\nfn a() {}", 0);
    }

    #[test]
    fn a_check_without_one_or_with_an_unknown_kind_is_found() {
        check("#[test]\nfn a() {}", 1);
        check("// Source: a friend\n#[test]\nfn a() {}", 1);
        check("// Source: published. UCUM.\n\n#[test]\nfn a() {}", 1);
        check("// Source: library. pint.\n#[test]\nfn a() {}\n#[test]\nfn b() {}", 1);
    }
}
