//! The sample shop: set up in a database of its own, and taken away again in one tap.
//!
//! In: the program's own file, moved to this week by core. Both ways end with the page loaded anew, so that nothing of
//! one journal is left in the window that shows the other.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        key::{Key, KeyKind},
        message::Message,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    platform::{clock, fetch},
    shell::{Place, frame::Places},
    store::{
        NewRow, Store, Which,
        device::{Small, forget, recall, remember},
    },
    words::sample as words,
};
use benchslate_core::{
    exchange::{jsonl, sample},
    journal::Journal,
    measure::{Instant, Zone},
};
use wasm_bindgen_futures::spawn_local;

/// Whether this window shows the sample shop.
pub fn is_open() -> bool {
    recall(Small::Sample).is_some()
}

/// Where one is, and the way out in one tap; nothing in the maker's own shop.
pub fn row() -> AnyView {
    let out = Leads::Tap(Callback::new(|()| leave()));
    is_open().then(|| led(words::this_is_it(), words::take_it_away(), out)).draw()
}

/// The way in, from the maker's own shop.
pub fn way_in() -> AnyView {
    let to = Leads::To(Place::Sample.href());
    (!is_open()).then(|| led(words::look_around(), words::apart_from_yours(), to)).draw()
}

fn led(label: &str, end: &str, leads: Leads) -> AnyView {
    view! { <RowLink label=label.to_owned() end=end.to_owned() leads/> }
}

/// Into it at once; inside: what it is, and out again.
#[component]
pub fn SampleSheet() -> impl IntoView {
    let inside = is_open();
    let failed = RwSignal::new(false);
    let begin = move || {
        failed.set(false);
        spawn_local(async move {
            match set_up().await {
                Some(()) => enter(),
                None => failed.set(true),
            }
        });
    };
    if !inside {
        begin();
    }
    let said = move || match (inside, failed.get()) {
        (true, _) => view! { <p class="lead">{words::what_it_is()}</p> },
        (false, false) => view! { <p class="lead" role="status">{words::under_way()}</p> },
        (false, true) => {
            let lines = Signal::stored(vec![words::not_set_up_why().to_owned()]);
            view! { <Message title=words::not_set_up().to_owned() lines/> }
        }
    };
    let keys = move || match (inside, failed.get()) {
        (true, _) => view! {
            <Key
                label=words::take_it_away().to_owned()
                note=Signal::stored(Some(words::back_to_your_own().to_owned()))
                kind=KeyKind::Filled
                on_tap=Callback::new(move |()| leave())
            />
        },
        (false, true) => view! {
            <Key
                label=words::try_again().to_owned()
                kind=KeyKind::Filled
                on_tap=Callback::new(move |()| begin())
            />
        },
        (false, false) => ().draw(),
    };
    view! {
        <Sheet>
            <Head title=words::title().to_owned()/>
            <Above><Read name=words::title().to_owned()>{said}</Read></Above>
            <Below>
                <Hand name=words::keys().to_owned()><Keys class="tall">{keys}</Keys></Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

/// Its lines, moved to this week, in a database of their own. None: it could not be.
async fn set_up() -> Option<()> {
    let file = fetch::text(sample::FILE_NAME).await?;
    let changes = clock::offset_changes(sample::ZONE)?;
    let zone = Zone { name: sample::ZONE.to_owned(), changes };
    let now = Instant(clock::now().div_euclid(1000));
    let text = sample::moved(&file, &zone, now).ok()?;
    let lines = jsonl::check(&Journal::default(), &text).ok()?.lines;
    // What an earlier look around left is not mixed with it.
    Store::take_away(Which::Sample).await.ok()?;
    let store = Store::open(Which::Sample, |_event| {}).await.ok()?;
    let rows = lines.into_iter().map(|line| NewRow { id: line.id.to_string(), line: line.text });
    store.merge(rows.collect(), &[], None).await.ok().map(|_kept| ())
}

fn enter() {
    remember(Small::Sample, "yes");
    to_the_bench();
}

fn leave() {
    forget(Small::Sample);
    spawn_local(async {
        // Not gone: it is set up anew by the next look around, and nobody sees it until then.
        let _ = Store::take_away(Which::Sample).await;
        to_the_bench();
    });
}

fn to_the_bench() {
    if let Some(window) = web_sys::window() {
        let _ = window.location().replace(&Place::Bench.href());
    }
}
