//! A photo on view: the small one beside its line, the large one on its own sheet.
//!
//! Its bytes come out of the store to an address of this page alone, which is given back as soon as the picture
//! stands. Where they are not on this device the line says so, and nothing else is missing.

use crate::dom::prelude::*;
use crate::{
    parts::journal_line::{JournalLine, LineText, Lines},
    parts::sum_row::{Group, Leads},
    platform::picture::Address,
    screens::journal::line,
    shell::{
        Desk, Place,
        desk::{Phase, View},
    },
    store::Copy,
    words::photos as words,
};
use benchslate_core::journal::{Body, Id, Kind, kinds::Photo, listing};
use leptos::task::spawn_local;
use std::rc::Rc;

/// What is needed to show one.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Pictured {
    hash: String,
    alt: String,
    width: u32,
    height: u32,
}

/// What stands in its place.
#[derive(Clone)]
enum Stands {
    /// It is being fetched.
    Waits,
    Here(Rc<Address>),
    NotHere,
    /// It is here and can't be drawn.
    Spoilt,
}

/// The photo of a body.
pub fn pictured(view: &View, photo: &Photo) -> Pictured {
    let alt = photo.caption.clone();
    let alt = alt.unwrap_or_else(|| words::photo_of(&view.tongue.day_year(photo.on.day(&view.shop.zone))));
    Pictured { hash: photo.hash.clone(), alt, width: photo.width, height: photo.height }
}

/// The small one.
pub fn thumb(of: Pictured) -> AnyView {
    shown(of, Copy::Thumb)
}

/// The large one.
pub fn full(of: Pictured) -> AnyView {
    shown(of, Copy::Full)
}

/// The photos about an entry, a line each; nothing where there are none.
pub fn of_entry(view: &View, entry: Id) -> Option<AnyView> {
    let line = |id: Id| {
        let Some(Body::Photo(photo)) = view.journal.body(id) else { return None };
        let text = LineText {
            time: photo.on.instant().map(|at| view.tongue.time(at)).unwrap_or_default(),
            kind: crate::words::journal::kind(Kind::Photo).to_owned(),
            what: line::what(view, id),
            second: Some(view.tongue.day(photo.on.day(&view.shop.zone))),
            amount: String::new(),
        };
        let picture = thumb(pictured(view, photo));
        Some(view! { <JournalLine text picture=Some(picture) leads=Leads::To(Place::Entry(id).href())/> })
    };
    let lines: Vec<AnyView> = listing::photos_of(view.shop, entry).into_iter().filter_map(line).collect();
    (!lines.is_empty()).then(|| {
        view! {
            <Group title=words::title().to_owned()/>
            <Lines name=words::title().to_owned()>{lines}</Lines>
        }
    })
}

fn shown(of: Pictured, copy: Copy) -> AnyView {
    let desk = Desk::here();
    let stands = leptos::prelude::RwSignal::new_local(Stands::Waits);
    let hash = of.hash.clone();
    Effect::new(move || {
        if desk.phase.get() != Phase::Ready {
            return;
        }
        let hash = hash.clone();
        spawn_local(async move {
            let Some(store) = desk.store() else { return };
            let found = match store.photo(&hash, copy).await {
                Ok(Some((bytes, media))) => {
                    Address::of(&bytes, &media).map_or(Stands::Spoilt, |it| Stands::Here(Rc::new(it)))
                }
                Ok(None) => Stands::NotHere,
                Err(_failure) => Stands::Spoilt,
            };
            // The sheet may be another by now; the address goes with what holds it.
            stands.try_set(found);
        });
    });
    let class = match copy {
        Copy::Full => "photo full",
        Copy::Thumb => "photo",
    };
    let drawn = move || match stands.get() {
        Stands::Waits => view! { <span class=class></span> },
        Stands::NotHere => missing(class, words::not_here()),
        Stands::Spoilt => missing(class, words::spoilt()),
        Stands::Here(address) => {
            let there = address.clone();
            view! {
                <img
                    class=class
                    src=address.text().to_owned()
                    alt=of.alt.clone()
                    width=of.width
                    height=of.height
                    on:load=move |_| there.give_back()
                    on:error=move |_| stands.set(Stands::Spoilt)
                />
            }
        }
    };
    drawn.draw()
}

fn missing(class: &'static str, why: &'static str) -> AnyView {
    view! { <span class=format!("{class} missing")>{why}</span> }
}
