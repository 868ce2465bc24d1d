//! What entries about running the shop say: receipts, tools, monthly costs, income, items made and handed over.

use super::{
    facts::{Fact, Facts, bearer, stage},
    publishing_facts,
};
use crate::words::{common, income as said, journal as words, journal::Label, step_form, units};
use benchslate_core::{
    journal::{
        Id,
        kinds::{self, Bearer},
    },
    measure::Dec,
};

impl Facts<'_> {
    pub(super) fn receipt(&self, it: &kinds::Receipt) -> Vec<Fact> {
        vec![
            (Label::Whence, it.whence.clone().unwrap_or_default()),
            (Label::Total, self.money(it.total)),
            (Label::Abroad, self.abroad(it.abroad.as_deref())),
            (Label::Freight, self.money(it.freight)),
            (Label::Discount, self.money(it.discount)),
            (Label::Tax, self.money(it.tax)),
            (Label::Back, self.tax_back(it.tax, it.tax_back)),
            (Label::For, it.bearer.map(|of| bearer(self.view, of)).unwrap_or_default()),
        ]
    }

    pub(super) fn by_product(&self, it: &kinds::ByProduct) -> Vec<Fact> {
        vec![
            (Label::What, it.what.clone()),
            (Label::Amount, self.money(Some(it.amount))),
            (Label::Of, bearer(self.view, it.of)),
        ]
    }

    pub(super) fn tool(&self, it: &kinds::Tool) -> Vec<Fact> {
        let duty =
            |duty: &kinds::Duty| words::comma(&stage(self.view, duty.stage), &self.share(Some(duty.share)));
        let left = |left: &kinds::LifeLeft| {
            words::comma(&self.plain(Some(left.hours)), &self.view.tongue.day_year(left.from))
        };
        vec![
            (Label::Name, it.name.clone()),
            (Label::Price, self.money(it.price)),
            (Label::Resale, self.money(it.resale)),
            (Label::Life, self.plain(it.life)),
            (Label::Upkeep, self.money(it.upkeep)),
            (Label::Power, self.plain(it.kw)),
            (Label::Load, self.share(it.load)),
            (Label::Before, self.plain(it.before)),
            (Label::Left, it.left.iter().map(left).collect::<Vec<String>>().join("; ")),
            (Label::Runs, it.duty.iter().map(duty).collect::<Vec<String>>().join("; ")),
            (Label::GivenBy, it.by.map(|id| publishing_facts::outsider(self.view, id)).unwrap_or_default()),
            (Label::OwnLink, it.link.clone().unwrap_or_default()),
            (Label::Gone, it.gone.map(|day| self.view.tongue.day_year(day)).unwrap_or_default()),
        ]
    }

    pub(super) fn tool_hours(&self, it: &kinds::ToolHours) -> Vec<Fact> {
        vec![
            (Label::What, self::tool(self.view, it.tool)),
            (Label::Length, self.in_hours(Some(it.hours))),
            (Label::Stage, stage(self.view, it.stage)),
            (Label::For, bearer(self.view, it.bearer)),
        ]
    }

    pub(super) fn blade(&self, it: &kinds::Blade) -> Vec<Fact> {
        vec![
            (Label::What, it.what.clone()),
            (Label::Of, self::tool(self.view, it.tool)),
            (Label::Price, self.money(Some(it.cost))),
            (Label::Life, self.plain(Some(it.life))),
            (Label::Off, it.off.map(|day| self.view.tongue.day_year(day)).unwrap_or_default()),
        ]
    }

    pub(super) fn monthly(&self, it: &kinds::MonthlyCost) -> Vec<Fact> {
        let day = |day: Option<benchslate_core::measure::Day>| {
            day.map(|day| self.view.tongue.day_year(day)).unwrap_or_default()
        };
        vec![
            (Label::What, it.what.clone()),
            (Label::Amount, self.money(Some(it.a_month))),
            (Label::SideOf, common::side(it.side).to_owned()),
            (Label::From, day(it.from)),
            (Label::Until, day(it.to)),
            (Label::Bill, self.plain(it.tools_kwh)),
        ]
    }

    pub(super) fn income(&self, it: &kinds::Income) -> Vec<Fact> {
        let received = |it: &kinds::Received| {
            words::comma(&self.view.tongue.day_year(it.on), &self.money(Some(it.amount)))
        };
        let shares = it.shares.iter().map(|share| bearer(self.view, share.bearer));
        vec![
            (Label::What, said::kind(it.kind).to_owned()),
            (Label::Text, it.what.clone().unwrap_or_default()),
            (Label::Expected, self.money(it.expected)),
            (Label::Due, it.due.map(|day| self.view.tongue.day_year(day)).unwrap_or_default()),
            (Label::Received, it.received.iter().map(received).collect::<Vec<String>>().join("; ")),
            (Label::Settled, if it.settled { words::yes_no(true).to_owned() } else { String::new() }),
            (Label::SideOf, common::side(it.side).to_owned()),
            (Label::For, shares.collect::<Vec<String>>().join("; ")),
        ]
    }

    pub(super) fn made(&self, it: &kinds::Made) -> Vec<Fact> {
        let shares = it.spoiled.iter().map(|share| self.share(Some(*share)));
        vec![
            (Label::Of, bearer(self.view, Bearer::Build(it.build))),
            (Label::Good, it.good.to_string()),
            (Label::Spoiled, shares.collect::<Vec<String>>().join("; ")),
            (Label::Scrap, self.money(it.scrap)),
        ]
    }

    pub(super) fn handed(&self, it: &kinds::HandOver) -> Vec<Fact> {
        vec![
            (Label::Of, bearer(self.view, Bearer::Build(it.build))),
            (Label::What, said::handed(it.count, it.how)),
        ]
    }

    pub(super) fn step(&self, it: &kinds::Step) -> Vec<Fact> {
        let who = it.who.iter().map(|id| super::facts::person(self.view, *id));
        vec![
            (Label::Of, bearer(self.view, Bearer::Build(it.build))),
            (Label::Step, it.title.clone()),
            (Label::Stage, super::facts::stage(self.view, it.stage)),
            (Label::Who, who.collect::<Vec<String>>().join(", ")),
            (Label::Quick, self.in_hours(it.quick)),
            (Label::Usual, self.in_hours(it.usual)),
            (Label::Slow, self.in_hours(it.slow)),
            (Label::After, self.after(it)),
            (Label::Needs, self.needs(it)),
            (Label::OneGo, if it.one_go { words::yes_no(true).to_owned() } else { String::new() }),
            (Label::GivesWay, if it.gives_way { words::yes_no(true).to_owned() } else { String::new() }),
            (Label::Filmed, if it.filmed { words::yes_no(true).to_owned() } else { String::new() }),
            (Label::HoursStill, self.plain(it.left)),
            (Label::DoneOn, it.done.map(|day| self.view.tongue.day_year(day)).unwrap_or_default()),
            (Label::Drops, it.drops.clone().unwrap_or_default()),
        ]
    }

    /// `2.5 h`.
    fn in_hours(&self, hours: Option<Dec>) -> String {
        hours.map(|hours| words::with_hours(&self.plain(Some(hours)))).unwrap_or_default()
    }

    /// What it takes: so many of each, and how long they stay taken.
    fn needs(&self, it: &kinds::Step) -> String {
        let one = |need: &kinds::Need| {
            let name =
                self.view.shop.resources.get(&need.resource).map_or(words::gone(), |it| it.name.as_str());
            step_form::takes_so_many(need.count, name, &self.plain(need.held))
        };
        it.needs.iter().map(one).collect::<Vec<String>>().join("; ")
    }

    /// What it comes after, each with the hours that it dries.
    fn after(&self, it: &kinds::Step) -> String {
        let one = |after: &kinds::After| {
            let step = self.view.shop.steps.get(&after.step);
            let title = step.map_or_else(|| words::gone().to_owned(), |it| it.body.title.clone());
            match after.wait {
                Some(hours) => words::dries_for(&title, &self.plain(Some(hours))),
                None => title,
            }
        };
        it.after.iter().map(one).collect::<Vec<String>>().join("; ")
    }

    pub(super) fn part(&self, it: &kinds::Part) -> Vec<Fact> {
        vec![
            (Label::Of, bearer(self.view, Bearer::Build(it.build))),
            (Label::Part, it.name.clone()),
            (Label::HowMany, it.count.to_string()),
            (Label::Size, part_size(self.view, it)),
            (Label::CutSoFar, if it.cut == 0 { String::new() } else { it.cut.to_string() }),
        ]
    }

    pub(super) fn free_day(&self, it: &kinds::FreeDay) -> Vec<Fact> {
        let day = |day| self.view.tongue.day_year(day);
        vec![
            (Label::Who, super::facts::person(self.view, it.person)),
            (Label::FreeOn, day(it.day)),
            (Label::FreeLast, it.last.map(day).unwrap_or_default()),
            (Label::FreeExtra, crate::screens::shop::windows_text(self.view, &it.extra)),
        ]
    }

    pub(super) fn film(&self, it: &kinds::Film) -> Vec<Fact> {
        vec![
            (Label::Of, bearer(self.view, Bearer::Build(it.build))),
            (Label::FilmLength, self.plain(it.finished)),
            (Label::Footage, self.plain(it.footage)),
            (Label::Published, it.published.map(|day| self.view.tongue.day_year(day)).unwrap_or_default()),
            (Label::Address, it.address.clone().unwrap_or_default()),
        ]
    }

    pub(super) fn state(&self, it: &kinds::BuildState) -> Vec<Fact> {
        vec![
            (Label::Of, bearer(self.view, Bearer::Build(it.build))),
            (Label::What, said::state(it.state).to_owned()),
        ]
    }
}

/// The finished size of a part: `28 × 2 × 2 in`; what was not said is left out.
pub fn part_size(view: &crate::shell::desk::View, it: &kinds::Part) -> String {
    let sides: Vec<_> = [&it.length, &it.width, &it.thickness].into_iter().flatten().collect();
    let one = sides.first().map(|side| side.unit).filter(|unit| sides.iter().all(|side| side.unit == *unit));
    let said = |side: &&kinds::Extent| {
        let amount = side.amount.quantity().unwrap_or_default();
        match one {
            Some(unit) => units::figure(view.tongue, amount, unit),
            None => units::amount_short(view.tongue, amount, side.unit, None),
        }
    };
    let all: Vec<String> = sides.iter().map(said).collect();
    crate::words::parts::size(&all, one.map(units::short))
}

/// A tool by name.
pub fn tool(view: &crate::shell::desk::View, id: Id) -> String {
    let named = view.shop.tools.get(&id).map(|tool| tool.name.clone());
    named.unwrap_or_else(|| words::gone().to_owned())
}
