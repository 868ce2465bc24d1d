//! The money of a year: what came in and what was paid, by kind, by month and by build; and what stands beside it.

mod beside;

pub use beside::SideBySideSheet;

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText, Leading, SideAnswer},
        key::Key,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumTotal},
    },
    screens::months::{self, Row},
    shell::{Desk, Place, Tab, desk::View, frame::Places},
    words::{income, year as words},
};
use benchslate_core::{
    costing::{Books, Flow, FlowLine, Gap, YearMoney},
    measure::{Day, Money, Shown, minutes},
};

/// The sheet.
#[component]
pub fn YearSheet() -> impl IntoView {
    let desk = Desk::here();
    let chosen = RwSignal::new(None::<i32>);
    let look = Memo::new(move |_| desk.books(|books, view| look(books, view, chosen.get())));
    let title = Signal::derive(move || words::title(look.read().year));
    let all = move || drawn(look.get());
    let keys = move || {
        let (before, after) = look.with(|it| (it.before, it.after));
        let key = move |year: Option<i32>| {
            year.map(|year| view! { <Key label=year.to_string() on_tap=Callback::new(move |()| chosen.set(Some(year)))/> })
        };
        (before.is_some() || after.is_some())
            .then(|| view! { <Hand name=words::keys().to_owned()><Keys class="go">{key(before)}{key(after)}</Keys></Hand> })
    };
    view! {
        <Sheet>
            <Head title=title note=words::in_less_out().to_owned() tight=true/>
            <Above><Read name=title below=words::below().to_owned()>{all}</Read></Above>
            <Below>
                {keys}
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

#[derive(Clone, Debug, PartialEq)]
struct Look {
    year: i32,
    before: Option<i32>,
    after: Option<i32>,
    left: String,
    hour: Option<String>,
    of_hours: String,
    in_kind: String,
    kinds: Vec<Row>,
    months: Vec<Row>,
    apart: Vec<Row>,
    builds: Vec<Row>,
}

fn look(books: &Books, view: &View, chosen: Option<i32>) -> Look {
    let (first, last) = books.years(view.shop);
    let year = chosen.unwrap_or(last).clamp(first, last);
    let it = books.year_money(view.shop, year);
    let money = |it: Money| view.tongue.money(it);
    Look {
        year,
        before: (year > first).then(|| year.saturating_sub(1)),
        after: (year < last).then(|| year.saturating_add(1)),
        left: money(it.left_of_year()),
        hour: it.an_hour.map(money),
        of_hours: words::of_hours(
            &view.tongue.hours(minutes::alone(it.own.seconds())),
            !it.in_kind.is_zero(),
        ),
        in_kind: money(it.in_kind),
        kinds: kinds(view, &it),
        months: by_month(view, &it, year),
        apart: apart(books, view, &it, year),
        builds: builds(books, view, year),
    }
}

/// Rounded so that they add up to what is left.
fn kinds(view: &View, it: &YearMoney) -> Vec<Row> {
    let exact: Vec<Money> = it.lines.iter().map(FlowLine::signed).collect();
    let shown = Shown::alone(it.left_of_year(), view.tongue.minor()).parts(&exact);
    let row = |(line, shown): (&FlowLine, Shown)| Row {
        label: flow(line.flow).to_owned(),
        figure: view.tongue.shown(shown),
        ..Row::default()
    };
    it.lines.iter().zip(shown).map(row).collect()
}

fn flow(flow: Flow) -> &'static str {
    match flow {
        Flow::In(kind) => income::kind(kind),
        Flow::Materials => words::materials(),
        Flow::Direct => words::direct(),
        Flow::PaidPeople => words::paid_people(),
        Flow::Blades => words::blades(),
        Flow::Monthly => words::every_month(),
    }
}

fn by_month(view: &View, it: &YearMoney, year: i32) -> Vec<Row> {
    let shown = Shown::alone(it.left_of_year(), view.tongue.minor()).parts(&it.left);
    let months = (1..).zip(shown).take(it.begun);
    let row = |(month, shown): (u32, Shown)| {
        let day = Day::of(year, month, 1)?;
        Some(Row { label: view.tongue.month(day), figure: view.tongue.shown(shown), ..Row::default() })
    };
    months.filter_map(row).collect()
}

fn apart(books: &Books, view: &View, it: &YearMoney, year: i32) -> Vec<Row> {
    let money = |it: Money| view.tongue.money(it);
    let row = |label: &str, working: &str, figure: Money, place: Option<Place>| Row {
        label: label.to_owned(),
        working: working.to_owned(),
        figure: money(figure),
        href: place.map(|place| place.href()),
        ..Row::default()
    };
    let losses = books.stock_losses_in(view.shop, year).money().unwrap_or_default();
    let not_borne = books.not_borne_in(view.shop, year);
    let rows = [
        row(words::tax_in(), words::owed(), it.tax_in, None),
        row(words::tax_back(), words::in_no_cost(), it.tax_back, None),
        row(words::vehicle(), words::no_money(), it.vehicle, None),
        row(words::wear(), words::no_money(), it.wear, Some(Place::Tools)),
        row(words::not_borne(), words::not_borne_why(), not_borne, Some(Place::Months)),
        row(words::lost(), words::lost_why(), losses, Some(Place::Losses)),
    ];
    let some = [it.tax_in, it.tax_back, it.vehicle, it.wear, not_borne, losses];
    rows.into_iter().zip(some).filter(|(_, money)| *money != Money::default()).map(|(row, _)| row).collect()
}

/// Builds that were worked at, or money came in for, in that year: what an hour earned on each, whole.
fn builds(books: &Books, view: &View, year: i32) -> Vec<Row> {
    let row = |(build, hour): (benchslate_core::journal::Id, Result<Money, Gap>)| {
        let it = view.shop.builds.get(&build)?;
        let cost = books.true_cost(build).money();
        Some(Row {
            label: it.title.clone(),
            working: cost.map(|cost| words::true_cost(&view.tongue.money(cost))).unwrap_or_default(),
            figure: hour.map_or_else(
                |why| words::no_hour(&why).to_owned(),
                |it| words::an_hour(&view.tongue.money(it)),
            ),
            lacks: hour.is_err(),
            href: Some(Place::Build(build, Tab::Cost).href()),
        })
    };
    books.paid_best(view.shop, year).into_iter().filter_map(row).collect()
}

fn drawn(it: Look) -> AnyView {
    let text =
        AnswerText { label: words::left().to_owned(), figure: it.left.clone(), note: None, lacks: false };
    let lacks = it.hour.is_none();
    let hour = AnswerText {
        label: words::hour_left().to_owned(),
        figure: it.hour.unwrap_or_else(|| words::no_hours().to_owned()),
        note: Some(it.of_hours),
        lacks,
    };
    let kind =
        AnswerText { label: words::in_kind().to_owned(), figure: it.in_kind, note: None, lacks: false };
    let group = |title: &'static str, rows: Vec<Row>| {
        (!rows.is_empty()).then(|| view! { <Group title=title.to_owned()/>{months::drawn(rows)} })
    };
    let some = !it.kinds.is_empty();
    view! {
        <Leading name=words::left().to_owned()>
            <Answer text/>
            <SideAnswer text=hour leads=Leads::Nowhere/>
            <SideAnswer text=kind leads=Leads::Nowhere/>
        </Leading>
        {group(words::by_kind(), it.kinds)}
        {some.then(|| view! { <SumTotal label=words::left().to_owned() figure=it.left/> })}
        {group(words::by_month(), it.months)}
        {group(words::beside_it(), it.apart)}
        {group(words::by_build(), it.builds)}
        <p class="note">{words::tools_apart()}</p>
        <p class="note">{words::not_tax_advice()}</p>
    }
}
