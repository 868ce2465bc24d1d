//! What a figure lacks and what is odd about it, in sentences, with the place where it can be put right.
//!
//! One match for each, without a wildcard: a new gap or flag points here.

use super::{Tongue, cost};
use crate::shell::Place;
use benchslate_core::{
    costing::{CostKind, Flag, Gap},
    journal::{
        Id, Shop,
        kinds::Source,
        shop::{Field, Odd},
    },
};

/// A gap or a flag as it is told.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// What it is.
    pub says: String,
    /// What puts it right, or how it is counted meanwhile.
    pub how: &'static str,
    /// Where.
    pub place: Option<Place>,
}

/// In the place of a figure, two words or three.
pub fn short(gap: &Gap) -> &'static str {
    match gap {
        Gap::NoRate { .. } => "no rate",
        Gap::NoPerson { .. } => "nobody there",
        Gap::NoKmRate => "no rate a km",
        Gap::NoPrice { .. } => "no price",
        Gap::NoQuantity { .. } => "no quantity",
        Gap::NoAmount { .. } => "no amount",
        Gap::NeverReceived { .. } => "never came in",
        Gap::NoYield { .. } => "no yield",
        Gap::NoNewPrice { .. } => "no price new",
        Gap::NoOtherMeasure { .. } => "no second measure",
        Gap::NothingDrawn { .. } => "nothing drawn",
        Gap::NoHours { .. } => "no hours",
        Gap::NotKept { .. } => "not kept yet",
        Gap::IncomeNotKept => "no income entry",
        Gap::NoNormalHours { .. } => "no hours a month",
        Gap::NoToolPrice { .. } => "no price",
        Gap::NoToolLife { .. } => "no life",
        Gap::NoKwhPrice => "no price a kWh",
        Gap::NothingMade { .. } => "none made yet",
        Gap::NoOwnHours { .. } => "no own hours",
        Gap::OutOfRange { .. } => "too large",
    }
}

/// A gap: what is missing, and where it is added.
pub fn gap(gap: &Gap, shop: &Shop) -> Told {
    let entry = |entry: &Id| Some(Place::Entry(*entry));
    let lot = |lot: &Id| name(shop, Source::Lot(*lot));
    let told = |says: String, how: &'static str, place: Option<Place>| Told { says, how, place };
    match gap {
        Gap::NoRate { person } => told(
            format!("No rate for {}", who(shop, *person)),
            "Say what an hour costs, and from which day.",
            Some(Place::Person(Some(*person))),
        ),
        Gap::NoPerson { entry: it } => {
            told("Hours of somebody who is not there".into(), "Say whose they are.", entry(it))
        }
        Gap::NoKmRate => {
            told("No rate a kilometre".into(), "Say what a kilometre costs.", Some(Place::Choices))
        }
        Gap::NoPrice { lot: it } => {
            told(format!("No price for {}", lot(it)), "Say what was paid; 0 is a price too.", entry(it))
        }
        Gap::NoQuantity { entry: it } => told(
            format!("No quantity that can be counted: {}", entry_name(shop, *it)),
            "Correct the entry.",
            entry(it),
        ),
        Gap::NoAmount { entry: it } => told(
            format!("No amount that can be counted: {}", entry_name(shop, *it)),
            "Correct the entry.",
            entry(it),
        ),
        Gap::NeverReceived { source } => told(
            format!("{} was used before any came in", name(shop, *source)),
            "Add the lot that it came with.",
            Some(Place::NewLot),
        ),
        Gap::NoYield { lot: it } => told(
            format!("No yield for {}", lot(it)),
            "Sort some of it, or say how much is expected to be usable.",
            Some(Place::Sort(*it)),
        ),
        Gap::NoNewPrice { lot: it } => told(
            format!("No price new for {}", lot(it)),
            "Note what the same thing costs new, and where.",
            entry(it),
        ),
        Gap::NoOtherMeasure { lot: it } => told(
            format!("{} is known in one measure only", lot(it)),
            "New stock is sold in the other: add it.",
            entry(it),
        ),
        Gap::NothingDrawn { lot: it } => told(
            format!("Nothing drawn from {} yet", lot(it)),
            "Saving is counted on what is used.",
            Some(Place::Use(Some(*it))),
        ),
        Gap::NoHours { lot: it } => told(
            format!("No own hours on {}", lot(it)),
            "Hauling and reclaiming hours go here.",
            Some(Place::Hours),
        ),
        Gap::NotKept { kind: CostKind::Overhead } => told(
            not_kept(CostKind::Overhead).into(),
            "Add what the shop costs every month.",
            Some(Place::Shop),
        ),
        Gap::NotKept { kind } => {
            told(not_kept(*kind).into(), "Add the tools that wear, and where they run.", Some(Place::Shop))
        }
        Gap::IncomeNotKept => {
            told("What came in for it".into(), "Write down what was paid, or what is expected.", None)
        }
        Gap::NoNormalHours { film } => told(
            if *film { "Film hours of a normal month" } else { "Hours of a normal month" }.into(),
            "Say how many hours the monthly costs go over.",
            Some(Place::Choices),
        ),
        Gap::NoToolPrice { tool: it } => told(
            format!("No price for {}", tool_name(shop, *it)),
            "Say what it cost; 0 is a price too.",
            entry(it),
        ),
        Gap::NoToolLife { tool: it } => told(
            format!("No life for {}", tool_name(shop, *it)),
            "Say how many run hours it lasts.",
            entry(it),
        ),
        Gap::NoKwhPrice => told("No price a kWh".into(), "Say what a kWh costs.", Some(Place::Choices)),
        Gap::NothingMade { .. } => {
            told("Nothing good made yet".into(), "Say how many are finished, and how many spoiled.", None)
        }
        Gap::NoOwnHours { .. } => {
            told("No own hours".into(), "Hours of people who are not paid.", Some(Place::Hours))
        }
        Gap::OutOfRange { entry: it } => {
            told(format!("Too large to work out: {}", entry_name(shop, *it)), "Correct the entry.", entry(it))
        }
    }
}

/// A flag: what is odd, and how it is counted.
pub fn flag(flag: &Flag, shop: &Shop, tongue: &Tongue) -> Told {
    let lot = |lot: &Id| name(shop, Source::Lot(*lot));
    let at =
        |entry: &Id, says: String, how: &'static str| Told { says, how, place: Some(Place::Entry(*entry)) };
    match flag {
        Flag::Overlap { entry } => at(
            entry,
            format!("{} overlap", stretch_name(shop, tongue, *entry)),
            "The shared time counts once, in the stretch begun later.",
        ),
        Flag::Running { entry } => {
            at(entry, format!("{}: the clock runs", stretch_name(shop, tongue, *entry)), "Counted up to now.")
        }
        Flag::NegativeShelf { item, draw } => at(
            draw,
            format!("More {} used than there was", name(shop, Source::Item(*item))),
            "At the last cost of one, until the next lot comes in.",
        ),
        Flag::Overdrawn { lot: it } => Told {
            says: format!("More drawn from {} than it held", lot(it)),
            how: "So more was there, and each costs less.",
            place: Some(Place::Lot(*it)),
        },
        Flag::ReturnOfNothing { entry } => {
            at(entry, "Comes back from a draw that is not there".into(), "Not counted.")
        }
        Flag::ReturnsTooMuch { entry } => {
            at(entry, "More came back than was drawn".into(), "The rest is not counted.")
        }
        Flag::Circle { entry } => {
            at(entry, "Two lots feed each other".into(), "What this draw would add is left out.")
        }
        Flag::WornOut { tool: it, entry } => at(
            entry,
            format!("{} ran longer than it was to last", tool_name(shop, *it)),
            "Its wear has stopped at its price; upkeep and power go on.",
        ),
        Flag::Later { entry } => {
            at(entry, format!("{}: dated after today", entry_name(shop, *entry)), "Not counted yet.")
        }
        Flag::YieldFromHistory { lot: it, lots } => Told {
            says: format!("Expected yield of {}", lot(it)),
            how: if *lots == 1 {
                "As your one sorted lot from the same place."
            } else {
                "The middle of your own sorted lots from the same place."
            },
            place: Some(Place::Sort(*it)),
        },
        Flag::YieldFromItself { lot: it } => Told {
            says: format!("Expected yield of {}", lot(it)),
            how: "As what is sorted of it so far.",
            place: Some(Place::Sort(*it)),
        },
        Flag::Odd { entry, odd: it } => {
            at(entry, format!("{}: {}", entry_name(shop, *entry), odd(it)), how_odd(it))
        }
    }
}

fn not_kept(kind: CostKind) -> &'static str {
    match kind {
        CostKind::Tools => "Tool wear and power",
        CostKind::Overhead => "Rent and what else the shop costs",
        CostKind::Salvaged
        | CostKind::Bought
        | CostKind::Offcut
        | CostKind::Consumables
        | CostKind::Direct
        | CostKind::Supplied
        | CostKind::OneOff
        | CostKind::Labour => cost::kind(kind),
    }
}

fn odd(odd: &Odd) -> &'static str {
    match odd {
        Odd::Newer => "written by a newer version",
        Odd::Unreadable => "can\u{2019}t be read",
        Odd::OutOfRange(field) => match field {
            Field::Quantity => "a quantity that can\u{2019}t be",
            Field::Money => "an amount that can\u{2019}t be",
            Field::Rate => "a rate that can\u{2019}t be",
            Field::Share => "a share that can\u{2019}t be",
            Field::Distance => "a distance that can\u{2019}t be",
            Field::Hours => "hours that can\u{2019}t be",
        },
        Odd::EndsBeforeStart => "ends before it begins",
        Odd::LinesBeyondTotal => "its lines come to more than was paid",
        Odd::SameAlready => "the two are one item already",
        Odd::UnitDoesNotFit => "the unit doesn\u{2019}t fit the stock",
        Odd::Lost { .. } => "names something that is struck out",
    }
}

fn how_odd(odd: &Odd) -> &'static str {
    match odd {
        Odd::Newer => "Not counted here; a newer version counts it.",
        Odd::EndsBeforeStart => "Counts no hours.",
        Odd::OutOfRange(_) => "That part is not counted.",
        Odd::Unreadable | Odd::UnitDoesNotFit => "Not counted.",
        Odd::LinesBeyondTotal => "The lines are counted.",
        Odd::SameAlready => "Says nothing new.",
        Odd::Lost { .. } => "Counted without it.",
    }
}

fn tool_name(shop: &Shop, tool: Id) -> String {
    shop.tools.get(&tool).map_or_else(|| "a tool that is not there".to_owned(), |it| it.name.clone())
}

fn who(shop: &Shop, person: Id) -> String {
    shop.people.get(&person).map_or_else(|| cost::somebody().to_owned(), |it| it.name.clone())
}

/// A lot or an item by its name.
pub fn name(shop: &Shop, source: Source) -> String {
    let name = match source {
        Source::Lot(id) => shop.lots.get(&id).map(|lot| lot.name.clone()),
        Source::Item(id) => shop.item(id).map(|item| item.name.clone()),
    };
    name.filter(|name| !name.is_empty()).unwrap_or_else(|| "stock that is not there".to_owned())
}

fn stretch_name(shop: &Shop, tongue: &Tongue, entry: Id) -> String {
    let stretch = shop.stretches.iter().find(|stretch| stretch.entry() == entry);
    stretch.map_or_else(
        || "A stretch".to_owned(),
        |stretch| format!("{}, {}", tongue.day(stretch.order.day), who(shop, stretch.person)),
    )
}

/// What an entry is called in a sentence about it.
fn entry_name(shop: &Shop, entry: Id) -> String {
    let draw = || shop.draws.iter().find(|draw| draw.entry() == entry).map(|draw| name(shop, draw.from));
    let expense =
        || shop.expenses.iter().find(|it| it.order.entry == entry).map(|expense| expense.what.clone());
    let lot = || shop.lots.get(&entry).map(|lot| lot.name.clone());
    let trip = || shop.trips.iter().any(|trip| trip.order.entry == entry).then(|| "a drive".to_owned());
    let stretch = || {
        let it = shop.stretches.iter().find(|stretch| stretch.entry() == entry)?;
        Some(format!("{}\u{2019}s hours", who(shop, it.person)))
    };
    lot()
        .or_else(draw)
        .or_else(expense)
        .or_else(trip)
        .or_else(stretch)
        .unwrap_or_else(|| "an entry".to_owned())
}
