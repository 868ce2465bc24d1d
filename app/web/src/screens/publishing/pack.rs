//! The pack on view, what is in it, and the ways out of the phone: copied, shared, saved.

use super::{calendar, pack_text};
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind},
        message::Caution,
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        tick_row::TickRow,
    },
    platform::{announce, download, sharing},
    screens::sample,
    shell::{Desk, Tab, frame::Places},
    words::{calendar as dates, cautions, exchange, pack as words, publishing},
};
use benchslate_core::{
    exchange::{
        calendar as ics, chapters,
        pack::{Chosen, pack},
        tables::file_word,
    },
    journal::Id,
};
use leptos::task::spawn_local;

const PLAIN: &str = "text/plain;charset=utf-8";

/// One of the ticks.
type Tick = fn(&mut Chosen) -> &mut bool;

/// What was chosen, and what came of it.
#[derive(Clone, Copy)]
struct Sheets {
    desk: Desk,
    of: Id,
    chosen: RwSignal<Chosen>,
    rings: RwSignal<bool>,
    said: RwSignal<Option<String>>,
}

/// The sheet.
#[component]
pub fn PackSheet(of: Id) -> impl IntoView {
    let desk = Desk::here();
    let it = Sheets {
        desk,
        of,
        chosen: RwSignal::new(Chosen::default()),
        rings: RwSignal::new(true),
        said: RwSignal::new(None),
    };
    let text = Memo::new(move |_| {
        let (chosen, now) = (it.chosen.get(), desk.minute());
        desk.books(|books, view| {
            pack(view.shop, books, of, now, chosen).map(|pack| pack_text::text(view, &pack))
        })
        .unwrap_or_default()
    });
    let title = words::head();
    let about = Signal::derive(move || desk.read(|view| Some(view.shop.builds.get(&of)?.title.clone())));
    let drawn = move || {
        let text = text.get();
        if text.is_empty() {
            return view! { <p class="lead">{words::nothing_in_it()}</p> };
        }
        view! { <pre class="pack" tabindex="0" role="region" aria-label=words::the_text()>{text}</pre> }
    };
    view! {
        <Sheet>
            <Head title=title.to_owned() note=about tight=true/>
            <Above>
                <Read name=title.to_owned() below=words::below().to_owned()>
                    {drawn}
                    <Caution text=words::say_so().to_owned()/>
                    {ticks(it)}
                    <Caution text=cautions::cards().to_owned()/>
                    <Caution text=words::in_kind().to_owned()/>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <p class="only-here" role="status">
                        {move || it.said.get().unwrap_or_else(|| words::says_what_is_ticked().to_owned())}
                    </p>
                    {keys(it, text)}
                </Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, Some(Tab::Film))))/>
            </Below>
        </Sheet>
    }
}

fn ticks(it: Sheets) -> AnyView {
    let all: [(&'static str, Tick); 3] = [
        (words::tick_costs(), |it| &mut it.costs),
        (words::tick_names(), |it| &mut it.names),
        (words::tick_fee(), |it| &mut it.fee),
    ];
    let row = move |(label, part): (&'static str, Tick)| {
        let ticked = Signal::derive(move || *part(&mut it.chosen.get()));
        let tap = Callback::new(move |()| {
            it.chosen.update(|chosen| {
                let on = part(chosen);
                *on = !*on;
            });
            it.said.set(None);
        });
        view! { <TickRow label=label.to_owned() ticked on_tap=tap/> }
    };
    let rows: Vec<AnyView> = all.into_iter().map(row).collect();
    let rings = it.rings;
    view! {
        <div role="group" aria-label=words::what_is_in_it()>
            {rows}
            <TickRow
                label=dates::reminders().to_owned()
                note=dates::when_they_ring().to_owned()
                ticked=rings
                on_tap=Callback::new(move |()| rings.update(|on| *on = !*on))
            />
        </div>
    }
}

fn keys(it: Sheets, text: Memo<String>) -> AnyView {
    let none = Signal::derive(move || text.read().is_empty());
    let copy = Callback::new(move |()| {
        let text = text.get_untracked();
        spawn_local(async move {
            let done = sharing::copy(&text).await;
            tell(it, if done { words::copied() } else { words::not_copied() }.to_owned());
        });
    });
    let share = Callback::new(move |()| {
        if !sharing::text(&text.get_untracked()) {
            tell(it, words::not_shared().to_owned());
        }
    });
    let save_text = Callback::new(move |()| {
        save(it, "pack", "txt", PLAIN, &text.get_untracked());
    });
    let can_share = sharing::can_share_text()
        .then(|| view! { <Key label=words::share().to_owned() disabled=none on_tap=share/> });
    view! {
        <Keys class="low">
            <Key
                label=words::save_chapters().to_owned()
                note=words::ends_in_vtt().to_owned()
                on_tap=Callback::new(move |()| save_chapters(it))
            />
            <Key
                label=dates::calendar().to_owned()
                note=dates::ends_in().to_owned()
                on_tap=Callback::new(move |()| save_calendar(it))
            />
        </Keys>
        <Keys class="mid">
            <Key
                label=words::save_text().to_owned()
                note=words::ends_in_txt().to_owned()
                disabled=none
                on_tap=save_text
            />
            {can_share}
            <Key
                class="half-more"
                label=words::copy().to_owned()
                note=words::as_text().to_owned()
                kind=KeyKind::Filled
                disabled=none
                on_tap=copy
            />
        </Keys>
    }
}

fn save_chapters(it: Sheets) {
    let file = it.desk.now_read(|view| {
        let marks = chapters::of_build(view.shop, it.of);
        chapters::vtt(&marks, chapters::length(view.shop, it.of))
    });
    match file {
        Ok(file) => save(it, "chapters", "vtt", chapters::MEDIA_TYPE, &file),
        Err(fault) => tell(it, publishing::fault(fault)),
    }
}

fn save_calendar(it: Sheets) {
    let rings = it.rings.get_untracked();
    let now = it.desk.at_tap();
    match it.desk.now_read(|view| calendar::file(view, Some(it.of), now, rings)) {
        Some(file) => save(it, "dates", "ics", ics::MEDIA_TYPE, &file),
        None => tell(it, dates::no_dates().to_owned()),
    }
}

fn save(it: Sheets, what: &str, end: &str, kind: &str, text: &str) {
    let whose = if sample::is_open() { "sample" } else { "benchslate" };
    let title = it.desk.now_read(|view| view.shop.builds.get(&it.of).map(|it| it.title.clone()));
    let name = words::file_name(whose, &file_word(&title.unwrap_or_default()), what, end);
    let saved = download::save(&name, kind, text.as_bytes());
    tell(it, if saved { exchange::saved(&name) } else { exchange::not_saved().to_owned() });
}

fn tell(it: Sheets, said: String) {
    announce::say(&said);
    it.said.try_set(Some(said));
}
