//! What of the shop has a date: what dries, what is owed, when a piece is due, when films and cuts go out; and the pieces
//! of a plan, with what dries between them.

use super::{DateOf, Span, Uid};
use crate::{
    journal::{
        Id, Shop,
        kinds::{Bearer, State},
    },
    measure::{Day, InOrder, Instant},
    planning::{
        Plan,
        publishing::{Owed, publishing},
    },
    timing::drying,
};

/// What has the date.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What {
    /// A glue-up or a coat is dry.
    Dry(drying::Dries),
    /// Something is owed.
    Due {
        /// By which build.
        build: Id,
        /// What.
        owed: Owed,
    },
    /// The piece of a build is due.
    Piece(Id),
    /// A film goes out.
    Publish(Id),
    /// Its cut must go out.
    Cut(Id),
    /// Planned work.
    Step {
        /// Which step.
        step: Id,
        /// As it is called.
        title: String,
    },
    /// What comes after planned work may begin.
    StepDry {
        /// Which step.
        step: Id,
        /// As it is called.
        title: String,
    },
}

/// A date without words yet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Dated {
    /// Its name.
    pub uid: Uid,
    /// What has it.
    pub what: What,
    /// When.
    pub span: Span,
}

/// A piece of planned work, as a schedule places it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Planned {
    /// Which step.
    pub step: Id,
    /// As it is called.
    pub title: String,
    /// It begins.
    pub from: Instant,
    /// It is over, or broken off.
    pub to: Instant,
}

/// The dates of a build, or of all builds that are open and of what dries. What is done or out has none any more.
pub fn of_shop(shop: &Shop, build: Option<Id>, today: Day) -> Vec<Dated> {
    let bearer = build.map(Bearer::Build);
    let dries = drying::dries(shop).into_iter().filter(|it| bearer.is_none_or(|of| it.bearer == of));
    let mut all: Vec<Dated> = dries
        .map(|it| Dated {
            uid: Uid { entry: it.entry, date: DateOf::Dry },
            span: Span::Moment(it.dry),
            what: What::Dry(it),
        })
        .collect();
    let open = |id: &Id| shop.state_of(*id, today) != State::Closed && shop.offers(*id);
    let builds = match build {
        Some(build) => vec![build],
        None => {
            let mut ids: Vec<Id> = shop.builds.keys().copied().filter(open).collect();
            ids.order();
            ids
        }
    };
    for id in builds {
        of_build(shop, id, today, &mut all);
    }
    all
}

fn of_build(shop: &Shop, build: Id, today: Day, all: &mut Vec<Dated>) {
    let look = publishing(shop, build, today, None);
    let whole = |day| Span::Days { first: day, last: day };
    let open = shop.state_of(build, today) != State::Closed;
    if let Some(day) = shop.builds.get(&build).and_then(|it| it.due).filter(|_| open) {
        let uid = Uid { entry: build, date: DateOf::Due };
        all.push(Dated { uid, what: What::Piece(build), span: whole(day) });
    }
    for owed in look.owed.into_iter().filter(|it| it.done.is_none()) {
        if let Some(by) = owed.by {
            let uid = Uid { entry: owed.due, date: DateOf::Due };
            all.push(Dated { uid, what: What::Due { build, owed }, span: whole(by) });
        }
    }
    if look.published.is_some() {
        return;
    }
    if let Some(day) = look.cut_by {
        let uid = Uid { entry: build, date: DateOf::Cut };
        all.push(Dated { uid, what: What::Cut(build), span: whole(day) });
    }
    if let Some(day) = look.publish {
        let uid = Uid { entry: build, date: DateOf::Publish };
        all.push(Dated { uid, what: What::Publish(build), span: whole(day) });
    }
}

/// The pieces of a plan, and what dries after them: of a build, or of all that are planned.
pub fn of_plan(plan: &Plan, shop: &Shop, build: Option<Id>) -> Vec<Dated> {
    let title = |step: Id| shop.steps.get(&step).map(|it| it.body.title.clone()).unwrap_or_default();
    let mut pieces: Vec<Planned> = Vec::new();
    for it in plan.steps.iter().filter(|it| build.is_none_or(|of| it.build == of)) {
        let piece = |(from, to): &(Instant, Instant)| Planned {
            step: it.step,
            title: title(it.step),
            from: *from,
            to: *to,
        };
        pieces.extend(it.pieces.iter().map(piece));
    }
    let mut all = planned(&pieces);
    let dry = plan.steps.iter().filter(|it| it.next > it.end && build.is_none_or(|of| it.build == of));
    all.extend(dry.map(|it| Dated {
        uid: Uid { entry: it.step, date: DateOf::Dry },
        what: What::StepDry { step: it.step, title: title(it.step) },
        span: Span::Moment(it.next),
    }));
    all
}

/// Pieces of planned work, numbered step by step in the order in which they are handed in.
pub fn planned(pieces: &[Planned]) -> Vec<Dated> {
    let mut all: Vec<Dated> = Vec::with_capacity(pieces.len());
    for piece in pieces {
        let before = all.iter().filter(|it| it.uid.entry == piece.step).count();
        let number = u32::try_from(before).unwrap_or(u32::MAX).saturating_add(1);
        all.push(Dated {
            uid: Uid { entry: piece.step, date: DateOf::Piece(number) },
            what: What::Step { step: piece.step, title: piece.title.clone() },
            span: Span::Moments { from: piece.from, to: piece.to },
        });
    }
    all
}
