//! What an entry says, fact by fact: on view as it stands, and version against version in its history.

use crate::screens::film;
use crate::{
    screens::{away, buying},
    shell::desk::View,
    words::{
        Tongue, away as away_words, cautions, common, drying as dries, gaps, journal as words,
        journal::Label, photos, units,
    },
};
use benchslate_core::{
    journal::{
        Body, Id, On,
        kinds::{self, Bearer, Side, Source, Span},
    },
    measure::{Day, Dec, Instant, Money, Quantity, Seconds, Unit},
    timing::drying,
};

/// A label and its text; an empty text is a fact that isn't there.
pub type Fact = (Label, String);

/// Every fact of an entry, in the order of its sheet. Facts that aren't there are left out.
pub fn facts(view: &View, body: &Body) -> Vec<Fact> {
    let it = Facts { view };
    let mut facts = match body {
        Body::Stretch(stretch) => it.stretch(stretch),
        Body::Draw(draw) => it.draw(draw),
        Body::Expense(expense) => it.expense(expense),
        Body::Note(note) => vec![
            (Label::Text, note.text.clone()),
            (Label::For, note.bearer.map_or_else(|| words::no_home().to_owned(), |at| bearer(view, at))),
        ],
        Body::Photo(photo) => it.photo(photo),
        Body::Lot(lot) => it.lot(lot),
        Body::Drying(drying) => it.drying(drying),
        Body::Trip(trip) => it.trip(trip),
        Body::Sort(sort) => it.sort(sort),
        Body::Cull(cull) => it.cull(cull),
        Body::Find(find) => it.find(find),
        Body::Shelf(shelf) => look(view, shelf),
        Body::Build(build) => it.build(build),
        Body::Item(item) => it.item(item),
        Body::Retired(retired) => vec![
            (Label::What, away::name(view.shop, retired.what)),
            (Label::Value, away_words::said(retired.back).to_owned()),
        ],
        Body::Same(same) => vec![
            (Label::What, item_as_typed(view, same.item)),
            (Label::SameAs, gaps::name(view.shop, Source::Item(same.is))),
        ],
        Body::BuyLine(line) => to_buy(view, line),
        Body::Person(person) => it.person(person),
        Body::Stage(stage) => vec![
            (Label::Name, stage.name.clone()),
            (Label::SideOf, common::side(stage.side).to_owned()),
            (Label::Role, stage.role.map(words::role).unwrap_or_default().to_owned()),
        ],
        Body::Receipt(it_is) => it.receipt(it_is),
        Body::ByProduct(it_is) => it.by_product(it_is),
        Body::Tool(it_is) => it.tool(it_is),
        Body::ToolHours(it_is) => it.tool_hours(it_is),
        Body::Blade(it_is) => it.blade(it_is),
        Body::MonthlyCost(it_is) => it.monthly(it_is),
        Body::Income(it_is) => it.income(it_is),
        Body::Made(it_is) => it.made(it_is),
        Body::HandOver(it_is) => it.handed(it_is),
        Body::Film(it_is) => it.film(it_is),
        Body::Step(it_is) => it.step(it_is),
        Body::Part(it_is) => it.part(it_is),
        Body::Resource(it_is) => {
            vec![(Label::Name, it_is.name.clone()), (Label::HowMany, it_is.count.to_string())]
        }
        Body::FreeDay(it_is) => it.free_day(it_is),
        Body::Shot(it_is) => film::facts(view, it_is),
        Body::Take(it_is) => film::take_facts(view, it_is),
        Body::CardCopied(it_is) => vec![(Label::Of, bearer(view, Bearer::Build(it_is.build)))],
        Body::Chapter(it_is) => it.chapter(it_is),
        Body::Outsider(it_is) => it.outsider(it_is),
        Body::Due(it_is) => it.due(it_is),
        Body::SeriesEnd(it_is) => vec![(Label::Of, bearer(view, Bearer::Build(it_is.build)))],
        Body::BuildState(it_is) => it.state(it_is),
        Body::Setting(setting) => vec![
            (Label::What, words::setting(setting.key).to_owned()),
            (Label::Value, super::setting::value(view, setting)),
            (Label::From, setting.from.map(|day| view.tongue.day_year(day)).unwrap_or_default()),
        ],
    };
    facts.push((Label::Day, it.on(body.on())));
    facts.retain(|(_, text)| !text.is_empty());
    facts
}

fn look(view: &View, it: &kinds::Shelf) -> Vec<Fact> {
    vec![
        (Label::Of, gaps::name(view.shop, it.of)),
        (Label::Happened, crate::words::shelf::look(it.state).to_owned()),
        (Label::Quantity, it.quantity.map(|many| looked(view, many, it)).unwrap_or_default()),
        (Label::Note, it.note.clone().unwrap_or_default()),
    ]
}

fn to_buy(view: &View, it: &kinds::BuyLine) -> Vec<Fact> {
    vec![
        (Label::What, buying::name(view, it)),
        (Label::Quantity, buying::many(view, it)),
        (Label::Thought, it.price.and_then(Dec::money).map(|it| view.tongue.money(it)).unwrap_or_default()),
        (Label::ForBuild, it.for_build.map(|of| bearer(view, Bearer::Build(of))).unwrap_or_default()),
        (Label::Bought, it.bought.map(|lot| gaps::name(view.shop, Source::Lot(lot))).unwrap_or_default()),
    ]
}

/// What differs, in words: one for each fact that was changed.
pub fn differences(view: &View, before: &Body, after: &Body) -> Vec<String> {
    let (before, after) = (facts(view, before), facts(view, after));
    let text = |facts: &[Fact], label: Label| {
        facts.iter().find(|fact| fact.0 == label).map(|fact| fact.1.clone()).unwrap_or_default()
    };
    let mut labels: Vec<Label> = after.iter().map(|fact| fact.0).collect();
    labels.extend(before.iter().map(|fact| fact.0).filter(|label| after.iter().all(|fact| fact.0 != *label)));
    let pairs = labels.into_iter().map(|label| (label, text(&before, label), text(&after, label)));
    pairs
        .filter(|(_, before, after)| before != after)
        .map(|(label, before, after)| words::changed(words::label(label), &before, &after))
        .collect()
}

/// Whatever bears it, by name.
pub fn bearer(view: &View, of: Bearer) -> String {
    let named = match of {
        Bearer::Build(id) => view.shop.builds.get(&id).map(|build| build.title.clone()),
        Bearer::Lot(id) => view.shop.lots.contains_key(&id).then(|| gaps::name(view.shop, Source::Lot(id))),
        Bearer::Shop => None,
    };
    named.unwrap_or_else(|| words::bearer_lost(of).to_owned())
}

/// A person by name.
pub fn person(view: &View, id: Id) -> String {
    view.shop.people.get(&id).map_or_else(|| words::gone().to_owned(), |person| person.name.clone())
}

/// A stage by name.
pub fn stage(view: &View, id: Id) -> String {
    view.shop.stages.get(&id).map_or_else(|| words::gone().to_owned(), |stage| stage.name.clone())
}

/// How much was counted or went, as typed.
pub fn looked(view: &View, many: Dec, shelf: &kinds::Shelf) -> String {
    let unit = shelf.unit.unwrap_or_else(|| stock_unit(view, shelf.of));
    amount(view, many, unit, shelf.of)
}

/// What a lot or item is counted in.
pub fn stock_unit(view: &View, of: Source) -> Unit {
    let (Source::Lot(id) | Source::Item(id)) = of;
    crate::screens::stock::thing::Thing::of(view.shop, id).map_or(Unit::Each, |thing| thing.unit)
}

/// A quantity as typed, with its unit and the maker's own word.
pub fn amount(view: &View, typed: Dec, unit: Unit, of: Source) -> String {
    let item = match of {
        Source::Item(id) => view.shop.item(id),
        Source::Lot(id) => view.shop.lots.get(&id).and_then(|lot| lot.item).and_then(|id| view.shop.item(id)),
    };
    let word = item.filter(|item| item.unit == unit).and_then(|item| item.word.clone());
    match Quantity::from_decimal(typed.0) {
        Some(quantity) => units::amount_short(view.tongue, quantity, unit, word.as_deref()),
        None => view.tongue.number(&typed.plain()),
    }
}

/// Whole minutes as a length.
pub fn minutes(minutes: u32) -> Seconds {
    drying::length(minutes)
}

/// The moment so many minutes later.
pub fn after(at: Instant, minutes: u32) -> Instant {
    at.plus(drying::length(minutes))
}

/// Said only where it is so.
fn one_off(is: bool) -> String {
    if is { words::yes_no(true).to_owned() } else { String::new() }
}

/// An item as it was written on the shelf, also where it is another one now.
pub fn item_as_typed(view: &View, id: Id) -> String {
    match view.journal.last_body(id) {
        Some(Body::Item(item)) => item.name.clone(),
        _ => gaps::name(view.shop, Source::Item(id)),
    }
}

pub(super) struct Facts<'a> {
    pub(super) view: &'a View<'a>,
}

impl Facts<'_> {
    fn tongue(&self) -> &Tongue {
        self.view.tongue
    }

    fn on(&self, on: On) -> String {
        match on {
            On::Day(day) => self.tongue().day_year(day),
            On::At(when) => self.at(when.instant, self.view.shop.zone.day(when.instant)),
        }
    }

    fn at(&self, at: Instant, day: Day) -> String {
        words::comma(&self.tongue().day_year(day), &self.tongue().time(at))
    }

    pub(super) fn money(&self, money: Option<Dec>) -> String {
        let Some(money) = money else { return String::new() };
        match Money::from_decimal(money.0) {
            Some(money) => self.tongue().money(money),
            None => self.tongue().number(&money.plain()),
        }
    }

    pub(super) fn plain(&self, number: Option<Dec>) -> String {
        number.map(|it| self.tongue().number(&it.plain())).unwrap_or_default()
    }

    pub(super) fn share(&self, share: Option<Dec>) -> String {
        share.map(|it| words::per_cent(&self.tongue().number(&it.hundredths()))).unwrap_or_default()
    }

    pub(super) fn tax_back(&self, tax: Option<Dec>, back: bool) -> String {
        if tax.is_some() { words::yes_no(back).to_owned() } else { String::new() }
    }

    fn build(&self, build: &kinds::Build) -> Vec<Fact> {
        vec![
            (Label::Name, build.title.clone()),
            (Label::Pieces, build.items.to_string()),
            (Label::Due, build.due.map(|day| self.tongue().day_year(day)).unwrap_or_default()),
            (Label::GoesOut, build.publish.map(|day| self.tongue().day_year(day)).unwrap_or_default()),
            (Label::FilmPlanned, self.plain(build.film_planned)),
            (
                Label::Repeat,
                build.repeat_of.map(|of| bearer(self.view, Bearer::Build(of))).unwrap_or_default(),
            ),
            (Label::Run, build.run_planned.map(|run| run.to_string()).unwrap_or_default()),
            (Label::Spoilage, self.share(build.normal_spoil)),
        ]
    }

    fn stretch(&self, it: &kinds::Stretch) -> Vec<Fact> {
        let time = |when: Option<benchslate_core::measure::When>| {
            when.map(|when| self.tongue().time(when.instant)).unwrap_or_default()
        };
        let ended = match (it.from, it.to) {
            (Some(_), None) => words::clock_running().to_owned(),
            (_, to) => time(to),
        };
        let length_of = |spans: &[Span]| (!spans.is_empty()).then(|| self.tongue().hours(Span::whole(spans)));
        vec![
            (Label::Stage, stage(self.view, it.stage)),
            (Label::Who, person(self.view, it.person)),
            (Label::Begun, time(it.from)),
            (Label::Ended, ended),
            (Label::Length, it.logged().map(|it| self.tongue().hours(it)).unwrap_or_default()),
            (Label::Breaks, length_of(&it.pauses).unwrap_or_default()),
            (Label::Camera, length_of(&it.rolling).unwrap_or_default()),
            (Label::For, bearer(self.view, it.bearer)),
            (Label::SideOf, common::side(it.side).to_owned()),
            (Label::OneOff, one_off(it.one_off)),
            (Label::Note, it.note.clone().unwrap_or_default()),
        ]
    }

    fn draw(&self, it: &kinds::Draw) -> Vec<Fact> {
        vec![
            (Label::What, gaps::name(self.view.shop, it.from)),
            (Label::Quantity, amount(self.view, it.quantity, it.unit, it.from)),
            (Label::For, bearer(self.view, it.bearer)),
            (Label::SideOf, common::side(it.side.unwrap_or(Side::Piece)).to_owned()),
            (Label::Stage, it.stage.map(|id| stage(self.view, id)).unwrap_or_default()),
            (Label::Note, it.note.clone().unwrap_or_default()),
        ]
    }

    fn drying(&self, it: &kinds::Drying) -> Vec<Fact> {
        let length = |it: u32| dries::length(self.tongue(), minutes(it));
        let of = match self.view.journal.body(it.stretch) {
            Some(Body::Stretch(stretch)) => words::comma(
                &stage(self.view, stretch.stage),
                &self.tongue().day(stretch.on.day(&self.view.shop.zone)),
            ),
            _ => words::gone().to_owned(),
        };
        vec![
            (Label::Of, of),
            (Label::Dry, length(it.next)),
            (Label::Held, it.held.map(length).unwrap_or_default()),
            (Label::What, it.item.map(|id| gaps::name(self.view.shop, Source::Item(id))).unwrap_or_default()),
        ]
    }

    fn expense(&self, it: &kinds::Expense) -> Vec<Fact> {
        vec![
            (Label::What, it.what.clone()),
            (Label::Amount, self.money(Some(it.amount))),
            (Label::Abroad, self.abroad(it.abroad.as_deref())),
            (Label::Tax, self.money(it.tax)),
            (Label::Back, self.tax_back(it.tax, it.tax_back)),
            (Label::For, bearer(self.view, it.bearer)),
            (Label::SideOf, common::side(it.side).to_owned()),
            (Label::OneOff, one_off(it.one_off)),
        ]
    }

    /// As the statement shows it: `42.50 EUR`.
    pub(super) fn abroad(&self, it: Option<&kinds::Abroad>) -> String {
        it.map(|it| [&self.plain(Some(it.amount)), it.currency.as_str()].join(" ")).unwrap_or_default()
    }

    fn lot(&self, it: &kinds::Lot) -> Vec<Fact> {
        let item = it.item.map(|id| gaps::name(self.view.shop, Source::Item(id)));
        let rough = Quantity::from_decimal(it.rough.0);
        let rough = rough.map(|rough| units::amount_short(self.tongue(), rough, it.unit, None));
        let got_for = it.for_build.map(|id| bearer(self.view, Bearer::Build(id)));
        let new = it.new.as_ref();
        vec![
            (Label::Name, it.name.clone()),
            (Label::Of, item.unwrap_or_default()),
            (Label::What, words::origin(it.origin).to_owned()),
            (Label::Rough, rough.unwrap_or_else(|| self.plain(Some(it.rough)))),
            (Label::Paid, self.money(it.paid)),
            (Label::Abroad, self.abroad(it.abroad.as_deref())),
            (Label::OfValue, self.money(it.value)),
            (Label::Fee, self.money(it.fee)),
            (Label::Freight, self.money(it.freight)),
            (Label::Discount, self.money(it.discount)),
            (Label::Tax, self.money(it.tax)),
            (Label::Back, self.tax_back(it.tax, it.tax_back)),
            (Label::ForBuild, got_for.unwrap_or_default()),
            (Label::Yield, self.share(it.expected_yield)),
            (Label::Mark, it.mark.map(cautions::of_mark).unwrap_or_default().to_owned()),
            (Label::Whence, it.whence.clone().unwrap_or_default()),
            (Label::Species, it.species.clone().unwrap_or_default()),
            (Label::By, it.by.map(words::supplied_by).unwrap_or_default().to_owned()),
            (Label::NewPrice, new.map(|new| self.money(Some(new.price))).unwrap_or_default()),
            (Label::Waste, new.map(|new| self.share(new.waste)).unwrap_or_default()),
            (Label::Delivery, new.map(|new| self.money(new.delivery)).unwrap_or_default()),
            (Label::Seen, new.and_then(|new| new.seen.clone()).unwrap_or_default()),
        ]
    }

    fn photo(&self, it: &kinds::Photo) -> Vec<Fact> {
        let of = it.entry.filter(|of| self.view.journal.has(*of));
        let of =
            of.map(|of| words::comma(&super::line::kind(self.view, of), &super::line::what(self.view, of)));
        let home = it.bearer.map(|at| bearer(self.view, at));
        let waits = || words::no_home().to_owned();
        vec![
            (Label::Text, it.caption.clone().unwrap_or_default()),
            (Label::Of, of.clone().unwrap_or_default()),
            (Label::For, if of.is_none() { home.unwrap_or_else(waits) } else { home.unwrap_or_default() }),
            (Label::What, photos::size(self.tongue(), it.width, it.height, it.bytes)),
        ]
    }

    fn trip(&self, it: &kinds::Trip) -> Vec<Fact> {
        let parts = it.parts();
        let whole = it.all_parts();
        let share = |share: &kinds::Share| {
            let name = bearer(self.view, share.bearer);
            if parts.len() == 1 { name } else { words::part_of(&name, share.parts, whole) }
        };
        vec![
            (Label::Km, self.plain(Some(it.km))),
            (Label::Fee, self.money(it.fee)),
            (Label::For, parts.iter().map(share).collect::<Vec<String>>().join("; ")),
        ]
    }

    fn sort(&self, it: &kinds::Sort) -> Vec<Fact> {
        let unit = self.view.shop.lots.get(&it.lot).map_or(Unit::Each, |lot| lot.unit);
        let amount = |typed| amount(self.view, typed, unit, Source::Lot(it.lot));
        vec![
            (Label::Of, gaps::name(self.view.shop, Source::Lot(it.lot))),
            (Label::Good, amount(it.good)),
            (Label::Culled, amount(it.culled)),
            (Label::Link, it.link.map(words::link).unwrap_or_default().to_owned()),
        ]
    }

    fn find(&self, it: &kinds::Find) -> Vec<Fact> {
        let rough = Quantity::from_decimal(it.rough.0);
        let rough = rough.map(|rough| units::amount_short(self.tongue(), rough, it.unit, None));
        let (cases, new) = ([it.cases.badly, it.cases.usually, it.cases.well], it.new.as_ref());
        let shares = cases.map(|case| self.share(Some(case.usable))).join(" / ");
        let minutes = cases.map(|case| case.minutes.to_string()).join(" / ");
        vec![
            (Label::Name, it.name.clone()),
            (Label::Whence, it.whence.clone().unwrap_or_default()),
            (Label::Species, it.species.clone().unwrap_or_default()),
            (Label::Rough, rough.unwrap_or_else(|| self.plain(Some(it.rough)))),
            (Label::Boards, it.boards.map(|boards| boards.to_string()).unwrap_or_default()),
            (Label::Asked, self.money(it.asked)),
            (Label::Fee, self.money(it.fee)),
            (Label::Km, self.plain(it.km)),
            (Label::Yield, shares),
            (Label::Minutes, minutes),
            (Label::NewPrice, new.map(|new| self.money(Some(new.price))).unwrap_or_default()),
            (Label::Waste, new.map(|new| self.share(new.waste)).unwrap_or_default()),
            (Label::Mark, it.mark.map(cautions::of_mark).unwrap_or_default().to_owned()),
            (Label::Lot, it.lot.map(|lot| gaps::name(self.view.shop, Source::Lot(lot))).unwrap_or_default()),
        ]
    }

    fn cull(&self, it: &kinds::Cull) -> Vec<Fact> {
        let unit = self.view.shop.lots.get(&it.lot).map_or(Unit::Each, |lot| lot.unit);
        vec![
            (Label::Of, gaps::name(self.view.shop, Source::Lot(it.lot))),
            (Label::Quantity, amount(self.view, it.quantity, unit, Source::Lot(it.lot))),
            (Label::Link, it.link.map(words::link).unwrap_or_default().to_owned()),
            (Label::Unexpected, if it.unexpected { words::yes_no(true).to_owned() } else { String::new() }),
        ]
    }

    fn item(&self, it: &kinds::Item) -> Vec<Fact> {
        vec![
            (Label::Name, it.name.clone()),
            (Label::Word, it.word.clone().unwrap_or_default()),
            (Label::Quantity, units::short(it.unit).to_owned()),
            (Label::Low, self.plain(it.low)),
            (Label::Covers, super::correct::covers(it)),
            (Label::Oxidises, it.oxidises.map(words::yes_no).unwrap_or_default().to_owned()),
            (Label::FoodSafe, it.food_safe.map(words::yes_no).unwrap_or_default().to_owned()),
            (Label::OwnLink, it.link.clone().unwrap_or_default()),
        ]
    }

    fn person(&self, it: &kinds::Person) -> Vec<Fact> {
        let rate = |rate: &kinds::Rate| {
            let day = rate.from.map(|day| self.tongue().day_year(day));
            words::rate_from(&self.money(Some(rate.an_hour)), day.as_deref())
        };
        vec![
            (Label::Name, it.name.clone()),
            (Label::Paid, words::yes_no(it.paid).to_owned()),
            (Label::Rates, it.rates.iter().map(rate).collect::<Vec<String>>().join("; ")),
        ]
    }
}
