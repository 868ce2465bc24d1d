//! The journal of one bearer: which entries are about it, newest first, and how each of them stands.
//!
//! Struck entries and those that a newer version wrote are in it: what was written stays on view. What a
//! line says, and what it came to, is not here (`words` of the screen, `costing::amounts`).

use super::{
    Body, Content, Id, Journal, Shop,
    kinds::{Bearer, Source, Stretch},
};
use crate::measure::{Day, Instant};
use std::cmp::Reverse;

/// An entry in its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Listed {
    /// Which.
    pub entry: Id,
    /// The local day that it is about.
    pub day: Day,
    /// The moment, where one was given.
    pub time: Option<Instant>,
}

/// How an entry stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Standing {
    /// How many different things it has said: 1 as first written. That a clock was ended, paused or
    /// filmed corrects nothing.
    pub version: usize,
    /// Versions that nothing replaces: 2 or more where it was changed in two places.
    pub heads: usize,
    /// What is to be made of it.
    pub state: State,
}

/// What is to be made of an entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// It counts.
    Stands,
    /// Struck out at a moment, by the device that struck it.
    Struck {
        /// The moment.
        at: Instant,
    },
    /// Written by a newer version of the program.
    Newer,
    /// Can't be read as its kind says.
    Unreadable,
}

/// What a bearer's journal holds, newest first: day, then time (a whole day last), then the later made.
///
/// Beside what it bears: itself, a lot's sorts and looks at the shelf, lots got for a build and their sorts.
pub fn listing(journal: &Journal, shop: &Shop, about: Bearer) -> Vec<Listed> {
    let entries = journal.entries().filter_map(|entry| match journal.last_body(entry) {
        Some(body) => bears(shop, entry, body, about).then(|| placed(shop, entry, body)),
        None => unread(journal, shop, entry, about),
    });
    newest_first(entries.collect())
}

/// Notes that have no home yet, newest first.
pub fn homeless(journal: &Journal, shop: &Shop) -> Vec<Listed> {
    let notes = shop.notes.iter().filter(|note| note.bearer.is_none());
    let placed = notes.filter_map(|note| {
        let entry = note.order.entry;
        Some(placed(shop, entry, journal.body(entry)?))
    });
    newest_first(placed.collect())
}

/// How an entry stands; none: there is no such entry.
pub fn standing(journal: &Journal, entry: Id) -> Option<Standing> {
    let shown = journal.shown(entry)?;
    let state = match &shown.content {
        Content::Body(_) => State::Stands,
        Content::Struck => State::Struck { at: Instant(shown.stamp.ms.div_euclid(1000)) },
        Content::Newer => State::Newer,
        Content::Unreadable => State::Unreadable,
    };
    Some(Standing { version: version(journal, entry), heads: journal.heads(entry).len(), state })
}

/// The days of a listing, each with its lines.
pub fn days(lines: &[Listed]) -> impl Iterator<Item = (Day, &[Listed])> {
    lines.chunk_by(|a, b| a.day == b.day).filter_map(|of_day| Some((of_day.first()?.day, of_day)))
}

/// Whether a version says something else than the one before it, rather than more of the same: a stretch
/// that is ended, paused, filmed or asked about is the stretch that was begun.
pub fn corrects(before: &Body, after: &Body) -> bool {
    match (before, after) {
        (Body::Stretch(before), Body::Stretch(after)) => stretch_corrected(before, after),
        _ => before != after,
    }
}

fn stretch_corrected(before: &Stretch, after: &Stretch) -> bool {
    let ended = before.to.is_none() && after.to.is_some();
    let said = |it: &Stretch| Stretch {
        to: if ended { None } else { it.to },
        pauses: Vec::new(),
        rolling: Vec::new(),
        together: None,
        still_running: None,
        ..it.clone()
    };
    said(before) != said(after)
}

fn version(journal: &Journal, entry: Id) -> usize {
    let history = journal.history(entry);
    let mut bodies = history.iter().filter_map(|revision| match &revision.content {
        Content::Body(body) => Some(body),
        Content::Struck | Content::Newer | Content::Unreadable => None,
    });
    let Some(mut before) = bodies.next() else { return 1 };
    let mut version = 1_usize;
    for body in bodies {
        if corrects(before, body) {
            version = version.saturating_add(1);
        }
        before = body;
    }
    version
}

fn bears(shop: &Shop, entry: Id, body: &Body, about: Bearer) -> bool {
    let is = |bearer: Bearer| bearer == about;
    match body {
        Body::Build(_) => is(Bearer::Build(entry)),
        Body::Stretch(it) => is(it.bearer),
        Body::Draw(it) => is(it.bearer),
        Body::Expense(it) => is(it.bearer),
        Body::Note(it) => it.bearer.is_some_and(is),
        Body::Trip(it) => it.shares.iter().any(|share| is(share.bearer)),
        Body::Lot(it) => is(Bearer::Lot(entry)) || it.for_build.is_some_and(|build| is(Bearer::Build(build))),
        Body::Sort(it) => {
            let got_for = shop.lots.get(&it.lot).and_then(|lot| lot.for_build);
            is(Bearer::Lot(it.lot)) || got_for.is_some_and(|build| is(Bearer::Build(build)))
        }
        Body::Shelf(it) => match it.of {
            Source::Lot(lot) => is(Bearer::Lot(lot)),
            Source::Item(_) => is(Bearer::Shop),
        },
        Body::Setting(_) | Body::Person(_) | Body::Stage(_) | Body::Item(_) => is(Bearer::Shop),
    }
}

/// A line whose body can't be read here belongs where it names: the bearer's id stands in its text. One
/// that names none is the shop's.
fn unread(journal: &Journal, shop: &Shop, entry: Id, about: Bearer) -> Option<Listed> {
    let shown = journal.shown(entry)?;
    let history = journal.history(entry);
    let texts: Vec<&str> = history.iter().filter_map(|revision| journal.line(revision.id)).collect();
    let names = |id: &Id| texts.iter().any(|text| text.contains(&id.to_string()));
    let here = match about {
        Bearer::Build(id) | Bearer::Lot(id) => names(&id),
        Bearer::Shop => !shop.builds.keys().any(names) && !shop.lots.keys().any(names),
    };
    let at = Instant(shown.stamp.ms.div_euclid(1000));
    here.then(|| Listed { entry, day: shop.zone.day(at), time: Some(at) })
}

fn placed(shop: &Shop, entry: Id, body: &Body) -> Listed {
    let on = body.on();
    Listed { entry, day: on.day(&shop.zone), time: on.instant() }
}

fn newest_first(mut lines: Vec<Listed>) -> Vec<Listed> {
    lines.sort_unstable_by_key(|line| Reverse((line.day, line.time, line.entry)));
    lines
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        journal::{Change, On, kinds},
        measure::{Dec, Unit},
        timing::clocks::tests::{ANA, BO, Bench, TRAYS, plain, when},
    };

    const BUILD: Bearer = Bearer::Build(TRAYS);

    fn note(on: On, text: &str, bearer: Option<Bearer>) -> Body {
        kinds::Note { on, text: text.into(), bearer }.into()
    }

    fn day(text: &str) -> On {
        On::Day(Day::parse(text).unwrap())
    }

    fn entries(bench: &Bench, about: Bearer) -> Vec<Id> {
        listing(&bench.journal, &bench.shop(), about).iter().map(|line| line.entry).collect()
    }

    fn of(bench: &Bench, entry: Id) -> Standing {
        standing(&bench.journal, entry).unwrap()
    }

    #[test]
    fn the_newest_stands_first_and_a_whole_day_below_its_moments() {
        let mut bench = Bench::new();
        let early = bench.log(ANA, "08:00", "09:00", &[]);
        let late = bench.log(BO, "09:30", "10:00", &[]);
        let whole = bench.enter(note(day("2026-11-20"), "clamps", Some(BUILD)));
        let before = bench.enter(note(day("2026-11-19"), "sketch", Some(BUILD)));
        assert_eq!(entries(&bench, BUILD), [late, early, whole, before, TRAYS]);
    }

    #[test]
    fn a_bearer_lists_its_own_entries_only() {
        let mut bench = Bench::new();
        let mine = bench.enter(note(day("2026-11-20"), "here", Some(BUILD)));
        let shop = bench.enter(note(day("2026-11-20"), "sweep", Some(Bearer::Shop)));
        let none = bench.enter(note(day("2026-11-20"), "ask", None));
        assert_eq!(entries(&bench, BUILD), [mine, TRAYS]);
        assert!(entries(&bench, Bearer::Shop).contains(&shop));
        let homeless: Vec<Id> =
            homeless(&bench.journal, &bench.shop()).iter().map(|line| line.entry).collect();
        assert_eq!(homeless, [none]);
    }

    #[test]
    fn lots_got_for_a_build_and_their_sorts_are_in_its_journal() {
        let mut bench = Bench::new();
        let one = Dec::parse("1").unwrap();
        let lot = bench.enter(
            kinds::Lot {
                on: day("2026-11-02"),
                item: None,
                name: "pews".into(),
                purpose: kinds::Use::Timber,
                origin: kinds::Origin::Salvaged,
                rough: one,
                unit: Unit::BoardFoot,
                basis: None,
                other_measure: None,
                paid: None,
                fee: None,
                freight: None,
                discount: None,
                tax: None,
                tax_back: false,
                for_build: Some(TRAYS),
                expected_yield: None,
                new: None,
                whence: None,
            }
            .into(),
        );
        let sort = bench.enter(kinds::Sort { on: day("2026-11-03"), lot, good: one, culled: one }.into());
        assert_eq!(entries(&bench, BUILD), [sort, lot, TRAYS]);
        assert_eq!(entries(&bench, Bearer::Lot(lot)), [sort, lot]);
    }

    #[test]
    fn a_struck_entry_stays_in_its_place() {
        let mut bench = Bench::new();
        let late = bench.log(ANA, "09:00", "10:00", &[]);
        let early = bench.log(ANA, "08:00", "09:00", &[]);
        bench.write(&[Change::strike(late)]);
        assert_eq!(entries(&bench, BUILD), [late, early, TRAYS]);
        assert!(matches!(of(&bench, late).state, State::Struck { .. }));
        let back = Change::bring_back(&bench.journal, late).unwrap();
        bench.write(&[back]);
        let again = of(&bench, late);
        assert_eq!((again.state, again.version), (State::Stands, 1));
    }

    #[test]
    fn ending_a_clock_corrects_nothing_and_moving_its_start_does() {
        let mut bench = Bench::new();
        let entry = bench.open(ANA, "08:05");
        let open = bench.stored(entry);
        let paused = kinds::Stretch {
            pauses: vec![kinds::Span { from: when("08:30"), to: Some(when("08:40")) }],
            ..open.clone()
        };
        bench.write(&[Change::write(entry, paused)]);
        bench.write(&[Change::write(entry, kinds::Stretch { to: Some(when("10:00")), ..open })]);
        assert_eq!(of(&bench, entry).version, 1);
        let moved = kinds::Stretch { to: Some(when("10:00")), ..plain(ANA, "07:50") };
        bench.write(&[Change::write(entry, moved.clone())]);
        assert_eq!(of(&bench, entry).version, 2);
        bench.write(&[Change::write(entry, kinds::Stretch { to: Some(when("09:45")), ..moved })]);
        assert_eq!(of(&bench, entry).version, 3);
    }

    #[test]
    fn what_a_newer_version_wrote_is_listed_where_it_names() {
        let mut bench = Bench::new();
        let id = Id([0x41; 16]);
        let line = |v: u32, body: &str| {
            format!(
                r#"{{"id":"{id}","entry":"{id}","parents":[],"device":"{id}","stamp":{{"ms":1795000000000,"n":0}},"v":{v},"kind":"dance","bv":1,"body":{body}}}"#
            )
        };
        bench.journal.add(&line(1, &format!(r#"{{"on":"2026-11-20","for":"{TRAYS}"}}"#))).unwrap();
        assert_eq!(of(&bench, id).state, State::Newer);
        assert!(entries(&bench, BUILD).contains(&id));
        assert!(!entries(&bench, Bearer::Shop).contains(&id));
    }

    #[test]
    fn two_versions_are_counted_until_one_is_picked() {
        let mut bench = Bench::new();
        let entry = bench.enter(note(day("2026-11-20"), "first", Some(BUILD)));
        let mut other = Bench::new();
        other.journal = bench.journal.clone();
        bench.write(&[Change::write(entry, note(day("2026-11-20"), "here", Some(BUILD)))]);
        // The pen of the other device gives its own ids.
        for _ in 0..40 {
            other.fresh();
        }
        other.write(&[Change::write(entry, note(day("2026-11-20"), "there", Some(BUILD)))]);
        for (_, line) in other.journal.lines() {
            bench.journal.add(line).unwrap();
        }
        assert_eq!(of(&bench, entry).heads, 2);
        let picked = bench.journal.heads(entry)[0].id;
        let change = Change::pick(&bench.journal, picked).unwrap();
        bench.write(&[change]);
        assert_eq!(of(&bench, entry).heads, 1);
    }

    #[test]
    fn a_listing_falls_into_days() {
        let mut bench = Bench::new();
        bench.log(ANA, "08:00", "09:00", &[]);
        bench.log(ANA, "09:00", "10:00", &[]);
        let lines = listing(&bench.journal, &bench.shop(), BUILD);
        let days: Vec<(String, usize)> =
            days(&lines).map(|(day, lines)| (day.to_string(), lines.len())).collect();
        assert_eq!(days, [("2026-11-20".to_owned(), 2), ("2026-11-01".to_owned(), 1)]);
    }
}
