//! How long a glue-up or a coat dries: offered when its clock stops, typed on a sheet, shown on the bench.

mod now;
mod offer;
mod sheet;

pub use now::{DryingNow, drying_facts, unsaid_row};
pub use offer::{OfferDrawn, OfferKeys, offered};
pub use sheet::DryingSheet;

use crate::dom::prelude::*;
use crate::store::device::{self, Small};
use crate::{
    shell::{
        Desk,
        desk::{After, Mark, Marked, View},
    },
    words::{drying as words, journal},
};
use benchslate_core::{
    journal::Id,
    measure::{Instant, Seconds},
    timing::drying,
};

/// The stretch of which was said last that nothing dries after it; remembered by this device. As context.
#[derive(Clone, Copy)]
pub struct Skipped(RwSignal<Option<Id>>);

impl Skipped {
    /// As it was left.
    pub fn recalled() -> Skipped {
        Skipped(RwSignal::new(device::recall(Small::NothingDries).and_then(|text| Id::parse(&text))))
    }

    /// Whether that was said of this stretch.
    pub fn is(self, stretch: Id) -> bool {
        self.0.get() == Some(stretch)
    }

    /// Says it.
    pub fn say(self, stretch: Id) {
        device::remember(Small::NothingDries, &stretch.to_string());
        self.0.set(Some(stretch));
    }
}

/// A moment: its time, with its weekday in the week around, else with its day.
pub fn near(view: &View, at: Instant, now: Instant) -> String {
    let zone = &view.shop.zone;
    let time = view.tongue.time(at);
    match zone.day(at).days_since(zone.day(now)) {
        0 => time,
        -6..=6 => words::on_at(&view.tongue.weekday_of(at), &time),
        _ => journal::comma(&view.tongue.day_of(at), &time),
    }
}

/// Keeps it; `then` runs once it is kept.
fn keep(desk: Desk, stretch: Id, held: Option<Seconds>, next: Seconds, then: impl Fn() + 'static) {
    desk.act_then(
        move |hand| hand.dries(stretch, held, next),
        move |after| mark(after, stretch),
        move |done| {
            if done.is_ok() {
                then();
            }
        },
    );
}

fn mark(after: &After, stretch: Id) -> Marked {
    let view = after.view();
    let dries = drying::of(after.shop, stretch);
    let stage = dries.map(|it| crate::screens::journal::facts::stage(&view, it.stage)).unwrap_or_default();
    let when = dries.map(|it| near(&view, it.dry, after.now)).unwrap_or_default();
    // What was stopped stays drawn, and can still be ended earlier: then it dries earlier too.
    Marked { mark: Mark { kind: stage, what: words::mark(&when), second: None }, stopped: Some(stretch) }
}
