//! Our own figures of the sample shop, under the paths of figures.json.

use benchslate_core::{
    costing::{Batch, Books, BuildCost, CostKind, Flag, OneSide, Parts, Rule, Statement, Value, present},
    exchange::jsonl,
    journal::{
        Body, Id, Journal, Shop,
        kinds::{Bearer, Side, Source, State},
        shop::{Interval, Stretch, Time},
    },
    measure::{Day, Instant, Money, Quantity, Shown, Weekday, Zone},
    timing::{breakdown::breakdown, worked},
};
use chrono_tz::America::Toronto;
use std::collections::BTreeMap;

mod plan;
mod stock;

type Figures = BTreeMap<String, String>;

/// The names of figures.json, by what the entries say.
const BUILDS: [(&str, &str); 4] = [
    ("B1", "Bench from church pews"),
    ("B2", "Gymnasium-floor trays, first run"),
    ("B3", "Gymnasium-floor trays, second run"),
    ("B4", "Reading bench for a library corner"),
];
const TOOLS: [(&str, &str); 4] = [
    ("saw", "table saw"),
    ("planer", "thickness planer"),
    ("sander", "random-orbit sander"),
    ("camera", "camera and lens"),
];
/// In the order in which they stand in the journal.
const LOTS: [&str; 12] = ["L1", "L2", "L3", "LG1", "D1", "S1", "S2", "L4", "LO1", "LO2", "LC1", "LG2"];

struct Sample {
    journal: Journal,
    shop: Shop,
    zone: Zone,
    as_of: Instant,
}

impl Sample {
    fn read() -> Sample {
        let mut journal = Journal::default();
        let file = include_bytes!("../../../public/sample-shop.jsonl");
        jsonl::check_bytes(&journal, file).unwrap().merge_into(&mut journal);
        let zone = crate::zones::probed(Toronto);
        let shop = Shop::fold(&journal, &zone);
        assert_eq!(shop.odd, [], "the sample shop is sound");
        let as_of = Instant(1_795_186_800); // 2026-11-20T15:00:00Z
        Sample { journal, shop, zone, as_of }
    }

    fn build(&self, title: &str) -> Id {
        *self.shop.builds.iter().find(|(_, build)| build.title == title).unwrap().0
    }

    /// Draws are numbered as they were written, from 0.
    fn draw(&self, entry: Id) -> String {
        let before = self.shop.draws.iter().filter(|draw| count(draw.entry()) < count(entry));
        format!("d{:03}", before.count())
    }

    /// So are stretches, from 1.
    fn numbered(&self, entry: Id) -> String {
        let before = self.shop.stretches.iter().filter(|it| count(it.entry()) <= count(entry));
        format!("s{:03}", before.count())
    }

    fn stretch(&self, entry: Id) -> &Stretch {
        self.shop.stretches.iter().find(|it| it.entry() == entry).unwrap()
    }

    /// Lots in the order in which they were written.
    fn lots(&self) -> Vec<(&'static str, Id)> {
        let want: BTreeMap<&str, (&str, &str, &str)> = [
            ("L1", ("pew oak", "2026-01-10", "")),
            ("L2", ("gymnasium maple", "2026-05-02", "")),
            ("L3", ("steel bracket", "2026-02-05", "")),
            ("LG1", ("wood glue", "2026-02-05", "")),
            ("D1", ("sanding disc", "2026-02-05", "")),
            ("S1", ("brass screw, no. 6 x 3/4 in", "2026-01-20", "")),
            ("S2", ("brass screw, no. 6 x 3/4 in", "2026-06-10", "")),
            ("L4", ("walnut, 8/4", "2026-05-15", "")),
            ("LO1", ("hard oil, 750 ml", "2026-03-01", "B1")),
            ("LO2", ("hard oil, 750 ml", "2026-03-01", "B2")),
            ("LC1", ("seat cushion", "2026-04-10", "")),
            ("LG2", ("wood glue", "2026-10-30", "")),
        ]
        .into_iter()
        .collect();
        let named = LOTS.map(|name| {
            let (called, day, for_build) = want[name];
            let day = Day::parse(day).unwrap();
            let got_for = BUILDS.iter().find(|it| it.0 == for_build).map(|it| self.build(it.1));
            let of = |lot: &benchslate_core::journal::shop::Lot| {
                lot.name == called && lot.order.day == day && (got_for.is_none() || lot.for_build == got_for)
            };
            (name, *self.shop.lots.iter().find(|(_, lot)| of(lot)).unwrap().0)
        });
        named.to_vec()
    }
}

/// The last digits of an id of the sample shop count its entries.
fn count(id: Id) -> u64 {
    u64::from_str_radix(&id.to_string()[24..], 16).unwrap()
}

/// Every figure that can be worked out by now.
pub fn figures() -> Figures {
    let sample = Sample::read();
    let books = Books::close(&sample.shop, sample.as_of);
    let today = Books::by_todays_knowledge(&sample.shop, sample.as_of);
    let mut all = Figures::new();
    for (name, title) in BUILDS {
        let id = sample.build(title);
        let cost = books.build_cost(id);
        let at = format!("builds.{name}");
        build(&mut all, &at, &sample, &books, id, &cost);
        let closed = sample.shop.state_of(id, sample.zone.day(sample.as_of)) == State::Closed;
        put(&mut all, &at, "closed", closed.to_string());
        if !closed {
            plan::outlook(&mut all, &at, &sample, id, &cost);
        }
        if closed {
            put(&mut all, &at, "closed_at", money(cost.true_cost.money().unwrap()));
            put(&mut all, &at, "by_todays_knowledge", money(today.build_cost(id).true_cost.money().unwrap()));
        }
    }
    plan::learning(&mut all, &sample, sample.build(BUILDS[1].1));
    stock::lots(&mut all, &sample, &books);
    stock::items(&mut all, &sample, &books);
    tools(&mut all, &sample, &books);
    whole(&mut all, &sample, &books);
    all
}

fn put(all: &mut Figures, at: &str, name: &str, text: String) {
    all.insert(format!("{at}.{name}"), text);
}

fn money(money: Money) -> String {
    money.shown(6)
}

fn quantity(it: Quantity) -> String {
    it.shown_to(6)
}

fn of(statement: Option<&Statement>) -> String {
    money(statement.and_then(Statement::money).unwrap_or_default())
}

type PartOf = fn(&Parts) -> Money;

/// The parts of a cost, as figures.json calls them.
const PARTS: [(&str, PartOf); 7] = [
    ("money", Parts::money),
    ("paid", Parts::paid_labour),
    ("vehicle", Parts::vehicle),
    ("own", Parts::own_labour),
    ("tools", Parts::tools),
    ("overhead", Parts::overhead),
    ("supplied", Parts::supplied),
];

/// Likewise the kinds; all stock is one there.
const KINDS: [(&str, &[CostKind]); 6] = [
    ("drawn", &STOCK),
    ("expenses", &[CostKind::Direct]),
    ("labour", &[CostKind::Labour]),
    ("tools", &[CostKind::Tools]),
    ("overhead", &[CostKind::Overhead]),
    ("one-off share", &[CostKind::OneOff]),
];

/// Parts that are nothing are left out.
fn parts(all: &mut Figures, at: &str, it: &Parts) {
    for (name, part) in PARTS.map(|(name, of)| (name, of(it))).into_iter().filter(|it| !it.1.is_zero()) {
        put(all, at, name, money(part));
    }
}

fn kind_of(statement: &Statement, kinds: &[CostKind]) -> Vec<Money> {
    let parts = statement.parts.iter().filter_map(benchslate_core::costing::Part::statement);
    let of_kind = parts.filter(|it| matches!(it.rule, Rule::Kind { kind, .. } if kinds.contains(&kind)));
    of_kind.filter_map(Statement::money).collect()
}

const STOCK: [CostKind; 5] =
    [CostKind::Salvaged, CostKind::Bought, CostKind::Offcut, CostKind::Consumables, CostKind::Supplied];

/// A sum by way of decimals: the program's own money has no public sums.
fn sum(all: impl IntoIterator<Item = Money>) -> Money {
    let whole = all.into_iter().fold(rust_decimal::Decimal::ZERO, |sum, it| sum + it.to_decimal());
    Money::from_decimal(whole).unwrap()
}

fn build(all: &mut Figures, at: &str, sample: &Sample, books: &Books, id: Id, cost: &BuildCost) {
    let used_up = cost.used_up().unwrap();
    let spent = cost.spent().unwrap();
    put(all, at, "spent", of(Some(spent)));
    let bought = spent.parts.iter().filter_map(benchslate_core::costing::Part::statement);
    let bought = bought.filter(|it| matches!(it.rule, Rule::LotMoney { .. })).filter_map(Statement::money);
    put(all, at, "bought_for_it", money(sum(bought)));
    put(all, at, "bought_not_drawn", of(used_up.part(|rule| *rule == Rule::NotDrawn)));
    put(all, at, "drawn_from_other_stock", of(used_up.part(|rule| *rule == Rule::OtherStock)));
    put(all, at, "used_up", of(Some(used_up)));
    put(all, at, "true_cost", of(Some(&cost.true_cost)));
    put(all, at, "tax_to_be_got_back", of(Some(&cost.tax_back)));
    parts(all, &format!("{at}.by_part"), &cost.parts);
    parts(all, &format!("{at}.drawn_by_part"), &cost.drawn);
    for (name, kinds) in KINDS {
        put(all, &format!("{at}.by_kind"), name, money(sum(kind_of(&cost.true_cost, kinds))));
    }
    for part in cost.sides.parts.iter().filter_map(benchslate_core::costing::Part::statement) {
        put(all, &format!("{at}.side"), side(&part.rule), of(Some(part)));
    }
    parts(all, &format!("{at}.side_by_part.piece"), &cost.side_parts.0);
    parts(all, &format!("{at}.side_by_part.film"), &cost.side_parts.1);
    shown(all, &format!("{at}.shown"), cost);
    put(all, at, "film_key", quantity(cost.key.film()));
    hours(all, &format!("{at}.hours"), sample, id, cost);
    earned(all, at, cost);
    batch(all, &format!("{at}.batch"), cost, &cost.batch);
    batch(all, &format!("{at}.batch_all"), cost, &cost.batch_all);
    items_of(all, at, cost);
    draws(all, at, books, id);
}

fn side(rule: &Rule) -> &'static str {
    match rule {
        Rule::Side { side: OneSide::Piece, .. } => "piece",
        Rule::Side { side: OneSide::Film, .. } => "film",
        other => panic!("{other:?} is no side"),
    }
}

/// As a screen shows them, rounded top-down.
fn shown(all: &mut Figures, at: &str, cost: &BuildCost) {
    let whole = Shown::alone(cost.true_cost.money().unwrap(), 2);
    let apportion = |all: &mut Figures, by: &str, named: Vec<(&str, Money)>| {
        let exact: Vec<Money> = named.iter().map(|it| it.1).collect();
        put(all, &format!("{at}.{by}"), "whole", whole.text());
        for ((name, exact), shown) in named.into_iter().zip(whole.parts(&exact)) {
            if !exact.is_zero() {
                put(all, &format!("{at}.{by}"), name, shown.text());
            }
        }
    };
    let sides = present::alone(&cost.sides, 2);
    for (part, shown) in cost.sides.parts.iter().zip(&sides.parts) {
        let name = side(&part.statement().unwrap().rule);
        put(all, &format!("{at}.by_side"), name, shown.unwrap().text());
    }
    put(all, &format!("{at}.by_side"), "whole", sides.shown.unwrap().text());
    let it = &cost.parts;
    apportion(all, "by_part", PARTS.map(|(name, of)| (name, of(it))).to_vec());
    let kind = |kinds: &[CostKind]| sum(kind_of(&cost.true_cost, kinds));
    apportion(all, "by_kind", KINDS.map(|(name, kinds)| (name, kind(kinds))).to_vec());
}

fn earned(all: &mut Figures, at: &str, cost: &BuildCost) {
    let earned = &cost.earned;
    put(all, at, "net_received", of(Some(&earned.net)));
    put(all, at, "net_side.piece", money(earned.net_piece));
    put(all, at, "net_side.film", money(earned.net_film));
    put(all, at, "tax_collected", of(Some(&earned.tax)));
    put(all, at, "still_expected", of(Some(&earned.expected)));
    put(all, at, "in_kind", of(Some(&cost.in_kind)));
    let an_hour = match cost.hour_earned.value {
        Some(Value::PerHour(money)) => money.shown(6),
        _ => "no hours".to_owned(),
    };
    put(all, at, "an_hour_earned", an_hour);
}

fn batch(all: &mut Figures, at: &str, cost: &BuildCost, it: &Batch) {
    put(all, at, "C", money(it.cost));
    put(all, at, "E", quantity(cost.items.equivalent()));
    put(all, at, "c", money(it.each.unwrap_or_default()));
    put(all, at, "normal", quantity(cost.items.usual()));
    put(all, at, "loss", money(it.loss));
    let one_off = cost.one_off.map(|it| [it.pool, it.share, it.rest].map(|parts| money(parts.total())));
    let [pool, share, rest] = one_off.unwrap_or_else(|| [(); 3].map(|()| money(Money::default())));
    put(all, at, "pool", pool);
    put(all, at, "share", share);
    put(all, at, "rest", rest);
    put(all, at, "item", of(Some(&it.item)));
}

fn items_of(all: &mut Figures, at: &str, cost: &BuildCost) {
    let (items, profit) = (&cost.items, cost.profit());
    put(all, at, "handed_over.sold", items.sold.to_string());
    put(all, at, "handed_over.given", items.given.to_string());
    put(all, at, "left", items.left().to_string());
    put(all, at, "profit_on_sold_piece_side", money(profit.on_sold.unwrap_or_default()));
    put(all, at, "given_at_cost", money(profit.given.unwrap_or_default()));
    put(all, at, "left_at_cost", money(profit.left.unwrap_or_default()));
    put(all, at, "kept_at_cost", money(profit.kept.unwrap_or_default()));
    if let Some(one_off) = cost.one_off {
        put(all, at, "one_off.pool", money(one_off.pool.total()));
        put(all, at, "one_off.rest", money(one_off.rest.total()));
        put(all, at, "one_off.rest_money", money(one_off.rest.money()));
        put(all, at, "one_off.rest_own_hours", one_off.rest.own_hours().in_hours().shown_to(6));
    }
}

/// Lots first, in the order of their names; then items.
fn draws(all: &mut Figures, at: &str, books: &Books, id: Id) {
    let sample = Sample::read();
    let lots = sample.lots();
    let place = |source: Source| match source {
        Source::Lot(lot) => lots.iter().find(|it| it.1 == lot).map(|it| it.0).unwrap(),
        Source::Item(item) if sample.shop.items[&item].name == "sanding disc" => "discs",
        Source::Item(_) => "screws",
    };
    let mut drawn = books.drawn_by(Bearer::Build(id));
    // figures.json lists lots as they stand in the shop's own file, then items.
    let order = ["L1", "L2", "L3", "LG1", "L4", "LO1", "LO2", "LC1", "LG2", "screws", "discs"];
    let at_place = |source: Source| order.iter().position(|it| *it == place(source)).unwrap();
    drawn.sort_by_key(|it| (at_place(it.source), it.entry));
    for (number, it) in drawn.iter().enumerate() {
        let at = format!("{at}.draws[{number}]");
        put(all, &at, "src", place(it.source).to_owned());
        put(all, &at, "id", sample.draw(it.entry));
        put(all, &at, "qty", quantity(it.quantity));
        put(all, &at, "total", money(it.parts.total()));
        parts(all, &format!("{at}.parts"), &it.parts);
        put(all, &at, "own_h", quantity(it.parts.own_hours().in_hours()));
    }
}

fn hours(all: &mut Figures, at: &str, sample: &Sample, id: Id, cost: &BuildCost) {
    let rows = worked(&sample.shop, sample.as_of);
    let mine: Vec<_> = rows.iter().filter(|row| row.bearer == Bearer::Build(id)).collect();
    let hours = |seconds: i64| {
        Quantity::from_decimal(rust_decimal::Decimal::from(seconds) / rust_decimal::Decimal::from(3600))
            .unwrap()
    };
    let total = |of: &dyn Fn(&worked::Worked) -> bool| {
        quantity(hours(mine.iter().filter(|row| of(row)).map(|row| row.seconds.0).sum()))
    };
    put(all, at, "piece", total(&|row| row.side == Side::Piece));
    put(all, at, "film", total(&|row| row.side == Side::Film));
    put(all, at, "both", total(&|row| row.side == Side::Both));
    for (stage, it) in &sample.shop.stages {
        put(all, &format!("{at}.by_stage"), &it.name, total(&|row| row.stage == *stage));
    }
    for (person, it) in &sample.shop.people {
        let name = it.name.to_lowercase();
        put(all, &format!("{at}.by_person"), &name, total(&|row| row.person == *person));
    }
    let where_they_went = breakdown(&sample.shop, Bearer::Build(id), sample.as_of, Weekday::Monday);
    put(all, at, "on_the_wall", quantity(hours(where_they_went.wall.0)));
    put(all, at, "camera_rolling", quantity(hours(where_they_went.rolling.0)));
    let timber = cost.own_hours.part(|rule| *rule == Rule::InTheTimber).and_then(Statement::hours).unwrap();
    let own = cost.own_hours.hours().unwrap();
    put(all, at, "in_the_timber_own", quantity(timber.in_hours()));
    let all_timber = rust_decimal::Decimal::from(0)
        + cost.drawn.own_hours().in_hours().to_decimal()
        + cost.drawn.paid_hours().in_hours().to_decimal();
    put(all, at, "in_the_timber_all", quantity(Quantity::from_decimal(all_timber).unwrap()));
    put(all, at, "own_all", quantity(own.in_hours()));
    let in_build = own.in_hours().to_decimal() - timber.in_hours().to_decimal();
    put(all, at, "own_in_build", quantity(Quantity::from_decimal(in_build).unwrap()));
}

fn tools(all: &mut Figures, sample: &Sample, books: &Books) {
    for (name, called) in TOOLS {
        let id = *sample.shop.tools.iter().find(|(_, tool)| tool.name == called).unwrap().0;
        let book = books.tool(id).unwrap();
        let at = format!("tools.{name}");
        put(all, &at, "rate_now", money(book.rate()));
        put(all, &at, "run_hours", quantity(book.hours));
        put(all, &at, "hours_all", quantity(book.hours_all));
        put(all, &at, "book_value", money(book.book_value.unwrap()));
        for (build, title) in BUILDS {
            let of = |it: &&(Bearer, Quantity, Money)| it.0 == Bearer::Build(sample.build(title));
            if let Some((_, _, carried)) = book.carried.iter().find(of) {
                put(all, &format!("{at}.carried"), build, money(*carried));
            }
        }
    }
    for (number, blade) in books.blades().iter().enumerate() {
        let Some(Body::Blade(body)) = sample.journal.body(blade.blade) else { panic!("no blade") };
        let at = format!("blades[{number}]");
        put(all, &at, "what", body.what.clone());
        put(all, &at, "cost", money(blade.cost));
        put(all, &at, "worn", money(blade.worn));
        put(all, &at, "left", money(blade.left));
    }
}

fn whole(all: &mut Figures, sample: &Sample, books: &Books) {
    let months = books.months(&sample.shop);
    for (number, month) in months.iter().enumerate() {
        let at = format!("overhead.months[{number}]");
        all.insert(format!("{at}[0]"), month.first.to_string()[..7].to_owned());
        all.insert(format!("{at}[1]"), month.actual().shown(2));
        all.insert(format!("{at}[2]"), money(month.applied));
    }
    for (at, over) in [("overhead", false), ("overhead.to_last_full_month", true)] {
        let counted: Vec<_> = months.iter().filter(|month| !over || !month.under_way).collect();
        put(all, at, "actual", money(sum(counted.iter().map(|it| it.actual()))));
        put(all, at, "applied", money(sum(counted.iter().map(|it| it.applied))));
        put(all, at, "not_borne", money(sum(counted.iter().map(|it| it.not_borne()))));
    }
    let shelf = books.shelf();
    put(all, "shelf", "value", money(sum(shelf.iter().map(|line| line.value))));
    let part = |of: fn(&Parts) -> Money| sum(shelf.iter().map(|line| of(&line.parts)));
    put(all, "shelf", "money_and_paid", money(sum([part(Parts::money), part(Parts::paid_labour)])));
    for (name, of) in PARTS {
        put(all, "shelf.by_part", name, money(part(of)));
    }
    let (collected, back) = books.tax();
    let own = books.shop_cost();
    put(all, "shop", "tax_collected", money(collected));
    put(all, "shop", "tax_to_be_got_back", money(back));
    put(all, "shop", "net_received_all", money(books.net_of_all()));
    put(all, "shop", "expenses", money(sum(kind_of(&own.true_cost, &[CostKind::Direct]))));
    put(all, "shop", "labour.own", money(own.parts.own_labour()));
    put(all, "shop", "labour.hours", quantity(own.parts.own_hours().in_hours()));
    flags(all, sample, books);
}

/// The overlap with the time that was given way, and the tool with the start of the run that wore it out.
fn flags(all: &mut Figures, sample: &Sample, books: &Books) {
    let rows = worked(&sample.shop, sample.as_of);
    let odd = books.flags().into_iter().filter_map(|flag| match flag {
        Flag::Overlap { entry } => Some(overlap(sample, &rows, entry)),
        Flag::WornOut { tool, entry } => {
            let from = sample.stretch(entry).from().unwrap();
            let name = TOOLS.iter().find(|it| it.1 == sample.shop.tools[&tool].name).unwrap().0;
            Some(format!("{name} worn out at {}", Zone::utc().when(from)))
        }
        _ => None,
    });
    for (number, text) in odd.enumerate() {
        all.insert(format!("flags[{number}]"), text);
    }
}

fn overlap(sample: &Sample, rows: &[worked::Worked], entry: Id) -> String {
    let cut = sample.stretch(entry);
    let (from, to) = ends(cut);
    let taken = to.since(from).0 - rows.iter().find(|row| row.entry == entry).unwrap().seconds.0;
    let taker = sample
        .shop
        .stretches
        .iter()
        .find(|it| it.person == cut.person && it.from().is_some_and(|at| at > from && at < to));
    let hours =
        Quantity::from_decimal(rust_decimal::Decimal::new(taken, 0) / rust_decimal::Decimal::from(3600))
            .unwrap();
    let name = sample.shop.people[&cut.person].name.to_lowercase();
    let (cut, taker) = (sample.numbered(entry), sample.numbered(taker.unwrap().entry()));
    format!("overlap {name}: {cut} gives way to {taker} by {:.6} h", hours.to_decimal())
}

fn ends(stretch: &Stretch) -> (Instant, Instant) {
    let Time::Span(Interval { from, to: Some(to) }) = stretch.time else { panic!("no span") };
    (from, to)
}
