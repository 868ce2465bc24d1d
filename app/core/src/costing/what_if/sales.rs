//! What the pieces of a build bring, and what makes it come to so much.
//!
//! Sales and commissions, but those of the film: what arrived, net, and what is still expected. Income that is there is
//! corrected, whichever of the two it is: of one that is settled nothing more is expected, and of one that others share
//! in a part can't be expected, so what is not to be had of the rest is refused and never written beside it.
//! Source: our own rule, DEVELOPERS.md § Figures.

use super::super::income::shares;
use crate::{
    journal::{
        Change, Id, Journal, On, Shop,
        kinds::{self, Bearer, IncomeKind, Share, Side},
        shop::Income,
    },
    measure::{Day, Dec, Instant, Money},
};

/// Why what was tried can't be taken as it was shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotTaken {
    /// More than one works without pay, or nobody: it is not said whose rate it is.
    Whose,
    /// Some are finished, so they are as many as they are.
    Finished,
    /// What comes in for it is settled, shared with others, or dated later.
    Bound,
    /// More than that came in already, or is expected where it can't be changed.
    MoreIsIn,
}

/// Income of the pieces of a build.
fn of_pieces(shop: &Shop, build: Id) -> impl Iterator<Item = &Income> {
    let its = move |it: &&Income| it.shares.iter().any(|(bearer, _)| *bearer == Bearer::Build(build));
    let pieces = shop
        .incomes
        .iter()
        .filter(|it| it.side != Side::Film && matches!(it.kind, IncomeKind::Sale | IncomeKind::Commission));
    pieces.filter(its)
}

/// What an income brings a build by the end of a day: net, and still expected.
fn brings(income: &Income, build: Id, last: Day) -> (Money, Money) {
    if income.order.day > last {
        return (Money::ZERO, Money::ZERO);
    }
    let rows = shares(income, last).into_iter().filter(|row| row.bearer == Bearer::Build(build));
    rows.fold((Money::ZERO, Money::ZERO), |sum, row| (sum.0.plus(row.net), sum.1.plus(row.expected)))
}

/// What the pieces of a build bring, received and still expected.
pub(super) fn sales(shop: &Shop, build: Id, last: Day) -> Money {
    of_pieces(shop, build).fold(Money::ZERO, |sum, it| {
        let (net, expected) = brings(it, build, last);
        sum.plus(net).plus(expected)
    })
}

/// What makes the pieces of a build bring `wanted`: more is expected of the first that is open, less of one after the
/// other; nothing is there: a sale.
pub(super) fn to_bring(
    journal: &Journal,
    shop: &Shop,
    (build, wanted): (Id, Money),
    now: Instant,
    fresh: &mut dyn FnMut() -> Id,
) -> Result<Vec<Change>, NotTaken> {
    let last = shop.zone.day(now);
    let mut more = wanted.minus(sales(shop, build, last));
    if more.is_zero() {
        return Ok(Vec::new());
    }
    if of_pieces(shop, build).next().is_none() {
        return Ok(vec![Change::write(fresh(), sale(build, wanted, On::At(shop.zone.when(now))))]);
    }
    let alone = |it: &&Income| it.shares.iter().all(|(bearer, _)| *bearer == Bearer::Build(build));
    let open = of_pieces(shop, build).filter(|it| !it.settled && it.order.day <= last).filter(alone);
    let (mut changes, mut some) = (Vec::new(), false);
    for income in open {
        some = true;
        let (net, expected) = brings(income, build, last);
        let then = expected.plus(more).max(Money::ZERO);
        let entry = income.order.entry;
        if let (Some(crate::journal::Body::Income(it)), true) = (journal.body(entry), then != expected) {
            more = more.minus(then.minus(expected));
            let expected = Some(Dec::from(net.plus(then)));
            changes.push(Change::write(entry, kinds::Income { expected, ..it.clone() }));
        }
    }
    match (some, more.is_zero()) {
        (true, true) => Ok(changes),
        (true, false) => Err(NotTaken::MoreIsIn),
        (false, _) => Err(NotTaken::Bound),
    }
}

fn sale(build: Id, expected: Money, on: On) -> kinds::Income {
    kinds::Income {
        on,
        kind: IncomeKind::Sale,
        side: Side::Piece,
        what: None,
        shares: vec![Share { bearer: Bearer::Build(build), parts: 1 }],
        expected: Some(Dec::from(expected)),
        due: None,
        received: Vec::new(),
        settled: false,
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::super::{Tried, take};
    use super::*;
    use crate::fixture::fixture;

    /// Trays, ten wanted, tried at a price each: what they bring once it is taken, and of how many incomes, else why not.
    #[track_caller]
    fn check(incomes: &str, each: &str, want: Result<(&str, usize), NotTaken>) {
        let mut it = fixture(&format!(
            "person Ana 20
            build trays items 10
            build bench
            stretch Ana mill min 600 for trays
            {incomes}"
        ));
        let (build, now, shop) = (it.id("trays"), it.end(), it.shop());
        let trial = it.books().trial(&shop, build).unwrap();
        let tried = Tried { price: Dec::parse(each).unwrap().money(), ..Tried::default() };
        let taken =
            take(&it.journal, &shop, (build, trial.sales(tried)), tried, now, &mut || Id::of([7; 16]));
        let got = taken.map(|changes| {
            changes.into_iter().for_each(|change| it.write(change));
            let (shop, books) = (it.shop(), it.books());
            let then = books.trial(&shop, build).unwrap();
            assert_eq!(then.answers(Tried::default()), trial.answers(tried), "{incomes}");
            assert_eq!(then.stands.price, tried.price, "{incomes}");
            let earned = books.build_cost(build).earned;
            let brings = earned.net.money().unwrap().plus(earned.expected.money().unwrap());
            (brings.shown(2), shop.incomes.len())
        });
        assert_eq!(got.as_ref().map(|(sum, count)| (&sum[..], *count)), want.as_ref().copied(), "{incomes}");
    }

    #[test]
    fn what_is_expected_already_is_corrected_and_never_written_a_second_time() {
        check("", "60", Ok(("600.00", 1)));
        check("income sale piece expected 500 for trays", "60", Ok(("600.00", 1)));
        check("income commission piece expected 500 for trays", "60", Ok(("600.00", 1)));
        check("income commission both expected 500 for trays", "60", Ok(("600.00", 1)));
        // A deposit is in: 400 more are expected.
        check("income sale piece expected 500 got 200 for trays", "60", Ok(("600.00", 1)));
        // Something else that comes in stays as it is.
        check("income sponsor film expected 300 for trays", "60", Ok(("900.00", 2)));
    }

    #[test]
    fn of_several_the_first_brings_more_and_each_in_turn_less() {
        let two = "income sale piece expected 300 for trays\n income commission piece expected 200 for trays";
        check(two, "60", Ok(("600.00", 2)));
        check(two, "15", Ok(("150.00", 2)));
        let settled =
            "income sale piece got 300 settled for trays\n income sale piece expected 200 for trays";
        check(settled, "60", Ok(("600.00", 2)));
        check(settled, "20", Err(NotTaken::MoreIsIn));
    }

    #[test]
    fn what_is_settled_or_shared_is_not_doubled_by_a_second_income() {
        check("income sale piece got 500 settled for trays", "60", Err(NotTaken::Bound));
        check("income sale piece expected 500 for trays:1,bench:1", "60", Err(NotTaken::Bound));
        check("income sale piece expected 500 got 450 for trays", "40", Err(NotTaken::MoreIsIn));
    }
}
