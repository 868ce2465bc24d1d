//! What is set once for the whole shop, as rows that lead to the choices.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Field, Typing},
        sum_row::{Group, Leads, SumRow, SumText},
    },
    screens::{first_amount, stock::form::Form},
    shell::{Desk, Place, desk::View},
    words::{bearing, shelf, shop as words},
};

use super::bearing as bearing_choices;
use benchslate_core::{
    costing::Formula,
    journal::kinds::SettingKey,
    measure::{Day, Dec},
};
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;

/// Vehicle, tax, what the shop goes by.
#[component]
pub fn SetOnce() -> impl IntoView {
    let desk = Desk::here();
    let rows = move || {
        let now = desk.minute();
        let (rows, formula) = desk.read(|view| {
            let today = view.shop.zone.day(now);
            (rows(view, today), formula(view, today))
        });
        let row = |text, place: Place| view! { <SumRow text leads=Leads::To(place.href()) signed=false/> };
        let mut all: Vec<AnyView> = rows.into_iter().map(|text| row(text, Place::Choices)).collect();
        all.push(row(formula, Place::Formula));
        all
    };
    view! { <Group title=words::set_once().to_owned()/>{rows} }
}

/// How stock is drawn.
fn formula(view: &View, today: Day) -> SumText {
    SumText {
        label: shelf::drawn_by_formula().to_owned(),
        working: Some(shelf::formula(Formula::on(view.shop, today)).to_owned()),
        ..SumText::default()
    }
}

fn rows(view: &View, today: Day) -> Vec<SumText> {
    let currency = first_amount::currency(view);
    let goes_by = currency.map(|currency| {
        let units = words::units(first_amount::in_inches(view));
        words::goes_by(&currency, units, &words::from_weekday(week_start(view)))
    });
    let row = |label: &str, figure: Option<String>| SumText {
        label: label.to_owned(),
        figure: figure.unwrap_or_else(|| words::not_set().to_owned()),
        ..SumText::default()
    };
    vec![
        row(words::vehicle(), km_rate(view, today)),
        row(words::tax(), tax(view).map(|figure| words::percent(&figure))),
        row(bearing::power_a_kwh(), bearing_choices::kwh(view)),
        row(bearing::both_sides(), Some(bearing_choices::both_key(view))),
        SumText { working: goes_by, ..row(words::counted_in(), Some(String::new())) },
        SumText { working: Some(view.shop.zone.name.clone()), ..row(words::zone(), Some(String::new())) },
    ]
}

/// Money a kilometre on a day.
pub fn km_rate(view: &View, day: Day) -> Option<String> {
    let stored = view.shop.settings.on(SettingKey::KmRate, day)?;
    Some(view.tongue.money(Dec::parse(stored).ok()?.money()?))
}

/// Sales tax in hundredths.
pub fn tax(view: &View) -> Option<String> {
    let share = Dec::parse(view.shop.settings.latest(SettingKey::TaxRate)?).ok()?;
    Some(view.tongue.number(&share.hundredths()))
}

/// The first day of the week, 1 Monday to 7 Sunday: the shop's choice, else that of the place.
pub fn week_start(view: &View) -> u8 {
    let chosen = view.shop.settings.latest(SettingKey::WeekStart).and_then(|day| day.parse().ok());
    chosen.unwrap_or_else(|| {
        let first = super::choices::guess().map(|region| region.first_day());
        first.map_or(1, |first| first.after_monday().saturating_add(1))
    })
}

/// Goes to the first field that something is wrong with, or to what is said of a choice, once its sentence stands
/// there. `Form::wrong` does; called where a field is no form's.
///
/// Within the turn in which it is said: a moment later it would take the focus from a field that is typed in by then.
pub fn to_the_wrong() {
    spawn_local(async {
        leptos::task::tick().await;
        let document = web_sys::window().and_then(|window| window.document());
        let wrong = document
            .and_then(|it| it.query_selector("[aria-invalid=true], [role=alert] .err").ok().flatten());
        if let Some(field) = wrong.and_then(|it| it.dyn_into::<web_sys::HtmlElement>().ok()) {
            if field.tag_name() == "P" {
                field.set_tab_index(-1);
            }
            // Refused only where it is gone again.
            let _ = field.focus();
        }
    });
}

/// A field in a cell. While nothing is typed it says what stands; `unit` stands beside what is typed.
pub fn cell(
    form: Form,
    field: &'static str,
    label: &'static str,
    stands: Signal<Option<String>>,
    unit: Option<Signal<Option<String>>>,
    class: &'static str,
    typing: Typing,
) -> AnyView {
    let unit = Signal::derive(move || unit.and_then(|unit| unit.get()));
    view! {
        <Field
            id=field
            class
            label=label.to_owned()
            typing
            hint=stands
            unit=unit
            value=form.signal(field)
            error=form.error(field)
            on_input=Callback::new(move |text: String| form.set(field, text))
        />
    }
}
