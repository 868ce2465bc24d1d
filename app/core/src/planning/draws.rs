//! Random numbers that are the same on every phone: SplitMix64, and normal draws by the inverse of the distribution.
//!
//! SplitMix64 adds a fixed odd number to its state and stirs the sum, so a stream can be begun anywhere: each simulated
//! finish, and each step in it, has a stream of its own, and the same draw meets the same step whatever else is planned.
//! Source: G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators (2014), in S. Vigna's
//! constants; M. J. Wichura, Algorithm AS 241, PPND16 (1988), good to sixteen digits. `tests/reference/draws.rs`.
#![allow(
    clippy::float_arithmetic,
    reason = "draws of a distribution; what comes out is rounded to whole seconds"
)]

/// A stream of numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Draws(u64);

const GOLDEN: u64 = 0x9e37_79b9_7f4a_7c15;

impl Draws {
    /// The stream of a seed.
    pub fn of(seed: u64) -> Draws {
        Draws(seed)
    }

    /// A stream beside this one, by a number: the same number, the same stream.
    #[must_use]
    pub fn beside(self, number: u64) -> Draws {
        Draws(stirred(self.0.wrapping_add(GOLDEN) ^ stirred(number.wrapping_add(GOLDEN))))
    }

    /// The next number, of all that 64 bits hold.
    pub fn next_bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(GOLDEN);
        stirred(self.0)
    }

    /// The next number below `many`; 0 where there are none.
    pub fn below(&mut self, many: u64) -> u64 {
        let wide = u128::from(self.next_bits()).saturating_mul(u128::from(many));
        u64::try_from(wide >> 64).unwrap_or(0)
    }

    /// The next place in a list of so many.
    pub fn place(&mut self, many: usize) -> usize {
        usize::try_from(self.below(u64::try_from(many).unwrap_or(0))).unwrap_or(0)
    }

    /// The next number between 0 and 1, neither of them.
    pub fn share(&mut self) -> f64 {
        // 52 bits, in the middle of their step.
        let bits = self.next_bits() >> 12;
        let (high, low) =
            (u32::try_from(bits >> 32).unwrap_or(0), u32::try_from(bits & 0xffff_ffff).unwrap_or(0));
        (f64::from(high) * 4_294_967_296.0 + f64::from(low) + 0.5) / 4_503_599_627_370_496.0
    }

    /// The next draw of the normal distribution of mean 0 and deviation 1.
    pub fn normal(&mut self) -> f64 {
        quantile(self.share())
    }
}

fn stirred(sum: u64) -> u64 {
    let sum = (sum ^ (sum >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    let sum = (sum ^ (sum >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    sum ^ (sum >> 31)
}

/// The value below which a share of the normal distribution lies.
pub fn quantile(share: f64) -> f64 {
    let from_middle = share - 0.5;
    if libm::fabs(from_middle) <= 0.425 {
        let r = 0.180_625 - from_middle * from_middle;
        return from_middle * ratio(r, &NEAR);
    }
    let tail = if from_middle < 0.0 { share } else { 1.0 - share };
    let r = libm::sqrt(-libm::log(tail));
    let size = if r <= 5.0 { ratio(r - 1.6, &OUT) } else { ratio(r - 5.0, &FAR_OUT) };
    if from_middle < 0.0 { -size } else { size }
}

/// One polynomial over another, the highest power first.
fn ratio(at: f64, (over, under): &([f64; 8], [f64; 8])) -> f64 {
    let value = |all: &[f64; 8]| all.iter().fold(0.0, |sum, it| sum * at + it);
    value(over) / value(under)
}

const NEAR: ([f64; 8], [f64; 8]) = (
    [
        2_509.080_928_730_122_6,
        33_430.575_583_588_13,
        67_265.770_927_008_7,
        45_921.953_931_549_87,
        13_731.693_765_509_46,
        1_971.590_950_306_551_3,
        133.141_667_891_784_38,
        3.387_132_872_796_366_5,
    ],
    [
        5_226.495_278_852_854,
        28_729.085_735_721_943,
        39_307.895_800_092_71,
        21_213.794_301_586_597,
        5_394.196_021_424_751,
        687.187_007_492_057_9,
        42.313_330_701_600_91,
        1.0,
    ],
);
const OUT: ([f64; 8], [f64; 8]) = (
    [
        7.745_450_142_783_414e-4,
        0.022_723_844_989_269_184,
        0.241_780_725_177_450_6,
        1.270_458_252_452_368_4,
        3.647_848_324_763_204_5,
        5.769_497_221_460_691,
        4.630_337_846_156_545,
        1.423_437_110_749_683_5,
    ],
    [
        1.050_750_071_644_416_9e-9,
        5.475_938_084_995_345e-4,
        0.015_198_666_563_616_457,
        0.148_103_976_427_480_08,
        0.689_767_334_985_1,
        1.676_384_830_183_803_8,
        2.053_191_626_637_759,
        1.0,
    ],
);
const FAR_OUT: ([f64; 8], [f64; 8]) = (
    [
        2.010_334_399_292_288_1e-7,
        2.711_555_568_743_487_6e-5,
        0.001_242_660_947_388_078_4,
        0.026_532_189_526_576_124,
        0.296_560_571_828_504_87,
        1.784_826_539_917_291_3,
        5.463_784_911_164_114,
        6.657_904_643_501_104,
    ],
    [
        2.044_263_103_389_939_8e-15,
        1.421_511_758_316_446e-7,
        1.846_318_317_510_054_8e-5,
        7.868_691_311_456_133e-4,
        0.014_875_361_290_850_615,
        0.136_929_880_922_735_8,
        0.599_832_206_555_888,
        1.0,
    ],
);
