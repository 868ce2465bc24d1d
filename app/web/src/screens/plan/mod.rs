//! Have I got the time? The chance of a build's date, drawn; what holds it up; what would make it surer, tried in one tap
//! and taken in another.

mod ask;
mod look;
mod run;
mod troubles;
mod ways;

use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind, KeyLink},
        plan_drawing::PlanDrawing,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    screens::shop::write_setting,
    shell::{
        Desk, Go, Place,
        desk::{Mark, Phase},
        frame::Places,
        mark::LastMarkHere,
    },
    words::plan as words,
};
use ask::Made;
use benchslate_core::{
    journal::{Id, kinds::SettingKey, shop::BuyLine},
    planning::{Plan, Trial, open_builds, turns},
};
use run::{Runs, Told};
use std::sync::Arc;

/// What is tried: which way, and the plan with it.
#[derive(Clone, Debug)]
struct Tried {
    trial: Trial,
    plan: Arc<Plan>,
    /// The chance as it stood.
    was: String,
}

/// Everything the sheet follows.
#[derive(Clone, Copy)]
struct State {
    desk: Desk,
    made: RwSignal<Option<Arc<Made>>>,
    tried: RwSignal<Option<Tried>>,
    runs: Runs,
}

impl State {
    /// The plan on view.
    fn plan(self) -> Option<(Arc<Made>, Arc<Plan>)> {
        let made = self.made.get()?;
        let plan = self.tried.get().map_or_else(|| Arc::new(made.plan.clone()), |it| it.plan);
        Some((made, plan))
    }

    /// What the runs say of the plan on view, and of the one before it.
    fn told(self) -> (Option<Told>, Option<Told>) {
        let stands = self.runs.told.get();
        if self.tried.with(Option::is_some) { (self.runs.tried.get(), stands) } else { (stands, None) }
    }
}

/// `of`: whose plan; none: of the first open build that has steps.
#[component]
pub fn PlanSheet(of: Option<Id>) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let chooses = RwSignal::new(false);
    let build = Memo::new(move |_| desk.read(|view| of.or_else(|| first(view, desk))));
    let state = State { desk, made: RwSignal::new(None), tried: RwSignal::new(None), runs: Runs::new() };
    Effect::new(move || {
        if desk.phase.get() != Phase::Ready {
            return;
        }
        let now = desk.at_tap();
        let made = build.get().map(|build| Arc::new(desk.read(|view| Made::of(view, build, now))));
        state.tried.set(None);
        state.runs.told.set(None);
        state.made.set(made.clone());
        if let Some(made) = made.filter(|it| !it.plan.steps.is_empty()) {
            state.runs.begin(desk, made);
        }
    });
    let title = Signal::stored(words::title().to_owned());
    let note = Signal::derive(move || {
        let build = build.get()?;
        desk.read(|view| view.shop.builds.get(&build).map(|it| it.title.clone()))
    });
    let many = Memo::new(move |_| desk.read(|view| others(view, desk).len()) > 1);
    let chosen = move || chooses.get() && many.get();
    view! {
        <Sheet>
            {move || head(title, note, many.get(), chooses)}
            <Above>
                <Read name=title below=words::below().to_owned()>
                    {move || if chosen() { choose(desk, go, chooses) } else { body(state, build.get()) }}
                </Read>
            </Above>
            <Below>
                {move || if chosen() { turn(desk, build.get()) } else { ways::hand(state, build) }}
                <Places cell=3/>
            </Below>
        </Sheet>
    }
}

fn head(title: Signal<String>, note: Signal<Option<String>>, many: bool, chooses: RwSignal<bool>) -> AnyView {
    let tap = Callback::new(move |()| chooses.set(!chooses.get_untracked()));
    if many {
        view! { <Head title note tight=true on_tap=tap/> }
    } else {
        view! { <Head title note tight=true/> }
    }
}

/// Open builds, in the order in which they are planned.
fn others(view: &crate::shell::desk::View, desk: Desk) -> Vec<Id> {
    open_builds(view.shop, view.shop.zone.day(desk.at_tap()))
}

fn first(view: &crate::shell::desk::View, desk: Desk) -> Option<Id> {
    let open = others(view, desk);
    let planned = |build: &Id| view.shop.steps.values().any(|it| it.build() == *build && it.done().is_none());
    open.iter().copied().find(planned).or_else(|| open.first().copied())
}

/// There were steps, and every one that is left to plan is done.
fn has_steps(desk: Desk, build: Id) -> bool {
    desk.read(|view| view.shop.steps.values().any(|it| it.build() == build))
}

fn choose(desk: Desk, go: Go, chooses: RwSignal<bool>) -> AnyView {
    let all: Vec<(Id, String)> = desk.read(|view| {
        let named = |id: Id| Some((id, view.shop.builds.get(&id)?.title.clone()));
        others(view, desk).into_iter().filter_map(named).collect()
    });
    let row = move |(id, label): (Id, String)| {
        let tap = move |()| {
            chooses.set(false);
            go.instead(&Place::PlanOf(id));
        };
        let text = SumText { label, ..SumText::default() };
        view! { <SumRow text leads=Leads::Tap(Callback::new(tap)) signed=false/> }
    };
    view! {
        <Group title=words::which_build().to_owned()/>
        {all.into_iter().map(row).collect::<Vec<_>>()}
        <p class="note">{words::in_this_order()}</p>
    }
}

/// The hand while builds are on view: the one that was on view before them goes before all others.
fn turn(desk: Desk, build: Option<Id>) -> AnyView {
    let key = move || {
        let (build, title) = desk.read(|view| {
            let build = build.filter(|it| others(view, desk).first() != Some(it))?;
            Some((build, view.shop.builds.get(&build)?.title.clone()))
        })?;
        let tap = Callback::new(move |()| put_first(desk, build));
        Some(view! { <Key label=words::put_first(&title) on_tap=tap/> })
    };
    view! {
        <LastMarkHere/>
        <Hand name=words::keys().to_owned()><Keys class="go">{key}</Keys></Hand>
    }
}

fn put_first(desk: Desk, build: Id) {
    desk.act(
        move |hand| {
            let value = turns::put_first(hand.shop, build, hand.shop.zone.day(hand.now));
            vec![write_setting(hand, SettingKey::BuildOrder, None, value)]
        },
        move |after| {
            let title = after.shop.builds.get(&build).map(|it| it.title.clone()).unwrap_or_default();
            Mark { kind: words::build_order().to_owned(), what: title, second: None }.into()
        },
    );
}

fn body(state: State, build: Option<Id>) -> AnyView {
    let desk = state.desk;
    if desk.phase.get() != Phase::Ready {
        return ().draw();
    }
    let Some(build) = build else {
        return view! { <p class="lead">{words::no_build()}</p> };
    };
    let Some((made, plan)) = state.plan() else { return ().draw() };
    let troubles = troubles::of_build(desk, &plan, build);
    if plan.steps.iter().all(|it| it.build != build) {
        let says = if has_steps(desk, build) { words::all_done() } else { words::no_steps() };
        let none = troubles.is_empty().then(|| view! { <p class="lead">{says}</p> });
        return view! { {none}{troubles::rows(troubles)}{all_steps(build)} };
    }
    let wrong = troubles::first(&troubles);
    let (told, before) = state.told();
    let look = desk.read(|view| {
        let (figure, of, slack) = look::chance(view, &made, &plan, told.as_ref());
        let drawing = look::drawing(view, &made, &plan, told.as_ref(), before.as_ref());
        (figure, of, slack, drawing, look::held_up(view, &made, &plan))
    });
    let (figure, of, slack, drawing, held) = look;
    let held = held.map(|said| {
        view! { <p class="held-up"><b>{words::held_up_by()}</b>" "{said}</p> }
    });
    let known = words::how_known(made.spread.builds, made.spread.own());
    let cut = told.filter(|it| it.cut > 0).map(|it| {
        view! { <p class="note">{words::cut_draws(it.cut, benchslate_core::planning::chance::RUNS)}</p> }
    });
    view! {
        <div class="chance"><b>{figure}</b><p>{of}" "<small>{slack}</small></p></div>
        {wrong}
        <PlanDrawing text=drawing/>
        {held}
        {ways::rest(state)}
        {troubles::rows(troubles)}
        {steps(desk, &plan, build)}
        {to_buy(desk, build)}
        {all_steps(build)}
        <p class="note">{known}</p>
        {cut}
    }
}

fn steps(desk: Desk, plan: &Plan, build: Id) -> AnyView {
    let own = plan.steps.iter().filter(|it| it.build == build);
    let rows: Vec<AnyView> = own
        .map(|it| {
            let (label, working) = desk.read(|view| (look::step(view, it.step), look::when(view, it)));
            let text = SumText { label, working: Some(working), ..SumText::default() };
            view! { <SumRow text leads=Leads::To(Place::Entry(it.step).href()) signed=false/> }
        })
        .collect();
    view! { <Group title=words::steps().to_owned()/>{rows} }
}

/// What must be bought for it, where anything stands on the list.
fn to_buy(desk: Desk, build: Id) -> Option<AnyView> {
    let names: Vec<String> = desk.read(|view| {
        let mine = view.shop.to_buy().filter(|it| it.for_build == Some(build));
        let name =
            |line: &BuyLine| line.item.and_then(|id| view.shop.items.get(&id)).map(|it| it.name.clone());
        mine.map(|line| name(line).unwrap_or_else(|| line.what.clone())).collect()
    });
    (!names.is_empty()).then(|| {
        let text = SumText {
            label: words::to_buy().to_owned(),
            working: Some(names.join(", ")),
            ..SumText::default()
        };
        view! { <SumRow text leads=Leads::To(Place::Buying.href()) signed=false/> }
    })
}

fn all_steps(build: Id) -> AnyView {
    let label = words::all_steps().to_owned();
    let text = SumText { label, working: Some(words::write_change().to_owned()), ..SumText::default() };
    view! { <SumRow text leads=Leads::To(Place::Steps(build).href()) signed=false/> }
}

/// The hand where there is nothing to try: what makes a plan.
fn first_keys(state: State, build: Option<Id>) -> AnyView {
    let on = build.zip(state.made.get()).filter(|(build, made)| {
        let mine = |step: &Id| {
            state.desk.read(|view| view.shop.steps.get(step).map(|it| it.build()) == Some(*build))
        };
        made.plan.troubles.iter().filter_map(troubles::of).any(|it| mine(&it))
    });
    let on = on.and_then(|(build, made)| troubles::way_on(&made.plan, build));
    let (label, place) = on.unwrap_or(match build {
        Some(build) if has_steps(state.desk, build) => (words::all_steps(), Place::Steps(build)),
        Some(build) => (words::write_steps(), Place::Steps(build)),
        None => (words::start_a_build(), Place::NewBuild),
    });
    view! {
        <Hand name=words::keys().to_owned()>
            <Keys class="go"><KeyLink label=label.to_owned() kind=KeyKind::Filled href=place.href()/></Keys>
        </Hand>
    }
}
