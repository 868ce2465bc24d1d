//! What goes under a film: what the piece is made of, what it was made with, chapters, what must be said of gifts and
//! money. Parts in closed enums; the words are the reader's.
//!
//! Nothing of anybody's name, of a fee or of a cost is in it unless that is asked for ([`Chosen`]). What a client brought
//! is in it by what it is, never by whose. Source: our own rule; what must be said: common practice, after the
//! endorsement guides of several countries. Not here: whether it suffices, which the reader's own authority says.

use super::chapters::{self, Mark};
use crate::{
    costing::{Books, CostKind, Rule, present},
    journal::{
        Id, Shop,
        kinds::{Bearer, IncomeKind, Origin, OutsiderKind, Source, ToolFrom, Use},
        shop::{Draw, Income, Stretch, Tool},
    },
    measure::{Day, InOrder, Instant, Money, Quantity, Shown, Unit},
};

/// What the maker wants in it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Chosen {
    /// What it cost, by kind.
    pub costs: bool,
    /// Who gave, lent and paid, by name.
    pub names: bool,
    /// How much a sponsor pays.
    pub fee: bool,
}

/// Under which heading a material stands, in their order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum MadeOf {
    /// Taken out of something old.
    Salvaged,
    /// Bought.
    Bought,
    /// Given by a sponsor or brought by a client.
    Supplied,
    /// Left from an earlier build.
    Offcut,
    /// Used up on the way.
    Consumable,
}

/// So much of something.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Material {
    /// Its heading.
    pub made_of: MadeOf,
    /// What.
    pub source: Source,
    /// As it is called on the shelf.
    pub name: String,
    /// How much, what came back taken off.
    pub quantity: Quantity,
    /// Its unit.
    pub unit: Unit,
    /// The maker's own link.
    pub link: Option<String>,
}

/// A tool that was used.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct UsedTool {
    /// Which.
    pub tool: Id,
    /// As it is called.
    pub name: String,
    /// The maker's own link.
    pub link: Option<String>,
}

/// What must be said at the start.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Disclosed {
    /// A sponsor pays for the film.
    Paid {
        /// How much, where that is asked for.
        fee: Option<Money>,
        /// Who, likewise.
        by: Option<String>,
    },
    /// Material was given.
    Given {
        /// What.
        what: String,
    },
    /// A tool was given.
    GivenTool {
        /// What.
        what: String,
        /// By whom, where that is asked for.
        by: Option<String>,
    },
    /// A tool was lent.
    LentTool {
        /// What.
        what: String,
        /// By whom, likewise.
        by: Option<String>,
    },
    /// Links in it may pay the maker.
    Affiliate,
}

/// All of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pack {
    /// The build.
    pub title: String,
    /// What it is made of, by heading, each in the order of its first draw.
    pub materials: Vec<Material>,
    /// What it was made with, by name.
    pub tools: Vec<UsedTool>,
    /// Chapters, where they can be given out.
    pub chapters: Vec<Mark>,
    /// What must be said.
    pub disclosed: Vec<Disclosed>,
    /// What it cost by kind, and in all, where that is asked for.
    pub costs: Option<(Vec<(CostKind, Shown)>, Shown)>,
}

/// The pack of a build. None: there is no such build.
pub fn pack(shop: &Shop, books: &Books, build: Id, now: Instant, chosen: Chosen) -> Option<Pack> {
    let title = shop.builds.get(&build)?.title.clone();
    let marks = chapters::of_build(shop, build);
    let chapters = if chapters::check(&marks, None).is_ok() { marks } else { Vec::new() };
    let (materials, used) = (materials(shop, build), used(shop, build, now));
    let tool = |(id, it): &(Id, &Tool)| UsedTool { tool: *id, name: it.name.clone(), link: it.link.clone() };
    let tools: Vec<UsedTool> = used.iter().map(tool).collect();
    let links = materials.iter().any(|it| it.link.is_some()) || tools.iter().any(|it| it.link.is_some());
    Some(Pack {
        title,
        disclosed: disclosed(shop, build, &used, links, chosen),
        costs: chosen.costs.then(|| costs(shop, books, build)).flatten(),
        materials,
        tools,
        chapters,
    })
}

fn materials(shop: &Shop, build: Id) -> Vec<Material> {
    let mut all: Vec<Material> = Vec::new();
    for draw in shop.draws.iter().filter(|it| it.bearer == Bearer::Build(build)) {
        let Some(quantity) = taken(draw) else { continue };
        match all.iter_mut().find(|it| it.source == draw.from) {
            Some(it) => it.quantity = it.quantity.plus(quantity),
            None => all.extend(material(shop, draw, quantity)),
        }
    }
    all.retain(|it| !it.quantity.is_zero() && !it.quantity.is_negative());
    all.order_by_key(|it| it.made_of);
    all
}

fn taken(draw: &Draw) -> Option<Quantity> {
    let quantity = draw.quantity?;
    Some(if draw.returns.is_some() { quantity.negated() } else { quantity })
}

fn material(shop: &Shop, draw: &Draw, quantity: Quantity) -> Option<Material> {
    let (name, purpose, unit, link, origin) = match draw.from {
        Source::Lot(id) => {
            let lot = shop.lots.get(&id)?;
            let link = lot.item.and_then(|item| shop.items.get(&item)).and_then(|it| it.link.clone());
            (&lot.name, lot.purpose, lot.unit, link, lot.origin)
        }
        Source::Item(id) => {
            let item = shop.items.get(&id)?;
            let lots = shop.lots.values().filter(|lot| lot.item == Some(id) && lot.order <= draw.order);
            let latest = lots.max_by_key(|lot| lot.order);
            let origin = latest.map_or(Origin::Bought, |lot| lot.origin);
            (&item.name, item.purpose, item.unit, item.link.clone(), origin)
        }
    };
    let made_of = match (purpose, origin) {
        (Use::Consumable, _) => MadeOf::Consumable,
        (Use::Timber | Use::Fitting, Origin::Salvaged) => MadeOf::Salvaged,
        (Use::Timber | Use::Fitting, Origin::Bought) => MadeOf::Bought,
        (Use::Timber | Use::Fitting, Origin::Supplied) => MadeOf::Supplied,
        (Use::Timber | Use::Fitting, Origin::Offcut) => MadeOf::Offcut,
    };
    Some(Material { made_of, source: draw.from, name: name.clone(), quantity, unit, link })
}

/// Tools that run at a stage the build was worked on at, in its timber too; those whose hours were read off; those that
/// roll, where the camera did.
fn used(shop: &Shop, build: Id, now: Instant) -> Vec<(Id, &Tool)> {
    let drawn = |lot: Id| {
        let mut mine = shop.draws.iter().filter(|it| it.bearer == Bearer::Build(build));
        mine.any(|it| it.from == Source::Lot(lot))
    };
    let bears = |bearer: Bearer| match bearer {
        Bearer::Build(id) => id == build,
        Bearer::Lot(lot) => drawn(lot),
        Bearer::Shop => false,
    };
    let last = shop.zone.day(now);
    let worked: Vec<&Stretch> =
        shop.stretches.iter().filter(|it| bears(it.bearer) && it.order.day <= last).collect();
    let ran = |id: Id, tool: &Tool| {
        let there = |day: Day| tool.gone.is_none_or(|gone| day < gone);
        let at_stage = worked.iter().any(|it| tool.duty_at(it.stage).is_some() && there(it.order.day));
        let rolled = tool.rolls && worked.iter().any(|it| !it.rolling.is_empty() && there(it.order.day));
        at_stage || rolled || shop.tool_hours.iter().any(|it| it.tool == id && bears(it.bearer))
    };
    let mut tools: Vec<(Id, &Tool)> =
        shop.tools.iter().filter(|(id, tool)| ran(**id, tool)).map(|(id, tool)| (*id, tool)).collect();
    tools.order_by(|a, b| (&a.1.name, a.0).cmp(&(&b.1.name, b.0)));
    tools
}

fn disclosed(shop: &Shop, build: Id, tools: &[(Id, &Tool)], links: bool, chosen: Chosen) -> Vec<Disclosed> {
    let name = |id: Option<Id>| Some(shop.outsiders.get(&id.filter(|_| chosen.names)?)?.name.clone());
    let mine = |it: &&Income| it.shares.iter().any(|(bearer, _)| *bearer == Bearer::Build(build));
    let mut all = Vec::new();
    let paid: Vec<&Income> =
        shop.incomes.iter().filter(|it| it.kind == IncomeKind::Sponsor).filter(mine).collect();
    if !paid.is_empty() {
        let sum = paid.iter().filter_map(|it| it.expected.or_else(|| it.arrived()));
        let fee = chosen.fee.then(|| sum.fold(Money::ZERO, Money::plus));
        all.push(Disclosed::Paid { fee, by: sponsors(shop, build).filter(|_| chosen.names) });
    }
    for draw in shop.draws.iter().filter(|it| it.bearer == Bearer::Build(build) && it.returns.is_none()) {
        let given = |lot: &crate::journal::shop::Lot| lot.origin == Origin::Supplied && !lot.clients_own;
        let what = match draw.from {
            Source::Lot(id) => shop.lots.get(&id).filter(|lot| given(lot)).map(|lot| lot.name.clone()),
            Source::Item(id) => {
                let gift = shop.lots.values().any(|lot| lot.item == Some(id) && given(lot));
                shop.items.get(&id).filter(|_| gift).map(|item| item.name.clone())
            }
        };
        all.extend(what.map(|what| Disclosed::Given { what }).filter(|it| !all.contains(it)));
    }
    for (_, tool) in tools {
        let (what, by) = (tool.name.clone(), name(tool.by));
        match tool.from {
            ToolFrom::Supplied => all.push(Disclosed::GivenTool { what, by }),
            ToolFrom::Lent => all.push(Disclosed::LentTool { what, by }),
            ToolFrom::Bought => {}
        }
    }
    let pays = shop.incomes.iter().any(|it| it.kind == IncomeKind::Affiliate);
    if links && pays {
        all.push(Disclosed::Affiliate);
    }
    all
}

/// Who pays for the film of a build: those of whom something was agreed, and who are sponsors. A client is none.
fn sponsors(shop: &Shop, build: Id) -> Option<String> {
    let mut names: Vec<&str> = Vec::new();
    for (_, due) in shop.dues_of(build) {
        let outsider = due.body.outsider.and_then(|id| shop.outsiders.get(&id));
        let sponsor = outsider.filter(|it| it.kind == OutsiderKind::Sponsor).map(|it| it.name.as_str());
        names.extend(sponsor.filter(|name| !names.contains(name)));
    }
    (!names.is_empty()).then(|| names.join(", "))
}

fn costs(shop: &Shop, books: &Books, build: Id) -> Option<(Vec<(CostKind, Shown)>, Shown)> {
    let cost = books.build_cost(build);
    let whole = present::alone(&cost.true_cost, shop.minor());
    let kinds = cost.true_cost.parts.iter().zip(&whole.parts).filter_map(|(part, shown)| {
        let Rule::Kind { kind, .. } = part.statement()?.rule else { return None };
        Some((kind, (*shown)?))
    });
    Some((kinds.collect(), whole.shown?))
}

#[cfg(test)]
mod tests;
