//! The stages that stand from the start. Their ids are fixed, so that two phones that never met agree on
//! them; an entry with such an id renames one or changes its side.

use super::{
    Id,
    kinds::{Role, Side},
};

/// A stage before anyone changed it.
#[derive(Clone, Copy, Debug)]
pub struct Standing {
    /// Its number in the list, from 1; also the last byte of its id.
    pub number: u8,
    /// The trade's word for it, until the maker changes it. A name of a stage is data, not a sentence.
    pub name: &'static str,
    /// What its hours are for.
    pub side: Side,
    /// What rules hang on.
    pub role: Option<Role>,
}

/// In the order of the picker: the piece, both, the film.
pub const STANDING: [Standing; 21] = [
    piece(1, "design", None),
    piece(2, "buy and haul", Some(Role::Haul)),
    piece(3, "reclaim", Some(Role::Reclaim)),
    piece(4, "mill", None),
    piece(5, "cut", None),
    piece(6, "joinery", None),
    piece(7, "glue-up", Some(Role::GlueUp)),
    piece(8, "flatten", None),
    piece(9, "assemble", None),
    piece(10, "sand", None),
    piece(11, "finish", Some(Role::Finish)),
    piece(12, "install", None),
    Standing { number: 13, name: "set up", side: Side::Both, role: None },
    Standing { number: 14, name: "clean up", side: Side::Both, role: None },
    Standing { number: 15, name: "admin", side: Side::Both, role: Some(Role::Admin) },
    film(16, "plan", None),
    film(17, "shoot", Some(Role::Shoot)),
    film(18, "voice-over", None),
    film(19, "edit", Some(Role::Edit)),
    film(20, "thumbnail", None),
    film(21, "publish", None),
];

const fn piece(number: u8, name: &'static str, role: Option<Role>) -> Standing {
    Standing { number, name, side: Side::Piece, role }
}

const fn film(number: u8, name: &'static str, role: Option<Role>) -> Standing {
    Standing { number, name, side: Side::Film, role }
}

/// The fixed id of a standing stage: a UUID of version 8 (RFC 9562: made as the maker likes).
pub const fn standing_id(number: u8) -> Id {
    Id::of([0xbe, 0x4c, 0x51, 0xa7, 0, 0, 0x80, 0, 0x80, 0, 0, 0, 0, 0, 0, number])
}

/// The standing stages as facts, by id.
pub(super) fn all() -> crate::measure::Map<Id, super::shop::Stage> {
    STANDING
        .iter()
        .map(|it| {
            let stage =
                super::shop::Stage { name: it.name.into(), side: it.side, role: it.role, place: it.number };
            (standing_id(it.number), stage)
        })
        .collect()
}
