//! What stands on a card, in the reader's words and numbers.

use crate::{
    shell::desk::View,
    words::{cards as words, cost},
};
use benchslate_core::{
    exchange::cards::{About, Name, Words},
    journal::Id,
    measure::{Seconds, Shown},
};

/// Whoever names things on the card of a build.
pub struct Said<'a> {
    pub view: &'a View<'a>,
    pub build: Id,
}

impl Words for Said<'_> {
    fn title(&self, about: About, dearer: bool) -> String {
        words::card_title(about, dearer).to_owned()
    }

    fn build(&self) -> String {
        self.view.shop.builds.get(&self.build).map(|it| it.title.clone()).unwrap_or_default()
    }

    fn currency(&self) -> String {
        self.view.shop.currency().unwrap_or_default().to_owned()
    }

    fn name(&self, name: Name) -> String {
        let plain = match name {
            Name::Kind(kind) => cost::kind(kind),
            Name::Stage(stage) => {
                return self.view.shop.stages.get(&stage).map(|it| it.name.clone()).unwrap_or_default();
            }
            Name::Others(count) => return words::others(count),
            Name::Instead => words::instead(),
            Name::Took => words::took(),
            Name::OwnTime => words::own_time(),
            Name::Saved => words::saved(),
            Name::Dearer => words::dearer(),
        };
        plain.to_owned()
    }

    fn money(&self, shown: Shown) -> String {
        self.view.tongue.shown(shown)
    }

    fn hours(&self, hours: Seconds) -> String {
        self.view.tongue.hours(hours)
    }

    fn made(&self, count: u32) -> String {
        words::made(&self.view.tongue.number(&count.to_string()))
    }

    fn each(&self, count: u32, figure: &str) -> String {
        words::each(&self.view.tongue.number(&count.to_string()), figure)
    }
}
