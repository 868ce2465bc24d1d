//! What the salvage of a build saved against new, over every lot that it drew; own time counted in three ways.

use super::{Remarks, Say};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        sheet::{Above, Below, Hand, HandKind, Head, Read, Sheet},
        sum_row::Leads,
    },
    screens::stock::ways::{self, AT_RATE, Answered},
    shell::{Desk, Place, Tab, desk::Phase, desk::View, frame::Places},
    words::{across, cost, gaps, salvage as words},
};
use benchslate_core::{
    costing::{Books, BuildSaving},
    journal::{Id, kinds::Source},
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
        Signal::derive(move || looks.read().as_ref().map(|it| it.answered.choices()).unwrap_or_default());
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
                    {ways::keys(choices, way)}
                </Hand>
                <Places cell=1 of_build=Signal::stored(Some((build, Some(Tab::Cost))))/>
            </Below>
        </Sheet>
    }
}

#[derive(Clone, PartialEq)]
struct Look {
    answered: Answered,
    left_out: Option<String>,
    /// Reclaiming that the build bears itself.
    reclaimed_here: Option<String>,
    lots: Vec<(String, Option<String>, String)>,
    remarks: Remarks,
}

fn look(books: &Books, view: &View, build: Id, way: usize) -> Option<Look> {
    let saving: BuildSaving = books.build_saving(build)?;
    let (say, tongue) = (Say { books, view }, view.tongue);
    let three = [&saving.time_free, &saving.at_rate, &saving.paid_an_hour];
    let lots = saving.lot_by_lot(tongue.minor()).into_iter().map(|(lot, shown)| {
        (gaps::name(view.shop, Source::Lot(lot)), shown.map(|it| tongue.shown(it)), Place::Lot(lot).href())
    });
    Some(Look {
        answered: ways::answered(say, build, three, way),
        left_out: (!saving.overhead_left_out.is_zero())
            .then(|| words::overhead_left_out(&tongue.money(saving.overhead_left_out))),
        reclaimed_here: (!saving.reclaimed_here.is_zero())
            .then(|| words::reclaimed_here(&tongue.hours(saving.reclaimed_here))),
        lots: lots.collect(),
        remarks: Remarks::of(say, ways::chosen(three, way)),
    })
}

fn sheet(look: Look) -> AnyView {
    let head = look.answered.head(words::on_what_it_drew().to_owned());
    let money = look.answered.money.clone().map(ways::money);
    let left_out = look.left_out.map(|text| view! { <p class="note">{text}</p> });
    let reclaimed = look.reclaimed_here.map(|text| view! { <p class="note">{text}</p> });
    let lots = look.lots.into_iter().map(|(name, figure, href)| {
        let label = cost::capital(&name);
        view! { <RowLink label end=figure.unwrap_or_default() leads=Leads::To(href)/> }
    });
    view! {
        {head}
        {money}
        {look.answered.sum()}
        <p class="note">{across::left_out()}</p>
        {reclaimed}
        {left_out}
        <h2 class="group">{words::lot_by_lot()}</h2>
        {lots.collect::<Vec<_>>()}
        {super::remarks(look.remarks)}
    }
}
