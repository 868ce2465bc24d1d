//! The journal of one bearer: which entries are about it, newest first, and how each of them stands.
//!
//! Struck entries and those that a newer version wrote are in it: what was written stays on view. What a
//! line says, and what it came to, is not here (`words` of the screen, `costing::amounts`).

use super::{
    Body, Content, Id, Journal, Shop,
    kinds::{Bearer, Drying, Photo, Source, Stretch},
};
use crate::measure::InOrder;
use crate::measure::{Day, Instant};
use std::cmp::Reverse;

/// An entry in its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Listed {
    /// Which.
    pub entry: Id,
    /// The local day that it is about.
    pub day: Day,
    /// The moment, where one was given.
    pub time: Option<Instant>,
}

/// How an entry stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Standing {
    /// How many different things it has said: 1 as first written. That a clock was ended, paused or
    /// filmed corrects nothing.
    pub version: usize,
    /// Versions that nothing replaces: 2 or more where it was changed in two places.
    pub heads: usize,
    /// What is to be made of it.
    pub state: State,
}

/// What is to be made of an entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// It counts.
    Stands,
    /// Struck out at a moment, by the device that struck it.
    Struck {
        /// The moment.
        at: Instant,
    },
    /// Written by a newer version of the program.
    Newer,
    /// Can't be read as its kind says.
    Unreadable,
}

/// What a bearer's journal holds, newest first: day, then time (a whole day last), then the later made.
///
/// Beside what it bears: itself, a lot's sorts and looks at the shelf, lots got for a build and their sorts.
pub fn listing(journal: &Journal, shop: &Shop, about: Bearer) -> Vec<Listed> {
    let entries = journal.entries().filter_map(|entry| match journal.last_body(entry) {
        Some(body) => bears(journal, shop, entry, body, about).then(|| placed(shop, entry, body)),
        None => unread(journal, shop, entry, about),
    });
    newest_first(entries.collect())
}

/// Every entry of the journal, newest first.
pub fn all(journal: &Journal, shop: &Shop) -> Vec<Listed> {
    let entries = journal.entries().filter_map(|entry| match journal.last_body(entry) {
        Some(body) => Some(placed(shop, entry, body)),
        None => unread_at(journal, shop, entry),
    });
    newest_first(entries.collect())
}

/// Notes and photos that have no home yet, and receipts whose lines are still to be said; newest first.
pub fn homeless(journal: &Journal, shop: &Shop) -> Vec<Listed> {
    let notes = shop.notes.iter().filter(|note| note.bearer.is_none()).map(|note| note.order.entry);
    let photos = shop.photos.iter().filter(|photo| photo.is_homeless()).map(|photo| photo.order.entry);
    let receipts = shop.receipts.iter().filter(|(_, receipt)| receipt.waits()).map(|(id, _)| *id);
    let placed = notes
        .chain(photos)
        .chain(receipts)
        .filter_map(|entry| Some(placed(shop, entry, journal.body(entry)?)));
    newest_first(placed.collect())
}

/// Photos about an entry, oldest first.
pub fn photos_of(shop: &Shop, about: Id) -> Vec<Id> {
    shop.photos.iter().filter(|photo| photo.entry == Some(about)).map(|photo| photo.order.entry).collect()
}

/// How an entry stands; none: there is no such entry.
pub fn standing(journal: &Journal, entry: Id) -> Option<Standing> {
    let shown = journal.shown(entry)?;
    let state = match &shown.content {
        Content::Body(_) => State::Stands,
        Content::Struck => State::Struck { at: Instant(shown.stamp.ms.div_euclid(1000)) },
        Content::Newer => State::Newer,
        Content::Unreadable => State::Unreadable,
    };
    Some(Standing { version: version(journal, entry), heads: journal.heads(entry).len(), state })
}

/// The days of a listing, each with its lines.
pub fn days(lines: &[Listed]) -> impl Iterator<Item = (Day, &[Listed])> {
    lines.chunk_by(|a, b| a.day == b.day).filter_map(|of_day| Some((of_day.first()?.day, of_day)))
}

/// Whether a version says something else than the one before it, rather than more of the same: a stretch
/// that is ended, paused, filmed or asked about is the stretch that was begun.
pub fn corrects(before: &Body, after: &Body) -> bool {
    match (before, after) {
        (Body::Stretch(before), Body::Stretch(after)) => stretch_corrected(before, after),
        // That it got a home corrects nothing.
        (Body::Photo(before), Body::Photo(after)) if before.entry.is_none() && before.bearer.is_none() => {
            Photo { entry: after.entry, bearer: after.bearer, ..before.clone() } != *after
        }
        _ => before != after,
    }
}

fn stretch_corrected(before: &Stretch, after: &Stretch) -> bool {
    let ended = before.to.is_none() && after.to.is_some();
    let said = |it: &Stretch| Stretch {
        to: if ended { None } else { it.to },
        pauses: Vec::new(),
        rolling: Vec::new(),
        together: None,
        still_running: None,
        step: None,
        ..it.clone()
    };
    said(before) != said(after)
}

fn version(journal: &Journal, entry: Id) -> usize {
    let history = journal.history(entry);
    let mut bodies = history.iter().filter_map(|revision| match &revision.content {
        Content::Body(body) => Some(body),
        Content::Struck | Content::Newer | Content::Unreadable => None,
    });
    let Some(mut before) = bodies.next() else { return 1 };
    let mut version = 1_usize;
    for body in bodies {
        if corrects(before, body) {
            version = version.saturating_add(1);
        }
        before = body;
    }
    version
}

fn bears(journal: &Journal, shop: &Shop, entry: Id, body: &Body, about: Bearer) -> bool {
    let is = |bearer: Bearer| bearer == about;
    match body {
        Body::Build(_) => is(Bearer::Build(entry)),
        Body::Stretch(it) => is(it.bearer),
        Body::Draw(it) => is(it.bearer),
        Body::Expense(it) => is(it.bearer),
        Body::Note(it) => it.bearer.is_some_and(is),
        Body::Photo(it) => {
            it.bearer.is_some_and(is) || it.entry.is_some_and(|of| holds(journal, shop, of, about))
        }
        Body::Trip(it) => it.shares.iter().any(|share| is(share.bearer)),
        Body::Lot(it) => is(Bearer::Lot(entry)) || it.for_build.is_some_and(|build| is(Bearer::Build(build))),
        Body::Sort(it) => of_lot(shop, it.lot, about),
        Body::Cull(it) => of_lot(shop, it.lot, about),
        Body::Find(it) => {
            is(it.lot.filter(|lot| shop.lots.contains_key(lot)).map_or(Bearer::Shop, Bearer::Lot))
        }
        Body::Shelf(it) => match it.of {
            Source::Lot(lot) => is(Bearer::Lot(lot)),
            Source::Item(_) => is(Bearer::Shop),
        },
        Body::Drying(it) => is(dried_for(journal, it)),
        Body::Receipt(it) => is(it.bearer.unwrap_or(Bearer::Shop)),
        Body::ByProduct(it) => is(it.of),
        Body::Made(it) => is(Bearer::Build(it.build)),
        Body::HandOver(it) => is(Bearer::Build(it.build)),
        Body::Film(it) => is(Bearer::Build(it.build)),
        Body::Step(it) => is(Bearer::Build(it.build)),
        Body::Part(it) => is(Bearer::Build(it.build)),
        Body::Shot(it) => is(Bearer::Build(it.build)),
        Body::CardCopied(it) => is(Bearer::Build(it.build)),
        Body::Take(it) => shop.shots.get(&it.shot).is_some_and(|shot| is(Bearer::Build(shot.body.build))),
        Body::Chapter(it) => is(Bearer::Build(it.build)),
        Body::Due(it) => is(Bearer::Build(it.build)),
        Body::SeriesEnd(it) => is(Bearer::Build(it.build)),
        Body::BuildState(it) => is(Bearer::Build(it.build)),
        Body::Income(it) if it.shares.is_empty() => is(Bearer::Shop),
        Body::Income(it) => it.shares.iter().any(|share| is(share.bearer)),
        Body::ToolHours(it) => is(it.bearer),
        Body::BuyLine(it) => is(it.for_build.map_or(Bearer::Shop, Bearer::Build)),
        Body::Setting(_)
        | Body::Person(_)
        | Body::Stage(_)
        | Body::Item(_)
        | Body::Tool(_)
        | Body::Blade(_)
        | Body::MonthlyCost(_)
        | Body::Resource(_)
        | Body::FreeDay(_)
        | Body::Outsider(_)
        | Body::Same(_) => is(Bearer::Shop),
        Body::Retired(it) => is(of(shop, it.what)),
    }
}

/// What is said of a lot is told in its journal, and in that of the build that it was got for.
fn of_lot(shop: &Shop, lot: Id, about: Bearer) -> bool {
    let got_for = shop.lots.get(&lot).and_then(|lot| lot.for_build);
    about == Bearer::Lot(lot) || got_for.is_some_and(|build| about == Bearer::Build(build))
}

/// Whose journal a thing is told in: its own where it has one, else the shop's.
fn of(shop: &Shop, thing: Id) -> Bearer {
    if shop.builds.contains_key(&thing) {
        Bearer::Build(thing)
    } else if shop.lots.contains_key(&thing) {
        Bearer::Lot(thing)
    } else {
        Bearer::Shop
    }
}

/// What bears the stretch that something dries after, also where that is struck out; the shop where there is none.
pub fn dried_for(journal: &Journal, drying: &Drying) -> Bearer {
    match journal.last_body(drying.stretch) {
        Some(Body::Stretch(stretch)) => stretch.bearer,
        Some(_) | None => Bearer::Shop,
    }
}

/// Whether the entry that a photo is about stands in this journal. A photo of a photo leads no further.
fn holds(journal: &Journal, shop: &Shop, entry: Id, about: Bearer) -> bool {
    match journal.last_body(entry) {
        Some(Body::Photo(it)) => it.bearer == Some(about),
        Some(body) => bears(journal, shop, entry, body, about),
        None => false,
    }
}

/// A line whose body can't be read here belongs where it names: the bearer's id stands in its text. One
/// that names none is the shop's.
fn unread(journal: &Journal, shop: &Shop, entry: Id, about: Bearer) -> Option<Listed> {
    let history = journal.history(entry);
    let texts: Vec<&str> = history.iter().filter_map(|revision| journal.line(revision.id)).collect();
    let names = |id: &Id| texts.iter().any(|text| text.contains(&id.to_string()));
    let here = match about {
        Bearer::Build(id) | Bearer::Lot(id) => names(&id),
        Bearer::Shop => !shop.builds.keys().any(names) && !shop.lots.keys().any(names),
    };
    if here { unread_at(journal, shop, entry) } else { None }
}

/// A line whose body can't be read stands where it was written.
fn unread_at(journal: &Journal, shop: &Shop, entry: Id) -> Option<Listed> {
    let at = Instant(journal.shown(entry)?.stamp.ms.div_euclid(1000));
    Some(Listed { entry, day: shop.zone.day(at), time: Some(at) })
}

fn placed(shop: &Shop, entry: Id, body: &Body) -> Listed {
    let on = body.on();
    Listed { entry, day: on.day(&shop.zone), time: on.instant() }
}

fn newest_first(mut lines: Vec<Listed>) -> Vec<Listed> {
    lines.order_by_key(|line| Reverse((line.day, line.time, line.entry)));
    lines
}
