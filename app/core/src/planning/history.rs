//! What the maker's own builds say of how long a step will take, for who is asked just now.
//!
//! Of its stage: the hours of all other builds that have finished it, by the number of items (`timing::estimates`). Of a
//! cut, where the film's length is planned: finished minutes × own ratio (`publishing::edit`), quick and slow as common
//! practice has them. Only where the step is all there is at its stage, for one person: what two coats or two people
//! share nobody has counted apart.

use super::{
    publishing::{Edit, edit},
    taken_over,
};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Role, Step},
    },
    measure::{Dec, Instant, Quantity, Seconds, fixed},
    timing::{Worked, estimates},
};

/// Three values, and of how many builds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Known {
    /// Quicker one time in ten, usually, slower one time in ten; hours.
    pub hours: [Dec; 3],
    /// Of so many builds or films.
    pub builds: usize,
    /// Quick and slow are their own too; else common practice.
    pub own_spread: bool,
}

/// None: nothing is known of it, or not of it alone.
pub fn of_step(shop: &Shop, worked: &[Worked], step: Id, now: Instant) -> Option<Known> {
    let fact = shop.steps.get(&step)?;
    let (build, stage) = (fact.build(), fact.body.stage);
    let at_stage = shop.steps.values().filter(|it| it.build() == build && it.body.stage == stage).count();
    if at_stage > 1 || (fact.body.who.len() > 1 && !fact.body.any) {
        return None;
    }
    let cuts = shop.stages.get(&stage).is_some_and(|it| it.role == Some(Role::Edit));
    if let (true, Edit::Takes { whole, films, .. }) = (cuts, edit(shop, build, now)) {
        let usual = to_quarter(whole);
        let [quick, slow] = estimates::ends_of(usual);
        return Some(Known { hours: [quick, usual, slow], builds: films, own_spread: false });
    }
    let others: Vec<Id> = shop.builds.keys().filter(|it| **it != build).copied().collect();
    let learned = estimates::learned(shop, worked, &others, (build, now));
    let estimate = learned.iter().find(|(of, _)| *of == stage)?.1.as_ref()?;
    let mut told = Step::blank(fact.body.on, build, stage);
    taken_over::fill(&mut told, estimate);
    let hours = [told.quick?, told.usual?, told.slow?];
    Some(Known { hours, builds: usize::try_from(estimate.builds).ok()?, own_spread: estimate.own_spread })
}

/// Hours to the quarter, one at least.
fn to_quarter(length: Seconds) -> Dec {
    let quarters = i128::from(length.0.saturating_add(450).div_euclid(900).max(1));
    Dec::from(Quantity::from_micros(fixed::mul_div(quarters, fixed::SCALE, 4).unwrap_or(0)))
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::{fixture::fixture, timing::worked};

    const BEFORE: &str = "
        person Ana 26
        person Bo 20
        build first items 4
        stretch Ana sand min 720 for first
        stretch Ana edit min 900 for first side film
        film first finished 17
        made first 4
        build second items 5
        stretch Ana sand min 1200 for second
        stretch Ana edit min 720 for second side film
        film second finished 12
        made second 5
        build third items 7
        stretch Ana sand min 1260 for third
        made third 7
        close first
        close second
        close third
        build mine items 6 minutes 10
        step sanding mine sand who Ana
        step cutting mine edit who Ana
        step coating mine finish who Ana
        step both mine mill who Ana,Bo";

    fn said(lines: &str, step: &str) -> Option<(Vec<String>, usize, bool)> {
        let it = fixture(&format!("{BEFORE}\n{lines}"));
        let shop = it.shop();
        let known = of_step(&shop, &worked(&shop, it.end()), it.id(step), it.end())?;
        Some((known.hours.map(|it| it.plain()).to_vec(), known.builds, known.own_spread))
    }

    #[test]
    fn a_stage_is_known_by_the_builds_that_have_finished_it() {
        // The worked example of three builds: 13.80, 19.81, 28.44, to the quarter.
        let three = (vec!["13.75".to_owned(), "19.75".to_owned(), "28.5".to_owned()], 3, true);
        assert_eq!(said("", "sanding"), Some(three));
        assert_eq!(said("", "coating"), None);
    }

    #[test]
    fn a_cut_is_known_by_the_minutes_that_the_film_is_to_become() {
        // 27 h for 29 minutes: 9 h 18 min 37 s for ten, to the quarter.
        let (hours, films, own) = said("", "cutting").unwrap();
        assert_eq!((hours[1].as_str(), films, own), ("9.25", 2, false));
    }

    #[test]
    fn what_is_shared_is_not_known_of_one_alone() {
        assert_eq!(said("step more mine sand who Ana", "sanding"), None);
        assert_eq!(said("stretch Ana mill min 60 for first", "both"), None);
    }
}
