//! The way back from a publish date, case by case.

use super::*;
use crate::{
    fixture::{Fixture, fixture},
    journal::{
        Body, Change, On,
        kinds::{self, DueLead, OutsiderKind, SettingKey},
    },
};

fn day(text: &str) -> Day {
    Day::parse(text).unwrap()
}

/// A bench to be published on Thursday 17 December 2026.
fn bench(more: &str) -> Fixture {
    let mut it = fixture(&format!("build bench\n{more}"));
    let bench = it.id("bench");
    let Some(Body::Build(body)) = it.journal.body(bench).cloned() else { panic!("a build") };
    it.write(Change::write(bench, kinds::Build { publish: Some(day("2026-12-17")), ..body }));
    it
}

fn due(it: &mut Fixture, number: u8, change: impl Fn(&mut kinds::Due)) -> Id {
    let (build, id) = (it.id("bench"), Id::of([number; 16]));
    let (on, what) = (On::Day(day("2026-11-01")), DueWhat::Review);
    let (words, outsider) = (None, None);
    let mut due =
        kinds::Due { on, build, what, words, day: None, lead: None, after: None, outsider, done: None };
    change(&mut due);
    it.write(Change::write(id, due));
    id
}

fn sponsor(it: &mut Fixture, week: &[u8], off: &[&str]) -> Id {
    let (id, on) = (Id::of([90; 16]), On::Day(day("2026-11-01")));
    let (name, kind) = ("Reed and Rush".to_owned(), OutsiderKind::Sponsor);
    let off = off.iter().map(|it| day(it)).collect();
    it.write(Change::write(id, kinds::Outsider { on, name, kind, week: week.to_vec(), off }));
    id
}

fn look(it: &Fixture) -> Publishing {
    publishing(&it.shop(), it.id("bench"), day("2026-11-20"), None)
}

#[track_caller]
fn check(it: &Publishing, want: &[&str]) {
    let days: Vec<String> = it.links.iter().map(|link| link.by.to_string()).collect();
    assert_eq!(days, want);
    assert_eq!(it.cut_by, want.last().map(|last| day(last)));
}

#[test]
fn a_sponsors_review_takes_their_own_working_days() {
    let mut it = bench("");
    // Open Tuesday to Thursday, away on the 9th.
    let them = sponsor(&mut it, &[2, 3, 4], &["2026-12-09"]);
    due(&mut it, 1, |due| due.outsider = Some(them));
    let look = look(&it);
    // Back from Monday the 14th: Thursday 10, Tuesday 8, Thursday 3.
    check(&look, &["2026-12-17", "2026-12-16", "2026-12-15", "2026-12-14", "2026-12-03", "2026-12-03"]);
    assert!(!look.own_list);
    assert_eq!(look.troubles, []);
}

#[test]
fn where_nothing_is_owed_nobody_reviews() {
    check(&look(&bench("")), &["2026-12-17", "2026-12-16", "2026-12-15", "2026-12-14", "2026-12-14"]);
}

#[test]
fn who_is_owed_a_mention_alone_does_not_review() {
    let mut it = bench("");
    let them = sponsor(&mut it, &[2, 3, 4], &[]);
    due(&mut it, 1, |due| {
        due.what = DueWhat::Mention;
        due.outsider = Some(them);
    });
    check(&look(&it), &["2026-12-17", "2026-12-16", "2026-12-15", "2026-12-14", "2026-12-14"]);
}

#[test]
fn of_chain_and_contract_the_earlier_counts() {
    let mut it = bench("");
    let promised = due(&mut it, 1, |due| due.day = Some(day("2026-12-07")));
    let look = look(&it);
    check(&look, &["2026-12-17", "2026-12-16", "2026-12-15", "2026-12-14", "2026-12-07", "2026-12-07"]);
    assert_eq!(look.links[4].promised, Some(promised));
    let mut it = bench("");
    due(&mut it, 1, |due| due.day = Some(day("2026-12-10")));
    let look = super::publishing(&it.shop(), it.id("bench"), day("2026-11-20"), None);
    assert_eq!(look.cut_by, Some(day("2026-12-09")), "the chain is earlier than what was promised");
    assert_eq!(look.links[4].promised, None);
}

#[test]
fn a_due_counts_from_the_publish_date_or_from_another() {
    let mut it = bench("");
    let lead = |days, of, later| Some(DueLead { days, of, later });
    let review = due(&mut it, 1, |due| due.lead = lead(5, DaysOf::Working, false));
    due(&mut it, 2, |due| {
        (due.what, due.lead, due.after) = (DueWhat::Other, lead(2, DaysOf::Calendar, false), Some(review));
    });
    due(&mut it, 3, |due| {
        (due.what, due.lead) = (DueWhat::ExclusiveUntil, lead(30, DaysOf::Calendar, true));
    });
    due(&mut it, 4, |due| due.what = DueWhat::Link);
    let by: Vec<Option<Day>> = look(&it).owed.iter().map(|it| it.by).collect();
    assert_eq!(
        by,
        ["2026-12-10", "2026-12-12", "2027-01-16"]
            .map(|it| Some(day(it)))
            .into_iter()
            .chain([None])
            .collect::<Vec<_>>()
    );
    // What was done earlier is counted from then.
    let Some(Body::Due(body)) = it.journal.body(review).cloned() else { panic!("a due") };
    it.write(Change::write(review, kinds::Due { done: Some(day("2026-12-01")), ..body }));
    assert_eq!(look(&it).owed[1].by, Some(day("2026-12-03")));
}

#[test]
fn dues_in_a_circle_and_leads_below_zero_are_told() {
    let mut it = bench("");
    let ids = [1, 2, 3].map(|at| Id::of([at; 16]));
    let lead = |days| Some(DueLead { days, of: DaysOf::Calendar, later: false });
    due(&mut it, 1, |due| (due.lead, due.after) = (lead(1), Some(ids[1])));
    due(&mut it, 2, |due| (due.lead, due.after) = (lead(1), Some(ids[0])));
    due(&mut it, 3, |due| due.lead = lead(-4));
    let look = look(&it);
    assert_eq!(look.owed.iter().map(|it| it.by).collect::<Vec<_>>(), [None; 3]);
    assert!(look.troubles.contains(&Trouble::Circle { due: ids[0] }), "{:?}", look.troubles);
    assert!(look.troubles.contains(&Trouble::NegativeLead { due: ids[2] }));
}

#[test]
fn what_is_late_is_told_until_it_is_done() {
    let mut it = bench("");
    due(&mut it, 1, |due| due.day = Some(day("2026-11-19")));
    due(&mut it, 2, |due| due.day = Some(day("2026-11-20")));
    due(&mut it, 3, |due| (due.day, due.done) = (Some(day("2026-11-19")), Some(day("2026-11-25"))));
    let late: Vec<bool> = look(&it).owed.iter().map(|it| it.late).collect();
    assert_eq!(late, [true, false, false]);
}

#[test]
fn nothing_goes_out_before_the_piece_is_done() {
    let it = bench("");
    let at = |finish: &str| {
        let finish = it.zone.end_of(day(finish));
        publishing(&it.shop(), it.id("bench"), day("2026-11-20"), Some(finish)).troubles
    };
    assert_eq!(at("2026-12-14"), []);
    let (done, by) = (day("2026-12-15"), day("2026-12-14"));
    assert_eq!(at("2026-12-15"), [Trouble::DoneAfterCut { done, by }]);
    let (done, publish) = (day("2026-12-18"), day("2026-12-17"));
    assert_eq!(at("2026-12-18"), [Trouble::PublishBeforeDone { done, publish }]);
}

#[test]
fn a_date_that_is_over_is_told_until_the_film_is_out() {
    let mut it = bench("");
    let at = |it: &Fixture, today: &str| publishing(&it.shop(), it.id("bench"), day(today), None);
    assert_eq!(at(&it, "2026-12-15").troubles, [Trouble::CutPast { day: day("2026-12-14") }]);
    let late = at(&it, "2026-12-18");
    assert_eq!(late.troubles, [Trouble::PublishPast { day: day("2026-12-17") }]);
    assert!(late.links.iter().all(|link| link.past));
    let (build, on) = (it.id("bench"), On::Day(day("2026-12-18")));
    let published = Some(day("2026-12-18"));
    let film = kinds::Film { on, build, footage: None, finished: None, published, address: None };
    it.write(Change::write(Id::of([7; 16]), film));
    assert_eq!(at(&it, "2026-12-20").troubles, []);
}

#[test]
fn what_must_be_in_the_film_can_not_be_due_before_it_is_out() {
    let mut it = bench("");
    let due = due(&mut it, 1, |due| (due.what, due.day) = (DueWhat::Mention, Some(day("2026-12-16"))));
    assert_eq!(look(&it).troubles, [Trouble::DueBeforePublish { due, by: day("2026-12-16") }]);
}

#[test]
fn nobody_who_never_works_is_waited_for() {
    let mut it = bench("");
    let them = sponsor(&mut it, &[], &[]);
    due(&mut it, 1, |due| due.outsider = Some(them));
    let look = look(&it);
    assert_eq!((look.cut_by, look.links.len()), (None, 4));
    assert_eq!(look.troubles, [Trouble::NoWorkingDay]);
}

#[test]
fn a_list_of_ones_own_takes_the_place_of_the_common_one() {
    let mut it = bench("");
    let value = "publish 0 working\nown 2 working ask the hall\nlock -1 calendar\nsing 1 working".to_owned();
    let (on, key) = (On::Day(day("2026-11-01")), SettingKey::PublishLeads);
    it.write(Change::write(Id::of([6; 16]), kinds::Setting { on, key, value, from: None }));
    let look = look(&it);
    check(&look, &["2026-12-17", "2026-12-15", "2026-12-15"]);
    assert!(look.own_list);
    assert_eq!(look.links[1].lead.words, "ask the hall");
    assert_eq!(look.troubles, [Trouble::UnreadInList { line: 4 }, Trouble::NegativeInList { at: 3 }]);
}

#[test]
fn what_held_until_a_day_that_is_past_is_over_and_not_late() {
    let mut it = bench("");
    due(&mut it, 1, |due| (due.what, due.day) = (DueWhat::ExclusiveUntil, Some(day("2026-11-19"))));
    due(&mut it, 2, |due| (due.what, due.day) = (DueWhat::ExclusiveUntil, Some(day("2026-11-20"))));
    due(&mut it, 3, |due| (due.what, due.day) = (DueWhat::Mention, Some(day("2026-11-19"))));
    let said: Vec<(bool, bool)> = look(&it).owed.iter().map(|it| (it.late, it.over)).collect();
    assert_eq!(said, [(false, true), (false, false), (true, false)]);
}
