//! A step is done, or is not yet: on its sheet; and at the bench, in one tap, once its clock was stopped.

use super::words;
use crate::dom::prelude::*;
use crate::{
    parts::key::Key,
    shell::{Desk, desk::Marked},
};
use benchslate_core::{
    journal::{Body, Change, Id, kinds},
    timing::at_work::open_step_of,
};

/// The key that follows a stop: that the step which was worked on is done. None: no step, or one that is done.
pub fn done_key(desk: Desk) -> AnyView {
    let open = Memo::new(move |_| {
        let stopped =
            desk.last.with(|last| last.as_ref().filter(|it| !it.undone).and_then(|it| it.stopped))?;
        desk.read(|view| {
            let (step, it) = open_step_of(view.shop, stopped)?;
            Some((stopped, step, it.body.title.clone()))
        })
    });
    let key = move |(stopped, step, title): (Id, Id, String)| {
        // What was stopped stays drawn: it can still be ended earlier, and be told how long it dries.
        let tap = Callback::new(move |()| mark_done(desk, step, true, Some(stopped)));
        view! { <Key label=words::step_done().to_owned() note=title class="of-step" on_tap=tap/> }
    };
    (move || open.get().map(key)).draw()
}

/// `stopped`: the stretch that was stopped just before.
pub(super) fn mark_done(desk: Desk, step: Id, done: bool, stopped: Option<Id>) {
    desk.act(
        move |hand| {
            let Some(Body::Step(it)) = hand.journal.body(step) else { return Vec::new() };
            let done = done.then(|| hand.shop.zone.day(hand.now));
            vec![Change::write(step, kinds::Step { done, ..it.clone() })]
        },
        move |after| {
            let it = after.shop.steps.get(&step);
            let (title, done) = it.map(|it| (it.body.title.clone(), it.done().is_some())).unwrap_or_default();
            let build = it.map_or(step, |it| it.build());
            let marked = super::marked(words::marked_done(&title, done), &after.view(), build);
            Marked { stopped, ..marked }
        },
    );
}
