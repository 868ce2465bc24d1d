//! The fold after an act: only what the act has changed is read anew.
//!
//! What no other fact is read from (work, draws, sorts, expenses, notes, photos and their like) is taken out and put into its
//! place again; an act on anything else (a person, a lot, an item, a build) may touch facts all over, and everything
//! is folded anew. Kept by: `an_act_folded_in_is_the_fold_of_all`, over random histories.

use super::{Shop, odd::lost};
use crate::{
    journal::{Body, Content, Id, Journal, order::Order},
    measure::InOrder,
};

impl Shop {
    /// This shop, after these entries of the journal have changed.
    #[must_use]
    pub fn after(&self, journal: &Journal, entries: &[Id]) -> Shop {
        if !entries.iter().all(|entry| stands_alone(journal, *entry)) {
            return Shop::fold(journal, &self.zone);
        }
        let mut shop = self.clone();
        for entry in entries {
            shop.leave_out(*entry);
        }
        let mut later = Vec::new();
        for entry in entries {
            if let Some(body) = journal.body(*entry) {
                shop.first(*entry, body, &mut later);
            }
        }
        later.order_by_key(|(order, _)| *order);
        for (order, body) in later {
            shop.second(order, body);
            shop.settle_last(body);
            let told = lost(&shop, body).map(|odd| (order.entry, odd));
            shop.odd.extend(told);
        }
        shop.odd.order_by_key(|(entry, _)| *entry);
        shop
    }

    fn leave_out(&mut self, entry: Id) {
        self.stretches.retain(|it| it.order.entry != entry);
        self.sorts.retain(|it| it.order.entry != entry);
        self.culls.retain(|it| it.order.entry != entry);
        self.draws.retain(|it| it.order.entry != entry);
        self.looks.retain(|it| it.order.entry != entry);
        self.trips.retain(|it| it.order.entry != entry);
        self.expenses.retain(|it| it.order.entry != entry);
        self.notes.retain(|it| it.order.entry != entry);
        self.dryings.retain(|it| it.order.entry != entry);
        self.photos.retain(|it| it.order.entry != entry);
        self.buy_lines.retain(|it| it.order.entry != entry);
        self.takes.retain(|it| it.order.entry != entry);
        self.cards.retain(|it| it.order.entry != entry);
        self.odd.retain(|(of, _)| *of != entry);
    }

    /// What was just read stands last in its list: it goes to its place.
    fn settle_last(&mut self, body: &Body) {
        match body {
            Body::Stretch(_) => into_place(&mut self.stretches, |it| it.order),
            Body::Sort(_) => into_place(&mut self.sorts, |it| it.order),
            Body::Cull(_) => into_place(&mut self.culls, |it| it.order),
            Body::Draw(_) => into_place(&mut self.draws, |it| it.order),
            Body::Shelf(_) => into_place(&mut self.looks, |it| it.order),
            Body::Trip(_) => into_place(&mut self.trips, |it| it.order),
            Body::Expense(_) => into_place(&mut self.expenses, |it| it.order),
            Body::Note(_) => into_place(&mut self.notes, |it| it.order),
            Body::Drying(_) => into_place(&mut self.dryings, |it| it.order),
            Body::Photo(_) => into_place(&mut self.photos, |it| it.order),
            Body::BuyLine(_) => into_place(&mut self.buy_lines, |it| it.order),
            Body::Take(_) => into_place(&mut self.takes, |it| it.order),
            Body::CardCopied(_) => into_place(&mut self.cards, |it| it.order),
            Body::Lot(_)
            | Body::Find(_)
            | Body::Person(_)
            | Body::Stage(_)
            | Body::Build(_)
            | Body::Item(_)
            | Body::Setting(_)
            | Body::Receipt(_)
            | Body::ByProduct(_)
            | Body::Tool(_)
            | Body::ToolHours(_)
            | Body::Blade(_)
            | Body::MonthlyCost(_)
            | Body::Income(_)
            | Body::Made(_)
            | Body::HandOver(_)
            | Body::BuildState(_)
            | Body::Retired(_)
            | Body::Same(_)
            | Body::Film(_)
            | Body::SeriesEnd(_)
            | Body::Step(_)
            | Body::Part(_)
            | Body::Resource(_)
            | Body::FreeDay(_)
            | Body::Shot(_)
            | Body::Chapter(_)
            | Body::Outsider(_)
            | Body::Due(_) => {}
        }
    }
}

fn into_place<T>(list: &mut [T], order: impl Fn(&T) -> Order) {
    let Some(last) = list.last().map(&order) else { return };
    let at = list.partition_point(|it| order(it) < last);
    if let Some(rest) = list.get_mut(at..) {
        rest.rotate_right(1);
    }
}

/// Nothing else refers to it, in any of its versions.
fn stands_alone(journal: &Journal, entry: Id) -> bool {
    journal.history(entry).iter().all(|revision| match &revision.content {
        Content::Struck => true,
        Content::Newer | Content::Unreadable => false,
        Content::Body(body) => match body {
            Body::Stretch(_)
            | Body::Sort(_)
            | Body::Cull(_)
            | Body::Draw(_)
            | Body::Shelf(_)
            | Body::Trip(_)
            | Body::Note(_)
            | Body::Drying(_)
            | Body::Photo(_)
            | Body::BuyLine(_)
            | Body::Take(_)
            | Body::CardCopied(_) => true,
            // A line of a receipt takes from the other lines.
            Body::Expense(it) => it.receipt.is_none(),
            Body::Lot(_)
            | Body::Find(_)
            | Body::Person(_)
            | Body::Stage(_)
            | Body::Build(_)
            | Body::Item(_)
            | Body::Setting(_)
            | Body::Receipt(_)
            | Body::ByProduct(_)
            | Body::Tool(_)
            | Body::ToolHours(_)
            | Body::Blade(_)
            | Body::MonthlyCost(_)
            | Body::Income(_)
            | Body::Made(_)
            | Body::HandOver(_)
            | Body::BuildState(_)
            | Body::Retired(_)
            | Body::Same(_)
            | Body::Film(_)
            | Body::SeriesEnd(_)
            | Body::Step(_)
            | Body::Part(_)
            | Body::Resource(_)
            | Body::FreeDay(_)
            | Body::Shot(_)
            | Body::Chapter(_)
            | Body::Outsider(_)
            | Body::Due(_) => false,
        },
    })
}
