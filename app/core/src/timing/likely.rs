//! What probably comes next: stages, draws, and where a build was left.

use crate::measure::InOrder;
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Role, Side, Source},
        shop::{Draw, Interval, Stretch, Time},
    },
    measure::{Day, Dec, Instant, Map, Unit},
};

/// Draws at a stage are looked at over this many of its latest stretches.
pub const USUAL_OVER: usize = 10;

/// All stages but this one, likeliest first: those that followed it in own builds, most often first, then
/// the latest to do so; the rest as in the list, going on from this stage and round to its begin.
pub fn next_stages(shop: &Shop, after: Option<Id>) -> Vec<Id> {
    let mut listed: Vec<(u8, &str, Id)> =
        shop.stages.iter().map(|(id, stage)| (stage.place, stage.name.as_str(), *id)).collect();
    listed.order();
    let mut list: Vec<Id> = listed.into_iter().map(|(_, _, id)| id).collect();
    // Put away ones keep their place until the list has been turned to the one that was done.
    let offered = |mut list: Vec<Id>| {
        list.retain(|id| shop.offers(*id));
        list
    };
    if let Some(at) = after.and_then(|after| list.iter().position(|id| *id == after)) {
        list.rotate_left(at.saturating_add(1));
        list.pop();
    }
    let Some(after) = after else { return offered(list) };
    let followed = followers(shop, after);
    list.order_by_key(|id| std::cmp::Reverse(followed.get(id).copied()));
    offered(list)
}

/// How often each stage followed this one in a build, and the last place at which it did.
fn followers(shop: &Shop, after: Id) -> Map<Id, (usize, usize)> {
    let mut last: Map<Id, Id> = Map::new();
    let mut found: Map<Id, (usize, usize)> = Map::new();
    for (place, stretch) in shop.stretches.iter().enumerate() {
        let Bearer::Build(build) = stretch.bearer else { continue };
        let before = last.insert(build, stretch.stage);
        if before == Some(after) && stretch.stage != after {
            let seen = found.entry(stretch.stage).or_default();
            *seen = (seen.0.saturating_add(1), place);
        }
    }
    found
}

/// A draw that is offered in one tap.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UsualDraw {
    /// From which lot or item.
    pub from: Source,
    /// How much, as it was typed.
    pub quantity: Dec,
    /// In which unit.
    pub unit: Unit,
    /// What it was for the last time.
    pub side: Side,
}

/// The item and quantity drawn most often in the last [`USUAL_OVER`] stretches of this stage, the latest on
/// a tie. None drawn: no key.
pub fn usual_draw(shop: &Shop, stage: Id) -> Option<UsualDraw> {
    let of_stage = shop.stretches.iter().rev().filter(|stretch| stretch.stage == stage);
    let since = of_stage.take(USUAL_OVER).last()?.order.day;
    let recent: Vec<&Draw> = shop
        .draws
        .iter()
        .filter(|draw| draw.stage == Some(stage) && draw.returns.is_none() && draw.order.day >= since)
        .filter(|draw| offers_stock(shop, draw.from))
        .collect();
    let alike = |one: &Draw, other: &Draw| {
        one.from == other.from && one.quantity == other.quantity && one.typed.1 == other.typed.1
    };
    let often = |draw: &Draw| recent.iter().filter(|other| alike(draw, other)).count();
    let best = recent.iter().enumerate().max_by_key(|(place, draw)| (often(draw), *place))?.1;
    Some(UsualDraw { from: best.from, quantity: best.typed.0, unit: best.typed.1, side: best.side })
}

/// Whether stock is offered: neither the lot nor the item has been put away.
pub fn offers_stock(shop: &Shop, from: Source) -> bool {
    match from {
        Source::Item(id) => shop.offers(id),
        Source::Lot(id) => {
            let item = shop.lots.get(&id).and_then(|lot| lot.item);
            shop.offers(id) && item.is_none_or(|item| shop.offers(item))
        }
    }
}

/// Whether something to work for is offered.
pub fn offers_bearer(shop: &Shop, bearer: Bearer) -> bool {
    match bearer {
        Bearer::Build(id) => shop.builds.contains_key(&id) && shop.offers(id),
        Bearer::Lot(id) => shop.lots.contains_key(&id) && offers_stock(shop, Source::Lot(id)),
        Bearer::Shop => true,
    }
}

/// What a draw is probably for. While a clock runs: what the same thing was for when it was last drawn at that
/// stage, else what the clock is for. While none runs: what the thing was last drawn for, else the piece.
pub fn draw_side(shop: &Shop, from: Source, clock: Option<(Id, Side)>) -> Side {
    let thing = |from: Source| match from {
        Source::Lot(lot) => shop.lots.get(&lot).and_then(|it| it.item).map_or(from, Source::Item),
        Source::Item(_) => from,
    };
    let of = thing(from);
    let last = shop.draws.iter().rev().find(|draw| {
        let here = clock.is_none_or(|(stage, _)| draw.stage == Some(stage));
        draw.returns.is_none() && here && thing(draw.from) == of
    });
    last.map(|draw| draw.side).or(clock.map(|(_, side)| side)).unwrap_or(Side::Piece)
}

/// The last thing done on a build: its latest day, the latest stage of that day, and who was at it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LastDone {
    /// The stage.
    pub stage: Id,
    /// Its stretches on that day, in order, as places in `shop.stretches`.
    pub stretches: Vec<usize>,
}

/// None: nothing was done on it yet.
pub fn last_done(shop: &Shop, bearer: Bearer) -> Option<LastDone> {
    last_where(shop, &|stretch| stretch.bearer == bearer)
}

/// The last thing done on its other side: the film where the piece was worked on last, else the piece.
pub fn last_beside(shop: &Shop, bearer: Bearer, done: &LastDone) -> Option<LastDone> {
    let film = |stretch: &Stretch| stretch.side == Side::Film;
    let was_film = done.stretches.last().and_then(|at| shop.stretches.get(*at)).is_some_and(film);
    last_where(shop, &|stretch| stretch.bearer == bearer && film(stretch) != was_film)
}

fn last_where(shop: &Shop, counts: &dyn Fn(&Stretch) -> bool) -> Option<LastDone> {
    let last = shop.stretches.iter().rfind(|stretch| counts(stretch))?;
    let same_day = shop.stretches.iter().enumerate().filter(|(_, stretch)| {
        counts(stretch) && stretch.stage == last.stage && stretch.order.day == last.order.day
    });
    Some(LastDone { stage: last.stage, stretches: same_day.map(|(place, _)| place).collect() })
}

/// What comes first on a lot that nothing was done on yet: it is taken apart.
pub fn first_on_a_lot(shop: &Shop) -> Vec<Id> {
    let mut list = next_stages(shop, None);
    list.order_by_key(|id| shop.stages.get(id).and_then(|stage| stage.role) != Some(Role::Reclaim));
    list
}

/// Who was last at work, latest first: the bench offers the first two. Who left last goes before who began last; of
/// two who left together, or were never there, the one who is longer with the shop.
pub fn last_at_work(shop: &Shop) -> Vec<Id> {
    let mut left: Map<Id, Left> = Map::new();
    for stretch in &shop.stretches {
        let (going, moment) = match stretch.time {
            Time::Span(Interval { to: None, from }) => (true, Some(from)),
            Time::Span(Interval { to, .. }) => (false, to),
            Time::Amount(_) => (false, stretch.order.time),
        };
        let now = Left { going, day: stretch.order.day, moment };
        let latest = left.entry(stretch.person).or_insert(now);
        *latest = now.max(*latest);
    }
    let still_there = |id: &Id| left.get(id).is_some_and(|left| left.going);
    let offered = |id: &Id| shop.offers(*id) || still_there(id);
    let mut people: Vec<Id> = shop.people.keys().copied().filter(offered).collect();
    // Somebody holds the phone.
    if people.is_empty() {
        people = shop.people.keys().copied().collect();
    }
    people.order_by_key(|id| std::cmp::Reverse(left.get(id).copied()));
    people
}

/// When somebody was last there; still there is later than any other time.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Left {
    going: bool,
    day: Day,
    moment: Option<Instant>,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        journal::{
            On,
            kinds::{self, Stretch, Use},
            stages::standing_id,
        },
        timing::clocks::tests::{ANA, BO, Bench, SAND, TRAYS, plain, when},
    };

    fn done(bench: &mut Bench, stages: &[(u8, &str, &str)]) {
        for (stage, from, to) in stages {
            let stretch = Stretch { stage: standing_id(*stage), to: Some(when(to)), ..plain(ANA, from) };
            bench.enter(stretch.into());
        }
    }

    #[track_caller]
    fn check(bench: &Bench, after: u8, want: &[u8]) {
        let got: Vec<u8> =
            next_stages(&bench.shop(), Some(standing_id(after))).iter().map(|id| id.bytes()[15]).collect();
        assert_eq!(&got[..want.len()], want);
        assert_eq!(got.len(), 20);
    }

    #[test]
    fn without_history_the_list_goes_on_from_the_stage() {
        check(&Bench::new(), 10, &[11, 12, 13]);
        check(&Bench::new(), 21, &[1, 2, 3]);
    }

    #[test]
    fn what_followed_most_often_comes_first_then_the_latest() {
        let mut bench = Bench::new();
        done(
            &mut bench,
            &[
                (10, "08:00", "08:10"),
                (11, "08:10", "08:20"),
                (10, "08:20", "08:30"),
                (8, "08:30", "08:40"),
                (10, "08:40", "08:50"),
                (13, "08:50", "09:00"),
                (10, "09:00", "09:10"),
                (8, "09:10", "09:20"),
            ],
        );
        check(&bench, 10, &[8, 13, 11, 12]);
    }

    fn discs(bench: &mut Bench) -> Id {
        let item = kinds::Item::named(On::At(when("08:30")), "disc", Use::Consumable, Unit::Each);
        bench.enter(item.into())
    }

    fn drawn(of: Id, quantity: &str, at: &str, stage: Option<Id>) -> kinds::Draw {
        kinds::Draw {
            on: On::At(when(at)),
            from: Source::Item(of),
            quantity: Dec(quantity.parse().unwrap()),
            unit: Unit::Each,
            bearer: Bearer::Build(TRAYS),
            side: None,
            stage,
            returns: None,
            note: None,
        }
    }

    #[test]
    fn the_usual_draw_is_the_one_made_most_often_at_the_stage() {
        let mut bench = Bench::new();
        done(&mut bench, &[(10, "08:00", "09:00")]);
        assert_eq!(usual_draw(&bench.shop(), SAND), None);
        let disc = discs(&mut bench);
        let mut draw = |quantity: &str, at: &str, side, stage| {
            bench.enter(kinds::Draw { side, ..drawn(disc, quantity, at, Some(stage)) }.into());
        };
        draw("2", "08:10", None, SAND);
        draw("4", "08:20", None, SAND);
        draw("4.0", "08:30", None, SAND);
        draw("2", "08:40", Some(Side::Film), SAND);
        draw("6", "08:50", None, standing_id(11));
        let usual = usual_draw(&bench.shop(), SAND).unwrap();
        assert_eq!((usual.quantity.0.to_string(), usual.from), ("2".into(), Source::Item(disc)));
        // For what it was the last time that so much of it was drawn here.
        assert_eq!(usual.side, Side::Film);
    }

    #[test]
    fn a_draw_is_for_what_the_clock_is_for_until_the_thing_was_for_something_else_there() {
        let mut bench = Bench::new();
        let disc = discs(&mut bench);
        let (of, shoot) = (Source::Item(disc), standing_id(17));
        let side = |bench: &Bench, clock| draw_side(&bench.shop(), of, clock);
        assert_eq!(side(&bench, None), Side::Piece);
        assert_eq!(side(&bench, Some((SAND, Side::Piece))), Side::Piece);
        assert_eq!(side(&bench, Some((shoot, Side::Film))), Side::Film);
        bench.enter(drawn(disc, "1", "08:00", Some(shoot)).into());
        assert_eq!(side(&bench, Some((shoot, Side::Film))), Side::Piece);
        let both = kinds::Draw { side: Some(Side::Both), ..drawn(disc, "1", "09:00", None) };
        bench.enter(both.into());
        assert_eq!(side(&bench, None), Side::Both);
        assert_eq!(side(&bench, Some((SAND, Side::Piece))), Side::Piece);
    }

    #[test]
    fn what_came_back_says_nothing_of_the_next_draw() {
        let mut bench = Bench::new();
        let disc = discs(&mut bench);
        let draw = bench.enter(drawn(disc, "4", "08:00", None).into());
        let back =
            kinds::Draw { side: Some(Side::Film), returns: Some(draw), ..drawn(disc, "1", "09:00", None) };
        bench.enter(back.into());
        assert_eq!(draw_side(&bench.shop(), Source::Item(disc), None), Side::Piece);
    }

    #[test]
    fn the_last_thing_done_names_all_who_were_at_it() {
        let mut bench = Bench::new();
        assert_eq!(last_done(&bench.shop(), Bearer::Build(TRAYS)), None);
        bench.log(ANA, "09:00", "12:00", &[]);
        bench.log(BO, "10:30", "12:00", &[]);
        let done = last_done(&bench.shop(), Bearer::Build(TRAYS)).unwrap();
        assert_eq!((done.stage, done.stretches), (SAND, vec![0, 1]));
    }

    #[test]
    fn beside_the_piece_the_film_is_looked_at_and_beside_the_film_the_piece() {
        let mut bench = Bench::new();
        bench.log(ANA, "09:00", "10:00", &[]);
        let trays = Bearer::Build(TRAYS);
        let done = |bench: &Bench| last_done(&bench.shop(), trays).unwrap();
        assert_eq!(last_beside(&bench.shop(), trays, &done(&bench)), None);
        let film = kinds::Stretch {
            stage: standing_id(19),
            side: Side::Film,
            to: Some(crate::timing::clocks::tests::when("11:00")),
            ..plain(BO, "10:30")
        };
        let film = bench.enter(film.into());
        let beside = |bench: &Bench| last_beside(&bench.shop(), trays, &done(bench)).map(|it| it.stage);
        assert_eq!((done(&bench).stage, beside(&bench)), (standing_id(19), Some(SAND)));
        bench.log(ANA, "12:00", "13:00", &[]);
        assert_eq!((done(&bench).stage, beside(&bench)), (SAND, Some(standing_id(19))));
        bench.write(&[crate::journal::Change::strike(film)]);
        assert_eq!(beside(&bench), None);
    }

    #[test]
    fn who_left_last_comes_first_and_of_two_that_left_together_the_first_of_the_shop() {
        let mut bench = Bench::new();
        bench.log(ANA, "09:00", "12:00", &[]);
        bench.log(BO, "10:30", "12:00", &[]);
        assert_eq!(last_at_work(&bench.shop()), [ANA, BO]);
        bench.log(ANA, "12:30", "14:00", &[]);
        bench.log(BO, "12:30", "15:00", &[]);
        assert_eq!(last_at_work(&bench.shop()), [BO, ANA]);
        bench.enter(plain(ANA, "14:30").into());
        assert_eq!(last_at_work(&bench.shop()), [ANA, BO], "still there");
    }

    #[test]
    fn what_was_put_away_is_not_offered_until_it_is_taken_back() {
        let mut bench = Bench::new();
        bench.log(BO, "07:00", "08:00", &[]);
        done(&mut bench, &[(10, "08:00", "09:00")]);
        let disc = discs(&mut bench);
        bench.enter(drawn(disc, "4", "08:30", Some(SAND)).into());
        let put = |bench: &mut Bench, what, at, back| {
            bench.enter(kinds::Retired { on: On::At(when(at)), what, back }.into())
        };
        for what in [standing_id(11), disc, BO, TRAYS] {
            put(&mut bench, what, "10:00", false);
        }
        let shop = bench.shop();
        assert_eq!(next_stages(&shop, Some(SAND)).first(), Some(&standing_id(12)));
        assert!(!next_stages(&shop, None).contains(&standing_id(11)));
        assert_eq!(usual_draw(&shop, SAND), None);
        assert_eq!(last_at_work(&shop), [ANA]);
        assert!(!offers_bearer(&shop, Bearer::Build(TRAYS)));
        // All that names them stays whole.
        assert_eq!((shop.people.len(), shop.builds.len(), shop.odd.len()), (2, 1, 0));
        for what in [standing_id(11), disc, BO, TRAYS] {
            put(&mut bench, what, "11:00", true);
        }
        let shop = bench.shop();
        assert_eq!(next_stages(&shop, Some(SAND)).first(), Some(&standing_id(11)));
        assert!(usual_draw(&shop, SAND).is_some() && offers_bearer(&shop, Bearer::Build(TRAYS)));
        assert_eq!(last_at_work(&shop), [ANA, BO]);
    }

    #[test]
    fn who_is_still_there_is_offered_although_put_away() {
        let mut bench = Bench::new();
        bench.open(BO, "08:05");
        bench.enter(kinds::Retired { on: On::At(when("09:00")), what: BO, back: false }.into());
        assert_eq!(last_at_work(&bench.shop()), [BO, ANA]);
    }

    #[test]
    fn a_lot_is_taken_apart_first() {
        let shop = Bench::new().shop();
        let first = first_on_a_lot(&shop);
        assert_eq!(shop.stages.get(&first[0]).and_then(|stage| stage.role), Some(Role::Reclaim));
        assert_eq!(first.len(), shop.stages.len());
    }
}
