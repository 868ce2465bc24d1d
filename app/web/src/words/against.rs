//! What was planned for a build beside what became of it.

/// The head.
pub fn title(build: &str) -> String {
    format!("Planned and actual, {build}")
}

/// What leads there.
pub fn way_here() -> &'static str {
    "Planned and actual"
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "materials, item by item"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Keys of planned and actual"
}

/// Nothing was planned.
pub fn nothing_planned() -> &'static str {
    "Nothing was planned for it. Steps with their hours, and lines of what is to be bought for it, stand here beside what came of them."
}

/// The two sums, read aloud.
pub fn both() -> &'static str {
    "Hours and materials against the plan"
}

/// A sum.
pub fn hours() -> &'static str {
    "Hours"
}

/// A sum.
pub fn materials() -> &'static str {
    "Materials"
}

/// A group.
pub fn by_stage() -> &'static str {
    "Hours by stage"
}

/// A group.
pub fn by_item() -> &'static str {
    "Materials by lot and item"
}

/// Under a sum: `9 h 00 of 10 h 18, 2 h 00 not planned`.
pub fn of(actual: &str, planned: &str, beside: Option<&str>) -> String {
    match beside {
        Some(beside) => format!("{actual} of {planned}, {beside} not planned"),
        None => format!("{actual} of {planned}"),
    }
}

/// A difference: `+0 h 42`; below zero it has its sign.
pub fn more(figure: String, below: bool) -> String {
    if below { figure } else { ["+", &figure].concat() }
}

/// Under a stage.
pub fn planned_and_logged(planned: Option<&str>, logged: &str) -> String {
    match planned {
        Some(planned) => format!("{planned} planned, {logged} logged"),
        None => format!("not planned, {logged} logged"),
    }
}

/// Under an item: `10 discs for 20.00 planned, 12 for 24.00 used`.
pub fn planned_and_used(planned: Option<&str>, used: &str) -> String {
    match planned {
        Some(planned) => format!("{planned} planned, {used} used"),
        None => format!("not planned, {used} used"),
    }
}

/// The same where the run before stands in for a plan.
pub fn like_and_used(like: &str, build: &str, used: &str) -> String {
    format!("{like} in {build}, {used} used")
}

/// So much for so much.
pub fn so_much_for(much: &str, cost: Option<&str>) -> String {
    match cost {
        Some(cost) => format!("{much} for {cost}"),
        None => much.to_owned(),
    }
}

/// In place of a difference in money.
pub fn no_price() -> &'static str {
    "no price"
}

/// Under the lists.
pub fn how() -> &'static str {
    "Hours of a step: 0.3 of quick, 0.4 of usual, 0.3 of slow, for each who is at it. Materials: what was on the list for it, at its price or the last unit cost; of a repeat, what the run before drew."
}

/// A key.
pub fn to_steps() -> &'static str {
    "Steps"
}

/// A key.
pub fn to_buy() -> &'static str {
    "To buy"
}
