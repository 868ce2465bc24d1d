//! People, stages, builds, and what is paid directly.

use super::{Field, Odd, Shared};
use crate::measure::InOrder;
use crate::{
    journal::{
        Id,
        kinds::{self, Bearer, Role, Side},
        order::Order,
    },
    measure::{Day, Dec, Money, Quantity, Ratio, limits},
};

/// Money an hour from a day on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rate {
    /// First day in force; none: from the beginning.
    pub from: Option<Day>,
    /// Money an hour.
    pub an_hour: Money,
}

/// Somebody who works here.
#[derive(Clone, Debug, PartialEq)]
pub struct Person {
    /// As called at the bench.
    pub name: String,
    /// Paid hours are money; unpaid ones own labour.
    pub paid: bool,
    /// By first day; the last that has begun is in force.
    pub rates: Vec<Rate>,
    /// Hours that are free for the shop, week by week, as they were written.
    pub free: Vec<kinds::FreeHours>,
}

impl Person {
    pub(super) fn read(body: &kinds::Person, tell: &mut dyn FnMut(Odd)) -> Person {
        let mut rates: Vec<Rate> = Vec::new();
        for rate in &body.rates {
            match money(rate.an_hour) {
                Some(an_hour) if !an_hour.is_negative() => rates.push(Rate { from: rate.from, an_hour }),
                Some(_) | None => tell(Odd::OutOfRange(Field::Rate)),
            }
        }
        // Stable: of two from the same day the one written later in the list is in force.
        rates.order_by_key(|rate| rate.from);
        Person { name: body.name.clone(), paid: body.paid, rates, free: body.free.clone() }
    }

    /// The rate in force on a day.
    pub fn rate_on(&self, day: Day) -> Option<Money> {
        self.rates.iter().rfind(|rate| rate.from.is_none_or(|from| from <= day)).map(|rate| rate.an_hour)
    }
}

/// A kind of work.
#[derive(Clone, Debug, PartialEq)]
pub struct Stage {
    /// As called at the bench.
    pub name: String,
    /// What its hours are for.
    pub side: Side,
    /// What rules hang on.
    pub role: Option<Role>,
    /// Place in the list; the maker's own come after the standing ones.
    pub place: u8,
}

impl Stage {
    pub(super) fn read(body: &kinds::Stage) -> Stage {
        Stage { name: body.name.clone(), side: body.side, role: body.role, place: u8::MAX }
    }
}

/// One job.
#[derive(Clone, Debug, PartialEq)]
pub struct Build {
    /// Its place in time.
    pub order: Order,
    /// As chalked on the slate.
    pub title: String,
    /// How many like pieces.
    pub items: u32,
    /// When it is due.
    pub due: Option<Day>,
    /// When its film is to go out.
    pub publish: Option<Day>,
    /// How long its film is to become, in minutes; never nought.
    pub film_planned: Option<Quantity>,
    /// The build of which this is a repeat.
    pub repeat_of: Option<Id>,
    /// How many in all, repeats counted in; none: the build bears its one-off work itself.
    pub run_planned: Option<u32>,
    /// Share of the worked items that usually spoils.
    pub normal_spoil: Ratio,
}

impl Build {
    pub(super) fn read(order: Order, body: &kinds::Build, tell: &mut dyn FnMut(Odd)) -> Build {
        let normal_spoil = body.normal_spoil.map_or(Some(Ratio::ZERO), |share| Ratio::share(share.0));
        if normal_spoil.is_none() {
            tell(Odd::OutOfRange(Field::Share));
        }
        let planned = body.film_planned.map(|it| quantity(it).filter(|it| !it.is_zero()));
        if planned == Some(None) {
            tell(Odd::OutOfRange(Field::Quantity));
        }
        Build {
            order,
            title: body.title.clone(),
            items: body.items,
            due: body.due,
            publish: body.publish,
            film_planned: planned.flatten(),
            repeat_of: body.repeat_of,
            run_planned: body.run_planned.filter(|run| (1..=limits::MOST_THINGS).contains(run)),
            normal_spoil: normal_spoil.unwrap_or_default(),
        }
    }
}

/// A drive.
#[derive(Clone, Debug, PartialEq)]
pub struct Trip {
    /// Its place in time.
    pub order: Order,
    /// Kilometres there and back; none where the number can't be.
    pub km: Option<Quantity>,
    /// Tolls and the like.
    pub fee: Money,
    /// Who bears how many parts.
    pub shares: Vec<(Bearer, u32)>,
}

impl Trip {
    pub(super) fn read(order: Order, body: &kinds::Trip, tell: &mut dyn FnMut(Odd)) -> Trip {
        let km = quantity(body.km);
        if km.is_none() {
            tell(Odd::OutOfRange(Field::Distance));
        }
        let shares = body.shares.iter().map(|share| (share.bearer, share.parts)).collect();
        Trip { order, km, fee: money_or_zero(body.fee, tell), shares }
    }
}

/// Money paid for one bearer directly.
#[derive(Clone, Debug, PartialEq)]
pub struct Expense {
    /// Its place in time.
    pub order: Order,
    /// What it was for.
    pub what: String,
    /// Before tax; none where the number can't be.
    pub amount: Option<Money>,
    /// Tax that stays in the cost.
    pub tax: Money,
    /// Tax that can be got back.
    pub tax_back: Money,
    /// What bears it.
    pub bearer: Bearer,
    /// What it is for.
    pub side: Side,
    /// The receipt that it is a line of.
    pub receipt: Option<Id>,
    /// What it bears of that receipt's freight, discount and tax.
    pub shared: Shared,
    /// Borne by all that will be made with it.
    pub one_off: bool,
}

impl Expense {
    pub(super) fn read(order: Order, body: &kinds::Expense, tell: &mut dyn FnMut(Odd)) -> Expense {
        let amount = money(body.amount);
        if amount.is_none() {
            tell(Odd::OutOfRange(Field::Money));
        }
        let tax = money_or_zero(body.tax, tell);
        let (tax, tax_back) = if body.tax_back { (Money::ZERO, tax) } else { (tax, Money::ZERO) };
        let (bearer, side, receipt, one_off) = (body.bearer, body.side, body.receipt, body.one_off);
        let (what, shared) = (body.what.clone(), Shared::default());
        Expense { order, what, amount, tax, tax_back, bearer, side, receipt, shared, one_off }
    }

    /// What it costs: tax that can be got back is out. None where the number can't be.
    pub fn cost(&self) -> Option<Money> {
        self.amount.map(|amount| amount.plus(self.tax).plus(self.shared.cost()))
    }

    /// Tax that can be got back, its receipt's counted in.
    pub fn whole_tax_back(&self) -> Money {
        self.tax_back.plus(self.shared.tax_back)
    }
}

/// Words.
#[derive(Clone, Debug, PartialEq)]
pub struct Note {
    /// Their place in time.
    pub order: Order,
    /// The words.
    pub text: String,
    /// What they are about; none: no home yet.
    pub bearer: Option<Bearer>,
}

impl Note {
    pub(super) fn read(order: Order, body: &kinds::Note) -> Note {
        Note { order, text: body.text.clone(), bearer: body.bearer }
    }
}

/// A picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Photo {
    /// Its place in time.
    pub order: Order,
    /// The entry that it is about.
    pub entry: Option<Id>,
    /// What it is of, where that is no entry.
    pub bearer: Option<Bearer>,
}

impl Photo {
    pub(super) fn read(order: Order, body: &kinds::Photo) -> Photo {
        Photo { order, entry: body.entry, bearer: body.bearer }
    }

    /// Whether it is about nothing yet.
    pub fn is_homeless(&self) -> bool {
        self.entry.is_none() && self.bearer.is_none()
    }
}

/// Stored money within the limits.
pub(super) fn money(stored: Dec) -> Option<Money> {
    Money::from_decimal(stored.0)
}

/// None and what is out of range count as nothing; the latter is told.
pub(super) fn money_or_zero(stored: Option<Dec>, tell: &mut dyn FnMut(Odd)) -> Money {
    let Some(stored) = stored else { return Money::ZERO };
    match money(stored) {
        Some(money) if !money.is_negative() => money,
        Some(_) | None => {
            tell(Odd::OutOfRange(Field::Money));
            Money::ZERO
        }
    }
}

/// A stored quantity, 0 or more and within the limits.
pub(super) fn quantity(stored: Dec) -> Option<Quantity> {
    Quantity::from_decimal(stored.0).filter(|it| !it.is_negative())
}
