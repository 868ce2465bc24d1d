//! Set once for the whole shop. A tap on one of a few is kept at once; what is typed is kept by the key.

use super::{
    bearing,
    set::{self, cell, km_rate, tax, week_start},
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        field::{Cells, Field, Typing},
        seg::{Choice, Seg, SegKind},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    platform::{clock, intl},
    screens::form_keys::form_keys,
    screens::{first_amount, stock::form::Form, trouble::Troubles},
    shell::{
        Desk, Go, Place,
        desk::{Mark, Marked, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::shop as words,
};
use benchslate_core::measure::{InOrder, letters::small};
use benchslate_core::{
    journal::{
        Body, Change, Id, On,
        kinds::{Setting, SettingKey},
        shop::FRACTIONS,
    },
    measure::{Day, Dec, Region, currency, day, number},
    timing::Hand as Deciding,
};

/// How many currencies are shown under what was typed.
const SHOWN: usize = 6;
/// Days on which a week can begin (CLDR): Monday, Friday, Saturday, Sunday.
const WEEKS: [u8; 4] = [1, 5, 6, 7];

/// Where the shop seems to be.
pub fn guess() -> Option<Region> {
    Region::guess(&clock::language(), &clock::zone_name())
}

/// The sheet.
#[component]
pub fn ChoicesSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "choices");
    let keep = Callback::new(move |()| keep(desk, form));
    view! {
        <Sheet>
            <Head title=words::choices().to_owned() note=words::for_the_shop().to_owned()/>
            <Above>
                <Troubles/>
                <Read name=words::choices().to_owned() below=words::choices_below().to_owned()>
                    {currencies(desk, form)}
                    <Group title=words::units_set().to_owned()/>
                    {units(desk)}
                    {move || desk.read(first_amount::in_inches).then(|| fractions(desk))}
                    <Group title=words::week_begins().to_owned()/>
                    {weeks(desk)}
                    {typed(desk, form)}
                    {bearing::groups(desk, form)}
                    <p class="note">{words::days_are_cut()}</p>
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>
                    {form_keys(go, words::keep(), keep)}
                </Hand>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

fn currencies(desk: Desk, form: Form) -> AnyView {
    let fixed = Memo::new(move |_| desk.read(|view| view.shop.currency_is_fixed()));
    view! {
        <Group title=words::currency().to_owned()/>
        {move || in_use(desk)}
        {move || match fixed.get() {
            Some(line) => stays(line),
            None => found(desk, form),
        }}
    }
}

/// Amounts stand in it: another one would rename them.
fn stays(line: Id) -> AnyView {
    view! {
        <p class="note">{words::currency_stays()}</p>
        <RowLink
            label=words::wrong_from_the_first().to_owned()
            end=words::strike_its_line().to_owned()
            leads=Leads::To(Place::Entry(line).href())
        />
        <RowLink
            label=words::shop_changes_over().to_owned()
            end=words::backup_then_anew().to_owned()
            leads=Leads::To(Place::Shop.href())
        />
    }
}

/// By what is typed of its name or code.
fn found(desk: Desk, form: Form) -> AnyView {
    let rows = move || {
        let find = small(form.get("find").trim());
        let found = if find.is_empty() { Vec::new() } else { desk.read(|view| find_currency(view, &find)) };
        let none = (!find.is_empty() && found.is_empty())
            .then(|| view! { <p class="note">{words::no_such_currency()}</p> });
        let row = move |(code, name): (&'static str, String)| {
            let take = Callback::new(move |()| {
                choose(desk, SettingKey::Currency, words::currency(), code.to_owned(), code.to_owned());
                form.set("find", "");
            });
            let text = SumText { label: name, figure: code.to_owned(), ..SumText::default() };
            view! { <SumRow text leads=Leads::Tap(take) signed=false/> }
        };
        view! { {found.into_iter().map(row).collect::<Vec<_>>()}{none} }
    };
    view! {
        <Field
            id="find"
            class="found"
            label=words::find_currency().to_owned()
            typing=Typing::Search
            hint=words::find_currency().to_owned()
            value=form.signal("find")
            on_input=Callback::new(move |text: String| form.set("find", text))
        />
        {rows}
        <p class="note">{words::not_converted()}</p>
    }
}

/// What is counted in now; a guess is taken by a tap.
fn in_use(desk: Desk) -> Option<AnyView> {
    let (code, chosen, name) = desk.read(|view| {
        let code = first_amount::currency(view)?;
        let name = intl::currency_name(&code, view.tongue.language());
        Some((code, view.tongue.currency().is_some(), name))
    })?;
    let note = words::and_also(words::guessed(), words::take_the_guess());
    let text = SumText {
        label: name,
        working: (!chosen).then_some(note),
        figure: code.clone(),
        ..SumText::default()
    };
    let take = Callback::new(move |()| {
        choose(desk, SettingKey::Currency, words::currency(), code.clone(), code.clone());
    });
    let leads = if chosen { Leads::Nowhere } else { Leads::Tap(take) };
    Some(view! { <SumRow text leads signed=false/> })
}

/// By code first, then by name.
fn find_currency(view: &View, find: &str) -> Vec<(&'static str, String)> {
    let named = currency::codes().map(|code| (code, intl::currency_name(code, view.tongue.language())));
    let mut found: Vec<(bool, &'static str, String)> = named
        .filter_map(|(code, name)| {
            let by_code = small(code).starts_with(find);
            (by_code || small(&name).contains(find)).then_some((!by_code, code, name))
        })
        .collect();
    found.order();
    found.into_iter().take(SHOWN).map(|(_, code, name)| (code, name)).collect()
}

fn units(desk: Desk) -> AnyView {
    let chosen = Signal::derive(move || usize::from(!desk.read(first_amount::in_inches)));
    let choose = move |at: usize| {
        let (code, inches) = if at == 0 { ("inch", true) } else { ("metric", false) };
        choose(desk, SettingKey::Units, words::units_set(), code.to_owned(), words::units(inches).to_owned());
    };
    let choices = [true, false].map(|inches| Choice::plain(words::units(inches))).to_vec();
    one_of(words::units_set(), choices, chosen, Callback::new(choose))
}

/// The finest mark that lengths are rounded to, where they are shown in inches.
fn fractions(desk: Desk) -> AnyView {
    let chosen = Signal::derive(move || {
        let finest = desk.read(|view| view.shop.smallest_fraction());
        FRACTIONS.iter().position(|it| *it == finest).unwrap_or(FRACTIONS.len())
    });
    let choose = move |at: usize| {
        if let Some(under) = FRACTIONS.get(at) {
            let said = words::a_part_of_an_inch(*under);
            choose(desk, SettingKey::SmallestFraction, words::smallest_fraction(), under.to_string(), said);
        }
    };
    let choices = FRACTIONS.map(|under| Choice::plain(words::a_part_of_an_inch(under))).to_vec();
    view! {
        <Group title=words::smallest_fraction().to_owned()/>
        {one_of(words::smallest_fraction(), choices, chosen, Callback::new(choose))}
    }
}

fn weeks(desk: Desk) -> AnyView {
    let chosen = Signal::derive(move || {
        let day = desk.read(week_start);
        WEEKS.iter().position(|it| *it == day).unwrap_or(WEEKS.len())
    });
    let choose = move |at: usize| {
        if let Some(day) = WEEKS.get(at) {
            let said = words::weekday(*day).to_owned();
            choose(desk, SettingKey::WeekStart, words::week_begins(), day.to_string(), said);
        }
    };
    let choices = WEEKS.map(|day| Choice::plain(words::weekday(day))).to_vec();
    one_of(words::week_begins(), choices, chosen, Callback::new(choose))
}

pub fn one_of(
    name: &'static str,
    choices: Vec<Choice>,
    chosen: Signal<usize>,
    choose: Callback<usize>,
) -> AnyView {
    view! {
        <Seg
            name=name.to_owned()
            kind=SegKind::Modes
            class="under-group"
            choices=Signal::stored(choices)
            chosen
            on_choose=choose
        />
    }
}

fn typed(desk: Desk, form: Form) -> AnyView {
    let today = move || {
        let now = desk.minute();
        desk.read(|view| view.shop.zone.day(now))
    };
    let name = Signal::derive(move || {
        desk.read(|view| view.shop.settings.latest(SettingKey::ShopName).map(str::to_owned))
    });
    let km = Signal::derive(move || {
        let today = today();
        desk.read(|view| km_rate(view, today))
    });
    let from = Signal::derive(move || {
        Some(if km.get().is_some() { words::today() } else { words::the_beginning() }.to_owned())
    });
    let share = Signal::derive(move || desk.read(tax));
    let zone = Signal::derive(move || Some(desk.read(|view| view.shop.zone.name.clone())));
    let percent = Signal::stored(Some("%".to_owned()));
    view! {
        <div class="form">
            <Cells>
                {cell(form, "name", words::shop_name(), name, None, "whole", Typing::Words)}
                {cell(form, "km", words::vehicle(), km, Some(first_amount::beside(desk)), "", Typing::Decimal)}
                {cell(form, "from", words::from_a_day(), from, None, "", Typing::Words)}
                {cell(form, "tax", words::tax(), share, Some(percent), "", Typing::Decimal)}
                {cell(form, "zone", words::zone(), zone, None, "", Typing::Words)}
            </Cells>
            <p class="note">{words::fuel_once()}</p>
        </div>
    }
}

/// Keeps what was typed, all in one act.
fn keep(desk: Desk, form: Form) {
    let settings = read(desk, form);
    if settings.as_ref().is_some_and(Vec::is_empty) {
        form.wrong("name", words::nothing_typed().to_owned());
    }
    let Some(settings) = settings.filter(|settings| !settings.is_empty()) else { return set::to_the_wrong() };
    let rates = settings.iter().any(|it| matches!(it.0, SettingKey::KmRate | SettingKey::KwhPrice));
    let first = settings.first().map(|it| words::set_to(label(it.0), &it.3)).unwrap_or_default();
    let said = words::set_and_more(&first, settings.len().saturating_sub(1));
    desk.act_then(
        move |hand| {
            let mut changes = if rates { first_amount::settings(hand) } else { Vec::new() };
            changes
                .extend(settings.iter().map(|(key, from, value, _)| write(hand, *key, *from, value.clone())));
            changes
        },
        move |_| marked(said.clone()),
        move |done| {
            if done.is_ok() {
                form.done(desk);
            }
        },
    );
}

/// Which, from when, its value as it is stored, and as it is said.
pub type Chosen = (SettingKey, Option<Day>, String, String);

/// None: something is wrong, and said by its field.
fn read(desk: Desk, form: Form) -> Option<Vec<Chosen>> {
    form.all_right();
    let at = desk.at_tap();
    let (today, there) = desk.now_read(|view| {
        let today = view.shop.zone.day(at);
        (today, km_rate(view, today).is_some())
    });
    let mut settings = Vec::new();
    let name = form.now("name").trim().to_owned();
    if let Some(wrong) = words::bad_name(&name).filter(|_| !name.is_empty()) {
        form.wrong("name", wrong.to_owned());
    } else if !name.is_empty() {
        settings.push((SettingKey::ShopName, None, name.clone(), name));
    }
    let from = form.read("from", |text| day::typed_near(text, today));
    if let Some(rate) = form.read("km", number::amount) {
        let value = Dec(rate).plain();
        settings.push((SettingKey::KmRate, from.or(there.then_some(today)), value.clone(), value));
    }
    if let Some(share) = form.read("tax", number::percent) {
        let said = words::percent(&Dec(share).hundredths());
        settings.push((SettingKey::TaxRate, None, Dec(share).plain(), said));
    }
    let zone = form.now("zone").trim().to_owned();
    if !zone.is_empty() && clock::offset_changes(&zone).is_none() {
        form.wrong("zone", words::no_such_zone().to_owned());
    } else if !zone.is_empty() {
        settings.push((SettingKey::Zone, None, zone.clone(), zone));
    }
    settings.extend(desk.now_read(|view| bearing::read(view, form, from, today)));
    (!form.is_wrong()).then_some(settings)
}

/// Keeps one choice at once.
pub fn choose(desk: Desk, key: SettingKey, what: &'static str, value: String, said: String) {
    desk.act(
        move |hand| {
            // Another window may have written an amount meanwhile: it is not renamed.
            let stays = key == SettingKey::Currency && hand.shop.currency_is_fixed().is_some();
            if stays { Vec::new() } else { vec![write(hand, key, None, value.clone())] }
        },
        move |_| marked(words::set_to(what, &said)),
    );
}

/// Keeps one choice from a day on, at once.
pub fn write_from(desk: Desk, key: SettingKey, from: Option<Day>, value: &'static str, said: String) {
    desk.act(move |hand| vec![write(hand, key, from, value.to_owned())], move |_| marked(said.clone()));
}

/// The entry of this key and first day, or a new one.
pub fn write(hand: &mut Deciding, key: SettingKey, from: Option<Day>, value: String) -> Change {
    let of = |entry: &Id| match hand.journal.body(*entry) {
        Some(Body::Setting(it)) => it.key == key && it.from == from,
        _ => false,
    };
    let there = hand.journal.entries().find(of);
    let entry = there.unwrap_or_else(|| (hand.fresh)());
    Change::write(entry, Setting { on: On::At(hand.shop.zone.when(hand.now)), key, value, from })
}

fn label(key: SettingKey) -> &'static str {
    match key {
        SettingKey::Currency => words::currency(),
        SettingKey::Zone => words::zone(),
        SettingKey::Units => words::units_set(),
        SettingKey::WeekStart => words::week_begins(),
        SettingKey::KmRate => words::vehicle(),
        SettingKey::TaxRate => words::tax(),
        SettingKey::ShopName => words::shop_name(),
        SettingKey::SmallestFraction => words::smallest_fraction(),
        SettingKey::KwhPrice
        | SettingKey::PowerIn
        | SettingKey::NormalHours
        | SettingKey::NormalFilmHours
        | SettingKey::BothKey
        | SettingKey::SlowDown
        | SettingKey::ShootingSeconds
        | SettingKey::StockFormula
        | SettingKey::PublishLeads
        | SettingKey::BuildOrder => crate::words::journal::setting(key),
    }
}

fn marked(what: String) -> Marked {
    Mark { kind: words::set().to_owned(), what, second: None }.into()
}
