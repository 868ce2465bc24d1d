//! Section hatching by kind: the patterns of the product, in the colours of film, slate, or nothing behind them.
//!
//! One table for the screens and for the cards. Hatching tells what a thing is made of; it always stands with its word.

use crate::costing::CostKind;

/// What an area is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Made {
    /// A kind of cost.
    Kind(CostKind),
    /// Dearer, lost: red.
    Loss,
    /// The piece's side.
    Piece,
    /// The film's side.
    Film,
    /// Both sides.
    Both,
    /// No kind: a recess.
    Plain,
}

impl Made {
    /// The names of its patterns, laid over each other.
    pub fn patterns(self) -> &'static [&'static str] {
        match self {
            Made::Kind(CostKind::Salvaged) => &["h-salvaged"],
            Made::Kind(CostKind::Bought) | Made::Piece => &["h-bought"],
            Made::Kind(CostKind::Offcut) => &["h-offcut"],
            Made::Kind(CostKind::Consumables) => &["h-consumables"],
            Made::Kind(CostKind::Direct) => &["h-direct"],
            Made::Kind(CostKind::Supplied) => &["h-supplied"],
            Made::Kind(CostKind::Labour) => &["h-labour"],
            Made::Kind(CostKind::Tools) => &["h-tools"],
            Made::Kind(CostKind::Overhead) => &["h-overhead"],
            Made::Kind(CostKind::OneOff) => &["h-one-off"],
            Made::Loss => &["h-loss"],
            Made::Film => &["h-film"],
            Made::Both => &["h-bought", "h-film"],
            Made::Plain => &[],
        }
    }

    /// Its wash on film, and on slate: those of the screens by day and by night.
    pub(super) fn washes(self) -> [&'static str; 2] {
        match self {
            Made::Kind(CostKind::Salvaged) => ["#e9d5b0", "#4a3718"],
            Made::Kind(CostKind::Bought) | Made::Piece | Made::Both => ["#f2e6c9", "#3b321f"],
            Made::Kind(CostKind::Offcut) => ["#efdfc2", "#43351f"],
            Made::Kind(CostKind::Supplied) | Made::Film => ["#dce9dc", "#22382a"],
            Made::Kind(CostKind::Consumables) => ["#d6e4ea", "#1c3542"],
            Made::Kind(CostKind::Direct) => ["#ece0dd", "#40302c"],
            Made::Kind(CostKind::Tools) => ["#d9dbe4", "#2b2f40"],
            Made::Kind(CostKind::Overhead) => ["#e3dad4", "#3a2c28"],
            Made::Kind(CostKind::OneOff) => ["#e6e3ee", "#332f44"],
            Made::Kind(CostKind::Labour) | Made::Loss => ["#f3f3ec", "#1e282e"],
            Made::Plain => ["#e7e8df", "#34424b"],
        }
    }
}

/// A pattern: its id, its tile in px, its paths by class (`lines`, `solid`, `heavy`, `round`, `checkers`).
pub type Pattern = (&'static str, u32, u32, &'static [(&'static str, &'static str)]);

/// Every pattern, in px of a screen.
pub const PATTERNS: [Pattern; 13] = [
    // Wavy grain with nail holes.
    (
        "h-salvaged",
        26,
        15,
        &[
            ("lines", "M0 3.5q6.5 -3.4 13 0t13 0M0 11q6.5 3.4 13 0t13 0"),
            ("solid", "M16.8 7.2a1.7 1.7 0 1 0 3.4 0a1.7 1.7 0 1 0 -3.4 0"),
        ],
    ),
    ("h-bought", 7, 7, &[("lines", "M-1 1l2 -2M0 7L7 0M6 8l2 -2")]),
    ("h-offcut", 10, 10, &[("lines", "M0 10L4 6M6 4L10 0M1 1l3 3M6 6l3 3")]),
    // Broken lines the other way.
    ("h-supplied", 12, 12, &[("lines", "M0 0l4 4M6 0l4 4M0 6l4 4M6 6l4 4")]),
    ("h-consumables", 14, 8, &[("lines", "M1 2h6M8 6h5")]),
    // A receipt's stub: upright lines with knots.
    ("h-direct", 9, 9, &[("lines", "M4.5 0v9"), ("lines heavy", "M4.5 2.5v2")]),
    ("h-labour", 23, 20, &[("lines round", "M4.5 4.5v12M8.5 4v12.5M12.5 4.5v12M16.5 4v12.5M2 14.5L19.5 6")]),
    ("h-tools", 10, 10, &[("lines", "M0 10L10 0M-1 1l2 -2M9 11l2 -2M3 10L13 0M-7 10L3 0")]),
    ("h-one-off", 10, 10, &[("lines", "M0 10L10 0M0 0L10 10M-1 1l2 -2M9 11l2 -2M-1 9l2 2M9 -1l2 2")]),
    ("h-overhead", 16, 12, &[("lines", "M0 .5h16M0 6.5h16M3.5 .5v6M11.5 6.5v6")]),
    ("h-loss", 6, 6, &[("checkers", "M-1 1l2 -2M0 6L6 0M5 7l2 -2")]),
    ("h-film", 11, 9, &[("lines", "M0 .5h11"), ("solid", "M3 2.8h5v3.9h-5z")]),
    // A board drawn large: long grain, a nail hole now and then.
    (
        "h-grain",
        132,
        54,
        &[
            (
                "lines",
                "M0 9c33 -3 44 2 66 1s33 -2 66 -1M0 19c40 4 60 -2 132 0M0 29c30 -4 60 4 90 1s30 -1 42 -1\
            M0 39c44 3 80 -3 132 0M0 48c30 -3 66 3 132 0",
            ),
            (
                "solid",
                "M24 13a2 2 0 1 0 4 0a2 2 0 1 0 -4 0M30 43a2 2 0 1 0 4 0a2 2 0 1 0 -4 0\
            M86 13a2 2 0 1 0 4 0a2 2 0 1 0 -4 0M92 43a2 2 0 1 0 4 0a2 2 0 1 0 -4 0",
            ),
        ],
    ),
];
