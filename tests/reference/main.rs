//! Checks against published figures, standards and libraries; each names its source.

mod apportion;
mod board_feet;
mod dressed_sizes;
mod marks;
mod money;
mod units;
mod zones;
