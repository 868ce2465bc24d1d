//! A journal from a file: what it holds is shown before it is taken, and it is taken whole or not at all.

use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind},
        message::{Message, MessageKind},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, SumRow, SumText},
    },
    platform::{
        download::{self, Unread},
        idle,
    },
    screens::trouble::Troubles,
    shell::{Desk, Go, Place, frame::Places},
    store::Appended,
    words::{common, exchange as words, failure, shop},
};
use benchslate_core::{
    exchange::jsonl::{self, Bad, Incoming},
    measure::limits,
};
use leptos::{html, task::spawn_local};

/// Where the file stands.
#[derive(Clone)]
enum File {
    None,
    BeingRead,
    /// Looked through; nothing is taken yet.
    Holds(Incoming),
    Unread(Unread),
    Broken(Bad),
    BeingTaken,
    Taken(Appended),
    NotTaken(crate::store::Failure),
}

type At = RwSignal<File>;

/// The sheet.
#[component]
pub fn BringInSheet() -> impl IntoView {
    let (desk, file) = (Desk::here(), RwSignal::new(File::None));
    let input = NodeRef::<html::Input>::new();
    let picked = move |_| {
        if let Some(input) = input.get_untracked() {
            look_through(desk, file, &input);
        }
    };
    view! {
        <Sheet>
            <Head title=words::title().to_owned() note=words::from_where().to_owned()/>
            <Above>
                <Troubles/>
                <Read name=words::title().to_owned()>
                    {move || told(desk, file.get())}
                    <label class="vh" for="journal-file">{words::file()}</label>
                    <input
                        id="journal-file"
                        class="vh"
                        type="file"
                        tabindex="-1"
                        accept=".jsonl,.json,.txt,application/jsonl,text/plain"
                        node_ref=input
                        on:change=picked
                    />
                </Read>
            </Above>
            <Below>
                <Hand name=shop::keys().to_owned()>{move || keys(desk, file, input)}</Hand>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

fn look_through(desk: Desk, at: At, input: &web_sys::HtmlInputElement) {
    let Some(picked) = download::picked(input) else { return };
    // The same file can be chosen again once it has been put right.
    input.set_value("");
    at.set(File::BeingRead);
    spawn_local(async move {
        let bytes = download::read(&picked, limits::MOST_FILE_BYTES as u64).await;
        idle::turn().await;
        let looked = match bytes {
            Err(unread) => File::Unread(unread),
            Ok(bytes) => match desk.now_read(|view| jsonl::check_bytes(view.journal, &bytes)) {
                Ok(incoming) => File::Holds(incoming),
                Err(bad) => File::Broken(bad),
            },
        };
        at.try_set(looked);
    });
}

fn told(desk: Desk, file: File) -> AnyView {
    match file {
        File::None => {
            view! { <p>{words::what_it_does()}</p><p class="note">{words::shown_first()}</p> }
        }
        File::BeingRead => said(words::being_read()),
        File::BeingTaken => said(words::being_taken()),
        File::Holds(incoming) => holds(desk, &incoming),
        File::Unread(unread) => refused(desk.now_read(|view| words::unread(view.tongue, unread))),
        File::Broken(bad) => refused(desk.now_read(|view| words::broken(view.tongue, bad))),
        File::NotTaken(trouble) => refused(failure::short(trouble).to_owned()),
        File::Taken(appended) => {
            let lines = desk.now_read(|view| shop::lines(view.tongue, appended.added));
            let aside = (!appended.clashes.is_empty()).then(|| words::taken_aside(appended.clashes.len()));
            let aside = aside.map(|aside| view! { <p class="note">{aside}</p> });
            view! { <p role="status">{words::taken(&lines)}</p>{aside} }
        }
    }
}

fn said(text: &'static str) -> AnyView {
    view! { <p role="status">{text}</p> }
}

fn refused(why: String) -> AnyView {
    let lines = vec![why, words::nothing_changed().to_owned()];
    view! { <Message title=words::not_taken().to_owned() lines=Signal::stored(lines) kind=MessageKind::Lost/> }
}

/// What it would bring, a row each; noughts are left out but for what is new.
fn holds(desk: Desk, incoming: &Incoming) -> AnyView {
    let row = |label: &str, how: Option<&str>, count: usize| SumText {
        label: label.to_owned(),
        working: how.map(str::to_owned),
        figure: desk.now_read(|view| view.tongue.number(&count.to_string())),
        ..SumText::default()
    };
    let rows = [
        (true, words::new_lines(), None, incoming.new),
        (false, words::known_lines(), None, incoming.known),
        (false, words::clashes(), Some(words::clashes_how()), incoming.clashing),
        (false, words::newer_lines(), Some(words::newer_how()), incoming.newer),
        (false, words::unreadable_lines(), Some(words::unreadable_how()), incoming.unreadable),
        (false, words::wrong_clock(), Some(words::wrong_clock_how()), incoming.wrong_clock),
    ];
    let rows = rows.into_iter().filter(|(always, .., count)| *always || *count > 0);
    let rows = rows.map(|(_, label, how, count)| {
        let text = row(label, how, count);
        view! { <SumRow text signed=false/> }
    });
    let nothing = incoming.is_empty().then(|| {
        let text = if incoming.known == 0 { words::empty_file() } else { words::nothing_new() };
        view! { <p class="note">{text}</p> }
    });
    view! { <Group title=words::in_it().to_owned()/>{rows.collect::<Vec<_>>()}{nothing} }
}

fn keys(desk: Desk, at: At, input: NodeRef<html::Input>) -> AnyView {
    let go: Go = expect_context();
    let leave = move |label: &str| {
        view! { <Key label=label.to_owned() on_tap=Callback::new(move |()| go.instead(&Place::Shop))/> }
    };
    let choose = move |label: &str, kind: KeyKind| {
        let tap = move |()| {
            if let Some(input) = input.get_untracked() {
                input.click();
            }
        };
        view! { <Key class="wide" label=label.to_owned() kind=kind on_tap=Callback::new(tap)/> }
    };
    let (first, second) = match at.get() {
        File::None | File::BeingRead => (leave(common::leave()), choose(words::choose(), KeyKind::Filled)),
        File::Unread(_) | File::Broken(_) | File::NotTaken(_) => {
            (leave(common::leave()), choose(words::another(), KeyKind::Filled))
        }
        File::Taken(_) => (choose(words::another(), KeyKind::Plain), to_the_shop(go)),
        File::BeingTaken => (leave(common::leave()), ().draw()),
        File::Holds(incoming) if incoming.is_empty() => {
            (leave(words::leave_it()), choose(words::another(), KeyKind::Filled))
        }
        File::Holds(incoming) => (leave(words::leave_it()), take(desk, at, incoming)),
    };
    view! { <Keys class="tall">{first}{second}</Keys> }
}

fn to_the_shop(go: Go) -> AnyView {
    let tap = move |()| go.instead(&Place::Shop);
    view! { <Key class="wide" label=words::to_the_shop().to_owned() kind=KeyKind::Filled on_tap=Callback::new(tap)/> }
}

fn take(desk: Desk, at: At, incoming: Incoming) -> AnyView {
    let note = desk.now_read(|view| shop::lines(view.tongue, incoming.lines.len()));
    let tap = move |()| {
        at.set(File::BeingTaken);
        let incoming = incoming.clone();
        spawn_local(async move {
            // Said before the work begins.
            idle::turn().await;
            desk.bring_in(incoming, move |done| {
                at.try_set(done.map_or_else(File::NotTaken, File::Taken));
            });
        });
    };
    view! {
        <Key
            class="wide"
            label=words::take_it().to_owned()
            note=note
            kind=KeyKind::Filled
            on_tap=Callback::new(tap)
        />
    }
}
