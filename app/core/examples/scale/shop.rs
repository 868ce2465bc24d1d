//! A shop of so many entries, invented, with lines of every kind: every build draws, works, spends, salvages, is filmed,
//! sold and closed alike.

use benchslate_core::{
    fixture::{Fixture, fixture},
    journal::{
        Change, On,
        kinds::{BuildState, State},
    },
    measure::Day,
};

/// What is there before the first build.
const BEFORE: &str = "
    setting km 0.55
    setting kwh 0.15
    setting normal 90
    setting normal-film 36
    person Ana 26
    person Ada 20 paid
    item disc consumable each low 10
    item screw fitting each
    tool saw price 1450 resale 450 life 40000 upkeep 0.21 kw 1.75 load 0.5 at cut:0.4 at mill:0.1
    tool planer price 900 resale 300 life 30000 upkeep 0.35 kw 2.2 load 0.6 at mill:0.6 at reclaim:0.3
    tool sander price 160 resale 40 life 12000 kw 0.3 at sand:0.8
    tool camera price 1200 resale 400 life 20000 rolls at shoot:1
    monthly rent 360
    monthly storage 45 film
    monthly power 60 tools-kwh 120";

/// `entries` or a few more.
pub fn shop(entries: usize) -> Fixture {
    let mut it = fixture(BEFORE);
    let mut build = 0;
    while it.lines.len() < entries {
        build += 1;
        add(&mut it, build);
    }
    close(&mut it, build);
    it
}

/// One build with all that belongs to it; every third repeats the one before.
fn add(it: &mut Fixture, build: usize) {
    let (month, day) = (1 + build / 28 % 12, 1 + build % 28);
    let of = if build.is_multiple_of(3) { format!(" repeat b{}", build - 1) } else { " run 60".into() };
    it.add(&format!("build b{build}{of} spoil 0.05 on 2026-{month:02}-{day:02}"));
    it.add(&format!("receipt r{build} from till freight 6 discount 1 tax 9.43 total 120 for b{build}"));
    it.add(&format!("lot t{build} salvaged 120 paid 36 yield 0.8 for b{build} new 7 waste 0.1 from barn"));
    it.add(&format!("lot h{build} bought 8 unit each use fitting paid 24 receipt r{build} for b{build}"));
    it.add(&format!("expense glue 16.50 receipt r{build} for b{build}"));
    it.add(&format!("trip 40 fee 2 for t{build}:1,b{build}:1"));
    it.add(&format!("sort t{build} good 80 culled 20"));
    it.add(&format!("by-product kindling 5 of t{build}"));
    it.add(&format!("expense van {}.37 for b{build}", build % 90));
    it.add(&format!("expense jig {}.50 for b{build} one-off", 1 + build % 40));
    it.add(&format!("draw 6 h{build} for b{build}"));
    if build % 10 == 1 {
        it.add(&format!("blade rip{build} of saw cost 64 life 90"));
        it.add(&format!("monthly m{build} 3 from 2026-{month:02}-{day:02} to 2026-12-31"));
    }
    for turn in 0..8 {
        let (from, to) = (7 + turn, 8 + turn);
        it.add(&format!("lot d{build}-{turn} bought 20 of disc unit each paid {}", 11 + turn));
        it.add(&format!("draw 13 disc for b{build} as x{build}-{turn}"));
        it.add(&format!("return 1 of x{build}-{turn}"));
        it.add(&format!("draw 3.5 t{build} for b{build}"));
        it.add(&format!("stretch Ana reclaim from {from:02}:00 to {to:02}:10 for t{build}"));
        it.add(&format!("stretch Ada sand from {from:02}:05 to {to:02}:00 for b{build}"));
        it.add(&format!("stretch Ana mill min 75 for b{build} side both"));
    }
    it.add(&format!("stretch Ana cut from 16:00 to 18:00 roll 16:10-16:40 for b{build} as c{build}"));
    it.add(&format!("stretch Ana shoot from 18:00 to 19:00 roll 18:00-19:00 for b{build} side film"));
    it.add(&format!("stretch Ada glue-up min 40 for b{build} as g{build}"));
    it.add(&format!("dry g{build} held 60 next 1440"));
    it.add(&format!("photo of c{build}"));
    it.add(&format!("photo for b{build}"));
    it.add(&format!("note flat-at-last for b{build}"));
    it.add(&format!("ran saw 0.5 stage cut for b{build}"));
    it.add(&format!("income sale piece for b{build} expected 800 got 780 tax 89.73"));
    it.add(&format!("income sponsor film for b{build} expected 200 got 200 fee 6"));
    it.add(&format!("made b{build} 10 spoiled 0.6,1 scrap 4"));
    it.add(&format!("hand b{build} 8 sold"));
    if build.is_multiple_of(7) {
        it.add(&format!("pause b{build}"));
    }
}

/// All builds but every fifth are closed on the last day, each with what its draws cost by then.
fn close(it: &mut Fixture, builds: usize) {
    let books = it.books();
    let on = On::Day(Day::parse("2026-12-31").expect("a day"));
    for build in (1..=builds).filter(|build| build % 5 != 0) {
        let id = it.id(&format!("b{build}"));
        let frozen = books.freeze(id);
        let entry = benchslate_core::fixture::numbered(4, build.try_into().expect("fits"));
        let body = BuildState { on, build: id, state: State::Closed, frozen };
        it.write(Change { entry, body: Some(body.into()), settles: false });
    }
}
