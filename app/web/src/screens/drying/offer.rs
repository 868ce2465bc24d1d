//! What is offered when the clock of a glue-up or a coat was stopped: the last times in one tap, and none in one tap.

use super::{Skipped, keep, near};
use crate::dom::prelude::*;
use crate::{
    parts::{
        drying_bar::{DryingBar, DryingText},
        key::{Key, KeyKind, KeyLink},
        sheet::Keys,
    },
    shell::{Desk, Place, desk::View},
    words::drying as words,
};
use benchslate_core::{
    journal::{Id, kinds::Source},
    measure::Seconds,
    timing::{
        bench::{Bench, Unsaid},
        drying::{self, Offer},
    },
};

/// What was just stopped, where something may dry after it and nothing was said yet.
pub fn offered(desk: Desk, bench: Memo<Option<Bench>>) -> Option<Unsaid> {
    let stopped =
        desk.last.with(|last| last.as_ref().filter(|last| !last.undone).and_then(|last| last.stopped))?;
    let unsaid = unsaid(bench)?;
    desk.read(|view| drying::stopped_as_one(view.shop, stopped, unsaid.stretch)).then_some(unsaid)
}

/// The glue-up or coat that ended last, where nothing was said yet; not even that nothing dries.
pub fn unsaid(bench: Memo<Option<Bench>>) -> Option<Unsaid> {
    let skipped: Skipped = expect_context();
    let unsaid = bench.read().as_ref().and_then(|bench| bench.unsaid.clone())?;
    (!skipped.is(unsaid.stretch)).then_some(unsaid)
}

fn offers(desk: Desk, stretch: Id) -> Vec<Offer> {
    desk.read(|view| drying::offers(view.shop, stretch))
}

/// The first offer drawn to scale, with where it comes from.
#[component]
pub fn OfferDrawn(unsaid: Unsaid) -> impl IntoView {
    let desk = Desk::here();
    let first = offers(desk, unsaid.stretch).into_iter().next();
    let now = desk.minute();
    let (bar, lines) = desk.read(|view| match &first {
        Some(offer) => {
            (Some(text(view, &unsaid, offer, now)), vec![from(view, &unsaid, offer), shows(false)])
        }
        None => (None, vec![words::none_yet(&unsaid.stage), shows(true)]),
    });
    view! {
        <section class="drying-offer" aria-label=words::offered()>
            <h2>{words::how_long()}</h2>
            {bar.map(|text| view! { <DryingBar text/> })}
            {lines.into_iter().map(|line| view! { <p class="note">{line}</p> }).collect::<Vec<_>>()}
        </section>
    }
}

/// That no page can ring is said with the first of them.
fn shows(first: bool) -> String {
    if first { [words::bench_shows(), words::no_ring()].join(" ") } else { words::bench_shows().to_owned() }
}

fn text(view: &View, unsaid: &Unsaid, offer: &Offer, now: benchslate_core::measure::Instant) -> DryingText {
    let (ended, length) = (unsaid.ended.instant, |it| words::length(view.tongue, it));
    let held = offer.held.map(|held| words::held_to(&length(held), &near(view, ended.plus(held), now)));
    DryingText {
        held: held.map(|says| (share(offer.held, offer.next), says, words::held().to_owned())),
        next: words::next_from(&length(offer.next), &near(view, ended.plus(offer.next), now)),
        rest: words::still_drying().to_owned(),
        from: near(view, ended, now),
        to: near(view, ended.plus(offer.next), now),
    }
}

/// For the drawing only: 0 to 1.
fn share(held: Option<Seconds>, next: Seconds) -> f64 {
    let (held, next) = (held.unwrap_or_default().0 as f64, next.0 as f64);
    if next > 0.0 { (held / next).clamp(0.0, 1.0) } else { 0.0 }
}

fn from(view: &View, unsaid: &Unsaid, offer: &Offer) -> String {
    let length = words::length(view.tongue, offer.next);
    let stretch = view.shop.stretches.iter().find(|it| it.entry() == unsaid.stretch);
    match stretch.and_then(|it| drying::drawn_in(view.shop, it)).filter(|_| offer.same_item) {
        Some(item) => {
            words::drawn_from_item(&length, &crate::words::gaps::name(view.shop, Source::Item(item)))
        }
        None => {
            let title = crate::screens::journal::facts::bearer(view, offer.bearer);
            words::drawn_from(&length, &title, &view.tongue.day(offer.day))
        }
    }
}

/// The keys: the last times, any other, none. Where nothing was given yet: common practice, marked so.
#[component]
pub fn OfferKeys(
    stretch: Id,
    /// On the sheet where a time is typed: only what is offered, none of it filled.
    #[prop(optional)]
    beside_a_form: bool,
    #[prop(into)] then: Callback<()>,
) -> impl IntoView {
    let (desk, skipped) = (Desk::here(), expect_context::<Skipped>());
    let offers = offers(desk, stretch);
    let typed_first = offers.is_empty() && !beside_a_form;
    let key = move |(at, (label, note, held, next)): (usize, Offered)| {
        let filled = at == 0 && !typed_first && !beside_a_form;
        view! {
            <Key
                label
                note
                kind=if filled { KeyKind::Filled } else { KeyKind::Plain }
                on_tap=Callback::new(move |()| keep(desk, stretch, held, next, move || then.run(())))
            />
        }
    };
    let times = desk.read(|view| said(view, &offers));
    let times: Vec<AnyView> = times.into_iter().enumerate().map(key).collect();
    if beside_a_form {
        return view! { <Keys class="low">{times}</Keys> };
    }
    let other = view! {
        <KeyLink
            label=if typed_first { words::type_it() } else { words::other() }.to_owned()
            note=words::hours_or_until().to_owned()
            kind=if typed_first { KeyKind::Filled } else { KeyKind::Plain }
            href=Place::Drying(stretch).href()
        />
    };
    let none = view! {
        <Key
            label=words::nothing_dries().to_owned()
            note=words::go_on().to_owned()
            on_tap=Callback::new(move |()| skipped.say(stretch))
        />
    };
    let done = crate::screens::steps::done_key(desk);
    if typed_first {
        return view! { <Keys class="go">{other}</Keys><Keys class="mid">{times}{none}{done}</Keys> };
    }
    view! { <Keys class="go">{times}</Keys><Keys class="mid">{other}{none}{done}</Keys> }
}

/// A key's words, and what it keeps.
type Offered = (String, String, Option<Seconds>, Seconds);

fn said(view: &View, offers: &[Offer]) -> Vec<Offered> {
    let length = |it| words::length(view.tongue, it);
    if offers.is_empty() {
        let common = (length(drying::COMMON), words::common_practice().to_owned(), None, drying::COMMON);
        return vec![common];
    }
    let one = |offer: &Offer| {
        let title = crate::screens::journal::facts::bearer(view, offer.bearer);
        let note = match offer.held {
            Some(held) => words::held_for(&length(held)),
            None => words::given_for(&title, &view.tongue.day(offer.day)),
        };
        (length(offer.next), note, offer.held, offer.next)
    };
    offers.iter().map(one).collect()
}
