//! A new entry of a kind that has no form of its own: the fields by which it is put right, empty.

use super::{correct, entry, facts, running_facts};
use crate::dom::prelude::*;
use crate::{
    parts::sheet::{Above, Below, Hand, Head, Read, Sheet},
    screens::{
        first_amount,
        form_keys::form_keys,
        publishing::chapter,
        shop,
        stock::{form::Form, thing::Thing},
        trouble::Troubles,
    },
    shell::{
        Desk, Go, Place,
        desk::{Phase, View},
        frame::Places,
    },
    words::add as words,
};
use benchslate_core::{
    journal::{Body, Change, Id, Kind, fitted, kinds::Bearer},
    measure::Instant,
    timing::Hand as Deciding,
};

/// The form. `of`: the tool, build or lot it is about.
#[component]
pub fn AddSheet(kind: Kind, of: Option<Id>) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, kind.code());
    let bearer = desk.bench().and_then(|bench| bench.bearer);
    let about = Signal::derive(move || desk.read(|view| of.and_then(|of| about(view, of))));
    let keep = Callback::new(move |()| keep(desk, go, form, Asked { kind, of, bearer }));
    let asked = Asked { kind, of, bearer };
    let ready = Memo::new(move |_| desk.phase.get() == Phase::Ready);
    let fields = move || ready.get().then(|| untrack(|| fields(desk, form, asked)));
    let (cell, of_build) = stands(desk, kind, of);
    let hand = match kind {
        Kind::Chapter => chapter::hand(desk, go, form, of, keep),
        _ => view! { <Hand name=words::keys().to_owned()>{form_keys(go, words::keep(), keep)}</Hand> },
    };
    view! {
        <Sheet>
            <Head title=words::title(kind).to_owned() note=about tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::title(kind).to_owned() below=words::below(kind).to_owned()>
                    <div class="form">{fields}</div>
                </Read>
            </Above>
            <Below>
                {hand}
                <Places cell of_build/>
            </Below>
        </Sheet>
    }
}

/// What the address asks for.
#[derive(Clone, Copy)]
struct Asked {
    kind: Kind,
    of: Option<Id>,
    bearer: Option<Bearer>,
}

impl Asked {
    fn blank(self, view: &View, now: Instant) -> Option<Body> {
        correct::blank(view, self.kind, self.of, self.bearer, now)
    }
}

type OwnSheet = (Id, Option<crate::shell::Tab>);

/// Where it stands in the title block: tools and months by the shop, the rest by their build.
fn stands(desk: Desk, kind: Kind, of: Option<Id>) -> (usize, Signal<Option<OwnSheet>>) {
    let shops = matches!(
        kind,
        Kind::Tool | Kind::Blade | Kind::ToolHours | Kind::MonthlyCost | Kind::Resource | Kind::FreeDay
    );
    let build = Signal::derive(move || {
        let of = of.filter(|_| !shops)?;
        let build = desk
            .read(|view| Some(chapter::build_of(view, of)).filter(|it| view.shop.builds.contains_key(it)));
        Some((build?, None))
    });
    let cell = match kind {
        Kind::Shelf | Kind::BuyLine => 2,
        _ if shops => 4,
        _ => 1,
    };
    (cell, build)
}

/// The thing it is about, by name.
fn about(view: &View, of: Id) -> Option<String> {
    let of = chapter::build_of(view, of);
    if view.shop.builds.contains_key(&of) {
        return Some(facts::bearer(view, Bearer::Build(of)));
    }
    if view.shop.lots.contains_key(&of) {
        return Some(facts::bearer(view, Bearer::Lot(of)));
    }
    if view.shop.tools.contains_key(&of) {
        return Some(running_facts::tool(view, of));
    }
    Thing::of(view.shop, of).map(|thing| thing.name)
}

fn fields(desk: Desk, form: Form, asked: Asked) -> AnyView {
    let blank = desk.now_read(|view| asked.blank(view, desk.at_tap()));
    let Some(blank) = blank else { return ().draw() };
    let filled = desk.now_read(|view| correct::fill(view, &blank)).unwrap_or_default();
    let chapter = asked.kind == Kind::Chapter;
    // What is nought because nothing was typed is no nought to be offered.
    let nought = |(field, text): &(String, String)| text == "0" || (chapter && field == "at");
    form.offer(filled.into_iter().filter(|it| !nought(it)).collect());
    let note = desk.now_read(|view| note(view, &blank, desk.at_tap()));
    view! {
        {if chapter { chapter::fields(desk, form, asked.of) } else { correct::draw(desk, form, &blank) }}
        {note.map(|note| view! { <p class="note">{note}</p> })}
    }
}

/// What keeping it does beside.
fn note(view: &View, body: &Body, now: Instant) -> Option<String> {
    let Body::Blade(blade) = body else { return words::note(body.kind()).map(str::to_owned) };
    let on = view.shop.blade_on(blade.tool, view.shop.zone.day(now));
    Some(on.map_or_else(|| words::blades_wear().to_owned(), |on| words::comes_off(&on.what)))
}

fn keep(desk: Desk, go: Go, form: Form, asked: Asked) {
    let Some(blank) = desk.now_read(|view| asked.blank(view, desk.at_tap())) else { return };
    let entry = desk.fresh();
    let Some(body) = correct::read(desk, form, entry, &blank) else { return shop::to_the_wrong() };
    let has_money = correct::has_money(form, &blank);
    desk.act_then(
        move |hand| {
            let mut changes = if has_money { first_amount::settings(hand) } else { Vec::new() };
            changes.push(Change::write(entry, body.clone()));
            changes.extend(beside(hand, &body));
            changes
        },
        move |after| entry::marked(&after.view(), entry, ""),
        move |done| {
            if done.is_ok() {
                form.done(desk);
                leave(desk, go, asked, entry);
            }
        },
    );
}

/// A new tool shows what it comes to, a chapter leads to the next; anything else was written for the sheet that one came
/// from.
fn leave(desk: Desk, go: Go, asked: Asked, entry: Id) {
    match asked.kind {
        Kind::Tool => go.instead(&Place::Tool(entry)),
        Kind::Chapter => chapter::leave(desk, go, asked.of),
        _ => go.back(),
    }
}

/// A new blade takes off the one that is on.
fn beside(hand: &Deciding, body: &Body) -> Vec<Change> {
    let Body::Blade(blade) = body else { return Vec::new() };
    fitted::take_off(hand.journal, hand.shop, blade.tool, blade.on.day(&hand.shop.zone), None)
}
