//! One clock in the whole band.

use super::{asked::AskedAbout, say, taps};
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind, KeyLink},
        seg::Seg,
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Sheet},
        slate::{RunningSlate, SlimSlate},
        stretch::Stretch,
    },
    screens::{
        drying::DryingNow,
        film::ShotKey,
        trouble::{TroubleKeys, Troubles, offered},
    },
    shell::{Desk, Go, Place, frame::Places, mark::LastMarkHere},
    words::bench as words,
};
use benchslate_core::timing::bench::{Bench, BenchClock, Named};

/// The bench while one clock runs.
#[component]
pub fn Running() -> impl IntoView {
    let desk = Desk::here();
    let go: Go = expect_context();
    let bench = Memo::new(move |_| desk.bench());
    let troubled = Memo::new(move |_| desk.trouble.with(Option::is_some));
    view! {
        <Sheet>
            <Head title=super::title(desk, bench) note=super::today(desk) on_tap=Callback::new(move |()| go.to(&Place::WorkFor))/>
            <Above>{move || above(bench, troubled.get() || offered())}</Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <AskedAbout bench/>
                    {move || acts(bench, troubled.get())}
                    <Main bench/>
                    <super::stages::Likely bench lead=Signal::stored(words::change_over_to().to_owned())/>
                </Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

/// A message needs the slate's room: the clock runs on in a slim one under it.
fn above(bench: Memo<Option<Bench>>, troubled: bool) -> AnyView {
    if troubled {
        view! { <Troubles/><Slim bench/> }
    } else {
        view! { <Slate bench/><DryingNow bench/><Troubles/> }
    }
}

/// What the message asks for goes before camera and stock.
pub fn acts(bench: Memo<Option<Bench>>, troubled: bool) -> AnyView {
    if troubled {
        view! { <TroubleKeys/> }
    } else {
        view! { <Acts bench/> }
    }
}

#[component]
fn Slim(bench: Memo<Option<Bench>>) -> impl IntoView {
    let desk = Desk::here();
    let clock = Memo::new(move |_| only(bench));
    let of = move |say: fn(&BenchClock) -> String| {
        Signal::derive(move || clock.read().as_ref().map(say).unwrap_or_default())
    };
    let digits = Memo::new(move |_| {
        let now = desk.now();
        clock.read().as_ref().map(|clock| say::clock(desk, clock, now)).unwrap_or_default()
    });
    view! {
        <SlimSlate
            name=words::clock_running().to_owned()
            stage=of(|clock| clock.stage.name.clone())
            who=of(say::who_for)
            clock=digits
        />
    }
}

/// The clock of a bench with one; of more, that of the keys.
pub fn only(bench: Memo<Option<Bench>>) -> Option<BenchClock> {
    bench.read().as_ref().and_then(|bench| bench.acting().cloned())
}

#[component]
fn Slate(bench: Memo<Option<Bench>>) -> impl IntoView {
    let desk = Desk::here();
    let go: Go = expect_context();
    let clock = Memo::new(move |_| only(bench));
    let of = move |say: fn(Desk, &BenchClock) -> String| {
        Signal::derive(move || clock.read().as_ref().map(|clock| say(desk, clock)).unwrap_or_default())
    };
    let digits = Signal::derive(move || {
        let now = desk.now();
        clock.read().as_ref().map(|clock| say::clock(desk, clock, now)).unwrap_or_default()
    });
    let drawn = Memo::new(move |_| {
        let now = desk.now();
        clock.read().as_ref().map(|clock| say::stretch(desk, clock, now)).unwrap_or_default()
    });
    let earlier = move |at: usize| {
        if let (Some(clock), Some(seconds)) = (clock.get_untracked(), taps::EARLIER.get(at)) {
            taps::earlier(desk, &clock, *seconds);
        }
    };
    let type_start = move |()| {
        if let Some(clock) = clock.get_untracked() {
            go.to(&Place::Minute(clock.entry));
        }
    };
    view! {
        <RunningSlate
            name=words::clock_running().to_owned()
            stage=of(|_, clock| clock.stage.name.clone())
            who=of(|_, clock| say::who_for(clock))
            state=of(camera_or_pause)
            rolling=Signal::derive(move || clock.read().as_ref().is_some_and(|clock| clock.rolling))
            clock=Memo::new(move |_| digits.get())
        >
            <Stretch
                text=drawn
                earlier=say::earlier()
                on_earlier=Callback::new(earlier)
                on_start=Callback::new(type_start)
            />
        </RunningSlate>
    }
}

fn camera_or_pause(desk: Desk, clock: &BenchClock) -> String {
    match clock.paused() {
        Some(since) => words::paused_since(&desk.read(|view| view.tongue.time(since.instant))),
        None if clock.rolling => words::rolling().to_owned(),
        None => words::camera_off().to_owned(),
    }
}

/// Camera, usual draw, other.
#[component]
pub fn Acts(bench: Memo<Option<Bench>>) -> impl IntoView {
    let desk = Desk::here();
    let rolls = Memo::new(move |_| only(bench).is_some_and(|clock| clock.rolling));
    let camera = move |()| {
        if let Some(clock) = bench.with_untracked(|bench| bench.as_ref()?.acting().cloned()) {
            taps::camera(desk, &clock);
        }
    };
    // Other than the usual draw; without one it says what it opens.
    let usual = Memo::new(move |_| bench.read().as_ref().is_some_and(|bench| bench.usual.is_some()));
    let other = move || if usual.get() { words::other() } else { words::use_stock() }.to_owned();
    view! {
        <Keys class="bench-acts">
            <Key
                label=Signal::derive(move || if rolls.get() { words::rolling() } else { words::camera() }.to_owned())
                note=Signal::derive(move || if rolls.get() { words::tap_to_cut() } else { words::off() }.to_owned())
                kind=KeyKind::Camera
                pressed=rolls
                on_tap=Callback::new(camera)
            />
            <super::usual::UsualKey bench/>
            <ShotKey bench/>
            <KeyLink label=Signal::derive(other) href=Place::Use(None).href()/>
            <KeyLink label=words::note().to_owned() note=words::a_line().to_owned() href=Place::Note.href()/>
            {super::photo_key(bench)}
        </Keys>
    }
}

/// Pause, who, stop.
#[component]
fn Main(bench: Memo<Option<Bench>>) -> impl IntoView {
    let desk = Desk::here();
    let clock = move || bench.with_untracked(|bench| bench.as_ref()?.acting().cloned());
    let paused = Memo::new(move |_| only(bench).is_some_and(|clock| clock.paused().is_some()));
    let sets = Memo::new(move |_| bench.read().as_ref().map(say::people).unwrap_or_default());
    let chosen = Signal::derive(move || {
        let mine = only(bench).map(|clock| clock.person.id);
        let at = sets.read().iter().position(|set| matches!(set.as_slice(), [one] if Some(one.id) == mine));
        at.unwrap_or(usize::MAX)
    });
    let choose = move |at: usize| {
        let set: Option<Vec<Named>> = sets.with_untracked(|sets| sets.get(at).cloned());
        if let (Some(clock), Some(set)) = (clock(), set)
            && chosen.get_untracked() != at
        {
            taps::who(desk, &clock, set);
        }
    };
    let several = move || sets.read().len() > 1;
    let seg = move || {
        several().then(|| {
            view! {
                <Seg
                    name=words::who().to_owned()
                    choices=Signal::derive(move || say::choices(&sets.read()))
                    chosen=chosen
                    on_choose=Callback::new(choose)
                />
            }
        })
    };
    view! {
        <Keys class="bench-main">
            <Key
                label=Signal::derive(move || if paused.get() { words::go_on() } else { words::pause() }.to_owned())
                on_tap=Callback::new(move |()| if let Some(clock) = clock() { taps::pause(desk, &clock) })
            />
            {seg}
            <Key
                label=words::stop().to_owned()
                kind=KeyKind::Stop
                on_tap=Callback::new(move |()| if let Some(clock) = clock() { taps::stop(desk, &clock) })
            />
        </Keys>
    }
}
