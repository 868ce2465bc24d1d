//! What a build cost: true cost by kind, Spent, Used up and the bridge between them.
//!
//! Each is a tree down to the entries. Source: our own rule, DEVELOPERS.md § Figures.
//! Never: a figure of its own; all money comes from the rows of `books`.

mod bridge;
mod hours;
mod kinds;
mod lines;
mod spent;

use super::{
    Batch, Books, BuildSaving, CostKind, Earned, Flag, Gap, Hours, Items, Key, Part, Parts, Path, Rule,
    Statement, Value, batch, income, sides::OneSide,
};
use crate::{
    journal::{
        Id,
        kinds::{Bearer, Source},
    },
    measure::{Day, Money, Seconds, fixed, minutes},
};
use kinds::Rows;
pub(crate) use kinds::{Lines, sum_of};
pub(crate) use lines::{CostLine, Group, one_off_lines};

/// The sheet of a build.
#[derive(Clone, Debug, PartialEq)]
pub struct BuildCost {
    /// What bears it.
    pub bearer: Bearer,
    /// All parts, by kind.
    pub true_cost: Statement,
    /// Used up by way of the bridge, then the rest of every kind: the true cost again.
    pub bridge: Statement,
    /// Used up by kind, for its bar.
    pub used_up_by_kind: Statement,
    /// Tax to be got back, apart.
    pub tax_back: Statement,
    /// Own hours: worked on it, and in the timber.
    pub own_hours: Statement,
    /// No value before income is kept.
    pub hour_earned: Statement,
    /// The cost as a vector of parts.
    pub parts: Parts,
    /// What it drew of stock, as a vector of parts.
    pub drawn: Parts,
    /// The parts of the piece, and of the film.
    pub side_parts: (Parts, Parts),
    /// How what is for both sides is shared.
    pub key: Key,
    /// The true cost, side by side.
    pub sides: Statement,
    /// What came in and is still to come.
    pub earned: Earned,
    /// Supplied goods that were drawn, as income of the film.
    pub in_kind: Statement,
    /// What was finished, and what left.
    pub items: Items,
    /// One good item, by the piece side.
    pub batch: Batch,
    /// One good item, film and all.
    pub batch_all: Batch,
    /// The pool of one-off work that it shares in; none: it bears its own.
    pub one_off: Option<OneOff>,
    /// What will be left once all that is planned is done.
    pub outlook: Statement,
    /// How far it stands above what it will fetch; none: it doesn't, or nobody knows.
    pub above: Option<Statement>,
    /// What the salvage that it drew saved; none: it drew none.
    pub saving: Option<BuildSaving>,
}

/// A pool of one-off work, seen from one build.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OneOff {
    /// All of it.
    pub pool: Parts,
    /// What this build bears.
    pub share: Parts,
    /// Still to be borne by what will be made; once the run has ended, written off.
    pub rest: Parts,
    /// The day on which it was said that no more will be made.
    pub ended: Option<Day>,
    /// To be made in all.
    pub run: u32,
    /// For each item of the run.
    pub each: Money,
    /// Of this build so many items can bear it; more of them share it.
    pub most: u32,
}

impl OneOff {
    /// What each of so many good items of this build bears: together never more than the build does.
    pub fn each_of(&self, good: u32) -> Money {
        if good <= self.most && self.most > 0 {
            return self.each;
        }
        let all = self.pool.total().micros().checked_mul(i128::from(self.most));
        let over = i128::from(self.run).saturating_mul(i128::from(good));
        let each = all.and_then(|all| fixed::mul_div(all, 1, over));
        each.map(Money::from_micros).unwrap_or_default()
    }
}

impl BuildCost {
    /// Money of lots bought for it, whole, its direct expenses and paid labour.
    pub fn spent(&self) -> Option<&Statement> {
        self.used_up()?.part(|rule| *rule == Rule::Spent)
    }

    /// Money parts of what it drew, its direct expenses and paid labour.
    pub fn used_up(&self) -> Option<&Statement> {
        self.bridge.part(|rule| *rule == Rule::UsedUp)
    }

    /// Every figure that an address can begin with.
    pub fn roots(&self) -> Vec<&Statement> {
        let BuildCost { true_cost, bridge, used_up_by_kind, tax_back, own_hours, hour_earned, .. } = self;
        let BuildCost { sides, earned, in_kind, batch, .. } = self;
        let Earned { net, expected, tax, .. } = earned;
        let mut roots = vec![true_cost, bridge, used_up_by_kind, tax_back, own_hours, hour_earned, sides];
        roots.extend([net, expected, tax, in_kind, &batch.item, &self.outlook]);
        roots.extend(&self.above);
        if let Some(saving) = &self.saving {
            roots.extend([&saving.time_free, &saving.at_rate, &saving.paid_an_hour]);
        }
        roots
    }

    /// The figures from a root down to the end of an address, the root first.
    pub fn open(&self, path: &Path) -> Option<Vec<&Statement>> {
        self.roots().into_iter().find_map(|root| path.walk(root))
    }
}

/// The true cost as piece and film. Their hours are shared out to the minute, so that they add up as they are read.
fn sides(rows: &Rows) -> Statement {
    let sides = [OneSide::Piece, OneSide::Film];
    let exact = sides.map(|side| {
        let labour = rows.lines.iter().filter(|line| line.kind == CostKind::Labour);
        labour.fold(Hours::ZERO, |sum, line| sum.plus(line.hours_on(Some(side)))).seconds()
    });
    let whole = minutes::alone(exact.iter().fold(Seconds::ZERO, |sum, it| sum.plus(*it)));
    let parts = sides.into_iter().zip(minutes::parts(whole, &exact)).map(|(side, hours)| {
        Part::plus(kinds::true_cost(rows, Rule::Side { side, hours: Hours::of(hours) }, Some(side)))
    });
    Statement::sum(Rule::Sides, parts.collect(), Vec::new(), Vec::new())
}

fn in_kind(rows: &Rows) -> Statement {
    let drawn = rows.lines.iter().filter(|line| !line.parts.supplied().is_zero());
    let parts = drawn.map(|line| {
        let value = line.parts.supplied();
        Part::entry(line.entry, Some(Value::Money(value)), line.working(value))
    });
    Statement::sum(Rule::InKind, parts.collect(), Vec::new(), Vec::new())
}

impl Books {
    /// The sheet of a build; nothing is known of it: all noughts.
    pub fn build_cost(&self, build: Id) -> BuildCost {
        self.cost_of(Bearer::Build(build))
    }

    /// The sheet of whatever the shop bears itself.
    pub fn shop_cost(&self) -> BuildCost {
        self.cost_of(Bearer::Shop)
    }

    /// The true cost of a build alone, as on its sheet: for a list of builds.
    pub fn true_cost(&self, build: Id) -> Statement {
        let rows = Rows::of(self, Bearer::Build(build));
        self.with_what_lacks(&rows, kinds::true_cost(&rows, Rule::TrueCost, None))
    }

    fn with_what_lacks(&self, rows: &Rows, mut statement: Statement) -> Statement {
        let flags = rows.bearing.later.iter().map(|entry| Flag::Later { entry: *entry });
        statement.add_gaps(&self.not_kept(rows.bearing.labour.is_empty()));
        statement.add_flags(&flags.collect::<Vec<Flag>>());
        statement
    }

    pub(super) fn cost_of(&self, bearer: Bearer) -> BuildCost {
        let rows = Rows::of(self, bearer);
        let true_cost = self.with_what_lacks(&rows, kinds::true_cost(&rows, Rule::TrueCost, None));
        let bridge = self.with_what_lacks(&rows, bridge::from_used_up(&rows, bearer));
        let parts = rows.parts();
        let sides = sides(&rows);
        let own_hours = hours::own(&rows);
        let earned = income::earned(self, bearer);
        let in_kind = in_kind(&rows);
        let build = match bearer {
            Bearer::Build(id) | Bearer::Lot(id) => id,
            Bearer::Shop => Id::of([0; 16]),
        };
        let hour_earned = income::hour_earned(
            build,
            &earned,
            &in_kind,
            &true_cost,
            &hours::labour(&rows),
            own_hours.hours().unwrap_or_default(),
        );
        let items = self.items(build);
        let one_off = self.one_off(build, &rows);
        let (share, each) = one_off.map(|it| (it.share.total(), it.each_of(items.good))).unwrap_or_default();
        let piece = sides.part(|rule| matches!(rule, Rule::Side { side: OneSide::Piece, .. })).cloned();
        let batch = batch::batch(build, &items, &piece.unwrap_or_else(|| true_cost.clone()), share, each);
        let batch_all = batch::batch(build, &items, &true_cost, share, each);
        let outlook = Statement::carrying(Rule::Outlook, Vec::new(), Vec::new(), Vec::new());
        let mut cost = BuildCost {
            bearer,
            true_cost,
            bridge,
            used_up_by_kind: kinds::used_up(&rows),
            tax_back: spent::tax_back(&rows, bearer),
            own_hours,
            hour_earned,
            drawn: rows.draws().fold(Parts::ZERO, |sum, row| sum.plus(row.parts)),
            side_parts: (rows.parts_on(OneSide::Piece), rows.parts_on(OneSide::Film)),
            parts,
            key: self.ledgers.keys.of_bearer(bearer),
            sides,
            earned,
            in_kind,
            items,
            batch,
            batch_all,
            one_off,
            outlook,
            above: None,
            saving: match bearer {
                Bearer::Build(build) => self.build_saving(build),
                Bearer::Lot(_) | Bearer::Shop => None,
            },
        };
        cost.outlook = super::outlook::outlook(self, build, &cost);
        cost.above = super::fetch::of_build(self, build, &cost);
        cost
    }

    /// Costs that go by hours, where there are hours and no entries of that kind in the whole shop.
    fn not_kept(&self, no_hours: bool) -> Vec<Gap> {
        let missing =
            [(CostKind::Tools, self.shop.keeps_tools), (CostKind::Overhead, self.shop.keeps_months)];
        let missing = missing.into_iter().filter(|(_, kept)| !kept && !no_hours);
        missing.map(|(kind, _)| Gap::NotKept { kind }).collect()
    }

    fn one_off(&self, build: Id, rows: &Rows) -> Option<OneOff> {
        let series = self.series_of(build)?;
        let run = i128::from(series.run);
        let each = fixed::mul_div(series.pool.total().micros(), 1, run).map(Money::from_micros);
        Some(OneOff {
            pool: series.pool,
            share: rows.share.iter().fold(Parts::ZERO, |sum, line| sum.plus(line.parts)),
            rest: series.rest,
            ended: series.ended,
            run: series.run,
            each: each.unwrap_or_default(),
            most: series.of(build).map_or(0, |it| it.most),
        })
    }

    /// Lots that are drawn by name and were got for this bearer, in the order of their ids.
    fn got_for(&self, bearer: Bearer) -> impl Iterator<Item = &super::stock::LotAccount> {
        let lots = match bearer {
            Bearer::Build(build) => self.stock.got_for.get(&build),
            Bearer::Lot(_) | Bearer::Shop => None,
        };
        lots.into_iter().flatten().filter_map(|lot| self.stock.lots.get(lot))
    }

    fn is_got_for(&self, bearer: Bearer, source: Source) -> bool {
        match (source, bearer) {
            (Source::Lot(lot), Bearer::Build(build)) => {
                self.stock.lots.get(&lot).is_some_and(|lot| lot.facts.for_build == Some(build))
            }
            (Source::Lot(_), Bearer::Lot(_) | Bearer::Shop) | (Source::Item(_), _) => false,
        }
    }
}
