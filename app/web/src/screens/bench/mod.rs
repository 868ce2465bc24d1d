//! The bench: what is going on now, and the keys that change it.

mod asked;
mod idle;
mod low;
mod minute;
mod running;
mod say;
mod stages;
mod taps;
mod two;
mod usual;
mod work_for;

pub use minute::MinuteSheet;
pub use stages::{Goes, StagesSheet};
pub use work_for::WorkForSheet;

use crate::dom::{nothing, prelude::*};
use crate::{
    parts::{
        first_run::{FirstRun, FirstRunWords},
        key::{KeyKind, KeyLink},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
    },
    screens::photos::{About, PhotoKey},
    shell::{Desk, Place, frame::Places},
    words::{bench as words, common, sample},
};
use benchslate_core::{journal::kinds::SettingKey, timing::bench::Bench};

/// First run, idle, or running: by what the journal says.
#[component]
pub fn BenchSheet() -> impl IntoView {
    let desk = Desk::here();
    let shows = Memo::new(move |_| match desk.is_empty() {
        None => Shows::Nothing,
        Some(true) => Shows::FirstRun,
        Some(false) => Shows::Bench(desk.bench().map_or(0, |bench| bench.clocks.len().min(2))),
    });
    let Goes(goes) = expect_context();
    // The choice was for the clock that runs now; whose keys these are is a choice among several.
    Effect::new(move || {
        if matches!(shows.get(), Shows::Bench(clocks) if clocks > 0) {
            goes.set(None);
        }
        if matches!(shows.get(), Shows::Bench(clocks) if clocks < 2)
            && desk.whose.with_untracked(Option::is_some)
        {
            desk.whose.set(None);
        }
    });
    move || match shows.get() {
        // What the page has painted still stands.
        Shows::Nothing => nothing(),
        Shows::FirstRun => view! { <First/> },
        Shows::Bench(0) => view! { <idle::Idle/> },
        Shows::Bench(1) => view! { <running::Running/> },
        Shows::Bench(_) => view! { <two::Two/> },
    }
}

#[derive(Clone, Copy, PartialEq)]
enum Shows {
    Nothing,
    FirstRun,
    /// With none, one or two clocks.
    Bench(usize),
}

#[component]
fn First() -> impl IntoView {
    let [hours, cost, done] = words::questions().map(str::to_owned);
    let drawn = FirstRunWords { hours, cost, done, name: words::not_drawn_yet().to_owned() };
    view! {
        <Sheet>
            <Head title=words::nothing_yet().to_owned()/>
            <Above>
                <Read name=words::nothing_yet().to_owned()>
                    <FirstRun words=drawn/>
                    <p class="lead">{words::what_it_does()}</p>
                    <p class="note">{words::stays_here()}</p>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Bare>
                    <Keys class="first-keys">
                        <KeyLink
                            label=words::start_a_build().to_owned()
                            note=words::a_name_is_enough().to_owned()
                            kind=KeyKind::Filled
                            href=Place::NewBuild.href()
                        />
                        <KeyLink
                            label=sample::look_around().to_owned()
                            note=sample::gone_in_one_tap().to_owned()
                            href=Place::Sample.href()
                        />
                    </Keys>
                </Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

/// A photo of what is going on now; between two jobs, one that waits for a home.
fn photo_key(bench: Memo<Option<Bench>>) -> AnyView {
    let about = Signal::derive(move || {
        let bench = bench.read();
        let bench = bench.as_ref().filter(|bench| !bench.clocks.is_empty());
        About { entry: None, bearer: bench.and_then(|bench| bench.bearer) }
    });
    view! { <PhotoKey about/> }
}

/// What the bench works for, in its head.
fn title(desk: Desk, bench: Memo<Option<Bench>>) -> Signal<String> {
    Signal::derive(move || {
        let title = bench.read().as_ref().and_then(|bench| bench.title.clone());
        title.unwrap_or_else(|| {
            let named = desk.read(|view| view.shop.settings.latest(SettingKey::ShopName).map(str::to_owned));
            named.unwrap_or_else(|| common::the_shop().to_owned())
        })
    })
}

/// Beside it.
fn today(desk: Desk) -> Signal<Option<String>> {
    Signal::derive(move || {
        let now = desk.minute();
        Some(desk.read(|view| view.tongue.day_of(now)))
    })
}
