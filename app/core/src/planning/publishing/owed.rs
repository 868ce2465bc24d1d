//! What a build owes: on which day each is due, and what of it is late.
//!
//! By a day, or by so many days from the publish date or from another due; with both, the earlier. One that counts from
//! another counts from the day on which that was done, where it was. Source: our own rule.

use super::{Trouble, days::Counted};
use crate::{
    journal::{Id, Shop, kinds::DueWhat, shop::Due},
    measure::Day,
};

/// Something owed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Owed {
    /// The entry.
    pub due: Id,
    /// What.
    pub what: DueWhat,
    /// In the maker's words; empty: what it is, says it.
    pub words: String,
    /// By this day; none: none was said, or none can be worked out.
    pub by: Option<Day>,
    /// Done on this day.
    pub done: Option<Day>,
    /// To whom.
    pub outsider: Option<Id>,
    /// Not done, and its day is over.
    pub late: bool,
    /// It held until its day, and that is over: nobody has to do anything.
    pub over: bool,
}

/// All that a build owes, in the order in which it was agreed.
pub(super) fn owed(
    shop: &Shop,
    build: Id,
    publish: Option<Day>,
    today: Day,
    troubles: &mut Vec<Trouble>,
) -> Vec<Owed> {
    let of = |(due, it): (Id, &Due)| {
        let by = by(shop, due, publish, &mut Vec::new(), troubles);
        let past = it.body.done.is_none() && by.is_some_and(|by| by < today);
        let held = it.body.what == DueWhat::ExclusiveUntil;
        Owed {
            due,
            what: it.body.what,
            words: it.body.words.clone().unwrap_or_default(),
            by,
            done: it.body.done,
            outsider: it.body.outsider,
            late: past && !held,
            over: past && held,
        }
    };
    shop.dues_of(build).into_iter().map(of).collect()
}

fn by(
    shop: &Shop,
    due: Id,
    publish: Option<Day>,
    way: &mut Vec<Id>,
    troubles: &mut Vec<Trouble>,
) -> Option<Day> {
    let it = &shop.dues.get(&due)?.body;
    if way.contains(&due) {
        tell(troubles, Trouble::Circle { due });
        return None;
    }
    way.push(due);
    let led = it.lead.and_then(|lead| {
        let Ok(days) = u32::try_from(lead.days) else {
            tell(troubles, Trouble::NegativeLead { due });
            return None;
        };
        let counted = Counted { shop, of: lead.of, whose: it.outsider };
        let Some(after) = it.after else { return counted.from(publish?, days, lead.later) };
        let before = shop.dues.get(&after)?.body.done;
        counted.from(before.or_else(|| by(shop, after, publish, way, troubles))?, days, true)
    });
    match (it.day, led) {
        (Some(day), Some(led)) => Some(day.min(led)),
        (day, led) => day.or(led),
    }
}

fn tell(troubles: &mut Vec<Trouble>, trouble: Trouble) {
    if !troubles.contains(&trouble) {
        troubles.push(trouble);
    }
}

/// Whether a due that counts from another would count from itself, by way of however many.
pub fn in_a_circle(shop: &Shop, due: Id, after: Id) -> bool {
    let mut at = Some(after);
    for _ in 0..=shop.dues.len() {
        let Some(id) = at else { return false };
        if id == due {
            return true;
        }
        at = shop.dues.get(&id).and_then(|it| it.body.after);
    }
    true
}
