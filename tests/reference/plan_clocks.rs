//! Free windows and waits where the clock changes, in three zones, both ways.

use super::zones::probed;
use benchslate_core::{
    fixture::Fixture,
    measure::{Day, Map},
    planning::{Asking, Plan},
    timing::worked,
};
use chrono_tz::Tz;

/// A step of eight hours by somebody who is free from midnight to 04:00 every day, begun on the eve of a change; then,
/// 24 hours after it, one of an hour. Pieces of both, local.
fn pieces(tz: Tz, eve: &str) -> Vec<String> {
    let week = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"].map(|day| format!("{day}/00:00-04:00"));
    let text = format!(
        "person Ana 26 free {}\n build trays on {eve}\n step coat trays finish who Ana hours ,8,
         step next trays sand who Ana hours ,1, after coat:24",
        week.join(",")
    );
    let it = Fixture::in_zone(&text, probed(tz));
    let (shop, builds, until) = (it.shop(), [it.id("trays")], Map::new());
    let now = shop.zone.start_of(Day::parse(eve).unwrap());
    let done = worked(&shop, now);
    let asking = Asking { shop: &shop, worked: &done, now, builds: &builds, until: &until, filming: &[] };
    let plan = Plan::of(&asking);
    assert_eq!(plan.troubles, []);
    let said = |(from, to): &(_, _)| {
        let text = |at| shop.zone.when(at).to_string();
        format!("{} {}", &text(*from)[8..16], &text(*to)[11..16])
    };
    plan.steps.iter().flat_map(|it| it.pieces.iter().map(said)).collect()
}

// Source: published — IANA tz database by way of chrono-tz 0.10: America/Toronto loses an hour on 8 March 2026 and gains
// one on 1 November, Europe/Berlin on 29 March and 25 October, Australia/Lord_Howe half an hour on 5 April (gained) and
// 4 October (lost). A window of four hours by the clock then holds three or five, or three and a half or four and a half.
#[test]
fn a_window_is_shorter_or_longer_where_the_clock_changes_inside_it() {
    // 4 + 3 + 1 hours; the last day's window is left to what comes 24 hours later.
    let lost = ["07T00:00 04:00", "08T00:00 04:00", "09T00:00 01:00", "10T01:00 02:00"];
    assert_eq!(pieces(Tz::America__Toronto, "2026-03-07"), lost);
    assert_eq!(
        pieces(Tz::America__Toronto, "2026-10-31"),
        ["31T00:00 04:00", "01T00:00 03:00", "02T03:00 04:00"]
    );
    let lost = ["28T00:00 04:00", "29T00:00 04:00", "30T00:00 01:00", "31T01:00 02:00"];
    assert_eq!(pieces(Tz::Europe__Berlin, "2026-03-28"), lost);
    assert_eq!(
        pieces(Tz::Europe__Berlin, "2026-10-24"),
        ["24T00:00 04:00", "25T00:00 03:00", "26T03:00 04:00"]
    );
    let lost = ["03T00:00 04:00", "04T00:00 04:00", "05T00:00 00:30", "06T00:30 01:30"];
    assert_eq!(pieces(Tz::Australia__Lord_Howe, "2026-10-03"), lost);
    // An hour that begins at 03:30 has half an hour left that day.
    let gained = ["04T00:00 04:00", "05T00:00 03:30", "06T03:30 04:00", "07T00:00 00:30"];
    assert_eq!(pieces(Tz::Australia__Lord_Howe, "2026-04-04"), gained);
}
