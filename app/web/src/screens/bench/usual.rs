//! The usual draw at this stage, in one tap.

use crate::{
    parts::key::Key,
    shell::{
        Desk,
        desk::{After, Mark, Marked},
    },
    words::stock as words,
};
use benchslate_core::{
    journal::{
        Change, Id, On,
        kinds::{Bearer, Draw},
    },
    timing::bench::{Bench, Usual},
};
use leptos::prelude::*;

/// No key where nothing was ever drawn at this stage.
#[component]
pub fn UsualKey(bench: Memo<Option<Bench>>) -> impl IntoView {
    let desk = Desk::here();
    let usual = Memo::new(move |_| bench.read().as_ref().and_then(|bench| bench.usual.clone()));
    let tap = move |()| {
        let drawn = bench.with_untracked(|bench| {
            let bench = bench.as_ref()?;
            Some((bench.usual.clone()?, bench.bearer?, bench.clocks.last().map(|clock| clock.stage.id)?))
        });
        if let Some((usual, bearer, stage)) = drawn {
            draw(desk, usual, bearer, stage);
        }
    };
    move || {
        usual.get().map(|usual| {
            let label = amount(desk, &usual);
            view! { <Key label on_tap=Callback::new(tap)/> }
        })
    }
}

fn draw(desk: Desk, usual: Usual, bearer: Bearer, stage: Id) {
    let entry = desk.fresh();
    let said = usual.clone();
    desk.act(
        move |hand| {
            let draw = Draw {
                on: On::At(hand.shop.zone.when(hand.now)),
                from: usual.from,
                quantity: usual.quantity,
                unit: usual.unit,
                bearer,
                side: None,
                stage: Some(stage),
                returns: None,
                note: None,
            };
            vec![Change::write(entry, draw)]
        },
        move |after| mark(after, &said),
    );
}

fn amount(desk: Desk, usual: &Usual) -> String {
    desk.read(|view| words::so_much_of(view.tongue, usual.quantity, usual.unit, usual.word.as_deref(), &usual.name))
}

fn mark(after: &After, usual: &Usual) -> Marked {
    let amount =
        words::so_much_of(after.tongue, usual.quantity, usual.unit, usual.word.as_deref(), &usual.name);
    Mark { kind: words::used().to_owned(), what: amount, second: None }.into()
}
