//! Out of the phone: tables for a spreadsheet, a build on one printed page, cards to lay over a film.

mod cards;
mod files;
mod print;

pub use files::FilesSheet;

use crate::dom::prelude::*;
use crate::{
    parts::{answer::RowLink, sum_row::Leads},
    screens::publishing::{DaySheet, PackSheet},
    shell::{Place, Way},
    words,
};
use benchslate_core::journal::Id;

/// The sheet of a way.
pub fn sheet(of: Id, way: Way) -> AnyView {
    match way {
        Way::Cards => view! { <cards::CardsSheet of/> },
        Way::Print => view! { <print::PrintSheet of/> },
        Way::Pack => view! { <PackSheet of/> },
        Way::GoesOut => view! { <DaySheet of/> },
    }
}

fn row(label: &str, end: &str, place: Place) -> AnyView {
    view! { <RowLink label=label.to_owned() end=end.to_owned() leads=Leads::To(place.href())/> }
}

/// The way to what a film is published with: a date can be set before anything is spent.
pub fn to_publishing(build: Id) -> AnyView {
    row(words::publishing::publishing(), words::publishing::all_of_it(), Place::Publishing(build))
}

/// The ways out of a build's cost sheet.
pub fn ways(build: Id) -> AnyView {
    view! {
        {to_publishing(build)}
        {row(words::cards::title(), words::cards::what_kind(), Place::Out(build, Way::Cards))}
        {row(words::print::title(), words::print::what_kind(), Place::Out(build, Way::Print))}
        {row(words::files::title(), words::files::what_kind_of_build(), Place::Files(Some(build)))}
    }
}
