//! The sheet: the day by which the cut must go out, the chain that it comes from, what is owed, chapters, who is outside.

use super::look::{Answer, Look, OwedRow, Stop, look};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{self, AnswerText, RowLink, Tone},
        fixed_date::FixedDate,
        kept_row::{KeptRow, KeptText},
        key::{KeyKind, KeyLink},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText, SumTotal, Sums},
    },
    screens::{journal::publishing_facts, trouble::Troubles},
    shell::{
        Desk, Place, Tab, Way,
        desk::{Mark, Marked},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{journal, pack, publishing as words, steps},
};
use benchslate_core::journal::{Body, Change, Id, Kind, kinds};

/// The sheet.
#[component]
pub fn PublishingSheet(of: Id) -> impl IntoView {
    let desk = Desk::here();
    let minute = desk.minute();
    let look = Memo::new(move |_| desk.read(|view| look(view, of, minute)));
    let title = words::publishing();
    let about = Signal::derive(move || look.read().as_ref().map(|it| it.title.clone()));
    let rows = move || look.read().as_ref().map(|look| drawn(desk, of, look));
    let dated = Memo::new(move |_| look.read().as_ref().is_some_and(|it| it.publish.is_some()));
    view! {
        <Sheet>
            <Head title=title.to_owned() note=about tight=true/>
            <Above>
                <Troubles/>
                <Read name=title.to_owned() below=words::below().to_owned()>{rows}</Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>{move || keys(of, dated.get())}</Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, Some(Tab::Film))))/>
            </Below>
        </Sheet>
    }
}

fn keys(of: Id, dated: bool) -> AnyView {
    let (day, pack_kind) =
        if dated { (KeyKind::Plain, KeyKind::Filled) } else { (KeyKind::Filled, KeyKind::Plain) };
    view! {
        <Keys class="low">
            <KeyLink
                label=words::new_due().to_owned()
                note=words::by_a_day().to_owned()
                href=Place::Add(Kind::Due, Some(of)).href()
            />
            <KeyLink
                label=words::new_chapter().to_owned()
                note=words::title_and_time().to_owned()
                href=Place::Add(Kind::Chapter, Some(of)).href()
            />
        </Keys>
        <Keys class="go">
            <KeyLink
                label=words::publish_day().to_owned()
                note=words::and_length().to_owned()
                kind=day
                href=Place::Out(of, Way::GoesOut).href()
            />
            <KeyLink
                label=pack::title().to_owned()
                note=pack::what_kind().to_owned()
                kind=pack_kind
                href=Place::Out(of, Way::Pack).href()
            />
        </Keys>
    }
}

fn drawn(desk: Desk, of: Id, look: &Look) -> AnyView {
    let told: Vec<AnyView> =
        look.troubles.iter().map(|text| view! { <p class="told-red">{text.clone()}</p> }).collect();
    view! {
        {told}
        {look.answer.as_ref().map(answer)}
        {chain(look)}
        {edit(of, look)}
        {owed(desk, of, &look.owed)}
        {chapters(look)}
        {outside(look)}
    }
}

fn answer(it: &Answer) -> AnyView {
    let text = AnswerText {
        label: it.label.to_owned(),
        note: it.note.clone(),
        figure: it.figure.clone(),
        lacks: false,
    };
    view! { <answer::Answer text tone=if it.red { Tone::Red } else { Tone::Ink }/> }
}

/// As a sum taken off the date that can't move.
fn chain(look: &Look) -> AnyView {
    let Some(day) = look.publish.clone() else {
        return view! { <p class="lead">{words::no_date()}</p> };
    };
    let mut stops = look.stops.clone();
    // The first stands over the line; the last is what the chain comes to.
    let first = (!stops.is_empty()).then(|| stops.remove(0));
    let last = stops.pop();
    let row = |it: Stop| {
        let text = SumText {
            sign: "\u{2212}".to_owned(),
            label: it.label,
            working: it.working,
            figure: it.figure,
            lacks: it.red,
        };
        view! { <SumRow text/> }
    };
    let label = first.map_or_else(|| words::publish_day().to_owned(), |it| it.label);
    let rows: Vec<AnyView> = stops.into_iter().map(row).collect();
    let total = last.map(|it| {
        let label = match it.working {
            Some(working) => journal::comma(&it.label, &working),
            None => it.label,
        };
        view! { <SumTotal label figure=it.figure/> }
    });
    let list = if look.own_list { words::own_list() } else { words::common_practice() };
    view! {
        <section aria-label=words::the_chain()>
            <FixedDate label day/>
            {rows}
            {total}
        </section>
        <p class="note">{list}</p>
        <RowLink label=words::change_the_list() leads=Leads::To(Place::Leads.href())/>
    }
}

fn edit(of: Id, look: &Look) -> AnyView {
    let text = SumText {
        label: words::edit_left().to_owned(),
        working: look.edit.working.clone(),
        figure: look.edit.figure.clone(),
        lacks: look.edit.lacks,
        ..SumText::default()
    };
    let leads = Leads::To(Place::Out(of, Way::GoesOut).href());
    view! { <Sums><SumRow text leads signed=false/></Sums> }
}

fn owed(desk: Desk, of: Id, rows: &[OwedRow]) -> AnyView {
    let row = move |it: &OwedRow| {
        let (due, key) = (it.due, if it.done { steps::not_done() } else { steps::done() });
        let text = KeptText {
            label: it.what.clone(),
            note: Some(it.note.clone()),
            key: key.to_owned(),
            key_name: steps::key_name(key, &it.what),
        };
        let late = it.late;
        let done = !it.done;
        let tap = Callback::new(move |()| mark_done(desk, of, due, done));
        view! { <KeptRow text late leads=Leads::To(Place::Entry(due).href()) on_tap=tap/> }
    };
    let none = rows.is_empty().then(|| view! { <p class="note">{words::nothing_owed()}</p> });
    let rows: Vec<AnyView> = rows.iter().map(row).collect();
    view! { <Group title=words::owed().to_owned()/>{none}{rows} }
}

fn chapters(look: &Look) -> AnyView {
    let row = |(id, text): &(Id, String)| {
        view! { <RowLink label=text.clone() leads=Leads::To(Place::Entry(*id).href())/> }
    };
    let none = look.chapters.is_empty().then(|| view! { <p class="note">{words::no_chapters()}</p> });
    let fault = look.fault.clone().map(|text| view! { <p class="told-red">{text}</p> });
    let rows: Vec<AnyView> = look.chapters.iter().map(row).collect();
    let taken = |(shot, what, by): &(Id, String, String)| {
        let leads = Leads::To(Place::Add(Kind::Chapter, Some(*shot)).href());
        view! { <RowLink label=what.clone() end=by.clone() leads/> }
    };
    let more = (!look.taken.is_empty()).then(|| view! { <Group title=words::from_the_takes().to_owned()/> });
    let taken: Vec<AnyView> = look.taken.iter().map(taken).collect();
    view! { <Group title=words::chapters().to_owned()/>{fault}{none}{rows}{more}{taken} }
}

fn outside(look: &Look) -> AnyView {
    let row = |(id, name, kind): &(Id, String, &'static str)| {
        view! { <RowLink label=name.clone() end=(*kind).to_owned() leads=Leads::To(Place::Entry(*id).href())/> }
    };
    let rows: Vec<AnyView> = look.outside.iter().map(row).collect();
    let more = Leads::To(Place::Add(Kind::Outsider, None).href());
    view! {
        <Group title=words::outside().to_owned()/>
        {rows}
        <RowLink label=words::one_more_outside() end=words::their_days().to_owned() leads=more/>
    }
}

fn mark_done(desk: Desk, build: Id, due: Id, done: bool) {
    desk.act(
        move |hand| {
            let Some(Body::Due(it)) = hand.journal.body(due) else { return Vec::new() };
            let done = done.then(|| hand.shop.zone.day(hand.now));
            vec![Change::write(due, kinds::Due { done, ..it.clone() })]
        },
        move |after| {
            let it = after.shop.dues.get(&due);
            let what = it.map(|it| publishing_facts::due(&it.body)).unwrap_or_default();
            let done = it.is_some_and(|it| it.body.done.is_some());
            let second = after.shop.builds.get(&build).map(|it| it.title.clone());
            let kind = journal::kind(Kind::Due).to_owned();
            Marked::from(Mark { kind, what: words::marked_done(&what, done), second })
        },
    );
}
