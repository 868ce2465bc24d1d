//! The sheets, a folder a place.

pub mod bench;
pub mod builds;
pub mod cost;
pub mod first_amount;
pub mod form_keys;
pub mod hours;
pub mod journal;
pub mod notes;
pub mod shop;
pub mod stock;
pub mod trouble;

use crate::shell::{Place, Tab};
use benchslate_core::journal::kinds::Bearer;
use leptos::prelude::*;

/// Whether a newer version of the program waits; provided as context.
#[derive(Clone, Copy)]
pub struct UpdateWaits {
    /// One waits.
    pub waits: ReadSignal<bool>,
    /// Not now, was said; until the page is loaded again.
    pub later: RwSignal<bool>,
}

/// What the next form is opened for, where a sheet says so; provided as context.
#[derive(Clone, Copy)]
pub struct About(pub RwSignal<Option<Bearer>>);

/// What a form was opened for. Asked once: the form after it is for whatever the bench works for.
pub fn opened_for() -> Option<Bearer> {
    let About(about) = expect_context();
    let bearer = about.get_untracked();
    about.set(None);
    bearer
}

/// The sheet of a place.
pub fn sheet(place: Place) -> AnyView {
    match place {
        Place::Bench => view! { <bench::BenchSheet/> }.into_any(),
        Place::Stages => view! { <bench::StagesSheet/> }.into_any(),
        Place::WorkFor => view! { <bench::WorkForSheet/> }.into_any(),
        Place::NewStage => view! { <builds::NewStageSheet/> }.into_any(),
        Place::Minute(entry) => view! { <bench::MinuteSheet entry/> }.into_any(),
        Place::Builds => view! { <builds::BuildsSheet/> }.into_any(),
        Place::Build(id, Tab::Journal) => view! { <journal::JournalSheet of=id/> }.into_any(),
        Place::Build(id, tab @ (Tab::Time | Tab::Film)) => {
            view! { <builds::LaterSheet of=id tab/> }.into_any()
        }
        Place::Entry(entry) => view! { <journal::EntrySheet entry/> }.into_any(),
        Place::Hours => view! { <hours::HoursSheet/> }.into_any(),
        Place::Note => view! { <notes::NoteSheet/> }.into_any(),
        Place::Homeless => view! { <notes::HomelessSheet/> }.into_any(),
        Place::Plan => view! { <builds::PlanSheet/> }.into_any(),
        Place::NewBuild => view! { <builds::NewBuildSheet/> }.into_any(),
        Place::Stock => view! { <stock::StockSheet/> }.into_any(),
        Place::Use(of) => view! { <stock::UseSheet of/> }.into_any(),
        Place::NewLot => view! { <stock::NewLotSheet/> }.into_any(),
        Place::Lot(id) => view! { <stock::LotSheet lot=id/> }.into_any(),
        Place::Return(id) => view! { <stock::ReturnSheet draw=id/> }.into_any(),
        Place::Expense => view! { <stock::ExpenseSheet/> }.into_any(),
        Place::Sort(id) => view! { <stock::SortSheet lot=id/> }.into_any(),
        Place::Build(id, Tab::Cost) => view! { <cost::CostSheet of=id/> }.into_any(),
        Place::Build(id, Tab::Spent) => view! { <cost::SpentSheet of=id/> }.into_any(),
        Place::Opened(id, path) => view! { <cost::OpenedSheet of=id path/> }.into_any(),
        Place::Shop => view! { <shop::ShopSheet/> }.into_any(),
        Place::Person(of) => view! { <shop::PersonSheet of/> }.into_any(),
        Place::Choices => view! { <shop::ChoicesSheet/> }.into_any(),
        Place::BringIn => view! { <shop::BringInSheet/> }.into_any(),
    }
}
