//! The title block with the running clock in its first cell, and keys 1 to 5.

use super::{Desk, Go, Place, Tab};
use crate::dom::prelude::*;
use crate::{
    parts::title_block::{Cell, OwnSheets, RunningCell, TitleBlock},
    screens::{late::LateAsk, trouble::TroubleLine},
    words::common,
};
use benchslate_core::{journal::Id, measure::Instant, timing::bench::Bench};
use leptos::ev;
use wasm_bindgen::JsCast;

/// The way round, on every sheet. On a build's sheets its own stand above the five places.
#[component]
pub fn Places(
    /// Where this sheet belongs: 0 Bench to 4 Shop.
    cell: usize,
    /// A build and which of its sheets this is.
    #[prop(optional, into)]
    of_build: MaybeProp<(Id, Option<Tab>)>,
) -> impl IntoView {
    let desk = Desk::here();
    // On the bench itself the slate shows it. Looked at anew by change, and read by the second.
    let bench = Memo::new(move |_| (cell != 0).then(|| desk.bench()).flatten());
    let running = Memo::new(move |_| {
        let now = desk.now();
        bench.read().as_ref().and_then(|bench| running(desk, bench, now))
    });
    let sheets = Signal::derive(move || of_build.get().map(|(id, tab)| own_sheets(desk, id, tab)));
    view! {
        <LateAsk/>
        <TroubleLine/>
        <TitleBlock
            name=common::places_name().to_owned()
            places=Signal::stored(cells())
            current=Signal::stored(Some(cell))
            running=running
            sheets=sheets
        />
    }
}

/// Keys 1 to 5 lead to the places, but never out of a field.
pub fn number_keys(go: Go) {
    let listener = window_event_listener(ev::keydown, move |event| {
        let typing = event.target().and_then(|it| it.dyn_into::<web_sys::Element>().ok());
        let typing =
            typing.is_some_and(|it| matches!(it.tag_name().as_str(), "INPUT" | "TEXTAREA" | "SELECT"));
        if typing || event.ctrl_key() || event.alt_key() || event.meta_key() {
            return;
        }
        let at = event.key().parse::<usize>().ok().and_then(|key| key.checked_sub(1));
        if let Some(place) = at.and_then(|at| places().into_iter().nth(at)) {
            go.to(&place);
        }
    });
    on_cleanup(move || listener.remove());
}

fn places() -> [Place; 5] {
    [Place::Bench, Place::Builds, Place::Stock, Place::Plan, Place::Shop]
}

fn cells() -> Vec<Cell> {
    let cell = |(place, label): (Place, &str)| Cell { label: label.to_owned(), href: place.href() };
    places().into_iter().zip(common::places()).map(cell).collect()
}

fn own_sheets(desk: Desk, build: Id, tab: Option<Tab>) -> OwnSheets {
    let tabs = [Tab::Journal, Tab::Cost, Tab::Time, Tab::Film];
    let title = desk.read(|view| view.shop.builds.get(&build).map(|it| it.title.clone()).unwrap_or_default());
    let cell =
        |(tab, label): (Tab, &str)| Cell { label: label.to_owned(), href: Place::Build(build, tab).href() };
    let at = tab.map(|tab| if tab == Tab::Spent { Tab::Cost } else { tab });
    OwnSheets {
        name: common::build_sheets_name(&title),
        cells: tabs.into_iter().zip(common::build_sheets()).map(cell).collect(),
        current: at.and_then(|tab| tabs.iter().position(|it| *it == tab)),
    }
}

fn running(desk: Desk, bench: &Bench, now: Instant) -> Option<RunningCell> {
    let clock = bench.clocks.last()?;
    let worked = clock.so_far(now.max(clock.from.instant));
    let (digits, hours) = desk.read(|view| (view.tongue.digits(worked), view.tongue.hours(worked)));
    let stage = match bench.clocks.len() {
        1 => clock.stage.name.clone(),
        count => common::running(count),
    };
    let name = common::bench_running(&stage, &hours);
    Some(RunningCell { time: digits, unit: common::hours_unit().to_owned(), stage, name })
}
