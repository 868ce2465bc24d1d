//! Planned against actual: hours by stage, materials by lot and item.
//!
//! Hours: what the steps of a stage take in the mean (`timing::steps`), of everybody who is at them, against what was
//! logged at that stage. Materials: what was on the list for the build, bought or not; where a build repeats another and
//! nothing of an item was on the list, what the latest run before drew of it; against what stays drawn. Worked example: 6
//! h 18 planned and 7 h logged at sanding: 42 min more; 10 discs at 2 planned, 12 drawn for 24: 2 and 4.00 more.
//! Source: our own rule, DEVELOPERS.md § Why. Not here: what is still to come (`outlook`).

use super::{
    Books, BuildCost, Path, Rule, Statement,
    planned::{self, Material},
};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Source},
    },
    measure::{InOrder, Money, Quantity, Seconds, Unit},
    timing::{steps, worked},
};

/// A kind of work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StageAgainst {
    /// Which.
    pub stage: Id,
    /// Person-hours of its steps; none: nothing was planned, or nobody has said how long.
    pub planned: Option<Seconds>,
    /// Person-hours logged.
    pub logged: Seconds,
}

/// Something that was to be used, or was.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StockAgainst {
    /// Which.
    pub material: Material,
    /// Unit of both quantities.
    pub unit: Unit,
    /// How much was planned; none: nothing.
    pub planned: Option<Quantity>,
    /// What that was to cost; none: nobody can say.
    pub planned_cost: Option<Money>,
    /// Nothing was on the list: this build before drew so much.
    pub like: Option<Id>,
    /// What stays drawn.
    pub drawn: Quantity,
    /// What that cost; none where it can't be said.
    pub cost: Option<Money>,
}

/// A sum both ways.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Against<T> {
    /// As it was planned.
    pub planned: T,
    /// As it came, where it was planned.
    pub actual: T,
    /// So much beyond what was planned; below zero: under it.
    pub more: T,
    /// What nobody had planned.
    pub beside: T,
}

/// Both lists.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct AgainstPlan {
    /// In the order of the picker.
    pub stages: Vec<StageAgainst>,
    /// Planned first, then what nobody had planned.
    pub stock: Vec<StockAgainst>,
}

impl StageAgainst {
    /// Logged beyond what was planned; below zero: under it. None: nothing was planned.
    pub fn more(&self) -> Option<Seconds> {
        self.planned.map(|planned| Seconds(self.logged.0.saturating_sub(planned.0)))
    }
}

impl StockAgainst {
    /// Drawn beyond what was planned.
    pub fn more(&self) -> Option<Quantity> {
        self.planned.map(|planned| self.drawn.minus(planned))
    }

    /// Its cost beyond what was planned; none where either can't be said.
    pub fn more_cost(&self) -> Option<Money> {
        self.planned_cost.zip(self.cost).map(|(planned, cost)| cost.minus(planned))
    }
}

impl AgainstPlan {
    /// Nothing was planned: there is nothing to hold against it.
    pub fn is_empty(&self) -> bool {
        self.stages.iter().all(|it| it.planned.is_none()) && self.stock.iter().all(|it| it.planned.is_none())
    }

    /// All hours that were planned, those logged at the same stages, and all others; none: no hours were planned.
    pub fn hours(&self) -> Option<Against<Seconds>> {
        let planned = self.stages.iter().filter_map(|it| it.planned).reduce(Seconds::plus)?;
        let sum = |of: bool| {
            let stages = self.stages.iter().filter(|it| it.planned.is_some() == of);
            stages.fold(Seconds::ZERO, |sum, it| sum.plus(it.logged))
        };
        let (actual, beside) = (sum(true), sum(false));
        Some(Against { planned, actual, more: Seconds(actual.0.saturating_sub(planned.0)), beside })
    }

    /// The same of what materials cost; none: none were planned, or one can't be said.
    pub fn materials(&self) -> Option<Against<Money>> {
        self.stock.iter().find(|it| it.planned.is_some())?;
        let sum = |of: fn(&StockAgainst) -> Option<Money>, planned: bool| {
            let mut lines = self.stock.iter().filter(|it| it.planned.is_some() == planned);
            lines.try_fold(Money::ZERO, |sum, it| Some(sum.plus(of(it)?)))
        };
        let planned = sum(|it| it.planned_cost, true)?;
        let (actual, beside) = (sum(|it| it.cost, true)?, sum(|it| it.cost, false)?);
        Some(Against { planned, actual, more: actual.minus(planned), beside })
    }
}

impl Books {
    /// What was planned for a build beside what became of it.
    pub fn against_plan(&self, shop: &Shop, build: Id) -> AgainstPlan {
        AgainstPlan { stages: self.stages_against(shop, build), stock: self.stock_against(shop, build) }
    }

    fn stages_against(&self, shop: &Shop, build: Id) -> Vec<StageAgainst> {
        let worked = worked(shop, self.as_of);
        let mut all: Vec<StageAgainst> = Vec::new();
        let mut add = |stage: Id, planned: Option<Seconds>, logged: Seconds| {
            let at = all.iter().position(|it| it.stage == stage).unwrap_or_else(|| {
                all.push(StageAgainst { stage, planned: None, logged: Seconds::ZERO });
                all.len().saturating_sub(1)
            });
            if let Some(line) = all.get_mut(at) {
                line.logged = line.logged.plus(logged);
                line.planned = match (line.planned, planned) {
                    (Some(sum), Some(more)) => Some(sum.plus(more)),
                    (one, other) => one.or(other),
                };
            }
        };
        let planned = steps::planned(shop, &worked);
        for (id, step) in shop.steps.iter().filter(|(_, it)| it.build() == build) {
            let people = if step.body.any { 1 } else { step.body.who.len().max(1) };
            let each = planned.get(id).and_then(|it| it.mean);
            let all = each.map(|it| Seconds(it.0.saturating_mul(i64::try_from(people).unwrap_or(1))));
            add(step.body.stage, all, Seconds::ZERO);
        }
        let bearing = self.ledgers.borne_by(Bearer::Build(build));
        for row in bearing.labour.iter().filter_map(|at| self.ledgers.labour.get(*at)) {
            add(row.stage, None, row.seconds);
        }
        all.order_by_key(|it| (self.shop.stage_place(it.stage), it.stage));
        all
    }

    fn stock_against(&self, shop: &Shop, build: Id) -> Vec<StockAgainst> {
        let mut all: Vec<StockAgainst> = Vec::new();
        for line in planned::lines(self, shop, build) {
            match all.iter_mut().find(|it| it.material == line.material) {
                Some(sum) => {
                    sum.planned = sum.planned.map(|it| it.plus(line.quantity));
                    sum.planned_cost = sum.planned_cost.zip(line.cost).map(|(sum, cost)| sum.plus(cost));
                }
                None => all.push(StockAgainst {
                    planned: Some(line.quantity),
                    planned_cost: line.cost,
                    ..StockAgainst::unplanned(line.material, line.unit)
                }),
            }
        }
        for (item, quantity, like) in self.like_drew(shop, build) {
            let material = Material::Stock(Source::Item(item));
            if all.iter().any(|it| it.material == material) {
                continue;
            }
            let last = self.stock.items.get(&item).and_then(|it| it.last).filter(|(_, of)| !of.is_zero());
            all.push(StockAgainst {
                planned: Some(quantity),
                planned_cost: last.map(|(cost, of)| cost.share(quantity, of).total()),
                like: Some(like),
                ..StockAgainst::unplanned(
                    material,
                    self.shop.items.get(&item).map_or(Unit::Each, |it| it.unit),
                )
            });
        }
        for (source, drawn, cost, unit) in planned::drawn(self, build) {
            let material = Material::Stock(source);
            match all.iter_mut().find(|it| it.material == material) {
                Some(line) => (line.drawn, line.cost) = (drawn, cost),
                None => {
                    all.push(StockAgainst { drawn, cost, ..StockAgainst::unplanned(material, unit) });
                }
            }
        }
        all
    }

    /// What the latest run before this one that drew an item drew of it.
    fn like_drew(&self, shop: &Shop, build: Id) -> Vec<(Id, Quantity, Id)> {
        let run = shop.run_of(build);
        let before = run.iter().take_while(|it| **it != build);
        let mut all: Vec<(Id, Quantity, Id)> = Vec::new();
        for (other, items) in before.filter_map(|it| Some((*it, self.likes.drawn_by(*it)?))) {
            for (item, quantity) in items.iter() {
                all.retain(|it| it.0 != *item);
                all.push((*item, *quantity, other));
            }
        }
        all
    }
}

impl StockAgainst {
    fn unplanned(material: Material, unit: Unit) -> StockAgainst {
        StockAgainst {
            material,
            unit,
            planned: None,
            planned_cost: None,
            like: None,
            drawn: Quantity::ZERO,
            cost: Some(Money::ZERO),
        }
    }
}

impl BuildCost {
    /// Where the actual cost of a stage stands under the true cost; none: nothing was logged.
    pub fn path_to_stage(&self, stage: Id) -> Option<Path> {
        let of = |rule: &Rule| matches!(rule, Rule::Stage { stage: it, .. } if *it == stage);
        path_to(&self.true_cost, &of)
    }

    /// Where what was drawn of a lot or item stands under the true cost; none: nothing was drawn.
    pub fn path_to_stock(&self, source: Source) -> Option<Path> {
        let of = |rule: &Rule| matches!(rule, Rule::Drawn { source: it, .. } if *it == source);
        path_to(&self.true_cost, &of)
    }
}

fn path_to(root: &Statement, of: &dyn Fn(&Rule) -> bool) -> Option<Path> {
    let top = Path { steps: vec![root.rule.step()] };
    root.parts.iter().filter_map(super::Part::statement).find_map(|kind| {
        let below = kind.part(of)?;
        Some(top.to(kind.rule.step()).to(below.rule.step()))
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::fixture::{Fixture, fixture};

    const RUNS: &str = "
        person Ana 20
        person Bo 22
        item disc consumable each
        lot a bought 40 of disc unit each paid 80
        build run1 items 10
        build run2 items 10 repeat run1";

    fn hours(it: Seconds) -> String {
        let (hours, minutes) = it.hours_minutes();
        format!("{hours}:{minutes:02}")
    }

    #[track_caller]
    fn check(it: &Fixture, build: &str, stages: &[(&str, &str, &str)], stock: &[&str]) {
        let against = it.books().against_plan(&it.shop(), it.id(build));
        let told: Vec<(String, String, String)> = against
            .stages
            .iter()
            .map(|line| (it.name(line.stage), line.planned.map_or("-".into(), hours), hours(line.logged)))
            .collect();
        let want = stages.iter().map(|(a, b, c)| ((*a).into(), (*b).into(), (*c).into()));
        assert_eq!(told, want.collect::<Vec<_>>());
        let money = |it: Option<Money>| it.map_or("?".to_owned(), |it| it.shown(2));
        let told: Vec<String> = against
            .stock
            .iter()
            .map(|line| {
                let name = match line.material {
                    Material::Stock(Source::Item(id) | Source::Lot(id)) | Material::Words(id) => it.name(id),
                };
                let planned = line.planned.map_or("-".into(), |it| it.shown_trimmed());
                let (cost, drawn) = (money(line.planned_cost), line.drawn.shown_trimmed());
                let like = line.like.map(|id| format!(" as {}", it.name(id))).unwrap_or_default();
                format!("{name} {planned} {cost}{like}: {drawn} {}", money(line.cost))
            })
            .collect();
        assert_eq!(told, stock);
    }

    #[test]
    fn hours_of_steps_stand_beside_what_was_logged_at_their_stage() {
        let it = fixture(&format!(
            "{RUNS}
            step sand-24 run2 sand who Ana hours 4,6,9
            step lift run2 assemble who Ana,Bo hours 2,2,2 done 2026-02-01
            step flatten run2 mill who Ana
            stretch Ana sand min 420 for run2
            stretch Bo assemble min 90 for run2
            stretch Ana shoot min 30 for run2"
        ));
        let want = [
            ("mill", "-", "0:00"),
            ("assemble", "4:00", "1:30"),
            ("sand", "6:18", "7:00"),
            ("shoot", "-", "0:30"),
        ];
        check(&it, "run2", &want, &[]);
        let against = it.books().against_plan(&it.shop(), it.id("run2"));
        let sand = against.stages.iter().find(|line| line.stage == it.id("sand")).unwrap();
        assert_eq!(sand.more(), Some(Seconds(42 * 60)));
        let all = against.hours().unwrap();
        assert_eq!([all.planned, all.actual, all.more, all.beside].map(|it| it.0 / 60), [618, 510, -108, 30]);
    }

    #[test]
    fn lines_of_the_list_stand_beside_what_was_drawn() {
        let it = fixture(&format!(
            "{RUNS}
            item glue consumable each
            lot hooks bought 4 unit each paid 12 for run2 use fitting
            buy 10 disc for run2
            buy-words brass-hooks for run2 bought hooks
            buy-words felt for run2 price 9 as felt-line
            buy 2 glue for run2
            draw 12 disc for run2
            draw 3 hooks for run2"
        ));
        let want = [
            "disc 10 20.00: 12 24.00",
            "hooks 4 12.00: 3 9.00",
            "felt-line 1 9.00: 0 0.00",
            "glue 2 ?: 0 0.00",
        ];
        check(&it, "run2", &[], &want);
        let disc = it.books().against_plan(&it.shop(), it.id("run2")).stock[0];
        assert_eq!(disc.more().unwrap().shown_trimmed(), "2");
        assert_eq!(disc.more_cost().unwrap().shown(2), "4.00");
        // Of the glue nobody can say what it was to cost.
        assert_eq!(it.books().against_plan(&it.shop(), it.id("run2")).materials(), None);
    }

    #[test]
    fn a_repeat_is_held_against_what_the_run_before_drew_where_the_list_says_nothing() {
        let it = fixture(&format!("{RUNS}\n draw 8 disc for run1\n draw 9 disc for run2"));
        check(&it, "run2", &[], &["disc 8 16.00 as run1: 9 18.00"]);
        check(&it, "run1", &[], &["disc - ?: 8 16.00"]);
        let mut it = it;
        it.add("lot oak bought 10 paid 40");
        it.add("draw 4 oak for run2");
        let all = it.books().against_plan(&it.shop(), it.id("run2")).materials().unwrap();
        let told = [all.planned, all.actual, all.more, all.beside].map(|it| it.shown(2));
        assert_eq!(told, ["16.00", "18.00", "2.00", "16.00"]);
        assert!(it.books().against_plan(&it.shop(), it.id("run1")).is_empty());
    }

    #[test]
    fn what_was_drawn_opens_where_it_stands_in_the_true_cost() {
        let it = fixture(&format!("{RUNS}\n draw 8 disc for run1\n stretch Ana sand min 60 for run1"));
        let cost = it.books().build_cost(it.id("run1"));
        for path in [cost.path_to_stage(it.id("sand")), cost.path_to_stock(it.source("disc"))] {
            let path = path.unwrap();
            assert_eq!(cost.open(&path).unwrap().len(), 3, "{path}");
        }
        assert_eq!(cost.path_to_stage(it.id("mill")), None);
    }
}
