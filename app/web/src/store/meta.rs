//! The small records beside the revisions: format, device, check, and what the first screen shows.

use wasm_bindgen::JsValue;

use super::act::{Act, Asked};
use super::door::{Door, Mode};
use super::failure::Failure;
use super::schema::META;
use super::tally::Tally;
use super::value;

/// Version of the format of the lines: a number.
pub(super) const FORMAT: &str = "format";
/// This device's id: a UUID as text.
const DEVICE: &str = "device";
/// `{count, xor}`, see [`Tally`].
const CHECK: &str = "check";
/// What the first screen shows, as the program last wrote it: text.
const BENCH: &str = "bench";

/// This device's id; `fresh` becomes it the first time.
pub(super) async fn device(door: &Door, fresh: &str) -> Result<String, Failure> {
    let act = door.begin(&[META], Mode::Strict)?;
    let there = act.get(META, &DEVICE.into())?.answered().await?.as_string();
    let device = match there {
        Some(device) => device,
        None => {
            act.put(META, &DEVICE.into(), &fresh.into())?;
            fresh.to_owned()
        }
    };
    act.ended().await?;
    Ok(device)
}

/// What the first screen shows, if it was ever written.
pub(super) async fn bench(door: &Door) -> Result<Option<String>, Failure> {
    let act = door.begin(&[META], Mode::Read)?;
    Ok(act.get(META, &BENCH.into())?.answered().await?.as_string())
}

/// Writes what the first screen shows, inside a transaction under way.
pub(super) fn put_bench(act: &Act, bench: &str) -> Result<Asked, Failure> {
    act.put(META, &BENCH.into(), &bench.into())
}

/// Asks for the tally, inside a transaction under way; read it with [`tally_from`].
pub(super) fn ask_tally(act: &Act) -> Result<Asked, Failure> {
    act.get(META, &CHECK.into())
}

/// The tally as it is kept. None was written yet, or what is there makes no sense: that of no rows,
/// which the self-check then finds to be wrong.
pub(super) fn tally_from(kept: &JsValue) -> Tally {
    let read = || Tally::read(value::whole(kept, "count")?, &value::text(kept, "xor")?);
    read().unwrap_or_default()
}

/// Writes the tally, inside a transaction under way.
pub(super) fn put_tally(act: &Act, tally: Tally) -> Result<Asked, Failure> {
    let kept = value::record(&[("count", value::from_number(tally.count)), ("xor", tally.hex().into())]);
    act.put(META, &CHECK.into(), &kept)
}
