//! Hours that shots add to a step: h × (1 + s) + Σ (set-up + takes × length × real seconds).
//!
//! `s` is by how much work is slower with the camera there. Three real seconds at the camera for each one of footage is
//! common practice, and the maker's to change. Counted is what is still to come: taken and waived shots add nothing, and
//! what was set up already for a first take is not set up again.
//!
//! Worked example: 2 h at 25 %, a shot of 15 min to set up and one take of 40 s: 2 h 30 + 15 min + 2 min = 2 h 47.

use super::{Listed, listed};
use crate::{
    journal::{Id, Shop, kinds::SettingKey},
    measure::{Day, Dec, Map, Quantity, Ratio, Seconds, fixed},
};

/// Real seconds at the camera for one of footage, until the maker says otherwise. Source: common practice.
pub const REAL_SECONDS: u8 = 3;

/// What shots add, in real time of whoever shoots.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Added {
    /// By those that the film must have.
    pub must: Seconds,
    /// By those that it can do without.
    pub nice: Seconds,
}

/// By step, of one build: what its shots that are still to be taken add. `None`: shots that are at no step.
pub fn added(shop: &Shop, build: Id, day: Day) -> Map<Option<Id>, Added> {
    let mut sums: Map<Option<Id>, Added> = Map::new();
    for it in listed(shop, build).iter().filter(|it| it.standing.is_to_take()) {
        let Some(shot) = shop.shots.get(&it.shot) else { continue };
        let adds = adds(shop, it, day);
        let sum = sums.entry(it.step).or_default();
        let side = if shot.body.nice { &mut sum.nice } else { &mut sum.must };
        *side = side.plus(adds);
    }
    sums
}

/// The same, of the whole build.
pub fn added_in_all(shop: &Shop, build: Id, day: Day) -> Added {
    added(shop, build, day).iter().fold(Added::default(), |sum, (_, it)| Added {
        must: sum.must.plus(it.must),
        nice: sum.nice.plus(it.nice),
    })
}

fn adds(shop: &Shop, it: &Listed, day: Day) -> Seconds {
    let Some(shot) = shop.shots.get(&it.shot).map(|it| &it.body) else { return Seconds::ZERO };
    let had = u32::try_from(it.takes.len()).unwrap_or(u32::MAX);
    let takes = i128::from(shot.takes.saturating_sub(had).max(1));
    let footage = takes.saturating_mul(i128::from(shot.seconds.unwrap_or(0)));
    let real = fixed::mul_div(footage, real_seconds(shop, day).micros(), fixed::SCALE).unwrap_or(0);
    let set_up = if had == 0 { i64::from(shot.set_up.unwrap_or(0)).saturating_mul(60) } else { 0 };
    Seconds(i64::try_from(real).unwrap_or(i64::MAX)).plus(Seconds(set_up))
}

/// Real seconds for one of footage, as they are set on a day.
pub fn real_seconds(shop: &Shop, day: Day) -> Quantity {
    let set = shop.settings.on(SettingKey::ShootingSeconds, day).and_then(|it| Dec::parse(it).ok());
    let set = set.and_then(Dec::quantity).filter(|it| !it.is_zero() && !it.is_negative());
    set.unwrap_or_else(|| Quantity::from_micros(fixed::SCALE.saturating_mul(i128::from(REAL_SECONDS))))
}

/// Hours of a step with the camera there: slower by `s`, and what its shots add.
pub fn with_camera(hours: Seconds, slower: Ratio, added: Seconds) -> Seconds {
    let worked = fixed::mul_div(i128::from(hours.0), slower.on_top().micros(), fixed::SCALE);
    Seconds(worked.and_then(|it| i64::try_from(it).ok()).unwrap_or(hours.0)).plus(added)
}
