//! What the fold tells of odd entries, as a table: stored bodies in, what is odd out.

use super::{Field, Odd, Shop};
use crate::{
    journal::{Id, Journal},
    measure::Zone,
};

const TIN: &str = r#"item {"on":"2026-11-01","name":"oil","use":"consumable","unit":"tin","content":"750","content_unit":"ml"}"#;

fn id(number: usize) -> Id {
    let mut bytes = [0; 16];
    bytes[15] = number as u8;
    Id::of(bytes)
}

/// Folds bodies written as `kind {…}`; the first is entry 1. `#1` in a body stands for that entry's id.
fn fold(bodies: &[&str]) -> Shop {
    let mut journal = Journal::default();
    for (at, text) in bodies.iter().enumerate() {
        let (kind, body) = text.split_once(' ').unwrap();
        let body = (1..9).fold(body.to_owned(), |body, n| body.replace(&format!("#{n}"), &id(n).to_string()));
        let (entry, revision) = (id(at + 1), id(at + 101));
        let line = format!(
            r#"{{"v":1,"id":"{revision}","entry":"{entry}","device":"{entry}","stamp":{{"ms":1,"n":0}},"kind":"{kind}","bv":1,"body":{body}}}"#
        );
        journal.add(&line).unwrap();
    }
    Shop::fold(&journal, &Zone::utc())
}

/// The last of the bodies is the odd one.
#[track_caller]
fn check(bodies: &[&str], want: &[Odd]) {
    let shop = fold(bodies);
    let of_last: Vec<Odd> =
        shop.odd.iter().filter(|(entry, _)| *entry == id(bodies.len())).map(|it| it.1).collect();
    assert_eq!(of_last, want);
}

fn stretch(fields: &str) -> String {
    format!(
        r##"stretch {{"on":"2026-11-20","person":"#1","stage":"be4c51a7-0000-8000-8000-00000000000a","bearer":"shop","side":"piece",{fields}}}"##
    )
}

const ANA: &str = r#"person {"on":"2026-11-01","name":"Ana","rates":[{"an_hour":"26.00"}]}"#;

#[test]
fn an_end_before_the_start_is_told_and_counts_as_no_time() {
    let bad = stretch(r#""from":"2026-11-20T10:00:00Z","to":"2026-11-20T09:00:00Z""#);
    check(&[ANA, &bad], &[Odd::EndsBeforeStart]);
    let good = stretch(r#""from":"2026-11-20T09:00:00Z","to":"2026-11-20T10:00:00Z""#);
    check(&[ANA, &good], &[]);
}

#[test]
fn hours_beyond_a_working_life_are_told() {
    check(&[ANA, &stretch(r#""minutes":4294967295"#)], &[Odd::OutOfRange(Field::Hours)]);
    check(&[ANA, &stretch(r#""minutes":135"#)], &[]);
}

#[test]
fn negative_rates_and_money_are_told() {
    check(
        &[r#"person {"on":"2026-11-01","name":"Ana","rates":[{"an_hour":"-1"}]}"#],
        &[Odd::OutOfRange(Field::Rate)],
    );
    check(
        &[
            r#"lot {"on":"2026-11-01","name":"oak","use":"timber","origin":"bought","rough":"10","unit":"bf","paid":"-5"}"#,
        ],
        &[Odd::OutOfRange(Field::Money)],
    );
    check(
        &[
            r#"lot {"on":"2026-11-01","name":"oak","use":"timber","origin":"salvaged","rough":"-10","unit":"bf"}"#,
        ],
        &[Odd::OutOfRange(Field::Quantity)],
    );
}

#[test]
fn a_share_is_none_to_all() {
    let lot = |share: &str| {
        format!(
            r#"lot {{"on":"2026-11-01","name":"oak","use":"timber","origin":"salvaged","rough":"9","unit":"bf","expected_yield":"{share}"}}"#
        )
    };
    check(&[&lot("1")], &[]);
    check(&[&lot("1.2")], &[Odd::OutOfRange(Field::Share)]);
    check(&[&lot("-0.1")], &[Odd::OutOfRange(Field::Share)]);
}

#[test]
fn a_unit_that_does_not_fit_is_told_and_one_that_fits_is_turned() {
    let draw = |quantity: &str, unit: &str| {
        format!(
            r##"draw {{"on":"2026-11-20","from":{{"item":"#1"}},"quantity":"{quantity}","unit":"{unit}","bearer":"shop"}}"##
        )
    };
    check(&[TIN, &draw("3", "m")], &[Odd::UnitDoesNotFit]);
    let shop = fold(&[TIN, &draw("187.5", "ml")]);
    assert_eq!(shop.draws[0].quantity.map(|it| it.shown_trimmed()).as_deref(), Some("0.25"));
}

#[test]
fn what_is_named_but_is_not_there_is_told() {
    let lost = r##"draw {"on":"2026-11-20","from":{"lot":"#7"},"quantity":"3","unit":"each","bearer":{"build":"#8"}}"##;
    check(&[lost], &[Odd::Lost { what: id(8) }, Odd::Lost { what: id(7) }]);
    let by_nobody = stretch(r#""minutes":60"#);
    check(&["note {\"on\":\"2026-11-20\",\"text\":\"x\"}", &by_nobody], &[Odd::Lost { what: id(1) }]);
}

#[test]
fn newer_and_unreadable_entries_are_told_and_not_counted() {
    check(&[r#"hologram {"on":"2026-11-20"}"#], &[Odd::Newer]);
    check(&[r#"note {"on":"20 Nov","text":"x"}"#], &[Odd::Unreadable]);
}

#[test]
fn a_standing_stage_can_be_renamed_and_keeps_its_place() {
    let mut journal = Journal::default();
    let sand = crate::journal::stages::standing_id(10);
    journal
        .add(&format!(
            r#"{{"v":1,"id":"{}","entry":"{sand}","device":"{sand}","stamp":{{"ms":1,"n":0}},"kind":"stage","bv":1,"body":{{"on":"2026-11-20","name":"rub down","side":"piece"}}}}"#,
            id(1)
        ))
        .unwrap();
    let shop = Shop::fold(&journal, &Zone::utc());
    let stage = &shop.stages[&sand];
    assert_eq!((stage.name.as_str(), stage.place, shop.stages.len()), ("rub down", 10, 21));
}

#[test]
fn putting_away_what_is_not_there_is_told() {
    check(&[ANA, r##"retired {"on":"2026-11-02","what":"#1"}"##], &[]);
    let nobody = r##"retired {"on":"2026-11-02","what":"#7","back":true}"##;
    check(&[ANA, nobody], &[Odd::Lost { what: id(7) }]);
}

const OIL: &str = r#"item {"on":"2026-11-01","name":"hard oil","use":"consumable","unit":"ml"}"#;
const GLUE: &str = r#"item {"on":"2026-11-01","name":"glue","use":"consumable","unit":"kg"}"#;

#[test]
fn items_that_are_one_already_or_whose_units_differ_are_told() {
    let same =
        |item: usize, is: usize| format!(r##"same {{"on":"2026-11-02","item":"#{item}","as":"#{is}"}}"##);
    check(&[TIN, OIL, &same(1, 2)], &[]);
    check(&[TIN, OIL, &same(1, 2), &same(2, 1)], &[Odd::SameAlready]);
    check(&[TIN, OIL, &same(1, 1)], &[Odd::SameAlready]);
    check(&[TIN, GLUE, &same(1, 2)], &[Odd::UnitDoesNotFit]);
    check(&[TIN, OIL, &same(1, 5)], &[Odd::Lost { what: id(5) }]);
}
