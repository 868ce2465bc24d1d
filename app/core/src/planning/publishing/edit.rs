//! How long the edit takes: finished minutes × own hours of editing a finished minute.
//!
//! Own: hours at stages of cutting over finished minutes, of all other builds whose film went out long enough to have
//! both. Source: our own rule (RULES, the plan). Worked example: 15 h for 17 minutes and 12 h for 12 make
//! 27 h ÷ 29 = 55 min 52 s a minute; a film of ten minutes takes 9 h 18 min 37 s.

use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, Role},
    },
    measure::{Instant, Quantity, Seconds, fixed},
    timing::worked,
};

/// What can be said of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edit {
    /// Nobody has said how long the film is to become.
    NoLength,
    /// No film of one's own has gone out yet from which to tell.
    NoneBefore {
        /// How long it is to become, in minutes.
        minutes: Quantity,
    },
    /// So long.
    Takes {
        /// How long it is to become, in minutes.
        minutes: Quantity,
        /// A finished minute takes so long.
        a_minute: Seconds,
        /// From so many films.
        films: usize,
        /// In all.
        whole: Seconds,
        /// Of that, worked already.
        worked: Seconds,
        /// Still to come: a twentieth of it at the least, until it is out.
        left: Seconds,
    },
}

/// The forecast for a build.
pub fn edit(shop: &Shop, build: Id, now: Instant) -> Edit {
    let Some(minutes) = shop.builds.get(&build).and_then(|it| it.film_planned) else { return Edit::NoLength };
    let rows = worked(shop, now);
    let edits = |stage| shop.stages.get(&stage).is_some_and(|it| it.role == Some(Role::Edit));
    let at = |of: Id| {
        let mine = rows.iter().filter(|row| row.bearer == Bearer::Build(of) && edits(row.stage));
        mine.fold(Seconds::ZERO, |sum, row| sum.plus(row.seconds))
    };
    let (mut films, mut seconds, mut finished) = (0_usize, Seconds::ZERO, Quantity::default());
    for (other, film) in shop.films.iter().filter(|(other, _)| **other != build) {
        let (Some(length), spent) = (film.finished, at(*other)) else { continue };
        if !spent.is_zero() {
            films = films.saturating_add(1);
            (seconds, finished) = (seconds.plus(spent), finished.plus(length));
        }
    }
    let over = |by: i128| {
        let all = fixed::mul_div(i128::from(seconds.0), by, finished.micros())?;
        i64::try_from(all).ok().map(Seconds)
    };
    let (Some(a_minute), Some(whole)) = (over(fixed::SCALE), over(minutes.micros())) else {
        return Edit::NoneBefore { minutes };
    };
    let spent = at(build);
    let left = whole.0.saturating_sub(spent.0).max(whole.0 / 20);
    Edit::Takes { minutes, a_minute, films, whole, worked: spent, left: Seconds(left) }
}
