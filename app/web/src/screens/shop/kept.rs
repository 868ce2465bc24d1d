//! How much lies here, what the browser promises, and what was put aside.

use crate::dom::prelude::*;
use crate::{
    parts::sum_row::{Group, Leads, SumRow, SumText},
    shell::Desk,
    store::persist,
    words::shop as words,
};
use leptos::task::spawn_local;

/// What storage answers; none while it is being asked.
#[derive(Clone, Copy, Default)]
struct Answers {
    used: RwSignal<Option<f64>>,
    promised: RwSignal<Option<bool>>,
    aside: RwSignal<u64>,
    /// Asked for, and not given.
    refused: RwSignal<bool>,
}

/// Rows under one heading.
#[component]
pub fn KeptHere() -> impl IntoView {
    let desk = Desk::here();
    let answers = Answers::default();
    // Asked again when the journal grows.
    Effect::new(move || {
        desk.read(|view| view.journal.len());
        spawn_local(asked(desk, answers));
    });
    view! {
        <Group title=words::kept_here().to_owned()/>
        {move || plain(lines(desk, answers))}
        {move || answers.promised.get().map(|promised| promise(answers, promised))}
        {move || (answers.aside.get() > 0).then(|| plain(aside(answers.aside.get())))}
    }
}

async fn asked(desk: Desk, answers: Answers) {
    let (promised, room) = (persist::promised().await, persist::room().await);
    let aside = match desk.store() {
        Some(store) => store.quarantine_count().await.unwrap_or_default(),
        None => 0,
    };
    // The sheet may be gone by now.
    answers.used.try_set(room.map(|room| room.used));
    answers.promised.try_set(Some(promised));
    answers.aside.try_set(aside);
}

fn lines(desk: Desk, answers: Answers) -> SumText {
    desk.read(|view| SumText {
        label: words::journal().to_owned(),
        working: Some(words::lines(view.tongue, view.journal.len())),
        figure: answers.used.get().map(|used| words::room(view.tongue, used)).unwrap_or_default(),
        ..SumText::default()
    })
}

fn promise(answers: Answers, promised: bool) -> AnyView {
    let text = SumText {
        label: words::promise().to_owned(),
        working: Some(if promised { words::promised() } else { words::not_promised() }.to_owned()),
        ..SumText::default()
    };
    if promised {
        return plain(text);
    }
    let ask = SumText {
        label: words::ask_it().to_owned(),
        working: answers.refused.get().then(|| words::refused().to_owned()),
        ..SumText::default()
    };
    let tap = move |()| {
        spawn_local(async move {
            let yes = persist::ask().await;
            answers.promised.try_set(Some(yes));
            answers.refused.try_set(!yes);
        });
    };
    view! { {plain(text)}<SumRow text=ask leads=Leads::Tap(Callback::new(tap)) signed=false/> }
}

fn aside(count: u64) -> SumText {
    SumText {
        label: words::put_aside().to_owned(),
        working: Some(words::clashed(count)),
        ..SumText::default()
    }
}

fn plain(text: SumText) -> AnyView {
    view! { <SumRow text signed=false/> }
}
