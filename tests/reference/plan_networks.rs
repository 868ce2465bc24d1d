//! Networks of textbooks and of a library against the planner's own sums.
//!
//! DIFFERENCE: the planner draws from another distribution than the three-point formula of textbooks (mean (a+4m+b)/6,
//! variance ((b−a)/6)²) and never adds variances along one path: the formulas stand here, to check paths and slacks.

use benchslate_core::planning::{
    bare::{Bare, could_be},
    draws::{Draws, quantile},
};
use petgraph::{algo::bellman_ford, graph::DiGraph};

/// Name, the ones before it, and a, m, b.
type Row<'a> = (&'a str, &'a str, [i64; 3]);

/// In sixths of the unit, so that means are whole.
fn network(rows: &[Row]) -> Bare {
    let place = |name: char| rows.iter().position(|row| row.0 == name.to_string()).unwrap();
    Bare {
        lengths: rows.iter().map(|(_, _, [a, m, b])| a + 4 * m + b).collect(),
        before: rows.iter().map(|(_, before, _)| before.chars().map(|it| (place(it), 0)).collect()).collect(),
        takes: vec![Vec::new(); rows.len()],
        counts: Vec::new(),
    }
}

/// Earliest start, latest start, and the slack between them.
fn starts(bare: &Bare) -> Vec<(i64, i64, i64)> {
    let whole = bare.longest_chain();
    let early = bare.shortest(1, 1).starts;
    early.iter().zip(bare.tails()).map(|(early, tail)| (*early, whole - tail, whole - tail - early)).collect()
}

/// In 36ths of the unit squared, along the steps without slack.
fn variance(rows: &[Row], slacks: &[(i64, i64, i64)]) -> i64 {
    let critical = rows.iter().zip(slacks).filter(|(_, slack)| slack.2 == 0);
    critical.map(|((_, _, [a, _, b]), _)| (b - a) * (b - a)).sum()
}

const PAPER: [Row; 8] = [
    ("A", "", [1, 2, 3]),
    ("B", "", [2, 3, 4]),
    ("C", "A", [1, 2, 3]),
    ("D", "AB", [2, 4, 6]),
    ("E", "C", [1, 4, 7]),
    ("F", "C", [1, 2, 9]),
    ("G", "DE", [3, 4, 11]),
    ("H", "FG", [1, 2, 3]),
];

// Source: published — J. Heizer, B. Render, Operations Management, "Milwaukee Paper": earliest and latest starts, slack
// and critical path. The three values and the chance: from memory; their means are the published lengths.
#[test]
fn a_network_of_eight_has_the_published_starts_slacks_and_chance() {
    let bare = network(&PAPER);
    assert_eq!(bare.longest_chain(), 15 * 6);
    let found = starts(&bare);
    let want = [(0, 0, 0), (0, 1, 1), (2, 2, 0), (3, 4, 1), (4, 4, 0), (4, 10, 6), (8, 8, 0), (13, 13, 0)];
    assert_eq!(found, want.map(|(early, late, slack)| (early * 6, late * 6, slack * 6)));
    let critical: String =
        PAPER.iter().zip(&found).filter(|(_, it)| it.2 == 0).map(|(row, _)| row.0).collect();
    assert_eq!(critical, "ACEGH");
    let variance = variance(&PAPER, &found) as f64 / 36.0;
    assert!((variance - 3.1111).abs() < 0.000_05, "{variance}");
    // P(at most 16) = 0.71462, and 99 in 100 are over by 19.103.
    let deviation = variance.sqrt();
    assert!((quantile(0.714_62) - 1.0 / deviation).abs() < 0.000_02);
    assert!((15.0 + quantile(0.99) * deviation - 19.103).abs() < 0.000_5);
}

// Source: published — an exercise on three independent paths (collection "p2vl9tn"): lengths and deviations of each.
#[test]
fn three_independent_paths_have_the_published_lengths() {
    let paths: [(&[Row], f64, f64); 3] = [
        (&[("A", "", [5, 6, 7]), ("C", "A", [6, 8, 11]), ("E", "C", [5, 6, 9])], 20.50, 1.118),
        (&[("D", "", [9, 12, 15]), ("F", "D", [5, 6, 7]), ("G", "F", [2, 3, 7])], 21.50, 1.344),
        (&[("B", "", [8, 8, 11]), ("H", "B", [4, 4, 5]), ("I", "H", [5, 7, 8])], 19.50, 0.726),
    ];
    for (rows, length, deviation) in paths {
        let bare = network(rows);
        assert!((bare.longest_chain() as f64 / 6.0 - length).abs() < 0.005);
        let is = (variance(rows, &starts(&bare)) as f64).sqrt() / 6.0;
        assert!((is - deviation).abs() < 0.000_5, "{is}");
    }
    // All three are over by 24 with the product of their chances: each alone is 0.9991, 0.9686 and 1.
    for (length, deviation, share) in [(20.5, 1.118, 0.9991_f64), (21.5, 1.344, 0.9686)] {
        let z = (24.0 - length) / deviation;
        assert!(quantile(share - 0.0001) < z && z < quantile(share + 0.0001), "{share}");
    }
}

// Source: published — hand-derivable cases of a public test-suite of link types; the planner has end to start, with a
// wait or none: FS+2 of a step of 3 and one of 2. DIFFERENCE: it has no overlaps, no SS, FF or SF.
#[test]
fn a_step_begins_when_the_wait_after_the_one_before_it_is_over() {
    let bare = |wait| Bare {
        lengths: vec![3, 2],
        before: vec![Vec::new(), vec![(0, wait)]],
        takes: vec![Vec::new(); 2],
        counts: Vec::new(),
    };
    let found = |wait| bare(wait).shortest(1, 1);
    assert_eq!((found(2).starts, found(2).length), (vec![0, 5], 7));
    assert_eq!((found(0).starts, found(0).length), (vec![0, 3], 5));
}

/// A network of up to forty tasks with waits, each after any of those before it.
fn random(seed: u64) -> Bare {
    let mut draws = Draws::of(seed);
    let many = 2 + draws.place(39);
    let mut length = |most: u64| i64::try_from(draws.below(most)).unwrap();
    let lengths: Vec<i64> = (0..many).map(|_| 1 + length(20)).collect();
    let mut before = vec![Vec::new(); many];
    for (at, own) in before.iter_mut().enumerate() {
        for earlier in 0..at {
            if length(6) == 0 {
                own.push((earlier, length(8)));
            }
        }
    }
    Bare { lengths, before, takes: vec![Vec::new(); many], counts: Vec::new() }
}

// Source: library — petgraph 0.8, bellman_ford: the longest path is the shortest with every length below zero. 400
// networks, seeds 1 to 400.
#[test]
fn longest_paths_of_random_networks_are_those_of_a_library() {
    for seed in 1..=400 {
        let bare = random(seed);
        let mut graph = DiGraph::<(), f64>::new();
        let source = graph.add_node(());
        let nodes: Vec<_> = bare.lengths.iter().map(|_| graph.add_node(())).collect();
        let ends = graph.add_node(());
        for (at, before) in bare.before.iter().enumerate() {
            graph.add_edge(source, nodes[at], 0.0);
            graph.add_edge(nodes[at], ends, -(bare.lengths[at] as f64));
            for (earlier, wait) in before {
                graph.add_edge(nodes[*earlier], nodes[at], -((bare.lengths[*earlier] + wait) as f64));
            }
        }
        let paths = bellman_ford(&graph, source).expect("no ring");
        let longest = -paths.distances[ends.index()] as i64;
        assert_eq!(bare.longest_chain(), longest, "seed {seed}");
        let starts = bare.shortest(1, 1).starts;
        for (at, start) in starts.iter().enumerate() {
            assert_eq!(*start, -paths.distances[nodes[at].index()] as i64, "seed {seed}, task {at}");
        }
    }
}

// Source: common practice — a schedule can be: nothing before what comes before it, never more taken than there is, and
// none shorter than the longest chain or than all work by what there is. 60 networks with two things, seeds 1 to 60.
#[test]
fn schedules_of_random_networks_can_be_and_are_no_shorter_than_their_bound() {
    for seed in 1..=60 {
        let mut bare = random(seed);
        let mut draws = Draws::of(seed + 1_000);
        bare.counts = vec![3, 2];
        for takes in &mut bare.takes {
            *takes = vec![
                (0, u32::try_from(draws.below(4)).unwrap()),
                (1, u32::try_from(draws.below(3)).unwrap()),
            ];
        }
        let found = bare.shortest(300, seed);
        assert!(could_be(&bare, &found.starts), "seed {seed}");
        assert!(found.length >= bare.lower_bound(), "seed {seed}");
        assert_eq!(found, bare.shortest(300, seed), "the same seed, the same schedule");
        assert!(found.length <= bare.shortest(1, seed).length, "seed {seed}");
    }
}
