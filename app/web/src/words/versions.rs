//! Every version of an entry: what it was, who wrote it, and two that both stand.

/// Over the versions.
pub fn history() -> &'static str {
    "Every version"
}

/// A version: begun.
pub fn v_written() -> &'static str {
    "written"
}

/// A version: added to, nothing put right.
pub fn v_went_on() -> &'static str {
    "went on"
}

/// A version: put right.
pub fn v_corrected() -> &'static str {
    "corrected"
}

/// A version: struck out.
pub fn v_struck() -> &'static str {
    "struck out"
}

/// A version: brought back.
pub fn v_back() -> &'static str {
    "put back"
}

/// A version that isn't known here.
pub fn v_newer() -> &'static str {
    "newer"
}

/// Who wrote a version.
pub fn this_device() -> &'static str {
    "on this device"
}

/// Who wrote a version. `end`: the last signs of the device's id.
pub fn other_device(end: &str) -> String {
    format!("on another device, {end}")
}

/// What a version changed.
pub fn changed(what: &str, before: &str, after: &str) -> String {
    match (before.is_empty(), after.is_empty()) {
        (true, _) => format!("{what}: {after}"),
        (_, true) => format!("{what}: {before} taken out"),
        _ => format!("{what}: {after}, was {before}"),
    }
}

/// Two versions stand.
pub fn two_title() -> &'static str {
    "Two versions of this entry"
}

/// What it means.
pub fn two_text() -> &'static str {
    "It was changed on two devices. The later one counts until one of them is picked; both stay in the history."
}

/// The key under a version.
pub fn this_one() -> &'static str {
    "This one"
}

/// Under it.
pub fn counts_now() -> &'static str {
    "counts now"
}

/// A newer version wrote it.
pub fn newer_title() -> &'static str {
    "Written by a newer Benchslate"
}

/// What that means.
pub fn newer_text() -> &'static str {
    "It is kept whole and counts for nothing here. It can be struck out, not corrected: a newer version can."
}

/// It can't be read.
pub fn unreadable_title() -> &'static str {
    "This entry can’t be read"
}

/// What that means.
pub fn unreadable_text() -> &'static str {
    "The line is kept as it was written and counts for nothing. It can be struck out."
}
