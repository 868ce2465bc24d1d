//! What the plan of a build is asked with, kept until the journal changes.

use crate::shell::desk::View;
use benchslate_core::{
    journal::{Id, Shop},
    measure::{Instant, Map},
    planning::{Asking, Filming, Plan, Spread, open_builds},
    timing::{Worked, worked},
};

/// All runs are drawn with this: the same plan says the same twice.
pub const SEED: u64 = 20;

/// Everything that planning was asked with, and the plan.
#[derive(Clone, Debug)]
pub struct Made {
    /// Which build's sheet it is.
    pub build: Id,
    /// What was worked by then.
    pub worked: Vec<Worked>,
    /// Open builds, in their order.
    pub builds: Vec<Id>,
    /// Dates that don't come from the day on which a build is due.
    pub until: Map<Id, Instant>,
    /// What filming adds.
    pub filming: Vec<Filming>,
    /// The moment it begins.
    pub now: Instant,
    /// As it stands.
    pub plan: Plan,
    /// How far whole builds run over.
    pub spread: Spread,
}

impl Made {
    /// The plan of all open builds, for the sheet of one of them.
    pub fn of(view: &View, build: Id, now: Instant) -> Made {
        let shop = view.shop;
        let today = shop.zone.day(now);
        let worked = worked(shop, now);
        let mut builds = open_builds(shop, today);
        if !builds.contains(&build) {
            builds.push(build);
        }
        let (until, filming) = (Map::new(), Vec::new());
        let spread = Spread::of(shop, &worked, today);
        let asking = Asking { shop, worked: &worked, now, builds: &builds, until: &until, filming: &filming };
        let plan = Plan::of(&asking);
        Made { build, worked, builds, until, filming, now, plan, spread }
    }

    /// To ask the plan further.
    pub fn asking<'a>(&'a self, shop: &'a Shop) -> Asking<'a> {
        Asking {
            shop,
            worked: &self.worked,
            now: self.now,
            builds: &self.builds,
            until: &self.until,
            filming: &self.filming,
        }
    }

    /// By when the build should be over.
    pub fn due(&self) -> Option<Instant> {
        self.plan.build(self.build)?.due
    }
}
