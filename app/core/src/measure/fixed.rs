//! Whole-number arithmetic at a fixed inner scale: one multiply-and-divide, one allocation.
//!
//! Amounts are held as whole millionths. Each entry's product is rounded once, half-even, by
//! [`mul_div`]; every division of a sum goes through [`allocate`], so parts always add up.
//! Nothing here fails or panics: what can't be said is `None`, and sums saturate far beyond
//! what the limits of a field let in. Not here: money, units, text.

use crate::measure::InOrder;
use rust_decimal::Decimal;

/// Millionths in one unit.
pub(crate) const SCALE: i128 = 1_000_000;
/// Digits after the point that [`SCALE`] stands for.
pub(crate) const SCALE_DIGITS: u32 = 6;

/// `a · b ÷ c`, rounded once, half to even. The product may be wider than 128 bits.
/// `None`: `c` is zero, or the result doesn't fit.
pub(crate) fn mul_div(a: i128, b: i128, c: i128) -> Option<i128> {
    if c == 0 {
        return None;
    }
    let negative = (a < 0) ^ (b < 0) ^ (c < 0);
    let divisor = c.unsigned_abs();
    let (quotient, rest) = wide_div(wide_mul(a.unsigned_abs(), b.unsigned_abs()), divisor)?;
    let beyond_half = match rest.cmp(&divisor.wrapping_sub(rest)) {
        std::cmp::Ordering::Less => false,
        std::cmp::Ordering::Equal => quotient & 1 == 1,
        std::cmp::Ordering::Greater => true,
    };
    signed(quotient.checked_add(u128::from(beyond_half))?, negative)
}

/// Shares `total` by `weights`, largest remainder first; on a tie the earlier index gets it, so
/// callers sort by entry id. The shares add up to `total` exactly. A negative weight counts as
/// none; no weight above zero gives all to the first; a negative total is shared by its absolute
/// value and the sign restored.
pub(crate) fn allocate(total: i128, weights: &[i128]) -> Vec<i128> {
    let weights = usable(weights);
    let whole: u128 = weights.iter().fold(0, |sum, w| sum.saturating_add(*w));
    let negative = total < 0;
    let size = total.unsigned_abs();
    if whole == 0 {
        return weights.iter().enumerate().map(|(i, _)| if i == 0 { total } else { 0 }).collect();
    }
    let mut left = size;
    let mut shares: Vec<(u128, u128)> = Vec::with_capacity(weights.len());
    for weight in &weights {
        // A weight is never above the whole, so the quotient is never above `size`.
        let (share, rest) = wide_div(wide_mul(size, *weight), whole).unwrap_or((0, 0));
        left = left.saturating_sub(share);
        shares.push((share, rest));
    }
    let mut order: Vec<usize> = (0..shares.len()).collect();
    order.order_by_key(|i| std::cmp::Reverse(shares.get(*i).map_or(0, |(_, rest)| *rest)));
    for i in order {
        if left == 0 {
            break;
        }
        if let Some((share, _)) = shares.get_mut(i) {
            *share = share.saturating_add(1);
            left = left.saturating_sub(1);
        }
    }
    shares.into_iter().map(|(share, _)| signed(share, negative).unwrap_or(total)).collect()
}

/// Parts as whole units and a rest each, so that their units come to `whole`: those with the largest rest are
/// raised by one, ties to the earlier. `None`: they are parts of some other whole.
pub(crate) fn raised(parts: &[(i128, i128)], whole: i128) -> Option<Vec<i128>> {
    let rest = |i: &usize| parts.get(*i).map_or(0, |(_, rest)| *rest);
    let below = parts.iter().fold(0_i128, |sum, (floor, _)| sum.saturating_add(*floor));
    let mut order: Vec<usize> = (0..parts.len()).filter(|i| rest(i) > 0).collect();
    let raised = usize::try_from(whole.saturating_sub(below)).ok()?;
    if raised > order.len() {
        return None;
    }
    order.order_by_key(|i| std::cmp::Reverse(rest(i)));
    let mut units: Vec<i128> = parts.iter().map(|(floor, _)| *floor).collect();
    for i in order.into_iter().take(raised) {
        if let Some(floor) = units.get_mut(i) {
            *floor = floor.saturating_add(1);
        }
    }
    Some(units)
}

/// Whole millionths of a decimal, rounded half to even. `None`: doesn't fit.
pub(crate) fn micros_of(decimal: Decimal) -> Option<i128> {
    match decimal.scale().checked_sub(SCALE_DIGITS) {
        None | Some(0) => {
            decimal.mantissa().checked_mul(power_of_ten(SCALE_DIGITS.saturating_sub(decimal.scale()))?)
        }
        Some(more) => mul_div(decimal.mantissa(), 1, power_of_ten(more)?),
    }
}

/// The decimal of so many millionths; the ends of [`Decimal`] where it can't hold it.
pub(crate) fn decimal_of(micros: i128) -> Decimal {
    let ends = if micros < 0 { Decimal::MIN } else { Decimal::MAX };
    Decimal::try_from_i128_with_scale(micros, SCALE_DIGITS).unwrap_or(ends)
}

/// `10ⁿ`; `None` above 10³⁸.
pub(crate) fn power_of_ten(n: u32) -> Option<i128> {
    10_i128.checked_pow(n)
}

/// Plain text of `units` with `digits` after the point: `-32.09`, never `-0.00`.
pub(crate) fn point_text(units: i128, digits: u32) -> String {
    let sign = if units < 0 { "-" } else { "" };
    let figures = units.unsigned_abs().to_string();
    let Ok(digits) = usize::try_from(digits) else { return figures };
    if digits == 0 {
        return format!("{sign}{figures}");
    }
    let least = digits.saturating_add(1);
    let padded = format!("{figures:0>least$}");
    let (whole, part) = padded.split_at(padded.len().saturating_sub(digits));
    format!("{sign}{whole}.{part}")
}

/// Weights without negatives, narrowed where their sum would not fit.
fn usable(weights: &[i128]) -> Vec<u128> {
    let kept: Vec<u128> = weights.iter().map(|w| u128::try_from(*w).unwrap_or(0)).collect();
    let fits = kept.iter().try_fold(0_u128, |sum, w| sum.checked_add(*w)).is_some();
    // Unreachable for amounts within the limits; still the same on every device.
    if fits { kept } else { kept.into_iter().map(|w| w >> 64).collect() }
}

fn signed(size: u128, negative: bool) -> Option<i128> {
    let size = i128::try_from(size).ok()?;
    if negative { size.checked_neg() } else { Some(size) }
}

/// 256 bits: high half, low half.
type Wide = (u128, u128);

const HALF: u32 = 64;
const LOW: u128 = (1 << HALF) - 1;

/// Schoolbook multiplication on 64-bit halves.
fn wide_mul(a: u128, b: u128) -> Wide {
    if let Some(low) = a.checked_mul(b) {
        return (0, low);
    }
    let (a_high, a_low, b_high, b_low) = (a >> HALF, a & LOW, b >> HALF, b & LOW);
    let low = a_low.wrapping_mul(b_low);
    let cross = a_high.wrapping_mul(b_low);
    let other = a_low.wrapping_mul(b_high);
    // At most three 64-bit numbers: no wrap.
    let middle = (low >> HALF).wrapping_add(cross & LOW).wrapping_add(other & LOW);
    let high = a_high
        .wrapping_mul(b_high)
        .wrapping_add(cross >> HALF)
        .wrapping_add(other >> HALF)
        .wrapping_add(middle >> HALF);
    (high, (middle << HALF) | (low & LOW))
}

/// Quotient and rest; `None`: zero divisor, or a quotient wider than 128 bits.
fn wide_div((high, low): Wide, divisor: u128) -> Option<(u128, u128)> {
    if high == 0 {
        return Some((low.checked_div(divisor)?, low.checked_rem(divisor)?));
    }
    if high >= divisor {
        return None;
    }
    let (mut rest, mut quotient) = (high, 0_u128);
    for bit in (0..u128::BITS).rev() {
        let carried = rest >> (u128::BITS - 1) == 1;
        rest = (rest << 1) | ((low >> bit) & 1);
        quotient <<= 1;
        if carried || rest >= divisor {
            rest = rest.wrapping_sub(divisor);
            quotient |= 1;
        }
    }
    Some((quotient, rest))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[track_caller]
    fn check(a: i128, b: i128, c: i128, want: Option<i128>) {
        assert_eq!(mul_div(a, b, c), want, "{a} · {b} ÷ {c}");
    }

    #[test]
    fn halves_go_to_the_even_neighbour() {
        check(1, 1, 2, Some(0));
        check(3, 1, 2, Some(2));
        check(5, 1, 2, Some(2));
        check(-5, 1, 2, Some(-2));
        check(5, 1, -2, Some(-2));
        check(-7, 1, -2, Some(4));
        check(2, 1, 3, Some(1));
    }

    #[test]
    fn a_product_wider_than_128_bits_is_still_exact() {
        let wide = 10_i128.pow(30);
        check(wide, wide, wide, Some(wide));
        check(wide, wide, 1, None);
        check(i128::MAX, i128::MAX, i128::MAX, Some(i128::MAX));
        check(i128::MIN, i128::MAX, i128::MAX, None);
        check(wide, 3 * wide, 2 * wide, Some(wide / 2 * 3));
    }

    #[test]
    fn nothing_is_divided_by_zero() {
        check(1, 1, 0, None);
    }

    #[test]
    fn an_hour_at_a_rate_is_rounded_once() {
        // 100 s at 26.00 an hour: 0.7222…
        check(100, 26 * SCALE, 3600, Some(722_222));
    }

    #[test]
    fn ties_go_to_the_earlier_share() {
        assert_eq!(allocate(10_000, &[1, 1, 1]), [3_334, 3_333, 3_333]);
        assert_eq!(allocate(-5, &[1, 1, 1]), [-2, -2, -1]);
        assert_eq!(allocate(7, &[0, 0]), [7, 0]);
        assert_eq!(allocate(7, &[-4, 1]), [0, 7]);
        assert_eq!(allocate(7, &[]), Vec::<i128>::new());
        assert_eq!(allocate(0, &[3, 4]), [0, 0]);
    }

    #[test]
    fn weights_too_wide_to_add_are_narrowed_alike() {
        assert_eq!(allocate(9, &[i128::MAX, i128::MAX, i128::MAX]), [3, 3, 3]);
    }

    #[test]
    fn decimals_round_half_even_to_the_millionth() {
        let micros = |text: &str| micros_of(Decimal::from_str_exact(text).expect(text));
        assert_eq!(micros("0.0000005"), Some(0));
        assert_eq!(micros("0.0000015"), Some(2));
        assert_eq!(micros("-0.0000025"), Some(-2));
        assert_eq!(micros("12"), Some(12_000_000));
        assert_eq!(
            micros("79228162514264337593543950335"),
            Some(79_228_162_514_264_337_593_543_950_335_000_000)
        );
        assert_eq!(decimal_of(i128::MAX), Decimal::MAX);
    }

    #[test]
    fn text_of_millionths_never_shows_minus_nothing() {
        assert_eq!(point_text(-3209, 2), "-32.09");
        assert_eq!(point_text(-5, 2), "-0.05");
        assert_eq!(point_text(0, 2), "0.00");
        assert_eq!(point_text(7, 0), "7");
    }

    /// Floor division with half-even, the plain way, for numbers whose product fits.
    fn plain(a: i128, b: i128, c: i128) -> i128 {
        let (n, d) = if c < 0 { (-(a * b), -c) } else { (a * b, c) };
        let (q, r) = (n.div_euclid(d), n.rem_euclid(d));
        match (2 * r).cmp(&d) {
            std::cmp::Ordering::Less => q,
            std::cmp::Ordering::Greater => q + 1,
            std::cmp::Ordering::Equal => q + q.rem_euclid(2),
        }
    }

    proptest! {
        #[test]
        fn small_products_agree_with_plain_arithmetic(a in -1_000_000_i128..1_000_000, b in -5_000_i128..5_000, c in -300_i128..300) {
            prop_assume!(c != 0);
            prop_assert_eq!(mul_div(a, b, c), Some(plain(a, b, c)));
        }

        #[test]
        fn multiplying_and_dividing_by_the_same_changes_nothing(a: i128, b: i128) {
            prop_assume!(b != 0 && a != i128::MIN);
            prop_assert_eq!(mul_div(a, b, b), Some(a));
        }

        #[test]
        fn wide_division_undoes_wide_multiplication(a: u128, b: u128, rest: u128) {
            prop_assume!(b != 0);
            let rest = rest % b;
            let (high, low) = wide_mul(a, b);
            let (low, carried) = low.overflowing_add(rest);
            let high = high + u128::from(carried);
            prop_assert_eq!(wide_div((high, low), b), Some((a, rest)));
        }

        #[test]
        fn allocating_loses_nothing(total: i64, weights in prop::collection::vec(0_i128..1_000_000_000, 1..40)) {
            let total = i128::from(total);
            let shares = allocate(total, &weights);
            prop_assert_eq!(shares.iter().sum::<i128>(), total);
            let whole: i128 = weights.iter().sum();
            prop_assume!(whole > 0);
            for (share, weight) in shares.iter().zip(&weights) {
                // Within one of the exact share, on the side of zero or beyond.
                prop_assert!((share * whole - total * weight).abs() < whole);
            }
        }
    }
}
