//! Parts lists as facts: what is wanted, and the boards it can be cut from.

use super::odd::{Field, Odd};
use crate::{
    journal::{
        Id, Shop, kinds,
        kinds::{Extent, SettingKey},
        order::Order,
    },
    measure::{
        Dimension, Fraction, InOrder, Unit,
        sums::cutting::{self, Pieces},
    },
};

/// A line of a parts list.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Its place in time: lists stand in the order in which they were written.
    pub order: Order,
    /// As it was written.
    pub body: kinds::Part,
    /// Length, width and thickness in inches, exact; none where nobody has said, or it can't be.
    pub inches: [Option<Fraction>; 3],
}

impl Part {
    pub(super) fn read(order: Order, body: &kinds::Part, tell: &mut dyn FnMut(Odd)) -> Part {
        let mut inches = |side: &Option<Extent>| {
            let side = side.as_ref()?;
            let read = length(side);
            if read.is_none() {
                tell(Odd::OutOfRange(Field::Quantity));
            }
            read
        };
        let inches = [inches(&body.length), inches(&body.width), inches(&body.thickness)];
        Part { order, inches, body: body.clone() }
    }

    /// Still to be cut.
    pub fn to_cut(&self) -> u32 {
        self.body.count.saturating_sub(self.body.cut)
    }

    /// Width and thickness: what it is cut from is as wide and as thick.
    pub fn section(&self) -> [Option<Fraction>; 2] {
        let [_, width, thickness] = self.inches;
        [width, thickness]
    }
}

/// What marks of a rule stand under.
pub const FRACTIONS: [u32; 4] = [8, 16, 32, 64];

fn length(side: &Extent) -> Option<Fraction> {
    let amount = side.amount.quantity().filter(|it| !it.is_negative() && !it.is_zero())?;
    let is_length = side.unit.dimension() == Dimension::Length;
    Fraction::from_quantity(amount).converted(side.unit, Unit::Inch).filter(|_| is_length)
}

/// Parts of one width and thickness that are still to be cut.
#[derive(Clone, Debug, PartialEq)]
pub struct Section {
    /// Width and thickness in inches.
    pub size: [Option<Fraction>; 2],
    /// Which parts, in the order of `pieces`.
    pub parts: Vec<Id>,
    /// What the cuts are planned for.
    pub pieces: Vec<Pieces>,
}

impl Shop {
    /// What the finest mark that the maker reads stands under; 32 where nobody has said.
    pub fn smallest_fraction(&self) -> u32 {
        let said = self.settings.latest(SettingKey::SmallestFraction).and_then(|text| text.parse().ok());
        said.filter(|it| FRACTIONS.contains(it)).unwrap_or(32)
    }

    /// Pieces of a build that are still to be cut, and all of them.
    pub fn pieces_of(&self, build: Id) -> (u32, u32) {
        self.parts_of(build).iter().fold((0, 0), |(left, all), (_, it)| {
            (left.saturating_add(it.to_cut()), all.saturating_add(it.body.count))
        })
    }

    /// The parts list of a build, in the order in which it was written.
    pub fn parts_of(&self, build: Id) -> Vec<(Id, &Part)> {
        let mut parts: Vec<(Id, &Part)> =
            self.parts.iter().filter(|(_, it)| it.body.build == build).map(|(id, it)| (*id, it)).collect();
        parts.order_by_key(|(_, it)| it.order);
        parts
    }

    /// What of it is still to be cut, a width and thickness apart; parts without a length are left out.
    pub fn sections_of(&self, build: Id) -> Vec<Section> {
        let mut sections: Vec<Section> = Vec::new();
        for (id, part) in self.parts_of(build) {
            let ([Some(length), ..], 1..) = (part.inches, part.to_cut()) else { continue };
            let size = part.section();
            let at = sections.iter().position(|it| it.size == size).unwrap_or(sections.len());
            if at == sections.len() {
                sections.push(Section { size, parts: Vec::new(), pieces: Vec::new() });
            }
            if let Some(section) = sections.get_mut(at) {
                section.parts.push(id);
                section.pieces.push(Pieces { length, count: part.to_cut() });
            }
        }
        sections
    }
}

impl Section {
    /// Board feet in so much length of it: as it is, and as it is counted where less than an inch counts as one.
    /// None: its width or thickness is not known.
    pub fn board_feet(&self, length: Fraction) -> Option<[crate::measure::Quantity; 2]> {
        let [Some(width), Some(thickness)] = self.size else { return None };
        let size = crate::measure::board::Size { thickness, width, length };
        Some([size.true_volume(1)?, size.board_measure(1)?])
    }

    /// The cuts out of boards that are there or bought.
    ///
    /// # Errors
    /// As [`cutting::plan`].
    pub fn plan(&self, stock: &[cutting::Stock], kerf: Fraction) -> Result<cutting::Plan, cutting::NoPlan> {
        cutting::plan(&self.pieces, stock, kerf)
    }
}

#[cfg(test)]
mod tests {
    use crate::{fixture::fixture, measure::Fraction};

    #[test]
    fn parts_of_one_width_and_thickness_are_cut_from_the_same_boards() {
        let it = fixture(
            "
            build table
            part leg table 4 size 28in,2in,2in
            part rail table 2 size 40in,5.5in,0.75in
            part stretcher table 3 size 711.2mm,50.8mm,50.8mm cut 1
            part knob table 2
            ",
        );
        let shop = it.shop();
        let sections = shop.sections_of(it.id("table"));
        let of = |at: usize| sections[at].parts.clone();
        assert_eq!((of(0), of(1)), (vec![it.id("leg"), it.id("stretcher")], vec![it.id("rail")]));
        assert_eq!(sections[0].pieces[1].count, 2);
        assert_eq!(sections[0].pieces[0].length, sections[0].pieces[1].length);
        assert_eq!(shop.parts_of(it.id("table")).len(), 4);
        let feet = sections[1].board_feet(Fraction::of(96, 1).unwrap()).unwrap();
        assert_eq!(feet.map(|it| it.shown_trimmed()), ["2.75", "3.666667"]);
    }

    #[test]
    fn a_size_that_cant_be_is_said_and_not_counted() {
        let it = fixture("build table\npart leg table 4 size 0in,2in,2in\npart slab table 1 size 3kg,,");
        let shop = it.shop();
        assert!(shop.sections_of(it.id("table")).is_empty());
        assert_eq!(shop.odd.len(), 2);
    }
}
