//! measure: money, quantities, units, time, and how each is typed and shown.

pub mod board;
pub mod clock_text;
pub mod currency;
pub mod day;
pub mod dec;
pub mod duration;
pub(crate) mod fixed;
pub mod fraction;
pub mod instant;
pub mod limits;
pub mod marks;
pub mod money;
pub mod number;
pub mod quantity;
pub mod ratio;
pub mod refusal;
pub mod region;
pub(crate) mod scan;
pub mod show;
pub mod unit;
pub mod zone;

pub use clock_text::TimeOfDay;
pub use day::{Day, Weekday};
pub use dec::Dec;
pub use fraction::Fraction;
pub use instant::{Instant, Offset, When};
pub use money::Money;
pub use quantity::{Quantity, Seconds};
pub use ratio::Ratio;
pub use refusal::{Accepts, Refusal, Why};
pub use show::Shown;
pub use unit::{Dimension, Unit, convert};
pub use zone::Zone;
