//! Counting what passed and what failed, out of what test runners print.

use crate::shell::Done;
use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};

/// How many passed and failed, and what could not be tried here, with why.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Tally {
    pub passed: u32,
    pub failed: u32,
    pub not_run: Vec<String>,
}

impl Tally {
    pub fn passed(passed: u32) -> Tally {
        Tally { passed, ..Tally::default() }
    }

    /// One failure, said at once.
    pub fn failed(why: &str) -> Tally {
        println!("FAILED: {why}");
        Tally { failed: 1, ..Tally::default() }
    }

    /// A step that either works or does not.
    pub fn of(done: Done) -> Tally {
        match done {
            Ok(()) => Tally::passed(1),
            Err(why) => Tally::failed(&why),
        }
    }

    pub fn add(&mut self, other: Tally) {
        self.passed += other.passed;
        self.failed += other.failed;
        self.not_run.extend(other.not_run);
    }
}

/// Runs a test runner, shows its lines as they come, and counts those that `count` knows. A runner that ends badly
/// without naming a failure, or well without having run anything, has failed.
pub fn watched(command: &mut Command, count: fn(&str) -> Option<Tally>) -> Tally {
    let child = command.stdout(Stdio::piped()).spawn();
    let mut child = match child {
        Ok(child) => child,
        Err(why) => return Tally::failed(&format!("{}: {why}", command.get_program().display())),
    };
    let mut sum = Tally::default();
    for line in
        child.stdout.take().into_iter().flat_map(|out| BufReader::new(out).lines()).map_while(Result::ok)
    {
        println!("{line}");
        sum.add(count(&line).unwrap_or_default());
    }
    let well = child.wait().is_ok_and(|status| status.success());
    if !well && sum.failed == 0 {
        sum.add(Tally::failed("the runner ended badly"));
    }
    if well && sum == Tally::default() {
        sum.add(Tally::failed("nothing was run"));
    }
    sum
}

/// `test result: ok. 12 passed; 0 failed; …` of cargo.
pub fn cargo_line(line: &str) -> Option<Tally> {
    let counts = line.strip_prefix("test result: ")?;
    Some(Tally {
        passed: before(counts, " passed")?,
        failed: before(counts, " failed")?,
        not_run: Vec::new(),
    })
}

/// `ℹ pass 12`, `ℹ fail 1`, `ℹ cancelled 1` of node's runner.
pub fn node_line(line: &str) -> Option<Tally> {
    let (word, count) = line.strip_prefix("ℹ ")?.split_once(' ')?;
    let count = count.trim().parse().ok()?;
    match word {
        "pass" => Some(Tally::passed(count)),
        "fail" | "cancelled" => Some(Tally { failed: count, ..Tally::default() }),
        _ => None,
    }
}

/// `4 passed, 1 failed` and `not run: why` of our own rounds.
pub fn round_line(line: &str) -> Option<Tally> {
    if let Some(why) = line.strip_prefix("not run: ") {
        return Some(Tally { not_run: vec![why.to_string()], ..Tally::default() });
    }
    let (passed, failed) = line.strip_suffix(" failed")?.split_once(" passed, ")?;
    Some(Tally { passed: passed.parse().ok()?, failed: failed.parse().ok()?, not_run: Vec::new() })
}

/// The number before a word.
fn before(line: &str, word: &str) -> Option<u32> {
    line.split_once(word)?.0.rsplit(' ').next()?.parse().ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn counts(tally: Option<Tally>) -> Option<(u32, u32)> {
        tally.map(|tally| (tally.passed, tally.failed))
    }

    #[test]
    fn the_sums_of_each_runner_are_read() {
        let line = "test result: FAILED. 40 passed; 1 failed; 0 ignored; 0 measured; 0 filtered out; finished in 0.09s";
        assert_eq!(counts(cargo_line(line)), Some((40, 1)));
        assert_eq!(counts(node_line("ℹ pass 12")), Some((12, 0)));
        assert_eq!(counts(node_line("ℹ cancelled 2")), Some((0, 2)));
        assert_eq!(counts(round_line("4 passed, 1 failed")), Some((4, 1)));
        assert_eq!(round_line("not run: no loop device").map(|tally| tally.not_run.len()), Some(1));
    }

    #[test]
    fn other_lines_count_nothing() {
        for line in ["test a ... ok", "ℹ tests 12", "ℹ a word of a journey", "it passed, so far"] {
            assert!(
                cargo_line(line).is_none() && node_line(line).is_none() && round_line(line).is_none(),
                "{line}"
            );
        }
    }

    #[test]
    fn a_runner_that_ends_badly_or_runs_nothing_has_failed() {
        assert_eq!(
            watched(Command::new("sh").args(["-c", "echo '4 passed, 0 failed'; exit 3"]), round_line).failed,
            1
        );
        assert_eq!(watched(Command::new("sh").args(["-c", "echo nothing"]), round_line).failed, 1);
        let good = watched(Command::new("sh").args(["-c", "echo '4 passed, 0 failed'"]), round_line);
        assert_eq!((good.passed, good.failed), (4, 0));
    }
}
