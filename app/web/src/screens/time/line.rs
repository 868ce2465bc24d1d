//! A build on one line of time, drawn to scale on a page that can be printed. All days are core's; shares are for drawing.

use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        time_line::{At, DayBar, LineText, TimeLine},
    },
    screens::cost::no_build,
    shell::{
        Desk, Go, Tab,
        desk::{Phase, View},
        frame::Places,
    },
    words::{common, cost as costs, income, print, time as words},
};
use benchslate_core::{
    costing::Books,
    journal::Id,
    timing::line::{Line, Mark, Milestone, line},
};

/// A gap narrower than this has no room for its words.
const ROOM: f64 = 0.28;

#[derive(Clone, PartialEq)]
struct Page {
    title: String,
    text: LineText,
    marks: Vec<(String, String)>,
    figures: Vec<(String, String)>,
}

/// The sheet.
#[component]
pub fn LineSheet(of: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let page = Memo::new(move |_| desk.books(|books, view| page(books, view, of)));
    let title = Signal::derive(move || match page.read().as_ref() {
        Some(page) => words::line_title(&page.title),
        None => costs::no_build().to_owned(),
    });
    let print_it = move |()| {
        if let Some(window) = web_sys::window() {
            let _ = window.print();
        }
    };
    let all = move || match page.get() {
        _ if desk.phase.get() != Phase::Ready => ().draw(),
        None => no_build(),
        Some(page) => drawn(page),
    };
    view! {
        <Sheet>
            <Head title=title tight=true/>
            <Above><Read name=title below=words::line_below().to_owned()>{all}</Read></Above>
            <Below>
                <Hand name=words::line_keys().to_owned()>
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <Key class="wide" label=print::print().to_owned() kind=KeyKind::Filled on_tap=Callback::new(print_it)/>
                    </Keys>
                </Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, Some(Tab::Time))))/>
            </Below>
        </Sheet>
    }
}

fn page(books: &Books, view: &View, build: Id) -> Option<Page> {
    let title = view.shop.builds.get(&build)?.title.clone();
    let line = line(view.shop, build, books.as_of)?;
    let mark = |it: &Mark| (view.tongue.day_year(it.day), said(view, &it.what));
    Some(Page {
        title,
        text: text(view, &line),
        marks: line.marks.iter().map(mark).collect(),
        figures: figures(view, &line),
    })
}

fn said(view: &View, what: &Milestone) -> String {
    match what {
        Milestone::Begun => words::begun().to_owned(),
        Milestone::StepDone(step) => {
            let title = view.shop.steps.get(step).map(|it| it.body.title.clone());
            words::step_done(&title.unwrap_or_default())
        }
        Milestone::Made(good) => income::made(*good, 0),
        Milestone::HandedOver(count) => words::handed_over(*count),
        Milestone::State(state) => income::state(*state).to_owned(),
        Milestone::Published => words::went_out().to_owned(),
        Milestone::Due => words::due().to_owned(),
    }
}

fn text(view: &View, line: &Line) -> LineText {
    let all = line.days as f64;
    let at = |from: i64, days: i64| At { from: from as f64 / all, wide: days as f64 / all };
    let most = line.longest().0.max(1) as f64;
    let day = |it: &benchslate_core::timing::line::Worked| DayBar {
        at: at(it.at, 1),
        piece: it.piece.0 as f64 / most,
        film: it.film.0 as f64 / most,
    };
    let gap = |it: &benchslate_core::timing::line::Gap| {
        let at = at(it.from, it.days);
        (at, (at.wide > ROOM).then(|| words::gap_days(it.days)))
    };
    LineText {
        whole: words::line_days(line.days, &view.tongue.hours(line.hours)),
        first: view.tongue.day_year(line.first),
        last: view.tongue.day_year(line.last()),
        days: line.worked.iter().map(day).collect(),
        shoots: line.shoots.iter().map(|it| at(*it, 1)).collect(),
        dried: line.dried.iter().map(|it| at(it.from, it.days)).collect(),
        gaps: line.gaps.iter().map(gap).collect(),
        marks: line.marks.iter().map(|it| (it.at as f64 + 0.5) / all).collect(),
        rows: words::line_rows(),
    }
}

fn figures(view: &View, line: &Line) -> Vec<(String, String)> {
    let count = |many: usize| many.to_string();
    let mut rows = vec![
        (words::days_worked().to_owned(), count(line.worked.len())),
        (words::days_shot().to_owned(), count(line.shoots.len())),
        (words::times_dried().to_owned(), count(line.dried.len())),
    ];
    let longest = line.gaps.iter().max_by_key(|it| it.days);
    rows.extend(longest.map(|it| {
        let day = view.tongue.day(line.day(it.from));
        (words::longest_gap().to_owned(), words::gap_from(it.days, &day))
    }));
    rows
}

fn drawn(page: Page) -> AnyView {
    let marks = page.marks.into_iter().enumerate().map(|(at, (day, what))| {
        let label = words::numbered(at + 1, &what);
        view! { <dt>{label}</dt><dd>{day}</dd> }
    });
    let marks: Vec<AnyView> = marks.collect();
    let figures = page.figures.into_iter().map(|(label, figure)| view! { <dt>{label}</dt><dd>{figure}</dd> });
    let figures: Vec<AnyView> = figures.collect();
    view! {
        <article class="paper lined">
            <p class="paper-title">{page.title}</p>
            <TimeLine text=page.text/>
            <div class="paper-groups">
                <section><h2>{words::milestones()}</h2><dl>{marks}</dl></section>
                <section><h2>{words::in_figures()}</h2><dl>{figures}</dl></section>
            </div>
        </article>
    }
}
