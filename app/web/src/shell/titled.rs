//! The window is named after the sheet in it, and a sheet that is gone to is said aloud.

use super::Place;
use crate::dom::prelude::*;
use crate::platform::announce;

/// Follows the place: the head of its sheet is the window's title.
pub fn follow(place: Memo<Place>) {
    Effect::new(move |before: Option<Place>| {
        let now = place.get();
        let gone_to = before.is_some_and(|before| before != now);
        // The sheet is drawn after this; its head is there at the next frame.
        request_animation_frame(move || name(gone_to));
        now
    });
}

fn name(aloud: bool) {
    let Some(document) = web_sys::window().and_then(|window| window.document()) else { return };
    let head = document.query_selector("h1").ok().flatten().and_then(|head| head.text_content());
    let Some(head) = head.filter(|head| !head.is_empty()) else { return };
    document.set_title(&crate::words::common::window_title(&head));
    if aloud {
        announce::say(&head);
    }
}
