//! What the shop lost of its stock, by why, down to the entries.

use crate::dom::prelude::*;
use crate::{
    parts::{
        sheet::{Above, Below, Hand, Head, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText, SumTotal},
    },
    screens::{form_keys::leave_key, journal::line},
    shell::{
        Desk, Go, Place,
        desk::{Phase, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{gaps, journal, shelf as words},
};
use benchslate_core::{
    costing::{Books, PartOf, Rule, Statement, present},
    journal::Id,
    measure::Shown,
};

/// One reason with its lines.
#[derive(Clone, PartialEq)]
struct Why {
    title: &'static str,
    lines: Vec<Line>,
}

/// One year of it.
#[derive(Clone, PartialEq)]
struct Year {
    whys: Vec<Why>,
    /// What it comes to, and what that is called.
    total: (String, String),
}

/// One look at the shelf.
#[derive(Clone, PartialEq)]
struct Line {
    entry: Id,
    label: String,
    day: String,
    figure: Option<String>,
}

/// The sheet.
#[component]
pub fn LossesSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let look = Memo::new(move |_| (desk.phase.get() == Phase::Ready).then(|| desk.books(look)));
    let told = move || {
        let years = look.get()?;
        if years.is_empty() {
            return Some(view! { <p class="lead">{words::nothing_lost()}</p> });
        }
        Some(view! {
            {years.into_iter().map(year).collect::<Vec<_>>()}
            <p class="note">{words::who_bears_losses()}</p>
        })
    };
    view! {
        <Sheet>
            <Head title=words::losses().to_owned() tight=true/>
            <Above><Read name=words::losses().to_owned()>{told}</Read></Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::losses_keys().to_owned()>{leave_key(go)}</Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn year(it: Year) -> AnyView {
    let (label, figure) = it.total;
    view! { {it.whys.into_iter().map(drawn).collect::<Vec<_>>()}<SumTotal label figure/> }
}

fn drawn(why: Why) -> AnyView {
    let row = |line: Line| {
        let text = SumText {
            label: line.label,
            working: Some(line.day),
            lacks: line.figure.is_none(),
            figure: line.figure.unwrap_or_else(|| crate::words::stock::no_price().to_owned()),
            ..SumText::default()
        };
        view! { <SumRow text leads=Leads::To(Place::Entry(line.entry).href()) signed=false/> }
    };
    view! {
        <Group title=why.title.to_owned()/>
        {why.lines.into_iter().map(row).collect::<Vec<_>>()}
    }
}

/// The latest year first.
fn look(books: &Books, view: &View) -> Vec<Year> {
    let years = books.loss_years(view.shop).into_iter();
    years.map(|it| of_year(view, it, &books.stock_losses_in(view.shop, it))).collect()
}

fn of_year(view: &View, year: i32, losses: &Statement) -> Year {
    let root = present::alone(losses, view.tongue.minor());
    let mut whys = Vec::new();
    for (part, shown) in losses.parts.iter().zip(&root.parts) {
        let (Some(statement), Some(shown)) = (part.statement(), shown) else { continue };
        let Rule::WrittenOff { why } = statement.rule else { continue };
        let figures = present::below(statement, *shown);
        let lines = statement.parts.iter().zip(figures).filter_map(|(part, shown)| match &part.of {
            PartOf::Entry { entry, .. } => Some(line_of(view, *entry, shown)),
            PartOf::Statement(_) => None,
        });
        whys.push(Why { title: words::why(why), lines: lines.collect() });
    }
    let total = root.shown.map(|shown| view.tongue.shown(shown)).unwrap_or_default();
    Year { whys, total: (words::lost_in(year), total) }
}

fn line_of(view: &View, entry: Id, shown: Option<Shown>) -> Line {
    let day = view.journal.body(entry).map(|body| view.tongue.day_year(body.on().day(&view.shop.zone)));
    let what = line::what(view, entry);
    let label = if what.is_empty() {
        gaps::name(view.shop, benchslate_core::journal::kinds::Source::Lot(entry))
    } else {
        what
    };
    Line {
        entry,
        label: journal::comma(&label, ""),
        day: day.unwrap_or_default(),
        figure: shown.map(|shown| view.tongue.shown(shown)),
    }
}
