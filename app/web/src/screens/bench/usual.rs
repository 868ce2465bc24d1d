//! The usual draw at this stage, in one tap.

use crate::dom::prelude::*;
use crate::{parts::key::Key, screens::stock::use_stock, shell::Desk, words::stock as words};
use benchslate_core::{
    journal::{
        Change, Id, On,
        kinds::{Bearer, Draw},
    },
    measure::{Money, Quantity},
    timing::bench::{Bench, Usual},
};

/// No key where nothing was ever drawn at this stage, nor while nothing of it is left.
#[component]
pub fn UsualKey(bench: Memo<Option<Bench>>) -> impl IntoView {
    let desk = Desk::here();
    let usual = Memo::new(move |_| {
        let usual = bench.read().as_ref().and_then(|bench| bench.usual.clone())?;
        let gone = desk.books_at_leisure(|books, _| books.is_gone(usual.from));
        (gone != Some(true)).then_some(usual)
    });
    let tap = move |()| {
        let drawn = bench.with_untracked(|bench| {
            let bench = bench.as_ref()?;
            Some((bench.usual.clone()?, bench.bearer?, bench.acting().map(|clock| clock.stage.id)?))
        });
        if let Some((usual, bearer, stage)) = drawn {
            draw(desk, usual, bearer, stage);
        }
    };
    // The key stays while its words change: it may be under a thumb.
    let said = Memo::new(move |_| usual.read().as_ref().map(|usual| said(desk, usual)));
    let there = Memo::new(move |_| said.read().is_some());
    let label = move || said.get().map(|(label, _)| label).unwrap_or_default();
    let note = MaybeProp::derive(move || said.get().and_then(|(_, note)| note));
    move || {
        there.get().then(|| {
            view! { <Key class="half-more" label=Signal::derive(label) note on_tap=Callback::new(tap)/> }
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
                // What a lot bears is of the piece.
                side: usual.side.filter(|_| !matches!(bearer, Bearer::Lot(_))),
                stage: Some(stage),
                returns: None,
                note: None,
            };
            vec![Change::write(entry, draw)]
        },
        move |after| {
            let amount = words::so_much(after.tongue, said.quantity, said.unit, said.word.as_deref());
            use_stock::used(after, entry, &amount, said.from)
        },
    );
}

/// How much, and under it what it would cost. Where the maker has no word of their own for one of it, the name
/// of the thing stands under it too.
fn said(desk: Desk, usual: &Usual) -> (String, Option<String>) {
    let cost = cost(desk, usual);
    desk.read(|view| {
        let label = words::so_much(view.tongue, usual.quantity, usual.unit, usual.word.as_deref());
        let cost = cost.map(|cost| view.tongue.money(cost));
        // The name, the cost, and what it is for where that isn't the piece: whatever there is to say.
        let name = usual.word.is_none().then(|| usual.name.clone());
        let says: Vec<String> = [name, cost, usual.side.map(|side| words::for_side(side).to_owned())]
            .into_iter()
            .flatten()
            .collect();
        (label, (!says.is_empty()).then(|| says.join(", ")))
    })
}

/// What it would cost now, where that is known.
fn cost(desk: Desk, usual: &Usual) -> Option<Money> {
    let typed = Quantity::from_decimal(usual.quantity.0)?;
    desk.books_at_leisure(|books, view| {
        let quantity = view.shop.in_stock_unit(usual.from, typed, usual.unit)?;
        books.preview(usual.from, quantity)
    })
    .flatten()
}
