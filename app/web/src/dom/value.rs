//! Values of attributes, classes, style properties and properties: set once, or followed.

use super::{
    memo::Memo,
    signal::{MaybeProp, Signal},
};
use std::borrow::Cow;

/// What an attribute is to be.
pub enum Value {
    /// Not there; a switch that is off.
    Gone,
    Text(Cow<'static, str>),
    /// Worked out again whenever a signal that it reads has changed.
    Live(Box<dyn Gives>),
}

/// Gives a value that may be another each time.
pub trait Gives {
    fn value(&self) -> Value;
}

impl<F: Fn() -> Value> Gives for F {
    fn value(&self) -> Value {
        self()
    }
}

/// Anything that may stand after `name=`.
pub trait IntoValue {
    /// As the one type that the builder takes.
    fn value(self) -> Value;
}

impl IntoValue for Value {
    fn value(self) -> Value {
        self
    }
}

impl IntoValue for &'static str {
    fn value(self) -> Value {
        Value::Text(Cow::Borrowed(self))
    }
}

impl IntoValue for String {
    fn value(self) -> Value {
        Value::Text(Cow::Owned(self))
    }
}

impl IntoValue for u32 {
    fn value(self) -> Value {
        self.to_string().value()
    }
}

/// There, and empty; or not there.
impl IntoValue for bool {
    fn value(self) -> Value {
        if self { Value::Text(Cow::Borrowed("")) } else { Value::Gone }
    }
}

impl<T: IntoValue> IntoValue for Option<T> {
    fn value(self) -> Value {
        self.map_or(Value::Gone, IntoValue::value)
    }
}

impl<T: IntoValue + Clone + Send + Sync + 'static> IntoValue for Signal<T> {
    fn value(self) -> Value {
        (move || self.get()).value()
    }
}

impl<T: IntoValue + Clone + Send + Sync + 'static> IntoValue for MaybeProp<T> {
    fn value(self) -> Value {
        (move || self.get()).value()
    }
}

impl<T: IntoValue + Clone + PartialEq + Send + Sync + 'static> IntoValue for Memo<T> {
    fn value(self) -> Value {
        (move || self.get()).value()
    }
}

impl<F, T> IntoValue for F
where
    F: Fn() -> T + 'static,
    T: IntoValue,
{
    fn value(self) -> Value {
        Value::Live(Box::new(move || self().value()))
    }
}
