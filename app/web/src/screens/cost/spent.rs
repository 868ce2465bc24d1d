//! Spent, used up, and the bridge between them, drawn and as a sum up to the true cost.

use super::{
    figures::{self, At, Row},
    missing,
    say::{self, Say},
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        bridge::{Bridge, BridgeText},
        hatch::Hatch,
        sheet::{Above, Below, Head, Read, Sheet},
        sum_row::{Leads, SumTotal, Sums},
    },
    shell::{
        Desk, Place, Tab,
        desk::{Phase, View},
        frame::Places,
    },
    words::cost as words,
};
use benchslate_core::{
    costing::{
        Books, BuildCost, Path, Rule, Statement,
        present::{self, Level},
    },
    journal::Id,
};

/// A piece below this share of the bar is too narrow for its word.
const SHELF_WORD: f64 = 0.16;

/// From what was spent to the true cost.
#[component]
pub fn SpentSheet(of: Id) -> impl IntoView {
    let build = of;
    let desk = Desk::here();
    let spent = Memo::new(move |_| desk.books(|books, view| look(books, view, build)));
    let note = Signal::derive(move || spent.read().as_ref().map(|spent| spent.title.clone()));
    let all = move || match spent.get() {
        _ if desk.phase.get() != Phase::Ready => ().draw(),
        None => missing::no_build(),
        Some(spent) => whole(spent),
    };
    view! {
        <Sheet>
            <Head title=words::spent_title().to_owned() note=note tight=true/>
            <Above>
                <Read
                    name=words::spent_title().to_owned()
                    below=words::more_to_the_true_cost().to_owned()
                >
                    {all}
                </Read>
            </Above>
            <Below><Places cell=1 of_build=Signal::stored(Some((build, Some(Tab::Spent))))/></Below>
        </Sheet>
    }
}

#[derive(Clone, Debug, PartialEq)]
struct Spent {
    title: String,
    drawing: BridgeText,
    to_used: Vec<Row>,
    used: String,
    to_true: Vec<Row>,
    whole: String,
    /// Tax to be got back, and where it opens.
    tax: Option<(String, String)>,
}

fn look(books: &Books, view: &View, build: Id) -> Option<Spent> {
    let title = view.shop.builds.get(&build)?.title.clone();
    let (say, cost) = (Say { books, view }, books.build_cost(build));
    let top = Path { steps: vec![Rule::FromUsedUp.step()] };
    let path = top.to(Rule::UsedUp.step());
    let levels = present::open(&cost.bridge, &path, view.tongue.minor())?;
    let [whole, used] = levels.as_slice() else { return None };
    let figure = |level: &Level| {
        let missing = || figures::missing(level.statement).to_owned();
        say.figure(level.shown, level.statement.value).unwrap_or_else(missing)
    };
    let mut to_true = figures::rows(say, whole, At { of: build, path: &top });
    to_true.retain(|row| !row.sign.is_empty());
    let to_used = figures::rows(say, used, At { of: build, path: &path });
    // A sum whose other terms all lack something is no nought.
    let all = if cost.true_cost.value.is_some() {
        figure(whole)
    } else {
        figures::missing(&cost.true_cost).to_owned()
    };
    let texts = [figure(used), all];
    Some(Spent {
        title,
        drawing: drawing(say, &cost, &to_used, &texts),
        to_used,
        to_true,
        tax: tax(say, &cost, build),
        used: texts[0].clone(),
        whole: texts[1].clone(),
    })
}

fn tax(say: Say, cost: &BuildCost, build: Id) -> Option<(String, String)> {
    let money = cost.tax_back.money().filter(|money| !money.is_zero())?;
    let path = Path { steps: vec![cost.tax_back.rule.step()] };
    Some((say.money(money), Place::Opened(build, path.to_string()).href()))
}

/// The bars: by kind, what was drawn of lots bought for it and what of other stock.
fn drawing(say: Say, cost: &BuildCost, rows: &[Row], texts: &[String; 2]) -> BridgeText {
    let used = cost.used_up();
    let part = |rule: Rule| used.and_then(|used| used.part(|it| *it == rule));
    let (shelf, other) = (part(Rule::NotDrawn), part(Rule::OtherStock));
    let size = |statement: Option<&Statement>| figures::size(statement.and_then(|it| it.value));
    let earlier = by_kind(say, other.into_iter());
    let all = by_kind(say, [&cost.used_up_by_kind].into_iter());
    let common = all.into_iter().map(|(kind, whole)| {
        let other = earlier.iter().find(|(it, _)| *it == kind).map_or(0.0, |(_, size)| *size);
        (kind, (whole - other).max(0.0))
    });
    let rest = cost.bridge.parts.iter().skip(1).filter_map(|part| {
        let kind = say::kind(&part.statement()?.rule, say.view.shop)?;
        Some((figures::hatch(kind), figures::size(part.value())))
    });
    let figure = |at: usize| rows.get(at).map(|row| row.figure.as_str()).unwrap_or_default();
    let [used, whole] = texts;
    let common: Vec<(Hatch, f64)> = common.collect();
    let sum = |kinds: &[(Hatch, f64)]| kinds.iter().map(|(_, size)| size).sum::<f64>();
    let shelf = size(shelf);
    let narrow = shelf < SHELF_WORD * (shelf + sum(&common) + sum(&earlier));
    BridgeText {
        shelf,
        common,
        earlier: earlier.clone(),
        rest: rest.collect(),
        spent_text: words::dim_spent(figure(0)),
        shelf_word: if narrow { String::new() } else { words::shelf().to_owned() },
        shelf_text: if narrow { words::dim_shelf(figure(1)) } else { figure(1).to_owned() },
        earlier_text: words::dim_earlier(figure(2)),
        used_text: words::dim_used(used),
        true_text: words::dim_true(whole),
        name: words::bridge_name([figure(0), figure(1), figure(2), used, whole]),
    }
}

/// Terms gathered by kind, in the order in which kinds come; for the drawing only.
fn by_kind<'a>(say: Say, statements: impl Iterator<Item = &'a Statement>) -> Vec<(Hatch, f64)> {
    let mut kinds: Vec<(Hatch, f64)> = Vec::new();
    for part in statements.flat_map(|it| &it.parts) {
        let Some(kind) = part.statement().and_then(|it| say::kind(&it.rule, say.view.shop)) else { continue };
        let (kind, size) = (figures::hatch(kind), figures::size(part.value()));
        match kinds.iter_mut().find(|(it, _)| *it == kind) {
            Some((_, sum)) => *sum += size,
            None => kinds.push((kind, size)),
        }
    }
    kinds
}

fn whole(spent: Spent) -> AnyView {
    let tax = spent.tax.map(|(figure, href)| {
        view! {
            <RowLink label=words::tax_back().to_owned() end=words::apart().to_owned() figure=figure leads=Leads::To(href)/>
        }
    });
    view! {
        <Bridge text=spent.drawing/>
        <Sums>
            {spent.to_used.into_iter().map(figures::drawn).collect::<Vec<_>>()}
            <SumTotal label=words::used_up().to_owned() figure=spent.used/>
            {spent.to_true.into_iter().map(figures::drawn).collect::<Vec<_>>()}
            <SumTotal label=words::true_cost().to_owned() figure=spent.whole/>
        </Sums>
        {tax}
    }
}
