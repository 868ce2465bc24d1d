//! Whether a clock is to be asked about: on the bench, at the next look, never by a dialog.
//!
//! Four hours without an act on that build, or past local midnight. Source: our own rule; four hours is a
//! working guess at the longest stretch that nobody breaks.

use super::clocks::Clock;
use crate::{
    journal::{
        Shop,
        kinds::Bearer,
        shop::{Interval, Stretch, Take},
    },
    measure::{Instant, Seconds},
};

/// A clock that has run this long without an act is asked about.
pub const QUIET: Seconds = Seconds(4 * 3600);

/// Why it is asked about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asked {
    /// Nothing was written for [`QUIET`] or longer.
    Quiet {
        /// The last act: a good guess at the end.
        last_act: Instant,
    },
    /// A local midnight has passed.
    Midnight {
        /// The last act: a good guess at the end.
        last_act: Instant,
    },
}

/// A paused clock waits and is not asked about.
pub fn asked(shop: &Shop, clock: &Clock, now: Instant) -> Option<Asked> {
    if clock.paused.is_some() {
        return None;
    }
    let stretch = shop.stretches.iter().find(|stretch| stretch.entry() == clock.entry)?;
    let last_act = last_act(shop, stretch, now);
    let answered = stretch.still_running.unwrap_or(clock.from);
    if shop.zone.day(answered) < shop.zone.day(now) {
        return Some(Asked::Midnight { last_act });
    }
    (now.since(last_act) >= QUIET).then_some(Asked::Quiet { last_act })
}

/// The last thing written on the clock or on what bears it, since it began.
fn last_act(shop: &Shop, stretch: &Stretch, now: Instant) -> Instant {
    let from = stretch.from().unwrap_or(now);
    let of_spans = |spans: &[Interval]| {
        spans.iter().flat_map(|span| [Some(span.from), span.to]).flatten().collect::<Vec<Instant>>()
    };
    let mut acts = of_spans(&stretch.pauses);
    acts.extend(of_spans(&stretch.rolling));
    acts.extend(stretch.still_running);
    let draws = shop.draws.iter().filter(|draw| draw.bearer == stretch.bearer).map(|draw| draw.order.time);
    let notes = shop.notes.iter().filter(|note| note.bearer == Some(stretch.bearer)).map(|it| it.order.time);
    let photos = shop
        .photos
        .iter()
        .filter(|it| it.bearer == Some(stretch.bearer) || it.entry == Some(stretch.entry()));
    let photos = photos.map(|it| it.order.time);
    let of_build = |take: &&Take| {
        let build = shop.shots.get(&take.shot).map(|shot| Bearer::Build(shot.body.build));
        build == Some(stretch.bearer)
    };
    let takes = shop.takes.iter().filter(of_build).map(|take| take.order.time);
    acts.extend(draws.chain(notes).chain(photos).chain(takes).flatten());
    acts.into_iter().filter(|at| (from..=now).contains(at)).max().unwrap_or(from)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        journal::{
            On,
            kinds::{Bearer, Note, Photo, Span},
        },
        timing::clocks::{
            clocks,
            tests::{ANA, Bench, TRAYS, clock, plain, when},
        },
    };

    #[track_caller]
    fn check(bench: &Bench, now: &str, want: Option<&str>) {
        let shop = bench.shop();
        let now = clock(now);
        let got = asked(&shop, &clocks(&shop, now)[0], now);
        assert_eq!(got, want.map(|text| Asked::Quiet { last_act: clock(text) }));
    }

    #[test]
    fn four_quiet_hours_are_asked_about() {
        let mut bench = Bench::new();
        bench.open(ANA, "08:00");
        check(&bench, "11:59", None);
        check(&bench, "12:00", Some("08:00"));
    }

    #[test]
    fn an_act_on_the_build_begins_the_quiet_anew() {
        let mut bench = Bench::new();
        bench.open(ANA, "08:00");
        let note = |bearer| Note { on: On::At(when("10:00")), text: "line showing".into(), bearer };
        bench.enter(note(Some(Bearer::Shop)).into());
        check(&bench, "12:00", Some("08:00"));
        bench.enter(note(Some(Bearer::Build(TRAYS))).into());
        check(&bench, "12:00", None);
        check(&bench, "14:00", Some("10:00"));
    }

    #[test]
    fn a_photo_of_the_build_is_an_act_too() {
        let mut bench = Bench::new();
        bench.open(ANA, "08:00");
        let photo = |bearer| Photo {
            on: On::At(when("11:00")),
            entry: None,
            bearer,
            hash: String::new(),
            media: "image/jpeg".into(),
            width: 4,
            height: 3,
            bytes: 9,
            caption: None,
        };
        bench.enter(photo(Some(Bearer::Shop)).into());
        check(&bench, "12:00", Some("08:00"));
        bench.enter(photo(Some(Bearer::Build(TRAYS))).into());
        check(&bench, "14:59", None);
        check(&bench, "15:00", Some("11:00"));
    }

    #[test]
    fn one_that_was_said_to_run_is_left_alone_for_as_long_again() {
        let mut bench = Bench::new();
        let mut stretch = plain(ANA, "08:00");
        stretch.still_running = Some(when("12:30"));
        bench.enter(stretch.into());
        check(&bench, "16:00", None);
        check(&bench, "16:30", Some("12:30"));
    }

    #[test]
    fn a_paused_clock_waits() {
        let mut bench = Bench::new();
        let mut stretch = plain(ANA, "08:00");
        stretch.pauses = vec![Span { from: when("09:00"), to: None }];
        bench.enter(stretch.into());
        check(&bench, "23:00", None);
    }

    #[test]
    fn past_midnight_it_is_asked_about_at_once() {
        let mut bench = Bench::new();
        bench.open(ANA, "23:30");
        let shop = bench.shop();
        let now = clock("23:30").plus(Seconds(3600));
        let got = asked(&shop, &clocks(&shop, now)[0], now);
        assert_eq!(got, Some(Asked::Midnight { last_act: clock("23:30") }));
    }
}
