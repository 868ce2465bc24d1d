//! Which cautions go with what: by the treatment mark of a salvaged lot, by what an item is, by what is built.
//!
//! One sentence each, said by the program where the work happens and never while a machine is about to start.
//! Source: ISPM 15, annexes 1 and 2, for the marks; common practice of the trade for the rest. Names tell where nobody
//! has said. Not here: the sentences.

use super::{
    Shop,
    kinds::{Mark, Origin, Source, Use},
    shop::{Item, Lot},
};
use crate::measure::letters;

macro_rules! cautions {
    ($($name:ident $code:literal $says:literal)*) => {
        /// A caution.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Caution { $(#[doc = $says] $name,)* }

        impl Caution {
            /// Every caution, in the order in which the work comes.
            pub const ALL: &'static [Caution] = &[$(Caution::$name,)*];

            /// The name under which a device remembers that it was seen.
            pub fn code(self) -> &'static str {
                match self { $(Caution::$name => $code,)* }
            }

            /// The caution of a name.
            pub fn from_code(code: &str) -> Option<Caution> {
                match code { $($code => Some(Caution::$name),)* _ => None }
            }
        }
    };
}

cautions! {
    UnknownTreatment "unknown-treatment" "Packaging without a mark, or with MB."
    TreatedForPests "treated-for-pests" "HT and DH: heat, against pests only."
    Fumigated "fumigated" "SF: sulphuryl fluoride."
    OldFinish "old-finish" "Lead, asbestos."
    OutdoorTimber "outdoor-timber" "Pressure-treated; holes with fresh dust."
    Metal "metal" "Before salvaged stock is milled."
    Kindling "kindling" "What is culled and burnt."
    SandingDust "sanding-dust" "Wood dust."
    OilyRags "oily-rags" "Rags of a finish that dries by oxidation."
    DataSheet "data-sheet" "Resin and solvent."
    FoodContact "food-contact" "Things that touch food."
    Blades "blades" "Filming near a blade."
    LoadAndFixing "load-and-fixing" "Seats, walls, vehicles."
}

/// What a treatment mark says; none looked for is as good as none there.
pub fn of_mark(mark: Option<Mark>) -> Caution {
    match mark {
        None | Some(Mark::None | Mark::Mb) => Caution::UnknownTreatment,
        Some(Mark::Ht | Mark::Dh) => Caution::TreatedForPests,
        Some(Mark::Sf) => Caution::Fumigated,
    }
}

/// While salvaged timber is written down.
pub fn coming_in(mark: Option<Mark>) -> Vec<Caution> {
    vec![of_mark(mark), Caution::OldFinish, Caution::OutdoorTimber]
}

/// While it is sorted: what is culled is burnt as like as not.
pub fn sorting() -> Vec<Caution> {
    vec![Caution::Metal, Caution::Kindling]
}

/// All that goes with a lot.
pub fn of_lot(lot: &Lot) -> Vec<Caution> {
    if lot.origin != Origin::Salvaged || lot.purpose != Use::Timber {
        return Vec::new();
    }
    let mut all = coming_in(lot.mark);
    all.extend(sorting());
    all
}

/// All that goes with an item.
pub fn of_item(item: &Item) -> Vec<Caution> {
    if item.purpose != Use::Consumable {
        return Vec::new();
    }
    let name = Words::of(&item.name);
    let oily = item.oxidises.unwrap_or_else(|| name.tells(OILS) && !name.tells(NO_FINISH));
    let found = [
        (oily, Caution::OilyRags),
        (name.tells(RESINS), Caution::DataSheet),
        (name.tells(ABRASIVES), Caution::SandingDust),
        (item.food_safe, Caution::FoodContact),
    ];
    found.into_iter().filter(|(goes, _)| *goes).map(|(_, caution)| caution).collect()
}

/// All that goes with a lot or an item of the shop; a lot of an item is as its item.
pub fn of_source(shop: &Shop, source: Source) -> Vec<Caution> {
    let item = match source {
        Source::Item(id) => shop.item(id),
        Source::Lot(id) => shop.lots.get(&id).and_then(|lot| lot.item).and_then(|id| shop.item(id)),
    };
    match (item, source) {
        (Some(item), _) => of_item(item),
        // Timber that is looked at: what comes in with it, and what waits when it is home.
        (None, Source::Lot(id)) if shop.finds.contains_key(&id) => {
            let mark = shop.finds.get(&id).and_then(|find| find.mark);
            coming_in(mark).into_iter().chain(sorting()).collect()
        }
        (None, Source::Lot(id)) => shop.lots.get(&id).map(of_lot).unwrap_or_default(),
        (None, Source::Item(_)) => Vec::new(),
    }
}

/// By what is built.
pub fn of_title(title: &str) -> Vec<Caution> {
    let title = Words::of(title);
    let found = [(title.tells(BEARS), Caution::LoadAndFixing), (title.tells(SERVES), Caution::FoodContact)];
    found.into_iter().filter(|(goes, _)| *goes).map(|(_, caution)| caution).collect()
}

/// Where the film of a build is looked at.
pub fn filming() -> Vec<Caution> {
    vec![Caution::Blades]
}

const OILS: &[&str] = &["oil", "linseed", "tung", "varnish", "danish"];
const NO_FINISH: &[&str] = &["engine", "cutting", "machine"];
const RESINS: &[&str] =
    &["resin", "epoxy", "hardener", "solvent", "thinner", "thinners", "lacquer", "acetone"];
const ABRASIVES: &[&str] =
    &["sanding", "sandpaper", "abrasive", "abrasives", "disc", "discs", "disk", "disks", "grit"];
const BEARS: &[&str] = &[
    "bench", "benches", "chair", "chairs", "stool", "stools", "seat", "seats", "sofa", "swing", "ladder",
    "step", "steps", "stairs", "bed", "bunk", "cot", "cradle", "loft", "shelf", "shelves", "shelving",
    "rack", "wall", "hanging", "cabinet", "van", "trailer", "camper", "boat", "vehicle",
];

const SERVES: &[&str] = &[
    "cutting",
    "chopping",
    "carving",
    "serving",
    "bread",
    "butcher",
    "bowl",
    "bowls",
    "spoon",
    "spoons",
    "spatula",
    "platter",
    "worktop",
    "countertop",
    "charcuterie",
];

struct Words(Vec<String>);

impl Words {
    fn of(name: &str) -> Words {
        let name = letters::small(name);
        Words(name.split(|c: char| !c.is_alphanumeric()).map(str::to_owned).collect())
    }

    fn tells(&self, words: &[&str]) -> bool {
        self.0.iter().any(|word| words.contains(&word.as_str()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    #[track_caller]
    fn item(name: &str, oxidises: Option<bool>, want: &[Caution]) {
        let it = fixture(&format!("item {} consumable tin", name.replace(' ', "-")));
        let shop = it.shop();
        let item = shop.items.values().next().unwrap();
        assert_eq!(of_item(&Item { oxidises, ..item.clone() }), want, "{name}");
    }

    #[test]
    fn a_finish_is_told_by_its_name_until_somebody_says() {
        for name in ["Hard oil 750 ml", "Boiled linseed", "Spar varnish"] {
            item(name, None, &[Caution::OilyRags]);
            item(name, Some(false), &[]);
        }
        for name in ["Boiler plate", "Wood glue", "Cutting oil"] {
            item(name, None, &[]);
        }
        item("Wax", Some(true), &[Caution::OilyRags]);
        item("Epoxy resin", None, &[Caution::DataSheet]);
        item("Sanding discs", None, &[Caution::SandingDust]);
    }

    #[test]
    fn a_salvaged_lot_goes_by_its_mark_and_a_bought_one_has_none() {
        let it = fixture("lot pallets salvaged 40\nlot oak bought 10");
        let shop = it.shop();
        let lot = |name: &str| shop.lots[&it.id(name)].clone();
        assert_eq!(of_lot(&lot("oak")), []);
        let first = |mark| of_lot(&Lot { mark, ..lot("pallets") })[0];
        assert_eq!(first(None), Caution::UnknownTreatment);
        assert_eq!(first(Some(Mark::Dh)), Caution::TreatedForPests);
        assert_eq!(of_lot(&lot("pallets")).len(), 5);
    }

    #[test]
    fn a_find_is_minded_as_the_lot_that_it_may_become() {
        let it = fixture("find pews 40 cases 0.5:30,0.6:20,0.7:15");
        let all = of_source(&it.shop(), Source::Lot(it.id("pews")));
        assert_eq!(all.first(), Some(&Caution::UnknownTreatment));
        assert_eq!(all.len(), 5);
    }

    #[test]
    fn what_bears_somebody_is_told_by_its_title() {
        assert_eq!(of_title("Reading bench, library corner"), [Caution::LoadAndFixing]);
        assert_eq!(of_title("Gym-floor trays, run 2"), []);
    }

    #[test]
    fn what_touches_food_is_told_by_its_title() {
        for title in ["End-grain cutting board", "Salad bowls, set of six", "Butcher block"] {
            assert_eq!(of_title(title), [Caution::FoodContact], "{title}");
        }
        assert_eq!(of_title("Kitchen bench"), [Caution::LoadAndFixing]);
    }

    #[test]
    fn a_caution_comes_back_from_its_code() {
        for caution in Caution::ALL {
            assert_eq!(Caution::from_code(caution.code()), Some(*caution));
        }
        assert_eq!(Caution::from_code("praise"), None);
    }
}
