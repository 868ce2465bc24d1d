//! What a tap on the clock writes. Each act is a list of changes that are kept in one transaction.

use super::{
    at_work,
    clocks::{Clock, clocks},
};
use crate::{
    journal::{
        Body, Change, Id, Journal, On, Shop,
        kinds::{Bearer, Side, Span, Stretch},
    },
    measure::{Instant, Seconds, When},
};

/// The state that a tap meets, and the moment of the tap.
pub struct Hand<'a> {
    /// All lines.
    pub journal: &'a Journal,
    /// Their fold.
    pub shop: &'a Shop,
    /// The moment of the tap.
    pub now: Instant,
    /// Gives an id that was never used.
    pub fresh: &'a mut dyn FnMut() -> Id,
}

/// What is to be begun.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Begin {
    /// Whose clocks, and what bears each; two or more go together.
    pub who: Vec<(Id, Bearer)>,
    /// What kind of work.
    pub stage: Id,
    /// What it is for; none: as the stage says.
    pub side: Option<Side>,
}

/// One person, and what they go to.
struct Going {
    person: Id,
    stage: Id,
    bearer: Bearer,
    side: Side,
}

impl Hand<'_> {
    /// Starts a stage, or changes over to it: the same second ends one stretch and begins the other. A
    /// rolling camera rolls on.
    pub fn begin(&mut self, begin: &Begin) -> Vec<Change> {
        let of_stage = self.shop.stages.get(&begin.stage).map(|stage| stage.side);
        let side = begin.side.or(of_stage).unwrap_or(Side::Piece);
        let going = |(person, bearer): &(Id, Bearer)| Going {
            person: *person,
            stage: begin.stage,
            bearer: *bearer,
            side,
        };
        self.go(begin.who.iter().map(going).collect())
    }

    fn go(&mut self, going: Vec<Going>) -> Vec<Change> {
        let together = (going.len() > 1).then(|| (self.fresh)());
        let from = self.shop.zone.when(self.now);
        let mut changes = Vec::new();
        for Going { person, stage, bearer, side } in going {
            let clock = clocks(self.shop, self.now).into_iter().find(|clock| clock.person == person);
            changes.extend(clock.and_then(|clock| self.ended(clock.entry, self.now)));
            let rolling = clock.is_some_and(|clock| clock.rolling);
            let stretch = Stretch {
                one_off: false,
                on: On::At(from),
                person,
                stage,
                bearer,
                side: if matches!(bearer, Bearer::Lot(_)) { Side::Piece } else { side },
                from: Some(from),
                to: None,
                minutes: None,
                pauses: Vec::new(),
                rolling: rolling.then_some(Span { from, to: None }).into_iter().collect(),
                together,
                still_running: None,
                step: at_work::step_for(self.shop, bearer, stage, person),
                note: None,
            };
            changes.push(Change::write((self.fresh)(), stretch));
        }
        changes
    }

    /// Stops a clock, and those that go together with it. A paused one ends where it was paused.
    pub fn stop(&mut self, entry: Id) -> Vec<Change> {
        let now = self.now;
        self.going_with(entry).into_iter().filter_map(|entry| self.ended(entry, now)).collect()
    }

    /// Stops every clock that runs for something: it is closed, or gone.
    pub fn stop_all_for(&mut self, bearer: Bearer) -> Vec<Change> {
        let (now, all) = (self.now, clocks(self.shop, self.now));
        let mine = all.iter().filter(|clock| clock.bearer == bearer);
        mine.filter_map(|clock| self.ended(clock.entry, now)).collect()
    }

    /// Ends a stretch at a moment: "ended at", after it was asked about.
    pub fn end_at(&mut self, entry: Id, at: Instant) -> Vec<Change> {
        self.going_with(entry).into_iter().filter_map(|entry| self.ended(entry, at)).collect()
    }

    /// Pauses a clock and those that go with it.
    pub fn pause(&mut self, entry: Id) -> Vec<Change> {
        let from = self.shop.zone.when(self.now);
        self.each(entry, |stretch| {
            let open = stretch.pauses.iter().any(|pause| pause.to.is_none());
            (!open).then(|| stretch.pauses.push(Span { from, to: None }))
        })
    }

    /// Goes on after a pause.
    pub fn go_on(&mut self, entry: Id) -> Vec<Change> {
        let to = self.shop.zone.when(self.now);
        self.each(entry, |stretch| {
            stretch
                .pauses
                .iter_mut()
                .filter(|pause| pause.to.is_none())
                .for_each(|pause| pause.to = Some(to));
            Some(())
        })
    }

    /// The camera begins to roll, or is cut: as the key read at the tap, however often it is tapped.
    pub fn camera(&mut self, entry: Id, rolls: bool) -> Vec<Change> {
        let now = self.shop.zone.when(self.now);
        self.each(entry, |stretch| {
            let open = stretch.rolling.iter_mut().filter(|span| span.to.is_none()).collect::<Vec<_>>();
            if open.is_empty() != rolls {
                return None;
            }
            open.into_iter().for_each(|span| span.to = Some(now));
            if rolls {
                stretch.rolling.push(Span { from: now, to: None });
            }
            Some(())
        })
    }

    /// Asked about, and told that it still runs.
    pub fn still_running(&mut self, entry: Id) -> Vec<Change> {
        let now = self.shop.zone.when(self.now);
        self.each(entry, |stretch| {
            stretch.still_running = Some(now);
            Some(())
        })
    }

    /// What a running stretch is for.
    pub fn side(&mut self, entry: Id, side: Side) -> Vec<Change> {
        self.each(entry, |stretch| {
            stretch.side = side;
            Some(())
        })
    }

    /// Making a jig, a template, the design; or the pieces themselves again.
    pub fn one_off(&mut self, entry: Id, is: bool) -> Vec<Change> {
        self.each(entry, |stretch| {
            stretch.one_off = is;
            Some(())
        })
    }

    /// Begun that much earlier, as are those that go with it since the same second. A stretch that this one took over
    /// from ends as much earlier.
    pub fn earlier(&mut self, entry: Id, by: Seconds) -> Vec<Change> {
        let from = |entry: Id| self.stored(entry).and_then(|stretch| stretch.from);
        let Some(begun) = from(entry) else { return Vec::new() };
        let at = Instant(begun.instant.0.saturating_sub(by.0));
        let mut with = self.going_with(entry);
        with.retain(|it| from(*it).is_some_and(|it| it.instant == begun.instant));
        with.into_iter().flat_map(|entry| self.begun_at(entry, at)).collect()
    }

    /// Begun at that moment: who came later doesn't bring along the one they go with. A stretch of the same person that
    /// ended just where this one began ends there too.
    pub(super) fn begun_at(&self, entry: Id, at: Instant) -> Vec<Change> {
        let at = self.shop.zone.when(at);
        let Some(mut stretch) = self.stored(entry) else { return Vec::new() };
        let before = self
            .before(&stretch)
            .filter(|(_, before)| before.from.is_some_and(|from| from.instant < at.instant))
            .map(|(id, before)| Change::write(id, Stretch { to: Some(at), ..before }));
        stretch.on = On::At(at);
        stretch.from = Some(at);
        before.into_iter().chain([Change::write(entry, stretch)]).collect()
    }

    /// Ended that much earlier, but never before it began.
    pub fn ended_earlier(&mut self, entry: Id, by: Seconds) -> Vec<Change> {
        let Some(stretch) = self.stored(entry) else { return Vec::new() };
        let Some((from, to)) = stretch.from.zip(stretch.to) else { return Vec::new() };
        let at = Instant(to.instant.0.saturating_sub(by.0)).max(from.instant);
        let together = self.ended_with(&stretch, entry);
        together.into_iter().filter_map(|entry| self.ended(entry, at)).collect()
    }

    /// Somebody else at the running stretch: a correction, from its start on.
    pub fn hand_to(&mut self, entry: Id, person: Id) -> Vec<Change> {
        let Some(stretch) = self.stored(entry) else { return Vec::new() };
        vec![Change::write(entry, Stretch { person, together: None, ..stretch })]
    }

    /// A second person at it from the same start: one stretch each, going together.
    pub fn join(&mut self, entry: Id, person: Id) -> Vec<Change> {
        let Some(stretch) = self.stored(entry) else { return Vec::new() };
        let mark = Some((self.fresh)());
        let theirs = clocks(self.shop, self.now).into_iter().find(|clock| clock.person == person);
        let other = match theirs.and_then(|clock| Some((clock.entry, self.stored(clock.entry)?))) {
            Some((id, running)) => Change::write(id, Stretch { together: mark, ..running }),
            None => {
                let theirs = Stretch { person, together: mark, rolling: Vec::new(), ..stretch.clone() };
                Change::write((self.fresh)(), theirs)
            }
        };
        vec![Change::write(entry, Stretch { together: mark, ..stretch }), other]
    }

    /// One name was tapped: from now on each clock by itself.
    pub fn part(&mut self, entry: Id) -> Vec<Change> {
        self.each(entry, |stretch| {
            stretch.together = None;
            Some(())
        })
    }

    /// The same work, for something else from now on: a change-over. Two that go together each stay at their stage.
    pub fn rebear(&mut self, entry: Id, bearer: Bearer) -> Vec<Change> {
        let going = self.going_with(entry);
        let going = going.into_iter().filter_map(|entry| self.stored(entry));
        let to = |it: Stretch| Going { person: it.person, stage: it.stage, bearer, side: it.side };
        let going = going.map(to).collect();
        self.go(going)
    }

    fn each(&mut self, entry: Id, change: impl Fn(&mut Stretch) -> Option<()>) -> Vec<Change> {
        let mut changes = Vec::new();
        for entry in self.going_with(entry) {
            let Some(mut stretch) = self.stored(entry) else { continue };
            if change(&mut stretch).is_some() {
                changes.push(Change::write(entry, stretch));
            }
        }
        changes
    }

    /// The clock and those that carry its mark.
    fn going_with(&self, entry: Id) -> Vec<Id> {
        let clocks = clocks(self.shop, self.now);
        let mark = clocks.iter().find(|clock| clock.entry == entry).and_then(|clock| clock.together);
        let with = |clock: &&Clock| clock.entry == entry || (mark.is_some() && clock.together == mark);
        let going: Vec<Id> = clocks.iter().filter(with).map(|clock| clock.entry).collect();
        if going.is_empty() { vec![entry] } else { going }
    }

    /// Stretches that were stopped together with this one, at the same moment.
    fn ended_with(&self, stretch: &Stretch, entry: Id) -> Vec<Id> {
        let same = |it: &&crate::journal::shop::Stretch| {
            it.entry() == entry
                || (stretch.together.is_some()
                    && it.together == stretch.together
                    && self.stored(it.entry()).is_some_and(|other| other.to == stretch.to))
        };
        self.shop.stretches.iter().filter(same).map(|it| it.entry()).collect()
    }

    /// The stretch of the same person that ended in the second in which this one began.
    fn before(&self, stretch: &Stretch) -> Option<(Id, Stretch)> {
        let from = stretch.from?;
        let mine = self.shop.stretches.iter().filter(|it| it.person == stretch.person);
        mine.filter_map(|it| Some((it.entry(), self.stored(it.entry())?)))
            .find(|(_, it)| it.to.is_some_and(|to| to.instant == from.instant) && it.from != stretch.from)
    }

    fn ended(&self, entry: Id, at: Instant) -> Option<Change> {
        let stretch = self.stored(entry)?;
        let from = stretch.from?;
        let paused = stretch.pauses.iter().find(|pause| pause.to.is_none()).map(|pause| pause.from.instant);
        let at = paused.map_or(at, |paused| paused.min(at)).max(from.instant);
        Some(Change::write(entry, ended(stretch, self.shop.zone.when(at))))
    }

    pub(super) fn stored(&self, entry: Id) -> Option<Stretch> {
        let Some(Body::Stretch(stretch)) = self.journal.body(entry) else { return None };
        Some(stretch.clone())
    }
}

/// The stretch with an end: what lies after it, of pauses and of camera, goes.
pub(super) fn ended(mut stretch: Stretch, at: When) -> Stretch {
    for spans in [&mut stretch.pauses, &mut stretch.rolling] {
        spans.retain(|span| span.from.instant < at.instant);
        for span in spans.iter_mut() {
            span.to = Some(span.to.filter(|to| to.instant <= at.instant).unwrap_or(at));
        }
    }
    stretch.to = Some(at);
    stretch
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::timing::clocks::tests::{ANA, BO, Bench, FINISH, SAND, TRAYS, clock, plain, when};

    /// Does one act at a moment and folds what it wrote.
    fn act(bench: &mut Bench, now: &str, does: impl FnOnce(&mut Hand) -> Vec<Change>) {
        let (journal, shop) = (bench.journal.clone(), bench.shop());
        let mut fresh = || bench.fresh();
        let changes = does(&mut Hand { journal: &journal, shop: &shop, now: clock(now), fresh: &mut fresh });
        bench.write(&changes);
    }

    fn begin(who: &[Id], stage: Id) -> Begin {
        Begin { who: who.iter().map(|it| (*it, Bearer::Build(TRAYS))).collect(), stage, side: None }
    }

    /// Every stretch as `hh:mm-hh:mm`, in order.
    #[track_caller]
    fn check(bench: &Bench, want: &[&str]) {
        let shop = bench.shop();
        let text = |at: Instant| {
            let (_, time) = shop.zone.local(at);
            format!("{:02}:{:02}", time.hour(), time.minute())
        };
        let got: Vec<String> = shop
            .stretches
            .iter()
            .map(|it| bench.stored(it.entry()))
            .map(|it| {
                let to = it.to.map_or_else(String::new, |to| text(to.instant));
                format!("{}-{to}", text(it.from.unwrap().instant))
            })
            .collect();
        assert_eq!(got, want);
    }

    #[track_caller]
    fn running(bench: &Bench) -> Id {
        clocks(&bench.shop(), clock("23:00"))[0].entry
    }

    #[test]
    fn a_change_over_leaves_no_gap_and_no_overlap() {
        let mut bench = Bench::new();
        act(&mut bench, "08:05", |hand| hand.begin(&begin(&[ANA], SAND)));
        act(&mut bench, "10:00", |hand| hand.begin(&begin(&[ANA], FINISH)));
        check(&bench, &["08:05-10:00", "10:00-"]);
        let sand = bench.shop().stretches[0].clone();
        assert_eq!((sand.stage, sand.side), (SAND, Side::Piece));
    }

    #[test]
    fn a_start_moved_earlier_takes_the_stretch_before_along() {
        let mut bench = Bench::new();
        act(&mut bench, "08:05", |hand| hand.begin(&begin(&[ANA], SAND)));
        act(&mut bench, "10:00", |hand| hand.begin(&begin(&[ANA], FINISH)));
        let finish = running(&bench);
        act(&mut bench, "10:01", |hand| hand.earlier(finish, Seconds(900)));
        check(&bench, &["08:05-09:45", "09:45-"]);
    }

    #[test]
    fn a_start_moved_before_the_whole_stretch_before_leaves_it() {
        let mut bench = Bench::new();
        act(&mut bench, "09:50", |hand| hand.begin(&begin(&[ANA], SAND)));
        act(&mut bench, "10:00", |hand| hand.begin(&begin(&[ANA], FINISH)));
        let finish = running(&bench);
        act(&mut bench, "10:01", |hand| hand.earlier(finish, Seconds(1800)));
        check(&bench, &["09:30-", "09:50-10:00"]);
    }

    #[test]
    fn stopping_and_ending_earlier() {
        let mut bench = Bench::new();
        act(&mut bench, "08:05", |hand| hand.begin(&begin(&[ANA], SAND)));
        let sand = running(&bench);
        act(&mut bench, "10:00", |hand| hand.stop(sand));
        act(&mut bench, "10:01", |hand| hand.ended_earlier(sand, Seconds(1800)));
        check(&bench, &["08:05-09:30"]);
        act(&mut bench, "10:02", |hand| hand.ended_earlier(sand, Seconds(9000)));
        check(&bench, &["08:05-08:05"]);
    }

    #[test]
    fn a_paused_clock_ends_where_it_was_paused() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA], SAND)));
        let sand = running(&bench);
        act(&mut bench, "09:40", |hand| hand.pause(sand));
        act(&mut bench, "11:00", |hand| hand.stop(sand));
        check(&bench, &["08:00-09:40"]);
        assert!(bench.stored(sand).pauses.is_empty());
    }

    #[test]
    fn pause_and_go_on_leave_a_break() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA], SAND)));
        let sand = running(&bench);
        act(&mut bench, "09:00", |hand| hand.pause(sand));
        act(&mut bench, "09:05", |hand| hand.pause(sand));
        act(&mut bench, "09:30", |hand| hand.go_on(sand));
        assert_eq!(clocks(&bench.shop(), clock("10:00"))[0].so_far, Seconds(5400));
        assert_eq!(bench.stored(sand).pauses.len(), 1);
    }

    #[test]
    fn both_go_together_until_one_name_is_tapped() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA, BO], SAND)));
        let ana = running(&bench);
        act(&mut bench, "09:00", |hand| hand.pause(ana));
        assert!(clocks(&bench.shop(), clock("09:10")).iter().all(|clock| clock.paused.is_some()));
        act(&mut bench, "09:10", |hand| hand.go_on(ana));
        act(&mut bench, "09:20", |hand| hand.part(ana));
        act(&mut bench, "10:00", |hand| hand.stop(ana));
        check(&bench, &["08:00-10:00", "08:00-"]);
    }

    #[test]
    fn both_stop_and_end_earlier_together() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA, BO], SAND)));
        let one = running(&bench);
        act(&mut bench, "10:00", |hand| hand.stop(one));
        act(&mut bench, "10:01", |hand| hand.ended_earlier(one, Seconds(900)));
        check(&bench, &["08:00-09:45", "08:00-09:45"]);
    }

    #[test]
    fn what_is_closed_has_no_clock_left_and_another_runs_on() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA], SAND)));
        let (ana, trays) = (running(&bench), Bearer::Build(TRAYS));
        act(&mut bench, "08:00", |hand| {
            hand.begin(&Begin { who: vec![(BO, Bearer::Shop)], ..begin(&[], SAND) })
        });
        act(&mut bench, "10:00", |hand| hand.stop_all_for(trays));
        assert!(bench.stored(ana).to.is_some());
        let left: Vec<Bearer> = clocks(&bench.shop(), clock("10:30")).iter().map(|it| it.bearer).collect();
        assert_eq!(left, [Bearer::Shop]);
    }

    #[test]
    fn a_partner_joins_from_the_same_start() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA], SAND)));
        let ana = running(&bench);
        act(&mut bench, "08:30", |hand| hand.join(ana, BO));
        check(&bench, &["08:00-", "08:00-"]);
        let clocks = clocks(&bench.shop(), clock("09:00"));
        assert_eq!(clocks[0].together, clocks[1].together);
        assert!(clocks[0].together.is_some());
    }

    #[test]
    fn who_came_later_is_counted_from_then_and_the_other_from_the_start() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA], SAND)));
        let ana = running(&bench);
        act(&mut bench, "10:00", |hand| hand.join(ana, BO));
        let bo = clocks(&bench.shop(), clock("10:00")).into_iter().find(|it| it.person == BO).unwrap().entry;
        // Forgotten by both: begun together still.
        act(&mut bench, "10:01", |hand| hand.earlier(ana, Seconds(900)));
        check(&bench, &["07:45-", "07:45-"]);
        act(&mut bench, "10:02", |hand| hand.put_right(bo, Some(clock("10:00")), None));
        check(&bench, &["07:45-", "10:00-"]);
        act(&mut bench, "10:03", |hand| hand.earlier(bo, Seconds(900)));
        check(&bench, &["07:45-", "09:45-"]);
        act(&mut bench, "11:00", |hand| hand.stop(ana));
        check(&bench, &["07:45-11:00", "09:45-11:00"]);
    }

    #[test]
    fn the_wrong_name_is_put_right_from_the_start() {
        let mut bench = Bench::new();
        let entry = bench.enter(plain(ANA, "08:00").into());
        act(&mut bench, "08:30", |hand| hand.hand_to(entry, BO));
        assert_eq!(clocks(&bench.shop(), clock("09:00"))[0].person, BO);
        check(&bench, &["08:00-"]);
    }

    #[test]
    fn the_camera_rolls_on_over_a_change_over() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA], SAND)));
        let sand = running(&bench);
        act(&mut bench, "09:00", |hand| hand.camera(sand, true));
        act(&mut bench, "10:00", |hand| hand.begin(&begin(&[ANA], FINISH)));
        assert_eq!(bench.stored(sand).rolling, [Span { from: when("09:00"), to: Some(when("10:00")) }]);
        let finish = running(&bench);
        assert_eq!(bench.stored(finish).rolling, [Span { from: when("10:00"), to: None }]);
        act(&mut bench, "10:20", |hand| hand.camera(finish, false));
        assert_eq!(bench.stored(finish).rolling, [Span { from: when("10:00"), to: Some(when("10:20")) }]);
    }

    #[test]
    fn another_bearer_while_a_clock_runs_is_a_change_over() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA], SAND)));
        let sand = running(&bench);
        act(&mut bench, "09:00", |hand| hand.rebear(sand, Bearer::Shop));
        check(&bench, &["08:00-09:00", "09:00-"]);
        assert_eq!(clocks(&bench.shop(), clock("09:30"))[0].bearer, Bearer::Shop);
    }

    #[test]
    fn two_quick_taps_on_the_camera_do_once_what_the_key_read() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA], SAND)));
        let sand = running(&bench);
        act(&mut bench, "09:00", |hand| hand.camera(sand, true));
        act(&mut bench, "09:01", |hand| hand.camera(sand, true));
        assert_eq!(bench.stored(sand).rolling, [Span { from: when("09:00"), to: None }]);
        act(&mut bench, "09:10", |hand| hand.camera(sand, false));
        act(&mut bench, "09:11", |hand| hand.camera(sand, false));
        assert_eq!(bench.stored(sand).rolling, [Span { from: when("09:00"), to: Some(when("09:10")) }]);
    }

    #[test]
    fn who_goes_together_from_two_builds_stays_each_at_their_own() {
        let mut bench = Bench::new();
        let who = vec![(ANA, Bearer::Build(TRAYS)), (BO, Bearer::Shop)];
        act(&mut bench, "08:00", |hand| hand.begin(&Begin { who, stage: SAND, side: None }));
        let clocks = clocks(&bench.shop(), clock("09:00"));
        assert_eq!(clocks[0].together, clocks[1].together);
        let by = |person: Id| clocks.iter().find(|clock| clock.person == person).map(|clock| clock.bearer);
        assert_eq!((by(ANA), by(BO)), (Some(Bearer::Build(TRAYS)), Some(Bearer::Shop)));
    }

    #[test]
    fn two_at_different_stages_stay_there_when_they_work_for_something_else() {
        let mut bench = Bench::new();
        act(&mut bench, "08:00", |hand| hand.begin(&begin(&[ANA], SAND)));
        let sand = running(&bench);
        act(&mut bench, "08:10", |hand| hand.begin(&begin(&[BO], FINISH)));
        act(&mut bench, "08:20", |hand| hand.join(sand, BO));
        act(&mut bench, "09:00", |hand| hand.rebear(sand, Bearer::Shop));
        let clocks = clocks(&bench.shop(), clock("09:30"));
        let at = |person: Id| clocks.iter().find(|it| it.person == person).map(|it| (it.stage, it.bearer));
        assert_eq!(at(ANA), Some((SAND, Bearer::Shop)));
        assert_eq!(at(BO), Some((FINISH, Bearer::Shop)));
    }
}
