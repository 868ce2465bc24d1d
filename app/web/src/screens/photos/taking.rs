//! A photo taken: the phone's camera, made small, and kept at once as a line with its bytes. No form stands between;
//! words and another home are given to it later, on its own sheet.

use crate::dom::prelude::*;
use crate::{
    parts::key::{Key, KeyKind},
    platform::{
        download,
        picture::{self, NoPhoto},
    },
    screens::journal::{facts, line},
    shell::{
        Desk,
        desk::{After, Mark, Marked},
    },
    store::{Failure, NewPhoto},
    words::{journal, notes, photos as words},
};
use benchslate_core::journal::{
    Change, Id, Kind, On,
    kinds::{Bearer, Photo},
};
use leptos::{html, task::spawn_local};

/// The place of the file's input on the page.
const FILE: &str = "photo-file";

/// Where taking a photo stands, whatever sheet is on view; provided as context.
#[derive(Clone, Copy)]
pub struct Taking(pub RwSignal<At>);

/// Where it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum At {
    /// Nothing is being taken.
    Rest,
    /// A picture is being made small.
    UnderWay,
    /// No photo came of it.
    Wrong(NoPhoto),
    /// It could not be kept, and is not held for another try.
    CutOff,
}

/// What a photo is taken of. With neither it waits for a home.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct About {
    /// An entry.
    pub entry: Option<Id>,
    /// Whatever bears.
    pub bearer: Option<Bearer>,
}

/// The key, with the input that opens the camera behind it. `on_kept` hears the entry of each photo that is kept.
#[component]
pub fn PhotoKey(
    #[prop(into)] about: Signal<About>,
    #[prop(optional, into)] note: MaybeProp<String>,
    #[prop(optional, into)] class: String,
    #[prop(optional)] kind: KeyKind,
    #[prop(optional, into)] on_kept: Option<Callback<Id>>,
) -> impl IntoView {
    let (desk, Taking(at)) = (Desk::here(), expect_context());
    let input = NodeRef::<html::Input>::new();
    let picked = move |_| {
        let Some(input) = input.get_untracked() else { return };
        if let Some(file) = download::picked(&input) {
            // The same picture can be chosen again.
            input.set_value("");
            take(desk, at, file, about.get_untracked(), on_kept);
        }
    };
    let tap = move |()| {
        if let Some(input) = input.get_untracked() {
            input.click();
        }
    };
    let under_way = move || at.get() == At::UnderWay;
    let note =
        MaybeProp::derive(move || if under_way() { Some(words::under_way().to_owned()) } else { note.get() });
    view! {
        <label class="vh" for=FILE>{words::file()}</label>
        <input
            id=FILE
            class="vh"
            type="file"
            tabindex="-1"
            accept="image/*"
            capture="environment"
            node_ref=input
            on:change=picked
        />
        <Key
            label=words::key().to_owned()
            note
            kind
            class
            disabled=Signal::derive(under_way)
            on_tap=Callback::new(tap)
        />
    }
}

fn take(desk: Desk, at: RwSignal<At>, file: web_sys::File, about: About, on_kept: Option<Callback<Id>>) {
    at.set(At::UnderWay);
    spawn_local(async move {
        match picture::photo_of(&file).await {
            Ok(photo) => keep(desk, at, photo, about, on_kept),
            Err(why) => at.set(At::Wrong(why)),
        }
    });
}

fn keep(desk: Desk, at: RwSignal<At>, photo: NewPhoto, about: About, on_kept: Option<Callback<Id>>) {
    let (entry, About { entry: of, bearer }) = (desk.fresh(), about);
    let body = Photo {
        // Until the tap's own moment is known.
        on: On::At(desk.now_read(|view| view.shop.zone.when(desk.at_tap()))),
        entry: of,
        bearer,
        hash: photo.hash.clone(),
        media: photo.full.media.clone(),
        width: photo.full.width,
        height: photo.full.height,
        bytes: u32::try_from(photo.full.bytes.len()).unwrap_or(u32::MAX),
        caption: None,
    };
    desk.act_with(
        vec![photo],
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write(entry, Photo { on, ..body.clone() })]
        },
        move |after| marked(after, about),
        move |done| {
            at.set(if done == Err(Failure::Gone) { At::CutOff } else { At::Rest });
            if let (Ok(()), Some(on_kept)) = (done, on_kept) {
                on_kept.try_run(entry);
            }
        },
    );
}

/// A mark: what it is of.
fn marked(after: &After, about: About) -> Marked {
    let view = after.view();
    let what = match about {
        About { entry: Some(of), .. } => {
            words::of_line(&line::kind(&view, of), &notes::beginning(&line::what(&view, of)))
        }
        About { bearer: Some(of), .. } => notes::mark_home(&facts::bearer(&view, of)),
        About { .. } => notes::no_home().to_owned(),
    };
    Marked::from(Mark { kind: journal::kind(Kind::Photo).to_owned(), what, second: None })
}

/// Why no photo came of the last picture: what was found, and what to do.
pub fn why_none(desk: Desk) -> Signal<Option<(String, &'static str)>> {
    let Taking(at) = expect_context();
    Signal::derive(move || match at.get() {
        At::Rest | At::UnderWay => None,
        At::Wrong(why) => {
            Some(desk.now_read(|view| (words::no_photo(view.tongue, why), words::what_to_do(why))))
        }
        At::CutOff => Some((words::cut_off().to_owned(), words::reload())),
    })
}

/// The same in the place of the last mark, until another photo is taken or it was seen.
#[component]
pub fn NoPhoto() -> impl IntoView {
    let (desk, Taking(at)) = (Desk::here(), expect_context());
    let why = why_none(desk);
    let why = move || {
        why.get().map(|(what, todo)| view! { <b>{words::none()}</b>" "{what}" "<small>{todo}</small> })
    };
    view! {
        <section class="mark bad" aria-label=words::none()>
            <b class="sign" aria-hidden="true">"!"</b>
            <div class="said" role="alert"><p>{why}</p></div>
            <button type="button" class="undo" on:click=move |_| at.set(At::Rest)>{words::seen()}</button>
        </section>
    }
}
