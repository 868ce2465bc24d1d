//! How short the planner's search makes published networks:
//! `cargo run --release --example schedule_psplib -p benchslate-core -- FILE.sm …`.
//!
//! Each file is a single-mode instance in the format of PSPLIB; files are read from where they are named, none is kept
//! here. Prints the makespan and a lower bound (longest chain, or all work by what there is of each resource).
//! `--schedules 5000`: how many are tried for each; `--seed 1`. `--best FILE`: a table `problem,optimum` to compare with.
//! Source of the format: R. Kolisch, A. Sprecher, PSPLIB, European Journal of Operational Research 96 (1996) 205-216.

#![allow(
    clippy::arithmetic_side_effects,
    clippy::expect_used,
    clippy::float_arithmetic,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::as_conversions,
    reason = "a program for those who build this one, not part of it"
)]

use benchslate_core::planning::bare::{Bare, could_be};
use std::{collections::BTreeMap, time::Instant};

fn main() {
    let mut words = std::env::args().skip(1);
    let (mut files, mut schedules, mut seed, mut best) = (Vec::new(), 5_000, 1, BTreeMap::new());
    while let Some(word) = words.next() {
        let mut number = || words.next().and_then(|it| it.parse().ok()).expect("a number after it");
        match word.as_str() {
            "--schedules" => schedules = number(),
            "--seed" => seed = u64::from(number()),
            "--best" => best = optima(&words.next().expect("the path of a table")),
            _ => files.push(word),
        }
    }
    assert!(!files.is_empty(), "the paths of single-mode .sm files");
    let (begun, mut excesses) = (Instant::now(), Vec::new());
    for file in &files {
        let text = std::fs::read_to_string(file).unwrap_or_else(|bad| panic!("{file}: {bad}"));
        let bare = read(&text).unwrap_or_else(|| panic!("{file}: not a single-mode instance"));
        let found = bare.shortest(schedules, seed);
        assert!(could_be(&bare, &found.starts), "{file}: a schedule that can't be");
        let name = file.rsplit('/').next().expect("a name");
        let known = best.get(name).map(|optimum| {
            let over = (found.length - optimum) as f64 * 100.0 / *optimum as f64;
            excesses.push((over, name.to_owned()));
            format!(" optimum {optimum} over {over:.2} %")
        });
        let (known, proven) = (known.unwrap_or_default(), if found.proven { " proven" } else { "" });
        let (length, least, tried) = (found.length, bare.lower_bound(), found.tried);
        println!("{name} makespan {length} bound {least} tried {tried}{proven}{known}");
    }
    let seconds = begun.elapsed().as_secs_f64();
    println!("{} files, {schedules} schedules each, seed {seed}: {seconds:.2} s", files.len());
    if let Some(worst) = excesses.iter().max_by(|a, b| a.0.total_cmp(&b.0)) {
        let mean = excesses.iter().map(|it| it.0).sum::<f64>() / excesses.len() as f64;
        println!("over the optimum: mean {mean:.3} %, worst {:.2} % ({})", worst.0, worst.1);
    }
}

fn optima(file: &str) -> BTreeMap<String, i64> {
    let text = std::fs::read_to_string(file).unwrap_or_else(|bad| panic!("{file}: {bad}"));
    let row = |line: &str| {
        let (name, optimum) = line.split_once(',')?;
        Some((name.trim().to_owned(), optimum.trim().parse().ok()?))
    };
    text.lines().filter_map(row).collect()
}

/// Jobs are numbered from 1 in the file.
fn read(text: &str) -> Option<Bare> {
    let section = |head: &str| {
        let mut lines = text.lines().skip_while(move |line| !line.starts_with(head)).skip(1);
        let numbers = |line: &str| {
            line.split_whitespace().map(|word| word.parse::<i64>().ok()).collect::<Option<Vec<i64>>>()
        };
        let rows: Vec<Vec<i64>> = lines
            .by_ref()
            .take_while(|line| !line.starts_with("****"))
            .filter_map(numbers)
            .filter(|row| !row.is_empty())
            .collect();
        rows
    };
    let (links, work, counts) =
        (section("PRECEDENCE RELATIONS"), section("REQUESTS/DURATIONS"), section("RESOURCEAVAILABILITIES"));
    let jobs = work.len();
    let mut bare = Bare {
        lengths: work.iter().map(|row| row[2]).collect(),
        before: vec![Vec::new(); jobs],
        takes: Vec::new(),
        counts: counts.last()?.iter().map(|it| u32::try_from(*it).ok()).collect::<Option<_>>()?,
    };
    for row in &work {
        let takes =
            row[3..].iter().enumerate().map(|(thing, many)| Some((thing, u32::try_from(*many).ok()?)));
        bare.takes.push(takes.collect::<Option<_>>()?);
    }
    for row in links {
        let before = usize::try_from(row[0]).ok()?.checked_sub(1)?;
        for after in &row[3..] {
            bare.before.get_mut(usize::try_from(*after).ok()?.checked_sub(1)?)?.push((before, 0));
        }
    }
    (jobs > 0).then_some(bare)
}
