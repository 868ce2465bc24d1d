//! Every build and every lot of a journal in figures, as a phone shows them: rounded once, apportioned downwards.
//!
//! Here: which figures, their names and their sizes, as a tree. Not here: reading the journal (`main`), sentences.

use benchslate_core::{
    costing::{Batch, Books, BuildCost, LotBook, Part, Parts, Path, Statement, Value, present},
    journal::{Id, Shop},
    measure::{Money, Quantity, Shown, minutes},
};
use serde_json::{Value as Json, json};
use std::fmt::Write;

/// A figure, what it shows, and what it is made of.
pub struct Figure {
    /// What it is called; a thing by its own name.
    pub name: String,
    /// As on the phone; empty where nothing can be said.
    pub says: String,
    /// Taken off the figure above it.
    pub minus: bool,
    /// What it lacks, however many things that are.
    pub lacks: usize,
    /// Its parts, entries left out.
    pub parts: Vec<Figure>,
}

impl Figure {
    fn of(name: &str, says: impl ToString) -> Figure {
        let (name, says) = (name.to_owned(), says.to_string());
        Figure { name, says, minus: false, lacks: 0, parts: Vec::new() }
    }

    fn over(name: &str, parts: Vec<Figure>) -> Figure {
        Figure { parts, ..Figure::of(name, "") }
    }

    /// The figure at the end of `build.true.labour`, names joined by full stops.
    #[allow(dead_code, reason = "what a test asks for")]
    pub fn at(&self, path: &[&str]) -> Option<&Figure> {
        let Some((first, rest)) = path.split_first() else { return Some(self) };
        self.parts.iter().find(|part| part.name == *first)?.at(rest)
    }

    /// As JSON: name, what it says, and its parts.
    pub fn json(&self) -> Json {
        let parts: Vec<Json> = self.parts.iter().map(Figure::json).collect();
        json!({
            "name": self.name, "says": self.says, "minus": self.minus, "lacks": self.lacks, "parts": parts,
        })
    }

    /// As a table: a line a figure, parts further in, sizes below one another.
    pub fn table(&self) -> String {
        let mut text = String::new();
        self.lines(&mut text, 0);
        text
    }

    fn lines(&self, text: &mut String, level: usize) {
        let indent = 2 * level;
        let sign = if self.minus { "- " } else { "" };
        let lacks = if self.lacks > 0 { format!("  ({} missing)", self.lacks) } else { String::new() };
        let name = format!("{:indent$}{sign}{}", "", self.name);
        let line = format!("{name:<44} {:>14}{lacks}", self.says);
        let _ = writeln!(text, "{}", line.trim_end());
        self.parts.iter().for_each(|part| part.lines(text, level + 1));
    }
}

/// Every build in the order in which they were begun, then every lot that is drawn by name.
pub fn sheets(shop: &Shop, books: &Books) -> Figure {
    let of = Sheets { shop, minor: shop.minor() };
    let mut builds: Vec<_> = shop.builds.iter().collect();
    builds.sort_by_key(|(_, build)| build.order);
    let mut lots: Vec<_> = shop.lots.iter().collect();
    lots.sort_by_key(|(_, lot)| lot.order);
    let builds = builds.into_iter().map(|(id, build)| of.build(&build.title, &books.build_cost(*id)));
    let lots = lots.into_iter().filter_map(|(id, lot)| Some(of.lot(&lot.name, &books.lot(*id)?)));
    Figure::over(
        "figures",
        vec![Figure::over("builds", builds.collect()), Figure::over("lots", lots.collect())],
    )
}

struct Sheets<'a> {
    shop: &'a Shop,
    minor: u8,
}

impl Sheets<'_> {
    fn build(&self, title: &str, cost: &BuildCost) -> Figure {
        let mut all = vec![
            self.tree(&cost.true_cost, 2),
            self.parts("by part", &cost.true_cost, &cost.parts),
            self.tree(&cost.bridge, 2),
            self.tree(&cost.used_up_by_kind, 1),
            self.tree(&cost.sides, 2),
            self.tree(&cost.own_hours, 1),
            self.tree(&cost.hour_earned, 1),
            self.tree(&cost.earned.net, 0),
            self.tree(&cost.earned.expected, 0),
            self.tree(&cost.in_kind, 0),
            self.tree(&cost.tax_back, 0),
            Figure::of("film's share of both", cost.key.film().shown_to(6)),
            self.batch("batch", cost, &cost.batch),
            self.batch("batch, film and all", cost, &cost.batch_all),
        ];
        if let Some(it) = &cost.one_off {
            let parts = [("pool", it.pool), ("share", it.share), ("rest", it.rest)];
            let mut parts: Vec<Figure> = parts.map(|(name, of)| self.money(name, of.total())).into();
            parts.extend([Figure::of("run", it.run), self.money("each", it.each)]);
            all.push(Figure::over("one-off", parts));
        }
        if let Some(it) = &cost.saving {
            let saving = [&it.time_free, &it.at_rate, &it.paid_an_hour].map(|it| self.tree(it, 1));
            all.push(Figure::over("saving", saving.into()));
        }
        Figure::over(title, all)
    }

    fn lot(&self, name: &str, lot: &LotBook) -> Figure {
        let saving = [&lot.saving.time_free, &lot.saving.at_rate, &lot.saving.paid_an_hour];
        let all = vec![
            self.tree(&lot.cost, 1),
            board(lot),
            Figure::over("saving", saving.map(|it| self.tree(it, 1)).into()),
        ];
        Figure::over(name, all)
    }

    fn batch(&self, name: &str, cost: &BuildCost, it: &Batch) -> Figure {
        let items = &cost.items;
        let count = |name: &str, count: u32| Figure::of(name, count);
        let mut parts = vec![
            count("good", items.good),
            Figure::of("spoiled", items.spoiled.len()),
            count("sold", items.sold),
            count("given", items.given),
            count("kept", items.kept),
            count("left", items.left()),
            self.money("cost", it.cost),
            self.money("loss", it.loss),
            self.money("one-off each", it.one_off_each),
        ];
        parts.extend(it.each.map(|each| self.money("one item's worth of work", each)));
        parts.push(self.tree(&it.item, 0));
        Figure::over(name, parts)
    }

    fn money(&self, name: &str, money: Money) -> Figure {
        Figure::of(name, Shown::alone(money, self.minor).text())
    }

    /// The parts that costs are kept in, apportioned under the whole.
    fn parts(&self, name: &str, whole: &Statement, parts: &Parts) -> Figure {
        let named = [
            ("money", parts.money()),
            ("paid labour", parts.paid_labour()),
            ("vehicle", parts.vehicle()),
            ("own labour", parts.own_labour()),
            ("tools", parts.tools()),
            ("overhead", parts.overhead()),
            ("supplied", parts.supplied()),
        ];
        let shown = Shown::alone(whole.money().unwrap_or_default(), self.minor);
        let sizes = shown.parts(&named.map(|it| it.1)).into_iter().zip(named);
        let some = sizes.filter(|(_, (_, exact))| !exact.is_zero());
        let parts = some.map(|(shown, (name, _))| Figure::of(name, shown.text())).collect();
        Figure { parts, ..Figure::of(name, shown.text()) }
    }

    /// A figure and its parts, so many levels down.
    fn tree(&self, root: &Statement, depth: usize) -> Figure {
        self.branch(root, &Path { steps: vec![root.rule.step()] }, depth)
            .unwrap_or_else(|| Figure::of("?", ""))
    }

    fn branch(&self, root: &Statement, path: &Path, depth: usize) -> Option<Figure> {
        let levels = present::open(root, path, self.minor)?;
        let level = levels.last()?;
        let name = self.name(&path.steps.last().map(|step| Path { steps: vec![step.clone()] }.to_string())?);
        let says = said(level.statement, level.shown);
        let lacks = level.statement.gaps.len();
        let mut parts = Vec::new();
        if depth > 0 {
            for part in &level.statement.parts {
                let Some(below) = part.statement() else { continue };
                let below = self.branch(root, &path.to(below.rule.step()), depth - 1)?;
                parts.push(Figure { minus: is_minus(part), ..below });
            }
        }
        Some(Figure { name, says, minus: false, lacks, parts })
    }

    /// `stage_0190…` by the name of the stage.
    fn name(&self, step: &str) -> String {
        let named = step.split_once('_').and_then(|(_, id)| self.thing(Id::parse(id)?));
        named.unwrap_or_else(|| step.to_owned())
    }

    fn thing(&self, id: Id) -> Option<String> {
        let stage = self.shop.stages.get(&id).map(|it| it.name.clone());
        let lot = || self.shop.lots.get(&id).map(|it| it.name.clone());
        let item = || self.shop.items.get(&id).map(|it| it.name.clone());
        let tool = || self.shop.tools.get(&id).map(|it| it.name.clone());
        stage.or_else(lot).or_else(item).or_else(tool)
    }
}

fn is_minus(part: &Part) -> bool {
    part.sign == benchslate_core::costing::Sign::Minus
}

/// Money as it is shown, hours in whole minutes.
fn said(statement: &Statement, shown: Option<Shown>) -> String {
    match (shown, statement.value) {
        (Some(shown), _) => shown.text(),
        (None, Some(Value::Hours(hours))) => {
            let (hours, minutes) = minutes::alone(hours.seconds()).hours_minutes();
            format!("{hours} h {minutes:02}")
        }
        (None, Some(Value::Money(_) | Value::PerHour(_)) | None) => String::new(),
    }
}

fn board(lot: &LotBook) -> Figure {
    let board = &lot.board;
    let unit = board.unit.code();
    let quantity = |name: &str, it: Quantity| Figure::of(name, format!("{} {unit}", it.shown_trimmed()));
    let known = [("gathered", board.gathered), ("usable", board.usable)];
    let mut parts: Vec<Figure> =
        known.into_iter().filter_map(|(name, it)| Some(quantity(name, it?))).collect();
    let rest = [
        ("good", board.good),
        ("culled", board.culled),
        ("unsorted", board.unsorted),
        ("drawn", board.drawn),
        ("on the shelf", board.on_shelf),
        ("to come", board.to_come),
    ];
    parts.extend(rest.map(|(name, it)| quantity(name, it)));
    Figure::over("board", parts)
}
