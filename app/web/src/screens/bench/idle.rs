//! No clock runs: what was done last, what was just stopped, and the likely stage in one tap.

use super::{
    say,
    stages::{self, Goes},
    taps,
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        dim::Dim,
        facts::{Fact, Facts},
        key::{Key, KeyKind, KeyLink},
        seg::Seg,
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        slate::NextSlate,
        stretch::{EarlierAt, Stretch, StretchText},
    },
    screens::{
        drying::{OfferDrawn, OfferKeys, drying_facts, offered, unsaid_row},
        film, steps,
        trouble::{TroubleKeys, Troubles},
    },
    shell::{Desk, Go, Place, frame::Places, mark::LastMarkHere},
    words::{bench as words, drying},
};
use benchslate_core::{
    journal::{Body, Id},
    timing::{
        bench::{Bench, Last, Named, Unsaid},
        worked,
    },
};

/// The bench while no clock runs.
#[component]
pub fn Idle() -> impl IntoView {
    let desk = Desk::here();
    let go: Go = expect_context();
    let bench = Memo::new(move |_| desk.bench());
    let stopped = Memo::new(move |_| just_stopped(desk));
    // Its pieces stand while each of them is tapped: only the figures change.
    let which = Memo::new(move |_| stopped.read().as_ref().map(|(entry, _)| *entry));
    // A day or more since anything was done on it: then the question is where one was.
    let away = Memo::new(move |_| {
        bench.read().as_ref().and_then(|it| it.last.as_ref()).is_some_and(|last| days(desk, last) > 0)
    });
    let offered = Memo::new(move |_| offered(desk, bench));
    let title = Signal::derive(move || {
        let title = super::title(desk, bench).get();
        if away.get() { words::where_was_i(&title) } else { title }
    });
    view! {
        <Sheet>
            <Head title=title note=super::today(desk) tight=true on_tap=Callback::new(move |()| go.to(&Place::WorkFor))/>
            <Above>
                <Troubles/>
                <Read name=Signal::derive(move || title.get()) below=words::more_below().to_owned()>
                    {move || which.get().map(|entry| drawn(desk, go, entry, stopped))}
                    {move || match offered.get() {
                        Some(unsaid) => view! { <OfferDrawn unsaid/> },
                        None => view! { {unsaid_row(desk, bench)}{facts(desk, bench, away.get())} },
                    }}
                    {crate::screens::sample::row()}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <TroubleKeys/>
                    {move || hand(bench, offered.get())}
                </Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

/// What comes next; under the drying times of what was just stopped, where such are offered.
fn hand(bench: Memo<Option<Bench>>, offered: Option<Unsaid>) -> AnyView {
    match offered {
        Some(unsaid) => view! {
            <OfferKeys stretch=unsaid.stretch then=Callback::new(|()| {})/>
            <super::stages::Likely bench lead=Signal::stored(drying::next_start().to_owned())/>
        },
        None => view! { <Next bench/><OrStart bench/> },
    }
}

/// The stretch that the last act stopped, drawn until the next act.
fn just_stopped(desk: Desk) -> Option<(Id, StretchText)> {
    let entry =
        desk.last.with(|last| last.as_ref().filter(|last| !last.undone).and_then(|last| last.stopped))?;
    let now = desk.at_tap();
    desk.read(|view| {
        let Some(Body::Stretch(stretch)) = view.journal.body(entry) else { return None };
        let start = view.tongue.time(stretch.from?.instant);
        let worked = worked(view.shop, now).into_iter().find(|row| row.entry == entry)?.seconds;
        let text = StretchText {
            quarters: say::quarters(worked),
            length: view.tongue.hours(worked),
            start_name: words::begun_at_change(&start),
            start,
            going: false,
        };
        stretch.to.map(|_| (entry, text))
    })
}

fn drawn(desk: Desk, go: Go, entry: Id, stopped: Memo<Option<(Id, StretchText)>>) -> AnyView {
    let text = move || stopped.get().map(|(_, text)| text).unwrap_or_default();
    let earlier = move |at: usize| {
        if let Some(seconds) = taps::EARLIER.iter().rev().nth(at) {
            taps::ended_earlier(desk, entry, *seconds);
        }
    };
    let keys: Vec<_> = say::earlier().into_iter().rev().collect();
    view! {
        <section class="stopped" aria-label=words::stopped()>
            <Stretch
                text=Signal::derive(text)
                earlier=keys
                at=EarlierAt::End
                on_earlier=Callback::new(earlier)
                on_start=Callback::new(move |()| go.to(&Place::Minute(entry)))
            />
        </section>
    }
}

/// Last done on either side, what dries, what is low. `away`: that nothing dries is said too.
fn facts(desk: Desk, bench: Memo<Option<Bench>>, away: bool) -> AnyView {
    let Some(bench) = bench.get() else { return ().draw() };
    let gap = bench.last.as_ref().map(|last| gap(desk, last));
    let mut facts = match &bench.last {
        Some(last) => vec![done(desk, last)],
        None => vec![Fact {
            label: words::last_done().to_owned(),
            text: words::nothing_done().to_owned(),
            note: None,
        }],
    };
    facts.extend(bench.beside.as_ref().map(|last| done(desk, last)));
    facts.extend(film::closing_facts(&bench));
    facts.extend(drying_facts(desk, &bench, away));
    let low = super::low::facts(desk);
    let to_buy = super::low::to_buy(desk, !low.is_empty());
    facts.extend(low);
    view! {
        {gap.map(|text| view! { <Dim text=text going=Signal::stored(true)/> })}
        <Facts facts=Signal::stored(facts)/>
        {to_buy}
    }
}

fn gap(desk: Desk, last: &Last) -> String {
    let days = days(desk, last);
    desk.read(|view| words::days_since(days, &view.tongue.day(last.on.day(&view.shop.zone))))
}

/// Days since anything was done on it.
fn days(desk: Desk, last: &Last) -> i64 {
    let now = desk.minute();
    desk.read(|view| view.shop.zone.day(now).days_since(last.on.day(&view.shop.zone)))
}

fn done(desk: Desk, last: &Last) -> Fact {
    desk.read(|view| {
        let hours = |seconds: i64| view.tongue.hours(benchslate_core::measure::Seconds(seconds));
        let people: Vec<(String, String)> =
            last.who.iter().map(|(who, seconds)| (who.name.clone(), hours(*seconds))).collect();
        Fact {
            label: if last.film { words::film() } else { words::last_done() }.to_owned(),
            text: words::stage_and_people(&last.stage.name, &people),
            note: Some(view.tongue.day(last.on.day(&view.shop.zone))),
        }
    })
}

/// The likely stage, and who goes to it.
#[component]
fn Next(bench: Memo<Option<Bench>>) -> impl IntoView {
    let (desk, Goes(goes)) = (Desk::here(), expect_context());
    let stage = Memo::new(move |_| bench.read().as_ref().and_then(|bench| bench.next.first().cloned()));
    let sets = Memo::new(move |_| bench.read().as_ref().map(say::people).unwrap_or_default());
    // Whoever was last at work, until another is chosen.
    let at = Signal::derive(move || {
        let last = bench.read().as_ref().and_then(|bench| bench.people.first().map(|it| it.id));
        let alone = |set: &Vec<Named>| matches!(set.as_slice(), [one] if Some(one.id) == last);
        let sets = sets.read();
        let chosen = goes.with(|goes| goes.as_ref().and_then(|goes| sets.iter().position(|set| set == goes)));
        chosen.or_else(|| sets.iter().position(alone)).unwrap_or(0)
    });
    let start = move |()| {
        let who = sets.with_untracked(|sets| sets.get(at.get_untracked()).cloned()).unwrap_or_default();
        if let (Some(bench), Some(stage)) = (bench.get_untracked(), stage.get_untracked()) {
            taps::begin(desk, &bench, who, stage);
        }
    };
    let name = move || stage.get().map(|it| it.name).unwrap_or_default();
    let seg = move || {
        (sets.read().len() > 1).then(|| {
            view! {
                <Seg
                    name=words::who().to_owned()
                    choices=Signal::derive(move || say::choices(&sets.read()))
                    chosen=at
                    on_choose=Callback::new(move |to: usize| goes.set(sets.with_untracked(|sets| sets.get(to).cloned())))
                />
            }
        })
    };
    view! {
        <NextSlate name=words::next_name().to_owned() title=Signal::derive(move || words::next(&name()))>
            <Keys class="tall">
                {seg}
                <Key
                    label=Signal::derive(move || words::start(&name()))
                    kind=KeyKind::Filled
                    on_tap=Callback::new(start)
                />
            </Keys>
        </NextSlate>
    }
}

/// Two other stages and all of them; under them what starts no clock.
#[component]
fn OrStart(bench: Memo<Option<Bench>>) -> impl IntoView {
    let (desk, goes) = (Desk::here(), expect_context::<Goes>());
    let others = Memo::new(move |_| {
        let next = bench.read().as_ref().map(|bench| bench.next.clone()).unwrap_or_default();
        next.into_iter().skip(1).take(2).collect::<Vec<Named>>()
    });
    let key = move |stage: Named| stages::key(desk, bench, goes, stage);
    let count = move || words::all_stages(bench.read().as_ref().map_or(0, |bench| bench.stages));
    view! {
        <Keys class="bench-over" lead=words::or_start().to_owned()>
            {each(move || others.get(), key)}
            <KeyLink label=Signal::derive(count) kind=KeyKind::Word href=Place::Stages.href()/>
        </Keys>
        <Keys class="low">
            {steps::done_key(desk)}
            <KeyLink label=words::hours().to_owned() note=words::after().to_owned() href=Place::Hours.href()/>
            {super::photo_key(bench)}
        </Keys>
    }
}
