//! What has no home yet, and a home for it in one tap.

use crate::dom::prelude::*;
use crate::{
    parts::{
        journal_line::{JournalLine, LineText, Lines},
        key::{Key, KeyKind, KeyLink},
        pick::Choosable,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    screens::{
        hours::choices,
        journal::{facts, line},
        photos::{self, Pictured},
        receipts,
        trouble::Troubles,
    },
    shell::{
        Desk, Go, Place,
        desk::{Mark, Marked, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{common, journal, notes as words, receipts as receipt_words},
};
use benchslate_core::journal::{
    Body, Change, Id, Kind,
    kinds::{Bearer, Note, Photo},
    listing,
};

/// How many homes are offered beside each.
const OFFERED: usize = 2;

/// A note or photo that waits.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
struct Waits {
    entry: Id,
    kind: Kind,
    text: LineWords,
    picture: Option<Pictured>,
    /// Of a receipt: what its lines have still to say.
    lacks: Option<String>,
    homes: Vec<Choosable>,
}

/// Its line.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
struct LineWords {
    time: String,
    day: String,
    text: String,
}

/// How much waits.
pub fn count(desk: Desk) -> usize {
    desk.read(|view| listing::homeless(view.journal, view.shop).len())
}

/// The list.
#[component]
pub fn HomelessSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let waiting = Memo::new(move |_| {
        let bench = desk.bench().and_then(|bench| bench.bearer);
        desk.read(|view| waiting(view, bench))
    });
    let note = move || waiting.with(|waiting| (!waiting.is_empty()).then(|| words::waiting(waiting.len())));
    let list = move || {
        waiting
            .with(|waiting| waiting.is_empty().then(|| view! { <p class="lead">{words::none_waits()}</p> }))
    };
    view! {
        <Sheet>
            <Head title=words::homeless().to_owned() note=Signal::derive(note) tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::homeless().to_owned()>
                    {list}
                    {each(move || waiting.get(), move |it| row(desk, it))}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <KeyLink
                            class="wide"
                            label=words::new_note().to_owned()
                            kind=KeyKind::Filled
                            href=Place::Note.href()
                        />
                    </Keys>
                </Hand>
                <Places cell=1/>
            </Below>
        </Sheet>
    }
}

fn waiting(view: &View, bench: Option<Bearer>) -> Vec<Waits> {
    let mut homes = choices::bearers(view, "");
    // The bench's own first.
    if let Some(at) = bench.map(choices::code).and_then(|code| homes.iter().position(|home| home.0 == code)) {
        let home = homes.remove(at);
        homes.insert(0, home);
    }
    homes.truncate(OFFERED);
    let notes = listing::homeless(view.journal, view.shop).into_iter();
    notes
        .filter_map(|at| {
            let body = view.journal.body(at.entry)?;
            let picture = match body {
                Body::Photo(photo) => Some(photos::pictured(view, photo)),
                _ => None,
            };
            let text = LineWords {
                time: at.time.map(|at| view.tongue.time(at)).unwrap_or_default(),
                day: view.tongue.day(at.day),
                text: line::what(view, at.entry),
            };
            let lacks = receipts::still_to_say(view, at.entry);
            Some(Waits { entry: at.entry, kind: body.kind(), text, picture, lacks, homes: homes.clone() })
        })
        .collect()
}

fn row(desk: Desk, it: Waits) -> AnyView {
    let Waits { entry, kind, text, picture, lacks, homes } = it;
    let kind = journal::kind(kind);
    let name = words::homes_of(if text.text.is_empty() { kind } else { &text.text });
    let picture = picture.map(photos::thumb);
    let line = LineText {
        time: text.time,
        kind: kind.to_owned(),
        what: text.text,
        second: Some(match &lacks {
            Some(lacks) => journal::comma(lacks, &text.day),
            None => text.day,
        }),
        amount: String::new(),
    };
    if lacks.is_some() {
        let there = Place::Receipt(Some(entry)).href();
        let leads = Leads::To(there.clone());
        return view! {
            <Lines><JournalLine text=line leads/></Lines>
            <Keys class="low"><KeyLink label=receipt_words::say_the_lines().to_owned() href=there/></Keys>
        };
    }
    let key = move |(code, label): Choosable| {
        let tap = move |()| {
            if let Some(bearer) = choices::bearer(&code) {
                give(desk, entry, bearer);
            }
        };
        view! { <Key label on_tap=Callback::new(tap)/> }
    };
    let keys: Vec<AnyView> = homes.into_iter().map(key).collect();
    view! {
        <Lines>
            <JournalLine text=line picture leads=Leads::To(Place::Entry(entry).href())/>
        </Lines>
        <div role="group" aria-label=name>
            <Keys class="low">
                {keys}
                <KeyLink
                    label=words::other().to_owned()
                    note=words::or_correct().to_owned()
                    href=Place::Entry(entry).href()
                />
            </Keys>
        </div>
    }
}

fn give(desk: Desk, entry: Id, bearer: Bearer) {
    desk.act(
        move |hand| match hand.journal.body(entry) {
            Some(Body::Note(note)) => {
                vec![Change::write(entry, Note { bearer: Some(bearer), ..note.clone() })]
            }
            Some(Body::Photo(photo)) => {
                vec![Change::write(entry, Photo { bearer: Some(bearer), ..photo.clone() })]
            }
            _ => Vec::new(),
        },
        move |after| {
            let view = after.view();
            let what = words::beginning(&line::what(&view, entry));
            let second = Some(words::mark_home(&facts::bearer(&view, bearer)));
            Marked::from(Mark { kind: line::kind(&view, entry), what, second })
        },
    );
}
