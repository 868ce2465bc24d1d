//! What work and stock are probably for: open builds before closed ones, lots that can still be worked on before
//! those that can't. Everything stays to be chosen; this is only the order. Source: our own rule.

use crate::journal::{
    Shop,
    kinds::{Bearer, Origin, Source, State, Use},
};
use std::collections::BTreeSet;

/// Which of them will probably bear no more work: closed builds, lots found empty, and stock
/// that nobody works on before it goes into a piece (screws, glue) unless somebody did.
pub fn settled(shop: &Shop, bearers: &[Bearer]) -> BTreeSet<Bearer> {
    let emptied = |lot| shop.looks.iter().any(|it| it.is_empty() && it.of == Source::Lot(lot));
    let worked = |bearer| shop.stretches.iter().any(|it| it.bearer == bearer);
    let settled = |bearer: &Bearer| match *bearer {
        Bearer::Build(build) => {
            shop.states.iter().rfind(|it| it.build == build).is_some_and(|it| it.state == State::Closed)
        }
        Bearer::Lot(id) => shop.lots.get(&id).is_none_or(|lot| {
            let raw = lot.purpose == Use::Timber || lot.origin == Origin::Salvaged || worked(*bearer);
            emptied(id) || !raw
        }),
        Bearer::Shop => false,
    };
    bearers.iter().copied().filter(settled).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    #[test]
    fn closed_builds_and_lots_that_nobody_works_on_are_settled() {
        let it = fixture(
            "
            person Ana 20
            build bench on 2026-03-01
            build shelf
            lot oak salvaged 40 paid 10 as oak
            lot screws bought 100 use fitting unit each as screws
            lot pine salvaged 10 as pine
            lot knobs bought 4 use fitting unit each as knobs
            empty pine on 2026-03-05
            stretch Ana reclaim min 30 for knobs
            close bench
            ",
        );
        let shop = it.shop();
        let lot = |name| Bearer::Lot(it.id(name));
        let all = [
            Bearer::Build(it.id("bench")),
            Bearer::Build(it.id("shelf")),
            lot("oak"),
            lot("screws"),
            lot("pine"),
            lot("knobs"),
            Bearer::Shop,
        ];
        assert_eq!(settled(&shop, &all), [all[0], lot("screws"), lot("pine")].into());
    }
}
