//! Tally strokes in fives, as chalked on a post: one a quarter hour.
use crate::dom::prelude::*;

/// `quarters` strokes, every fifth across the four before it. Drawn 27 px high, narrower where there is no room.
#[component]
pub fn Tally(quarters: u32) -> impl IntoView {
    let quarters = quarters.min(MOST);
    let width = end(quarters);
    (quarters > 0).then(|| {
        view! {
            <svg
                class="tally"
                viewBox=format!("0 0 {width} 31")
                width=width
                preserveAspectRatio="xMinYMid meet"
                aria-hidden="true"
            >
                <path d=strokes(quarters)/>
            </svg>
        }
    })
}

/// More than a week of quarters is not a stretch any more; the strokes stop there, the figure does not.
const MOST: u32 = 700;
/// From one five to the next, in px.
const FIVE: u32 = 46;
/// From one stroke to the next, in px.
const STEP: u32 = 9;

fn end(quarters: u32) -> u32 {
    let (fives, rest) = (quarters / 5, quarters % 5);
    // A full five takes 40 px; single strokes 9 each, with a little air at both ends.
    if rest == 0 { (fives * FIVE).saturating_sub(6) } else { fives * FIVE + rest * STEP + 2 }
}

fn strokes(quarters: u32) -> String {
    (0..quarters)
        .map(|at| {
            let left = (at / 5) * FIVE;
            match at % 5 {
                4 => format!("M{} 26L{} 5", left + 1, left + 37),
                // Odd strokes lean a little: a hand drew them.
                n if n % 2 == 0 => format!("M{} 2l-0.6 27", left + n * STEP + 4),
                n => format!("M{} 2l0.8 27", left + n * STEP + 4),
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::{end, strokes};

    #[test]
    fn every_fifth_stroke_crosses_the_four_before_it() {
        assert_eq!(strokes(7).matches('M').count(), 7);
        assert_eq!(strokes(7).matches('L').count(), 1);
    }

    #[test]
    fn no_quarter_hour_yet_is_no_stroke() {
        assert_eq!((end(0), strokes(0)), (0, String::new()));
    }
}
