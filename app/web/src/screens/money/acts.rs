//! What a tap on the money of a build writes.

use crate::{
    screens::journal::{entry, facts},
    shell::{
        Desk,
        desk::{After, Mark, Marked},
    },
    words::earned as words,
};
use benchslate_core::{
    costing::Books,
    journal::{
        Body, Change, Id, On, Shop,
        kinds::{Bearer, BuildState, Income, Received, SeriesEnd, State},
        late,
    },
    measure::{Dec, Instant},
    timing::clocks::clocks,
};

/// What is still expected of a line arrived today, whole.
pub fn receive(desk: Desk, income: Id) {
    desk.act(
        move |hand| {
            let open = hand.shop.incomes.iter().find(|it| it.order.entry == income).and_then(|it| it.open());
            let (Some(open), Some(Body::Income(it))) = (open, hand.journal.body(income)) else {
                return Vec::new();
            };
            let on = hand.shop.zone.day(hand.now);
            let mut received = it.received.clone();
            received.push(Received { on, amount: Dec::from(open), tax: None, fee: None });
            vec![Change::write(income, Income { received, ..it.clone() })]
        },
        move |after| entry::marked(&after.view(), income, words::marked_received()),
    );
}

/// Closed, with what its draws cost now. A clock that runs for it stops: it would run on in what is closed.
pub fn close(desk: Desk, build: Id) {
    let runs = desk.now_read(|view| runs_for(view.shop, build, desk.at_tap()));
    desk.act(
        move |hand| {
            let frozen = Books::close(hand.shop, hand.now).freeze(build);
            let on = On::At(hand.shop.zone.when(hand.now));
            let mut changes = hand.stop_all_for(Bearer::Build(build));
            changes
                .push(Change::write((hand.fresh)(), BuildState { on, build, state: State::Closed, frozen }));
            changes
        },
        move |after| {
            let cost = after.books().build_cost(build).true_cost.money();
            let at = cost.map(|cost| after.tongue.money(cost)).unwrap_or_default();
            marked(after, build, words::marked_closed(&at, runs))
        },
    );
}

fn runs_for(shop: &Shop, build: Id, now: Instant) -> bool {
    clocks(shop, now).iter().any(|clock| clock.bearer == Bearer::Build(build))
}

/// No more of its run will be made.
pub fn end_run(desk: Desk, build: Id) {
    desk.act(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write((hand.fresh)(), SeriesEnd { on, build })]
        },
        move |after| marked(after, build, words::marked_run_ended().to_owned()),
    );
}

/// Open again.
pub fn reopen(desk: Desk, build: Id) {
    desk.act(
        move |hand| late::reopen(hand.shop, build, hand.now, (hand.fresh)()).into_iter().collect(),
        move |after| marked(after, build, words::marked_reopened().to_owned()),
    );
}

/// Laid aside, or under way again.
pub fn stands(desk: Desk, build: Id, state: State) {
    desk.act(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write((hand.fresh)(), BuildState { on, build, state, frozen: Vec::new() })]
        },
        move |after| marked(after, build, words::marked_stands(state == State::Paused).to_owned()),
    );
}

fn marked(after: &After, build: Id, what: String) -> Marked {
    let second = Some(facts::bearer(&after.view(), Bearer::Build(build)));
    Mark { kind: words::build().to_owned(), what, second }.into()
}
