//! costing
