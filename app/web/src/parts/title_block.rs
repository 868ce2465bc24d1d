//! The title block: five numbered places, a build's own sheets above them; the first cell is slate while a clock runs.
use crate::dom::prelude::*;

/// A place or a sheet: its word and its address.
#[derive(Clone, PartialEq, Eq)]
pub struct Cell {
    pub label: String,
    pub href: String,
}

/// What the Bench cell shows while a clock runs.
#[derive(Clone, PartialEq, Eq)]
pub struct RunningCell {
    /// `1:55`.
    pub time: String,
    /// `h`, small beside it.
    pub unit: String,
    /// The stage, or "2 running".
    pub stage: String,
    /// Read aloud: "Bench, sand, 1 h 55".
    pub name: String,
}

/// A build's own sheets: Journal, Cost, Time, Film.
#[derive(Clone, PartialEq, Eq)]
pub struct OwnSheets {
    /// Read aloud: whose sheets these are.
    pub name: String,
    pub cells: Vec<Cell>,
    /// Which of them this is.
    pub current: Option<usize>,
}

/// `current` is the place this sheet belongs to.
#[component]
pub fn TitleBlock(
    #[prop(into)] name: Signal<String>,
    #[prop(into)] places: Signal<Vec<Cell>>,
    #[prop(into)] current: Signal<Option<usize>>,
    #[prop(optional, into)] running: MaybeProp<RunningCell>,
    #[prop(optional, into)] sheets: MaybeProp<OwnSheets>,
) -> impl IntoView {
    // Drawn anew only when they are others: a thumb may be on one of them.
    let sheets = Memo::new(move |_| sheets.get());
    let has_sheets = Memo::new(move |_| sheets.read().is_some());
    let place = move |(at, cell): (usize, Cell)| {
        let here = move || {
            let mark = if has_sheets.get() { "true" } else { "page" };
            (current.get() == Some(at)).then_some(mark)
        };
        let runs = move || running.get().filter(|_| at == 0);
        let name = move || runs().map(|it| it.name);
        let label = cell.label;
        view! {
            <li>
                <a href=cell.href class:run=move || runs().is_some() aria-current=here aria-label=name>
                    {move || place_face(at, &label, runs())}
                </a>
            </li>
        }
    };
    let own = move || sheets.get().map(own_sheets);
    view! {
        <nav class="block" aria-label=move || name.get()>
            {own}
            <ul>{move || places.get().into_iter().enumerate().map(place).collect::<Vec<_>>()}</ul>
        </nav>
    }
}

fn place_face(at: usize, label: &str, running: Option<RunningCell>) -> AnyView {
    match running {
        Some(it) => view! { <b>{it.time}<i>{it.unit}</i></b><small>{it.stage}</small> },
        None => {
            let label = label.to_owned();
            view! { <span class="no" aria-hidden="true">{(at + 1).to_string()}</span>{label} }
        }
    }
}

fn own_sheets(own: OwnSheets) -> AnyView {
    let cell = |(at, cell): (usize, Cell)| {
        let here = (own.current == Some(at)).then_some("page");
        view! { <li><a href=cell.href aria-current=here>{cell.label}</a></li> }
    };
    let cells = own.cells.into_iter().enumerate().map(cell).collect::<Vec<_>>();
    view! { <ul class="sub" aria-label=own.name>{cells}</ul> }
}
