//! What a draw is for: one key that says it, and in its place, once tapped, the set to choose from.
//!
//! The usual way is not a tap longer: it starts at what is likely. What is chosen is kept with the draft.

use super::slots::Said;
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::Key,
        seg::{Choice, Seg},
    },
    screens::hours::fields::side_code,
    shell::Desk,
    words::{common, stock as words},
};
use benchslate_core::{
    journal::kinds::{Bearer, Side, Source},
    timing::likely,
};

const SIDES: [Side; 3] = [Side::Piece, Side::Film, Side::Both];

/// What it is for: as chosen, else as is likely. None: it can't be chosen, for what a lot bears is of the piece.
pub fn side(desk: Desk, of: Source, said: Said, into: Option<Bearer>) -> Option<Side> {
    if matches!(into, Some(Bearer::Lot(_))) {
        return None;
    }
    let clock = into.and_then(|into| super::stage_at(desk, into));
    said.side().or_else(|| Some(desk.read(|view| likely::draw_side(view.shop, of, clock))))
}

/// The key, or the set while it is open.
pub fn key(said: Said, side: Side, opens: RwSignal<bool>) -> AnyView {
    if !opens.get() {
        return view! {
            <Key
                label=words::for_side(side).to_owned()
                name=words::side_key(side)
                on_tap=Callback::new(move |()| opens.set(true))
            />
        };
    }
    let choices: Vec<Choice> = SIDES.iter().map(|side| Choice::plain(common::side(*side))).collect();
    let at = SIDES.iter().position(|it| *it == side).unwrap_or(0);
    let choose = move |at: usize| {
        if let Some(side) = SIDES.get(at) {
            said.set_side(side_code(*side));
        }
        opens.set(false);
    };
    view! {
        <Seg
            name=words::what_for().to_owned()
            class="wide"
            choices=Signal::stored(choices)
            chosen=Signal::stored(at)
            on_choose=Callback::new(choose)
        />
    }
}
