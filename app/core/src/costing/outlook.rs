//! The outlook of an open build: what will be left of what comes in, once all that is planned is done.
//!
//! Net received + in kind + still expected − (true cost so far + what the plan still costs). What the plan still costs:
//! hours left of each step at today's rates, what the shop costs by these hours, the tools of the stage at their rate of
//! today, planned materials (`planned`), and the share of one-off work of the items still to be made. No steps: it can't
//! be worked out.
//! Source: our own rule, DEVELOPERS.md § Figures. Not here: dates and chances (`planning`), what is left of a step
//! (`timing::steps`).

use super::{
    Books, BuildCost, Gap, Hours, OneOff, Part, PartOf, Parts, Rule, Statement, Value, Working, labour,
    overhead::Months,
    planned,
    sides::{OneSide, Split},
};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Role, Side, State},
        shop::Step,
    },
    measure::{Day, Map, Money, Quantity, Seconds, fixed},
    timing::{
        steps::{self, Planned},
        worked,
    },
};

/// What the steps of one build still cost, all but one-off work.
#[derive(Clone, Debug, Default)]
pub(crate) struct ToCome {
    hours: Hours,
    /// Items still to be made.
    still_to_make: u32,
    labour: Vec<Part>,
    overhead: Vec<Part>,
    tools: Vec<Part>,
    materials: Vec<Part>,
    /// What the materials lack.
    no_price: Vec<Gap>,
    gaps: Vec<Gap>,
}

/// By build: those that have steps.
pub(crate) fn to_come(books: &Books, shop: &Shop) -> Map<Id, ToCome> {
    let mut all: Map<Id, ToCome> = Map::new();
    if shop.steps.is_empty() {
        return all;
    }
    let today = shop.zone.day(books.as_of);
    let mut months = Months::of(shop);
    let planned = steps::planned(shop, &worked(shop, books.as_of));
    for (id, step) in &shop.steps {
        let Some(build) = shop.builds.get(&step.build()) else { continue };
        let to_come = all.entry(step.build()).or_default();
        let good = books.made.get(&step.build()).map_or(0, |it| it.good);
        to_come.still_to_make = build.items.saturating_sub(good);
        if let Some(planned) = planned.get(id) {
            to_come.add(books, shop, (*id, step, planned), today, &mut months);
        }
    }
    let builds: Vec<Id> = all.keys().copied().collect();
    for build in builds {
        let (materials, gaps) = planned::to_come(books, shop, build);
        let to_come = all.entry(build).or_default();
        (to_come.materials, to_come.no_price) = (materials, gaps);
    }
    all
}

impl ToCome {
    /// Hours of people and materials.
    pub(crate) fn money(&self) -> (&[Part], &[Part]) {
        (&self.labour, &self.materials)
    }

    fn add(
        &mut self,
        books: &Books,
        shop: &Shop,
        (id, step, planned): (Id, &Step, &Planned),
        today: Day,
        months: &mut Months,
    ) {
        if step.done().is_some() {
            return;
        }
        if planned.mean.is_none() && step.left.is_none() {
            self.gaps.push(Gap::NoEstimate { step: id });
            return;
        }
        let stage = shop.stages.get(&step.body.stage);
        let side = stage.map_or(Side::Piece, |stage| stage.side);
        let split = Split::of(side, books.ledgers.keys.of_bearer(Bearer::Build(step.build())).split);
        let admin = stage.is_some_and(|stage| stage.role == Some(Role::Admin));
        let at_it: &[Id] =
            if step.body.any { step.body.who.get(..1).unwrap_or_default() } else { &step.body.who };
        if at_it.is_empty() {
            self.gaps.push(Gap::NobodyNamed { step: id });
        }
        let seconds = planned.left;
        for person in at_it {
            self.hours = self.hours.plus(Hours::of(seconds));
            self.labour(shop, id, *person, seconds, today);
            if !admin {
                let borne = months.share(today, seconds, split);
                self.gaps.extend(borne.gap);
                let cost = borne.parts().overhead();
                self.overhead.push(Part::entry(id, Some(Value::Money(cost)), borne.working(seconds)));
            }
        }
        // However many are at it, a machine runs once.
        self.tools(books, shop, id, step, seconds);
    }

    fn labour(&mut self, shop: &Shop, step: Id, person: Id, seconds: Seconds, today: Day) {
        let rate = shop.people.get(&person).and_then(|it| it.rate_on(today));
        let value = rate.and_then(|rate| labour::value(seconds, rate)).map(Value::Money);
        if value.is_none() {
            self.gaps.push(Gap::NoRate { person });
        }
        let paid = shop.people.get(&person).is_some_and(|it| it.paid);
        self.labour.push(Part::entry(step, value, Working::Hours { person, seconds, rate, paid }));
    }

    fn tools(&mut self, books: &Books, shop: &Shop, step: Id, planned: &Step, seconds: Seconds) {
        for book in books.tools() {
            let Some(tool) = shop.tools.get(&book.tool).filter(|it| it.gone.is_none()) else { continue };
            let Some(duty) = tool.duty_at(planned.body.stage) else { continue };
            let hours = fixed::mul_div(i128::from(seconds.0), duty.micros(), 3600).map(Quantity::from_micros);
            let at = |rate: Money| {
                let hours = hours.unwrap_or_default();
                fixed::mul_div(hours.micros(), rate.micros(), fixed::SCALE)
                    .map(Money::from_micros)
                    .unwrap_or_default()
            };
            // What is worn out wears no further.
            let worn_out = book.book_value.is_some_and(|value| value <= tool.resale);
            let wear = if worn_out { Money::ZERO } else { book.wear.unwrap_or_default() };
            let beside = book.upkeep.plus(book.power.unwrap_or_default());
            let cost = [wear, book.blade.unwrap_or_default(), beside].map(at);
            let [wear, blade, beside] = cost;
            let value = wear.plus(blade).plus(beside);
            let working = Working::Tool { seconds, duty, wear, blade, beside };
            self.tools.push(Part::entry(step, Some(Value::Money(value)), working));
        }
    }
}

/// Money as one part of a cost.
type OfMoney = fn(Money) -> Parts;

/// What is known of what is still ahead of a build.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ahead {
    /// Nothing is: it is closed, or all that is wanted is made and no step is left.
    Nothing,
    /// Its steps say what.
    Planned,
    /// Its steps say some of it.
    Partly,
    /// Nobody has said: there are no steps.
    Unplanned,
}

impl Books {
    /// What is known of what is still ahead of a build.
    pub(crate) fn ahead(&self, shop: &Shop, build: Id) -> Ahead {
        let wanted = shop.builds.get(&build).map_or(0, |it| it.items);
        let closed = shop.state_of(build, shop.zone.day(self.as_of)) == State::Closed;
        match self.to_come.get(&build) {
            _ if closed => Ahead::Nothing,
            Some(it) if it.gaps.is_empty() && it.no_price.is_empty() => Ahead::Planned,
            Some(_) => Ahead::Partly,
            None if self.items(build).good >= wanted => Ahead::Nothing,
            None => Ahead::Unplanned,
        }
    }

    /// What the steps of a build still cost, one-off work apart; on one side, or on both. What is for both is shared by
    /// the key of the build, as what was worked is.
    pub(crate) fn steps_to_come(&self, shop: &Shop, build: Id, side: Option<OneSide>) -> Parts {
        let Some(to_come) = self.to_come.get(&build) else { return Parts::ZERO };
        let both = self.ledgers.keys.of_bearer(Bearer::Build(build)).split;
        let of_side = |part: &Part, parts: Parts| {
            let step = part.entry_id().and_then(|step| shop.steps.get(&step));
            let of = step.and_then(|it| shop.stages.get(&it.body.stage)).map_or(Side::Piece, |it| it.side);
            side.map_or(parts, |side| Split::of(of, both).part(parts, side))
        };
        let money = |part: &Part| part.signed_money().unwrap_or_default();
        let lists: [(&[Part], OfMoney); 3] = [
            (&to_come.overhead, Parts::of_overhead),
            (&to_come.tools, Parts::of_tools),
            (&to_come.materials, Parts::of_money),
        ];
        let mut sum = Parts::ZERO;
        for (parts, of) in lists {
            sum = parts.iter().fold(sum, |sum, part| sum.plus(of_side(part, of(money(part)))));
        }
        for part in &to_come.labour {
            if let PartOf::Entry { working: Working::Hours { seconds, paid, .. }, .. } = &part.of {
                sum = sum.plus(of_side(part, Parts::of_labour(money(part), *seconds, *paid)));
            }
        }
        sum
    }

    /// All that its plan still costs, and what of that is one's own: money and hours.
    pub(crate) fn plan_to_come(&self, shop: &Shop, build: Id, cost: &BuildCost) -> (Money, Money, Hours) {
        let plan = cost.outlook.part(|rule| matches!(rule, Rule::ToCome { .. })).and_then(Statement::money);
        let steps = self.steps_to_come(shop, build, None);
        let still = self.to_come.get(&build).map_or(0, |it| it.still_to_make);
        let (own, hours) =
            cost.one_off.filter(|it| it.ended.is_none()).map(|it| it.own_in(still)).unwrap_or_default();
        let rest = cost.one_off.map(|it| it.rest).unwrap_or_default();
        (
            plan.unwrap_or_default(),
            steps.own_labour().plus(own.min(rest.own_labour())),
            steps.own_hours().plus(hours.min(rest.own_hours())),
        )
    }
}

impl OneOff {
    /// Own labour and own hours that so many items bear of it.
    pub(super) fn own_in(&self, items: u32) -> (Money, Hours) {
        let of = |sum: i128| fixed::mul_div(sum, i128::from(items), i128::from(self.run)).unwrap_or(0);
        let (own, hours) = (self.pool.own_labour().micros(), self.pool.own_hours().micros());
        (Money::from_micros(of(own)), Hours::of_scaled(of(hours)))
    }
}

/// What the plan still costs, and the outlook; `cost` is the build's so far.
pub(crate) fn outlook(books: &Books, build: Id, cost: &BuildCost) -> Statement {
    let Some(to_come) = books.to_come.get(&build) else {
        let gaps = vec![Gap::NoSteps { build }];
        return Statement::carrying(Rule::Outlook, Vec::new(), gaps, Vec::new());
    };
    let still_to_make = to_come.still_to_make;
    let sum =
        |rule: Rule, parts: &[Part]| Part::plus(Statement::sum(rule, parts.to_vec(), Vec::new(), Vec::new()));
    let mut parts = vec![sum(Rule::ToComeLabour { hours: to_come.hours }, &to_come.labour)];
    if !to_come.overhead.is_empty() {
        parts.push(sum(Rule::ToComeOverhead, &to_come.overhead));
    }
    if !to_come.tools.is_empty() {
        parts.push(sum(Rule::ToComeTools, &to_come.tools));
    }
    if !to_come.materials.is_empty() {
        let (materials, gaps) = (to_come.materials.clone(), to_come.no_price.clone());
        parts.push(Part::plus(Statement::sum(Rule::ToComeMaterials, materials, gaps, Vec::new())));
    }
    if let Some(one_off) = cost.one_off.filter(|it| it.ended.is_none() && still_to_make > 0) {
        let run = i128::from(one_off.run);
        let share =
            fixed::mul_div(one_off.pool.total().micros(), i128::from(still_to_make), run).unwrap_or(0);
        let share = Money::from_micros(share).min(one_off.rest.total());
        let working = Working::OneOff { of: one_off.pool.total(), good: still_to_make, run: one_off.run };
        let of_pool = Part::entry(build, Some(Value::Money(share)), working);
        parts.push(sum(Rule::ToComeOneOff, &[of_pool]));
    }
    let plan = Statement::sum(Rule::ToCome { hours: to_come.hours }, parts, to_come.gaps.clone(), Vec::new());
    let parts = vec![
        Part::plus(cost.earned.net.clone()),
        Part::plus(cost.in_kind.clone()),
        Part::plus(cost.earned.expected.clone()),
        Part::minus(cost.true_cost.clone()),
        Part::minus(plan),
    ];
    Statement::sum(Rule::Outlook, parts, Vec::new(), Vec::new())
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    /// What the plan still costs in materials, and what it lacks.
    #[track_caller]
    fn check(lines: &str, want: &str, gaps: usize) {
        let it = fixture(&format!(
            "person Ana 20
            item disc consumable each
            lot a bought 40 of disc unit each paid 80
            build trays
            step sand-them trays sand who Ana hours 2,2,2
            {lines}"
        ));
        let outlook = it.books().build_cost(it.id("trays")).outlook;
        let plan = outlook.part(|rule| matches!(rule, Rule::ToCome { .. })).unwrap();
        let materials = plan.part(|rule| *rule == Rule::ToComeMaterials);
        let told = materials.and_then(Statement::money).map(|it| it.shown(2)).unwrap_or_default();
        assert_eq!((&told[..], plan.gaps.len()), (want, gaps), "{lines}");
    }

    #[test]
    fn what_is_on_the_list_is_still_to_come_at_its_price_or_the_last_unit_cost() {
        check("", "", 0);
        check("buy 10 disc for trays", "20.00", 0);
        check("buy 10 disc for trays price 22", "22.00", 0);
        check("buy 10 disc", "", 0);
    }

    #[test]
    fn what_nobody_can_say_is_a_gap_and_no_nought() {
        check("buy-words felt for trays", "", 1);
        check("buy-words felt for trays\n buy 10 disc for trays", "20.00", 1);
    }

    #[test]
    fn what_was_bought_is_to_come_until_it_is_drawn() {
        let bought = "lot b bought 10 of disc unit each paid 20 for trays\n buy 10 disc for trays bought b";
        check(bought, "20.00", 0);
        check(&format!("{bought}\n draw 4 disc for trays"), "12.00", 0);
        check(&format!("{bought}\n draw 14 disc for trays"), "", 0);
        let hooks = "lot hooks bought 4 unit each paid 12 for trays use fitting
            buy-words brass-hooks for trays bought hooks";
        check(hooks, "12.00", 0);
        check(&format!("{hooks}\n draw 3 hooks for trays"), "3.00", 0);
        check(&format!("{hooks}\n draw 4 hooks for trays"), "", 0);
    }

    #[test]
    fn materials_to_come_lower_the_outlook_and_one_piece_bears_them() {
        let it = fixture(
            "person Ana 20
            build trays items 4
            income sale piece for trays expected 200
            step sand-them trays sand who Ana hours 2,2,2
            buy-words felt for trays price 8",
        );
        let books = it.books();
        // 200 − 2 h at 20 − 8.
        assert_eq!(books.build_cost(it.id("trays")).outlook.money().unwrap().shown(2), "152.00");
        assert_eq!(books.one_piece(&it.shop(), it.id("trays")).unwrap().cost.shown(2), "12.00");
    }
}
