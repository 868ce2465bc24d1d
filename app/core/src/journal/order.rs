//! In which order things count. Within a day: what comes in, what is found, what goes out, what is looked at.

use super::{Body, Id};
use crate::measure::{Day, Instant, Zone};

/// Day, then rank of the kind within a day, then time if given, then entry id.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Order {
    /// The local day.
    pub day: Day,
    /// Place within the day, by kind.
    pub rank: u8,
    /// The moment; a whole day comes before its moments.
    pub time: Option<Instant>,
    /// Breaks ties alike on every device.
    pub entry: Id,
}

impl Order {
    pub(crate) fn of(entry: Id, body: &Body, zone: &Zone) -> Order {
        let on = body.on();
        Order { day: on.day(zone), rank: rank(body), time: on.instant(), entry }
    }
}

/// Lot; sort and cull; draw, then return; shelf. The kinds that no stock rule reads come first.
fn rank(body: &Body) -> u8 {
    match body {
        Body::Setting(_) | Body::Person(_) | Body::Stage(_) | Body::Build(_) | Body::Item(_) => 0,
        Body::Lot(_) | Body::Trip(_) => 1,
        Body::Sort(_) => 2,
        Body::Draw(draw) if draw.returns.is_none() => 3,
        Body::Draw(_) => 4,
        Body::Shelf(_) => 5,
        Body::Stretch(_) | Body::Expense(_) | Body::Note(_) => 6,
    }
}
