//! Shots on the bench: the next one as a key while a clock runs, and what is too late after the change-over.

use super::acts;
use crate::dom::prelude::*;
use crate::{
    parts::{drying_bar::DryCell, facts::Fact, key::Key},
    shell::{Desk, Place},
    words::film as words,
};
use benchslate_core::timing::bench::{Bench, BenchClosing};

/// One tap ticks a take; the next missing shot then stands on the key. No key where none is left.
#[component]
pub fn ShotKey(bench: Memo<Option<Bench>>) -> impl IntoView {
    let desk = Desk::here();
    let shot = Memo::new(move |_| bench.read().as_ref().and_then(|bench| bench.shot.clone()));
    let tap = move |()| {
        if let Some(shot) = shot.get_untracked() {
            acts::take(desk, shot.shot);
        }
    };
    move || {
        shot.get().map(|it| {
            view! {
                <Key
                    class="next-shot"
                    label=words::shot_it().to_owned()
                    note=it.what.clone()
                    name=words::shot_key_name(&it.what, it.take)
                    on_tap=Callback::new(tap)
                />
            }
        })
    }
}

/// In the strip under the slate: what must come before the next step. It leads to the slate of that shot.
pub fn closing_cell(it: &BenchClosing) -> DryCell {
    DryCell {
        label: it.what.clone(),
        note: words::closing(&it.step, it.ends),
        href: Place::Slate(it.shot).href(),
        late: true,
    }
}

/// The same while no clock runs.
pub fn closing_facts(bench: &Bench) -> Vec<Fact> {
    let fact = |it: &BenchClosing| Fact {
        label: words::to_shoot().to_owned(),
        text: it.what.clone(),
        note: Some(words::closing(&it.step, it.ends)),
    };
    bench.closing.iter().map(fact).collect()
}
