//! What a correction of a lot moved, and what, being closed, stayed.
//!
//! Each bearer that drew from the lot, or from the item that it is pooled under, with what its draws cost before and
//! after. Worked example: 4 of 10 at 40 went into a build, 16.00; the lot corrected to 60, the build bears 24.00; closed,
//! it keeps 16.00 and the rest of the lot bears the difference. Source: our own rule, DEVELOPERS.md § Why.

use super::{Books, stock::rows};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Source},
    },
    measure::Money,
};

/// What one bearer's draws of a lot cost.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct DrewFor {
    /// Who.
    pub bearer: Bearer,
    /// What they cost; none where that can't be said.
    pub cost: Option<Money>,
    /// It is closed, and they stay as they are.
    pub closed: bool,
}

/// The same before and after.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Moved {
    /// Who.
    pub bearer: Bearer,
    /// Before.
    pub before: Option<Money>,
    /// After; the same where it stayed.
    pub after: Option<Money>,
    /// It is closed.
    pub closed: bool,
}

impl Books {
    /// Who drew from a lot, or from its item, and what that cost.
    pub fn drew_from(&self, shop: &Shop, lot: Id) -> Vec<DrewFor> {
        let source = rows::account(shop, Source::Lot(lot));
        let mut all: Vec<DrewFor> = Vec::new();
        for row in self.stock.rows_of(source) {
            let cost = row.known.then(|| row.parts.total());
            match all.iter_mut().find(|it| it.bearer == row.bearer) {
                Some(sum) => {
                    sum.cost = sum.cost.zip(cost).map(|(sum, cost)| sum.plus(cost));
                    sum.closed &= row.frozen;
                }
                None => all.push(DrewFor { bearer: row.bearer, cost, closed: row.frozen }),
            }
        }
        all
    }
}

/// Who bears another sum than before, and who, being closed, does not, in the order in which they drew.
pub fn moved(before: &[DrewFor], after: &[DrewFor]) -> Vec<Moved> {
    let pair = |it: &DrewFor| {
        let was = before.iter().find(|was| was.bearer == it.bearer)?;
        Some(Moved { bearer: it.bearer, before: was.cost, after: it.cost, closed: it.closed })
    };
    let all = after.iter().filter_map(pair);
    all.filter(|it| it.closed || it.before != it.after).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        fixture::fixture,
        journal::{Body, Change, kinds},
        measure::Dec,
    };

    #[track_caller]
    fn check(lines: &str, want: &[(&str, &str, &str, bool)]) {
        let mut it = fixture(&format!(
            "build hall
            build stool
            lot oak bought 10 paid 40
            draw 4 oak for hall
            {lines}"
        ));
        let lot = it.id("oak");
        let before = it.books().drew_from(&it.shop(), lot);
        let Some(Body::Lot(body)) = it.journal.body(lot).cloned() else { panic!("a lot") };
        it.write(Change::write(lot, kinds::Lot { paid: Dec::parse("60").ok(), ..body }));
        let after = it.books().drew_from(&it.shop(), lot);
        let money = |it: Option<Money>| it.map(|it| it.shown(2)).unwrap_or_default();
        let told: Vec<(String, String, String, bool)> = moved(&before, &after)
            .into_iter()
            .map(|line| {
                let Bearer::Build(build) = line.bearer else { return Default::default() };
                (it.name(build), money(line.before), money(line.after), line.closed)
            })
            .collect();
        let want = want.iter().map(|(a, b, c, d)| ((*a).into(), (*b).into(), (*c).into(), *d));
        assert_eq!(told, want.collect::<Vec<_>>(), "{lines}");
    }

    #[test]
    fn a_corrected_lot_moves_open_builds_and_leaves_closed_ones() {
        check("", &[("hall", "16.00", "24.00", false)]);
        check("close hall", &[("hall", "16.00", "16.00", true)]);
        // The rest of the lot bears what the closed one does not: 44 over 6.
        let both = "draw 3 oak for stool\nclose hall";
        check(both, &[("hall", "16.00", "16.00", true), ("stool", "12.00", "22.00", false)]);
    }
}
