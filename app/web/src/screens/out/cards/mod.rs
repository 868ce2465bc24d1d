//! Cost cards of a build: a preview to scale, what stands on it, and the ways out of the phone.

mod said;

use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind},
        message::Caution,
        seg::{Choice, Seg},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
    },
    platform::{announce, card as made, download, fetch, picture::Address},
    screens::sample,
    shell::{Desk, frame::Places},
    words::{cards as words, cautions, cost, exchange},
};
use benchslate_core::{
    exchange::cards::{
        About, Card, Figures, Ground, LETTERING, Lettering, MEDIA_TYPE, Shape, Shows, draw, figures,
    },
    journal::Id,
};
use js_sys::Uint8Array;
use leptos::task::spawn_local;
use said::Said;
use std::{rc::Rc, sync::Arc};

const SHAPES: [Shape; 2] = [Shape::Wide, Shape::Tall];
const GROUNDS: [Ground; 3] = [Ground::Film, Ground::Slate, Ground::Clear];

/// One of the ticks.
type Tick = fn(&mut Shows) -> &mut bool;
/// Hands a file of that name, kind and content over.
type HandOver<'a> = &'a dyn Fn(String, &str, &[u8]);

/// What was chosen, and what came of it. Every set holds places in its list.
#[derive(Clone, Copy)]
struct Chosen {
    about: RwSignal<usize>,
    shape: RwSignal<usize>,
    ground: RwSignal<usize>,
    /// Ticks of each card.
    shows: RwSignal<[Shows; 4]>,
    /// What the keys say.
    said: RwSignal<Option<String>>,
}

impl Chosen {
    fn about(self) -> About {
        About::ALL.get(self.about.get()).copied().unwrap_or(About::Kinds)
    }

    fn shape(self) -> Shape {
        SHAPES.get(self.shape.get()).copied().unwrap_or(Shape::Wide)
    }

    fn ground(self) -> Ground {
        GROUNDS.get(self.ground.get()).copied().unwrap_or(Ground::Film)
    }

    fn shows(self) -> Shows {
        let at = self.about.get();
        self.shows.with(|all| all.get(at).copied()).unwrap_or(Shows::MODEST)
    }

    fn tick(self, part: Tick) {
        let at = self.about.get_untracked();
        self.shows.update(|all| {
            if let Some(shows) = all.get_mut(at) {
                let it = part(shows);
                *it = !*it;
            }
        });
    }
}

/// What the preview shows.
#[derive(Clone, Debug, PartialEq)]
enum Preview {
    Waits,
    NoLettering,
    NoFigures(About),
    Here(String),
}

/// The sheet.
#[component]
pub fn CardsSheet(of: Id) -> impl IntoView {
    let desk = Desk::here();
    let chosen = Chosen {
        about: RwSignal::new(0),
        shape: RwSignal::new(0),
        ground: RwSignal::new(0),
        shows: RwSignal::new(About::ALL.map(Shows::at_first)),
        said: RwSignal::new(None),
    };
    let letters = RwSignal::new(None::<Option<Arc<Lettering>>>);
    spawn_local(async move {
        let read = fetch::text(LETTERING).await.and_then(|text| Lettering::read(&text));
        letters.try_set(Some(read.map(Arc::new)));
    });
    let counted = Memo::new(move |_| desk.books(|books, view| figures(view.shop, books, of, chosen.about())));
    let preview = Memo::new(move |_| {
        let Some(letters) = letters.get() else { return Preview::Waits };
        let Some(letters) = letters else { return Preview::NoLettering };
        let Some(figures) = counted.get() else { return Preview::NoFigures(chosen.about()) };
        Preview::Here(desk.read(|view| {
            let words = Said { view, build: of };
            let (shows, shape, ground) = (chosen.shows(), chosen.shape(), chosen.ground());
            draw(&Card { figures: &figures, shows, shape, ground, words: &words }, &letters).svg
        }))
    });
    let title = Signal::derive(move || {
        desk.read(|view| {
            view.shop.builds.get(&of).map_or_else(|| cost::no_build().to_owned(), |it| it.title.clone())
        })
    });
    let ticks = move || counted.with(|figures| ticks(chosen, figures.as_ref()));
    view! {
        <Sheet>
            <Head title=title note=Some(words::title().to_owned()) tight=true/>
            <Above>
                <Read name=title below=words::below().to_owned()>
                    {move || drawn(chosen, preview.get())}
                    <div class="card-ticks" role="group" aria-label=words::on_it()>{ticks}</div>
                    <Caution text=cautions::cards().to_owned()/>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <p class="only-here" role="status">
                        {move || chosen.said.get().unwrap_or_else(|| words::says_what_is_ticked().to_owned())}
                    </p>
                    {sets(chosen)}
                    {ways(chosen, preview)}
                </Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, None)))/>
            </Below>
        </Sheet>
    }
}

/// The card as it will be, or why there is none.
fn drawn(chosen: Chosen, preview: Preview) -> AnyView {
    let svg = match preview {
        Preview::Waits => return view! { <p class="lead" role="status">{words::waits()}</p> },
        Preview::NoLettering => return view! { <p class="lead red" role="alert">{words::no_lettering()}</p> },
        Preview::NoFigures(about) => return view! { <p class="lead">{words::none_yet(about)}</p> },
        Preview::Here(svg) => svg,
    };
    let (width, height) = chosen.shape.with_untracked(|_| chosen.shape()).size();
    let clear = chosen.ground() == Ground::Clear;
    let address = Address::of(&Uint8Array::from(svg.as_bytes()), MEDIA_TYPE).map(Rc::new);
    let picture = address.map(|address| {
        let there = address.clone();
        view! {
            <img
                src=address.text().to_owned()
                alt=words::preview(chosen.about())
                width=width
                height=height
                on:load=move |_| there.give_back()
            />
        }
    });
    view! { <div class="card-preview" class:clear=clear>{picture}</div> }
}

/// Ticks of what a card can show at all.
fn ticks(chosen: Chosen, figures: Option<&Figures>) -> AnyView {
    let about = chosen.about();
    let money = about != About::Hours;
    let hours = matches!(about, About::Kinds | About::Salvage | About::Hours);
    let per_item = figures.is_some_and(|it| it.each.is_some());
    let all: [(bool, &'static str, Tick); 6] = [
        (true, words::tick_title(), |it| &mut it.title),
        (true, words::tick_build(), |it| &mut it.build),
        (money, words::tick_amounts(), |it| &mut it.amounts),
        (money, words::tick_currency(), |it| &mut it.currency),
        (hours, words::tick_hours(), |it| &mut it.hours),
        (per_item, words::tick_per_item(), |it| &mut it.per_item),
    ];
    let shown = all.into_iter().filter(|(can, ..)| *can).map(|(_, label, part)| {
        view! {
            <button
                type="button"
                class="tick-row"
                aria-pressed=move || (*part(&mut chosen.shows())).to_string()
                on:click=move |_| chosen.tick(part)
            >
                <span class="box" aria-hidden="true"></span>
                <span>{label}</span>
            </button>
        }
    });
    shown.collect::<Vec<_>>().draw()
}

fn sets(chosen: Chosen) -> AnyView {
    let set = move |name: &str, labels: Vec<&'static str>, at: RwSignal<usize>| {
        let choices: Vec<Choice> = labels.into_iter().map(Choice::plain).collect();
        let choose = Callback::new(move |place| {
            at.set(place);
            chosen.said.set(None);
        });
        view! { <Seg name=name.to_owned() choices=Signal::stored(choices) chosen=at on_choose=choose/> }
    };
    let cards = About::ALL.iter().map(|about| words::which(*about)).collect();
    view! {
        <Keys class="low">{set(words::which_card(), cards, chosen.about)}</Keys>
        <Keys class="low card-how">
            {set(words::which_shape(), words::shapes().to_vec(), chosen.shape)}
            {set(words::which_ground(), words::grounds().to_vec(), chosen.ground)}
        </Keys>
    }
}

/// Out of the phone.
fn ways(chosen: Chosen, preview: Memo<Preview>) -> AnyView {
    let svg = move || match preview.get_untracked() {
        Preview::Here(svg) => Some(svg),
        Preview::Waits | Preview::NoLettering | Preview::NoFigures(_) => None,
    };
    let none = Signal::derive(move || !matches!(*preview.read(), Preview::Here(_)));
    let hand_over = move |name: String, kind: &str, bytes: &[u8]| {
        let saved = download::save(&name, kind, bytes);
        let said = if saved { exchange::saved(&name) } else { exchange::not_saved().to_owned() };
        announce::say(&said);
        chosen.said.try_set(Some(said));
    };
    let save_svg = move |()| {
        if let Some(svg) = svg() {
            hand_over(file_name(chosen, "svg"), MEDIA_TYPE, svg.as_bytes());
        }
    };
    let with_png = move |then: fn(HandOver, String, Vec<u8>)| {
        let Some(svg) = svg() else { return };
        let (size, name) = (
            chosen.shape.with_untracked(|_| SHAPES.get(chosen.shape.get_untracked()).copied()),
            file_name(chosen, "png"),
        );
        spawn_local(async move {
            let (width, height) = size.unwrap_or(Shape::Wide).size();
            match made::png(&svg, width, height).await {
                Some(bytes) => then(&hand_over, name, bytes),
                None => drop(chosen.said.try_set(Some(words::no_png().to_owned()))),
            }
        });
    };
    let save_png = move |()| with_png(|save, name, bytes| save(name, made::PNG, &bytes));
    let share = move |()| {
        with_png(|save, name, bytes| {
            if !made::share(&name, &bytes) {
                save(name, made::PNG, &bytes);
            }
        });
    };
    let can_share = made::can_share().then(|| {
        view! { <Key label=words::share().to_owned() disabled=none on_tap=Callback::new(share)/> }
    });
    view! {
        <Keys class="mid">
            <Key label=words::save_svg().to_owned() disabled=none on_tap=Callback::new(save_svg)/>
            {can_share}
            <Key
                class="half-more"
                label=words::save_png().to_owned()
                kind=KeyKind::Filled
                disabled=none
                on_tap=Callback::new(save_png)
            />
        </Keys>
    }
}

/// The build's own name is not in it: it may be what is left out of the picture.
fn file_name(chosen: Chosen, end: &str) -> String {
    let whose = if sample::is_open() { "sample" } else { "benchslate" };
    let about = About::ALL.get(chosen.about.get_untracked()).copied().unwrap_or(About::Kinds);
    let shape = SHAPES.get(chosen.shape.get_untracked()).copied().unwrap_or(Shape::Wide);
    words::file_name(whose, about.code(), shape.code(), end)
}
