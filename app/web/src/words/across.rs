//! What all salvage saved, by source and by species.

/// The sheet.
pub fn title() -> &'static str {
    "What salvage saved"
}

/// What an opened figure is of.
pub fn all_salvage() -> &'static str {
    "all salvage"
}

/// The way back from there.
pub fn to_all() -> &'static str {
    "to all salvage"
}

/// Beside it.
pub fn so_far() -> &'static str {
    "all lots drawn so far"
}

/// Leads to it, from the shelf.
pub fn by_source_and_species() -> &'static str {
    "by source and species"
}

/// The set of two.
pub fn put_together() -> &'static str {
    "by"
}

/// By what.
pub fn by() -> [&'static str; 2] {
    ["source", "species"]
}

/// A group of lots of which nobody said.
pub fn not_said(source: bool) -> &'static str {
    if source { "source not said" } else { "species not said" }
}

/// Under the figure.
pub fn on_all_drawn() -> &'static str {
    "on all that was drawn of salvaged lots"
}

/// Under a group.
pub fn an_hour(figure: &str) -> String {
    format!("an hour of reclaiming: {figure}")
}

/// Over the bars.
pub fn one_scale() -> &'static str {
    "saved against new, on one scale"
}

/// A bar read aloud.
pub fn told(name: &str, figure: &str) -> String {
    format!("{name} {figure}")
}

/// The total.
pub fn together() -> &'static str {
    "Together"
}

/// Under the sum.
pub fn left_out() -> &'static str {
    "Each against the price you noted for it, in the same measure, for what you used; overhead left out."
}

/// Under the long-break line.
pub fn more() -> &'static str {
    "lot by lot"
}

/// Nothing was drawn.
pub fn nothing_yet() -> &'static str {
    "Nothing was drawn from a salvaged lot yet."
}
