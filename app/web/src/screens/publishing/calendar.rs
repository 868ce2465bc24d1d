//! A calendar file of what has a date, in words.

use crate::{
    screens::journal::{facts, publishing_facts},
    shell::desk::View,
    words::calendar as words,
};
use benchslate_core::{
    exchange::calendar::{self, Dated, Event, Head, Of, What},
    journal::{Body, Id, kinds::Bearer},
    measure::{Instant, Seconds},
    planning::{Asked, Plan},
};

/// At nine in the morning of the day before a whole day.
const DAY_BEFORE: Seconds = Seconds(15 * 3600);

/// The file of a build, or of the shop. `rings`: with reminders. None: nothing has a date.
pub fn file(view: &View, build: Option<Id>, now: Instant, rings: bool) -> Option<String> {
    let today = view.shop.zone.day(now);
    let mut dated = calendar::of_shop(view.shop, build, today);
    let plan = Plan::of(&Asked::of(view.shop, now, build).asking(view.shop));
    dated.extend(calendar::of_plan(&plan, view.shop, build));
    let of = Of { journal: view.journal, shop: view.shop, plan: &plan, build, today };
    let off = calendar::gone(&of, &dated);
    let mut events: Vec<Event> = dated.into_iter().map(|it| event(view, it, rings)).collect();
    events.extend(off.into_iter().map(|it| Event { off: true, ..event(view, it, false) }));
    let name = build.map_or_else(
        || words::of_the_shop().to_owned(),
        |id| words::of_build(&facts::bearer(view, Bearer::Build(id))),
    );
    let head = Head { name: &name, stamp: now, sequence: calendar::sequence(view.journal) };
    (!events.is_empty()).then(|| calendar::file(&head, &events))
}

fn event(view: &View, dated: Dated, rings: bool) -> Event {
    let build = |id: Id| facts::bearer(view, Bearer::Build(id));
    let (title, note, before) = match dated.what {
        What::Dry(it) => {
            let title = words::dry(&facts::stage(view, it.stage));
            (title, facts::bearer(view, it.bearer), Some(Seconds::ZERO))
        }
        What::Due { build: id, owed } => {
            let what = match view.journal.last_body(owed.due) {
                Some(Body::Due(it)) => publishing_facts::due(it),
                _ => String::new(),
            };
            (words::owed(&what), build(id), Some(DAY_BEFORE))
        }
        What::Piece(id) => (words::piece_due(&build(id)), String::new(), Some(DAY_BEFORE)),
        What::Publish(id) => (words::goes_out(&build(id)), String::new(), Some(DAY_BEFORE)),
        What::Cut(id) => (words::cut_out(&build(id)), String::new(), Some(DAY_BEFORE)),
        // A piece of a plan moves with it: it is looked at, and rings nobody up.
        What::Step { step, title } => (of_build(view, step, &title), String::new(), None),
        What::StepDry { step, title } => (words::dry(&of_build(view, step, &title)), String::new(), None),
    };
    Event { uid: dated.uid, title, note, span: dated.span, alarm: before.filter(|_| rings), off: false }
}

/// A step by its title and its build.
fn of_build(view: &View, step: Id, title: &str) -> String {
    let of = match view.journal.last_body(step) {
        Some(Body::Step(it)) => facts::bearer(view, Bearer::Build(it.build)),
        _ => String::new(),
    };
    crate::words::journal::step_of(title, &of)
}
