//! What a shop asks of the plan: its open builds, the dates that stand over them, and what its films add.
//!
//! A build whose film has a publish date must be over when its cut must go out (`publishing`); any other by the end of
//! the day on which it is due; with both, its piece by that day, and its film by the cut (`two_dates`). A filmed step takes h × (1 + s), s from own filmed and unfilmed work, else as it was set;
//! shots add their set-ups and takes to the step of the piece at which they are taken, not to work before the camera,
//! whose hours are typed with them.
//!
//! Not here: the plan (`schedule`), or what it is told beyond the shop (`asking`).

use super::{
    asking::{Asking, Filming, open_builds},
    publishing::publishing,
    two_dates,
};
use crate::{
    journal::{Id, Shop, kinds::Role, shop::Step},
    measure::{Day, Instant, Map, Quantity, Ratio, Seconds, fixed},
    timing::{Worked, filming, shots, steps, worked},
};

/// Everything that [`Asking`] borrows beside the shop.
#[derive(Clone, Debug, Default)]
pub struct Asked {
    /// What was worked by then.
    pub worked: Vec<Worked>,
    /// Open builds in the order in which they are planned.
    pub builds: Vec<Id>,
    /// When cuts must go out.
    pub until: Map<Id, Instant>,
    /// What filming adds.
    pub filming: Vec<Filming>,
    /// The moment at which the plan begins.
    pub now: Instant,
}

impl Asked {
    /// Of a shop as it is; `with`: a build that is planned also where it is not open.
    pub fn of(shop: &Shop, now: Instant, with: Option<Id>) -> Asked {
        let today = shop.zone.day(now);
        let mut builds = open_builds(shop, today);
        builds.extend(with.filter(|it| !builds.contains(it)));
        let cut = |build: &Id| {
            let back = publishing(shop, *build, today, None);
            let by = back.cut_by.filter(|_| back.published.is_none())?;
            Some((*build, shop.zone.end_of(by)))
        };
        let until = builds.iter().filter_map(cut).collect();
        let worked = worked(shop, now);
        let filming = adds(shop, &worked, &builds, now);
        Asked { worked, builds, until, filming, now }
    }

    /// To ask a plan with.
    pub fn asking<'a>(&'a self, shop: &'a Shop) -> Asking<'a> {
        let Asked { worked, builds, until, filming, now } = self;
        Asking { shop, worked, now: *now, builds, until, filming }
    }
}

fn adds(shop: &Shop, worked: &[Worked], builds: &[Id], now: Instant) -> Vec<Filming> {
    let today = shop.zone.day(now);
    let planned = steps::planned(shop, worked);
    let slower = slower(shop, now, today);
    let mut all: Vec<Filming> = Vec::new();
    for build in builds {
        let shots = shots::added(shop, *build, today);
        let piece = |(id, it): &(&Id, &Step)| {
            it.build() == *build && it.done().is_none() && !two_dates::is_film(shop, **id)
        };
        let of_build = shop.steps.iter().filter(piece);
        for (id, step) in of_build {
            let shot = shots.get(&Some(*id)).copied().unwrap_or_default();
            let left = planned.get(id).map_or(Seconds::ZERO, |it| it.left);
            let slowed = slower.filter(|_| step.body.filmed).map_or(Seconds::ZERO, |s| share(left, s));
            let adds = slowed.plus(shot.must).plus(shot.nice);
            if !adds.is_zero() {
                all.push(Filming { step: *id, adds, nice: shot.nice });
            }
        }
    }
    all
}

/// By how much work is slower with the camera there: own work says it, else what was set.
fn slower(shop: &Shop, now: Instant, today: Day) -> Option<Ratio> {
    let own = filming::paces(shop, now).slower.filter(|it| !it.is_negative());
    own.and_then(|it| Ratio::share(it.to_decimal())).or_else(|| filming::set(shop, today))
}

fn share(of: Seconds, part: Ratio) -> Seconds {
    let whole = fixed::mul_div(i128::from(of.0), part.micros(), fixed::SCALE).unwrap_or(0);
    Seconds(i64::try_from(whole).unwrap_or(0))
}

/// A film that could be shorter: by a fifth of what is planned, in whole minutes, one at least.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ShorterFilm {
    /// Minutes less.
    pub less: u32,
    /// What stays, in thousandths.
    pub thousandths: u32,
}

/// Of a build whose film has a length that is planned, and an edit that is not done.
pub fn shorter_film(shop: &Shop, build: Id) -> Option<ShorterFilm> {
    let planned = shop.builds.get(&build)?.film_planned?;
    let edits = shop.steps.values().any(|it| it.build() == build && it.done().is_none() && is_edit(shop, it));
    let minutes = fixed::mul_div(planned.micros(), 1, fixed::SCALE).and_then(|it| u32::try_from(it).ok());
    let minutes = minutes.filter(|it| edits && *it > 1)?;
    let less = minutes.checked_div(5)?.max(1);
    let whole = fixed::mul_div(i128::from(less), fixed::SCALE.saturating_mul(1_000), planned.micros())?;
    let thousandths = 1_000_u32.saturating_sub(u32::try_from(whole).ok()?);
    Some(ShorterFilm { less, thousandths })
}

/// Work at an edit.
pub(super) fn is_edit(shop: &Shop, step: &Step) -> bool {
    shop.stages.get(&step.body.stage).is_some_and(|it| it.role == Some(Role::Edit))
}

/// So many thousandths of it.
pub(super) fn thousandths(of: Quantity, many: u32) -> Option<Quantity> {
    fixed::mul_div(of.micros(), i128::from(many), 1_000).map(Quantity::from_micros)
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    #[test]
    fn shots_are_added_to_steps_of_the_piece_and_a_filmed_step_is_slower() {
        let it = fixture(
            "person Ana 26
build trays
setting slow-down 0.25
step coat trays finish who Ana hours 2,2,2
step turn trays shoot who Ana hours 2,2,2
shot wipe trays step coat set-up 15 takes 1 seconds 40
shot stack trays step turn set-up 20 takes 4 seconds 15",
        );
        let asked = Asked::of(&it.shop(), it.end(), None);
        // 15 min and 40 s three times; the camera's own step has its hours already.
        let added: Vec<(Id, i64)> = asked.filming.iter().map(|it| (it.step, it.adds.0)).collect();
        assert_eq!(added, [(it.id("coat"), 15 * 60 + 120)]);
    }
}
