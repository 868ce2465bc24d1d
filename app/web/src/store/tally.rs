//! The tally kept beside the revisions: how many there are, and their hashes folded together.
//!
//! Order plays no part in it, so that it is kept by one step a write. Pure; tested natively.

use sha2::{Digest, Sha256};

/// Count of the rows, and the exclusive or of the first 16 bytes of each line's SHA-256.
///
/// It finds rows that were lost, doubled or changed by accident. It is no seal against anyone.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Tally {
    /// How many rows.
    pub count: u64,
    /// The folded hashes.
    pub xor: u128,
}

impl Tally {
    /// One more line.
    pub fn add(&mut self, line: &str) {
        self.count = self.count.saturating_add(1);
        self.xor ^= head(line);
    }

    /// One line fewer.
    pub fn take(&mut self, line: &str) {
        self.count = self.count.saturating_sub(1);
        self.xor ^= head(line);
    }

    /// The tally of these lines.
    pub fn of<'a>(lines: impl IntoIterator<Item = &'a str>) -> Self {
        let mut tally = Self::default();
        lines.into_iter().for_each(|line| tally.add(line));
        tally
    }

    /// The folded hashes as 32 hexadecimal digits.
    pub fn hex(&self) -> String {
        format!("{:032x}", self.xor)
    }

    /// From what [`Self::hex`] wrote.
    pub fn read(count: u64, hex: &str) -> Option<Self> {
        (hex.len() == 32).then(|| u128::from_str_radix(hex, 16).ok()).flatten().map(|xor| Self { count, xor })
    }
}

/// SHA-256 of a line.
pub(super) fn digest(line: &str) -> [u8; 32] {
    Sha256::digest(line.as_bytes()).into()
}

fn head(line: &str) -> u128 {
    digest(line).iter().take(16).fold(0, |sum, byte| (sum << 8) | u128::from(*byte))
}

#[cfg(test)]
mod tests {
    use super::*;

    // Published: FIPS 180-2, appendix B.1, SHA-256 of "abc" (first 16 bytes).
    #[test]
    fn one_line_tallies_to_the_head_of_its_published_hash() {
        let tally = Tally::of(["abc"]);
        assert_eq!((tally.count, tally.hex().as_str()), (1, "ba7816bf8f01cfea414140de5dae2223"));
    }

    #[test]
    fn the_order_of_lines_makes_no_difference() {
        assert_eq!(Tally::of(["oak", "maple", "walnut"]), Tally::of(["walnut", "oak", "maple"]));
    }

    #[test]
    fn a_line_lost_doubled_or_changed_shows() {
        let kept = Tally::of(["oak", "maple"]);
        for found in [Tally::of(["oak"]), Tally::of(["oak", "maple", "maple"]), Tally::of(["oak", "mapls"])] {
            assert_ne!(kept, found);
        }
    }

    #[test]
    fn a_line_taken_off_leaves_no_trace() {
        let mut tally = Tally::of(["oak", "maple"]);
        tally.take("oak");
        assert_eq!(tally, Tally::of(["maple"]));
    }

    #[test]
    fn what_is_written_reads_back_and_nonsense_does_not() {
        let tally = Tally::of(["oak", "maple"]);
        assert_eq!(Tally::read(2, &tally.hex()), Some(tally));
        for hex in ["", "12", "zz7816bf8f01cfea414140de5dae2223", "+a7816bf8f01cfea414140de5dae2223x"] {
            assert_eq!(Tally::read(1, hex), None, "{hex}");
        }
    }
}
