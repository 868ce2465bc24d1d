//! A long or forgotten clock is asked about here, on the bench, at the next look.

use super::taps;
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyLink},
        sheet::Keys,
    },
    shell::{Desk, Place},
    words::bench as words,
};
use benchslate_core::{
    journal::Id,
    measure::Instant,
    timing::{
        asked::{Asked, asked},
        bench::{Bench, BenchClock},
        clocks,
    },
};

#[derive(Clone, PartialEq)]
struct Question {
    entry: Id,
    text: String,
    last_act: Instant,
    time: String,
}

/// Shows nothing while no clock is to be asked about.
#[component]
pub fn AskedAbout(bench: Memo<Option<Bench>>) -> impl IntoView {
    let desk = Desk::here();
    let question = Memo::new(move |_| question(desk, bench));
    // The keys stand while the hours in the question grow.
    let entry = Memo::new(move |_| question.read().as_ref().map(|question| question.entry));
    move || entry.get().map(|entry| keys(desk, bench, entry, question))
}

fn question(desk: Desk, bench: Memo<Option<Bench>>) -> Option<Question> {
    let now = desk.now();
    let bench = bench.read();
    let shown: &[BenchClock] = bench.as_ref().map(|bench| bench.clocks.as_slice())?;
    desk.read(|view| {
        clocks(view.shop, now).iter().find_map(|clock| {
            let about = asked(view.shop, clock, now)?;
            let of = shown.iter().find(|it| it.entry == clock.entry)?;
            let begun = format!("{} {}", view.tongue.day_of(clock.from), view.tongue.time(clock.from));
            let (text, last_act) = match about {
                Asked::Quiet { last_act } => {
                    (words::still_going(&of.stage.name, &view.tongue.hours(clock.so_far)), last_act)
                }
                Asked::Midnight { last_act } => (words::past_midnight(&of.stage.name, &begun), last_act),
            };
            Some(Question { entry: clock.entry, text, last_act, time: view.tongue.time(last_act) })
        })
    })
}

fn keys(desk: Desk, bench: Memo<Option<Bench>>, entry: Id, question: Memo<Option<Question>>) -> AnyView {
    let text = move || question.read().as_ref().map(|it| it.text.clone()).unwrap_or_default();
    let ended = move || question.read().as_ref().map(|it| words::ended_at(&it.time)).unwrap_or_default();
    let end = move |()| {
        let asked = question.get_untracked().filter(|it| it.entry == entry);
        if let Some(it) = asked {
            taps::ended_at(desk, entry, it.last_act);
        }
    };
    let on = move |()| {
        let clocks = bench.with_untracked(|bench| bench.as_ref().map(|bench| bench.clocks.clone()));
        if let Some(clock) = clocks.unwrap_or_default().into_iter().find(|clock| clock.entry == entry) {
            taps::goes_on(desk, &clock);
        }
    };
    view! {
        <div class="asked" role="group" aria-label=words::asked_name()>
            <p class="note">{text}</p>
            <Keys class="low">
                <Key label=words::it_goes_on().to_owned() on_tap=Callback::new(on)/>
                <Key
                    label=Signal::derive(ended)
                    note=words::last_written().to_owned()
                    on_tap=Callback::new(end)
                />
                <KeyLink
                    label=words::other_minute().to_owned()
                    note=words::type_it().to_owned()
                    href=Place::Minute(entry).href()
                />
            </Keys>
        </div>
    }
}
