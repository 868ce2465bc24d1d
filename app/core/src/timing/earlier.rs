//! A build's ratios against the middle of those that were begun before it.
//!
//! Film hours per hour of making, editing and footage per finished minute, hours of the piece per item; of earlier
//! builds the middle one (of an even number, what lies between the two in the middle), and how many they were. A build
//! of which a ratio can't be said, or may still change, is not counted in it. Source: our own rule.

use super::worked::{Worked, worked};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Role, Side, State},
    },
    measure::{Day, InOrder, Instant, Quantity, Seconds, fixed},
};

/// The ratios of one build.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Ratios {
    /// Hours of the film for each of the piece.
    pub film_an_hour: Option<Quantity>,
    /// Hours of editing for each finished minute.
    pub edit_a_minute: Option<Quantity>,
    /// Minutes shot for each finished one.
    pub footage_a_minute: Option<Quantity>,
    /// Hours of the piece for each item.
    pub an_item: Option<Quantity>,
}

/// The middle of earlier builds, and how many of them say it.
pub type Middle = Option<(Quantity, usize)>;

/// A build beside those before it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Beside {
    /// Its own.
    pub own: Ratios,
    /// Film for each hour of the piece, of earlier ones.
    pub film_an_hour: Middle,
    /// Editing for each finished minute.
    pub edit_a_minute: Middle,
    /// Footage for each finished minute.
    pub footage_a_minute: Middle,
    /// Hours for each item.
    pub an_item: Middle,
}

/// Up to a moment; nothing is known of it: all none.
pub fn beside(shop: &Shop, build: Id, as_of: Instant) -> Beside {
    let Some(mine) = shop.builds.get(&build) else { return Beside::default() };
    let rows = worked(shop, as_of);
    let before = shop.builds.iter().filter(|(id, it)| **id != build && it.order < mine.order);
    let today = shop.zone.day(as_of);
    let earlier: Vec<Ratios> = before.map(|(id, _)| known(shop, &rows, *id, today)).collect();
    Beside {
        own: ratios(shop, &rows, build),
        film_an_hour: middle(&earlier, |it| it.film_an_hour),
        edit_a_minute: middle(&earlier, |it| it.edit_a_minute),
        footage_a_minute: middle(&earlier, |it| it.footage_a_minute),
        an_item: middle(&earlier, |it| it.an_item),
    }
}

/// Of an earlier build, what will not change any more: an hour logged on a batch of ten that is still under way is not a
/// tenth of an hour an item. Closed, all is known; with every item made, what an item took; with its film finished, the
/// film.
fn known(shop: &Shop, rows: &[Worked], build: Id, today: Day) -> Ratios {
    let all = ratios(shop, rows, build);
    let closed = shop.state_of(build, today) == State::Closed;
    let tried = shop
        .made
        .iter()
        .filter(|it| it.build == build)
        .map(|it| it.good.saturating_add(u32::try_from(it.spoiled.len()).unwrap_or(u32::MAX)));
    let planned = shop.builds.get(&build).map_or(0, |it| it.items);
    let is_made = tried.fold(0_u32, u32::saturating_add) >= planned.max(1);
    let is_out = shop.films.get(&build).is_some_and(|it| it.finished.is_some());
    Ratios {
        film_an_hour: all.film_an_hour.filter(|_| closed || is_out),
        an_item: all.an_item.filter(|_| closed || is_made),
        ..all
    }
}

fn middle(all: &[Ratios], of: fn(&Ratios) -> Option<Quantity>) -> Middle {
    let mut said: Vec<Quantity> = all.iter().filter_map(of).collect();
    said.order_by_key(|it| it.micros());
    let half = said.len() / 2;
    let upper = *said.get(half)?;
    let value = if said.len().is_multiple_of(2) {
        let lower = said.get(half.checked_sub(1)?)?;
        Quantity::from_micros(fixed::mul_div(lower.micros().saturating_add(upper.micros()), 1, 2)?)
    } else {
        upper
    };
    Some((value, said.len()))
}

fn ratios(shop: &Shop, rows: &[Worked], build: Id) -> Ratios {
    let (mut piece, mut film, mut edit) = (Seconds::ZERO, Seconds::ZERO, Seconds::ZERO);
    for row in rows.iter().filter(|row| row.bearer == Bearer::Build(build)) {
        match row.side {
            Side::Piece => piece = piece.plus(row.seconds),
            Side::Film => film = film.plus(row.seconds),
            Side::Both => {}
        }
        if shop.stages.get(&row.stage).is_some_and(|it| it.role == Some(Role::Edit)) {
            edit = edit.plus(row.seconds);
        }
    }
    let over = |part: i128, whole: i128| {
        (whole > 0).then(|| fixed::mul_div(part, fixed::SCALE, whole)).flatten().map(Quantity::from_micros)
    };
    let of_film = shop.films.get(&build);
    let finished = of_film.and_then(|it| it.finished).map_or(0, |it| it.micros());
    let footage = of_film.and_then(|it| it.footage);
    let items = shop.builds.get(&build).map_or(1, |it| i128::from(it.items.max(1)));
    Ratios {
        film_an_hour: over(i128::from(film.0), i128::from(piece.0)),
        edit_a_minute: (!edit.is_zero()).then(|| over(edit.in_hours().micros(), finished)).flatten(),
        footage_a_minute: footage.and_then(|it| over(it.micros(), finished)),
        an_item: (!piece.is_zero())
            .then(|| over(piece.in_hours().micros(), items.saturating_mul(fixed::SCALE)))
            .flatten(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    #[test]
    fn a_build_stands_beside_the_middle_of_those_before_it() {
        let it = fixture(
            "
            person Ana 26
            build one on 2026-02-01
            stretch Ana sand min 60 for one
            stretch Ana edit min 30 for one side film
            film one footage 60 finished 10
            made one 1
            build two items 2 on 2026-02-02
            stretch Ana sand min 240 for two
            stretch Ana edit min 60 for two side film
            film two footage 40 finished 10
            made two 2
            build batch items 10
            stretch Ana sand min 60 for batch
            stretch Ana edit min 30 for batch side film
            build mine on 2026-02-03
            stretch Ana sand min 120 for mine
            build later on 2026-02-04
            stretch Ana sand min 600 for later
            ",
        );
        let found = beside(&it.shop(), it.id("mine"), it.end());
        let said = |it: Middle| it.map(|(value, many)| (value.shown_trimmed(), many));
        assert_eq!(said(found.film_an_hour), Some(("0.375".to_owned(), 2)));
        assert_eq!(said(found.edit_a_minute), Some(("0.075".to_owned(), 2)));
        assert_eq!(said(found.footage_a_minute), Some(("5".to_owned(), 2)));
        assert_eq!(said(found.an_item), Some(("1.5".to_owned(), 2)));
        assert_eq!(found.own.an_item.map(|it| it.shown_trimmed()).as_deref(), Some("2"));
        assert_eq!(found.own.edit_a_minute, None);
        let first = beside(&it.shop(), it.id("one"), it.end());
        assert_eq!(first.an_item, None);
    }
}
