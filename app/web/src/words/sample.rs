//! The sample shop: into it, and out again.

/// The key on the first sheet.
pub fn look_around() -> &'static str {
    "Look around a sample shop"
}

/// Under it.
pub fn gone_in_one_tap() -> &'static str {
    "invented; gone again in one tap"
}

/// The sheet while it is made ready.
pub fn title() -> &'static str {
    "A sample shop"
}

/// While it is made ready.
pub fn under_way() -> &'static str {
    "It is being set up, apart from anything of yours."
}

/// Inside it: what it is.
pub fn what_it_is() -> &'static str {
    "Wren, Tobin and all they make are invented. Try whatever you like here: nothing of it touches your own journal."
}

/// It could not be set up.
pub fn not_set_up() -> &'static str {
    "The sample shop could not be set up"
}

/// Under it.
pub fn not_set_up_why() -> &'static str {
    "Its file did not arrive, or this browser has no room for it. Nothing of yours was touched."
}

/// Tried again.
pub fn try_again() -> &'static str {
    "Try again"
}

/// Out of it.
pub fn take_it_away() -> &'static str {
    "Take it away"
}

/// Under it.
pub fn back_to_your_own() -> &'static str {
    "and back to your own shop"
}

/// Row in the shop, inside it.
pub fn this_is_it() -> &'static str {
    "Sample shop, invented"
}

/// At the right of the row that leads in.
pub fn apart_from_yours() -> &'static str {
    "apart from yours"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Sample shop keys"
}
