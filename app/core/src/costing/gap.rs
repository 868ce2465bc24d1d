//! What can't be worked out (gaps) and what is odd (flags): closed, with their data, without words.

use super::CostKind;
use crate::journal::{Id, kinds::Source, shop::Odd};

/// Something is missing; a figure with a gap shows what there is and says what it lacks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Gap {
    /// A person worked on a day without a rate: add one to the person.
    NoRate {
        /// Who.
        person: Id,
    },
    /// Somebody worked who is not there any more: no rate can be found.
    NoPerson {
        /// The work.
        entry: Id,
    },
    /// Kilometres were driven and there is no rate a kilometre: add one to the shop's choices.
    NoKmRate,
    /// Nothing says what was paid for this lot, or what a supplied one is worth: add it to the lot.
    NoPrice {
        /// The lot.
        lot: Id,
    },
    /// A quantity that can't be: correct the entry.
    NoQuantity {
        /// The lot or the draw.
        entry: Id,
    },
    /// An amount that can't be: correct the entry.
    NoAmount {
        /// The expense or trip.
        entry: Id,
    },
    /// Drawn before any of it ever came, so no unit cost is known: add the receipt.
    NeverReceived {
        /// The lot or item.
        source: Source,
    },
    /// Nobody has said how much of this salvaged lot will be usable and nothing is sorted:
    /// type an expected yield, or sort.
    NoYield {
        /// The lot.
        lot: Id,
    },
    /// No price of the same thing new: add one to the lot.
    NoNewPrice {
        /// The lot.
        lot: Id,
    },
    /// New stock is sold in the other measure, and this lot is known in one only: add the other.
    NoOtherMeasure {
        /// The lot.
        lot: Id,
    },
    /// Nothing was drawn from this lot, so nothing was saved or lost yet.
    NothingDrawn {
        /// The lot.
        lot: Id,
    },
    /// No own hours of hauling or reclaiming went into what was drawn.
    NoHours {
        /// The lot.
        lot: Id,
    },
    /// The shop has monthly costs, and nobody said over how many hours of a normal month they go: add them to
    /// the shop's choices.
    NoNormalHours {
        /// The film hours are missing; else all hours.
        film: bool,
    },
    /// A tool ran and nothing says what it cost: add it to the tool.
    NoToolPrice {
        /// The tool.
        tool: Id,
    },
    /// A tool ran and nobody said how many hours it lasts: add it to the tool.
    NoToolLife {
        /// The tool.
        tool: Id,
    },
    /// A tool draws power and nobody said what a kWh costs: add it to the shop's choices.
    NoKwhPrice,
    /// Nothing good was made yet, so nothing can be said of one item.
    NothingMade {
        /// The build.
        build: Id,
    },
    /// Nobody worked on it without pay, so an hour can't have earned anything.
    NoOwnHours {
        /// The build.
        build: Id,
    },
    /// A kind of cost that there are no entries for yet: `Tools` or `Overhead`.
    NotKept {
        /// Which.
        kind: CostKind,
    },
    /// Nothing is planned for it, so what it still costs can't be said: add its steps.
    NoSteps {
        /// The build.
        build: Id,
    },
    /// Nobody has said how long a step takes: add it to the step.
    NoEstimate {
        /// The step.
        step: Id,
    },
    /// Nobody is named for a step, so its hours have no rate: add who to the step.
    NobodyNamed {
        /// The step.
        step: Id,
    },
    /// Something is to be bought, and nothing says what it costs: add a price to the line.
    NoBuyPrice {
        /// The line.
        line: Id,
    },
    /// What came in is not kept yet, so what an hour earned can't be said.
    IncomeNotKept,
    /// The numbers are too large to work this out.
    OutOfRange {
        /// The entry.
        entry: Id,
    },
}

/// Odd, and said so. The figure counts it all the same, in the way the doc says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Flag {
    /// Another stretch of the same person, begun later, took time from this one.
    Overlap {
        /// The stretch that was cut.
        entry: Id,
    },
    /// A clock: its hours are those up to the moment of the figure.
    Running {
        /// The clock.
        entry: Id,
    },
    /// More was drawn than was on the shelf: the missing part is costed at the last unit cost until the
    /// next receipt settles it.
    NegativeShelf {
        /// The item.
        item: Id,
        /// The draw that is not settled yet.
        draw: Id,
    },
    /// More was drawn from this lot than it held: so more was there, and its unit cost falls.
    Overdrawn {
        /// The lot.
        lot: Id,
    },
    /// Comes back from a draw that isn't there: not counted.
    ReturnOfNothing {
        /// The return.
        entry: Id,
    },
    /// More came back than was drawn: the rest is not counted.
    ReturnsTooMuch {
        /// The return.
        entry: Id,
    },
    /// Stock that goes round in a circle between lots: what this draw would add is left out.
    Circle {
        /// The draw.
        entry: Id,
    },
    /// More ran than it was to last: wear has stopped at its price.
    WornOut {
        /// The tool.
        tool: Id,
        /// The run that went beyond.
        entry: Id,
    },
    /// The power that tools bear comes to more than the bill that it is in: nothing of that bill is left for the shop,
    /// and what is more stays in the tools.
    MeteredBeyondBill {
        /// The monthly cost.
        cost: Id,
    },
    /// More pieces left than were made: all count as they were handed over, and none is left.
    HandedBeyond {
        /// The build.
        build: Id,
        /// By how many.
        more: u32,
    },
    /// Dated after the day that the figure is for: not counted.
    Later {
        /// The entry.
        entry: Id,
    },
    /// The expected yield is the median of the maker's own sorted lots from the same place.
    YieldFromHistory {
        /// The lot.
        lot: Id,
        /// How many sorted lots it is the median of.
        lots: usize,
    },
    /// The expected yield is that of what is sorted of the lot itself.
    YieldFromItself {
        /// The lot.
        lot: Id,
    },
    /// The fold found it odd.
    Odd {
        /// The entry.
        entry: Id,
        /// What was found.
        odd: Odd,
    },
}
