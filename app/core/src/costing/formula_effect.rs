//! What a change of the stock formula would do, before it is made: the shelf and the open builds under both formulas from
//! a day on.
//!
//! Source: our own rule, DEVELOPERS.md § Why. Not here: the formulas (`stock::pooled`), the day of change
//! (`stock::formula`).

use super::{Books, BuildCost, Formula, Statement};
use crate::{
    journal::{
        Body, Id, On, Shop,
        kinds::{Bearer, Setting, SettingKey, Source, State},
    },
    measure::{Day, Instant, Money},
};

/// Figures under one formula.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Under {
    /// Which.
    pub formula: Formula,
    /// What is on the shelf cost.
    pub shelf: Money,
    /// What each open build that drew items has used up, in the order of their ids.
    pub builds: Vec<(Id, Money)>,
}

/// Both formulas, each from that day on; none: from the beginning. Closed builds stay as they are and are not in it.
pub fn formula_effect(shop: &Shop, as_of: Instant, from: Option<Day>) -> [Under; 2] {
    Formula::ALL.map(|formula| {
        let on = On::Day(shop.zone.day(as_of));
        let (key, value) = (SettingKey::StockFormula, formula.code().to_owned());
        let choice = Body::Setting(Setting { on, key, value, from });
        let books = Books::close(&shop.with(&[(Id::of([0xff; 16]), choice)]), as_of);
        let last = shop.zone.day(as_of);
        let open = shop.builds.keys().filter(|build| shop.state_of(**build, last) != State::Closed);
        let drew = open.filter(|build| {
            let draws = books.drawn_by(Bearer::Build(**build));
            draws.iter().any(|draw| matches!(draw.source, Source::Item(_)))
        });
        let used_up = |build: Id| {
            let cost = books.build_cost(build);
            BuildCost::used_up(&cost).and_then(Statement::money).unwrap_or_default()
        };
        Under {
            formula,
            shelf: books.shelf_value(),
            builds: drew.map(|build| (*build, used_up(*build))).collect(),
        }
    })
}
