//! All tools: what a run hour of each costs, what it is worth, how long it has run.

use super::look;
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind, KeyLink},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    shell::{Desk, Go, Place, desk::View, frame::Places, mark::LastMarkHere},
    words::{common, gaps, tools as words},
};
use benchslate_core::{
    costing::{Books, ToolBook},
    journal::{Id, Kind, shop::Tool},
    measure::InOrder,
};

/// The list.
#[component]
pub fn ToolsSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let rows = Memo::new(move |_| desk.books(rows));
    let here = move || drawn(rows.get().into_iter().filter(|it| !it.gone).collect());
    let gone = move || {
        let gone: Vec<Row> = rows.get().into_iter().filter(|it| it.gone).collect();
        (!gone.is_empty()).then(|| view! { <Group title=words::gone().to_owned()/>{drawn(gone)} })
    };
    let none = move || rows.read().is_empty().then(|| view! { <p class="lead">{words::none_yet()}</p> });
    view! {
        <Sheet>
            <Head title=words::title().to_owned() note=words::a_run_hour_note().to_owned() tight=true/>
            <Above>
                <Read name=words::title().to_owned() below=words::more_tools().to_owned()>
                    {none}{here}{gone}
                    <p class="note">{words::what_wears()}</p>
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <KeyLink
                            class="wide"
                            label=words::add().to_owned()
                            kind=KeyKind::Filled
                            href=Place::Add(Kind::Tool, None).href()
                        />
                    </Keys>
                </Hand>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

#[derive(Clone, Debug, PartialEq)]
struct Row {
    tool: Id,
    gone: bool,
    name: String,
    working: String,
    figure: String,
    lacks: bool,
}

fn rows(books: &Books, view: &View) -> Vec<Row> {
    let mut all: Vec<_> = view.shop.tools.iter().map(|(id, tool)| (tool.order, *id, tool)).collect();
    all.order_by_key(|it| it.0);
    all.into_iter().filter_map(|(_, id, tool)| Some(row(view, id, tool, books.tool(id)?))).collect()
}

fn row(view: &View, id: Id, tool: &Tool, book: &ToolBook) -> Row {
    let worth = book.book_value.map(|worth| words::book_value(&view.tongue.money(worth)));
    let ran = words::ran(&look::hours(view, book.hours_all));
    let gap = book.gaps.first();
    Row {
        tool: id,
        gone: tool.gone.is_some(),
        name: tool.name.clone(),
        working: words::and_then(worth.as_deref(), &ran),
        figure: gap
            .map_or_else(|| look::rate(view, book.rate_with_blade()), |gap| gaps::short(gap).to_owned()),
        lacks: gap.is_some(),
    }
}

fn drawn(rows: Vec<Row>) -> Vec<AnyView> {
    let row = |it: Row| {
        let text = SumText {
            label: it.name,
            working: Some(it.working),
            figure: it.figure,
            lacks: it.lacks,
            ..SumText::default()
        };
        view! { <SumRow text leads=Leads::To(Place::Tool(it.tool).href()) signed=false/> }
    };
    rows.into_iter().map(row).collect()
}
