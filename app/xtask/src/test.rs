//! `cargo xtask test`: every check of the house, a part at a time, each with the line that runs it again. The last
//! line printed is the sum. `test quick` is what is run while writing: core and tidy, under a minute once warm.

pub mod browser;
mod tally;

use crate::setup::{Need, set_up};
use crate::shell::{Done, cargo, program, run};
use tally::Tally;

/// A part: its name, whether it is in the quick round, whether it needs the release build, and how it is run.
struct Part {
    name: &'static str,
    quick: bool,
    needs_build: bool,
    run: fn(Round) -> Tally,
}

/// How much is asked for.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Round {
    Quick,
    Whole,
}

/// In the order they are run: what fails soonest first.
const PARTS: [Part; 9] = [
    Part { name: "fmt", quick: true, needs_build: false, run: |_| Tally::of(fmt()) },
    Part { name: "tidy", quick: true, needs_build: false, run: |_| tidy() },
    Part { name: "native", quick: true, needs_build: false, run: native },
    Part { name: "clippy", quick: true, needs_build: false, run: clippy },
    Part {
        name: "build",
        quick: false,
        needs_build: false,
        run: |_| Tally::of(crate::build::release().map(drop)),
    },
    Part { name: "budget", quick: false, needs_build: true, run: |_| Tally::of(crate::budget::command(&[])) },
    Part { name: "journeys", quick: false, needs_build: true, run: |_| browser::journeys() },
    Part { name: "kill", quick: false, needs_build: true, run: |_| browser::rounds("kill") },
    Part { name: "power", quick: false, needs_build: true, run: |_| browser::rounds("power") },
];

/// All parts, the quick ones, or the named ones.
pub fn command(words: &[&str]) -> Done {
    let round = if words == ["quick"] { Round::Quick } else { Round::Whole };
    let named: Vec<&str> = words.iter().copied().filter(|word| *word != "quick").collect();
    if let Some(unknown) = named.iter().find(|word| !PARTS.iter().any(|part| part.name == **word)) {
        let names: Vec<&str> = PARTS.iter().map(|part| part.name).collect();
        return Err(format!("no part `{unknown}`; there are quick, {}", names.join(", ")));
    }
    let wanted: Vec<&Part> = PARTS
        .iter()
        .filter(|part| {
            if named.is_empty() { round == Round::Whole || part.quick } else { named.contains(&part.name) }
        })
        .collect();
    if round == Round::Whole {
        set_up(Need::Test)?;
    }
    let sum = run_parts(&wanted, round);
    for line in &sum.not_run {
        println!("not run: {line}");
    }
    println!("{} passed, {} failed", sum.passed, sum.failed);
    // The sum is the last line: what failed was said above it.
    if sum.failed == 0 { Ok(()) } else { std::process::exit(1) }
}

fn run_parts(wanted: &[&Part], round: Round) -> Tally {
    let mut sum = Tally::default();
    let mut again = Vec::new();
    let mut unbuilt = false;
    for part in wanted {
        println!("== {}", part.name);
        let began = std::time::Instant::now();
        let tally = if unbuilt && part.needs_build {
            Tally::failed("there is no release build to look at")
        } else {
            (part.run)(round)
        };
        unbuilt |= part.name == "build" && tally.failed > 0;
        println!(
            "   {}: {} passed, {} failed, {} s",
            part.name,
            tally.passed,
            tally.failed,
            began.elapsed().as_secs()
        );
        if tally.failed > 0 {
            again.push(format!("again: cargo xtask test {}", part.name));
        }
        sum.add(tally);
    }
    for line in again {
        println!("{line}");
    }
    sum
}

fn fmt() -> Done {
    run(cargo().args(["fmt", "--all", "--check"]))?;
    run(program("rustfmt").args(["--edition", "2024", "--check", "app/xtask/bindgen/src/main.rs"]))
}

/// Warnings are errors: natively, and the app for the browser.
fn clippy(round: Round) -> Tally {
    let native = ["--package", "benchslate-core", "--package", "xtask"];
    let tests = ["--package", "benchslate-tests"];
    let mut clippy = cargo();
    clippy.args(["clippy", "--locked", "--quiet", "--all-targets"]).args(native);
    if round == Round::Whole {
        clippy.args(tests);
    }
    let mut tally = Tally::of(run(clippy.args(["--", "-D", "warnings"])));
    if round == Round::Whole {
        let web = ["--package", "benchslate-web", "--target", "wasm32-unknown-unknown"];
        let mut clippy = cargo();
        clippy.args(["clippy", "--locked", "--quiet"]).args(web).args(["--", "-D", "warnings"]);
        tally.add(Tally::of(run(&mut clippy)));
    }
    tally
}

fn tidy() -> Tally {
    let laws = match crate::tidy::laws() {
        Ok(laws) => laws,
        Err(why) => return Tally::failed(&why),
    };
    let mut tally = Tally::default();
    for law in laws {
        for finding in &law.findings {
            println!("{finding}");
        }
        let kept = if law.findings.is_empty() { "ok" } else { "BROKEN" };
        println!("law: {} ... {kept}", law.name);
        tally.add(if law.findings.is_empty() {
            Tally::passed(1)
        } else {
            Tally { failed: 1, ..Tally::default() }
        });
    }
    tally
}

/// Unit and property tests and the reference checks, on this machine.
fn native(round: Round) -> Tally {
    let mut test = cargo();
    test.args(["test", "--locked", "--no-fail-fast", "--package", "benchslate-core"]);
    test.args(["--package", "xtask", "--package", "benchslate-tests"]);
    if round == Round::Whole {
        test.args(["--package", "benchslate-web"]);
    }
    tally::watched(&mut test, tally::cargo_line)
}
