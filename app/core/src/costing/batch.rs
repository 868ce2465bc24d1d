//! A batch: what one good item cost, what spoilage lost, and what became of the items.
//!
//! C = a side of the true cost without one-off work; E = good + Σ share done of each spoiled; c = (C − scrap) ÷ E. Normal
//! spoiled n = the lesser of what spoiled and rate × worked. Loss = Σ share × (S − n) ÷ S × c. A good item costs
//! (C − scrap − loss) ÷ good + pool ÷ run; beyond the run, what the build bears of the pool ÷ good. Worked example: 12 worked, 2 spoiled, C 600, 10 % → c 50, loss 40, item 56.
//! Source: equivalent units, normal and abnormal spoilage as in cost accounting textbooks (Horngren); one-off work: our
//! own rule, DEVELOPERS.md § Figures.

use super::{Books, BuildCost, Flag, Gap, Part, Rule, Statement, Value, Working};
use crate::{
    journal::{Id, Shop, kinds::HandedOver},
    measure::{Day, Map, Money, Quantity, Ratio, fixed},
};

/// What was finished of a build, and what left.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Items {
    /// Good ones.
    pub good: u32,
    /// Of each spoiled one: the share of the work in it.
    pub spoiled: Vec<Ratio>,
    /// What the spoiled ones fetched.
    pub scrap: Money,
    /// For money.
    pub sold: u32,
    /// For nothing.
    pub given: u32,
    /// By the maker.
    pub kept: u32,
    /// The entries that say so.
    pub entries: Vec<Id>,
    /// Share of the worked items that usually spoils.
    pub normal: Ratio,
}

impl Items {
    /// Good ones that are still there; more left than were made: none.
    pub fn left(&self) -> u32 {
        self.good.saturating_sub(self.sold).saturating_sub(self.given).saturating_sub(self.kept)
    }

    /// So many more left than were made: on two phones the same ones were handed over, or nobody said what was made.
    pub fn beyond(&self) -> u32 {
        let left = self.sold.saturating_add(self.given).saturating_add(self.kept);
        left.saturating_sub(self.good)
    }

    /// What is odd about them.
    pub(crate) fn flag(&self, build: Id) -> Option<Flag> {
        let more = self.beyond();
        (more > 0).then_some(Flag::HandedBeyond { build, more })
    }

    /// Good and spoiled.
    pub fn worked(&self) -> u32 {
        self.good.saturating_add(u32::try_from(self.spoiled.len()).unwrap_or(u32::MAX))
    }

    /// Σ share done of the spoiled, in millionths.
    fn done(&self) -> i128 {
        self.spoiled.iter().fold(0, |sum, share| sum.saturating_add(share.micros()))
    }

    /// Items' worth of work: good + Σ share done.
    pub fn equivalent(&self) -> Quantity {
        Quantity::from_micros(i128::from(self.good).saturating_mul(fixed::SCALE).saturating_add(self.done()))
    }

    /// As many spoiled as is usual, and no more than did.
    pub fn usual(&self) -> Quantity {
        let spoiled = i128::try_from(self.spoiled.len()).unwrap_or(0).saturating_mul(fixed::SCALE);
        let usual = i128::from(self.worked()).saturating_mul(self.normal.micros());
        Quantity::from_micros(usual.min(spoiled))
    }
}

/// Items of every build that has any, up to a day.
pub(crate) fn made(shop: &Shop, last: Day) -> Map<Id, Items> {
    let mut all: Map<Id, Items> = Map::new();
    for it in shop.made.iter().filter(|it| it.order.day <= last) {
        let items = all.entry(it.build).or_default();
        items.good = items.good.saturating_add(it.good);
        items.spoiled.extend_from_slice(&it.spoiled);
        items.scrap = items.scrap.plus(it.scrap);
        items.entries.push(it.order.entry);
    }
    for it in shop.handed.iter().filter(|it| it.order.day <= last) {
        let items = all.entry(it.build).or_default();
        let count = match it.how {
            HandedOver::Sold => &mut items.sold,
            HandedOver::Given => &mut items.given,
            HandedOver::Kept => &mut items.kept,
        };
        *count = count.saturating_add(it.count);
        items.entries.push(it.order.entry);
    }
    for (build, items) in all.iter_mut() {
        items.normal = shop.builds.get(build).map(|build| build.normal_spoil).unwrap_or_default();
    }
    all
}

/// One good item, and what spoilage lost: of the piece side, or of the whole build.
#[derive(Clone, Debug, PartialEq)]
pub struct Batch {
    /// What all items bear, one-off work apart.
    pub cost: Money,
    /// Of one item's worth of work; none: nothing made yet.
    pub each: Option<Money>,
    /// Spoilage beyond what is usual.
    pub loss: Money,
    /// Its share of the one-off work, for one item.
    pub one_off_each: Money,
    /// One good item; without a value while nothing good is made.
    pub item: Statement,
}

/// Of a side of the cost (`cost`, one-off work apart).
pub(crate) fn batch(
    build: Id,
    items: &Items,
    cost: &Statement,
    one_off: Money,
    one_off_each: Money,
) -> Batch {
    let cost_value = cost.money().unwrap_or_default().minus(one_off);
    let less_scrap = cost_value.minus(items.scrap);
    let equivalent = items.equivalent();
    let each = fixed::mul_div(less_scrap.micros(), fixed::SCALE, equivalent.micros()).map(Money::from_micros);
    let loss = loss(items, less_scrap);
    let good = less_scrap.minus(loss);
    let own = (items.good > 0).then(|| fixed::mul_div(good.micros(), 1, i128::from(items.good))).flatten();
    let item = own.map(|own| Money::from_micros(own).plus(one_off_each));
    let entry = items.entries.first().copied().unwrap_or(build);
    let line = |rule: Rule, money: Money| {
        let part = Part::entry(entry, Some(Value::Money(money)), Working::Amount);
        Statement::sum(rule, vec![part], Vec::new(), Vec::new())
    };
    let mut parts = vec![Part::plus(Statement {
        rule: Rule::Batch,
        value: Some(Value::Money(cost_value)),
        ..cost.clone()
    })];
    if !one_off.is_zero() {
        // What was opened holds the one-off share too; without it the parts would not add up to what stands there.
        parts = vec![Part::plus(Statement::sum(
            Rule::Batch,
            vec![Part::plus(cost.clone()), Part::minus(line(Rule::OneOffEach, one_off))],
            Vec::new(),
            Vec::new(),
        ))];
    }
    if !items.scrap.is_zero() {
        parts.push(Part::minus(line(Rule::Scrap, items.scrap)));
    }
    if !loss.is_zero() {
        parts.push(Part::minus(line(Rule::Loss, loss)));
    }
    if !one_off_each.is_zero() {
        parts.push(Part::plus(line(Rule::OneOffEach, one_off_each)));
    }
    let gaps = if items.good == 0 { vec![Gap::NothingMade { build }] } else { Vec::new() };
    let statement = Statement::carrying(
        Rule::Item { good: items.good },
        parts,
        gaps,
        items.flag(build).into_iter().collect(),
    );
    let item = Statement { value: item.map(Value::Money), ..statement };
    Batch { cost: cost_value, each, loss, one_off_each, item }
}

/// Σ share × (S − n) ÷ S × c, rounded once.
fn loss(items: &Items, less_scrap: Money) -> Money {
    let spoiled = i128::try_from(items.spoiled.len()).unwrap_or(0).saturating_mul(fixed::SCALE);
    let beyond = spoiled.saturating_sub(items.usual().micros());
    let over = items.equivalent().micros().saturating_mul(spoiled);
    let share = items.done().saturating_mul(beyond);
    Money::from_micros(fixed::mul_div(less_scrap.micros(), share, over).unwrap_or(0))
}

/// What became of the items, in money.
#[derive(Clone, Debug, PartialEq)]
pub struct Profit {
    /// Net income of the piece side less the cost of those sold; none while an item's cost can't be said.
    pub on_sold: Option<Money>,
    /// Given away, at cost.
    pub given: Option<Money>,
    /// Kept, at cost.
    pub kept: Option<Money>,
    /// Still there, at cost.
    pub left: Option<Money>,
}

pub(crate) fn profit(items: &Items, item: Option<Money>, net_piece: Money) -> Profit {
    let of = |count: u32| Some(Money::from_micros(item?.micros().checked_mul(i128::from(count))?));
    Profit {
        on_sold: of(items.sold).map(|cost| net_piece.minus(cost)),
        given: of(items.given),
        kept: of(items.kept),
        left: of(items.left()),
    }
}

impl Books {
    /// What was finished of a build, and what left.
    pub fn items(&self, build: Id) -> Items {
        self.made.get(&build).cloned().unwrap_or_default()
    }
}

impl BuildCost {
    /// What became of the items, in money.
    pub fn profit(&self) -> Profit {
        profit(&self.items, self.batch.item.money(), self.earned.net_piece)
    }
}
