//! Hours as they are shown: in whole minutes, so that the parts of a sum add up as they are read.
//!
//! A sum that stands alone leaves out the seconds that make no minute, as a clock does; its parts are
//! apportioned under it, largest remainder first, ties to the earlier. Source: as for money (`show`).
//! Not here: `1 h 55`, which is words.

use super::{Seconds, fixed};

const MINUTE: i64 = 60;

/// What stands alone: whole minutes, as on a clock.
pub fn alone(length: Seconds) -> Seconds {
    Seconds(length.0.div_euclid(MINUTE).saturating_mul(MINUTE))
}

/// The parts of a sum that is shown as `whole`, in whole minutes that add up to it. Parts of some other sum
/// stand alone each.
///
/// ```
/// # use benchslate_core::measure::{Seconds, minutes};
/// let parts = [Seconds(90), Seconds(90), Seconds(60)];
/// assert_eq!(minutes::parts(Seconds(240), &parts), [Seconds(120), Seconds(60), Seconds(60)]);
/// ```
pub fn parts(whole: Seconds, parts: &[Seconds]) -> Vec<Seconds> {
    let split =
        |part: &Seconds| (i128::from(part.0.div_euclid(MINUTE)), i128::from(part.0.rem_euclid(MINUTE)));
    let floors: Vec<(i128, i128)> = parts.iter().map(split).collect();
    let minutes = fixed::raised(&floors, i128::from(whole.0.div_euclid(MINUTE)));
    let shown = minutes.map(|minutes| {
        let seconds = |it: i128| i64::try_from(it).unwrap_or(i64::MAX).saturating_mul(MINUTE);
        minutes.into_iter().map(|it| Seconds(seconds(it))).collect()
    });
    shown.unwrap_or_else(|| parts.iter().copied().map(alone).collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_larger_rest_gets_the_minute() {
        let got = parts(Seconds(3_600), &[Seconds(1_810), Seconds(1_790)]);
        assert_eq!(got, [Seconds(1_800), Seconds(1_800)]);
    }

    #[test]
    fn parts_of_some_other_sum_stand_alone() {
        assert_eq!(parts(Seconds(36_000), &[Seconds(119)]), [Seconds(60)]);
        assert_eq!(parts(Seconds(0), &[Seconds(119)]), [Seconds(60)]);
    }

    #[test]
    fn no_time_has_no_parts() {
        assert_eq!(parts(Seconds::ZERO, &[]), []);
        assert_eq!(alone(Seconds(59)), Seconds::ZERO);
    }

    proptest! {
        #[test]
        fn what_is_shown_adds_up_two_levels_down(seconds in prop::collection::vec(0_i64..500_000, 1..30)) {
            let all: Vec<Seconds> = seconds.iter().copied().map(Seconds).collect();
            let sum = |of: &[Seconds]| of.iter().fold(Seconds::ZERO, |sum, it| sum.plus(*it));
            let groups: Vec<&[Seconds]> = all.chunks(4).collect();
            let sums: Vec<Seconds> = groups.iter().map(|group| sum(group)).collect();
            let whole = alone(sum(&all));
            let shown = parts(whole, &sums);
            prop_assert_eq!(sum(&shown), whole);
            for (group, shown) in groups.iter().zip(&shown) {
                let below = parts(*shown, group);
                prop_assert_eq!(sum(&below), *shown);
                for (below, exact) in below.iter().zip(*group) {
                    prop_assert!(below.0.abs_diff(exact.0) < 60 && below.0 % 60 == 0);
                }
            }
        }
    }
}
