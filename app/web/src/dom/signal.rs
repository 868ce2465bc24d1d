//! A value that may follow others, and one that may be left out: what a component takes.
//!
//! Leptos's `Signal<T>` is a choice of five signals, and the compiler writes all of them for each type that is ever
//! passed to a component. Here it is a value, or a closure that gives one; where it is kept is written once.

use super::{cell::RwSignal, memo::Memo};
use leptos::prelude::{Get, GetValue, ReadSignal, StoredValue, untrack};
use std::{any::Any, marker::PhantomData, ops::Deref, sync::Arc};

/// What gives a value.
trait Gives<T>: Send + Sync {
    fn give(&self) -> T;
}

impl<T, F: Fn() -> T + Send + Sync> Gives<T> for F {
    fn give(&self) -> T {
        self()
    }
}

enum Of<T> {
    Stays(T),
    Follows(Box<dyn Gives<T>>),
}

type Kept = Arc<dyn Any + Send + Sync>;

/// A value that stays, or one that is worked out of signals each time it is looked at.
pub struct Signal<T>(StoredValue<Kept>, PhantomData<fn() -> T>);

impl<T> Clone for Signal<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Signal<T> {}

/// Not generic: here the arena's code is written, once.
fn keep(what: Kept) -> StoredValue<Kept> {
    StoredValue::new(what)
}

fn kept(at: StoredValue<Kept>) -> Kept {
    at.get_value()
}

impl<T: Clone + Send + Sync + 'static> Signal<T> {
    /// Worked out of signals.
    pub fn derive(gives: impl Fn() -> T + Send + Sync + 'static) -> Signal<T> {
        Signal::of(Of::Follows(Box::new(gives)))
    }

    /// One that stays.
    pub fn stored(value: T) -> Signal<T> {
        Signal::of(Of::Stays(value))
    }

    fn of(of: Of<T>) -> Signal<T> {
        Signal(keep(Arc::new(of)), PhantomData)
    }

    /// A copy; follows what it is worked out of.
    pub fn get(&self) -> T {
        match kept(self.0).downcast_ref::<Of<T>>() {
            Some(Of::Stays(value)) => value.clone(),
            Some(Of::Follows(gives)) => gives.give(),
            None => unreachable!("a signal of T is made with a T only"),
        }
    }

    /// Follows what it is worked out of, and nothing else.
    pub fn track(&self) {
        drop(self.get());
    }

    /// Looks once.
    pub fn get_untracked(&self) -> T {
        untrack(|| self.get())
    }

    /// Follows it.
    pub fn with<U>(&self, of: impl FnOnce(&T) -> U) -> U {
        of(&self.get())
    }

    /// Follows it.
    pub fn read(&self) -> Given<T> {
        Given(self.get())
    }
}

impl<T: Clone + Default + Send + Sync + 'static> Default for Signal<T> {
    fn default() -> Self {
        Signal::stored(T::default())
    }
}

/// What a signal gave when it was looked at.
pub struct Given<T>(T);

impl<T> Deref for Given<T> {
    type Target = T;

    fn deref(&self) -> &T {
        &self.0
    }
}

impl<T: Clone + Send + Sync + 'static> From<T> for Signal<T> {
    fn from(value: T) -> Self {
        Signal::stored(value)
    }
}

impl From<&str> for Signal<String> {
    fn from(value: &str) -> Self {
        Signal::stored(value.to_owned())
    }
}

impl<T: Clone + Send + Sync + 'static> From<T> for Signal<Option<T>> {
    fn from(value: T) -> Self {
        Signal::stored(Some(value))
    }
}

impl<T: Clone + PartialEq + Send + Sync + 'static> From<Memo<T>> for Signal<T> {
    fn from(memo: Memo<T>) -> Self {
        Signal::derive(move || memo.get())
    }
}

impl<T: Clone + Send + Sync + 'static> From<RwSignal<T>> for Signal<T> {
    fn from(signal: RwSignal<T>) -> Self {
        Signal::derive(move || signal.get())
    }
}

impl<T: Clone + Send + Sync + 'static> From<ReadSignal<T>> for Signal<T> {
    fn from(signal: ReadSignal<T>) -> Self {
        Signal::derive(move || signal.get())
    }
}

/// A prop that may be left out, or be nothing for now.
pub struct MaybeProp<T>(Option<Signal<Option<T>>>);

impl<T> Clone for MaybeProp<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for MaybeProp<T> {}

impl<T> Default for MaybeProp<T> {
    fn default() -> Self {
        MaybeProp(None)
    }
}

impl<T: Clone + Send + Sync + 'static> MaybeProp<T> {
    /// Worked out of signals.
    pub fn derive(gives: impl Fn() -> Option<T> + Send + Sync + 'static) -> MaybeProp<T> {
        MaybeProp(Some(Signal::derive(gives)))
    }

    /// A copy; follows what it is worked out of.
    pub fn get(&self) -> Option<T> {
        self.0.as_ref().and_then(Signal::get)
    }
}

impl<T: Clone + Send + Sync + 'static> From<T> for MaybeProp<T> {
    fn from(value: T) -> Self {
        MaybeProp(Some(Signal::stored(Some(value))))
    }
}

impl<T: Clone + Send + Sync + 'static> From<Option<T>> for MaybeProp<T> {
    fn from(value: Option<T>) -> Self {
        MaybeProp(Some(Signal::stored(value)))
    }
}

impl From<&str> for MaybeProp<String> {
    fn from(value: &str) -> Self {
        MaybeProp::from(value.to_owned())
    }
}

impl<T: Clone + Send + Sync + 'static> From<Signal<Option<T>>> for MaybeProp<T> {
    fn from(signal: Signal<Option<T>>) -> Self {
        MaybeProp(Some(signal))
    }
}

impl<T: Clone + Send + Sync + 'static> From<Signal<T>> for MaybeProp<T> {
    fn from(signal: Signal<T>) -> Self {
        MaybeProp::derive(move || Some(signal.get()))
    }
}

impl<T: Clone + PartialEq + Send + Sync + 'static> From<Memo<T>> for MaybeProp<T> {
    fn from(memo: Memo<T>) -> Self {
        MaybeProp::derive(move || Some(memo.get()))
    }
}

impl<T: Clone + PartialEq + Send + Sync + 'static> From<Memo<Option<T>>> for MaybeProp<T> {
    fn from(memo: Memo<Option<T>>) -> Self {
        MaybeProp::derive(move || memo.get())
    }
}

impl<T: Clone + Send + Sync + 'static> From<RwSignal<T>> for MaybeProp<T> {
    fn from(signal: RwSignal<T>) -> Self {
        MaybeProp::derive(move || Some(signal.get()))
    }
}

impl<T: Clone + Send + Sync + 'static> From<RwSignal<Option<T>>> for MaybeProp<T> {
    fn from(signal: RwSignal<Option<T>>) -> Self {
        MaybeProp::derive(move || signal.get())
    }
}
