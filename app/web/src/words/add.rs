//! New entries of kinds that have no form of their own.

use benchslate_core::journal::Kind;

/// The head.
pub fn title(kind: Kind) -> &'static str {
    match kind {
        Kind::Tool => "New tool",
        Kind::Blade => "New blade",
        Kind::ToolHours => "Run hours",
        Kind::MonthlyCost => "Every month",
        Kind::Income => "Money in",
        Kind::Made => "Made",
        Kind::HandOver => "Handed over",
        Kind::Film => "The film",
        Kind::Step => "New step",
        Kind::Shelf => "Gone from the shelf",
        Kind::BuyLine => "To buy",
        Kind::Part => "New part",
        Kind::Resource => "There is a count of",
        Kind::FreeDay => "Day off, or more time",
        Kind::Shot => "New shot",
        Kind::Chapter => "New chapter",
        Kind::Outsider => "Somebody outside",
        Kind::Due => "Owed",
        _ => "Nothing to add here",
    }
}

/// What stands past the lower edge.
pub fn below(kind: Kind) -> &'static str {
    match kind {
        Kind::Tool => "power, where it runs",
        Kind::Income => "what arrived, who earned it, side",
        Kind::Chapter => "how a time is typed",
        _ => "the rest of the form",
    }
}

/// Under the fields.
pub fn note(kind: Kind) -> Option<&'static str> {
    Some(match kind {
        Kind::Tool => "A name is enough. Resale is what it fetches at the end; life is counted in run hours.",
        Kind::ToolHours => {
            "Takes the place of what its share of the stage would come to, for that day, stage and bearer."
        }
        Kind::MonthlyCost => {
            "Months that it touches count whole. Borne by hours worked on builds and lots, office apart."
        }
        Kind::Income => {
            "Expected is before tax and fees. A deposit counts as received. Paid back: type it below zero."
        }
        Kind::Part => {
            "Finished size, length along the grain. A name and how many are enough; boards are planned by the length."
        }
        Kind::Shot => super::film::a_name_is_enough(),
        Kind::Made => "Adds to what was finished before.",
        Kind::Step => {
            "Hours of each who is at it. Quick: one time in ten it is quicker; slow: one time in ten slower. What it usually takes is enough."
        }
        Kind::Resource => "What steps take and give back: clamps, the bench, the dust-free corner.",
        Kind::FreeDay => {
            "Without hours the day is off, whatever the week says. With hours, as 18:00-21:00, these come beside the week\u{2019}s."
        }
        Kind::Film => "Twelve minutes and a half are 12.5. What is not known yet stays empty.",
        Kind::Chapter => {
            "Where it begins, as the player shows it: 1:35 or 1:02:03. It ends where the next one begins."
        }
        Kind::Outsider => "A review is counted off in their working days, days off left out.",
        Kind::Due => {
            "By a day, or by so many days before the film goes out; with both, the earlier counts. A cut to be looked at moves the day by which it must go out."
        }
        Kind::BuyLine => super::buying::what_a_line_does(),
        Kind::Shelf => {
            "Borne by the shop on a line of its own, never by the next build. A count says what lies there now."
        }
        Kind::HandOver => "Profit is shown on those sold; given and left ones at cost.",
        _ => return None,
    })
}

/// Under a new blade, where none is on.
pub fn blades_wear() -> &'static str {
    "It wears by the tool\u{2019}s run hours and stops at its price."
}

/// Under a new blade: what is on comes off.
pub fn comes_off(what: &str) -> String {
    format!(
        "{what} comes off that day; runs of the day go to the new one. What is left in it is a loss of the shop."
    )
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Form keys"
}

/// The filled key.
pub fn keep() -> &'static str {
    "Keep"
}
