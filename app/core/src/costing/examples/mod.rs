//! The worked examples of our own rules, each a history in a few lines. Invented numbers.
//!
//! A figure is told as a tree: its step, its value, its parts below it; `-` before what is taken off.

mod closed_stock;
mod figures;
mod finds;
mod formula;
mod gaps;
mod labour;
mod looks;
mod merged;
mod money;
mod salvage;
mod shop;
mod shown;
mod stock;
mod tools;

use crate::{
    costing::{LotBook, Path, Statement},
    fixture::{Fixture, fixture},
};

/// A history, the address of a figure in the sheet of `bench`, and its tree so many levels down.
#[track_caller]
fn check(history: &str, at: &str, depth: usize, want: &str) {
    let it = fixture(history);
    let cost = it.books().build_cost(it.id("bench"));
    let levels = cost.open(&address(&it, at)).expect("opens");
    same(&it, levels.last().expect("a level"), depth, want);
}

/// The same in the sheet of the lot `oak`.
#[track_caller]
fn check_lot(history: &str, at: &str, depth: usize, want: &str) {
    let it = fixture(history);
    let lot = oak(&it);
    let levels = lot.open(&address(&it, at)).expect("opens");
    same(&it, levels.last().expect("a level"), depth, want);
}

fn oak(it: &Fixture) -> LotBook {
    it.books().lot(it.id("oak")).expect("a lot by itself")
}

/// `true.salvaged.lot_oak`: names stand for ids.
fn address(it: &Fixture, at: &str) -> Path {
    let steps = at.split('.').map(|step| match step.split_once('_') {
        Some((code, name)) => match code {
            "rest" => step.to_owned(),
            _ => format!("{code}_{}", it.id(name)),
        },
        None => step.to_owned(),
    });
    Path::parse(&steps.collect::<Vec<_>>().join("."))
}

#[track_caller]
fn same(it: &Fixture, statement: &Statement, depth: usize, want: &str) {
    let lines: Vec<&str> = want.lines().filter(|line| !line.trim().is_empty()).collect();
    let indent = |line: &&str| line.len() - line.trim_start().len();
    let least = lines.iter().map(indent).min().unwrap_or(0);
    let want: Vec<&str> = lines.iter().map(|line| &line[least..]).collect();
    assert_eq!(it.tree(statement, depth).trim_end(), want.join("\n"));
}
