//! Going to a place, from code. Links go by themselves.

use super::Place;
use crate::dom::prelude::*;
use leptos_router::{NavigateOptions, hooks::use_navigate};
use std::rc::Rc;

/// A handle that can be copied into any event.
#[derive(Clone, Copy)]
pub struct Go(StoredValue<Navigate, LocalStorage>);

type Navigate = Rc<dyn Fn(&str, NavigateOptions)>;

impl Go {
    /// Inside the router only.
    pub fn provide() -> Go {
        let navigate = use_navigate();
        let go = Go(StoredValue::new_local(Rc::new(move |to: &str, options| navigate(to, options))));
        provide_context(go);
        go
    }

    /// To a place; back leads here again.
    pub fn to(self, place: &Place) {
        self.0.with_value(|go| go(&absolute(place), NavigateOptions::default()));
    }

    /// In place of this one: back leads to where this one was come from.
    pub fn instead(self, place: &Place) {
        self.0.with_value(|go| go(&absolute(place), NavigateOptions { replace: true, ..Default::default() }));
    }

    /// Where one was before; to the bench, where that was no sheet of ours.
    pub fn back(self) {
        match web_sys::window().and_then(|window| window.history().ok()) {
            Some(history) if came_from_here(&history) => {
                let _ = history.back();
            }
            _ => self.instead(&Place::Bench),
        }
    }
}

/// Whether the page before this one is ours. Browsers that don't say so tell only whether there was any.
fn came_from_here(history: &web_sys::History) -> bool {
    let said = js_sys::Reflect::get(&js_sys::global(), &"navigation".into())
        .and_then(|navigation| js_sys::Reflect::get(&navigation, &"canGoBack".into()));
    match said.ok().and_then(|said| said.as_bool()) {
        Some(said) => said,
        None => history.length().is_ok_and(|length| length > 1),
    }
}

/// With the folder that the page lies in, so that any sub-folder of any host will do.
fn absolute(place: &Place) -> String {
    let folder = web_sys::window().and_then(|window| window.location().pathname().ok());
    format!("{}?at={}", folder.unwrap_or_else(|| "/".into()), place.at())
}
