//! What filming a build costs: its hours and money, how much slower own work is with the camera there, what is still to
//! shoot; and how it is reckoned, for the whole shop.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::Cells,
        key::Key,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText, Sums},
    },
    screens::{
        cost::no_build,
        form_keys::form_keys,
        journal::facts,
        shop::{to_the_wrong, write_setting},
        stock::form::{Cell, Form},
        trouble::Troubles,
    },
    shell::{
        Desk, Go, Place, Tab,
        desk::{Mark, Marked, Phase, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{film as words, journal},
};
use benchslate_core::{
    costing::{Books, OneSide, Part, Path, Rule},
    journal::{Id, kinds::SettingKey},
    measure::{Dec, Quantity, Seconds, footage, minutes, number},
    timing::{
        filming::{self, NEEDS, Pace},
        shots,
    },
};

const SLOW: &str = "slow";
const SECONDS: &str = "real-seconds";

#[derive(Clone, PartialEq)]
struct Look {
    title: String,
    rows: Vec<Row>,
    paces: Vec<Row>,
    together: Option<Row>,
    /// What own builds say, as it would be set: the share as it is kept, and in words.
    to_set: Option<(String, String)>,
    still: Vec<Row>,
    /// What stands in the fields.
    stands: [String; 2],
}

#[derive(Clone, Default, PartialEq)]
struct Row {
    label: String,
    working: Option<String>,
    figure: String,
    lacks: bool,
    href: Option<String>,
}

/// The sheet.
#[component]
pub fn FilmingSheet(of: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "filming");
    let look = Memo::new(move |_| desk.books(|books, view| look(books, view, of)));
    let title = Signal::derive(move || look.read().as_ref().map(|it| it.title.clone()).unwrap_or_default());
    let drawn = move || match look.get() {
        _ if desk.phase.get() != Phase::Ready => ().draw(),
        None => no_build(),
        Some(look) => whole(form, look),
    };
    let to_set = Memo::new(move |_| look.read().as_ref().and_then(|it| it.to_set.clone()));
    let use_it = move || {
        to_set.get().map(|(value, said)| {
            let (label, note) = (words::use_it(&said), words::as_you_work().to_owned());
            let tap = Callback::new(move |()| set(desk, vec![(SettingKey::SlowDown, value.clone())], &said));
            view! { <Keys class="low"><Key label note on_tap=tap/></Keys> }
        })
    };
    let keep = Callback::new(move |()| keep(desk, form));
    view! {
        <Sheet>
            <Head title=title tight=true/>
            <Above><Troubles/><Read name=title below=words::costs_below().to_owned()>{drawn}</Read></Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>{use_it}{form_keys(go, words::keep(), keep)}</Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, Some(Tab::Film))))/>
            </Below>
        </Sheet>
    }
}

fn look(books: &Books, view: &View, build: Id) -> Option<Look> {
    let title = words::costs_title(&view.shop.builds.get(&build)?.title);
    let (shop, now) = (view.shop, books.as_of);
    let today = shop.zone.day(now);
    let slower = filming::set(shop, today);
    let adds = filming::adds(shop, build, now, slower);
    let paces = filming::paces(shop, now);
    let hours = |it: Seconds| view.tongue.hours(minutes::alone(it));
    let percent = |it: Dec| view.tongue.number(&it.hundredths());
    let mut rows: Vec<Row> = film_side(books, view, build).into_iter().collect();
    let time = Some(Place::Build(build, Tab::Time).href());
    let row = |label: &str, figure: String| Row { label: label.to_owned(), figure, ..Row::default() };
    rows.push(Row { href: time.clone(), ..row(words::film_hours(), hours(adds.film)) });
    rows.push(Row { href: time, ..row(words::rolled(), hours(adds.rolled)) });
    rows.push(match (adds.slowed, slower) {
        (Some(slowed), Some(s)) => {
            let working = Some(words::slowed_by(&percent(s.hundredth())));
            Row { working, ..row(words::slowed(), hours(slowed)) }
        }
        _ => {
            let working = Some(words::say_it_below().to_owned());
            Row { working, lacks: true, ..row(words::slowed(), words::not_said().to_owned()) }
        }
    });
    let together = paces.slower.map(|share| row(words::together(), slower_words(view, share)));
    let to_set = paces.to_set().map(|share| (share.plain(), percent(share)));
    let set = |key| shop.settings.latest(key).and_then(|text| Dec::parse(text).ok());
    let stands = [
        set(SettingKey::SlowDown).map(percent).unwrap_or_default(),
        set(SettingKey::ShootingSeconds).map(|it| view.tongue.number(&it.plain())).unwrap_or_default(),
    ];
    let already = set(SettingKey::SlowDown).map(Dec::plain);
    Some(Look {
        title,
        rows,
        paces: paces.stages.iter().map(|it| pace(view, it)).collect(),
        together,
        to_set: to_set.filter(|(value, _)| Some(value) != already.as_ref()),
        still: still(view, build, today),
        stands,
    })
}

/// The film's side of the true cost, which opens.
fn film_side(books: &Books, view: &View, build: Id) -> Option<Row> {
    let sides = books.build_cost(build).sides;
    let film = sides.parts.iter().filter_map(Part::statement);
    let film = film.into_iter().find(|it| matches!(it.rule, Rule::Side { side: OneSide::Film, .. }))?.clone();
    let path = Path { steps: vec![sides.rule.step(), film.rule.step()] };
    let money = film.money().map(|it| view.tongue.money(it));
    Some(Row {
        label: words::film_side().to_owned(),
        working: None,
        lacks: money.is_none(),
        figure: money.unwrap_or_else(|| words::not_said().to_owned()),
        href: Some(Place::Opened(build, path.to_string()).href()),
    })
}

fn pace(view: &View, it: &Pace) -> Row {
    let hours = |it: Seconds| view.tongue.hours(minutes::alone(it));
    let with = it.with.map(hours).unwrap_or_default();
    let working = words::pace(&with, it.filmed, it.without.map(hours).as_deref(), it.unfilmed);
    Row {
        label: facts::stage(view, it.stage),
        working: Some(working),
        lacks: it.slower.is_none(),
        figure: it.slower.map_or_else(|| words::too_few(NEEDS), |share| slower_words(view, share)),
        href: None,
    }
}

fn slower_words(view: &View, share: Quantity) -> String {
    let text = Dec::from(share).hundredths();
    let quicker = share.is_negative();
    words::slower(&view.tongue.number(text.trim_start_matches('-')), quicker)
}

/// What its shots still take, in real time.
fn still(view: &View, build: Id, today: benchslate_core::measure::Day) -> Vec<Row> {
    let all = shots::added_in_all(view.shop, build, today);
    let hours = |it: Seconds| view.tongue.hours(minutes::alone(it));
    let common = view.shop.settings.on(SettingKey::ShootingSeconds, today).is_none();
    let seconds = view.tongue.quantity(shots::real_seconds(view.shop, today));
    let film = Some(Place::Build(build, Tab::Film).href());
    let row = |label: &str, figure: Seconds, working: Option<String>| Row {
        label: label.to_owned(),
        working,
        figure: hours(figure),
        lacks: false,
        href: film.clone(),
    };
    vec![
        row(words::musts(), all.must, Some(words::reckoned(&seconds, common))),
        row(words::nices(), all.nice, None),
    ]
}

fn drawn(row: Row) -> AnyView {
    let text = SumText {
        label: row.label,
        working: row.working,
        figure: row.figure,
        lacks: row.lacks,
        ..SumText::default()
    };
    view! { <SumRow text leads=row.href.map_or(Leads::Nowhere, Leads::To) signed=false/> }
}

fn whole(form: Form, look: Look) -> AnyView {
    let [slow, seconds] = look.stands;
    form.offer(vec![(SLOW.to_owned(), slow), (SECONDS.to_owned(), seconds)]);
    let list = |rows: Vec<Row>| rows.into_iter().map(drawn).collect::<Vec<AnyView>>();
    let none = look.paces.is_empty().then(|| view! { <p class="note">{words::no_pace()}</p> });
    let paces: Vec<Row> = look.paces.into_iter().chain(look.together).collect();
    let hint = Signal::stored(Some(shots::REAL_SECONDS.to_string()));
    view! {
        <Sums>{list(look.rows)}</Sums>
        <Group title=words::with_and_without().to_owned()/>
        {none}
        <Sums>{list(paces)}</Sums>
        <Group title=words::still_to_shoot().to_owned()/>
        <Sums>{list(look.still)}</Sums>
        <Group title=words::how_reckoned().to_owned()/>
        <Cells>
            {Cell::number(SLOW, words::slows_by()).of("%").draw(form)}
            {Cell::number(SECONDS, words::seconds_for_one()).offers(hint).draw(form)}
        </Cells>
    }
}

/// What was typed; what was not stays as it stands.
fn keep(desk: Desk, form: Form) {
    form.all_right();
    let slow = form.read(SLOW, number::percent).map(Dec);
    if slow.is_some_and(|share| Dec::parse("1").is_ok_and(|whole| share > whole)) {
        form.wrong(SLOW, journal::over_the_whole().to_owned());
    }
    let seconds = form.read(SECONDS, footage::real_seconds).map(Dec);
    if form.is_wrong() {
        return to_the_wrong();
    }
    let said = slow.map(Dec::hundredths).unwrap_or_default();
    let slow = slow.map(|it| (SettingKey::SlowDown, it.plain()));
    let seconds = seconds.map(|it| (SettingKey::ShootingSeconds, it.plain()));
    set(desk, slow.into_iter().chain(seconds).collect(), &said);
    form.done(desk);
}

fn set(desk: Desk, all: Vec<(SettingKey, String)>, percent: &str) {
    let said = if percent.is_empty() { words::real_seconds().to_owned() } else { words::set_to(percent) };
    desk.act(
        move |hand| all.iter().map(|(key, value)| write_setting(hand, *key, None, value.clone())).collect(),
        move |_| Marked::from(Mark { kind: words::set_kind().to_owned(), what: said.clone(), second: None }),
    );
}
