//! The shots of a build: what is still to be taken first, one of them chosen, and the keys for that one.

use super::{
    acts,
    look::{Look, Row, TakeRow, look},
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        kept_row::{KeptRow, KeptText},
        key::{Key, KeyKind, KeyLink},
        message::Message,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        shot_row::ShotRow,
        sum_row::Leads,
    },
    screens::{cautions, cost::no_build, out, trouble::Troubles},
    shell::{Desk, Place, Tab, desk::Phase, frame::Places, mark::LastMarkHere},
    words::film as words,
};
use benchslate_core::journal::{Id, Kind, cautions::filming};

/// The sheet. The shot whose turn it is is chosen until another is tapped.
#[component]
pub fn FilmSheet(of: Id) -> impl IntoView {
    let desk = Desk::here();
    let minute = move || desk.minute();
    let look = Memo::new(move |_| desk.read(|view| look(view, of, minute())));
    let tapped: RwSignal<Option<Id>> = RwSignal::new(None);
    let chosen = Memo::new(move |_| {
        let look = look.read();
        let look = look.as_ref()?;
        tapped.get().filter(|it| look.rows.iter().any(|row| row.shot == *it)).or(look.next)
    });
    let title = Signal::derive(move || look.read().as_ref().map(|it| it.title.clone()).unwrap_or_default());
    let note = Signal::derive(move || {
        let look = look.read();
        let it = look.as_ref().filter(|it| !it.rows.is_empty())?;
        // Of those that are wanted.
        Some(words::so_many_taken(it.taken, it.rows.iter().filter(|row| !row.waived).count()))
    });
    let rows = move || look.read().as_ref().map(|it| it.rows.clone()).unwrap_or_default();
    let empty = Memo::new(move |_| look.read().as_ref().map(|it| it.rows.is_empty()));
    let list = move || match empty.get() {
        _ if desk.phase.get() != Phase::Ready => ().draw(),
        None => no_build(),
        Some(true) => {
            let lines = Signal::stored(vec![words::nothing_yet_why().to_owned()]);
            view! { <Message title=words::nothing_yet().to_owned() lines/> }
        }
        Some(false) => {
            view! { <ul class="shots">{each(rows, move |row| shot(desk, row, chosen, tapped))}</ul> }
        }
    };
    let under = move || look.read().as_ref().map(|it| beside(desk, of, it));
    let at = Memo::new(move |_| {
        let shot = chosen.get()?;
        look.read().as_ref()?.rows.iter().find(|row| row.shot == shot).cloned()
    });
    view! {
        <Sheet>
            <Head title=title note=note tight=true/>
            <Above>
                <Troubles/>
                <Read name=title below=words::below().to_owned()>
                    {cautions::once_of(filming())}
                    {list}
                    {under}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>{move || keys(desk, of, at.get())}</Hand>
                <Places cell=1 of_build=(of, Some(Tab::Film))/>
            </Below>
        </Sheet>
    }
}

fn shot(desk: Desk, row: Row, chosen: Memo<Option<Id>>, tapped: RwSignal<Option<Id>>) -> AnyView {
    let id = row.shot;
    let mine = Memo::new(move |_| chosen.get() == Some(id));
    let takes = row.takes;
    // Chosen because its turn has come it stays short; tapped it shows what there is of it.
    let open = Memo::new(move |_| mine.get() && tapped.get() == Some(id));
    let unfolded = move || open.get().then(|| unfolded(desk, id, takes.clone()));
    view! {
        <ShotRow text=row.text chosen=mine on_tap=Callback::new(move |()| tapped.set(Some(id)))>{unfolded}</ShotRow>
    }
}

/// Under the chosen one: its takes, each with its clip; and the way to put the shot right.
fn unfolded(desk: Desk, shot: Id, takes: Vec<TakeRow>) -> AnyView {
    let take = move |it: TakeRow| {
        let key = if it.keeps { words::no_keeper() } else { words::mark_keeper() };
        let (entry, keeps) = (it.entry, it.keeps);
        let clip = words::clip_and_keeper(it.clip.as_deref().unwrap_or(words::no_clip()), it.keeps);
        let text = KeptText {
            key_name: words::key_name(key, &it.label),
            label: it.label,
            note: Some(clip),
            key: key.to_owned(),
        };
        let tap = Callback::new(move |()| acts::keeper(desk, entry, !keeps));
        view! { <KeptRow text leads=Leads::To(Place::Take(entry).href()) on_tap=tap/> }
    };
    let takes: Vec<AnyView> = takes.into_iter().map(take).collect();
    view! {
        <div class="under">
            {takes}
            <RowLink label=words::put_right().to_owned() leads=Leads::To(Place::Entry(shot).href())/>
        </div>
    }
}

/// The card, the film, what it costs.
fn beside(desk: Desk, build: Id, look: &Look) -> AnyView {
    let text = KeptText {
        label: words::card().to_owned(),
        note: Some(look.card.clone()),
        key: words::copied().to_owned(),
        key_name: words::key_name(words::copied(), words::card()),
    };
    let (said, entry) = look.film.clone();
    let film = entry.map_or(Place::Add(Kind::Film, Some(build)), Place::Entry);
    view! {
        <div class="beside-shots">
            <KeptRow text on_tap=Callback::new(move |()| acts::copied(desk, build))/>
            <RowLink label=words::the_film().to_owned() end=said leads=Leads::To(film.href())/>
            {out::to_publishing(build)}
            <RowLink label=words::costs().to_owned() leads=Leads::To(Place::Filming(build).href())/>
            {cautions::way_to_all()}
        </div>
    }
}

fn keys(desk: Desk, build: Id, at: Option<Row>) -> AnyView {
    let new = Place::Add(Kind::Shot, Some(build)).href();
    let Some(row) = at else {
        return view! {
            <Keys class="go">
                <KeyLink
                    label=words::new_shot().to_owned()
                    note=words::a_name().to_owned()
                    kind=KeyKind::Filled
                    href=new
                />
            </Keys>
        };
    };
    let (shot, out) = (row.shot, !row.waived);
    let (label, note) =
        if out { (words::waive(), words::leave_out()) } else { (words::take_in(), words::after_all()) };
    let take = words::shot_take(&row.text.what, row.take);
    let kind = if out { KeyKind::Filled } else { KeyKind::Plain };
    view! {
        <Keys class="mid">
            <Key label=label.to_owned() note=note.to_owned() on_tap=Callback::new(move |()| acts::waive(desk, shot, out))/>
            <KeyLink label=words::new_shot().to_owned() note=words::a_name().to_owned() href=new/>
            <KeyLink
                label=words::hold().to_owned()
                note=words::full_screen().to_owned()
                href=Place::Slate(shot).href()
            />
        </Keys>
        <Keys class="go">
            <Key
                class="shot-it"
                label=words::shot_it().to_owned()
                note=take
                kind
                on_tap=Callback::new(move |()| acts::take(desk, shot))
            />
        </Keys>
    }
}
