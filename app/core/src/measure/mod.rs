//! Money, quantities, units and time: what each is, how it is typed, how it is shown.
//!
//! The first room of the house; every other one builds on it and it knows none of them. A flat list,
//! one subject a file:
//!
//! - amounts: [`money`], [`quantity`], [`ratio`] (a share of a whole), [`fraction`] (exact), [`dec`]
//!   (as stored), `fixed` (the one rounding and the one apportionment), [`limits`] (each once);
//! - what they are of: [`mod@unit`], [`board`], [`coverage`] (coats on an area), [`currency`],
//!   [`region`] (a first guess at currency, measures and week);
//! - time: [`day`], [`instant`], [`zone`] (a table that is passed in), [`clock_text`], [`duration`];
//! - typed text: [`number`], [`marks`], [`duration`], [`footage`], [`clock_text`], [`day`], over the cursor `scan`;
//!   what isn't taken is a [`refusal`]: why, what would be, and where;
//! - [`sums`]: small sums of the bench, a file each;
//! - [`letters`]: large and small ones;
//! - [`order`]: the one sort; [`map`]: the one map;
//! - shown text: [`show`] and, for hours, [`minutes`], so that the parts of a sum add up as they are read.
//!
//! Never: another room of `core`. Kept by: tidy, `arrows`.
//! Never: a clock, a locale, a zone or a currency of its own choosing. Kept by: tidy, `crates`; chrono
//! comes without `clock`, so that asking for now doesn't compile.
//! Never: money or quantities reckoned outside `core`. Kept by: the compiler; [`Money`] and
//! [`Quantity`] have no operators, and what reckons with them is `pub(crate)`.
//! Never: binary fractions. Kept by: clippy, `float_arithmetic`.
//! Never: a panic that typed text, a stored byte or an absurd number can reach. Kept by: clippy
//! (`arithmetic_side_effects`, `indexing_slicing`, `unwrap_used` and their like) and the property
//! tests named `no_text_makes_it_panic`.
//! Never: a sentence, or a name of a unit for people to read. Kept by: review.

pub mod board;
pub mod clock_text;
pub mod coverage;
pub mod currency;
pub mod day;
pub mod dec;
pub mod duration;
pub mod film_time;
pub(crate) mod fixed;
pub mod footage;
pub mod fraction;
pub mod instant;
pub mod letters;
pub mod limits;
pub mod map;
pub mod marks;
pub mod minutes;
pub mod money;
pub mod number;
pub mod order;
pub mod quantity;
pub mod ratio;
pub mod refusal;
pub mod region;
pub mod rule;
pub(crate) mod scan;
pub mod show;
pub mod sums;
pub mod unit;
pub mod zone;

pub use clock_text::TimeOfDay;
pub use day::{Day, Weekday};
pub use dec::Dec;
pub use fraction::Fraction;
pub use instant::{Instant, Offset, When};
pub use map::Map;
pub use money::Money;
pub use order::InOrder;
pub use quantity::{Quantity, Seconds};
pub use ratio::Ratio;
pub use refusal::{Accepts, Refusal, Why};
pub use region::{Measures, Region};
pub use show::Shown;
pub use unit::{Dimension, Unit, convert};
pub use zone::Zone;
