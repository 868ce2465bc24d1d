//! Tests of the listing of a journal. They stand here because a shop with work in it is made in this room.

use crate::{
    journal::{Body, Change, Id, On, kinds, kinds::Bearer, listing::*},
    measure::{Day, Dec, Unit},
    timing::clocks::tests::{ANA, BO, Bench, TRAYS, plain, when},
};

const BUILD: Bearer = Bearer::Build(TRAYS);

fn note(on: On, text: &str, bearer: Option<Bearer>) -> Body {
    kinds::Note { on, text: text.into(), bearer }.into()
}

fn photo(entry: Option<Id>, bearer: Option<Bearer>) -> Body {
    let (hash, media) = ("9f".repeat(32), "image/jpeg".to_owned());
    let on = day("2026-11-20");
    kinds::Photo { on, entry, bearer, hash, media, width: 1600, height: 1200, bytes: 240_000, caption: None }
        .into()
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
    let homeless: Vec<Id> = homeless(&bench.journal, &bench.shop()).iter().map(|line| line.entry).collect();
    assert_eq!(homeless, [none]);
}

#[test]
fn a_photo_stands_where_the_entry_stands_that_it_is_of() {
    let mut bench = Bench::new();
    let mine = bench.enter(note(day("2026-11-19"), "clamps", Some(BUILD)));
    let of_note = bench.enter(photo(Some(mine), None));
    let of_photo = bench.enter(photo(Some(of_note), None));
    let of_build = bench.enter(photo(None, Some(BUILD)));
    let waits = bench.enter(photo(None, None));
    assert_eq!(entries(&bench, BUILD), [of_build, of_note, mine, TRAYS]);
    let shop = bench.shop();
    assert_eq!(photos_of(&shop, mine), [of_note]);
    let homeless: Vec<Id> = homeless(&bench.journal, &shop).iter().map(|line| line.entry).collect();
    assert_eq!(homeless, [waits]);
    // That it got its home is no correction; other words under it are.
    let Body::Photo(bare) = photo(None, None) else { return };
    let home = Body::from(kinds::Photo { entry: Some(mine), ..bare.clone() });
    assert!(!corrects(&bare.clone().into(), &home));
    assert!(corrects(
        &home,
        &kinds::Photo { entry: Some(mine), caption: Some("clamps".into()), ..bare }.into()
    ));
    // Read anew by itself, it stands where the fold of all puts it.
    let early = bench.enter(match photo(None, Some(BUILD)) {
        Body::Photo(it) => kinds::Photo { on: day("2026-11-18"), ..it }.into(),
        other => other,
    });
    assert_eq!(shop.after(&bench.journal, &[early]).photos, bench.shop().photos);
    // One that names another photo leads round in no circle, and its own line still opens.
    assert_eq!(photos_of(&shop, of_note), [of_photo]);
}

#[test]
fn lots_got_for_a_build_and_their_sorts_are_in_its_journal() {
    let mut bench = Bench::new();
    let one = Dec::parse("1").unwrap();
    let lot = bench.enter(
        kinds::Lot {
            abroad: None,
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
            receipt: None,
            value: None,
            by: None,
            mark: None,
            whence: None,
            species: None,
        }
        .into(),
    );
    let sort =
        bench.enter(kinds::Sort { on: day("2026-11-03"), lot, good: one, culled: one, link: None }.into());
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
    let id = Id::of([0x41; 16]);
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
