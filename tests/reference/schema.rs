//! The two schemas of `app/core/schema/` against what is really written: every kind of line, and the manifest of a backup.

use benchslate_core::{
    exchange::{
        backup::{Packer, Writer},
        jsonl,
    },
    fixture::fixture,
    journal::{
        Body, Change, Content, Id, Journal, Kind, On, Pen,
        kinds::{
            BuyLine, CardCopied, Case, Cases, Chapter, Cull, DaysOf, Due, DueLead, DueWhat, Extent, Film,
            Find, FreeDay, Link, Outsider, OutsiderKind, Part, Resource, Retired, Same, SeriesEnd, Step,
            Window,
        },
        line,
    },
    measure::{Day, Dec, TimeOfDay, Unit, When},
};
use boon::{Compiler, SchemaIndex, Schemas};
use serde_json::{Value, json};
use std::{
    collections::BTreeSet,
    io::{Cursor, Read},
    path::Path,
};

struct Schema {
    text: Value,
    schemas: Schemas,
    index: SchemaIndex,
}

impl Schema {
    fn of(name: &str) -> Schema {
        let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../app/core/schema").join(name);
        let text =
            std::fs::read_to_string(&file).unwrap_or_else(|error| panic!("{}: {error}", file.display()));
        let (mut schemas, mut compiler) = (Schemas::new(), Compiler::new());
        let text: Value = serde_json::from_str(&text).unwrap();
        compiler.add_resource(name, text.clone()).unwrap();
        let index = compiler.compile(name, &mut schemas).unwrap();
        Schema { text, schemas, index }
    }

    fn fits(&self, value: &Value) -> bool {
        self.schemas.validate(value, self.index).is_ok()
    }

    #[track_caller]
    fn must_fit(&self, text: &str) {
        let value = serde_json::from_str(text).unwrap();
        if let Err(why) = self.schemas.validate(&value, self.index) {
            panic!("{text}\n{why}");
        }
    }
}

/// Shelves that were looked at.
fn find(on: On) -> Find {
    let dec = |text: &str| Dec::parse(text).unwrap();
    let case = |usable: &str| Case { usable: dec(usable), minutes: 25 };
    Find {
        on,
        name: "shelves".to_owned(),
        whence: None,
        species: None,
        boards: Some(22),
        rough: dec("88"),
        unit: Unit::BoardFoot,
        basis: None,
        other_measure: None,
        asked: Some(dec("60")),
        fee: None,
        km: None,
        cases: Cases { badly: case("0.6"), usually: case("0.75"), well: case("0.85") },
        new: None,
        mark: None,
        lot: None,
    }
}

/// What is owed, to whom, and a chapter.
fn publishing(on: On, id: fn(u8) -> Id) -> [Body; 3] {
    let lead = Some(DueLead { days: 3, of: DaysOf::Theirs, later: true });
    let (what, words, after, outsider, done) = (DueWhat::Review, None, Some(id(8)), Some(id(7)), None);
    let due = Due { on, build: id(1), what, words, day: None, lead, after, outsider, done };
    let (name, kind, off) = ("Reed and Rush".to_owned(), OutsiderKind::Sponsor, Vec::new());
    [
        due.into(),
        Outsider { on, name, kind, week: vec![1, 2], off }.into(),
        Chapter { on, build: id(1), title: "Oil".to_owned(), at: 95 }.into(),
    ]
}

/// The kept files of the released format, the sample shop, and the kinds that neither has.
fn lines() -> Vec<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let kept =
        ["run-of-a-shop", "trays-and-bench", "two-phones"].map(|it| format!("loads/stored/v1/{it}.jsonl"));
    let files = kept.into_iter().chain(["../public/sample-shop.jsonl".to_owned()]);
    let mut lines: Vec<String> = files
        .flat_map(|file| {
            std::fs::read_to_string(root.join(file)).unwrap().lines().map(str::to_owned).collect::<Vec<_>>()
        })
        .collect();
    let (on, id) =
        (On::At(When::parse("2026-11-20T08:05:00-05:00").unwrap()), |digit: u8| Id::of([digit; 16]));
    let what = "screws".to_owned();
    let buy = BuyLine {
        on,
        item: None,
        what,
        quantity: None,
        unit: None,
        price: None,
        for_build: Some(id(1)),
        bought: None,
    };
    let film = Film { on, build: id(1), footage: None, finished: None, published: None, address: None };
    let dec = |text: &str| Dec::parse(text).unwrap();
    let cull = Cull { on, lot: id(1), quantity: dec("10"), link: Some(Link::Milled), unexpected: true };
    let length = Some(Extent { amount: dec("23.75"), unit: Unit::Inch });
    let leg = "leg".to_owned();
    let part = Part { on, build: id(1), name: leg, count: 4, length, width: None, thickness: None, cut: 1 };
    let six = TimeOfDay::of(18, 0, 0).unwrap();
    let window = Window { from: six, to: TimeOfDay::of(21, 30, 0).unwrap() };
    let day = Day::parse("2026-12-05").unwrap();
    let free = FreeDay { on, person: id(1), day, last: Some(day.succ()), extra: vec![window] };
    let clamps = Resource { on, name: "long clamps".to_owned(), count: 6 };
    let bodies: [Body; 12] = [
        free.into(),
        clamps.into(),
        cull.into(),
        find(on).into(),
        part.into(),
        Retired { on, what: id(1), back: false }.into(),
        Same { on, item: id(1), is: id(2) }.into(),
        SeriesEnd { on, build: id(1) }.into(),
        Step::blank(on, id(1), id(2)).into(),
        film.into(),
        buy.into(),
        CardCopied { on, build: id(1) }.into(),
    ];
    let changes: Vec<Change> = (3..)
        .zip(bodies.into_iter().chain(publishing(on, id)))
        .map(|(digit, body)| Change::write(id(digit), body))
        .collect();
    let mut number = 100;
    let mut fresh = || {
        number += 1;
        id(number)
    };
    let pen = Pen { device: id(9), now_ms: 1_795_000_000_000 };
    lines.extend(pen.write(&Journal::default(), &changes, &mut fresh).into_iter().map(|line| line.text));
    lines.extend(jsonl::write(&fixture("build bench\nstrike bench").journal).lines().map(str::to_owned));
    lines
}

// Source: library — boon 0.6 (crates.io), JSON Schema 2020-12.
#[test]
fn real_lines_of_every_kind_fit_the_schema_of_a_line() {
    let schema = Schema::of("journal-line.json");
    let rules = schema.text["allOf"].as_array().unwrap().iter();
    let described: BTreeSet<&str> =
        rules.filter_map(|it| it["if"]["properties"]["kind"]["const"].as_str()).collect();
    assert_eq!(described, Kind::ALL.iter().map(|kind| kind.code()).collect(), "a body for every kind");
    let mut met = BTreeSet::new();
    for text in lines() {
        let revision = line::read(&text).unwrap();
        match revision.content {
            Content::Body(body) => met.insert(body.kind()),
            Content::Struck | Content::Newer => true,
            // What is no body of its kind need not fit.
            Content::Unreadable => continue,
        };
        schema.must_fit(&text);
    }
    assert_eq!(met, Kind::ALL.iter().copied().collect());
}

// Source: library — boon 0.6 (crates.io), JSON Schema 2020-12.
#[test]
fn what_is_no_line_does_not_fit_it() {
    let schema = Schema::of("journal-line.json");
    let id = "0190f3c2-7b1a-7c3d-8e4f-000000000001";
    let good = json!({"v": 1, "id": id, "entry": id, "parents": [], "device": id, "stamp": {"ms": 1, "n": 0},
        "kind": "expense", "bv": 1,
        "body": {"on": "2026-11-20", "what": "gap filler", "amount": "9.00", "bearer": "shop", "side": "both"}});
    assert!(schema.fits(&good));
    for (at, bad) in [
        ("/id", json!("1")),
        ("/stamp", json!(5)),
        ("/struck", json!(true)),
        ("/body/amount", json!(9.0)),
        ("/body/amount", json!("9e2")),
        ("/body/on", json!("20 Nov")),
        ("/body/bearer", json!({"person": id})),
        ("/body/side", json!("left")),
    ] {
        let mut line = good.clone();
        if at == "/struck" {
            line["struck"] = bad;
        } else {
            *line.pointer_mut(at).unwrap() = bad;
        }
        assert!(!schema.fits(&line), "{line}");
    }
    // A kind and fields that a later version knows are none of its business.
    let mut later = good.clone();
    (later["kind"], later["mood"]) = (json!("hologram"), json!([1]));
    assert!(schema.fits(&later));
}

// Source: library — boon 0.6 and zip 9 (crates.io).
#[test]
fn the_manifest_of_a_backup_fits_its_schema() {
    let schema = Schema::of("manifest.json");
    let mut packer = Packer::default();
    packer.add(b"");
    let mut writer = Writer::new(When::parse("2026-11-20T08:05:00-05:00").unwrap());
    let file = [writer.journal(&packer.finish(), 0).unwrap(), writer.finish(3).unwrap()].concat();
    let mut zip = zip::ZipArchive::new(Cursor::new(file)).unwrap();
    let mut text = String::new();
    zip.by_name("manifest.json").unwrap().read_to_string(&mut text).unwrap();
    schema.must_fit(&text);
    let mut other: Value = serde_json::from_str(&text).unwrap();
    other["version"] = json!(2);
    assert!(!schema.fits(&other));
}
