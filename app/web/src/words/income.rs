//! Money that comes in, what was made, what left, and where a build stands.

use benchslate_core::journal::kinds::{HandedOver, IncomeKind, State};

/// Where money comes from.
pub fn kind(kind: IncomeKind) -> &'static str {
    match kind {
        IncomeKind::Sale => "sale",
        IncomeKind::Commission => "commission",
        IncomeKind::Sponsor => "sponsor",
        IncomeKind::AdShare => "share of adverts",
        IncomeKind::Affiliate => "affiliate",
        IncomeKind::Plans => "plans and courses",
        IncomeKind::Other => "other",
    }
}

/// Finished items in a line.
pub fn made(good: u32, spoiled: usize) -> String {
    if spoiled == 0 { format!("{good} good") } else { format!("{good} good, {spoiled} spoiled") }
}

/// Items that left, in a line.
pub fn handed(count: u32, how: HandedOver) -> String {
    format!("{count} {}", handed_how(how))
}

/// What became of them.
pub fn handed_how(how: HandedOver) -> &'static str {
    match how {
        HandedOver::Sold => "sold",
        HandedOver::Given => "given",
        HandedOver::Kept => "kept",
    }
}

/// Where a build stands.
pub fn state(state: State) -> &'static str {
    match state {
        State::Begun => "begun",
        State::Paused => "paused",
        State::Closed => "closed",
        State::Reopened => "reopened",
    }
}

/// Over the payments in the form.
pub const fn received() -> &'static str {
    "Arrived"
}

/// Adds a payment.
pub const fn one_more() -> &'static str {
    "One more payment"
}

/// In the field of tax while it is empty.
pub const fn tax_in_hint() -> &'static str {
    "13 % or 65"
}

/// The choice of what became of them, read aloud.
pub fn what_became() -> &'static str {
    "What became of them"
}

/// In the field of spoiled ones while it is empty.
pub fn none_spoiled() -> &'static str {
    "none"
}

/// In the field of the work in a spoiled one while it is empty.
pub const fn all_of_the_work() -> &'static str {
    "all of it"
}
