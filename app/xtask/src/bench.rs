//! `cargo xtask bench`: the numbers to reach, printed with their conditions. Never a timed test: a slow machine is no
//! defect of the program. `bench native` and `bench page` run one half.
//!
//! A further measurement is a script in `tests/loads` and its name in [`PAGE`], or a line in `native`.

use crate::setup::{Need, set_up};
use crate::shell::{Done, cargo, program, read, root, run};
use crate::test::browser::{Served, scripts};

/// What is measured in a browser, on the served release: scripts in `tests/loads`.
const PAGE: [&str; 3] = ["lighthouse", "ten_thousand", "sixty_steps"];

/// Both halves, or the named one.
pub fn command(words: &[&str]) -> Done {
    let wanted = |half: &str| words.is_empty() || words.contains(&half);
    conditions();
    if wanted("native") {
        native()?;
    }
    if wanted("page") {
        set_up(Need::Bench)?;
        crate::build::release()?;
        crate::budget::command(&[])?;
        page()?;
    }
    Ok(())
}

/// What the numbers depend on.
fn conditions() {
    let cores = std::thread::available_parallelism().map_or(0, std::num::NonZero::get);
    let text = |command: &mut std::process::Command| crate::shell::output(command).unwrap_or_default();
    println!("{} cores; {}", cores, text(program("uname").args(["-srm"])).trim());
    println!("{}", text(program("rustc").arg("--version")).trim());
    if let Some(model) = read("/proc/cpuinfo".as_ref()).ok().and_then(|all| {
        let line = all.lines().find(|line| line.starts_with("model name"))?;
        Some(line.split_once(':')?.1.trim().to_string())
    }) {
        println!("{model}");
    }
}

fn native() -> Done {
    run(&mut scale())
}

fn page() -> Done {
    let journal = root().join("target/ten-thousand.jsonl");
    run(scale().arg("--").arg("10000").arg(&journal))?;
    let plan = root().join("target/sixty-steps.jsonl");
    run(scale().arg("--").arg("plan").arg(&plan))?;
    let served = Served::start("/")?;
    for name in PAGE {
        let script = root().join(format!("tests/loads/{name}.mjs"));
        run(scripts(&served).arg(script).env("BENCHSLATE_JOURNAL", &journal).env("BENCHSLATE_PLAN", &plan))?;
    }
    Ok(())
}

fn scale() -> std::process::Command {
    let what = ["--package", "benchslate-core", "--example", "scale", "--features", "fixture"];
    let mut cargo = cargo();
    cargo.args(["run", "--locked", "--quiet", "--profile", "bench"]).args(what);
    cargo
}
