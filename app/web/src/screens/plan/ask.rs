//! What the plan of a build is asked with, kept until the journal changes.

use crate::shell::desk::View;
use benchslate_core::{
    journal::{Id, Shop},
    measure::Instant,
    planning::{Asked, Asking, Plan, Spread},
};

/// All runs are drawn with this: the same plan says the same twice.
pub const SEED: u64 = 20;

/// Everything that planning was asked with, and the plan.
#[derive(Clone, Debug)]
pub struct Made {
    /// Which build's sheet it is.
    pub build: Id,
    /// What was asked.
    asked: Asked,
    /// As it stands.
    pub plan: Plan,
    /// How far whole builds run over.
    pub spread: Spread,
}

impl Made {
    /// The plan of all open builds, for the sheet of one of them.
    pub fn of(view: &View, build: Id, now: Instant) -> Made {
        let asked = Asked::of(view.shop, now, Some(build));
        let spread = Spread::of(view.shop, &asked.worked, view.shop.zone.day(now));
        let plan = Plan::of(&asked.asking(view.shop));
        Made { build, asked, plan, spread }
    }

    /// To ask the plan further.
    pub fn asking<'a>(&'a self, shop: &'a Shop) -> Asking<'a> {
        self.asked.asking(shop)
    }

    /// By when the build should be over.
    pub fn due(&self) -> Option<Instant> {
        self.plan.build(self.build)?.due
    }

    /// That is when the cut of its film must go out.
    pub fn is_cut(&self) -> bool {
        self.asked.until.contains_key(&self.build)
    }
}
