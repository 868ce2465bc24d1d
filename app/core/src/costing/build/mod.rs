//! What a build cost: true cost by kind, Spent, Used up and the bridge between them.
//!
//! Each is a tree down to the entries. Source: our own rule, DEVELOPERS.md § Figures.
//! Never: a figure of its own; all money comes from the rows of `books`.

mod bridge;
mod hours;
mod kinds;
mod spent;

use super::{Books, Flag, Gap, Parts, Path, Rule, Statement};
use crate::journal::{
    Id,
    kinds::{Bearer, Source},
};
use kinds::Rows;
pub(crate) use kinds::{Lines, sum_of};

/// The sheet of a build.
#[derive(Clone, Debug, PartialEq)]
pub struct BuildCost {
    /// What bears it.
    pub bearer: Bearer,
    /// All parts, by kind.
    pub true_cost: Statement,
    /// Used up by way of the bridge, then the rest of every kind: the true cost again.
    pub bridge: Statement,
    /// Used up by kind, for its bar.
    pub used_up_by_kind: Statement,
    /// Tax to be got back, apart.
    pub tax_back: Statement,
    /// Own hours: worked on it, and in the timber.
    pub own_hours: Statement,
    /// No value before income is kept.
    pub hour_earned: Statement,
    /// The cost as a vector of parts.
    pub parts: Parts,
}

impl BuildCost {
    /// Money of lots bought for it, whole, its direct expenses and paid labour.
    pub fn spent(&self) -> Option<&Statement> {
        self.used_up()?.part(|rule| *rule == Rule::Spent)
    }

    /// Money parts of what it drew, its direct expenses and paid labour.
    pub fn used_up(&self) -> Option<&Statement> {
        self.bridge.part(|rule| *rule == Rule::UsedUp)
    }

    /// Every figure that an address can begin with.
    pub fn roots(&self) -> [&Statement; 6] {
        let BuildCost { true_cost, bridge, used_up_by_kind, tax_back, own_hours, hour_earned, .. } = self;
        [true_cost, bridge, used_up_by_kind, tax_back, own_hours, hour_earned]
    }

    /// The figures from a root down to the end of an address, the root first.
    pub fn open(&self, path: &Path) -> Option<Vec<&Statement>> {
        self.roots().into_iter().find_map(|root| path.walk(root))
    }
}

impl Books {
    /// The sheet of a build; nothing is known of it: all noughts.
    pub fn build_cost(&self, build: Id) -> BuildCost {
        self.cost_of(Bearer::Build(build))
    }

    /// The sheet of whatever the shop bears itself.
    pub fn shop_cost(&self) -> BuildCost {
        self.cost_of(Bearer::Shop)
    }

    pub(super) fn cost_of(&self, bearer: Bearer) -> BuildCost {
        let rows = Rows { books: self, bearing: self.ledgers.borne_by(bearer) };
        let mut true_cost = kinds::true_cost(&rows);
        let mut bridge = bridge::from_used_up(&rows, bearer);
        let flags = rows.bearing.later.iter().map(|entry| Flag::Later { entry: *entry });
        let flags: Vec<Flag> = flags.collect();
        for statement in [&mut true_cost, &mut bridge] {
            // Wear and overhead go by hours: no hours, nothing missing.
            statement.add_gaps(if rows.bearing.labour.is_empty() { &[] } else { &Gap::NOT_KEPT });
            statement.add_flags(&flags);
        }
        BuildCost {
            bearer,
            true_cost,
            bridge,
            used_up_by_kind: kinds::used_up(&rows),
            tax_back: spent::tax_back(&rows, bearer),
            own_hours: hours::own(&rows),
            hour_earned: Statement::carrying(
                Rule::HourEarned,
                Vec::new(),
                vec![Gap::IncomeNotKept],
                Vec::new(),
            ),
            parts: rows.parts(),
        }
    }

    /// Lots that are drawn by name and were got for this bearer, in the order of their ids.
    fn got_for(&self, bearer: Bearer) -> impl Iterator<Item = &super::stock::LotAccount> {
        let build = match bearer {
            Bearer::Build(build) => Some(build),
            Bearer::Lot(_) | Bearer::Shop => None,
        };
        self.stock.lots.values().filter(move |lot| build.is_some() && lot.facts.for_build == build)
    }

    fn is_got_for(&self, bearer: Bearer, source: Source) -> bool {
        match (source, bearer) {
            (Source::Lot(lot), Bearer::Build(build)) => {
                self.stock.lots.get(&lot).is_some_and(|lot| lot.facts.for_build == Some(build))
            }
            (Source::Lot(_), Bearer::Lot(_) | Bearer::Shop) | (Source::Item(_), _) => false,
        }
    }
}
