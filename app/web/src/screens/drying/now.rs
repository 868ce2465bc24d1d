//! What dries until when, on the bench: as facts while no clock runs, in a strip under the slate while one does.

use super::{near, offer};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        drying_bar::{DryCell, DryStrip},
        facts::Fact,
        sum_row::Leads,
    },
    screens::film,
    shell::{Desk, Place},
    words::{bench, drying as words, journal},
};
use benchslate_core::{
    measure::Instant,
    timing::bench::{Bench, BenchDrying},
};

/// Cells of the strip.
const CELLS: usize = 2;

/// Under the slate: what was never said, and what dries. Nothing while there is neither.
#[component]
pub fn DryingNow(bench: Memo<Option<Bench>>) -> impl IntoView {
    let desk = Desk::here();
    let cells = Memo::new(move |_| cells(desk, bench));
    move || {
        let cells = cells.get();
        (!cells.is_empty()).then(|| view! { <DryStrip name=words::drying().to_owned() cells/> })
    }
}

fn cells(desk: Desk, bench: Memo<Option<Bench>>) -> Vec<DryCell> {
    let now = desk.minute();
    // What can't be shot any more after the change-over comes before all that waits.
    let closing = bench.read().as_ref().and_then(|bench| bench.closing.first()).map(film::closing_cell);
    let asked = offer::unsaid(bench).map(|it| DryCell {
        label: words::how_long().to_owned(),
        note: desk.read(|view| journal::comma(&it.stage, &near(view, it.ended.instant, now))),
        href: Place::Drying(it.stretch).href(),
        late: false,
    });
    let drying = bench.read().as_ref().map(|bench| bench.drying.clone()).unwrap_or_default();
    let room = CELLS.saturating_sub(usize::from(asked.is_some()) + usize::from(closing.is_some()));
    let more = drying.len().saturating_sub(room);
    let shown = drying.iter().take(room).enumerate().map(|(at, it)| {
        let mut note = when(desk, it, now);
        if more > 0 && at + 1 == room {
            note = journal::comma(&note, &words::and_more(more));
        }
        let label = if it.is_dry(now) { words::is_dry(&it.stage) } else { words::dries(&it.stage) };
        DryCell { label, note, href: Place::Entry(it.entry).href(), late: false }
    });
    closing.into_iter().chain(asked).chain(shown).take(CELLS).collect()
}

/// `until 14:20`, `since Mon 23 Nov, 11:20`; the build where it is another one.
fn when(desk: Desk, it: &BenchDrying, now: Instant) -> String {
    let at = desk.read(|view| near(view, it.dry.instant, now));
    let when = if it.is_dry(now) { words::since(&at) } else { words::until(&at) };
    journal::comma(&when, it.of.as_deref().unwrap_or_default())
}

/// The same as facts. `always`: that nothing dries is said too.
pub fn drying_facts(desk: Desk, bench: &Bench, always: bool) -> Vec<Fact> {
    let now = desk.minute();
    let fact = |it: &BenchDrying| Fact {
        label: if it.is_dry(now) { words::dry() } else { words::drying() }.to_owned(),
        text: journal::comma(&bench::capital(&it.stage), &when(desk, it, now)),
        note: it
            .held
            .filter(|held| held.instant > now)
            .map(|held| words::held_until(&desk.read(|view| near(view, held.instant, now)))),
    };
    let facts: Vec<Fact> = bench.drying.iter().map(fact).collect();
    if facts.is_empty() && always {
        let (label, text) = (words::drying().to_owned(), words::nothing().to_owned());
        return vec![Fact { label, text, note: None }];
    }
    facts
}

/// What was never said, where it is no longer offered in the hand: one tap to it.
pub fn unsaid_row(desk: Desk, bench: Memo<Option<Bench>>) -> Option<AnyView> {
    let it = offer::unsaid(bench)?;
    let now = desk.minute();
    let end = desk.read(|view| words::ended(&it.stage, &near(view, it.ended.instant, now)));
    let leads = Leads::To(Place::Drying(it.stretch).href());
    Some(view! { <RowLink label=words::how_long().to_owned() end leads/> })
}
