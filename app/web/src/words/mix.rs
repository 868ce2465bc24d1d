//! Resin for a void, of two parts.

/// The head.
pub fn title(resin: &str) -> String {
    format!("Mix {resin}")
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "how much of each"
}

/// A row of the form where it is used.
pub fn fill_a_void() -> &'static str {
    "Fill a void, of two parts"
}

/// At its end.
pub fn both_at_once() -> &'static str {
    "both at once"
}

/// A field.
pub fn void() -> &'static str {
    "What is filled"
}

/// In it.
pub fn void_hint() -> &'static str {
    "24 x 2 x 3/4, or dia 2 x 1"
}

/// Under what can't be read.
pub fn void_like() -> &'static str {
    "Type it like 24 x 2 x 3/4, a hole like dia 2 x 1, several with + between them."
}

/// By the field.
pub fn no_void() -> &'static str {
    "No void yet: length x width x depth, a hole like dia 2 x 1, several with + between them."
}

/// A field.
pub fn ratio() -> &'static str {
    "Mixed by volume"
}

/// In it.
pub fn ratio_hint() -> &'static str {
    "2:1"
}

/// By the field.
pub fn no_ratio() -> &'static str {
    "No ratio yet. Type it like 2:1, resin first."
}

/// A field.
pub fn on_top() -> &'static str {
    "On top"
}

/// A field.
pub fn hardener() -> &'static str {
    "Hardener"
}

/// By the field.
pub fn no_hardener() -> &'static str {
    "No other item that is kept by volume. Add the hardener as stock first."
}

/// By the field.
pub fn not_by_volume() -> &'static str {
    "It is not kept by volume: say what one holds, under its sheet."
}

/// By the field.
pub fn too_large() -> &'static str {
    "That is more than can be worked out."
}

/// Under the answer.
pub fn by_volume_only() -> &'static str {
    "By volume. By weight the ratio is another one: it takes the density of both from their data sheets."
}

/// The answer: `200 ml epoxy, 100 ml hardener`.
pub fn both((first, resin): (&str, &str), (second, hardener): (&str, &str)) -> String {
    format!("{first} {resin}, {second} {hardener}")
}

/// Its working, kept with both draws.
pub fn working(void: &str, on_top: &str, whole: &str, ratio: &str) -> String {
    if on_top == "0" {
        format!("{void} = {whole}, {ratio} by volume")
    } else {
        format!("{void}, {on_top} % on top = {whole}, {ratio} by volume")
    }
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Keys of the mix"
}

/// The filled key.
pub fn pour_both() -> &'static str {
    "Pour both"
}
