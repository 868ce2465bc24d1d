//! An entry: what it says, every version of it, and how it is put right, struck out and brought back.

use super::{correct, facts, history, line, sheet::bring_back};
use crate::dom::prelude::*;
use crate::words::film;
use crate::{
    parts::{
        facts::{Fact, Facts},
        key::{Key, KeyKind, KeyLink},
        message::{Message, MessageKind},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
    },
    screens::{away, first_amount, photos, stock::form::Form, trouble::Troubles},
    shell::{
        Desk, Go, Place, Tab,
        desk::{After, Mark, Marked, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{
        common, drying as dries, finds, free as free_words, journal as words, movement as moves, publishing,
        receipts,
    },
};
use benchslate_core::{
    costing::{self, DrewFor, Moved},
    journal::{
        Body, Change, Id, Kind,
        kinds::Bearer,
        listing::{self, Standing, State},
    },
    measure::Money,
    timing::drying,
};
use leptos::task::spawn_local;

/// So many are named that a correction moved.
const MOST_SAID: usize = 3;
/// The form that puts right.
const FORM: &str = "entry";
/// Whose form a draft is: the field that keeps the entry's id.
const OF: &str = "of";

/// The sheet.
#[component]
pub fn EntrySheet(entry: Id) -> impl IntoView {
    let desk = Desk::here();
    let form = Form::open(desk, FORM);
    let device = device(desk);
    let standing = Memo::new(move |_| desk.read(|view| listing::standing(view.journal, entry)));
    let kind = Memo::new(move |_| desk.read(|view| line::kind(view, entry)));
    let correcting = Memo::new(move |_| form.get(OF) == entry.to_string());
    let hand = Memo::new(move |_| hand(desk, entry, standing.get(), correcting.get()));
    let title = move || if standing.get().is_some() { kind.get() } else { words::no_entry().to_owned() };
    let note = move || {
        if correcting.get() {
            return Some(words::correcting().to_owned());
        }
        if standing.get().is_some_and(|it| matches!(it.state, State::Struck { .. })) {
            return Some(words::v_struck().to_owned());
        }
        desk.read(|view| {
            let body = view.journal.last_body(entry)?;
            Some(view.tongue.day(body.on().day(&view.shop.zone)))
        })
    };
    let of_build =
        Signal::derive(move || desk.read(|view| build_of(view, entry)).map(|id| (id, Some(Tab::Journal))));
    view! {
        <Sheet>
            <Head title=Signal::derive(title) note=Signal::derive(note) tight=true/>
            <Above>
                <Troubles/>
                <Read
                    name=Signal::derive(move || words::entry_name(&kind.get()))
                    below=Signal::derive(move || (!correcting.get()).then(|| words::entry_below().to_owned()))
                >
                    {move || match (standing.get(), correcting.get()) {
                        (None, _) => nothing(desk),
                        (Some(_), true) => form_of(desk, form, entry),
                        (Some(standing), false) => on_view(desk, entry, standing, device),
                    }}
                </Read>
            </Above>
            <Below>
                {move || (!correcting.get()).then(|| view! { <LastMarkHere/> })}
                <Hand name=words::keys().to_owned()>
                    {move || match hand.get() {
                        Acts::Leave => leave(),
                        Acts::Keep => form_keys(desk, form, entry),
                        Acts::May(may) => keys(desk, form, entry, may),
                    }}
                </Hand>
                <Places cell=1 of_build=of_build/>
            </Below>
        </Sheet>
    }
}

/// The device, once the store has said which.
fn device(desk: Desk) -> RwSignal<Option<Id>> {
    let device = RwSignal::new(None);
    Effect::new(move || {
        if desk.phase.get() == crate::shell::desk::Phase::Ready {
            spawn_local(async move {
                if let Some(store) = desk.store()
                    && let Ok(id) = store.device().await
                {
                    device.set(Id::parse(&id));
                }
            });
        }
    });
    device
}

/// The build whose sheets stand at the foot.
fn build_of(view: &View, entry: Id) -> Option<Id> {
    let bearer = match view.journal.last_body(entry)? {
        Body::Build(_) => return Some(entry),
        Body::Stretch(it) => it.bearer,
        Body::Draw(it) => it.bearer,
        Body::Expense(it) => it.bearer,
        Body::Note(it) => it.bearer?,
        Body::Drying(it) => listing::dried_for(view.journal, it),
        Body::Photo(it) => match (it.bearer, it.entry) {
            (Some(bearer), _) => bearer,
            // A photo of a photo leads no further.
            (None, Some(of)) if !matches!(view.journal.last_body(of), Some(Body::Photo(_))) => {
                return build_of(view, of);
            }
            (None, _) => return None,
        },
        Body::Lot(it) => return it.for_build,
        Body::Receipt(it) => it.bearer?,
        Body::ByProduct(it) => it.of,
        Body::ToolHours(it) => it.bearer,
        Body::BuyLine(it) => Bearer::Build(it.for_build?),
        Body::Made(it) => Bearer::Build(it.build),
        Body::HandOver(it) => Bearer::Build(it.build),
        Body::Film(it) => Bearer::Build(it.build),
        Body::Step(it) => Bearer::Build(it.build),
        Body::Part(it) => Bearer::Build(it.build),
        Body::Shot(it) => Bearer::Build(it.build),
        Body::Take(it) => Bearer::Build(view.shop.shots.get(&it.shot)?.body.build),
        Body::CardCopied(it) => Bearer::Build(it.build),
        Body::Chapter(it) => Bearer::Build(it.build),
        Body::Due(it) => Bearer::Build(it.build),
        Body::SeriesEnd(it) => Bearer::Build(it.build),
        Body::BuildState(it) => Bearer::Build(it.build),
        Body::Income(it) => it.shares.first()?.bearer,
        Body::Setting(_)
        | Body::Person(_)
        | Body::Stage(_)
        | Body::Item(_)
        | Body::Resource(_)
        | Body::FreeDay(_)
        | Body::Trip(_)
        | Body::Sort(_)
        | Body::Cull(_)
        | Body::Find(_)
        | Body::Tool(_)
        | Body::Blade(_)
        | Body::MonthlyCost(_)
        | Body::Shelf(_)
        | Body::Outsider(_)
        | Body::Same(_) => return None,
        Body::Retired(it) => Bearer::Build(it.what),
    };
    match bearer {
        Bearer::Build(id) => view.shop.builds.contains_key(&id).then_some(id),
        Bearer::Lot(_) | Bearer::Shop => None,
    }
}

fn nothing(desk: Desk) -> AnyView {
    // Until the journal is read there may well be such an entry.
    let ready = desk.phase.get() == crate::shell::desk::Phase::Ready;
    let lines = Signal::stored(vec![words::no_entry_why().to_owned()]);
    ready.then(|| view! { <Message title=words::no_entry().to_owned() lines/> }).draw()
}

fn leave() -> AnyView {
    let go: Go = expect_context();
    view! { <Keys class="tall"><Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/></Keys> }
}

fn on_view(desk: Desk, entry: Id, standing: Standing, device: RwSignal<Option<Id>>) -> AnyView {
    let (picture, said, photos, versions) = desk.read(|view| {
        let body = view.journal.last_body(entry);
        let picture = match body {
            Some(Body::Photo(photo)) => Some(photos::full(photos::pictured(view, photo))),
            _ => None,
        };
        let said = body.map(|body| facts::facts(view, body)).unwrap_or_default();
        (picture, said, photos::of_entry(view, entry), history::versions(view, entry, device.get()))
    });
    let fact = |(label, text): facts::Fact| Fact { label: words::label(label).to_owned(), text, note: None };
    let rows: Vec<Fact> = said.into_iter().map(fact).collect();
    view! {
        {told(standing)}
        {(standing.heads > 1).then(|| two(desk, entry, device))}
        {picture}
        {(!rows.is_empty()).then(|| view! { <Facts facts=Signal::stored(rows)/> })}
        {photos}
        {history::drawn(versions)}
    }
}

/// What stands in the way of counting it.
fn told(standing: Standing) -> AnyView {
    let (title, text) = match standing.state {
        State::Newer => (words::newer_title(), words::newer_text()),
        State::Unreadable => (words::unreadable_title(), words::unreadable_text()),
        State::Stands | State::Struck { .. } => return ().draw(),
    };
    view! { <Message title=title.to_owned() lines=Signal::stored(vec![text.to_owned()])/> }
}

/// Two versions, and a key to pick each.
fn two(desk: Desk, entry: Id, device: RwSignal<Option<Id>>) -> AnyView {
    let heads: Vec<(Id, String, String, bool)> = desk.read(|view| {
        let shown = view.journal.shown(entry).map(|shown| shown.id);
        let heads = view.journal.heads(entry).into_iter().rev();
        heads
            .map(|head| {
                let says = history::in_a_line(view, head);
                (head.id, says, history::signed(view, head, device.get()), shown == Some(head.id))
            })
            .collect()
    });
    let head = move |(revision, says, signed, counts): (Id, String, String, bool)| {
        let note = counts.then(|| words::counts_now().to_owned());
        view! {
            <p class="lead">{says}<br/><small class="note">{signed}</small></p>
            <Keys class="low">
                <Key
                    label=words::this_one().to_owned()
                    note=Signal::stored(note)
                    on_tap=Callback::new(move |()| pick(desk, entry, revision))
                />
            </Keys>
        }
    };
    let heads: Vec<AnyView> = heads.into_iter().map(head).collect();
    let lines = Signal::stored(vec![words::two_text().to_owned()]);
    view! { <Message title=words::two_title().to_owned() lines kind=MessageKind::Offer>{heads}</Message> }
}

/// What the hand holds, and nothing else of the entry: its keys stand while what they don't say changes.
#[derive(Clone, PartialEq)]
enum Acts {
    Leave,
    Keep,
    May(May),
}

/// What may be done with it.
#[derive(Clone, PartialEq)]
struct May {
    beside: Option<(&'static str, &'static str, Place)>,
    strike_out: bool,
    bring_back: bool,
    put_away: bool,
    take_photos: bool,
    correct: bool,
}

fn hand(desk: Desk, entry: Id, standing: Option<Standing>, correcting: bool) -> Acts {
    let Some(standing) = standing else { return Acts::Leave };
    if correcting {
        return Acts::Keep;
    }
    let struck = matches!(standing.state, State::Struck { .. });
    desk.read(|view| {
        let body = view.journal.last_body(entry);
        let unstruck = body.filter(|_| !struck);
        let stands = body.filter(|_| standing.state == State::Stands);
        Acts::May(May {
            beside: unstruck.and_then(|body| beside(view, entry, body)),
            strike_out: !struck,
            bring_back: struck && body.is_some(),
            put_away: stands.is_some_and(|body| can_be_put_away(view, entry, body)),
            take_photos: unstruck.is_some_and(takes_photos),
            correct: stands.is_some_and(|body| correct::fill(view, body).is_some()),
        })
    })
}

fn keys(desk: Desk, form: Form, entry: Id, may: May) -> AnyView {
    let go: Go = expect_context();
    view! {
        <Keys class="mid">
            <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
            {may.beside.map(|(label, note, place)| view! {
                <KeyLink label=label.to_owned() note=note.to_owned() href=place.href()/>
            })}
            {may.strike_out.then(|| view! {
                <Key
                    label=words::strike_out().to_owned()
                    note=words::stays_on_view().to_owned()
                    on_tap=Callback::new(move |()| strike_out(desk, entry))
                />
            })}
        </Keys>
        <Keys class="tall">
            {may.put_away.then(|| away::key(desk, entry))}
            {may.bring_back.then(|| view! {
                <Key
                    label=words::bring_back().to_owned()
                    kind=KeyKind::Filled
                    on_tap=Callback::new(move |()| bring_back(desk, entry))
                />
            })}
            {may.take_photos.then(|| {
                let about = photos::About { entry: Some(entry), bearer: None };
                view! { <photos::PhotoKey about=Signal::stored(about)/> }
            })}
            {may.correct.then(|| view! {
                <Key
                    class="wide"
                    label=words::correct().to_owned()
                    kind=KeyKind::Filled
                    on_tap=Callback::new(move |()| begin(desk, form, entry))
                />
            })}
        </Keys>
    }
}

/// A photo is of a thing or an act: not of another photo, nor of a choice.
fn takes_photos(body: &Body) -> bool {
    !matches!(body, Body::Photo(_) | Body::Setting(_))
}

/// What is chosen from, and counts.
fn can_be_put_away(view: &View, entry: Id, body: &Body) -> bool {
    let chosen_from = matches!(
        body,
        Body::Build(_) | Body::Person(_) | Body::Stage(_) | Body::Item(_) | Body::Lot(_) | Body::Resource(_)
    );
    // A lot of an item is put away with its item.
    chosen_from && view.shop.lots.get(&entry).is_none_or(|lot| lot.item.is_none())
}

/// What else can be done from here, by kind.
fn beside(view: &View, entry: Id, body: &Body) -> Option<(&'static str, &'static str, Place)> {
    match body.kind() {
        Kind::Draw => Some((words::some_back(), words::to_the_shelf(), Place::Return(entry)))
            .filter(|_| matches!(body, Body::Draw(draw) if draw.returns.is_none())),
        Kind::Lot => Some((words::the_lot(), words::board_and_saving(), Place::Lot(entry))),
        Kind::Receipt => {
            Some((receipts::its_lines(), receipts::what_it_bought(), Place::Receipt(Some(entry))))
        }
        Kind::Person => Some((words::the_person(), words::rates_there(), Place::Person(Some(entry)))),
        Kind::Setting => Some((words::the_choices(), words::changed_there(), Place::Choices)),
        Kind::Stretch => Some((dries::times(), dries::after_it(), Place::Drying(entry))).filter(
            |_| matches!(body, Body::Stretch(it) if it.to.is_some() && drying::may_dry(view.shop, it.stage)),
        ),
        Kind::Build => Some((words::the_money(), words::in_and_closing(), Place::Money(entry))),
        Kind::Step => match body {
            Body::Step(it) => Some((words::the_steps(), words::all_that_is_left(), Place::Steps(it.build))),
            _ => None,
        },
        Kind::Part => match body {
            Body::Part(it) if it.width.is_some() => {
                Some((moves::its_movement(), moves::and_weight(), Place::Movement(entry)))
            }
            Body::Part(it) => Some((words::the_parts(), words::cuts_there(), Place::Parts(it.build))),
            _ => None,
        },
        Kind::FreeDay => match body {
            Body::FreeDay(it) => {
                Some((free_words::free_hours(), free_words::week_there(), Place::Free(it.person)))
            }
            _ => None,
        },
        Kind::Shot | Kind::Take | Kind::CardCopied => build_of(view, entry).map(|build| {
            (film::the_shots(), film::all_that_is_to_shoot(), Place::Build(build, crate::shell::Tab::Film))
        }),
        Kind::Chapter | Kind::Due => Some((
            publishing::publishing(),
            publishing::all_of_it(),
            Place::Publishing(build_of(view, entry)?),
        )),
        Kind::Tool => Some((words::the_tool(), words::worth_there(), Place::Tool(entry))),
        Kind::MonthlyCost => Some((words::the_months(), words::borne_there(), Place::Months)),
        Kind::Find => Some((finds::find(), finds::worth_it(), Place::Find(entry))),
        Kind::Stage
        | Kind::Item
        | Kind::Resource
        | Kind::Trip
        | Kind::Sort
        | Kind::Cull
        | Kind::Shelf
        | Kind::Expense
        | Kind::Note
        | Kind::ByProduct
        | Kind::ToolHours
        | Kind::Blade
        | Kind::Income
        | Kind::Made
        | Kind::HandOver
        | Kind::BuildState
        | Kind::Drying
        | Kind::Photo
        | Kind::Retired
        | Kind::Same
        | Kind::Film
        | Kind::Outsider
        | Kind::SeriesEnd => None,
        Kind::BuyLine => Some((crate::words::buying::to_buy(), words::the_whole_list(), Place::Buying)),
    }
}

/// Fills the form with what the entry says.
fn begin(desk: Desk, form: Form, entry: Id) {
    form.all_right();
    for (field, text) in said(desk, entry) {
        form.set(&field, text);
    }
}

/// Opens the sheet of an entry where it is put right, in one tap from elsewhere.
pub fn put_right(desk: Desk, go: Go, entry: Id) {
    Form::lay(desk, FORM, said(desk, entry));
    go.to(&Place::Entry(entry));
}

/// What an entry says, field by field, and whose form it is.
fn said(desk: Desk, entry: Id) -> Vec<(String, String)> {
    let filled = desk.now_read(|view| view.journal.body(entry).and_then(|body| correct::fill(view, body)));
    let mut filled = filled.unwrap_or_default();
    filled.push((OF.to_owned(), entry.to_string()));
    filled
}

fn form_of(desk: Desk, form: Form, entry: Id) -> AnyView {
    let body = untrack(|| desk.read(|view| view.journal.body(entry).cloned()));
    let fields = body.map(|body| correct::draw(desk, form, &body));
    view! { <div class="form">{fields}</div> }
}

fn form_keys(desk: Desk, form: Form, entry: Id) -> AnyView {
    view! {
        <Keys class="tall">
            <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| form.done(desk))/>
            <Key
                class="wide"
                label=words::keep_correction().to_owned()
                kind=KeyKind::Filled
                on_tap=Callback::new(move |()| keep(desk, form, entry))
            />
        </Keys>
    }
}

fn keep(desk: Desk, form: Form, entry: Id) {
    let before = desk.now_read(|view| view.journal.body(entry).cloned());
    let Some(before) = before else { return };
    let Some(after) = correct::read(desk, form, entry, &before) else { return };
    let has_money = correct::has_money(form, &before);
    // Of a lot: what it moves is said, and what stays because it is closed.
    let drew = matches!(before, Body::Lot(_))
        .then(|| untrack(|| desk.books(|books, view| books.drew_from(view.shop, entry))));
    desk.act_then(
        move |hand| {
            let mut changes = if has_money { first_amount::settings(hand) } else { Vec::new() };
            changes.push(Change::write(entry, after.clone()));
            changes
        },
        move |after| {
            let moves = drew.as_deref().and_then(|drew| moved(after, entry, drew));
            let done = moves.map(|moves| words::and_it_moves(words::mark_corrected(), &moves));
            marked(&after.view(), entry, done.as_deref().unwrap_or(words::mark_corrected()))
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
            }
        },
    );
}

/// Whom a corrected lot costs another sum now; none: nobody drew from it, or all as before.
fn moved(after: &After, lot: Id, before: &[DrewFor]) -> Option<String> {
    let now = after.books().drew_from(after.shop, lot);
    let moves = costing::moved(before, &now);
    let say = |it: &Moved| {
        let name = facts::bearer(&after.view(), it.bearer);
        let money =
            |it: Option<Money>| it.map_or_else(|| words::no_figure().to_owned(), |it| after.tongue.money(it));
        if it.closed {
            words::closed_keeps(&name, &money(it.after))
        } else {
            words::moves_to(&name, &money(it.before), &money(it.after))
        }
    };
    let all: Vec<String> = moves.iter().take(MOST_SAID).map(say).collect();
    (!all.is_empty()).then(|| words::some_moved(&all, moves.len().saturating_sub(all.len())))
}

fn strike_out(desk: Desk, entry: Id) {
    desk.act(
        move |_| vec![Change::strike(entry)],
        move |after| marked(&after.view(), entry, words::mark_struck()),
    );
}

fn pick(desk: Desk, entry: Id, revision: Id) {
    desk.act(
        move |hand| Change::pick(hand.journal, revision).into_iter().collect(),
        move |after| marked(&after.view(), entry, words::mark_picked()),
    );
}

/// An entry in the words of its line; `done`: what was done with it, where that isn't plain.
pub fn marked(view: &View, entry: Id, done: &str) -> Marked {
    let second = (!done.is_empty()).then(|| done.to_owned());
    Marked::from(Mark { kind: line::kind(view, entry), what: short(line::what(view, entry)), second })
}

/// As much of it as a mark has room for.
fn short(what: String) -> String {
    crate::words::notes::beginning(&what)
}
