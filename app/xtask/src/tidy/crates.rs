//! Law: core depends on no browser, no clock and no chance. Read from the tree of crates itself, on every platform.

use super::Finding;
use super::source::Source;
use crate::shell::{Done, cargo, output};

const CORE: &str = "benchslate-core";

/// Crates that bring a browser or chance along.
const CLOSED: [&str; 8] =
    ["js-sys", "web-sys", "wasm-bindgen", "getrandom", "gloo", "gloo-storage", "rand", "fastrand"];

/// Features of chrono that read the clock.
const CLOCK: [&str; 3] = ["clock", "now", "wasmbind"];

/// Asks cargo what core is built from, as the lock file has it: a line a crate, `name v1.2.3|feature,feature`.
pub fn tree() -> Done<String> {
    let shape = ["--edges", "normal", "--target", "all", "--prefix", "none", "--format", "{p}|{f}"];
    output(cargo().args(["tree", "--locked", "--package", CORE]).args(shape))
}

/// What core should not have among its crates.
pub fn crates(tree: &str) -> Vec<Finding> {
    let manifest = Source::new("app/core/Cargo.toml", "");
    let finding = |law: String, instead: &str| Finding::new(&manifest, 1, law, instead.to_string());
    let crates = tree.lines().filter_map(|line| {
        let (package, features) = line.split_once('|')?;
        Some((package.split(' ').next()?, features.split([',', ' ']).collect::<Vec<_>>()))
    });
    let crates: Vec<_> = crates.collect();
    let mut findings = Vec::new();
    if !crates.iter().any(|(name, _)| *name == CORE) {
        findings
            .push(finding(format!("no package {CORE} in its own tree"), "its name in app/core/Cargo.toml"));
    }
    for (name, features) in crates {
        if CLOSED.contains(&name) {
            findings
                .push(finding(format!("core's crates hold {name}"), "take it in app/web and pass values in"));
        }
        for feature in features.iter().filter(|feature| name == "chrono" && CLOCK.contains(feature)) {
            let law = format!("chrono has its feature `{feature}`, which reads the clock");
            findings.push(finding(law, "default-features = false, features = [\"std\"]"));
        }
    }
    findings
}

#[cfg(test)]
mod tests {
    use super::*;

    const PLAIN: &str = "benchslate-core v0.1.0 (/a)|\nchrono v0.4.45|std\nnum-traits v0.2.19|i128,std";

    #[test]
    fn the_tree_as_it_should_be_passes() {
        assert_eq!(crates(PLAIN).len(), 0);
    }

    #[test]
    fn a_browser_crate_below_core_is_found() {
        assert_eq!(crates(&format!("{PLAIN}\njs-sys v0.3.107|default,std (*)")).len(), 1);
    }

    #[test]
    fn a_chrono_that_reads_the_clock_is_found() {
        assert_eq!(crates(&PLAIN.replace("|std\n", "|clock,now,std (*)\n")).len(), 2);
    }

    #[test]
    fn a_tree_without_core_is_no_proof() {
        assert_eq!(crates("").len(), 1);
    }
}
