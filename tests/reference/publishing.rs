//! Back from the publish date: the chain of the sample shop, as a program that shares no line with this one counts it.

use benchslate_core::{
    exchange::jsonl,
    journal::{Id, Journal, Shop},
    measure::{Day, Instant, Map, When},
    planning::publishing::{Edit, Trouble, edit, publishing},
};
use chrono_tz::America::Toronto;

fn sample() -> Shop {
    let mut journal = Journal::default();
    let sample = include_bytes!("../../public/sample-shop.jsonl");
    jsonl::check_bytes(&journal, sample).unwrap().merge_into(&mut journal);
    Shop::fold(&journal, &crate::zones::probed(Toronto))
}

fn called(shop: &Shop, title: &str) -> Id {
    *shop.builds.iter().find(|(_, it)| it.title == title).unwrap().0
}

// Source: common practice — the leads of the sample shop, counted back day by day by hand and by a second program.
#[test]
fn the_second_run_of_trays_is_counted_back_from_its_date() {
    let shop = sample();
    let build = called(&shop, "Gymnasium-floor trays, second run");
    let day = |text: &str| Day::parse(text).unwrap();
    let finish = |text: &str| Some(When::parse(text).unwrap().instant);
    // The plan by the means: edit lock on Saturday 5 December at 12:06.
    let look = publishing(&shop, build, day("2026-11-20"), finish("2026-12-05T12:06:00-05:00"));
    let days: Vec<String> = look.links.iter().map(|link| link.by.to_string()).collect();
    let want = ["2026-12-17", "2026-12-16", "2026-12-15", "2026-12-14", "2026-12-09", "2026-12-09"];
    assert_eq!(days, want);
    assert_eq!(look.cut_by, Some(day("2026-12-09")));
    // What was promised for the 10th is later than the chain.
    assert!(look.links.iter().all(|link| link.promised.is_none()));
    assert_eq!((look.troubles, look.own_list), (Vec::new(), true));
    let late = publishing(&shop, build, day("2026-11-20"), finish("2026-12-10T09:00:00-05:00"));
    let (done, by) = (day("2026-12-10"), day("2026-12-09"));
    assert_eq!(late.troubles, [Trouble::DoneAfterCut { done, by }]);
}

// Source: common practice — 15 h over 17 minutes and 12 h over 12, summed by hand from the stretches of the sample shop.
#[test]
fn the_edit_takes_what_a_minute_took_before() {
    let shop = sample();
    let now = Instant(1_795_186_800);
    let run = called(&shop, "Gymnasium-floor trays, second run");
    let Edit::Takes { a_minute, films, whole, worked, left, .. } = edit(&shop, run, now) else {
        panic!("a length and two films")
    };
    assert_eq!((a_minute.0, films), (3_352, 2)); // 97 200 s over 29 minutes
    assert_eq!((whole.0, worked.0, left.0), (33_517, 10_800, 22_717));
    assert_eq!(edit(&shop, called(&shop, "Bench from church pews"), now), Edit::NoLength);
    let alone = Shop { films: Map::new(), ..shop.clone() };
    let none = edit(&alone, called(&shop, "Reading bench for a library corner"), now);
    assert!(matches!(none, Edit::NoneBefore { .. }));
}
