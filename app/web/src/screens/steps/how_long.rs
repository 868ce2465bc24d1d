//! How long a step takes: quicker one time in ten, usually, slower one time in ten; step after step with one thumb. Once it
//! has begun: what is still to do, where the maker knows better.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        field::Cells,
        key::{Key, KeyKind},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    screens::stock::{
        form::{Cell, Form},
        pad,
    },
    shell::{
        Desk, Go, Place,
        desk::{Mark, Phase, View},
        frame::Places,
    },
    words::{common, journal, step_form, steps as words},
};
use benchslate_core::{
    journal::{Body, Change, Id, kinds::Step},
    measure::{Dec, InOrder, duration},
    planning::{
        history::{Known, of_step},
        longer_than_a_window,
    },
    timing::{estimates, steps::planned, worked},
};

const OF: &str = "how-long-of";
const USUAL: &str = "how-long-usual";
const QUICK: &str = "how-long-quick";
const SLOW: &str = "how-long-slow";
const LEFT: &str = "how-long-left";

/// The sheet of a step.
#[component]
pub fn HowLongSheet(step: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "how-long");
    let current = RwSignal::new(USUAL);
    let it = Memo::new(move |_| desk.read(|view| view.shop.steps.get(&step).map(|it| it.body.clone())));
    let gone = Memo::new(move |_| desk.phase.get() == Phase::Ready && it.with(Option::is_none));
    let title = Signal::derive(move || match it.read().as_ref() {
        Some(it) => it.title.clone(),
        None if gone.get() => words::no_such_step().to_owned(),
        None => String::new(),
    });
    let note = Signal::derive(move || it.read().as_ref().and_then(|it| build(desk, it.build)));
    // What was typed for another step goes; before the draft is read none of it is known.
    Effect::new(move || {
        let (before, own) = (form.get(OF), step.to_string());
        if before.is_empty() && form.is_typed() {
            form.set(OF, own);
        } else if !before.is_empty() && before != own {
            form.done(desk);
        }
    });
    let keep = Callback::new(move |()| keep(desk, go, form, step));
    let begun = Memo::new(move |_| {
        let minute = desk.minute();
        desk.read(|view| {
            let planned = planned(view.shop, &worked(view.shop, minute));
            planned.get(&step).is_some_and(|it| !it.logged.is_zero())
        })
    });
    let known = Memo::new(move |_| {
        let minute = desk.minute();
        desk.read(|view| of_step(view.shop, &worked(view.shop, minute), step, minute))
    });
    let body = move || it.get().map(|it| body(desk, form, current, (step, &it), (begun.get(), known)));
    view! {
        <Sheet>
            <Head title note tight=true/>
            <Above><Read name=title>{body}</Read></Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Tall>
                    {pad::figures(desk, form, current)}
                    <Keys>
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <Key class="wide" label=words::keep_and_next().to_owned() kind=KeyKind::Filled on_tap=keep/>
                    </Keys>
                </Hand>
                <Places cell=1/>
            </Below>
        </Sheet>
    }
}

fn build(desk: Desk, id: Id) -> Option<String> {
    desk.read(|view| view.shop.builds.get(&id).map(|it| it.title.clone()))
}

fn body(
    desk: Desk,
    form: Form,
    current: RwSignal<&'static str>,
    (step, it): (Id, &Step),
    (begun, known): (bool, Memo<Option<Known>>),
) -> AnyView {
    let typed = |it: Option<Dec>| it.map(Dec::plain).unwrap_or_default();
    form.offer(vec![
        (USUAL.to_owned(), typed(it.usual)),
        (QUICK.to_owned(), typed(it.quick)),
        (SLOW.to_owned(), typed(it.slow)),
        (LEFT.to_owned(), typed(it.left)),
    ]);
    let left = begun || it.left.is_some();
    pad::focus(if left { LEFT } else { USUAL });
    let cell =
        move |field, label| Cell::number(field, label).of(words::hour_sign()).padded(current).draw(form);
    let all = Place::Entry(step).href();
    view! {
        <Cells>
            {cell(USUAL, words::usually())}
            {cell(QUICK, words::one_in_ten_quicker())}
            {cell(SLOW, words::one_in_ten_slower())}
            {left.then(|| cell(LEFT, words::hours_left()))}
        </Cells>
        {move || known.get().map(|known| own(desk, form, known))}
        <p class="note">{words::usual_alone()}</p>
        <RowLink
            label=words::all_of_the_step().to_owned()
            end=words::who_after_what().to_owned()
            leads=Leads::To(all)
        />
    }
}

/// What earlier builds say, taken in one tap.
fn own(desk: Desk, form: Form, known: Known) -> AnyView {
    let [quick, usual, slow] = known.hours.map(|it| desk.read(|view| view.tongue.number(&it.plain())));
    let take = move |()| {
        for (field, hours) in [QUICK, USUAL, SLOW].into_iter().zip(known.hours) {
            form.set_over(field, hours.plain());
        }
    };
    view! {
        <RowLink
            label=words::as_your_own(known.builds, known.own_spread)
            end=words::usually_between(&usual, &quick, &slow)
            leads=Leads::Tap(Callback::new(take))
        />
    }
}

fn keep(desk: Desk, go: Go, form: Form, step: Id) {
    form.all_right();
    let read = |field| form.read(field, duration::hours).map(|hours| Dec::from(hours.in_hours()));
    let [quick, usual, slow, left] = [QUICK, USUAL, SLOW, LEFT].map(read);
    let falls = |low: Option<Dec>, high: Option<Dec>| low.is_some() && high.is_some() && low > high;
    if usual.is_none() && !form.is_wrong() {
        form.wrong(USUAL, words::say_how_long().to_owned());
    } else if usual == Some(Dec::default()) {
        form.wrong(USUAL, journal::more_than_none().to_owned());
    } else if falls(quick, usual) {
        form.wrong(QUICK, journal::quick_above().to_owned());
    } else if falls(usual, slow) {
        form.wrong(SLOW, journal::slow_below().to_owned());
    }
    let Some(usual) = usual.filter(|_| !form.is_wrong()) else { return };
    let taken = estimates::ends_of(usual);
    if let Some(longest) = desk.now_read(|view| no_window(view, desk, step, slow.unwrap_or(taken[1]))) {
        let field = if slow.is_some() { SLOW } else { USUAL };
        return form.wrong(field, step_form::no_window_holds_it(&longest));
    }
    let [quick, slow] = [quick.unwrap_or(taken[0]), slow.unwrap_or(taken[1])];
    desk.act_then(
        move |hand| {
            let Some(Body::Step(it)) = hand.journal.body(step) else { return Vec::new() };
            let told = Step { quick: Some(quick), usual: Some(usual), slow: Some(slow), left, ..it.clone() };
            vec![Change::write(step, told)]
        },
        move |after| {
            let title = after.shop.steps.get(&step).map(|it| it.body.title.clone()).unwrap_or_default();
            let hours = |it: Dec| after.tongue.number(&it.plain());
            Mark {
                kind: words::kind().to_owned(),
                what: words::takes(&title, &hours(usual)),
                second: Some(words::between(&hours(quick), &hours(slow))),
            }
            .into()
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                match desk.now_read(|view| next(view, step)) {
                    Some(next) => go.instead(&Place::HowLong(next)),
                    None => go.back(),
                }
            }
        },
    );
}

/// The longest free time, where a step that must be done in one go does not fit into any.
fn no_window(view: &View, desk: Desk, step: Id, slow: Dec) -> Option<String> {
    let told = Step { slow: Some(slow), ..view.shop.steps.get(&step)?.body.clone() };
    let from = view.shop.zone.start_of(view.shop.zone.day(desk.at_tap()));
    longer_than_a_window(view.shop, &told, from).map(|it| view.tongue.hours(it))
}

/// The next step of its build of which nobody has said how long it takes.
fn next(view: &View, step: Id) -> Option<Id> {
    let build = view.shop.steps.get(&step)?.build();
    let mut open: Vec<_> = view
        .shop
        .steps
        .iter()
        .filter(|(_, it)| it.build() == build && it.done().is_none() && it.body.usual.is_none())
        .collect();
    open.order_by_key(|(id, it)| (it.order, **id));
    open.into_iter().map(|(id, _)| *id).find(|id| *id != step)
}
