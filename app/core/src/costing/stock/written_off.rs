//! What left stock without a build: counted short, thrown out, given away. The shop bears it.
//!
//! Not here: at what cost (`pooled`, `named_lot`), and the statement of it all (`losses`).

use super::{Found, Looked, Mishap};
use crate::{
    costing::{Gap, Parts},
    journal::{
        Id,
        kinds::{Origin, ShelfState},
        order::Order,
        shop::{Look, Lot},
    },
    measure::Quantity,
};

/// Why the shop bears it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Why {
    /// The count is not what the books said.
    Counted,
    /// Spoiled in store, or not wanted any more.
    ThrownOut,
    /// Given away.
    Given,
    /// What came later for stock that builds had drawn that are closed, with none of it left.
    Closed,
    /// A lot of which nothing was usable.
    NothingUsable,
}

impl Why {
    /// In the order of the sheet.
    pub const ALL: [Why; 5] = [Why::Counted, Why::ThrownOut, Why::Given, Why::NothingUsable, Why::Closed];

    /// Its name in an address.
    pub fn code(self) -> &'static str {
        match self {
            Why::Counted => "counted",
            Why::ThrownOut => "thrown-out",
            Why::Given => "given",
            Why::Closed => "closed",
            Why::NothingUsable => "nothing-usable",
        }
    }
}

/// One line of it.
#[derive(Clone, Debug, PartialEq)]
pub struct WrittenOff {
    /// The entry that says so.
    pub entry: Id,
    /// Why.
    pub why: Why,
    /// How much is gone; below zero: so much was found.
    pub quantity: Quantity,
    /// What it cost; below zero likewise.
    pub parts: Parts,
    /// Something can be said of its cost.
    pub known: bool,
    /// What its cost lacks.
    pub gaps: Vec<Gap>,
}

impl WrittenOff {
    pub(crate) fn of(entry: Id, why: Why, quantity: Quantity, parts: Parts) -> WrittenOff {
        WrittenOff { entry, why, quantity, parts, known: true, gaps: Vec::new() }
    }
}

/// What looks at a lot by itself say.
#[derive(Clone, Debug, Default)]
pub(crate) struct Seen {
    /// Counted beyond what the books said: so much more was there.
    pub more: Quantity,
    /// Gone without a build; costs come later.
    pub gone: Vec<WrittenOff>,
    /// Culled as nobody could expect.
    pub mishaps: Vec<Mishap>,
}

impl Seen {
    /// All that is gone by looks at the shelf.
    pub(crate) fn quantity(&self) -> Quantity {
        self.gone.iter().fold(Quantity::ZERO, |sum, gone| sum.plus(gone.quantity))
    }
}

/// Goes through the looks at a lot in their order; each is held against what the books said by then. Of a salvaged lot
/// only what is sorted can be counted. `draws`: how much went when; below zero where it came back.
pub(crate) fn seen(lot: &Lot, looks: &[&Look], sorts: &[Looked], draws: &[(Order, Quantity)]) -> Seen {
    let mut seen = Seen::default();
    for look in looks {
        let Some(quantity) = look.quantity else { continue };
        let why = match look.state {
            ShelfState::Empty => continue,
            ShelfState::Counted => Why::Counted,
            ShelfState::ThrownOut => Why::ThrownOut,
            ShelfState::Given => Why::Given,
        };
        let gone = if why == Why::Counted {
            let was = by_then(lot, look, sorts, draws).plus(seen.more).minus(seen.quantity());
            seen.more = seen.more.plus(quantity.minus(was).max(Quantity::ZERO));
            was.minus(quantity).max(Quantity::ZERO)
        } else {
            quantity
        };
        if !gone.is_zero() {
            seen.gone.push(WrittenOff::of(look.entry(), why, gone, Parts::ZERO));
        }
    }
    seen
}

/// Usable and there when somebody looked, by what was found and drawn up to then; below zero where more was drawn.
fn by_then(lot: &Lot, look: &Look, sorts: &[Looked], draws: &[(Order, Quantity)]) -> Quantity {
    let mut found = Found::default();
    for sort in sorts.iter().filter(|sort| sort.order() < look.order) {
        found.look(sort, lot.rough);
    }
    let usable = if lot.origin == Origin::Salvaged {
        found.there_good()
    } else {
        found.there_good().plus(found.there_unsorted(lot.rough))
    };
    let before = draws.iter().filter(|(order, _)| was_before(order, &look.order));
    let taken = before.fold(Quantity::ZERO, |sum, (_, quantity)| sum.plus(*quantity));
    usable.minus(taken)
}

/// Draws of the day of a look come before it; where both have a time, that decides.
fn was_before(draw: &Order, look: &Order) -> bool {
    match (draw.time, look.time) {
        (Some(drawn), Some(looked)) if draw.day == look.day => drawn <= looked,
        _ => draw < look,
    }
}
