//! Stages as keys: the likeliest in the hand, all of them on a sheet of their own.

use super::{say, taps};
use crate::dom::prelude::*;
use crate::{
    parts::{
        hatch::{Hatch, Swatch},
        key::{Key, KeyKind, KeyLink},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Sheet},
        slate::SlimSlate,
    },
    shell::{Desk, Go, Place, desk::View, frame::Places},
    words::{bench as words, common},
};
use benchslate_core::measure::InOrder;
use benchslate_core::{
    journal::kinds::Side,
    timing::bench::{Bench, Named},
};

/// The three likeliest stages and the way to all.
#[component]
pub fn Likely(bench: Memo<Option<Bench>>, #[prop(into)] lead: Signal<String>) -> impl IntoView {
    let (desk, goes) = (Desk::here(), expect_context::<Goes>());
    let next = Memo::new(move |_| bench.read().as_ref().map(|bench| bench.next.clone()).unwrap_or_default());
    let count = move || words::all_stages(bench.read().as_ref().map_or(0, |bench| bench.stages));
    let key = move |stage: Named| key(desk, bench, goes, stage);
    view! {
        <Keys class="bench-over" lead=lead>
            {each(move || next.get(), key)}
            <KeyLink label=Signal::derive(count) kind=KeyKind::Word href=Place::Stages.href()/>
        </Keys>
    }
}

/// Who was chosen to go to the next stage, until a clock is begun; provided as context, for all keys that begin one.
#[derive(Clone, Copy)]
pub struct Goes(pub RwSignal<Option<Vec<Named>>>);

/// A stage as a key.
pub fn key(desk: Desk, bench: Memo<Option<Bench>>, goes: Goes, stage: Named) -> AnyView {
    let label = stage.name.clone();
    view! { <Key label on_tap=Callback::new(move |()| start(desk, bench, goes, stage.clone()))/> }
}

/// A tap on a stage: whose clock runs goes to it, both where they go together; with none running who was chosen, else
/// whom the bench offers first.
fn start(desk: Desk, bench: Memo<Option<Bench>>, goes: Goes, stage: Named) {
    let Some(bench) = bench.get_untracked() else { return };
    let mut who: Vec<Named> = bench.at_work().into_iter().map(|clock| clock.person.clone()).collect();
    if who.is_empty() {
        let first = || bench.people.first().cloned().into_iter().collect();
        who = goes.0.get_untracked().unwrap_or_else(first);
    }
    taps::begin(desk, &bench, who, stage);
}

/// All stages, by side.
#[component]
pub fn StagesSheet() -> impl IntoView {
    let (desk, go, goes) = (Desk::here(), expect_context::<Go>(), expect_context::<Goes>());
    let bench = Memo::new(move |_| desk.bench());
    let runs = move || bench.read().as_ref().is_some_and(|bench| !bench.clocks.is_empty());
    let title = move || match bench.read().as_ref().and_then(super::two::whose) {
        Some(name) => words::goes_to(&name),
        None if runs() => words::change_over_title().to_owned(),
        None => words::start_title().to_owned(),
    };
    let note = move || if runs() { words::one_tap_same_minute() } else { words::one_tap() }.to_owned();
    let begin = move |stage: Named| {
        start(desk, bench, goes, stage);
        go.instead(&Place::Bench);
    };
    view! {
        <Sheet>
            <Head title=Signal::derive(title) note=Signal::derive(note) tight=true/>
            <Above>{move || slim(desk, bench)}</Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Tall>
                    {[Side::Piece, Side::Both, Side::Film].map(|side| group(desk, bench, side, begin)).into_iter().collect::<Vec<_>>()}
                </Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

fn slim(desk: Desk, bench: Memo<Option<Bench>>) -> Option<AnyView> {
    let clock = super::running::only(bench)?;
    let shown = clock.clone();
    let digits = Memo::new(move |_| say::clock(desk, &shown, desk.now()));
    let since = desk.read(|view| view.tongue.time(clock.from.instant));
    let who = words::who_since(&clock.person.name, &since);
    Some(
        view! { <SlimSlate name=words::clock_running().to_owned() stage=clock.stage.name who clock=digits/> },
    )
}

fn group(
    desk: Desk,
    bench: Memo<Option<Bench>>,
    side: Side,
    begin: impl Fn(Named) + Copy + Send + Sync + 'static,
) -> AnyView {
    let stages = Memo::new(move |_| desk.read(|view| of_side(view, side)));
    let running = move |stage: &Named| {
        let id = stage.id;
        Memo::new(move |_| super::running::only(bench).is_some_and(|clock| clock.stage.id == id))
    };
    let key = move |stage: Named| {
        let pressed = running(&stage);
        let label = stage.name.clone();
        view! { <Key label pressed=Signal::derive(move || pressed.get().then_some(true)) on_tap=Callback::new(move |()| begin(stage.clone()))/> }
    };
    let kind = match side {
        Side::Piece => Hatch::Piece,
        Side::Film => Hatch::Film,
        Side::Both => Hatch::Both,
    };
    let last = (side == Side::Film).then(|| {
        view! {
            <KeyLink label=words::new_stage().to_owned() href=Place::NewStage.href()/>
            <KeyLink label=common::leave().to_owned() href=Place::Bench.href()/>
        }
    });
    view! {
        <h2 class="keygroup"><Swatch kind/>{common::side(side)}</h2>
        <div class="gridkeys">{each(move || stages.get(), key)}{last}</div>
    }
}

fn of_side(view: &View, side: Side) -> Vec<Named> {
    let stages = view.shop.stages.iter();
    let mut of: Vec<(u8, Named)> = stages
        .filter(|(id, stage)| stage.side == side && view.shop.offers(**id))
        .map(|(id, stage)| (stage.place, Named { id: *id, name: stage.name.clone() }))
        .collect();
    of.order_by_key(|(place, named)| (*place, named.name.clone()));
    of.into_iter().map(|(_, named)| named).collect()
}
