//! The fold: from the entries as they stand to the working facts that timing and costing read.
//!
//! Total: it never fails. What is odd is kept with its entry in [`Shop::odd`] and counts for nothing or
//! for what can be made of it; nothing is dropped without a word.

mod after;
mod buying;
mod currency;
mod facts;
mod finds;
mod free;
mod looks;
mod money;
mod odd;
mod parts;
mod publishing;
mod receipts;
mod runs;
mod same;
mod shots;
mod sorted;
mod steps;
mod stock;
mod tax;
#[cfg(test)]
mod told;
mod tools;
mod work;

pub use buying::BuyLine;
pub use facts::{Build, Expense, Note, Person, Photo, Rate, Stage, Trip};
pub use finds::{Case, Find};
pub use free::{FreeDay, Resource};
pub use looks::Look;
pub use money::{BuildState, ByProduct, Film, HandOver, Income, Made, Received};
use odd::lost;
pub use odd::{Field, Odd};
pub use parts::{FRACTIONS, Part, Section};
pub use publishing::{Chapter, Due, Outsider};
pub use receipts::{Receipt, Shared};
pub use same::Merged;
pub use shots::{CardCopied, Shot, Take};
pub use sorted::{Cull, Sort};
pub use steps::Step;
pub use stock::{Draw, Item, Lot, NewStock};
pub use tax::{tax_in, tax_in_typed, tax_on, tax_typed, with_tax};
pub use tools::{Blade, MonthlyCost, Tool, ToolHours};
pub use work::{Drying, Interval, Stretch, Time};

use super::{
    Body, Content, Id, Journal,
    kinds::{Source, State},
    order::Order,
    settings::Settings,
    stages,
};
use crate::measure::{Day, InOrder, Map, Zone};
use std::collections::{BTreeMap, BTreeSet};

/// Present state. Lists stand in the order in which things count (`order`).
#[derive(Clone, Debug, Default)]
pub struct Shop {
    /// Days are cut in this zone.
    pub zone: Zone,
    /// The shop-wide choices.
    pub settings: Settings,
    /// Who works here.
    pub people: Map<Id, Person>,
    /// Kinds of work, the standing ones included.
    pub stages: Map<Id, Stage>,
    /// Jobs.
    pub builds: Map<Id, Build>,
    /// Things kept in stock.
    pub items: Map<Id, Item>,
    /// Items that are other ones: what names one of these means the other.
    pub merged: Map<Id, Merged>,
    /// Builds, people, stages, items, lots and tools that are not offered any more.
    pub retired: BTreeSet<Id>,
    /// Acquisitions.
    pub lots: BTreeMap<Id, Lot>,
    /// Work, clocks included.
    pub stretches: Vec<Stretch>,
    /// What salvaged lots yielded.
    pub sorts: Vec<Sort>,
    /// What was thrown out of them beside.
    pub culls: Vec<Cull>,
    /// Timber that was looked at.
    pub finds: Map<Id, Find>,
    /// Draws and returns.
    pub draws: Vec<Draw>,
    /// What was found on the shelf, or went from it without a build.
    pub looks: Vec<Look>,
    /// Drives.
    pub trips: Vec<Trip>,
    /// Money paid directly.
    pub expenses: Vec<Expense>,
    /// Words.
    pub notes: Vec<Note>,
    /// What was paid at tills.
    pub receipts: Map<Id, Receipt>,
    /// What lots and builds yielded beside what they were for.
    pub by_products: Vec<ByProduct>,
    /// Things that wear.
    pub tools: Map<Id, Tool>,
    /// Run hours known better than by duty.
    pub tool_hours: Vec<ToolHours>,
    /// Blades, in the order in which they were fitted.
    pub blades: Vec<Blade>,
    /// What the shop costs every month.
    pub monthly: Vec<MonthlyCost>,
    /// Money that comes in.
    pub incomes: Vec<Income>,
    /// Finished items.
    pub made: Vec<Made>,
    /// Items that left.
    pub handed: Vec<HandOver>,
    /// What is known of the film of a build.
    pub films: Map<Id, Film>,
    /// Planned work.
    pub steps: Map<Id, Step>,
    /// What there is a count of.
    pub resources: Map<Id, Resource>,
    /// Days that are not as their weekday says.
    pub free_days: Vec<FreeDay>,
    /// Planned pieces of footage.
    pub shots: Map<Id, Shot>,
    /// Tries at them.
    pub takes: Vec<Take>,
    /// When the camera's card was copied.
    pub cards: Vec<CardCopied>,
    /// Lines of parts lists.
    pub parts: Map<Id, Part>,
    /// Chapters of films, in the order in which they were written.
    pub chapters: Vec<Chapter>,
    /// Those outside who are waited for.
    pub outsiders: Map<Id, Outsider>,
    /// What builds owe.
    pub dues: Map<Id, Due>,
    /// Runs of which no more will be made: when that was said, and one of their builds.
    pub series_ends: Vec<(Order, Id)>,
    /// Where builds stand.
    pub states: Vec<BuildState>,
    /// What needs time after the work.
    pub dryings: Vec<Drying>,
    /// Pictures.
    pub photos: Vec<Photo>,
    /// What is to be bought, and was.
    pub buy_lines: Vec<BuyLine>,
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
        shop.merge(&later);
        for (order, body) in &later {
            shop.second(*order, body);
        }
        for (order, body) in later {
            told.extend(lost(&shop, body).map(|odd| (order.entry, odd)));
        }
        shop.settings.settle();
        shop.tell_other_currencies();
        shop.share_receipts();
        shop.odd.append(&mut told);
        shop.odd.order_by_key(|(entry, _)| *entry);
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
        shop.merge(&later);
        for (order, body) in later {
            shop.second(order, body);
        }
        shop.settings.settle();
        shop.share_receipts();
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
                let build = Build::read(order, build, &mut |odd| self.odd.push((entry, odd)));
                self.builds.insert(entry, build);
            }
            Body::Item(item) => {
                let item = Item::read(item, &mut |odd| self.odd.push((entry, odd)));
                self.items.insert(entry, item);
            }
            Body::Tool(tool) => {
                let tool = Tool::read(order, tool, &mut |odd| self.odd.push((entry, odd)));
                self.tools.insert(entry, tool);
            }
            Body::Receipt(receipt) => {
                let receipt = Receipt::read(order, receipt, &mut |odd| self.odd.push((entry, odd)));
                self.receipts.insert(entry, receipt);
            }
            Body::Setting(setting) => self.settings.add(order, setting),
            Body::Outsider(outsider) => {
                self.outsiders.insert(entry, Outsider::read(order, outsider));
            }
            Body::Lot(_)
            | Body::Trip(_)
            | Body::Sort(_)
            | Body::Cull(_)
            | Body::Find(_)
            | Body::Draw(_)
            | Body::Shelf(_)
            | Body::Stretch(_)
            | Body::Expense(_)
            | Body::Note(_)
            | Body::Photo(_)
            | Body::ByProduct(_)
            | Body::ToolHours(_)
            | Body::Blade(_)
            | Body::MonthlyCost(_)
            | Body::Income(_)
            | Body::Made(_)
            | Body::HandOver(_)
            | Body::BuildState(_)
            | Body::Drying(_)
            | Body::Retired(_)
            | Body::Same(_)
            | Body::Film(_)
            | Body::SeriesEnd(_)
            | Body::Step(_)
            | Body::BuyLine(_)
            | Body::Part(_)
            | Body::Resource(_)
            | Body::FreeDay(_)
            | Body::Shot(_)
            | Body::Take(_)
            | Body::CardCopied(_)
            | Body::Chapter(_)
            | Body::Due(_) => later.push((order, body)),
        }
    }

    fn second(&mut self, order: Order, body: &Body) {
        let entry = order.entry;
        let mut odd = Vec::new();
        let mut tell = |it: Odd| odd.push((entry, it));
        match body {
            Body::Lot(lot) => {
                let lot = Lot::read(order, lot, self.all_items(), &mut tell);
                self.lots.insert(entry, lot);
            }
            Body::Sort(sort) => self.sorts.push(Sort::read(order, sort, &mut tell)),
            Body::Find(find) => drop(self.finds.insert(entry, Find::read(order, find, &mut tell))),
            Body::Cull(cull) => self.culls.push(Cull::read(order, cull, &mut tell)),
            Body::Draw(draw) => {
                self.draws.push(Draw::read(order, draw, &self.lots, self.all_items(), &mut tell));
            }
            Body::Shelf(shelf) => {
                let look = Look::read(order, shelf, &self.lots, self.all_items(), &mut tell);
                self.looks.push(look);
            }
            Body::Trip(trip) => self.trips.push(Trip::read(order, trip, &mut tell)),
            Body::Stretch(stretch) => self.stretches.push(Stretch::read(order, stretch, &mut tell)),
            Body::Expense(expense) => self.expenses.push(Expense::read(order, expense, &mut tell)),
            Body::Note(note) => self.notes.push(Note::read(order, note)),
            Body::Drying(drying) => self.dryings.push(Drying::read(order, drying, &mut tell)),
            Body::Photo(photo) => self.photos.push(Photo::read(order, photo)),
            Body::BuyLine(it) => self.buy_lines.push(BuyLine::read(order, it, self.all_items(), &mut tell)),
            Body::ByProduct(it) => self.by_products.push(ByProduct::read(order, it, &mut tell)),
            Body::ToolHours(it) => self.tool_hours.push(ToolHours::read(order, it, &mut tell)),
            Body::Blade(it) => self.blades.push(Blade::read(order, it, &mut tell)),
            Body::MonthlyCost(it) => self.monthly.push(MonthlyCost::read(order, it, &mut tell)),
            Body::Income(it) => self.incomes.push(Income::read(order, it, &mut tell)),
            Body::Made(it) => self.made.push(Made::read(order, it, &mut tell)),
            Body::HandOver(it) => self.handed.push(HandOver::read(order, it, &mut tell)),
            Body::BuildState(it) => self.states.push(BuildState::read(order, it)),
            Body::Film(it) => drop(self.films.insert(it.build, Film::read(it, &mut tell))),
            Body::Step(it) => drop(self.steps.insert(entry, Step::read(order, it, &mut tell))),
            Body::Part(it) => drop(self.parts.insert(entry, Part::read(order, it, &mut tell))),
            Body::Resource(it) => drop(self.resources.insert(entry, Resource::read(order, it))),
            Body::FreeDay(it) => self.free_days.push(FreeDay::read(order, it)),
            Body::Shot(it) => drop(self.shots.insert(entry, Shot { order, body: it.clone() })),
            Body::Take(it) => self.takes.push(Take::read(order, it)),
            Body::CardCopied(it) => self.cards.push(CardCopied { order, build: it.build }),
            Body::Chapter(it) => self.chapters.push(Chapter { order, body: it.clone() }),
            Body::Due(it) => drop(self.dues.insert(entry, Due { order, body: it.clone() })),
            Body::SeriesEnd(it) => self.series_ends.push((order, it.build)),
            Body::Retired(it) if it.back => {
                self.retired.remove(&it.what);
            }
            Body::Retired(it) => {
                self.retired.insert(it.what);
            }
            Body::Person(_)
            | Body::Stage(_)
            | Body::Build(_)
            | Body::Item(_)
            | Body::Tool(_)
            | Body::Receipt(_)
            | Body::Setting(_)
            | Body::Outsider(_)
            | Body::Same(_) => {}
        }
        self.odd.append(&mut odd);
    }

    /// Where a build stands at the end of a day: the last word that was said. None said: under way.
    pub fn state_of(&self, build: Id, last: Day) -> State {
        self.last_state(build, last).map_or(State::Begun, |it| it.state)
    }

    /// The last word on where a build stands at the end of a day, and when it was said. None: nothing was.
    pub fn state_on(&self, build: Id, last: Day) -> Option<(State, Day)> {
        self.last_state(build, last).map(|it| (it.state, it.order.day))
    }

    /// The last word on where a build stands, up to the end of a day.
    pub(crate) fn last_state(&self, build: Id, last: Day) -> Option<&BuildState> {
        self.states.iter().rfind(|it| it.build == build && it.order.day <= last)
    }

    /// Whether the lot or item of a draw stands.
    pub fn has_source(&self, source: Source) -> bool {
        match source {
            Source::Lot(id) => self.lots.contains_key(&id),
            Source::Item(id) => self.items.contains_key(&id) || self.merged.contains_key(&id),
        }
    }

    /// Whether a build is another one, or a repeat of it, at however many removes.
    pub fn repeats(&self, build: Id, other: Id) -> bool {
        let mut at = build;
        // Merged journals may hold a circle; no way is longer than there are builds.
        for _ in 0..=self.builds.len() {
            if at == other {
                return true;
            }
            let Some(of) = self.builds.get(&at).and_then(|it| it.repeat_of) else { return false };
            at = of;
        }
        false
    }

    /// Whether something that can be put away stands: a build, a person, a stage, an item, a lot or a tool.
    pub fn stands(&self, what: Id) -> bool {
        self.builds.contains_key(&what)
            || self.people.contains_key(&what)
            || self.stages.contains_key(&what)
            || self.lots.contains_key(&what)
            || self.tools.contains_key(&what)
            || self.resources.contains_key(&what)
            || self.finds.contains_key(&what)
            || self.has_source(Source::Item(what))
    }

    /// Whether it is to be offered where a thing is chosen.
    pub fn offers(&self, what: Id) -> bool {
        !self.retired.contains(&what)
    }
}
