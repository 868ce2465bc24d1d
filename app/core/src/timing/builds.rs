//! Builds in the order in which they are looked for: what is going on, then the latest touched.

use super::Clock;
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, State},
        order::Order,
    },
    measure::{Day, InOrder, Map},
};
use std::cmp::Reverse;

/// A build of the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OnList {
    /// Which.
    pub id: Id,
    /// Which it is of all that were ever begun, from 1.
    pub number: usize,
    /// A clock runs or stands for it.
    pub going: bool,
    /// Where it stands, as was said last.
    pub state: State,
    /// The last day on which something was done, drawn, paid or said for it, or it was begun.
    pub last: Day,
    /// It is not offered any more.
    pub away: bool,
}

impl OnList {
    /// Not closed.
    pub fn open(&self) -> bool {
        self.state != State::Closed
    }
}

/// Those with a clock first, then the open ones, each by its last day, then the one begun later. `clocks`: all that
/// run or stand; where a build stands is looked at as of the end of `today`.
pub fn on_list(shop: &Shop, clocks: &[Clock], today: Day) -> Vec<OnList> {
    let last = last_days(shop);
    let mut begun: Vec<(Order, Id)> = shop.builds.iter().map(|(id, build)| (build.order, *id)).collect();
    begun.order();
    let of = |(at, (order, id)): (usize, (Order, Id))| OnList {
        id,
        number: at.saturating_add(1),
        going: clocks.iter().any(|clock| clock.bearer == Bearer::Build(id)),
        state: shop.state_of(id, today),
        last: last.get(&id).copied().map_or(order.day, |last| last.max(order.day)),
        away: !shop.offers(id),
    };
    let mut list: Vec<OnList> = begun.into_iter().enumerate().map(of).collect();
    list.order_by_key(|build| Reverse((build.going, build.open(), build.last, build.number)));
    list
}

fn last_days(shop: &Shop) -> Map<Id, Day> {
    let work = shop.stretches.iter().map(|it| (it.bearer, it.order.day));
    let draws = shop.draws.iter().map(|it| (it.bearer, it.order.day));
    let expenses = shop.expenses.iter().map(|it| (it.bearer, it.order.day));
    let mut last = Map::new();
    let states = shop.states.iter().map(|it| (Bearer::Build(it.build), it.order.day));
    for (bearer, day) in work.chain(draws).chain(expenses).chain(states) {
        if let Bearer::Build(id) = bearer {
            let latest = last.entry(id).or_insert(day);
            *latest = day.max(*latest);
        }
    }
    last
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        fixture::{Fixture, fixture, numbered},
        journal::{Change, On, kinds::BuildState},
        timing::clocks,
    };

    #[track_caller]
    fn check(it: &Fixture, want: &str) {
        let shop = it.shop();
        let list = on_list(&shop, &clocks(&shop, it.end()), shop.zone.day(it.end()));
        let said = list.iter().map(|build| {
            let away = match (build.away, build.open()) {
                (true, _) => " away",
                (false, true) => "",
                (false, false) => " closed",
            };
            format!("{} {} {}{away}", build.number, it.name(build.id), build.last)
        });
        assert_eq!(said.collect::<Vec<_>>().join("; "), want);
    }

    const THREE: &str = "
        person Ana 26
        build shelf on 2026-02-01
        build trays on 2026-02-02
        build bench on 2026-02-03";

    #[test]
    fn the_latest_touched_comes_first_and_of_a_day_the_one_begun_later() {
        let mut it = fixture(THREE);
        check(&it, "3 bench 2026-02-03; 2 trays 2026-02-02; 1 shelf 2026-02-01");
        it.add("stretch Ana sand min 60 for shelf on 2026-02-05");
        it.add("expense van 5 for trays on 2026-02-05");
        check(&it, "2 trays 2026-02-05; 1 shelf 2026-02-05; 3 bench 2026-02-03");
    }

    #[test]
    fn a_running_clock_goes_before_any_day() {
        let mut it = fixture(THREE);
        it.add("expense van 5 for trays on 2026-02-05");
        it.add("stretch Ana sand from 08:00 for shelf");
        check(&it, "1 shelf 2026-02-05; 2 trays 2026-02-05; 3 bench 2026-02-03");
    }

    #[test]
    fn what_is_put_away_keeps_its_number() {
        let mut it = fixture(THREE);
        it.add("retire trays");
        check(&it, "3 bench 2026-02-03; 2 trays 2026-02-02 away; 1 shelf 2026-02-01");
        it.add("retire trays back");
        check(&it, "3 bench 2026-02-03; 2 trays 2026-02-02; 1 shelf 2026-02-01");
    }

    #[test]
    fn a_closed_build_comes_after_all_that_are_open() {
        let mut it = fixture(THREE);
        let on = On::Day(Day::parse("2026-02-06").unwrap());
        let closed = BuildState { on, build: it.id("bench"), state: State::Closed, frozen: Vec::new() };
        it.write(Change::write(numbered(5, 1), closed));
        it.add("expense van 0 for shop on 2026-02-06");
        check(&it, "2 trays 2026-02-02; 1 shelf 2026-02-01; 3 bench 2026-02-06 closed");
        it.add("reopen bench on 2026-02-07");
        check(&it, "3 bench 2026-02-07; 2 trays 2026-02-02; 1 shelf 2026-02-01");
    }
}
