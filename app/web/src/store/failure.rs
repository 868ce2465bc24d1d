//! Why storage could not do what was asked: a closed list without text, and the way to it from
//! the names that browsers give their errors.
//!
//! Source of the names: Indexed Database API 3.0 and Web IDL, "DOMException names". What they
//! mean for the maker is said in `words/`.

use js_sys::Reflect;
use wasm_bindgen::JsValue;

use super::persist;
use super::tally::Tally;

/// Less free room than this (bytes), and an abort without a clear reason is put down to it.
const TIGHT: f64 = 1_000_000.0;

/// Why storage could not do what was asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Failure {
    /// This browser, or this kind of window, has no database at all.
    Missing,
    /// No room left on the device, or none that the browser will give.
    Full,
    /// The browser says no: settings, a policy, or a reason that it doesn't give.
    Refused,
    /// Another window holds an older form of the database open.
    Blocked,
    /// The connection died in mid-session and could not be had again.
    Gone,
    /// The database was written by a newer Benchslate; nothing of it was touched.
    Newer {
        /// Its version.
        found: u64,
    },
    /// What is stored is not what was written.
    Damaged {
        /// Where.
        at: At,
    },
}

/// Where storage is damaged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum At {
    /// A store or an index that should be there is not.
    Schema,
    /// Something that the browser itself can't read back.
    Unreadable,
    /// The row with this `seq` lacks its id or its line.
    Row(u64),
    /// The rows don't add up to the record kept beside them.
    Check {
        /// What the record says.
        kept: Tally,
        /// What the rows come to.
        found: Tally,
    },
}

/// The failure that an error thrown or reported by the database stands for.
pub(super) fn thrown(error: &JsValue) -> Failure {
    named(&name_of(error))
}

/// As [`thrown`], after a look at the room left where the browser gives no clear reason: with
/// durability `strict` a full disk may show as an abort alone.
pub(super) async fn aborted(error: &JsValue) -> Failure {
    let name = name_of(error);
    if !is_vague(&name) {
        return named(&name);
    }
    let free = persist::room().await.map(|room| room.free());
    vague(&name, free)
}

/// `error.name`, or nothing for null and for what isn't an error.
pub(super) fn name_of(error: &JsValue) -> String {
    Reflect::get(error, &JsValue::from_str("name")).ok().and_then(|name| name.as_string()).unwrap_or_default()
}

fn named(name: &str) -> Failure {
    match name {
        "QuotaExceededError" => Failure::Full,
        // Thrown when a transaction is begun on a connection that is closing, reported when one is
        // cut off; WebKit says `UnknownError` when its database process has died.
        "InvalidStateError" | "AbortError" | "UnknownError" => Failure::Gone,
        "NotFoundError" => Failure::Damaged { at: At::Schema },
        "NotReadableError" | "DataError" | "ConstraintError" => Failure::Damaged { at: At::Unreadable },
        _ => Failure::Refused,
    }
}

fn is_vague(name: &str) -> bool {
    matches!(name, "" | "AbortError" | "UnknownError")
}

fn vague(name: &str, free: Option<f64>) -> Failure {
    if free.is_some_and(|free| free < TIGHT) { Failure::Full } else { named(name) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(name: &str, free: Option<f64>, want: Failure) {
        let got = if is_vague(name) { vague(name, free) } else { named(name) };
        assert_eq!(got, want, "{name}, {free:?} free");
    }

    #[test]
    fn each_name_a_browser_gives_has_its_failure() {
        let roomy = Some(5e9);
        check("QuotaExceededError", roomy, Failure::Full);
        check("InvalidStateError", roomy, Failure::Gone);
        check("UnknownError", roomy, Failure::Gone);
        check("AbortError", None, Failure::Gone);
        check("NotFoundError", roomy, Failure::Damaged { at: At::Schema });
        check("ConstraintError", roomy, Failure::Damaged { at: At::Unreadable });
        check("SecurityError", roomy, Failure::Refused);
        check("", roomy, Failure::Refused);
        check("", None, Failure::Refused);
    }

    #[test]
    fn an_abort_without_a_reason_on_a_full_device_is_put_down_to_the_room() {
        check("", Some(12_000.0), Failure::Full);
        check("UnknownError", Some(0.0), Failure::Full);
        check("AbortError", Some(-40.0), Failure::Full);
    }

    #[test]
    fn a_clear_reason_is_believed_though_room_is_short() {
        check("SecurityError", Some(0.0), Failure::Refused);
        check("InvalidStateError", Some(0.0), Failure::Gone);
    }
}
