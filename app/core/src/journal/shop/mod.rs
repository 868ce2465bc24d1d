//! The fold: from the entries as they stand to the working facts that timing and costing read.
//!
//! Total: it never fails. What is odd is kept with its entry in [`Shop::odd`] and counts for nothing or
//! for what can be made of it; nothing is dropped without a word.

mod after;
mod facts;
mod odd;
mod stock;
mod tax;
#[cfg(test)]
mod told;
mod work;

pub use facts::{Build, Expense, Note, Person, Rate, Stage, Trip};
use odd::lost;
pub use odd::{Field, Odd};
pub use stock::{Draw, Emptied, Item, Lot, NewStock, Sort};
pub use tax::{tax_on, tax_typed, with_tax};
pub use work::{Interval, Stretch, Time};

use super::{Body, Content, Id, Journal, kinds::Source, order::Order, settings::Settings, stages};
use crate::measure::InOrder;
use crate::measure::Zone;
use std::collections::BTreeMap;

/// Present state. Lists stand in the order in which things count (`order`).
#[derive(Clone, Debug, Default)]
pub struct Shop {
    /// Days are cut in this zone.
    pub zone: Zone,
    /// The shop-wide choices.
    pub settings: Settings,
    /// Who works here.
    pub people: BTreeMap<Id, Person>,
    /// Kinds of work, the standing ones included.
    pub stages: BTreeMap<Id, Stage>,
    /// Jobs.
    pub builds: BTreeMap<Id, Build>,
    /// Things kept in stock.
    pub items: BTreeMap<Id, Item>,
    /// Acquisitions.
    pub lots: BTreeMap<Id, Lot>,
    /// Work, clocks included.
    pub stretches: Vec<Stretch>,
    /// What salvaged lots yielded.
    pub sorts: Vec<Sort>,
    /// Draws and returns.
    pub draws: Vec<Draw>,
    /// Lots and items found empty.
    pub emptied: Vec<Emptied>,
    /// Drives.
    pub trips: Vec<Trip>,
    /// Money paid directly.
    pub expenses: Vec<Expense>,
    /// Words.
    pub notes: Vec<Note>,
    /// What is odd, by entry.
    pub odd: Vec<(Id, Odd)>,
}

impl Shop {
    /// Folds the whole journal. Linear in entries but for the sort by order.
    pub fn fold(journal: &Journal, zone: &Zone) -> Shop {
        let mut shop = Shop { zone: zone.clone(), stages: stages::all(), ..Shop::default() };
        let mut later = Vec::new();
        for entry in journal.entries() {
            let Some(revision) = journal.shown(entry) else { continue };
            match &revision.content {
                Content::Body(body) => shop.first(entry, body, &mut later),
                Content::Struck => {}
                Content::Newer => shop.odd.push((entry, Odd::Newer)),
                Content::Unreadable => shop.odd.push((entry, Odd::Unreadable)),
            }
        }
        // In order, and after everything that they can refer to is there.
        later.order_by_key(|(order, _)| *order);
        let mut told = Vec::new();
        for (order, body) in &later {
            shop.second(*order, body);
        }
        for (order, body) in later {
            told.extend(lost(&shop, body).map(|odd| (order.entry, odd)));
        }
        shop.odd.append(&mut told);
        shop.odd.order_by_key(|(entry, _)| *entry);
        shop.settings.settle();
        shop
    }

    /// The shop as it would be with these entries too, the latest of all: what a form comes to before it is kept.
    #[must_use]
    pub fn with(&self, entries: &[(Id, Body)]) -> Shop {
        let mut shop = self.clone();
        let mut later = Vec::new();
        for (entry, body) in entries {
            shop.first(*entry, body, &mut later);
        }
        for (order, body) in later {
            shop.second(order, body);
        }
        shop
    }

    /// Things that others refer to.
    fn first<'a>(&mut self, entry: Id, body: &'a Body, later: &mut Vec<(Order, &'a Body)>) {
        let order = Order::of(entry, body, &self.zone);
        match body {
            Body::Person(person) => {
                let person = Person::read(person, &mut |odd| self.odd.push((entry, odd)));
                self.people.insert(entry, person);
            }
            Body::Stage(stage) => {
                let place = self.stages.get(&entry).map_or(u8::MAX, |standing| standing.place);
                self.stages.insert(entry, Stage { place, ..Stage::read(stage) });
            }
            Body::Build(build) => {
                self.builds.insert(entry, Build::read(order, build));
            }
            Body::Item(item) => {
                let item = Item::read(item, &mut |odd| self.odd.push((entry, odd)));
                self.items.insert(entry, item);
            }
            Body::Setting(setting) => self.settings.add(order, setting),
            Body::Lot(_)
            | Body::Trip(_)
            | Body::Sort(_)
            | Body::Draw(_)
            | Body::Shelf(_)
            | Body::Stretch(_)
            | Body::Expense(_)
            | Body::Note(_) => later.push((order, body)),
        }
    }

    fn second(&mut self, order: Order, body: &Body) {
        let entry = order.entry;
        let mut odd = Vec::new();
        let mut tell = |it: Odd| odd.push((entry, it));
        match body {
            Body::Lot(lot) => {
                let lot = Lot::read(order, lot, &self.items, &mut tell);
                self.lots.insert(entry, lot);
            }
            Body::Sort(sort) => self.sorts.push(Sort::read(order, sort, &mut tell)),
            Body::Draw(draw) => {
                let draw = Draw::read(order, draw, &self.lots, &self.items, &mut tell);
                self.draws.push(draw);
            }
            Body::Shelf(shelf) => self.emptied.push(Emptied::read(order, shelf)),
            Body::Trip(trip) => self.trips.push(Trip::read(order, trip, &mut tell)),
            Body::Stretch(stretch) => self.stretches.push(Stretch::read(order, stretch, &mut tell)),
            Body::Expense(expense) => self.expenses.push(Expense::read(order, expense, &mut tell)),
            Body::Note(note) => self.notes.push(Note::read(order, note)),
            Body::Person(_) | Body::Stage(_) | Body::Build(_) | Body::Item(_) | Body::Setting(_) => {}
        }
        self.odd.append(&mut odd);
    }

    /// Whether the lot or item of a draw stands.
    pub fn has_source(&self, source: Source) -> bool {
        match source {
            Source::Lot(id) => self.lots.contains_key(&id),
            Source::Item(id) => self.items.contains_key(&id),
        }
    }
}
