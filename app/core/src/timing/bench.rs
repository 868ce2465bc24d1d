//! What the bench shows: one small record, so that a phone can paint it before the journal is read.

use super::{
    at_work::planned_next,
    clocks::{Clock, clocks},
    drying::{self, Dries},
    likely::{
        UsualDraw, first_on_a_lot, last_at_work, last_beside, last_done, next_stages, offers_bearer,
        usual_draw,
    },
    shots::{self, Before, Listed},
    worked,
};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Side, Source, Span, State},
        shop::{Build, Interval, Stretch, Time},
    },
    measure::{Dec, InOrder, Instant, Seconds, Unit, When},
};
use serde::{Deserialize, Serialize};

/// Keys for the likeliest stages, beside the one for all of them.
pub const NEXT_KEYS: usize = 3;

/// Things that dry in the record: it stays small.
pub const MOST_DRYING: usize = 4;

/// Shots about to be too late in the record.
pub const MOST_CLOSING: usize = 2;

/// What another build has had dry for so long is not told any more: it may be done, or forgotten.
const TOLD_FOR: Seconds = Seconds(24 * 3600);

/// Everything that the bench shows but the moment.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Bench {
    /// What the bench works for. None: there is nothing yet to work for.
    pub bearer: Option<Bearer>,
    /// The build's title or the lot's name; the shop has none.
    pub title: Option<String>,
    /// Running or paused, earliest first.
    pub clocks: Vec<BenchClock>,
    /// The clock that the keys act on, where that isn't the last begun.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub acting: Option<Id>,
    /// Who works here, the last at work first.
    pub people: Vec<Named>,
    /// The likeliest next stages.
    pub next: Vec<Named>,
    /// How many stages are offered.
    pub stages: usize,
    /// The usual draw at the stage of the clock that the keys act on.
    pub usual: Option<Usual>,
    /// What was done last for this bearer.
    pub last: Option<Last>,
    /// What was done last on its other side: film, where the piece was worked on last.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub beside: Option<Last>,
    /// What dries, or has dried and waits; soonest dry first. At most [`MOST_DRYING`].
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub drying: Vec<BenchDrying>,
    /// A glue-up or a coat of which nobody has said yet how long it dries.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unsaid: Option<Unsaid>,
    /// The shot that is to be taken next, while a clock runs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shot: Option<BenchShot>,
    /// Shots that can be had once only and are too late after the next change of step. At most [`MOST_CLOSING`].
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub closing: Vec<BenchClosing>,
}

/// A shot in one tap.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct BenchShot {
    /// The shot.
    pub shot: Id,
    /// What is to be shot.
    pub what: String,
    /// Which take it would be.
    pub take: u32,
}

/// A shot that is about to be too late.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct BenchClosing {
    /// The shot.
    pub shot: Id,
    /// What is to be shot.
    pub what: String,
    /// The step that it must come before.
    pub step: String,
    /// It must come before that step is over, and not before it begins.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub ends: bool,
}

/// Something that dries.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct BenchDrying {
    /// The entry that says so.
    pub entry: Id,
    /// The build or lot, where it is another than the bench works for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub of: Option<String>,
    /// At which stage.
    pub stage: String,
    /// Clamps or the dust-free corner are taken until then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub held: Option<When>,
    /// The next step may begin.
    pub dry: When,
}

impl BenchDrying {
    /// The next step may begin.
    pub fn is_dry(&self, now: Instant) -> bool {
        self.dry.instant <= now
    }
}

/// A stretch after which something may dry.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Unsaid {
    /// The stretch.
    pub stretch: Id,
    /// At which stage.
    pub stage: String,
    /// When it ended.
    pub ended: When,
}

/// An entry and what it is called.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Named {
    /// The entry.
    pub id: Id,
    /// Its name.
    pub name: String,
}

/// A clock as the slate shows it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct BenchClock {
    /// The stretch's entry.
    pub entry: Id,
    /// Whose.
    pub person: Named,
    /// What kind of work.
    pub stage: Named,
    /// What bears it; none in a record of before it was kept there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bearer: Option<Bearer>,
    /// What it is for.
    pub side: Side,
    /// When it began.
    pub from: When,
    /// Breaks, the last one open while it is paused.
    pub pauses: Vec<Span>,
    /// The camera rolls.
    pub rolling: bool,
    /// The mark of clocks that go together.
    pub together: Option<Id>,
}

/// A draw in one tap.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Usual {
    /// From which lot or item.
    pub from: Source,
    /// What it is called.
    pub name: String,
    /// The maker's own word for one of it.
    pub word: Option<String>,
    /// How much.
    pub quantity: Dec,
    /// In which unit.
    pub unit: Unit,
    /// What it was for the last time; none: the piece.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<Side>,
}

/// The last thing done.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Last {
    /// The stage.
    pub stage: Named,
    /// When the last of it began or, where only hours are known, was logged for.
    pub on: crate::journal::On,
    /// Who worked how many seconds at it that day.
    pub who: Vec<(Named, i64)>,
    /// It was work on the film.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub film: bool,
}

impl Bench {
    /// The clock that the keys act on.
    pub fn acting(&self) -> Option<&BenchClock> {
        self.clocks.iter().find(|clock| Some(clock.entry) == self.acting).or(self.clocks.last())
    }

    /// That one, and those that go with it.
    pub fn at_work(&self) -> Vec<&BenchClock> {
        let Some(one) = self.acting() else { return Vec::new() };
        let with = |it: &&BenchClock| {
            it.entry == one.entry || (one.together.is_some() && it.together == one.together)
        };
        self.clocks.iter().filter(with).collect()
    }

    /// The clock of somebody who works for it: the one that the keys act on before another.
    pub fn clock_for(&self, bearer: Bearer) -> Option<&BenchClock> {
        self.acting().into_iter().chain(self.clocks.iter().rev()).find(|clock| clock.bearer == Some(bearer))
    }
}

impl BenchClock {
    /// Worked until a moment, pauses out.
    pub fn so_far(&self, now: Instant) -> Seconds {
        let interval = |span: &Span| Interval { from: span.from.instant, to: span.to.map(|to| to.instant) };
        let pauses: Vec<Interval> = self.pauses.iter().map(interval).collect();
        worked::length(Interval { from: self.from.instant, to: None }, &pauses, now)
    }

    /// Paused since.
    pub fn paused(&self) -> Option<When> {
        self.pauses.iter().find(|pause| pause.to.is_none()).map(|pause| pause.from)
    }
}

/// What the plan has next, then what usually comes; never the stage that it comes after.
fn planned_before(planned: Vec<Id>, usual: Vec<Id>) -> Vec<Id> {
    let (mut first, rest): (Vec<Id>, Vec<Id>) = usual.into_iter().partition(|it| planned.contains(it));
    first.order_by_key(|it| planned.iter().position(|planned| planned == it));
    first.extend(rest);
    first
}

/// Looks at the bench. `wish`: what was chosen to work for while no clock ran; else what was worked for last,
/// else the build begun last. `whose`: the person whose clock the keys are to act on; else the last begun.
pub fn look(shop: &Shop, now: Instant, wish: Option<Bearer>, whose: Option<Id>) -> Bench {
    let clocks = clocks(shop, now);
    let chosen = clocks.iter().find(|clock| Some(clock.person) == whose);
    let acting = chosen.or(clocks.last());
    let bearer = bearer(shop, acting, wish);
    let done = bearer.and_then(|bearer| last_done(shop, bearer));
    let stage = acting.map(|clock| clock.stage);
    let after = stage.or(done.as_ref().map(|done| done.stage));
    let shots = match bearer {
        Some(Bearer::Build(build)) => shots::listed(shop, build),
        Some(Bearer::Lot(_) | Bearer::Shop) | None => Vec::new(),
    };
    let next = match (after, bearer) {
        (None, Some(Bearer::Lot(_))) => first_on_a_lot(shop),
        (_, Some(Bearer::Build(build))) => {
            planned_before(planned_next(shop, build, after), next_stages(shop, after))
        }
        _ => next_stages(shop, after),
    };
    Bench {
        bearer,
        title: bearer.and_then(|bearer| title(shop, bearer)),
        people: last_at_work(shop).into_iter().map(|id| person(shop, id)).collect(),
        next: next.into_iter().take(NEXT_KEYS).map(|id| stage_named(shop, id)).collect(),
        stages: shop.stages.keys().filter(|id| shop.offers(**id)).count(),
        usual: stage.and_then(|stage| usual_draw(shop, stage)).and_then(|draw| usual(shop, draw)),
        beside: bearer
            .zip(done.as_ref())
            .and_then(|(bearer, done)| last_beside(shop, bearer, done))
            .and_then(|done| last(shop, &done.stretches, now)),
        last: done.and_then(|done| last(shop, &done.stretches, now)),
        drying: drying(shop, bearer, now),
        unsaid: bearer.and_then(|bearer| unsaid(shop, bearer, now)),
        shot: stage.and_then(|_| next_shot(shop, &shots)),
        closing: closing(shop, &shots),
        acting: chosen.map(|clock| clock.entry),
        clocks: clocks.iter().filter_map(|clock| bench_clock(shop, clock)).collect(),
    }
}

fn bearer(shop: &Shop, acting: Option<&Clock>, wish: Option<Bearer>) -> Option<Bearer> {
    // What was put away is worked for only while a clock says so.
    let offered = |bearer: &Bearer| offers_bearer(shop, *bearer);
    let running = acting.map(|clock| clock.bearer);
    let last = || shop.stretches.iter().rev().map(|stretch| stretch.bearer).filter(offered);
    let builds = || shop.builds.iter().filter(|(id, _)| shop.offers(**id));
    let by_age = |(_, build): &(&Id, &Build)| build.order;
    // What is closed is worked for where somebody says so, or where there is nothing else.
    let open = |bearer: &Bearer| !is_closed(shop, *bearer);
    let newest = |open: &dyn Fn(&Bearer) -> bool| {
        builds().filter(|it| open(&Bearer::Build(*it.0))).max_by_key(by_age).map(|it| Bearer::Build(*it.0))
    };
    let of_all = || last().next().or_else(|| newest(&|_| true));
    running.or(wish.filter(offered)).or_else(|| last().find(open)).or_else(|| newest(&open)).or_else(of_all)
}

fn is_closed(shop: &Shop, bearer: Bearer) -> bool {
    let Bearer::Build(build) = bearer else { return false };
    shop.states.iter().rfind(|it| it.build == build).is_some_and(|it| it.state == State::Closed)
}

/// What a bearer is called; none for the shop.
pub fn title(shop: &Shop, bearer: Bearer) -> Option<String> {
    match bearer {
        Bearer::Build(id) => shop.builds.get(&id).map(|build| build.title.clone()),
        Bearer::Lot(id) => shop.lots.get(&id).map(|lot| lot.name.clone()),
        Bearer::Shop => None,
    }
}

fn person(shop: &Shop, id: Id) -> Named {
    Named { id, name: shop.people.get(&id).map(|it| it.name.clone()).unwrap_or_default() }
}

fn stage_named(shop: &Shop, id: Id) -> Named {
    Named { id, name: shop.stages.get(&id).map(|it| it.name.clone()).unwrap_or_default() }
}

fn bench_clock(shop: &Shop, clock: &Clock) -> Option<BenchClock> {
    let stretch = shop.stretches.iter().find(|stretch| stretch.entry() == clock.entry)?;
    let span = |it: &Interval| Span { from: shop.zone.when(it.from), to: it.to.map(|to| shop.zone.when(to)) };
    Some(BenchClock {
        entry: clock.entry,
        person: person(shop, clock.person),
        stage: stage_named(shop, clock.stage),
        bearer: Some(clock.bearer),
        side: clock.side,
        from: shop.zone.when(clock.from),
        pauses: stretch.pauses.iter().map(span).collect(),
        rolling: clock.rolling,
        together: clock.together,
    })
}

fn drying(shop: &Shop, bearer: Option<Bearer>, now: Instant) -> Vec<BenchDrying> {
    let of = |it: &Dries| if Some(it.bearer) == bearer { None } else { title(shop, it.bearer) };
    let told = |it: &Dries| Some(it.bearer) == bearer || it.dry.plus(TOLD_FOR) > now;
    let all = drying::dries(shop).into_iter().filter(told).map(|it| BenchDrying {
        entry: it.entry,
        of: of(&it),
        stage: stage_named(shop, it.stage).name,
        held: it.held.map(|held| shop.zone.when(held)),
        dry: shop.zone.when(it.dry),
    });
    all.take(MOST_DRYING).collect()
}

fn unsaid(shop: &Shop, bearer: Bearer, now: Instant) -> Option<Unsaid> {
    let stretch = drying::unsaid(shop, bearer, now)?;
    let Time::Span(Interval { to: Some(ended), .. }) = stretch.time else { return None };
    let stage = stage_named(shop, stretch.stage).name;
    Some(Unsaid { stretch: stretch.entry(), stage, ended: shop.zone.when(ended) })
}

fn next_shot(shop: &Shop, shots: &[Listed]) -> Option<BenchShot> {
    let it = shots::next(shots)?;
    Some(BenchShot { shot: it.shot, what: what(shop, it.shot), take: it.next_take() })
}

fn closing(shop: &Shop, shots: &[Listed]) -> Vec<BenchClosing> {
    let step = |id: Id| shop.steps.get(&id).map(|it| it.body.title.clone()).unwrap_or_default();
    let one = |it: &Listed| {
        let (step, ends) = match it.before? {
            Before::Begins(id) => (step(id), false),
            Before::Ends(id) => (step(id), true),
        };
        Some(BenchClosing { shot: it.shot, what: what(shop, it.shot), step, ends })
    };
    shots.iter().filter(|it| it.closing).filter_map(one).take(MOST_CLOSING).collect()
}

fn what(shop: &Shop, shot: Id) -> String {
    shop.shots.get(&shot).map(|it| it.body.what.clone()).unwrap_or_default()
}

fn usual(shop: &Shop, draw: UsualDraw) -> Option<Usual> {
    let (name, word) = match draw.from {
        Source::Item(id) => shop.items.get(&id).map(|item| (item.name.clone(), item.word.clone()))?,
        Source::Lot(id) => shop.lots.get(&id).map(|lot| (lot.name.clone(), None))?,
    };
    let side = (draw.side != Side::Piece).then_some(draw.side);
    Some(Usual { from: draw.from, name, word, quantity: draw.quantity, unit: draw.unit, side })
}

fn last(shop: &Shop, stretches: &[usize], now: Instant) -> Option<Last> {
    let of: Vec<&Stretch> = stretches.iter().filter_map(|at| shop.stretches.get(*at)).collect();
    let latest = of.last()?;
    let rows = worked::worked_at(shop, now, stretches);
    let mut who: Vec<(Named, i64)> = Vec::new();
    for stretch in &of {
        let seconds = rows.iter().find(|row| row.entry == stretch.entry()).map_or(0, |row| row.seconds.0);
        match who.iter_mut().find(|(named, _)| named.id == stretch.person) {
            Some((_, sum)) => *sum = sum.saturating_add(seconds),
            None => who.push((person(shop, stretch.person), seconds)),
        }
    }
    let on = match latest.from() {
        Some(from) => crate::journal::On::At(shop.zone.when(from)),
        None => crate::journal::On::Day(latest.order.day),
    };
    let film = latest.side == Side::Film;
    Some(Last { stage: stage_named(shop, latest.stage), on, who, film })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::timing::clocks::tests::{ANA, BO, Bench as Shed, FINISH, TRAYS, clock};

    #[test]
    fn the_bench_comes_back_from_its_record() {
        let mut shed = Shed::new();
        shed.log(BO, "07:00", "08:00", &[]);
        shed.open(ANA, "08:05");
        let bench = look(&shed.shop(), clock("10:00"), None, None);
        let text = serde_json::to_string(&bench).unwrap();
        assert_eq!(serde_json::from_str::<Bench>(&text).unwrap(), bench);
        assert_eq!(bench.clocks[0].so_far(clock("10:00")), Seconds(6900));
        assert_eq!(bench.title.as_deref(), Some("Trays"));
        assert_eq!(bench.people[0].name, "Ana");
    }

    #[test]
    fn what_dries_is_in_the_record_and_that_stays_small() {
        let mut shed = Shed::new();
        let glue = crate::journal::stages::standing_id(7);
        for hour in 6..14 {
            let (from, to) = (format!("{hour:02}:00"), format!("{hour:02}:30"));
            let stretch = crate::journal::kinds::Stretch {
                stage: glue,
                to: Some(crate::timing::clocks::tests::when(&to)),
                ..crate::timing::clocks::tests::plain(BO, &from)
            };
            let stretch = shed.enter(stretch.into());
            let unsaid = look(&shed.shop(), clock(&to), None, None).unsaid;
            assert_eq!(unsaid.map(|it| it.stretch), Some(stretch));
            let on = crate::journal::On::At(crate::timing::clocks::tests::when(&to));
            let drying =
                crate::journal::kinds::Drying { on, stretch, item: None, held: Some(30), next: 24 * 60 };
            shed.enter(drying.into());
        }
        let bench = look(&shed.shop(), clock("14:00"), None, None);
        assert_eq!((bench.drying.len(), bench.unsaid.clone()), (MOST_DRYING, None));
        assert!(!bench.drying[0].is_dry(clock("23:59")));
        let text = serde_json::to_string(&bench).unwrap();
        assert!(text.len() < 2_000, "{}", text.len());
        assert_eq!(serde_json::from_str::<Bench>(&text).unwrap(), bench);
        // For another build the title stands with it.
        let other = look(&shed.shop(), clock("14:00"), Some(Bearer::Shop), None);
        assert_eq!(other.drying[0].of.as_deref(), Some("Trays"));
    }

    #[test]
    fn what_was_chosen_is_worked_for_until_a_clock_says_otherwise() {
        let mut shed = Shed::new();
        let wish = Some(Bearer::Shop);
        assert_eq!(look(&shed.shop(), clock("10:00"), wish, None).bearer, wish);
        assert_eq!(look(&shed.shop(), clock("10:00"), None, None).bearer, Some(Bearer::Build(TRAYS)));
        shed.open(ANA, "08:05");
        assert_eq!(look(&shed.shop(), clock("10:00"), wish, None).bearer, Some(Bearer::Build(TRAYS)));
    }

    #[test]
    fn a_build_that_was_put_away_is_worked_for_only_by_a_clock_that_runs() {
        let mut shed = Shed::new();
        shed.log(ANA, "07:00", "08:00", &[]);
        let on = crate::journal::On::At(crate::timing::clocks::tests::when("08:30"));
        shed.enter(crate::journal::kinds::Retired { on, what: TRAYS, back: false }.into());
        assert_eq!(look(&shed.shop(), clock("10:00"), Some(Bearer::Build(TRAYS)), None).bearer, None);
        shed.open(ANA, "08:45");
        assert_eq!(look(&shed.shop(), clock("10:00"), None, None).bearer, Some(Bearer::Build(TRAYS)));
    }

    #[test]
    fn a_closed_build_is_worked_for_where_somebody_says_so_or_there_is_no_other() {
        let mut shed = Shed::new();
        shed.log(ANA, "07:00", "08:00", &[]);
        let on = crate::journal::On::At(crate::timing::clocks::tests::when("08:30"));
        let state =
            crate::journal::kinds::BuildState { on, build: TRAYS, state: State::Closed, frozen: Vec::new() };
        shed.enter(state.into());
        let trays = Some(Bearer::Build(TRAYS));
        let bearer = |shed: &Shed, wish| look(&shed.shop(), clock("10:00"), wish, None).bearer;
        assert_eq!(bearer(&shed, None), trays);
        let other = shed.enter(crate::journal::kinds::Build::named(on, "Hall bench".into()).into());
        assert_eq!(bearer(&shed, None), Some(Bearer::Build(other)));
        assert_eq!(bearer(&shed, trays), trays);
    }

    #[test]
    fn an_empty_shop_has_nothing_to_work_for() {
        let bench = look(&Shop::default(), clock("10:00"), None, None);
        assert_eq!((bench.bearer, bench.clocks.len()), (None, 0));
    }

    #[test]
    fn the_last_thing_done_sums_the_day_by_person() {
        let mut shed = Shed::new();
        shed.log(ANA, "09:00", "10:00", &[]);
        shed.log(ANA, "11:00", "11:30", &[]);
        shed.log(BO, "09:00", "09:45", &[]);
        let last = look(&shed.shop(), clock("20:00"), None, None).last.unwrap();
        let who: Vec<(String, i64)> =
            last.who.into_iter().map(|(named, seconds)| (named.name, seconds / 60)).collect();
        assert_eq!(who, [("Ana".to_owned(), 90), ("Bo".to_owned(), 45)]);
    }

    #[test]
    fn the_keys_are_of_the_person_who_was_named_and_of_their_work() {
        let mut shed = Shed::new();
        shed.open(ANA, "08:05");
        let plain = crate::timing::clocks::tests::plain(BO, "09:00");
        shed.enter(crate::journal::kinds::Stretch { bearer: Bearer::Shop, stage: FINISH, ..plain }.into());
        let shop = shed.shop();
        let at = |whose| look(&shop, clock("10:00"), None, whose);
        let of = |bench: &Bench| (bench.bearer, bench.acting().map(|clock| clock.person.name.clone()));
        assert_eq!(of(&at(None)), (Some(Bearer::Shop), Some("Bo".to_owned())));
        assert_eq!(of(&at(Some(ANA))), (Some(Bearer::Build(TRAYS)), Some("Ana".to_owned())));
        assert_eq!(of(&at(Some(BO))), of(&at(None)));
        assert_eq!(at(Some(ANA)).next, look(&shop, clock("08:30"), None, Some(ANA)).next);
        // A draw takes the stage of somebody who works for what bears it, and of nobody else.
        let whose = |bench: &Bench, bearer| bench.clock_for(bearer).map(|clock| clock.person.id);
        for bench in [at(None), at(Some(ANA))] {
            assert_eq!(whose(&bench, Bearer::Build(TRAYS)), Some(ANA));
            assert_eq!(whose(&bench, Bearer::Shop), Some(BO));
            assert_eq!(whose(&bench, Bearer::Lot(TRAYS)), None);
        }
    }
}
