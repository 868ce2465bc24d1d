//! Two clocks in one band. The keys act on one of them, and say whose they are.

use super::{asked::AskedAbout, running::acts, say, taps};
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind},
        seg::Seg,
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Sheet},
        slate::{SlateHalf, TwoClocks},
    },
    screens::{drying::DryingNow, trouble::Troubles},
    shell::{Desk, Go, Place, frame::Places, mark::LastMarkHere},
    words::bench as words,
};
use benchslate_core::measure::InOrder;
use benchslate_core::timing::bench::{Bench, BenchClock};

/// The bench while two clocks run.
#[component]
pub fn Two() -> impl IntoView {
    let desk = Desk::here();
    let go: Go = expect_context();
    let bench = Memo::new(move |_| desk.bench());
    // Whose keys these are, as a place in the pair: the later begun, until a name is tapped.
    let acting = RwSignal::new(later(bench));
    let lead = Signal::derive(move || match whose(bench, acting.get()) {
        Some(name) => words::goes_to(&name),
        None => words::change_over_to().to_owned(),
    });
    view! {
        <Sheet>
            <Head title=super::title(desk, bench) note=super::today(desk) on_tap=Callback::new(move |()| go.to(&Place::WorkFor))/>
            <Above>
                <TwoClocks name=words::clock_running().to_owned()>
                    <Half bench at=0 acting/>
                    <Half bench at=1 acting/>
                </TwoClocks>
                <DryingNow bench/>
                <Troubles/>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <AskedAbout bench/>
                    {move || acts(bench, desk.trouble.with(Option::is_some))}
                    <Main bench acting/>
                    <super::stages::Likely bench lead acting=Some(acting)/>
                </Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

/// The two last begun, each name in the place that it has while one clock runs: whoever began, and whenever.
pub fn pair(bench: &Bench) -> Vec<BenchClock> {
    let mut two: Vec<BenchClock> = bench.clocks.iter().rev().take(2).cloned().collect();
    two.order_by_key(|clock| (clock.person.id, clock.entry));
    two
}

/// The place of the later begun.
fn later(bench: Memo<Option<Bench>>) -> usize {
    bench.with_untracked(|bench| {
        let Some(bench) = bench.as_ref() else { return 1 };
        let last = bench.clocks.last().map(|clock| clock.entry);
        pair(bench).iter().position(|clock| Some(clock.entry) == last).unwrap_or(1)
    })
}

fn at(bench: Memo<Option<Bench>>, at: usize) -> Option<BenchClock> {
    bench.read().as_ref().and_then(|bench| pair(bench).into_iter().nth(at))
}

fn together(bench: Memo<Option<Bench>>) -> bool {
    let of = |at_: usize| at(bench, at_).and_then(|clock| clock.together);
    of(0).is_some() && of(0) == of(1)
}

/// The name on the keys; none while the two go together.
fn whose(bench: Memo<Option<Bench>>, acting: usize) -> Option<String> {
    if together(bench) { None } else { at(bench, acting).map(|clock| clock.person.name) }
}

#[component]
fn Half(bench: Memo<Option<Bench>>, at: usize, acting: RwSignal<usize>) -> impl IntoView {
    let desk = Desk::here();
    let clock = Memo::new(move |_| self::at(bench, at));
    let of = move |say: fn(Desk, &BenchClock) -> String| {
        Signal::derive(move || clock.read().as_ref().map(|clock| say(desk, clock)).unwrap_or_default())
    };
    let digits = Memo::new(move |_| {
        let now = desk.now();
        clock.read().as_ref().map(|clock| say::clock(desk, clock, now)).unwrap_or_default()
    });
    let earlier = move |piece: usize| {
        if let (Some(clock), Some(seconds)) = (clock.get_untracked(), taps::EARLIER.get(piece)) {
            taps::earlier(desk, &clock, *seconds);
        }
    };
    view! {
        <SlateHalf
            stage=of(|_, clock| clock.stage.name.clone())
            who=of(|_, clock| say::who_for(clock))
            since=of(since)
            going=Signal::derive(move || clock.read().as_ref().is_some_and(|clock| clock.paused().is_none()))
            acting=Signal::derive(move || together(bench) || acting.get() == at)
            clock=digits
            earlier=Signal::stored(say::earlier())
            on_earlier=Callback::new(earlier)
        />
    }
}

fn since(desk: Desk, clock: &BenchClock) -> String {
    let time = |at: benchslate_core::measure::When| desk.read(|view| view.tongue.time(at.instant));
    match clock.paused() {
        Some(since) => words::paused_since(&time(since)),
        None => words::since(&time(clock.from)),
    }
}

#[component]
fn Main(bench: Memo<Option<Bench>>, acting: RwSignal<usize>) -> impl IntoView {
    let desk = Desk::here();
    let clock =
        move || bench.with_untracked(|bench| pair(bench.as_ref()?).into_iter().nth(acting.get_untracked()));
    let paused = Memo::new(move |_| at(bench, acting.get()).is_some_and(|clock| clock.paused().is_some()));
    let named = move |alone: fn() -> &'static str, of: fn(&str) -> String| {
        whose(bench, acting.get()).map_or_else(|| alone().to_owned(), |name| of(&name))
    };
    let names = Signal::derive(move || {
        let two = bench.read().as_ref().map(pair).unwrap_or_default();
        let mut sets: Vec<_> = two.into_iter().map(|clock| vec![clock.person]).collect();
        sets.push(sets.iter().flatten().cloned().collect());
        say::choices(&sets)
    });
    let chosen = Signal::derive(move || if together(bench) { 2 } else { acting.get() });
    let choose = move |to: usize| {
        if to < 2 {
            acting.set(to);
        }
        let Some(clock) = clock() else { return };
        let joined = untrack(move || together(bench));
        if to < 2 && joined {
            taps::part(desk, &clock);
        } else if to == 2 && !joined {
            let both = bench.with_untracked(|bench| bench.as_ref().map(pair)).unwrap_or_default();
            taps::who(desk, &clock, both.into_iter().map(|clock| clock.person).collect());
        }
    };
    view! {
        <Keys class="bench-main">
            <Key
                label=Signal::derive(move || if paused.get() { named(words::go_on, words::go_on_of) } else { named(words::pause, words::pause_of) })
                on_tap=Callback::new(move |()| if let Some(clock) = clock() { taps::pause(desk, &clock) })
            />
            <Seg name=words::who().to_owned() choices=names chosen=chosen on_choose=Callback::new(choose)/>
            <Key
                label=Signal::derive(move || named(words::stop, words::stop_of))
                kind=KeyKind::Stop
                on_tap=Callback::new(move |()| if let Some(clock) = clock() { taps::stop(desk, &clock) })
            />
        </Keys>
    }
}
