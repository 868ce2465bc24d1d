//! planning
