//! What the salvage of a build saved against new, over every lot that it drew; own time counted in three ways.

use super::{At, Remarks, Row, Say};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText, RowLink, Tone},
        seg::{Choice, Seg},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::{Leads, SumTotal, Sums},
    },
    screens::stock::ways::{self, AN_HOUR, AT_RATE, MoneyLook},
    shell::{Desk, Place, Tab, desk::Phase, desk::View, frame::Places},
    words::{cost, gaps, salvage as words},
};
use benchslate_core::{
    costing::{
        Books, BuildSaving, Path,
        present::{self},
    },
    journal::{Id, kinds::Source},
    measure::Shown,
};

/// The salvage of a build.
#[component]
pub fn SavingSheet(of: Id) -> impl IntoView {
    let build = of;
    let desk = Desk::here();
    let way = RwSignal::new(AT_RATE);
    let looks = Memo::new(move |_| desk.books(|books, view| look(books, view, build, way.get())));
    let title = Signal::derive(move || {
        desk.read(|view| view.shop.builds.get(&build).map(|it| it.title.clone())).unwrap_or_default()
    });
    let choices =
        Signal::derive(move || looks.read().as_ref().map(|it| it.choices.clone()).unwrap_or_default());
    let all = move || match looks.get() {
        Some(look) => sheet(look),
        None if desk.phase.get() == Phase::Ready => {
            view! { <p class="note">{words::build_drew_none()}</p> }
        }
        None => ().draw(),
    };
    view! {
        <Sheet>
            <Head title=title note=words::of_the_build().to_owned() tight=true/>
            <Above><Read name=words::saved().to_owned() below=words::more_below().to_owned()>{all}</Read></Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <Keys class="low" lead=words::count_own_time().to_owned()>
                        <Seg
                            name=words::count_own_time().to_owned()
                            choices
                            chosen=way
                            on_choose=Callback::new(move |at| way.set(at))
                        />
                    </Keys>
                </Hand>
                <Places cell=1 of_build=Signal::stored(Some((build, Some(Tab::Cost))))/>
            </Below>
        </Sheet>
    }
}

#[derive(Clone, PartialEq)]
struct Look {
    label: &'static str,
    figure: String,
    lacks: bool,
    red: bool,
    choices: Vec<Choice>,
    money: Option<MoneyLook>,
    rows: Vec<Row>,
    total: Option<(&'static str, String)>,
    left_out: Option<String>,
    lots: Vec<(String, Option<String>, String)>,
    remarks: Remarks,
}

fn look(books: &Books, view: &View, build: Id, way: usize) -> Option<Look> {
    let saving: BuildSaving = books.build_saving(build)?;
    let (say, minor, tongue) = (Say { books, view }, view.tongue.minor(), view.tongue);
    let statement = match way {
        AN_HOUR => &saving.paid_an_hour,
        AT_RATE => &saving.at_rate,
        _ => &saving.time_free,
    };
    // An hour's pay is worked out from the sum without own time.
    let summed = if way == AN_HOUR { &saving.time_free } else { statement };
    let level = present::alone(summed, minor);
    let path = Path { steps: vec![summed.rule.step()] };
    let shown = present::alone(statement, minor).shown;
    let red = shown.is_some_and(Shown::is_negative);
    let size = |shown: Shown| tongue.shown(if shown.is_negative() { shown.negated() } else { shown });
    let total = level.shown.map(|shown| {
        let label = if shown.is_negative() { words::dearer_total() } else { words::saved_total() };
        (label, size(shown))
    });
    let lots = saving.lots.iter().map(|lot| {
        let own = books.lot(*lot).and_then(|book| book.saving.at_rate.money());
        let figure = own.map(|money| tongue.money(money));
        (gaps::name(view.shop, Source::Lot(*lot)), figure, Place::Lot(*lot).href())
    });
    let figures = [&saving.time_free, &saving.at_rate, &saving.paid_an_hour].map(|it| ways::on_key(view, it));
    Some(Look {
        label: ways::label(way, red),
        figure: shown.map_or_else(
            || ways::lacks(statement).to_owned(),
            |shown| if way == AN_HOUR { tongue.shown(shown) } else { size(shown) },
        ),
        lacks: shown.is_none(),
        red,
        choices: ways::choices(&figures),
        money: ways::money_look(view, &level, way),
        rows: super::rows(say, &level, At { of: build, path: &path }),
        total,
        left_out: (!saving.overhead_left_out.is_zero())
            .then(|| words::overhead_left_out(&tongue.money(saving.overhead_left_out))),
        lots: lots.collect(),
        remarks: Remarks::of(say, statement),
    })
}

fn sheet(look: Look) -> AnyView {
    let text = AnswerText {
        label: look.label.to_owned(),
        note: Some(words::on_what_it_drew().to_owned()),
        figure: look.figure,
        lacks: look.lacks,
    };
    let tone = if look.red { Tone::Red } else { Tone::Ink };
    let total = look.total.map(|(label, figure)| view! { <SumTotal label=label.to_owned() figure/> });
    let rows = look.rows.into_iter().map(super::drawn).collect::<Vec<_>>();
    let left_out = look.left_out.map(|text| view! { <p class="note">{text}</p> });
    let lots = look.lots.into_iter().map(|(name, figure, href)| {
        let label = cost::capital(&name);
        view! { <RowLink label end=figure.unwrap_or_default() leads=Leads::To(href)/> }
    });
    view! {
        <Answer text tone/>
        {look.money.map(ways::money)}
        <Sums>{rows}{total}</Sums>
        {left_out}
        <h2 class="group">{words::lot_by_lot()}</h2>
        {lots.collect::<Vec<_>>()}
        {super::remarks(look.remarks)}
    }
}
