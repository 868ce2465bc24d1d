//! The two keys under every form: leave it as it is, or keep what was typed.

use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind},
        sheet::Keys,
    },
    shell::Go,
    words::common,
};

/// Leave, and the sheet's one filled key. Leaving loses nothing: the draft stays.
pub fn form_keys(go: Go, label: &'static str, keep: Callback<()>) -> AnyView {
    view! {
        <Keys class="tall">
            <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
            <Key class="wide" label=label.to_owned() kind=KeyKind::Filled on_tap=keep/>
        </Keys>
    }
}

/// Where there is nothing to keep.
pub fn leave_key(go: Go) -> AnyView {
    view! {
        <Keys class="tall">
            <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
        </Keys>
    }
}
