//! A new entry before anything is typed: what it is about, and what is likely.

use super::shot;
use crate::{
    screens::{publishing::chapter, stock::thing::Thing},
    shell::desk::View,
};
use benchslate_core::{
    journal::{
        Body, Id, Kind, On,
        kinds::{
            Bearer, Blade, BuyLine, Chapter, Due, DueWhat, Film, FreeDay, HandOver, HandedOver, Income,
            IncomeKind, Made, MonthlyCost, Outsider, OutsiderKind, Part, Received, Resource, Share, Shelf,
            ShelfState, Side, Step, Tool, ToolFrom, ToolHours, monday_to_friday,
        },
    },
    measure::{Day, Dec, InOrder, Instant},
};

/// None: entries of this kind are begun elsewhere.
pub fn blank(view: &View, kind: Kind, of: Option<Id>, bearer: Option<Bearer>, now: Instant) -> Option<Body> {
    let on = On::At(view.shop.zone.when(now));
    let today = view.shop.zone.day(now);
    let none = Dec::default();
    let build = of.or_else(|| latest_build(view)).unwrap_or_else(nobody);
    let tool = of.or_else(|| view.shop.tools.keys().next().copied()).unwrap_or_else(nobody);
    Some(match kind {
        Kind::Tool => new_tool(on).into(),
        Kind::Blade => Blade { on, tool, what: String::new(), cost: none, life: none, off: None }.into(),
        Kind::ToolHours => {
            let runs_at = view.shop.tools.get(&tool).and_then(|tool| tool.duty.first()).map(|duty| duty.0);
            let stage = runs_at.or_else(|| view.shop.stages.keys().next().copied()).unwrap_or_else(nobody);
            ToolHours { on, tool, bearer: bearer.unwrap_or(Bearer::Shop), stage, hours: none }.into()
        }
        Kind::MonthlyCost => MonthlyCost {
            on,
            what: String::new(),
            a_month: none,
            side: Side::Both,
            from: Some(today.first_of_month()),
            to: None,
            tools_kwh: None,
        }
        .into(),
        Kind::Income => new_income(on, of, today).into(),
        Kind::Made => Made { on, build, good: 0, spoiled: Vec::new(), scrap: None }.into(),
        Kind::HandOver => HandOver { on, build, count: 0, how: HandedOver::Sold, income: None }.into(),
        Kind::Step => new_step(view, on, build).into(),
        Kind::Part => new_part(view, on, build).into(),
        Kind::Resource => Resource { on, name: String::new(), count: 1 }.into(),
        Kind::FreeDay => new_free_day(view, on, of, today).into(),
        Kind::Shot => shot::blank(view, on, build).into(),
        Kind::Chapter | Kind::Outsider | Kind::Due => of_publishing(view, kind, on, build),
        Kind::Film => {
            Film { on, build, footage: None, finished: None, published: None, address: None }.into()
        }
        Kind::Shelf => {
            let thing = Thing::of(view.shop, of?)?;
            Shelf::of(on, thing.source, ShelfState::ThrownOut, none, thing.unit).into()
        }
        Kind::BuyLine => new_buy_line(on, of).into(),
        Kind::Setting
        | Kind::Person
        | Kind::Stage
        | Kind::Build
        | Kind::Stretch
        | Kind::Item
        | Kind::Lot
        | Kind::Trip
        | Kind::Sort
        | Kind::Cull
        | Kind::Find
        | Kind::Draw
        | Kind::Expense
        | Kind::Note
        | Kind::Receipt
        | Kind::ByProduct
        | Kind::Drying
        | Kind::Photo
        | Kind::Retired
        | Kind::Same
        | Kind::SeriesEnd
        | Kind::Take
        | Kind::CardCopied
        | Kind::BuildState => return None,
    })
}

fn new_tool(on: On) -> Tool {
    Tool {
        on,
        name: String::new(),
        price: None,
        resale: None,
        life: None,
        upkeep: None,
        kw: None,
        load: None,
        before: None,
        duty: Vec::new(),
        rolls: false,
        from: ToolFrom::Bought,
        left: Vec::new(),
        gone: None,
        by: None,
        link: None,
    }
}

fn new_free_day(view: &View, on: On, of: Option<Id>, today: Day) -> FreeDay {
    let known = of.filter(|of| view.shop.people.contains_key(of));
    let person = known.or_else(|| view.shop.people.keys().next().copied()).unwrap_or_else(nobody);
    FreeDay { on, person, day: today, last: None, extra: Vec::new() }
}

fn new_buy_line(on: On, for_build: Option<Id>) -> BuyLine {
    BuyLine {
        on,
        item: None,
        what: String::new(),
        quantity: None,
        unit: None,
        price: None,
        for_build,
        bought: None,
    }
}

/// A chapter, somebody outside, something owed.
fn of_publishing(view: &View, kind: Kind, on: On, build: Id) -> Body {
    match kind {
        Kind::Chapter => {
            // Of a shot that was taken: its words.
            let shot = view.shop.shots.get(&build).map(|it| it.body.what.clone());
            Chapter { on, build: chapter::build_of(view, build), title: shot.unwrap_or_default(), at: 0 }
                .into()
        }
        Kind::Outsider => {
            let (name, kind) = (String::new(), OutsiderKind::Sponsor);
            Outsider { on, name, kind, week: monday_to_friday(), off: Vec::new() }.into()
        }
        _ => new_due(view, on, build).into(),
    }
}

/// To whoever anything was promised last.
fn new_due(view: &View, on: On, build: Id) -> Due {
    let last = view.shop.dues.values().filter(|it| it.body.outsider.is_some()).max_by_key(|it| it.order);
    let only = || view.shop.outsiders.keys().next().copied().filter(|_| view.shop.outsiders.len() == 1);
    let outsider = last.and_then(|it| it.body.outsider).or_else(only);
    let (what, words) = (DueWhat::Mention, None);
    Due { on, build, what, words, day: None, lead: None, after: None, outsider, done: None }
}

/// One payment stands open: most of what comes in is written down when it does.
fn new_income(on: On, of: Option<Id>, today: Day) -> Income {
    let got = Received { on: today, amount: Dec::default(), tax: None, fee: None };
    Income {
        on,
        kind: IncomeKind::Sale,
        side: Side::Piece,
        what: None,
        shares: of.map(|build| Share { bearer: Bearer::Build(build), parts: 1 }).into_iter().collect(),
        expected: None,
        due: None,
        received: vec![got],
        settled: false,
    }
}

/// By whoever worked last, at the stage that the plan ends with so far.
fn new_step(view: &View, on: On, build: Id) -> Step {
    let last = view.shop.steps.values().filter(|it| it.build() == build).max_by_key(|it| it.order);
    let worked = view.shop.stretches.iter().rev().find(|it| view.shop.offers(it.person));
    let stage = last.map(|it| it.body.stage).or(worked.map(|it| it.stage));
    let who = last.and_then(|it| it.body.who.first().copied()).or(worked.map(|it| it.person));
    let who = who.or_else(|| view.shop.people.keys().next().copied());
    let stage = stage.or_else(|| view.shop.stages.keys().next().copied()).unwrap_or_else(nobody);
    Step { who: who.into_iter().collect(), ..Step::blank(on, build, stage) }
}

/// As wide and as thick as the one before it: lists are written a section after the other.
fn new_part(view: &View, on: On, build: Id) -> Part {
    let last = view.shop.parts_of(build).last().map(|(_, it)| it.body.clone());
    Part {
        on,
        build,
        name: String::new(),
        count: 0,
        length: None,
        width: last.as_ref().and_then(|it| it.width.clone()),
        thickness: last.and_then(|it| it.thickness),
        cut: 0,
    }
}

fn latest_build(view: &View) -> Option<Id> {
    let mut all: Vec<_> = view.shop.builds.iter().map(|(id, build)| (build.order, *id)).collect();
    all.order();
    all.last().map(|it| it.1)
}

/// Nothing to name yet: the form says so by its field.
fn nobody() -> Id {
    Id::of([0; 16])
}
