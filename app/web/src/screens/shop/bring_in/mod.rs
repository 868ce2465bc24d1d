//! A journal from a file: what it holds is shown before it is taken, and it is taken whole or not at all.

mod look;
mod take;

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
    store::Failure,
    words::{common, exchange as words, failure, shop},
};
use benchslate_core::exchange::backup::Bad;
use leptos::{html, task::spawn_local};
use look::{Found, Nothing};
use send_wrapper::SendWrapper;
use std::sync::Arc;
use take::Taken;

/// Where bringing in stands, whatever sheet is on view; provided as context.
#[derive(Clone, Copy)]
pub struct Bringing {
    step: RwSignal<Step>,
    /// Photos that are done, of how many; 0 of 0: the lines.
    photos: RwSignal<(usize, usize)>,
    /// Counted, so that one that was stopped is not taken for the next.
    run: RwSignal<u32>,
}

/// Where it stands.
#[derive(Clone)]
enum Step {
    None,
    BeingRead,
    /// Looked through; nothing is taken yet.
    /// The file in it is this page's own, and never leaves its thread.
    Holds(Arc<SendWrapper<Found>>),
    Unread(Unread),
    Broken(Bad),
    BeingTaken,
    /// What remains, which nothing stops.
    BeingKept,
    Taken(Taken),
    NotTaken(Failure),
    Stopped,
}

impl Bringing {
    /// Nothing is being brought in.
    pub fn new() -> Bringing {
        let (step, photos) = (RwSignal::new(Step::None), RwSignal::new((0, 0)));
        Bringing { step, photos, run: RwSignal::new(0) }
    }

    fn begun(self, step: Step) -> u32 {
        self.photos.set((0, 0));
        self.run.set(self.run.get_untracked().wrapping_add(1));
        self.step.set(step);
        self.run.get_untracked()
    }

    /// Nobody has stopped it.
    fn goes_on(self, run: u32) -> bool {
        self.run.get_untracked() == run
    }

    fn stop(self) {
        if self.step.with_untracked(|step| matches!(step, Step::BeingRead | Step::BeingTaken)) {
            self.begun(Step::Stopped);
        }
    }

    fn ended(self, run: u32, step: Step) {
        if self.goes_on(run) {
            self.step.set(step);
        }
    }
}

impl Step {
    fn of(nothing: Nothing) -> Step {
        match nothing {
            Nothing::Unread(unread) => Step::Unread(unread),
            Nothing::Broken(bad) => Step::Broken(bad),
            Nothing::Store(failure) => Step::NotTaken(failure),
            Nothing::Stopped => Step::Stopped,
        }
    }

    fn is_under_way(&self) -> bool {
        matches!(self, Step::BeingRead | Step::BeingTaken | Step::BeingKept)
    }
}

/// The sheet.
#[component]
pub fn BringInSheet() -> impl IntoView {
    let (desk, at) = (Desk::here(), expect_context::<Bringing>());
    // What was looked through on an earlier visit is over; what is under way goes on.
    if !at.step.with_untracked(Step::is_under_way) {
        at.step.set(Step::None);
    }
    let input = NodeRef::<html::Input>::new();
    let picked = move |_| {
        if let Some(input) = input.get_untracked() {
            look_through(desk, at, &input);
        }
    };
    view! {
        <Sheet>
            <Head title=words::title().to_owned() note=words::from_where().to_owned()/>
            <Above>
                <Troubles/>
                <Read name=words::title().to_owned()>
                    {move || told(desk, at.step.get())}
                    <label class="vh" for="journal-file">{words::file()}</label>
                    <input
                        id="journal-file"
                        class="vh"
                        type="file"
                        tabindex="-1"
                        accept=".zip,.jsonl,.json,.txt,application/zip,application/jsonl,text/plain"
                        node_ref=input
                        on:change=picked
                    />
                </Read>
            </Above>
            <Below>
                <Hand name=shop::keys().to_owned()>{move || keys(desk, at, input)}</Hand>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

fn look_through(desk: Desk, at: Bringing, input: &web_sys::HtmlInputElement) {
    let Some(picked) = download::picked(input) else { return };
    // The same file can be chosen again once it has been put right.
    input.set_value("");
    let run = at.begun(Step::BeingRead);
    spawn_local(async move {
        idle::turn().await;
        let looked = look::look(desk, at, run, picked).await;
        at.ended(run, looked.map_or_else(Step::of, |found| Step::Holds(Arc::new(SendWrapper::new(found)))));
    });
}

fn told(desk: Desk, step: Step) -> AnyView {
    match step {
        Step::None => {
            view! { <p>{words::what_it_does()}</p><p class="note">{words::shown_first()}</p> }
        }
        Step::BeingRead => said(words::being_read()),
        Step::BeingTaken | Step::BeingKept => said(words::being_taken()),
        Step::Holds(found) => holds(desk, &found),
        Step::Unread(unread) => refused(desk.now_read(|view| words::unread(view.tongue, unread))),
        Step::Broken(bad) => refused(desk.now_read(|view| words::broken(view.tongue, &bad))),
        Step::NotTaken(trouble) => refused(failure::short(trouble).to_owned()),
        Step::Stopped => refused(words::stopped().to_owned()),
        Step::Taken(Taken { lines, photos }) => {
            let taken = desk.now_read(|view| words::taken(view.tongue, lines.added, photos));
            let aside = (!lines.clashes.is_empty()).then(|| words::taken_aside(lines.clashes.len()));
            let aside = aside.map(|aside| view! { <p class="note">{aside}</p> });
            view! { <p role="status">{taken}</p>{aside} }
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
fn holds(desk: Desk, found: &Found) -> AnyView {
    let incoming = &found.incoming;
    let row = |label: &str, how: Option<String>, count: usize| SumText {
        label: label.to_owned(),
        working: how,
        figure: desk.now_read(|view| view.tongue.number(&count.to_string())),
        ..SumText::default()
    };
    let room = desk.now_read(|view| shop::room(view.tongue, found.bytes() as f64));
    let room = Some(room);
    let rows = [
        (true, words::new_lines(), None, incoming.new),
        (false, words::new_photos(), room.as_deref(), found.new.len()),
        (false, words::known_lines(), None, incoming.known),
        (false, words::known_photos(), None, found.known),
        (false, words::missing_photos(), Some(words::missing_how()), found.missing),
        (false, words::unnamed_photos(), Some(words::unnamed_how()), found.unnamed),
        (false, words::clashes(), Some(words::clashes_how()), incoming.clashing),
        (false, words::newer_lines(), Some(words::newer_how()), incoming.newer),
        (false, words::unreadable_lines(), Some(words::unreadable_how()), incoming.unreadable),
        (false, words::wrong_clock(), Some(words::wrong_clock_how()), incoming.wrong_clock),
    ];
    let rows = rows.into_iter().filter(|(always, .., count)| *always || *count > 0);
    let rows = rows.map(|(_, label, how, count)| {
        let text = row(label, how.map(str::to_owned), count);
        view! { <SumRow text signed=false/> }
    });
    let nothing = found.is_empty().then(|| {
        let text = if incoming.known + found.known == 0 { words::empty_file() } else { words::nothing_new() };
        view! { <p class="note">{text}</p> }
    });
    view! { <Group title=words::in_it().to_owned()/>{rows.collect::<Vec<_>>()}{nothing} }
}

fn keys(desk: Desk, at: Bringing, input: NodeRef<html::Input>) -> AnyView {
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
    let (first, second) = match at.step.get() {
        Step::None => (leave(common::leave()), choose(words::choose(), KeyKind::Filled)),
        Step::BeingKept => (leave(common::leave()), ().draw()),
        Step::BeingRead | Step::BeingTaken => (leave(common::leave()), stop(desk, at)),
        Step::Unread(_) | Step::Broken(_) | Step::NotTaken(_) | Step::Stopped => {
            (leave(common::leave()), choose(words::another(), KeyKind::Filled))
        }
        Step::Taken(_) => (choose(words::another(), KeyKind::Plain), to_the_shop(go)),
        Step::Holds(found) if found.is_empty() => {
            (leave(words::leave_it()), choose(words::another(), KeyKind::Filled))
        }
        Step::Holds(found) => (leave(words::leave_it()), take(desk, at, found)),
    };
    view! { <Keys class="tall">{first}{second}</Keys> }
}

fn to_the_shop(go: Go) -> AnyView {
    let tap = move |()| go.instead(&Place::Shop);
    view! { <Key class="wide" label=words::to_the_shop().to_owned() kind=KeyKind::Filled on_tap=Callback::new(tap)/> }
}

/// The way out of long work; how far it is stands under it.
fn stop(desk: Desk, at: Bringing) -> AnyView {
    let note = MaybeProp::derive(move || {
        let (done, all) = at.photos.get();
        desk.now_read(|view| words::photo_of(view.tongue, done + 1, all))
    });
    let tap = Callback::new(move |()| at.stop());
    view! { <Key class="wide" label=words::stop().to_owned() note kind=KeyKind::Filled on_tap=tap/> }
}

fn take(desk: Desk, at: Bringing, found: Arc<SendWrapper<Found>>) -> AnyView {
    let note = desk.now_read(|view| words::so_much(view.tongue, found.incoming.lines.len(), found.new.len()));
    let tap = move |()| {
        let found = Found::clone(&found);
        let run = at.begun(Step::BeingTaken);
        spawn_local(async move {
            // Said before the work begins.
            idle::turn().await;
            take::take(desk, at, run, found).await;
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
