//! Two builds side by side, figure by figure.

use crate::dom::prelude::*;
use crate::{
    parts::stick_fraction::stick,
    parts::{
        pick::{Choosable, Pick},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
    },
    screens::hours::choices,
    shell::{Desk, desk::View, frame::Places},
    words::year as words,
};
use benchslate_core::{
    costing::{Books, Rule, Value},
    journal::{Id, kinds::Bearer},
    measure::{Seconds, Weekday, minutes},
    timing::breakdown::breakdown,
};

/// The sheet; the two builds begun last at first.
#[component]
pub fn SideBySideSheet() -> impl IntoView {
    let desk = Desk::here();
    let builds = Memo::new(move |_| desk.read(builds));
    let chosen = [RwSignal::new(String::new()), RwSignal::new(String::new())];
    let at = move |place: usize| {
        let typed = chosen.get(place).map(|it| it.get()).unwrap_or_default();
        if typed.is_empty() {
            builds.read().get(place).map(|it| it.0.clone()).unwrap_or_default()
        } else {
            typed
        }
    };
    let name = move |place: usize| {
        let code = at(place);
        builds.read().iter().find(|it| it.0 == code).map(|it| it.1.clone()).unwrap_or_default()
    };
    let rows = Memo::new(move |_| {
        let two = [at(0), at(1)].map(|code| Id::parse(&code));
        desk.books(|books, view| two.map(|id| id.map(|id| figures(books, view, id))))
    });
    let pick = move |place: usize| {
        let set = Callback::new(move |code: String| {
            if let Some(it) = chosen.get(place) {
                it.set(code);
            }
        });
        view! {
            <Pick
                id=format!("beside-{place}")
                label=Signal::stored(words::build(place).to_owned())
                choices=Signal::derive(move || builds.get())
                value=Signal::derive(move || at(place))
                on_choose=set
            />
        }
    };
    view! {
        <Sheet>
            <Head title=words::side_by_side().to_owned() tight=true/>
            <Above>
                <Read name=words::side_by_side().to_owned() below=words::more_figures().to_owned()>
                    {move || table([0, 1].map(&name), rows.get())}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    {pick(0)}
                    {pick(1)}
                </Hand>
                <Places cell=1/>
            </Below>
        </Sheet>
    }
}

/// Latest first, those that nobody worked at yet last.
fn builds(view: &View) -> Vec<Choosable> {
    let mut builds = choices::builds(view, "");
    builds.retain(|(code, _)| !code.is_empty());
    let worked = |(code, _): &Choosable| {
        let build = Id::parse(code).map(Bearer::Build);
        view.shop.stretches.iter().any(|it| Some(it.bearer) == build)
    };
    let (mut first, rest): (Vec<Choosable>, Vec<Choosable>) = builds.into_iter().partition(worked);
    first.extend(rest);
    first
}

/// The figures of a build, each under its word.
fn figures(books: &Books, view: &View, build: Id) -> Vec<(&'static str, String)> {
    let cost = books.build_cost(build);
    let hours = breakdown(view.shop, Bearer::Build(build), books.as_of, Weekday::Monday);
    let say = |value: Option<Value>| match value {
        Some(Value::Money(money) | Value::PerHour(money)) => view.tongue.money(money),
        Some(Value::Hours(hours)) => view.tongue.hours(minutes::alone(hours.seconds())),
        None => words::none().to_owned(),
    };
    let length = |it: Seconds| view.tongue.hours(minutes::alone(it));
    let saved = cost.saving.as_ref().map(|it| say(it.at_rate.value));
    let timber = cost.own_hours.part(|rule| matches!(rule, Rule::InTheTimber)).and_then(|it| it.value);
    vec![
        (words::row_true_cost(), say(cost.true_cost.value)),
        (words::row_used_up(), say(cost.used_up().and_then(|it| it.value))),
        (words::row_item(), say(cost.batch.item.value)),
        (words::row_hours(), length(hours.shown)),
        (words::row_timber(), say(timber)),
        (words::row_net(), say(cost.earned.net.value)),
        (words::row_hour(), say(cost.hour_earned.value)),
        (words::row_saved(), saved.unwrap_or_else(|| words::none().to_owned())),
        (
            words::row_film(),
            hours.film_an_hour.map_or_else(|| words::none().to_owned(), |it| view.tongue.quantity(it)),
        ),
        (
            words::row_edit(),
            hours.per_minute.map_or_else(
                || words::none().to_owned(),
                |it| {
                    let (minutes, seconds) = it.edit.minutes_seconds();
                    crate::words::time::minutes_seconds(minutes, seconds)
                },
            ),
        ),
    ]
}

fn table([left, right]: [String; 2], [one, other]: [Option<Vec<(&'static str, String)>>; 2]) -> AnyView {
    let (Some(one), Some(other)) = (one, other) else {
        return view! { <p class="lead">{words::two_builds_needed()}</p> };
    };
    let row = |((label, one), (_, other)): ((&'static str, String), (&'static str, String))| {
        view! { <tr><th scope="row">{label}</th><td>{stick(&one)}</td><td>{stick(&other)}</td></tr> }
    };
    let rows: Vec<AnyView> = one.into_iter().zip(other).map(row).collect();
    view! {
        <table class="side-by-side">
            <thead><tr><td></td><th scope="col">{stick(&left)}</th><th scope="col">{stick(&right)}</th></tr></thead>
            <tbody>{rows}</tbody>
        </table>
    }
}
