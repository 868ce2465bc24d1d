//! Cautions: one sentence each, where the work happens, once; all of them on a sheet of their own.
//!
//! What goes with what is core's (`journal::cautions`). Sources: ISPM 15 for the marks of packaging (HT, DH, MB, SF);
//! common practice of the trade for the rest. Checked in `tests/reference/cautions.rs`.

use benchslate_core::journal::{cautions::Caution, kinds::Mark};

/// The sheet of all, and the way to it.
pub fn cautions() -> &'static str {
    "Cautions"
}

/// The same, on the sheet of a thing.
pub fn so_many(count: usize) -> String {
    if count == 1 { "1 for this".to_owned() } else { format!("{count} for this") }
}

/// At the end of the way to all.
pub fn each_once() -> &'static str {
    "each is shown once"
}

/// The key of one.
pub fn seen() -> &'static str {
    "Seen"
}

/// The same, read aloud.
pub fn seen_name(caution: Caution) -> String {
    ["Seen: ", title(caution)].concat()
}

/// Beside one that was seen.
pub fn seen_here() -> &'static str {
    "seen on this device"
}

/// What the long-break line names.
pub fn more() -> &'static str {
    "more of them"
}

/// The key under all.
pub fn show_again() -> &'static str {
    "Show them again"
}

/// Under it.
pub fn where_the_work_is() -> &'static str {
    "where the work happens"
}

/// The hand, read aloud.
pub fn keys() -> &'static str {
    "Caution keys"
}

/// None goes with a thing.
pub fn none() -> &'static str {
    "None goes with it."
}

/// The set of treatment marks.
pub fn mark() -> &'static str {
    "Treatment mark, on pallets and crates"
}

/// Nobody looked for one.
pub fn not_looked() -> &'static str {
    "not looked for"
}

/// One of the set.
pub fn of_mark(mark: Mark) -> &'static str {
    match mark {
        Mark::None => "none",
        Mark::Ht => "HT",
        Mark::Dh => "DH",
        Mark::Mb => "MB",
        Mark::Sf => "SF",
    }
}

/// What it is about.
pub fn title(caution: Caution) -> &'static str {
    match caution {
        Caution::UnknownTreatment => "No treatment mark, or MB",
        Caution::TreatedForPests => "HT and DH",
        Caution::Fumigated => "SF",
        Caution::OldFinish => "Old finish",
        Caution::OutdoorTimber => "Outdoor timber",
        Caution::Metal => "Metal in old timber",
        Caution::Kindling => "Kindling",
        Caution::SandingDust => "Sanding dust",
        Caution::OilyRags => "Oily rags",
        Caution::DataSheet => "Resin and solvent",
        Caution::FoodContact => "What touches food",
        Caution::Blades => "Filming near a blade",
        Caution::LoadAndFixing => "Load and fixing",
    }
}

/// The sentence.
pub fn says(caution: Caution) -> &'static str {
    match caution {
        Caution::UnknownTreatment => {
            "Pallets and crates without a mark, or with MB: unknown treatment or methyl bromide, not for furniture, indoors or food."
        }
        Caution::TreatedForPests => "HT, DH: treated against pests only; says nothing of spills.",
        Caution::Fumigated => "SF: fumigated; if in doubt, leave it.",
        Caution::OldFinish => {
            "Old finish and paint may hold lead, old mastic or tile backing asbestos: have it tested before sanding or scraping."
        }
        Caution::OutdoorTimber => {
            "Green, brown or tarry: pressure-treated, not indoors, never burn. Holes with fresh dust: keep away from other stock."
        }
        Caution::Metal => {
            "Before milling: check for metal; wear eye and ear protection; a detector misses some."
        }
        Caution::Kindling => "What is culled for kindling: never painted, treated or unknown wood.",
        Caution::SandingDust => {
            "Sanding: extract at the machine and wear a fitting mask; wood dust can cause cancer, and limits differ by country."
        }
        Caution::OilyRags => {
            "Spread oily rags flat outdoors, or put them under water in a lidded metal tin: they can set themselves alight."
        }
        Caution::DataSheet => "Follow the data sheet; gloves, air; sensitising can be for life.",
        Caution::FoodContact => {
            "For what touches food: the finish fully cured, and stated for food contact on its data sheet."
        }
        Caution::Blades => "Don\u{2019}t reach over a running blade for a shot; guards stay on.",
        Caution::LoadAndFixing => {
            "Load and fixing are not checked by this program; local codes and licensed trades decide."
        }
    }
}

/// Where figures and pictures leave the phone.
pub fn cards() -> &'static str {
    "Leave out a client's name and a sponsor's fee unless agreed; others in the picture: ask first."
}
