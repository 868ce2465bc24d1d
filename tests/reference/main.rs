//! Checks against published figures, standards and libraries; each names its source.

mod apportion;
mod backup;
mod board_feet;
mod cautions;
mod cost_sheet;
mod dressed_sizes;
mod first_in_first_out;
mod income;
mod job_cost_sheet;
mod joint_costs;
mod learning;
mod marks;
mod money;
mod moving_average;
mod overhead;
mod price;
mod salvage_examples;
mod sample_shop;
mod schema;
mod specific_identification;
mod spoilage;
mod tools;
mod units;
mod zones;
