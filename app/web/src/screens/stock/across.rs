//! What all salvage saved, by the place it came from or by species: bars on one scale, and the lots of each.

use super::ways::{self, AT_RATE};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText, Tone},
        money_board::{Amounts, Worth, WorthRow},
        plain,
        seg::{Choice, Seg},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::{Leads, SumRow, SumText, SumTotal, Sums},
    },
    screens::cost::{Remarks, Say, remarks},
    shell::{
        Desk, Place,
        desk::{Phase, View},
        frame::Places,
    },
    words::{across as words, gaps, salvage},
};
use benchslate_core::{
    costing::{
        Books, Path, Rule, Statement, Step,
        salvage::{By, Group},
    },
    journal::{Id, kinds::Source},
};

const BY: [By; 2] = [By::Source, By::Species];
const AN_HOUR: usize = 2;

/// By source or by species, own time counted in three ways.
#[component]
pub fn AcrossSheet() -> impl IntoView {
    let desk = Desk::here();
    let (by, way) = (RwSignal::new(0_usize), RwSignal::new(AT_RATE));
    let looks = Memo::new(move |_| {
        let of = BY.get(by.get()).copied().unwrap_or(By::Source);
        desk.books(|books, view| look(books, view, of, way.get()))
    });
    let choices =
        Signal::derive(move || looks.read().as_ref().map(|it| it.choices.clone()).unwrap_or_default());
    let all = move || match looks.get() {
        Some(look) => sheet(look),
        None if desk.phase.get() == Phase::Ready => view! { <p class="note">{words::nothing_yet()}</p> },
        None => ().draw(),
    };
    let kinds = words::by().into_iter().map(Choice::plain).collect();
    view! {
        <Sheet>
            <Head title=words::title().to_owned() note=words::so_far().to_owned() tight=true/>
            <Above><Read name=words::title().to_owned() below=words::more().to_owned()>{all}</Read></Above>
            <Below>
                <Hand name=salvage::keys().to_owned() kind=HandKind::Dense>
                    <Keys class="low" lead=words::put_together().to_owned()>
                        <Seg
                            name=words::put_together().to_owned()
                            choices=Signal::stored(kinds)
                            chosen=by
                            on_choose=Callback::new(move |at| by.set(at))
                        />
                    </Keys>
                    {ways::keys(choices, way)}
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

#[derive(Clone, PartialEq)]
struct Look {
    answer: (&'static str, String, bool, bool),
    bars: Vec<WorthRow>,
    groups: Vec<Rows>,
    total: Option<String>,
    choices: Vec<Choice>,
    remarks: Remarks,
}

/// A group and its lots: what, beside what, the figure, where it leads.
#[derive(Clone, PartialEq)]
struct Rows {
    head: [String; 3],
    opens: String,
    lots: Vec<(String, String, String)>,
}

fn chosen(three: [&Statement; 3], way: usize) -> &Statement {
    ways::chosen(three, way)
}

fn look(books: &Books, view: &View, by: By, way: usize) -> Option<Look> {
    let across = books.across(by)?;
    let tongue = view.tongue;
    let figure =
        |of: &Statement| of.money().map_or_else(|| ways::lacks(of).to_owned(), |it| tongue.money(it));
    let all = [&across.time_free, &across.at_rate, &across.paid_an_hour];
    let of_group =
        |it: &'_ Group| -> Statement { chosen([&it.time_free, &it.at_rate, &it.paid_an_hour], way).clone() };
    let name = |it: &Group| it.name.clone().unwrap_or_else(|| words::not_said(by == By::Source).to_owned());
    let statement = chosen(all, way);
    let money = statement.money();
    let red = money.is_some_and(|it| it.is_negative()) && way != AN_HOUR;
    let label = match (way, red) {
        (AN_HOUR, _) => salvage::hour_paid(),
        (_, true) => salvage::dearer(),
        (_, false) => salvage::saved(),
    };
    let bars = across.groups.iter().filter_map(|group| {
        let money = of_group(group).money()?;
        let size = plain::read(&money.unsigned().shown(2));
        // Below nothing it is all loss; else all of it is saved.
        let amounts = if money.is_negative() {
            Amounts { instead: 0.0, cash: size, own_time: 0.0 }
        } else {
            Amounts { instead: size, cash: 0.0, own_time: 0.0 }
        };
        Some(WorthRow { label: name(group), usual: false, amounts, outcome: tongue.money(money) })
    });
    // Under the figure of the whole, so that going back up leads through it.
    let opens = |group: &Group, below: Option<Step>| {
        let of_group = of_group(group);
        let top = Path { steps: if way == AN_HOUR { Vec::new() } else { vec![statement.rule.step()] } };
        let path = below.into_iter().fold(top.to(of_group.rule.step()), |path, step| path.to(step));
        group.lots.first().map(|first| Place::Opened(*first, path.to_string()).href()).unwrap_or_default()
    };
    let lot = |group: &Group, id: &Id| {
        let saving = books.lot(*id)?.saving;
        let own = chosen([&saving.time_free, &saving.at_rate, &saving.paid_an_hour], way);
        let href = if way == AN_HOUR {
            Place::Opened(*id, Path { steps: vec![own.rule.step()] }.to_string()).href()
        } else {
            opens(group, Some(Rule::LotSaved { lot: *id, at_rate: way == AT_RATE }.step()))
        };
        Some((gaps::name(view.shop, Source::Lot(*id)), figure(own), href))
    };
    let groups = across.groups.iter().map(|group| Rows {
        head: [name(group), words::an_hour(&figure(&group.paid_an_hour)), figure(&of_group(group))],
        opens: opens(group, None),
        lots: group.lots.iter().filter_map(|id| lot(group, id)).collect(),
    });
    let words_of = [salvage::free(), salvage::at_rate(), salvage::an_hour()];
    Some(Look {
        answer: (label, figure(statement), money.is_none(), red),
        bars: bars.collect(),
        groups: groups.collect(),
        // Hours' pay is no sum.
        total: (way != AN_HOUR).then(|| figure(statement)),
        choices: words_of
            .iter()
            .zip(all)
            .map(|(label, it)| Choice { label: (*label).to_owned(), note: Some(figure(it)) })
            .collect(),
        remarks: Remarks::of(Say { books, view }, statement),
    })
}

fn sheet(look: Look) -> AnyView {
    let (label, figure, lacks, red) = look.answer;
    let text =
        AnswerText { label: label.to_owned(), note: Some(words::on_all_drawn().to_owned()), figure, lacks };
    let tone = if red { Tone::Red } else { Tone::Ink };
    let told: Vec<String> = look.bars.iter().map(|row| words::told(&row.label, &row.outcome)).collect();
    let bars = (!look.bars.is_empty()).then(|| {
        view! { <Worth name=told.join("; ") caption=words::one_scale() rows=look.bars/> }
    });
    let group = |Rows { head: [label, working, figure], opens, lots }: Rows| {
        let text = SumText { label, working: Some(working), figure, ..SumText::default() };
        let lot = |(label, figure, href): (String, String, String)| {
            let text = SumText { label, figure, ..SumText::default() };
            view! { <SumRow text leads=Leads::To(href)/> }
        };
        view! {
            <SumRow text leads=Leads::To(opens) signed=false/>
            {lots.into_iter().map(lot).collect::<Vec<_>>()}
        }
    };
    let total = look.total.map(|figure| view! { <SumTotal label=words::together().to_owned() figure/> });
    view! {
        <Answer text tone/>
        {bars}
        <Sums>{look.groups.into_iter().map(group).collect::<Vec<_>>()}{total}</Sums>
        <p class="note">{words::left_out()}</p>
        {remarks(look.remarks)}
    }
}
