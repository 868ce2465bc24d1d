//! Finds: timber that is looked at before it is taken home.

mod form;
mod home;
mod pad;
mod sheet;
pub mod worth;

pub use form::NewFindSheet;
pub use sheet::FindSheet;

use crate::shell::desk::View;
use benchslate_core::{journal::Id, measure::InOrder};

/// Finds that are not home and not left, latest first, with their names.
pub fn open(view: &View) -> Vec<(Id, String)> {
    let home = |lot: &Option<Id>| lot.is_some_and(|lot| view.shop.lots.contains_key(&lot));
    let finds = view.shop.finds.iter().filter(|(id, it)| !home(&it.lot) && view.shop.offers(**id));
    let mut finds: Vec<_> = finds.map(|(id, it)| (it.order, *id, it.name.clone())).collect();
    finds.order_by(|a, b| b.0.cmp(&a.0));
    finds.into_iter().map(|(_, id, name)| (id, name)).collect()
}
