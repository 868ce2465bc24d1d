//! Two items that are one.

/// The sheet and the key that leads to it.
pub fn same_as() -> &'static str {
    "Same as"
}

/// Under the key.
pub fn typed_twice() -> &'static str {
    "typed twice"
}

/// What happens at a tap.
pub fn what_happens() -> &'static str {
    "Tap what it is. All of it counts there, as if it had been one item from the beginning."
}

/// There is nothing else that it could be.
pub fn no_other() -> &'static str {
    "There is no other item on the shelf."
}

/// An item of the list that this one can't be.
pub fn does_not_fit(unit: &str) -> String {
    format!("counted in {unit}: the units don\u{2019}t fit")
}

/// The hand, read aloud.
pub fn keys() -> &'static str {
    "Same as keys"
}

/// What the mark calls it.
pub fn one_item() -> &'static str {
    "one item"
}

/// Over the other names of an item.
pub fn also() -> &'static str {
    "Also typed as"
}

/// Under each.
pub fn since(day: &str) -> String {
    format!("said on {day}; strike that line out to part them")
}
