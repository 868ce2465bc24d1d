//! Numbers of a drawing as the text that a style or a shape takes.
//!
//! The library's way to write a float in decimals, and to read one, is exact for every float there is; its tables are
//! ten kilobytes that don't get smaller on the way. A drawing needs a few decimals of a small number.

use std::fmt::{Display, Formatter, Result};

/// A number that is written with as many decimals as are asked for: `{:.3}`; none: none.
#[derive(Clone, Copy)]
pub struct Plain(pub f64);

impl Display for Plain {
    fn fmt(&self, out: &mut Formatter<'_>) -> Result {
        let places = out.precision().unwrap_or(0).min(9);
        let one = 10_i64.pow(places as u32);
        // Halves go up; what is no number is 0, and what is too large the largest.
        let all = (self.0 * one as f64 + 0.5).floor() as i64;
        if all < 0 {
            out.write_str("-")?;
        }
        let all = all.unsigned_abs();
        write!(out, "{}", all / one as u64)?;
        if places > 0 {
            write!(out, ".{:0places$}", all % one as u64)?;
        }
        Ok(())
    }
}

/// The number that a figure of core is, by its plain text: `-12.50`.
pub fn read(figure: &str) -> f64 {
    let (whole, part) = figure.split_once('.').unwrap_or((figure, ""));
    let digits = |text: &str| text.parse::<i64>().unwrap_or_default() as f64;
    let part = part.get(..part.len().min(9)).unwrap_or_default();
    let part =
        part.chars().rev().fold(0.0, |sum, digit| (sum + digits(digit.encode_utf8(&mut [0; 4]))) / 10.0);
    let whole = digits(whole);
    if figure.starts_with('-') { whole - part } else { whole + part }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn as_the_library_writes_it() {
        for number in [0.0, 1.0, 0.5, 12.345, 99.999, 100.0, -3.25, 33.333_333, 0.000_4, 1234.567] {
            assert_eq!(format!("{:.3}", Plain(number)), format!("{number:.3}"));
            assert_eq!(format!("{:.1}", Plain(number + 0.01)), format!("{:.1}", number + 0.01));
        }
        assert_eq!(format!("{:.1}", Plain(f64::NAN)), "0.0");
    }

    #[test]
    fn a_figure_reads_as_the_library_reads_it() {
        for figure in ["0", "12", "12.5", "-12.50", "0.001", "-0.25", "1000000.000001"] {
            assert!((read(figure) - figure.parse::<f64>().unwrap()).abs() < 1e-9, "{figure}");
        }
        assert_eq!(read(""), 0.0);
    }
}
