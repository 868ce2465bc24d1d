//! Small plain objects into the database and out of it.

use js_sys::{Object, Reflect};
use wasm_bindgen::JsValue;

/// A plain object of these fields.
pub(super) fn record(fields: &[(&str, JsValue)]) -> JsValue {
    let object = Object::new();
    for (name, value) in fields {
        // Setting a field of a fresh plain object can't be refused.
        let _ = Reflect::set(&object, &JsValue::from_str(name), value);
    }
    object.into()
}

/// The text in a field, if there is one.
pub(super) fn text(object: &JsValue, field: &str) -> Option<String> {
    field_of(object, field)?.as_string()
}

/// A field's name, made once where it is read from many objects.
pub(super) fn name(field: &str) -> JsValue {
    JsValue::from_str(field)
}

/// The text in a field, if there is one.
pub(super) fn text_at(object: &JsValue, field: &JsValue) -> Option<String> {
    object.is_object().then(|| Reflect::get(object, field).ok()?.as_string()).flatten()
}

/// Whether there is a text in a field.
pub(super) fn is_text_at(object: &JsValue, field: &JsValue) -> bool {
    object.is_object() && Reflect::get(object, field).is_ok_and(|it| it.is_string())
}

/// The whole number in a field, if there is one.
pub(super) fn whole(object: &JsValue, field: &str) -> Option<u64> {
    number(&field_of(object, field)?)
}

/// A whole number from 0 to 2⁵³, as the database counts.
pub(super) fn number(value: &JsValue) -> Option<u64> {
    let number = value.as_f64()?;
    (number >= 0.0 && number.fract() == 0.0 && number < 9_007_199_254_740_992.0).then_some(number as u64)
}

/// The same way back.
pub(super) fn from_number(number: u64) -> JsValue {
    JsValue::from_f64(number as f64)
}

fn field_of(object: &JsValue, field: &str) -> Option<JsValue> {
    if !object.is_object() {
        return None;
    }
    Reflect::get(object, &JsValue::from_str(field)).ok()
}
