//! Cautions: one sentence each, where the work happens, once.
//!
//! Sources: ISPM 15 (treatment marks of wood packaging: HT, DH, MB, SF); common practice of the trade for the rest.

/// Wood with no treatment mark, or one that is not known.
pub fn unknown_treatment() -> &'static str {
    "No treatment mark, or MB: not for furniture, indoors or food. HT and DH: treated against pests only, says nothing of spills. SF: fumigated; if in doubt, leave it."
}

/// Old floors, pews, doors.
pub fn old_finish() -> &'static str {
    "Old finish and paint may hold lead, old mastic or tile backing asbestos: have it tested before sanding or scraping."
}

/// Green, brown or tarry outdoor timber, and holes with fresh dust.
pub fn outdoor_timber() -> &'static str {
    "Green, brown or tarry: pressure-treated, not indoors, never burn. Holes with fresh dust: keep away from other stock."
}

/// Before milling salvaged stock.
pub fn metal() -> &'static str {
    "Before milling: check for metal; wear eye and ear protection; a detector misses some."
}

/// Finishes that dry by taking up oxygen: oils and what is made with them.
pub fn oily_rags() -> &'static str {
    "Spread oily rags flat outdoors, or put them under water in a lidded metal tin: they can set themselves alight."
}

/// Resin, solvent.
pub fn data_sheet() -> &'static str {
    "Follow the data sheet; gloves, air; sensitising can be for life."
}

/// Whether a name is that of a finish that dries by oxidation: until items carry the flag, their names tell.
pub fn dries_by_oxidation(name: &str) -> bool {
    has_word(name, &["oil", "linseed", "tung", "varnish", "danish"])
        && !has_word(name, &["engine", "cutting", "machine"])
}

/// Whether a name is that of a resin or solvent.
pub fn is_resin_or_solvent(name: &str) -> bool {
    has_word(name, &["resin", "epoxy", "hardener", "solvent", "thinner", "thinners", "lacquer", "acetone"])
}

fn has_word(name: &str, words: &[&str]) -> bool {
    let name = name.to_lowercase();
    name.split(|c: char| !c.is_alphanumeric()).any(|word| words.contains(&word))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn oils_are_told_by_their_names() {
        for name in ["Hard oil, 750 ml", "Boiled linseed", "Spar varnish"] {
            assert!(dries_by_oxidation(name), "{name}");
        }
        for name in ["Boiler plate", "Wood glue", "Cutting oil"] {
            assert!(!dries_by_oxidation(name), "{name}");
        }
    }
}
