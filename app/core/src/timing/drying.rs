//! What dries until when, what of it was never said, and which times are offered.
//!
//! Drying is elapsed time: it runs from the end of its stretch through nights and changes of the clock. One whose
//! stretch was struck out, or runs again, counts for nothing. What has dried is told until the piece is worked on
//! again. Source: our own rule. Not here: what a tin or a bottle says about itself; no product is known.

use super::Hand;
use crate::measure::InOrder;
use crate::{
    journal::{
        Change, Id, On, Shop,
        kinds::{self, Bearer, Role, Side, Source},
        shop::{Draw, Drying, Interval, Stretch, Time},
    },
    measure::{Day, Instant, Map, Seconds, TimeOfDay, Zone},
};

/// A day is what most glues and most coats are given before the next step. Source: common practice; said so
/// wherever it is offered, and only where the maker has given none of their own yet.
pub const COMMON: Seconds = Seconds(24 * 3600);

/// A glue-up or a coat that ended longer ago is no longer asked about.
const ASKED_FOR: Seconds = Seconds(24 * 3600);

/// How many times are offered.
const OFFERS: usize = 2;

/// Something that dries, or has dried and was not worked on since.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Dries {
    /// The entry that says so.
    pub entry: Id,
    /// The glue-up or the coat.
    pub stretch: Id,
    /// What bears it.
    pub bearer: Bearer,
    /// At which stage.
    pub stage: Id,
    /// What dries.
    pub item: Option<Id>,
    /// Clamps or the dust-free corner are taken until then.
    pub held: Option<Instant>,
    /// The next step may begin.
    pub dry: Instant,
}

/// What is offered for a glue-up or a coat: the times given last at that stage.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Offer {
    /// Clamps or the dust-free corner are taken for so long.
    pub held: Option<Seconds>,
    /// The next step may begin after so long.
    pub next: Seconds,
    /// For what it was given.
    pub bearer: Bearer,
    /// And when.
    pub day: Day,
    /// The same thing was drawn then as now.
    pub same_item: bool,
}

/// Everything that dries or waits to be worked on, soonest dry first.
pub fn dries(shop: &Shop) -> Vec<Dries> {
    if shop.dryings.is_empty() {
        return Vec::new();
    }
    let stretches = by_entry(shop);
    let mut last: Map<Bearer, Instant> = Map::new();
    for stretch in shop.stretches.iter().filter(|it| it.side != Side::Film) {
        if let Some(from) = stretch.from() {
            let latest = last.entry(stretch.bearer).or_insert(from);
            *latest = from.max(*latest);
        }
    }
    let waits = |it: &Dries| last.get(&it.bearer).is_none_or(|last| *last < it.dry);
    let read = |drying: &Drying| read(shop, drying, stretches.get(&drying.stretch)?);
    let mut all: Vec<Dries> = shop.dryings.iter().filter_map(read).filter(waits).collect();
    all.order_by_key(|it| (it.dry, it.entry));
    all
}

/// What dries after one stretch, if it was said.
pub fn of(shop: &Shop, stretch: Id) -> Option<Dries> {
    let drying = shop.dryings.iter().rfind(|it| it.stretch == stretch)?;
    read(shop, drying, shop.stretches.iter().find(|it| it.entry() == stretch)?)
}

fn read(shop: &Shop, drying: &Drying, stretch: &Stretch) -> Option<Dries> {
    let begun = match stretch.time {
        Time::Span(span) => span.to?,
        Time::Amount(_) => drying.order.time.unwrap_or_else(|| shop.zone.start_of(drying.order.day)),
    };
    Some(Dries {
        entry: drying.order.entry,
        stretch: drying.stretch,
        bearer: stretch.bearer,
        stage: stretch.stage,
        item: drying.item,
        held: drying.held.map(|held| begun.plus(held)),
        dry: begun.plus(drying.next),
    })
}

/// The glue-up or coat that ended last on a bearer, where nobody has said yet how long it dries.
pub fn unsaid(shop: &Shop, bearer: Bearer, now: Instant) -> Option<&Stretch> {
    let ended = |it: &Stretch| match it.time {
        Time::Span(Interval { to, .. }) => to.filter(|to| *to <= now),
        Time::Amount(_) => None,
    };
    let mine = shop.stretches.iter().filter(|it| it.bearer == bearer && it.side != Side::Film);
    let (to, last) = mine.filter_map(|it| Some((ended(it)?, it))).max_by_key(|(to, it)| (*to, it.entry()))?;
    // Two who stop together stop one glue-up.
    let said = |drying: &Drying| stopped_as_one(shop, drying.stretch, last.entry());
    let open = may_dry(shop, last.stage) && now.since(to) < ASKED_FOR && !shop.dryings.iter().any(said);
    open.then_some(last)
}

/// Whether two stretches are one, or were stopped together.
pub fn stopped_as_one(shop: &Shop, one: Id, other: Id) -> bool {
    let mark = |entry: Id| shop.stretches.iter().find(|it| it.entry() == entry).and_then(|it| it.together);
    one == other || mark(one).is_some_and(|mark_of_one| mark(other) == Some(mark_of_one))
}

/// Whether something dries after work at a stage.
pub fn may_dry(shop: &Shop, stage: Id) -> bool {
    let role = shop.stages.get(&stage).and_then(|stage| stage.role);
    matches!(role, Some(Role::GlueUp | Role::Finish))
}

/// The last two different times given at the stage of a stretch; first those for what is drawn in it.
pub fn offers(shop: &Shop, stretch: Id) -> Vec<Offer> {
    let stretches = by_entry(shop);
    let Some(here) = stretches.get(&stretch) else { return Vec::new() };
    let item = drawn_in(shop, here);
    let mut offers: Vec<Offer> = Vec::new();
    for drying in shop.dryings.iter().rev() {
        let Some(then) = stretches.get(&drying.stretch).filter(|then| then.stage == here.stage) else {
            continue;
        };
        let same_item = item.is_some() && drying.item == item;
        match offers.iter_mut().find(|it| (it.held, it.next) == (drying.held, drying.next)) {
            Some(known) => known.same_item |= same_item,
            None => offers.push(Offer {
                held: drying.held,
                next: drying.next,
                bearer: then.bearer,
                day: drying.order.day,
                same_item,
            }),
        }
    }
    offers.order_by_key(|it| !it.same_item);
    offers.truncate(OFFERS);
    offers
}

/// What was drawn last in a stretch, as an item.
pub fn drawn_in(shop: &Shop, stretch: &Stretch) -> Option<Id> {
    let within = |draw: &Draw| match (stretch.time, draw.order.time) {
        (Time::Span(span), Some(at)) => at >= span.from && span.to.is_none_or(|to| at <= to),
        (Time::Span(_) | Time::Amount(_), _) => draw.order.day == stretch.order.day,
    };
    let mine = |draw: &&Draw| {
        draw.bearer == stretch.bearer && draw.stage == Some(stretch.stage) && draw.returns.is_none()
    };
    let draw = shop.draws.iter().rev().filter(mine).find(|draw| within(draw))?;
    match draw.from {
        Source::Item(item) => Some(item),
        Source::Lot(lot) => shop.lots.get(&lot).and_then(|lot| lot.item),
    }
}

/// How long it is from the end of a stretch to a typed time: on that day, or where none is given the first time
/// that it comes. None: that day and time is before the end.
pub fn until(zone: &Zone, ended: Instant, day: Option<Day>, time: TimeOfDay) -> Option<Seconds> {
    let first = zone.day(ended);
    let days = day.map_or_else(|| vec![first, first.succ()], |day| vec![day]);
    let at = days.into_iter().map(|day| zone.at(day, time)).find(|at| *at >= ended)?;
    Some(at.since(ended))
}

impl Hand<'_> {
    /// How long a glue-up or a coat dries, from the end of its stretch. Said once more it is put right.
    pub fn dries(&mut self, stretch: Id, held: Option<Seconds>, next: Seconds) -> Vec<Change> {
        let Some(stored) = self.stored(stretch) else { return Vec::new() };
        // Until a typed minute means that it has come: begun minutes count whole.
        let minutes =
            |length: Seconds| u32::try_from(length.0.saturating_add(59).div_euclid(60)).unwrap_or(u32::MAX);
        let fact = self.shop.stretches.iter().find(|it| it.entry() == stretch);
        let drying = kinds::Drying {
            on: stored.to.map_or(stored.on, On::At),
            stretch,
            item: fact.and_then(|it| drawn_in(self.shop, it)),
            held: held.map(minutes),
            next: minutes(next),
        };
        let known = self.shop.dryings.iter().find(|it| it.stretch == stretch).map(|it| it.order.entry);
        vec![Change::write(known.unwrap_or_else(|| (self.fresh)()), drying)]
    }
}

/// A length as it is stored. Until a typed minute means that it has come: a minute that has begun counts whole.
pub fn minutes(length: Seconds) -> u32 {
    u32::try_from(length.0.saturating_add(59).div_euclid(60)).unwrap_or(u32::MAX)
}

/// A stored length.
pub fn length(minutes: u32) -> Seconds {
    Seconds(i64::from(minutes).saturating_mul(60))
}

fn by_entry(shop: &Shop) -> Map<Id, &Stretch> {
    shop.stretches.iter().map(|it| (it.entry(), it)).collect()
}

#[cfg(test)]
mod tests;
