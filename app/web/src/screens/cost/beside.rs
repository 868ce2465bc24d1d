//! A kind of cost opened beside the sheet, where the screen is wide enough for a third column.

use super::{
    figures::{self, At, Remarks, Row},
    say::Say,
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        beside::Beside,
        sum_row::{Group, Leads, SumTotal, Sums},
    },
    shell::{Desk, Place, desk::View},
    words::cost as words,
};
use benchslate_core::{
    costing::{Books, CostKind, Path, Rule, present},
    journal::Id,
};

/// Its terms as a sum; deeper it opens on a sheet of its own.
#[component]
pub fn Opened(of: Id, kind: Memo<Option<CostKind>>, wide: RwSignal<bool>) -> impl IntoView {
    let desk = Desk::here();
    let opened = Memo::new(move |_| {
        let kind = kind.get()?;
        desk.books(|books, view| look(books, view, of, kind))
    });
    let name = Signal::derive(move || {
        opened.read().as_ref().map_or_else(|| words::true_cost().to_owned(), |it| words::opened(&it.name))
    });
    view! { <Beside name=name shown=wide>{move || opened.get().map(drawn)}</Beside> }
}

#[derive(Clone, Debug, PartialEq)]
struct Beneath {
    name: String,
    figure: String,
    rows: Vec<Row>,
    remarks: Remarks,
    /// To the same opened on a sheet of its own.
    href: String,
}

fn look(books: &Books, view: &View, build: Id, kind: CostKind) -> Option<Beneath> {
    let (say, cost) = (Say { books, view }, books.build_cost(build));
    let whole = cost.true_cost.parts.iter().filter_map(|part| part.statement());
    let step = whole
        .map(|it| &it.rule)
        .find(|rule| matches!(rule, Rule::Kind { kind: it, .. } if *it == kind))?
        .step();
    let path = Path { steps: vec![Rule::TrueCost.step(), step] };
    let levels = present::open(&cost.true_cost, &path, view.tongue.minor())?;
    let level = levels.last()?;
    let missing = || figures::missing(level.statement).to_owned();
    Some(Beneath {
        name: say.name(&level.statement.rule),
        figure: say.figure(level.shown, level.statement.value).unwrap_or_else(missing),
        rows: figures::rows(say, level, At { of: build, path: &path }),
        remarks: Remarks::of(say, level.statement),
        href: Place::Opened(build, path.to_string()).href(),
    })
}

fn drawn(it: Beneath) -> AnyView {
    view! {
        <Group title=words::opened(&it.name)/>
        <Sums>
            {it.rows.into_iter().map(figures::drawn).collect::<Vec<_>>()}
            <SumTotal label=it.name figure=it.figure/>
        </Sums>
        <RowLink label=words::drawn_out().to_owned() leads=Leads::To(it.href)/>
        {figures::remarks(it.remarks)}
    }
}
