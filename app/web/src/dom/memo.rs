//! A memo whose workings are written once, whatever it holds.
//!
//! It is Leptos's memo inside; but what it holds is boxed, so that the compiler writes the graph's code for one type
//! and not anew for each of a hundred.

use leptos::prelude::{Get, GetUntracked, Memo as Graph};
use std::{any::Any, marker::PhantomData, ops::Deref, sync::Arc};

/// What a memo holds: can be compared with what it held before.
trait Held: Send + Sync {
    fn any(&self) -> &dyn Any;
    fn same(&self, other: &dyn Held) -> bool;
}

impl<T: PartialEq + Send + Sync + 'static> Held for T {
    fn any(&self) -> &dyn Any {
        self
    }

    fn same(&self, other: &dyn Held) -> bool {
        other.any().downcast_ref::<T>().is_some_and(|other| self == other)
    }
}

#[derive(Clone)]
struct Boxed(Arc<dyn Held>);

impl PartialEq for Boxed {
    fn eq(&self, other: &Boxed) -> bool {
        self.0.same(&*other.0)
    }
}

/// A value worked out of signals, and again only when they change; it tells of a change only when it is another.
pub struct Memo<T>(Graph<Boxed>, PhantomData<fn() -> T>);

impl<T> Clone for Memo<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Memo<T> {}

impl<T: PartialEq + Send + Sync + 'static> Memo<T> {
    /// Worked out at the first reading.
    pub fn new(work_out: impl Fn(()) -> T + Send + Sync + 'static) -> Memo<T> {
        Memo(graph(Box::new(move || Boxed(Arc::new(work_out(()))))), PhantomData)
    }

    /// Follows it.
    pub fn read(self) -> Ref<T> {
        Ref(self.0.get(), PhantomData)
    }

    /// Looks once.
    pub fn read_untracked(self) -> Ref<T> {
        Ref(self.0.get_untracked(), PhantomData)
    }

    /// Follows it.
    pub fn with<U>(self, of: impl FnOnce(&T) -> U) -> U {
        of(&self.read())
    }

    /// Looks once.
    pub fn with_untracked<U>(self, of: impl FnOnce(&T) -> U) -> U {
        of(&self.read_untracked())
    }
}

impl<T: Clone + PartialEq + Send + Sync + 'static> Memo<T> {
    /// A copy; follows it.
    pub fn get(self) -> T {
        self.read().clone()
    }

    /// A copy; looks once.
    pub fn get_untracked(self) -> T {
        self.read_untracked().clone()
    }
}

/// What works out what the memo holds.
trait Works: Send + Sync {
    fn out(&self) -> Boxed;
}

impl<F: Fn() -> Boxed + Send + Sync> Works for F {
    fn out(&self) -> Boxed {
        self()
    }
}

/// Not generic: here the graph's code is written, once.
fn graph(work_out: Box<dyn Works>) -> Graph<Boxed> {
    Graph::new(move |_| work_out.out())
}

/// What the memo held when it was looked at.
pub struct Ref<T>(Boxed, PhantomData<fn() -> T>);

impl<T: 'static> Deref for Ref<T> {
    type Target = T;

    fn deref(&self) -> &T {
        match self.0.0.any().downcast_ref() {
            Some(held) => held,
            None => unreachable!("a memo of T is made with a T only"),
        }
    }
}
