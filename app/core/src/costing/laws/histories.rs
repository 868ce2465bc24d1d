//! Random histories, as the lines of a fixture: a failing one can be read.

use crate::{
    fixture::{Fixture, fixture},
    journal::{Body, Change, Id, On, kinds::Lot},
    measure::{Day, Dec},
};
use proptest::prelude::*;

/// People with and without a rate, paid and not; builds; items; lots of every origin.
const BEFORE: &str = "
    setting km 0.55
    person Ana 26.37
    person Ada 19.99 paid
    person Bo
    setting kwh 0.15
    setting normal 90
    setting normal-film 36
    setting slow-down 0.2
    build bench run 30 spoil 0.05
    build trays repeat bench
    tool saw price 1450 resale 450 life 400 upkeep 0.21 kw 1.75 load 0.5 before 390 at sand:0.5 at reclaim:0.37
    tool camera price 1200 resale 400 life 2000 rolls at shoot:1
    blade rip of saw cost 64.13 life 9 on 2026-02-03
    monthly rent 360.07
    monthly storage 45.01 film from 2026-02-11
    receipt till freight 6 discount 5 tax 9.43 total 300 for bench
    item disc consumable each low 3
    item hinge fitting each
    item board timber bf
    lot oak salvaged 120 paid 36.01 fee 5 yield 0.8 for bench new 7 waste 0.1 new-tax 0.13 delivery 10
    lot elm salvaged 33.333333 paid 7.77 for trays from barn
    lot ash bought 17 paid 100.01 tax 13 for bench
    lot oil supplied 1 unit tin use consumable paid 58
    lot ends offcut 4
    lot gift bought 3
    lot d0 bought 7 of disc unit each paid 10";

/// How far culled timber had come.
const LINKS: [&str; 3] = ["gathered", "nails-out", "milled"];

/// A number of hundredths as text.
fn hundredths(number: u32) -> String {
    format!("{}.{:02}", number / 100, number % 100)
}

/// One line, by numbers: what it does, to what, how much, on which day.
#[derive(Clone, Debug)]
pub(super) struct Line {
    does: u8,
    what: usize,
    of: usize,
    amount: u32,
    day: u32,
}

/// Lines after what stands before them.
#[derive(Clone, Debug)]
pub(super) struct History(Vec<Line>);

pub(super) fn line() -> impl Strategy<Value = Line> {
    (0..42_u8, 0..64_usize, 0..64_usize, 0..4_000_u32, 1..29_u32)
        .prop_map(|(does, what, of, amount, day)| Line { does, what, of, amount, day })
}

pub(super) fn histories() -> impl Strategy<Value = History> {
    prop::collection::vec(line(), 0..40).prop_map(History)
}

impl History {
    /// Through pen, journal and fold.
    pub(super) fn read(&self) -> Fixture {
        let mut it = fixture(BEFORE);
        let mut draws = Vec::new();
        for (at, line) in self.0.iter().enumerate() {
            it.add(&line.say(at, &draws));
            draws.extend(line.draws(at));
        }
        it.add("expense end 0 for shop on 2026-02-28");
        it
    }

    /// Names of its draws.
    pub(super) fn draws(&self) -> Vec<String> {
        self.0.iter().enumerate().filter_map(|(at, line)| line.draws(at)).collect()
    }
}

/// What comes after builds were closed.
#[derive(Clone, Debug)]
pub(super) enum Later {
    /// Any line but a reopening.
    Line(Line),
    /// A lot is corrected: which, and its price, quantity, item or day.
    Lot(usize, u32, u32),
}

pub(super) fn later() -> impl Strategy<Value = Later> {
    prop_oneof![
        2 => line().prop_filter("reopens", |it| it.does != 30).prop_map(Later::Line),
        1 => (0..64_usize, 0..4_000_u32, 1..29_u32).prop_map(|(of, amount, day)| Later::Lot(of, amount, day)),
    ]
}

impl Later {
    pub(super) fn add(&self, history: &History, it: &mut Fixture) {
        match self {
            Later::Line(line) => history.then(it, line),
            Later::Lot(of, amount, day) => correct(it, *of, *amount, *day),
        }
    }
}

/// One more line of a lot that there is.
fn correct(it: &mut Fixture, of: usize, amount: u32, day: u32) {
    let lots: Vec<Id> = it.shop().lots.keys().copied().collect();
    let Some(lot) = lots.get(of % lots.len().max(1)).copied() else { return };
    let Some(Body::Lot(body)) = it.journal.body(lot).cloned() else { return };
    let number = Dec::parse(&hundredths(amount)).expect("a number");
    let body = match amount % 5 {
        0 => Lot { paid: Some(number), ..body },
        1 => Lot { rough: number, ..body },
        2 => Lot { item: Some(it.id(["disc", "hinge", "board"][of % 3])), ..body },
        3 => Lot { item: None, ..body },
        _ => Lot { on: On::Day(Day::parse(&format!("2026-02-{day:02}")).expect("a day")), ..body },
    };
    it.write(Change::write(lot, body));
}

impl Line {
    /// Its name, where it is a draw.
    fn draws(&self, at: usize) -> Option<String> {
        (4..8).contains(&self.does).then(|| format!("d{at}x"))
    }

    /// As a line of a fixture; `at`: its number, `draws`: names of the draws before it.
    pub(super) fn say(&self, at: usize, draws: &[String]) -> String {
        let Line { does, what, of, amount, day } = *self;
        let pick = |from: &[&'static str], by: usize| from[by % from.len()];
        let named = pick(&["oak", "elm", "ash", "oil", "ends", "gift"], what);
        let item = pick(&["disc", "hinge", "board"], what);
        let bearer = pick(&["bench", "trays", "shop", "bench", "oak", "elm", "d0"], of);
        let person = pick(&["Ana", "Ada", "Bo"], what);
        let number = hundredths(amount);
        let time =
            if amount % 3 == 0 { format!(" time {:02}:{:02}", of % 24, what % 60) } else { String::new() };
        let line = match does {
            0 | 1 => format!(
                "lot l{at} bought {number} of {item} unit {} paid {}",
                unit(item),
                hundredths(amount * 3 % 7_001)
            ),
            2 => {
                let (paid, build) = (hundredths(amount % 997), pick(&["bench", "trays"], of));
                format!("lot n{at} salvaged {number} paid {paid} from barn for {build}")
            }
            3 => format!(
                "sort {named} good {number} culled {} at {}",
                hundredths(amount % 700),
                pick(&LINKS, of)
            ),
            4 | 5 => format!("draw {number} {named} for {bearer} as d{at}x{time}"),
            6 | 7 => format!("draw {number} {item} for {bearer} as d{at}x{time}"),
            8 => match draws.get(of % draws.len().max(1)) {
                Some(draw) => format!("return {number} of {draw}{time}"),
                None => format!("expense van {number} for {bearer}"),
            },
            9 => format!("empty {}", if amount % 2 == 0 { named } else { item }),
            10 => format!("expense van {number} tax {} for {bearer}", hundredths(amount % 113)),
            11 => {
                let (fee, parts) = (hundredths(amount % 313), 1 + amount % 3);
                format!("trip {number} fee {fee} for {bearer}:1,oak:{parts}")
            }
            12 => format!("stretch {person} reclaim min {} for {bearer}", amount % 600),
            13 => format!("stretch {person} buy-and-haul min {} for {bearer}", amount % 600),
            14 => {
                let (from, to) = (amount % 20, amount % 20 + 1 + amount % 3);
                format!("stretch {person} sand from {from:02}:07 to {to:02}:{:02} for {bearer}", amount % 60)
            }
            15 => format!("rate {person} {number} from 2026-02-{:02}", 1 + of % 28),
            16 => match draws.get(of % draws.len().max(1)) {
                Some(draw) => format!("strike {draw}"),
                None => format!("strike {named}"),
            },
            17 => format!("{} {named}", if amount % 2 == 0 { "strike" } else { "again" }),
            40 | 41 => self.cull(named),
            35 => format!("same {item} {}", pick(&["disc", "hinge", "board"], of)),
            36 => match amount % 4 {
                0 => format!("count {number} {item}{time}"),
                1 => format!("count {number} {named}{time}"),
                2 => format!("throw {} {}", hundredths(amount % 301), if of % 2 == 0 { named } else { item }),
                _ => format!("give {} {}", hundredths(amount % 301), if of % 2 == 0 { named } else { item }),
            },
            37 => {
                let formula = ["first_in_first_out", "moving_average", "first_in_first_out", "odd"][what % 4];
                format!("setting formula {formula} from 2026-02-{:02}", 1 + of % 28)
            }
            39 => format!("buy {number} {item} for {}", pick(&["bench", "trays"], of)),
            31 => format!("dry oak held {} next {amount}", amount % 90),
            32 => format!("photo for {bearer}"),
            33 => format!("photo of {named}"),
            34 => format!("note word for {bearer}"),
            _ => self.running(at, bearer, person, &number),
        };
        format!("{line} on 2026-02-{day:02}")
    }
}

impl Line {
    /// Timber thrown out.
    fn cull(&self, named: &str) -> String {
        let link = LINKS[self.of % LINKS.len()];
        let unexpected = if self.amount.is_multiple_of(2) { " unexpected" } else { "" };
        format!("cull {named} {} at {link}{unexpected}", hundredths(self.amount % 1_301))
    }

    /// Lines about running the shop.
    fn running(&self, at: usize, bearer: &str, person: &str, number: &str) -> String {
        let Line { does, what, of, amount, .. } = *self;
        let build = if of.is_multiple_of(2) { "bench" } else { "trays" };
        let side = ["piece", "film", "both"][what % 3];
        let good = amount % 13;
        match does {
            18 => format!("by-product kindling {number} of {bearer}"),
            19 => format!("expense line {number} receipt till for {bearer} side {side}"),
            20 => format!(
                "lot r{at} bought {number} paid {} receipt till for {build}",
                hundredths(amount % 771)
            ),
            21 => format!("ran saw {} stage sand for {bearer}", hundredths(amount % 977)),
            22 => format!("blade b{at} of saw cost {number} life {}", 1 + amount % 50),
            23 => format!("monthly m{at} {number} from 2026-02-{:02}", 1 + of % 28),
            24 => format!(
                "income sale {side} for bench:{},trays:1 expected {number} got {}",
                1 + what % 3,
                hundredths(amount % 1_913)
            ),
            25 => format!("made {build} {good} spoiled 1,0.4 scrap {}", hundredths(amount % 513)),
            26 => format!("hand {build} {good} sold"),
            27 => format!("expense jig {number} for {build} one-off side {side}"),
            28 => {
                let (from, to) = (amount % 20, amount % 20 + 1 + amount % 3);
                let rolled = format!("roll {from:02}:10-{from:02}:{:02}", 11 + amount % 40);
                let one_off = if amount % 2 == 0 { " one-off" } else { "" };
                format!(
                    "stretch {person} sand from {from:02}:03 to {to:02}:07 {rolled} for {build} side {side}{one_off}"
                )
            }
            29 => format!("close {build}"),
            38 => match amount % 4 {
                0 => format!("setting both {}", ["income", "hours", "0.4"][what % 3]),
                1 => format!("setting power-in {}", ["month", "tools"][what % 2]),
                2 => format!("setting km 0.61 from 2026-02-{:02}", 1 + of % 28),
                _ => format!("pause {build}"),
            },
            _ => format!("reopen {build}"),
        }
    }
}

fn unit(item: &str) -> &'static str {
    if item == "board" { "bf" } else { "each" }
}
