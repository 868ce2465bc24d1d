//! What the bench works for: open builds, lots, the shop.

use super::taps;
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{KeyKind, KeyLink},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
        tick_row::TickRow,
    },
    screens::hours::one_off,
    shell::{Desk, Go, Place, frame::Places},
    words::{bench as words, common, hours},
};
use benchslate_core::measure::InOrder;
use benchslate_core::{
    journal::kinds::Bearer,
    timing::{bearers, bench::Bench, likely},
};

/// A bearer on the list.
#[derive(Clone, PartialEq)]
struct Row {
    bearer: Bearer,
    title: String,
}

/// Latest first.
#[component]
pub fn WorkForSheet() -> impl IntoView {
    let desk = Desk::here();
    let bench = Memo::new(move |_| desk.bench());
    let groups = Memo::new(move |_| groups(desk));
    let runs = move || bench.read().as_ref().is_some_and(|bench| !bench.clocks.is_empty());
    let note = Signal::derive(move || runs().then(|| words::from_now_on().to_owned()));
    let title = Signal::derive(move || match bench.read().as_ref().and_then(super::two::whose) {
        Some(name) => words::works_for(&name),
        None => words::work_for().to_owned(),
    });
    view! {
        <Sheet>
            <Head title=title note=note/>
            <Above>
                <Read name=words::work_for().to_owned()>
                    {one_off(desk, bench)}
                    {titles().into_iter().enumerate().map(|(at, title)| list(title, at, groups, bench)).collect::<Vec<_>>()}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    <Keys class="go">
                        <KeyLink label=common::leave().to_owned() href=Place::Bench.href()/>
                        <KeyLink
                            class="wide"
                            label=words::start_a_build().to_owned()
                            note=words::a_name_is_enough().to_owned()
                            kind=KeyKind::Filled
                            href=Place::NewBuild.href()
                        />
                    </Keys>
                </Hand>
                <Places cell=0/>
            </Below>
        </Sheet>
    }
}

/// The running stretch as one-off work, where what it is for is a run.
fn one_off(desk: Desk, bench: Memo<Option<Bench>>) -> AnyView {
    let clock = Memo::new(move |_| {
        let bench = bench.read();
        let bench = bench.as_ref()?;
        one_off::can_be(desk, bench.bearer).then(|| bench.acting().map(|clock| clock.entry)).flatten()
    });
    let is = Memo::new(move |_| {
        let entry = clock.get();
        desk.read(|view| view.shop.stretches.iter().any(|it| Some(it.entry()) == entry && it.one_off))
    });
    let tap = Callback::new(move |()| {
        if let Some(entry) = clock.get_untracked() {
            taps::one_off(desk, entry, !is.get_untracked());
        }
    });
    let there = Memo::new(move |_| clock.get().is_some());
    (move || {
        there.get().then(|| {
            view! {
                <TickRow
                    label=hours::one_off().to_owned()
                    note=hours::one_off_note().to_owned()
                    ticked=Signal::derive(move || is.get())
                    on_tap=tap
                />
            }
        })
    })
    .draw()
}

/// The headings; the shop stands without one.
fn titles() -> [&'static str; 4] {
    [words::open_builds(), words::lots(), "", words::settled()]
}

/// The rows under their headings: open builds, lots that can be worked on, the shop, then what is settled.
fn groups(desk: Desk) -> [Vec<Row>; 4] {
    desk.read(|view| {
        let builds = view.shop.builds.iter().map(|(id, it)| (it.order, Bearer::Build(*id), it.title.clone()));
        let lots = view.shop.lots.iter().map(|(id, it)| (it.order, Bearer::Lot(*id), it.name.clone()));
        let mut all: Vec<_> =
            builds.chain(lots).filter(|it| likely::offers_bearer(view.shop, it.1)).collect();
        all.order_by(|a, b| b.0.cmp(&a.0));
        let bearers: Vec<Bearer> = all.iter().map(|it| it.1).collect();
        let settled = bearers::settled(view.shop, &bearers);
        let shop = Row { bearer: Bearer::Shop, title: common::the_shop().to_owned() };
        let mut groups = [Vec::new(), Vec::new(), vec![shop], Vec::new()];
        for (_, bearer, title) in all {
            let group = match bearer {
                _ if settled.contains(&bearer) => 3,
                Bearer::Build(_) => 0,
                Bearer::Lot(_) | Bearer::Shop => 1,
            };
            if let Some(rows) = groups.get_mut(group) {
                rows.push(Row { bearer, title });
            }
        }
        groups
    })
}

/// A group, `at` its place; its rows stand while others come and go.
fn list(title: &'static str, at: usize, groups: Memo<[Vec<Row>; 4]>, bench: Memo<Option<Bench>>) -> AnyView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let rows = move || groups.read().get(at).cloned().unwrap_or_default();
    let headed = Memo::new(move |_| !title.is_empty() && !rows().is_empty());
    let row = move |row: Row| {
        let text = SumText { label: row.title.clone(), ..SumText::default() };
        let tap = move |()| {
            if let Some(bench) = bench.get_untracked() {
                taps::work_for(desk, &bench, row.bearer, row.title.clone());
            }
            go.instead(&Place::Bench);
        };
        view! { <SumRow text leads=Leads::Tap(Callback::new(tap)) signed=false/> }
    };
    let heading = move || headed.get().then(|| view! { <Group title=title.to_owned()/> });
    view! { {heading}{each(rows, row)} }
}
