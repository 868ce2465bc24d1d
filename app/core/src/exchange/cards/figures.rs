//! What a card is about, in core's own figures: parts with what they are made of, how large they are, what they show.
//!
//! Shown figures are those of the sheets, apportioned under the figure that leads. Sizes are for drawing only.

use super::hatching::Made;
use crate::{
    costing::{Books, BuildCost, CostKind, OneSide, Part as Term, Rule, Statement, present},
    journal::{
        Id, Shop,
        kinds::{Bearer, Side},
    },
    measure::{InOrder, Money, Seconds, Shown, Weekday, fixed, minutes},
    timing::breakdown::{Of, breakdown},
};
use rust_decimal::Decimal;
use std::cmp::Reverse;

/// Which card.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum About {
    /// What it truly cost, by kind.
    Kinds,
    /// Salvage against the same timber new.
    Salvage,
    /// Where the hours went.
    Hours,
    /// What one good item cost.
    Item,
}

impl About {
    /// Every card.
    pub const ALL: [About; 4] = [About::Kinds, About::Salvage, About::Hours, About::Item];

    /// Its name in a file name.
    pub fn code(self) -> &'static str {
        match self {
            About::Kinds => "true-cost",
            About::Salvage => "salvage",
            About::Hours => "hours",
            About::Item => "one-item",
        }
    }
}

/// What a part is called.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// A kind of cost.
    Kind(CostKind),
    /// A kind of work.
    Stage(Id),
    /// So many more stages, together.
    Others(usize),
    /// The same timber new.
    Instead,
    /// Money, helpers, vehicle and wear.
    Took,
    /// Own time at its rate.
    OwnTime,
    /// What is left of the price new.
    Saved,
    /// What went beyond it.
    Dearer,
}

/// What stands beside a name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Amount {
    /// Money.
    Money(Shown),
    /// Hours, in whole minutes.
    Hours(Seconds),
    /// Nothing can be said.
    Unknown,
}

/// One part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// What it is.
    pub name: Name,
    /// How it is drawn.
    pub made: Made,
    /// How large, 0 or more.
    pub size: f64,
    /// What it shows.
    pub amount: Amount,
    /// The hours in it.
    pub hours: Option<Seconds>,
}

/// Everything that a card may show.
#[derive(Clone, Debug, PartialEq)]
pub struct Figures {
    /// Which card.
    pub about: About,
    /// What leads.
    pub whole: Amount,
    /// Largest layer first where they have no order of their own.
    pub parts: Vec<Part>,
    /// Own hours that are in it.
    pub hours: Option<Seconds>,
    /// Good ones made, and what one of them cost; none where there is one alone.
    pub each: Option<(u32, Shown)>,
    /// Of hours: the sides of the whole. Of an item: all good ones, and what spoilage lost.
    pub bar: Vec<(Made, f64)>,
}

impl Figures {
    /// Salvage came dearer than new.
    pub fn is_dearer(&self) -> bool {
        self.parts.iter().any(|part| part.name == Name::Dearer)
    }
}

/// How many stages stand by themselves.
const STAGES: usize = 7;

/// The figures of a card; none where the build has none of them.
pub fn figures(shop: &Shop, books: &Books, build: Id, about: About) -> Option<Figures> {
    let cost = || books.build_cost(build);
    match about {
        About::Kinds => kinds(&cost(), shop.minor()),
        About::Salvage => salvage(&cost(), shop.minor()),
        About::Hours => hours(shop, books, build),
        About::Item => item(&cost(), shop.minor()),
    }
}

/// A drawing's measure of money.
fn size(money: Money) -> f64 {
    f64::try_from(money.to_decimal()).map_or(0.0, |it| it.max(0.0))
}

fn long(seconds: Seconds) -> f64 {
    f64::try_from(Decimal::from(seconds.0)).map_or(0.0, |it| it.max(0.0))
}

/// Own hours, those in the timber too.
fn own_hours(cost: &BuildCost) -> Option<Seconds> {
    let hours = cost.own_hours.hours().filter(|hours| !hours.is_zero())?;
    Some(minutes::alone(hours.seconds()))
}

fn each(cost: &BuildCost, minor: u8) -> Option<(u32, Shown)> {
    let item = cost.batch.item.money().filter(|_| cost.items.good > 1)?;
    Some((cost.items.good, Shown::alone(item, minor)))
}

fn money(shown: Option<Shown>) -> Amount {
    shown.map_or(Amount::Unknown, Amount::Money)
}

fn kinds(cost: &BuildCost, minor: u8) -> Option<Figures> {
    let whole = present::alone(&cost.true_cost, minor);
    let parts = cost.true_cost.parts.iter().zip(&whole.parts).filter_map(|(part, shown)| {
        let Rule::Kind { kind, hours } = part.statement()?.rule else { return None };
        let hours = (kind == CostKind::Labour).then(|| minutes::alone(hours.seconds()));
        let exact = part.signed_money().unwrap_or_default();
        Some(Part {
            name: Name::Kind(kind),
            made: Made::Kind(kind),
            size: size(exact),
            amount: money(*shown),
            hours,
        })
    });
    let parts: Vec<Part> = parts.collect();
    let some = parts.iter().any(|part| part.size > 0.0);
    some.then(|| Figures {
        about: About::Kinds,
        whole: money(whole.shown),
        parts,
        hours: own_hours(cost),
        each: each(cost, minor),
        bar: Vec::new(),
    })
}

fn salvage(cost: &BuildCost, minor: u8) -> Option<Figures> {
    let saving = &cost.saving.as_ref()?.at_rate;
    let whole = present::alone(saving, minor);
    let shown = whole.shown?;
    let mut parts: Vec<Part> =
        saving.parts.iter().zip(&whole.parts).filter_map(|(part, shown)| term(part, *shown)).collect();
    let left = saving.money().unwrap_or_default();
    let (name, made, size) = if left.is_negative() {
        (Name::Dearer, Made::Loss, size(left.negated()))
    } else {
        (Name::Saved, Made::Plain, size(left))
    };
    let amount = Amount::Money(if left.is_negative() { shown.negated() } else { shown });
    parts.push(Part { name, made, size, amount, hours: None });
    Some(Figures { about: About::Salvage, whole: amount, parts, hours: None, each: None, bar: Vec::new() })
}

fn term(part: &Term, shown: Option<Shown>) -> Option<Part> {
    let below: &Statement = part.statement()?;
    let (name, made, hours) = if below.rule == Rule::BuildInstead {
        (Name::Instead, Made::Plain, None)
    } else if below.rule == Rule::BuildTook {
        (Name::Took, Made::Kind(CostKind::Salvaged), None)
    } else if let Rule::BuildOwnTime { hours } = below.rule {
        (Name::OwnTime, Made::Kind(CostKind::Labour), Some(minutes::alone(hours.seconds())))
    } else {
        return None;
    };
    Some(Part { name, made, size: size(below.money().unwrap_or_default()), amount: money(shown), hours })
}

fn hours(shop: &Shop, books: &Books, build: Id) -> Option<Figures> {
    let all = breakdown(shop, Bearer::Build(build), books.as_of, Weekday::Monday);
    let side = |of: Of| {
        let Of::Side(side) = of else { return Made::Piece };
        match side {
            Side::Piece => Made::Piece,
            Side::Film => Made::Film,
            Side::Both => Made::Both,
        }
    };
    let bar = all.by_stage.iter().map(|row| (side(row.of), long(row.worked))).collect();
    let stages = all.by_stage.iter().flat_map(|of_side| {
        of_side.rows.iter().filter_map(move |row| {
            let Of::Stage(stage) = row.of else { return None };
            Some((stage, side(of_side.of), row.worked, row.shown))
        })
    });
    let mut stages: Vec<_> = stages.collect();
    stages.order_by_key(|(.., worked, _)| Reverse(*worked));
    // One more stage takes no more room than a row for one other.
    let kept = if stages.len() > STAGES.saturating_add(1) { STAGES } else { stages.len() };
    let others = stages.split_off(kept);
    let row = |(stage, made, worked, shown): (Id, Made, Seconds, Seconds)| Part {
        name: Name::Stage(stage),
        made,
        size: long(worked),
        amount: Amount::Hours(shown),
        hours: None,
    };
    let mut parts: Vec<Part> = stages.into_iter().map(row).collect();
    if !others.is_empty() {
        let (worked, shown) =
            others.iter().fold((Seconds::ZERO, Seconds::ZERO), |sum, (.., worked, shown)| {
                (sum.0.plus(*worked), sum.1.plus(*shown))
            });
        let name = Name::Others(others.len());
        parts.push(Part {
            name,
            made: Made::Plain,
            size: long(worked),
            amount: Amount::Hours(shown),
            hours: None,
        });
    }
    let some = all.worked > Seconds::ZERO;
    some.then_some(Figures {
        about: About::Hours,
        whole: Amount::Hours(all.shown),
        parts,
        hours: None,
        each: None,
        bar,
    })
}

/// The kinds of one item by the piece side's: what spoilage lost and scrap brought is taken off all of them alike.
fn item(cost: &BuildCost, minor: u8) -> Option<Figures> {
    let exact = cost.batch.item.money().filter(|_| cost.items.good > 0)?;
    let whole = Shown::alone(exact, minor);
    let piece = cost.sides.part(|rule| matches!(rule, Rule::Side { side: OneSide::Piece, .. }));
    let terms = piece.unwrap_or(&cost.true_cost).parts.iter().filter_map(|part| {
        let Rule::Kind { kind, .. } = part.statement()?.rule else { return None };
        Some((kind, part.signed_money().unwrap_or_default().micros().max(0)))
    });
    let terms: Vec<(CostKind, i128)> = terms.filter(|(_, weight)| *weight > 0).collect();
    let weights: Vec<i128> = terms.iter().map(|(_, weight)| *weight).collect();
    let shares: Vec<Money> =
        fixed::allocate(exact.micros(), &weights).into_iter().map(Money::from_micros).collect();
    let parts =
        terms.iter().zip(shares.iter().zip(whole.parts(&shares))).map(|((kind, _), (share, shown))| Part {
            name: Name::Kind(*kind),
            made: Made::Kind(*kind),
            size: size(*share),
            amount: Amount::Money(shown),
            hours: None,
        });
    let parts: Vec<Part> = parts.collect();
    let good = f64::from(cost.items.good) * size(exact);
    let bar = vec![(Made::Plain, good), (Made::Loss, size(cost.batch.loss))];
    (!parts.is_empty()).then_some(Figures {
        about: About::Item,
        whole: Amount::Money(whole),
        parts,
        hours: None,
        each: Some((cost.items.good, whole)),
        bar: bar.into_iter().filter(|(_, size)| *size > 0.0).collect(),
    })
}
