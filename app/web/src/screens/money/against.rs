//! Planned and actual: hours by stage, materials by lot and item; each row opens down to its entries.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{AnswerText, Leading, SideAnswer},
        key::KeyLink,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads},
    },
    screens::{
        cost::Say,
        journal::facts,
        months::{self, Row},
    },
    shell::{Desk, Place, desk::View, frame::Places},
    words::{against as words, gaps, units},
};
use benchslate_core::{
    costing::{AgainstPlan, Books, BuildCost, Hours, Material, StageAgainst, StockAgainst},
    journal::{
        Body, Id,
        kinds::{Bearer, Source},
    },
    measure::{Money, Quantity, Seconds, minutes},
};

/// The sheet.
#[component]
pub fn AgainstSheet(of: Id) -> impl IntoView {
    let desk = Desk::here();
    let look = Memo::new(move |_| desk.books(|books, view| look(books, view, of)));
    let title = Signal::derive(move || look.read().as_ref().map(|it| it.title.clone()).unwrap_or_default());
    let all = move || look.get().map(drawn);
    view! {
        <Sheet>
            <Head title=title tight=true/>
            <Above><Read name=title below=words::below().to_owned()>{all}</Read></Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    <Keys class="go">
                        <KeyLink label=words::to_buy().to_owned() href=Place::Buying.href()/>
                        <KeyLink label=words::to_steps().to_owned() href=Place::Steps(of).href()/>
                    </Keys>
                </Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, None)))/>
            </Below>
        </Sheet>
    }
}

#[derive(Clone, Debug, PartialEq)]
struct Look {
    title: String,
    sums: Vec<AnswerText>,
    stages: Vec<Row>,
    stock: Vec<Row>,
}

fn look(books: &Books, view: &View, build: Id) -> Option<Look> {
    let title = words::title(&view.shop.builds.get(&build)?.title);
    let against = books.against_plan(view.shop, build);
    if against.is_empty() {
        return Some(Look { title, sums: Vec::new(), stages: Vec::new(), stock: Vec::new() });
    }
    let (say, cost) = (Say { books, view }, books.build_cost(build));
    Some(Look {
        title,
        sums: sums(say, &against),
        stages: against.stages.iter().map(|it| stage(say, &cost, build, it)).collect(),
        stock: against.stock.iter().map(|it| stock(say, &cost, build, it)).collect(),
    })
}

/// The row on the money of a build; none: nothing was planned.
pub fn row(say: Say, build: Id) -> Option<Row> {
    let against = say.books.against_plan(say.view.shop, build);
    let sums = sums(say, &against);
    let first = sums.into_iter().next().filter(|_| !against.is_empty());
    (!against.is_empty()).then(|| Row {
        label: words::way_here().to_owned(),
        working: first.as_ref().and_then(|it| it.note.clone()).unwrap_or_default(),
        figure: first.map(|it| it.figure).unwrap_or_default(),
        href: Some(Place::Against(build).href()),
        ..Row::default()
    })
}

fn sums(say: Say, against: &AgainstPlan) -> Vec<AnswerText> {
    let hours = against.hours().map(|it| AnswerText {
        label: words::hours().to_owned(),
        note: Some(words::of(
            &time(say, it.actual),
            &time(say, it.planned),
            some(it.beside, |it| time(say, it)).as_deref(),
        )),
        figure: more_hours(say, it.more),
        lacks: false,
    });
    let materials = against.materials().map(|it| AnswerText {
        label: words::materials().to_owned(),
        note: Some(words::of(
            &say.money(it.actual),
            &say.money(it.planned),
            some(it.beside, |it| say.money(it)).as_deref(),
        )),
        figure: more_money(say, it.more),
        lacks: false,
    });
    hours.into_iter().chain(materials).collect()
}

/// Nothing at all is not said.
fn some<T: Default + PartialEq>(it: T, say: impl FnOnce(T) -> String) -> Option<String> {
    (it != T::default()).then(|| say(it))
}

fn time(say: Say, it: Seconds) -> String {
    say.view.tongue.hours(minutes::alone(it))
}

fn more_hours(say: Say, it: Seconds) -> String {
    words::more(say.hours(Hours::of(minutes::alone(it))), it < Seconds::ZERO)
}

fn more_money(say: Say, it: Money) -> String {
    words::more(say.money(it), it.is_negative())
}

fn stage(say: Say, cost: &BuildCost, build: Id, it: &StageAgainst) -> Row {
    let planned = it.planned.map(|it| time(say, it));
    let path = cost.path_to_stage(it.stage);
    Row {
        label: facts::stage(say.view, it.stage),
        working: words::planned_and_logged(planned.as_deref(), &time(say, it.logged)),
        figure: more_hours(say, it.more().unwrap_or(it.logged)),
        // Where nothing was logged only its steps are there.
        href: Some(path.map_or(Place::Steps(build), |path| Place::Opened(build, path.to_string())).href()),
        ..Row::default()
    }
}

fn stock(say: Say, cost: &BuildCost, build: Id, it: &StockAgainst) -> Row {
    let view = say.view;
    let amount = |quantity: Quantity| match it.material {
        Material::Stock(source) => say.quantity(quantity, it.unit, Some(source)),
        Material::Words(_) => units::amount_short(view.tongue, quantity, it.unit, None),
    };
    let priced = |quantity: Quantity, cost: Option<Money>| {
        words::so_much_for(&amount(quantity), cost.map(|it| say.money(it)).as_deref())
    };
    let used = priced(it.drawn, it.cost.filter(|_| !it.drawn.is_zero()));
    let planned = it.planned.map(|quantity| priced(quantity, it.planned_cost));
    let working = match (it.like, &planned) {
        (Some(like), Some(planned)) => {
            words::like_and_used(planned, &facts::bearer(view, Bearer::Build(like)), &used)
        }
        _ => words::planned_and_used(planned.as_deref(), &used),
    };
    let more = if it.planned.is_some() { it.more_cost() } else { it.cost };
    Row {
        label: name(view, it.material),
        working,
        lacks: more.is_none(),
        figure: more.map_or_else(|| words::no_price().to_owned(), |it| more_money(say, it)),
        href: Some(opens(cost, build, it.material).href()),
    }
}

fn name(view: &View, of: Material) -> String {
    match of {
        Material::Stock(source) => gaps::name(view.shop, source),
        Material::Words(line) => match view.journal.body(line) {
            Some(Body::BuyLine(it)) => crate::screens::buying::name(view, it),
            _ => String::new(),
        },
    }
}

fn opens(cost: &BuildCost, build: Id, of: Material) -> Place {
    match of {
        Material::Stock(source) => match cost.path_to_stock(source) {
            Some(path) => Place::Opened(build, path.to_string()),
            None => {
                let (Source::Lot(id) | Source::Item(id)) = source;
                Place::Lot(id)
            }
        },
        Material::Words(line) => Place::Entry(line),
    }
}

fn drawn(look: Look) -> AnyView {
    if look.stages.is_empty() && look.stock.is_empty() {
        return view! { <p class="lead">{words::nothing_planned()}</p> };
    }
    let sums = look.sums.into_iter().map(|text| view! { <SideAnswer text leads=Leads::Nowhere/> });
    let group = |title: &'static str, rows: Vec<Row>| {
        (!rows.is_empty()).then(|| view! { <Group title=title.to_owned()/>{months::drawn(rows)} })
    };
    view! {
        <Leading name=words::both().to_owned()>{sums.collect::<Vec<AnyView>>()}</Leading>
        {group(words::by_stage(), look.stages)}
        {group(words::by_item(), look.stock)}
        <p class="note">{words::how()}</p>
    }
}
