//! What the fold found odd in an entry. Never a refusal: what was written stays.

use super::Shop;
use crate::journal::{
    Body, Id,
    kinds::{Bearer, Due, Source},
};
use crate::measure::Map;

/// A field of a stored body.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Field {
    /// A quantity.
    Quantity,
    /// Money.
    Money,
    /// A rate of pay.
    Rate,
    /// A share between 0 and 1.
    Share,
    /// Kilometres.
    Distance,
    /// Hours worked.
    Hours,
}

/// Odd, and said so beside every figure that it touches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Odd {
    /// Written by a newer version of the program: not counted.
    Newer,
    /// Can't be read as its kind says: not counted.
    Unreadable,
    /// A number beyond the limits of `measure::limits`, or negative where it can't be: that field is not counted.
    OutOfRange(Field),
    /// The end lies before the start: no hours.
    EndsBeforeStart,
    /// The unit that was typed can't be turned into the unit of the stock: not counted.
    UnitDoesNotFit,
    /// The lines of a receipt come to more than was paid.
    LinesBeyondTotal,
    /// Two items are said to be one that are one already, or one is said to be itself: says nothing new.
    SameAlready,
    /// Another currency than the one that was chosen first: not counted in.
    OtherCurrency,
    /// It names an entry that isn't there or is struck out.
    Lost {
        /// The missing entry.
        what: Id,
    },
}

/// What a body names that isn't there, or is struck out.
pub(super) fn lost(shop: &Shop, body: &Body) -> impl Iterator<Item = Odd> + use<> {
    let named = match body {
        Body::Stretch(it) => {
            let person = (!shop.people.contains_key(&it.person)).then_some(it.person);
            let stage = (!shop.stages.contains_key(&it.stage)).then_some(it.stage);
            [person, stage, lost_bearer(shop, it.bearer)]
        }
        Body::Draw(it) => {
            let source = (!shop.has_source(it.from)).then_some(match it.from {
                Source::Lot(id) | Source::Item(id) => id,
            });
            [lost_bearer(shop, it.bearer), source, None]
        }
        Body::Sort(it) => [(!shop.lots.contains_key(&it.lot)).then_some(it.lot), None, None],
        Body::Find(it) => [it.lot.filter(|lot| !shop.lots.contains_key(lot)), None, None],
        Body::Cull(it) => [(!shop.lots.contains_key(&it.lot)).then_some(it.lot), None, None],
        Body::Expense(it) => [lost_bearer(shop, it.bearer), lost_in(&shop.receipts, it.receipt), None],
        Body::Lot(it) => [lost_in(&shop.receipts, it.receipt), None, None],
        Body::Receipt(it) => [it.bearer.and_then(|bearer| lost_bearer(shop, bearer)), None, None],
        Body::ByProduct(it) => [lost_bearer(shop, it.of), None, None],
        Body::ToolHours(it) => [
            lost_in(&shop.tools, Some(it.tool)),
            lost_in(&shop.stages, Some(it.stage)),
            lost_bearer(shop, it.bearer),
        ],
        Body::Blade(it) => [lost_in(&shop.tools, Some(it.tool)), None, None],
        Body::BuyLine(it) => {
            let item = it.item.filter(|id| !shop.has_source(Source::Item(*id)));
            [item, lost_in(&shop.builds, it.for_build), None]
        }
        Body::Made(it) => [lost_in(&shop.builds, Some(it.build)), None, None],
        Body::HandOver(it) => [lost_in(&shop.builds, Some(it.build)), None, None],
        Body::Film(it) => [lost_in(&shop.builds, Some(it.build)), None, None],
        Body::Step(it) => {
            [lost_in(&shop.builds, Some(it.build)), lost_in(&shop.stages, Some(it.stage)), None]
        }
        Body::FreeDay(it) => [lost_in(&shop.people, Some(it.person)), None, None],
        Body::Part(it) => [lost_in(&shop.builds, Some(it.build)), None, None],
        Body::Shot(it) => [lost_in(&shop.builds, Some(it.build)), lost_in(&shop.steps, it.step), None],
        Body::Take(it) => [lost_in(&shop.shots, Some(it.shot)), None, None],
        Body::CardCopied(it) => [lost_in(&shop.builds, Some(it.build)), None, None],
        Body::Chapter(it) => [lost_in(&shop.builds, Some(it.build)), None, None],
        Body::Due(it) => lost_of_due(shop, it),
        Body::Tool(it) => [lost_in(&shop.outsiders, it.by), None, None],
        Body::SeriesEnd(it) => [lost_in(&shop.builds, Some(it.build)), None, None],
        Body::BuildState(it) => [lost_in(&shop.builds, Some(it.build)), None, None],
        Body::Retired(it) => [(!shop.stands(it.what)).then_some(it.what), None, None],
        Body::Same(it) => {
            let missing = |id: Id| (!shop.has_source(Source::Item(id))).then_some(id);
            [missing(it.item), missing(it.is), None]
        }
        Body::MonthlyCost(_)
        | Body::Income(_)
        | Body::Trip(_)
        | Body::Shelf(_)
        | Body::Note(_)
        // Whether its stretch still stands is asked where it is shown: an act on work changes no other entry.
        | Body::Drying(_)
        | Body::Photo(_)
        | Body::Outsider(_)
        | Body::Person(_)
        | Body::Stage(_)
        | Body::Build(_)
        | Body::Item(_)
        | Body::Resource(_)
        | Body::Setting(_) => [None; 3],
    };
    named.into_iter().flatten().map(|what| Odd::Lost { what })
}

fn lost_of_due(shop: &Shop, it: &Due) -> [Option<Id>; 3] {
    let build = lost_in(&shop.builds, Some(it.build));
    [build, lost_in(&shop.dues, it.after), lost_in(&shop.outsiders, it.outsider)]
}

fn lost_in<T>(things: &Map<Id, T>, named: Option<Id>) -> Option<Id> {
    named.filter(|id| !things.contains_key(id))
}

fn lost_bearer(shop: &Shop, bearer: Bearer) -> Option<Id> {
    match bearer {
        Bearer::Build(id) => (!shop.builds.contains_key(&id)).then_some(id),
        Bearer::Lot(id) => (!shop.lots.contains_key(&id)).then_some(id),
        Bearer::Shop => None,
    }
}
