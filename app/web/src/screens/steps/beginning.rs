//! How a plan begins: the steps of an earlier build, or a plain list by how the piece is put together. One tap each.

use super::marked;
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::Key,
        sheet::Keys,
        sum_row::{Group, Leads, SumRow, SumText},
        tick_row::TickRow,
    },
    screens::hours::choices,
    shell::{
        Desk,
        desk::{After, Marked, View},
    },
    words::steps as words,
};
use benchslate_core::{
    journal::{Change, Id, On},
    measure::Instant,
    planning::{
        starters::{self, Construction, Wanted},
        taken_over::{self, Over},
    },
    timing::{Hand, estimates, worked},
};

/// So many builds are offered.
const MOST: usize = 6;

/// Builds to take steps over from, the likeliest first.
pub fn earlier(view: &View, worked: &[worked::Worked], build: Id, now: Instant) -> Vec<(Id, String)> {
    let on = On::At(view.shop.zone.when(now));
    let ids = taken_over::sources(view.shop, worked, (build, on, now), MOST);
    ids.into_iter().filter_map(|id| Some((id, view.shop.builds.get(&id)?.title.clone()))).collect()
}

/// All of them but the first, which has its key in the hand.
pub fn others(desk: Desk, build: Id, earlier: &[(Id, String)]) -> Option<AnyView> {
    let row = |(from, label): &(Id, String)| {
        let (from, label) = (*from, label.clone());
        let tap = Callback::new(move |()| take_over(desk, from, build));
        view! { <SumRow text=SumText { label, ..SumText::default() } leads=Leads::Tap(tap) signed=false/> }
    };
    let rows: Vec<AnyView> = earlier.iter().skip(1).map(row).collect();
    (!rows.is_empty()).then(|| view! { <Group title=words::or_of_another().to_owned()/>{rows} })
}

/// The key that takes them over.
pub fn over(desk: Desk, build: Id, (from, title): (Id, String)) -> AnyView {
    let tap = Callback::new(move |()| take_over(desk, from, build));
    view! {
        <Keys class="mid">
            <Key label=words::take_over().to_owned() note=words::from_build(&title) on_tap=tap/>
        </Keys>
    }
}

fn take_over(desk: Desk, from: Id, to: Id) {
    desk.act(
        move |hand| {
            let (on, now) = (On::At(hand.shop.zone.when(hand.now)), hand.now);
            let worked = worked(hand.shop, now);
            let steps = taken_over::taken_over(hand.shop, &worked, Over { from, to, on, now }, hand.fresh);
            steps.into_iter().map(|(id, step)| Change::write(id, step)).collect()
        },
        move |after| written(after, to, after.shop.run_of(from).iter().filter(|it| **it != to).count()),
    );
}

fn written(after: &After, build: Id, builds: usize) -> Marked {
    let many = after.shop.steps.values().filter(|it| it.build() == build).count();
    let what = crate::words::journal::comma(&words::marked_steps(many), &words::spread_of(builds));
    marked(what, &after.view(), build)
}

/// Plain lists to begin from.
pub fn lists(desk: Desk, build: Id) -> AnyView {
    let film = RwSignal::new(true);
    let row = move |of: Construction| {
        let text = SumText {
            label: words::construction(of).to_owned(),
            working: Some(words::such_as(of).to_owned()),
            ..SumText::default()
        };
        let tap = move |()| begin(desk, build, of, film.get_untracked());
        view! { <SumRow text leads=Leads::Tap(Callback::new(tap)) signed=false/> }
    };
    let rows: Vec<AnyView> = Construction::ALL.into_iter().map(row).collect();
    view! {
        <Group title=words::or_from_a_list().to_owned()/>
        <TickRow
            label=words::with_its_film().to_owned()
            note=words::film_steps().to_owned()
            ticked=Signal::derive(move || film.get())
            on_tap=Callback::new(move |()| film.set(!film.get_untracked()))
        />
        {rows}
        <p class="note">{words::lists_are_common_practice()}</p>
    }
}

fn begin(desk: Desk, build: Id, construction: Construction, film: bool) {
    let who = desk.now_read(|view| choices::people(view, "").first().and_then(|it| Id::parse(&it.0)));
    let Some(who) = who else { return };
    let write = move |hand: &mut Hand| {
        let (on, now) = (On::At(hand.shop.zone.when(hand.now)), hand.now);
        let worked = worked(hand.shop, now);
        let mut of = hand.shop.run_of(build);
        of.retain(|it| *it != build);
        let learned = estimates::learned(hand.shop, &worked, &of, (build, now));
        let wanted = Wanted { construction, film, build, who, on };
        let steps = starters::steps(hand.shop, wanted, &learned, &words::called, hand.fresh);
        steps.into_iter().map(|(id, step)| Change::write(id, step)).collect()
    };
    desk.act(write, move |after| written(after, build, 0));
}
