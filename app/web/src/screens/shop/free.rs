//! When somebody is free for the shop: the week, a field a weekday, and days that are not as the week says.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::Cells,
        key::KeyLink,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    screens::{
        form_keys::form_keys,
        journal::facts,
        stock::form::{Cell, Form},
        trouble::Troubles,
    },
    shell::{
        Desk, Go, Place,
        desk::{Mark, Marked, Phase, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{free as words, shop},
};
use benchslate_core::{
    journal::{
        Body, Change, Id, Kind,
        kinds::{FreeHours, Person, Window},
    },
    measure::{Day, InOrder, TimeOfDay, Weekday, clock_text},
};

/// The field of a weekday.
fn field(weekday: Weekday) -> &'static str {
    shop::weekday(weekday.after_monday().saturating_add(1))
}

/// The sheet.
#[component]
pub fn FreeSheet(person: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    // One draft for each; its name lives as long as the page.
    let form = Form::open(desk, Box::leak(format!("free.{person}").into_boxed_str()));
    let title = Signal::derive(move || desk.read(|view| facts::person(view, person)));
    let ready = Memo::new(move |_| desk.phase.get() == Phase::Ready);
    let fields = move || ready.get().then(|| untrack(|| week(desk, form, person)));
    let keep = Callback::new(move |()| keep(desk, go, form, person));
    view! {
        <Sheet>
            <Head title=title note=Signal::stored(Some(words::free_hours().to_owned())) tight=true/>
            <Above>
                <Troubles/>
                <Read name=title below=words::below().to_owned()>
                    <div class="form">{fields}</div>
                    {move || others(desk, person)}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>
                    <Keys class="go">
                        <KeyLink
                            label=words::add_a_day().to_owned()
                            note=words::one_day().to_owned()
                            href=Place::Add(Kind::FreeDay, Some(person)).href()
                        />
                    </Keys>
                    {form_keys(go, words::keep(), keep)}
                </Hand>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

/// A field a weekday; what was kept stands in it.
fn week(desk: Desk, form: Form, person: Id) -> AnyView {
    let free = desk.now_read(|view| stored(view, person).map(|it| it.free).unwrap_or_default());
    let of =
        |weekday: Weekday| free.iter().filter(move |it| it.weekday == weekday).map(|it| (it.from, it.to));
    form.offer(Weekday::ALL.iter().map(|it| (field(*it).to_owned(), typed_windows(of(*it)))).collect());
    let cell = |weekday: &Weekday| {
        let name = field(*weekday);
        Cell::words(name, name).adds(comes_to(desk, form, name)).whole().draw(form)
    };
    // The shop's week, which may begin on a Sunday.
    let first = desk.now_read(super::week_start);
    let is_before = |weekday: &&Weekday| weekday.after_monday().saturating_add(1) < first;
    let (last, begin): (Vec<&Weekday>, Vec<&Weekday>) = Weekday::ALL.iter().partition(is_before);
    let cells: Vec<AnyView> = begin.into_iter().chain(last).map(cell).collect();
    view! { <Cells>{cells}</Cells><p class="note">{words::how_typed()}</p> }
}

/// What the windows in a field come to, while they can be read.
pub fn comes_to(desk: Desk, form: Form, field: &'static str) -> Signal<Option<String>> {
    Signal::derive(move || {
        let windows = clock_text::windows(&form.get(field)).ok()?;
        Some(desk.read(|view| words::comes_to(&view.tongue.hours(clock_text::together(&windows)))))
    })
}

/// Days off and extra time that are not over, in time.
fn others(desk: Desk, person: Id) -> Option<AnyView> {
    let now = desk.minute();
    let rows = desk.read(|view| {
        let today = view.shop.zone.day(now);
        let mut own: Vec<_> =
            view.shop.free_days.iter().filter(|it| it.person == person && it.last >= today).collect();
        own.order_by_key(|it| (it.first, it.order));
        let text = |it: &&benchslate_core::journal::shop::FreeDay| {
            let last = (it.last != it.first).then(|| view.tongue.day(it.last));
            let extra = windows_text(view, &it.extra);
            let what = words::off_or(&extra, &words::days(&view.tongue.day(it.first), last));
            (it.order.entry, SumText { label: what, ..SumText::default() })
        };
        own.iter().map(text).collect::<Vec<_>>()
    });
    let row = |(entry, text): (Id, SumText)| {
        view! { <SumRow text leads=Leads::To(Place::Entry(entry).href()) signed=false/> }
    };
    let drawn: Vec<AnyView> = rows.into_iter().map(row).collect();
    (!drawn.is_empty()).then(|| view! { <Group title=words::other_days().to_owned()/>{drawn} })
}

fn keep(desk: Desk, go: Go, form: Form, person: Id) {
    form.all_right();
    let mut free = Vec::new();
    for weekday in Weekday::ALL {
        let read = form.read(field(weekday), clock_text::windows).unwrap_or_default();
        free.extend(read.into_iter().map(|(from, to)| FreeHours { weekday, from, to }));
    }
    if form.is_wrong() {
        return super::set::to_the_wrong();
    }
    desk.act_then(
        move |hand| {
            let Some(Body::Person(now)) = hand.journal.body(person) else { return Vec::new() };
            vec![Change::write(person, Person { free: free.clone(), ..now.clone() })]
        },
        move |after| {
            let name = after.shop.people.get(&person).map(|it| it.name.clone()).unwrap_or_default();
            let what = words::week_of(&name);
            Marked::from(Mark { kind: words::free_hours().to_owned(), what, second: None })
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}

fn stored(view: &View, person: Id) -> Option<Person> {
    match view.journal.body(person) {
        Some(Body::Person(person)) => Some(person.clone()),
        _ => None,
    }
}

/// As it can be typed again: `09:00-13:00, 14:00-16:00`.
pub fn typed_windows(windows: impl Iterator<Item = (TimeOfDay, TimeOfDay)>) -> String {
    let one = |(from, to): (TimeOfDay, TimeOfDay)| [from.to_string(), to.to_string()].join("-");
    words::and_then(&windows.map(one).collect::<Vec<String>>())
}

/// As the reader's clock says it: `6:00 p.m.–9:00 p.m.`; none: nothing.
pub fn windows_text(view: &View, windows: &[Window]) -> String {
    let Some(any) = Day::of(2026, 1, 15) else { return String::new() };
    let time = |time: TimeOfDay| view.tongue.time(view.shop.zone.at(any, time));
    let one = |it: &Window| words::window(&time(it.from), &time(it.to));
    words::and_then(&windows.iter().map(one).collect::<Vec<String>>())
}
