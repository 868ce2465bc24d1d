//! Whether a build is done with a stage, so that its hours say how long that stage takes.
//!
//! A build that is closed is done with all of them. In an open one its steps say what is left: it is done with a stage of
//! which no step is. Without any steps it is once all that is wanted was worked, spoiled ones in it, or, with the film,
//! once that went out. Where a clock runs it never is. Else two hours of a long day would stand for the whole of it.
//! Source: our own rule, DEVELOPERS.md § Figures.

use super::{clocks, learning::made};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Side, State},
    },
    measure::{Day, Instant},
};

/// Of a shop, at a moment.
pub(super) struct Finished<'a> {
    shop: &'a Shop,
    today: Day,
    /// Clocks: at which stage, on what.
    running: Vec<(Id, Bearer)>,
}

impl<'a> Finished<'a> {
    pub(super) fn of(shop: &'a Shop, as_of: Instant) -> Finished<'a> {
        let running = clocks(shop, as_of).into_iter().map(|it| (it.stage, it.bearer)).collect();
        Finished { shop, today: shop.zone.day(as_of), running }
    }

    /// Whether a build is done with a stage.
    pub(super) fn says(&self, build: Id, stage: Id) -> bool {
        let shop = self.shop;
        if self.running.contains(&(stage, Bearer::Build(build))) {
            return false;
        }
        if shop.state_of(build, self.today) == State::Closed {
            return true;
        }
        let mut steps = shop.steps.values().filter(|it| it.build() == build).peekable();
        if steps.peek().is_some() {
            return steps.all(|it| it.body.stage != stage || it.done().is_some());
        }
        if shop.stages.get(&stage).is_some_and(|it| it.side == Side::Film) {
            let out = shop.films.get(&build).and_then(|it| it.published);
            return out.is_some_and(|day| day <= self.today);
        }
        shop.builds.get(&build).is_some_and(|it| made(shop, build) >= it.items)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    #[test]
    fn a_stage_of_an_open_build_is_finished_by_its_steps_or_with_all_that_is_wanted() {
        let check = |lines: &str, wanted: [bool; 2]| {
            let it = fixture(&format!(
                "person Ana 26
                build trays items 12
                stretch Ana sand min 120 for trays
                stretch Ana edit min 120 for trays side film
                {lines}"
            ));
            let shop = it.shop();
            let finished = Finished::of(&shop, it.end());
            let got = ["sand", "edit"].map(|stage| finished.says(it.id("trays"), it.id(stage)));
            assert_eq!(got, wanted, "{lines}");
        };
        check("", [false, false]);
        check("made trays 4", [false, false]);
        check("made trays 10 spoiled 1,0.5", [true, false]);
        check("film trays footage 60 finished 10 published 2026-02-01", [false, true]);
        check("film trays footage 60 finished 10", [false, false]);
        check("close trays", [true, true]);
        check("step sand-it trays sand who Ana hours 1,2,3", [false, true]);
        check("step sand-it trays sand who Ana hours 1,2,3\n made trays 12", [false, true]);
        check("step sand-it trays sand who Ana hours 1,2,3 done 2026-02-01", [true, true]);
        check("step cut-it trays edit who Ana hours 1,2,3", [true, false]);
        check("close trays\n stretch Ana sand from 08:00 for trays", [false, true]);
    }
}
