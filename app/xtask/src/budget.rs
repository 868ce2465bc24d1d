//! `cargo xtask budget`: what the first load weighs, compressed, against the number to reach. Held by a ratchet: what
//! is more than 2 KB above the last accepted weight fails until someone accepts it and says why in the change.

use crate::shell::{Done, files_below, read, root, write};
use std::collections::BTreeMap;
use std::path::Path;

/// What program, script, style and page should weigh together on the first visit, in bytes. Printed, not enforced:
/// the ratchet keeps what has been reached.
const REACH: u64 = 200 * 1000;
/// How much heavier than last accepted goes through unasked, in bytes.
const RATCHET: u64 = 2 * 1000;
/// Lettering and icons, apart from the rest, in bytes.
const LETTERING_WALL: u64 = 40 * 1000;

/// How the library's tables begin that weigh ten kilobytes each and get no smaller in brotli, and what is used instead
/// of what reads them. One such call anywhere brings all of a table back.
const TABLES: [(&[u8], &str); 3] = [
    (
        &[0x5a, 0xd6, 0x3b, 0x92, 0xd6, 0x53, 0xf4, 0xee, 0x3f, 0x3b, 0xa1, 0x06, 0x29, 0xaa, 0x3f, 0x11],
        "a text is parsed as a float: `parts::plain::read`",
    ),
    (
        &[0xc0, 0, 0, 0, 0xe0, 0, 0, 0, 0xc1, 0, 0, 0, 0xe1, 0, 0, 0],
        "letters are made small by the library: `measure::letters::small`",
    ),
    (
        &[0xe0, 0, 0, 0, 0xc0, 0, 0, 0, 0xe1, 0, 0, 0, 0xc1, 0, 0, 0],
        "letters are made large by the library: `measure::letters::capital`",
    ),
];

/// Prints the weights; `--accept` writes down the new one.
pub fn command(words: &[&str]) -> Done {
    let dist = crate::build::dist();
    let weights = weights(&dist)?;
    no_tables(&dist)?;
    for (kind, bytes) in &weights {
        eprintln!("{kind:>9}  {:>7.1} KB", *bytes as f64 / 1000.0);
    }
    let total: u64 = weights.iter().filter(|(kind, _)| **kind != "lettering").map(|(_, bytes)| bytes).sum();
    let met = if total <= REACH { "reached" } else { "MISSED" };
    eprintln!(
        "{:>9}  {:>7.1} KB; to reach {} KB: {met} (brotli 11, KB of 1000 bytes)",
        "together",
        total as f64 / 1000.0,
        REACH / 1000
    );
    let file = root().join("app/xtask/weight.txt");
    if words == ["--accept"] {
        return write(&file, format!("{total}\n"));
    }
    let accepted =
        read(&file)?.trim().parse().map_err(|_| format!("{}: no number of bytes", file.display()))?;
    verdict(total, accepted, weights.get("lettering").copied().unwrap_or(0))
}

fn verdict(total: u64, accepted: u64, lettering: u64) -> Done {
    if lettering > LETTERING_WALL {
        return Err(format!("lettering and icons weigh {lettering} bytes, more than {LETTERING_WALL}"));
    }
    if total > accepted + RATCHET {
        return Err(format!(
            "the first load weighs {total} bytes, {} more than last accepted: make it lighter, or run \
             `cargo xtask budget --accept` and say in the commit what the weight buys",
            total - accepted
        ));
    }
    Ok(())
}

/// None of the library's heavy tables is in the program.
fn no_tables(dist: &Path) -> Done {
    for file in files_below(dist).iter().filter(|file| file.extension().is_some_and(|end| end == "wasm")) {
        let program = std::fs::read(file).map_err(|why| format!("{}: {why}", file.display()))?;
        if let Some(why) = table(&program) {
            return Err(format!("a table of the library is in the program: {why}"));
        }
    }
    Ok(())
}

fn table(program: &[u8]) -> Option<&'static str> {
    let is_in = |start: &[u8]| program.windows(start.len()).any(|bytes| bytes == start);
    TABLES.iter().find(|(start, _)| is_in(start)).map(|(_, why)| *why)
}

/// Bytes by kind, compressed where a compressed copy stands. Of the pictures only what a first visit loads.
fn weights(dist: &Path) -> Done<BTreeMap<&'static str, u64>> {
    let mut weights = BTreeMap::new();
    for file in files_below(dist) {
        let name = file.strip_prefix(dist).unwrap_or(&file).to_string_lossy().to_string();
        let kind = match name.rsplit('.').next().unwrap_or_default() {
            "wasm" => "program",
            "js" => "script",
            "css" => "style",
            "html" => "page",
            "woff2" | "svg" => "lettering",
            _ => continue,
        };
        let compressed = std::fs::metadata(format!("{}.br", file.display()));
        let size =
            compressed.or_else(|_| std::fs::metadata(&file)).map_err(|why| format!("{name}: {why}"))?.len();
        *weights.entry(kind).or_insert(0) += size;
    }
    for kind in ["program", "script", "style", "page"] {
        if !weights.contains_key(kind) {
            return Err(format!("{}: no {kind} in it; build first: cargo xtask build", dist.display()));
        }
    }
    Ok(weights)
}

#[cfg(test)]
mod tests {
    use super::{TABLES, table, verdict};

    #[test]
    fn a_table_is_found_wherever_it_stands() {
        for (start, why) in TABLES {
            assert_eq!(table(&[b"program", start, b"more"].concat()), Some(why));
        }
        assert_eq!(table(b"program"), None);
    }

    #[test]
    fn two_kilobytes_go_through_and_one_byte_more_does_not() {
        assert!(verdict(102_000, 100_000, 0).is_ok());
        assert!(verdict(102_001, 100_000, 0).is_err());
    }

    #[test]
    fn lettering_has_a_wall_of_its_own_whatever_was_accepted() {
        assert!(verdict(100_000, 300_000, 40_000).is_ok());
        assert!(verdict(100_000, 300_000, 40_001).is_err());
    }
}
