//! Sheets of later versions: they say what will stand there, and offer nothing else.

use crate::dom::prelude::*;
use crate::{
    parts::{
        message::Message,
        sheet::{Above, Below, Head, Read, Sheet},
    },
    shell::frame::Places,
    words::builds as words,
};

/// The plan.
#[component]
pub fn PlanSheet() -> impl IntoView {
    view! {
        <Sheet>
            <Head title=words::plan_title().to_owned() tight=true/>
            <Above>{not_drawn(Signal::stored(words::plan_title().to_owned()), words::plan_text())}</Above>
            <Below><Places cell=3/></Below>
        </Sheet>
    }
}

fn not_drawn(name: Signal<String>, text: &'static str) -> AnyView {
    view! {
        <Read name>
            <Message title=words::not_drawn_yet().to_owned() lines=Signal::stored(vec![text.to_owned()])/>
        </Read>
    }
}
