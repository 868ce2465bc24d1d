//! Tools and what an hour worked bears: rows of the shop that lead to their sheets.

use crate::dom::prelude::*;
use crate::{
    parts::sum_row::Group,
    screens::{
        months::{self, Row},
        tools,
    },
    shell::{Desk, Place, desk::View},
    words::{months as month_words, tools as words, year as year_words},
};
use benchslate_core::{costing::Books, journal::Kind};

/// Two groups of rows.
#[component]
pub fn Running() -> impl IntoView {
    let desk = Desk::here();
    let rows = Memo::new(move |_| desk.books(|books, view| (tools_row(books, view), hours(books, view))));
    view! {
        <Group title=words::title().to_owned()/>
        {move || months::drawn(vec![rows.get().0])}
        <Group title=month_words::title().to_owned()/>
        {move || months::drawn(rows.get().1)}
        {months::drawn(vec![year()])}
    }
}

fn year() -> Row {
    Row {
        label: year_words::way_here().to_owned(),
        working: year_words::way_here_note().to_owned(),
        href: Some(Place::Year.href()),
        ..Row::default()
    }
}

fn tools_row(books: &Books, view: &View) -> Row {
    let row = |label: String, working: &str, figure: String, place: Place| Row {
        label,
        working: working.to_owned(),
        figure,
        lacks: false,
        href: Some(place.href()),
    };
    match tools::named(view) {
        Some(names) => row(names, words::worth_note(), tools::worth(books, view), Place::Tools),
        None if !view.shop.tools.is_empty() => {
            row(words::gone().to_owned(), words::worth_note(), String::new(), Place::Tools)
        }
        None => row(words::add().to_owned(), words::add_note(), String::new(), Place::Add(Kind::Tool, None)),
    }
}

fn hours(books: &Books, view: &View) -> Vec<Row> {
    if !view.shop.monthly.is_empty() {
        return months::rates(books, view, &Place::Months);
    }
    let add = Row {
        label: month_words::add_first().to_owned(),
        working: month_words::add_first_note().to_owned(),
        href: Some(Place::Months.href()),
        ..Row::default()
    };
    vec![add]
}
