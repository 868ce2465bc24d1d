//! Which rule a figure follows, with what it is about; and how a leaf was worked out, in numbers.

use super::{
    Hours, Why,
    overhead::Month,
    salvage::{By, Reached},
    sides::OneSide,
};
use crate::{
    journal::{
        Id,
        kinds::{Origin, Source, Use},
    },
    measure::{Money, Quantity, Ratio, Seconds, Unit},
};

/// The kinds of cost of a build, in the order of the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CostKind {
    /// Drawn from salvaged lots: what was paid, haul and its own reclaiming are all in it.
    Salvaged,
    /// Drawn from what was bought.
    Bought,
    /// Drawn from what was left of earlier builds.
    Offcut,
    /// Stock that is used up.
    Consumables,
    /// Paid for this build directly, and drives for it.
    Direct,
    /// Drawn from what a sponsor or client supplied.
    Supplied,
    /// Hours of the build itself.
    Labour,
    /// Wear, power and upkeep.
    Tools,
    /// What the shop costs whether or not anyone works.
    Overhead,
    /// Jigs, templates, design: its share of what all that will be made with them bear.
    OneOff,
}

impl CostKind {
    /// In the order of the sheet.
    pub const ALL: [CostKind; 10] = [
        CostKind::Salvaged,
        CostKind::Bought,
        CostKind::Offcut,
        CostKind::Consumables,
        CostKind::Direct,
        CostKind::Supplied,
        CostKind::Labour,
        CostKind::Tools,
        CostKind::Overhead,
        CostKind::OneOff,
    ];

    /// A draw goes by its use, consumable first, else by its lot's origin.
    pub fn of_stock(purpose: Use, origin: Origin) -> CostKind {
        match (purpose, origin) {
            (Use::Consumable, _) => CostKind::Consumables,
            (_, Origin::Salvaged) => CostKind::Salvaged,
            (_, Origin::Bought) => CostKind::Bought,
            (_, Origin::Supplied) => CostKind::Supplied,
            (_, Origin::Offcut) => CostKind::Offcut,
        }
    }

    /// Its name in an address.
    pub fn code(self) -> &'static str {
        match self {
            CostKind::Salvaged => "salvaged",
            CostKind::Bought => "bought",
            CostKind::Offcut => "offcut",
            CostKind::Consumables => "consumables",
            CostKind::Direct => "direct",
            CostKind::Supplied => "supplied",
            CostKind::Labour => "labour",
            CostKind::Tools => "tools",
            CostKind::Overhead => "overhead",
            CostKind::OneOff => "one-off",
        }
    }
}

/// What a figure is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rule {
    /// All parts of a build's cost, by kind.
    TrueCost,
    /// One kind of a build's cost.
    Kind {
        /// Which.
        kind: CostKind,
        /// The hours in it: worked for labour, else those in the timber.
        hours: Hours,
    },
    /// Hours of one stage, each at that person's rate on that day.
    Stage {
        /// Which.
        stage: Id,
        /// How long.
        hours: Hours,
    },
    /// Drawn from one lot or item.
    Drawn {
        /// From which.
        source: Source,
        /// How much, returns taken off; none where a quantity is missing.
        quantity: Option<Quantity>,
        /// In which unit.
        unit: Unit,
    },
    /// Money of lots bought for this build, whole, its direct expenses and paid labour.
    Spent,
    /// Money parts of what the build drew, its direct expenses and paid labour, by way of the bridge.
    UsedUp,
    /// The same, by kind.
    UsedUpByKind,
    /// Lots bought for this build and not drawn by it, in money.
    NotDrawn,
    /// Drawn from stock that was not bought for it, in money.
    OtherStock,
    /// One lot of these: what it cost in money, whole.
    LotMoney {
        /// The lot.
        lot: Id,
    },
    /// One lot bought for a build, in money, less what the build drew of it.
    LotNotDrawn {
        /// The lot.
        lot: Id,
    },
    /// Used up, and the rest of every kind on top of it: the true cost by way of the bridge.
    FromUsedUp,
    /// What is no money that was paid, of one kind.
    Rest {
        /// Which.
        kind: CostKind,
        /// The own hours in it.
        hours: Hours,
    },
    /// Direct expenses and the money part of drives.
    DirectMoney,
    /// Paid people's hours.
    PaidLabour {
        /// How long.
        hours: Hours,
    },
    /// Tax to be got back: apart from every cost.
    TaxBack,
    /// Own hours of a build: its own, and those in the timber it drew.
    OwnHours,
    /// Own hours that sit in drawn stock.
    InTheTimber,
    /// (net income + in kind − true cost + own labour) ÷ own hours.
    HourEarned {
        /// Own hours, those in the timber included.
        hours: Hours,
    },
    /// What one tool cost.
    Tool {
        /// Which.
        tool: Id,
        /// Run hours.
        hours: Quantity,
    },
    /// Money that one-off work here took, whole: the bridge takes it off again.
    OneOffMoney,
    /// Both sides of the true cost.
    Sides,
    /// One side of it.
    Side {
        /// Which.
        side: OneSide,
        /// Hours of this side, worked on the build.
        hours: Hours,
    },
    /// What came in, less tax in it and fees.
    Net,
    /// Supplied goods that were drawn, as income of the film.
    InKind,
    /// Still expected.
    StillExpected,
    /// Net + in kind + still expected − true cost so far − what the plan still costs.
    Outlook,
    /// What the plan still costs.
    ToCome {
        /// Person-hours still to do.
        hours: Hours,
    },
    /// Hours left of the steps, at today's rates.
    ToComeLabour {
        /// Person-hours still to do.
        hours: Hours,
    },
    /// What the shop costs by these hours.
    ToComeOverhead,
    /// Tools by these hours.
    ToComeTools,
    /// One-off work for the items still to be made.
    ToComeOneOff,
    /// What is to be bought for it, and what was and is not drawn yet.
    ToComeMaterials,
    /// Paid people and materials of what is to come: money.
    ToComeMoney,
    /// Used up and money to come, less what comes in: so much it stands above what it will fetch.
    AboveFetch,
    /// What is left of a lot in money, less the same thing new.
    AboveNew {
        /// The lot.
        lot: Id,
    },
    /// What one lot saved, among others.
    LotSaved {
        /// The lot.
        lot: Id,
        /// Own time at its rate; else free.
        at_rate: bool,
    },
    /// Tax that came in with it: owed, no income.
    TaxIn,
    /// Cost of one good item, one-off work in it.
    Item {
        /// Good ones made.
        good: u32,
    },
    /// What all items bear: a side of the true cost without one-off work.
    Batch,
    /// Spoilage beyond what is usual: a loss, not a cost of the good ones.
    Loss,
    /// What scrap brought.
    Scrap,
    /// Its share of the one-off work for each item.
    OneOffEach,
    /// Net income of the piece side less the cost of those sold.
    ProfitOnSold {
        /// How many.
        count: u32,
    },
    /// So many items at their cost.
    ItemsAtCost {
        /// How many.
        count: u32,
    },
    /// The same timber new, over every salvaged lot that a build drew.
    BuildInstead,
    /// Money, vehicle and wear in what it drew of salvaged lots.
    BuildTook,
    /// Own time in what it drew of salvaged lots.
    BuildOwnTime {
        /// How long.
        hours: Hours,
    },
    /// What the salvage of a build saved, own time free.
    BuildSavedFree,
    /// The same, own time at its rate.
    BuildSavedAtRate,
    /// What an hour of reclaiming paid, over all lots that a build drew.
    BuildPaidAnHour {
        /// Own hours in what was drawn.
        hours: Hours,
    },
    /// What lies on the shelf, in money and paid labour.
    OnTheShelf,
    /// What lies in open builds, in money and paid labour.
    UnderWay,
    /// Of this, one lot or item.
    Held {
        /// Which.
        source: Source,
        /// The kind that a draw of it is.
        kind: CostKind,
        /// How much; none where that can't be said.
        quantity: Option<Quantity>,
        /// In which unit.
        unit: Unit,
        /// Money of one, rounded to 10⁻⁶ for printing only.
        unit_cost: Option<Money>,
    },
    /// What the shop lost of its stock.
    StockLosses,
    /// Of this, what went for one reason.
    WrittenOff {
        /// Why.
        why: Why,
    },
    /// What all salvage saved.
    AcrossSaved {
        /// Put together by what.
        by: By,
        /// Own time at its rate; else free.
        at_rate: bool,
    },
    /// What the salvage from one place, or of one species, saved.
    GroupSaved {
        /// Put together by what.
        by: By,
        /// The first lot of it.
        of: Id,
        /// Own time at its rate; else free.
        at_rate: bool,
    },
    /// What an hour of reclaiming paid over many lots.
    AcrossAnHour {
        /// Put together by what.
        by: By,
        /// The first lot of a group; none: all.
        of: Option<Id>,
        /// Own hours in what was drawn.
        hours: Hours,
    },
    /// All that a lot cost.
    LotCost {
        /// The lot.
        lot: Id,
    },
    /// All that a lot cost, by link of its yield chain.
    ChainCost {
        /// The lot.
        lot: Id,
    },
    /// What it cost to get a lot to one link of its yield chain.
    LinkCost {
        /// The lot.
        lot: Id,
        /// Which link.
        at: Reached,
        /// Everybody's hours in it.
        hours: Hours,
    },
    /// Paid, fee, haul and haul hours: spread over what is expected usable.
    Fetched {
        /// The lot.
        lot: Id,
        /// What it is spread over; none where that can't be said.
        over: Option<Quantity>,
    },
    /// The other hours: spread over what is sorted good.
    Reclaimed {
        /// The lot.
        lot: Id,
        /// What it is spread over; none where that can't be said.
        over: Option<Quantity>,
    },
    /// A draw, down to what it took of each line of its lot.
    Draw {
        /// The draw.
        entry: Id,
    },
    /// The same timber new.
    BoughtInstead {
        /// The lot.
        lot: Id,
    },
    /// Money, paid helpers and vehicle in what was drawn.
    MoneyAndVehicle {
        /// The lot.
        lot: Id,
    },
    /// Own time at its rate in what was drawn.
    OwnTime {
        /// The lot.
        lot: Id,
        /// How long.
        hours: Hours,
    },
    /// Bought instead less money and vehicle: own time counts nothing.
    SavedTimeFree {
        /// The lot.
        lot: Id,
    },
    /// Bought instead less money, vehicle and own time at its rate.
    SavedAtRate {
        /// The lot.
        lot: Id,
    },
    /// (bought instead − money and vehicle) ÷ own hours of hauling and reclaiming.
    PaidAnHour {
        /// The lot.
        lot: Id,
        /// Own hours in what was drawn.
        hours: Hours,
    },
}

/// How a leaf was worked out: the numbers that the screen prints beside it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Working {
    /// Hours × rate.
    Hours {
        /// Who.
        person: Id,
        /// How long, pauses and overlaps out.
        seconds: Seconds,
        /// Money an hour on that day; none: a gap.
        rate: Option<Money>,
        /// Money at once, or own time.
        paid: bool,
    },
    /// Quantity × unit cost.
    Draw {
        /// How much; below zero for a return. None where it can't be said.
        quantity: Option<Quantity>,
        /// In which unit.
        unit: Unit,
        /// The part of the unit cost that this figure is about, rounded to 10⁻⁶ for printing only.
        unit_cost: Option<Money>,
        /// Own hours in it.
        hours: Hours,
    },
    /// Kilometres × rate, and tolls, or a share of them.
    Trip {
        /// There and back.
        km: Option<Quantity>,
        /// Money a kilometre on that day; none: a gap.
        rate: Option<Money>,
        /// Tolls and the like, of the whole trip.
        fee: Money,
        /// Parts borne here, and of how many.
        share: (u64, u64),
    },
    /// Price + fees + tax that stays − discount.
    Price {
        /// Before tax; none: a gap.
        paid: Option<Money>,
        /// Fees and freight.
        fees: Money,
        /// Tax that can't be got back.
        tax: Money,
        /// Discount.
        discount: Money,
    },
    /// Hours × what the shop costs in a month ÷ hours of a normal month.
    Overhead {
        /// How long.
        seconds: Seconds,
        /// What the month costs, and over how many hours.
        month: Month,
        /// The film's pool is in it.
        film: bool,
    },
    /// Run hours × rate.
    Tool {
        /// How long somebody was at it.
        seconds: Seconds,
        /// The share of it that the tool ran.
        duty: Ratio,
        /// Wear.
        wear: Money,
        /// Of the blade.
        blade: Money,
        /// Upkeep and power.
        beside: Money,
    },
    /// Its share of one-off work: `of × good ÷ run`.
    OneOff {
        /// The whole line.
        of: Money,
        /// Good ones made.
        good: u32,
        /// To be made in all.
        run: u32,
    },
    /// A share of what came in.
    Received {
        /// As it arrived.
        amount: Money,
        /// Tax in it.
        tax: Money,
        /// Kept back.
        fee: Money,
        /// Parts that are for this build, and of how many.
        share: (u64, u64),
    },
    /// An amount as typed.
    Amount,
    /// What a draw or figure took of a line of its lot: `of × part ÷ whole`.
    Share {
        /// The whole line.
        of: Money,
        /// Quantity taken.
        part: Quantity,
        /// Quantity that the line is spread over.
        whole: Quantity,
    },
    /// Quantity in the sold measure × price ÷ (1 − waste) × (1 + tax) + share of the delivery.
    BoughtInstead {
        /// In the measure in which new stock is sold.
        quantity: Quantity,
        /// In which unit.
        unit: Unit,
        /// Money per unit, before tax.
        price: Money,
        /// Wasted getting it ready to cut.
        waste: Ratio,
        /// Tax as a share.
        tax: Ratio,
        /// Share of the delivery.
        delivery: Money,
    },
}
