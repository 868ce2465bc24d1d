//! What each line of a bearer's journal came to, and what a day of it came to.
//!
//! Read off the rows of [`Books`]; nothing is worked out here but sums.

use super::Books;
use crate::{
    journal::{Id, kinds::Bearer},
    measure::{Money, Seconds},
};
use rustc_hash::FxHashMap;

/// What a line came to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Amount {
    /// A stretch.
    Worked {
        /// Pauses, and what a later stretch took, are out.
        seconds: Seconds,
        /// At that person's rate; none: a gap.
        value: Option<Money>,
        /// A clock: up to the moment of the books.
        runs: bool,
        /// A later stretch of the same person took some of it.
        cut: bool,
    },
    /// Stock drawn, all parts of its cost; below zero for what came back. None: a gap.
    Used(Option<Money>),
    /// An expense or a share of a drive; none: a gap.
    Paid(Option<Money>),
}

/// What the lines of a day came to. Lines with a gap add nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct DaySum {
    /// Hours worked.
    pub worked: Seconds,
    /// A clock is among them.
    pub runs: bool,
    /// Stock used.
    pub used: Money,
    /// Paid directly.
    pub paid: Money,
}

/// The amounts of one bearer's lines, by entry.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Amounts {
    by_entry: FxHashMap<Id, Amount>,
}

impl Amounts {
    /// What a line came to; none for a line that costs nothing, such as a note.
    pub fn of(&self, entry: Id) -> Option<Amount> {
        self.by_entry.get(&entry).copied()
    }

    /// What some lines came to together.
    pub fn sum(&self, entries: impl IntoIterator<Item = Id>) -> DaySum {
        let mut sum = DaySum::default();
        for amount in entries.into_iter().filter_map(|entry| self.of(entry)) {
            match amount {
                Amount::Worked { seconds, runs, .. } => {
                    sum.worked = sum.worked.plus(seconds);
                    sum.runs |= runs;
                }
                Amount::Used(cost) => sum.used = sum.used.plus(cost.unwrap_or_default()),
                Amount::Paid(cost) => sum.paid = sum.paid.plus(cost.unwrap_or_default()),
            }
        }
        sum
    }
}

impl Books {
    /// The amounts of every line, whoever bears it; a drive is whole.
    pub fn all_amounts(&self) -> Amounts {
        let mut all = Amounts::default();
        for bearer in self.ledgers.bearers() {
            for (entry, amount) in self.amounts(bearer).by_entry {
                let sum = match (all.of(entry), amount) {
                    (Some(Amount::Paid(Some(one))), Amount::Paid(Some(other))) => {
                        Amount::Paid(Some(one.plus(other)))
                    }
                    _ => amount,
                };
                all.by_entry.insert(entry, sum);
            }
        }
        all
    }

    /// The amounts of everything that a bearer bears, up to the day of the books.
    pub fn amounts(&self, bearer: Bearer) -> Amounts {
        let (ledgers, bears) = (&self.ledgers, self.ledgers.borne_by(bearer));
        let labour = bears.labour.iter().filter_map(|at| ledgers.labour.get(*at)).map(|row| {
            let (seconds, value, runs, cut) = (row.seconds, row.value, row.runs, row.cut);
            (row.entry, Amount::Worked { seconds, value, runs, cut })
        });
        let draws = bears.draws.iter().filter_map(|at| self.stock.rows.get(*at));
        let draws = draws.map(|row| (row.entry(), Amount::Used(row.known.then(|| row.parts.total()))));
        let expenses = bears.expenses.iter().filter_map(|at| ledgers.expenses.get(*at));
        let expenses = expenses.map(|row| (row.entry, Amount::Paid(row.cost)));
        let trips = bears.trips.iter().filter_map(|at| ledgers.trips.get(*at)).map(|row| {
            let known = row.gap().is_none();
            (row.entry, Amount::Paid(known.then(|| row.parts().total())))
        });
        Amounts { by_entry: labour.chain(draws).chain(expenses).chain(trips).collect() }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    #[test]
    fn a_day_is_the_sum_of_its_lines() {
        let it = fixture(
            "
            setting km 0.50
            person Ana 26
            person Bo
            build bench
            item discs consumable each
            lot d1 bought 50 of discs unit each paid 35.50 on 2026-02-05
            stretch Ana sand from 08:00 to 10:00 for bench as sanding on 2026-02-06
            stretch Bo sand min 30 for bench as unrated
            draw 4 discs for bench as first
            return 1 of first as back
            expense hall 60 for bench as hall
            trip 40 fee 3 for bench:1,shop:1 as drive
            expense card 38 for shop as card
            ",
        );
        let amounts = it.books().amounts(Bearer::Build(it.id("bench")));
        let of = |name: &str| amounts.of(it.id(name));
        let money = |micros: i128| Money::from_micros(micros);
        assert_eq!(of("first"), Some(Amount::Used(Some(money(2_840_000)))));
        assert_eq!(of("back"), Some(Amount::Used(Some(money(-710_000)))));
        assert_eq!(of("hall"), Some(Amount::Paid(Some(money(60_000_000)))));
        assert_eq!(of("drive"), Some(Amount::Paid(Some(money(11_500_000)))));
        assert_eq!(of("card"), None);
        let worked = |minutes: i64, value| {
            Some(Amount::Worked { seconds: Seconds(minutes * 60), value, runs: false, cut: false })
        };
        assert_eq!(of("sanding"), worked(120, Some(money(52_000_000))));
        assert_eq!(of("unrated"), worked(30, None));
        let names = ["sanding", "unrated", "first", "back", "hall", "drive", "card"];
        let sum = amounts.sum(names.map(|name| it.id(name)));
        let want =
            DaySum { worked: Seconds(9000), runs: false, used: money(2_130_000), paid: money(71_500_000) };
        assert_eq!(sum, want);
    }
}
