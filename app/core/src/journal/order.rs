//! In which order things count. Within a day: what comes in, what is found, what goes out, what is looked at.

use super::{Body, Id, kinds::State};
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

/// Reopening; receipt and lot; by-product; sort and cull; draw, then return; shelf; made; hand-over; what is read by
/// no stock rule; closing. Things that others refer to come first.
fn rank(body: &Body) -> u8 {
    match body {
        Body::Setting(_)
        | Body::Person(_)
        | Body::Stage(_)
        | Body::Build(_)
        | Body::Item(_)
        | Body::Tool(_)
        | Body::Retired(_)
        | Body::Same(_) => 0,
        Body::BuildState(it) if it.state != State::Closed => 0,
        Body::Lot(_) | Body::Trip(_) | Body::Receipt(_) => 1,
        Body::ByProduct(_) => 2,
        Body::Sort(_) | Body::Cull(_) => 3,
        Body::Draw(draw) if draw.returns.is_none() => 4,
        Body::Draw(_) => 5,
        Body::Shelf(_) => 6,
        Body::Made(_) => 7,
        Body::HandOver(_) => 8,
        Body::Stretch(_)
        | Body::Expense(_)
        | Body::Note(_)
        | Body::Drying(_)
        | Body::Find(_)
        | Body::Photo(_)
        | Body::ToolHours(_)
        | Body::Blade(_)
        | Body::MonthlyCost(_)
        | Body::Income(_)
        | Body::Film(_)
        | Body::SeriesEnd(_)
        | Body::Step(_)
        | Body::BuyLine(_)
        | Body::Part(_)
        | Body::Resource(_)
        | Body::FreeDay(_)
        | Body::Shot(_)
        | Body::Take(_)
        | Body::CardCopied(_)
        | Body::Chapter(_)
        | Body::Outsider(_)
        | Body::Due(_) => 9,
        Body::BuildState(_) => 10,
    }
}
