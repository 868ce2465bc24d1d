//! Figures in words: what a figure is called, how much of it there is, how a line was worked out.
//!
//! All numbers come from core and go through the tongue; nothing is added up here.

use crate::{
    shell::desk::View,
    words::{Tongue, cost as words, gaps, shelf, units},
};
use benchslate_core::{
    costing::{Books, CostKind, Hours, Part, PartOf, Rule, Statement, Value, Working, salvage::By},
    journal::{
        Body, Id, Shop,
        kinds::{Origin, Source, Span},
    },
    measure::{Money, Quantity, Ratio, Seconds, Shown, Unit},
};

/// What says an amount.
type InWords = fn(&str) -> String;

/// As wide as a plus.
const MINUS: char = '\u{2212}';

/// Whoever names figures: the shop's names and the reader's numbers.
#[derive(Clone, Copy)]
pub struct Say<'a> {
    pub books: &'a Books,
    pub view: &'a View<'a>,
}

/// A line of the journal within a sum.
pub struct Line {
    /// Day and what.
    pub label: String,
    /// How it was worked out.
    pub working: Option<String>,
    /// On the piece of the bar.
    pub short: Option<String>,
    /// Quarter hours, as strokes.
    pub quarters: u32,
}

impl<'a> Say<'a> {
    fn shop(self) -> &'a Shop {
        self.view.shop
    }

    fn tongue(self) -> &'a Tongue {
        self.view.tongue
    }

    /// What a figure is called.
    pub fn name(self, rule: &Rule) -> String {
        let lot = |lot: &Id| gaps::name(self.shop(), Source::Lot(*lot));
        let plain = match rule {
            Rule::Stage { stage, .. } => return self.stage(*stage),
            Rule::Drawn { source, .. } => return words::capital(&gaps::name(self.shop(), *source)),
            Rule::LotMoney { lot: it } | Rule::LotNotDrawn { lot: it } => return words::capital(&lot(it)),
            Rule::Held { source, .. } => return words::capital(&gaps::name(self.shop(), *source)),
            Rule::OnTheShelf | Rule::UnderWay => shelf::for_books(*rule == Rule::UnderWay),
            Rule::StockLosses => shelf::losses(),
            Rule::WrittenOff { why } => shelf::why(*why),
            Rule::LotCost { .. } => words::whole_lot(),
            Rule::Draw { entry } => return self.draw_name(*entry),
            Rule::Kind { kind, .. } => words::kind(*kind),
            Rule::Rest { kind, .. } => words::rest_of(*kind),
            Rule::TrueCost | Rule::FromUsedUp => words::true_cost(),
            Rule::Spent => words::spent(),
            Rule::UsedUp | Rule::UsedUpByKind => words::used_up(),
            Rule::NotDrawn => words::not_drawn(),
            Rule::OtherStock => words::earlier_stock(),
            Rule::DirectMoney => words::direct_money(),
            Rule::PaidLabour { .. } => words::paid_labour(),
            Rule::TaxBack => words::tax_back(),
            Rule::OwnHours => words::own_hours(),
            Rule::InTheTimber => words::in_the_timber(),
            Rule::HourEarned { .. } => words::hour_earned(),
            Rule::Tool { tool, .. } => {
                return words::capital(&crate::screens::journal::running_facts::tool(self.view, *tool));
            }
            Rule::OneOffMoney => words::one_off_money(),
            Rule::Sides => words::sides(),
            Rule::Side { side, .. } => words::one_side(*side),
            Rule::Net => words::net(),
            Rule::InKind => words::in_kind(),
            Rule::StillExpected => words::expected(),
            Rule::Outlook => words::outlook(),
            Rule::ToCome { .. } => words::to_come(),
            Rule::ToComeLabour { .. } => words::to_come_labour(),
            Rule::ToComeOverhead | Rule::ToComeTools | Rule::ToComeOneOff => to_come(rule),
            Rule::ToComeMaterials => words::to_come_materials(),
            Rule::ToComeMoney => words::to_come_money(),
            Rule::AboveFetch => crate::words::earned::above_fetch(),
            Rule::AboveNew { .. } => crate::words::salvage::above_new(),
            Rule::LotSaved { lot: it, .. } => return words::capital(&lot(it)),
            Rule::GroupSaved { of, by, .. } => return self.group(*of, *by),
            Rule::AcrossAnHour { of: Some(of), by, .. } => return self.group(*of, *by),
            Rule::TaxIn => words::tax_in(),
            Rule::Item { .. } => words::item(),
            Rule::Batch => words::batch(),
            Rule::Loss => words::loss(),
            Rule::Scrap => words::scrap(),
            Rule::OneOffEach => words::one_off_each(),
            Rule::ProfitOnSold { .. } => words::profit(),
            Rule::ItemsAtCost { .. } => words::items_at_cost(),
            Rule::AcrossSaved { at_rate: false, .. } => words::saved_free(),
            Rule::AcrossSaved { at_rate: true, .. } => words::saved_at_rate(),
            Rule::BuildSavedFree | Rule::SavedTimeFree { .. } => words::saved_free(),
            Rule::BuildSavedAtRate | Rule::SavedAtRate { .. } => words::saved_at_rate(),
            Rule::ChainCost { .. } => crate::words::salvage::the_chain(),
            Rule::LinkCost { at, .. } => crate::words::salvage::link(*at),
            Rule::Fetched { .. } => words::fetched(),
            Rule::Reclaimed { .. } => words::reclaimed(),
            Rule::BuildInstead | Rule::BoughtInstead { .. } => words::bought_instead(),
            Rule::BuildTook | Rule::MoneyAndVehicle { .. } => words::money_and_drives(),
            Rule::BuildOwnTime { .. } | Rule::OwnTime { .. } => words::own_time(),
            Rule::AcrossAnHour { .. } | Rule::BuildPaidAnHour { .. } | Rule::PaidAnHour { .. } => {
                words::paid_an_hour()
            }
        };
        plain.to_owned()
    }

    /// Lots that were put together, by what the first of them says.
    pub fn group(self, of: Id, by: By) -> String {
        let lot = self.shop().lots.get(&of);
        let said =
            lot.and_then(|lot| if by == By::Source { lot.whence.clone() } else { lot.species.clone() });
        let name = said.filter(|it| !it.trim().is_empty());
        name.unwrap_or_else(|| crate::words::across::not_said(by == By::Source).to_owned())
    }

    /// The same within a sentence: our own words small, the maker's and days as they are.
    pub fn within(self, rule: &Rule) -> String {
        match rule {
            Rule::Draw { entry } => self.draw_name(*entry),
            Rule::Drawn { source, .. } => gaps::name(self.shop(), *source),
            Rule::GroupSaved { .. } => self.name(rule),
            Rule::LotMoney { lot } | Rule::LotNotDrawn { lot } | Rule::LotSaved { lot, .. } => {
                gaps::name(self.shop(), Source::Lot(*lot))
            }
            _ => words::lower(&self.name(rule)),
        }
    }

    /// Hours or quantity of a figure, where it has one.
    pub fn how_much(self, rule: &Rule) -> Option<String> {
        match rule {
            Rule::Stage { hours, .. }
            | Rule::PaidLabour { hours }
            | Rule::OwnTime { hours, .. }
            | Rule::PaidAnHour { hours, .. }
            | Rule::HourEarned { hours }
            | Rule::ToCome { hours }
            | Rule::ToComeLabour { hours }
            | Rule::BuildOwnTime { hours }
            | Rule::BuildPaidAnHour { hours }
            | Rule::LinkCost { hours, .. }
            | Rule::Rest { kind: CostKind::Labour | CostKind::Overhead, hours }
            | Rule::Kind { kind: CostKind::Labour | CostKind::Overhead, hours } => Some(self.hours(*hours)),
            Rule::Side { hours, .. } => Some(words::of_labour(&self.hours(*hours))),
            Rule::Rest { kind: CostKind::Tools, hours } | Rule::Kind { kind: CostKind::Tools, hours } => {
                Some(words::hours_run(&self.hours(*hours)))
            }
            // Hours in the timber are told as such.
            Rule::Rest { hours, .. } | Rule::Kind { hours, .. } => {
                (!hours.is_zero()).then(|| words::hours_in_it(&self.hours(*hours)))
            }
            Rule::Drawn { source, quantity, unit } => {
                quantity.map(|quantity| self.quantity(quantity, *unit, Some(*source)))
            }
            _ => None,
        }
    }

    /// What stands under a figure in a row: how much, else what is in it.
    pub fn about(self, statement: &Statement) -> Option<String> {
        if let Some(how_much) = self.how_much(&statement.rule) {
            return Some(how_much);
        }
        let wants = matches!(
            statement.rule,
            Rule::Spent
                | Rule::NotDrawn
                | Rule::OtherStock
                | Rule::Kind { .. }
                | Rule::DirectMoney
                | Rule::Rest { .. }
        );
        let names: Vec<String> = statement.parts.iter().map(|part| self.in_it(part)).collect();
        (wants && !names.is_empty()).then(|| words::some_of(&names))
    }

    fn in_it(self, part: &Part) -> String {
        match &part.of {
            PartOf::Statement(below) => {
                let lot = |lot: Id| gaps::name(self.shop(), Source::Lot(lot));
                match below.rule {
                    Rule::Drawn { source, .. } => {
                        let (much, name) = (self.how_much(&below.rule), gaps::name(self.shop(), source));
                        match much {
                            // The maker's own word says what it is: `14 discs`.
                            Some(much) if self.word(Some(source)).is_some() => much,
                            Some(much) => joined(&much, &name),
                            None => name,
                        }
                    }
                    Rule::LotMoney { lot: it } | Rule::LotNotDrawn { lot: it } => lot(it),
                    _ => words::lower(&self.name(&below.rule)),
                }
            }
            PartOf::Entry { entry, working, .. } => self.what(*entry, working),
        }
    }

    /// How a figure is worked out, in one sentence.
    pub fn how(self, rule: &Rule) -> Option<&'static str> {
        match rule {
            Rule::Stage { .. } | Rule::PaidLabour { .. } | Rule::Kind { kind: CostKind::Labour, .. } => {
                Some(words::how_labour())
            }
            Rule::Drawn { source: Source::Lot(_), .. } | Rule::Draw { .. } => Some(words::how_lot()),
            Rule::Drawn { source: Source::Item(_), .. } => Some(words::how_item()),
            Rule::NotDrawn | Rule::LotNotDrawn { .. } => Some(words::how_not_drawn()),
            Rule::Tool { .. } | Rule::Kind { kind: CostKind::Tools, .. } => Some(words::how_tools()),
            Rule::Kind { kind: CostKind::Overhead, .. } => Some(words::how_overhead()),
            Rule::Kind { kind: CostKind::OneOff, .. } => Some(words::how_one_off()),
            Rule::HourEarned { .. } => Some(words::how_hour_earned()),
            Rule::Item { .. } => Some(words::how_item_cost()),
            Rule::Sides | Rule::Side { .. } => Some(words::how_sides()),
            Rule::Outlook => Some(words::how_outlook()),
            Rule::ToComeMaterials => Some(words::how_to_come_materials()),
            Rule::AboveFetch => Some(words::how_above_fetch()),
            Rule::AboveNew { .. } => Some(words::how_above_new()),
            Rule::ToCome { .. } | Rule::ToComeLabour { .. } => Some(words::how_to_come()),
            Rule::InTheTimber => Some(words::how_timber()),
            Rule::TaxBack => Some(words::apart()),
            _ => None,
        }
    }

    /// A line of the journal within a sum.
    pub fn line(self, entry: Id, working: &Working) -> Line {
        let label = match self.day(entry) {
            Some(day) => words::line(&day, &self.what(entry, working)),
            None => words::capital(&self.what(entry, working)),
        };
        let (short, quarters) = match working {
            Working::Hours { person, seconds, .. } => (Some(self.person(*person)), quarters(*seconds)),
            _ => (None, 0),
        };
        Line { label, working: self.working(entry, working), short, quarters }
    }

    /// What a line is about, without its day.
    fn what(self, entry: Id, working: &Working) -> String {
        match (self.view.journal.body(entry), working) {
            (Some(Body::Step(it)), _) => it.title.clone(),
            (Some(Body::Build(it)), _) => it.title.clone(),
            (_, Working::Hours { person, seconds, .. }) => {
                words::worked(&self.person(*person), &self.tongue().hours(*seconds))
            }
            (Some(Body::Draw(draw)), Working::Draw { quantity: Some(quantity), unit, .. }) => {
                let much = self.quantity(*quantity, *unit, Some(draw.from));
                if quantity.is_negative() { words::came_back(much.trim_start_matches(MINUS)) } else { much }
            }
            (Some(Body::Draw(draw)), _) => gaps::name(self.shop(), draw.from),
            (_, Working::Trip { km: Some(km), .. }) => words::drive(&self.tongue().quantity(*km)),
            (Some(Body::Trip(_)), _) => words::some_drive().to_owned(),
            (Some(Body::Expense(expense)), _) => expense.what.clone(),
            (Some(Body::BuyLine(it)), _) => crate::screens::buying::name(self.view, it),
            (Some(Body::Lot(_)), _) => gaps::name(self.shop(), Source::Lot(entry)),
            (Some(Body::Receipt(it)), _) => it.whence.clone().unwrap_or_else(|| words::receipt().to_owned()),
            (Some(Body::ByProduct(it)), _) => it.what.clone(),
            (Some(Body::Income(it)), _) => {
                it.what.clone().unwrap_or_else(|| crate::words::income::kind(it.kind).to_owned())
            }
            (Some(Body::Made(it)), _) => crate::words::income::made(it.good, it.spoiled.len()),
            (Some(Body::ToolHours(it)), _) => {
                crate::screens::journal::running_facts::tool(self.view, it.tool)
            }
            (Some(Body::Stretch(stretch)), _) => {
                joined(&self.stage(stretch.stage), &self.person(stretch.person))
            }
            _ => words::not_known().to_owned(),
        }
    }

    /// A draw of a lot by itself opens further: into what it took of each line of that lot.
    pub fn opens(self, entry: Id, working: &Working) -> Option<Rule> {
        let draw = matches!(working, Working::Draw { .. }).then(|| self.books.draw(entry)).flatten()?;
        (draw.parts.len() > 1).then_some(draw.rule)
    }

    fn working(self, entry: Id, working: &Working) -> Option<String> {
        let (tongue, money) = (self.tongue(), |money: Money| self.money(money));
        let mut parts: Vec<String> = Vec::new();
        match working {
            Working::Hours { rate, .. } => {
                parts.extend(self.when(entry));
                parts.extend(rate.map(|rate| words::times(&money(rate))));
            }
            Working::Draw { quantity, unit_cost, hours, .. } => {
                let size = quantity.map(|it| tongue.quantity(it));
                parts.extend(size.zip(*unit_cost).map(|(size, cost)| words::at_a_unit(&size, &money(cost))));
                parts.extend((!hours.is_zero()).then(|| words::hours_in_it(&self.hours(*hours))));
            }
            Working::Trip { km, rate, fee, share: (part, whole) } => {
                let km = km.map(|km| tongue.quantity(km));
                parts.extend(km.zip(*rate).map(|(km, rate)| words::at_a_unit(&km, &money(rate))));
                parts.extend((!fee.is_zero()).then(|| words::tolls(&money(*fee))));
                parts.extend((part != whole).then(|| words::share(*part, *whole)));
            }
            Working::Price { paid, fees, tax, discount } => {
                parts.extend(paid.map(|paid| words::paid(&money(paid))));
                parts.extend(self.some(&[
                    (*fees, words::fees),
                    (*tax, words::tax),
                    (*discount, words::discount),
                ]));
            }
            Working::Amount => {}
            Working::Overhead { month, film, .. } => {
                let pool = |cost: Money, hours: Option<Quantity>| {
                    hours.map(|hours| words::month_over(&money(cost), &tongue.quantity(hours)))
                };
                parts.extend(pool(month.shop, month.hours));
                parts.extend(film.then(|| pool(month.film, month.film_hours)).flatten());
            }
            Working::Tool { seconds, duty, wear, blade, beside } => {
                if let Some(duty) = self.per_cent(*duty) {
                    parts.push(words::ran(&tongue.hours(*seconds), &duty));
                }
                parts.extend(self.some(&[
                    (*wear, words::wear),
                    (*blade, words::blade),
                    (*beside, words::upkeep_and_power),
                ]));
            }
            Working::OneOff { of, good, run } => parts.push(words::for_so_many(&money(*of), *good, *run)),
            Working::Received { amount, tax, fee, share: (part, whole) } => {
                parts.push(money(*amount));
                parts.extend(self.some(&[(*tax, words::tax), (*fee, words::fee_off)]));
                parts.extend((part != whole).then(|| words::share(*part, *whole)));
            }
            Working::Share { of, part, whole } => {
                parts.push(words::taken_of(&money(*of), &tongue.quantity(*part), &tongue.quantity(*whole)));
            }
            Working::BoughtInstead { quantity, unit, price, waste, tax, delivery } => {
                let much = self.quantity(*quantity, *unit, None);
                parts.push(words::at_a_unit(&much, &money(*price)));
                for (ratio, say) in [(waste, words::waste as fn(&str) -> String), (tax, words::tax)] {
                    parts.extend(self.per_cent(*ratio).map(|share| say(&share)));
                }
                parts.extend((!delivery.is_zero()).then(|| words::delivery(&money(*delivery))));
            }
        }
        words::working(&parts)
    }

    /// Those of the amounts that are something, each in its words.
    fn some(self, amounts: &[(Money, InWords)]) -> Vec<String> {
        let some = amounts.iter().filter(|(amount, _)| !amount.is_zero());
        some.map(|(amount, say)| say(&self.money(*amount))).collect()
    }

    /// From when to when, and how long the camera ran.
    fn when(self, entry: Id) -> Vec<String> {
        let Some(Body::Stretch(stretch)) = self.view.journal.body(entry) else { return Vec::new() };
        let Some(from) = stretch.from else { return Vec::new() };
        let begun = self.tongue().time(from.instant);
        let mut text = match stretch.to {
            Some(to) => words::from_to(&begun, &self.tongue().time(to.instant)),
            None => words::since(&begun),
        };
        let rolled = Span::whole(&stretch.rolling);
        if !rolled.is_zero() {
            text.push_str(", ");
            text.push_str(&words::rolling(&self.tongue().hours(rolled)));
        }
        vec![text]
    }

    /// A figure as it is shown: money, else the hours it says, else that nothing can be said.
    pub fn figure(self, shown: Option<Shown>, value: Option<Value>) -> Option<String> {
        match (shown, value) {
            (Some(shown), _) => Some(self.tongue().shown(shown)),
            (None, Some(Value::Hours(hours))) => Some(self.hours(hours)),
            (None, Some(Value::Money(money) | Value::PerHour(money))) => Some(self.money(money)),
            (None, None) => None,
        }
    }

    /// Hours, with a minus before what came back.
    pub fn hours(self, hours: Hours) -> String {
        let Seconds(seconds) = hours.seconds();
        let text = self.tongue().hours(Seconds(seconds.saturating_abs()));
        if seconds < 0 { format!("{MINUS}{text}") } else { text }
    }

    /// A share as a percentage; none of nothing.
    fn per_cent(self, ratio: Ratio) -> Option<String> {
        let hundredths = ratio.hundredths();
        (!hundredths.is_zero()).then(|| words::per_cent(&self.tongue().quantity(hundredths)))
    }

    pub fn money(self, money: Money) -> String {
        self.tongue().money(money)
    }

    /// The day of an entry.
    fn day(self, entry: Id) -> Option<String> {
        let on = self.view.journal.body(entry)?.on();
        Some(self.tongue().day(on.day(&self.shop().zone)))
    }

    fn draw_name(self, entry: Id) -> String {
        let Some(draw) = self.shop().draws.iter().find(|draw| draw.entry() == entry) else {
            return words::not_known().to_owned();
        };
        let much =
            draw.quantity.map(|quantity| self.quantity(quantity, self.unit(draw.from), Some(draw.from)));
        match (self.day(entry), much) {
            (Some(day), Some(much)) => words::line(&day, &much),
            _ => words::capital(&gaps::name(self.shop(), draw.from)),
        }
    }

    fn unit(self, source: Source) -> Unit {
        let unit = match source {
            Source::Lot(id) => self.shop().lots.get(&id).map(|lot| lot.unit),
            Source::Item(id) => self.shop().items.get(&id).map(|item| item.unit),
        };
        unit.unwrap_or(Unit::Each)
    }

    pub fn quantity(self, quantity: Quantity, unit: Unit, source: Option<Source>) -> String {
        units::amount_short(self.tongue(), quantity, unit, self.word(source))
    }

    /// The maker's own word for one of it.
    fn word(self, source: Option<Source>) -> Option<&'a str> {
        let item = match source? {
            Source::Item(id) => Some(id),
            Source::Lot(id) => self.shop().lots.get(&id).and_then(|lot| lot.item),
        };
        self.shop().items.get(&item?)?.word.as_deref()
    }

    fn stage(self, stage: Id) -> String {
        let name = self.shop().stages.get(&stage).map_or(words::not_known(), |it| it.name.as_str());
        words::capital(name)
    }

    fn person(self, person: Id) -> String {
        self.shop().people.get(&person).map_or_else(|| words::somebody().to_owned(), |it| it.name.clone())
    }
}

/// Of what the plan still costs, what goes by hours and pieces.
fn to_come(rule: &Rule) -> &'static str {
    match rule {
        Rule::ToComeOverhead => words::to_come_overhead(),
        Rule::ToComeTools => words::to_come_tools(),
        _ => words::to_come_one_off(),
    }
}

/// The kind that a figure is part of, where its rule says so by itself.
pub fn kind(rule: &Rule, shop: &Shop) -> Option<CostKind> {
    match rule {
        Rule::Kind { kind, .. } | Rule::Rest { kind, .. } => Some(*kind),
        Rule::Stage { .. } | Rule::PaidLabour { .. } | Rule::OwnHours | Rule::OwnTime { .. } => {
            Some(CostKind::Labour)
        }
        Rule::Drawn { source, .. } => Some(kind_of(*source, shop)),
        Rule::LotMoney { lot }
        | Rule::LotNotDrawn { lot }
        | Rule::LotCost { lot }
        | Rule::ChainCost { lot }
        | Rule::LinkCost { lot, .. }
        | Rule::Fetched { lot, .. }
        | Rule::Reclaimed { lot, .. }
        | Rule::MoneyAndVehicle { lot } => Some(kind_of(Source::Lot(*lot), shop)),
        Rule::Draw { entry } => {
            let draw = shop.draws.iter().find(|draw| draw.entry() == *entry)?;
            Some(kind_of(draw.from, shop))
        }
        Rule::Tool { .. } => Some(CostKind::Tools),
        Rule::DirectMoney => Some(CostKind::Direct),
        _ => None,
    }
}

/// The kind that draws from a lot or an item are of.
fn kind_of(source: Source, shop: &Shop) -> CostKind {
    let (purpose, origin) = match source {
        Source::Lot(id) => match shop.lots.get(&id) {
            Some(lot) => (lot.purpose, lot.origin),
            None => return CostKind::Bought,
        },
        Source::Item(id) => {
            let Some(item) = shop.items.get(&id) else { return CostKind::Bought };
            let mut origins = shop.lots.values().filter(|lot| lot.item == Some(id)).map(|lot| lot.origin);
            let first = origins.next().unwrap_or(Origin::Bought);
            (item.purpose, if origins.all(|it| it == first) { first } else { Origin::Bought })
        }
    };
    CostKind::of_stock(purpose, origin)
}

fn quarters(worked: Seconds) -> u32 {
    let Seconds(seconds) = worked;
    // To the nearest quarter, so that 0 h 10 is still a stroke.
    u32::try_from(seconds.saturating_add(450) / 900).unwrap_or(0)
}

fn joined(first: &str, second: &str) -> String {
    format!("{first} {second}")
}
