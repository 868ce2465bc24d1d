//! Timber that was looked at and is not home, as a fact.

use super::{
    Field, NewStock, Odd,
    stock::{paid, quantity_or_told, share},
};
use crate::{
    journal::{
        Id,
        kinds::{self, Basis, Mark},
        order::Order,
    },
    measure::{Money, Quantity, Ratio, Seconds, Unit},
};

/// One way it may go.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Case {
    /// Share that would be usable.
    pub usable: Ratio,
    /// How long reclaiming all of it would take.
    pub time: Seconds,
}

/// Where it was seen, how much there is, what is asked for it, and how it may go.
#[derive(Clone, Debug, PartialEq)]
pub struct Find {
    /// Its place in time.
    pub order: Order,
    /// What it is.
    pub name: String,
    /// Where it stands.
    pub whence: Option<String>,
    /// How many boards.
    pub boards: Option<u32>,
    /// How much; none where the number can't be.
    pub rough: Option<Quantity>,
    /// In which unit.
    pub unit: Unit,
    /// In which measure.
    pub basis: Basis,
    /// The same in the other measure.
    pub other_measure: Option<Quantity>,
    /// What is asked; none where nobody said.
    pub asked: Option<Money>,
    /// Fees at the place.
    pub fee: Money,
    /// Kilometres there and back.
    pub km: Quantity,
    /// Badly, usually, well.
    pub cases: [Case; 3],
    /// The same thing new.
    pub new: Option<NewStock>,
    /// The treatment mark of old packaging.
    pub mark: Option<Mark>,
    /// The lot that it became.
    pub lot: Option<Id>,
}

impl Find {
    pub(super) fn read(order: Order, body: &kinds::Find, tell: &mut dyn FnMut(Odd)) -> Find {
        let boards = body.boards.filter(|boards| *boards > 0);
        let mut case = |case: kinds::Case| Case {
            usable: share(case.usable, tell).unwrap_or(Ratio::ZERO),
            time: time(case.minutes, boards),
        };
        let kinds::Cases { badly, usually, well } = body.cases;
        let cases = [case(badly), case(usually), case(well)];
        let km = body.km.and_then(|km| km.quantity());
        if body.km.is_some() && km.is_none() {
            tell(Odd::OutOfRange(Field::Distance));
        }
        Find {
            order,
            name: body.name.clone(),
            whence: body.whence.clone(),
            boards,
            rough: quantity_or_told(body.rough, tell),
            unit: body.unit,
            basis: body.basis.unwrap_or(Basis::Actual),
            other_measure: body.other_measure.and_then(|dec| quantity_or_told(dec, tell)),
            asked: body.asked.and_then(|asked| paid(Some(asked), tell)),
            fee: body.fee.and_then(|fee| paid(Some(fee), tell)).unwrap_or_default(),
            km: km.unwrap_or_default(),
            cases,
            new: body.new.as_ref().and_then(|new| NewStock::read(new, tell)),
            mark: body.mark,
            lot: body.lot,
        }
    }
}

/// Of all boards, or as it stands where none are counted.
fn time(minutes: u32, boards: Option<u32>) -> Seconds {
    let each = i64::from(minutes).saturating_mul(60);
    Seconds(each.saturating_mul(boards.map_or(1, i64::from)))
}
