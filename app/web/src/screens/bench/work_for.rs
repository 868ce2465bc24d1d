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
    let runs = move || bench.read().as_ref().is_some_and(|bench| !bench.clocks.is_empty());
    let note = Signal::derive(move || runs().then(|| words::from_now_on().to_owned()));
    view! {
        <Sheet>
            <Head title=words::work_for().to_owned() note=note/>
            <Above>
                <Read name=words::work_for().to_owned()>
                    {one_off(desk, bench)}
                    {move || {
                        let groups = groups(desk).into_iter();
                        groups.map(|(title, rows)| list(title, rows, bench)).collect::<Vec<_>>()
                    }}
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
        one_off::can_be(desk, bench.bearer).then(|| bench.clocks.last().map(|clock| clock.entry)).flatten()
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
    (move || {
        clock.get().map(|_| {
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

/// The rows under their headings: open builds, lots that can be worked on, the shop, then what is settled.
fn groups(desk: Desk) -> Vec<(&'static str, Vec<Row>)> {
    desk.read(|view| {
        let builds = view.shop.builds.iter().map(|(id, it)| (it.order, Bearer::Build(*id), it.title.clone()));
        let lots = view.shop.lots.iter().map(|(id, it)| (it.order, Bearer::Lot(*id), it.name.clone()));
        let mut all: Vec<_> =
            builds.chain(lots).filter(|it| likely::offers_bearer(view.shop, it.1)).collect();
        all.order_by(|a, b| b.0.cmp(&a.0));
        let bearers: Vec<Bearer> = all.iter().map(|it| it.1).collect();
        let settled = bearers::settled(view.shop, &bearers);
        let mut groups = [
            (words::open_builds(), Vec::new()),
            (words::lots(), Vec::new()),
            ("", vec![Row { bearer: Bearer::Shop, title: common::the_shop().to_owned() }]),
            (words::settled(), Vec::new()),
        ];
        for (_, bearer, title) in all {
            let group = match bearer {
                _ if settled.contains(&bearer) => 3,
                Bearer::Build(_) => 0,
                Bearer::Lot(_) | Bearer::Shop => 1,
            };
            if let Some((_, rows)) = groups.get_mut(group) {
                rows.push(Row { bearer, title });
            }
        }
        groups.into()
    })
}

fn list(title: &'static str, rows: Vec<Row>, bench: Memo<Option<Bench>>) -> Option<AnyView> {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    if rows.is_empty() {
        return None;
    }
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
    let group = (!title.is_empty()).then(|| view! { <Group title=title.to_owned()/> });
    Some(view! { {group}{rows.into_iter().map(row).collect::<Vec<_>>()} })
}
