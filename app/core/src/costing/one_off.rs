//! One-off work (jigs, templates, the design): a pool a design, borne by all that will be made with it.
//!
//! A build that repeats another shares that one's pool. Share = pool × good ÷ run planned, in the order in which the
//! builds were begun and never more than the run; the rest is still to be borne. No run planned: the build bears it all.
//! Once it is said that no more will be made, what nobody has borne is written off: a loss of the shop. Builds begun
//! after that bear none of it. Items beyond the run share what their build bears: all together never more than it does.
//! Worked example: 150 over 30; 10 good bear 50, 12 good 60, 40 are still to be borne, then written off.
//! Source: our own rule, DEVELOPERS.md § Figures.

use super::{
    Books, CostKind, Hours, Parts, Working,
    build::{CostLine, Group, one_off_lines},
};
use crate::{
    journal::{Id, Shop, kinds::Bearer},
    measure::{Day, InOrder, Map},
};

/// A pool and who bears it.
#[derive(Clone, Debug)]
pub(crate) struct Series {
    /// To be made in all.
    pub run: u32,
    pub lines: Vec<CostLine>,
    pub pool: Parts,
    pub shares: Vec<Share>,
    /// Still to be borne, or, once the run has ended, written off.
    pub rest: Parts,
    /// The day on which it was said that no more will be made.
    pub ended: Option<Day>,
}

/// What one build bears of a pool.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Share {
    pub build: Id,
    /// Good ones that bear it.
    pub good: u32,
    /// How many could, the rest of the run too.
    pub most: u32,
    pub parts: Parts,
}

impl Series {
    /// What a build bears; none: it is of another run.
    pub(crate) fn of(&self, build: Id) -> Option<Share> {
        self.shares.iter().find(|it| it.build == build).copied()
    }

    /// A build's share, down to the lines of the pool.
    pub(crate) fn share_lines(&self, build: Id) -> Vec<CostLine> {
        let Some(Share { good, parts: share, .. }) = self.of(build).filter(|it| it.good > 0) else {
            return Vec::new();
        };
        let parts: Vec<Parts> = self.lines.iter().map(|line| line.parts).collect();
        let shares = share.allocate_like(&parts);
        let lines = self.lines.iter().zip(shares).map(|(line, parts)| CostLine {
            kind: CostKind::OneOff,
            group: Group::None,
            parts,
            film: Parts::ZERO,
            working: Working::OneOff { of: line.parts.total(), good, run: self.run },
            drawn: None,
            hours: parts.own_hours().plus(parts.paid_hours()),
            film_hours: Hours::ZERO,
            ..line.clone()
        });
        lines.collect()
    }
}

/// Every pool, by the first build of its run.
pub(crate) fn series(books: &Books, shop: &Shop) -> Vec<Series> {
    let mut runs: Map<Id, Vec<Id>> = Map::new();
    let mut builds: Vec<Id> = shop.builds.keys().copied().collect();
    builds.order_by_key(|id| shop.builds.get(id).map(|build| build.order));
    for build in builds {
        runs.entry(shop.first_of_run(build)).or_default().push(build);
    }
    let today = shop.zone.day(books.as_of);
    let mut all = Vec::new();
    for (first, builds) in runs {
        let Some(run) = shop.builds.get(&first).and_then(|build| build.run_planned) else { continue };
        let lines: Vec<CostLine> =
            builds.iter().flat_map(|build| one_off_lines(books, Bearer::Build(*build))).collect();
        if lines.is_empty() {
            continue;
        }
        let pool = lines.iter().fold(Parts::ZERO, |sum, line| sum.plus(line.parts));
        let ends =
            shop.series_ends.iter().filter(|(order, build)| order.day <= today && builds.contains(build));
        let ended = ends.map(|(order, _)| *order).min();
        let after = |build: &Id| {
            let begun = shop.builds.get(build).map(|it| it.order);
            ended.is_some_and(|ended| begun.is_some_and(|begun| begun.day > ended.day))
        };
        let mut left = run;
        let counted: Vec<u32> = builds
            .iter()
            .map(|build| {
                let good =
                    if after(build) { 0 } else { books.made.get(build).map_or(0, |it| it.good).min(left) };
                left = left.saturating_sub(good);
                good
            })
            .collect();
        let weights: Vec<i128> =
            counted.iter().map(|good| i128::from(*good)).chain(std::iter::once(i128::from(left))).collect();
        let mut parts = pool.allocate(&weights);
        let rest = parts.pop().unwrap_or_default();
        let shares = builds.into_iter().zip(counted).zip(parts).map(|((build, good), parts)| {
            let most = if after(&build) { 0 } else { good.saturating_add(left) };
            Share { build, good, most, parts }
        });
        all.push(Series { run, lines, pool, shares: shares.collect(), rest, ended: ended.map(|it| it.day) });
    }
    all
}
