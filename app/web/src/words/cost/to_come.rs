//! What the plan still costs, and what stands above what it will fetch.

/// What the plan still costs.
pub fn to_come() -> &'static str {
    "Still to spend"
}

/// Hours of the steps that are left.
pub fn to_come_labour() -> &'static str {
    "Hours still to do"
}

/// What the shop costs by them.
pub fn to_come_overhead() -> &'static str {
    "The shop by them"
}

/// Tools by them.
pub fn to_come_tools() -> &'static str {
    "Tools by them"
}

/// One-off work for what is still to be made.
pub fn to_come_one_off() -> &'static str {
    "Jigs and design, for those still to make"
}

/// What is to be bought, and what was bought and is not drawn yet.
pub fn to_come_materials() -> &'static str {
    "Materials still to use"
}

/// Paid people and materials.
pub fn to_come_money() -> &'static str {
    "Money still to pay"
}

/// How materials to come are worked out.
pub fn how_to_come_materials() -> &'static str {
    "Lines of what is to be bought for it, at their price or the last unit cost; what was bought for it and is not used yet."
}

/// How far a build stands above what it will fetch.
pub fn how_above_fetch() -> &'static str {
    "In money and paid hours only, as your own books carry it: what it has used up and still takes, less what came in and is expected. What is above is best written down; own time is in the outlook."
}

/// How far a lot does.
pub fn how_above_new() -> &'static str {
    "What is left of it in money and paid hours, less what the same would cost new by the price you noted. Where what is made of it sells above its cost, nothing need be written down."
}

/// How the outlook is worked out.
pub fn how_outlook() -> &'static str {
    "What came in and what is still expected, less what it has cost so far and what its steps still cost."
}

/// How what is still to come is worked out.
pub fn how_to_come() -> &'static str {
    "0.3 of quick, 0.4 of usual, 0.3 of slow, less what is logged on the step; a twentieth stays until it is done. At today\u{2019}s rates."
}
