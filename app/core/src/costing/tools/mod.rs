//! Tools: what they wore and drew at each stretch of work, and what a tool is worth by now.
//!
//! Rate a run hour = (price − resale) ÷ life + upkeep + kW × load × price a kWh; blades beside it. Source: units of
//! production (IAS 16 paragraph 62), machine rate as in handbooks of woodland and shop machines (common practice).
//! Here: rows and the tool's own sheet. Not here: how long a tool ran (`runs`), what wear takes (`wear`).

mod runs;
mod wear;

use super::{Flag, Gap, Parts, Working, sides::Split};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, SettingKey, ToolFrom},
        shop::Tool,
    },
    measure::{Day, Dec, Money, Quantity, Seconds, fixed},
    timing::worked::{Owned, Worked},
};
pub(crate) use runs::Run;
use rustc_hash::FxHashMap;

/// What one run of one tool cost.
#[derive(Clone, Debug)]
pub(crate) struct ToolRow {
    /// The stretch, or the hours that were read off.
    pub entry: Id,
    pub tool: Id,
    pub bearer: Bearer,
    pub stage: Id,
    pub split: Split,
    pub one_off: bool,
    pub day: Day,
    /// How long somebody was at it, and how much of that it ran.
    pub run: Run,
    pub wear: Money,
    pub blade: Money,
    /// Upkeep and power.
    pub beside: Money,
    pub gaps: Vec<Gap>,
    pub flags: Vec<Flag>,
}

impl ToolRow {
    pub(crate) fn cost(&self) -> Money {
        self.wear.plus(self.blade).plus(self.beside)
    }

    pub(crate) fn parts(&self) -> Parts {
        Parts::of_tools(self.cost())
    }

    pub(crate) fn working(&self) -> Working {
        let Run { seconds, duty } = self.run;
        Working::Tool { seconds, duty, wear: self.wear, blade: self.blade, beside: self.beside }
    }
}

/// A tool by itself: its rate with its working, what it is worth, what it has carried.
#[derive(Clone, Debug, PartialEq)]
pub struct ToolBook {
    /// Which.
    pub tool: Id,
    /// Wear a run hour as thought today; none: price or life is not known.
    pub wear: Option<Money>,
    /// The blade that is on it now, a run hour; none: none.
    pub blade: Option<Money>,
    /// Upkeep a run hour.
    pub upkeep: Money,
    /// Power a run hour; none: nobody said what a kWh costs.
    pub power: Option<Money>,
    /// Run hours in this journal.
    pub hours: Quantity,
    /// Run hours in all.
    pub hours_all: Quantity,
    /// What it is worth on the books; none: no price.
    pub book_value: Option<Money>,
    /// Carried by each bearer, blades in it.
    pub carried: Vec<(Bearer, Quantity, Money)>,
    /// What is missing.
    pub gaps: Vec<Gap>,
    /// What is odd.
    pub flags: Vec<Flag>,
}

impl ToolBook {
    /// The rate a run hour, blades apart.
    pub fn rate(&self) -> Money {
        self.wear.unwrap_or_default().plus(self.upkeep).plus(self.power.unwrap_or_default())
    }
}

/// A blade by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BladeBook {
    /// Which.
    pub blade: Id,
    /// What it cost.
    pub cost: Money,
    /// Borne by runs.
    pub worn: Money,
    /// Still in it; once it is off, a loss of the shop.
    pub left: Money,
    /// It is off.
    pub off: bool,
}

/// Everything about tools.
#[derive(Clone, Debug, Default)]
pub(crate) struct Tools {
    pub rows: Vec<ToolRow>,
    pub books: Vec<ToolBook>,
    pub blades: Vec<BladeBook>,
}

/// Costs every run up to `last`.
pub(crate) fn tools(
    shop: &Shop,
    worked: &[Worked],
    owned: &[Owned],
    split: impl Fn(usize) -> Split,
    last: Day,
) -> Tools {
    let mut all = Tools::default();
    if shop.tools.is_empty() {
        return all;
    }
    let at_stage = runs::by_stage(shop, worked, owned, last);
    let mut blades = wear::Blades::of(shop, last);
    for (id, tool) in &shop.tools {
        let runs = runs::of_tool(shop, *id, tool, worked, &at_stage, last);
        let mut account = wear::Account::of(tool);
        let first = all.rows.len();
        for it in runs {
            let mut row = ToolRow {
                entry: it.entry,
                tool: *id,
                bearer: it.bearer,
                stage: it.stage,
                split: if tool.rolls { Split::FILM } else { it.stretch.map_or(Split::PIECE, &split) },
                one_off: it.stretch.and_then(|at| shop.stretches.get(at)).is_some_and(|it| it.one_off),
                day: it.day,
                run: it.run,
                wear: Money::ZERO,
                blade: Money::ZERO,
                beside: Money::ZERO,
                gaps: Vec::new(),
                flags: Vec::new(),
            };
            cost(shop, tool, &mut account, &mut blades, &mut row);
            all.rows.push(row);
        }
        let rows = all.rows.get(first..).unwrap_or_default();
        all.books.push(book(shop, *id, tool, &account, &blades, rows, last));
    }
    all.blades = blades.close();
    all
}

fn cost(shop: &Shop, tool: &Tool, account: &mut wear::Account, blades: &mut wear::Blades, row: &mut ToolRow) {
    let hours = row.run.scaled();
    let (wear, worn_out) = account.run(row.day, hours);
    row.wear = wear;
    if worn_out {
        row.flags.push(Flag::WornOut { tool: row.tool, entry: row.entry });
    }
    row.blade = blades.run(row.tool, row.day, hours);
    let power = power(shop, tool, row.day);
    let an_hour = tool.upkeep.plus(power.unwrap_or_default());
    row.beside = hours.at(an_hour);
    row.gaps.extend(account.gap(row.tool, tool));
    if power.is_none() {
        row.gaps.push(Gap::NoKwhPrice);
    }
}

/// Power a run hour on a day; nothing where it is in a monthly cost. None: nobody said what a kWh costs.
fn power(shop: &Shop, tool: &Tool, day: Day) -> Option<Money> {
    if tool.kw.is_zero() || tool.load.is_zero() || shop.settings.on(SettingKey::PowerIn, day) == Some("month")
    {
        return Some(Money::ZERO);
    }
    let price = Dec::parse(shop.settings.on(SettingKey::KwhPrice, day)?).ok()?.money()?;
    let drawn = fixed::mul_div(tool.kw.micros(), tool.load.micros(), fixed::SCALE)?;
    fixed::mul_div(drawn, price.micros(), fixed::SCALE).map(Money::from_micros)
}

fn book(
    shop: &Shop,
    id: Id,
    tool: &Tool,
    account: &wear::Account,
    blades: &wear::Blades,
    rows: &[ToolRow],
    last: Day,
) -> ToolBook {
    let mut carried: Vec<(Bearer, i128, Money)> = Vec::new();
    let mut places: FxHashMap<Bearer, usize> = FxHashMap::default();
    let mut gaps: Vec<Gap> = account.gap(id, tool).into_iter().collect();
    let power = power(shop, tool, last);
    if power.is_none() {
        gaps.push(Gap::NoKwhPrice);
    }
    let mut ran = 0_i128;
    for row in rows {
        let run = row.run.scaled().0;
        ran = ran.saturating_add(run);
        match places.get(&row.bearer).and_then(|at| carried.get_mut(*at)) {
            Some(sum) => (sum.1, sum.2) = (sum.1.saturating_add(run), sum.2.plus(row.cost())),
            None => {
                places.insert(row.bearer, carried.len());
                carried.push((row.bearer, run, row.cost()));
            }
        }
    }
    let hours = wear::Scaled(ran).in_hours();
    ToolBook {
        tool: id,
        wear: account.rate(last),
        blade: blades.rate(id, last),
        upkeep: tool.upkeep,
        power,
        hours,
        hours_all: tool.before.plus(hours),
        book_value: account.book_value(),
        carried: carried
            .into_iter()
            .map(|(of, run, cost)| (of, wear::Scaled(run).in_hours(), cost))
            .collect(),
        gaps,
        flags: rows.iter().flat_map(|row| row.flags.iter().copied()).collect(),
    }
}

/// Whether wear counts: a lent tool wears for somebody else, a given one cost nothing.
fn wears(tool: &Tool) -> bool {
    match tool.from {
        ToolFrom::Bought => true,
        ToolFrom::Supplied | ToolFrom::Lent => false,
    }
}

/// Whole seconds somebody was at it.
pub(crate) fn whole(seconds: i64) -> Seconds {
    Seconds(seconds.max(0))
}
