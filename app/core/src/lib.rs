//! The trade: from the lines of a journal to what a build truly cost.
//!
//! Pure. No browser, no clock, no locale, no time zone, no random source, no files:
//! whatever of these a rule needs is passed in. No sentences either: rules, gaps, flags
//! and refusals are closed enums with their data, and what a person reads is said elsewhere.
//!
//! Arrows run one way: `measure` <- `journal` <- `timing` <- `costing` <- `planning` <- `exchange`.

#![cfg_attr(
    test,
    allow(
        clippy::arithmetic_side_effects,
        clippy::as_conversions,
        clippy::string_slice,
        clippy::wildcard_enum_match_arm,
        reason = "a test that overflows or panics fails, which is what it is for"
    )
)]

pub mod costing;
pub mod exchange;
#[cfg(any(test, feature = "fixture"))]
pub mod fixture;
pub mod journal;
pub mod measure;
pub mod planning;
pub mod timing;
