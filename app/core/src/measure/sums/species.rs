//! Kinds of timber: how heavy they are and how much they move.
//!
//! Specific gravity: oven-dry mass over the volume at 12 % moisture (*Wood Handbook*, FPL-GTR-190, table 5-3). Change
//! coefficients: change of a width, as a share of it, for one per cent of moisture between 6 and 14 % (table 13-5),
//! along the growth rings (flat sawn) and across them (quarter sawn). Natural scatter of both is about a tenth. What
//! the tables do not give is not given here.

/// One line a species: code, specific gravity in hundredths, coefficients in hundred-thousandths, flat and quarter sawn.
macro_rules! species {
    ($($(#[$doc:meta])* $name:ident $code:literal $gravity:literal $flat:expr, $quarter:expr;)+) => {
        /// A kind of timber.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Species { $($(#[$doc])* $name,)+ }

        impl Species {
            /// All of them, in the order of a list to pick from.
            pub const ALL: &'static [Species] = &[$(Species::$name,)+];

            /// The stored code. Never changed once released.
            pub fn code(self) -> &'static str {
                match self { $(Species::$name => $code,)+ }
            }

            /// Specific gravity at 12 %, in hundredths.
            pub fn gravity(self) -> u32 {
                match self { $(Species::$name => $gravity,)+ }
            }

            /// Change of a flat-sawn width for one per cent, in hundred-thousandths.
            pub fn flat_sawn(self) -> Option<u32> {
                match self { $(Species::$name => $flat,)+ }
            }

            /// The same of a quarter-sawn width.
            pub fn quarter_sawn(self) -> Option<u32> {
                match self { $(Species::$name => $quarter,)+ }
            }
        }
    };
}

species! {
    /// White ash.
    AshWhite "ash_white" 60 Some(274), Some(169);
    /// Quaking aspen.
    AspenQuaking "aspen_quaking" 38 Some(234), Some(119);
    /// American basswood.
    Basswood "basswood" 37 Some(330), Some(230);
    /// American beech.
    BeechAmerican "beech_american" 64 Some(431), Some(190);
    /// Yellow birch.
    BirchYellow "birch_yellow" 62 Some(338), Some(256);
    /// Black cherry.
    CherryBlack "cherry_black" 50 Some(248), Some(126);
    /// Eastern cottonwood.
    CottonwoodEastern "cottonwood_eastern" 40 Some(327), Some(133);
    /// Coast Douglas-fir.
    DouglasFir "douglas_fir" 48 Some(267), Some(165);
    /// American elm.
    ElmAmerican "elm_american" 50 Some(338), Some(144);
    /// White fir.
    FirWhite "fir_white" 39 Some(245), Some(112);
    /// Red maple.
    MapleRed "maple_red" 54 Some(289), Some(137);
    /// Sugar maple.
    MapleSugar "maple_sugar" 63 Some(353), Some(165);
    /// Northern red oak.
    OakRed "oak_red" 63 Some(369), Some(158);
    /// White oak.
    OakWhite "oak_white" 68 Some(365), Some(180);
    /// Loblolly pine.
    PineLoblolly "pine_loblolly" 51 Some(259), Some(165);
    /// Ponderosa pine.
    PinePonderosa "pine_ponderosa" 40 None, None;
    /// Western redcedar.
    RedcedarWestern "redcedar_western" 32 None, None;
    /// Sweetgum.
    Sweetgum "sweetgum" 52 Some(365), Some(183);
    /// Black walnut.
    WalnutBlack "walnut_black" 55 Some(274), Some(190);
    /// Yellow-poplar.
    YellowPoplar "yellow_poplar" 42 Some(289), Some(158);
}

impl Species {
    /// The species of a code; None: not one of ours.
    pub fn from_code(code: &str) -> Option<Species> {
        Species::ALL.iter().copied().find(|it| it.code() == code)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_code_is_its_own_and_comes_back() {
        for species in Species::ALL {
            assert_eq!(Species::from_code(species.code()), Some(*species));
        }
        assert_eq!(Species::from_code("teak"), None);
    }

    #[test]
    fn wood_moves_more_along_the_rings_than_across_them() {
        for species in Species::ALL {
            assert!(species.flat_sawn() >= species.quarter_sawn(), "{}", species.code());
        }
    }
}
