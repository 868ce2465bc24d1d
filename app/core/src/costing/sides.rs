//! Piece, film, both: what is for both is shared by a key, to the last millionth.
//!
//! The key of a build: its direct hours of piece and film (the usual one), a fixed share, or what each side is expected
//! to bring in. Hours for `both` and those in the timber are out of it. None of either: half. A side that is expected to
//! bring in nothing or less can't be a key: direct hours then. Filming slows work down: of hours with the camera
//! rolling, s ÷ (1 + s) are the film's, where the maker says s. Hours on a lot are of the piece.
//! Source: our own rule, DEVELOPERS.md § Figures.

use super::{Hours, Parts};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, SettingKey, Side},
        shop::Income,
    },
    measure::{Day, Dec, Quantity, Ratio, Seconds, fixed},
    timing::filming,
};
use rustc_hash::FxHashMap;

/// One of the two sides.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum OneSide {
    /// The thing that is made.
    Piece,
    /// The film of making it.
    Film,
}

/// What the key of a build goes by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KeyBy {
    /// Direct hours of piece and film.
    Hours,
    /// A share that the maker has fixed.
    Fixed,
    /// What each side is expected to bring in.
    Income,
    /// Nothing to go by: half.
    Half,
}

/// How what is for both sides is shared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Key {
    /// By what.
    pub by: KeyBy,
    pub(crate) split: Split,
}

impl Key {
    /// The film's share, rounded to 10⁻⁶: 0.363958.
    pub fn film(&self) -> Quantity {
        let Split { piece, film } = self.split;
        let whole = piece.saturating_add(film);
        Quantity::from_micros(fixed::mul_div(film, fixed::SCALE, whole).unwrap_or(0))
    }
}

/// Weights of the two sides.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Split {
    pub piece: i128,
    pub film: i128,
}

impl Split {
    pub(crate) const PIECE: Split = Split { piece: 1, film: 0 };
    pub(crate) const FILM: Split = Split { piece: 0, film: 1 };
    const HALF: Split = Split { piece: 1, film: 1 };

    /// Of a row that says its side.
    pub(crate) fn of(side: Side, both: Split) -> Split {
        match side {
            Side::Piece => Split::PIECE,
            Side::Film => Split::FILM,
            Side::Both => both,
        }
    }

    /// What one side takes; both sides together take all.
    pub(crate) fn part(self, parts: Parts, side: OneSide) -> Parts {
        let (mine, others) = match side {
            OneSide::Piece => (self.piece, self.film),
            OneSide::Film => (self.film, self.piece),
        };
        match (mine > 0, others > 0) {
            (_, false) => parts,
            (false, true) => Parts::ZERO,
            (true, true) => {
                let mut shares = parts.allocate(&[self.piece, self.film]).into_iter();
                let piece = shares.next().unwrap_or_default();
                if side == OneSide::Piece { piece } else { parts.minus(piece) }
            }
        }
    }

    /// Hours of one side.
    pub(crate) fn hours(self, hours: Hours, side: OneSide) -> Hours {
        let parts = self.part(Parts::of_own_hours(hours), side);
        parts.own_hours()
    }
}

/// The keys of all builds.
#[derive(Clone, Debug, Default)]
pub(crate) struct Keys {
    by_build: FxHashMap<Id, Key>,
}

impl Keys {
    /// `direct`: weights of direct hours, by build.
    pub(crate) fn of(shop: &Shop, direct: &FxHashMap<Id, Split>, last: Day) -> Keys {
        let chosen = shop.settings.on(SettingKey::BothKey, last).unwrap_or_default();
        let fixed = Dec::parse(chosen).ok().and_then(|share| Ratio::share(share.0));
        let by_income = if chosen == "income" { by_income(&shop.incomes) } else { FxHashMap::default() };
        let keys = shop.builds.keys().map(|build| {
            let hours = || by_hours(direct.get(build));
            let key = match (chosen, fixed) {
                ("income", _) => by_income.get(build).copied().unwrap_or_else(hours),
                (_, Some(film)) => Key {
                    by: KeyBy::Fixed,
                    split: Split { piece: film.rest().micros(), film: film.micros() },
                },
                (_, None) => hours(),
            };
            (*build, key)
        });
        Keys { by_build: keys.collect() }
    }

    pub(crate) fn of_bearer(&self, bearer: Bearer) -> Key {
        let half = Key { by: KeyBy::Half, split: Split::HALF };
        match bearer {
            Bearer::Build(build) => self.by_build.get(&build).copied().unwrap_or(half),
            Bearer::Lot(_) => Key { split: Split::PIECE, ..half },
            Bearer::Shop => half,
        }
    }
}

fn by_hours(direct: Option<&Split>) -> Key {
    match direct {
        Some(split) if split.piece > 0 || split.film > 0 => Key { by: KeyBy::Hours, split: *split },
        Some(_) | None => Key { by: KeyBy::Half, split: Split::HALF },
    }
}

/// Of builds where each side brings in something.
fn by_income(incomes: &[Income]) -> FxHashMap<Id, Key> {
    let mut expected: FxHashMap<Id, Split> = FxHashMap::default();
    for income in incomes {
        let weights: Vec<i128> = income.shares.iter().map(|(_, parts)| i128::from(*parts)).collect();
        let shares = fixed::allocate(income.expected.unwrap_or_default().micros(), &weights);
        for ((bearer, _), share) in income.shares.iter().zip(shares) {
            let Bearer::Build(build) = *bearer else { continue };
            let sum = expected.entry(build).or_insert(Split { piece: 0, film: 0 });
            match income.side {
                Side::Piece => sum.piece = sum.piece.saturating_add(share),
                Side::Film => sum.film = sum.film.saturating_add(share),
                Side::Both => {}
            }
        }
    }
    let both = expected.into_iter().filter(|(_, split)| split.piece > 0 && split.film > 0);
    both.map(|(build, split)| (build, Key { by: KeyBy::Income, split })).collect()
}

/// By how much filming slows work down; nothing said: not at all.
pub(crate) fn slow_down(shop: &Shop, last: Day) -> Ratio {
    filming::set(shop, last).unwrap_or_default()
}

/// The sides of a stretch: of what was rolled, s ÷ (1 + s) is the film's.
/// Worked example: 3 h rolling at 25 % move 0.6 h.
pub(crate) fn of_work(side: Side, both: Split, worked: Seconds, rolled: Seconds, slow_down: Ratio) -> Split {
    let split = Split::of(side, both);
    if side != Side::Piece || slow_down.is_zero() || rolled.is_zero() {
        return split;
    }
    let all = Hours::of(worked).micros();
    let moved = fixed::mul_div(Hours::of(rolled).micros(), slow_down.micros(), slow_down.on_top().micros());
    let film = moved.unwrap_or(0).min(all);
    Split { piece: all.saturating_sub(film), film }
}
