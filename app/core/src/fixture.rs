//! Histories in a few lines of text, for tests: never a format that anyone sees or keeps.
//!
//! One entry a line, in the words of the trade. What can't be read stops the test. Names stand for entries;
//! `on DAY` holds until another day is named. The grammar is told by its own test, below.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::arithmetic_side_effects,
    clippy::as_conversions,
    clippy::string_slice,
    clippy::wildcard_enum_match_arm,
    reason = "only tests read a fixture, and one that can't be read must stop them"
)]

mod running;
mod words;

use crate::{
    costing::{Books, Part, PartOf, Path, Sign, Statement, Value},
    journal::{
        Body, Change, Id, Journal, On, Pen, Shop,
        kinds::{self, Bearer, Origin, Role, Side, Source, Span, SuppliedBy, Use},
        stages::{STANDING, standing_id},
    },
    measure::{Day, Instant, TimeOfDay, Unit, When, Zone},
};
use std::collections::BTreeMap;
use std::fmt::Write;
use words::{Words, basis, dec, free_hours, link, purpose, setting, side, unit_of};

/// A history that was read.
#[derive(Clone, Debug)]
pub struct Fixture {
    /// Its lines, through the same pen and fold as any other.
    pub journal: Journal,
    /// Days are cut in this zone.
    pub zone: Zone,
    /// Every line written, in order.
    pub lines: Vec<String>,
    names: BTreeMap<String, Id>,
    day: Day,
    last: Day,
    written: u64,
}

/// Reads a history in UTC.
pub fn fixture(text: &str) -> Fixture {
    Fixture::in_zone(text, Zone::utc())
}

impl Fixture {
    /// Reads a history, days cut in `zone`.
    pub fn in_zone(text: &str, zone: Zone) -> Fixture {
        let day = Day::parse("2026-02-01").unwrap();
        let (names, journal) = (BTreeMap::new(), Journal::default());
        let mut fixture = Fixture { journal, zone, lines: Vec::new(), names, day, last: day, written: 0 };
        fixture
            .names
            .extend(STANDING.iter().map(|stage| (stage.name.replace(' ', "-"), standing_id(stage.number))));
        text.lines().for_each(|line| fixture.add(line));
        fixture
    }

    /// One more line.
    pub fn add(&mut self, line: &str) {
        let line = line.split('#').next().unwrap_or_default().trim();
        if line.is_empty() {
            return;
        }
        let mut words = Words::of(line);
        let kind = words.next();
        if let Some(day) = words.named("on") {
            self.day = Day::parse(&day).unwrap_or_else(|_| panic!("{line}: no day"));
            self.last = self.last.max(self.day);
        }
        let mut name = words.named("as");
        let body = self.body(&kind, &mut words, &mut name);
        words.done(line);
        let entry = match (&kind[..], &name) {
            ("rate" | "strike" | "again", Some(name)) => self.id(name),
            _ => self.fresh(),
        };
        if let Some(name) = name {
            self.names.insert(name, entry);
        }
        self.write(Change { entry, body, settles: false });
    }

    /// Writes a change as the next line.
    pub fn write(&mut self, change: Change) {
        let pen = Pen { device: Id::of([9; 16]), now_ms: 1_795_000_000_000 };
        self.written += 1;
        let id = numbered(3, self.written);
        for line in pen.write(&self.journal, &[change], &mut || id) {
            self.journal.add(&line.text).unwrap();
            self.lines.push(line.text);
        }
    }

    /// The entry of a name.
    pub fn id(&self, name: &str) -> Id {
        *self.names.get(name).unwrap_or_else(|| panic!("nothing is called {name}"))
    }

    /// The lot or item of a name.
    pub fn source(&self, name: &str) -> Source {
        let id = self.id(name);
        match self.journal.last_body(id) {
            Some(Body::Lot(_)) => Source::Lot(id),
            Some(Body::Item(_)) => Source::Item(id),
            _ => panic!("{name} is no stock"),
        }
    }

    /// Present state.
    pub fn shop(&self) -> Shop {
        Shop::fold(&self.journal, &self.zone)
    }

    /// The last second of the last day named.
    pub fn end(&self) -> Instant {
        self.zone.end_of(self.last)
    }

    /// The books at the end.
    pub fn books(&self) -> Books {
        Books::close(&self.shop(), self.end())
    }

    /// A figure and its parts, two digits, an indented line each, `depth` levels down.
    pub fn tree(&self, statement: &Statement, depth: usize) -> String {
        let mut text = String::new();
        self.branch(&mut text, statement, ("", 0), depth);
        text
    }

    /// `at`: the sign before it, and its level.
    fn branch(&self, text: &mut String, statement: &Statement, at: (&str, usize), depth: usize) {
        let step = Path { steps: vec![statement.rule.step()] }.to_string();
        line(text, at, &self.say(&step), statement.value);
        let (_, level) = at;
        if level >= depth {
            return;
        }
        for Part { sign, of } in &statement.parts {
            let sign = if *sign == Sign::Minus { "- " } else { "" };
            match of {
                PartOf::Statement(below) => self.branch(text, below, (sign, level + 1), depth),
                PartOf::Entry { entry, value, .. } => {
                    line(text, (sign, level + 1), &self.name(*entry), *value);
                }
            }
        }
    }

    /// `lot_0190…` as `lot_oak`.
    fn say(&self, step: &str) -> String {
        match step.split_once('_').and_then(|(code, id)| Some((code, Id::parse(id)?))) {
            Some((code, id)) => format!("{code}_{}", self.name(id)),
            None => step.to_owned(),
        }
    }

    /// The name of an entry, else its kind.
    pub fn name(&self, id: Id) -> String {
        let named = self.names.iter().find(|(_, named)| **named == id).map(|(name, _)| name.clone());
        named.or_else(|| Some(self.journal.shown(id)?.kind.to_string())).unwrap_or_else(|| "?".into())
    }

    fn fresh(&self) -> Id {
        numbered(1, self.written + 1)
    }

    fn body(&mut self, kind: &str, words: &mut Words, name: &mut Option<String>) -> Option<Body> {
        let on = On::Day(self.day);
        Some(match kind {
            "strike" => {
                *name = Some(words.next());
                return None;
            }
            "again" => {
                let again = words.next();
                let body = self.journal.last_body(self.id(&again)).cloned();
                *name = Some(again);
                return body;
            }
            "setting" => setting(on, words),
            "person" => {
                *name = Some(words.next());
                self.person(words, name.as_deref().unwrap_or_default())
            }
            "rate" => {
                *name = Some(words.next());
                self.rate(words, name.as_deref().unwrap_or_default())
            }
            "stage" => {
                let called = words.next();
                *name = Some(called.clone());
                let side = side(&words.next());
                let role = words.named("role").map(|role| match &role[..] {
                    "haul" => Role::Haul,
                    "reclaim" => Role::Reclaim,
                    "finish" => Role::Finish,
                    _ => panic!("role {role}"),
                });
                kinds::Stage { on, name: called, side, role }.into()
            }
            "build" => self.build(words, name),
            "item" => self.item(words, name),
            "lot" => self.lot(words, name),
            "trip" => self.trip(words),
            "sort" => {
                let lot = self.id(&words.next());
                let (good, culled) =
                    (words.dec("good").unwrap_or_default(), words.dec("culled").unwrap_or_default());
                let link = words.named("at").map(|it| link(&it));
                kinds::Sort { on, lot, good, culled, link }.into()
            }
            "cull" => {
                let (lot, quantity) = (self.id(&words.next()), dec(&words.next()));
                let link = words.named("at").map(|it| link(&it));
                kinds::Cull { on, lot, quantity, link, unexpected: words.flag("unexpected") }.into()
            }
            "find" => self.find(words, name),
            "draw" => self.draw(words),
            "return" => self.give_back(words),
            "empty" => kinds::Shelf::empty(on, self.source(&words.next())).into(),
            "count" | "throw" | "give" => self.look(kind, words),
            "expense" => self.expense(words),
            "stretch" => self.stretch(words),
            "dry" => self.dry(words),
            _ => self.running(kind, words, name),
        })
    }

    fn build(&self, words: &mut Words, name: &mut Option<String>) -> Body {
        let title = words.next();
        *name = Some(title.clone());
        let repeat_of = words.named("repeat").map(|build| self.id(&build));
        let run_planned = words.named("run").map(|run| run.parse().unwrap());
        let items = words.named("items").map_or(1, |items| items.parse().unwrap());
        let normal_spoil = words.dec("spoil");
        let due = words.named("due").map(|day| Day::parse(&day).unwrap());
        let film_planned = words.dec("minutes");
        let build = kinds::Build::named(On::Day(self.day), title);
        kinds::Build { items, repeat_of, run_planned, normal_spoil, due, film_planned, ..build }.into()
    }

    fn person(&self, words: &mut Words, name: &str) -> Body {
        let rates = words.first_number().map(|an_hour| kinds::Rate { from: None, an_hour });
        let paid = words.flag("paid");
        let rates = rates.into_iter().collect();
        let free =
            words.named("free").map(|free| free.split(',').map(free_hours).collect()).unwrap_or_default();
        kinds::Person { on: On::Day(self.day), name: name.into(), paid, rates, free }.into()
    }

    fn rate(&self, words: &mut Words, name: &str) -> Body {
        let Some(Body::Person(person)) = self.journal.body(self.id(name)) else { panic!("{name} is nobody") };
        let mut person = person.clone();
        let an_hour = words.first_number().unwrap();
        let from = words.named("from").map(|day| Day::parse(&day).unwrap());
        person.rates.push(kinds::Rate { from, an_hour });
        person.into()
    }

    fn item(&self, words: &mut Words, name: &mut Option<String>) -> Body {
        let called = words.next();
        *name = Some(called.clone());
        let purpose = purpose(&words.next());
        let unit = unit_of(&words.next());
        let low = words.dec("low");
        let content = words.named("holds").map(|size| dec(&size));
        let content_unit = words.named("in").map(|code| unit_of(&code));
        let on = On::Day(self.day);
        let item = kinds::Item::named(on, &called, purpose, unit);
        kinds::Item { content, content_unit, low, ..item }.into()
    }

    fn lot(&self, words: &mut Words, name: &mut Option<String>) -> Body {
        let called = words.next();
        *name = Some(called.clone());
        let origin = match &words.next()[..] {
            "salvaged" => Origin::Salvaged,
            "bought" => Origin::Bought,
            "supplied" => Origin::Supplied,
            "offcut" => Origin::Offcut,
            other => panic!("origin {other}"),
        };
        let rough = dec(&words.next());
        let new = self.new_stock(words);
        let (tax, back) = (words.dec("tax"), words.dec("tax-back"));
        kinds::Lot {
            on: On::Day(self.day),
            item: words.named("of").map(|item| self.id(&item)),
            purpose: words.named("use").map_or(Use::Timber, |it| purpose(&it)),
            origin,
            rough,
            unit: words.named("unit").map_or(Unit::BoardFoot, |code| unit_of(&code)),
            basis: words.named("measure").map(|it| basis(&it)),
            other_measure: words.dec("other"),
            paid: words.dec("paid"),
            fee: words.dec("fee"),
            freight: words.dec("freight"),
            discount: words.dec("discount"),
            tax: tax.or(back),
            tax_back: back.is_some(),
            for_build: words.named("for").map(|build| self.id(&build)),
            expected_yield: words.dec("yield"),
            new,
            receipt: words.named("receipt").map(|receipt| self.id(&receipt)),
            value: words.dec("value"),
            by: words
                .named("by")
                .map(|by| if by == "client" { SuppliedBy::Client } else { SuppliedBy::Sponsor }),
            mark: None,
            whence: words.named("from"),
            abroad: None,
            species: words.named("species"),
            name: called,
        }
        .into()
    }

    fn new_stock(&self, words: &mut Words) -> Option<kinds::NewStock> {
        words.dec("new").map(|price| kinds::NewStock {
            price,
            waste: words.dec("waste"),
            tax: words.dec("new-tax"),
            delivery: words.dec("delivery"),
            basis: words.named("sold").map(|it| basis(&it)),
            seen: None,
            on: self.day,
        })
    }

    /// `cases 0.6:840,0.75:540,0.85:360`: usable, and minutes a board or in all.
    fn find(&self, words: &mut Words, name: &mut Option<String>) -> Body {
        let called = words.next();
        *name = name.take().or_else(|| Some(called.clone()));
        let rough = dec(&words.next());
        let cases = words.named("cases").unwrap();
        let mut cases = cases.split(',').map(|case| {
            let (usable, minutes) = case.split_once(':').unwrap();
            kinds::Case { usable: dec(usable), minutes: minutes.parse().unwrap() }
        });
        let mut case = || cases.next().unwrap();
        kinds::Find {
            on: On::Day(self.day),
            whence: words.named("from"),
            species: words.named("species"),
            boards: words.named("boards").map(|boards| boards.parse().unwrap()),
            rough,
            unit: words.named("unit").map_or(Unit::BoardFoot, |code| unit_of(&code)),
            basis: None,
            other_measure: None,
            asked: words.dec("asked"),
            fee: words.dec("fee"),
            km: words.dec("km"),
            cases: kinds::Cases { badly: case(), usually: case(), well: case() },
            new: self.new_stock(words),
            mark: None,
            lot: words.named("lot").map(|lot| self.id(&lot)),
            name: called,
        }
        .into()
    }

    fn trip(&self, words: &mut Words) -> Body {
        let km = dec(&words.next());
        let fee = words.dec("fee");
        let shares = words.named("for").unwrap();
        let shares = shares.split(',').map(|share| {
            let (bearer, parts) = share.split_once(':').unwrap_or((share, "1"));
            kinds::Share { bearer: self.bearer(bearer), parts: parts.parse().unwrap() }
        });
        kinds::Trip { on: On::Day(self.day), km, fee, shares: shares.collect() }.into()
    }

    fn draw(&self, words: &mut Words) -> Body {
        let quantity = dec(&words.next());
        let from = self.source(&words.next());
        let unit = words.named("unit").map_or_else(|| self.unit(from), |code| unit_of(&code));
        let bearer = self.bearer(&words.named("for").unwrap());
        let side = words.named("side").map(|it| side(&it));
        kinds::Draw {
            on: self.when(words),
            from,
            quantity,
            unit,
            bearer,
            side,
            stage: None,
            returns: None,
            note: None,
        }
        .into()
    }

    fn give_back(&self, words: &mut Words) -> Body {
        let quantity = dec(&words.next());
        let returns = self.id(&words.named("of").unwrap());
        let Some(Body::Draw(draw)) = self.journal.last_body(returns) else { panic!("no draw") };
        let on = self.when(words);
        kinds::Draw { on, quantity, returns: Some(returns), note: None, ..draw.clone() }.into()
    }

    fn expense(&self, words: &mut Words) -> Body {
        let what = words.next();
        let amount = dec(&words.next());
        let (tax, back) = (words.dec("tax"), words.dec("tax-back"));
        let side = words.named("side").map_or(Side::Piece, |it| side(&it));
        let bearer = self.bearer(&words.named("for").unwrap());
        let tax_back = back.is_some();
        let receipt = words.named("receipt").map(|receipt| self.id(&receipt));
        let (on, tax, one_off) = (On::Day(self.day), tax.or(back), words.flag("one-off"));
        kinds::Expense { on, what, amount, tax, tax_back, bearer, side, receipt, one_off, abroad: None }
            .into()
    }

    fn stretch(&mut self, words: &mut Words) -> Body {
        let (person, stage) = (self.id(&words.next()), self.id(&words.next()));
        let minutes = words.named("min").map(|minutes| minutes.parse().unwrap());
        let from = words.named("from").map(|it| self.moment(&it));
        let to = words.named("to").map(|it| self.moment(&it));
        let mut pauses = Vec::new();
        while let Some(pause) = words.named("pause") {
            let (from, to) = pause.split_once('-').unwrap();
            pauses.push(Span { from: self.moment(from), to: Some(self.moment(to)) });
        }
        let mut rolling = Vec::new();
        while let Some(roll) = words.named("roll") {
            let (from, to) = roll.split_once('-').unwrap();
            rolling.push(Span { from: self.moment(from), to: Some(self.moment(to)) });
        }
        let bearer = self.bearer(&words.named("for").unwrap());
        let side = words.named("side").map_or(Side::Piece, |it| side(&it));
        let one_off = words.flag("one-off");
        let step = words.named("step").map(|step| self.id(&step));
        let on = from.map_or(On::Day(self.day), On::At);
        kinds::Stretch {
            on,
            person,
            stage,
            bearer,
            side,
            from,
            to,
            minutes,
            pauses,
            rolling,
            together: None,
            still_running: None,
            step,
            one_off,
            note: None,
        }
        .into()
    }

    /// `13:00` on the day named last, `+02:00` on the day after.
    fn moment(&self, text: &str) -> When {
        let (day, text) = match text.strip_prefix('+') {
            Some(text) => (self.day.succ(), text),
            None => (self.day, text),
        };
        let (hour, minute) = text.split_once(':').unwrap();
        let time = TimeOfDay::of(hour.parse().unwrap(), minute.parse().unwrap(), 0).unwrap();
        self.zone.when(self.zone.at(day, time))
    }

    /// `time 10:00`, else the whole day.
    fn when(&self, words: &mut Words) -> On {
        words.named("time").map_or(On::Day(self.day), |time| On::At(self.moment(&time)))
    }

    fn bearer(&self, name: &str) -> Bearer {
        if name == "shop" {
            return Bearer::Shop;
        }
        let id = self.id(name);
        match self.journal.last_body(id) {
            Some(Body::Build(_)) => Bearer::Build(id),
            Some(Body::Lot(_)) => Bearer::Lot(id),
            _ => panic!("{name} bears nothing"),
        }
    }

    fn unit(&self, source: Source) -> Unit {
        let (Source::Lot(id) | Source::Item(id)) = source;
        match self.journal.last_body(id) {
            Some(Body::Lot(lot)) => match lot.item {
                Some(item) => self.unit(Source::Item(item)),
                None => lot.unit,
            },
            Some(Body::Item(item)) => item.unit,
            _ => panic!("no stock"),
        }
    }
}

/// An id of a space of ids, by number.
pub fn numbered(space: u8, number: u64) -> Id {
    let mut bytes = [0; 16];
    bytes[0] = space;
    bytes[8..].copy_from_slice(&number.to_be_bytes());
    Id::of(bytes)
}

fn line(text: &mut String, (sign, level): (&str, usize), name: &str, value: Option<Value>) {
    let indent = 2 * level;
    let _ = writeln!(text, "{sign:>indent$}{name} {}", said(value));
}

fn said(value: Option<Value>) -> String {
    match value {
        Some(Value::Money(money)) => money.shown(2),
        Some(Value::PerHour(money)) => format!("{} an hour", money.shown(2)),
        Some(Value::Hours(hours)) => format!("{} h", hours.in_hours().shown_to(6)),
        None => "-".into(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_history_is_written_in_the_words_of_the_trade() {
        let it = fixture(
            "
            setting km 0.55                             # money a kilometre
            person Ana 26                               # an unpaid maker at 26.00 an hour
            rate Ana 28 from 2026-07-01
            person Ada 20 paid
            stage turning piece                         # beside the 21 that stand
            build bench
            item discs consumable each low 10
            lot d1 bought 50 of discs unit each paid 31 tax 4.52 on 2026-02-05
            lot oak salvaged 120 paid 36 yield 0.8 for bench from church new 7 waste 0.1 new-tax 0.13
            trip 40 fee 3 for oak:1,bench:2
            sort oak good 48 culled 12 at nails-out
            cull oak 2 at milled unexpected             # a flood in the store
            find joists 40 boards 8 asked 10 km 12 cases 0.5:30,0.6:20,0.7:15 from barn # usable and minutes a board
            draw 20 oak for bench as first
            return 4 of first on 2026-02-08
            draw 2 discs for bench side film
            empty discs
            expense van 55 for bench tax 5 side both
            expense card 38 for bench tax-back 4.94
            stretch Ana reclaim min 90 for oak
            stretch Ana buy-and-haul from 13:00 to 15:00 pause 13:30-13:45 for bench
            stretch Ada turning from 22:00 to +02:00 for shop
            stretch Ana glue-up min 60 for bench as panel
            dry panel held 60 next 1440                 # minutes
            photo of panel
            note sides-want-sanding for bench
            strike first
            again first
            ",
        );
        let shop = it.shop();
        assert_eq!((shop.people.len(), shop.builds.len(), shop.items.len(), shop.lots.len()), (2, 1, 1, 2));
        assert_eq!((shop.draws.len(), shop.stretches.len(), shop.expenses.len()), (3, 4, 2));
        assert_eq!((shop.dryings.len(), shop.photos.len(), shop.notes.len()), (1, 1, 1));
        assert_eq!(shop.people[&it.id("Ana")].rates.len(), 2);
        assert_eq!((it.lines.len(), shop.culls.len(), shop.finds.len()), (28, 1, 1));
        assert_eq!(shop.odd, []);
    }

    #[test]
    #[should_panic(expected = "what is")]
    fn a_word_too_many_stops_the_test() {
        fixture("build bench tomorrow");
    }
}
