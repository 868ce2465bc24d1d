//! The last mark as it stands on every sheet with acts.

use super::{
    Desk,
    desk::{LastMark, Safety},
};
use crate::dom::prelude::*;
use crate::{
    parts::mark::{self, MarkText},
    screens::photos,
    words::common,
};
use benchslate_core::measure::Instant;

/// Shows nothing before anything was written. Why no photo came of a picture stands in its place until it was seen.
#[component]
pub fn LastMarkHere() -> impl IntoView {
    let desk = Desk::here();
    let there = Memo::new(move |_| desk.last.with(Option::is_some));
    let mark = Signal::derive(move || desk.last.get().map(|last| words(desk, &last)).unwrap_or_default());
    let undo = Signal::derive(move || {
        let undone = desk.last.with(|last| last.as_ref().is_some_and(|last| last.undone));
        if undone { common::put_back() } else { common::undo() }.to_owned()
    });
    let no_photo = photos::why_none(desk);
    move || {
        if no_photo.with(Option::is_some) {
            return view! { <photos::NoPhoto/> };
        }
        there.get().then(|| {
            view! { <mark::LastMark name=common::last_mark().to_owned() mark=mark undo=undo on_undo=move |()| desk.undo()/> }
        }).draw()
    }
}

fn words(desk: Desk, last: &LastMark) -> MarkText {
    let at = Instant(last.at);
    let time = desk.read(|view| {
        let today = view.shop.zone.day(desk.minute()) == view.shop.zone.day(at);
        if today { view.tongue.time(at) } else { view.tongue.day_of(at) }
    });
    let (safety, state) = match last.safety {
        Safety::Kept if last.undone => (mark::Safety::Kept, common::taken_back()),
        Safety::Kept => (mark::Safety::Kept, common::kept()),
        Safety::Pending => (mark::Safety::Pending, common::being_kept()),
        Safety::NotSafe => (mark::Safety::NotSafe, common::not_safe()),
    };
    let words = last.mark.clone();
    MarkText {
        time,
        kind: words.kind,
        what: words.what,
        second: words.second,
        safety,
        state: state.to_owned(),
    }
}
