//! The books for what may wait: made stage by stage, once no tap comes any more.
//!
//! Of years of entries they take a fifth of a second on a slow phone. A figure beside a key is not worth that between
//! two taps: the last one stands until there is time for the next.

use super::{
    Desk,
    inside::{Inside, View},
};
use crate::dom::prelude::*;
use crate::platform::idle;
use benchslate_core::{
    costing::{Books, Closing},
    measure::Instant,
};
use leptos::task::spawn_local;
use std::ops::ControlFlow;

/// Of so many lines or fewer the books are made at once: sooner than anyone sees a figure come.
const AT_ONCE: usize = 2000;
/// Nothing was written for so long: whoever taps on is not kept waiting.
const PAUSE_MS: i32 = 1200;

impl Desk {
    /// As [`Desk::books`], for what may come a moment later: looks at the books that were made last, and again when
    /// newer ones are. None while there are none.
    pub fn books_at_leisure<T>(self, look: impl FnOnce(&Books, &View) -> T) -> Option<T> {
        if self.inside.with_value(|inside| inside.journal.len() <= AT_ONCE) {
            return Some(self.books(look));
        }
        self.made.track();
        let as_of = self.as_of.get_untracked();
        let (seen, true_still) = self.inside.with_value(|inside| {
            inside.wanted.set(true);
            let kept = inside.books.borrow();
            let true_still = kept.as_ref().is_some_and(|made| inside.is_true(made, as_of));
            (kept.as_ref().map(|(_, books)| look(books, &inside.view())), true_still)
        });
        if !true_still {
            self.make_where_wanted();
        }
        seen
    }

    /// Begins to make them, where something on view follows them and nobody has begun.
    pub(super) fn make_where_wanted(self) {
        if self.inside.with_value(|inside| inside.wanted.get() && !inside.making.replace(true)) {
            spawn_local(self.make_at_leisure());
        }
    }

    async fn make_at_leisure(self) {
        while !self.made_in_a_pause().await {}
        self.inside.with_value(|inside| {
            inside.making.set(false);
            // Whoever still follows them says so again.
            inside.wanted.set(false);
        });
        self.made.update(|made| *made = made.wrapping_add(1));
    }

    /// False: something was written meanwhile.
    async fn made_in_a_pause(self) -> bool {
        let before = self.inside.with_value(|inside| inside.change);
        let still = |inside: &Inside| inside.change == before && !inside.busy;
        idle::pause(PAUSE_MS).await;
        let as_of: Instant = self.as_of.get_untracked();
        if self.inside.with_value(|inside| {
            inside.books.borrow().as_ref().is_some_and(|made| inside.is_true(made, as_of))
        }) {
            return true;
        }
        let mut going =
            self.inside.with_value(|inside| still(inside).then(|| Closing::begin(&inside.shop, as_of)));
        while let Some(closing) = going.take() {
            idle::turn().await;
            let gone_on = self.inside.with_value(|inside| still(inside).then(|| closing.go_on(&inside.shop)));
            match gone_on {
                Some(ControlFlow::Continue(next)) => going = Some(next),
                Some(ControlFlow::Break(books)) => {
                    self.inside.with_value(|inside| inside.books.replace(Some((inside.change, books))));
                    return true;
                }
                None => return false,
            }
        }
        false
    }
}
