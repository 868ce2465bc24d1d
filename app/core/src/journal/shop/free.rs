//! What the plan works with, as facts: what there is a count of, and days that are not as their weekday says.

use crate::{
    journal::{Id, kinds, order::Order},
    measure::Day,
};

/// Clamps, the bench, the dust-free corner.
#[derive(Clone, Debug, PartialEq)]
pub struct Resource {
    /// Its place in time.
    pub order: Order,
    /// As called in the shop.
    pub name: String,
    /// How many there are.
    pub count: u32,
}

impl Resource {
    pub(super) fn read(order: Order, body: &kinds::Resource) -> Resource {
        Resource { order, name: body.name.clone(), count: body.count }
    }
}

/// Days off, or with more time.
#[derive(Clone, Debug, PartialEq)]
pub struct FreeDay {
    /// Its place in time.
    pub order: Order,
    /// Whose.
    pub person: Id,
    /// The first.
    pub first: Day,
    /// The last; never before the first.
    pub last: Day,
    /// More time on each of them; none: off.
    pub extra: Vec<kinds::Window>,
}

impl FreeDay {
    pub(super) fn read(order: Order, body: &kinds::FreeDay) -> FreeDay {
        let last = body.last.unwrap_or(body.day);
        let (first, last) = (body.day.min(last), body.day.max(last));
        FreeDay { order, person: body.person, first, last, extra: body.extra.clone() }
    }

    /// No work on these days.
    pub fn is_off(&self) -> bool {
        self.extra.is_empty()
    }
}
