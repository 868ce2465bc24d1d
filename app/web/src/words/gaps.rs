//! What a figure lacks and what is odd about it, in sentences, with the place where it can be put right.
//!
//! One match for each, without a wildcard: a new gap or flag points here.

use super::{Tongue, common, cost};
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
        Gap::NoSteps { .. } => "no steps yet",
        Gap::NoEstimate { .. } => "no estimate",
        Gap::NobodyNamed { .. } => "nobody named",
        Gap::NoBuyPrice { .. } => "no price",
        Gap::NoOwnHours { .. } => "no own hours",
        Gap::OutOfRange { .. } => "too large",
    }
}

/// A gap: what is missing, and where it is added.
pub fn gap(gap: &Gap, shop: &Shop) -> Told {
    Told { says: lacking(gap, shop), how: how_to_add(gap), place: where_to_add(gap) }
}

/// What is missing.
fn lacking(gap: &Gap, shop: &Shop) -> String {
    let lot = |lot: &Id| name(shop, Source::Lot(*lot));
    match gap {
        Gap::NoRate { person } => format!("No rate for {}", common::whom(&who(shop, *person))),
        Gap::NoPerson { .. } => "Hours of somebody who is not there".into(),
        Gap::NoKmRate => "No rate a kilometre".into(),
        Gap::NoPrice { lot: it } => format!("No price for {}", lot(it)),
        Gap::NoQuantity { entry } => {
            format!("No quantity that can be counted: {}", entry_name(shop, *entry))
        }
        Gap::NoAmount { entry } => format!("No amount that can be counted: {}", entry_name(shop, *entry)),
        Gap::NeverReceived { source } => format!("{} was used before any came in", name(shop, *source)),
        Gap::NoYield { lot: it } => format!("No yield for {}", lot(it)),
        Gap::NoNewPrice { lot: it } => format!("No price new for {}", lot(it)),
        Gap::NoOtherMeasure { lot: it } => format!("{} is known in one measure only", lot(it)),
        Gap::NothingDrawn { lot: it } => format!("Nothing drawn from {} yet", lot(it)),
        Gap::NoHours { lot: it } => format!("No own hours on {}", lot(it)),
        Gap::NotKept { kind } => not_kept(*kind).into(),
        Gap::IncomeNotKept => "What came in for it".into(),
        Gap::NoNormalHours { film: true } => "Film hours of a normal month".into(),
        Gap::NoNormalHours { film: false } => "Hours of a normal month".into(),
        Gap::NoToolPrice { tool } => format!("No price for {}", tool_name(shop, *tool)),
        Gap::NoToolLife { tool } => format!("No life for {}", tool_name(shop, *tool)),
        Gap::NoKwhPrice => "No price a kWh".into(),
        Gap::NothingMade { .. } => "Nothing good made yet".into(),
        Gap::NoSteps { .. } => "No steps yet".into(),
        Gap::NoEstimate { step } => format!("No estimate for {}", step_name(shop, *step)),
        Gap::NobodyNamed { step } => format!("Nobody is named for {}", step_name(shop, *step)),
        Gap::NoBuyPrice { line } => format!("No price for {}", bought_name(shop, *line)),
        Gap::NoOwnHours { .. } => "No own hours".into(),
        Gap::OutOfRange { entry } => format!("Too large to work out: {}", entry_name(shop, *entry)),
    }
}

/// What puts it right.
fn how_to_add(gap: &Gap) -> &'static str {
    match gap {
        Gap::NoRate { .. } => "Say what an hour costs, and from which day.",
        Gap::NoPerson { .. } => "Say whose they are.",
        Gap::NoKmRate => "Say what a kilometre costs; 0 where fuel is kept by its receipts.",
        Gap::NoPrice { .. } => "Say what was paid; 0 is a price too.",
        Gap::NoQuantity { .. } | Gap::NoAmount { .. } | Gap::OutOfRange { .. } => "Correct the entry.",
        Gap::NeverReceived { .. } => "Add the lot that it came with.",
        Gap::NoYield { .. } => "Sort some of it, or say how much is expected to be usable.",
        Gap::NoNewPrice { .. } => "Note what the same thing costs new, and where.",
        Gap::NoOtherMeasure { .. } => "New stock is sold in the other: add it.",
        Gap::NothingDrawn { .. } => "Saving is counted on what is used.",
        Gap::NoHours { .. } => "Hauling and reclaiming hours go here.",
        Gap::NotKept { kind: CostKind::Overhead } => "Add what the shop costs every month.",
        Gap::NotKept { .. } => "Add the tools that wear, and where they run.",
        Gap::IncomeNotKept => "Write down what was paid, or what is expected.",
        Gap::NoNormalHours { .. } => "Say how many hours the monthly costs go over.",
        Gap::NoToolPrice { .. } => "Say what it cost; 0 is a price too.",
        Gap::NoToolLife { .. } => "Say how many run hours it lasts.",
        Gap::NoKwhPrice => "Say what a kWh costs.",
        Gap::NoSteps { .. } => "Say what is still to be done, or take it over from an earlier build.",
        Gap::NoEstimate { .. } => "Say what it usually takes.",
        Gap::NobodyNamed { .. } => "Say who does it.",
        Gap::NoBuyPrice { .. } => "Say what it is thought to cost.",
        Gap::NothingMade { .. } => "Say how many are finished, and how many spoiled.",
        Gap::NoOwnHours { .. } => "Hours of people who are not paid.",
    }
}

/// Where; none where more than one place would do.
fn where_to_add(gap: &Gap) -> Option<Place> {
    Some(match gap {
        Gap::NoRate { person } => Place::Person(Some(*person)),
        Gap::NoPerson { entry }
        | Gap::NoQuantity { entry }
        | Gap::NoAmount { entry }
        | Gap::OutOfRange { entry } => Place::Entry(*entry),
        Gap::NoPrice { lot } | Gap::NoNewPrice { lot } | Gap::NoOtherMeasure { lot } => Place::Entry(*lot),
        Gap::NoToolPrice { tool } | Gap::NoToolLife { tool } => Place::Entry(*tool),
        Gap::NoKmRate | Gap::NoNormalHours { .. } | Gap::NoKwhPrice => Place::Choices,
        Gap::NeverReceived { .. } => Place::NewLot,
        Gap::NoYield { lot } => Place::Sort(*lot),
        Gap::NothingDrawn { lot } => Place::Use(Some(*lot)),
        Gap::NoHours { .. } | Gap::NoOwnHours { .. } => Place::Hours,
        Gap::NotKept { .. } => Place::Shop,
        Gap::NoSteps { build } => Place::Steps(*build),
        Gap::NoEstimate { step } | Gap::NobodyNamed { step } => Place::Entry(*step),
        Gap::NoBuyPrice { line } => Place::Entry(*line),
        Gap::IncomeNotKept | Gap::NothingMade { .. } => return None,
    })
}

fn handed_beyond(shop: &Shop, build: Id, more: u32) -> Told {
    let of = shop.builds.get(&build).map_or("a build", |it| it.title.as_str());
    Told {
        says: format!("{more} more left than were made of {of}"),
        how: "All are counted. Say what was made, or strike out what was handed over twice.",
        place: Some(Place::Money(build)),
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
        Flag::MeteredBeyondBill { cost } => at(
            cost,
            format!("Power of the tools comes to more than {}", monthly_name(shop, *cost)),
            "Nothing is left of the bill for the shop; the tools bear what they drew. Look at the kWh or the bill.",
        ),
        Flag::HandedBeyond { build, more } => handed_beyond(shop, *build, *more),
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

fn step_name(shop: &Shop, step: Id) -> &str {
    shop.steps.get(&step).map_or("a step", |it| it.body.title.as_str())
}

fn bought_name(shop: &Shop, line: Id) -> String {
    let line = shop.buy_lines.iter().find(|it| it.entry() == line);
    line.map_or_else(
        || "something to buy".to_owned(),
        |it| it.item.map_or_else(|| it.what.clone(), |item| name(shop, Source::Item(item))),
    )
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
        Odd::OtherCurrency => "another currency than the one chosen first",
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
        Odd::OtherCurrency => "Renames nothing: all amounts stay in the first.",
        Odd::Lost { .. } => "Counted without it.",
    }
}

fn monthly_name(shop: &Shop, cost: Id) -> &str {
    shop.monthly.iter().find(|it| it.order.entry == cost).map_or("its bill", |it| it.what.as_str())
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
        |stretch| format!("{}, {}", tongue.day(stretch.order.day), common::whom(&who(shop, stretch.person))),
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
        Some(format!("{} hours", common::whose(&who(shop, it.person))))
    };
    lot()
        .or_else(draw)
        .or_else(expense)
        .or_else(trip)
        .or_else(stretch)
        .unwrap_or_else(|| "an entry".to_owned())
}
