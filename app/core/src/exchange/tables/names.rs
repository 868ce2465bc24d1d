//! What things are called in a table: by the maker's own names, and by the codes under which choices are stored.

use crate::journal::{
    Id, Shop,
    kinds::{Bearer, Source},
};
use serde::Serialize;

/// Names of one shop.
#[derive(Clone, Copy)]
pub(super) struct Names<'a>(pub &'a Shop);

impl<'a> Names<'a> {
    pub fn build(self, id: Id) -> &'a str {
        self.0.builds.get(&id).map_or("", |it| &it.title)
    }

    pub fn stage(self, id: Id) -> &'a str {
        self.0.stages.get(&id).map_or("", |it| &it.name)
    }

    pub fn person(self, id: Id) -> &'a str {
        self.0.people.get(&id).map_or("", |it| &it.name)
    }

    pub fn tool(self, id: Id) -> &'a str {
        self.0.tools.get(&id).map_or("", |it| &it.name)
    }

    pub fn lot(self, id: Id) -> &'a str {
        self.0.lots.get(&id).map_or("", |it| &it.name)
    }

    /// An item, also one that is another one.
    pub fn item(self, id: Id) -> &'a str {
        self.0.all_items().meant(id).map_or("", |(_, it)| &it.name)
    }

    pub fn source(self, source: Source) -> &'a str {
        match source {
            Source::Lot(id) => self.lot(id),
            Source::Item(id) => self.item(id),
        }
    }

    pub fn bearer(self, bearer: Bearer) -> &'a str {
        match bearer {
            Bearer::Build(id) => self.build(id),
            Bearer::Lot(id) => self.lot(id),
            Bearer::Shop => "shop",
        }
    }

    pub fn bearers(self, bearers: impl Iterator<Item = Bearer>) -> String {
        bearers.map(|it| self.bearer(it)).collect::<Vec<_>>().join("; ")
    }

    pub fn resource(self, id: Id) -> &'a str {
        self.0.resources.get(&id).map_or("", |it| &it.name)
    }

    /// Whatever can be put away.
    pub fn thing(self, id: Id) -> &'a str {
        let names = [
            self.build(id),
            self.person(id),
            self.stage(id),
            self.item(id),
            self.lot(id),
            self.tool(id),
            self.resource(id),
        ];
        names.into_iter().find(|name| !name.is_empty()).unwrap_or_default()
    }
}

/// The word under which a choice is stored.
pub(super) fn code(choice: impl Serialize) -> String {
    match serde_json::to_value(choice) {
        Ok(serde_json::Value::String(word)) => word,
        Ok(_) | Err(_) => String::new(),
    }
}
