//! A file's lines brought in: union with what is here, one job in the queue like any act.
//!
//! They are written in one transaction with what the first screen shows, then read on from the last row
//! that was known, so that whatever another window wrote meanwhile is there too.

use super::{Desk, act::Job, inside::Inside, moment, record};
use crate::dom::prelude::*;
use crate::store::{Appended, Failure, NewPhoto, NewRow};
use benchslate_core::{exchange::jsonl::Incoming, journal::Shop};

type Then = Box<dyn Fn(Result<Appended, Failure>)>;

pub(super) struct BringIn {
    incoming: Incoming,
    photos: Vec<NewPhoto>,
    then: Then,
}

impl Desk {
    /// Takes in what a file brings, its photos with it; `then` runs once it is kept, or is not. Not kept: nothing has
    /// changed.
    pub fn bring_in(
        self,
        incoming: Incoming,
        photos: Vec<NewPhoto>,
        then: impl Fn(Result<Appended, Failure>) + 'static,
    ) {
        self.put(Job::BringIn(BringIn { incoming, photos, then: Box::new(then) }));
    }

    pub(super) async fn brings_in(self, BringIn { incoming, photos, then }: BringIn) {
        let Some(store) = self.store() else { return then(Err(Failure::Missing)) };
        let last = self.last.get_untracked();
        let bench = self.inside.with_value(|inside| inside.bench_with(&incoming, last));
        let rows = incoming.lines.into_iter().map(|line| NewRow { id: line.id.to_string(), line: line.text });
        match store.merge(rows.collect(), &photos, bench).await {
            Ok(appended) => {
                self.catch_up().await;
                then(Ok(appended));
            }
            Err(failure) => then(Err(failure)),
        }
    }
}

impl Inside {
    /// What the first screen will show; worked out on a copy, for the lines may not be kept.
    fn bench_with(&self, incoming: &Incoming, last: Option<record::LastMark>) -> Option<String> {
        let mut journal = self.journal.clone();
        // The store decides a clash by the same rule and puts the other line aside.
        let _aside = incoming.merge_into(&mut journal);
        let shop = Shop::fold(&journal, &self.shop.zone);
        record::write(benchslate_core::timing::bench::look(&shop, moment(), None, None), last)
    }
}
