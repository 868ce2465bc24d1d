//! What the keys of the film write.

use crate::{
    shell::{
        Desk,
        desk::{After, Mark, Marked},
    },
    words::film as words,
};
use benchslate_core::{
    journal::{
        Body, Change, Id, On,
        kinds::{CardCopied, Shot, Take},
    },
    timing::shots,
};

/// A take of a shot, had now.
pub fn take(desk: Desk, shot: Id) {
    let entry = desk.fresh();
    desk.act(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write(entry, Take { on, shot, clip: None, keep: false })]
        },
        move |after| {
            let listed = listed(after, shot);
            let second = listed.map(|it| words::take_of(it.takes.len(), it.wanted));
            mark(words::take_kind(), super::what(&after.view(), shot), second)
        },
    );
}

/// Left out, or wanted after all.
pub fn waive(desk: Desk, shot: Id, out: bool) {
    desk.act(
        move |hand| {
            let Some(Body::Shot(it)) = hand.journal.body(shot) else { return Vec::new() };
            let waived = out.then(|| hand.shop.zone.day(hand.now));
            vec![Change::write(shot, Shot { waived, ..it.clone() })]
        },
        move |after| {
            let second = if out { words::waived() } else { words::after_all() };
            mark(words::shot_kind(), super::what(&after.view(), shot), Some(second.to_owned()))
        },
    );
}

/// A keeper, or not.
pub fn keeper(desk: Desk, entry: Id, keep: bool) {
    desk.act(
        move |hand| {
            let Some(Body::Take(it)) = hand.journal.body(entry) else { return Vec::new() };
            vec![Change::write(entry, Take { keep, ..it.clone() })]
        },
        move |after| taken(after, entry),
    );
}

/// The mark of a take that was put right.
pub fn taken(after: &After, entry: Id) -> Marked {
    let it = after.shop.takes.iter().find(|it| it.order.entry == entry);
    let what = it.map(|it| super::what(&after.view(), it.shot)).unwrap_or_default();
    let clip = it.and_then(|it| it.clip.clone()).unwrap_or_default();
    let second = words::clip_and_keeper(&clip, it.is_some_and(|it| it.keep));
    mark(words::take_kind(), what, Some(second).filter(|it| !it.is_empty()))
}

/// The camera's card was copied.
pub fn copied(desk: Desk, build: Id) {
    let entry = desk.fresh();
    desk.act(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write(entry, CardCopied { on, build })]
        },
        move |_| mark(words::card_kind(), words::is_copied().to_owned(), None),
    );
}

fn listed(after: &After, shot: Id) -> Option<shots::Listed> {
    let build = after.shop.shots.get(&shot)?.body.build;
    shots::listed(after.shop, build).into_iter().find(|it| it.shot == shot)
}

fn mark(kind: &str, what: String, second: Option<String>) -> Marked {
    Mark { kind: kind.to_owned(), what, second }.into()
}
