//! The shelf as books: the formula, the count, what the shop lost, what lay there on a day.

mod count;
mod formula;
mod held;
mod losses;

use count::CountSheet;
use formula::FormulaSheet;
use held::OnTheShelfSheet;
use losses::LossesSheet;

use crate::dom::prelude::*;
use crate::shell::Place;

/// The sheets of the shelf.
pub fn sheet(place: &Place) -> AnyView {
    match place {
        Place::Formula => view! { <FormulaSheet/> },
        Place::Count => view! { <CountSheet/> },
        Place::Losses => view! { <LossesSheet/> },
        _ => view! { <OnTheShelfSheet/> },
    }
}
