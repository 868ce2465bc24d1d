//! The sheets, a folder a place.

mod abroad;
pub mod away;
pub mod bench;
pub mod builds;
pub mod buying;
pub mod cautions;
pub mod cost;
pub mod drying;
pub mod film;
pub mod first_amount;
pub mod form_keys;
pub mod hours;
pub mod journal;
pub mod late;
pub mod lengths;
pub mod money;
pub mod months;
pub mod notes;
pub mod out;
pub mod parts_list;
pub mod photos;
pub mod plan;
pub mod publishing;
pub mod receipts;
pub mod sample;
pub mod shelf;
pub mod shop;
pub mod steps;
pub mod stock;
pub mod time;
pub mod tools;
pub mod trouble;
pub mod what_if;
pub mod year;

use crate::dom::prelude::*;
use crate::shell::{Place, Tab};
use benchslate_core::journal::{Id, kinds::Bearer};

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
        Place::Bench => view! { <bench::BenchSheet/> },
        Place::Stages => view! { <bench::StagesSheet/> },
        Place::WorkFor => view! { <bench::WorkForSheet/> },
        Place::NewStage => view! { <builds::NewStageSheet/> },
        Place::Minute(entry) => view! { <bench::MinuteSheet entry/> },
        Place::Drying(stretch) => view! { <drying::DryingSheet stretch/> },
        Place::Builds => view! { <builds::BuildsSheet/> },
        Place::Build(id, tab) => of_build(id, tab),
        Place::LotJournal(id) => view! { <journal::JournalSheet of=Bearer::Lot(id)/> },
        Place::ShopJournal => view! { <journal::JournalSheet of=Bearer::Shop/> },
        Place::Entry(entry) => view! { <journal::EntrySheet entry/> },
        Place::Hours => view! { <hours::HoursSheet/> },
        Place::Note => view! { <notes::NoteSheet/> },
        Place::Homeless => view! { <notes::HomelessSheet/> },
        Place::Plan => view! { <plan::PlanSheet of=None/> },
        Place::PlanOf(id) => view! { <plan::PlanSheet of=Some(id)/> },
        Place::NewBuild => view! { <builds::NewBuildSheet/> },
        Place::Stock => view! { <stock::StockSheet/> },
        Place::Buying => view! { <buying::BuyingSheet/> },
        Place::Use(of) => view! { <stock::UseSheet of/> },
        Place::NewLot => view! { <stock::NewLotSheet/> },
        Place::Lot(id) => view! { <stock::LotSheet lot=id/> },
        Place::Return(id) => view! { <stock::ReturnSheet draw=id/> },
        Place::Receipt(of) => receipts::sheet(of),
        Place::LineLot(id) => view! { <stock::NewLotSheet of=id/> },
        Place::LineExpense(id) => view! { <stock::ExpenseSheet of=id/> },
        Place::ByProduct => view! { <receipts::ByProductSheet/> },
        Place::Expense => view! { <stock::ExpenseSheet/> },
        Place::Same(id) => view! { <stock::SameSheet item=id/> },
        Place::Chain(id) => view! { <stock::ChainSheet lot=id/> },
        Place::Across => view! { <stock::AcrossSheet/> },
        Place::NewFind => view! { <stock::NewFindSheet/> },
        Place::Find(id) => view! { <stock::FindSheet find=id/> },
        Place::Sort(id) => view! { <stock::SortSheet lot=id/> },
        Place::Opened(id, path) => view! { <cost::OpenedSheet of=id path/> },
        Place::Saving(id) => view! { <cost::SavingSheet of=id/> },
        Place::Formula | Place::Count | Place::Losses | Place::OnTheShelf => shelf::sheet(&place),
        Place::Shop => view! { <shop::ShopSheet/> },
        Place::Person(_) | Place::Free(_) => shop::of_person(&place),
        Place::Choices => view! { <shop::ChoicesSheet/> },
        Place::Sample => view! { <sample::SampleSheet/> },
        Place::Cautions(of) => view! { <cautions::CautionsSheet of/> },
        Place::PutAway => view! { <away::AwaySheet/> },
        Place::BringIn => view! { <shop::BringInSheet/> },
        Place::Add(kind, of) => view! { <journal::AddSheet kind of/> },
        Place::Money(id) => view! { <money::MoneySheet of=id/> },
        Place::Against(id) => view! { <money::AgainstSheet of=id/> },
        Place::Steps(_) | Place::HowLong(_) => steps::sheet(&place),
        Place::WhatIf(id) => view! { <what_if::WhatIfSheet of=id/> },
        Place::Price(id) => view! { <what_if::PriceSheet of=id/> },
        Place::Year => view! { <year::YearSheet/> },
        Place::SideBySide => view! { <year::SideBySideSheet/> },
        Place::Parts(id) => view! { <parts_list::PartsSheet of=id/> },
        Place::Movement(id) => view! { <parts_list::MovementSheet of=id/> },
        Place::Mix(id) => view! { <stock::MixSheet resin=id/> },
        Place::Cuts(id) => view! { <parts_list::CutsSheet of=id/> },
        Place::Tools | Place::Tool(_) | Place::ToolLife(_) => tools::sheet(&place),
        Place::Months => view! { <months::MonthsSheet/> },
        Place::Slate(_) | Place::Take(_) | Place::Filming(_) | Place::Line(_) => film::sheet(place),
        Place::Publishing(id) => view! { <publishing::PublishingSheet of=id/> },
        Place::Leads => view! { <publishing::LeadsSheet/> },
        Place::Files(of) => view! { <out::FilesSheet of/> },
        Place::Out(id, way) => out::sheet(id, way),
    }
}

/// A build's own sheets.
fn of_build(id: Id, tab: Tab) -> AnyView {
    match tab {
        Tab::Journal => view! { <journal::JournalSheet of=Bearer::Build(id)/> },
        Tab::Time => view! { <time::TimeSheet of=id/> },
        Tab::Film => view! { <film::FilmSheet of=id/> },
        Tab::Cost => view! { <cost::CostSheet of=id/> },
        Tab::Spent => view! { <cost::SpentSheet of=id/> },
    }
}
