//! What went wrong with storage, and the offer of a newer version: on the sheet, never in front of it.
//!
//! On the bench and the shop's sheet the message stands above and its keys in the hand ([`TroubleKeys`]); on
//! every other sheet a line over the title block leads there ([`TroubleLine`]). Where there is no journal to show, the whole sheet says why.

use crate::dom::prelude::*;
use crate::{
    parts::{
        dim::Dim,
        key::{Key, KeyKind},
        message::{Message, MessageKind},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
    },
    screens::{UpdateWaits, shop},
    shell::{Desk, Place, desk::Phase, frame::Places, update},
    store::{Failure, persist},
    words::{failure as words, shop as shop_words, update as update_words},
};
use leptos::task::spawn_local;

/// Both, where there is one and this is a sheet with room for it.
#[component]
pub fn Troubles() -> impl IntoView {
    let (desk, here) = (Desk::here(), on_view());
    let trouble = move || desk.trouble.get().filter(|_| here.get()).map(|trouble| message(desk, trouble));
    let offer = move || (here.get() && offered()).then(|| offer(desk));
    view! { {trouble}{offer} }
}

/// Whether a newer version is offered now.
pub fn offered() -> bool {
    let UpdateWaits { waits, later } = expect_context();
    waits.get() && !later.get()
}

/// The sheets that have the message itself.
fn on_view() -> Signal<bool> {
    let place = expect_context::<Memo<Place>>();
    Signal::derive(move || matches!(place.get(), Place::Bench | Place::Shop))
}

fn message(desk: Desk, trouble: Failure) -> AnyView {
    let lines = vec![words::text(trouble).to_owned(), words::advice(trouble).to_owned()];
    view! {
        <Message title=words::title(trouble).to_owned() lines=Signal::stored(lines) kind=MessageKind::Lost>
            {(trouble == Failure::Full).then(|| fills(desk))}
        </Message>
    }
}

/// How much lies here: the whole room that the browser gives.
fn fills(desk: Desk) -> AnyView {
    let used = RwSignal::new(None::<f64>);
    spawn_local(async move {
        used.try_set(persist::room().await.map(|room| room.used));
    });
    let text = move |used: f64| desk.now_read(|view| words::room(&shop_words::room(view.tongue, used)));
    (move || used.get().map(|used| view! { <Dim text=text(used)/> })).draw()
}

/// A newer version: later, or take it.
fn offer(desk: Desk) -> AnyView {
    let UpdateWaits { later, .. } = expect_context();
    view! {
        <Message
            title=update_words::title().to_owned()
            lines=Signal::stored(vec![update_words::text().to_owned()])
        >
            <Keys class="low">
                <Key label=update_words::later().to_owned() on_tap=Callback::new(move |()| later.set(true))/>
                <Key label=update_words::take().to_owned() on_tap=Callback::new(move |()| update::take(desk))/>
            </Keys>
        </Message>
    }
}

/// The keys that the message names, a row in the hand; nothing while all is well.
#[component]
pub fn TroubleKeys(
    /// The sheet has its own key for the backup.
    #[prop(optional)]
    backs_up: bool,
) -> impl IntoView {
    let desk = Desk::here();
    (move || desk.trouble.get().map(|trouble| keys(desk, trouble, backs_up))).draw()
}

fn keys(desk: Desk, trouble: Failure, backs_up: bool) -> AnyView {
    let key = match trouble {
        Failure::Full | Failure::Refused => again(desk),
        Failure::Gone | Failure::Newer { .. } | Failure::Missing | Failure::Blocked => reload(desk),
        Failure::Damaged { .. } => accept(desk),
    };
    let back_up = (!backs_up).then(|| back_up(desk));
    view! {
        <div class="trouble-keys" role="group" aria-label=words::keys()><Keys class="mid">{back_up}{key}</Keys></div>
    }
}

fn back_up(desk: Desk) -> AnyView {
    let saving: shop::Saving = expect_context();
    let save = move |()| shop::save_backup(desk, saving, shop::Photos::All);
    let under_way = move || matches!(saving.at.get(), shop::SavingAt::UnderWay { .. });
    view! {
        <Key
            label=words::back_up().to_owned()
            note=words::one_file().to_owned()
            disabled=Signal::derive(under_way)
            on_tap=Callback::new(save)
        />
    }
}

fn again(desk: Desk) -> AnyView {
    view! {
        <Key
            class="half-more"
            label=words::try_again().to_owned()
            kind=KeyKind::Filled
            on_tap=Callback::new(move |()| desk.try_again())
        />
    }
}

/// What is typed is kept first, where it can be.
fn reload(desk: Desk) -> AnyView {
    let reload = move |()| {
        spawn_local(async move {
            if let Some(store) = desk.store() {
                // Where it can't be kept the page must be loaded anew all the same.
                let _ = store.flush_drafts().await;
            }
            if let Some(window) = web_sys::window() {
                let _ = window.location().reload();
            }
        });
    };
    view! {
        <Key
            class="half-more"
            label=words::reload().to_owned()
            note=words::drafts_stay().to_owned()
            kind=KeyKind::Filled
            on_tap=Callback::new(reload)
        />
    }
}

fn accept(desk: Desk) -> AnyView {
    let accept = move |()| {
        spawn_local(async move {
            let Some(store) = desk.store() else { return };
            desk.trouble.set(store.mend_check().await.err());
        });
    };
    view! { <Key
        class="half-more"
        label=words::accept().to_owned()
        kind=KeyKind::Filled
        on_tap=Callback::new(accept)
    /> }
}

/// One line over the title block, on every sheet that has neither message nor keys of its own.
#[component]
pub fn TroubleLine() -> impl IntoView {
    let (desk, here) = (Desk::here(), on_view());
    let line = move || {
        desk.trouble.get().filter(|_| !here.get()).map(|trouble| {
            view! {
                <a class="trouble-line" href=Place::Bench.href()>
                    <b aria-hidden="true">"!"</b>
                    <span role="alert">{words::short(trouble)}</span>
                    <span class="open">{words::see()}</span>
                </a>
            }
        })
    };
    line.draw()
}

/// Why there is no journal to show; none while there is, or while it is still being opened.
pub fn no_journal(desk: Desk) -> Option<Failure> {
    match desk.phase.get() {
        Phase::Failed(failure) => Some(failure),
        Phase::Opening => desk.trouble.get().filter(|trouble| *trouble == Failure::Blocked),
        Phase::Ready => None,
    }
}

/// The whole sheet, at every place: nothing was touched.
#[component]
pub fn NoJournalSheet(trouble: Failure) -> impl IntoView {
    let desk = Desk::here();
    let lines = vec![words::text(trouble).to_owned(), words::advice(trouble).to_owned()];
    view! {
        <Sheet>
            <Head title=words::name().to_owned()/>
            <Above>
                <Message title=words::title(trouble).to_owned() lines=Signal::stored(lines) kind=MessageKind::Lost/>
                <Read name=words::name().to_owned()>""</Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()><Keys class="tall">{reload(desk)}</Keys></Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}
