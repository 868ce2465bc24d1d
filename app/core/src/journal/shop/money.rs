//! What came in, what was finished, what left, and where a build stands, as facts.

use super::{
    Field, Odd,
    facts::{money, money_or_zero, quantity},
};
use crate::{
    journal::{
        Id,
        kinds::{self, Bearer, HandedOver, IncomeKind, Side, State},
        order::Order,
    },
    measure::{Day, Dec, InOrder, Money, Quantity, Ratio, limits},
};

/// One payment.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Received {
    /// The day.
    pub on: Day,
    /// As it arrived; below zero: paid back.
    pub amount: Money,
    /// Tax in it.
    pub tax: Money,
    /// Kept back by whoever passed it on.
    pub fee: Money,
}

impl Received {
    /// Received − tax in it − fee.
    /// Worked example: 565.00 with 65.00 of tax in it and a fee of 16.95 is 483.05.
    pub fn net(&self) -> Money {
        self.amount.minus(self.tax).minus(self.fee)
    }
}

/// Money that comes in.
#[derive(Clone, Debug, PartialEq)]
pub struct Income {
    /// Its place in time.
    pub order: Order,
    /// Where it comes from.
    pub kind: IncomeKind,
    /// Which side earned it.
    pub side: Side,
    /// Words.
    pub what: Option<String>,
    /// Who earned how many parts of it; none: the shop.
    pub shares: Vec<(Bearer, u32)>,
    /// Expected in all, before tax and fees.
    pub expected: Option<Money>,
    /// Expected by this day.
    pub due: Option<Day>,
    /// What arrived, by day.
    pub received: Vec<Received>,
    /// Nothing more will come.
    pub settled: bool,
}

impl Income {
    pub(super) fn read(order: Order, body: &kinds::Income, tell: &mut dyn FnMut(Odd)) -> Income {
        let mut received = Vec::new();
        for it in &body.received {
            let Some(amount) = money(it.amount) else {
                tell(Odd::OutOfRange(Field::Money));
                continue;
            };
            let (tax, fee) = (signed(it.tax, tell), signed(it.fee, tell));
            received.push(Received { on: it.on, amount, tax, fee });
        }
        received.order_by_key(|it: &Received| it.on);
        Income {
            order,
            kind: body.kind,
            side: body.side,
            what: body.what.clone(),
            shares: body.shares.iter().map(|share| (share.bearer, share.parts)).collect(),
            expected: body.expected.map(|expected| money_or_zero(Some(expected), tell)),
            due: body.due,
            received,
            settled: body.settled,
        }
    }
}

impl Income {
    /// What arrived so far, less tax in it and fees.
    pub fn net(&self) -> Money {
        self.received.iter().fold(Money::ZERO, |sum, it| sum.plus(it.net()))
    }

    /// Still expected: settled, none; else expected less what arrived, and never below zero.
    pub fn open(&self) -> Option<Money> {
        let open = self.expected.filter(|_| !self.settled)?.minus(self.net());
        (!open.is_negative() && !open.is_zero()).then_some(open)
    }
}

impl Income {
    /// What arrived so far, tax and fee in it. None: nothing did.
    pub fn arrived(&self) -> Option<Money> {
        let sum = self.received.iter().fold(Money::ZERO, |sum, it| sum.plus(it.amount));
        (!self.received.is_empty()).then_some(sum)
    }
}

/// Tax and fee of what is paid back are below zero too.
fn signed(stored: Option<crate::measure::Dec>, tell: &mut dyn FnMut(Odd)) -> Money {
    let read = stored.map_or(Some(Money::ZERO), money);
    if read.is_none() {
        tell(Odd::OutOfRange(Field::Money));
    }
    read.unwrap_or_default()
}

/// What a lot or a build yielded beside what it was for.
#[derive(Clone, Debug, PartialEq)]
pub struct ByProduct {
    /// Its place in time.
    pub order: Order,
    /// Of what.
    pub of: Bearer,
    /// What it was.
    pub what: String,
    /// What came for it; none where the number can't be.
    pub amount: Option<Money>,
}

impl ByProduct {
    pub(super) fn read(order: Order, body: &kinds::ByProduct, tell: &mut dyn FnMut(Odd)) -> ByProduct {
        let amount = money(body.amount).filter(|it| !it.is_negative());
        if amount.is_none() {
            tell(Odd::OutOfRange(Field::Money));
        }
        ByProduct { order, of: body.of, what: body.what.clone(), amount }
    }
}

/// Finished items.
#[derive(Clone, Debug, PartialEq)]
pub struct Made {
    /// Their place in time.
    pub order: Order,
    /// Of which build.
    pub build: Id,
    /// Good ones.
    pub good: u32,
    /// Of each spoiled one: the share of the work in it.
    pub spoiled: Vec<Ratio>,
    /// What the spoiled ones fetched.
    pub scrap: Money,
}

impl Made {
    pub(super) fn read(order: Order, body: &kinds::Made, tell: &mut dyn FnMut(Odd)) -> Made {
        let mut spoiled = Vec::new();
        for share in &body.spoiled {
            match Ratio::share(share.0) {
                Some(share) => spoiled.push(share),
                None => tell(Odd::OutOfRange(Field::Share)),
            }
        }
        Made {
            order,
            build: body.build,
            good: things(body.good, tell),
            spoiled,
            scrap: money_or_zero(body.scrap, tell),
        }
    }
}

/// Items that left.
#[derive(Clone, Debug, PartialEq)]
pub struct HandOver {
    /// Its place in time.
    pub order: Order,
    /// Of which build.
    pub build: Id,
    /// How many.
    pub count: u32,
    /// What became of them.
    pub how: HandedOver,
    /// The money for them.
    pub income: Option<Id>,
}

impl HandOver {
    pub(super) fn read(order: Order, body: &kinds::HandOver, tell: &mut dyn FnMut(Odd)) -> HandOver {
        HandOver {
            order,
            build: body.build,
            count: things(body.count, tell),
            how: body.how,
            income: body.income,
        }
    }
}

/// What is known of the film of a build.
#[derive(Clone, Debug, PartialEq)]
pub struct Film {
    /// Shot, in minutes.
    pub footage: Option<Quantity>,
    /// As it went out, in minutes; never nought.
    pub finished: Option<Quantity>,
    /// The day on which it went out.
    pub published: Option<Day>,
    /// Where it is to be seen.
    pub address: Option<String>,
}

impl Film {
    pub(super) fn read(body: &kinds::Film, tell: &mut dyn FnMut(Odd)) -> Film {
        let mut minutes = |typed: Option<Dec>| {
            let typed = typed?;
            let read = quantity(typed).filter(|it| !it.is_zero());
            if read.is_none() && typed != Dec::default() {
                tell(Odd::OutOfRange(Field::Quantity));
            }
            read
        };
        Film {
            footage: minutes(body.footage),
            finished: minutes(body.finished),
            published: body.published,
            address: body.address.clone(),
        }
    }
}

fn things(count: u32, tell: &mut dyn FnMut(Odd)) -> u32 {
    if count > limits::MOST_THINGS {
        tell(Odd::OutOfRange(Field::Quantity));
        return 0;
    }
    count
}

/// Where a build stands from then on.
#[derive(Clone, Debug, PartialEq)]
pub struct BuildState {
    /// Its place in time.
    pub order: Order,
    /// Which build.
    pub build: Id,
    /// Where it stands.
    pub state: State,
    /// Of a closing: what its draws cost then, as stored.
    pub frozen: Vec<kinds::Frozen>,
}

impl BuildState {
    pub(super) fn read(order: Order, body: &kinds::BuildState) -> BuildState {
        BuildState { order, build: body.build, state: body.state, frozen: body.frozen.clone() }
    }
}
