//! Checks against published figures, standards and libraries; each names its source.

mod apportion;
mod board_feet;
mod cost_sheet;
mod dressed_sizes;
mod job_cost_sheet;
mod marks;
mod money;
mod moving_average;
mod salvage_examples;
mod sample_shop;
mod specific_identification;
mod units;
mod zones;
