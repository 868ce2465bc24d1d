//! Choices about what hours bear: power, a normal month, what is for both sides, how filming slows work down.

use super::{
    choices::{Chosen, choose, one_of, write_from},
    set::cell,
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, Typing},
        seg::Choice,
        sum_row::Group,
    },
    screens::{first_amount, stock::form::Form},
    shell::{Desk, desk::View},
    words::{bearing as words, journal, shop as shop_words},
};
use benchslate_core::{
    journal::kinds::SettingKey,
    measure::{Day, Dec, Quantity, duration, number},
};

const KWH: &str = "kwh";
const ALL: &str = "normal-hours";
const FILM: &str = "normal-film";
const SLOW: &str = "slow-down";
const SHARE: &str = "film-share";

/// The codes of where power is kept, and of how both is shared; the film's own share is neither.
const POWER: [&str; 2] = ["tools", "month"];
const KEYS: [&str; 3] = ["hours", "fixed", "income"];

/// The groups, in a form.
pub fn groups(desk: Desk, form: Form) -> AnyView {
    let stands = move |key: SettingKey, said: fn(&View, &str) -> Option<String>| {
        Signal::derive(move || {
            desk.read(|view| view.shop.settings.latest(key).and_then(|stored| said(view, stored)))
        })
    };
    let plain = |view: &View, stored: &str| Some(view.tongue.number(stored));
    let share = |view: &View, stored: &str| Some(view.tongue.number(&Dec::parse(stored).ok()?.hundredths()));
    let percent = Signal::stored(Some("%".to_owned()));
    let h = Signal::stored(Some("h".to_owned()));
    view! {
        <Group title=words::power().to_owned()/>
        {power(desk)}
        <Cells>{cell(form, KWH, words::a_kwh(), stands(SettingKey::KwhPrice, plain), Some(first_amount::beside(desk)), "whole", Typing::Decimal)}</Cells>
        <Group title=words::normal_month().to_owned()/>
        <Cells>
            {cell(form, ALL, words::all_hours(), stands(SettingKey::NormalHours, plain), Some(h), "", Typing::Words)}
            {cell(form, FILM, words::film_hours(), stands(SettingKey::NormalFilmHours, plain), Some(h), "", Typing::Words)}
        </Cells>
        {suggested(desk)}
        <p class="note">{words::from_when()}</p>
        <Group title=words::both_sides().to_owned()/>
        {both(desk, form)}
        <Cells>
            {cell(form, SHARE, words::film_share(), stands(SettingKey::BothKey, share), Some(percent), "", Typing::Decimal)}
            {cell(form, SLOW, words::slow_down(), stands(SettingKey::SlowDown, share), Some(percent), "", Typing::Decimal)}
        </Cells>
        <p class="note">{words::how_both()}</p>
    }
}

/// Kept from today on, where it was chosen before.
fn power(desk: Desk) -> AnyView {
    let chosen = Signal::derive(move || {
        let month = desk.read(|view| view.shop.settings.latest(SettingKey::PowerIn) == Some("month"));
        usize::from(month)
    });
    let choose = move |at: usize| {
        let Some(code) = POWER.get(at).copied() else { return };
        let from = desk.now_read(|view| {
            let before = view.shop.settings.latest(SettingKey::PowerIn).is_some();
            before.then(|| view.shop.zone.day(desk.at_tap()))
        });
        write_from(desk, SettingKey::PowerIn, from, code, words::power_is(at == 1));
    };
    let choices = [false, true].map(|month| Choice::plain(words::power_in(month))).to_vec();
    one_of(words::power(), choices, chosen, Callback::new(choose))
}

/// Own hours of the last months, as a suggestion; none where no month is over.
fn suggested(desk: Desk) -> AnyView {
    let text = Memo::new(move |_| {
        desk.books(|books, view| {
            let usual = books.usual_month(view.shop)?;
            let hours = |it: Quantity| view.tongue.number(&it.shown_to(1));
            Some(words::suggested(&hours(usual.hours), &hours(usual.film_hours), usual.months))
        })
    });
    (move || text.get().map(|text| view! { <p class="note">{text}</p> })).draw()
}

fn both(desk: Desk, form: Form) -> AnyView {
    let chosen = Signal::derive(move || {
        desk.read(|view| match view.shop.settings.latest(SettingKey::BothKey) {
            Some("income") => 2,
            Some("hours") | None => 0,
            Some(_) => 1,
        })
    });
    let tap = move |at: usize| match KEYS.get(at).copied() {
        Some("fixed") => form.wrong(SHARE, words::type_the_share().to_owned()),
        Some(code) => {
            choose(
                desk,
                SettingKey::BothKey,
                words::both_sides(),
                code.to_owned(),
                words::key(at).to_owned(),
            );
        }
        None => {}
    };
    let choices = [0, 1, 2].map(|at| Choice::plain(words::key(at))).to_vec();
    one_of(words::both_sides(), choices, chosen, Callback::new(tap))
}

/// What was typed. `from`: the first day typed in the form; a rate that stands already changes today without it.
pub fn read(view: &View, form: Form, from: Option<Day>, today: Day) -> Vec<Chosen> {
    let dated = |key: SettingKey| {
        let there = view.shop.settings.latest(key).is_some();
        from.or(there.then_some(today))
    };
    let mut all: Vec<Chosen> = Vec::new();
    if let Some(price) = form.read(KWH, number::amount) {
        let value = Dec(price).plain();
        all.push((SettingKey::KwhPrice, dated(SettingKey::KwhPrice), value.clone(), value));
    }
    for (field, key) in [(ALL, SettingKey::NormalHours), (FILM, SettingKey::NormalFilmHours)] {
        let Some(hours) = form.read(field, duration::hours) else { continue };
        if hours.is_zero() {
            form.wrong(field, journal::more_than_none().to_owned());
        }
        let value = Dec::from(hours.in_hours()).plain();
        all.push((key, dated(key), value.clone(), shop_words::hours(&value)));
    }
    for (field, key) in [(SHARE, SettingKey::BothKey), (SLOW, SettingKey::SlowDown)] {
        let Some(share) = form.read(field, number::percent).map(Dec) else { continue };
        if Dec::parse("1").is_ok_and(|whole| share > whole) {
            form.wrong(field, journal::over_the_whole().to_owned());
        }
        all.push((key, None, share.plain(), shop_words::percent(&share.hundredths())));
    }
    all
}

/// What a kWh costs, or that power is in the month; none: not said.
pub fn kwh(view: &View) -> Option<String> {
    if view.shop.settings.latest(SettingKey::PowerIn) == Some("month") {
        return Some(words::power_in(true).to_owned());
    }
    let stored = view.shop.settings.latest(SettingKey::KwhPrice)?;
    Some(view.tongue.number(&Dec::parse(stored).ok()?.plain()))
}

/// How what is for both sides is shared.
pub fn both_key(view: &View) -> String {
    match view.shop.settings.latest(SettingKey::BothKey) {
        Some("income") => words::key(2).to_owned(),
        Some("hours") | None => words::key(0).to_owned(),
        Some(share) => {
            let share = Dec::parse(share).map(Dec::hundredths).unwrap_or_default();
            words::film_takes(&view.tongue.number(&share))
        }
    }
}
