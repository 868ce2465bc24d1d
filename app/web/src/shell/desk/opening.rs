//! Opening: paint from the record, read the journal in slices, then let the acts in.

use super::{Desk, act::Job, moment, record};
use crate::dom::prelude::*;
use crate::{
    platform::{clock, idle},
    store::{
        Failure, Piece, Store, StoreEvent, Which,
        device::{Small, recall},
    },
};
use benchslate_core::journal::Id;
use futures_util::future::join;

/// Where the opening stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Phase {
    /// The store is being opened and read; the bench may stand from its record.
    Opening,
    /// All is read.
    Ready,
    /// The store can't be opened: nothing was touched.
    Failed(Failure),
}

/// Reading goes on this long before the browser may paint and answer taps.
const SLICE_MS: i64 = 30;

/// The sample shop, while it is open; else the maker's own.
fn which() -> Which {
    if recall(Small::Sample).is_some() { Which::Sample } else { Which::Own }
}

impl Desk {
    pub(super) async fn open(self) {
        match self.opened().await {
            Ok(()) => {
                if self.trouble.get_untracked() == Some(Failure::Blocked) {
                    // The window that was in the way is closed.
                    self.trouble.set(None);
                }
                self.phase.set(Phase::Ready);
                self.changed();
                self.inside.update_value(|inside| inside.open = true);
                self.work();
                self.check_when_idle().await;
            }
            Err(failure) => self.phase.set(Phase::Failed(failure)),
        }
    }

    async fn opened(self) -> Result<(), Failure> {
        let store = Store::open(which(), move |event| self.hear(event)).await?;
        if let Some((bench, last)) = store.bench().await?.as_deref().and_then(record::read) {
            self.painted.set(Some(bench));
            self.last.set(last);
        }
        let device = Id::parse(&store.device().await?).ok_or(Failure::Refused)?;
        self.inside.update_value(|inside| {
            inside.store = Some(store.clone());
            inside.device = device;
        });
        self.read_all(&store).await?;
        idle::breath().await;
        self.inside.update_value(|inside| inside.fold());
        idle::breath().await;
        Ok(())
    }

    /// Takes in every line above the last that was read, and lets the browser breathe in between. The next piece is on
    /// its way while this one is taken in.
    async fn read_all(self, store: &Store) -> Result<(), Failure> {
        let mut began = clock::now();
        let seq = self.inside.with_value(|inside| inside.seq);
        let mut piece = store.piece_above(seq).await?;
        while piece.newest > piece.up_to {
            let up_to = piece.up_to;
            let (next, ()) = join(store.piece_above(up_to), self.takes_in(piece, &mut began)).await;
            piece = next?;
        }
        self.takes_in(piece, &mut began).await;
        Ok(())
    }

    async fn takes_in(self, piece: Piece, began: &mut i64) {
        self.inside.update_value(|inside| inside.take_in_piece(piece));
        if clock::now().saturating_sub(*began) > SLICE_MS {
            idle::breath().await;
            *began = clock::now();
        }
    }

    pub(super) async fn catch_up(self) {
        let Some(store) = self.store() else { return };
        match self.read_all(&store).await {
            Ok(()) => {
                self.inside.update_value(|inside| inside.fold());
                self.changed();
            }
            Err(failure) => self.trouble.set(Some(failure)),
        }
    }

    fn hear(self, event: StoreEvent) {
        match event {
            StoreEvent::UpTo(seq) => {
                if self.inside.with_value(|inside| inside.seq < seq) {
                    self.put(Job::CatchUp);
                }
            }
            StoreEvent::Trouble(failure) => self.trouble.set(Some(failure)),
            // Drafts are handed to the store at every key; it keeps them by itself.
            StoreEvent::FlushDrafts | StoreEvent::Updated => {}
        }
    }

    /// Counts what is kept against what was written, when there is nothing better to do.
    async fn check_when_idle(self) {
        idle::idle().await;
        let Some(store) = self.store() else { return };
        if let Err(failure) = store.self_check().await {
            self.trouble.set(Some(failure));
        }
        self.now.set(moment());
    }
}
