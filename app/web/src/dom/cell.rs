//! A signal that can be set, its workings written once, whatever it holds.
//!
//! It is Leptos's signal inside; but what it holds is boxed, as what a memo holds.

use leptos::prelude::{Get, GetUntracked, RwSignal as Graph, Set, Track};
use std::{any::Any, marker::PhantomData, ops::Deref, sync::Arc};

type Kept = Arc<dyn Any + Send + Sync>;

/// A value that tells of each time it is set.
pub struct RwSignal<T>(Graph<Kept>, PhantomData<fn() -> T>);

impl<T> Clone for RwSignal<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for RwSignal<T> {}

/// Not generic: here the graph's code is written, once.
mod once {
    use super::{Get, GetUntracked, Graph, Kept, Set, Track};

    pub fn new(value: Kept) -> Graph<Kept> {
        Graph::new(value)
    }

    pub fn get(it: Graph<Kept>) -> Kept {
        it.get()
    }

    pub fn peek(it: Graph<Kept>) -> Kept {
        it.get_untracked()
    }

    pub fn try_peek(it: Graph<Kept>) -> Option<Kept> {
        it.try_get_untracked()
    }

    pub fn set(it: Graph<Kept>, value: Kept) {
        it.set(value);
    }

    pub fn try_set(it: Graph<Kept>, value: Kept) -> bool {
        it.try_set(value).is_none()
    }

    pub fn track(it: Graph<Kept>) {
        it.track();
    }
}

impl<T: Send + Sync + 'static> RwSignal<T> {
    /// Holds this from the beginning.
    pub fn new(value: T) -> RwSignal<T> {
        RwSignal(once::new(Arc::new(value)), PhantomData)
    }

    /// Holds this from now on, and tells.
    pub fn set(self, value: T) {
        once::set(self.0, Arc::new(value));
    }

    /// The same, unless the signal is gone with its owner; says whether it was there.
    pub fn try_set(self, value: T) -> bool {
        once::try_set(self.0, Arc::new(value))
    }

    /// Follows it.
    pub fn read(self) -> Held<T> {
        Held(once::get(self.0), PhantomData)
    }

    /// Looks once.
    pub fn read_untracked(self) -> Held<T> {
        Held(once::peek(self.0), PhantomData)
    }

    /// Follows it.
    pub fn with<U>(self, of: impl FnOnce(&T) -> U) -> U {
        of(&self.read())
    }

    /// Looks once.
    pub fn with_untracked<U>(self, of: impl FnOnce(&T) -> U) -> U {
        of(&self.read_untracked())
    }

    /// Looks once; `None` where the signal is gone with its owner.
    pub fn try_with_untracked<U>(self, of: impl FnOnce(&T) -> U) -> Option<U> {
        once::try_peek(self.0).map(|held| of(&Held(held, PhantomData)))
    }

    /// Follows it without looking.
    pub fn track(self) {
        once::track(self.0);
    }
}

impl<T: Clone + Send + Sync + 'static> RwSignal<T> {
    /// A copy; follows it.
    pub fn get(self) -> T {
        self.read().clone()
    }

    /// A copy; looks once.
    pub fn get_untracked(self) -> T {
        self.read_untracked().clone()
    }

    /// Sets what is made of what it holds, and tells.
    pub fn update(self, change: impl FnOnce(&mut T)) {
        let mut value = self.get_untracked();
        change(&mut value);
        self.set(value);
    }
}

impl<T: Default + Send + Sync + 'static> Default for RwSignal<T> {
    fn default() -> Self {
        RwSignal::new(T::default())
    }
}

/// What the signal held when it was looked at.
pub struct Held<T>(Kept, PhantomData<fn() -> T>);

impl<T: 'static> Deref for Held<T> {
    type Target = T;

    fn deref(&self) -> &T {
        match self.0.downcast_ref() {
            Some(held) => held,
            None => unreachable!("a signal of T is made with a T only"),
        }
    }
}
