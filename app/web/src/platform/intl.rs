//! Figures and dates as the reader's locale writes them, through the browser's `Intl` (ECMA-402).
//!
//! Figures go in as decimal text and stay exact: `NumberFormat` reads a string digit by digit
//! (ECMA-402, "Intl mathematical value"), so that no float comes near money. Every function falls
//! back to what it was given where the browser can't say it.

use benchslate_core::measure::Map;
use std::cell::RefCell;

use js_sys::{Array, Function, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};

thread_local! {
    // Making a formatter costs far more than using it.
    static FORMATS: RefCell<Map<String, Format>> = RefCell::default();
    static TWELVE: RefCell<Map<String, bool>> = RefCell::default();
}

#[derive(Clone)]
struct Format {
    it: JsValue,
    text_of: Function,
}

/// How a day or a time is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// `Fri 20 Nov`, in the locale's order.
    Day,
    /// `20 Nov`.
    DayShort,
    /// `Fri 20 Nov 2026`.
    DayYear,
    /// `Fri`.
    Weekday,
    /// `November 2026`.
    Month,
    /// `08:05` or `8:05 a.m.`.
    Time,
}

/// A figure from decimal text with as many digits behind the mark as it has, grouped.
pub fn number(decimal: &str, language: &str) -> String {
    let digits = decimal.split_once('.').map_or(0, |(_, behind)| behind.len());
    number_text(decimal, language, &[], Some(digits))
}

/// An instant, in milliseconds since 1970, as the clocks of `zone` show it.
pub fn instant(ms: i64, zone: &str, language: &str, look: Look) -> String {
    let mut options = options_of(look).to_vec();
    if look == Look::Time {
        // `08:05`, but `8:05 a.m.`: as clocks are read in either habit.
        let hour = if counts_to_twelve(language) { "numeric" } else { "2-digit" };
        options.push(("hour", hour));
    }
    options.push(("timeZone", zone));
    let format = cached("D", language, &options, |all| construct("DateTimeFormat", language, all));
    format.and_then(|it| it.say(&JsValue::from_f64(ms as f64))).unwrap_or_default()
}

/// A calendar day, as days since 1 January 1970. It has no zone: it is the same day everywhere.
pub fn day(days: i64, language: &str, look: Look) -> String {
    instant(days.saturating_mul(86_400_000).saturating_add(43_200_000), "UTC", language, look)
}

/// What a currency is called: `Canadian Dollar`; its code where the browser doesn't say.
pub fn currency_name(code: &str, language: &str) -> String {
    let names =
        cached("C", language, &[("type", "currency")], |all| construct("DisplayNames", language, all));
    names.and_then(|it| it.say(&code.into())).unwrap_or_else(|| code.to_owned())
}

/// Whether the reader's clock counts to twelve.
fn counts_to_twelve(language: &str) -> bool {
    let ask = || {
        let (format, method) =
            method(&date_time_format(language, &[("hour", "numeric")])?, "resolvedOptions")?;
        Reflect::get(&method.call0(&format).ok()?, &"hour12".into()).ok()?.as_bool()
    };
    TWELVE.with_borrow_mut(|known| {
        known.entry(language.to_owned()).or_insert_with(|| ask().unwrap_or(false)).to_owned()
    })
}

fn number_text(decimal: &str, language: &str, options: &[(&str, &str)], digits: Option<usize>) -> String {
    let kind = format!("N{}", digits.map_or(String::new(), |digits| digits.to_string()));
    let format = cached(&kind, language, options, |all| {
        if let Some(digits) = digits {
            for name in ["minimumFractionDigits", "maximumFractionDigits"] {
                let _ = Reflect::set(all, &name.into(), &JsValue::from_f64(digits as f64));
            }
        }
        construct("NumberFormat", language, all)
    });
    format.and_then(|it| it.say(&decimal.into())).unwrap_or_else(|| decimal.to_owned())
}

fn options_of(look: Look) -> &'static [(&'static str, &'static str)] {
    match look {
        Look::DayShort => &[("day", "numeric"), ("month", "short")],
        Look::Day => &[("weekday", "short"), ("day", "numeric"), ("month", "short")],
        Look::DayYear => &[("weekday", "short"), ("day", "numeric"), ("month", "short"), ("year", "numeric")],
        Look::Weekday => &[("weekday", "short")],
        Look::Month => &[("month", "long"), ("year", "numeric")],
        Look::Time => &[("minute", "2-digit")],
    }
}

impl Format {
    fn say(&self, value: &JsValue) -> Option<String> {
        self.text_of.call1(&self.it, value).ok()?.as_string()
    }
}

fn cached(
    kind: &str,
    language: &str,
    options: &[(&str, &str)],
    make: impl FnOnce(&Object) -> Option<JsValue>,
) -> Option<Format> {
    let key = format!("{kind} {language} {options:?}");
    if let Some(format) = FORMATS.with_borrow(|all| all.get(&key).cloned()) {
        return Some(format);
    }
    let verb = if kind == "C" { "of" } else { "format" };
    let (it, text_of) = getter(&make(&object(options))?, verb)?;
    let format = Format { it, text_of };
    FORMATS.with_borrow_mut(|all| all.insert(key, format.clone()));
    Some(format)
}

/// A `DateTimeFormat`; none for a zone or a language that the browser doesn't know.
pub(super) fn date_time_format(language: &str, options: &[(&str, &str)]) -> Option<JsValue> {
    construct("DateTimeFormat", language, &object(options))
}

/// A getter that gives a function already bound to its object, such as `format`.
pub(super) fn getter(of: &JsValue, name: &str) -> Option<(JsValue, Function)> {
    let function = Reflect::get(of, &name.into()).ok()?.dyn_into().ok()?;
    Some((of.clone(), function))
}

/// A method, with the object to call it on.
pub(super) fn method(of: &JsValue, name: &str) -> Option<(JsValue, Function)> {
    getter(of, name)
}

/// Through `Reflect`, because js-sys's own constructors can't report what `Intl` throws.
fn construct(kind: &str, language: &str, options: &Object) -> Option<JsValue> {
    let intl = Reflect::get(&js_sys::global(), &"Intl".into()).ok()?;
    let kind: Function = Reflect::get(&intl, &kind.into()).ok()?.dyn_into().ok()?;
    Reflect::construct(&kind, &Array::of2(&language.into(), options)).ok()
}

fn object(options: &[(&str, &str)]) -> Object {
    let object = Object::new();
    for (name, value) in options {
        let _ = Reflect::set(&object, &(*name).into(), &(*value).into());
    }
    object
}
