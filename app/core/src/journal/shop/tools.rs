//! Tools, blades, run hours that were read off, and monthly costs, as facts.

use super::{
    Field, Odd,
    facts::{money_or_zero, quantity},
};
use crate::{
    journal::{
        Id,
        kinds::{self, Bearer, Side, ToolFrom},
        order::Order,
    },
    measure::{Day, Dec, InOrder, Money, Quantity, Ratio},
};

/// A thing that wears and is used again. Hours are quantities of hours.
#[derive(Clone, Debug, PartialEq)]
pub struct Tool {
    /// Its place in time.
    pub order: Order,
    /// As called at the bench.
    pub name: String,
    /// What it cost; none: not known.
    pub price: Option<Money>,
    /// What it will fetch at the end.
    pub resale: Money,
    /// Run hours that it lasts; none: not known.
    pub life: Option<Quantity>,
    /// Money a run hour.
    pub upkeep: Money,
    /// Rated power, kW.
    pub kw: Quantity,
    /// Share of it drawn at work.
    pub load: Ratio,
    /// Run hours before this journal.
    pub before: Quantity,
    /// Share of the time at a stage, by stage.
    pub duty: Vec<(Id, Ratio)>,
    /// Runs while the camera rolls.
    pub rolls: bool,
    /// How it was come by.
    pub from: ToolFrom,
    /// Hours left in it from a day on, in order.
    pub left: Vec<(Day, Quantity)>,
    /// Gone from this day on.
    pub gone: Option<Day>,
    /// Who gave or lent it.
    pub by: Option<Id>,
    /// Where to get one, as the maker gives it.
    pub link: Option<String>,
}

impl Tool {
    pub(super) fn read(order: Order, body: &kinds::Tool, tell: &mut dyn FnMut(Odd)) -> Tool {
        let mut duty = Vec::new();
        for it in &body.duty {
            match Ratio::share(it.share.0) {
                Some(share) if !share.is_zero() => duty.push((it.stage, share)),
                Some(_) | None => tell(Odd::OutOfRange(Field::Share)),
            }
        }
        let mut left = Vec::new();
        for it in &body.left {
            match quantity(it.hours) {
                Some(hours) => left.push((it.from, hours)),
                None => tell(Odd::OutOfRange(Field::Hours)),
            }
        }
        left.order_by_key(|(from, _)| *from);
        let load = body.load.map_or(Some(Ratio::ONE), |load| Ratio::share(load.0));
        if load.is_none() {
            tell(Odd::OutOfRange(Field::Share));
        }
        Tool {
            order,
            name: body.name.clone(),
            price: body.price.map(|price| money_or_zero(Some(price), tell)),
            resale: money_or_zero(body.resale, tell),
            life: hours(body.life, tell).filter(|life| !life.is_zero()),
            upkeep: money_or_zero(body.upkeep, tell),
            kw: hours(body.kw, tell).unwrap_or_default(),
            load: load.unwrap_or(Ratio::ONE),
            before: hours(body.before, tell).unwrap_or_default(),
            duty,
            rolls: body.rolls,
            from: body.from,
            left,
            gone: body.gone,
            by: body.by,
            link: body.link.clone(),
        }
    }

    /// The share of the time that it runs at a stage; none: it doesn't.
    pub fn duty_at(&self, stage: Id) -> Option<Ratio> {
        self.duty.iter().find(|(at, _)| *at == stage).map(|(_, share)| *share)
    }

    /// What wear will take from it in all: price − resale. None: no price.
    pub fn to_wear(&self) -> Option<Money> {
        self.price.map(|price| price.minus(self.resale).max(Money::ZERO))
    }
}

/// A blade or bit, fitted.
#[derive(Clone, Debug, PartialEq)]
pub struct Blade {
    /// Its place in time: the day it was fitted.
    pub order: Order,
    /// To which tool.
    pub tool: Id,
    /// What it is.
    pub what: String,
    /// What it cost.
    pub cost: Money,
    /// Run hours that it lasts; none: out of range.
    pub life: Option<Quantity>,
    /// Taken off.
    pub off: Option<Day>,
}

impl Blade {
    pub(super) fn read(order: Order, body: &kinds::Blade, tell: &mut dyn FnMut(Odd)) -> Blade {
        let life = hours(Some(body.life), tell).filter(|life| !life.is_zero());
        let (what, cost) = (body.what.clone(), money_or_zero(Some(body.cost), tell));
        Blade { order, tool: body.tool, what, cost, life, off: body.off }
    }
}

/// Run hours, known better than by duty.
#[derive(Clone, Debug, PartialEq)]
pub struct ToolHours {
    /// Their place in time.
    pub order: Order,
    /// Which tool.
    pub tool: Id,
    /// What bears them.
    pub bearer: Bearer,
    /// At which stage.
    pub stage: Id,
    /// Run hours.
    pub hours: Quantity,
}

impl ToolHours {
    pub(super) fn read(order: Order, body: &kinds::ToolHours, tell: &mut dyn FnMut(Odd)) -> ToolHours {
        let hours = hours(Some(body.hours), tell).unwrap_or_default();
        ToolHours { order, tool: body.tool, bearer: body.bearer, stage: body.stage, hours }
    }
}

/// What the shop costs every month.
#[derive(Clone, Debug, PartialEq)]
pub struct MonthlyCost {
    /// Its place in time.
    pub order: Order,
    /// What for.
    pub what: String,
    /// Money a month.
    pub a_month: Money,
    /// Borne by film hours only.
    pub film: bool,
    /// First day.
    pub from: Option<Day>,
    /// Last day.
    pub to: Option<Day>,
    /// kWh in it that the tools drew.
    pub tools_kwh: Quantity,
}

impl MonthlyCost {
    pub(super) fn read(order: Order, body: &kinds::MonthlyCost, tell: &mut dyn FnMut(Odd)) -> MonthlyCost {
        MonthlyCost {
            order,
            what: body.what.clone(),
            a_month: money_or_zero(Some(body.a_month), tell),
            film: body.side == Side::Film,
            from: body.from,
            to: body.to,
            tools_kwh: hours(body.tools_kwh, tell).unwrap_or_default(),
        }
    }

    /// Whether it touches the month that a day is in. Months that have begun count whole.
    pub fn in_month(&self, day: Day) -> bool {
        let begun = self.from.is_none_or(|from| from < day.first_of_next_month());
        begun && self.to.is_none_or(|to| to >= day.first_of_month())
    }
}

/// A number of hours (or kW, or kWh), 0 or more.
fn hours(stored: Option<Dec>, tell: &mut dyn FnMut(Odd)) -> Option<Quantity> {
    let read = quantity(stored?);
    if read.is_none() {
        tell(Odd::OutOfRange(Field::Hours));
    }
    read
}
