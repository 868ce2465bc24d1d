//! A build of which two days can't move: the piece is due on one, and the cut of its film must go out on another.
//!
//! Each is held to its own: the steps of the piece, which are all that are not work on the film, to the end of the day on
//! which it is due, and those of the film to the cut. In time is what holds both. A build with one date is held to it as
//! a whole.
//! Worked example: due 12 December, cut by the 9th; over on 29 November and on 5 December: 12 and 4 whole days are left,
//! and it is the film that has less. Source: our own rule. Not here: the day of the cut (`publishing`), chances (`chance`).

use super::{
    asking::Asking,
    network::Network,
    place::{Model, Spot},
    schedule::Plan,
    trouble::Trouble,
};
use crate::{
    journal::{Id, Shop, kinds::Side},
    measure::Instant,
};

impl Asking<'_> {
    /// The end of the day on which the piece of a build is due, where another date stands over its film.
    fn piece_due(&self, build: Id) -> Option<Instant> {
        let day = self.shop.builds.get(&build)?.due.filter(|_| self.until.contains_key(&build))?;
        Some(self.shop.zone.end_of(day))
    }
}

/// Work on the film; all else is on the piece.
pub(super) fn is_film(shop: &Shop, step: Id) -> bool {
    let stage = shop.steps.get(&step).and_then(|it| shop.stages.get(&it.body.stage));
    stage.is_some_and(|it| it.side == Side::Film)
}

/// Writes the second dates into what was read.
pub(super) fn written(asking: &Asking, mut network: Network) -> Network {
    let due = asking.builds.iter().map(|it| asking.piece_due(*it).map(|it| it.0));
    network.model.piece_due = due.collect();
    network.model.of_film = network.steps.iter().map(|it| is_film(asking.shop, *it)).collect();
    network
}

/// The last step of a side.
type Last = Option<(i64, usize)>;

/// When the piece and the film of a build are over, and by which of its steps.
pub(super) fn ends(model: &Model, spots: &[Spot], build: usize) -> [Last; 2] {
    let mut both = [None, None];
    let tasks = model.tasks.iter().zip(spots).zip(&model.of_film).enumerate();
    for (at, ((_, spot), film)) in tasks.filter(|(_, ((task, _), _))| task.build == build) {
        let [piece, of_film] = &mut both;
        let side: &mut Last = if *film { of_film } else { piece };
        *side = (*side).max(Some((spot.end, at)));
    }
    both
}

/// By how much both together are late; none: there are not two dates.
pub(super) fn late(model: &Model, spots: &[Spot], build: usize) -> Option<i64> {
    let piece = (*model.piece_due.get(build)?)?;
    let dates = [Some(piece), model.due.get(build).copied().flatten()];
    let over = |(last, due): (Last, Option<i64>)| {
        last.zip(due).map_or(0, |((end, _), due)| end.saturating_sub(due).max(0))
    };
    Some(ends(model, spots, build).into_iter().zip(dates).map(over).fold(0, i64::saturating_add))
}

/// A side of a build beside its date.
#[derive(Clone, Copy, Debug)]
pub(super) struct Dated {
    /// Which; none: the whole, held to one date.
    pub side: Option<Side>,
    /// Its end by the means.
    pub finish: Instant,
    /// The step that ends it.
    pub last: Id,
    /// By when it should be.
    pub due: Instant,
}

impl Plan {
    /// By when the piece of a build should be over, where its film has a date of its own.
    pub fn piece_due(&self, build: Id) -> Option<Instant> {
        let place = self.builds.iter().position(|it| it.build == build)?;
        self.network.model.piece_due.get(place).copied().flatten().map(Instant)
    }

    /// What of a build has a date: it as a whole, or its piece and its film. Nothing, where a step found no room.
    pub(super) fn dated(&self, build: Id) -> Vec<Dated> {
        let whole = || {
            let row = self.build(build)?;
            Some(Dated { side: None, finish: row.finish?, last: row.last?, due: row.due? })
        };
        let Some(whole) = whole() else { return Vec::new() };
        let Some(piece) = self.piece_due(build) else { return vec![whole] };
        let place = self.builds.iter().position(|it| it.build == build).unwrap_or(usize::MAX);
        let dates = [(Side::Piece, piece), (Side::Film, whole.due)];
        let both = ends(&self.network.model, &self.spots, place).into_iter().zip(dates);
        let row = |(last, (side, due)): (Last, (Side, Instant))| {
            let (end, at) = last?;
            let last = *self.network.steps.get(at)?;
            Some(Dated { side: Some(side), finish: Instant(end), last, due })
        };
        both.filter_map(row).collect()
    }

    /// When a build is over, as far as its dates go: where there are two, a piece that is nearer to its day than the film
    /// to the cut counts as if it were the film that is so near.
    pub(super) fn over(&self, build: Id) -> Option<Instant> {
        let row = self.build(build)?;
        let due = row.due.filter(|_| self.piece_due(build).is_some());
        let Some(due) = due else { return row.finish };
        self.dated(build).iter().map(|it| due.plus(it.finish.since(it.due))).max()
    }
}

/// The piece lies after its day, where the film has another.
pub(super) fn missed(asking: &Asking, network: &mut Network, spots: &[Spot]) {
    for (place, build) in asking.builds.iter().enumerate() {
        let due = network.model.piece_due.get(place).copied().flatten();
        let [piece, _] = ends(&network.model, spots, place);
        let Some((due, (end, at))) = due.zip(piece) else { continue };
        let never = spots.get(at).is_none_or(|it| it.never());
        if end > due && !never {
            let (should, is) = (Instant(due), Instant(end));
            network.troubles.push(Trouble::PieceMissed { build: *build, should, is });
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests;
