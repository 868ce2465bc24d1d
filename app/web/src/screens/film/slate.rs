//! The slate: the whole screen, chalk on slate, to be held before the camera. One key puts it away
//! and counts the take, the other counts none.

use super::{acts, look::step_name};
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::Key,
        message::Message,
        sheet::{Above, Below, Hand, Head, Read, Sheet},
    },
    platform::awake,
    screens::form_keys::leave_key,
    shell::{
        Desk, Go,
        desk::{Phase, View},
        frame::Places,
    },
    words::film as words,
};
use benchslate_core::{
    journal::{Id, kinds::SettingKey},
    measure::Instant,
    timing::shots,
};

/// Words longer than this are lettered smaller, so that the slate stays one screen.
const LONG: usize = 48;

#[derive(Clone, PartialEq)]
struct Slate {
    over: String,
    build: String,
    what: String,
    take: u32,
    /// Shot, take, step, day.
    cells: [String; 4],
}

/// The sheet.
#[component]
pub fn SlateSheet(shot: Id) -> impl IntoView {
    let desk = Desk::here();
    let slate = Memo::new(move |_| {
        let now = desk.minute();
        desk.read(|view| look(view, shot, now))
    });
    move || match slate.get() {
        Some(slate) => view! { <Held slate shot/> },
        None if desk.phase.get() == Phase::Ready => view! { <NoShot/> },
        None => ().draw(),
    }
}

fn look(view: &View, shot: Id, now: Instant) -> Option<Slate> {
    let of = &view.shop.shots.get(&shot)?.body;
    let it = shots::listed(view.shop, of.build).into_iter().find(|it| it.shot == shot)?;
    let shop = view.shop.settings.latest(SettingKey::ShopName).unwrap_or_default();
    let build = view.shop.builds.get(&of.build).map(|it| it.title.clone()).unwrap_or_default();
    let step = it.step.map_or_else(|| words::no_step().to_owned(), |step| step_name(view, step));
    let day = view.tongue.day_year(view.shop.zone.day(now));
    Some(Slate {
        over: words::build_of(shots::build_number(view.shop, of.build), shop),
        build,
        what: of.what.clone(),
        take: it.next_take(),
        cells: [it.number.to_string(), it.next_take().to_string(), step, day],
    })
}

#[component]
fn Held(slate: Slate, shot: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let dark = awake::keep_awake();
    let away = move |()| {
        acts::take(desk, shot);
        go.back();
    };
    let long = slate.what.chars().count() > LONG;
    let cells: Vec<AnyView> = words::slate_cells()
        .into_iter()
        .zip(slate.cells)
        .map(|(label, text)| {
            view! { <p><small>{label.to_owned()}</small>" "<b>{text}</b></p> }
        })
        .collect();
    view! {
        <main class="hold" aria-label=words::slate()>
            <div class="hold-in">
                <div class="hold-head">
                    <p>{slate.over}</p>
                    <p class="hold-build">{slate.build}</p>
                    <h1 class:long=long>{slate.what}</h1>
                </div>
                <div class="hold-cells">{cells}</div>
                <div class="hold-away">
                    {move || dark.get().then(|| view! { <p class="note">{words::may_go_dark()}</p> })}
                    <Key label=words::no_take().to_owned() on_tap=Callback::new(move |()| go.back())/>
                    <Key class="wide" label=words::away(slate.take) on_tap=Callback::new(away)/>
                </div>
            </div>
        </main>
    }
}

#[component]
fn NoShot() -> impl IntoView {
    let go: Go = expect_context();
    let lines = Signal::stored(vec![words::no_shot_why().to_owned()]);
    view! {
        <Sheet>
            <Head title=words::no_shot().to_owned() tight=true/>
            <Above><Read name=words::no_shot().to_owned()><Message title=words::no_shot().to_owned() lines/></Read></Above>
            <Below>
                <Hand name=words::keys().to_owned()>{leave_key(go)}</Hand>
                <Places cell=1/>
            </Below>
        </Sheet>
    }
}
