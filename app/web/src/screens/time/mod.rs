//! The time sheet of a build: the hours as bars to one scale, cut by stage, person, day or camera.

mod line;
mod rows;

pub use line::LineSheet;

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        message::Message,
        seg::{Choice, Seg},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Leads, SumRow, SumText, Sums},
        time_bar::{TimeBar, TimeBarRow, TimeGroup, TimeRow},
    },
    screens::cost::no_build,
    shell::{Desk, Tab, desk::Phase, frame::Places},
    words::{cost, time as words},
};
use benchslate_core::journal::Id;
use rows::{Cut, Group, Ratio, Time};

/// Where the hours of a build went.
#[component]
pub fn TimeSheet(of: Id) -> impl IntoView {
    let desk = Desk::here();
    let cut = RwSignal::new(0_usize);
    let opened: Opened = RwSignal::new(None);
    let time = Memo::new(move |_| desk.books(|books, view| rows::look(books, view, of, Cut::at(cut.get()))));
    let title = Signal::derive(move || match time.read().as_ref() {
        Some(time) => words::title(&time.title),
        None if desk.phase.get() == Phase::Ready => cost::no_build().to_owned(),
        None => String::new(),
    });
    let note =
        Signal::derive(move || time.read().as_ref().filter(|it| it.runs).map(|_| words::so_far().to_owned()));
    let all = move || match time.get() {
        _ if desk.phase.get() != Phase::Ready => ().draw(),
        None => no_build(),
        Some(time) if time.empty => nothing_yet(time),
        Some(time) => whole(time, opened),
    };
    // The keys stand while hours are kept, or a minute passes.
    let there = Memo::new(move |_| time.read().as_ref().is_some_and(|it| !it.empty));
    let keys = move || {
        let choices: Vec<Choice> = words::ways().into_iter().map(Choice::plain).collect();
        there.get().then(|| {
            view! {
                <Hand name=words::keys().to_owned()>
                    <Keys class="go">
                        <Seg
                            name=words::keys().to_owned()
                            choices=Signal::stored(choices)
                            chosen=cut
                            on_choose=Callback::new(move |at| cut.set(at))
                        />
                    </Keys>
                </Hand>
            }
        })
    };
    view! {
        <Sheet>
            <Head title=title note=note tight=true/>
            <Above><Read name=title below=words::down_to_ratios().to_owned()>{all}</Read></Above>
            <Below>
                {keys}
                <Places cell=1 of_build=Signal::stored(Some((of, Some(Tab::Time))))/>
            </Below>
        </Sheet>
    }
}

fn nothing_yet(time: Time) -> AnyView {
    let lines = Signal::stored(vec![words::nothing_yet_why().to_owned()]);
    view! { <Message title=words::nothing_yet().to_owned() lines/>{ratios(time.ratios)} }
}

fn whole(time: Time, opened: Opened) -> AnyView {
    let groups: Vec<AnyView> = time.groups.into_iter().map(|it| group(it, opened)).collect();
    let notes = time.notes.into_iter().map(|note| view! { <p class="note">{note}</p> }).collect::<Vec<_>>();
    view! {
        <div class="cost-two">
            <div><TimeBar text=time.bar/>{notes}</div>
            <div>{groups}{ratios(time.ratios)}{time.line.map(whole_line)}</div>
        </div>
    }
}

/// The row that is open, by group and name.
type Opened = RwSignal<Option<(String, String)>>;

fn group(it: Group, opened: Opened) -> AnyView {
    let label = it.label.clone();
    let row = |row: TimeRow| {
        let key = (label.clone(), row.label.clone());
        let (mine, tapped) = (key.clone(), key);
        let open = Memo::new(move |_| opened.read().as_ref() == Some(&mine));
        let tap = move |()| {
            let other = opened.with_untracked(|opened| opened.as_ref() != Some(&tapped));
            opened.set(other.then(|| tapped.clone()));
        };
        view! { <TimeBarRow row open=open.into() on_tap=Callback::new(tap)/> }
    };
    let rows: Vec<AnyView> = it.rows.into_iter().map(row).collect();
    view! { <TimeGroup label=it.label figure=it.figure kind=it.kind/>{rows} }
}

fn whole_line(href: String) -> AnyView {
    let (label, end) = (words::whole_line().to_owned(), words::whole_line_note().to_owned());
    view! { <RowLink label end leads=Leads::To(href)/> }
}

fn ratios(rows: Vec<Ratio>) -> AnyView {
    if rows.is_empty() {
        return ().draw();
    }
    let row = |it: Ratio| {
        let text = SumText {
            label: it.label.to_owned(),
            working: Some(it.working),
            figure: it.figure,
            ..SumText::default()
        };
        view! { <SumRow text leads=it.href.map_or(Leads::Nowhere, Leads::To) signed=false/> }
    };
    view! { <Sums>{rows.into_iter().map(row).collect::<Vec<_>>()}</Sums> }
}
