//! Back from the publish date: on which day each thing must be done, by when the cut must go out, what is owed.
//!
//! From the publish date the leads are counted off one after the other, in calendar days, working days (Monday to
//! Friday) or the working days of whoever reviews the cut, their days off left out. What was promised by a day of its own
//! counts where it is earlier than the chain. A review is left out of the chain where nothing is owed to anybody.
//! Source: our own rule (RULES, back from the publish date). Worked example: publishing on Thursday 17 December 2026 by
//! the common list: upload Wed 16, text Tue 15, captions Mon 14, review from Wed 9, and the cut out by then.
//! Not here: when the piece is done, which is passed in; the schedule.

mod days;
mod edit;
pub mod leads;
mod owed;

pub use edit::{Edit, edit};
pub use owed::{Owed, in_a_circle};

use crate::{
    journal::{
        Id, Shop,
        kinds::{DaysOf, DueWhat},
    },
    measure::{Day, Instant},
};
use days::Counted;
use leads::{Lead, LeadOf};

/// A stop of the chain, with its day.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Link {
    /// What, and how long before what comes after it.
    pub lead: Lead,
    /// By this day.
    pub by: Day,
    /// What was promised is earlier than the chain: this due says the day.
    pub promised: Option<Id>,
    /// Its day is over.
    pub past: bool,
}

/// What does not fit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// A due counts from itself, by way of others.
    Circle {
        /// One of them.
        due: Id,
    },
    /// A lead of a due is below zero.
    NegativeLead {
        /// Which.
        due: Id,
    },
    /// A lead of the list is below zero: counted as none.
    NegativeInList {
        /// Which of the list, from 1.
        at: usize,
    },
    /// A line of the list can't be read: left out.
    UnreadInList {
        /// Which line, from 1.
        line: usize,
    },
    /// There are no working days to count off.
    NoWorkingDay,
    /// The publish date is over, and the film is not out.
    PublishPast {
        /// The date.
        day: Day,
    },
    /// The day by which the cut must go out is over.
    CutPast {
        /// The day.
        day: Day,
    },
    /// The piece is done only after the cut must go out.
    DoneAfterCut {
        /// The piece is done, as planned.
        done: Day,
        /// The cut must go out.
        by: Day,
    },
    /// The film goes out before the piece is done.
    PublishBeforeDone {
        /// The piece is done, as planned.
        done: Day,
        /// The film goes out.
        publish: Day,
    },
    /// What must be in the film is due before it goes out.
    DueBeforePublish {
        /// The due.
        due: Id,
        /// Its day.
        by: Day,
    },
}

/// All of it, for one build.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Publishing {
    /// When the film is to go out.
    pub publish: Option<Day>,
    /// When it did.
    pub published: Option<Day>,
    /// The chain, from the publish date back.
    pub links: Vec<Link>,
    /// The leads are the maker's own; else common practice.
    pub own_list: bool,
    /// The cut must go out by the end of this day.
    pub cut_by: Option<Day>,
    /// What is owed.
    pub owed: Vec<Owed>,
    /// What does not fit.
    pub troubles: Vec<Trouble>,
}

/// The way back for a build. `finish`: when its piece is done, as planned; none: nobody knows.
pub fn publishing(shop: &Shop, build: Id, today: Day, finish: Option<Instant>) -> Publishing {
    let mut troubles = Vec::new();
    let publish = shop.builds.get(&build).and_then(|it| it.publish);
    let published = shop.films.get(&build).and_then(|it| it.published);
    let owed = owed::owed(shop, build, publish, today, &mut troubles);
    let (own, unread) = leads::own(shop);
    troubles.extend(unread.into_iter().map(|line| Trouble::UnreadInList { line }));
    let own_list = own.is_some();
    let mut list = own.unwrap_or_else(leads::common);
    // A sponsor who is owed a mention and no look at the cut gets none.
    if !owed.iter().any(|it| it.what == DueWhat::Review) {
        list.retain(|lead| lead.of != LeadOf::Review);
    }
    let links = publish.map(|day| chain(shop, day, today, list, &owed, &mut troubles)).unwrap_or_default();
    let whole = !troubles.contains(&Trouble::NoWorkingDay);
    let cut_by = links.last().filter(|_| whole).map(|link| link.by);
    let all = Publishing { publish, published, links, own_list, cut_by, owed, troubles };
    if published.is_some() { all } else { checked(shop, all, today, finish) }
}

fn chain(
    shop: &Shop,
    publish: Day,
    today: Day,
    list: Vec<Lead>,
    owed: &[Owed],
    troubles: &mut Vec<Trouble>,
) -> Vec<Link> {
    let whose = reviewer(owed);
    let promised = || owed.iter().filter(|it| it.what == DueWhat::Review && it.done.is_none());
    let promised = promised().filter_map(|it| Some((it.by?, it.due))).min();
    let (mut at, mut links) = (publish, Vec::new());
    let last = list.len();
    for (lead, place) in list.into_iter().zip(1..) {
        let days = u32::try_from(lead.days).unwrap_or_else(|_below| {
            troubles.push(Trouble::NegativeInList { at: place });
            0
        });
        let Some(day) = (Counted { shop, of: lead.count, whose }).from(at, days, false) else {
            troubles.push(Trouble::NoWorkingDay);
            break;
        };
        at = day;
        let sent = lead.of == LeadOf::Review || place == last;
        let sooner = promised.filter(|(by, _)| sent && *by < at);
        if let Some((by, _)) = sooner {
            at = by;
        }
        links.push(Link { lead, by: at, promised: sooner.map(|(_, due)| due), past: at < today });
    }
    links
}

/// Whose working days a review takes: theirs who want to see the cut, else theirs to whom anything is owed.
fn reviewer(owed: &[Owed]) -> Option<Id> {
    let wants = owed.iter().filter(|it| it.what == DueWhat::Review).find_map(|it| it.outsider);
    wants.or_else(|| owed.iter().find_map(|it| it.outsider))
}

fn checked(shop: &Shop, mut all: Publishing, today: Day, finish: Option<Instant>) -> Publishing {
    let Some(publish) = all.publish else { return all };
    if publish < today {
        all.troubles.push(Trouble::PublishPast { day: publish });
    } else if let Some(day) = all.cut_by.filter(|day| *day < today) {
        all.troubles.push(Trouble::CutPast { day });
    }
    let done = finish.map(|at| shop.zone.day(at));
    if let Some(done) = done.filter(|done| *done > publish) {
        all.troubles.push(Trouble::PublishBeforeDone { done, publish });
    } else if let (Some(done), Some(by)) = (done, all.cut_by)
        && done > by
    {
        all.troubles.push(Trouble::DoneAfterCut { done, by });
    }
    for it in all.owed.iter().filter(|it| it.done.is_none()) {
        if let (DueWhat::Mention | DueWhat::Link, Some(by)) = (it.what, it.by)
            && by < publish
        {
            all.troubles.push(Trouble::DueBeforePublish { due: it.due, by });
        }
    }
    all
}

/// The publish date counts as a stop too: how many days of a sort lie before it is said beside it.
impl Link {
    /// Whether days are counted off at all.
    pub fn takes(&self) -> Option<(u32, DaysOf)> {
        let days = u32::try_from(self.lead.days).ok().filter(|days| *days > 0)?;
        Some((days, self.lead.count))
    }
}

#[cfg(test)]
mod tests;
