//! The sample shop, unshifted, against the figures that two other programs have worked out from the same shop.
//!
//! The shop is invented, and so are its figures: no authority stands behind them but that figures.json was written by two
//! programs that share no line with this one or with each other, and agree. Every path of it is looked up here.

mod figures;

use serde_json::Value;
use std::collections::BTreeMap;

/// Leaves round to 10⁻⁶ each, their sums are compared with sums of unrounded ones: a hundred leaves may be off by a few
/// millionths together.
const NEAR: f64 = 0.000_005;

// Source: library — two programs written apart from this one and from each other, over invented data; figures.json
// holds what both came to.
#[test]
fn every_figure_of_the_sample_shop_is_the_one_that_was_worked_out_beside_it() {
    let want = flat(&serde_json::from_str(include_str!("figures.json")).unwrap());
    let got = figures::figures();
    let mut wrong = Vec::new();
    let mut compared = 0;
    for (path, figure) in &want {
        if ["note", "as_of", "formula"].contains(&path.as_str()) {
            continue;
        }
        compared += 1;
        match got.get(path) {
            Some(it) if same(figure, it) => {}
            it => wrong.push(format!("{path}: {figure}, here {}", it.map_or("nothing", String::as_str))),
        }
    }
    assert!(wrong.is_empty(), "{} of {compared} differ:\n{}", wrong.len(), wrong.join("\n"));
    assert!(compared > 650, "only {compared} compared");
}

fn same(want: &str, got: &str) -> bool {
    match (want.parse::<f64>(), got.parse::<f64>()) {
        (Ok(want), Ok(got)) => (want - got).abs() < NEAR,
        _ => want == got,
    }
}

/// Every leaf by its path: `builds.B1.draws[0].qty`.
fn flat(tree: &Value) -> BTreeMap<String, String> {
    let mut leaves = BTreeMap::new();
    gather("", tree, &mut leaves);
    leaves
}

fn gather(path: &str, tree: &Value, into: &mut BTreeMap<String, String>) {
    match tree {
        Value::Object(fields) => {
            let dot = if path.is_empty() { "" } else { "." };
            fields.iter().for_each(|(name, it)| gather(&format!("{path}{dot}{name}"), it, into));
        }
        Value::Array(all) => {
            all.iter().enumerate().for_each(|(at, it)| gather(&format!("{path}[{at}]"), it, into));
        }
        Value::String(text) => drop(into.insert(path.to_owned(), text.clone())),
        other => drop(into.insert(path.to_owned(), other.to_string())),
    }
}
