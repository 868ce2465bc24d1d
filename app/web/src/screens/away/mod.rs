//! What was put away: a build that is finished with, a stage that nobody uses, an item that is not bought again.
//!
//! Whether something is offered is core's to say (`Shop::offers`); here it is put away, and taken back in one tap.

mod sheet;

pub use sheet::AwaySheet;

use crate::dom::prelude::*;
use crate::{
    parts::key::Key,
    shell::{
        Desk,
        desk::{Mark, Marked},
    },
    words::{away as words, gaps},
};
use benchslate_core::journal::{
    Change, Id, On, Shop,
    kinds::{Retired, Source},
};

/// What a thing that can be put away is called.
pub fn name(shop: &Shop, what: Id) -> String {
    let build = shop.builds.get(&what).map(|build| build.title.clone());
    let person = || shop.people.get(&what).map(|person| person.name.clone());
    let stage = || shop.stages.get(&what).map(|stage| stage.name.clone());
    let lot = || shop.lots.contains_key(&what).then(|| gaps::name(shop, Source::Lot(what)));
    let item = || shop.item(what).map(|item| item.name.clone());
    build
        .or_else(person)
        .or_else(stage)
        .or_else(lot)
        .or_else(item)
        .or_else(|| shop.resources.get(&what).map(|it| it.name.clone()))
        .or_else(|| shop.finds.get(&what).map(|find| find.name.clone()))
        .unwrap_or_else(|| words::gone().to_owned())
}

/// Puts a thing away, or takes it back.
pub fn put(desk: Desk, what: Id, back: bool) {
    let entry = desk.fresh();
    desk.act(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write(entry, Retired { on, what, back })]
        },
        move |after| {
            let name = name(after.shop, what);
            Marked::from(Mark { kind: words::said(back).to_owned(), what: name, second: None })
        },
    );
}

/// The key on the thing's own sheet.
pub fn key(desk: Desk, what: Id) -> AnyView {
    let away = Memo::new(move |_| desk.read(|view| !view.shop.offers(what)));
    let label = move || if away.get() { words::take_back() } else { words::put_away() }.to_owned();
    let note =
        move || Some(if away.get() { words::offered_again() } else { words::stays_whole() }.to_owned());
    let tap = move |()| put(desk, what, away.get_untracked());
    view! {
        <Key
            label=Signal::derive(label)
            note=Signal::derive(note)
            on_tap=Callback::new(tap)
        />
    }
}
