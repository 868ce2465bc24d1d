//! Planned work as facts.

use super::{
    facts::quantity,
    odd::{Field, Odd},
};
use crate::{
    journal::{Id, kinds, order::Order},
    measure::{Day, Dec, Quantity},
};

/// A piece of planned work.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// Its place in time: when it was thought of.
    pub order: Order,
    /// As it was written.
    pub body: kinds::Step,
    /// Hours of each person: quick, usual, slow; none where nobody has said.
    pub hours: [Option<Quantity>; 3],
    /// Hours left, where the maker knows better.
    pub left: Option<Quantity>,
}

impl Step {
    pub(super) fn read(order: Order, body: &kinds::Step, tell: &mut dyn FnMut(Odd)) -> Step {
        let mut hours = |typed: Option<Dec>| {
            let typed = typed?;
            let read = quantity(typed);
            if read.is_none() {
                tell(Odd::OutOfRange(Field::Hours));
            }
            read
        };
        Step {
            order,
            hours: [hours(body.quick), hours(body.usual), hours(body.slow)],
            left: hours(body.left),
            body: body.clone(),
        }
    }

    /// Of which build.
    pub fn build(&self) -> Id {
        self.body.build
    }

    /// The day on which it was done.
    pub fn done(&self) -> Option<Day> {
        self.body.done
    }
}
