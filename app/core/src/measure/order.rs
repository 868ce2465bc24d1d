//! Putting in order, with one sort for all types.
//!
//! The library's sort is written anew by the compiler for each type and each key, four kilobytes a time, and the
//! phone downloads each. This one sorts places by way of a function and then moves the items.

use std::cmp::Ordering;

/// Sorting of slices, stable.
pub trait InOrder<T> {
    /// By the items' own order.
    fn order(&mut self)
    where
        T: Ord;

    /// By a comparison.
    fn order_by(&mut self, compare: impl FnMut(&T, &T) -> Ordering);

    /// By a key.
    fn order_by_key<K: Ord>(&mut self, key: impl FnMut(&T) -> K);
}

impl<T> InOrder<T> for [T] {
    fn order(&mut self)
    where
        T: Ord,
    {
        self.order_by(Ord::cmp);
    }

    fn order_by(&mut self, mut compare: impl FnMut(&T, &T) -> Ordering) {
        let swaps = swaps(self.len(), &mut |a, b| match (self.get(a), self.get(b)) {
            (Some(a), Some(b)) => compare(a, b),
            _ => Ordering::Equal,
        });
        for (a, b) in swaps {
            self.swap(a, b);
        }
    }

    fn order_by_key<K: Ord>(&mut self, mut key: impl FnMut(&T) -> K) {
        self.order_by(|a, b| key(a).cmp(&key(b)));
    }
}

/// The swaps, one after the other, that bring what stands at `0..len` into order.
fn swaps(len: usize, compare: &mut dyn FnMut(usize, usize) -> Ordering) -> Vec<(usize, usize)> {
    let mut from: Vec<usize> = (0..len).collect();
    from.sort_by(|a, b| compare(*a, *b));
    let mut swaps = Vec::new();
    for at in 0..len {
        // `from` leads round a ring of places; each swap puts one of them right.
        let mut here = at;
        while let Some(next) = from.get(here).copied().filter(|next| *next != at && *next != here) {
            swaps.push((here, next));
            if let Some(done) = from.get_mut(here) {
                *done = here;
            }
            here = next;
        }
        if let Some(done) = from.get_mut(here) {
            *done = here;
        }
    }
    swaps
}

#[cfg(test)]
mod tests {
    use super::InOrder;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn as_the_library_sorts(items in prop::collection::vec((0..20_u8, any::<u16>()), 0..60)) {
            let mut ours = items.clone();
            ours.order();
            let mut theirs = items.clone();
            theirs.sort();
            prop_assert_eq!(&ours, &theirs);

            let mut ours = items.clone();
            ours.order_by_key(|it| std::cmp::Reverse(it.0));
            let mut theirs = items;
            theirs.sort_by_key(|it| std::cmp::Reverse(it.0));
            prop_assert_eq!(ours, theirs);
        }
    }
}
